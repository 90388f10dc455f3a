package check_test

import (
	"slices"
	"strings"
	"testing"

	"vivary/compile"
	"vivary/compile/check"
	"vivary/compile/life"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/schema/quantity"
)

// log is a place that no block of the plan has.
var logLine = source.Place{File: 1, Start: 900000, End: 900010}

// joined adds animals to the first enclosure of a compiled plan as the log would, and says
// what rules find of them: lines of "severity rule", those at the line of the log with a
// mark.
func joined(r *compile.Result, rules []string, groups ...*life.Group) string {
	l := *r.Lives[0]
	l.Groups = append(slices.Clone(l.Groups), groups...)
	c := &check.Collection{Plan: r.Plan, Today: r.Today, Horizon: r.Horizon, Lives: []*life.Enclosure{&l}, Roster: r.Roster}
	c.Prepare()
	c.Whole()
	var out []string
	for _, f := range c.One(0) {
		if !slices.Contains(rules, f.Rule.ID) {
			continue
		}
		text := f.Severity.String() + " " + f.Rule.ID
		if f.At == logLine {
			text += " (log)"
		}
		out = append(out, text)
	}
	return strings.Join(out, "; ")
}

// whom are the rules about who lives with whom, and how much room they need.
var whom = []string{"kept-alone", "two-males", "quarantine-mixed", "group-large", "mixed-sizes", "moult-in-group", "floor-small", "brood-in-group", "hides-few", "outgrows-soon", "need-unstated"}

// group is one that the log made.
func group(r *compile.Result, sheet *plan.SpeciesSheet, mother *life.Group, n int, stages ...life.Stretch) *life.Group {
	a := &plan.Animals{}
	a.Name.V, a.At = "from-the-log", logLine
	g := &life.Group{Animals: a, Sheet: sheet, Logged: true, Mother: mother, Stages: stages, Numbers: []life.Number{{From: r.Today - 5, Count: n}}}
	g.Since.V, g.Since.At = r.Today-5, logLine
	return g
}

// kept is an enclosure of one female of a species.
func kept(t *testing.T, species, animals string) *compile.Result {
	t.Helper()
	return compiled(t, "species = \""+species+"\"\nhousing {\n  inside = \"40 x 30 x 35 cm\"\n  lid    = \"solid, latched\"\n  depth  = \"12 cm\"\n  hides  = 1\n}\nanimals \"one\" {\n"+animals+"}\n")
}

const female = "  count = \"0.1\"\n  stage = \"adult\"\n"

// TestBroodWithItsMother: young with their mother are no crowd and no mixed sizes, in any
// species, before they are grown; then they are.
func TestBroodWithItsMother(t *testing.T) {
	for _, species := range []string{"pandinus-imperator", "hadrurus-arizonensis", "brachypelma-hamorii", "mastigoproctus-giganteus"} {
		r := kept(t, species, female)
		mother := r.Lives[0].Groups[0]
		mother.Brood = true
		at := func(stage string) life.Stretch { return life.Stretch{From: r.Today - 5, Stage: stage} }
		crowd := []string{"kept-alone", "group-large", "mixed-sizes", "moult-in-group", "floor-small", "hides-few", "brood-in-group"}
		for _, stage := range []string{"newborn", "young"} {
			if got := joined(r, crowd, group(r, mother.Sheet, mother, 25, at(stage))); got != "" {
				t.Errorf("%s with 25 %s: %s", species, stage, got)
			}
		}
		got := joined(r, crowd, group(r, mother.Sheet, mother, 25, at("juvenile")))
		if want := map[bool]string{true: "group-large", false: "kept-alone"}[species == "pandinus-imperator"]; !strings.Contains(got, want+" (log)") {
			t.Errorf("%s with 25 juveniles: %s", species, got)
		}
	}
}

// TestMovedTogether: what a move brings together is found where the move was written, and
// once.
func TestMovedTogether(t *testing.T) {
	adult := func(r *compile.Result) life.Stretch { return life.Stretch{From: r.Today - 5, Stage: "adult"} }
	spider := kept(t, "brachypelma-hamorii", female)
	if got := joined(spider, whom, group(spider, spider.Plan.Enclosures[0].Sheet, nil, 1, adult(spider))); !strings.Contains(got, "error kept-alone (log)") {
		t.Errorf("two spiders: %s", got)
	}
	scorpions := kept(t, "pandinus-imperator", female)
	if got := joined(scorpions, whom, group(scorpions, spider.Plan.Enclosures[0].Sheet, nil, 1, adult(scorpions))); got != "" { // the log asks, and says so
		t.Errorf("a spider with scorpions: %s", got)
	}
	if got := joined(scorpions, whom, group(scorpions, nil, nil, 1, adult(scorpions))); got != "error need-unstated (log)" {
		t.Errorf("nobody knows what with scorpions: %s", got)
	}
	whips := kept(t, "damon-diadema", "  count = \"1.1\"\n  stage = \"adult\"\n")
	male := group(whips, whips.Plan.Enclosures[0].Sheet, nil, 1, adult(whips))
	male.Animals.Count.V = quantity.Count{Males: 1}
	if got := joined(whips, whom, male); !strings.Contains(got, "error two-males (log)") {
		t.Errorf("two male whip spiders: %s", got)
	}
	apart := group(whips, whips.Plan.Enclosures[0].Sheet, nil, 1, adult(whips))
	apart.Quarantined = whips.Today + 30
	if got := joined(whips, whom, apart); !strings.Contains(got, "error quarantine-mixed (log)") {
		t.Errorf("from quarantine to the others: %s", got)
	}
}

