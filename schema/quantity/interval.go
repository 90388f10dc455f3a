package quantity

import (
	"strconv"
	"strings"
)

// IntervalUnit is a step of the calendar.
type IntervalUnit uint8

// The steps. A Month or Year ends on the same day of the month that it began,
// so it has no fixed length.
const (
	Day IntervalUnit = iota + 1
	Week
	Month
	Year
)

// intervals holds each step's name, mean length in days, how it is also spelt, and the
// words for once in it and once in several of it.
var intervals = [...]struct {
	name    string
	days    float64
	also    string
	once    string
	several map[string]int
}{
	Day:   {"day", 1, " days d ", " daily ", nil},
	Week:  {"week", 7, " weeks w wk wks ", " weekly ", map[string]int{"fortnight": 2, "fortnights": 2, "fortnightly": 2}},
	Month: {"month", 30.4375, " months mo mos mth mths ", " monthly ", map[string]int{"quarter": 3, "quarterly": 3}},
	Year:  {"year", 365.25, " years y yr yrs ", " yearly annually ", nil},
}

// String returns "day", "week", "month" or "year", and "" for the zero value.
func (u IntervalUnit) String() string {
	if int(u) >= len(intervals) {
		u = 0
	}
	return intervals[u].name
}

// Interval is a number of steps of the calendar, "2 weeks", as opposed to a
// Duration: two months from 5 July is 5 September, however many days that is.
type Interval struct {
	N    int
	Unit IntervalUnit
}

// MaxIntervalDays is the longest Interval, in days; months and years count with
// their mean length.
const MaxIntervalDays = 3660

var intervalForm = form{"interval", "an", `"day", "3 days", "week", "2 weeks", "month" or "year"`}

// ParseInterval reads "day", "3 days", "every other day", "weekly", "two weeks", "once a
// month". The error is an *Error.
func ParseInterval(s string) (Interval, error) {
	v, f := readInterval(s)
	if f.kind == 0 {
		return v, nil
	}
	e := f.build(s, Duration, intervalForm, meantInterval(s), func(t string) bool {
		_, f := readInterval(t)
		return f.kind == 0
	})
	if e.Instead == "" {
		e.Nearest = "" // hours and minutes are no steps of the calendar
	}
	often(s, e)
	return Interval{}, e
}

func readInterval(s string) (Interval, fault) {
	s = strings.ToLower(folded(s))
	if s == "" {
		return Interval{}, fault{kind: NoUnit}
	}
	unit, once := strings.CutPrefix(s, "once ")
	unit, each := cutEach(unit)
	if once && !each {
		unit = strings.TrimPrefix(unit, "in ")
	}
	n, after, f := times(unit)
	if f.kind != 0 {
		return Interval{}, f
	}
	counted := after != unit
	unit = after
	for u := Day; u <= Year; u++ {
		i := &intervals[u]
		name := strings.TrimSuffix(unit, ".")
		switch {
		case name == i.name || strings.Contains(i.also, " "+name+" ") && (counted || each):
			return stepped(n, u)
		case strings.Contains(i.once, " "+name+" ") && !counted:
			return stepped(1, u)
		case i.several[name] > 0:
			return stepped(n*i.several[name], u)
		}
	}
	if unit == s {
		return Interval{}, fault{kind: UnknownUnit, unit: unit}
	}
	if unit[0] == '.' || unit[0] == ',' {
		return Interval{}, fault{kind: Malformed, reason: "is not a whole number"}
	}
	return Interval{}, unitFault(unit, Duration)
}

// cutEach cuts "every" and what else says that the step after it comes again.
func cutEach(s string) (rest string, found bool) {
	for _, w := range [...]string{"every ", "each ", "per ", "a "} {
		if rest, found = strings.CutPrefix(s, w); found {
			return rest, true
		}
	}
	return s, false
}

// ordinals are the words for every how manieth time.
var ordinals = [...]struct {
	word string
	n    int
}{
	{"other ", 2}, {"second ", 2}, {"2nd ", 2}, {"alternate ", 2}, {"alternating ", 2}, {"third ", 3}, {"3rd ", 3}, {"fourth ", 4}, {"4th ", 4},
	{"fifth ", 5}, {"5th ", 5}, {"sixth ", 6}, {"6th ", 6}, {"seventh ", 7}, {"7th ", 7}, {"tenth ", 10}, {"10th ", 10},
}

