package past

import (
	"slices"

	"vivary/compile"
	"vivary/compile/roster"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/civil"
)

// Weeks is how long the year is that is told as it was: it ends with today.
const Weeks = 52

// Year is a year as it was: on which days each care stood by the plan that was in force on that
// day, and what the log says of it.
type Year struct {
	From  civil.Date
	Known [Weeks * 7]bool // whether a plan was in force that has the enclosure
	Rows  []*Row
	Marks [Weeks]*Mark // the one that matters most of each week, or nil
}

// Row is one care.
type Row struct {
	Care string // the name that it had first
	Name string
	Kind *schema.CareKind
	// Stood are the days on which it stood, Done those on which the log says that it was done, and
	// Not those on which it was skipped, or the meal refused.
	Stood, Done, Not [Weeks * 7]bool
}

// NewYear begins the year that ends with a day.
func NewYear(today civil.Date) *Year { return &Year{From: today - Weeks*7 + 1} }

// Until is the first day after it.
func (y *Year) Until() civil.Date { return y.From + Weeks*7 }

// Day is the day at a place.
func (y *Year) Day(i int) civil.Date { return y.From + civil.Date(i) }

// Add says what stood from one day until another, by r.Lives[i] of the plan that was in force then,
// and what the log says of it.
func (y *Year) Add(r *compile.Result, i int, log []plan.Event, from, until civil.Date) {
	from, until = max(from, y.From, r.Horizon.From), min(until, y.Until(), r.Horizon.Last()+1)
	for d := from; d < until; d++ {
		y.Known[d-y.From] = true
	}
	var of []*roster.Entry
	for k := range r.Roster.Of[i] {
		e := &r.Roster.Of[i][k]
		if e.Once == nil && e.Ask == nil && (e.Meal == nil || e.Feeds()) {
			of = append(of, e)
		}
	}
	for _, e := range of {
		for d := from; d < until; d++ {
			if e.Days.Has(int(d - r.Horizon.From)) {
				y.row(e).Stood[d-y.From] = true
			}
		}
	}
	for k := range log {
		l := &log[k]
		if l.Date < from || l.Date >= until {
			continue
		}
		for _, e := range of {
			switch {
			case l.Word == schema.WordSkipped && len(l.Args) > 0 && (l.Args[0].V == e.Name || l.Args[0].V == e.ID.Care || l.Args[0].V == e.Kind.Name),
				l.Word == schema.WordRefused && e.DoneBy(l):
				y.row(e).Not[l.Date-y.From] = true
			case e.DoneBy(l):
				y.row(e).Done[l.Date-y.From] = true
			}
		}
	}
}

// row is that of an entry, which may be one of several for as many rounds.
func (y *Year) row(e *roster.Entry) *Row {
	for _, x := range y.Rows {
		if x.Care == e.ID.Care {
			return x
		}
	}
	x := &Row{Care: e.ID.Care, Name: e.Name, Kind: e.Kind}
	y.Rows = append(y.Rows, x)
	return x
}

// Mark draws the lines of the log.
func (y *Year) Mark(log []plan.Event) {
	for i := range log {
		l := &log[i]
		if l.Date < y.From || l.Date >= y.Until() {
			continue
		}
		at := &y.Marks[(l.Date-y.From)/7]
		for k := range Marks {
			if m := &Marks[k]; m == *at {
				break
			} else if slices.Contains(m.Words, l.Word) {
				*at = m
				break
			}
		}
	}
}
