package prove_test

import (
	"cmp"
	"fmt"
	"slices"
	"strings"
	"testing"

	"vivary/compile"
	"vivary/compile/identity"
	"vivary/compile/life"
	"vivary/compile/prove"
	"vivary/compile/roster"
	"vivary/internal/planned"
	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/civil"
)

// watered is the care of an enclosure with water at an interval from a day.
func watered(every int, from civil.Date) string {
	return fmt.Sprintf("  care \"water\" {\n    every = \"%d days\"\n    from  = \"%s\"\n  }\n", every, from)
}

// TestTripDoesNotDependOnThePhase: whether a trip is sound is the same for every day
// from which the interval of watering may be counted, since dishes are filled on the
// eve. One day longer than the animals may be left is too long for each of them.
func TestTripDoesNotDependOnThePhase(t *testing.T) {
	for _, every := range []int{1, 2, 3} {
		for days := 1; days <= 9; days++ {
			for phase := range every {
				from := day("2027-07-10")
				text := usual.sheet() + people + rounds + away("lead", from.String(), (from+civil.Date(days)).String(), "") +
					box("ash", watered(every, day("2027-05-01")+civil.Date(phase)))
				r := compiled(t, text, "", day("2027-05-01"))
				// From the eve to the return it is a day more than the trip is long.
				if got, want := strings.Contains(said(r, found(r)), "[water-gap]"), days+1 > usual.unattended; got != want {
					t.Errorf("every %d days in phase %d, away for %d days: refused is %v, and want %v\n%s", every, phase, days, got, want, said(r, found(r)))
				}
			}
		}
	}
}

// TestVisitsDoNotDependOnThePhase is the same for a trip of weeks with a stand-in:
// half of what the animals may be left for is between two visits.
func TestVisitsDoNotDependOnThePhase(t *testing.T) {
	for _, c := range []struct {
		visits string
		apart  int
	}{{`["tue", "sat"]`, 4}, {`["mon", "thu"]`, 4}, {`["mon", "fri"]`, 4}, {`["wed"]`, 7}, {`["sat", "sun"]`, 6}} {
		for _, every := range []int{1, 2, 3} {
			for phase := range every {
				text := usual.sheet() + people + rounds + away("lead", "2027-07-10", "2027-08-01", "  cover = \"ben\"\n  visits = "+c.visits+"\n") +
					box("ash", watered(every, day("2027-05-01")+civil.Date(phase)))
				r := compiled(t, text, "", day("2027-05-01"))
				if got, want := strings.Contains(said(r, found(r)), "[water-gap]"), c.apart > usual.unattended/2; got != want {
					t.Errorf("every %d days in phase %d, visits = %s: refused is %v, and want %v\n%s", every, phase, c.visits, got, want, said(r, found(r)))
				}
			}
		}
	}
}

// TestDishesAreFilledOnTheEve: in every phase water stands on the last day before a
// trip and on the return, for that reason, and a calendar shows it.
func TestDishesAreFilledOnTheEve(t *testing.T) {
	for phase := range 3 {
		text := usual.sheet() + people + rounds + away("lead", "2027-07-10", "2027-07-17", "") + box("ash", watered(3, day("2027-05-01")+civil.Date(phase)))
		r := compiled(t, text, "", day("2027-05-01"))
		for x := range r.Roster.All() {
			if x.Name != "water" {
				continue
			}
			for on, why := range map[string]roster.Why{"2027-07-09": roster.Leaving, "2027-07-17": roster.Return} {
				i, _ := r.Horizon.Index(day(on))
				if c := x.Cause(why, i); c == nil || c.Away != r.Plan.Aways[0] || !x.Days.Has(i) || !x.Shown.Has(i) {
					t.Errorf("in phase %d water on %s has no such reason: %+v", phase, on, x.Causes)
				}
			}
		}
	}
}

// TestSomebodyInTheHouseIsNotNobody: while somebody stands in, the enclosure is not
// left alone, though nothing is done there; the limit is the usual one.
func TestSomebodyInTheHouseIsNotNobody(t *testing.T) {
	for cover, want := range map[string]prove.Limit{"": {Days: 8, Alone: true}, "  cover = \"ben\"\n": {Days: 3}} {
		r := compiled(t, usual.sheet()+people+rounds+away("lead", "2027-07-10", "2027-07-30", cover)+box("ash", looked), "", day("2027-05-01"))
		from, _ := r.Horizon.Index(day("2027-07-10"))
		empty := r.Horizon.New()
		empty.AddRun(from, from+9, r.Horizon.Days)
		for x := range r.Roster.All() {
			x.Days.Subtract(empty)
		}
		for _, p := range prove.Of(r.Roster, 0) {
			if p.Name.Name == "water" && p.Limit != want {
				t.Errorf("cover %q: the limit is %+v, and want %+v", cover, p.Limit, want)
			}
		}
	}
}

