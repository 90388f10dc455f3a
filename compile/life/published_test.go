package life_test

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"vivary/compile/horizon"
	"vivary/compile/life"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/civil"
)

const head = `collection "c" {
  time_zone = "Europe/London"
}
room "r" {
  temperature = "22 to 25 C"
}
`

// sheet is a plan with one animal in one box, of a species with these figures.
func sheet(animals string, figures ...string) string {
	var b strings.Builder
	b.WriteString(head + "species \"sp\" {\n  title = \"sp\"\n")
	for _, f := range figures {
		name, value, _ := strings.Cut(f, "=")
		name, instar, _ := strings.Cut(name, "@")
		fmt.Fprintf(&b, "  figure %q {\n    value = %q\n    source = [\"p\"]\n    because = \"check\"\n    review = \"2028-01-01\"\n", name, value)
		if instar != "" {
			fmt.Fprintf(&b, "    instar = %s\n", instar)
		}
		b.WriteString("  }\n")
	}
	b.WriteString("}\nenclosure \"box\" {\n  species = \"sp\"\n  housing {\n    inside = \"30 x 20 x 20 cm\"\n    lid = \"solid, latched\"\n  }\n" + animals + "}\n")
	return b.String()
}

const mother = "  animals \"mother\" {\n    count = 1\n    stage = \"adult\"\n  }\n"

func read(t testing.TB, text, log string, today civil.Date) (*life.Enclosure, []finding.Finding) {
	t.Helper()
	c := load(t, text, log)
	return lifeOf(c, c.Enclosure("box"), c.Log, year(today))
}

// lifeOf reads an enclosure with all of its household, from a log.
func lifeOf(c *plan.Collection, e *plan.Enclosure, log []plan.Event, h horizon.Horizon) (*life.Enclosure, []finding.Finding) {
	with := *c
	with.Log = log
	for _, of := range life.Households(&with) {
		for i, at := range of.At {
			if c.Enclosures[at] == e {
				lives, found := life.Read(&with, of, h)
				return lives[i], found[i]
			}
		}
	}
	return nil, nil
}

// Ages in days at each moult of two scorpions reared from birth: Opisthacanthus
// madagascariensis (Lourenço, Leguin and Cloudsley-Thompson 2010, Entomol. Mitt.
// Zool. Mus. Hamburg 15(183):173-182) and Chiromachus ochropus (the same authors
// 2011, ibid. 15(184):213-222). After any two moults the next one must have fallen
// into the band.
func TestMoultForecast(t *testing.T) {
	for name, ages := range map[string][]int{
		"Opisthacanthus": {13, 101, 204, 327, 442},
		"Chiromachus":    {10, 242, 596, 925, 1763, 2310, 2661, 2957, 3313, 3773},
	} {
		born := day("2010-01-01")
		log := ""
		for i, age := range ages {
			at := born + civil.Date(age)
			if i >= 2 {
				// Some bands begin years after the moult.
				c := load(t, sheet("  animals \"one\" {\n    count = 1\n  }\n"), log)
				e, _ := lifeOf(c, c.Enclosure("box"), c.Log, horizon.Horizon{From: born + civil.Date(ages[i-1]), Days: 3000})
				w := e.Groups[0].Windows
				if len(w) != 1 || !strings.Contains(w[0].Title, "estimate") {
					t.Fatalf("%s, moult %d: no band: %v", name, i+1, w)
				}
				if at < w[0].From || at >= w[0].Until {
					t.Errorf("%s, moult %d: at %d days, band %d to %d", name, i+1, age, w[0].From-born, w[0].Until-1-born)
				}
				if w[0].From <= born+civil.Date(ages[i-1]) {
					t.Errorf("%s, moult %d: the band begins at once", name, i+1)
				}
			}
			log += at.String() + " box moult\n"
		}
	}
}

