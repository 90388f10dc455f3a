package rounds

import (
	"cmp"

	"vivary/compile/horizon"
)

// section is a stretch of the walk that is worked through before the next: a room,
// or what is kept apart and comes last.
type section struct {
	title  string
	label  string // the title as it stands within a line
	places []int32
	lines  []int // by rank, of what has no line before the rooms
	byTask bool
	alone  bool // its title is that of the only enclosure, which no line has to name
}

// elsewhere is the title of the places that are in no room, where others are.
const elsewhere = "Elsewhere"

// rooms makes a section of each room, and a last one of what is kept apart.
func (r *Round) rooms() {
	at := map[string]int{}
	r.room = make([]int, len(r.places))
	apart := section{}
	for i := range r.places {
		p := &r.places[i]
		k, ok := at[p.Room]
		if !ok {
			k = len(r.sections)
			at[p.Room] = k
			r.sections = append(r.sections, section{title: cmp.Or(p.Room, elsewhere)})
		}
		r.room[i] = k
		r.sections[k].places = append(r.sections[k].places, int32(i))
		if p.Apart > 0 {
			apart.places = append(apart.places, int32(i))
		}
	}
	if len(r.sections) == 1 {
		r.sections[0].title = ""
	}
	for i := range r.sections {
		r.sections[i].label = brief(r.sections[i].title)
	}
	r.sections = append(r.sections, apart)
}

// apart is the section of what is kept apart.
func (r *Round) apart() int { return len(r.sections) - 1 }

// part is an item on some of its days. What is kept apart for a time is two parts,
// the first of which comes last in the round.
type part struct {
	item  int32
	apart bool
	days  horizon.Days
}

// split takes the items apart, and leaves out what never comes up.
func (r *Round) split() []part {
	out := make([]part, 0, len(r.items)+len(r.items)/8)
	add := func(i int, apart bool, days horizon.Days) {
		if days.Next(0) >= 0 {
			out = append(out, part{int32(i), apart, days})
		}
	}
	for i := range r.items {
		it := &r.items[i]
		r.Days.Union(it.Days)
		n := r.places[it.Place].Apart
		if n <= 0 {
			add(i, false, it.Days)
			continue
		}
		before, after := r.Horizon.New(), it.Days.Clone()
		before.AddRun(0, n, r.Horizon.Days)
		after.Subtract(before)
		for k := range before {
			before[k] &= it.Days[k]
		}
		add(i, false, after)
		add(i, true, before)
	}
	return out
}
