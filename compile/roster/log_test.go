package roster_test

import (
	"strings"
	"testing"

	"vivary/compile"
	"vivary/compile/identity"
	"vivary/compile/roster"
	"vivary/internal/planned"
	"vivary/schema/civil"
)

// logDays: what the log says of care and meals.
var logDays = []example{
	{
		// Not done today: it is done tomorrow, and says when it was done last.
		title: "skipped today",
		plan:  water(`every = "3 days"; from = "2027-06-01"`),
		log:   "1 Jul ash skipped water",
		now:   "1 Jul", from: "28 Jun", to: "7 Jul",
		want: `water: Mon 28 Jun; not Thu 1 Jul, skipped; Fri 2 Jul, caught up, last 28 Jun; Sun 4 Jul; Wed 7 Jul`,
	},
	{
		// It comes back every day until it is done.
		title: "skipped two days ago",
		plan:  water(`every = "3 days"; from = "2027-06-01"`),
		log:   "1 Jul ash skipped water",
		now:   "3 Jul", from: "1 Jul", to: "7 Jul",
		want: `water: not Thu 1 Jul, skipped; Sat 3 Jul, caught up, last 28 Jun; Sun 4 Jul; Wed 7 Jul`,
	},
	{
		// The 4th is over, and the log is silent of it: it was done.
		title: "its next day has come",
		plan:  water(`every = "3 days"; from = "2027-06-01"`),
		log:   "1 Jul ash skipped water",
		now:   "5 Jul", from: "1 Jul", to: "7 Jul",
		want: `water: not Thu 1 Jul, skipped; Sun 4 Jul; Wed 7 Jul`,
	},
	{
		// On the 4th it is due anyway, and catches up with that of the 1st.
		title: "its next day is today",
		plan:  water(`every = "3 days"; from = "2027-06-01"`),
		log:   "1 Jul ash skipped water",
		now:   "4 Jul", from: "1 Jul", to: "7 Jul",
		want: `water: not Thu 1 Jul, skipped; Sun 4 Jul, caught up, last 28 Jun; Wed 7 Jul`,
	},
	{
		title: "last done on the window's first day",
		plan:  water(`every = "64 days"; from = "2027-04-28"`),
		log:   "1 Jul ash skipped water",
		now:   "1 Jul", from: "28 Apr", to: "10 Jul",
		want: `water: Wed 28 Apr; not Thu 1 Jul, skipped; Fri 2 Jul, caught up, last 28 Apr`,
	},
	{
		title: "skipped on the window's first day",
		plan:  water(`every = "100 days"; from = "2027-04-28"`),
		log:   "28 Apr ash skipped water",
		now:   "1 Jul", from: "28 Apr", to: "10 Jul",
		want: `water: not Wed 28 Apr, skipped; Thu 1 Jul, caught up`,
	},
	{
		title: "done on the window's first day",
		plan:  water(`on = ["mon"]`),
		log:   "28 Apr ash done water",
		now:   "1 Jul", from: "28 Apr", to: "4 May",
		want: `water: Wed 28 Apr, done; Mon 3 May`,
	},
	{
		// Of two that were skipped one is caught up.
		title: "skipped twice",
		plan:  water(`every = "3 days"; from = "2027-06-01"`),
		log:   "28 Jun ash skipped water\n1 Jul ash skipped water",
		now:   "2 Jul", from: "25 Jun", to: "4 Jul",
		want: `water: Fri 25 Jun; not Mon 28 Jun, skipped; not Thu 1 Jul, skipped; Fri 2 Jul, caught up, last 25 Jun; Sun 4 Jul`,
	},
	{
		// On that day it was not due: nothing is owed.
		title: "skipped on another day",
		plan:  water(`every = "3 days"; from = "2027-06-01"`),
		log:   "30 Jun ash skipped water",
		now:   "1 Jul", from: "28 Jun", to: "4 Jul",
		want: `water: Mon 28 Jun; Thu 1 Jul; Sun 4 Jul`,
	},
	{
		// Done in the meantime, as the log says.
		title: "done since",
		plan:  water(`every = "7 days"; from = "2027-06-03"`),
		log:   "24 Jun ash skipped water\n26 Jun ash done water",
		now:   "28 Jun", from: "17 Jun", to: "8 Jul",
		want: `water: Thu 17 Jun; not Thu 24 Jun, skipped; Sat 26 Jun, done; Thu 1 Jul; Thu 8 Jul`,
	},
	{
		// Done today, where it was not due: it stands in no list of today.
		title: "done today",
		plan:  water(`every = "7 days"; from = "2027-06-03"`),
		log:   "28 Jun ash done water",
		now:   "28 Jun", from: "24 Jun", to: "1 Jul",
		want: `water: Thu 24 Jun; Thu 1 Jul`,
	},
	{
		title: "a meal that was given between two",
		plan:  meals(`on = ["mon"]`),
		log:   "24 Jun ash fed",
		now:   "28 Jun", from: "21 Jun", to: "28 Jun",
		want: `
			feed only: Mon 21 Jun; Thu 24 Jun, done; Mon 28 Jun
			leftovers only: Tue 22 Jun; Fri 25 Jun`,
	},
	{
		// Two lines say that a meal was given: it is the later.
		title: "the last of two",
		plan:  meals(`on = ["mon"]`),
		log:   "23 Jun ash fed\n24 Jun ash done feeding",
		now:   "28 Jun", from: "21 Jun", to: "28 Jun",
		want: `feed only: Mon 21 Jun; Thu 24 Jun, done; Mon 28 Jun`,
	},
	{
		title: "the last of two, the other way round",
		plan:  meals(`on = ["mon"]`),
		log:   "23 Jun ash done feeding\n24 Jun ash fed",
		now:   "28 Jun", from: "21 Jun", to: "28 Jun",
		want: `feed only: Mon 21 Jun; Thu 24 Jun, done; Mon 28 Jun`,
	},
	{
		// The keeper had gone, and says that it was done: what was seen is a fact.
		title: "done while away",
		plan:  staff + away("lead", "5 Jul", "10 Jul", "") + water(`every = "day"`),
		log:   "7 Jul ash done water",
		now:   "8 Jul", from: "6 Jul", to: "8 Jul",
		want: `water: not Tue 6 Jul, nobody 5 Jul; Wed 7 Jul, by ; not Thu 8 Jul, nobody 5 Jul`,
	},
	{
		// The meal of Monday is caught up on Thursday. That of the coming Monday would be the
		// fourth day after it, and half of a week is four: it stands.
		title: "a meal that is caught up",
		plan:  hungry("20 days", "3 days", meals(`on = ["mon"]`)),
		log:   "5 Jul ash skipped feeding",
		now:   "8 Jul", from: "28 Jun", to: "19 Jul",
		want: `
			feed only: Mon 28 Jun; not Mon 5 Jul, skipped; Thu 8 Jul, caught up, last 28 Jun; Mon 12 Jul; Mon 19 Jul
			leftovers only: Tue 29 Jun; not Tue 6 Jul, skipped; Fri 9 Jul; Tue 13 Jul`,
	},
	{
		// Caught up on Friday it takes the place of Monday's: nothing is fed double.
		title: "nothing is fed double",
		plan:  hungry("20 days", "3 days", meals(`on = ["mon"]`)),
		log:   "5 Jul ash skipped feeding",
		now:   "9 Jul", from: "28 Jun", to: "19 Jul",
		want: `
			feed only: Mon 28 Jun; not Mon 5 Jul, skipped; Fri 9 Jul, caught up, last 28 Jun; not Mon 12 Jul, too soon; Mon 19 Jul
			leftovers only: Tue 29 Jun; not Tue 6 Jul, skipped; Sat 10 Jul; not Tue 13 Jul, too soon`,
	},
	{
		// The same where no need says how long they can wait.
		title: "nothing is fed double where no need is stated",
		plan:  meals(`on = ["mon"]`),
		log:   "5 Jul ash skipped feeding",
		now:   "9 Jul", from: "5 Jul", to: "19 Jul",
		want: `feed only: not Mon 5 Jul, skipped; Fri 9 Jul, caught up, last 28 Jun; not Mon 12 Jul, too soon; Mon 19 Jul`,
	},
	{
		// A hold that is over forbids nothing.
		title: "a meal that is caught up after a hold",
		plan:  meals(`on = ["mon"]`),
		log:   "1 Jun ash moult 2\n5 Jul ash skipped feeding",
		now:   "6 Jul", from: "28 Jun", to: "12 Jul",
		want: `feed only: Mon 28 Jun; not Mon 5 Jul, skipped; Tue 6 Jul, caught up, last 28 Jun; Mon 12 Jul`,
	},
	{
		// Nor does one that is still to come.
		title: "a meal that is caught up before a hold",
		plan:  ash(`feeding "only" { on = ["mon"]; per_animal = 1; prey = "cricket small" } season "rest" { from = "8 jul"; to = "11 jul"; feeding = "none" }`),
		log:   "5 Jul ash skipped feeding",
		now:   "7 Jul", from: "28 Jun", to: "12 Jul",
		want: `feed only: Mon 28 Jun; not Mon 5 Jul, skipped; Wed 7 Jul, caught up, last 28 Jun; Mon 12 Jul`,
	},
	{
		// Today it is forbidden by a hold that ends tomorrow.
		title: "a meal that is caught up on the last day of a hold",
		plan:  ash(`feeding "only" { on = ["mon"]; per_animal = 1; prey = "cricket small" } season "rest" { from = "7 jul"; to = "8 jul"; feeding = "none" }`),
		log:   "5 Jul ash skipped feeding",
		now:   "8 Jul", from: "28 Jun", to: "12 Jul",
		want: `feed only: Mon 28 Jun; not Mon 5 Jul, skipped; Mon 12 Jul`,
	},
	{
		// Of eight days half are four: four days after it the next one stands.
		title: "half of the usual time",
		plan:  hungry("20 days", "3 days", meals(`every = "8 days"; from = "2027-06-28"`)),
		log:   "6 Jul ash skipped feeding",
		now:   "10 Jul", from: "28 Jun", to: "22 Jul",
		want: `feed only: Mon 28 Jun; not Tue 6 Jul, skipped; Sat 10 Jul, caught up, last 28 Jun; Wed 14 Jul; Thu 22 Jul`,
	},
	{
		// The next but one would come after ten days, which is too late.
		title: "fed double rather than too late",
		plan:  hungry("9 days", "3 days", meals(`on = ["mon"]`)),
		log:   "5 Jul ash skipped feeding",
		now:   "9 Jul", from: "28 Jun", to: "19 Jul",
		want: `feed only: Mon 28 Jun; not Mon 5 Jul, skipped; Fri 9 Jul, caught up, last 28 Jun; Mon 12 Jul; Mon 19 Jul`,
	},
	{
		// Ten days are just in time.
		title: "not too late by a day",
		plan:  hungry("10 days", "3 days", meals(`on = ["mon"]`)),
		log:   "5 Jul ash skipped feeding",
		now:   "9 Jul", from: "9 Jul", to: "19 Jul",
		want: `feed only: Fri 9 Jul, caught up, last 28 Jun; not Mon 12 Jul, too soon; Mon 19 Jul`,
	},
	{
		// However rare meals are, one after a fortnight is not too soon: the 15th of July is
		// the 14th day after the 1st.
		title: "rare meals",
		plan:  hungry("200 days", "3 days", meals(`every = "60 days"; from = "2027-05-16"`)),
		log:   "16 May ash skipped feeding",
		now:   "1 Jul", from: "16 May", to: "15 Jul",
		want: `feed only: not Sun 16 May, skipped; Thu 1 Jul, caught up; Thu 15 Jul`,
	},
	{
		title: "rare meals, a day too soon",
		plan:  hungry("200 days", "3 days", meals(`every = "60 days"; from = "2027-05-16"`)),
		log:   "16 May ash skipped feeding",
		now:   "2 Jul", from: "16 May", to: "15 Jul",
		want: `feed only: not Sun 16 May, skipped; Fri 2 Jul, caught up; not Thu 15 Jul, too soon`,
	},
	{
		// It may not be fed now, and once it may there is the first meal after the moult.
		title: "not while held",
		plan:  lone(meals(`on = ["mon"]`)),
		log:   "5 Jul ash skipped feeding\n7 Jul ash premoult",
		now:   "8 Jul", from: "5 Jul", to: "12 Jul",
		want: `feed only: not Mon 5 Jul, skipped; not Mon 12 Jul, held before a moult since 7 Jul 2027`,
	},
	{
		// The first meal after the moult of the 27th, on the 4th, is still to come.
		title: "not before the first meal",
		plan:  meals(`every = "day"; until = "2027-07-03"`),
		log:   "26 Jun ash skipped feeding\n27 Jun ash moult 2",
		now:   "3 Jul", from: "26 Jun", to: "6 Jul",
		want: `feed only: not Sat 26 Jun, skipped; ` + held("27 Jun", "3 Jul", "moulted 27 Jun 2027"),
	},
	{
		// Today is the day of the first meal: there is no other.
		title: "not on the day of the first meal",
		plan:  meals(`on = ["sat"]`),
		log:   "26 Jun ash skipped feeding\n27 Jun ash moult 2",
		now:   "4 Jul", from: "26 Jun", to: "10 Jul",
		want: `
			feed only: not Sat 26 Jun, skipped; not Sat 3 Jul, held moulted 27 Jun 2027; Sat 10 Jul
			first-meal/2027-06-27: Sun 4 Jul`,
	},
	{
		// The first meal was given on the 4th, in place of what was skipped.
		title: "not after the first meal",
		plan:  meals(`on = ["sat"]`),
		log:   "26 Jun ash skipped feeding\n27 Jun ash moult 2",
		now:   "6 Jul", from: "26 Jun", to: "10 Jul",
		want: `feed only: not Sat 26 Jun, skipped; not Sat 3 Jul, held moulted 27 Jun 2027; Sat 10 Jul`,
	},
	{
		// The sitter does not weigh; the keeper is back on the 12th.
		title: "not by a stand-in who may not",
		plan:  staff + away("lead", "8 Jul", "12 Jul", `cover = "sitter"`) + ash(`care "weigh" { on = ["wed"] } care "water" { on = ["wed"] } feeding "only" { on = ["wed"]; per_animal = 1; prey = "cricket small" }`),
		log:   "7 Jul ash skipped weigh\n7 Jul ash skipped water\n7 Jul ash skipped feeding",
		now:   "8 Jul", from: "7 Jul", to: "14 Jul",
		want: `
			weigh: not Wed 7 Jul, skipped; Mon 12 Jul, caught up, last 30 Jun; Wed 14 Jul
			water: not Wed 7 Jul, skipped; Thu 8 Jul, caught up, last 30 Jun, by sitter; Wed 14 Jul
			feed only: not Wed 7 Jul, skipped; Thu 8 Jul, caught up, last 30 Jun, by sitter, killed; Wed 14 Jul`,
	},
	{
		// Nobody comes before the 12th.
		title: "not while nobody is there",
		plan:  staff + away("lead", "8 Jul", "12 Jul", "") + water(`on = ["wed"]`),
		log:   "7 Jul ash skipped water",
		now:   "8 Jul", from: "7 Jul", to: "14 Jul",
		want: `water: not Wed 7 Jul, skipped; Mon 12 Jul, caught up, last 30 Jun; Wed 14 Jul`,
	},
	{
		// There is no round before Monday.
		title: "not without a round",
		plan:  mondays + ash(`care "weigh" { every = "28 days"; from = "2027-06-28"; round = "mondays" }`),
		log:   "28 Jun ash skipped weigh",
		now:   "1 Jul", from: "28 Jun", to: "8 Jul",
		want: `weigh: not Mon 28 Jun, skipped; Mon 5 Jul, caught up`,
	},
	{
		// A care that was renamed, and the meals of animals and of a feeding that were: the log
		// speaks of them by the name that they have now, or had when the line was written.
		title: "care of another name",
		plan:  ash(`care "dew" { kind = "mist"; formerly = "fog"; every = "7 days"; from = "2027-06-03" } feeding "only" { formerly = "others"; on = ["mon"]; per_animal = 1; prey = "cricket small" }`),
		log:   "24 Jun ash skipped dew\n26 Jun ash done dew\n28 Jun ash skipped feeding",
		now:   "28 Jun", from: "17 Jun", to: "1 Jul",
		want: `
			dew: Thu 17 Jun; not Thu 24 Jun, skipped; Sat 26 Jun, done; Thu 1 Jul
			feed only: Mon 21 Jun; not Mon 28 Jun, skipped; Tue 29 Jun, caught up, last 21 Jun`,
	},
	{
		title: "care of its old name",
		plan:  ash(`care "dew" { kind = "mist"; formerly = "fog"; every = "7 days"; from = "2027-06-03" }`),
		log:   "24 Jun ash skipped fog\n26 Jun ash done fog",
		now:   "28 Jun", from: "17 Jun", to: "1 Jul",
		want: `dew: Thu 17 Jun; not Thu 24 Jun, skipped; Sat 26 Jun, done; Thu 1 Jul`,
	},
}

