package picture

import (
	"regexp"
	"strconv"
	"strings"
	"testing"

	"vivary/schema/quantity"
)

func collection(t *testing.T, name string) string {
	t.Helper()
	for _, c := range collections {
		if c.name == name {
			return c.text
		}
	}
	t.Fatalf("no collection %q", name)
	return ""
}

// A calendar for 2026 and 2027 has 52 Tuesdays from 25 November to 24 November,
// 13 of them from 1 December to 28 February.
func TestMealsOnTuesdays(t *testing.T) {
	text := strings.TrimSuffix(collection(t, "no heater"), "}\n") + "  feeding \"one\" {\n    on = [\"tue\"]\n    per_animal = 1\n    prey = \"cricket adult\"\n  }\n  season \"rest\" {\n    from = \"1 dec\"\n    to = \"28 feb\"\n    feeding = \"none\"\n  }\n}\n"
	drawn := draw(t, read(t, text, ""), 0)
	if _, _, desc := labels(t, drawn); !strings.Contains(desc, "Meals: 1 adult cricket, on 39 days; left out on 13.") {
		t.Error(desc)
	}
	marks := regexp.MustCompile(`<path d="(M[^"]*)" stroke="`+ink+`" stroke-width="1.7"`).FindAllStringSubmatch(drawn, -1)
	if len(marks) != 2 || strings.Count(marks[0][1], "M") != 39 || strings.Count(marks[1][1], "M") != 13 {
		t.Errorf("not 39 meals and 13 left out: %v", marks)
	}
}

// However much a scale spans, its ticks are round and at least 18 apart.
func TestTicks(t *testing.T) {
	for _, c := range []struct {
		high, step float64
	}{{0, 1}, {5, 1}, {30, 2}, {200, 20}, {1e9, 1e8}} {
		s := newScale(0, c.high, 0, 288, quantity.Celsius)
		n := 0
		if s.ticks(func(v, y float64) { n++ }); s.step != c.step || n > 288/18+1 {
			t.Errorf("0 to %g: %d ticks %g apart, not %g", c.high, n, s.step, c.step)
		}
	}
}

// The likely course of each body crosses the limit at the mark within its box: the
// box is made of a solved time, the course of samples.
func TestBoxesLieOnCourses(t *testing.T) {
	drawn := draw(t, read(t, collection(t, "cold room"), ""), 0)
	number := func(s string) float64 {
		v, err := strconv.ParseFloat(s, 64)
		if err != nil {
			t.Fatal(err)
		}
		return v
	}
	lines := regexp.MustCompile(`<line x1="[\d.]+" y1="([\d.]+)" x2="560.0" y2="[\d.]+" stroke="` + ink + `" stroke-width="2.4"`).FindStringSubmatch(drawn)
	if lines == nil {
		t.Fatal("no limit")
	}
	limit := number(lines[1])
	for _, colour := range []string{warmLine, cool} {
		course := regexp.MustCompile(`<path d="M([^"]*)" stroke="` + colour + `" stroke-width="2.6"`).FindStringSubmatch(drawn)
		mark := regexp.MustCompile(`<line x1="([\d.]+)" y1="[\d.]+" x2="[\d.]+" y2="[\d.]+" stroke="`+colour+`" stroke-width="2.6"`).FindAllStringSubmatch(drawn, -1)
		box := regexp.MustCompile(`<rect x="([\d.]+)" y="[\d.]+" width="([\d.]+)" height="5.0" fill="white" stroke="` + colour + `"`).FindStringSubmatch(drawn)
		if course == nil || mark == nil || box == nil {
			t.Fatalf("%s: course %v, mark %v, box %v", colour, course != nil, mark, box)
		}
		crossing := 0.0
		for _, point := range strings.Split(course[1], "L") {
			x, y, _ := strings.Cut(point, " ")
			if number(y) >= limit {
				crossing = number(x)
				break
			}
		}
		at := number(mark[0][1])
		if from, to := number(box[1]), number(box[1])+number(box[2]); at < from || at > to || crossing < at-4 || crossing > at+4 {
			t.Errorf("%s: the course crosses at %.1f, the mark is at %.1f and the box from %.1f to %.1f", colour, crossing, at, from, to)
		}
	}
}
