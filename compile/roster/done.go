package roster

import (
	"cmp"
	"slices"

	"vivary/compile/life"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/quantity"
)

// Ticks are what the log says was done on a day.
type Ticks struct {
	day    int
	events map[string][]*plan.Event // of that day, by enclosure or rack
	open   map[*Entry]bool          // of a care in several rounds of that day, those that are still to be done
}

// Ticks reads which of today's entries the log says were done.
func (r *Roster) Ticks() *Ticks { return r.TicksOn(r.Horizon.Today) }

// TicksOn reads which entries of a day of the window the log says were done.
func (r *Roster) TicksOn(day int) *Ticks {
	d := &Ticks{day, map[string][]*plan.Event{}, map[*Entry]bool{}}
	log := r.Plan.Log
	for i := len(log) - 1; i >= 0; i-- {
		if e := &log[i]; e.Date == r.Horizon.Date(day) && e.Enclosure.Set() {
			d.events[e.Enclosure.V] = append(d.events[e.Enclosure.V], e)
		}
	}
	if len(d.events) > 0 {
		d.severalTimes(r)
	}
	return d
}

// Has reports whether the log says that an entry was done on that day. A question is answered
// by the line that it asks for, and stands no more then.
func (d *Ticks) Has(e *Entry, day int) bool {
	if e.Ask != nil || len(d.open) > 0 && d.open[e] {
		return false
	}
	return e.Logged == day || len(d.events) > 0 && slices.ContainsFunc(d.events[e.Plan().Name.V], e.DoneBy)
}

// Said returns the words of the log that say of an entry that it was done, as they stand
// behind the enclosure: "done water", "adults fed". It returns "" for a question, which only
// the line that it asks for answers.
func (e *Entry) Said() string {
	group := ""
	if e.Group != nil {
		group = e.Group.Animals.Name.V + " "
	}
	switch {
	case e.Ask != nil:
		return ""
	case e.isMeal(), e.Once != nil && e.Once.Meal:
		return group + schema.WordFed.Name
	case e.Group == nil && e.Once == nil:
		return schema.WordDone.Name + " " + e.Name
	}
	return group + schema.WordDone.Name + " " + e.Kind.Name
}

// DoneBy reports whether a line says that an entry was done.
func (e *Entry) DoneBy(l *plan.Event) bool {
	if l.Group.V != "" && e.Group != nil && l.Group.V != e.Group.Animals.Name.V {
		return false
	}
	switch {
	case l.Word == schema.WordDone && len(l.Args) > 0:
		care := l.Args[0].V
		return care == e.Name || care == e.ID.Care || care == e.Kind.Name || care == "feeding" && e.Kind == schema.KindFeed
	case l.Word.Feeds:
		return e.isMeal() || e.Once != nil && e.Once.Meal
	}
	if l.Word == schema.WordMeasured {
		return e.Kind.Reads != 0 && slices.ContainsFunc(l.Args, func(a plan.Written[string]) bool {
			_, err := quantity.Parse(a.V, e.Kind.Reads)
			return err == nil
		})
	}
	return slices.Contains(l.Word.Does, e.Kind)
}

// severalTimes finds, of care that is in several rounds of today, what is still to be done:
// a line with a time is of the round that is nearest, one without of the first that is left.
func (d *Ticks) severalTimes(r *Roster) {
	type care struct{ enclosure, name, group string }
	of := map[care][]*Entry{}
	var box *life.Enclosure
	said := false // whether a line is about it
	for e := range r.All() {
		if e.Life != box {
			box, said = e.Life, d.events[e.Plan().Name.V] != nil
		}
		if said && e.Days.Has(d.day) && e.Once == nil {
			k := care{enclosure: e.Plan().Name.V, name: e.Name}
			if e.Group != nil {
				k.group = e.Group.Animals.Name.V
			}
			of[k] = append(of[k], e)
		}
	}
	for k, all := range of {
		if len(all) < 2 {
			continue
		}
		slices.SortStableFunc(all, func(a, b *Entry) int { return cmp.Compare(a.At(), b.At()) })
		for _, e := range all {
			d.open[e] = true
		}
		lines := slices.Clone(d.events[k.enclosure])
		slices.Reverse(lines)                                     // as they were written
		slices.SortStableFunc(lines, func(a, b *plan.Event) int { // those with a time first
			return cmp.Compare(later(a), later(b))
		})
		for _, l := range lines {
			if all[0].DoneBy(l) {
				d.close(all, l)
			}
		}
	}
}

// close takes the round of which a line is out of those that are still to be done.
func (d *Ticks) close(all []*Entry, l *plan.Event) {
	var best *Entry
	for _, e := range all {
		if !d.open[e] {
			continue
		}
		if best == nil || l.Clock.Set() && minutesTo(e, l) < minutesTo(best, l) {
			best = e
		}
	}
	delete(d.open, best)
}

// SameTurn reports whether two lines of one day, about one care of one enclosure, are of the
// same round: of care that is in several rounds of that day a line that says that it was done
// is of the round that is nearest to its time. What was skipped is so for the whole day.
func (r *Roster) SameTurn(a, b *plan.Event) bool {
	day, within := r.Horizon.Index(a.Date)
	var turns []*Entry
	for e := range r.All() {
		if within && e.Plan().Name.V == a.Enclosure.V && e.Days.Has(day) && e.Once == nil && e.DoneBy(a) {
			turns = append(turns, e)
		}
	}
	nearest := func(l *plan.Event) *Entry {
		return slices.MinFunc(turns, func(x, y *Entry) int { return cmp.Or(minutesTo(x, l)-minutesTo(y, l), int(x.At()-y.At())) })
	}
	switch {
	case len(turns) == 0:
		return true
	case !a.Clock.Set() || !b.Clock.Set():
		return !slices.ContainsFunc(turns, func(e *Entry) bool { return e.At() != turns[0].At() })
	}
	return nearest(a).At() == nearest(b).At()
}

// later puts a line without a time behind those that have one.
func later(l *plan.Event) int {
	if l.Clock.Set() {
		return 0
	}
	return 1
}

// minutesTo is how many minutes lie between a round and the time of a line.
func minutesTo(e *Entry, l *plan.Event) int {
	n := int(e.At()) - int(l.Clock.V)
	return max(n, -n)
}
