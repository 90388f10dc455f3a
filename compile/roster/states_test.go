package roster_test

import (
	"strings"
	"testing"

	"vivary/compile/life"
	"vivary/schema"
	"vivary/schema/civil"
)

// pair is box ash with two groups.
func pair(blocks string) string {
	return strings.Replace(ash(blocks), one, one+strings.Replace(one, "only", "other", 1), 1)
}

// stateDays: what the animals' state takes out.
var stateDays = []example{
	{
		// Nothing that disturbs, and no meal, from the 5th on until the moult is logged; water
		// always. What goes with the meal of the 4th stays.
		title: "held until the moult",
		plan:  lone(ash(`feeding "only" { every = "day"; per_animal = 1; prey = "cricket small" } care "water" { on = ["tue"] } care "weigh" { on = ["wed"] } care "spot-clean" { on = ["wed"] }`)),
		log:   "5 Jul ash premoult",
		now:   "7 Jul", from: "4 Jul", to: "8 Jul",
		want: `
			feed only: Sun 4 Jul; not Mon 5 Jul, held before a moult since 5 Jul 2027; not Tue 6 Jul, held before a moult since 5 Jul 2027; not Wed 7 Jul, held before a moult since 5 Jul 2027; not Thu 8 Jul, held before a moult since 5 Jul 2027
			leftovers only: Sun 4 Jul; Mon 5 Jul; not Tue 6 Jul, held before a moult since 5 Jul 2027; not Wed 7 Jul, held before a moult since 5 Jul 2027; not Thu 8 Jul, held before a moult since 5 Jul 2027
			water: Tue 6 Jul
			weigh: not Wed 7 Jul, held before a moult since 5 Jul 2027
			spot-clean: Wed 7 Jul`,
	},
	{
		// One of two groups is about to moult: the other is fed killed prey, since loose
		// crickets would find it too, and neither is weighed, since the box would be opened
		// for it.
		title: "a hold of one group",
		plan:  lone(pair(`feeding "only" { on = ["wed"]; per_animal = 1; prey = "cricket small" } feeding "other" { on = ["wed"]; per_animal = 1; prey = "cricket small" } care "weigh" { on = ["wed"] }`)),
		log:   "5 Jul ash other premoult",
		now:   "6 Jul", from: "6 Jul", to: "8 Jul",
		want: `
			feed only: Wed 7 Jul, killed
			feed other: not Wed 7 Jul, held before a moult since 5 Jul 2027
			weigh: not Wed 7 Jul, held before a moult since 5 Jul 2027`,
	},
	{
		// From 2 to 7 July there are six occasions, of which the second, fourth and sixth are
		// left out; misting is of the whole enclosure.
		title: "half of the misting",
		plan:  ash(`care "mist" { every = "day" } care "water" { every = "day" } season "rest" { from = "2 jul"; to = "7 jul"; misting = "half" }`),
		now:   "1 Jul", from: "1 Jul", to: "9 Jul",
		want: `
			mist: Thu 1 Jul; Fri 2 Jul; not Sat 3 Jul, halved rest; Sun 4 Jul; not Mon 5 Jul, halved rest; Tue 6 Jul; not Wed 7 Jul, halved rest; Thu 8 Jul; Fri 9 Jul
			water: Thu 1 Jul; Fri 2 Jul; Sat 3 Jul; Sun 4 Jul; Mon 5 Jul; Tue 6 Jul; Wed 7 Jul; Thu 8 Jul; Fri 9 Jul`,
	},
	{
		// The season began before the window: it is counted from its first day, 20 April, and
		// so every second Wednesday is left out from the 28th, the second, on.
		title: "a season that began before the window",
		plan:  ash(`care "mist" { on = ["wed"] } season "rest" { from = "20 apr"; to = "31 jul"; misting = "half" }`),
		now:   "1 Jul", from: "28 Apr", to: "13 May",
		want: `mist: not Wed 28 Apr, halved rest; Wed 5 May; not Wed 12 May, halved rest`,
	},
	{
		title: "a season without meals",
		plan:  ash(`feeding "only" { on = ["mon"]; per_animal = 1; prey = "cricket small"; gut_load = true } season "rest" { from = "5 jul"; to = "11 jul"; feeding = "none" }`),
		now:   "1 Jul", from: "27 Jun", to: "13 Jul",
		want: `
			feed only: Mon 28 Jun; not Mon 5 Jul, held rest; Mon 12 Jul
			leftovers only: Tue 29 Jun; not Tue 6 Jul, held rest; Tue 13 Jul
			gut-load only: Sun 27 Jun; not Sun 4 Jul, held rest; Sun 11 Jul`,
	},
	{
		// Each day says the hold that takes it out.
		title: "two holds",
		plan:  lone(ash(`feeding "only" { every = "day"; per_animal = 1; prey = "cricket small" } season "rest" { from = "2 jul"; to = "3 jul"; feeding = "none" }`)),
		log:   "5 Jul ash premoult",
		now:   "5 Jul", from: "1 Jul", to: "6 Jul",
		want: `feed only: Thu 1 Jul; not Fri 2 Jul, held rest; not Sat 3 Jul, held rest; Sun 4 Jul; not Mon 5 Jul, held before a moult since 5 Jul 2027; not Tue 6 Jul, held before a moult since 5 Jul 2027`,
	},
}

