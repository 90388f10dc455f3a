package roster_test

import (
	"strings"
	"testing"
)

// tended is box ash with care that stand-ins leave alone.
const tended = `
  care "weigh" {
    on = ["wed"]
  }
  care "calibrate" {
    on = ["thu"]
  }
  care "device-test" {
    on = ["wed"]
  }
`

// absenceDays: what becomes of care that is no meal while its keeper is away.
var absenceDays = []example{
	{
		// Nobody stands in. A need depends on water and on the test of the heater, so that
		// these are done before leaving too; nothing depends on the scales.
		title: "before leaving and on the return",
		plan:  staff + away("lead", "10 Jul", "24 Jul", "") + box("ash", one+tended+"  care \"water\" {\n    on = [\"mon\"]\n  }\n"),
		now:   "1 Jul", from: "5 Jul", to: "30 Jul",
		want: `
			water: Mon 5 Jul; Fri 9 Jul, leaving 10 Jul; not Mon 12 Jul, nobody 10 Jul; not Mon 19 Jul, nobody 10 Jul; Sat 24 Jul, return 10 Jul, last 9 Jul; Mon 26 Jul
			weigh: Wed 7 Jul; not Wed 14 Jul, nobody 10 Jul; not Wed 21 Jul, nobody 10 Jul; Sat 24 Jul, return 10 Jul; Wed 28 Jul
			device-test: Wed 7 Jul; Fri 9 Jul, leaving 10 Jul; not Wed 14 Jul, nobody 10 Jul; not Wed 21 Jul, nobody 10 Jul; Sat 24 Jul, return 10 Jul; Wed 28 Jul`,
	},
	{
		// What is due in one of two absences that touch names the one in which it is due; who
		// comes back comes back from the second.
		title: "two absences and their own causes",
		plan:  staff + away("lead", "10 Jul", "17 Jul", "") + away("lead", "17 Jul", "24 Jul", "") + box("ash", one+tended),
		now:   "1 Jul", from: "8 Jul", to: "24 Jul",
		want: `
			weigh: not Wed 14 Jul, nobody 10 Jul; not Wed 21 Jul, nobody 17 Jul; Sat 24 Jul, return 17 Jul
			device-test: Fri 9 Jul, leaving 10 Jul; not Wed 14 Jul, nobody 10 Jul; not Wed 21 Jul, nobody 17 Jul; Sat 24 Jul, return 17 Jul`,
	},
	{
		// Nothing is due in these days, so that nothing is brought forward or caught up.
		title: "a short absence between two days",
		plan:  staff + away("lead", "8 Jul", "13 Jul", "") + box("ash", one+tended+"  care \"water\" {\n    on = [\"wed\"]\n  }\n"),
		now:   "1 Jul", from: "5 Jul", to: "15 Jul",
		want: `
			water: Wed 7 Jul; Wed 14 Jul
			weigh: Wed 7 Jul; Wed 14 Jul
			device-test: Wed 7 Jul; Wed 14 Jul`,
	},
	{
		// A stand-in looks after water and leaves the scales alone, also on days of visits.
		title: "what a stand-in does",
		plan:  staff + away("lead", "10 Jul", "24 Jul", "cover = \"sitter\"\nvisits = [\"wed\"]") + box("ash", one+tended+"  care \"water\" {\n    on = [\"mon\"]\n  }\n  care \"dish\" {\n    on = [\"mon\"]\n  }\n"),
		now:   "1 Jul", from: "8 Jul", to: "24 Jul",
		want: `
			water: Fri 9 Jul, leaving 10 Jul; not Mon 12 Jul, nobody 10 Jul; Wed 14 Jul, visit 10 Jul, leaving 10 Jul, by sitter; not Mon 19 Jul, nobody 10 Jul; Wed 21 Jul, visit 10 Jul, by sitter
			dish: not Mon 12 Jul, nobody 10 Jul; Wed 14 Jul, visit 10 Jul, by sitter; not Mon 19 Jul, nobody 10 Jul; Wed 21 Jul, visit 10 Jul, by sitter
			weigh: not Wed 14 Jul, nobody 10 Jul; not Wed 21 Jul, nobody 10 Jul; Sat 24 Jul, return 10 Jul`,
	},
	{
		// The care is the friend's own, who is there.
		title: "care of a keeper who stays",
		plan:  staff + away("lead", "10 Jul", "24 Jul", "") + box("ash", one+"  care \"water\" {\n    on     = [\"mon\"]\n    keeper = \"friend\"\n  }\n"),
		now:   "1 Jul", from: "8 Jul", to: "24 Jul",
		want: `water: Mon 12 Jul; Mon 19 Jul`,
	},
	{
		// Who is away as the window begins has no day before leaving in it.
		title: "away as the window begins",
		plan:  staff + away("lead", "1 Jan", "1 Jun", "") + box("ash", one+tended),
		now:   "1 Jul", from: "28 Apr", to: "5 Jun",
		want: `device-test: not Wed 28 Apr, nobody 1 Jan; not Wed 5 May, nobody 1 Jan; not Wed 12 May, nobody 1 Jan; not Wed 19 May, nobody 1 Jan; not Wed 26 May, nobody 1 Jan; Tue 1 Jun, return 1 Jan; Wed 2 Jun`,
	},
	{
		// Away from the window's second day on: the first is the day before leaving.
		title: "leaving on the window's first day",
		plan:  staff + away("lead", "29 Apr", "1 Jun", "") + box("ash", one+"  care \"device-test\" {\n    on = [\"sat\"]\n  }\n  care \"water\" {\n    on = [\"sat\"]\n  }\n"),
		now:   "1 Jul", from: "28 Apr", to: "2 May",
		want: `
			water: Wed 28 Apr, leaving 29 Apr; not Sat 1 May, nobody 29 Apr
			device-test: Wed 28 Apr, leaving 29 Apr; not Sat 1 May, nobody 29 Apr`,
	},
	{
		// The weekly watch before a moult, which the log brought, is done when somebody is
		// there: what would fall on Monday the 12th and the 19th on the visits that follow.
		title: "tasks of the log wait for somebody",
		plan:  staff + away("lead", "10 Jul", "24 Jul", "cover = \"sitter\"\nvisits = [\"wed\"]") + box("ash", one),
		log:   "5 Jul ash premoult",
		now:   "6 Jul", from: "5 Jul", to: "26 Jul",
		want: `premoult/2027-07-05: Mon 5 Jul; not Mon 12 Jul, nobody 10 Jul; Wed 14 Jul, visit 10 Jul, by sitter; not Mon 19 Jul, nobody 10 Jul; Wed 21 Jul, visit 10 Jul, by sitter; Mon 26 Jul`,
	},
	{
		// The round is on Tuesdays and Thursdays. The last before leaving is on Thursday the
		// 8th, and the first after the return of Monday the 19th on Tuesday; on that Tuesday
		// in between on which the sitter comes water is renewed too.
		title: "rounds that are not held every day",
		plan: strings.Replace(staff, "  at ", "  on     = [\"tue\", \"thu\"]\n  at ", 1) + away("lead", "10 Jul", "19 Jul", "cover = \"sitter\"\nvisits = [\"sun\", \"tue\"]") +
			ash(`care "water" { on = ["thu"] } care "device-test" { on = ["thu"] }`),
		now: "1 Jul", from: "7 Jul", to: "22 Jul",
		want: `
			water: Thu 8 Jul; Tue 13 Jul, leaving 10 Jul, by sitter; not Thu 15 Jul, nobody 10 Jul; Tue 20 Jul, return 10 Jul, last 13 Jul; Thu 22 Jul
			device-test: Thu 8 Jul, leaving 10 Jul; not Thu 15 Jul, nobody 10 Jul; Tue 20 Jul, return 10 Jul; Thu 22 Jul`,
	},
	{
		// And nobody stands in: Friday the 9th has no round, nor has the day of the return.
		title: "the last round before leaving",
		plan:  strings.Replace(staff, "  at ", "  on     = [\"tue\", \"thu\"]\n  at ", 1) + away("lead", "10 Jul", "19 Jul", "") + ash(`care "water" { on = ["thu"] }`),
		now:   "1 Jul", from: "7 Jul", to: "22 Jul",
		want: `water: Thu 8 Jul, leaving 10 Jul; not Thu 15 Jul, nobody 10 Jul; Tue 20 Jul, return 10 Jul, last 8 Jul; Thu 22 Jul`,
	},
}

func TestAbsences(t *testing.T) { each(t, absenceDays) }
