package wording_test

import (
	"math"
	"math/rand/v2"
	"strconv"
	"strings"
	"testing"

	"vivary/schema/civil"
	"vivary/schema/quantity"
	"vivary/schema/wording"
)

type band struct{ Low, Likely, High float64 }

// Where a convention is written down, its place is named: NIST Special Publication
// 811 (2008) and the SI Brochure, 5.4.3, set a space between number and unit, with %
// too, "to" in a range and a zero before the point. The unit once at the end of a
// range is how keepers write, against 811's 7.7; common practice, no source. So are
// "a, b and c" without a third comma, 1 and not "one", and day before month.
func TestWords(t *testing.T) {
	day := civil.Must(2027, 7, 10)
	for _, c := range []struct{ got, want string }{
		{wording.Number(2), "2"},
		{wording.Number(1.27), "1.27"},
		{wording.Number(1.275001), "1.28"},
		{wording.Number(0.3), "0.3"}, // 811, 10.5.2: a zero before the point
		{wording.Number(-0.001), "0"},
		{wording.Number(1234567), "1234567"}, // 811, 10.5.3 would group; a plan reads no groups
		{wording.Number(math.Inf(1)), "?"},
		{wording.Number(math.NaN()), "?"},
		{wording.Span(8, 12), "8 to 12"}, // 811, 7.7: "to", no dash
		{wording.Span(3, 3), "3"},
		{wording.Span(3, 3.001), "3"},
		{wording.ByHand(0.5), "½"},
		{wording.ByHand(1.25), "1¼"},
		{wording.ByHand(2.75), "2¾"},
		{wording.ByHand(0.3), "0.3"},
		{wording.ByHand(3), "3"},
		{wording.ByHand(0), "0"},

		{wording.Count(0, "other", "others"), "0 others"},
		{wording.Count(1, "other", "others"), "1 other"},
		{wording.Count(2, "need is", "needs are"), "2 needs are"},
		{wording.Days(1), "1 day"},
		{wording.Days(394), "394 days"},
		{wording.AtLongest(7), "7 days at the longest"},
		{wording.Step(1), "day"},
		{wording.Step(3), "3 days"},
		{wording.Animals(1), "1 animal"},
		{wording.Animals(40), "40 animals"},
		{wording.Items(1.04), "1 item"},
		{wording.Items(1.75), "1.8 items"},
		{wording.Items(0.5), "0.5 items"},
		{wording.AtMost(35, quantity.Celsius), "35 C at the most"}, // 811, 7.2: a space
		{wording.AtMost(35.06, quantity.Celsius), "35 C at the most"},
		{wording.AtLeast(150, quantity.Inch), "6 in at the least"},     // 5.9 would be too little
		{wording.AtLeast(70, quantity.PercentRH), "70 % at the least"}, // 811, 7.10.2
		{wording.Bytes(830), "0.8 KB"},
		{wording.Bytes(9_999), "10.0 KB"},
		{wording.Bytes(731_999), "731 KB"},

		{wording.And(nil), ""},
		{wording.And([]string{"a"}), "a"},
		{wording.And([]string{"a", "b"}), "a and b"},
		{wording.And([]string{"a", "b", "c"}), "a, b and c"},
		{wording.Or([]string{"a", "b", "c"}), "a, b or c"},

		{wording.Until(day), "until Sat 10 Jul"},
		{wording.Dates(day, day+2), "Sat 10 Jul 2027 to Mon 12 Jul 2027"},
		{wording.Between(day, day+2), "between Sat 10 Jul 2027 and Mon 12 Jul 2027"},
		{wording.Between(day, day), "on Sat 10 Jul 2027"},
	} {
		if c.got != c.want {
			t.Errorf("%q, want %q", c.got, c.want)
		}
	}
}

