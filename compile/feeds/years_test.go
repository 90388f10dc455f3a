package feeds_test

import (
	"slices"
	"strings"
	"testing"
	"time"

	"vivary/compile"
	"vivary/compile/feeds"
	"vivary/compile/ical"
	"vivary/internal/oracles"
	"vivary/internal/planned"
	"vivary/schema"
	"vivary/schema/civil"
)

// TestFiveYearsWithoutABuild: nobody builds a calendar again, and phones go on showing
// it. What goes on is right to the hour for five years, in every reader; what stops is
// told of by an entry; and nothing asks to feed in a cool rest.
func TestFiveYearsWithoutABuild(t *testing.T) {
	until := today.AddMonths(60)
	var all [][]byte
	var of []yearsFeed
	for i, zone := range yearsZones {
		r := compiled(t, yearsPlan(zone), "", today)
		for k, name := range []string{"care", "morning", "dune"} {
			if i%(1+5*k) != 0 {
				continue // readers take their time
			}
			of = append(of, yearsFeed{t, zone, name, r.Plan.Location})
			all = append(all, built(t, r, name, nil))
		}
	}
	for reader, answer := range oracles.Expand(t, all, today.At(0, time.UTC).AddDate(0, 0, -1), until.At(0, time.UTC).AddDate(0, 0, 1)) {
		seen := apart(answer, len(all))
		for i, f := range of {
			if reason, refused := answer.Refused[i]; refused {
				t.Errorf("%s refuses %s in %s: %s", reader, f.name, f.zone, reason)
			} else if f.name != "dune" {
				f.goesOn(reader, seen[i], today, until)
			} else {
				f.rests(reader, seen[i], until)
			}
		}
	}
}

// TestSixYearsOfBuilds: who builds once a year, on the last day of a year or on the first,
// is shown by each build what the plan has until the next, to the hour and nothing else,
// though entries began years ago.
func TestSixYearsOfBuilds(t *testing.T) {
	var zones []string
	for i, zone := range yearsZones {
		if i%3 == 1 {
			zones = append(zones, zone)
		}
	}
	names := []string{"care", "dune", "morning"}
	last := map[string][]byte{}
	days := []civil.Date{civil.Must(2026, 12, 31), civil.Must(2028, 1, 1), civil.Must(2028, 12, 31),
		civil.Must(2030, 1, 1), civil.Must(2030, 12, 31), civil.Must(2032, 1, 1), civil.Must(2032, 12, 31)}
	for n, on := range days[:len(days)-1] {
		until := days[n+1]
		var all [][]byte
		var of []yearsFeed
		var meals [][]string // of dune
		for i, zone := range zones {
			var heads [][]byte
			for _, name := range names {
				heads = append(heads, last[zone+name])
			}
			c, found := planned.Sound(t, planned.With(yearsPlan(zone), ""))
			r := compile.From(compile.Input{Plan: c, Loaded: found, Now: on.At(12*60, c.Location), Told: feeds.ToldBy(c.About.Name.V, feeds.ReadHeads(heads))})
			for k, name := range names {
				if k == 2 && i > 0 {
					continue
				}
				var m *ical.Memory
				if text := last[zone+name]; text != nil {
					m = remembered(t, text)
				}
				text := built(t, r, name, m)
				last[zone+name] = text
				all, of = append(all, text), append(of, yearsFeed{t, zone, name, c.Location})
				meals = append(meals, mealsOf(r, until))
			}
		}
		for reader, answer := range oracles.Expand(t, all, on.At(0, time.UTC).AddDate(0, 0, -1), until.At(0, time.UTC).AddDate(0, 0, 1)) {
			seen := apart(answer, len(all))
			for i, f := range of {
				if reason, refused := answer.Refused[i]; refused {
					t.Errorf("%s refuses %s in %s: %s", reader, f.name, f.zone, reason)
					continue
				}
				want := f.planned(on, until)
				if f.name == "dune" {
					want = map[string][]string{"": meals[i]}
				}
				got := f.shown(seen[i], on, until)
				if f.name == "care" {
					want[""] = nil // nothing else
				}
				for title, want := range want {
					if got := got[title]; !slices.Equal(got, want) {
						n := alike(got, want)
						t.Errorf("built on %s: %s, %s in %s: %q is shown at %s, and the plan has it at %s", on, reader, f.name, f.zone, title,
							append(got, "no other time")[n], append(want, "no other time")[n])
					}
				}
			}
		}
	}
}

