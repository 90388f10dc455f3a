package plan

import (
	"errors"
	"slices"
	"strconv"
	"strings"
	"time"

	"vivary/schema/civil"
	"vivary/schema/quantity"
)

var ordinals = map[string]int{"first": 1, "second": 2, "third": 3, "fourth": 4, "fifth": 5, "last": -1, "1st": 1, "2nd": 2, "3rd": 3, "4th": 4, "5th": 5}

// ParseDay reads one item of a list of days: "tue", "every Tuesday", "first mon",
// "1st monday of the month", "15th", "1 apr" or "April 1st". The second result is false
// where it is none.
func ParseDay(s string) (Day, bool) {
	s, ofMonth := cutMonth(strings.ToLower(strings.NewReplacer(".", " ", ",", " ").Replace(s)))
	all := strings.Fields(s)
	words := slices.DeleteFunc(slices.Clone(all), idle)
	if len(words) == 2 && eachNth(all) && !ofMonth {
		return Day{}, false
	}
	switch len(words) {
	case 1:
		if w, ok := weekday(words[0]); ok {
			return Day{Kind: EachWeekday, Weekday: w}, true
		}
		if words[0] == "last" {
			return Day{Kind: DayOfMonth, Day: -1}, true
		}
		if d, ok := dayNumber(words[0], true); ok {
			return Day{Kind: DayOfMonth, Day: d}, true
		}
	case 2:
		if n, ok := ordinals[words[0]]; ok {
			if w, ok := weekday(words[1]); ok {
				return Day{Kind: NthWeekday, Weekday: w, Nth: n}, true
			}
			if words[1] == "day" && (n == 1 || n == -1) {
				return Day{Kind: DayOfMonth, Day: n}, true
			}
		}
		day, month := words[0], words[1]
		if _, isMonth := civil.ParseMonth(day); isMonth {
			day, month = month, day
		}
		if m, ok := civil.ParseMonth(month); ok {
			// 29 February is a day of some years.
			if d, ok := dayNumber(day, false); ok && d <= civil.DaysIn(2024, m) {
				return Day{Kind: DateOfYear, Month: m, Day: d}, true
			}
		}
	}
	return Day{}, false
}

// cutMonth takes "of the month" off the end.
func cutMonth(s string) (rest string, cut bool) {
	s = strings.TrimSpace(s)
	for _, w := range [...]string{" of the month", " of each month", " of every month", " of month"} {
		if rest, cut = strings.CutSuffix(s, w); cut {
			return rest, true
		}
	}
	return s, false
}

// eachNth reports whether words are like "every second Tuesday", which may be that of the
// month or every other one.
func eachNth(words []string) bool {
	if len(words) < 2 || words[0] != "every" && words[0] != "each" {
		return false
	}
	_, nth := ordinals[words[1]]
	return nth || words[1] == "other"
}

// idle are words that say nothing of a day that the others do not.
func idle(w string) bool {
	return slices.Contains([]string{"every", "each", "on", "the", "of"}, w)
}

// weekday reads "tue", "Tuesdays" or "tu".
func weekday(s string) (time.Weekday, bool) {
	if w, ok := civil.ParseWeekday(s); ok {
		return w, true
	}
	if w, ok := civil.ParseWeekday(strings.TrimSuffix(s, "s")); ok {
		return w, true
	}
	i := slices.Index([]string{"su", "mo", "tu", "we", "th", "fr", "sa"}, s)
	return time.Weekday(i), i >= 0
}

// ParseDays reads one item of a list of days, which may stand for several: "tue and fri",
// "mon to fri", "weekdays", "24 dec to 2 jan", a date, two dates, or the name of a dates
// block: whether there is one of that name is not looked at.
func ParseDays(s string) ([]Day, error) {
	if d, ok := ParseDay(s); ok {
		return []Day{d}, nil
	}
	if all := severalDays(s); all != nil {
		return all, nil
	}
	d, err := civil.Read(s)
	if err == nil {
		return []Day{{Kind: Dated, First: d, Last: d}}, nil
	}
	if parts := parted(s); len(parts) > 1 {
		return eachDay(s, parts)
	}
	if from, to, ok := cutSpan(s); ok {
		return span(s, from, to)
	}
	var u *civil.Unread
	errors.As(err, &u)
	_, often := quantity.ParseInterval(s)
	switch {
	case u.Instead != "" || u.Either != nil || dateLike(s):
		return nil, u
	case often == nil:
		return nil, noDay(s)
	case validName(s) && !startsWithDigit(s):
		return []Day{{Kind: NamedDays, Name: s}}, nil
	}
	return nil, noDay(s)
}

// DayForms says how the days of a list are written.
const DayForms = `a weekday ("tue"), a weekday of the month ("first mon", "last fri"), a day of the month ("15th", "last"), a day of the year ("1 apr", "24 dec to 2 jan"), a date ("2027-03-04", "2027-07-20 to 2027-09-01") or the name of a dates block`

// eachDay reads the parts of an item that lists several.
func eachDay(s string, parts []string) (all []Day, err error) {
	for _, part := range parts {
		days, err := ParseDays(strings.TrimSpace(part))
		if err != nil {
			return nil, noDay(s)
		}
		all = append(all, days...)
	}
	return all, nil
}

// parted cuts a text where people part one thing from the next.
func parted(s string) []string {
	s = strings.ReplaceAll(s, " and ", ",")
	if !strings.ContainsAny(s, "0123456789") { // "1/4" is a day and a month
		s = strings.ReplaceAll(s, "/", ",")
	}
	return strings.FieldsFunc(s, func(r rune) bool { return strings.ContainsRune(",;&+", r) })
}