// Rhopalurus rochai: 7 to 10 days in the first instar (n 179), on the mother for 1
// to 9 days more; unfed young died from day 11 after it on (Sarmento et al. 2008,
// J. Arachnol. 36:476-479). The look must take in all of those days, and the meal
// come before the first that starved.
func TestRhopalurusRochai(t *testing.T) {
	text := sheet(mother, "instar-length@1=7 to 10 days", "dispersal=1 to 9 days", "separation=separate")
	born := day("2027-03-05")
	e, _ := read(t, text, "2027-03-05 box born\n", born)
	watch := task(t, e, "first-moult/2027-03-05")
	late := question(t, e.Groups[0].Asks, "first-moult-late/2027-03-05")
	if from, to := watch.On-born, late.From-born; from != 7 || to != 10 || watch.Interval != 1 || watch.On+civil.Date(watch.Times) != late.From {
		t.Errorf("watched on days %d to %d, want 7 to 10", from, to)
	}
	moult := born + 8
	e, _ = read(t, text, "2027-03-05 box born\n"+moult.String()+" box first_moult\n", moult)
	if on := task(t, e, "separate/2027-03-05").On - moult; on != 1 {
		t.Errorf("separated from day %d, want 1", on)
	}
	young := e.Groups[1]
	if meal := question(t, young.Asks, "first-meal-young/2027-03-05"); meal.From-moult >= 11 || !meal.Urgent || !strings.Contains(meal.Text, (moult+10).Short()) {
		t.Errorf("first meal asked for from day %d, but unfed young die from day 11 on: %s", meal.From-moult, meal.Text)
	}
	for _, h := range young.Holds {
		if h.Out(schema.RowKilled) && h.Until-moult >= 7 {
			t.Errorf("no meal before day %d", h.Until-moult)
		}
	}
}

func question(t *testing.T, asks []life.Ask, name string) life.Ask {
	t.Helper()
	for _, a := range asks {
		if a.Name == name {
			return a
		}
	}
	t.Fatalf("no question %s in %v", name, asks)
	return life.Ask{}
}

// Leiurus quinquestriatus: 155 to 227 days from mating to birth (Ross 2009, J.
// Venom. Anim. Toxins incl. Trop. Dis. 15:347-352, n 7).
func TestGestation(t *testing.T) {
	text := sheet(mother, "gestation=155 to 227 days")
	mated := day("2027-01-01")
	e, _ := read(t, text, "2027-01-01 box mated\n", mated)
	w := e.Groups[0].Windows
	if len(w) != 1 || w[0].From-mated != 155 || w[0].Until-1-mated != 227 {
		t.Errorf("band %v, want days 155 to 227", w)
	}
	for after, likely := range map[civil.Date]bool{154: false, 155: true, 227: true, 228: false} {
		at := mated + after
		_, found := read(t, text, "2027-01-01 box mated\n"+at.String()+" box born\n", at)
		if has(found, "birth-unlikely") == likely {
			t.Errorf("born on day %d: findings %v", after, ids(found))
		}
	}
}

func task(t testing.TB, e *life.Enclosure, name string) life.Task {
	t.Helper()
	for _, g := range e.Groups {
		for _, x := range g.Tasks {
			if x.Name == name {
				return x
			}
		}
	}
	t.Fatalf("no task %s in %v", name, e.Groups[0].Tasks)
	return life.Task{}
}

func has(found []finding.Finding, id string) bool {
	for _, f := range found {
		if f.Rule.ID == id {
			return true
		}
	}
	return false
}

func ids(found []finding.Finding) (out []string) {
	for _, f := range found {
		out = append(out, f.Rule.ID)
	}
	return out
}

// The words of a sheet's sources are told, not their names, and one day is a day.
func TestWordsOfFindings(t *testing.T) {
	text := sheet(mother, "gestation=2 days", "moults-as-adult=false", "on-mother=1 day") +
		"source \"p\" {\n  cite = \"Pocock 1900\"\n  kind = \"paper\"\n}\n"
	_, found := read(t, text, "2027-02-01 box moult\n2027-02-02 box mated\n2027-02-03 box born\n", day("2027-03-01"))
	var all []string
	for _, f := range found {
		all = append(all, f.Text+"; "+f.Limit+"; "+f.Source)
	}
	told := strings.Join(all, "\n")
	for _, w := range []string{"born 1 day after", "gestation of 2 days,", "by Thu 4 Feb 2027, 1 day,"} {
		if !strings.Contains(told, w) {
			t.Errorf("no %q in\n%s", w, told)
		}
	}
	if n := strings.Count(told, "Pocock 1900 [paper]"); n != 3 {
		t.Errorf("the source is told %d times, not 3:\n%s", n, told)
	}
}

