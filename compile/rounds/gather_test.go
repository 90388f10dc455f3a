package rounds_test

import (
	"fmt"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"vivary/compile"
	"vivary/compile/roster"
	"vivary/compile/rounds"
	"vivary/internal/generated"
	"vivary/internal/planned"
	"vivary/plan"
	"vivary/schema"
)

// compiled compiles files as of noon of a day.
func compiled(t testing.TB, files map[string]string) *compile.Result {
	t.Helper()
	c, found := planned.Sound(t, files)
	return compile.Compile(c, found, year.From.At(12*60, c.Location))
}

// picks returns the series of a round, in walking order.
func picks(r *compile.Result, round *plan.Round) []roster.Pick {
	var out []roster.Pick
	for _, s := range r.Roster.In[round] {
		out = append(out, roster.Pick{Entry: s, Days: s.Days})
	}
	return out
}

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

// TestRoundIsTheRoster: what stands in a round on a day is what the entries of the
// roster say of that day.
func TestRoundIsTheRoster(t *testing.T) {
	rng := rand.New(rand.NewPCG(1, 2))
	lines := 0
	for range 8 {
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
				got, want := named(sheet), entries(r, some, i)
				if !slices.Equal(got, want) {
					t.Fatalf("day %d of %s:\n%s\nthe entries say:\n%s", i, round.Name.V, strings.Join(got, "\n"), strings.Join(want, "\n"))
				}
				if walk.Days.Has(i) != (len(sheet.Lines) > 0) {
					t.Fatalf("day %d: %d lines on a day that is one of the round's: %v", i, len(sheet.Lines), walk.Days.Has(i))
				}
				lines += len(want)
			}
		}
	}
	if lines < 2000 {
		t.Errorf("only %d tasks were compared", lines)
	}
}

// named lists what a sheet has, by the names of the plan.
func named(s rounds.Sheet) []string {
	var out []string
	for _, d := range s.Due {
		for _, x := range d.Stops {
			out = append(out, fmt.Sprintf("%s %s %s %v", x.Place.Name, x.Item.Animals, d.Kind.Name, x.Item.Prey))
		}
	}
	slices.Sort(out)
	return slices.Compact(out)
}

// entries lists what the entries of the roster say of a day, in the same form.
func entries(r *compile.Result, some []roster.Pick, i int) []string {
	var out []string
	for _, p := range some {
		days, x := p.Days, p.Entry
		if days == nil {
			days = x.Days
		}
		if !days.Has(i) {
			continue
		}
		animals, prey := "", rounds.Prey{}
		if x.Group != nil {
			animals = x.Group.Animals.Name.V
		}
		if portion := x.Portion(i); portion != nil && x.Kind == schema.KindFeed {
			prey = rounds.PreyOf(r.Roster, x, portion)
			prey.Killed = prey.Killed || x.Killed != nil && x.Killed.Has(i)
		}
		out = append(out, fmt.Sprintf("%s %s %s %v", x.Plan().Name.V, animals, x.Kind.Name, prey))
	}
	slices.Sort(out)
	return slices.Compact(out)
}

func BenchmarkNew(b *testing.B) {
	r := compiled(b, generated.Collection(40, "Europe/London"))
	some := picks(r, r.Roster.Rounds[0])
	b.ReportAllocs()
	for b.Loop() {
		rounds.New(r.Roster, r.Roster.Rounds[0], some)
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

func BenchmarkSummary(b *testing.B) {
	r := compiled(b, generated.Collection(40, "Europe/London"))
	round := rounds.New(r.Roster, r.Roster.Rounds[0], picks(r, r.Roster.Rounds[0]))
	var text []byte
	n := 0
	b.ReportAllocs()
	for b.Loop() {
		text = round.Summary(text[:0], n%366)
		n++
	}
}

// TestWhatIsCaughtUpComesInTheOrderOfUrgency: of what was skipped water stands first,
// then what the young need, then the rest; all of it before the round.
func TestWhatIsCaughtUpComesInTheOrderOfUrgency(t *testing.T) {
	group := func(name, stage string) string {
		return fmt.Sprintf("  animals %q {\n    count = 1\n    stage = %q\n  }\n  feeding %q {\n    on         = [\"sun\"]\n    per_animal = 1\n    prey       = \"cricket small\"\n  }\n", name, stage, name)
	}
	text := "collection \"fixtures\" {\n  time_zone = \"Europe/London\"\n}\nspecies \"fixture\" {\n  title = \"fixture\"\n}\nenclosure \"box\" {\n  species = \"fixture\"\n  housing {\n    kind   = \"glass\"\n    inside = \"60 x 40 x 40 cm\"\n    lid    = \"solid, latched\"\n  }\n" +
		group("old", "adult") + group("new", "young") + "  care \"look\" {\n    on = [\"sun\"]\n  }\n  care \"water\" {\n    on = [\"sun\"]\n  }\n  care \"heat\" {\n    every = \"day\"\n  }\n}\n"
	r := compiled(t, map[string]string{"a.care.hcl": text, "a.care.log": "2027-02-14 box skipped look\n2027-02-14 box skipped water\n2027-02-14 box skipped feeding\n"})
	const want = `FIRST: fresh water (last done Sun 7 Feb): Box
FIRST: feed 1 small cricket (new, last done Sun 7 Feb): Box
FIRST: lid shut? animals seen or hidden (last done Sun 7 Feb): Box
FIRST: feed 1 small cricket (old, last done Sun 7 Feb): Box
`
	got := ""
	round := r.Roster.Rounds[0]
	for _, l := range rounds.New(r.Roster, round, r.Roster.Picks(round, "")).On(r.Horizon.Today).Lines {
		if strings.HasPrefix(l, "FIRST") {
			got += l + "\n"
		}
	}
	if got != want {
		t.Errorf("got\n%s\nwant\n%s", got, want)
	}
}
