package check_test

import (
	"fmt"
	"strings"
	"testing"
	"time"

	"vivary/compile"
	"vivary/compile/check"
	"vivary/internal/planned"
	"vivary/internal/wanted"
	"vivary/plan/finding"
	"vivary/plan/source"
)

var now = time.Date(2026, 11, 25, 12, 0, 0, 0, time.UTC)

// compiled reads and compiles an example.
func compiled(t testing.TB, example string) *compile.Result {
	t.Helper()
	text, log := check.Example(example)
	c, found := planned.Files(t, planned.With(text, log))
	return compile.Compile(c, found, now)
}

func of(r *compile.Result, id string) []finding.Finding {
	var out []finding.Finding
	for _, f := range r.Findings {
		if f.Rule.ID == id {
			out = append(out, f)
		}
	}
	return out
}

func printed(r *compile.Result, all []finding.Finding) string {
	var b strings.Builder
	if err := (finding.Printer{Files: r.Plan.Files}).Print(&b, all); err != nil {
		return err.Error()
	}
	return b.String()
}

// TestSoundExample shows that what examples change is sound: whatever a rule's
// example yields comes from what it writes.
func TestSoundExample(t *testing.T) {
	if r := compiled(t, ""); len(r.Findings) > 0 {
		t.Error(printed(r, r.Findings))
	}
}

// A line of the whole is the example's where the example wrote it, inside of the
// enclosure as well as around it.
func TestSplice(t *testing.T) {
	for _, text := range []string{
		"room \"east\" {\n  temperature = \"1 C\"\n}\n2026-11-02 box moult\nkeeper \"mark\" {\n}\n",
		"care \"mist\" {\n2026-11-02 box moult\n}\n",
		"enclosure \"box\" {\n}\n2026-11-02 box moult\n",
	} {
		s := check.Splice(text)
		typed := strings.Split(text, "\n")
		seen := 0
		for file, whole := range s.Files() {
			for i, line := range strings.Split(whole, "\n") {
				if n := s.Line(file, i+1); n > 0 {
					seen++
					if typed[n-1] != line {
						t.Errorf("%q is taken for %q", line, typed[n-1])
					}
				}
			}
		}
		if seen != strings.Count(text, "\n") {
			t.Errorf("%d lines of %q are in the whole", seen, text)
		}
	}
}

func TestExamples(t *testing.T) {
	var rules []*finding.Rule
	for _, r := range check.Rules {
		if (r.Enclosure == nil) == (r.Collection == nil) {
			t.Errorf("%s: one of the two functions decides", r.ID)
		}
		rules = append(rules, &r.Rule)
	}
	wanted.Suite{Rules: rules, Examples: check.Examples,
		Whole: func(text string) wanted.Whole { return check.Splice(text) },
		Find: func(t testing.TB, files map[string]string) (*source.Set, []finding.Finding) {
			c, found := planned.Files(t, files)
			return c.Files, compile.Compile(c, found, now).Findings
		},
		Told: func(t testing.TB, f finding.Finding) {
			if !f.At.Written() || f.Source == "" {
				t.Errorf("a keeper is not told enough: %+v", f)
			}
		},
	}.Run(t)
}

