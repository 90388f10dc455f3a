package roster_test

import (
	"strings"
	"testing"
)

// hungry is a house of a species that must eat within so many days, and not again
// before so many.
func hungry(longest, shortest string, blocks ...string) string {
	return "NEED" + foodNeed(longest, shortest) + "NEED" + strings.Join(blocks, "")
}

func foodNeed(longest, shortest string) string {
	return "  need \"food\" {\n    longest  = \"" + longest + "\"\n    shortest = \"" + shortest + "\"\n    severity = \"caution\"\n    source   = [\"fixture\"]\n    because  = \"fixture of this test\"\n    review   = \"2040-01-01\"\n  }\n"
}

// meals is box ash with meals of live crickets.
func meals(when string) string {
	return ash(`feeding "only" { ` + when + `; per_animal = 2; prey = "cricket small" }`)
}

// mealDays: what becomes of meals while the keeper is away, and of what the log puts
// in their place.
var mealDays = []example{
	{
		// From the meal of the 5th to that of the 19th there are the 14 days that they can
		// wait. What goes with the meal of the 12th goes too.
		title: "a meal that can wait",
		plan:  hungry("14 days", "3 days", staff, away("lead", "10 Jul", "17 Jul", ""), meals(`on = ["mon"]; gut_load = true`)),
		now:   "1 Jul", from: "4 Jul", to: "20 Jul",
		want: `
			feed only: Mon 5 Jul; not Mon 12 Jul, waits 10 Jul; Mon 19 Jul
			leftovers only: Tue 6 Jul; not Tue 13 Jul, waits 10 Jul; Tue 20 Jul
			gut-load only: Sun 4 Jul; not Sun 11 Jul, waits 10 Jul; Sun 18 Jul`,
	},
	{
		// The same, but they can wait for 13 days, and so until the return on the 17th. The
		// meal after it would be two days later.
		title: "a meal on the return",
		plan:  hungry("13 days", "1 day", staff, away("lead", "10 Jul", "17 Jul", ""), meals(`on = ["mon"]`)),
		now:   "1 Jul", from: "5 Jul", to: "26 Jul",
		want: `feed only: Mon 5 Jul; not Mon 12 Jul, waits 10 Jul; Sat 17 Jul, return 10 Jul; not Mon 19 Jul, too soon; Mon 26 Jul`,
	},
	{
		// Away until the 24th: 19 days from the meal of the 5th. The sitter comes on Tuesdays
		// and Saturdays, may not feed live prey, and nobody comes the day after.
		title: "meals on visits, of killed prey",
		plan:  hungry("14 days", "3 days", staff, away("lead", "10 Jul", "24 Jul", "cover = \"sitter\"\nvisits = [\"tue\", \"sat\"]"), meals(`on = ["mon"]`)),
		now:   "1 Jul", from: "5 Jul", to: "26 Jul",
		want: `
			feed only: Mon 5 Jul; not Mon 12 Jul, nobody 10 Jul; Tue 13 Jul, visit 10 Jul, by sitter, killed; not Mon 19 Jul, nobody 10 Jul; Tue 20 Jul, visit 10 Jul, by sitter, killed; Mon 26 Jul`,
	},
	{
		// The friend comes every day and may feed live prey: nothing changes but who does it.
		title: "a trained stand-in who comes every day",
		plan:  hungry("14 days", "3 days", staff, away("lead", "10 Jul", "24 Jul", `cover = "friend"`), meals(`on = ["mon"]`)),
		now:   "1 Jul", from: "5 Jul", to: "27 Jul",
		want: `
			feed only: Mon 5 Jul; Mon 12 Jul, by friend; Mon 19 Jul, by friend; Mon 26 Jul
			leftovers only: Tue 6 Jul; Tue 13 Jul, by friend; Tue 20 Jul, by friend; Tue 27 Jul`,
	},
	{
		// The sitter comes every day too, so that leftovers would be taken out, but may not
		// feed live prey.
		title: "live prey is not for an untrained stand-in",
		plan:  hungry("14 days", "3 days", staff, away("lead", "10 Jul", "24 Jul", `cover = "sitter"`), meals(`on = ["mon"]`)),
		now:   "1 Jul", from: "5 Jul", to: "26 Jul",
		want: `feed only: Mon 5 Jul; Mon 12 Jul, by sitter, killed; Mon 19 Jul, by sitter, killed; Mon 26 Jul`,
	},
	{
		// The plan has it live, and the sitter may not give it live: it is given on the return.
		title: "killed = false",
		plan:  hungry("14 days", "3 days", staff, away("lead", "10 Jul", "24 Jul", `cover = "sitter"`), meals(`on = ["mon"]; killed = false`)),
		now:   "1 Jul", from: "12 Jul", to: "24 Jul",
		want: `feed only: not Mon 12 Jul, nobody 10 Jul, untrained 10 Jul; not Mon 19 Jul, nobody 10 Jul, untrained 10 Jul; Sat 24 Jul, return 10 Jul, last 5 Jul`,
	},
	{
		title: "killed = false, by somebody who is trained",
		plan:  hungry("14 days", "3 days", staff, away("lead", "10 Jul", "24 Jul", `cover = "friend"`), meals(`on = ["mon"]; killed = false`)),
		now:   "1 Jul", from: "12 Jul", to: "19 Jul",
		want: `feed only: Mon 12 Jul, by friend; Mon 19 Jul, by friend`,
	},
	{
		// What is left may stay for two days: from Monday until Wednesday's visit it does, and
		// from Wednesday until Monday it does not.
		title: "leftovers between two visits",
		plan:  hungry("5 days", "2 days", staff, away("lead", "10 Jul", "24 Jul", "cover = \"friend\"\nvisits = [\"mon\", \"wed\"]"), meals(`on = ["mon", "wed"]; leftovers = "2 days"`)),
		now:   "1 Jul", from: "7 Jul", to: "26 Jul",
		want: `
			feed only: Wed 7 Jul; Mon 12 Jul, by friend; Wed 14 Jul, by friend, killed; Mon 19 Jul, by friend; Wed 21 Jul, by friend, killed; Mon 26 Jul`,
	},
	{
		// Tue 13 is six days after the last meal, Fri 16 three after that. What falls on
		// Wednesday moves to Friday, where a meal stands already; Sunday's would be moved to
		// Tuesday the 20th, Monday's too.
		title: "one meal a visit",
		plan:  hungry("4 days", "3 days", staff, away("lead", "10 Jul", "24 Jul", "cover = \"sitter\"\nvisits = [\"tue\", \"fri\"]"), meals(`on = ["mon", "wed", "fri"]`)),
		now:   "1 Jul", from: "5 Jul", to: "26 Jul",
		want: `
			feed only: Mon 5 Jul; Wed 7 Jul; not Fri 9 Jul, left in 10 Jul; not Mon 12 Jul, nobody 10 Jul; Tue 13 Jul, visit 10 Jul, by sitter, killed; not Wed 14 Jul, nobody 10 Jul; Fri 16 Jul, visit 10 Jul, by sitter, killed; not Mon 19 Jul, nobody 10 Jul; Tue 20 Jul, visit 10 Jul, by sitter, killed; not Wed 21 Jul, nobody 10 Jul; Fri 23 Jul, visit 10 Jul, by sitter, killed; Mon 26 Jul`,
	},
	{
		// Not before four days have gone by: Friday's visit comes three after Tuesday's.
		title: "a visit too soon after another",
		plan:  hungry("4 days", "4 days", staff, away("lead", "10 Jul", "24 Jul", "cover = \"sitter\"\nvisits = [\"tue\", \"fri\"]"), meals(`on = ["mon", "thu"]`)),
		now:   "1 Jul", from: "8 Jul", to: "26 Jul",
		want: `
			feed only: Thu 8 Jul; not Mon 12 Jul, nobody 10 Jul; Tue 13 Jul, visit 10 Jul, by sitter, killed; not Thu 15 Jul, too soon 10 Jul; not Mon 19 Jul, nobody 10 Jul; Tue 20 Jul, visit 10 Jul, by sitter, killed; not Thu 22 Jul, too soon 10 Jul; Mon 26 Jul`,
	},
	{
		// What is left of the meal of Friday would stay in from the 10th on: it is given on
		// Thursday, so that leftovers are taken out on Friday.
		title: "the last meal before leaving is moved",
		plan:  hungry("20 days", "3 days", staff, away("lead", "10 Jul", "17 Jul", ""), meals(`on = ["fri"]`)),
		now:   "1 Jul", from: "2 Jul", to: "23 Jul",
		want: `
			feed only: Fri 2 Jul; Thu 8 Jul, leaving 10 Jul; not Fri 9 Jul, left in 10 Jul; not Fri 16 Jul, waits 10 Jul; Fri 23 Jul
			leftovers only: Sat 3 Jul; Fri 9 Jul, leaving 10 Jul; not Sat 10 Jul, left in 10 Jul; not Sat 17 Jul, waits 10 Jul`,
	},
	{
		// Of killed prey nothing is taken out, and it stays where it was.
		title: "a killed meal before leaving stays",
		plan:  hungry("20 days", "3 days", staff, away("lead", "10 Jul", "17 Jul", ""), meals(`on = ["fri"]; killed = true`)),
		now:   "1 Jul", from: "2 Jul", to: "23 Jul",
		want: `feed only: Fri 2 Jul; Fri 9 Jul; not Fri 16 Jul, waits 10 Jul; Fri 23 Jul`,
	},
	{
		// Somebody comes on the 10th and takes out what is left.
		title: "a visit on the first day away",
		plan:  hungry("20 days", "3 days", staff, away("lead", "10 Jul", "17 Jul", "cover = \"sitter\"\nvisits = [\"10 jul\"]"), meals(`on = ["fri"]`)),
		now:   "1 Jul", from: "2 Jul", to: "23 Jul",
		want: `
			feed only: Fri 2 Jul; Fri 9 Jul; not Fri 16 Jul, waits 10 Jul; Fri 23 Jul
			leftovers only: Sat 3 Jul; Sat 10 Jul, by sitter; not Sat 17 Jul, waits 10 Jul`,
	},
	{
		// A meal every other day, and not two on following days: that of the 9th cannot be
		// moved to the 8th, since there was one on the 7th.
		title: "too soon before leaving",
		plan:  hungry("20 days", "2 days", staff, away("lead", "10 Jul", "17 Jul", ""), meals(`every = "2 days"; from = "2027-07-01"`)),
		now:   "1 Jul", from: "5 Jul", to: "17 Jul",
		want: `feed only: Mon 5 Jul; Wed 7 Jul; not Fri 9 Jul, left in 10 Jul; not Sun 11 Jul, waits 10 Jul; not Tue 13 Jul, waits 10 Jul; not Thu 15 Jul, waits 10 Jul; Sat 17 Jul`,
	},
	{
		// No meal is known before the absence, so that nobody knows how long it may wait: it
		// is done as soon as somebody is there, however much the species bears.
		title: "no meal before the absence",
		plan:  hungry("60 days", "3 days", staff, away("lead", "10 Jul", "17 Jul", ""), meals(`on = ["mon"]; from = "2027-07-10"`)),
		now:   "1 Jul", from: "1 Jul", to: "26 Jul",
		want: `feed only: not Mon 12 Jul, nobody 10 Jul; Sat 17 Jul, return 10 Jul; not Mon 19 Jul, too soon; Mon 26 Jul`,
	},
	{
		// Found moulted on the 5th, with a week of rest. The first meal stands in place of the
		// meal of its day, and of no other: a week later is not too soon.
		title: "the first meal after a moult",
		plan:  hungry("20 days", "3 days", staff, meals(`on = ["mon"]`)),
		log:   "5 Jul ash moult 2",
		now:   "6 Jul", from: "28 Jun", to: "20 Jul",
		want: `
			feed only: Mon 28 Jun; not Mon 5 Jul, held moulted 5 Jul 2027; not Mon 12 Jul, another stands in its place; Mon 19 Jul
			first-meal/2027-07-05: Mon 12 Jul
			leftovers only: Tue 29 Jun; not Tue 6 Jul, held moulted 5 Jul 2027; Tue 13 Jul, with a meal; Tue 20 Jul`,
	},
	{
		// The first meal is on Thursday the 15th, four days before the next. Of eight days from
		// the next to the one after it half are four.
		title: "too soon after the first meal",
		plan:  hungry("20 days", "1 day", staff, meals(`every = "9 days"; from = "2027-07-01"`)),
		log:   "8 Jul ash moult 2",
		now:   "9 Jul", from: "1 Jul", to: "28 Jul",
		want: `
			feed only: Thu 1 Jul; not Sat 10 Jul, held moulted 8 Jul 2027; not Mon 19 Jul, too soon; Wed 28 Jul
			first-meal/2027-07-08: Thu 15 Jul`,
	},
	{
		// As before, but the next but one would come 13 days after the first meal, which is
		// too late: it is fed sooner instead.
		title: "sooner rather than too late",
		plan:  hungry("12 days", "1 day", staff, meals(`every = "9 days"; from = "2027-07-01"`)),
		log:   "8 Jul ash moult 2",
		now:   "9 Jul", from: "9 Jul", to: "28 Jul",
		want: `feed only: not Sat 10 Jul, held moulted 8 Jul 2027; Mon 19 Jul; Wed 28 Jul`,
	},
	{
		// The first meal after a moult falls into the absence, and is given at the visit of
		// Tuesday the 13th; nothing else is fed on that day. The sitter may not feed live prey.
		title: "the first meal while the keeper is away",
		plan:  hungry("10 days", "3 days", staff, away("lead", "10 Jul", "24 Jul", "cover = \"sitter\"\nvisits = [\"tue\"]"), meals(`on = ["mon"]`)),
		log:   "3 Jul ash moult 2",
		now:   "4 Jul", from: "4 Jul", to: "26 Jul",
		want: `
			first-meal/2027-07-03: not Sat 10 Jul, nobody 10 Jul; Tue 13 Jul, visit 10 Jul, by sitter, killed
			feed only: not Mon 5 Jul, held moulted 3 Jul 2027; not Mon 12 Jul, nobody 10 Jul; not Tue 13 Jul, another stands in its place; not Mon 19 Jul, nobody 10 Jul; Tue 20 Jul, visit 10 Jul, by sitter, killed; Mon 26 Jul`,
	},
	{
		// The friend may, and comes on the day after too.
		title: "the first meal by a trained stand-in",
		plan:  hungry("10 days", "3 days", staff, away("lead", "10 Jul", "24 Jul", "cover = \"friend\"\nvisits = [\"tue\", \"wed\"]"), meals(`on = ["mon"]`)),
		log:   "3 Jul ash moult 2",
		now:   "4 Jul", from: "4 Jul", to: "15 Jul",
		want: `first-meal/2027-07-03: not Sat 10 Jul, nobody 10 Jul; Tue 13 Jul, visit 10 Jul, by friend`,
	},
	{
		// The friend comes on Tuesdays only: what is left would stay in.
		title: "the first meal by one who does not come back",
		plan:  hungry("10 days", "3 days", staff, away("lead", "10 Jul", "24 Jul", "cover = \"friend\"\nvisits = [\"tue\"]"), meals(`on = ["mon"]`)),
		log:   "3 Jul ash moult 2",
		now:   "4 Jul", from: "4 Jul", to: "15 Jul",
		want: `first-meal/2027-07-03: not Sat 10 Jul, nobody 10 Jul; Tue 13 Jul, visit 10 Jul, by friend, killed`,
	},
	{
		// Nobody comes: it is given on the return, live, by the keeper.
		title: "the first meal on the return",
		plan:  hungry("30 days", "3 days", staff, away("lead", "10 Jul", "14 Jul", ""), meals(`on = ["mon"]`)),
		log:   "3 Jul ash moult 2",
		now:   "4 Jul", from: "4 Jul", to: "26 Jul",
		want: `
			first-meal/2027-07-03: not Sat 10 Jul, nobody 10 Jul; Wed 14 Jul, return 10 Jul
			feed only: not Mon 5 Jul, held moulted 3 Jul 2027; not Mon 12 Jul, waits 10 Jul; Mon 19 Jul; Mon 26 Jul`,
	},
	{
		// A week after the last meal. Found moulted on the 30th of June, it is fed a first meal
		// on the 7th of July, and from there a week after each again. The meal of the 29th was
		// given before the moult; that of the 6th is too near to the moult.
		title: "so long after the last one, and a first meal",
		plan:  meals(`after_last = "7 days"`),
		log:   "22 Jun ash fed\n30 Jun ash moult 2",
		now:   "1 Jul", from: "20 Jun", to: "22 Jul",
		want: `
			feed only: Tue 22 Jun, done; Tue 29 Jun; not Tue 6 Jul, held moulted 30 Jun 2027; Wed 14 Jul; Wed 21 Jul
			leftovers only: Wed 23 Jun; Wed 30 Jun; not Wed 7 Jul, held moulted 30 Jun 2027; Thu 8 Jul, with a meal; Thu 15 Jul; Thu 22 Jul
			first-meal/2027-06-30: Wed 7 Jul`,
	},
	{
		// All that would come between the last meal and the first one is held.
		title: "so long after the last one, held until the first meal",
		plan:  meals(`after_last = "7 days"; until = "2027-07-14"`),
		log:   "22 Jun ash fed\n27 Jun ash moult 2",
		now:   "1 Jul", from: "20 Jun", to: "22 Jul",
		want: `
			feed only: Tue 22 Jun, done; Sun 11 Jul
			first-meal/2027-06-27: Sun 4 Jul`,
	},
	{
		// In a season without meals the first one waits, and so do those that follow it.
		title: "so long after the last one, in a season without meals",
		plan:  ash(`feeding "only" { after_last = "7 days"; per_animal = 1; prey = "cricket small" } season "rest" { from = "28 jun"; to = "10 jul"; feeding = "none" }`),
		log:   "22 Jun ash fed\n27 Jun ash moult 2",
		now:   "1 Jul", from: "20 Jun", to: "22 Jul",
		want: `
			feed only: Tue 22 Jun, done; Sun 18 Jul
			first-meal/2027-06-27: Sun 11 Jul`,
	},
	{
		// The first meal after a moult is on the 8th. From there to the return there are the
		// nine days that they can wait, and to the next meal there are eleven.
		title: "a first meal before leaving",
		plan:  hungry("9 days", "1 day", staff, away("lead", "10 Jul", "17 Jul", ""), meals(`on = ["mon"]`)),
		log:   "1 Jul ash moult 2",
		now:   "2 Jul", from: "2 Jul", to: "26 Jul",
		want: `feed only: not Mon 5 Jul, held moulted 1 Jul 2027; not Mon 12 Jul, waits 10 Jul; Sat 17 Jul, return 10 Jul; not Mon 19 Jul, too soon; Mon 26 Jul`,
	},
	{
		// What is left may stay for two days, so that meals of Thursday and Friday would leave
		// something over the absence; the last is on Wednesday.
		title: "two days for leftovers before leaving",
		plan:  hungry("20 days", "2 days", staff, away("lead", "10 Jul", "17 Jul", ""), meals(`every = "3 days"; from = "2027-06-29"; leftovers = "2 days"`)),
		now:   "1 Jul", from: "2 Jul", to: "17 Jul",
		want: `
			feed only: Fri 2 Jul; Mon 5 Jul; Wed 7 Jul, leaving 10 Jul; not Thu 8 Jul, left in 10 Jul; not Sun 11 Jul, waits 10 Jul; not Wed 14 Jul, waits 10 Jul; Sat 17 Jul
			leftovers only: Sun 4 Jul; Wed 7 Jul; Fri 9 Jul, leaving 10 Jul; not Sat 10 Jul, left in 10 Jul; not Tue 13 Jul, waits 10 Jul; not Fri 16 Jul, waits 10 Jul`,
	},
	{
		// The last meal before leaving is on the first day of the window: 32 days until the
		// return are one too many.
		title: "a meal on the window's first day",
		plan:  hungry("31 days", "1 day", staff, away("lead", "30 Apr", "30 May", ""), meals(`every = "20 days"; from = "2027-04-28"`)),
		now:   "1 Jul", from: "28 Apr", to: "30 May",
		want: `feed only: Wed 28 Apr; not Tue 18 May, nobody 30 Apr; Sun 30 May, return 30 Apr, last 28 Apr`,
	},
	{
		// Feeders are fed on the window's first day for the meal of its second, and what is
		// left of a meal before the window is not known.
		title: "what goes with meals as the window begins",
		plan:  meals(`every = "7 days"; from = "2027-04-22"; gut_load = true`),
		now:   "1 Jul", from: "28 Apr", to: "7 May",
		want: `
			feed only: Thu 29 Apr; Thu 6 May
			gut-load only: Wed 28 Apr; Wed 5 May
			leftovers only: Fri 30 Apr; Fri 7 May`,
	},
	{
		// The first meal would be on the window's first day; the keeper comes back on its third.
		title: "a first meal as the window begins",
		plan:  hungry("10 days", "1 day", staff, away("lead", "1 Apr", "30 Apr", ""), meals(`on = ["fri"]`)),
		log:   "21 Apr ash moult 2",
		now:   "1 Jul", from: "28 Apr", to: "7 May",
		want: `
			feed only: not Fri 30 Apr, another stands in its place; Fri 7 May
			first-meal/2027-04-21: not Wed 28 Apr, nobody 1 Apr; Fri 30 Apr, return 1 Apr`,
	},
	{
		// A need may be of one stage: juveniles wait for six days at the most, others longer.
		// The meal of the 19th stands, since that of the 26th comes too late after the 17th.
		title: "the need of the stage",
		plan: "NEED" + foodNeed("30 days", "1 day") + strings.Replace(foodNeed("6 days", "1 day"), "    longest", "    stages   = [\"juvenile\"]\n    longest", 1) + "NEED" +
			staff + away("lead", "10 Jul", "17 Jul", "") + meals(`on = ["mon"]`),
		now: "1 Jul", from: "5 Jul", to: "26 Jul",
		want: `feed only: Mon 5 Jul; not Mon 12 Jul, nobody 10 Jul; Sat 17 Jul, return 10 Jul, last 5 Jul; Mon 19 Jul; Mon 26 Jul`,
	},
	{
		// The first meal falls on a day on which one was due anyway: from there they run anew.
		title: "so long after the last one, and a first meal on a day of its own",
		plan:  meals(`after_last = "3 days"`),
		log:   "22 Jun ash fed\n30 Jun ash moult 2",
		now:   "1 Jul", from: "22 Jun", to: "13 Jul",
		want: `
			feed only: Tue 22 Jun, done; Fri 25 Jun; Mon 28 Jun; not Thu 1 Jul, held moulted 30 Jun 2027; not Sun 4 Jul, held moulted 30 Jun 2027; Sat 10 Jul; Tue 13 Jul
			first-meal/2027-06-30: Wed 7 Jul`,
	},
	{
		// Who stands in on the window's first day may not feed live prey on that either.
		title: "killed on the window's first day",
		plan:  hungry("2 days", "1 day", staff, away("lead", "1 Apr", "30 Apr", `cover = "sitter"`), meals(`on = ["wed"]`)),
		now:   "1 Jul", from: "28 Apr", to: "5 May",
		want: `feed only: Wed 28 Apr, by sitter, killed; Wed 5 May`,
	},
	{
		// Nothing is known of the days before the window: no meal can be said to wait.
		title: "away as the window begins, and a meal",
		plan:  hungry("3 days", "1 day", staff, away("lead", "1 Apr", "30 Apr", ""), meals(`on = ["wed"]`)),
		now:   "1 Jul", from: "28 Apr", to: "5 May",
		want: `feed only: not Wed 28 Apr, nobody 1 Apr; Fri 30 Apr, return 1 Apr; Wed 5 May`,
	},
	{
		// A first meal on the day before the window: what is left of it is taken out on its
		// first day.
		title: "leftovers of a first meal before the window",
		plan:  meals(`on = ["mon"]`),
		log:   "20 Apr ash moult 2",
		now:   "1 Jul", from: "28 Apr", to: "4 May",
		want: `leftovers only: Wed 28 Apr, with a meal; Tue 4 May`,
	},
	{
		// A day earlier, and it is all over.
		title: "a first meal and its leftovers before the window",
		plan:  meals(`on = ["mon"]`),
		log:   "19 Apr ash moult 2",
		now:   "1 Jul", from: "28 Apr", to: "4 May",
		want: `leftovers only: Tue 4 May`,
	},
}

func TestMeals(t *testing.T) { each(t, mealDays) }
