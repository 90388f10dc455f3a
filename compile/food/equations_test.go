package food_test

import (
	"math"
	"testing"

	"vivary/compile/food"
)

func near(t *testing.T, what string, got, want, off float64) {
	t.Helper()
	if !(math.Abs(got-want) <= off) {
		t.Errorf("%s: %.5g, want %.5g", what, got, want)
	}
}

// Withers and Smith 1993, J. therm. Biol. 18:13-18, worked with a pocket calculator
// from the coefficients printed in the abstract, and its two Q10.
func TestScorpionOxygen(t *testing.T) {
	near(t, "10 g at 25 C", food.ScorpionOxygen(10, 25), 354.8, 0.05)
	near(t, "1 g at 25 C", food.ScorpionOxygen(1, 25), 42.66, 0.005)
	near(t, "25 g at 27 C", food.ScorpionOxygen(25, 27), 977.5, 0.1)
	near(t, "Q10", food.ScorpionOxygen(7, 30)/food.ScorpionOxygen(7, 20), 2.344, 0.0005)
	near(t, "25 g at 27 C, J a day", 86400e-6*food.ScorpionRest(25, 27), 471.5, 0.1)
	near(t, "25 g at 27 C, kJ a week", food.Weekly(food.ScorpionRest(25, 27)), 3.301, 0.001)
}

// Lighton and others 2001 (J. Exp. Biol. 204:607-613) found less than 0.24 of a
// typical arthropod's rate in two genera, with a Q10 of 2.97; their lines as remembered,
// 973 and 906 µW, give 926 and 820 µW for 5 g at 25 °C. The other species of
// Withers and Smith is to agree within the third that separates the papers.
func TestScorpionsAgree(t *testing.T) {
	for _, other := range []float64{926, 820} {
		near(t, "5 g at 25 C in µW", food.ScorpionRest(5, 25)/other, 1, 0.29)
	}
	near(t, "5 g at 25 C in µW", food.ScorpionRest(5, 25), 1047, 1)
}

// As above; loss in dry air.
func TestScorpionWater(t *testing.T) {
	near(t, "10 g at 25 C", food.ScorpionWater(10, 25), 3.887, 0.0005)
	near(t, "25 g at 27 C", food.ScorpionWater(25, 27), 7.804, 0.0005)
	near(t, "Q10", food.ScorpionWater(7, 30)/food.ScorpionWater(7, 20), 1.820, 0.0005)
	near(t, "25 g at 27 C in dry air, % a day", food.ScorpionDrying(25, 27, 0), 0.749, 0.0005)
	near(t, "25 g at 27 C and 80 %, % a day", food.ScorpionDrying(25, 27, 80), 0.150, 0.0005)
	near(t, "in saturated air", food.ScorpionDrying(25, 27, 100), 0, 0)
}

// Nespolo and others 2011, Comp. Biochem. Physiol. A 159:379-382: 1,524 µW at 7.32 g
// and 25 °C, which is 208.2 µW/g and 131.7 J a day. Meehan 2006, Physiol. Biochem. Zool.
// 79:878-884: 0.6 eV is 2.19 times from 20 to 30 °C.
func TestTarantula(t *testing.T) {
	p := food.TarantulaRest(7.32, 25)
	near(t, "power", p, 1524, 0.5)
	near(t, "per gram", p/7.32, 208.2, 0.05)
	near(t, "J a day", p*86400e-6, 131.7, 0.05)
	near(t, "20 to 30 C", food.Warming(20, 30), 2.19, 0.005)
	near(t, "warmer", food.TarantulaRest(7.32, 30)/food.TarantulaRest(7.32, 20), 2.19, 0.005)
	near(t, "16 times the mass", food.TarantulaRest(16, 25)/food.TarantulaRest(1, 25), 8, 1e-9)
}

// A meal of 1.26 g cost that tarantula 0.28 kJ to digest (the same paper), a day of
// rest 0.13 kJ: a week at rest is a few times the cost of one meal, not a hundredth.
func TestTarantulaMagnitude(t *testing.T) {
	if week := food.Weekly(food.TarantulaRest(7.32, 25)); week < 2*0.28 || week > 10*0.28 {
		t.Errorf("%v kJ a week", week)
	}
}
