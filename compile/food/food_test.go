package food_test

import (
	"fmt"
	"strings"
	"testing"

	"vivary/compile/climate"
	"vivary/compile/food"
	"vivary/compile/horizon"
	"vivary/compile/life"
	"vivary/compile/roster"
	"vivary/internal/planned"
	"vivary/schema/civil"
)

var today = civil.Must(2026, 11, 25)

// fed schedules one box of animals that are fed a menu.
func fed(t testing.TB, species, animals, climate, meal string) (*roster.Roster, *life.Group) {
	t.Helper()
	text := "collection \"c\" {\n  time_zone = \"Europe/London\"\n}\nroom \"r\" {\n  temperature = \"22 to 25 C\"\n}\n" +
		"feeder \"moth\" {\n  size \"grown\" {\n    length = \"2 cm\"\n  }\n  figure \"energy\" {\n    value = \"9 kJ/g\"\n  }\n}\n" + // never weighed
		fmt.Sprintf("enclosure \"box\" {\n  species = %q\n  housing {\n    inside = \"60 x 40 x 40 cm\"\n    lid = \"solid, latched\"\n  }\n  animals \"a\" {\n%s\n  }\n%s\n", species, animals, climate)
	if meal != "" {
		text += "  feeding \"a\" {\n" + meal + "\n  }\n"
	}
	c, _ := planned.Sound(t, planned.With(text+"}\n", ""))
	h := horizon.Around(today, 400)
	lives, _ := life.Read(c, life.Households(c)[0], h)
	l := lives[0]
	shared, _ := roster.Share(c, h, nil)
	return roster.Make(shared, []*life.Enclosure{l}, []roster.Sheet{shared.Enclosure(l)}, nil), l.Groups[0]
}

const (
	warm  = "  climate {\n    warm_end = \"27 C\"\n    cool_end = \"27 C\"\n  }\n"
	kept  = "  climate {\n    warm_end = \"30 C\"\n    cool_end = \"26 C\"\n  }\n"
	grown = "    count = \"1\"\n    stage = \"adult\"\n"
	of25g = grown + "    mass = \"25 g\"\n"
)

func TestReport(t *testing.T) {
	for _, x := range []struct {
		name, species, animals, climate, meal string
		items                                 float64
		verdict                               food.Verdict
	}{
		{"two crickets a week cover 25 g at rest (Withers and Smith 1993, Finke)", "pandinus-imperator", of25g, warm, "on = [\"tue\", \"fri\"]\nper_animal = 1\nprey = \"cricket adult\"", 2, food.Plausible},
		{"three to six, every other day (interestinganimals.net)", "pandinus-imperator", of25g, warm, "on = [\"tue\", \"fri\"]\nper_animal = 3\nprey = \"cricket adult\"", 6, food.Plausible},
		{"about eight for an adult emperor (common practice, no source)", "pandinus-imperator", grown, kept, "on = [\"tue\", \"fri\"]\nper_animal = 4\nprey = \"cricket adult\"", 8, food.Plausible},
		{"the same at 25 g and 27 C, the upper end (common practice, no source)", "pandinus-imperator", of25g, warm, "on = [\"tue\", \"fri\"]\nper_animal = 4\nprey = \"cricket adult\"", 8, food.Plausible},
		{"ten grown roaches", "pandinus-imperator", of25g, warm, "on = [\"tue\", \"fri\"]\nper_animal = 5\nprey = \"roach adult\"", 10, food.Much},
		{"two pinheads", "pandinus-imperator", of25g, warm, "on = [\"tue\", \"fri\"]\nper_animal = 1\nprey = \"cricket pinhead\"", 2, food.Little},
		{"one cricket a week for a tarantula of 15 g (articleted.com)", "brachypelma-hamorii", grown, "", "every = \"7 days\"\nper_animal = 1\nprey = \"cricket adult\"", 1, food.Plausible},
	} {
		s, g := fed(t, x.species, x.animals, x.climate, x.meal)
		r, ok := food.Of(s, s.Of[0], g, today)
		if !ok {
			t.Errorf("%s: no report", x.name)
			continue
		}
		near(t, x.name, r.Items, x.items, 0.05) // 400 days are no whole weeks
		if r.Verdict != x.verdict {
			t.Errorf("%s: %s; need %v, offered %v", x.name, r.Verdict, r.Need, r.Offered)
		}
		if r.Usual == nil {
			t.Errorf("%s: nothing usual", x.name)
		}
	}
}

