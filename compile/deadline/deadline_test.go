package deadline_test

import (
	"fmt"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"
	"time"

	"vivary/compile"
	"vivary/compile/deadline"
	"vivary/internal/planned"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/quantity"
)

const house = `collection "c" {
  time_zone = "Europe/London"
}
`

// of are the dates of a house as of a day.
func of(t testing.TB, plan, log, today string) []deadline.Deadline {
	t.Helper()
	c, found := planned.Files(t, map[string]string{"plan.care.hcl": house + plan, "records.care.log": "# a log\n" + log})
	for _, f := range found {
		if f.Severity.Refuses() && f.Rule.ID != "missing" {
			t.Fatalf("the plan was refused: %s", f.Text)
		}
	}
	on, err := civil.Parse(today)
	if err != nil {
		t.Fatal(err)
	}
	return deadline.Of(c, on, on+compile.Ahead, compile.Kept)
}

// days are on which days something is told as of a day, each with what it says.
func days(all []deadline.Deadline, today string) (out []string) {
	on, _ := civil.Parse(today)
	for i := range all {
		for k := range all[i].Times {
			t := &all[i].Times[k]
			for _, d := range t.Days(on, on-compile.Kept, on+compile.Ahead) {
				out = append(out, d.Short()+" "+d.String()[:4]+": "+all[i].Line(t, d))
			}
		}
	}
	return out
}

const licence = `deadline "licence" {
  title = "Licence"
  kind  = "licence"
  by    = "2028-02-28"
}
`

// A licence that ends on 28 February 2028 is told from the 30th of November on, ninety days
// before (the sum by hand: 28 in February, 31, 31, and the 30th), each week until it is logged.
func TestLicenceIsToldNinetyDaysBeforeAndWeeklyUntilLogged(t *testing.T) {
	told := days(of(t, licence, "", "2027-11-01"), "2027-11-01")
	if want := "Tue 30 Nov 2027: Licence: apply, book vet, check insurance (by Mon 28 Feb 2028)"; told[0] != want {
		t.Errorf("first told: %s, want %s", told[0], want)
	}
	if len(told) != 14 || !strings.HasPrefix(told[1], "Tue 7 Dec 2027") || told[13] != "Mon 28 Feb 2028: Licence: apply, book vet, check insurance (today)" {
		t.Errorf("told on %d days: %q", len(told), told)
	}
	log := "2027-12-15 deadline licence done \"applied\"\n"
	if told = days(of(t, licence, log, "2027-12-20"), "2027-12-20"); len(told) != 3 || !strings.HasPrefix(told[2], "Tue 14 Dec") {
		t.Errorf("logged as done on 15 December, it is told on %q", told)
	}
	if told = days(of(t, licence, "", "2028-03-10"), "2028-03-10"); !slices.ContainsFunc(told, func(s string) bool {
		return strings.HasPrefix(s, "Mon 13 Mar 2028: OVERDUE since Mon 28 Feb 2028")
	}) {
		t.Errorf("overdue it is told on %q", told[:min(4, len(told))])
	}
	// Another day in the block, two years on: what was logged of the last licence does not count.
	if d := of(t, strings.Replace(licence, "2028", "2030", 1), log, "2029-12-10"); d[0].Times[0].Done != 0 || len(deadline.Told(d, civil.Must(2029, 12, 10))) != 1 {
		t.Errorf("the next licence: %+v", d[0].Times)
	}
}

// Records are kept for the whole of a time: made on 2 May 2027 for three years to 2 May 2030, for
// five to 2032; made on 29 February 2028 to 1 March 2031, since the 28th would be a day short.
func TestRecordsAreKeptForAllOfTheirTime(t *testing.T) {
	years := func(n int) quantity.Interval { return quantity.Interval{N: n, Unit: quantity.Year} }
	for _, c := range []struct {
		made, want civil.Date
		keep       quantity.Interval
	}{
		{civil.Must(2027, 5, 2), civil.Must(2030, 5, 2), years(3)},
		{civil.Must(2027, 5, 2), civil.Must(2032, 5, 2), years(5)},
		{civil.Must(2028, 2, 29), civil.Must(2031, 3, 1), years(3)},
		{civil.Must(2028, 2, 29), civil.Must(2032, 2, 29), years(4)},
		{civil.Must(2027, 12, 31), civil.Must(2028, 7, 1), quantity.Interval{N: 6, Unit: quantity.Month}},
		{civil.Must(2027, 5, 2), civil.Must(2027, 7, 31), quantity.Interval{N: 90, Unit: quantity.Day}},
	} {
		if got := deadline.KeptUntil(c.made, c.keep); got != c.want {
			t.Errorf("made %s, kept %s: until %s, want %s", c.made, c.keep, got, c.want)
		}
	}
}

