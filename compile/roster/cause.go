package roster

import (
	"vivary/compile/horizon"
	"vivary/compile/life"
	"vivary/plan"
	"vivary/plan/source"
	"vivary/schema/civil"
)

// Why is the kind of reason for which a day of an entry is not as planned.
type Why uint8

const (
	// Held is out: the animals' state forbids it.
	Held Why = iota
	// Halved is out: a season leaves out every second occasion.
	Halved
	// NoRound is out: its round is not held on that day.
	NoRound
	// Moved is in: from a day without a round.
	Moved
	// Nobody is out: who does it is away, and it is not done by a stand-in that day.
	Nobody
	// Waits is out: a meal that the animals can wait for until somebody is back.
	Waits
	// LeftIn is out: a meal of which live prey would be left in with nobody to take it out.
	LeftIn
	// Visit is in: what fell between two visits is done at them.
	Visit
	// Leaving is in: somebody comes for the last time before days without anybody.
	Leaving
	// Return is in: somebody is back after days without anybody.
	Return
	// Skipped is out: the log says that it was not done.
	Skipped
	// InPlace is out: a meal that the log brought stands in its place.
	InPlace
	// TooSoon is out: it would come too soon after another meal.
	TooSoon
	// CaughtUp is in: what was skipped is done on the first day that there is.
	CaughtUp
	// Done is in: the log says that it was done.
	Done
	// PreyKilled is in, and says how: prey is killed first.
	PreyKilled
	// WithMeal is in: it goes with a meal that stands in place of a usual one.
	WithMeal
	// Untrained is out: whoever stands in is not trained for it.
	Untrained
	// TooFew is out: its round takes more people than are there and trained for it.
	TooFew
	// Enough is in: from a day on which too few were there.
	Enough
	// NotOn is out: the plan leaves it out on that day.
	NotOn
	// AlsoOn is in: the plan has it on that day besides.
	AlsoOn
	// OtherRound is out: another of its rounds, with which this one takes turns, has that day.
	OtherRound
)

// Stands reports whether days with this reason stand.
func (w Why) Stands() bool {
	switch w {
	case Moved, Visit, Leaving, Return, CaughtUp, Done, PreyKilled, WithMeal, Enough, AlsoOn:
		return true
	}
	return false
}

// Cause is one reason and the days it decided.
type Cause struct {
	Why  Why
	Days horizon.Days
	Hold *life.Hold   // of Held and Halved; of PreyKilled where a state wants it, and of Untrained where one asks for training
	Away *plan.Away   // of what an absence brought: the block, one of several for a run of them
	At   source.Place // where the reason was written
	Last civil.Date   // of CaughtUp and Return: when it was done last before
	// Dates is the item of a list of days that has it: of NotOn and AlsoOn, and of NoRound
	// where the round would be held but for it.
	Dates *plan.Written[plan.Day]
	Round *plan.Round // of OtherRound: which
}

// Reason returns the cause that decided day i, the last one that agrees with
// whether it stands; nil where the day is as planned.
func (e *Entry) Reason(i int) *Cause {
	stands := e.Days.Has(i)
	for k := len(e.Causes) - 1; k >= 0; k-- {
		c := &e.Causes[k]
		if c.Why != PreyKilled && c.Why.Stands() == stands && c.Days.Has(i) {
			return c
		}
	}
	return nil
}

// Cause returns the cause of that kind that has day i, or nil.
func (e *Entry) Cause(w Why, i int) *Cause {
	for k := range e.Causes {
		if c := &e.Causes[k]; c.Why == w && c.Days.Has(i) {
			return c
		}
	}
	return nil
}

// Out returns the days that were taken out for one of some reasons and do not
// stand, or nil for none.
func (e *Entry) Out(why ...Why) horizon.Days {
	var out horizon.Days
	for k := range e.Causes {
		for _, w := range why {
			if c := &e.Causes[k]; c.Why == w {
				if out == nil {
					out = c.Days.Clone()
				} else {
					out.Union(c.Days)
				}
			}
		}
	}
	if out != nil {
		out.Subtract(e.Days)
	}
	return out
}

// mark notes a cause for day i; one of the same kind and the same place takes it in.
func (b *builder) mark(e *Entry, c Cause, i int) {
	for k := range e.Causes {
		if o := &e.Causes[k]; o.Why == c.Why && o.Hold == c.Hold && o.Away == c.Away && o.At == c.At && o.Last == c.Last && o.Round == c.Round {
			o.Days.Add(i)
			return
		}
	}
	c.Days = b.days()
	c.Days.Add(i)
	e.Causes = append(e.Causes, c)
}

// take takes day i out of an entry, for a reason. A day on which the log says that it
// was done stays: what was seen is a fact.
func (b *builder) take(e *Entry, c Cause, i int) {
	if i < 0 || i >= b.Horizon.Days || i == e.Logged {
		return
	}
	e.Days.Remove(i)
	b.mark(e, c, i)
}

// put puts day i into an entry, for a reason. A day that stands already is noted all
// the same: the last fill-up before leaving is one also where it was due.
func (b *builder) put(e *Entry, c Cause, i int) {
	if i < 0 || i >= b.Horizon.Days {
		return
	}
	e.Days.Add(i)
	b.mark(e, c, i)
}
