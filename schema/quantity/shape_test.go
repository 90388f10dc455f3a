package quantity

import (
	"math"
	"strings"
	"testing"
)

func TestSize(t *testing.T) {
	for _, c := range []struct {
		text, print   string
		floor, litres float64
	}{
		{"76 x 46 x 41 cm", "76 x 46 x 41 cm", 3496, 143.336},
		// GNU Units 2.22: 20inch*10inch -> 1290.32 cm^2, *12inch -> 39.3289536 liter.
		{"20 x 10 x 12 in", "20 x 10 x 12 in", 1290.32, 39.3289536},
		{"20×10×12in", "20 x 10 x 12 in", 1290.32, 39.3289536},
		{"20 in × 10 in X 12 inches", "20 x 10 x 12 in", 1290.32, 39.3289536},
		{"20 by 10 by 12 inches", "20 x 10 x 12 in", 1290.32, 39.3289536},
		{"76x46x41cm", "76 x 46 x 41 cm", 3496, 143.336},
		{"76*46*41 cm", "76 x 46 x 41 cm", 3496, 143.336},
		{"76 cm x 46 cm x 41", "76 x 46 x 41 cm", 3496, 143.336},
		{"76,0 x 46,0 x 41,0 cm", "76 x 46 x 41 cm", 3496, 143.336},
		{`20" x 10" x 12"`, "20 x 10 x 12 in", 1290.32, 39.3289536},
	} {
		z, err := ParseSize(c.text)
		if err != nil || z.String() != c.print || !near(z.FloorArea(), c.floor) || !near(z.VolumeLitres(), c.litres) {
			t.Errorf("%q = %v, %v cm2, %v L (%v)", c.text, z, z.FloorArea(), z.VolumeLitres(), err)
		}
	}
	for _, c := range []struct {
		text    string
		kind    Kind
		want    string
		instead string
	}{
		{"large", NoNumber, `"large" does not begin with a number`, ""},
		{"20 x 10 in", Malformed, `"20 x 10 in" is not three measures with an x between them`, ""},
		{"20 x 10 x", Malformed, `"20 x 10 x" is not three measures …`, ""},
		{"20 x 10 x 12", NoUnit, `"20 x 10 x 12" has no unit`, "20 x 10 x 12 cm|20 x 10 x 12 in"},
		{"20 x 10 x 12 inchs", UnknownUnit, `"20 x 10 x 12 inchs": there is no unit "inchs" for a size`, "20 x 10 x 12 in"},
		{"20 x 10 x 12 gal", WrongUnit, `"20 x 10 x 12 gal" is not a size: "gal" is a unit of volume`, ""},
		{"20 in x 10 in x 12 cm", Malformed, `"20 in x 10 in x 12 cm" has two units: …`, "50.8 x 25.4 x 12 cm"},
		{"2 ft x 18 in x 18 in", Malformed, `"2 ft x 18 in x 18 in" has two units: …`, "24 x 18 x 18 in"},
		{"20 x 0 x 12 in", OutOfBounds, `"20 x 0 x 12 in" has a side of nothing`, ""},
		{"20 x -1 x 12 in", OutOfBounds, `"20 x -1 x 12 in" has a side that is below zero`, ""},
		{"1 x 2 x 3 x 4 cm", Malformed, `"1 x 2 x 3 x 4 cm" is not three measures with an x between them`, ""},
		{"60/45/40 cm", Malformed, `"60/45/40 cm" is not three …`, "60 x 45 x 40 cm"},
		{"60, 45, 40 cm", Malformed, `"60, 45, 40 cm" is not three …`, "60 x 45 x 40 cm"},
		{"L60 x W45 x H40 cm", NoNumber, `"L60 x W45 x H40 cm" …`, "60 x 45 x 40 cm"},
		{"60 cm long x 45 cm wide x 40 cm high", UnknownUnit, `"60 cm long …`, "60 cm x 45 cm x 40 cm"},
		{"H40 x W45 x L60 cm", NoNumber, `"H40 x W45 x L60 cm" …`, ""},
	} {
		_, err := ParseSize(c.text)
		checkError(t, c.text, err, c.kind, c.want, c.instead)
	}
}

func near(a, b float64) bool { return math.Abs(a/b-1) < 1e-12 }

