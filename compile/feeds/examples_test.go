package feeds_test

import (
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/spf13/afero"
	"github.com/teambition/rrule-go"

	"vivary/compile"
	"vivary/compile/feeds"
	"vivary/compile/ical"
	"vivary/internal/oracles"
	"vivary/plan"
	"vivary/schema/civil"
)

// TestReadersSeeTheExamples: every feed of every example that can be built is read
// alike by three calendar readers that share no code, and as its entries say, with
// their rules expanded by a recurrence library that is none of ours.
func TestReadersSeeTheExamples(t *testing.T) {
	roots, err := filepath.Glob("../../examples/mistakes/*")
	if err != nil {
		t.Fatal(err)
	}
	on := civil.Must(2026, time.November, 25)
	var all [][]byte
	var names []string
	var wants [][]oracles.Occurrence
	for _, root := range append(roots, "../../examples/quillmoor") {
		c, found, err := plan.Load(afero.NewReadOnlyFs(afero.NewOsFs()), root)
		if err != nil {
			t.Fatal(err)
		}
		if c.Location == nil {
			continue
		}
		r := compile.Compile(c, found, on.At(12*60, c.Location))
		if r.Refused() {
			continue
		}
		for _, f := range feeds.Of(r) {
			bytes, err := f.Bytes(nil)
			if err != nil {
				t.Fatal(err)
			}
			entries, err := f.Entries(nil)
			if err != nil {
				t.Fatal(err)
			}
			wants = append(wants, listed(t, len(all), entries, on, c.Location))
			all = append(all, bytes)
			names = append(names, filepath.Base(root)+"/"+f.Name)
		}
	}
	if len(all) < 7 {
		t.Fatalf("only %d feeds: %v", len(all), names)
	}
	from := on.At(0, time.UTC)
	answers := oracles.Expand(t, all, from, from.AddDate(0, 0, 200))
	total := 0
	for reader, answer := range answers {
		for i, want := range wants {
			total += len(want)
			got := slices.DeleteFunc(answer.Feed(i), func(o oracles.Occurrence) bool { return o.Start[:8] < "20261126" || o.Start[:8] > "20270601" })
			if diff := oracles.Differences(want, got); diff != "" {
				t.Errorf("%s in %s:\n%s", reader, names[i], diff)
			}
		}
	}
	if len(answers) < 3 || total < 3000 {
		t.Errorf("%d readers, %d occurrences", len(answers), total)
	}
}

// listed is what entries say, from the day after on until 1 June 2027: the ends of
// what readers are asked about are left out, since days begin at different times in
// different zones.
func listed(t *testing.T, feed int, entries []ical.Entry, on civil.Date, loc *time.Location) []oracles.Occurrence {
	t.Helper()
	var out []oracles.Occurrence
	add := func(e *ical.Entry, d civil.Date) {
		o := oracles.Occurrence{Feed: feed, UID: e.UID, Summary: e.Summary}
		if e.AllDay {
			plain := func(d civil.Date) string { return strings.ReplaceAll(d.String(), "-", "") }
			o.Start, o.End = plain(d), plain(d+civil.Date(e.Days))
		} else {
			start := d.At(e.At, loc).UTC()
			o.Start = start.Format("20060102T150405Z")
			o.End = start.Add(time.Duration(e.Minutes) * time.Minute).Format("20060102T150405Z")
		}
		if o.Start[:8] >= "20261126" && o.Start[:8] <= "20270601" {
			out = append(out, o)
		}
	}
	for i := range entries {
		e := &entries[i]
		if e.RRule == "" {
			add(e, e.Date)
			continue
		}
		rule, err := rrule.StrToRRule("DTSTART:" + strings.ReplaceAll(e.Date.String(), "-", "") + "T000000Z\nRRULE:" + e.RRule)
		if err != nil {
			t.Fatal(err)
		}
		for _, at := range rule.Between(on.At(0, time.UTC), on.At(0, time.UTC).AddDate(0, 0, 210), true) {
			d := civil.FromTime(at)
			if !slices.Contains(e.ExDates, d) && !(e.HasUntil && d > e.Until) {
				add(e, d)
			}
		}
	}
	oracles.Sort(out)
	return out
}
