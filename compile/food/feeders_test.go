package food_test

import (
	"testing"

	"vivary/compile/food"
	"vivary/plan"
	"vivary/schema"
)

// Energy of the wet animal in kcal/g, and water, protein and fat in %: M. D. Finke,
// table 41.1 in Hand-Rearing Birds, 2nd ed., p. 626, after Finke 2002, Zoo Biol.
// 21:269-285, whose abstract has 674 kcal/kg for the silkworm and 2,741 for the waxworm.
func TestFeedersAgainstFinke(t *testing.T) {
	library := plan.NewLibrary()
	for name, want := range map[string][4]float64{
		"cricket":           {1.40, 69.2, 20.5, 6.8},
		"mealworm":          {2.05, 61.9, 18.7, 13.4},
		"superworm":         {2.42, 57.9, 19.7, 17.7},
		"waxworm":           {2.75, 58.5, 14.1, 24.9},
		"turkestan-roach":   {1.60, 69.1, 19.0, 10.0},
		"orange-spot-roach": {2.27, 56.6, 26.3, 13.6},
		"fruit-fly":         {1.37, 69.1, 21.0, 5.9},
		"soldier-fly-larva": {1.99, 61.2, 17.5, 14.0},
		"silkworm":          {0.67, 82.7, 9.3, 1.4},
		"butterworm":        {2.98, 60.2, 15.5, 29.4},
		"woodlouse":         {0.83, 67.8, 13.3, 3.7},
		"earthworm":         {0.71, 83.6, 10.5, 1.6},
	} {
		f := library.Feeder(name)
		if f == nil {
			t.Errorf("no %s", name)
			continue
		}
		for i, figure := range []*schema.Figure{schema.FeederEnergy, schema.FeederWater, schema.FeederProtein, schema.FeederFat} {
			x, scale := f.Figure(figure), 1.0
			if i == 0 {
				scale = 4.184 // kJ
			}
			if x == nil {
				t.Errorf("%s: no %s", name, figure.Name)
				continue
			}
			near(t, name+" "+figure.Name, x.Range.Low, want[i]*scale, 1e-9)
			near(t, name+" "+figure.Name, x.Range.High, want[i]*scale, 1e-9)
		}
	}
	near(t, "silkworm of the abstract", library.Feeder("silkworm").Figure(schema.FeederEnergy).Range.Low/4.184, 0.674, 0.01)
	near(t, "waxworm of the abstract", library.Feeder("waxworm").Figure(schema.FeederEnergy).Range.Low/4.184, 2.741, 0.01)

	// 465 mg and 5.86 kJ/g are 2.724 kJ.
	e, ok := food.Energy(library, plan.Prey{Feeder: "cricket", Size: "adult"})
	if near(t, "an adult cricket, kJ", e.Likely, 2.724, 0.001); !ok {
		t.Error("no energy of a cricket")
	}
	// Nymphs of 0.95 kcal/g in the same table: 321 mg (source P39) are 1.276 kJ,
	// where a grown one has 1.4 kcal/g.
	e, ok = food.Energy(library, plan.Prey{Feeder: "cricket", Size: "medium"})
	if near(t, "a medium cricket, kJ", e.Likely, 1.276, 0.001); !ok {
		t.Error("no energy of a nymph")
	}
	e, _ = food.Energy(library, plan.Prey{Feeder: "cricket", Size: "adult"})
	// 3.301 kJ a week at rest, 70 % taken up: 1.73 crickets, 3.46 and 5.19 of the active.
	for activity, crickets := range map[float64]float64{1: 1.73, 2: 3.46, 3: 5.19} {
		near(t, "crickets a week", activity*food.Weekly(food.ScorpionRest(25, 27))/(e.Likely*food.Assimilation), crickets, 0.005)
	}
	for _, p := range []plan.Prey{{Feeder: "cricket", Size: "huge"}, {Feeder: "brick"}} {
		if _, ok := food.Energy(library, p); ok {
			t.Errorf("%v has an energy", p)
		}
	}
}

// Of one feeder the larger item brings more.
func TestLargerBringsMore(t *testing.T) {
	library := plan.NewLibrary()
	for _, name := range library.FeederNames() {
		sizes := library.Feeder(name).Sizes
		for _, a := range sizes {
			for _, b := range sizes {
				if !a.Mass.Set() || !b.Mass.Set() || a.Mass.V.High > b.Mass.V.Low {
					continue
				}
				less, _ := food.Energy(library, plan.Prey{Feeder: name, Size: a.Name.V})
				more, _ := food.Energy(library, plan.Prey{Feeder: name, Size: b.Name.V})
				if a != b && less.Likely > more.Likely {
					t.Errorf("%s: %s brings %v kJ, and %s %v", name, a.Name.V, less.Likely, b.Name.V, more.Likely)
				}
			}
		}
	}
}
