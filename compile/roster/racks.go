package roster

import (
	"cmp"
	"slices"

	"vivary/compile/identity"
	"vivary/compile/life"
	"vivary/compile/recur"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/civil"
)

// Rack is a rack with what is done once for all that stand in it: its thermometer is read,
// its heaters are tested.
type Rack struct {
	Plan    *plan.Rack
	Life    *life.Enclosure // the rack as a stop of the walk; nobody lives in it
	Entries []Entry
	first   int // the place of its first enclosure among the lives
}

// Rack makes the entries of a rack: its thermometer is read and its heaters are tested as
// often as the sheets ask for it of any who live there. What an enclosure's own plan says of it is the
// enclosure's. l is the rack's own life, and of are the places of its enclosures among the
// lives, in walking order.
func (s *Shared) Rack(k *plan.Rack, l *life.Enclosure, lives []*life.Enclosure, of []int) (*Rack, []finding.Finding) {
	out := &Rack{Plan: k, Life: l, first: -1}
	if len(of) == 0 {
		return out, nil
	}
	out.first = of[0]
	b := builder{Shared: s, life: l, rack: out}
	for _, kind := range schema.CareKinds {
		if !k.Does(kind) {
			continue
		}
		var wants []want
		seen := map[want]bool{}
		for _, i := range of {
			box := builder{Shared: s, life: lives[i]}
			box.sheetCares(func(c *plan.Care, from, until civil.Date) {
				w := want{c, from, until}
				if c.What() == kind && !seen[w] && k.DoesFor(lives[i].Plan, kind) {
					seen[w] = true
					wants = append(wants, w)
				}
			})
		}
		b.shared(kind, wants)
	}
	out.Entries = b.entries
	for i := range out.Entries {
		b.show(&out.Entries[i])
	}
	return out, b.found.All
}

// want is care that a sheet asks for, from a day until another.
type want struct {
	care        *plan.Care
	from, until civil.Date
}

// often is about how many days apart it is asked for.
func (w want) often() int {
	if w.care.Every.Set() && len(w.care.On) == 0 {
		return interval(w.care.Every.V)
	}
	return 0 // days of its own, which no other falls on
}

// serves reports whether one such care is another too: as often, and for ever.
func (w want) serves(o want) bool {
	return w.often() > 0 && w.often() <= o.often() && w.from == recur.MinDate && w.until == recur.MaxDate
}

// shared adds what is done once for all in a rack, on all days that are asked for.
func (b *builder) shared(kind *schema.CareKind, wants []want) {
	var asked []want
	for i, w := range wants {
		if !slices.ContainsFunc(wants[:i], func(o want) bool { return o.serves(w) }) && !slices.ContainsFunc(wants[i+1:], func(o want) bool { return o.serves(w) && !w.serves(o) }) {
			asked = append(asked, w)
		}
	}
	if len(asked) == 0 {
		return
	}
	k := b.rack.Plan
	id := identity.Identity{Enclosure: identity.Enclosure(k.Stop), Care: kind.OfRack}
	last, has := b.life.Done[id.Care]
	var rules []recur.Rule
	for _, w := range asked {
		if t, ok := b.when(&w.care.Timing, w.care.At, id, last, has); ok {
			rules = append(rules, between(t.rules, w.from, w.until)...)
		}
	}
	if len(rules) == 0 {
		return
	}
	first := asked[0].care
	origin := k.Thermometer.At
	if kind.Needs.Heated {
		origin = k.Heaters[0].At
	}
	e := Entry{ID: id, Life: b.life, Rack: b.rack, Name: kind.OfRack, Kind: kind, Rules: rules, Task: kind.Phrase,
		Minutes: b.minutes(nil, kind), Origin: origin, Cited: plan.Cited{Source: first.Source, Quality: first.Quality, Seen: first.Seen}, FromSheet: true, Timing: &first.Timing, making: &making{first: recur.MinDate, last: recur.MaxDate}}
	all := b.rounds.usual(k.Stop)
	b.inRounds(e, all, len(plan.Wholes(all)) > 1, func(e Entry) { b.add(e) })
}

// RackOf returns the rack in which an enclosure stands, or nil.
func (r *Roster) RackOf(e *plan.Enclosure) *Rack {
	if !e.Rack.Set() {
		return nil
	}
	i, ok := slices.BinarySearchFunc(r.Racks, e.Rack.V, func(k *Rack, name string) int { return cmp.Compare(k.Plan.Name.V, name) })
	if !ok {
		return nil
	}
	return r.Racks[i]
}

// boxes are the enclosures that an entry is for.
func (e *Entry) boxes() []*plan.Enclosure {
	if e.Rack != nil {
		return e.Rack.Plan.Enclosures
	}
	return []*plan.Enclosure{e.Plan()}
}
