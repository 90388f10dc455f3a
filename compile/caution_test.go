package compile_test

import (
	"fmt"
	"regexp"
	"slices"
	"strings"
	"testing"

	"vivary/compile/life"
	"vivary/compile/rounds"
	"vivary/plan"
	"vivary/schema"
)

// minds is what a keeper sees to before a task, written down for this test apart from the
// table of the program: goggles and gloves for work inside with hairs that are thrown, by
// the authors of the reports of hairs in the cornea (Carrim et al., Lancet 2 Jan 2010) and
// keepers' sheets (cleaning, the skin, rehousing; misting startles it as much); forceps and
// a catching box where fingers go in with what stings or bites, mains unplugged where water
// comes near: common practice, no source.
var minds = []struct {
	says  string
	kinds string
	at    func(l *life.Enclosure) bool
}{
	{"Gloves on, eyes covered", "dish spot-clean deep-clean leaves count weigh handle treat rehouse separate pair mist moisten leftovers", grown("hairs", "thrown")},
	{"Gloves on, hands off the face", "dish spot-clean deep-clean leaves count weigh handle treat rehouse separate pair", grown("hairs", "contact")},
	{"Gloves on, hands off eyes and mouth (fluid)", "dish spot-clean deep-clean leaves count weigh handle treat rehouse separate pair", is("touch", "fluid")},
	{"Eyes covered (it may spray)", "dish spot-clean deep-clean leaves count weigh handle treat rehouse separate pair mist moisten leftovers water feed", is("spray", "venom|acid")},
	{"Long forceps, empty lidded box", "dish spot-clean deep-clean leaves count weigh handle treat rehouse separate pair", grown("venom", "mild|painful|medically significant")},
	{"Long forceps, empty lidded box", "dish spot-clean deep-clean leaves count weigh handle treat rehouse separate pair leftovers", grown("venom", "painful|medically significant")},
	{"Long forceps, empty lidded box", "dish spot-clean deep-clean leaves count weigh handle treat rehouse separate pair leftovers water mist moisten feed", is("venom", "medically significant")},
	{"Long forceps, empty lidded box", "dish spot-clean deep-clean leaves count weigh handle treat rehouse separate pair leftovers", is("speed", "very quick")},
	{"Hands washed with soap afterwards", "dish spot-clean deep-clean leaves count weigh handle treat rehouse separate pair mist moisten leftovers water feed", is("touch", "germs")},
	{"Unplug heater and lamp", "mist moisten dish spot-clean deep-clean leaves", func(l *life.Enclosure) bool {
		return l.Plan.Climate != nil && slices.ContainsFunc(l.Plan.Climate.Heaters, func(h *plan.Heater) bool {
			return slices.Contains([]string{"inside", "under", "above"}, h.Place.V)
		})
	}},
}

func is(figure, words string) func(*life.Enclosure) bool {
	return func(l *life.Enclosure) bool {
		f := l.Plan.Sheet.Figure(schema.FindFigure(schema.Figures, figure), "")
		return f != nil && slices.ContainsFunc(f.Words, func(w string) bool { return slices.Contains(strings.Split(words, "|"), w) })
	}
}

// grown is the same of what is more than young: nobody wears goggles for animals of a
// centimetre (from juveniles on: keepers' sheets; common practice).
func grown(figure, words string) func(*life.Enclosure) bool {
	said := is(figure, words)
	return func(l *life.Enclosure) bool {
		return said(l) && !slices.ContainsFunc(l.Plan.Animals, func(a *plan.Animals) bool { return a.Stage.V == "young" })
	}
}

var enclosures = regexp.MustCompile(`(?m)^enclosure "([a-z0-9-]+)"`)