// TestHeldWhileAway: a day on which a need does not hold is no day of somebody at the
// enclosure: one that is passed over ends no time of nobody.
func TestHeldWhileAway(t *testing.T) {
	for held, want := range map[int]bool{0: false, 1: true} {
		care := "  care \"mist\" {\n    every = \"day\"\n  }\n  care \"look\" {\n    every = \"day\"\n    round = \"morning\"\n  }\n"
		text := strings.Replace(limits{look: 1, unattended: 8}.sheet(), "need \"look\"", "need \"moisture\"", 1)
		r := compiled(t, text+people+rounds+away("lead", "2027-07-10", "2027-07-17", "")+box("ash", care), "", day("2027-05-01"))
		from, _ := r.Horizon.Index(day("2027-07-10"))
		for x := range r.Roster.All() {
			if x.Name == "look" { // somebody looks on one day only
				x.Days = r.Horizon.New()
				x.Days.Add(from + 3)
			}
		}
		if held > 0 {
			r.Lives[0].Groups[0].Holds = []life.Hold{{From: day("2027-07-13"), Until: day("2027-07-14"), State: &schema.State{May: [schema.Rows]schema.May{schema.RowMist: {Manner: schema.Held}}}}}
		}
		for _, p := range prove.Of(r.Roster, 0) {
			if p.Name.Name == "moisture" && p.Met() != want {
				t.Errorf("held on %d days: met is %v\n%+v", held, p.Met(), p)
			}
		}
	}
}

// feeds is what the last feeds showed: the days of each entry until a day.
type feeds struct {
	days        map[string][]string
	from, until civil.Date
}

func (f feeds) Days(id identity.Identity) (on func(civil.Date) bool, from, until civil.Date, ok bool) {
	days, ok := f.days[id.Told()]
	return func(d civil.Date) bool { return slices.Contains(days, d.String()) }, f.from, f.until, ok
}

// TestToldDaysCount: where a plan is edited, what the last feeds showed before today
// is what was done, and not what the new text would have had.
func TestToldDaysCount(t *testing.T) {
	told := func(days ...string) roster.Told {
		return feeds{map[string][]string{"ash/water": days}, day("2027-03-01"), day("2027-06-01")}
	}
	for _, c := range []struct {
		name, from, log string
		every           int // 3 where nothing is said
		told            roster.Told
		want            string
	}{
		{name: "nothing was shown yet", from: "2027-05-03"},
		{name: "shown until the day before yesterday", from: "2027-05-02", told: told("2027-04-26", "2027-04-29")},
		{name: "a day too long", from: "2027-05-03", told: told("2027-04-26", "2027-04-29"), want: `every = "3 days" | error [water-gap] ash: 4 days without fresh water, from Thu 29 Apr 2027 to Mon 3 May 2027
  limit: 3 days at the longest, need "water" of fixture
  write: 2027-05-02 as from, or sooner: what calendars showed until today counts
`},
		{name: "due today", from: "2027-05-02", told: told("2027-04-28"), want: `every = "3 days" | error [water-gap] ash: 4 days without fresh water, from Wed 28 Apr 2027 to Sun 2 May 2027
  limit: 3 days at the longest, need "water" of fixture
  write: 2027-05-01 as from, or sooner: what calendars showed until today counts
`},
		{name: "too long already", from: "2027-05-01", told: told("2027-04-27"), want: `every = "3 days" | urgent [need-missed] ash: 4 days without fresh water, from Tue 27 Apr 2027 to Sat 1 May 2027
  limit: 3 days at the longest, need "water" of fixture
  write: do it now, look closely at the animals, and log done water; else it comes first in the round of Sat 1 May
`},
		{name: "the log has it", from: "2027-05-03", told: told("2027-04-26", "2027-04-29"), log: "2027-04-30 ash done water\n"},
		{name: "another entry", from: "2027-05-03", told: feeds{map[string][]string{"ash/look": {"2027-04-20"}}, day("2027-03-01"), day("2027-06-01")}},
		{name: "skipped since", from: "2027-05-04", told: told("2027-04-28", "2027-04-30"), log: "2027-04-30 ash skipped water\n"},
		{name: "too rare later", from: "2027-05-02", every: 4, told: told("2027-04-29"), want: `every = "4 days" | error [water-gap] ash: 4 days without fresh water, again and again
  limit: 3 days at the longest, need "water" of fixture
  write: every 3 days, or more often
`},
		{name: "known until long ago", from: "2027-05-03", told: feeds{map[string][]string{"ash/water": {"2027-03-05"}}, day("2027-03-01"), day("2027-03-06")}, want: `every = "3 days" | urgent [need-missed] ash: 59 days without fresh water, from Fri 5 Mar 2027 to Mon 3 May 2027
  limit: 3 days at the longest, need "water" of fixture
  write: do it now, look closely at the animals, and log done water; else it comes first in the round of Mon 3 May
`},
	} {
		t.Run(c.name, func(t *testing.T) {
			text := limits{water: 3}.sheet() + people + rounds + box("ash", watered(cmp.Or(c.every, 3), day(c.from)))
			p, loaded := planned.Sound(t, planned.With(text, c.log))
			r := compile.From(compile.Input{Plan: p, Loaded: loaded, Now: day("2027-05-01").At(12*60, p.Location), Told: c.told})
			if got := said(r, found(r)); got != c.want {
				t.Errorf("it says\n%s\nwant\n%s", got, c.want)
			}
		})
	}
}

