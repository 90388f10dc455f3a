package roster_test

import (
	"strings"
	"testing"

	"vivary/plan/source"
)

// staff is a keeper, two who may stand in, and a round that is the keeper's. Nobody
// but the friend may feed live prey.
const staff = `
keeper "lead" {
}
keeper "sitter" {
}
keeper "friend" {
  trained = "feeding"
}
round "evening" {
  at     = "19:30"
  keeper = "lead"
}
`

// away is an absence of a keeper.
func away(keeper, from, to, rest string) string {
	return "away \"" + keeper + "\" {\n  from = \"" + on(from).String() + "\"\n  to = \"" + on(to).String() + "\"\n" + rest + "\n}\n"
}

// water is box ash with fresh water at that time.
func water(when string) string { return ash(`care "water" { ` + when + ` }`) }

// ash is box ash with two juveniles and the given blocks, which may stand on one line
// with semicolons.
func ash(blocks string) string {
	blocks = strings.NewReplacer("{ ", "{\n", " }", "\n}\n", "; ", "\n").Replace(blocks)
	return box("ash", one+blocks)
}

// lone is a plan in which there is a single animal where ash has two: what is seen of
// one is then of all that there are.
func lone(plan string) string { return strings.ReplaceAll(plan, "count = 2", "count = 1") }