// The house of every species, each as a good keeper sets it up, for a year: on each day
// each thing to see to stands once, names just the enclosures whose care of the day asks
// for it, and does not stand where nothing does.
func TestCautionsOfAHouse(t *testing.T) {
	text := setupHead
	for n, s := range setups(t) {
		text += enclosures.ReplaceAllString(s.text, fmt.Sprintf("enclosure \"$1-%d\"", n)) // several are called the same
	}
	r := on(t, "2027-03-02", text, "")
	if len(r.Lives) != len(plan.NewLibrary().SpeciesNames()) {
		t.Fatalf("%d enclosures", len(r.Lives))
	}
	at := map[string]*life.Enclosure{}
	for _, l := range r.Lives {
		at[l.Plan.Name.V] = l
	}
	for _, round := range r.Roster.Rounds {
		w := rounds.New(r.Roster, round, r.Roster.Picks(round, ""))
		said := map[string]int{}
		for i := r.Horizon.Today; i < r.Horizon.Today+366; i++ {
			s := w.On(i)
			want := map[string]map[string]bool{}
			for _, due := range s.Due {
				for _, stop := range due.Stops {
					for _, m := range minds {
						if slices.Contains(strings.Fields(m.kinds), due.Kind.Name) && m.at(at[stop.Place.Name]) {
							if want[m.says] == nil {
								want[m.says] = map[string]bool{}
							}
							want[m.says][stop.Shown] = true
						}
					}
				}
			}
			if len(s.Before) != len(want) {
				t.Fatalf("%s: %d cautions, and %d are asked for:\n%s", s.Date, len(s.Before), len(want), strings.Join(s.Before, "\n"))
			}
			for says, places := range want {
				said[says]++
				line, n := "", 0
				for _, l := range s.Lines {
					if strings.HasPrefix(l, says) {
						line, n = l, n+1
					}
				}
				if n != 1 || strings.Count(strings.Join(s.Lines, "\n"), says) != 1 {
					t.Fatalf("%s: %q stands %d times", s.Date, says, n)
				}
				_, names, _ := strings.Cut(line, "): ")
				if says == "Unplug heater and lamp" {
					_, names, _ = strings.Cut(line, ": ")
				}
				if strings.HasPrefix(names, "for ") {
					t.Fatalf("%s: in a house of all kinds the places are named: %s", s.Date, line)
				}
				if got, want := namesIn(names), len(places); got != want && !strings.HasPrefix(names, "all ") {
					t.Fatalf("%s: %q is said of %d enclosures, and %d ask for it: %s", s.Date, says, got, want, line)
				}
				for name := range places {
					if !strings.Contains(", "+names+",", name) && !regexp.MustCompile(`\d$`).MatchString(name) && !strings.HasPrefix(names, "all ") {
						t.Fatalf("%s: %q is not said of %s: %s", s.Date, says, name, line)
					}
				}
			}
		}
		for _, m := range minds {
			if said[m.says] == 0 {
				t.Errorf("%s: nothing in a year of every species asks for %q", round.Name.V, m.says)
			}
		}
	}
}

// ranges are numbers from one to another.
var ranges = regexp.MustCompile(`(\d+) to (\d+)`)

// namesIn counts the enclosures of a list.
func namesIn(list string) int {
	n := 0
	for room := range strings.SplitSeq(list, "; ") {
		if _, after, found := strings.Cut(room, ": "); found {
			room = after
		}
		for _, x := range strings.Split(strings.ReplaceAll(room, " and ", ", "), ", ") {
			n++
			if m := ranges.FindStringSubmatch(x); m != nil {
				var a, b int
				fmt.Sscan(m[1], &a)
				fmt.Sscan(m[2], &b)
				n += b - a
			}
		}
	}
	return n
}

// tubs are n boxes of a species that has nothing but the care of its sheet.
func tubs(n int, species string) string {
	var b strings.Builder
	b.WriteString("collection \"tubs\" {\n  time_zone = \"Europe/London\"\n}\nkeeper \"lead\" {\n  trained = \"hairs\"\n}\nround \"evening\" {\n  at     = \"19:30\"\n  keeper = \"lead\"\n}\n")
	for i := range n {
		fmt.Fprintf(&b, "enclosure \"tub-%[1]d\" {\n  title   = \"Tub %[1]d\"\n  species = %[2]q\n  animals \"a\" {\n    count = 1\n    stage = \"adult\"\n  }\n  care \"spot-clean\" {\n    on = [\"mon\"]\n  }\n}\n", i+1, species)
	}
	return b.String()
}