// times reads how many steps there are, which may be said as a word.
func times(s string) (n int, rest string, f fault) {
	const notWhole = "is not a whole number of 1 or more"
	for _, w := range ordinals {
		if rest, ok := strings.CutPrefix(s, w.word); ok {
			return w.n, rest, fault{}
		}
	}
	if k := digits(s); k > 0 {
		if n, rest = whole(s[:k]), strings.TrimPrefix(s[k:], " "); n < 1 {
			return 0, s, fault{kind: OutOfBounds, reason: notWhole}
		}
		if rest == "" {
			return 0, s, fault{kind: NoUnit}
		}
		return n, rest, fault{}
	}
	if v, rest, ok := numeral(s, Duration); ok && v >= 1 {
		return int(v), rest, fault{}
	}
	if _, _, f := number(s, Duration); f.kind == 0 {
		return 0, s, fault{kind: OutOfBounds, reason: notWhole}
	}
	return 1, s, fault{}
}

func stepped(n int, u IntervalUnit) (Interval, fault) {
	if float64(n)*intervals[u].days > MaxIntervalDays {
		return Interval{}, fault{kind: OutOfBounds, reason: "is longer than ten years"}
	}
	return Interval{n, u}, fault{}
}

// meantInterval returns the texts that may be meant by one that is no interval.
func meantInterval(s string) []string {
	s = strings.ToLower(folded(s))
	all := []string{bared(s)}
	switch bared(s) {
	case "evening", "night", "morning", "nightly", "noon":
		all = append(all, "day")
	case "days", "weeks", "months", "years":
		all = append(all, strings.TrimSuffix(bared(s), "s"))
	}
	// Hours of whole days.
	if q, f := read(strings.TrimPrefix(s, "every "), Duration, false); f.kind == 0 && q.Unit == Hours && q.Low > 0 && q.Low == float64(int(q.Low/day))*day {
		all = append(all, Interval{int(q.Low / day), Day}.String())
	}
	return all
}

// often says of a text that it is more than once in a step, "twice a week", or that it has
// two meanings.
func often(s string, e *Error) {
	s = strings.ToLower(folded(s))
	switch strings.ReplaceAll(s, "-", "") {
	case "biweekly":
		e.Either = []string{"2 weeks", "twice a week"}
	case "bimonthly":
		e.Either = []string{"2 months", "twice a month"}
	}
	if e.Either != nil {
		e.Kind, e.reason, e.Instead = Malformed, "has two meanings", ""
		return
	}
	n, u := howOften(s)
	switch {
	case n == 1:
		e.Kind, e.reason, e.Instead = Malformed, "is once a "+u.String(), u.String()
	case n > 1:
		e.Kind, e.reason, e.Instead = TooOften, "is more than once a "+u.String()+", which no interval can say", ""
		e.Times, e.Per = n, u
		if u == Year && 12%n == 0 {
			e.Instead = Interval{12 / n, Month}.String()
		}
	}
}

// howOften reads "twice a week", "3 times a week", "2x weekly" and "12 hours", or returns 0.
func howOften(s string) (n int, u IntervalUnit) {
	if q, f := read(strings.TrimPrefix(s, "every "), Duration, false); f.kind == 0 && q.Unit == Hours {
		if h := int(q.Low) / 60; h > 0 && h < 24 && 24%h == 0 && float64(h)*60 == q.Low {
			return 24 / h, Day
		}
		return 0, 0
	}
	s = strings.ReplaceAll(s, "/", " per ")
	for word, number := range map[string]string{"twice ": "2 times ", "thrice ": "3 times "} {
		if rest, ok := strings.CutPrefix(s, word); ok {
			s = number + rest
		}
	}
	n, rest, f := times(s)
	if f.kind != 0 || rest == s {
		return 0, 0
	}
	said := false
	for _, w := range [...]string{"times ", "time ", "x "} {
		if after, ok := strings.CutPrefix(rest, w); ok {
			rest, said = after, true
		}
	}
	rest, each := cutEach(strings.TrimSpace(rest))
	for u := Day; u <= Year; u++ {
		i := &intervals[u]
		if rest == i.name && (each || said) || said && strings.Contains(i.once, " "+rest+" ") {
			return n, u
		}
	}
	return 0, 0
}

// String prints "day", "2 days", "week".
func (v Interval) String() string {
	if v.N == 1 {
		return v.Unit.String()
	}
	return strconv.Itoa(v.N) + " " + v.Unit.String() + "s"
}
