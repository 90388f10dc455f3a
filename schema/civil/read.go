package civil

import (
	"fmt"
	"regexp"
	"strconv"
	"strings"
	"time"
	"unicode"
)

// Unread says why a text is no day or no time of day, and what may be meant by it.
type Unread struct {
	Fault   string
	Instead string   // what is meant, in a form that is read; "" where that is not plain
	Either  []string // what may be meant, where it is more than one thing
}

func (e *Unread) Error() string { return e.Fault }

// How a day and a time of day are written, for whoever wrote something else.
const (
	DateForm  = `a day, such as "2027-07-10" or "10 July 2027"`
	ClockForm = `a time of day, such as "19:30" or "7:30 pm"`
)

// Read reads a day as people write it: "2027-07-10", "10 July 2027", "July 10, 2027",
// "2027/07/10", "Sat 10 Jul 2027", and "13.07.2027" or "07/13/2027" where only one of day
// and month can be which. The error is an *Unread.
func Read(s string) (Date, error) {
	if d, err := Parse(s); err == nil {
		return d, nil
	}
	p, ok := parts(s)
	if !ok {
		return 0, p.unread(s)
	}
	var fit []Date
	for _, o := range p.orders() {
		if d, ok := Of(o[0], time.Month(o[1]), o[2]); ok && (len(fit) == 0 || fit[0] != d) {
			fit = append(fit, d)
		}
	}
	switch {
	case len(fit) == 0:
		return 0, p.nowhere(s)
	case len(fit) > 1 || p.short:
		e := &Unread{Fault: fmt.Sprintf("%q can be read as %s", s, either(fit))}
		if len(fit) == 1 {
			e.Fault, e.Instead = fmt.Sprintf("%q has a year of two digits", s), fit[0].String()
			return 0, e
		}
		for _, d := range fit {
			e.Either = append(e.Either, d.String())
		}
		return 0, e
	case p.weekday >= 0 && fit[0].Weekday() != p.weekday:
		return 0, &Unread{Fault: fmt.Sprintf("%q is a %s", s, fit[0].Weekday())}
	case p.swapped:
		return 0, &Unread{Fault: fmt.Sprintf("%q has no month %d", s, p.numbers[1]), Instead: fit[0].String()}
	}
	return fit[0], nil
}

// dateParts are the numbers and words of a day, as written.
type dateParts struct {
	numbers []int
	long    []bool // of each number, whether it is a year by its digits
	month   time.Month
	weekday time.Weekday // -1 for none
	short   bool         // the year has two digits
	swapped bool         // year, day and month: an order that nobody uses
	rest    string       // what is neither
}

var (
	datePart  = regexp.MustCompile(`(\d+)(?:st|nd|rd|th)?\b|\pL+`)
	clockTail = regexp.MustCompile(`^(\d{4}-\d\d-\d\d)[T ]+\d\d?:\d\d.*$`)
)

func parts(s string) (p dateParts, ok bool) {
	p.weekday = -1
	if m := clockTail.FindStringSubmatch(s); m != nil {
		p.rest = m[1]
		return p, false
	}
	s = strings.ToLower(s)
	for _, m := range datePart.FindAllStringSubmatch(s, -1) {
		if n, err := strconv.Atoi(m[1]); err == nil && (len(m[1]) <= 2 || len(m[1]) == 4) {
			p.numbers, p.long = append(p.numbers, n), append(p.long, len(m[1]) == 4)
			continue
		}
		month, isMonth := ParseMonth(m[0])
		weekday, isWeekday := ParseWeekday(m[0])
		switch {
		case isMonth && p.month == 0:
			p.month = month
		case isWeekday && p.weekday < 0:
			p.weekday = weekday
		case len(m[1]) == 8:
			y, _ := strconv.Atoi(m[1][:4])
			mm, _ := strconv.Atoi(m[1][4:6])
			d, _ := strconv.Atoi(m[1][6:])
			p.numbers, p.long = append(p.numbers, y, mm, d), append(p.long, true, false, false)
		case m[0] == "of" || m[0] == "the":
		default:
			p.rest = m[0]
			return p, false
		}
	}
	if between := datePart.ReplaceAllString(s, ""); strings.ContainsFunc(between, func(r rune) bool { return !strings.ContainsRune("-/.,", r) && !unicode.IsSpace(r) }) {
		p.rest = between
		return p, false
	}
	if p.month != 0 {
		return p, len(p.numbers) == 2
	}
	return p, len(p.numbers) == 3
}

// orders returns the years, months and days that the numbers may be.
func (p *dateParts) orders() (all [][3]int) {
	n := p.numbers
	year := func(i int) int {
		if !p.long[i] {
			p.short = true
			return 2000 + n[i]
		}
		return n[i]
	}
	if p.month != 0 {
		switch m := int(p.month); {
		case p.long[0]:
			return [][3]int{{year(0), m, n[1]}}
		case p.long[1]:
			return [][3]int{{year(1), m, n[0]}}
		default:
			return [][3]int{{year(1), m, n[0]}, {year(0), m, n[1]}}
		}
	}
	switch {
	case p.long[0]:
		if n[1] > 12 && n[2] <= 12 {
			p.swapped = true
			return [][3]int{{year(0), n[2], n[1]}}
		}
		return [][3]int{{year(0), n[1], n[2]}}
	case p.long[2]:
		return [][3]int{{year(2), n[1], n[0]}, {year(2), n[0], n[1]}}
	}
	return [][3]int{{year(2), n[1], n[0]}, {year(2), n[0], n[1]}, {year(0), n[1], n[2]}}
}

