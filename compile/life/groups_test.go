package life_test

import (
	"strings"
	"testing"

	"vivary/compile/life"
	"vivary/schema"
	"vivary/schema/civil"
)

// twoBoxes is a plan of two boxes of emperors, some animals in the first, none in the second.
func twoBoxes(count, stage string) string {
	text := `collection "c" {
  time_zone = "Europe/London"
}
room "r" {
  temperature = "26 to 28 C"
}
`
	for _, box := range []struct{ name, count, stage string }{{"first", count, stage}, {"second", "0", stage}} {
		text += `enclosure "` + box.name + `" {
  species = "pandinus-imperator"
  housing {
    inside = "90 x 45 x 45 cm"
    lid    = "solid, latched"
  }
  animals "` + box.name + `s" {
    count = ` + box.count + `
    stage = "` + box.stage + `"
  }
}
`
	}
	return text
}

// TestSomeOfAGroupKeepTheirClock: who leaves a group in part takes along what is true of
// each of it, and what may be true of it: since when it has not eaten, and what a
// veterinarian ordered. Parting a brood in lots, and setting one that refuses apart, are
// common practice, and neither is a meal.
func TestSomeOfAGroupKeepTheirClock(t *testing.T) {
	today := civil.Must(2027, 6, 10)
	for _, c := range []struct {
		name, plan, log string
		heldThere       func(*life.Group) bool
	}{
		{"a brood in lots", twoBoxes("1", "adult"), "2027-05-01 first born 20\n2027-05-20 first first_moult\n2027-06-02 first separated 8 second\n",
			asked("starving/")},
		{"a lot of a lot", twoBoxes("1", "adult"), "2027-05-01 first born 20\n2027-05-20 first first_moult\n2027-06-02 first separated 8 second\n2027-06-04 second moved 4 first\n",
			asked("starving/")},
		{"one that refuses", twoBoxes("3", "juvenile"), "2027-05-01 first refused\n2027-05-10 first refused\n2027-05-25 first moved 1 second\n",
			asked("fast")},
		{"one under treatment", twoBoxes("3", "adult"), "2027-06-01 first treated 20 days \"drops\"\n2027-06-05 first moved 1 second\n",
			func(g *life.Group) bool {
				for _, h := range g.Holds {
					if h.State.Name == schema.StateTreated.Name && h.Until > today {
						return true
					}
				}
				return false
			}},
	} {
		col := load(t, c.plan, c.log)
		for _, e := range col.Enclosures {
			got, _ := lifeOf(col, e, col.Log, year(today))
			held := false
			for _, g := range got.Groups {
				held = held || g.Count(today) > 0 && c.heldThere(g)
			}
			if !held {
				t.Errorf("%s: it is forgotten in %s", c.name, e.Name.V)
			}
		}
	}
}

func asked(prefix string) func(*life.Group) bool {
	return func(g *life.Group) bool {
		for _, a := range g.Asks {
			if strings.HasPrefix(a.Name, prefix) {
				return true
			}
		}
		return false
	}
}

// TestGeckoOnItsBack: a gecko sheds on its feet, and on its back it is an emergency
// (common practice, no source); a tarantula that lies so moults, and nothing is opened.
func TestGeckoOnItsBack(t *testing.T) {
	today := civil.Must(2027, 6, 15)
	for species, want := range map[string]*schema.State{"eublepharis-macularius": schema.StateIll, "brachypelma-hamorii": schema.StateMoulting} {
		plan := strings.Replace(twoBoxes("1", "adult"), "pandinus-imperator", species, 1)
		e := lived(t, plan, "2027-06-14 first on its back\n", year(today))
		g := e.Groups[0]
		if len(g.Holds) != 1 || g.Holds[0].State.Name != want.Name {
			t.Errorf("%s on its back: held as %+v, want %s", species, g.Holds, want.Name)
		}
		if ill := asked("ill")(g); ill != (want == schema.StateIll) {
			t.Errorf("%s on its back: a veterinarian is asked for: %v", species, ill)
		}
	}
}

