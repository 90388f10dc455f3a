package register

import (
	"vivary/compile/life"
	"vivary/plan"
	"vivary/schema/civil"
	"vivary/schema/quantity"
)

// Balance is what came and went from the beginning of a day to the end of another.
type Balance struct {
	From, To civil.Date
	Lines    []*Line // of each enclosure and species of which there were or came any, in the order of the plan
	All      Line
}

// Line is a line of a balance. Each column is by sexes and none is negative but Fixed:
//
//	Were + Born + Came + In + Found - Died - Left - Lost - Out + Fixed = Are
type Line struct {
	Enclosure *plan.Enclosure // nil for all of them
	Species   string

	Were, Born, Came, In, Found quantity.Count
	Died, Left, Lost, Out       quantity.Count
	// Fixed is what became known of how many they are and of which sexes, or is known no more
	// since a line did not say which of them went.
	Fixed quantity.Count
	Are   quantity.Count
}

// Moved is how many more or fewer they are by moves from one enclosure to another.
func (l *Line) Moved() quantity.Count { return plus(l.In, minus(l.Out)) }

// Missing is how many are lost and were not found.
func (l *Line) Missing() quantity.Count { return plus(l.Lost, minus(l.Found)) }

// Balance is the balance from the beginning of one day to the end of another.
func (r *Register) Balance(from, to civil.Date) *Balance {
	out := &Balance{From: from, To: to}
	type key struct {
		in      *life.Enclosure
		species string
	}
	by := map[key]*Line{}
	of := make([]*Line, len(r.book.groups))
	for i, g := range r.book.groups {
		k := key{g.in, species(g.Group, g.in.Plan)}
		if by[k] == nil {
			by[k] = &Line{Enclosure: g.in.Plan, Species: k.species}
			out.Lines = append(out.Lines, by[k])
		}
		of[i] = by[k]
		of[i].Were = plus(of[i].Were, g.base)
	}
	for i := range r.book.steps {
		s := &r.book.steps[i]
		l := of[s.group]
		switch {
		case s.turn.On > to:
		case s.turn.On < from:
			l.Were = plus(plus(l.Were, s.count), s.fixed)
		case r.book.within(of, s): // within the enclosure, and back to none
			l.Fixed = plus(l.Fixed, plus(s.count, s.fixed))
		default:
			l.step(s)
		}
	}
	lines := out.Lines
	out.Lines = nil
	for _, l := range lines {
		l.Are = plus(plus(plus(plus(l.Were, l.Born), plus(l.Came, l.Moved())), minus(plus(l.Died, l.Left))), plus(minus(l.Missing()), l.Fixed))
		if *l == (Line{Enclosure: l.Enclosure, Species: l.Species}) {
			continue
		}
		out.Lines = append(out.Lines, l)
		a := &out.All
		for _, x := range [...]struct{ to, more *quantity.Count }{{&a.Were, &l.Were}, {&a.Born, &l.Born}, {&a.Came, &l.Came}, {&a.In, &l.In}, {&a.Found, &l.Found},
			{&a.Died, &l.Died}, {&a.Left, &l.Left}, {&a.Lost, &l.Lost}, {&a.Out, &l.Out}, {&a.Fixed, &l.Fixed}, {&a.Are, &l.Are}} {
			*x.to = plus(*x.to, *x.more)
		}
	}
	return out
}

// within reports whether a step is a move between two groups of one line.
func (b *book) within(of []*Line, s *step) bool {
	i, known := b.at[s.turn.With]
	return known && of[i] == of[s.group]
}

// step adds a step of the days of the balance.
func (l *Line) step(s *step) {
	n := absolute(s.count)
	add := func(to *quantity.Count) { *to = plus(*to, n) }
	switch s.turn.Why {
	case life.Arrived:
		add(&l.Came)
	case life.Born:
		add(&l.Born)
	case life.Found:
		add(&l.Found)
	case life.MovedIn:
		add(&l.In)
	case life.MovedOut:
		add(&l.Out)
	case life.Died:
		add(&l.Died)
	case life.Left:
		add(&l.Left)
	case life.Escaped, life.Gone:
		add(&l.Lost)
	default:
		n = s.count
		add(&l.Fixed)
	}
	l.Fixed = plus(l.Fixed, s.fixed)
}
