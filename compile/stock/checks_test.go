package stock

import (
	"math"
	"testing"

	"vivary/plan"
	"vivary/schema"
	"vivary/schema/civil"
)

// near fails unless two numbers agree to so many decimals.
func near(t *testing.T, what string, got, want float64, decimals int) {
	t.Helper()
	if math.Abs(got-want) > 0.5*math.Pow(10, -float64(decimals))+1e-9 {
		t.Errorf("%s: %.4f, want %.*f", what, got, decimals, want)
	}
}

func stage(t *testing.T, feeder, stage, size string) *plan.Development {
	t.Helper()
	d := plan.NewLibrary().Feeder(feeder).Develops(stage, size)
	if d == nil {
		t.Fatalf("%s has no %s", feeder, stage)
	}
	return d
}

// Gryllus bimaculatus, the line published in PLoS ONE 2024, 0300438: 108.7 degree-days above
// 15.9 C for the egg and 555.6 above 16.2 C for the nymph.
func TestBlackCricket(t *testing.T) {
	egg, young := stage(t, "black-cricket", schema.DevelopsEgg, ""), stage(t, "black-cricket", schema.DevelopsYoung, "")
	e, n := Time(egg, 28), Time(young, 28)
	near(t, "egg at 28 C", e.Likely, 8.98, 2)
	near(t, "nymph at 28 C", n.Likely, 47.08, 2)
	near(t, "both", e.and(n).Likely, 56.07, 2)
	near(t, "half the day 30 C, half 22 C", Time(young, 30, 22).Likely, 56.69, 2)
	near(t, "half the day 30 C, half 14 C: the cold counts nothing", Time(young, 30, 14).Likely, 80.52, 2)
	near(t, "a fifth less", e.Low, 8.98*0.8, 1)
	if x := Time(egg, 16); x.Known() {
		t.Errorf("near its base an egg is reckoned: %v days (the line has 1,087)", x.Likely)
	}
	if x := Time(young, 39); x.Known() {
		t.Errorf("above what was measured a nymph is reckoned: %v", x)
	}
	if x := Time(young, 40, 20); x.Known() {
		t.Errorf("half a day above what was measured is reckoned: %v", x)
	}
}

// Schistocerca gregaria: eggs by the line of Hunter-Jones 1970 (Bulletin of Entomological
// Research), 224 degree-days above 15.1 C; hoppers by two times of the Turkish Journal of
// Zoology 5383, 32 days at 25 C and 22 at 30.
func TestLocust(t *testing.T) {
	egg, young := stage(t, "locust", schema.DevelopsEgg, ""), stage(t, "locust", schema.DevelopsYoung, "")
	near(t, "egg at 30 C", Time(egg, 30).Likely, 15.03, 2)
	near(t, "egg at 35 C", Time(egg, 35).Likely, 11.26, 2)
	if x := Time(egg, 15); x.Why != "it never develops so cold" {
		t.Errorf("an egg at 15 C: %+v", x)
	}
	l, between, ok := LineOf(young)
	if !ok {
		t.Fatal("no line of the hopper")
	}
	near(t, "base", l.Base, 14, 2)
	near(t, "sum", l.Sum, 352, 1)
	near(t, "hopper at 28 C", Time(young, 28).Likely, 25.14, 2)
	if between.Low != 25 || between.High != 30 {
		t.Errorf("the line holds between %v", between)
	}
	if x := Time(young, 25); x.Likely != 32 || !x.Observed || x.Low != 32 {
		t.Errorf("what was observed: %+v", x)
	}
}

// Drosophila melanogaster, the four times in the text of a fly stock centre: 7 days at 29 C,
// 9 at 25, 11 at 22, 19 at 18. The line through their rates is ours.
func TestFruitFly(t *testing.T) {
	all := stage(t, "fruit-fly", schema.DevelopsAll, "melanogaster")
	l, _, ok := LineOf(all)
	if !ok {
		t.Fatal("no line")
	}
	near(t, "base", l.Base, 11.23, 2)
	near(t, "sum", l.Sum, 123.4, 1)
	near(t, "at 24 C", Time(all, 24).Likely, 9.67, 2)
	if x := Time(all, 25); x.Likely != 9 || !x.Observed {
		t.Errorf("at 25 C the table's 9 goes before the line: %+v", x)
	}
	near(t, "Ripe", Ripe(plan.NewLibrary().Feeder("fruit-fly"), "melanogaster", 24).Likely, 9.67, 2)
}

// The house cricket by two times of the East African Journal of Agriculture and Biotechnology
// 834, 200.5 days at 18 C and 66.3 at 30: about 1,188 degree-days above 12.1 C. The mealworm by the
// line through published times (Arthropods 12:16), slower at 31 C than at 27
// (Journal of Economic Entomology toae298), through which no line is laid.
func TestOtherLines(t *testing.T) {
	l, _, _ := LineOf(stage(t, "cricket", schema.DevelopsAll, ""))
	near(t, "base of the house cricket", l.Base, 12.1, 1)
	near(t, "sum of the house cricket", l.Sum/10, 118.8, 0)
	if _, _, ok := LineOf(stage(t, "mealworm", schema.DevelopsYoung, "")); ok {
		t.Error("a line is laid through what is slower when it is warmer")
	}
	if x := Time(stage(t, "mealworm", schema.DevelopsYoung, ""), 31); x.Likely != 162 {
		t.Errorf("the larva at 31 C: %+v", x)
	}
	if x := Time(stage(t, "roach", schema.DevelopsAll, ""), 28); x.Known() {
		t.Errorf("the dubia roach, of which the base is not known, is reckoned: %+v", x)
	}
}