// TestNeverCaughtUp: where nobody who may is there for as long as is looked ahead,
// nothing is caught up.
func TestNeverCaughtUp(t *testing.T) {
	gone := strings.Replace(away("lead", "8 Jul", "9 Jul", `cover = "sitter"`), "2027-07-09", "2039-01-01", 1)
	r := compiled(t, house(staff, gone, ash(`care "weigh" { on = ["wed"] }`)), logged("7 Jul ash skipped weigh"), on("8 Jul"))
	e := find(t, r, "ash", "weigh")
	if i := e.Days.Next(place(t, r, on("7 Jul"))); i >= 0 {
		t.Errorf("weighed on %s", r.Horizon.Date(i))
	}
}

// held is a run of days that a hold takes out.
func held(from, to, why string) string {
	text, sep := "", ""
	for d := on(from); d <= on(to); d++ {
		text, sep = text+sep+"not "+short(d)+", held "+why, "; "
	}
	return text
}

func TestLog(t *testing.T) { each(t, logDays) }

// TestLoggedIsSaid: the last day that the log has is kept, also that of today, and
// none where it lies before the window.
func TestLoggedIsSaid(t *testing.T) {
	for log, want := range map[string]string{
		"": "", "1 Apr ash done water": "", "28 Apr ash done water": "Wed 28 Apr", "1 Jul ash done water": "Thu 1 Jul", "20 Jun ash done water\n24 Jun ash done water": "Thu 24 Jun",
	} {
		r := compiled(t, house(water(`on = ["mon"]`)), logged(log), on("1 Jul"))
		got := ""
		if k := find(t, r, "ash", "water").Logged; k >= 0 {
			got = short(r.Horizon.Date(k))
		}
		if got != want {
			t.Errorf("%q: %q, want %q", log, got, want)
		}
	}
}