// What comes again on a 29th of February is due on the 28th in other years: early, and never late.
func TestWhatComesYearlyOnThe29thIsNeverLate(t *testing.T) {
	d := of(t, "deadline \"policy\" {\n  kind = \"insurance\"\n  by   = \"2028-02-29\"\n}\n", "2028-02-20 deadline policy done\n2029-02-20 deadline policy done\n", "2029-03-01")
	if got := d[0].Times[len(d[0].Times)-1].By; d[0].Times[0].By != civil.Must(2029, 2, 28) || got != civil.Must(2030, 2, 28) && got != civil.Must(2031, 2, 28) {
		t.Errorf("times %+v", d[0].Times)
	}
}

// Twice a year the cards are tried, and heat packs go off: nothing else of a power cut is in a
// calendar.
func TestDrillsAreOnTheFirstOfAprilAndOctober(t *testing.T) {
	told := days(of(t, "deadline \"drill\" {\n  kind  = \"drill\"\n  by    = \"2027-04-01\"\n  lead  = \"0 days\"\n}\ndeadline \"packs\" {\n  kind = \"heat-packs\"\n  by   = \"2027-11-15\"\n  lead = \"0 days\"\n}\n", "", "2027-01-10"), "2027-01-10")
	var on []string
	for _, s := range told {
		on = append(on, s[:strings.Index(s, ":")])
	}
	if want := []string{"Thu 1 Apr 2027", "Fri 1 Oct 2027", "Mon 15 Nov 2027"}; !slices.Equal(on, want) {
		t.Errorf("told %q, want %q", on, want)
	}
}

// An accepted finding has its day, named, once for all boxes that say the same.
func TestWhatIsAcceptedIsToldToBeReviewed(t *testing.T) {
	box := "enclosure \"%s\" {\n  species = \"pandinus-imperator\"\n  accept \"substrate-shallow\" {\n    because = \"a deeper one arrives\"\n    until   = \"2027-09-01\"\n  }\n}\n"
	all := of(t, licence+fmt.Sprintf(box, "a")+fmt.Sprintf(box, "b"), "", "2027-06-01")
	if len(all) != 2 || all[1].Times[0].By != civil.Must(2027, 9, 1) || !strings.Contains(all[1].Does, "(A and B)") || !strings.Contains(all[1].Title, "substrate-shallow") {
		t.Errorf("%+v", all)
	}
	if all = of(t, fmt.Sprintf(box, "a"), "", "2027-06-01"); all != nil {
		t.Errorf("a house that writes no dates has %+v", all)
	}
}

// A test counts from when it was done, not from when it was due.
func TestTestsCountFromTheLastOne(t *testing.T) {
	rcd := "deadline \"rcd\" {\n  kind = \"rcd-test\"\n  last = \"2026-09-01\"\n}\n"
	if d := of(t, rcd, "", "2027-01-01"); d[0].Times[0].By != civil.Must(2027, 3, 1) || d[0].Times[0].From != civil.Must(2027, 2, 22) {
		t.Errorf("%+v", d[0].Times)
	}
	d := of(t, rcd, "2027-03-20 deadline rcd done\n", "2027-04-01")
	if d[0].Times[0].Done != civil.Must(2027, 3, 20) || d[0].Times[1].By != civil.Must(2027, 9, 20) {
		t.Errorf("%+v", d[0].Times)
	}
	if d = of(t, rcd, "2027-03-20 deadline rcd done\n2027-03-21 deadline rcd withdrawn done 2027-03-20\n", "2027-04-01"); d[0].Times[0].Done != 0 || len(d[0].Times) != 1 {
		t.Errorf("taken back: %+v", d[0].Times)
	}
}

// Every kind has a lead that ends before it comes again, what to do, and a source.
func TestKindsAreWhole(t *testing.T) {
	for _, k := range schema.DeadlineKinds {
		if k.Doc == "" || k.Does == "" || k.Source == "" || k.Counted && k.Every.N == 0 || k.Lead < 0 {
			t.Errorf("%s: %+v", k.Name, k)
		}
	}
	for name, lead := range map[string]int{"licence": 90, "insurance": 30, "vet-contract": 30, "inventory": 30} {
		if k := schema.FindDeadlineKind(name); k.Lead != lead {
			t.Errorf("%s has a lead of %d days, want %d", name, k.Lead, lead)
		}
	}
}

