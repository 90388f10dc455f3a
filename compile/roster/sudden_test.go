package roster_test

import (
	"slices"
	"strconv"
	"strings"
	"testing"

	"vivary/compile/roster"
)

// On the days of a sudden absence whoever is there does the rounds, the one who is trained
// in most; on those before it nothing is put, since nobody knew.
func TestSuddenAbsence(t *testing.T) {
	plan := house(staff, water(`every = "3 days"`))
	usual := find(t, compiled(t, plan, "", on("12 Jul")), "ash", "water")
	for _, c := range []struct {
		title, log, extra string
		from, to          string // the days away
		who               string // on those
		leaves            []string
	}{
		{"still away", "2027-07-10 keeper lead away \"ill\"\n", "", "10 Jul", "26 Jul", "friend", []string{"You stand in for Lead", "Lead is away"}},
		{"back", "2027-07-08 keeper lead away\n2027-07-11 keeper lead back\n", "", "8 Jul", "11 Jul", "friend", []string{"You stand in for Lead", "Lead is away", "Back today: catch up"}},
		{"with another away", "2027-07-10 keeper lead away\n", away("friend", "1 Jul", "20 Jul", ""), "10 Jul", "20 Jul", "sitter", nil},
		{"and nobody is left", "2027-07-10 keeper lead away\n", away("friend", "1 Jul", "30 Jul", "") + away("sitter", "1 Jul", "30 Jul", ""), "10 Jul", "26 Jul", "", []string{"Lead is away"}},
		{"on a trip that is covered", "2027-07-10 keeper lead away\n", away("lead", "10 Jul", "15 Jul", `cover = "sitter"`), "10 Jul", "15 Jul", "sitter", nil},
	} {
		t.Run(c.title, func(t *testing.T) {
			r := compiled(t, plan+c.extra, c.log, on("12 Jul"))
			e := find(t, r, "ash", "water")
			for d := on("6 Jul"); d < on("28 Jul"); d++ {
				i, _ := r.Horizon.Index(d)
				who, there := r.Roster.Doer(e, i)
				switch {
				case d >= on(c.from) && d < on(c.to):
					if who != c.who || there != (c.who != "") {
						t.Errorf("%s: %q, %v", short(d), who, there)
					}
				case d < on(c.from) && (who != "lead" || e.Days.Has(i) != usual.Days.Has(i)):
					t.Errorf("before, on %s: %q, stands %v", short(d), who, e.Days.Has(i))
				}
			}
			if e.Out(roster.Leaving) != nil {
				t.Error("something is done before leaving")
			}
			var titles []string
			for _, l := range r.Roster.Leaves() {
				if l.Away == "lead" {
					titles = append(titles, l.Title)
				}
			}
			if c.leaves != nil && strings.Join(titles, "; ") != strings.Join(c.leaves, "; ") {
				t.Errorf("leaves: %q", titles)
			}
		})
	}
}

// Who steps in is told so for as long as it lasts, also where a trip on which somebody else
// stands in goes on after it, and each only of their own time.
func TestWhoStepsInIsTold(t *testing.T) {
	plan := house(staff, water(`every = "3 days"`))
	for _, c := range []struct{ title, log, extra, want string }{
		{"from a day that is over", "2027-07-10 keeper lead away\n", "", "friend 10 Jul 16"},
		{"the other is on a trip at first", "2027-07-10 keeper lead away\n", away("friend", "1 Jul", "20 Jul", ""), "friend 20 Jul 6, sitter 10 Jul 10"},
		{"after a trip that is covered", "2027-07-14 keeper lead away\n", away("lead", "10 Jul", "15 Jul", `cover = "sitter"`), "friend 15 Jul 13"},
		{"nobody is there", "2027-07-10 keeper lead away\n", away("friend", "1 Jul", "30 Jul", "") + away("sitter", "1 Jul", "30 Jul", ""), ""},
	} {
		today := on("12 Jul")
		if strings.Contains(c.log, "07-14") {
			today = on("14 Jul")
		}
		var got []string
		for _, l := range compiled(t, plan+c.extra, c.log, today).Roster.Leaves() {
			if l.Away == "lead" && l.Sudden && strings.HasPrefix(l.Title, "You stand in") {
				got = append(got, l.For+" "+l.From.Brief()+" "+strconv.Itoa(l.Days))
				if len(l.Lines) < 3 {
					t.Errorf("%s: %q", c.title, l.Lines)
				}
			}
		}
		slices.Sort(got)
		if strings.Join(got, ", ") != c.want {
			t.Errorf("%s: %q, want %q", c.title, got, c.want)
		}
	}
}