// peopleDays: the absences of one keeper are one set of days, and who stands in is
// decided day by day.
var peopleDays = []example{
	{
		// Two of the three are there from the 10th to the 12th. Nobody enters alone: water
		// goes through the hatch, and the cleaning waits until all three are there.
		title: "too few",
		plan: strings.Replace(staff, "keeper = \"lead\"", "keeper = \"lead\"\n  people = 3", 1) + away("friend", "10 Jul", "13 Jul", "") +
			ash(`care "water" { every = "day" }; care "spot-clean" { on = ["sun"] }`),
		now: "1 Jul", from: "10 Jul", to: "13 Jul",
		want: `
			water: Sat 10 Jul; Sun 11 Jul; Mon 12 Jul; Tue 13 Jul
			spot-clean: not Sun 11 Jul, too few 10 Jul; Tue 13 Jul, enough 10 Jul`,
	},
	{
		// The trip from the 5th to the 12th is extended to the 19th by a block of its own.
		// On the 10th and the 11th it is the later one by which the keeper is away.
		title: "absences that overlap",
		plan: staff + away("lead", "10 Jul", "19 Jul", "cover = \"sitter\"\nvisits = [\"tue\"]") +
			away("lead", "5 Jul", "12 Jul", "cover = \"sitter\"\nvisits = [\"tue\"]") +
			water(`every = "3 days"; from = "2027-07-01"`),
		now: "1 Jul", from: "1 Jul", to: "22 Jul",
		want: `water: Thu 1 Jul; Sun 4 Jul; Tue 6 Jul, leaving 5 Jul, by sitter; not Wed 7 Jul, nobody 5 Jul; not Sat 10 Jul, nobody 10 Jul; Tue 13 Jul, visit 10 Jul, leaving 10 Jul, by sitter; not Fri 16 Jul, nobody 10 Jul; Mon 19 Jul, return 10 Jul, last 13 Jul; Thu 22 Jul`,
	},
	{
		// The second begins on the day on which the first ends: nobody is back between them.
		title: "absences that touch",
		plan: staff + away("lead", "5 Jul", "12 Jul", "cover = \"sitter\"\nvisits = [\"tue\"]") +
			away("lead", "12 Jul", "19 Jul", "cover = \"friend\"\nvisits = [\"thu\"]") +
			water(`every = "4 days"; from = "2027-07-04"`),
		now: "1 Jul", from: "1 Jul", to: "20 Jul",
		want: `water: Sun 4 Jul; Tue 6 Jul, leaving 5 Jul, by sitter; not Thu 8 Jul, nobody 5 Jul; not Mon 12 Jul, nobody 12 Jul; Thu 15 Jul, visit 12 Jul, leaving 12 Jul, by friend; not Fri 16 Jul, nobody 12 Jul; Mon 19 Jul, return 12 Jul, last 15 Jul; Tue 20 Jul`,
	},
	{
		// The keeper is back on the 8th and leaves again on the 9th.
		title: "a day at home between two absences",
		plan:  staff + away("lead", "5 Jul", "8 Jul", "") + away("lead", "9 Jul", "12 Jul", "") + water(`every = "2 days"; from = "2027-07-01"`),
		now:   "1 Jul", from: "1 Jul", to: "13 Jul",
		want: `water: Thu 1 Jul; Sat 3 Jul; Sun 4 Jul, leaving 5 Jul; not Mon 5 Jul, nobody 5 Jul; not Wed 7 Jul, nobody 5 Jul; Thu 8 Jul, leaving 9 Jul, return 5 Jul, last 4 Jul; not Fri 9 Jul, nobody 9 Jul; not Sun 11 Jul, nobody 9 Jul; Mon 12 Jul, return 9 Jul, last 8 Jul; Tue 13 Jul`,
	},
	{
		// What stands within another takes nothing from it: its stand-in comes all the same,
		// and the keeper is back on the 19th.
		title: "an absence within another",
		plan: staff + away("lead", "5 Jul", "19 Jul", "cover = \"sitter\"\nvisits = [\"tue\"]") + away("lead", "8 Jul", "12 Jul", "") +
			water(`every = "3 days"; from = "2027-07-01"`),
		now: "1 Jul", from: "5 Jul", to: "22 Jul",
		want: `water: Tue 6 Jul, leaving 5 Jul, by sitter; not Wed 7 Jul, nobody 5 Jul; not Sat 10 Jul, nobody 8 Jul; Tue 13 Jul, visit 5 Jul, leaving 5 Jul, by sitter; not Fri 16 Jul, nobody 5 Jul; Mon 19 Jul, return 5 Jul, last 13 Jul; Thu 22 Jul`,
	},
	{
		// On the 10th and the 11th both could come. It is the first that was asked, and the
		// plan is refused for it.
		title: "two covers on a day",
		plan:  staff + away("lead", "9 Jul", "12 Jul", `cover = "sitter"`) + away("lead", "10 Jul", "14 Jul", `cover = "friend"`) + water(`every = "day"`),
		now:   "1 Jul", from: "8 Jul", to: "14 Jul",
		want: `water: Thu 8 Jul; Fri 9 Jul, by sitter; Sat 10 Jul, by sitter; Sun 11 Jul, by sitter; Mon 12 Jul, by friend; Tue 13 Jul, by friend; Wed 14 Jul`,
	},
	{
		// The sitter is away from the 7th to the 9th, and comes on the 6th and the 9th.
		title: "a cover who is away",
		plan:  staff + away("lead", "6 Jul", "10 Jul", `cover = "sitter"`) + away("sitter", "7 Jul", "9 Jul", "") + water(`every = "day"`),
		now:   "1 Jul", from: "5 Jul", to: "10 Jul",
		want: `water: Mon 5 Jul; Tue 6 Jul, leaving 6 Jul, by sitter; not Wed 7 Jul, nobody 6 Jul; not Thu 8 Jul, nobody 6 Jul; Fri 9 Jul, visit 6 Jul, by sitter; Sat 10 Jul`,
	},
	{
		title: "a cover that is oneself",
		plan:  staff + away("lead", "6 Jul", "8 Jul", `cover = "lead"`) + water(`every = "day"`),
		now:   "1 Jul", from: "5 Jul", to: "9 Jul",
		want: `water: Mon 5 Jul, leaving 6 Jul; not Tue 6 Jul, nobody 6 Jul; not Wed 7 Jul, nobody 6 Jul; Thu 8 Jul, return 6 Jul, last 5 Jul; Fri 9 Jul`,
	},
	{
		// The window begins on 28 April, 64 days before today. Nobody is known to have been
		// there before.
		title: "a run that began before the window",
		plan:  staff + away("lead", "1 Jan", "30 Apr", "") + water(`every = "day"`) + "",
		now:   "1 Jul", from: "28 Apr", to: "1 May",
		want: `water: not Wed 28 Apr, nobody 1 Jan; not Thu 29 Apr, nobody 1 Jan; Fri 30 Apr, return 1 Jan; Sat 1 May`,
	},
	{
		title: "days of visits of every kind",
		plan:  staff + away("lead", "1 Jul", "10 Aug", "cover = \"sitter\"\nvisits = [\"first sat\", \"15th\", \"last\", \"4 aug\", \"mon\"]") + water(`every = "day"`),
		now:   "1 Jun", from: "12 Jul", to: "11 Aug",
		want: `water: Mon 12 Jul, visit 1 Jul, leaving 1 Jul, by sitter; ` +
			nobody("13 Jul", "14 Jul", "1 Jul") + `Thu 15 Jul, visit 1 Jul, leaving 1 Jul, by sitter; ` +
			nobody("16 Jul", "18 Jul", "1 Jul") + `Mon 19 Jul, visit 1 Jul, leaving 1 Jul, by sitter; ` +
			nobody("20 Jul", "25 Jul", "1 Jul") + `Mon 26 Jul, visit 1 Jul, leaving 1 Jul, by sitter; ` +
			nobody("27 Jul", "30 Jul", "1 Jul") + `Sat 31 Jul, visit 1 Jul, leaving 1 Jul, by sitter; ` +
			nobody("1 Aug", "1 Aug", "1 Jul") + `Mon 2 Aug, visit 1 Jul, leaving 1 Jul, by sitter; ` +
			nobody("3 Aug", "3 Aug", "1 Jul") + `Wed 4 Aug, visit 1 Jul, leaving 1 Jul, by sitter; ` +
			nobody("5 Aug", "6 Aug", "1 Jul") + `Sat 7 Aug, visit 1 Jul, leaving 1 Jul, by sitter; ` +
			nobody("8 Aug", "8 Aug", "1 Jul") + `Mon 9 Aug, visit 1 Jul, by sitter; Tue 10 Aug; Wed 11 Aug`,
	},
}