func TestStates(t *testing.T) { each(t, stateDays) }

// TestWhatIsHeld: the days that are planned and held are told for any days, also those
// before the window, and with what goes with a meal by as many days later.
func TestWhatIsHeld(t *testing.T) {
	plan := house(ash(`feeding "only" { on = ["mon"]; per_animal = 1; prey = "cricket small"; gut_load = true } care "mist" { on = ["wed"] } season "rest" { from = "20 jun"; to = "6 jul"; feeding = "none"; misting = "half" }`))
	r := compiled(t, plan, "", on("1 Oct"))
	held := func(name string, from, until civil.Date) string {
		var out []string
		find(t, r, "ash", name).EachHeld(from, until, func(d civil.Date) { out = append(out, short(d)) })
		return strings.Join(out, "; ")
	}
	for name, want := range map[string]string{
		"feed only":      "Mon 21 Jun; Mon 28 Jun; Mon 5 Jul",
		"leftovers only": "Tue 22 Jun; Tue 29 Jun; Tue 6 Jul",
		"gut-load only":  "Sun 20 Jun; Sun 27 Jun; Sun 4 Jul",
		"mist":           "Wed 30 Jun",
	} {
		if got := held(name, on("1 Jun"), on("1 Oct")); got != want {
			t.Errorf("%s is held on %s\nwant %s", name, got, want)
		}
	}
	if got := held("mist", on("20 Jun"), on("30 Jun")); got != "" {
		t.Errorf("until a day that is held: %s", got)
	}
	if got := held("mist", on("30 Jun"), on("1 Jul")) + ", " + held("mist", on("1 Jul"), on("1 Aug")) + ", " + held("feed only", on("28 Jun"), on("5 Jul")); got != "Wed 30 Jun, , Mon 28 Jun" {
		t.Errorf("from a day until another: %s", got)
	}
}

// TestWhatIsHeldEndsWithTheSeason: the Wednesday that follows a season is not of
// it.
func TestWhatIsHeldEndsWithTheSeason(t *testing.T) {
	plan := house(ash(`feeding "only" { on = ["wed"]; per_animal = 1; prey = "cricket small" } care "mist" { on = ["wed"] } season "rest" { from = "20 jun"; to = "29 jun"; feeding = "none"; misting = "half" }`))
	r := compiled(t, plan, "", on("1 Jul"))
	for name, want := range map[string]int{"feed only": 1, "mist": 0} {
		n := 0
		find(t, r, "ash", name).EachHeld(on("1 Jun"), on("1 Aug"), func(civil.Date) { n++ })
		if n != want {
			t.Errorf("%s is held on %d days, want %d", name, n, want)
		}
	}
}

