package compile

import (
	"maps"
	"slices"

	"vivary/compile/check"
	"vivary/compile/life"
	"vivary/compile/roster"
	"vivary/plan"
	"vivary/schema"
)

// What follows for an enclosure depends on what all share, and on that enclosure's own
// blocks and lines of the log. Where a compilation knows the one before it, only those
// enclosures are worked out anew of which any of that has changed.

// kept are the boxes of a compilation before, by enclosure, with what the last feeds showed
// then and what they show now; nil where nothing of it may be used again.
type kept struct {
	of       map[*plan.Enclosure]*box
	was, now roster.Told
}

// keep returns what of the last compilation may stand. in.Last must be of a collection
// that the same Reader made.
func keep(in Input, r *Result, shared *roster.Shared) *kept {
	last := in.Last
	if last == nil || last.Roster == nil || last.Today != r.Today || (last.told == nil) != (in.Told == nil) ||
		!r.Plan.SharesWith(last.Plan) || !shared.SameRounds(last.Roster.Shared) || !sameNurseries(r.Plan, last.Plan) {
		return nil
	}
	out := &kept{make(map[*plan.Enclosure]*box, len(last.boxes)), last.told, in.Told}
	for i, e := range last.Plan.Enclosures {
		out.of[e] = &last.boxes[i]
	}
	return out
}

// box returns what was worked out for an enclosure before, where it is made from the
// same blocks and lines. A move or a separation says something of two enclosures: all
// of a household are always read anew.
func (k *kept) box(e *plan.Enclosure, log []plan.Event) (*box, bool) {
	if k == nil {
		return nil, false
	}
	b := k.of[e]
	if b == nil || !k.told(b) || !slices.EqualFunc(b.log, log, sameEvent) || slices.ContainsFunc(log, func(x plan.Event) bool { return x.Word.After == schema.AfterEnclosure }) {
		return nil, false
	}
	return b, true
}

// told reports whether the last feeds show of an enclosure what they showed.
func (k *kept) told(b *box) bool {
	if k.was == k.now {
		return true
	}
	for i := range b.sheet.Entries {
		if !k.now.Same(k.was, b.sheet.Entries[i].ID) {
			return false
		}
	}
	return true
}

// sameEvent reports whether two lines are the very same: of one place and one text.
func sameEvent(a, b plan.Event) bool {
	return a.At == b.At && a.Date == b.Date && a.Clock == b.Clock && a.By == b.By && a.Word == b.Word && a.Enclosure == b.Enclosure && a.Group == b.Group &&
		a.Number == b.Number && a.Took == b.Took && a.Note == b.Note && slices.Equal(a.Args, b.Args)
}

// sameNurseries reports whether two collections have the same places for young: how
// many there are matters to the enclosures that have a brood.
func sameNurseries(a, b *plan.Collection) bool {
	places := func(c *plan.Collection) []*plan.Enclosure {
		var out []*plan.Enclosure
		for _, e := range c.Enclosures {
			if e.Housing != nil && e.Housing.Places.Set() {
				out = append(out, e)
			}
		}
		return out
	}
	return slices.Equal(places(a), places(b))
}

// checked reports whether what was checked before may stand: thermostats that several
// enclosures share say something of each, and so do the sheets of the collection's own, of
// which one is mistaken for another.
func (k *kept) checked(c, last *check.Collection) bool {
	return k != nil && last != nil && maps.Equal(c.Plan.Outlets(), last.Plan.Outlets()) && c.Plan.Library.SameSheets(last.Plan.Library)
}

// read reads the lives of a household and makes their entries, or takes them from
// before.
func (r *Result) read(of *life.Household, k *kept, shared *roster.Shared) {
	if len(of.At) == 1 {
		i := of.At[0]
		if old, ok := k.box(r.Plan.Enclosures[i], of.Log); ok {
			r.boxes[i] = *old
			r.boxes[i].stands = true
			return
		}
	}
	lives, found := life.Read(r.Plan, *of, r.Horizon)
	for n, i := range of.At {
		b := &r.boxes[i]
		b.log, b.life, b.lived = of.Log, lives[n], found[n]
		for n := range b.lived {
			b.lived[n].In = r.Plan.Enclosures[i].Box()
		}
		b.sheet = shared.Enclosure(b.life)
	}
}