// nobody is a run of days without anybody, of an absence from a day on.
func nobody(from, to, absence string) string {
	text := ""
	for d := on(from); d <= on(to); d++ {
		text += "not " + short(d) + ", nobody " + absence + "; "
	}
	return text
}

func TestPeople(t *testing.T) { each(t, peopleDays) }

// TestDaysOfVisits: a list of days means the same in every month.
func TestDaysOfVisits(t *testing.T) {
	for visits, want := range map[string]string{
		`"first sat"`:         "Sat 3 Jul; Sat 7 Aug; Sat 4 Sep; Sat 2 Oct",
		`"15th"`:              "Thu 15 Jul; Sun 15 Aug; Wed 15 Sep; Fri 15 Oct",
		`"last"`:              "Sat 31 Jul; Tue 31 Aug; Thu 30 Sep",
		`"4 aug"`:             "Wed 4 Aug",
		`"4 aug", "last mon"`: "Mon 26 Jul; Wed 4 Aug; Mon 30 Aug; Mon 27 Sep",
	} {
		r := compiled(t, house(staff, away("lead", "1 Jul", "20 Oct", "cover = \"sitter\"\nvisits = ["+visits+"]"), water(`every = "day"`)), "", on("1 Jul"))
		var got []string
		days := r.Roster.People.Of("lead").Visits
		for i := days.Next(0); i >= 0; i = days.Next(i + 1) {
			got = append(got, short(r.Horizon.Date(i)))
		}
		if strings.Join(got, "; ") != want {
			t.Errorf("%s: %s\nwant %s", visits, strings.Join(got, "; "), want)
		}
	}
}

// TestARunThatEndsBehindTheWindow: who is away for longer than is looked ahead does
// not come back in the window, nor does the last meal before it know of a return.
func TestARunThatEndsBehindTheWindow(t *testing.T) {
	text := house(staff, strings.Replace(away("lead", "10 Jul", "11 Jul", ""), "to = \"2027-07-11\"", "to = \"2039-01-01\"", 1), water(`every = "day"`))
	r := compiled(t, text, "", on("1 Jul"))
	e := find(t, r, "ash", "water")
	last := e.Days.Last(r.Horizon.Days)
	if got := r.Horizon.Date(last); got != on("9 Jul") {
		t.Errorf("the last water is on %s", got)
	}
	run := r.Roster.People.Of("lead").Runs[0]
	if run.To != r.Horizon.Days || run.Ends != day("2039-01-01") || run.Begun != on("10 Jul") {
		t.Errorf("the run is %+v of %d days", run, r.Horizon.Days)
	}
	if at := r.Roster.People.Present("lead", last+1); at < r.Horizon.Days {
		t.Errorf("somebody is there on %s", r.Horizon.Date(at))
	}
}