// TestUsualUntil: what is held until something is logged, or done otherwise until then,
// says since when, by the first of two; a hold with an end is none of these. The other
// eats killed prey, and so do all of whom one is in such a state.
func TestUsualUntil(t *testing.T) {
	plan := pair(`care "weigh" { every = "day" } care "water" { every = "day" } care "mist" { every = "day" } feeding "only" { on = ["mon"]; per_animal = 1; prey = "cricket small" }`)
	each, some := lone(plan), plan
	for _, c := range []struct{ plan, log, name, want string }{
		{each, "5 Jul ash other premoult\n3 Jul ash only premoult", "weigh", "Sat 3 Jul"},
		{each, "5 Jul ash other premoult\n6 Jul ash only premoult", "weigh", "Mon 5 Jul"},
		{each, "5 Jul ash other premoult\n6 Jul ash only premoult", "feed only", "Mon 5 Jul"},
		{each, "6 Jul ash only premoult", "feed only", "Tue 6 Jul"},
		{each, "6 Jul ash only premoult", "leftovers only", "Wed 7 Jul"},
		{each, "5 Jul ash other premoult", "feed only", "Mon 5 Jul"},
		{each, "5 Jul ash other premoult", "mist", "Mon 5 Jul"},
		{each, "5 Jul ash other premoult", "water", "Mon 5 Jul"},
		{each, "5 Jul ash only moult", "feed only", ""},
		{each, "5 Jul ash only moult", "mist", ""},
		{some, "5 Jul ash only premoult", "feed only", "Mon 5 Jul"},
		{some, "5 Jul ash only premoult", "leftovers only", "Mon 5 Jul"},
		{some, "5 Jul ash only premoult", "weigh", "Mon 5 Jul"},
	} {
		r := compiled(t, house(c.plan), logged(c.log), on("7 Jul"))
		got := ""
		if d, open := find(t, r, "ash", c.name).UsualUntil(); open {
			got = short(d)
		}
		if got != c.want {
			t.Errorf("%q: %s is as usual until %q, want %q", c.log, c.name, got, c.want)
		}
	}
}

// TestUsualUntilByTheTable: of an open state it is the cell that says whether care is as
// usual: where it comes from says nothing, and days that are only waited for are left out
// one by one.
func TestUsualUntilByTheTable(t *testing.T) {
	for want, cells := range map[string][]schema.May{
		"":          {{}, {Source: "K1"}, {From: 3}},
		"Thu 1 Jul": {{Manner: schema.Hatch}, {Manner: schema.Held}, {Words: "far end only"}, {Every: 3}},
	} {
		for _, cell := range cells {
			table := &schema.State{Name: "random"}
			table.May[schema.RowMist] = cell
			r := lived(t, house(ash(`care "mist" { every = "day" }`)), "1 Jul", func(l *life.Enclosure) {
				l.Groups[0].Holds = []life.Hold{{From: on("1 Jul"), Until: on("1 Dec"), Open: true, State: table, Why: "random"}}
			})
			got := ""
			if d, open := find(t, r, "ash", "mist").UsualUntil(); open {
				got = short(d)
			}
			if got != want {
				t.Errorf("%+v: as usual until %q, want %q", cell, got, want)
			}
		}
	}
}

