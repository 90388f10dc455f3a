package roster_test

import "testing"

// term is a house in which there is a round on weekdays and another on the other days, but
// in the holidays of the 19th to the 25th of July, when it is the other on all.
const term = `dates "holidays" {
  on = ["2027-07-19 to 2027-07-25"]
}
round "weekday" {
  at     = "08:30"
  on     = ["mon to fri"]
  not_on = ["holidays"]
}
round "weekend" {
  at = "10:00"
  on = ["sat", "sun", "holidays"]
}
`

// dateDays: what becomes of dates that a plan leaves out or puts in, and of care in rounds
// that take turns.
var dateDays = []example{
	{
		// Once Wednesday instead of Tuesday, and the 13th not at all.
		title: "not on a date, and on another besides",
		plan:  ash(`care "weigh" { on = ["tue"]; not_on = ["2027-07-06", "2027-07-13"]; also_on = ["2027-07-07"] } care "count" { on = ["tue"] }`),
		now:   "1 Jul", from: "5 Jul", to: "20 Jul",
		want: `
			weigh: not Tue 6 Jul, not on; Wed 7 Jul, also on; not Tue 13 Jul, not on; Tue 20 Jul
			count: Tue 6 Jul; Tue 13 Jul; Tue 20 Jul`,
	},
	{
		// A day that is in both stands: also_on says of it alone what not_on says of many.
		title: "besides goes before not",
		plan:  ash(`care "weigh" { every = "day"; not_on = ["2027-07-05 to 2027-07-09"]; also_on = ["2027-07-07", "2027-07-10"] }`),
		now:   "1 Jul", from: "4 Jul", to: "10 Jul",
		want: `
			weigh: Sun 4 Jul; not Mon 5 Jul, not on; not Tue 6 Jul, not on; Wed 7 Jul; not Thu 8 Jul, not on; not Fri 9 Jul, not on; Sat 10 Jul`,
	},
	{
		title: "weekdays, days of the year and days of the month",
		plan:  ash(`care "weigh" { every = "day"; not_on = ["sat to tue", "8 jul", "9th"] }`),
		now:   "1 Jul", from: "1 Jul", to: "15 Jul",
		want: `
			weigh: Thu 1 Jul; Fri 2 Jul; not Sat 3 Jul, not on; not Sun 4 Jul, not on; not Mon 5 Jul, not on; not Tue 6 Jul, not on; Wed 7 Jul; not Thu 8 Jul, not on; not Fri 9 Jul, not on; not Sat 10 Jul, not on; not Sun 11 Jul, not on; not Mon 12 Jul, not on; not Tue 13 Jul, not on; Wed 14 Jul; Thu 15 Jul`,
	},
	{
		title: "a part of the year over its end, and one that begins on a day of some years",
		plan:  ash(`care "weigh" { on = ["30 dec to 2 jan"] } care "count" { on = ["29 feb to 2 mar"] } care "dish" { on = ["27 feb to 29 feb"] }`),
		now:   "10 Jan", from: "1 Jan", to: "31 Dec",
		want: `
			weigh: Fri 1 Jan; Sat 2 Jan; Thu 30 Dec; Fri 31 Dec
			count: Mon 1 Mar; Tue 2 Mar
			dish: Sat 27 Feb; Sun 28 Feb`,
	},
	{
		// What goes with a meal goes with it also on other days.
		title: "a meal on another day",
		plan:  meals(`on = ["tue"]; not_on = ["2027-07-06"]; also_on = ["2027-07-08"]`),
		now:   "1 Jul", from: "5 Jul", to: "14 Jul",
		want: `
			feed only: not Tue 6 Jul, not on; Thu 8 Jul, also on; Tue 13 Jul
			leftovers only: not Wed 7 Jul, not on; Fri 9 Jul, also on; Wed 14 Jul`,
	},
	{
		// There is no other round that it names: what may be moved is, the rest is left out
		// and nothing is asked; the proof says whether that is too long.
		title: "a round that is not held for once",
		plan:  "round \"some\" {\n  at = \"20:30\"\n  not_on = [\"2027-07-06 to 2027-07-08\"]\n}\n" + ash(`care "weigh" { on = ["tue"]; window = "1 day" } care "count" { on = ["wed"] } care "mist" { every = "day" }`),
		now:   "1 Jul", from: "4 Jul", to: "9 Jul",
		want: `
			weigh: Mon 5 Jul, moved; not Tue 6 Jul, no round
			count: not Wed 7 Jul, no round
			mist: Sun 4 Jul; Mon 5 Jul, moved; not Tue 6 Jul, no round; not Wed 7 Jul, no round; not Thu 8 Jul, no round; Fri 9 Jul, moved`,
	},
	{
		title: "a round that is held besides",
		plan:  "round \"mondays\" {\n  at = \"20:30\"\n  on = [\"mon\"]\n  also_on = [\"2027-07-07\"]\n}\n" + ash(`care "weigh" { on = ["wed"]; window = "2 days" }`),
		now:   "1 Jul", from: "5 Jul", to: "14 Jul",
		want: `
			weigh: Wed 7 Jul; Mon 12 Jul, moved; not Wed 14 Jul, no round`,
	},
	{
		// The first of the rounds is shown; the days of the other are those that are out.
		title: "rounds that take turns",
		plan:  term + ash(`care "weigh" { every = "day"; round = ["weekday", "weekend"] }`),
		now:   "1 Jul", from: "9 Jul", to: "12 Jul",
		want: `
			weigh: Fri 9 Jul; not Sat 10 Jul, other round; not Sun 11 Jul, other round; Mon 12 Jul`,
	},
	{
		// The holidays are the other round's.
		title: "rounds that take turns, in the holidays",
		plan:  term + ash(`care "weigh" { on = ["tue"]; round = ["weekday", "weekend"] }`),
		now:   "1 Jul", from: "9 Jul", to: "28 Jul",
		want: `
			weigh: Tue 13 Jul; not Tue 20 Jul, other round; Tue 27 Jul`,
	},
	{
		// What falls between two visits is done at both, whichever round that is: Thursday the
		// 8th is the last day before, Saturday a visit.
		title: "an absence among rounds that take turns",
		plan: "keeper \"lead\" {}\nkeeper \"friend\" {}\n" + term + "away \"lead\" {\n  from = \"2027-07-09\"\n  to = \"2027-07-15\"\n  cover = \"friend\"\n  visits = [\"sat\", \"tue\"]\n}\n" +
			ash(`care "water" { on = ["fri", "mon"]; round = ["weekend", "weekday"]; keeper = "lead" }`),
		now: "1 Jul", from: "8 Jul", to: "14 Jul",
		want: `
			water: not Thu 8 Jul, other round; not Fri 9 Jul, other round; Sat 10 Jul, visit 9 Jul, leaving 9 Jul, by friend; not Mon 12 Jul, other round; not Tue 13 Jul, other round`,
	},
	{
		// A Friday's meal has its look on Saturday, in the other round; a Sunday's on Monday.
		title: "leftovers in the other round",
		plan:  term + ash(`feeding "only" { on = ["fri", "sun"]; per_animal = 2; prey = "cricket small"; round = ["weekend", "weekday"] }`),
		now:   "1 Jul", from: "8 Jul", to: "12 Jul",
		want: `
			feed only: not Fri 9 Jul, other round; Sun 11 Jul
			leftovers only: Sat 10 Jul; not Mon 12 Jul, other round`,
	},
	{
		// The people differ, and so do their days; what one has begun the other looks after.
		title: "leftovers of somebody else's meal",
		plan: "keeper \"lead\" {}\nkeeper \"friend\" {}\n" +
			"round \"weekday\" {\n  at = \"08:30\"\n  on = [\"mon to fri\"]\n  keeper = \"lead\"\n}\nround \"weekend\" {\n  at = \"10:00\"\n  on = [\"sat\", \"sun\"]\n  keeper = \"friend\"\n}\n" +
			ash(`feeding "only" { on = ["fri"]; per_animal = 2; prey = "cricket small"; round = ["weekend", "weekday"] }`),
		now: "1 Jul", from: "8 Jul", to: "12 Jul",
		want: `
			feed only: not Fri 9 Jul, no round
			leftovers only: Sat 10 Jul`,
	},
	{
		title: "leftovers in a round of their own",
		plan:  "round \"evening\" {\n  at = \"19:30\"\n}\nround \"morning\" {\n  at = \"08:30\"\n  on = [\"wed\", \"sun\"]\n}\n" + ash(`feeding "only" { on = ["tue", "fri"]; per_animal = 2; prey = "cricket small"; leftovers_round = "morning"; round = "evening" }`),
		now:   "1 Jul", from: "5 Jul", to: "11 Jul",
		want: `
			feed only: Tue 6 Jul; Fri 9 Jul
			leftovers only: Wed 7 Jul; not Sat 10 Jul, no round`,
	},
	{
		title: "twice a day",
		plan:  "round \"evening\" {\n  at = \"19:30\"\n}\nround \"morning\" {\n  at = \"08:30\"\n  on = [\"mon to fri\"]\n}\n" + ash(`care "mist" { every = "day"; round = ["morning", "evening"] }`),
		now:   "1 Jul", from: "9 Jul", to: "11 Jul",
		want: `
			mist: Fri 9 Jul; not Sat 10 Jul, other round; not Sun 11 Jul, other round`,
	},
	{
		title: "once",
		plan:  ash(`care "weigh" { on = ["2027-07-06"] } care "count" { on = ["2027-07-08 to 2027-07-09", "2027-07-12"] }`),
		now:   "1 Jul", from: "5 Jul", to: "20 Jul",
		want: `
			weigh: Tue 6 Jul
			count: Thu 8 Jul; Fri 9 Jul; Mon 12 Jul`,
	},
}

func TestDates(t *testing.T) { each(t, dateDays) }
