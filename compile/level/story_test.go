package level_test

import (
	"fmt"
	"maps"
	"strings"
	"testing"
	"time"

	"vivary/compile"
	"vivary/compile/level"
	"vivary/compile/roster"
	"vivary/internal/planned"
	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/civil"
)

// sunday is a house whose tubs are all fed on Sundays; the species is a fixture of this story.
func sunday(tubs int, numbers bool) string {
	var b strings.Builder
	b.WriteString(`collection "wren-lane" {
  time_zone = "Europe/London"
}

room "box-room" {
  temperature = "21 to 25 C"
}

keeper "lead" {
  title  = "Lead keeper"
  budget = "60 min"
}

keeper "relief" {
  title = "Relief keeper"
}

round "morning" {
  at     = "08:30"
  keeper = "relief"
}

round "evening" {
  at     = "19:30"
  keeper = "lead"
}

species "fixture-spider" {
  title = "fixture spider"

  figure "venom" {
    value  = "none"
    source = ["fixture"]
  }

  stage "adult" {
    instars = "7"
  }

  need "look" {
    longest = "1 day"
    source  = ["fixture"]
    because = "fixture of this story"
    review  = "2029-01-01"
  }

  need "water" {
    longest = "3 days"
    source  = ["fixture"]
    because = "fixture of this story"
    review  = "2029-01-01"
  }

  need "food" {
    longest = "10 days"
    source  = ["fixture"]
    because = "fixture of this story"
    review  = "2029-01-01"
  }
}

template "tub" {
  species = "fixture-spider"
  room    = "box-room"

  housing {
    inside = "30 x 20 x 20 cm"
    lid    = "solid, latched"
  }

  care "look" {
    every = "day"
    round = "morning"
  }

  care "water" {
    every = "3 days"
    round = "morning"
  }

  feeding "one" {
    on         = ["sun"]
    round      = "evening"
    window     = "2 days"
    minutes    = "4 min"
    per_animal = 1
    prey       = "cricket medium"
    killed     = true
  }
}
`)
	one := "  template = \"tub\"\n\n  animals \"one\" {\n    count  = 1\n    instar = 7\n  }\n"
	if numbers {
		fmt.Fprintf(&b, "\nenclosure \"tub\" {\n  numbers  = \"1 to %d\"\n%s}\n", tubs, one)
		return b.String()
	}
	for i := range tubs {
		fmt.Fprintf(&b, "\nenclosure \"tub-%d\" {\n%s}\n", i+1, one)
	}
	return b.String()
}

// compiled compiles files as of a moment.
func compiled(t testing.TB, files map[string]string, now time.Time) *compile.Result {
	t.Helper()
	c, found := planned.Files(t, files)
	return compile.Compile(c, found, now)
}

// leveled proposes a layout and takes it.
func leveled(t testing.TB, files map[string]string, now time.Time) (*level.Layout, map[string]string) {
	t.Helper()
	with := func(texts map[string][]byte) map[string]string {
		out := maps.Clone(files)
		for path, text := range texts {
			name := strings.TrimPrefix(path, "c/")
			if _, ok := out[name]; !ok {
				t.Fatalf("a layout changes %s, which is no file", path)
			}
			out[name] = string(text)
		}
		return out
	}
	l := level.Of(compiled(t, files, now), func(texts map[string][]byte) *compile.Result { return compiled(t, with(texts), now) })
	return l, with(l.Texts)
}

// fed are the meals of an enclosure.
func fed(r *compile.Result, i int) *roster.Entry {
	for k := range r.Roster.Of[i] {
		if e := &r.Roster.Of[i][k]; e.Kind == schema.KindFeed {
			return e
		}
	}
	return nil
}

