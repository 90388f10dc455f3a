package roster

import (
	"slices"

	"vivary/compile/identity"
	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/civil"
)

// Told is what the last published feeds showed people. It is evidence: where a plan
// was edited, the days before today are those that were shown then, and not those
// that the new text would have had.
type Told interface {
	// Days returns the days on which a care was shown, in whichever of its rounds, and
	// from which day until which that is known; false where nothing is.
	Days(identity.Identity) (on func(civil.Date) bool, from, until civil.Date, ok bool)
	// Same reports whether others told the same of a care.
	Same(others Told, id identity.Identity) bool
}

// plan fills in the days as planned. What the log says was done, was.
func (b *builder) plan(e *Entry) {
	for _, r := range e.Rules {
		r.Fill(e.Days, b.Horizon)
	}
	b.exceptions(e)
	if e.Group != nil && e.Once == nil {
		b.fromArrival(e)
	}
	if e.Given != nil {
		e.Days.Union(e.Given)
	} else if t := e.Once; t != nil {
		for k := range max(1, t.Times) {
			if i, ok := b.Horizon.Index(t.On + civil.Date(k*t.Interval)); ok {
				e.Days.Add(i)
			}
		}
	}
	if e.Ask != nil && e.Ask.From < b.Horizon.Now() {
		e.Days.Add(b.Horizon.Today)
	}
	if len(e.Rules) > 0 && e.Days.Next(b.Horizon.Today) < 0 && b.never(e) {
		b.found.Add(finding.Finding{Rule: ruleNeverHappens, At: e.Origin, Text: e.Name + " does not come up on any day of the coming year", Write: "other days, or other from and until"})
	}
	b.asLogged(e)
}

// fromArrival leaves out the days before the animals were here.
func (b *builder) fromArrival(e *Entry) {
	h := b.Horizon
	for i := e.Days.Next(0); i >= 0 && i < h.Today && e.Group.Count(h.Date(i)) == 0; i = e.Days.Next(i + 1) {
		e.Days.Remove(i)
	}
}

// asTold puts what the last feeds showed in place of the days before today. A hold of
// which the log told later still takes them out, and an absence that was longer than
// was said.
func (b *builder) asTold(e *Entry) {
	if b.Told == nil || e.Once != nil {
		return
	}
	on, from, until, ok := b.Told.Days(e.ID)
	if !ok {
		return
	}
	h := b.Horizon
	for d := max(h.From, from); d < min(h.Now(), until); d++ {
		switch i := int(d - h.From); {
		case on(d) == e.Days.Has(i): // as planned, by all that has been said before
		case on(d) && !b.on(e, i) && b.elsewhere(e, i): // somebody else's round of this care had it
		case on(d) && !e.heldOn(d) && b.People.there(e.Keeper, i) && (e.Group == nil || e.Group.Count(d) > 0):
			e.Days.Add(i)
		case i != e.Logged && !slices.Contains(b.life.Skipped[e.ID.Care], d):
			e.Days.Remove(i) // what was skipped is still to be looked at
		}
	}
}

// asLogged adds the last day on which the log says that it was done.
func (b *builder) asLogged(e *Entry) {
	last, ok := b.life.Done[e.ID.Care]
	if e.isMeal() && e.Group.HasFed && (!ok || e.Group.Fed > last) {
		last, ok = e.Group.Fed, true
	}
	i, in := b.Horizon.Index(last)
	if !ok || !in || e.Once != nil || !b.on(e, i) && b.elsewhere(e, i) { // the round of another had it
		return
	}
	if e.Logged = i; i < b.Horizon.Today && !e.Days.Has(i) {
		b.put(e, Cause{Why: Done, At: e.Origin}, i)
	}
}

// never reports whether an entry without days to come is a mistake: one whose time is
// over, or is still to come, is not.
func (b *builder) never(e *Entry) bool {
	for _, r := range e.Rules {
		if _, ok := r.Next(b.Horizon.Now()); ok {
			return false
		}
		if _, until := r.Bounds(); !r.Never() && until < b.Horizon.Now() {
			return false
		}
	}
	return true
}

// needs reports whether an entry is counted on by a need of the animals.
func (e *Entry) needs() bool { return e.Kind.Needs != nil && e.Kind.Needs != schema.NeedLeftovers }