// TestWhoIsAway: of keepers who are never away nothing is kept, and what is over
// before the window, or has no end, is no absence.
func TestWhoIsAway(t *testing.T) {
	text := house(staff, away("sitter", "20 Jul", "21 Jul", ""), away("lead", "10 Jul", "12 Jul", ""), away("friend", "1 Jan", "28 Apr", ""), water(`every = "day"`))
	r := compiled(t, text, "", on("1 Jul"))
	p := r.Roster.People
	if all := p.Duties(); len(all) != 2 || all[0].Keeper != "lead" || all[1].Keeper != "sitter" {
		t.Errorf("%d keepers are away", len(all))
	}
	if p.Of("friend") != nil || p.Of("lead").Away.Count() != 2 || p.Only != "" {
		t.Errorf("friend is away %v, lead %v", p.Of("friend"), p.Of("lead").Away)
	}
	i, _ := r.Horizon.Index(on("10 Jul"))
	if p.Present("lead", i-1) != i-1 || p.Present("lead", i) != i+2 || p.Present("friend", i) != i {
		t.Errorf("lead is there from %d and %d", p.Present("lead", i-1), p.Present("lead", i))
	}
}

// TestAbsenceEndsWithTheWindowsFirstDay: one that ends on the first day of the window
// takes no day of it, and one that ends a day later takes one.
func TestAbsenceEndsWithTheWindowsFirstDay(t *testing.T) {
	for to, want := range map[string]int{"28 Apr": 0, "29 Apr": 1} {
		r := compiled(t, house(staff, away("lead", "1 Jan", to, ""), water(`every = "day"`)), "", on("1 Jul"))
		if n := len(r.Roster.People.Duties()); n != want {
			t.Errorf("until %s: %d keepers are away", to, n)
		}
	}
}

// TestTwoCoversAreSaidAtBothLines: the finding stands at one cover and points to the
// other, which is the one whose days it shares.
func TestTwoCoversAreSaidAtBothLines(t *testing.T) {
	for _, c := range []struct{ plan, text string }{
		{away("lead", "1 Jul", "3 Jul", `cover = "sitter"`) + away("lead", "9 Jul", "12 Jul", `cover = "sitter"`) + away("lead", "10 Jul", "14 Jul", `cover = "friend"`),
			"on Sat 10 Jul 2027 both sitter and friend stand in for lead, and each may think that the other comes"},
		{away("lead", "9 Jul", "20 Jul", "cover = \"sitter\"\nvisits = [\"mon\"]") + away("lead", "10 Jul", "20 Jul", "cover = \"friend\"\nvisits = [\"tue\", \"19 jul\"]"),
			"on Mon 19 Jul 2027 both sitter and friend stand in for lead, and each may think that the other comes"},
		{away("lead", "9 Jul", "20 Jul", "cover = \"sitter\"\nvisits = [\"mon\"]") + away("lead", "10 Jul", "20 Jul", "cover = \"friend\"\nvisits = [\"tue\"]"), ""},
		// Two blocks have the sitter come: it is one person, and said once.
		{away("lead", "9 Jul", "11 Jul", `cover = "sitter"`) + away("lead", "9 Jul", "12 Jul", `cover = "sitter"`) + away("lead", "10 Jul", "14 Jul", `cover = "friend"`),
			"on Sat 10 Jul 2027 both sitter and friend stand in for lead, and each may think that the other comes"},
		{away("lead", "9 Jul", "20 Jul", `cover = "sitter"`) + away("lead", "10 Jul", "24 Jul", `cover = "sitter"`), ""},
	} {
		plan := house(staff, c.plan, water(`every = "day"`))
		r := compiled(t, plan, "", on("1 Jul"))
		said := ""
		for _, f := range r.Findings {
			if f.Rule.ID != "two-covers" {
				continue
			}
			said += f.Text
			if got := line(r.Plan.Files, f.At); got != `cover = "friend"` {
				t.Errorf("it is said at %s", got)
			}
			if len(f.Also) != 1 || line(r.Plan.Files, f.Also[0].At) != `cover = "sitter"` {
				t.Fatalf("the other is %+v", f.Also)
			}
			before := plan[:f.Also[0].At.Start]
			if block := before[strings.LastIndex(before, "away"):]; !strings.Contains(block, "from = \"2027-07-09\"") {
				t.Errorf("the other stands in %s", block)
			}
		}
		if said != c.text {
			t.Errorf("%s\nsays %q\nwant %q", c.plan, said, c.text)
		}
	}
}

// line is the line of a place.
func line(files *source.Set, at source.Place) string {
	text, _, _ := files.Line(at)
	return strings.TrimSpace(text)
}
