package growth_test

import (
	"fmt"
	"math"
	"math/rand/v2"
	"strings"
	"testing"

	"vivary/compile/growth"
	"vivary/compile/horizon"
	"vivary/compile/life"
	"vivary/internal/planned"
)

// young is one animal that is followed.
var young = box("pandinus-imperator", "40 x 30 x 30 cm", herd("one", "1", "instar = 3"))

// course is how it grew by a log.
func course(t *testing.T, log string) (growth.Course, string, bool) {
	t.Helper()
	r := report(t, young, log, today)
	c, ok := r.Course(r.Life.Groups[0])
	return c, strings.Join(r.Lines(), "\n"), ok
}

// weighings is a log of an animal that is weighed a few days after each moult, each time so many
// times as heavy as the time before.
func weighings(first float64, factors ...float64) string {
	var out strings.Builder
	day, mass := planned.Day("2026-01-05"), first
	fmt.Fprintf(&out, "%s box one moult\n%s box one weighed %.3f g\n", day, day+5, mass)
	for _, f := range factors {
		day += 100
		mass *= f
		fmt.Fprintf(&out, "%s box one moult\n%s box one weighed %.3f g\n", day, day+5, mass)
	}
	return out.String()
}

// Whoever doubles its weight at each moult grows as Przibram's rule has it (as compared with
// rearings by Francke and Sissom 1984, J. Arachnol. 12:1-20); one that stays as light as it was
// is behind, one that is many times as heavy ahead.
func TestCourseByRule(t *testing.T) {
	for _, x := range []struct {
		name    string
		factors []float64
		want    growth.Pace
		says    string
	}{
		{"doubles", []float64{2, 2}, growth.AsReckoned, "grows as was to be expected"},
		{"stays", []float64{1, 1}, growth.Behind, "Lighter than was to be expected"},
		{"far more", []float64{4, 4}, growth.Ahead, "Heavier than was to be expected"},
		{"loses", []float64{2, 0.5}, growth.Behind, "before it is given more"},
	} {
		c, text, ok := course(t, weighings(1.2, x.factors...))
		if !ok || c.Weight() != x.want || !strings.Contains(text, x.says) {
			t.Errorf("%s: %v, %v, %v\n%s", x.name, ok, c.Weight(), c.Points, text)
		}
		if len(c.Points) != 3 || c.Points[2].Moults != 2 || !c.Points[2].Alike || len(c.Times) != 2 || c.Times[1].Days() != 100 {
			t.Errorf("%s: points %+v, times %+v", x.name, c.Points, c.Times)
		}
	}
}

// Any growth within the factor of the sheet is as reckoned, in whatever unit it was weighed; and
// what stands far beyond it on one side is never on the other.
func TestCourseWithinFactor(t *testing.T) {
	random := rand.New(rand.NewPCG(1, 2))
	for range 60 {
		c, _, ok := course(t, weighings(1, 2))
		if !ok {
			t.Fatal("no course")
		}
		low, high := math.Pow(c.Growth.Low, 3), math.Pow(c.Growth.High, 3)
		f, g := low+random.Float64()*(high-low), low+random.Float64()*(high-low)
		if c, _, _ := course(t, weighings(0.5+random.Float64()*5, f, g)); c.Weight() != growth.AsReckoned {
			t.Errorf("by %.2f and %.2f: %v of %+v", f, g, c.Weight(), c.Points)
		}
	}
	grams, _, _ := course(t, "2026-03-01 box one weighed 2 g\n2026-05-01 box one weighed 3 g\n")
	ounces, _, _ := course(t, "2026-03-01 box one weighed 2000 mg\n2026-05-01 box one weighed 3000 mg\n")
	if len(grams.Points) != 2 || len(ounces.Points) != 2 || math.Abs(grams.Points[1].Mass-ounces.Points[1].Mass) > 1e-9 {
		t.Errorf("%+v is not %+v", grams.Points, ounces.Points)
	}
}

// What cannot be told is not told: of one weight, of several animals, of one that is grown.
func TestCourseNotTold(t *testing.T) {
	if _, text, ok := course(t, "2026-03-01 box one weighed 2 g\n"); ok || strings.Contains(text, "Weights") {
		t.Error("one weight is no course")
	}
	for _, x := range []struct{ animals, log string }{
		{herd("one", "3", "instar = 3"), "2026-03-01 box one weighed 2 g\n2026-05-01 box one weighed 1 g\n"},
		{herd("one", "1", grownUp), "2026-03-01 box one weighed 20 g\n2026-05-01 box one weighed 12 g\n"},
	} {
		r := report(t, box("pandinus-imperator", "60 x 45 x 40 cm", x.animals), x.log, today)
		for _, line := range r.Lines() {
			if strings.Contains(line, "to be expected") {
				t.Errorf("%s: %s", x.animals, line)
			}
		}
	}
}

// TestCourseMoves: an animal that was taken to another box keeps its weights and moults.
func TestCourseMoves(t *testing.T) {
	text := young + strings.ReplaceAll(box("pandinus-imperator", "60 x 45 x 40 cm", herd("one", "0", "instar = 3")), `"box"`, `"next"`)
	c, _ := planned.Sound(t, planned.With(head+text, weighings(1.2, 2)+"2026-06-01 box one moved to next\n2026-07-01 next one weighed 2.6 g\n"))
	found := false
	for _, h := range life.Households(c) {
		all, _ := life.Read(c, h, horizon.Horizon{From: planned.Day(today), Days: 400})
		for _, l := range all {
			r, ok := growth.Of(l, c, planned.Day(today))
			for _, g := range l.Groups {
				if course, told := r.Course(g); ok && told && l.Plan.Name.V == "next" {
					found = true
					if len(course.Points) != 3 || course.Points[2].Moults != 1 || len(course.Times) != 1 || course.Weight() != growth.AsReckoned {
						t.Errorf("%+v", course)
					}
				}
			}
		}
	}
	if !found {
		t.Error("nothing is known of it in the other box")
	}
}
