package plan

import (
	"math"
	"slices"
	"strconv"
	"strings"

	"vivary/plan/source"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/quantity"
)

// after reads what stands after the word of a line, from a word on.
func (l *lineReader) after(e *Event, from int) {
	until := l.took(e, from)
	switch e.Word.After {
	case schema.AfterEnclosure:
		l.movedTo(e, from)
		return
	case schema.AfterDays:
		from = l.days(e, from)
	case schema.AfterMeasure:
		from = l.measured(e, from)
	case schema.AfterTest:
		from = l.tested(e, from)
	case schema.AfterWord:
	default:
		if !e.Took.Set() || from < until {
			from = l.number(e, from)
		}
	}
	for i := from; i < until; i++ {
		e.Args = append(e.Args, l.written(i))
	}
}

// number reads the number of a line, where the next word is one.
func (l *lineReader) number(e *Event, at int) (next int) {
	if at < len(l.words) {
		if n, ok := plainNumber(l.words[at].text); ok {
			e.Number = wrote(n, l.span(at, at+1))
			return at + 1
		}
		if e.Word.After == schema.AfterNumber && l.sexes(e, at) {
			return at + 1
		}
	}
	return at
}

// sexes reads a number by sexes, such as 0.1.0, as the trade writes it. One of two parts is a
// number with a point.
func (l *lineReader) sexes(e *Event, at int) bool {
	text := l.words[at].text
	if strings.Count(text, ".") != 2 || strings.Trim(text, "0123456789.") != "" {
		return false
	}
	n, err := quantity.ParseCount(text)
	if err != nil {
		return false
	}
	e.Sexes, e.Number = n, wrote(float64(n.Total()), l.span(at, at+1))
	return true
}

func plainNumber(s string) (float64, bool) {
	n, err := strconv.ParseFloat(s, 64)
	return n, err == nil && n >= 0 && n <= 1e6
}

// movedTo reads how many, to which enclosure and to which animals, in any order of
// number and enclosure. What stands after "to" is the enclosure, also where its name
// is a number.
func (l *lineReader) movedTo(e *Event, from int) {
	to := false
	for i := from; i < len(l.words); i++ {
		if len(e.Args) == 0 && !to && l.words[i].text == "to" && i+1 < len(l.words) {
			to = true
			continue
		}
		if n, ok := plainNumber(l.words[i].text); ok && !to && !e.Number.Set() {
			e.Number = wrote(n, l.span(i, i+1))
			continue
		}
		if !to && !e.Number.Set() && l.sexes(e, i) {
			continue
		}
		to = false
		e.Args = append(e.Args, l.written(i))
	}
}

// days reads how long something goes on: "10 days", "for 2 weeks".
func (l *lineReader) days(e *Event, at int) (next int) {
	if at < len(l.words) && l.words[at].text == "for" {
		at++
	}
	for _, n := range []int{2, 1} { // "10 days" and "10days"
		if at+n > len(l.words) {
			continue
		}
		text := l.text(at, at+n)
		v, err := quantity.ParseInterval(text)
		if err != nil || text[0] < '0' || text[0] > '9' {
			continue
		}
		days := v.N
		switch v.Unit {
		case quantity.Day:
		case quantity.Week:
			days *= 7
		default:
			continue // months have no fixed length
		}
		e.Number = wrote(float64(days), l.span(at, at+n))
		return at + n
	}
	return at
}

// measured reads quantities, each after the word for where it was measured where one
// stands there: "spot 31 C air 23 C room 20 C 65 %".
func (l *lineReader) measured(e *Event, at int) (next int) {
	for at < len(l.words) {
		where, from := "", at
		if slices.ContainsFunc(schema.MeasuredAt, func(c schema.Choice) bool { return c.Name == l.words[at].text }) {
			where, from = l.words[at].text, at+1
		}
		n := 0
		for _, try := range []int{2, 1} { // "29 C" and "29C"
			if from+try <= len(l.words) && dimension(unlisted(l.text(from, from+try))) != 0 {
				n = try
				break
			}
		}
		if n == 0 {
			break
		}
		e.Args = append(e.Args, wrote(unlisted(l.text(from, from+n)), l.span(from, from+n)))
		e.where = append(e.where, where)
		at = from + n
	}
	return at
}

// unlisted takes off the comma with which people part one value from the next.
func unlisted(s string) string { return strings.TrimSuffix(s, ",") }