// 3.301 kJ a week at rest and 2.724 kJ in a cricket, from the papers' worked values;
// 0.5 to 5 times is the band that such a check deserves (judgement).
func TestBand(t *testing.T) {
	s, g := fed(t, "pandinus-imperator", strings.Replace(of25g, `"1"`, `"1.2.0"`, 1), warm, "on = [\"tue\", \"fri\"]\nper_animal = 1\nprey = \"cricket adult\"")
	r, ok := food.Of(s, s.Of[0], g, today)
	if !ok || !r.Measured || r.Animals != 3 {
		t.Fatalf("%+v", r)
	}
	near(t, "rest", r.Rest.Likely, 3.301, 0.001)
	near(t, "low", r.Need.Low, 0.5*3.301/0.7, 0.001)
	near(t, "likely", r.Need.Likely, 2*3.301/0.7, 0.001)
	near(t, "high", r.Need.High, 5*3.301/0.7, 0.005) // of rounded kJ
	near(t, "offered", r.Offered.Likely/r.Items, 2.724, 0.001)
	got := strings.Join(r.Lines(s.Lives[0].Plan), "\n")
	for _, want := range []string{"3.3 kJ", "Withers and Smith 1993", "none on Pandinus", "All 3: ", "lies within it", "Gefen and Ar 2005"} {
		if !strings.Contains(got, want) {
			t.Errorf("no %q in\n%s", want, got)
		}
	}
}

// The limit of Gefen and Ar 2005 is one of Scorpionidae, not of a desert hairy scorpion.
func TestDryingIsOfOneFamily(t *testing.T) {
	s, g := fed(t, "hadrurus-arizonensis", grown, "", "")
	r, ok := food.Of(s, s.Of[0], g, today)
	if got := strings.Join(r.Lines(s.Lives[0].Plan), "\n"); !ok || strings.Contains(got, "drinking") {
		t.Error(got)
	}
}

// The mean of a rotating menu, and days that are held, count as what is usual.
func TestMenu(t *testing.T) {
	winter := "  season \"rest\" {\n    from = \"1 dec\"\n    to = \"28 feb\"\n    feeding = \"none\"\n  }\n"
	for _, season := range []string{"", winter} {
		s, g := fed(t, "pandinus-imperator", of25g, warm+season, "on = [\"tue\", \"fri\"]\nper_animal = 1\nrotate = [\"cricket adult\", \"superworm large\"]")
		r, ok := food.Of(s, s.Of[0], g, today)
		if !ok {
			t.Fatal("no report")
		}
		near(t, "items", r.Items, 2, 0.05)
		near(t, "one of the menu", r.Offered.Likely/r.Items, (0.465*1.4+0.610*2.42)*4.184/2, 0.001)
	}
}

// The ends of the plan, else the room's without a heater, else the sheet's.
func TestTemperature(t *testing.T) {
	for inside, want := range map[string][2]climate.Celsius{
		kept: {26, 30},
		"":   {22, 25},
		"  climate {\n    heater \"mat\" {\n      power = \"10 W\"\n      place = \"side\"\n      thermostat = \"28 C\"\n    }\n  }\n": {25, 30},
	} {
		s, g := fed(t, "pandinus-imperator", of25g, inside, "")
		if r, ok := food.Of(s, s.Of[0], g, today); !ok || r.Temperature.Low != want[0] || r.Temperature.High != want[1] {
			t.Errorf("%v, want %v", r.Temperature, want)
		}
	}
}

func TestNothingToSay(t *testing.T) {
	for name, x := range map[string][4]string{
		"no rate of its kin":   {"hierodula-membranacea", grown, "", "every = \"3 days\"\nprey = \"cricket adult\""},
		"no mass of the prey":  {"pandinus-imperator", of25g, warm, "every = \"7 days\"\nprey = \"moth grown\""},
		"nobody feeds them":    {"pandinus-imperator", of25g, warm, "off = true\nbecause = \"check\""},
		"stage without a mass": {"brachypelma-hamorii", "count = 1\nstage = \"juvenile\"", "", "every = \"7 days\"\nprey = \"cricket adult\""},
	} {
		s, g := fed(t, x[0], x[1], x[2], x[3])
		if r, ok := food.Of(s, s.Of[0], g, today); ok {
			t.Errorf("%s: %+v", name, r)
		}
	}
}

func TestNoAllocation(t *testing.T) {
	s, g := fed(t, "pandinus-imperator", of25g, warm, "")
	if n := testing.AllocsPerRun(100, func() { food.Of(s, s.Of[0], g, today) }); n != 0 {
		t.Errorf("%v allocations", n)
	}
}

// BenchmarkOf reports on the default menu of one group, three items in turn.
func BenchmarkOf(b *testing.B) {
	s, g := fed(b, "pandinus-imperator", of25g, warm, "")
	b.ReportAllocs()
	for b.Loop() {
		food.Of(s, s.Of[0], g, today)
	}
}
