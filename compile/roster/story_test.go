package roster_test

import (
	"fmt"
	"strings"
	"testing"

	"vivary/compile/rounds"
	"vivary/internal/planned"
	"vivary/schema/civil"
)

// week lists every round of some days, as a keeper sees it.
func week(t testing.TB, text, log string, on, from, until civil.Date) string {
	t.Helper()
	r := compiled(t, text, log, on)
	var b strings.Builder
	for d := from; d < until; d++ {
		i, _ := r.Horizon.Index(d)
		for _, round := range r.Roster.Rounds {
			picks := r.Roster.Picks(round, "")
			walk := rounds.New(r.Roster, round, picks)
			sheet := walk.On(i)
			if len(sheet.Lines) == 0 {
				continue
			}
			fmt.Fprintf(&b, "%s %s %s\n", d.Weekday().String()[:3], d, round.Clock.V)
			for _, l := range sheet.Lines {
				fmt.Fprintf(&b, "  %s\n", l)
			}
		}
	}
	return b.String()
}

// TestOneQuietRound: three boxes, a look every day, water on three days, a meal a
// week. In the week of Monday 4 January 2027 there are exactly seven rounds.
func TestOneQuietRound(t *testing.T) {
	rest := one + `
  care "look" {
    every = "day"
  }
  care "water" {
    on = ["mon", "wed", "fri"]
  }
  feeding "only" {
    on         = ["sun"]
    window     = "1 day"
    per_animal = 1
    prey       = "cricket small"
  }
`
	text := house("round \"evening\" {\n  at     = \"19:30\"\n  within = \"20 min\"\n}\n", box("ash", rest), box("birch", rest), box("cedar", rest))
	const want = `Mon 2027-01-04 19:30
  - Ash, Birch, Cedar: lid shut? animals seen or hidden; fresh water; take out leftovers
Tue 2027-01-05 19:30
  - Ash, Birch, Cedar: lid shut? animals seen or hidden
Wed 2027-01-06 19:30
  - Ash, Birch, Cedar: lid shut? animals seen or hidden; fresh water
Thu 2027-01-07 19:30
  - Ash, Birch, Cedar: lid shut? animals seen or hidden
Fri 2027-01-08 19:30
  - Ash, Birch, Cedar: lid shut? animals seen or hidden; fresh water
Sat 2027-01-09 19:30
  - Ash, Birch, Cedar: lid shut? animals seen or hidden
Sun 2027-01-10 19:30
  - Ash, Birch, Cedar: lid shut? animals seen or hidden; feed 1 small cricket each (2 in all, for 2 animals)
Mon 2027-01-11 19:30
  - Ash, Birch, Cedar: lid shut? animals seen or hidden; fresh water; take out leftovers
`
	// Whether it is built on that Monday or weeks before makes no difference.
	for _, on := range []string{"2026-12-20", "2027-01-03", "2027-01-04"} {
		if got := week(t, text, "", day(on), day("2027-01-04"), day("2027-01-12")); got != want {
			t.Errorf("built on %s:\n%s\nwant:\n%s", on, got, want)
		}
	}
}

// TestNightIsRefused: on 28 March 2027 there is no 01:30 in London, so that no
// care is planned for it on any day.
func TestNightIsRefused(t *testing.T) {
	for _, when := range []string{"at = \"01:30\"\n    every = \"day\"", "cron = \"30 1 * * *\"", "cron = \"0 0,12 * * *\""} {
		text := house(box("ash", one+"  care \"heat\" {\n    "+when+"\n  }\n"))
		c, found := planned.Files(t, planned.With(text, ""))
		if len(found) == 0 || c.Location != nil && when[0] == 'c' {
			r := compiled(t, text, "", day("2027-03-01"))
			found = r.Findings
		}
		said := false
		for _, f := range found {
			said = said || f.Severity.Refuses() && strings.Contains(f.Text, "between 00:00 and 03:59")
		}
		if !said {
			t.Errorf("%s is not refused: %v", when, found)
		}
	}
}

// TestTwoWeeksOff: the keeper is away from Sat 10 to Sat 24 July 2027, and the
// stand-in comes on Tuesdays and Saturdays. What falls between two visits is done
// at both, so that dishes are full when the stand-in goes; and on the return.
func TestTwoWeeksOff(t *testing.T) {
	text := house("keeper \"lead\" {\n}\nkeeper \"sitter\" {\n}\nround \"evening\" {\n  at     = \"19:30\"\n  keeper = \"lead\"\n}\naway \"lead\" {\n  from   = \"2027-07-10\"\n  to     = \"2027-07-24\"\n  cover  = \"sitter\"\n  visits = [\"tue\", \"sat\"]\n}\n",
		box("ash", one+"  care \"water\" {\n    every = \"2 days\"\n    from  = \"2027-07-01\"\n  }\n  care \"weigh\" {\n    on = [\"wed\"]\n  }\n"))
	r := compiled(t, text, "", day("2027-06-01"))
	for name, want := range map[string]string{
		"water": "Mon 5 Jul, Wed 7 Jul, Fri 9 Jul, Sat 10 Jul, Tue 13 Jul, Sat 17 Jul, Tue 20 Jul, Sat 24 Jul, Sun 25 Jul, Tue 27 Jul",
		"weigh": "Wed 7 Jul, Sat 24 Jul, Wed 28 Jul",
	} {
		if got := days(r, find(t, r, "ash", name), day("2027-07-05"), day("2027-07-29")); got != want {
			t.Errorf("%s: %s\nwant %s", name, got, want)
		}
	}
}
