package vtimezone

import (
	"fmt"
	"slices"
	"sort"
	"strconv"
	"strings"
	"testing"
	"time"
)

// lastYear is how far the evaluator follows rules.
const lastYear = 2130

// step is an onset as a reader of the component understands it.
type step struct {
	at     time.Time
	offset int
	name   string
}

// evaluate reads a VTIMEZONE by RFC 5545 3.6.5 and shares nothing with the code
// that wrote it. It returns the steps in order.
func evaluate(t *testing.T, text string) []step {
	t.Helper()
	var steps []step
	var p map[string]string
	for line := range strings.SplitSeq(strings.TrimSuffix(text, "\r\n"), "\r\n") {
		name, value, ok := strings.Cut(line, ":")
		if !ok || len(line) >= 75 || strings.ContainsAny(line, "\r\n") {
			t.Fatalf("bad line %q", line)
		}
		switch {
		case name == "BEGIN":
			p = map[string]string{}
		case name == "END" && value != "VTIMEZONE":
			expanded, err := expand(p)
			if err != nil {
				t.Fatal(err)
			}
			steps = append(steps, expanded...)
		case name == "END":
		default:
			if _, twice := p[name]; twice {
				t.Fatalf("%s twice", name)
			}
			p[name] = value
		}
	}
	slices.SortFunc(steps, func(a, b step) int { return a.at.Compare(b.at) })
	return steps
}

// expand returns the steps of one sub-component.
func expand(p map[string]string) ([]step, error) {
	start, err := time.Parse("20060102T150405", p["DTSTART"])
	if err != nil {
		return nil, err
	}
	from, err1 := parseOffset(p["TZOFFSETFROM"])
	to, err2 := parseOffset(p["TZOFFSETTO"])
	if err1 != nil || err2 != nil || p["TZNAME"] == "" {
		return nil, fmt.Errorf("%v: %v %v", p, err1, err2)
	}
	one := func(wall time.Time) step {
		return step{wall.Add(-time.Duration(from) * time.Second), to, p["TZNAME"]}
	}
	rule, ok := p["RRULE"]
	if !ok {
		return []step{one(start)}, nil
	}
	var month, nth int
	var day string
	if n, err := fmt.Sscanf(rule, "FREQ=YEARLY;BYMONTH=%d;BYDAY=%d%s", &month, &nth, &day); n != 3 {
		return nil, fmt.Errorf("rule %q: %v", rule, err)
	}
	weekday := slices.Index([]string{"SU", "MO", "TU", "WE", "TH", "FR", "SA"}, day)
	var steps []step
	for year := start.Year(); year <= lastYear; year++ {
		var hits []time.Time
		for d := 1; d <= 31; d++ {
			w := time.Date(year, time.Month(month), d, start.Hour(), start.Minute(), start.Second(), 0, time.UTC)
			if w.Month() == time.Month(month) && int(w.Weekday()) == weekday {
				hits = append(hits, w)
			}
		}
		hit := hits[len(hits)-1]
		if nth > 0 {
			hit = hits[nth-1]
		}
		steps = append(steps, one(hit))
	}
	if !steps[0].at.Equal(one(start).at) {
		return nil, fmt.Errorf("DTSTART %s is not in the set of %s", p["DTSTART"], rule)
	}
	return steps, nil
}

func parseOffset(s string) (int, error) {
	if len(s) != 5 && len(s) != 7 || s[0] != '+' && s[0] != '-' || s == "-0000" {
		return 0, fmt.Errorf("bad offset %q", s)
	}
	n, err := strconv.Atoi((s[1:] + "00")[:6])
	n = n/10000*3600 + n/100%100*60 + n%100
	if s[0] == '-' {
		n = -n
	}
	return n, err
}

// at returns the offset and name in force at an instant.
func at(steps []step, when time.Time) (int, string) {
	i := sort.Search(len(steps), func(i int) bool { return steps[i].at.After(when) })
	if i == 0 {
		return -1, "nothing in force"
	}
	return steps[i-1].offset, steps[i-1].name
}