// TestLimits holds rules to the sheets' figures at their very edge, in the
// keeper's unit, and to what they must not say. want is empty where the rule must
// be silent.
func TestLimits(t *testing.T) {
	heater := func(setting, more string) string {
		return "climate {\n  heater \"mat\" {\n    power = \"25 W\"\n    size  = \"28 x 43 cm\"\n    place = \"side\"\n    thermostat = " + setting + "\n" + more + "  }\n}\n"
	}
	box := func(inside, more string) string {
		return "housing {\n  inside = " + inside + "\n  lid = \"solid, latched\"\n  depth = \"16 cm\"\n" + more + "}\n"
	}
	group := func(count, more string) string {
		return "animals \"adults\" {\n  count = " + count + "\n" + more + "}\n"
	}
	adults := "  stage = \"adult\"\n"
	for _, c := range []struct{ name, example, rule, want string }{
		{"just at the hard limit", heater(`"34 C"`, ""), "heater-overshoot", ""},
		{"just past it", heater(`"34.1 C"`, ""), "heater-overshoot", "35.1 C is past what"},
		{"95 F is 35 C", heater(`"93.2 F"`, ""), "heater-overshoot", ""},
		{"in the keeper's unit", heater(`"94 F"`, "swing = \"4 F\"\n"), "heater-overshoot", "95 F at the most"},
		{"the setting of a shared outlet", "climate {\n  heater \"mat\" {\n    power = \"25 W\"\n    size  = \"28 x 43 cm\"\n    place = \"side\"\n    channel = \"rack\"\n  }\n  heater \"cable\" {\n    power = \"9 W\"\n    place = \"back\"\n    channel = \"rack\"\n    thermostat = \"30 C\"\n  }\n}\n", "heater-bare", ""},
		{"a shared outlet without a setting", "climate {\n  heater \"mat\" {\n    power = \"25 W\"\n    size  = \"28 x 43 cm\"\n    place = \"side\"\n    channel = \"rack\"\n  }\n}\n", "heater-bare", "of which no heater says its thermostat"},
		{"a setting that cannot be read is not no setting", heater(`"30"`, ""), "heater-bare", ""},
		{"a cold night within the night's own figure", "climate {\n  warm_end = \"30 C\"\n  night = \"20 C\"\n}\n", "temperature-unusual", ""},
		{"a season is reason enough", "season \"rest\" {\n  from = \"1 nov\"\n  to = \"28 feb\"\n  feeding = \"none\"\n  climate {\n    warm_end = \"20 C\"\n  }\n}\n", "temperature-unusual", ""},
		{"but not for what harms", "season \"rest\" {\n  from = \"1 nov\"\n  to = \"28 feb\"\n  climate {\n    warm_end = \"12 C\"\n  }\n}\n", "temperature-harmful", "of season \"rest\" is planned at 12 C: colder"},
		{"heaters off in a cold room", "room \"east\" {\n  temperature = \"9 to 25 C\"\n}\nenclosure \"box\" {\n  species = \"pandinus-imperator\"\n" + box(`"76 x 46 x 41 cm"`, "") + group("1", adults) + heater(`"30 C"`, "") + "season \"rest\" {\n  from = \"1 nov\"\n  to = \"28 feb\"\n  heating = \"off\"\n}\n}\n", "room-too-cold", "the heaters are off"},

		{"floor for three, to the centimetre", box(`"60 x 40 x 41 cm"`, ""), "floor-small", ""},
		{"and less", box(`"59 x 40 x 41 cm"`, ""), "floor-small", "2400 cm2 at the least"},
		{"young with their mother need no floor", box(`"40 x 30 x 41 cm"`, "") + "animals \"mother\" {\n  count = \"0.1\"\n  stage = \"adult\"\n  state = \"with brood\"\n}\n" + group("20", "  instar = 2\n"), "floor-small", ""},
		{"nor are they mixed sizes", "animals \"mother\" {\n  count = \"0.1\"\n  stage = \"adult\"\n  state = \"with brood\"\n}\n" + group("20", "  instar = 2\n"), "mixed-sizes", ""},
		{"a mother with young alone", "animals \"mother\" {\n  count = \"0.1\"\n  stage = \"adult\"\n  state = \"with brood\"\n}\n" + group("20", "  stage = \"newborn\"\n"), "brood-in-group", ""},
		{"those that lay stay where they are", "species = \"archispirostreptus-gigas\"\n" + group(`"1.2"`, adults) + "2026-11-20 box adults mated\n", "brood-in-group", ""},
		{"and so do geckos", "species = \"eublepharis-macularius\"\n" + group(`"1.1"`, adults) + "2026-11-20 box adults gravid\n", "brood-in-group", ""},
		{"gravid, of unknown mating, in a group", group(`"0.2"`, adults+"  state = \"gravid\"\n"), "brood-in-group", "when she gives birth is not known"},
		{"mated lately: there is time", group(`"1.1"`, adults) + "2026-11-01 box adults mated\n", "act-now", ""},
		{"mated long ago: there is none", group(`"1.1"`, adults) + "2026-04-01 box adults mated\n", "act-now", "may give birth among others"},
		{"advised depth is advice", "housing {\n  inside = \"76 x 46 x 41 cm\"\n  lid = \"solid, latched\"\n  depth = \"4.5 in\"\n}\n", "substrate-shallow", "6 in at the least"},
		{"of 20, one hide is too few even if 19 are young", box(`"76 x 46 x 41 cm"`, "hides = 1\n") + group("2", adults), "hides-few", "for 2 animals"},
		{"an unknown stage has the food of the smallest", group("1", "  mass = \"1 g\"\n") + "feeding \"adults\" {\n  every = \"4 days\"\n  prey = \"roach medium\"\n}\n", "prey-heavy", "300 mg at the most"},
		{"killed prey is taken in pieces", group("1", "  stage = \"juvenile\"\n  mass = \"1 g\"\n") + "feeding \"adults\" {\n  every = \"4 days\"\n  prey = \"roach medium\"\n  killed = true\n}\n", "prey-heavy", ""},
		{"the last weight in the log counts", group("1", "  stage = \"juvenile\"\n  mass = \"1 g\"\n") + "feeding \"adults\" {\n  every = \"4 days\"\n  prey = \"cricket medium\"\n}\n2026-11-01 box adults weighed 4 g\n", "prey-heavy", ""},
		{"a menu with a tenth of waxworms", "feeding \"adults\" {\n  every = \"4 days\"\n  rotate = [\"waxworm large\", \"cricket adult\", \"cricket adult\", \"cricket adult\", \"cricket adult\", \"cricket adult\", \"cricket adult\", \"cricket adult\", \"cricket adult\", \"cricket adult\"]\n}\n", "prey-rich", ""},
		{"a calendar for each of the keeper's choices", "calendar \"feeding\" {\n  kinds = [\"feed\"]\n  rooms = [\"east\"]\n  keepers = [\"lead\"]\n}\n", "calendar-empty", ""},
		{"who stands in has a calendar too", "keeper \"relief\" {\n}\naway \"lead\" {\n  from = \"2027-07-10\"\n  to = \"2027-07-24\"\n  cover = \"relief\"\n}\ncalendar \"relief\" {\n  keepers = [\"relief\"]\n}\n", "calendar-empty", ""},
		{"care of the plan's own that names its source is not the sheet's", "enclosure \"desert\" {\n  species = \"hadrurus-arizonensis\"\n" + box(`"40 x 30 x 40 cm"`, "") + group("1", adults) + "care \"mist\" {\n  every = \"day\"\n  source = [\"own records\"]\n  seen = \"2026-10-01\"\n}\n}\n", "misted-too-often", "comes up every day"},
		{"nor where it is fixed on a day of rest", "animals \"mother\" {\n  count = \"0.1\"\n  stage = \"adult\"\n  state = \"with brood\"\n}\ncare \"rehouse\" {\n  every = \"day\"\n  from = \"2026-12-05\"\n  until = \"2026-12-05\"\n  source = [\"own records\"]\n  seen = \"2026-10-01\"\n}\n", "disturbing-held", "rehouse is fixed on"},
		{"two absences of one keeper are one keeper away", "keeper \"lead\" {\n}\nkeeper \"second\" {\n}\nkeeper \"third\" {\n}\nround \"evening\" {\n  at = \"19:30\"\n  keeper = \"lead\"\n  people = 2\n}\naway \"third\" {\n  from = \"2027-03-01\"\n  to = \"2027-03-08\"\n}\naway \"third\" {\n  from = \"2027-03-05\"\n  to = \"2027-03-12\"\n}\n", "people-few", ""},
		{"a lead that the sheet has for adults", "species \"pandinus-imperator\" {\n  figure \"isolate-before\" {\n    value = \"60 days\"\n    stages = [\"adult\"]\n    source = [\"own records\"]\n    quality = \"own\"\n    because = \"she is restless before\"\n    review = \"2027-10-01\"\n  }\n}\nenclosure \"box\" {\n  species = \"pandinus-imperator\"\n" + box(`"76 x 46 x 41 cm"`, "") + group(`"1.1"`, adults) + "}\n2026-06-01 box adults mated\n", "act-now", "may give birth among others"},
		{"a former name that is still in use", "care \"mist\" {\n  every = \"day\"\n  formerly = \"water\"\n}\ncare \"water\" {\n  every = \"day\"\n}\n", "identity-clash", "and there is one of that name"},
	} {
		t.Run(c.name, func(t *testing.T) {
			r := compiled(t, c.example)
			got := printed(r, of(r, c.rule))
			if c.want == "" && got != "" || !strings.Contains(got, c.want) {
				t.Errorf("%s: want %q, got:\n%s", c.rule, c.want, got)
			}
		})
	}
}

