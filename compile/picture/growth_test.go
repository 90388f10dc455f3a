package picture

import (
	"bytes"
	"errors"
	"fmt"
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"
)

// sling is one young animal that is followed.
const sling = house + "room \"r\" {\n  temperature = \"22 to 26 C\"\n}\nenclosure \"tub\" {\n  species = \"pandinus-imperator\"\n" + box + "  animals \"one\" {\n    count = 1\n    instar = 3\n  }\n}\n"

// growing is a log of weights that double at each moult, a few days after it.
const growing = "2026-01-05 tub moult\n2026-01-10 tub weighed 1.2 g\n2026-05-05 tub moult\n2026-05-10 tub weighed 2.4 g\n2026-09-05 tub moult\n2026-09-10 tub weighed 4.8 g\n"

// Weights stand at heights of equal distance where each is twice the one before, at their days,
// within what was to be expected where the text says so; and each is said to those who do not see.
func TestGrowth(t *testing.T) {
	r := read(t, sling, growing)
	for _, narrow := range []bool{false, true} {
		var b bytes.Buffer
		if err := Growth(&b, r, 0, r.Lives[0].Groups[0], narrow); err != nil {
			t.Fatal(err)
		}
		drawn := b.String()
		all, title, desc := labels(t, drawn)
		for _, want := range []string{"10 Jan 2026: 1.2 g.", "2.4 g, ", "4.8 g, ", "A moult on Sat 5 Sep 2026", "grows as was to be expected"} {
			if !strings.Contains(desc, want) {
				t.Errorf("not said: %q in %s", want, desc)
			}
		}
		if !Ours(b.Bytes()) || !strings.Contains(title, "growth from Mon 5 Jan 2026") {
			t.Errorf("title %q", title)
		}
		dots := regexp.MustCompile(`<circle cx="([0-9.]+)" cy="([0-9.]+)"`).FindAllStringSubmatch(drawn, -1)
		if len(dots) != 4 { // and that of the key
			t.Fatalf("%d dots", len(dots))
		}
		var x, y [3]float64
		for i, m := range dots[1:] {
			x[i], _ = strconv.ParseFloat(m[1], 64)
			y[i], _ = strconv.ParseFloat(m[2], 64)
		}
		if math.Abs((y[0]-y[1])-(y[1]-y[2])) > 0.3 || y[0] <= y[1] {
			t.Errorf("doubling is not equal steps: %v", y)
		}
		if want := 120.0 / 123; math.Abs((x[1]-x[0])/(x[2]-x[1])-want) > 0.01 { // 10 Jan to 10 May, to 10 Sep
			t.Errorf("the days stand at %v", x)
		}
		for k, a := range all {
			for _, o := range all[:k] {
				if a.x0 < o.x1 && o.x0 < a.x1 && a.y0 < o.y1 && o.y0 < a.y1 {
					t.Errorf("%q lies on %q", a.words, o.words)
				}
			}
		}
	}
	for _, log := range []string{"", "2026-01-10 tub weighed 1.2 g\n"} {
		r := read(t, sling, log)
		if err := Growth(&bytes.Buffer{}, r, 0, r.Lives[0].Groups[0], false); !errors.Is(err, ErrNoCourse) {
			t.Errorf("%q: %v", log, err)
		}
	}
	var grown strings.Builder
	for k := range 5 {
		fmt.Fprintf(&grown, "2026-0%d-10 tub weighed 30 g\n", k+1)
	}
	old := read(t, strings.Replace(sling, "instar = 3", "stage = \"adult\"", 1), grown.String())
	var b bytes.Buffer
	if err := Growth(&b, old, 0, old.Lives[0].Groups[0], true); err != nil {
		t.Error(err)
	}
	if strings.Contains(b.String(), "to be expected") || strings.Contains(b.String(), "NaN") {
		t.Error("something is expected of a grown animal, or cannot be drawn")
	}
}