// A nymph of 3 mm grows to 25 mm by Dyar's rule, in 555.6 degree-days at 30 C, of which a day
// has 13.8: our arithmetic.
func TestSizeWindow(t *testing.T) {
	young := stage(t, "black-cricket", schema.DevelopsYoung, "")
	near(t, "6 mm", Time(young, 30).times(Share(6, 3, 25)).Likely, 13.2, 1)
	near(t, "10 mm", Time(young, 30).times(Share(10, 3, 25)).Likely, 22.9, 1)
	if Share(2, 3, 25) != 0 || Share(30, 3, 25) != 1 {
		t.Error("a share lies beyond the ends")
	}
}

// Arithmetic of loss, computed by hand.
func TestLoss(t *testing.T) {
	for week, want := range map[float64]float64{0.10: 1.494, 0.15: 2.295, 0.25: 4.026} {
		near(t, "a day", 100*Daily(week), want, 3)
	}
	use := []float64{0, 20, 20, 20, 20, 20, 20, 20}
	near(t, "20 a day for a week, 3 % a day", Wanted(use, 0.03), 158.43, 2)
	if n := Whole(Wanted(use, 0.03)); n != 159 {
		t.Errorf("ordered: %d, want 159", n)
	}
	if n := Whole(Wanted(use, 0)); n != 140 {
		t.Errorf("without loss: %d, want 140", n)
	}
	near(t, "500 after ten days", Left(500, 0.03, 10), 368.7, 1)
}

func TestPacks(t *testing.T) {
	p := Packed(483, []int{250})
	if len(p.Packs) != 1 || p.Packs[0] != (Pack{2, 250}) || p.Surplus != 17 {
		t.Errorf("483 in packs of 250: %+v", p)
	}
	for _, x := range []struct {
		n     int
		sizes []int
		total int
		packs int
	}{{46, []int{25, 100}, 50, 2}, {90, []int{25, 100}, 100, 1}, {1, []int{500}, 500, 1}, {12, nil, 12, 0}, {0, []int{50}, 0, 0}, {1000, []int{250, 500, 1000}, 1000, 1},
		{7, []int{5, 3}, 8, 2}, {1_000_003, []int{7, 1000}, 1_000_003, 1426}} {
		p := Packed(x.n, x.sizes)
		n := 0
		for _, k := range p.Packs {
			n += k.Number
		}
		if p.Total != x.total || p.Surplus != x.total-x.n || x.sizes != nil && n > x.packs {
			t.Errorf("%d in %v: %+v", x.n, x.sizes, p)
		}
	}
}

// Periodic review as in lecture notes on inventory (karlknapp.com), the newsvendor as in those
// of another course (zamnolence, lecture 8), with figures of our own.
func TestUnknownDemand(t *testing.T) {
	s := UpTo(60, 10, 7, 2, 0.95)
	near(t, "up to", s, 589.35, 2)
	if n := Whole(s) - 120; n != 470 {
		t.Errorf("with 120 in hand: %d", n)
	}
	near(t, "quantile", Covered(4, 1), 0.8, 2)
	near(t, "newsvendor", Enough(420, 40, Covered(4, 1)), 453.7, 1)
	if n := Poisson(5, 0.95); n != 9 {
		t.Errorf("Poisson: %d, want 9 (0.9319 at 8, 0.9682 at 9)", n)
	}
	if n := UpTo(0.5, 0, 8, 2, 0.95); n != 9 {
		t.Errorf("few are taken as Poisson's: %v", n)
	}
}

func TestRotation(t *testing.T) {
	for _, x := range []struct{ use, lead, atOnce, every, house int }{{14, 14, 2, 7, 4}, {14, 19, 2, 7, 5}, {3, 10, 5, 1, 13}, {10, 9, 0, 10, 2}} {
		if r := Rotate(x.use, x.lead, x.atOnce); r.Every != x.every || r.House != x.house {
			t.Errorf("%+v: %+v", x, r)
		}
	}
	if d := Start(civil.Must(2027, 3, 1), 19); d != civil.Must(2027, 2, 10) {
		t.Errorf("start by %v", d)
	}
}

func TestOrderBy(t *testing.T) {
	c := Carrier{Works: Workdays, Lead: 2, Delivers: func(d civil.Date) bool { w := d.Weekday(); return w >= 2 && w <= 5 }}
	feed := civil.Must(2027, 1, 16)
	for hours, want := range map[int][2]civil.Date{48: {civil.Must(2027, 1, 14), civil.Must(2027, 1, 12)}, 24: {civil.Must(2027, 1, 15), civil.Must(2027, 1, 13)}} {
		deliver, order, ok := c.By(feed - civil.Date(hours/24))
		if !ok || deliver != want[0] || order != want[1] {
			t.Errorf("gut-load of %d h: deliver %v, order %v", hours, deliver, order)
		}
	}
	for d := civil.Must(2027, 1, 1); d < civil.Must(2027, 3, 1); d++ {
		deliver, order, _ := c.By(d)
		if deliver > d || !c.Delivers(deliver) || !Workdays(order) {
			t.Errorf("by %v: %v %v", d, deliver, order)
		}
		if first, ok := c.From(order); !ok || first != deliver {
			t.Errorf("what is ordered on %v comes on %v, not %v", order, first, deliver)
		}
	}
	never := Carrier{Works: Workdays, Lead: 2, Delivers: func(civil.Date) bool { return false }}
	if _, _, ok := never.By(feed); ok {
		t.Error("a seller who never delivers does")
	}
}
