package rounds

import (
	"slices"

	"vivary/compile/roster"
	"vivary/plan"
	"vivary/schema"
)

// Ticked prepares a round as New does, of which some of today's entries are done: they stand
// in no line of today, and Sheet names them apart. It is for lists that are printed now:
// a calendar is read hours later, and would change with every line of the log. Such a list
// has room: it is written as it is walked, all that is due at an enclosure in one line.
func Ticked(s *roster.Roster, r *plan.Round, picks []roster.Pick, done func(*roster.Entry) bool) *Round {
	return prepare(s, r, picks, done)
}

// tick takes what is done today out of today's lines.
func (r *Round) tick() {
	type at struct {
		key
		place int32
	}
	today, done := r.Horizon.Today, map[at]bool{}
	for i := range r.items {
		if it := &r.items[i]; it.Done && it.Days.Has(today) {
			done[at{key{r.said[i], it.Rank, it.High, it.Leaving, today < r.places[it.Place].Apart}, int32(it.Place)}] = true
		}
	}
	if len(done) == 0 {
		return
	}
	for i := range r.tasks {
		t := &r.tasks[i]
		ticked := Tick{Task: t.first}
		for k := range t.lines {
			l := &t.lines[k]
			l.drop(today, func(c *cell) bool {
				if !done[at{t.key, c.place}] {
					return false
				}
				ticked.places = append(ticked.places, c.place)
				ticked.Stops = append(ticked.Stops, r.stop(c, today))
				return true
			})
		}
		if len(ticked.places) > 0 {
			ticked.Kind = r.kinds[t.kind]
			r.ticked = append(r.ticked, ticked)
		}
	}
	r.untick()
}

// untick takes out of today's cautions the places at which nothing is left that asks for them.
func (r *Round) untick() {
	today := r.Horizon.Today
	for i := range r.cautions {
		c := &r.cautions[i]
		left := map[int32]bool{}
		for k := range r.items {
			it := &r.items[k]
			if !it.Done && it.Days.Has(today) && slices.ContainsFunc(it.Cautions, func(x *schema.Caution) bool { return Before(x) == c.text }) {
				left[int32(it.Place)] = true
			}
		}
		c.line.drop(today, func(x *cell) bool { return !left[x.place] })
	}
}

// drop takes cells of a line off a day.
func (l *line) drop(day int, gone func(*cell) bool) {
	due := l.on(day)
	for i := range l.cells {
		if at, bit := i>>6, uint64(1)<<(i&63); due[at]&bit != 0 && gone(&l.cells[i]) {
			due[at] &^= bit
		}
	}
}

// Tick is a task that is done today, with where.
type Tick struct {
	Kind  *schema.CareKind
	Task  string
	Stops []Stop

	places []int32
}

// ticks are the lines of what is done on a day: "Fresh water: Tub 1 to 3".
func (r *Round) ticks(on int) (lines []string) {
	if on != r.Horizon.Today {
		return nil
	}
	for i := range r.ticked {
		t := &r.ticked[i]
		lines = append(lines, t.Task+": "+string(r.list(nil, t.places)))
	}
	return lines
}

// Open reports whether anything is left to be done on a day.
func (r *Round) Open(on int) bool {
	return slices.ContainsFunc(r.tasks, func(t task) bool { return t.count(on) > 0 })
}

func (r *Round) stop(c *cell, on int) Stop {
	s := Stop{Place: &r.places[c.place], Shown: r.names[c.place].text, Item: &r.items[c.item]}
	if x := r.show(s.Item.Kind, c.place, on); x != nil {
		s.Should, s.Harm = x.Text, x.Harm
	}
	return s
}
