package check

import (
	"strconv"

	"vivary/plan/finding"
	"vivary/schema"
)

// Dates of the house: whether they are known, and seen to. What the law asks is nobody's here.
var deadlines = []*Rule{
	{Collection: deadlineOverdue, Rule: finding.Rule{ID: "deadline-overdue", Severity: finding.Urgent, Silence: finding.Never,
		Title:   "A date of the house is over, and no line of the log says that it was seen to.",
		Why:     "A licence or an insurance that has ended, a device that nobody tested: nobody notices until it matters.",
		Source:  "the date in the plan; what the law or a code asks for is for whoever answers for the house to look up",
		Instead: "See to it, and log it: deadline, its name, done. Where it has another day by now, write that."}},
	{Collection: deadlineUndated, Rule: finding.Rule{ID: "deadline-undated", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "Of a date of the house no day is known.",
		Why:     "It is told on no day, and whoever wrote it thinks that it is.",
		Source:  "the design of this program",
		Instead: "Write `by`, the day by which it has to be done; or `last`, when it was done last, where it comes again so long after that."}},
	{Collection: deadlineAhead, Rule: finding.Rule{ID: "deadline-ahead", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "Of a date of the house it is written that it was done on a day to come.",
		Why:     "The next time is counted from it, and told too late: most often the year is another.",
		Source:  "the design of this program",
		Instead: "Write the day on which it was done; for one to come `by`."}},
	{Collection: datesSelected, Rule: finding.Rule{ID: "calendar-per-date", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "A calendar of the dates of the house selects rounds, rooms, enclosures or kinds of care.",
		Why:     "It has no rounds: what it selects says nothing, and the care that was meant is in no calendar.",
		Source:  "the design of this program",
		Instead: "Have a calendar of its own for the rounds; keepers may stand in either."}},
}

func deadlineOverdue(r *Rule, c *Collection) {
	for i := range c.Deadlines {
		d := &c.Deadlines[i]
		if d.Name == "" {
			continue // what is accepted, and figures, have rules of their own
		}
		for k := range d.Times {
			t := &d.Times[k]
			if t.Overdue(c.Today) {
				x := finding.Finding{Rule: &r.Rule, At: d.At, Source: r.Source, Limit: t.By.Words(),
					Text: d.Title + " was to be done by " + t.By.Words(), Write: "in the log, once done: deadline " + d.Name + " done"}
				if d.Does != "" {
					x.Text += ": " + d.Does
				}
				c.Add(x)
				break
			}
		}
	}
}

func deadlineUndated(r *Rule, c *Collection) {
	for i := range c.Deadlines {
		d := &c.Deadlines[i]
		if !d.Undated {
			continue
		}
		x := finding.Finding{Rule: &r.Rule, At: d.At, Source: r.Source, Text: "by when " + d.Title + " has to be done is not said", Write: "by, with the day"}
		if b := c.Plan.Deadline(d.Name); b != nil {
			if b.By.Bad || b.Last.Bad || b.Every.Bad {
				continue // said already
			}
			if k := schema.FindDeadlineKind(b.Kind.V); k != nil && k.Counted {
				x.Write = "last, with the day on which it was done"
			} else if b.Last.Set() {
				x.Write = "every, after how long it comes again; or by, with the day"
			}
		}
		c.Add(x)
	}
}

func deadlineAhead(r *Rule, c *Collection) {
	for _, b := range c.Plan.Deadlines {
		if b.Last.Set() && b.Last.V > c.Today {
			c.Add(finding.Finding{Rule: &r.Rule, At: b.Last.At, Source: r.Source, Text: "last of " + b.Shown() + " is a day to come: " + b.Last.V.Words(),
				Write: "the day on which it was done; or by in its place, for the day by which it has to be done"})
		}
	}
}

func datesSelected(r *Rule, c *Collection) {
	for _, k := range c.Plan.Calendars {
		if !k.OfHouse() {
			continue
		}
		for _, l := range [...]struct {
			name string
			list int
		}{{"rounds", len(k.Rounds)}, {"rooms", len(k.Rooms)}, {"enclosures", len(k.Enclosures)}, {"kinds", len(k.Kinds)}} {
			if l.list > 0 {
				c.Add(finding.Finding{Rule: &r.Rule, At: k.Entry.At, Source: r.Source, Text: "calendar " + strconv.Quote(k.Name.V) + " has the dates of the house, and selects " + l.name, Write: "a calendar of its own for the rounds"})
				break
			}
		}
	}
}