// TestADayLess is the control of all that says nothing: a plan that has just what its
// sheet asks for is sound, and is not once any of its limits is a day lower.
func TestADayLess(t *testing.T) {
	const care = "  care \"look\" {\n    every = \"day\"\n  }\n  care \"water\" {\n    every = \"3 days\"\n  }\n  feeding \"pair\" {\n    every      = \"7 days\"\n    from       = \"2027-01-04\"\n    leftovers  = \"2 days\"\n    per_animal = 1\n    prey       = \"cricket small\"\n  }\n"
	just := limits{look: 4, water: 3, food: 7, leftovers: 2, unattended: 8}
	alone := away("lead", "2027-07-10", "2027-07-17", "")
	visited := away("lead", "2027-07-10", "2027-08-01", "  cover = \"ben\"\n  visits = [\"tue\", \"sat\"]\n")
	for _, c := range []struct {
		name, blocks, rule, limit string
		lower                     func(*limits)
	}{
		{"water", "", "water-gap", `2 days at the longest, need "water" of fixture`, func(l *limits) { l.water-- }},
		{"food", "", "food-gap", `6 days at the longest for stage adult, need "food" of fixture`, func(l *limits) { l.food-- }},
		{"leftovers", "", "leftovers-late", `1 day at the longest for stage adult, need "leftovers" of fixture`, func(l *limits) { l.leftovers-- }},
		{"look", visited, "lid-unchecked", `3 days at the longest, need "look" of fixture`, func(l *limits) { l.look, l.unattended = l.look-1, 6 }},
		{"unattended", alone, "water-gap", "7 days at the longest while nobody comes, unattended of fixture", func(l *limits) { l.unattended, l.food, l.look = l.unattended-1, 20, 20 }},
		{"half of unattended", visited, "water-gap", `3 days at the longest, need "water" of fixture`, func(l *limits) { l.unattended, l.food, l.look = 6, 20, 20 }},
	} {
		l := just
		if c.blocks != "" {
			l.food, l.leftovers = 40, 9
		}
		r := compiled(t, l.sheet()+people+rounds+c.blocks+box("ash", care), "", day("2027-05-01"))
		if all := found(r); len(all) > 0 {
			t.Errorf("%s: it is not sound:\n%s", c.name, said(r, all))
		}
		c.lower(&l)
		r = compiled(t, l.sheet()+people+rounds+c.blocks+box("ash", care), "", day("2027-05-01"))
		all := found(r)
		if !slices.ContainsFunc(all, func(f finding.Finding) bool {
			return f.Rule.ID == c.rule && f.Limit == c.limit && strings.Contains(f.Source, "trial") == strings.Contains(f.Limit, "unattended")
		}) {
			t.Errorf("%s a day less, and it is not found:\n%s", c.name, said(r, all))
		}
	}
}