// TestSaidOnce: that animals must not be together is asked for where the log alone brought
// it, and then no rule says the same; where the plan writes it, the rule speaks and
// nothing is asked.
func TestSaidOnce(t *testing.T) {
	box := func(name, species, animals string) string {
		return "enclosure \"" + name + "\" {\n  species = \"" + species + "\"\n  room = \"east\"\n  housing {\n    inside = \"76 x 46 x 41 cm\"\n    lid = \"solid, latched\"\n  }\n  animals \"a\" {\n" + animals + "  }\n}\n"
	}
	const emperor, spider, gravid, pair = "pandinus-imperator", "brachypelma-hamorii", female + "state = \"gravid\"\n", "  count = 2\n  stage = \"adult\"\n"
	for _, c := range []struct{ name, text, want string }{
		{"born among others", box("box", emperor, pair) + "2026-11-20 box born 12\n", "urgent act-now"},
		{"gravid among others", box("box", emperor, pair) + "2026-11-20 box gravid\n", "urgent act-now"},
		{"others brought to a gravid one", box("box", emperor, gravid) + box("other", emperor, female) + "2026-11-20 other moved box\n", "urgent act-now"},
		{"one to a box, and moved", box("box", spider, female) + box("other", spider, female) + "2026-11-20 other moved box\n", "urgent act-now"},
		{"two kinds", box("box", emperor, female) + box("other", spider, female) + "2026-11-20 other moved box\n", "urgent species-mixed"},
		{"two kinds, of one that is kept one to a box", box("box", spider, female) + box("other", emperor, female) + "2026-11-20 other moved box\n", "urgent species-mixed"},
		{"gravid among others, in the plan", strings.Replace(box("box", emperor, gravid), "  animals", "  animals \"others\" {\n"+pair+"  }\n  animals", 1), "error brood-in-group"},
		{"the same, and logged too", strings.Replace(box("box", emperor, gravid), "  animals", "  animals \"others\" {\n"+pair+"  }\n  animals", 1) + "2026-11-20 box a gravid\n", "error brood-in-group"},
		{"one to a box, in the plan", box("box", spider, pair), "error kept-alone"},
		{"one to a box, in the plan and moved", box("box", spider, pair) + box("other", spider, female) + "2026-11-20 other moved box\n", "urgent act-now; error kept-alone"},
	} {
		r := compiled(t, c.text)
		var got []string
		for _, f := range r.Findings {
			if slices.Contains([]string{"act-now", "species-mixed", "brood-in-group", "kept-alone"}, f.Rule.ID) {
				got = append(got, f.Severity.String()+" "+f.Rule.ID)
			}
		}
		slices.Sort(got)
		slices.Reverse(got)
		if strings.Join(got, "; ") != c.want {
			t.Errorf("%s: want %s\n%s", c.name, c.want, printed(r, r.Findings))
		}
	}
}

// TestStagesToCome: what a later stage brings is a caution with its day, while there is
// time; of a brood of the log it is asked about when it has come.
func TestStagesToCome(t *testing.T) {
	r := kept(t, "brachypelma-hamorii", "  count = 20\n  stage = \"newborn\"\n")
	g := r.Lives[0].Groups[0]
	g.Stages = []life.Stretch{{From: r.Today - 5, Stage: "newborn"}, {From: r.Today + 20, Stage: "young"}}
	if got := joined(r, whom); !strings.Contains(got, "caution kept-alone") {
		t.Errorf("newborns of the plan: %s", got)
	}
	g.Logged = true
	if got := joined(r, whom); strings.Contains(got, "kept-alone") {
		t.Errorf("newborns of the log: %s", got)
	}
	for count, want := range map[string]string{"2.2": "caution two-males", "1.3": "", "0.4": ""} {
		r := kept(t, "damon-diadema", "  count = \""+count+"\"\n  stage = \"subadult\"\n")
		if got := joined(r, []string{"two-males"}); got != want {
			t.Errorf("%s subadults: %q, and want %q", count, got, want)
		}
	}
}

// TestNewbornForWeeks: young are newborn for weeks; a block that says so for longer is
// urgent, as what time does is, and refuses nothing. Where the log has their first moult it
// is only history.
func TestNewbornForWeeks(t *testing.T) {
	const brood = "animals \"brood\" {\n  count  = 12\n  stage  = \"newborn\"\n  born   = \"2026-01-01\"\n  origin = \"captive bred\"\n  paper  = \"bred here\"\n}\n"
	if found := of(compiled(t, brood), "newborn-late"); len(found) != 1 || found[0].Severity != finding.Urgent {
		t.Errorf("found %+v", found)
	}
	if found := of(compiled(t, brood+"2026-02-01 box brood moult 12\n"), "newborn-late"); len(found) != 0 {
		t.Errorf("with their moult found %+v", found)
	}
}

// Slings that have just hatched are still in one box with what they hatched from; weeks
// later they are not (common practice, no source).
func TestHatchlings(t *testing.T) {
	for day, alone := range map[string]bool{"2026-11-10": false, "2026-09-01": true} {
		r := compiled(t, "species = \"brachypelma-hamorii\"\nanimals \"one\" {\n  count = \"0.1.0\"\n  stage = \"adult\"\n  origin = \"captive bred\"\n  paper = \"invoice 118\"\n}\n"+day+" box hatched 200\n")
		if got := len(of(r, "kept-alone")) > 0; got != alone {
			t.Errorf("hatched on %s: kept-alone %v", day, got)
		}
		if day == "2026-11-10" && len(of(r, "floor-small"))+len(of(r, "mixed-sizes"))+len(of(r, "origin-unsaid")) > 0 {
			t.Errorf("hatched on %s: %s", day, printed(r, r.Findings))
		}
	}
}