// roundDays: what becomes of days on which the round is not held.
var roundDays = []example{
	{
		// The round is on Mondays. Tuesday's is moved by a day, Thursday's by three days
		// back and Friday's by three on; Wednesday's lies two days from any.
		title: "to the nearest round within the window",
		plan: mondays + ash(`care "weigh" { on = ["tue"]; round = "mondays"; window = "1 day" } care "count" { on = ["thu"]; round = "mondays"; window = "3 days" }`+
			` care "handle" { on = ["fri"]; round = "mondays"; window = "3 days" } care "dish" { on = ["wed"]; round = "mondays"; window = "1 day" } care "heat" { on = ["mon"]; round = "mondays" }`),
		now: "1 Jul", from: "5 Jul", to: "12 Jul",
		want: `
			weigh: Mon 5 Jul, moved; not Tue 6 Jul, no round; Mon 12 Jul, moved
			count: Mon 5 Jul, moved; not Thu 8 Jul, no round; Mon 12 Jul, moved
			handle: Mon 5 Jul, moved; not Fri 9 Jul, no round; Mon 12 Jul, moved
			dish: not Wed 7 Jul, no round
			heat: Mon 5 Jul; Mon 12 Jul`,
	},
	{
		// Wednesday lies as far from Monday as from Friday: it is the earlier.
		title: "the earlier of two",
		plan:  "round \"some\" {\n  at = \"20:30\"\n  on = [\"mon\", \"fri\"]\n}\n" + ash(`care "weigh" { on = ["wed"]; window = "5 days" } care "count" { on = ["thu"]; window = "5 days" }`),
		now:   "1 Jul", from: "5 Jul", to: "9 Jul",
		want: `
			weigh: Mon 5 Jul, moved; not Wed 7 Jul, no round
			count: not Thu 8 Jul, no round; Fri 9 Jul, moved`,
	},
	{
		// What the sheet brings may be moved by three days, whatever the keeper's round. The
		// first meal of what moulted on the 30th is on the 7th, and nobody is soft by then.
		title: "the sheet's own care",
		plan:  "NEED  care \"weigh\" {\n    on = [\"fri\"]\n  }\n  care \"count\" {\n    on = [\"thu\"]\n  }\n  care \"dish\" {\n    on = [\"sat\"]\n    window = \"1 day\"\n  }\nNEEDround \"mondays\" {\n  at = \"20:30\"\n  on = [\"mon\"]\n}\n" + ash(""),
		log:   "30 Jun ash moult 2",
		now:   "6 Jul", from: "7 Jul", to: "20 Jul",
		want: `
			first-meal/2027-06-30: not Wed 7 Jul, no round; Mon 12 Jul, moved
			weigh: not Fri 9 Jul, no round; Mon 12 Jul, moved; not Fri 16 Jul, no round; Mon 19 Jul, moved
			count: not Thu 8 Jul, no round; Mon 12 Jul, moved; not Thu 15 Jul, no round; Mon 19 Jul, moved
			dish: not Sat 10 Jul, no round; not Sat 17 Jul, no round`,
	},
	{
		// What the log brings is never done before its day, and never lost: the first meal of
		// the 8th waits for the round of the 15th, and what was to be seen to at once too.
		title: "what the log brings waits for the next round",
		plan:  "round \"fortnightly\" {\n  at = \"20:30\"\n  on = [\"1st\", \"15th\"]\n}\n" + meals(`on = ["mon"]; killed = true`),
		log:   "1 Jul ash moult 2\n3 Jul ash mites",
		now:   "3 Jul", from: "1 Jul", to: "20 Jul",
		want: `
			moult/2027-07-01: Thu 1 Jul
			first-meal/2027-07-01: not Thu 8 Jul, no round; Thu 15 Jul, moved
			mites/2027-07-03: not Sat 3 Jul, no round; not Sat 10 Jul, no round; Thu 15 Jul, moved; not Sat 17 Jul, no round`,
	},
	{
		// It is weighed on Tuesday in the evening round, and so need not be on Monday.
		title: "another round of the care is held",
		plan:  mondays + ash(`care "weigh" { on = ["tue"]; round = ["mondays", "evening"]; window = "1 day" } care "count" { on = ["tue"]; round = ["mondays"]; window = "1 day" }`),
		now:   "1 Jul", from: "5 Jul", to: "8 Jul",
		want: `
			weigh: Tue 6 Jul
			count: Mon 5 Jul, moved; not Tue 6 Jul, no round`,
	},
	{
		// From the 12th it is three days to the 15th, from the 11th four.
		title: "how far the sheet's own care is moved",
		plan:  "NEED  care \"weigh\" {\n    on = [\"12th\"]\n  }\n  care \"count\" {\n    on = [\"11th\"]\n  }\nNEEDround \"fifteenth\" {\n  at = \"20:30\"\n  on = [\"15th\"]\n}\n" + ash(""),
		now:   "1 Jul", from: "8 Jul", to: "20 Jul",
		want: `
			weigh: not Mon 12 Jul, no round; Thu 15 Jul, moved
			count: not Sun 11 Jul, no round`,
	},
	{
		// The meal is moved from Wednesday to Tuesday's round. On Wednesday there is none to
		// look for leftovers, and to look on the day of the meal is no look at all.
		title: "leftovers of a moved meal",
		plan:  "round \"some\" {\n  at = \"20:30\"\n  on = [\"mon\", \"tue\"]\n}\n" + ash(`feeding "only" { on = ["wed"]; window = "1 day"; per_animal = 1; prey = "cricket small" }`),
		now:   "1 Jul", from: "5 Jul", to: "9 Jul",
		want: `
			feed only: Tue 6 Jul, moved; not Wed 7 Jul, no round
			leftovers only: not Wed 7 Jul, no round; not Thu 8 Jul, no round`,
	},
}

func TestRounds(t *testing.T) { each(t, roundDays) }

// TestMovedIsSaid: an entry whose days are not those of its rules says so, and so does
// what goes with it.
func TestMovedIsSaid(t *testing.T) {
	r := compiled(t, house(mondays, ash(`care "weigh" { on = ["tue"]; round = "mondays"; window = "1 day" } care "heat" { on = ["mon"]; round = "mondays" } feeding "only" { on = ["tue"]; round = "mondays"; window = "7 days"; per_animal = 1; prey = "cricket small" }`)), "", on("1 Jul"))
	for name, want := range map[string]bool{"weigh": true, "heat": false, "feed only": true, "leftovers only": true} {
		if got := find(t, r, "ash", name).Moved; got != want {
			t.Errorf("%s: moved %v", name, got)
		}
	}
}

