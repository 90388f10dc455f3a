package roster_test

import (
	"strings"
	"testing"

	"vivary/compile/roster"
)

const mondays = "round \"evening\" {\n  at = \"19:30\"\n}\nround \"mondays\" {\n  at = \"20:30\"\n  on = [\"mon\"]\n}\n"

// with is a house whose species has that care.
func with(care string, blocks ...string) string {
	return strings.Replace(house(blocks...), "species \"fixture\" {\n", "species \"fixture\" {\n"+care, 1)
}

// TestOwnCareWithASourceIsNotMoved: a care of the plan's own is the keeper's choice of
// a day, whatever it says of its source; the sheet's is moved.
func TestOwnCareWithASourceIsNotMoved(t *testing.T) {
	const care = "  care \"weigh\" {\n    on     = [\"tue\"]\n    round  = \"mondays\"\n    source = [\"fixture\"]\n    seen   = \"2026-11-25\"\n  }\n"
	for _, c := range []struct {
		text, days string
		sheet      bool
		found      int
	}{
		{house(mondays, box("ash", one+care)), "", false, 1},
		{with(care, mondays, box("ash", one)), "Mon 1 Mar, Mon 8 Mar", true, 0},
	} {
		r := compiled(t, c.text, "", day("2027-03-01"))
		s := find(t, r, "ash", "weigh")
		if got := days(r, s, day("2027-03-01"), day("2027-03-10")); got != c.days || s.FromSheet != c.sheet || len(r.Roster.Findings) != c.found {
			t.Errorf("from the sheet %v: on %q, said to be from it: %v, %d findings", c.sheet, got, s.FromSheet, len(r.Roster.Findings))
		}
	}
}

// TestHowOftenIsThatOfTheStage: a care that does not say how often is done as often as
// the sheet says for the animals that live there, in whatever order it says so.
func TestHowOftenIsThatOfTheStage(t *testing.T) {
	const care = "  care \"mist-young\" {\n    kind   = \"mist\"\n    every  = \"day\"\n    stages = [\"adult\"]\n  }\n  care \"mist\" {\n    every  = \"7 days\"\n    stages = [\"juvenile\"]\n  }\n"
	r := compiled(t, with(care, box("ash", one+"  care \"mist\" {\n    minutes = \"4 min\"\n  }\n")), "", day("2027-03-01"))
	if got := find(t, r, "ash", "mist").Words(); got != "every 7 days" {
		t.Errorf("juveniles are misted %s", got)
	}
}

// TestGoneAnimalsBringNoCare: the sheet's care for a stage ends with the last animal of
// that stage.
func TestGoneAnimalsBringNoCare(t *testing.T) {
	const care = "  care \"mist\" {\n    every  = \"day\"\n    stages = [\"juvenile\"]\n  }\n"
	text := with(care, box("ash", one+"  animals \"old\" {\n    count = 1\n    stage = \"adult\"\n  }\n"))
	for log, want := range map[string]int{"": 1, "2027-02-20 ash only died 2\n": 0} {
		n := 0
		for s := range compiled(t, text, log, day("2027-03-01")).Roster.All() {
			if s.Name == "mist" {
				n++
			}
		}
		if n != want {
			t.Errorf("log %q: %d times mist, want %d", log, n, want)
		}
	}
}

// TestOtherCareKeepsTheSheets: a care of kind "other" takes the place of one of its
// name alone.
func TestOtherCareKeepsTheSheets(t *testing.T) {
	const care = "  care \"greens\" {\n    kind  = \"other\"\n    task  = \"Lay out greens\"\n    every = \"3 days\"\n  }\n"
	const photograph = "  care \"photograph\" {\n    kind  = \"other\"\n    task  = \"Take a photograph\"\n    every = \"30 days\"\n  }\n"
	r := compiled(t, with(care, box("ash", one+photograph)), "", day("2027-03-01"))
	if got := find(t, r, "ash", "greens").Words(); got != "every 3 days" {
		t.Errorf("greens %s", got)
	}
}

// TestTimesOfTheSheet: care that a sheet has at times of its own is done at these.
func TestTimesOfTheSheet(t *testing.T) {
	for _, when := range []string{"every = \"day\"\n    at = \"08:10\"", "cron = \"10 8 * * *\""} {
		care := "  care \"mist\" {\n    " + when + "\n  }\n"
		for _, own := range []string{"", "  care \"mist\" {\n    minutes = \"4 min\"\n  }\n"} {
			if own != "" && strings.Contains(when, "at =") {
				continue // how often is the sheet's then, not at what time
			}
			r := compiled(t, with(care, box("ash", one+own)), "", day("2027-03-01"))
			if got := find(t, r, "ash", "mist").At().String(); got != "08:10" {
				t.Errorf("%q with %q: at %s", when, own, got)
			}
		}
	}
}

// TestReasons: each day that is left out says the reason that it is, and no other.
func TestReasons(t *testing.T) {
	text := house("keeper \"lead\" {\n}\nround \"evening\" {\n  at     = \"19:30\"\n  keeper = \"lead\"\n}\naway \"lead\" {\n  from = \"2027-04-10\"\n  to   = \"2027-04-12\"\n}\n",
		box("ash", one+"  care \"water\" {\n    every = \"day\"\n  }\n  feeding \"only\" {\n    every      = \"day\"\n    per_animal = 1\n    prey       = \"cricket small\"\n  }\n"))
	r := compiled(t, text, "2027-02-26 ash moult 2\n2027-03-01 ash skipped water\n", day("2027-03-01"))
	for _, x := range []struct {
		care, on string
		why      roster.Why
		stands   bool
	}{
		{"water", "2027-03-01", roster.Skipped, false},
		{"water", "2027-03-02", roster.CaughtUp, true},
		{"water", "2027-04-10", roster.Nobody, false},
		{"water", "2027-04-12", roster.Return, true},
		{"water", "2027-04-09", roster.Leaving, true},
		{"feed only", "2027-03-01", roster.Held, false},
		{"feed only", r.Lives[0].Groups[0].Offered[0].String(), roster.InPlace, false},
	} {
		e := find(t, r, "ash", x.care)
		i, _ := r.Horizon.Index(day(x.on))
		if c := e.Reason(i); c == nil || c.Why != x.why || e.Days.Has(i) != x.stands {
			t.Errorf("%s on %s: %+v, stands %v", x.care, x.on, c, e.Days.Has(i))
		}
	}
}