// feeds are last feeds that showed an entry on some days, from a day until another.
type feeds struct {
	identity    string
	shown       map[civil.Date]bool
	from, until civil.Date
}

func (f feeds) Days(id identity.Identity) (func(civil.Date) bool, civil.Date, civil.Date, bool) {
	return func(d civil.Date) bool { return f.shown[d] }, f.from, f.until, id.Told() == f.identity
}

// TestWhatPeopleWereTold: where the plan was edited, the days that are over are those
// that were shown, as far as it is known; today and what is to come are the plan's.
func TestWhatPeopleWereTold(t *testing.T) {
	was := map[civil.Date]bool{on("18 Jun"): true, on("22 Jun"): true, on("29 Jun"): true, on("1 Jul"): true, on("6 Jul"): true}
	for _, c := range []struct {
		title, plan, log, name string
		told                   feeds
		want                   string
	}{
		{"edited", water(`on = ["mon"]`), "", "water", feeds{"ash/water", was, on("20 Jun"), on("20 Jul")},
			"Mon 14 Jun; Tue 22 Jun; Tue 29 Jun; Mon 5 Jul"},
		{"known until the 25th", water(`on = ["mon"]`), "", "water", feeds{"ash/water", was, on("20 Jun"), on("25 Jun")},
			"Mon 14 Jun; Tue 22 Jun; Mon 28 Jun; Mon 5 Jul"},
		{"known for longer than the window", water(`on = ["mon"]`), "", "water", feeds{"ash/water", was, on("1 Jan"), on("1 Dec")},
			"Fri 18 Jun; Tue 22 Jun; Tue 29 Jun; Mon 5 Jul"},
		{"of another entry", water(`on = ["mon"]`), "", "water", feeds{"ash/mist", was, on("20 Jun"), on("20 Jul")},
			"Mon 14 Jun; Mon 21 Jun; Mon 28 Jun; Mon 5 Jul"},
		{"done is done", water(`on = ["mon"]`), "23 Jun ash done water", "water", feeds{"ash/water", nil, on("20 Jun"), on("20 Jul")},
			"Mon 14 Jun; Wed 23 Jun, done; Mon 5 Jul"},
		{"what goes with a meal", meals(`on = ["mon"]`), "", "leftovers only", feeds{"ash/leftovers only", was, on("20 Jun"), on("20 Jul")},
			"Tue 15 Jun; Tue 22 Jun; Tue 29 Jun; Tue 6 Jul"},
		{"a task of the log", meals(`on = ["mon"]`), "24 Jun ash moult 2", "moult/2027-06-24", feeds{"ash/moult/2027-06-24", was, on("20 Jun"), on("20 Jul")},
			"Thu 24 Jun"},
		// The second occasion was shown, and so it stood; the fourth was not, and the sixth,
		// today, is left out as it would have been.
		{"halved as it was then", ash(`care "mist" { every = "day" } season "rest" { from = "26 jun"; to = "3 jul"; misting = "half" }`), "", "mist",
			feeds{"ash/mist", map[civil.Date]bool{on("26 Jun"): true, on("27 Jun"): true, on("30 Jun"): true}, on("14 Jun"), on("20 Jul")},
			"Sat 26 Jun; Sun 27 Jun; not Tue 29 Jun, halved rest; Wed 30 Jun; not Thu 1 Jul, halved rest; Fri 2 Jul; not Sat 3 Jul, halved rest; Sun 4 Jul; Mon 5 Jul; Tue 6 Jul"},
	} {
		p, found := planned.Sound(t, planned.With(house(c.plan), logged(c.log)))
		r := compile.From(compile.Input{Plan: p, Loaded: found, Now: on("1 Jul").At(12*60, p.Location), Told: c.told})
		if got := said(t, r, find(t, r, "ash", c.name), on("14 Jun"), on("6 Jul")); got != c.want {
			t.Errorf("%s: %s\nwant %s", c.title, got, c.want)
		}
	}
}

var _ roster.Told = feeds{}

// Same is for compilations that know the one before.
func (feeds) Same(roster.Told, identity.Identity) bool { return false }
