// Package growth says whether an enclosure is large enough for those who live in
// it, and for how long: it forecasts their sizes by Dyar's rule, their moults by
// the lengths of instars, and their number by an expected brood. It knows plans and
// lives, makes no findings and never gives a date, only the days between which
// something is to be expected.
package growth

import (
	"vivary/compile/life"
	"vivary/plan"
	"vivary/schema/civil"
)

// Report is what can be said of one enclosure as of a day.
type Report struct {
	Life  *life.Enclosure
	Today civil.Date

	Now   Stock // of those who have been seen; young that may have been born are in Brood
	Grown Stock // once all who live here now are adult
	Brood Brood

	// TooSmall is when the floor or the volume becomes too small for those who live
	// here. Young that are not born yet, or that nobody counted, are none of them.
	TooSmall Due
	// Nursery is when more young are to be taken out than there are places for.
	Nursery Due
	// Prey is when an item of a menu of the plan stops fitting the animals it is for.
	Prey Misfit
}

// When says what is known of something that may come.
type When uint8

// What may be known. The zero value is that it does not come as far as is known.
const (
	Never   When = iota
	Undated      // it will come, but no sheet says how long that takes
	Between      // between two days
	Now          // it is so today
)

// Due is when something comes.
type Due struct {
	When
	// Of Between: the first day on which it may come, and the last. Without a last
	// day, the zero Date, it may not come at all.
	From, Until civil.Date
}

// first returns whichever comes first.
func (d Due) first(o Due) Due {
	switch {
	case o.When == Never || d.When == Now:
		return d
	case d.When == Never || o.When == Now:
		return o
	case d.When == Undated:
		return o
	case o.When == Undated:
		return d
	}
	until := min(d.Until, o.Until)
	if until == 0 {
		until = max(d.Until, o.Until)
	}
	return Due{Between, min(d.From, o.From), until}
}

// Of returns the report of an enclosure. It is false where nobody lives there or no
// sheet says anything of them. It allocates nothing, so that rules may ask for it
// in every enclosure.
func Of(l *life.Enclosure, c *plan.Collection, today civil.Date) (Report, bool) {
	r := Report{Life: l, Today: today}
	if l.Plan.Sheet == nil {
		return r, false
	}
	animals := 0
	for _, g := range l.Groups {
		animals += g.Count(today)
	}
	if animals == 0 {
		return r, false
	}
	var f figures
	f.read(l.Plan.Sheet)
	w := world{l: l, c: c, f: &f, today: today}
	w.prepare()
	r.Now = w.stock(today, still)
	r.Grown = w.stock(today, grown)
	r.Brood = w.rear(r.Now)
	r.TooSmall = w.tooSmall(&r.Now)
	r.Nursery = w.nursery(&r.Brood)
	for i := range l.Groups {
		if m := w.misfit(i); m.Due.first(r.Prey.Due) != r.Prey.Due || r.Prey.When == Never {
			r.Prey = m
		}
	}
	return r, true
}
