package picture

import (
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"
)

// A mark of a reading stands at the height of its value between the numbers at the scale, which
// other code writes, and at its day between the firsts of months.
func TestReadingsStandWhereTheyBelong(t *testing.T) {
	drawn := draw(t, read(t, collection(t, "measured"), measuredLog), 0)
	all, _, _ := labels(t, drawn)
	number := func(s string) float64 {
		v, err := strconv.ParseFloat(s, 64)
		if err != nil {
			t.Fatal(err)
		}
		return v
	}
	text := func(words string) (x, y float64) {
		m := regexp.MustCompile(`<text x="([0-9.]+)" y="([0-9.]+)"[^>]*>` + words + `</text>`).FindStringSubmatch(drawn)
		if m == nil {
			t.Fatalf("no %q among %v", words, all)
		}
		return number(m[1]), number(m[2]) - 4
	}
	_, y20 := text("20")
	_, y30 := text("30")
	xOct, _ := text("1 Oct")
	xNov, _ := text("1 Nov")
	atDay := func(dayOfOctober float64) float64 { return xOct - 2 + (xNov-xOct)*(dayOfOctober-0.5)/31 }
	atHeat := func(v float64) float64 { return y20 + (y30-y20)*(v-20)/10 }
	near := func(a, b float64) bool { return math.Abs(a-b) < 0.5 }
	triangles := regexp.MustCompile(`<path d="M([0-9.]+) ([0-9.]+)L[0-9.]+ [0-9.]+L[0-9.]+ [0-9.]+Z" fill="`+ink).FindAllStringSubmatch(drawn, -1)
	for _, want := range []struct{ day, heat float64 }{{10, 30}, {10, 32.5}, {1 - 11, 29}} { // 20 September is eleven days before 1 October
		found := false
		for _, m := range triangles {
			found = found || near(number(m[1]), atDay(want.day)) && near(number(m[2])+4.4, atHeat(want.heat))
		}
		if !found {
			t.Errorf("no mark for %v at October %v: %v, want %.1f %.1f", want.heat, want.day, triangles, atDay(want.day), atHeat(want.heat))
		}
	}
	if n := len(triangles); n != 4 { // and the one of the key; what was taken back and what is older is none
		t.Errorf("%d marks of the warm spot", n)
	}
}

// What is told to those who do not see it has every level, and what is not drawn.
func TestReadingsAreSaid(t *testing.T) {
	_, _, desc := labels(t, draw(t, read(t, collection(t, "measured"), measuredLog), 0))
	for _, want := range []string{
		"Measured, spot: 3 readings from Sun 20 Sep 2026 to Sat 10 Oct 2026, 29 to 32.5 C, 1 not as aimed for. 1 older reading is not drawn.",
		"Measured, air: 3 readings from Sun 20 Sep 2026 to Sat 10 Oct 2026, 12 to 23 C, 1 harmful.",
		"Measured, night: 1 reading", "Measured: 3 readings", "60 to 80 %, 1 not as aimed for.",
	} {
		if !strings.Contains(desc, want) {
			t.Errorf("not said: %q in\n%s", want, desc)
		}
	}
}

// Without a reading in the last quarter the picture is the same to the byte.
func TestWithoutReadings(t *testing.T) {
	plan := collection(t, "measured")
	none := draw(t, read(t, plan, ""), 0)
	for _, log := range []string{"2026-11-03 lit measured spot 29 C\n2026-11-03 lit withdrawn measured\n", "2026-11-03 lit measured power 12 W\n", "2026-05-01 lit measured spot 30 C\n", "2026-11-03 lit remark \"measured 30 C\"\n"} {
		if draw(t, read(t, plan, log), 0) != none {
			t.Errorf("another picture with %q", log)
		}
	}
}