// TestSixtyTubsOnSunday is a story of keepers: sixty feeds of four minutes stand on Sundays, an
// hour a day is there, each may be moved two days either way, and no tub may wait for more
// than ten days.
func TestSixtyTubsOnSunday(t *testing.T) {
	for _, numbers := range []bool{false, true} {
		for day := range 7 {
			now := time.Date(2027, 1, 4+day, 9, 0, 0, 0, time.UTC)
			files := planned.With(sunday(60, numbers), "")
			if day == 6 { // what is due today was done, or it would have to be done today
				for i := range 60 {
					files["a.care.log"] += fmt.Sprintf("2027-01-10 tub-%d fed\n", i+1)
				}
			}
			was := compiled(t, files, now)
			for _, f := range was.Findings {
				if f.Severity.Refuses() {
					t.Fatalf("the plan is refused: %s: %s: %s", f.Rule.ID, f.Text, f.Write)
				}
			}
			if was.Refused() {
				t.Fatalf("the plan is refused: %s: %v", finding.Summary(was.Findings), was.Findings[:2])
			}
			l, after := leveled(t, files, now)
			if len(l.Was) != 1 || l.Was[0].Most != 240 || l.Was[0].Bound() != 4 || l.Was[0].On.Weekday() != time.Sunday {
				t.Fatalf("before: %+v", l.Was)
			}
			if l.Is[0].Most > 60 || l.Is[0].Over != 0 || len(l.Moves) != 45 || len(l.Kept) != 0 {
				t.Errorf("on %s: %d moves, then at most %d min, %d days over; kept %v, stays %v", now.Format("Mon"), len(l.Moves), l.Is[0].Most, l.Is[0].Over, l.Kept, l.Is[0].Stays)
				continue
			}
			is := compiled(t, after, now)
			if is.Refused() || is.Late() != 0 {
				t.Fatalf("after: %s\n%s", finding.Summary(is.Findings), after["a.care.hcl"])
			}
			for i := range is.Roster.Of {
				last := civil.Date(0)
				for d := fed(was, i).Days.Next(0); d >= 0 && d < was.Horizon.Today || day == 6 && d == was.Horizon.Today; d = fed(was, i).Days.Next(d + 1) {
					last = was.Horizon.Date(d) // as it was done until today
				}
				e := fed(is, i)
				for d := e.Days.Next(is.Horizon.Today); d >= 0; d = e.Days.Next(d + 1) {
					if on := is.Horizon.Date(d); on-last > 10 {
						t.Fatalf("%s is fed on %s and then on %s", e.Plan().Name.V, last.Words(), on.Words())
					} else {
						last = on
					}
				}
			}
			if again, _ := leveled(t, after, now); len(again.Moves) != 0 {
				t.Errorf("a second run moves %d", len(again.Moves))
			}
			same, text := leveled(t, files, now)
			if text["a.care.hcl"] != after["a.care.hcl"] || len(same.Moves) != len(l.Moves) {
				t.Error("the same input gives another layout")
			}
			more := maps.Clone(after)
			more["a.care.hcl"] = strings.Replace(after["a.care.hcl"], `"1 to 60"`, `"1 to 61"`, 1)
			if !numbers {
				more["a.care.hcl"] += "\nenclosure \"tub-61\" {\n  template = \"tub\"\n\n  animals \"one\" {\n    count  = 1\n    instar = 7\n  }\n}\n"
			}
			if one, _ := leveled(t, more, now); len(one.Moves) > 2 || one.Is[0].Most > 60 { // two on a Saturday: the Fridays are full, or too late
				t.Errorf("on %s one tub more moves %d, then at most %d min: %+v", now.Format("Mon"), len(one.Moves), one.Is[0].Most, one.Moves)
			}
		}
	}
}

// Somebody who has a budget and only stands in has no day, and the layout of the others is as it was.
func TestWhoOnlyStandsIn(t *testing.T) {
	now := time.Date(2027, 1, 4, 9, 0, 0, 0, time.UTC)
	plain := planned.With(sunday(20, false), "")
	more := planned.With(sunday(20, false)+"keeper \"second\" {\n  budget = \"60 min\"\n}\n", "")
	a, _ := leveled(t, plain, now)
	b, _ := leveled(t, more, now)
	if len(b.Was) != len(a.Was)+1 || len(b.Moves) != len(a.Moves) {
		t.Fatalf("%d measures and %d moves, and without them %d and %d", len(b.Was), len(b.Moves), len(a.Was), len(a.Moves))
	}
	for _, m := range b.Was {
		if m.Keeper != nil && m.Keeper.Name.V == "second" && (m.Most != 0 || m.Over != 0) {
			t.Errorf("%+v", m)
		}
	}
}