// mealsOf are the starts of the meals of dune until a day.
func mealsOf(r *compile.Result, until civil.Date) (out []string) {
	for x := range r.Roster.All() {
		if x.Life.Plan.Name.V == "dune" && x.Kind == schema.KindFeed {
			d := doing{at: x.At(), on: func(d civil.Date) bool { return x.Days.Has(int(d - r.Horizon.From)) }}
			out = append(out, d.starts(r.Plan.Location, r.Today, until)...)
		}
	}
	slices.Sort(out)
	return out
}

// apart are the occurrences of an answer by feed.
func apart(answer oracles.Answer, n int) [][]oracles.Occurrence {
	out := make([][]oracles.Occurrence, n)
	for _, o := range answer.Occurrences {
		out[o.Feed] = append(out[o.Feed], o)
	}
	return out
}

// yearsFeed is a calendar of yearsPlan in one zone.
type yearsFeed struct {
	*testing.T
	zone, name string
	loc        *time.Location
}

// goesOn holds that what a reader sees is what the plan has, to the hour, from one day
// until another or until an entry that says that it ends there.
func (f yearsFeed) goesOn(reader string, seen []oracles.Occurrence, from, until civil.Date) {
	f.Helper()
	told, got := f.told(seen), f.shown(seen, from, until)
	if f.name == "care" && len(got[""]) > 0 {
		f.Errorf("%s, %s in %s: something is shown at %s that the plan does not have", reader, f.name, f.zone, got[""][0])
	}
	for title, want := range f.planned(from, until) {
		got := got[title]
		n := alike(got, want)
		switch {
		case n < len(got):
			f.Errorf("%s, %s in %s: %q is shown at %s, and the plan has it at %s", reader, f.name, f.zone, title, got[n], append(want, "no other time")[n])
		case n == 0:
			f.Errorf("%s, %s in %s: %q is nowhere", reader, f.name, f.zone, title)
		case n < len(want) && title == yearsForever:
			f.Errorf("%s, %s in %s: %q ends at %s", reader, f.name, f.zone, title, got[n-1])
		case n < len(want) && !slices.ContainsFunc(told, func(d civil.Date) bool { return d >= f.day(got[n-1]) && d <= f.day(want[n]) }):
			f.Errorf("%s, %s in %s: %q is shown until %s, and nothing says that it ends but on %v", reader, f.name, f.zone, title, got[n-1], told)
		}
	}
}

// alike is how many starts are the same, from the first on.
func alike(a, b []string) (n int) {
	for n < min(len(a), len(b)) && a[n] == b[n] {
		n++
	}
	return n
}

// rests holds that no meal is shown in the cool rest of any year, and that where meals
// end for good an entry says so.
func (f yearsFeed) rests(reader string, seen []oracles.Occurrence, until civil.Date) {
	f.Helper()
	var last civil.Date
	for _, o := range seen {
		if !strings.HasPrefix(o.Summary, "Feed ") {
			continue
		}
		last = f.day(o.Start)
		if _, m, d := last.YMD(); m == 12 || m == 1 || m == 11 && d >= 15 || m == 2 && d <= 20 {
			f.Errorf("%s in %s: %q in the cool rest, at %s", reader, f.zone, o.Summary, o.Start)
			return
		}
	}
	told := f.told(seen)
	if last == 0 {
		f.Errorf("%s in %s: no meal at all", reader, f.zone)
	} else if last < until-150 && !slices.ContainsFunc(told, func(d civil.Date) bool { return d >= last && d <= last+150 }) {
		f.Errorf("%s in %s: the last meal is on %s, and nothing says so but on %v", reader, f.zone, last, told)
	}
}