// Sixty tubs of hair-throwers, all cleaned on one day, say it once, in a few words; a round
// of animals that hurt nobody says nothing at all.
func TestSixtyTubsSayItOnce(t *testing.T) {
	line := func(n int, species string) (string, int) {
		r := on(t, "2027-03-01", tubs(n, species), "") // a Monday
		round := r.Roster.Rounds[0]
		s := rounds.New(r.Roster, round, r.Roster.Picks(round, "")).On(r.Horizon.Today)
		text := strings.Join(s.Lines, "\n")
		return text, strings.Count(strings.ToLower(text), "eyes covered") + strings.Count(strings.ToLower(text), "long forceps")
	}
	text, n := line(60, "brachypelma-hamorii")
	if n != 2 || !strings.Contains(text, "Gloves on, eyes covered (barbed hairs): all 60\n") {
		t.Errorf("%d cautions:\n%s", n, text)
	}
	if text, n = line(1, "brachypelma-hamorii"); n != 2 || !strings.Contains(text, "Gloves on, eyes covered (barbed hairs)\n") {
		t.Errorf("of one tub:\n%s", text)
	}
	if text, n = line(60, "porcellio-scaber"); n != 0 {
		t.Errorf("woodlice:\n%s", text)
	}
}

// What to see to adds little to what a phone has to keep: a house of sixty hair-throwers has
// two short lines a day, without a list of tubs, 60 KB in a feed of a year at the most.
func TestCautionsAreShort(t *testing.T) {
	r := on(t, "2027-03-01", tubs(60, "brachypelma-hamorii"), "")
	round := r.Roster.Rounds[0]
	w := rounds.New(r.Roster, round, r.Roster.Picks(round, ""))
	for i := r.Horizon.Today; i < r.Horizon.Today+366; i++ {
		s := w.On(i)
		before := strings.Join(s.Before, "\n")
		if len(s.Before) > 2 || len(before) > 160 {
			t.Fatalf("%s: %d lines of %d bytes:\n%s", s.Date, len(s.Before), len(before), before)
		}
	}
}

// While nothing is opened there is nothing to see to.
func TestNoCautionOutside(t *testing.T) {
	for _, s := range setups(t) {
		if s.species != "parabuthus-transvaalicus" {
			continue
		}
		text := strings.Replace(s.text, "feeding \"one\"", "care \"water\" {\n every = \"day\"\n }\n feeding \"one\"", 1)
		for log, want := range map[string]bool{"": true, "2027-03-02 box one hanging\n": false} {
			r := on(t, "2027-03-02", setupHead+text, log)
			round := r.Roster.Rounds[0]
			sheet := rounds.New(r.Roster, round, r.Roster.Picks(round, "")).On(r.Horizon.Today)
			lines := strings.Join(sheet.Lines, "\n")
			if !strings.Contains(lines, "resh water") || len(sheet.Before) > 0 != want {
				t.Errorf("%q:\n%s", log, lines)
			}
		}
		return
	}
	t.Error("no set-up")
}