// cutSpan parts an item that is a time from one day to another.
func cutSpan(s string) (from, to string, ok bool) {
	for _, word := range [...]string{" to ", " until ", " - ", " – ", "–"} {
		if from, to, ok = strings.Cut(s, word); ok {
			return strings.TrimSpace(from), strings.TrimSpace(to), true
		}
	}
	return "", "", false
}

// span reads the days from one to another: weekdays, days of the year or dates.
func span(s, from, to string) ([]Day, error) {
	a, okA := ParseDay(from)
	b, okB := ParseDay(to)
	switch {
	case okA && okB && a.Kind == EachWeekday && b.Kind == EachWeekday:
		return weekdaysBetween(a.Weekday, b.Weekday), nil
	case okA && okB && a.Kind == DateOfYear && b.Kind == DateOfYear:
		return []Day{{Kind: PartOfYear, Month: a.Month, Day: a.Day, ToMonth: b.Month, ToDay: b.Day}}, nil
	}
	first, errA := civil.Read(from)
	last, errB := civil.Read(to)
	switch {
	case errA == nil && errB == nil && last >= first:
		return []Day{{Kind: Dated, First: first, Last: last}}, nil
	case errA == nil && errB == nil:
		return nil, &civil.Unread{Fault: quote(s) + " ends before it begins"}
	case errA != nil && dateLike(from):
		return nil, &civil.Unread{Fault: errA.Error()}
	case errB != nil && dateLike(to):
		return nil, &civil.Unread{Fault: errB.Error()}
	}
	return nil, &civil.Unread{Fault: quote(s) + " is not from one day to another: two weekdays, two days of the year or two dates"}
}

// dateLike reports whether a text is meant for a date.
func dateLike(s string) bool { return startsWithDigit(s) && strings.Count(s, "-") == 2 }

func startsWithDigit(s string) bool { return s != "" && s[0] >= '0' && s[0] <= '9' }

// severalDays reads "mon-fri", "weekdays", "weekend" and "every day".
func severalDays(s string) []Day {
	word := strings.TrimSuffix(strings.ToLower(strings.TrimSpace(s)), "s")
	first, last, found := time.Monday, time.Sunday, true
	switch strings.TrimPrefix(word, "every ") {
	case "weekday", "week day":
		last = time.Friday
	case "weekend", "week end":
		first = time.Saturday
	case "day", "daily":
	default:
		if all := eachWeekday(word); len(all) > 1 {
			return all
		}
		from, to, two := strings.Cut(strings.NewReplacer("–", "-", "—", "-").Replace(word), "-")
		f, ok1 := weekday(strings.TrimSpace(from))
		l, ok2 := weekday(strings.TrimSpace(to))
		first, last, found = f, l, two && ok1 && ok2
	}
	if !found {
		return nil
	}
	return weekdaysBetween(first, last)
}

// eachWeekday reads weekdays with nothing but blanks between them, or nothing.
func eachWeekday(s string) (all []Day) {
	for _, w := range strings.Fields(s) {
		day, ok := weekday(strings.TrimSuffix(w, "s"))
		if !ok {
			return nil
		}
		all = append(all, Day{Kind: EachWeekday, Weekday: day})
	}
	return all
}

func weekdaysBetween(first, last time.Weekday) (all []Day) {
	for w := first; ; w = (w + 1) % 7 {
		all = append(all, Day{Kind: EachWeekday, Weekday: w})
		if w == last {
			return all
		}
	}
}

// noDay says that a text is no day, with the days that it may be where it is two numbers.
func noDay(s string) error {
	e := &civil.Unread{Fault: quote(s) + " is not a day"}
	text := strings.TrimSpace(s)
	if eachNth(strings.Fields(strings.ToLower(text))) {
		e.Fault = quote(s) + " may be that of the month or one in so many weeks"
		return e
	}
	if d, ok := dayNumber(text, false); ok {
		e.Fault, e.Instead = quote(s)+" does not say that it is a day of the month", civil.Ordinal(d)
		return e
	}
	a, b, _ := strings.Cut(strings.NewReplacer(".", "/", "-", "/").Replace(strings.TrimSuffix(text, ".")), "/")
	x, ok1 := dayNumber(a, false)
	y, ok2 := dayNumber(b, false)
	if !ok1 || !ok2 {
		return e
	}
	var fit []string
	for _, o := range [2][2]int{{x, y}, {y, x}} {
		if d, ok := civil.Of(2024, time.Month(o[1]), o[0]); ok && (x != y || fit == nil) {
			fit = append(fit, d.Brief())
		}
	}
	for i := range fit {
		fit[i] = strings.ToLower(fit[i])
	}
	e.Fault = quote(s) + " does not say which is the month"
	if e.Either = fit; len(fit) == 1 {
		e.Instead, e.Either = fit[0], nil
	}
	return e
}

func dayNumber(s string, ordinal bool) (int, bool) {
	t := s
	for _, suffix := range [...]string{"st", "nd", "rd", "th"} {
		if rest, ok := strings.CutSuffix(s, suffix); ok {
			t = rest
		}
	}
	if ordinal && t == s {
		return 0, false
	}
	d, err := strconv.Atoi(t)
	return d, err == nil && d >= 1 && d <= 31 && len(t) <= 2 && t[0] != '+'
}