// The notation males.females.unsexed is common practice, no source.
func TestCount(t *testing.T) {
	for text, want := range map[string]Count{
		"1.2.0": {1, 2, 0}, "2.1": {2, 1, 0}, "5": {0, 0, 5}, "0.0.5": {0, 0, 5}, "0": {}, " 0.1.3 ": {0, 1, 3}, "100000": {0, 0, 100000},
	} {
		c, err := ParseCount(text)
		if err != nil || c != want || c.Total() != want.Males+want.Females+want.Unsexed {
			t.Errorf("%q = %v (%v)", text, c, err)
		}
		if back, err := ParseCount(c.String()); err != nil || back != c {
			t.Errorf("%q prints as %q, which reads as %v (%v)", text, c, back, err)
		}
	}
	for got, want := range map[string]string{Count{1, 2, 0}.String(): "1.2.0", Count{0, 0, 5}.String(): "5", Count{}.String(): "0"} {
		if got != want {
			t.Errorf("printed %q, want %q", got, want)
		}
	}
	for _, c := range []struct {
		text    string
		kind    Kind
		want    string
		instead string
	}{
		{"several", NoNumber, `"several" does not begin with a number`, ""},
		{"a pair", NoNumber, `"a pair" does not begin with a number`, "1.1"},
		{"five", NoNumber, `"five" does not …`, "5"},
		{"-1", OutOfBounds, `"-1" is below zero`, ""},
		{"1.-2", Malformed, `"1.-2" is not one, two or three …`, ""},
		{"1.2.3.4", Malformed, `"1.2.3.4" is not …`, ""},
		{"1.2.", Malformed, `"1.2." is not …`, ""},
		{"1.000", Malformed, `"1.000" is not …`, ""},
		{"1,000", Malformed, `"1,000" is not one, two or three whole numbers with points between them`, ""},
		{"1,2", Malformed, `"1,2" is not one, two or three whole numbers with points between them`, "1.2"},
		{"1/2", Malformed, `"1/2" is not …`, "1.2"},
		{"1 male, 2 females", Malformed, `"1 male, 2 females" is not …`, "1.2.0"},
		{"2 females", Malformed, `"2 females" is not …`, "0.2.0"},
		{"1 male and 12 eggs", Malformed, `"1 male and 12 eggs" is not …`, ""},
		{"5 animals", Malformed, `"5 animals" is not …`, "5"},
		{"100001", OutOfBounds, `"100001" is more than 100000 animals`, ""},
		{"60000.60000", OutOfBounds, `"60000.60000" is more …`, ""},
		{strings.Repeat("9", 50), OutOfBounds, `"` + strings.Repeat("9", 50) + `" is more …`, ""},
	} {
		_, err := ParseCount(c.text)
		checkError(t, c.text, err, c.kind, c.want, c.instead)
	}
}

func TestInterval(t *testing.T) {
	for text, want := range map[string]Interval{
		"day": {1, Day}, "1 day": {1, Day}, "2 days": {2, Day}, "week": {1, Week}, "2 weeks": {2, Week}, "month": {1, Month},
		"3 months": {3, Month}, "year": {1, Year}, "3660 days": {3660, Day}, "120 months": {120, Month}, "10 years": {10, Year},
		"daily": {1, Day}, "every day": {1, Day}, "Every 3 days": {3, Day}, "every other day": {2, Day}, "every second day": {2, Day}, "every 3rd day": {3, Day},
		"alternate days": {2, Day}, "weekly": {1, Week}, "every week": {1, Week}, "once a week": {1, Week}, "once per week": {1, Week}, "once in 2 weeks": {2, Week},
		"every other week": {2, Week}, "two weeks": {2, Week}, "fortnightly": {2, Week}, "fortnight": {2, Week}, "every fortnight": {2, Week}, "monthly": {1, Month},
		"once a month": {1, Month}, "quarterly": {3, Month}, "yearly": {1, Year}, "annually": {1, Year}, "once a year": {1, Year}, "7d": {7, Day}, "2  days": {2, Day}, "a week": {1, Week},
	} {
		v, err := ParseInterval(text)
		if err != nil || v != want {
			t.Errorf("%q = %v (%v)", text, v, err)
		}
		if back, err := ParseInterval(v.String()); err != nil || back != v {
			t.Errorf("%q prints as %q (%v)", text, v, err)
		}
	}
	for _, c := range []struct {
		text    string
		kind    Kind
		want    string
		instead string
	}{
		{"", NoUnit, `"" has no unit`, ""},
		{"3", NoUnit, `"3" has no unit`, ""},
		{"2 wekks", UnknownUnit, `"2 wekks": there is no unit "wekks" for an interval`, "2 weeks"},
		{"2 dyas", UnknownUnit, `"2 dyas": there is no unit "dyas" for an interval`, "2 days"},
		{"days", UnknownUnit, `"days": there is no unit "days" for an interval`, "day"},
		{"every evening", UnknownUnit, `"every evening": …`, "day"},
		{"2 hrs", TooOften, `"2 hrs" is more than once a day, which no interval can say`, ""},
		{"5 h", WrongUnit, `"5 h" is not an interval: "h" is a unit of duration`, ""},
		{"48 hours", WrongUnit, `"48 hours" is not an interval: …`, "2 days"},
		{"12 h", TooOften, `"12 h" is more than once a day, which no interval can say`, ""},
		{"twice a week", TooOften, `"twice a week" is more than once a week, …`, ""},
		{"3 times a week", TooOften, `"3 times a week" is …`, ""},
		{"2x weekly", TooOften, `"2x weekly" is …`, ""},
		{"2/week", TooOften, `"2/week" is …`, ""},
		{"twice daily", TooOften, `"twice daily" is …`, ""},
		{"1x a week", Malformed, `"1x a week" is once a week`, "week"},
		{"biweekly", Malformed, `"biweekly" has two meanings`, "2 weeks|twice a week"},
		{"1.5 weeks", Malformed, `"1.5 weeks" is not a whole number`, ""},
		{"2 to 3 days", Malformed, `"2 to 3 days" is more than one number …`, ""},
		{"0 days", OutOfBounds, `"0 days" is not a whole number of 1 or more`, ""},
		{"-1 day", OutOfBounds, `"-1 day" is not a whole number of 1 or more`, ""},
		{"3661 days", OutOfBounds, `"3661 days" is longer than ten years`, ""},
		{"121 months", OutOfBounds, `"121 months" is longer than ten years`, ""},
	} {
		_, err := ParseInterval(c.text)
		checkError(t, c.text, err, c.kind, c.want, c.instead)
	}
}