// TestTrade holds what keepers say to each other against the rules: each must be
// accepted, or be told what the sources say. All of it is common practice, no
// source.
func TestTrade(t *testing.T) {
	const accepted = "accepted"
	lamp := func(device, watts, place string) string {
		return "climate {\n  warm_end = \"86 F\"\n  cool_end = \"79 F\"\n  night = \"75 F\"\n  humidity = \"70 to 80 %\"\n  thermometer = true\n  heater \"" + device + "\" {\n    power = \"" + watts + "\"\n    size = \"28 x 43 cm\"\n    place = \"" + place + "\"\n    thermostat = \"86 F\"\n  }\n}\n"
	}
	tank := func(n int, lid string) string {
		return fmt.Sprintf("housing {\n  inside = \"20 x 10 x 12 in\"\n  lid = \"%s\"\n  vents = \"some\"\n  depth = \"6 in\"\n  hides = %d\n  gap = \"0.04 in\"\n}\nanimals \"adults\" {\n  count = %d\n  stage = \"adult\"\n  origin = \"captive bred\"\n  paper = \"invoice 118\"\n}\n", lid, n, n) +
			"climate {\n  warm_end = \"85 F\"\n  cool_end = \"79 F\"\n  night = \"75 F\"\n  humidity = \"70 to 80 %\"\n  thermometer = true\n  heater \"mat\" {\n    power = \"16 W\"\n    size = \"11 x 10 in\"\n    place = \"back\"\n    thermostat = \"85 F\"\n  }\n}\n"
	}
	held := "climate {\n  warm_end = \"90 F\"\n  cool_end = \"90 F\"\n  night = \"77 F\"\n  humidity = \"70 to 80 %\"\n  thermometer = true\n}\n"
	for _, c := range []struct {
		name, example, rule string
		told                []string // what must be printed of that rule; nil for nothing
	}{
		{"10 gallons for one adult emperor", tank(1, "solid, latched"), accepted, nil},
		{"10 gallons for three", tank(3, "solid, latched"), "floor-small", []string{"caution", "sq in at the least"}},
		{"eight crickets a week", "feeding \"adults\" {\n  on = [\"tue\", \"fri\"]\n  per_animal = 4\n  rotate = [\"cricket adult\", \"cricket adult\", \"roach medium\"]\n}\n", accepted, nil},
		{"a lamp above", lamp("lamp", "60 W", "above"), accepted, nil},
		{"a mat on the side", lamp("mat", "25 W", "side"), accepted, nil},
		{"a mat beneath", lamp("mat", "25 W", "under"), "heat-beneath", []string{"error", "has dried", "reptiliansource.com", "dubiaroaches.com"}},
		{"a mesh top", tank(1, "mesh, latched"), "mesh-top", []string{"caution", "leaves through a mesh lid"}},
		{"a colony at 90 F throughout", held, "off-target", []string{"caution", "77 to 86 F", "75 to 82 F (K4)", "81 to 99 F (K1)"}},
		{"the same, and good for long", held, "temperature-unusual", nil}, // the warmest that a source recommends (K2)
		{"92 F, beyond what is good for long", strings.ReplaceAll(held, "90 F", "92 F"), "temperature-unusual", []string{"caution", "warmer than is good"}},
		{"the same, of which one cause is said once", held, "no-gradient", nil},
	} {
		t.Run(c.name, func(t *testing.T) {
			r := compiled(t, c.example)
			if c.rule == accepted {
				for _, f := range r.Findings {
					if f.Severity > finding.Advice {
						t.Error(printed(r, r.Findings))
					}
				}
				return
			}
			got := printed(r, of(r, c.rule))
			if (got == "") != (c.told == nil) {
				t.Fatalf("%s:\n%s", c.rule, printed(r, r.Findings))
			}
			for _, want := range c.told {
				if !strings.Contains(got, want) {
					t.Errorf("it is not said: %q\n%s", want, got)
				}
			}
		})
	}
}

