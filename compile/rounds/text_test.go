package rounds_test

import (
	"fmt"
	"maps"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"
	"unicode/utf8"

	"vivary/compile"
	"vivary/compile/roster"
	"vivary/compile/rounds"
	"vivary/internal/generated"
	"vivary/internal/planned"
	"vivary/plan"
	"vivary/schema/civil"
)

var today = civil.Must(2027, 2, 15)

// compiled compiles files as of noon of a day.
func compiled(t testing.TB, files map[string]string) *compile.Result {
	t.Helper()
	c, found := planned.Sound(t, files)
	return compile.Compile(c, found, today.At(12*60, c.Location))
}

// picks returns the series of a round, in walking order.
func picks(r *compile.Result, round *plan.Round) []roster.Pick { return r.Roster.Picks(round, "") }

// house returns a collection of n enclosures of one or two groups each, some in
// quarantine, some with mites, some held, with titles made by name.
func house(n int, rng *rand.Rand, name func(int) string) map[string]string {
	var b, log strings.Builder
	b.WriteString("collection \"fixtures\" {\n  time_zone  = \"Europe/London\"\n  quarantine = \"40 days\"\n}\nroom \"east\" {\n  temperature = \"21 to 24 C\"\n}\nround \"morning\" {\n  at = \"08:00\"\n}\nround \"evening\" {\n  at = \"19:30\"\n}\n")
	for i := range n {
		fmt.Fprintf(&b, "enclosure \"box-%d\" {\n  title   = %q\n  species = \"pandinus-imperator\"\n  housing {\n    kind   = \"glass\"\n    inside = \"60 x 40 x 40 cm\"\n    lid    = \"solid, latched\"\n  }\n", i, name(i))
		groups := []string{"adults"}
		if rng.IntN(2) == 0 {
			groups = append(groups, "young")
		}
		for k, g := range groups {
			fmt.Fprintf(&b, "  animals %q {\n    count = %d\n    stage = %q\n  }\n", g, 1+rng.IntN(4), []string{"adult", "juvenile"}[k])
			fmt.Fprintf(&b, "  feeding %q {\n    every      = \"%d days\"\n    per_animal = %d\n    rotate     = [\"cricket adult\", \"roach medium\", \"cricket adult\"]\n  }\n", g, 1+rng.IntN(4), 1+rng.IntN(2))
			switch rng.IntN(6) {
			case 0:
				fmt.Fprintf(&log, "2027-02-%02d box-%d %s arrived\n", 1+rng.IntN(14), i, g)
			case 1:
				fmt.Fprintf(&log, "2027-02-%02d box-%d %s premoult\n", 1+rng.IntN(14), i, g)
			case 2:
				fmt.Fprintf(&log, "2027-02-%02d box-%d mites\n", 1+rng.IntN(14), i)
			}
		}
		fmt.Fprintf(&b, "  care \"water\" {\n    every = \"%d days\"\n  }\n  care \"look\" {\n    every = \"day\"\n    round = [\"morning\", \"evening\"]\n  }\n", 1+rng.IntN(3))
		// A second care of the same words, in the same box.
		if rng.IntN(3) == 0 {
			b.WriteString("  care \"more-water\" {\n    kind  = \"water\"\n    every = \"2 days\"\n  }\n")
		}
		b.WriteString("}\n")
	}
	return map[string]string{"a.care.hcl": b.String(), "a.care.log": log.String()}
}

// TestTextIsTheSheet: the text of a calendar entry and the sheet of what is due say
// the same, and both say what the series of the round say of that day, once each.
func TestTextIsTheSheet(t *testing.T) {
	rng := rand.New(rand.NewPCG(1, 2))
	whole := 0
	for range 12 {
		r := compiled(t, house(1+rng.IntN(7), rng, func(i int) string { return fmt.Sprint("Box ", i) }))
		for _, round := range r.Roster.Rounds {
			var some []roster.Pick
			for _, p := range picks(r, round) {
				if rng.IntN(8) == 0 {
					continue
				}
				if rng.IntN(4) == 0 {
					p.Days = p.Entry.Days.Clone()
					for i := range p.Days {
						p.Days[i] &= rng.Uint64()
					}
				}
				some = append(some, p)
			}
			walk := rounds.New(r.Roster, round, some)
			for i := range 60 {
				sheet := walk.On(i)
				if got, want := named(sheet), due(r, some, i); got != want {
					t.Fatalf("day %d of %s:\n%s\nthe series say:\n%s", i, round.Name.V, got, want)
				}
				text := string(walk.Text(nil, i))
				if want := written(sheet); text != want && len(want) <= rounds.MaxText {
					t.Fatalf("day %d of %s:\n%s\nthe sheet says:\n%s", i, round.Name.V, text, want)
				} else if text != "" && text == want {
					whole++
				}
				if walk.Days.Has(i) != (len(sheet.Lines) > 0) {
					t.Fatalf("day %d: %d lines on a day that is one of the round's: %v", i, len(sheet.Lines), walk.Days.Has(i))
				}
			}
		}
	}
	if whole < 500 {
		t.Errorf("only %d texts were whole", whole)
	}
}

