package roster

import (
	"slices"
	"sync"

	"vivary/compile/horizon"
	"vivary/compile/identity"
	"vivary/compile/life"
	"vivary/compile/recur"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/schema"
	"vivary/schema/civil"
)

// Store is a culture, a tub or a supply of feeder animals with what is done for it. It is a
// stop of the walk behind all enclosures; no animals of the collection live in it.
type Store struct {
	Plan    *plan.Store
	Life    *life.Enclosure
	Entries []Entry
}

// Chore is care of feeder animals that comes up again and again.
type Chore struct {
	Name  string
	Kind  *schema.CareKind
	Text  string
	Every int // days
	After int // days after the chore that is named so, whose days it then has
	Of    string
	From  civil.Date // 0, or the day before which there is nothing to do
	At    source.Place
}

// Errand is something to do once for feeder animals, or on some days.
type Errand struct {
	Name string // stable: part of the identity
	Kind *schema.CareKind
	On   civil.Date
	Days horizon.Days // in place of On, where it is not nil
	Text string
	High bool
	At   source.Place
}

// Attended are the days of the window on which a round of a store is held and somebody is
// there who does it.
func (s *Shared) Attended(p *plan.Store) horizon.Days {
	b := builder{Shared: s}
	out := s.Horizon.New()
	for _, x := range s.rounds.usual(p.Stop) {
		held, keeper := s.rounds.held[x], b.keeperOf(nil, x)
		for i := range s.Horizon.Days {
			if (held == nil || held.Has(i)) && s.People.there(keeper, i) {
				out.Add(i)
			}
		}
	}
	return out
}

// Store makes the entries of a store.
func (s *Shared) Store(p *plan.Store, l *life.Enclosure, chores []Chore, errands []Errand) (*Store, []finding.Finding) {
	out := &Store{Plan: p, Life: l}
	b := builder{Shared: s, life: l, store: out}
	all := b.rounds.usual(p.Stop)
	add := func(e Entry) {
		e.ID.Enclosure, e.Life, e.Store = identity.Enclosure(p.Stop), l, out
		if e.making == nil {
			e.making = &making{}
		}
		b.inRounds(e, all, len(plan.Wholes(all)) > 1, func(e Entry) { b.add(e) })
	}
	for i := range chores {
		c := &chores[i]
		id := identity.Identity{Enclosure: identity.Enclosure(p.Stop), Care: c.Of}
		if c.Of == "" {
			id.Care = c.Name
		}
		rule := recur.EveryDays(c.Every, id.Phase(c.Every)+civil.Date(c.After))
		if c.From > 0 {
			rule = rule.Between(c.From, recur.MaxDate)
		}
		add(Entry{ID: identity.Identity{Care: c.Name}, Name: c.Name, Kind: c.Kind, Rules: []recur.Rule{rule}, Task: c.Text, Minutes: c.Kind.Minutes, Origin: c.At,
			FromSheet: true, Timing: &plan.Timing{}, making: &making{first: recur.MinDate, last: recur.MaxDate}})
	}
	for i := range errands {
		x := &errands[i]
		t := &life.Task{Name: x.Name, Kind: x.Kind, On: x.On, Times: 1, Text: x.Text, High: x.High, At: x.At}
		add(Entry{ID: identity.Identity{Care: x.Name}, Name: x.Name, Kind: x.Kind, Task: x.Text, Minutes: x.Kind.Minutes, High: x.High, Origin: x.At, Once: t, Given: x.Days, Moved: true})
	}
	out.Entries = ranked(b.entries)
	for i := range out.Entries {
		b.show(&out.Entries[i])
	}
	return out, b.found.All
}

// Keep adds what is done for cultures, tubs and supplies to a roster that was just made: how
// much they have to give follows from its meals.
func (r *Roster) Keep(stores []*Store) {
	r.Stores = stores
	fallen := make([][][]Pick, len(r.Calendars))
	for _, k := range stores {
		own := r.sheet(k.Entries, nil)
		for _, p := range own.rounds {
			r.In[p.round] = append(slices.Clip(r.In[p.round]), p.entries...)
		}
		for _, f := range own.falls {
			fallen[f.calendar] = append(fallen[f.calendar], f.picks)
		}
		r.Unshown = append(r.Unshown, own.unshown...)
	}
	for i := range r.Calendars {
		if len(fallen[i]) == 0 {
			continue
		}
		before, picks := r.Calendars[i].Picks, fallen[i]
		r.Calendars[i].Empty = false
		r.Calendars[i].Picks = sync.OnceValue(func() []Pick { return slices.Concat(append([][]Pick{before()}, picks...)...) })
	}
}