// What is not known exactly. 811, B.7.2 keeps so many digits that accuracy is neither
// lost nor pretended; how many a band deserves is our judgement.
func TestBands(t *testing.T) {
	never := math.Inf(1)
	for _, c := range []struct{ got, want string }{
		{wording.Band(band{12.1, 15.2, 18.4}, "W"), "15 W (12 to 18)"},
		{wording.Band(band{91, 287, 902}, "ml"), "300 ml (90 to 900)"},
		{wording.Band(band{44.1, 44.1, 44.1}, "kWh"), "44 kWh"},
		{wording.Band(band{0, 0, 0}, "ml"), "0 ml"},
		{wording.Band(band{0, 0, never}, "ml"), "0 ml (0 to ?)"},
		{wording.Degrees(band{30.06, 31.94, 34.34}, quantity.Celsius), "31.9 C (30.1 to 34.3 C)"},
		{wording.Degrees(band{0, 10, 20}, quantity.Fahrenheit), "50 F (32 to 68 F)"},

		{wording.Lasting(band{9, 13, 19}), "13 min (9 to 19 min)"},
		{wording.Lasting(band{81, 101, 131}), "100 min (81 min to 2.2 h)"},
		{wording.Lasting(band{10.2 * 60, 11 * 60, 11.9 * 60}), "11 h (10 to 12 h)"},
		{wording.Lasting(band{42.1 * 60, 49.1 * 60, 59.3 * 60}), "49 h (42 to 59 h)"},
		{wording.Lasting(band{2 * 1440, 3 * 1440, 4 * 1440}), "3 days (48 h to 4 days)"},
		{wording.Lasting(band{60, 60, 60}), "60 min"},
		{wording.Lasting(band{0, 3.4 * 60, 5.2 * 60}), "3 h (0 min to 5 h)"},
		{wording.Lasting(band{600, 660, never}), "11 h (10 h to never)"},
	} {
		if c.got != c.want {
			t.Errorf("%q, want %q", c.got, c.want)
		}
	}
}

// What is written reads back as what was meant, within the rounding that is promised.
func TestReadsBack(t *testing.T) {
	rnd := rand.New(rand.NewPCG(7, 11))
	for range 5000 {
		x := math.Exp(12 * (rnd.Float64() - 0.5))
		if back := read(t, wording.Number(x)); math.Abs(back-x) > 0.005+1e-9 {
			t.Errorf("%v is written %v", x, back)
		}
		if n := int(x * 100); n > 1 {
			v, err := quantity.ParseInterval(wording.Step(n))
			if n <= quantity.MaxIntervalDays && (err != nil || v != quantity.Interval{N: n, Unit: quantity.Day}) {
				t.Errorf("%d days are written %q: %v", n, wording.Step(n), err)
			}
		}
		low, high := x*rnd.Float64(), x*(1+3*rnd.Float64())
		text := wording.Band(band{low, x, high}, "W")
		likely, rest, _ := strings.Cut(text, " W")
		// A begun digit of one, at the worst from 2.5 to 2 or 3: a quarter.
		if back := read(t, likely); math.Abs(back-x) > x/4 {
			t.Errorf("%v is written %q", x, text)
		}
		if rest == "" {
			continue
		}
		from, to, _ := strings.Cut(strings.Trim(rest, " ()"), " to ")
		if l, h := read(t, from), read(t, to); l > read(t, likely) || h < read(t, likely) {
			t.Errorf("%q: what is likely does not lie within", text)
		}
	}
}

// A limit that somebody writes as it was told is kept.
func TestLimitsHold(t *testing.T) {
	rnd := rand.New(rand.NewPCG(3, 5))
	for _, u := range []quantity.Unit{quantity.Celsius, quantity.Fahrenheit, quantity.Inch, quantity.Millimetre, quantity.Gallon, quantity.Days} {
		for range 500 {
			v := rnd.Float64() * 5000
			most, err := quantity.Parse(strings.TrimSuffix(wording.AtMost(v, u), " at the most"), u.Dimension())
			if err != nil || most.Value > v+1e-9 {
				t.Errorf("%v: %q: %v", v, wording.AtMost(v, u), err)
			}
			least, err := quantity.Parse(strings.TrimSuffix(wording.AtLeast(v, u), " at the least"), u.Dimension())
			if err != nil || least.Value < v-1e-9 {
				t.Errorf("%v: %q: %v", v, wording.AtLeast(v, u), err)
			}
		}
	}
}

func read(t *testing.T, text string) float64 {
	t.Helper()
	x, err := strconv.ParseFloat(text, 64)
	if err != nil {
		t.Errorf("%q is no number", text)
	}
	return x
}
