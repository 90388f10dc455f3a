package plan

import (
	"regexp"
	"slices"
	"strconv"
	"strings"

	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/quantity"
	"vivary/schema/wording"
)

// Spelt returns the text of a value as a tidy plan has it: "28C" as "28 C", "20-23 C" as
// "20 to 23 C", "Tuesday" as "tue". It means the same, in the very unit and by the very clock
// that were typed, and has no number that was not. What cannot be read, and what has more than
// one good spelling, stays as it is.
func Spelt(attr *schema.Attr, s string) string {
	if len(s) > MaxText {
		return s
	}
	switch attr.Kind {
	case schema.Quantity:
		return respelt(s, func(s string) (quantity.Quantity, error) { return quantity.Parse(s, attr.Dimension) })
	case schema.Range:
		return respelt(s, func(s string) (quantity.Range, error) { return quantity.ParseRange(s, attr.Dimension) })
	case schema.Numbers:
		return respelt(s, quantity.ParseNumbers)
	case schema.Size:
		return respelt(s, quantity.ParseSize)
	case schema.Face2D:
		return respelt(s, quantity.ParseFace)
	case schema.Spans:
		return speltSpans(s)
	case schema.Every:
		return same(s, quantity.ParseInterval)
	case schema.Date:
		return same(s, civil.Read)
	case schema.DayOfYear:
		return same(s, dayOfYear)
	case schema.Clock, schema.Clocks:
		return speltClock(s)
	case schema.On:
		return speltDays(s)
	case schema.Word:
		return speltWord(attr, s)
	case schema.Words:
		return speltWords(attr, s)
	}
	return s
}

// same returns how the program itself writes the value of a text, where it reads that as the
// same value.
func same[T interface {
	comparable
	String() string
}](s string, read func(string) (T, error)) string {
	v, err := read(s)
	if err != nil {
		return s
	}
	better := v.String()
	if again, err := read(better); err != nil || again != v {
		return s
	}
	return better
}

var anyNumber = regexp.MustCompile(`\d+(?:[.,]\d+)?`)

// respelt is same for what is measured. A fraction stays one: "1/3 cup" is not 0.333333 cups,
// and a number in words is the keeper's own.
func respelt[T interface {
	comparable
	String() string
}](s string, read func(string) (T, error)) string {
	better := same(s, read)
	typed := anyNumber.FindAllString(s, -1)
	for _, n := range anyNumber.FindAllString(better, -1) {
		if !slices.ContainsFunc(typed, func(t string) bool { return numeric(t) == numeric(n) }) {
			return s
		}
	}
	return better
}

func numeric(s string) float64 {
	v, _ := strconv.ParseFloat(strings.Replace(s, ",", ".", 1), 64)
	return v
}

func speltSpans(s string) string {
	v, err := someNumbers(s)
	if err != nil {
		return s
	}
	if again, err := someNumbers(v.String()); err != nil || !slices.Equal(again, v) {
		return s
	}
	return v.String()
}

// speltClock keeps the clock by which a time was typed: units.go counts them.
func speltClock(s string) string {
	c, err := clock(s)
	if err != nil || strings.ContainsAny(s, "nN") || strings.Contains(strings.ToLower(s), "mid") {
		return s // noon, or a time in words
	}
	better := wording.Clock(c, quantity.Units{TwelveHours: byTwelve(s)})
	if again, err := clock(better); err != nil || again != c {
		return s
	}
	return better
}

// byTwelve reports whether a time of day is written by the clock of twelve hours: with an m, as
// in pm.
func byTwelve(s string) bool { return strings.ContainsAny(s, "mM") }

// speltDays spells one item of a list of days. Of those that stand for several only weekdays
// with a dash between them have one spelling.
func speltDays(s string) string {
	days, err := ParseDays(s)
	if err != nil {
		return s
	}
	better := days[0].String()
	if len(days) > 1 {
		last := days[len(days)-1]
		if !strings.ContainsAny(s, "-–—") || strings.ContainsAny(s, ",;&+/") || !weekdaysOnly(days) {
			return s
		}
		better += " to " + last.String()
	}
	if again, err := ParseDays(better); err != nil || !slices.Equal(again, days) {
		return s
	}
	return better
}

func weekdaysOnly(days []Day) bool {
	return !slices.ContainsFunc(days, func(d Day) bool { return d.Kind != EachWeekday })
}

// speltWord spells one of the words of an attribute without capitals of one's own. Another name
// for it is the keeper's, and stays.
func speltWord(attr *schema.Attr, s string) string {
	if name := schema.Called(attr.Choices, s); strings.EqualFold(name, strings.TrimSpace(s)) && name != "" {
		return name
	}
	return s
}

func speltWords(attr *schema.Attr, s string) string {
	all := strings.Split(s, ",")
	for i := range all {
		if all[i] = strings.TrimSpace(all[i]); all[i] == "" {
			return s
		}
		all[i] = speltWord(attr, all[i])
	}
	return strings.Join(all, ", ")
}
