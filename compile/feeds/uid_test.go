package feeds_test

import (
	"strings"
	"testing"

	"vivary/compile/feeds"
)

// TestCalendarHasNoUID: vdirsyncer puts what stands above the entries into each of them
// and takes the first UID there for its identity, so that of all entries one would be
// left. So a UID stands in an entry or in its reminder, and nowhere else.
func TestCalendarHasNoUID(t *testing.T) {
	for _, f := range feeds.Of(compiled(t, everyKind("Europe/London"), everyState, today)) {
		text, err := f.Bytes(nil)
		if err != nil {
			t.Fatal(err)
		}
		var open []string
		entries := 0
		for line := range strings.SplitSeq(string(text), "\r\n") {
			name, value, _ := strings.Cut(line, ":")
			switch name, _, _ := strings.Cut(name, ";"); name {
			case "BEGIN":
				open = append(open, value)
			case "END":
				open = open[:len(open)-1]
			case "UID":
				if in := open[len(open)-1]; in != "VEVENT" && in != "VALARM" {
					t.Errorf("%s: a UID in %s", f.Name, in)
				}
				entries++
			}
		}
		if entries < 2 {
			t.Errorf("%s: %d entries prove nothing", f.Name, entries)
		}
	}
}