// unread says what a text lacks that has not the parts of a day.
func (p *dateParts) unread(s string) *Unread {
	if d, err := Parse(p.rest); err == nil {
		return &Unread{Fault: fmt.Sprintf("%q has a time behind the day", s), Instead: d.String()}
	}
	switch {
	case p.rest == "" && p.month != 0 && len(p.numbers) == 1 && p.long[0]:
		return &Unread{Fault: fmt.Sprintf("%q has no day", s)}
	case p.rest == "" && p.month != 0 && len(p.numbers) == 1, p.rest == "" && p.month == 0 && len(p.numbers) == 2:
		return &Unread{Fault: fmt.Sprintf("%q has no year", s)}
	}
	return &Unread{Fault: fmt.Sprintf("%q is not a date", s)}
}

// nowhere says why a text with all parts of a day is none.
func (p *dateParts) nowhere(s string) *Unread {
	for _, o := range p.orders() {
		if m := time.Month(o[1]); m >= time.January && m <= time.December && o[0] >= 1 && o[0] <= 9999 && o[2] > 0 && o[2] <= 31 {
			return &Unread{Fault: fmt.Sprintf("there is no %d %s in %d: that month has %d days", o[2], m, o[0], DaysIn(o[0], m))}
		}
	}
	return &Unread{Fault: fmt.Sprintf("%q is not a day of the calendar", s)}
}

func either(days []Date) string {
	var all []string
	for _, d := range days {
		y, m, n := d.YMD()
		all = append(all, fmt.Sprintf("%d %s %d", n, m, y))
	}
	return strings.Join(all, " or ")
}

// ParseMonth reads "jul", "sept" or "July".
func ParseMonth(s string) (time.Month, bool) {
	l := strings.ToLower(s)
	if len(l) < 3 {
		return 0, false
	}
	for m := time.January; m <= time.December; m++ {
		if strings.HasPrefix(strings.ToLower(m.String()), l) {
			return m, true
		}
	}
	return 0, false
}

var (
	clockText = regexp.MustCompile(`^(?:at )?(\d{1,2})(?:[:.h](\d\d))?(?::00)? ?(am|pm|noon|midnight|h|hrs|o'clock|)$`)
	fourFold  = regexp.MustCompile(`^(\d\d)(\d\d) ?(?:h|hrs|hours)?$`)
	halves    = strings.NewReplacer("a.m.", "am", "p.m.", "pm", " in the morning", " am", " in the afternoon", " pm", " in the evening", " pm", " at night", " pm", "’", "'")
)

// ReadClock reads a time of day as people write it: "19:30", "7:30 pm", "7.30pm", "8 am",
// "12 noon", "1930". The error is an *Unread.
func ReadClock(s string) (Clock, error) {
	if c, err := ParseClock(s); err == nil {
		return c, nil
	}
	text := halves.Replace(strings.ToLower(strings.Join(strings.Fields(s), " ")))
	switch text {
	case "noon", "midday":
		return 12 * 60, nil
	case "midnight":
		return 0, nil
	}
	m := fourFold.FindStringSubmatch(text)
	if m != nil {
		m = append(m, "h")
	} else if m = clockText.FindStringSubmatch(text); m == nil {
		return 0, &Unread{Fault: fmt.Sprintf("%q is not a time of day", s)}
	}
	hour, _ := strconv.Atoi(m[1])
	minute, _ := strconv.Atoi(m[2])
	if hour > 23 || minute > 59 {
		return 0, &Unread{Fault: fmt.Sprintf("%q is not a time of day: hours go to 23 and minutes to 59", s)}
	}
	return half(s, hour, minute, m[2] != "", m[3])
}

// half puts a time into its half of the day.
func half(s string, hour, minute int, exact bool, word string) (Clock, error) {
	at := func(hour int) Clock { return Clock(hour*60 + minute) }
	switch {
	case (word == "noon" || word == "midnight") && (hour != 12 || minute != 0):
		return 0, &Unread{Fault: fmt.Sprintf("%q is not a time of day", s)}
	case word == "midnight", word == "am" && hour == 12:
		return at(0), nil
	case word == "am" && hour > 12, word == "pm" && (hour == 0 || hour > 12):
		return 0, &Unread{Fault: fmt.Sprintf("%q is of 24 hours and of twelve", s), Instead: at(hour).String()}
	case word == "pm" && hour < 12:
		return at(hour + 12), nil
	case word != "" && word != "o'clock", exact && word == "":
		return at(hour), nil
	case hour == 0 || hour >= 12:
		return 0, &Unread{Fault: fmt.Sprintf("%q has no minutes", s), Instead: at(hour).String()}
	}
	return 0, &Unread{Fault: fmt.Sprintf("%q can be in the morning or in the evening", s), Either: []string{at(hour).String(), at(hour + 12).String()}}
}