// TestOffRoundIsSaidOnce: care of the keeper's own that falls where there is no round,
// and may not be moved, is said with its first day from today on; the sheet's is not.
func TestOffRoundIsSaidOnce(t *testing.T) {
	const care = `care "weigh" { on = ["tue"]; round = "mondays" }`
	for text, want := range map[string]string{
		house(mondays, ash(care)): "weigh is due on Tuesdays, when there is no Mondays round",
		house(mondays, ash(`care "weigh" { on = ["tue"]; round = "mondays"; window = "1 day" }`)):                   "",
		with("care \"dish\" {\n on = [\"tue\"]\n round = \"mondays\"\n window = \"0 days\"\n}\n", mondays, ash("")): "",
	} {
		r := compiled(t, text, "", on("1 Jul"))
		said := ""
		for _, f := range r.Roster.Findings {
			said += f.Text
			if line(r.Plan.Files, f.Also[0].At) != `round "mondays" {` {
				t.Errorf("the round is said at %s", line(r.Plan.Files, f.Also[0].At))
			}
		}
		if said != want {
			t.Errorf("said %q\nwant %q", said, want)
		}
	}
}

// TestRoundOfCare: care is done in the rounds that it names, at its own times, else in
// the round of its enclosure, of the room, or in the first that there is.
func TestRoundOfCare(t *testing.T) {
	const rounds = "round \"morning\" {\n  at = \"08:00\"\n}\nround \"noon\" {\n  at = \"12:00\"\n}\nround \"evening\" {\n  at = \"19:30\"\n}\nround \"some\" {\n  at = \"15:00\"\n  on = [\"mon\"]\n}\n"
	room := func(s string) string { return strings.Replace(s, "  housing", "  room = \"west\"\n  housing", 1) }
	own := func(s string) string { return strings.Replace(s, "  housing", "  round = \"noon\"\n  housing", 1) }
	const west = "room \"west\" {\n  temperature = \"21 to 24 C\"\n  round       = \"evening\"\n}\n"
	for _, c := range []struct{ text, want string }{
		{rounds + ash(`care "mist" { every = "day" }`), "morning 08:00"},
		{rounds + west + room(ash(`care "mist" { every = "day" }`)), "evening 19:30"},
		{rounds + west + own(room(ash(`care "mist" { every = "day" }`))), "noon 12:00"},
		{rounds + ash(`care "mist" { every = "day"; round = ["evening", "noon"] }`), "evening 19:30, noon 12:00"},
		{rounds + ash(`care "mist" { every = "day"; at = ["12:00", "10:15"] }`), "noon 12:00, at-10:15 10:15"},
		{rounds + ash(`care "mist" { cron = "30 19,21 * * *" }`), "evening 19:30, at-21:30 21:30"},
		{rounds + ash(`care "mist" { every = "day"; at = "15:00" }`), "at-15:00 15:00"}, // the other is not held every day
		{ash(`care "mist" { every = "day" }`), "daily 19:30"},
	} {
		var got []string
		r := compiled(t, house(c.text), "", on("1 Jul"))
		for e := range r.Roster.All() {
			got = append(got, e.Round.Name.V+" "+e.At().String())
		}
		if strings.Join(got, ", ") != c.want {
			t.Errorf("%s\nis done in %q, want %q", c.text, got, c.want)
		}
		last := civil.Clock(0)
		for _, x := range r.Roster.Rounds {
			if x.Clock.V < last && x.Name.V != "some" && last != 19*60+30 {
				t.Errorf("the round at %s stands after one at %s", x.Clock.V, last)
			}
			last = x.Clock.V
		}
	}
}

// TestWhose: an entry is of the keeper that the care names, else of the round's, else
// of the only one there is.
func TestWhose(t *testing.T) {
	for _, c := range []struct{ text, want string }{
		{staff + ash(`care "mist" { every = "day" }`), "lead"},
		{staff + ash(`care "mist" { every = "day"; keeper = "sitter" }`), "sitter"},
		{"keeper \"kim\" {\n}\n" + ash(`care "mist" { every = "day" }`), "kim"},
		{"keeper \"kim\" {\n}\nkeeper \"sam\" {\n}\n" + ash(`care "mist" { every = "day" }`), ""},
		{ash(`care "mist" { every = "day" }`), ""},
	} {
		r := compiled(t, house(c.text), "", on("1 Jul"))
		e := find(t, r, "ash", "mist")
		if who, there := r.Roster.Doer(e, 0); e.Keeper != c.want || who != c.want || !there {
			t.Errorf("%s\nis of %q and done by %q", c.text, e.Keeper, who)
		}
	}
}