// The tables say all that they have to, and each once.
func TestCautionTables(t *testing.T) {
	seen := map[string]bool{}
	for _, c := range schema.Cautions {
		if seen[c.Name] || seen[c.Text] || c.Why == "" || c.Source == "" || len(c.For)+len(c.Places) == 0 {
			t.Errorf("caution %q is there twice, or does not say everything", c.Name)
		}
		seen[c.Name], seen[c.Text] = true, true
		if len(c.Text) > 60 {
			t.Errorf("%q is not a few words", c.Text)
		}
		for _, x := range c.For {
			for _, w := range x.Words {
				if !slices.ContainsFunc(x.Figure.Choices, func(c schema.Choice) bool { return c.Name == w }) {
					t.Errorf("caution %q: %s has no word %q", c.Name, x.Figure.Name, w)
				}
			}
		}
		for _, p := range c.Places {
			if !slices.ContainsFunc(schema.Heater.Attr("place").Choices, func(c schema.Choice) bool { return c.Name == p }) {
				t.Errorf("caution %q: there is no place %q", c.Name, p)
			}
		}
	}
	for _, f := range []*schema.Figure{schema.FigureVenom, schema.FigureHairs, schema.FigureSpray, schema.FigureTouch} {
		for _, w := range f.Choices {
			if w.Name != "none" && !slices.ContainsFunc(schema.Aids, func(a *schema.Aid) bool { return a.Figure == f && slices.Contains(a.Words, w.Name) }) {
				t.Errorf("nothing is said of what to do after %s %q", f.Name, w.Name)
			}
		}
	}
	for _, a := range schema.Aids {
		if a.Title == "" || a.Text == "" || a.Source == "" {
			t.Errorf("aid %q does not say everything", a.Title)
		}
	}
}

// Slings of a centimetre or two ask for no goggles and no forceps; a kind that runs from the
// box does, one that is a danger to life does, and so does a sling of which the stage is
// not said, or its grown mother in the same box.
func TestSlingsAskForLess(t *testing.T) {
	for _, c := range []struct {
		species, animals string
		want             []string
	}{
		{"lasiodora-parahybana", "stage = \"young\"", nil},
		{"lasiodora-parahybana", "stage = \"juvenile\"", []string{"Gloves on, eyes covered (barbed hairs)", "Long forceps, empty lidded box (stings, bites)"}},
		{"lasiodora-parahybana", "", []string{"Gloves on, eyes covered (barbed hairs)", "Long forceps, empty lidded box (stings, bites)"}},
		{"lasiodora-parahybana", "stage = \"young\"\n  }\n  animals \"mother\" {\n    count = 1\n    stage = \"adult\"", []string{"Gloves on, eyes covered (barbed hairs)", "Long forceps, empty lidded box (stings, bites)"}},
		{"avicularia-avicularia", "stage = \"young\"", nil},
		{"pandinus-imperator", "stage = \"young\"", nil},
		{"leiurus-quinquestriatus", "stage = \"young\"", []string{"Long forceps, empty lidded box (stings, bites)"}},
		{"eublepharis-macularius", "stage = \"young\"", []string{"Hands washed with soap afterwards (salmonella)"}},
		{"archispirostreptus-gigas", "stage = \"young\"", []string{"Gloves on, hands off eyes and mouth (fluid)"}},
	} {
		text := strings.Replace(tubs(1, c.species), "stage = \"adult\"", c.animals, 1)
		r := on(t, "2027-03-01", text, "") // a Monday: clean
		round := r.Roster.Rounds[0]
		got := rounds.New(r.Roster, round, r.Roster.Picks(round, "")).On(r.Horizon.Today).Before
		if !slices.Equal(got, c.want) {
			t.Errorf("%s, %s: %q, want %q", c.species, c.animals, got, c.want)
		}
	}
}

// What is said of mains once and what a round says of a heater agree on where water and
// hands come near one: a mat at the side of the glass is not unplugged for misting.
func TestMainsAgreesWithTheRound(t *testing.T) {
	for _, c := range schema.Cautions {
		if c.Name != "mains" {
			continue
		}
		for _, p := range c.Places {
			if !strings.Contains(schema.Mains, p) {
				t.Errorf("the round unplugs %s, and it is not said", p)
			}
		}
		for _, p := range schema.Heater.Attr("place").Choices {
			if said := regexp.MustCompile(`\b` + p.Name + `\b`).MatchString(schema.Mains); said && !slices.Contains(c.Places, p.Name) {
				t.Errorf("%s is said, and no round unplugs it", p.Name)
			}
		}
	}
}