// TestOneCauseIsSaidOnce: what one absence leaves undone in several enclosures is one
// finding at that absence, and so is what one line of a template has too rarely.
func TestOneCauseIsSaidOnce(t *testing.T) {
	boxes := func(care string) string { return box("ash", care) + box("birch", care) + box("cedar", care) }
	r := compiled(t, limits{look: 4, water: 3}.sheet()+people+rounds+away("lead", "2027-07-10", "2027-07-20", "")+boxes(looked), "", day("2027-05-01"))
	all := found(r)
	if len(all) != 1 || len(all[0].Also) != 2 || len(all[0].Of) != 3 || all[0].Where != "all 3 enclosures" || r.Plan.Files.Of(all[0].At)[:4] != "away" {
		t.Errorf("said more than once, or at another line:\n%s", said(r, all))
	}
	template := "template \"tub\" {\n  species = \"fixture\"\n  round   = \"evening\"\n  housing {\n    inside = \"60 x 40 x 40 cm\"\n    lid    = \"solid, latched\"\n  }\n  animals \"pair\" {\n    count = 2\n    stage = \"adult\"\n  }\n" + watered(4, day("2027-05-01")) + "}\n"
	for _, name := range []string{"ash", "birch", "cedar"} {
		template += "enclosure \"" + name + "\" {\n  template = \"tub\"\n}\n"
	}
	r = compiled(t, limits{water: 3}.sheet()+people+rounds+template, "", day("2027-05-01"))
	if all := found(r); len(all) != 1 || len(all[0].Also) != 0 || all[0].Where != "all 3 enclosures" || r.Plan.Files.Of(all[0].At) != `"4 days"` {
		t.Errorf("said more than once, or at another line:\n%s", said(r, all))
	}
}

// TestHowBadItIs: a need is as pressing as its sheet says, and what is never met is an
// error whatever the sheet says.
func TestHowBadItIs(t *testing.T) {
	for _, c := range []struct {
		care, need string
		want       finding.Severity
	}{
		{watered(4, day("2027-05-01")), "", finding.Error},
		{watered(4, day("2027-05-01")), "    severity = \"caution\"\n", finding.Caution},
		{"", "    severity = \"caution\"\n", finding.Error},
	} {
		text := strings.Replace(limits{water: 3}.sheet(), "    longest", c.need+"    longest", 1)
		r := compiled(t, text+people+rounds+box("ash", c.care), "", day("2027-05-01"))
		if all := found(r); len(all) != 1 || all[0].Severity != c.want {
			t.Errorf("%q and %q: want one %s\n%s", c.care, c.need, c.want, said(r, all))
		}
	}
}

// TestCareOfTheSheetIsFoundAtTheEnclosure: what the sheet has too rarely is no line of
// the plan's that could be changed.
func TestCareOfTheSheetIsFoundAtTheEnclosure(t *testing.T) {
	text := strings.Replace(limits{water: 3}.sheet(), "  need ", "  care \"water\" {\n    every = \"4 days\"\n    source = [\"fixture\"]\n  }\n  need ", 1)
	r := compiled(t, text+people+rounds+box("ash", ""), "", day("2027-05-01"))
	if all := found(r); len(all) != 1 || !strings.HasPrefix(r.Plan.Files.Of(all[0].At), "enclosure") {
		t.Errorf("said at another line:\n%s", said(r, all))
	}
}

// TestWhatAStandInDoesNotDo: somebody who comes every day tests no thermostat, so that
// no more visits mend it, only an earlier return.
func TestWhatAStandInDoesNotDo(t *testing.T) {
	text := strings.Replace(limits{water: 30}.sheet(), "need \"water\"", "need \"device-test\"", 1)
	care := "  climate {\n    heater \"mat\" {\n      power      = \"10 W\"\n      place      = \"side\"\n      thermostat = \"28 C\"\n    }\n  }\n  care \"device-test\" {\n    every = \"10 days\"\n  }\n"
	for to, want := range map[string]string{"2027-08-08": "", "2027-08-09": `to = "2027-08-09" | error [device-untested] ash: 31 days without a test of heater and thermostat, from Fri 9 Jul 2027 to Mon 9 Aug 2027
  limit: 30 days at the longest, need "device-test" of fixture
  write: back on 2027-08-08 at the latest: whoever stands in does not do this
  also: lead is away from Sat 10 Jul 2027 to Mon 9 Aug 2027, covered by ben, who does not do this
`} {
		if got := proven(t, text+people+rounds+away("lead", "2027-07-10", to, "  cover = \"ben\"\n")+box("ash", care), ""); got != want {
			t.Errorf("away until %s it says\n%s\nwant\n%s", to, got, want)
		}
	}
}

// Same is for compilations that know the one before.
func (feeds) Same(roster.Told, identity.Identity) bool { return false }