// collection is n sound enclosures, ready to be checked.
func collection(t testing.TB, n int) *check.Collection {
	text, _ := check.Example("")
	_, box, _ := strings.Cut(text, "enclosure \"box\" {\n")
	var b strings.Builder
	fmt.Fprintf(&b, "template \"same\" {\n%s", box)
	for i := range n {
		fmt.Fprintf(&b, "enclosure \"box-%d\" {\n  template = \"same\"\n}\n", i)
	}
	r := compiled(t, b.String())
	if len(r.Findings) > 0 {
		t.Fatal(printed(r, r.Findings[:1]))
	}
	return &check.Collection{Plan: r.Plan, Today: r.Today, Horizon: r.Horizon, Lives: r.Lives, Roster: r.Roster}
}

// TestNothingFoundAllocatesNothing checks that what rules allocate does not grow
// with the number of enclosures about which there is nothing to say.
func TestNothingFoundAllocatesNothing(t *testing.T) {
	few, more := collection(t, 5), collection(t, 25) // of more a round is looked at whole
	allocated := func(c *check.Collection) float64 {
		return testing.AllocsPerRun(5, func() {
			again := check.Collection{Plan: c.Plan, Today: c.Today, Horizon: c.Horizon, Lives: c.Lives, Roster: c.Roster}
			run(&again)
		})
	}
	if a, b := allocated(few), allocated(more); b > a+5+20 { // one for each enclosure, its own
		t.Errorf("%v allocations for 5 enclosures, %v for 25", a, b)
	}
}

// BenchmarkRules runs all rules over 10,000 enclosures.
func BenchmarkRules(b *testing.B) {
	c := collection(b, 10_000)
	b.ReportAllocs()
	for b.Loop() {
		again := check.Collection{Plan: c.Plan, Today: c.Today, Horizon: c.Horizon, Lives: c.Lives, Roster: c.Roster}
		if found := run(&again); len(found) > 0 {
			b.Fatal(found[0].Text)
		}
	}
}

// run applies all rules, one enclosure after another.
func run(c *check.Collection) []finding.Finding {
	c.Prepare()
	found := c.Whole()
	for i := range c.Lives {
		found = append(found, c.One(i)...)
	}
	return found
}