// dimension returns what of an enclosure is measured in such a quantity, or 0.
func dimension(s string) quantity.Dimension {
	for _, d := range []quantity.Dimension{quantity.Temperature, quantity.Humidity, quantity.Power} {
		if _, err := quantity.Parse(s, d); err == nil {
			return d
		}
	}
	return 0
}

// text is some words with one blank between them.
func (l *lineReader) text(from, to int) string {
	var all []string
	for _, w := range l.words[from:to] {
		all = append(all, w.text)
	}
	return strings.Join(all, " ")
}

// misread says what is wrong with what stands after the word of a line, or "". A
// count that is passed over would leave animals in the plan that are dead.
func misread(e *Event, s *schema.Spelling) (text string, at source.Place) {
	name := s.Text
	switch e.Word.After {
	case schema.AfterNothing:
		if at, ok := first(e); ok {
			return "something stands after " + name + ", which takes nothing but a note in quotes", at
		}
	case schema.AfterNumber:
		if len(e.Args) > 0 {
			return "after " + name + " stands how many, such as 3, and nothing else but a note in quotes", e.Args[0].At
		}
		return whole(e, name)
	case schema.AfterEnclosure:
		return misplaced(e, s)
	case schema.AfterDays:
		if len(e.Args) > 0 {
			return "after " + name + " stands nothing but how long, in days or weeks, such as 10 days", e.Args[0].At
		}
	case schema.AfterMeasure:
		return mismeasured(e, name)
	case schema.AfterTest:
		return mistested(e, name)
	case schema.AfterCare:
		switch {
		case len(e.Args) == 0:
			return "after " + name + " stands " + e.Word.After.String(), e.WordAt
		case len(e.Args) > 1:
			return "after " + name + " stands " + e.Word.After.String() + ", and nothing else but a note in quotes", e.Args[1].At
		}
	case schema.AfterWord:
		return miswithdrawn(e, name)
	}
	return "", source.Place{}
}

func whole(e *Event, name string) (string, source.Place) {
	if e.Number.V != math.Trunc(e.Number.V) {
		return "animals come whole: after " + name + " stands how many, such as 3", e.Number.At
	}
	return "", source.Place{}
}

func misplaced(e *Event, s *schema.Spelling) (string, source.Place) {
	switch {
	case s.Leaves && len(e.Args) > 0:
		return "after " + s.Text + " stands how many and nothing else: who has it now goes into the note", e.Args[0].At
	case len(e.Args) > 2:
		return "after " + s.Text + " stand " + e.Word.After.String() + ", and nothing else", e.Args[2].At
	}
	return whole(e, s.Text)
}

func mismeasured(e *Event, name string) (string, source.Place) {
	if len(e.Args) == 0 {
		return "after " + name + " stands " + e.Word.After.String(), e.WordAt
	}
	type one struct {
		where string
		what  quantity.Dimension
	}
	var have []one
	for i, a := range e.Args {
		d, where := dimension(a.V), e.Where(i)
		switch {
		case d == 0:
			return quote(a.V) + " is no temperature and no humidity: after " + name + " stands " + e.Word.After.String(), a.At
		case where == "power" && d != quantity.Power, d == quantity.Power && where != "power" && where != "",
			(where == "spot" || where == "air" || where == "night") && d == quantity.Power:
			return quote(a.V) + " is no measurement of " + where, a.At
		case slices.Contains(have, one{where, d}):
			return "there are two values of " + d.String() + ": a line holds one measurement of a place", a.At
		}
		have = append(have, one{where, d})
	}
	return "", source.Place{}
}

func miswithdrawn(e *Event, name string) (string, source.Place) {
	words := e.Args
	if n := len(words); n > 0 {
		if _, err := civil.Parse(words[n-1].V); err == nil {
			words = words[:n-1]
		} else if strings.Count(words[n-1].V, "-") == 2 && words[n-1].V[0] <= '9' {
			return err.Error(), words[n-1].At
		}
	}
	if len(words) == 0 {
		return "after " + name + " stands " + e.Word.After.String(), e.WordAt
	}
	return "", source.Place{}
}

// first returns where the first thing after the word of a line is.
func first(e *Event) (source.Place, bool) {
	if e.Number.Set() {
		return e.Number.At, true
	}
	if len(e.Args) > 0 {
		return e.Args[0].At, true
	}
	return source.Place{}, false
}
