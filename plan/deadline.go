package plan

import (
	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/quantity"
)

// Deadline is a deadline block: a date of the house.
type Deadline struct {
	Head
	Title    Written[string]            `care:"title"`
	Kind     Written[string]            `care:"kind"`
	By       Written[civil.Date]        `care:"by"`
	Last     Written[civil.Date]        `care:"last"`
	Every    Written[quantity.Interval] `care:"every"`
	Lead     Written[quantity.Quantity] `care:"lead"`
	Does     Written[string]            `care:"does"`
	Keeper   Written[string]            `care:"keeper"`
	Formerly Written[string]            `care:"formerly"`
	Note     Written[string]            `care:"note"`
}

// Shown returns the title that people see.
func (d *Deadline) Shown() string { return title(d.Title, d.Name.V) }

// PerDate is the entry of a calendar that has dates of the house, and no round.
const PerDate = "per date"

// OfHouse reports whether a calendar has dates of the house, and no round.
func (c *Calendar) OfHouse() bool { return c.Entry.V == PerDate }

// RoundCalendars are the calendars that have rounds.
func (c *Collection) RoundCalendars() (out []*Calendar) {
	for _, k := range c.Calendars {
		if !k.OfHouse() {
			out = append(out, k)
		}
	}
	return out
}

// Deadline returns the deadline of that name, or nil.
func (c *Collection) Deadline(name string) *Deadline { return c.deadlines[name] }

// datesCalendar are names for the calendar of the dates of a house that has none in its plan.
var datesCalendar = [...]string{"dates", "dates-of-the-house"}

// ofHouse adds a calendar for the dates of the house where there are some and the plan has none
// for them: in one of rounds they would be read by whoever stands in.
func (r *resolver) ofHouse() {
	if len(r.c.Deadlines) == 0 && !r.c.TrainingEnds() {
		return
	}
	taken := map[string]bool{}
	if r.c.About != nil {
		taken[r.c.About.Name.V] = true // that of the rounds, where the plan has none for them
	}
	for _, k := range r.c.Calendars {
		if k.OfHouse() {
			return
		}
		taken[k.Name.V] = true
	}
	for _, name := range datesCalendar {
		if taken[name] {
			continue
		}
		k := &Calendar{}
		k.Name.V, k.Title.V, k.Entry.V = name, "Dates of the house", PerDate
		r.c.Calendars = append(r.c.Calendars, k)
		return
	}
}

// deadline reads a line about a date of the house, from the name on, and reports whether it is
// one: "dwa-licence done", or "dwa-licence withdrawn done".
func (l *lineReader) deadline(e *Event, at int) bool {
	return l.animals == nil && l.aside(e, at, schema.LogDeadline, schema.FindDeadlineWord, &e.Deadline)
}

// joinedDeadline finds the date of which a line speaks. One that is not in the plan any more is
// over: what was logged of it stays in the log, and nobody has to take it out.
func (r *resolver) joinedDeadline(e *Event) bool {
	if r.c.deadlines[e.Deadline.V] != nil {
		return true
	}
	f := finding.Finding{Rule: ruleDeadlineUnknown, At: e.Deadline.At, Text: "there is no deadline " + quote(e.Deadline.V) + " in the plan: the line counts for nothing", Write: "the name of a deadline of the plan; nothing, where that was taken out"}
	if s := r.slip(e.Deadline.V, keysOf(r, "deadline", r.c.deadlines)); s != "" {
		f.Text += "; is " + quote(s) + " meant?"
	}
	r.found.Add(f)
	return false
}