// TestHatchedInACup: a sac that was taken hatches in the cup to which it was put, which the
// plan has with nobody in it; where keepers pull sacs the line is written of the cup
// (common practice, no source). All of them are there, and whether they eat is asked.
func TestHatchedInACup(t *testing.T) {
	today := civil.Must(2027, 6, 25)
	for _, species := range []string{"brachypelma-hamorii", "hierodula-membranacea"} {
		plan := strings.ReplaceAll(twoBoxes("1", "adult"), "pandinus-imperator", species)
		i := strings.LastIndex(plan, `"adult"`)
		plan = plan[:i] + `"young"` + plan[i+len(`"adult"`):]
		col := load(t, plan, "2027-04-01 first laid\n2027-05-01 first sac-taken\n2027-05-20 second hatched 200\n")
		e, found := lifeOf(col, col.Enclosures[1], col.Log, year(today))
		g := e.Groups[0]
		if g.Count(today) != 200 || g.Count(civil.Must(2027, 5, 19)) != 0 || g.Stage(today) != "young" {
			t.Errorf("%s: %d of stage %s are in the cup", species, g.Count(today), g.Stage(today))
		}
		if !asked("starving/")(g) {
			t.Errorf("%s: whether they have eaten is not asked", species)
		}
		for _, f := range found {
			if f.Rule.ID == "act-now" {
				continue // the question itself
			}
			t.Errorf("%s: found %s", species, f.Text)
		}
	}
}

// TestNewbornOfThePlanAreAskedAbout: young that are newborn by the plan and have no day of
// birth wait for their first moult, and it is asked each week whether it has come.
func TestNewbornOfThePlanAreAskedAbout(t *testing.T) {
	for _, species := range []string{"pandinus-imperator", "brachypelma-hamorii"} {
		plan := strings.ReplaceAll(twoBoxes("20", "newborn"), "pandinus-imperator", species)
		g := lived(t, plan, "", year(civil.Must(2027, 6, 15))).Groups[0]
		if !asked("newborn/")(g) {
			t.Errorf("%s: nobody is asked whether they have moulted", species)
		}
	}
}

// TestSheMayBeTheOneThatStayed: of a group with a gravid female, one alone that goes to an
// empty box is she, since that is asked for. Where one is ill too nobody wrote which of them
// went, and both boxes are looked after as if she were in them.
func TestSheMayBeTheOneThatStayed(t *testing.T) {
	today := civil.Must(2027, 6, 15)
	for log, stayed := range map[string]bool{
		"2027-06-01 first gravid\n2027-06-05 first moved 1 second\n":                         false,
		"2027-06-01 first gravid\n2027-06-03 first ill 1\n2027-06-05 first moved 1 second\n": true,
	} {
		col := load(t, twoBoxes("3", "adult"), log)
		for i, want := range []bool{stayed, true} {
			e, _ := lifeOf(col, col.Enclosures[i], col.Log, year(today))
			if got := e.Groups[0].Gravid; got != want {
				t.Errorf("after %q one in %s may be gravid: %v, want %v", log, e.Plan.Name.V, got, want)
			}
		}
	}
}

// TestYoungOfOneThatIsGone: keepers write of the young by their mother's name, also once she
// has died or escaped. As many as were taken out are where they went, and the others here.
func TestYoungOfOneThatIsGone(t *testing.T) {
	today := civil.Must(2027, 6, 25)
	for species, log := range map[string]string{
		"pandinus-imperator":  "2027-05-01 first firsts born 12\n2027-05-03 first firsts died\n2027-05-15 first firsts first_moult\n2027-05-25 first firsts separated 8 second\n",
		"brachypelma-hamorii": "2027-05-01 first firsts hatched 12\n2027-05-03 first firsts escaped\n2027-05-10 first firsts dispersed\n2027-05-15 first firsts separated 8 second\n",
	} {
		col := load(t, strings.ReplaceAll(twoBoxes("1", "adult"), "pandinus-imperator", species), log)
		e, found := lifeOf(col, col.Enclosures[0], col.Log, year(today))
		here := 0
		for _, g := range e.Groups {
			here += g.Count(today)
		}
		if here != 4 {
			t.Errorf("%s: %d are left, and 4 were", species, here)
		}
		for _, f := range found {
			if f.Rule.ID == "log-gone" {
				t.Errorf("%s: found %s", species, f.Text)
			}
		}
	}
}