// Of any dates and any lines of a log: what is open stays told until it is done, at least each
// week from its lead on; one that was done is told no more; days are in order, and none twice.
func TestWhatIsOpenIsToldEachWeek(t *testing.T) {
	rng := rand.New(rand.NewPCG(7, 11))
	first := civil.Must(2027, 6, 1)
	for range 2000 {
		today := first + civil.Date(rng.IntN(900))
		var b strings.Builder
		b.WriteString("deadline \"d\" {\n")
		if rng.IntN(3) > 0 {
			fmt.Fprintf(&b, "  kind = %q\n", schema.DeadlineKinds[rng.IntN(len(schema.DeadlineKinds))].Name)
		}
		by, last := today+civil.Date(rng.IntN(800)-400), civil.Date(0)
		if rng.IntN(3) > 0 {
			fmt.Fprintf(&b, "  by = %q\n", by)
		} else {
			last = today - civil.Date(rng.IntN(900))
			fmt.Fprintf(&b, "  last = %q\n  every = \"%d months\"\n", last, 1+rng.IntN(24))
		}
		if rng.IntN(2) == 0 {
			fmt.Fprintf(&b, "  lead = \"%d days\"\n", rng.IntN(200))
		}
		b.WriteString("}\n")
		var log string
		at := today - 900
		for range rng.IntN(5) {
			at += civil.Date(rng.IntN(400))
			log += at.String() + " deadline d done\n"
		}
		all := of(t, b.String(), log, today.String())
		d := &all[0]
		if len(d.Times) == 0 {
			if last == 0 && !strings.Contains(log, " done") {
				t.Fatalf("%s%s as of %s: nothing is told", b.String(), log, today)
			}
			continue
		}
		opened := false
		for k := range d.Times {
			x := &d.Times[k]
			if k > 0 && x.By <= d.Times[k-1].By || x.From > x.By {
				t.Fatalf("%s%s as of %s: times are not in order: %+v", b.String(), log, today, d.Times)
			}
			on := x.Days(today, today-compile.Kept, today+compile.Ahead)
			if x.Done > 0 {
				if opened || len(on) > 0 && on[len(on)-1] > x.Done {
					t.Fatalf("%s%s as of %s: told after it was done: %+v", b.String(), log, today, d.Times)
				}
				continue
			}
			if opened && x.By < today {
				t.Fatalf("%s%s as of %s: overdue twice: %+v", b.String(), log, today, d.Times)
			}
			opened = true
			end := x.By
			if x.By < today {
				end = today + compile.Ahead - 7
				if x.Next > 0 {
					end = min(end, x.Next-7)
				}
			}
			for from := max(x.From, today-compile.Kept); from <= min(end, today+compile.Ahead-7); from++ {
				if !slices.ContainsFunc(on, func(o civil.Date) bool { return o >= from && o < from+7 }) {
					t.Fatalf("%s%s as of %s: nothing is told in the week of %s: %+v", b.String(), log, today, from, x)
				}
			}
		}
	}
}

// Whatever is written, it ends soon: an interval of a day since long ago, a log of many lines.
func TestFarDaysAreBounded(t *testing.T) {
	began := time.Now()
	var log strings.Builder
	for d := civil.Must(2000, 1, 1); d < civil.Must(2027, 1, 1); d++ {
		fmt.Fprintf(&log, "%s deadline d done\n", d)
	}
	for _, plan := range []string{
		"deadline \"d\" {\n  by    = \"1900-01-01\"\n  every = \"day\"\n}\n",
		"deadline \"d\" {\n  last  = \"1900-01-01\"\n  every = \"day\"\n}\n",
		"deadline \"d\" {\n  by    = \"1900-01-31\"\n  every = \"month\"\n  lead  = \"3000 days\"\n}\n",
		"deadline \"d\" {\n  by    = \"9999-12-31\"\n  every = \"10 years\"\n}\n",
		"deadline \"d\" {\n  kind = \"salt-test\"\n}\n",
	} {
		for _, l := range []string{"", log.String()} {
			if all := of(t, plan, l, "2027-01-10"); len(all[0].Times) > 500 {
				t.Errorf("%s%d times", plan, len(all[0].Times))
			}
		}
	}
	if took := time.Since(began); took > 10*time.Second {
		t.Errorf("it took %s", took)
	}
}
