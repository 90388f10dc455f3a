// Package deadline says when what a house has to see to is due: papers that end, devices that
// are tested, figures and accepted findings that are to be looked at again. It is dates and
// fields: it knows no law.
package deadline

import (
	"cmp"
	"slices"

	"vivary/plan"
	"vivary/plan/source"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/wording"
)

// Deadline is a date of the house.
type Deadline struct {
	Name   string // by which the log speaks of it; "" for what the plan alone ends
	First  string // the name it had first: what phones know it by
	Title  string
	Does   string
	Keeper string // "" for whoever looks after the house
	At     source.Place
	// Times are when it is due, in their order: those that were seen to as far as they were told
	// of in the last days, and those to come as if each was seen to in time.
	Times []Time
	// Last is when it was seen to last, as the log or else the plan says; 0 where neither does.
	Last civil.Date
	// Undated says that no day can be told: neither by nor last is written, and no line.
	Undated bool

	what string // what it is about, as its kind has it
}

// Time is one time that something is due.
type Time struct {
	From civil.Date // on which it is told first
	By   civil.Date
	Done civil.Date // 0 while it is open
	// Next is from when on the one after it is told in its place, 0 where there is none.
	Next civil.Date
}

// weekly is after how many days it is told again.
const weekly = 7

// Told reports whether a time is told on a day.
func (t *Time) Told(on civil.Date) bool {
	return on >= t.From && (t.Done == 0 || on <= t.Done)
}

// Overdue reports whether a time is over and open.
func (t *Time) Overdue(today civil.Date) bool { return t.Done == 0 && t.By < today }

// Days are the days on which a time stands in a calendar between two: on the first, each week
// from then on, on the last, and where it is overdue today each week after it.
func (t *Time) Days(today, from, until civil.Date) (out []civil.Date) {
	add := func(d civil.Date) {
		if d >= from && d < until && (t.Done == 0 || d <= t.Done) {
			out = append(out, d)
		}
	}
	for d := t.From; d < t.By && d < until; d += weekly {
		add(d)
	}
	add(t.By)
	if t.By >= today {
		return out
	}
	if t.Next > 0 {
		until = min(until, max(t.Next, t.By))
	}
	d := t.By + weekly
	if d < from {
		d += (from - d) / weekly * weekly
	}
	for ; d < until; d += weekly {
		add(d)
	}
	return out
}

// Of are the dates of a house as of a day: those of its deadline blocks, and what is accepted
// until a day, or to be looked at again on one. They are looked at until a day, and kept for some
// days of the past.
func Of(c *plan.Collection, today, until civil.Date, kept int) []Deadline {
	if len(c.Deadlines) == 0 && !c.TrainingEnds() && !slices.ContainsFunc(c.Calendars, (*plan.Calendar).OfHouse) {
		return nil // nobody reads of the dates of this house
	}
	done := map[string][]civil.Date{}
	for i := range c.Log {
		if e := &c.Log[i]; e.Word == schema.WordSeenTo && e.Date <= today {
			done[e.Deadline.V] = append(done[e.Deadline.V], e.Date)
		}
	}
	var out []Deadline
	for _, x := range c.Deadlines {
		kind := schema.FindDeadlineKind(x.Kind.V)
		d := Deadline{Name: x.Name.V, First: x.Formerly.Or(x.Name.V), Title: x.Shown(), Does: x.Does.V, Keeper: x.Keeper.V, At: x.At}
		if kind != nil {
			d.Does, d.what = cmp.Or(d.Does, kind.Does), kind.Doc
		}
		r := ruleOf(x, kind)
		d.Last = slices.Max(append(slices.Clone(done[x.Name.V]), x.Last.V))
		d.Times = r.times(done[x.Name.V], today, today-civil.Date(kept), until)
		d.Undated = r.by == 0 && (!r.counted || r.every.N == 0 || r.base == 0 && len(done[x.Name.V]) == 0)
		out = append(out, d)
	}
	out = append(out, trainings(c, until)...)
	return append(out, reviews(c, today-civil.Date(kept), until)...)
}

// trainings are those that end: of several in one skill the one that holds longest. They are told
// until the plan has another day.
func trainings(c *plan.Collection, until civil.Date) (out []Deadline) {
	lead := civil.Date(schema.DeadlineTraining.Lead)
	for _, k := range c.Keepers {
		for _, skill := range schema.Skills {
			t := k.Ends(skill.Name)
			if t == nil || t.Until.V >= until {
				continue
			}
			out = append(out, Deadline{First: "training " + k.Formerly.Or(k.Name.V) + " " + skill.Name + " " + t.Until.V.String(), Title: "Training of " + k.Shown() + " in " + skill.Name + " ends",
				Does: "have it renewed, then a new day in until", Keeper: k.Name.V, At: t.Until.At, Times: []Time{{From: t.Until.V - lead, By: t.Until.V}}})
		}
	}
	return out
}

// reviews are what the plan accepts until a day, and its own figures that are to be looked at
// again on one. What is said of many boxes alike is one.
func reviews(c *plan.Collection, from, until civil.Date) (out []Deadline) {
	type key struct {
		what string
		on   civil.Date
	}
	at := map[key]int{}
	boxes := map[key][]string{}
	add := func(what, does, box string, on civil.Date, place source.Place) {
		if on < from || on >= until {
			return
		}
		k := key{what, on}
		if _, there := at[k]; !there {
			at[k] = len(out)
			out = append(out, Deadline{First: what + " " + on.String(), Title: what, Does: does, At: place, Times: []Time{{From: on - schema.DeadlineLead, By: on}}})
		}
		if box != "" {
			boxes[k] = append(boxes[k], box)
		}
	}
	for _, e := range c.Enclosures {
		for _, a := range e.Accepts {
			if a.Until.Set() {
				add("Accepted: "+a.Name.V, "look whether it still holds; then a new day in until, or the accept block out", e.Shown(), a.Until.V, a.Until.At)
			}
		}
	}
	own := func(what string, review plan.Written[civil.Date]) {
		if review.Set() {
			add(what, "look at it again, and write a new day in review", "", review.V, review.At)
		}
	}
	seen := map[*plan.SpeciesSheet]bool{}
	for _, e := range c.Enclosures {
		if s := e.Sheet; s != nil && !seen[s] {
			seen[s] = true
			for _, f := range s.Figures {
				if f.Own {
					own(s.Name.V+": "+f.Name.V, f.Review)
				}
			}
			for _, n := range s.Needs {
				if n.Own {
					own(s.Name.V+": "+n.Name.V, n.Review)
				}
			}
		}
	}
	for k, i := range at {
		if all := boxes[k]; len(all) > 0 {
			out[i].Does += " (" + wording.And(some(all)) + ")"
		}
	}
	return out
}

// some are the first few of many.
func some(all []string) []string {
	const few = 6
	if len(all) <= few {
		return all
	}
	return append(slices.Clone(all[:few-1]), wording.Number(float64(len(all)-few+1))+" more")
}