// named lists what a sheet says, one target a line, in any order.
func named(s rounds.Sheet) string {
	var out []string
	minutes := 0
	for _, l := range s.Lines {
		for _, x := range l.Targets {
			out = append(out, l.Text+" | "+x.Name+" | "+x.Total)
		}
		minutes += l.Minutes
	}
	slices.Sort(out)
	return fmt.Sprint(strings.Join(out, "\n"), "\n", minutes == s.Minutes)
}

// due lists what the series say of a day.
func due(r *compile.Result, some []roster.Pick, i int) string {
	said := map[string]bool{}
	for _, p := range some {
		days, s := p.Days, p.Entry
		if days == nil {
			days = s.Days
		}
		if !days.Has(i) {
			continue
		}
		text, total := s.Task, ""
		if portion := s.Portion(i); portion != nil && s.Kind.Name == "feed" {
			text, total = r.Roster.DishAs(s, portion, r.Today, s.Killed != nil && s.Killed.Has(i))
		}
		said[text+" | "+rounds.Target(s)+" | "+total] = true
	}
	return fmt.Sprint(strings.Join(slices.Sorted(maps.Keys(said)), "\n"), "\n", true)
}

// written is a sheet as the text of an entry.
func written(s rounds.Sheet) string {
	var b strings.Builder
	for _, h := range s.Holds {
		b.WriteString(h + "\n")
	}
	if len(s.Holds) > 0 {
		b.WriteString("\n")
	}
	last := false
	for _, l := range s.Lines {
		if l.Last && !last {
			last = true
			b.WriteString("\nLast, with tools of their own:\n")
		}
		mark := "- "
		if l.High {
			mark = "FIRST: "
		}
		b.WriteString(mark + l.Text + ": " + l.Names() + "\n")
	}
	if b.Len() > 0 {
		fmt.Fprintf(&b, "\nAbout %d min", max(1, s.Minutes))
	}
	return b.String()
}

// TestAllMeansAll: "all 4" is said of a line for every enclosure of the round,
// not of one with as many names, two of which are animals of one box.
func TestAllMeansAll(t *testing.T) {
	box := func(name, rest string) string {
		return "enclosure \"" + name + "\" {\n  species = \"pandinus-imperator\"\n  housing {\n    inside = \"60 x 40 x 40 cm\"\n    lid    = \"solid, latched\"\n  }\n" + rest + "}\n"
	}
	group := func(name, off string) string {
		return "  animals \"" + name + "\" {\n    count = 1\n    stage = \"adult\"\n  }\n  feeding \"" + name + "\" {\n    every = \"day\"\n" + off + "  }\n"
	}
	fed, unfed := "    per_animal = 1\n    prey       = \"cricket adult\"\n", "    off = true\n"
	r := compiled(t, map[string]string{"a.care.hcl": "collection \"fixtures\" {\n  time_zone = \"Europe/London\"\n}\nroom \"east\" {\n  temperature = \"21 to 24 C\"\n}\n" +
		box("a", group("one", fed)+group("two", fed)) + box("b", group("only", fed)) + box("c", group("only", fed)) + box("d", group("only", unfed))})
	round := r.Roster.Rounds[0]
	sheet := rounds.New(r.Roster, round, picks(r, round)).On(3)
	for _, want := range []string{"Take out leftovers: A one, A two, B, C", "Lid shut? Animals seen or hidden: all 4"} {
		found := false
		for _, l := range sheet.Lines {
			found = found || l.Text+": "+l.Names() == want
		}
		if !found {
			t.Errorf("%q is not a line of %+v", want, sheet.Lines)
		}
	}
}

// TestTextIsBounded: no text is longer than its bound, whatever enclosures are
// called and however many are held, and it is still text.
func TestTextIsBounded(t *testing.T) {
	rng := rand.New(rand.NewPCG(3, 4))
	cut := 0
	for _, title := range []string{"Box", "scorpion house, east wing, upper shelf", strings.Repeat("long ", 100), strings.Repeat("🦂", 120)} {
		for _, n := range []int{1, 9, 60, 300} {
			r := compiled(t, house(n, rng, func(i int) string { return fmt.Sprint(title, i) }))
			for _, round := range r.Roster.Rounds {
				walk := rounds.New(r.Roster, round, picks(r, round))
				for i := range 30 {
					text := walk.Text([]byte("kept"), i)
					if len(text)-4 > rounds.MaxText || !utf8.Valid(text) || string(text[:4]) != "kept" {
						t.Fatalf("%d enclosures with titles of %d bytes: %d bytes", n, len(title), len(text)-4)
					}
					if len(written(walk.On(i))) > rounds.MaxText {
						cut++
					}
				}
			}
		}
	}
	if cut < 200 {
		t.Errorf("only %d texts had to be cut", cut)
	}
}

func BenchmarkText(b *testing.B) {
	r := compiled(b, generated.Collection(40, "Europe/London"))
	round := rounds.New(r.Roster, r.Roster.Rounds[0], picks(r, r.Roster.Rounds[0]))
	var text []byte
	n := 0
	b.ReportAllocs()
	for b.Loop() {
		text = round.Text(text[:0], n%366)
		n++
	}
}

func BenchmarkOn(b *testing.B) {
	r := compiled(b, generated.Collection(40, "Europe/London"))
	round := rounds.New(r.Roster, r.Roster.Rounds[0], picks(r, r.Roster.Rounds[0]))
	n := 0
	b.ReportAllocs()
	for b.Loop() {
		round.On(n % 366)
		n++
	}
}
