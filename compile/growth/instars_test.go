package growth_test

import (
	"fmt"
	"strings"
	"testing"

	"vivary/compile/growth"
	"vivary/internal/planned"
	"vivary/schema/civil"
)

const own = "source = [\"p\"]\nbecause = \"check\"\nreview = \"2028-01-01\"\n"

func species(figures ...string) string {
	return "species \"sp\" {\n title = \"sp\"\n" + strings.Join(figures, "\n") + "\n}\n"
}

// instars are stages and instar lengths of a rearing, from the ages in days at its
// moults. The last instar is adult.
func instars(ages ...int) string {
	var b strings.Builder
	n := len(ages) + 1
	for _, s := range [][2]string{{"newborn", "1"}, {"young", fmt.Sprintf("2 to %d", n-2)}, {"subadult", fmt.Sprint(n - 1)}, {"adult", fmt.Sprint(n)}} {
		fmt.Fprintf(&b, "stage %q {\n instars = %q\n source = [\"p\"]\n}\n", s[0], s[1])
	}
	before := 0
	for i, age := range ages {
		fmt.Fprintf(&b, "figure \"instar-length\" {\n value = \"%d days\"\n instar = %d\n%s}\n", age-before, i+1, own)
		before = age
	}
	return b.String() + "figure \"growth-factor\" {\n value = \"1.26\"\n" + own + "}\n"
}

// Ages in days at each moult of scorpions reared from birth: Opisthacanthus
// madagascariensis, adult in instar 6 (Lourenço, Leguin and Cloudsley-Thompson 2010,
// Entomol. Mitt. Zool. Mus. Hamburg 15(183):173-182), and Chiromachus ochropus, in
// instar 11 and over ten years old (the same authors 2011, ibid. 15(184):213-222).
// From the birth alone, with their own instar lengths, every moult falls on the day.
func TestRearings(t *testing.T) {
	for name, ages := range map[string][]int{
		"Opisthacanthus": {13, 101, 204, 327, 442},
		"Chiromachus":    {10, 242, 596, 925, 1763, 2310, 2661, 2957, 3313, 3773},
	} {
		text := species(instars(ages...)) + box("sp", "30 x 20 x 20 cm", herd("one", "1", "instar = 1\n born = \"2026-11-25\"\n length = \"8 mm\""))
		r := report(t, text, "", "2026-11-25")
		_, steps, ok := r.Forecast(r.Life.Groups[0])
		if !ok || len(steps) != len(ages)+1 || steps[0].Due.When != growth.Now {
			t.Fatalf("%s: %v %v", name, steps, ok)
		}
		for i, age := range ages {
			d := steps[i+1].Due
			if at := r.Today + civil.Date(age); d.When != growth.Between || d.From != at || d.Until != at {
				t.Errorf("%s, moult %d: %d to %d days, published %d", name, i+1, d.From-r.Today, d.Until-r.Today, age)
			}
		}
		near(t, name+" as an adult", steps[len(ages)].Length.Likely, growth.After(8, 1.26, len(ages)), 1e-9)
		if name == "Chiromachus" && steps[10].Due.From-r.Today < 10*365 {
			t.Error("adult before ten years")
		}
	}
}

// Hadrurus gertschi has seven instars and six moults, grows by 1.27 and takes four
// years or more (Quijano-Ravell, Ponce-Saavedra and Francke 2011, Rev. Ibérica
// Aracnol. 19:133-145). The sheet of its kin H. arizonensis takes all three from it.
func TestHadrurus(t *testing.T) {
	r := report(t, box("hadrurus-arizonensis", "20 x 20 x 20 cm", herd("one", "1", "instar = 1\n born = \"2026-11-20\"")), "", "2026-11-25")
	f, steps, ok := r.Forecast(r.Life.Groups[0])
	if !ok || len(steps) != 7 || steps[6].Stage != "adult" || f.Low != 1.27 || f.High != 1.27 {
		t.Fatalf("%v %v %v", f, steps, ok)
	}
	if d := steps[6].Due; d.When != growth.Between || d.From < planned.Day("2030-11-20") {
		t.Errorf("adult from %v", d.From.Words())
	}
	near(t, "six moults", steps[6].Length.Likely/steps[0].Length.Likely, 4.196, 0.0005)
}

// No instar table of Pandinus is published. The sheet's is an estimate; its sum and
// its sizes were worked by hand: 515 to 1391 days, and an adult of 12 to 20 cm. The
// weights are those of keepers and zoos: 20 to 30 g, and to 50 g in all (kaiserskorpion
// pages of Tierpark Bochum and kindernetz.de).
func TestPandinusPlanningTable(t *testing.T) {
	r := report(t, box("pandinus-imperator", "20 x 20 x 20 cm", herd("young", "4", "instar = 2")), "2026-11-25 box young moult 4\n", "2026-11-25")
	_, steps, ok := r.Forecast(r.Life.Groups[0])
	if !ok || len(steps) != 5 || steps[0].Instar != 3 {
		t.Fatalf("%v %v", steps, ok)
	}
	adult := steps[4]
	if from, until := adult.Due.From-r.Today, adult.Due.Until-r.Today; from != 515-10-45 || until != 1391-21-120 {
		t.Errorf("adult in %d to %d days", from, until)
	}
	if adult.Length.Low < 120 || adult.Length.High > 200 || adult.Mass.Low < 20 || adult.Mass.High > 50 {
		t.Errorf("adult %v mm, %v g", adult.Length, adult.Mass)
	}
}
