package register

import (
	"cmp"
	"slices"
	"strconv"

	"vivary/compile"
	"vivary/compile/life"
	"vivary/plan"
	"vivary/plan/source"
	"vivary/schema/civil"
	"vivary/schema/quantity"
)

// book is all that is known of how many there were, whatever the day.
type book struct {
	r      *compile.Result
	groups []*group
	at     map[*life.Group]int
	rows   []*Row
	steps  []step
	line   map[source.Place]int // of the log, from 1, by where it stands
}

// group is a group of animals, with what it is while the turns are gone through.
type group struct {
	*life.Group
	in    *life.Enclosure
	base  quantity.Count // before the first turn
	now   quantity.Count
	loose quantity.Count // who escaped
	row   *Row           // of those who are in it, or were last
	rows  int            // how many rows began here
	had   []held
}

// held is the row of which a group is from a day on.
type held struct {
	from civil.Date
	row  *Row
}

// step is a turn with the sexes that it is of.
type step struct {
	turn  *life.Turn
	group int
	row   *Row
	count quantity.Count // how many more, or fewer
	// fixed is what only becomes known, or is known no more: of those that stay.
	fixed quantity.Count
	on    bool // the row goes on in this group: all of them came, to where nobody was
}

// event is the line of the log that stands at a place, or nil.
func (b *book) event(at source.Place) *plan.Event {
	if i := b.line[at]; i > 0 {
		return &b.r.Plan.Log[i-1]
	}
	return nil
}

// called is the name of a group by enclosure.
func (b *book) called(g *life.Group) string {
	i, ok := b.at[g]
	if !ok {
		return "" // more groups than are followed
	}
	return b.groups[i].in.Plan.Name.V + "/" + g.Animals.Name.V
}

func read(r *compile.Result) *book {
	b := &book{r: r, at: map[*life.Group]int{}, line: make(map[source.Place]int, len(r.Plan.Log))}
	for i := range r.Plan.Log {
		b.line[r.Plan.Log[i].At] = i + 1
	}
	var turns []turned
	for _, l := range r.Lives {
		for _, g := range l.Groups {
			i := len(b.groups)
			b.at[g] = i
			x := &group{Group: g, in: l}
			if n := g.Numbers[0].Count; n > 0 {
				x.base = quantity.Count{Unsexed: n}
				if c := g.Animals.Count.V; c.Total() == n {
					x.base = c
				}
				x.now = x.base
			}
			b.groups = append(b.groups, x)
			for k := range g.Turns {
				turns = append(turns, turned{i, b.line[g.Turns[k].At], &g.Turns[k]})
			}
		}
	}
	for i, g := range b.groups {
		if g.base.Total() > 0 {
			b.open(i, nil, 0)
		}
	}
	slices.SortStableFunc(turns, turned.after)
	b.steps = make([]step, 0, len(turns))
	for _, t := range turns {
		b.turn(t.group, t.turn)
	}
	return b
}

// turned is a turn and the line of the log that tells of it; 0 for what the plan tells.
type turned struct {
	group, line int
	turn        *life.Turn
}

// after orders turns by the log. Of one line it is known first who they are, then they come
// to where they go, and then they are gone from where they were.
func (t turned) after(o turned) int {
	of := func(w life.Why) int {
		switch {
		case w == life.MovedIn:
			return 1
		case w.In() || w == life.Recounted:
			return 0
		}
		return 2
	}
	return cmp.Or(t.line-o.line, of(t.turn.Why)-of(o.turn.Why))
}

// open begins a row in a group.
func (b *book) open(i int, from *Row, on civil.Date) {
	g := b.groups[i]
	a := g.Animals
	row := &Row{ID: g.in.Plan.Name.V + "/" + a.Name.V, Group: g.Group, Place: g.in.Plan, At: a.At, parted: from, opened: i}
	if g.rows++; g.rows > 1 {
		row.ID += "/" + strconv.Itoa(g.rows)
	} else { // the block is about those who were here first
		row.Brood, row.Born, row.Came, row.Paper, row.Note, row.Origin = a.Brood.V, a.Born.V, a.Arrived.V, a.Paper.V, a.Note.V, code(a.Origin.V)
		row.OnPaper, row.Checked = a.OnPaper.V, a.Checked.V
	}
	if on == 0 && g.rows == 1 {
		row.base, row.Count = g.base, g.base
	}
	b.rows = append(b.rows, row)
	b.hold(i, row, on)
}

func (b *book) hold(i int, row *Row, on civil.Date) {
	g := b.groups[i]
	g.row = row
	g.had = append(g.had, held{on, row})
}

// rowOn is the row of a group on a day; nil where nobody was ever in it.
func (b *book) rowOn(i int, on civil.Date) (row *Row) {
	for k, h := range b.groups[i].had {
		if k == 0 || h.from <= on {
			row = h.row
		}
	}
	return row
}

// turn goes through one change.
func (b *book) turn(i int, t *life.Turn) {
	g := b.groups[i]
	s := step{turn: t, group: i}
	var said quantity.Count
	if e := b.event(t.At); e != nil {
		said = e.Sexes
	}
	n := max(t.N, -t.N)
	switch from, known := b.at[t.With]; {
	case t.Why == life.Recounted:
		s.count, s.fixed = recounted(g.now, t.N, said)
	case t.N < 0:
		out, fixed := taken(g.now, n, said)
		s.count, s.fixed = minus(out), fixed
		if t.Why == life.Escaped {
			g.loose = plus(g.loose, out)
		}
	case t.Why == life.Found:
		back, _ := taken(g.loose, n, said)
		s.count, g.loose = back, plus(g.loose, minus(back))
	case t.Why == life.MovedIn && known:
		s.count, _ = taken(b.groups[from].now, n, said)
		if g.now.Total() == 0 && b.groups[from].now.Total() == n && b.groups[from].row != nil {
			s.on = true
			b.hold(i, b.groups[from].row, t.On)
		} else if g.now.Total() == 0 {
			b.open(i, b.groups[from].row, t.On)
		}
	default:
		s.count = quantity.Count{Unsexed: n}
		if c := g.Animals.Count.V; said.Total() == n {
			s.count = said
		} else if !g.Logged && c.Total() == n && g.rows == 0 {
			s.count = c
		}
	}
	if g.row == nil || g.now.Total() == 0 && s.count.Total() > 0 && (t.Why == life.Arrived || t.Why == life.Born) {
		b.open(i, nil, t.On)
	}
	g.now = plus(plus(g.now, s.count), s.fixed)
	s.row = g.row
	b.steps = append(b.steps, s)
}