// The first moult of young of a known birthday can be awaited with an empty log
// as with any line in it.
func TestMoultOfTheBorn(t *testing.T) {
	text := sheet("  animals \"young\" {\n    count = 3\n    instar = 1\n    born = \"2027-02-01\"\n  }\n", "instar-length@1=7 to 10 days")
	for _, log := range []string{"", "2027-02-02 box done water\n"} {
		e, _ := read(t, text, log, day("2027-02-03"))
		if w := e.Groups[0].Windows; len(w) != 1 || w[0].From != day("2027-02-08") {
			t.Errorf("with the log %q: %v", log, w)
		}
	}
}

// What is noted as it stands: meals, cares and mites. The names of cares are those
// of the series that they belong to.
func TestNotes(t *testing.T) {
	text := sheet(mother+"  care \"evening-mist\" {\n    kind = \"mist\"\n    every = \"day\"\n  }\n", "refusals-to-pause=2", "refusal-pause=20 days")
	log := `2027-01-01 box done mist
2027-01-02 box done feed
2027-01-03 box skipped water
2027-01-04 box skipped water
2027-01-05 box mother refused
2027-01-05 box mother refused "in the evening too"
2027-01-06 box mites
2027-01-07 box mother weighed 1.5 oz
`
	e, found := read(t, text, log, day("2027-01-20"))
	g := e.Groups[0]
	if len(found) > 0 || e.Done["evening-mist"] != day("2027-01-01") || e.Done["feed mother"] != day("2027-01-02") || len(e.Skipped["water"]) != 2 {
		t.Errorf("done %v, skipped %v, findings %v", e.Done, e.Skipped, ids(found))
	}
	// An ounce is 28.349523125 g (NIST SP 811, appendix B.8).
	if grams := g.Weight().V.Value; math.Abs(grams-1.5*28.349523125) > 1e-6 {
		t.Errorf("weight %v g", grams)
	}
	if g.Refused != 1 || len(g.Holds) > 0 {
		t.Errorf("two refusals of one day are one: %d, %v", g.Refused, g.Holds)
	}
	if !e.HasMites || len(e.Tasks) != 1 || e.Tasks[0].On != day("2027-01-20") {
		t.Errorf("mites: %v %v", e.HasMites, e.Tasks)
	}
	if e, _ = read(t, text, log, day("2027-02-03")); e.HasMites || len(e.Tasks) > 0 || e.Mites != day("2027-01-06") {
		t.Errorf("four weeks later: %v %v", e.HasMites, e.Tasks)
	}
}

// A stage moves with logged moults; in a group only when all have moulted. By the
// words of the schema a subadult is one moult before maturity.
func TestGrowth(t *testing.T) {
	stages := strings.Replace(sheet("  animals \"a\" {\n    count = 1\n    instar = 5\n  }\n  animals \"b\" {\n    count = 2\n    instar = 5\n  }\n  animals \"c\" {\n    count = 1\n    stage = \"subadult\"\n  }\n"),
		"  title = \"sp\"\n", "  title = \"sp\"\n  stage \"juvenile\" {\n    instars = \"4 to 5\"\n  }\n  stage \"subadult\" {\n    instars = \"6\"\n  }\n  stage \"adult\" {\n    instars = \"7\"\n  }\n", 1)
	e, _ := read(t, stages, "2027-01-01 box a moult\n2027-01-02 box b moult\n2027-01-03 box c moult\n2027-02-01 box a moult\n", day("2027-03-01"))
	if g := e.Groups[0]; g.Stage(day("2026-12-31")) != "juvenile" || g.Stage(day("2027-01-01")) != "subadult" || g.Stage(day("2027-03-01")) != "adult" || g.Instar(day("2027-03-01")) != 7 {
		t.Errorf("one animal: %v", g.Stages)
	}
	if g := e.Groups[1]; g.Stage(day("2027-03-01")) != "juvenile" || g.Instar(day("2027-03-01")) != 5 {
		t.Errorf("one of two: %v", g.Stages)
	}
	if g := e.Groups[2]; g.Stage(day("2027-03-01")) != "adult" {
		t.Errorf("subadult: %v", g.Stages)
	}
	e, _ = read(t, stages, "2027-01-02 box b moult\n2027-01-09 box b moult\n", day("2027-03-01"))
	if g := e.Groups[1]; g.Stage(day("2027-01-08")) != "juvenile" || g.Stage(day("2027-01-09")) != "subadult" {
		t.Errorf("both of two: %v", g.Stages)
	}
}
