package rounds

import "slices"

// lengths knows how long the parts of a round's text are. What stands before the rooms of
// sixty tubs that get water every third day is written three times for a year, not 400 times.
type lengths struct {
	like  []int // of each day: the first of those that differ from it in nothing but what is due
	parts []piece
}

// piece is a part of the text that is made of some lines: a task before the rooms, a section,
// or the end.
type piece struct {
	lines []*line
	known []length
}

// length is what a part has on a day.
type length struct {
	on    int
	bytes int
	// gap says whether an empty line was wanted before and after it, begun that something
	// stood before it.
	before, after, begun bool
}

// measure makes room for the lengths of all parts.
func (r *Round) measure() *lengths {
	m := &lengths{like: r.alikeDays(), parts: make([]piece, len(r.tasks)+len(r.sections)+1)}
	last := &m.parts[len(m.parts)-1]
	for i := range r.tasks {
		for k := range r.tasks[i].lines {
			l := &r.tasks[i].lines[k]
			m.parts[i].lines = append(m.parts[i].lines, l)
			if r.kinds[r.tasks[i].kind].Reads != 0 {
				last.lines = append(last.lines, l)
			}
		}
	}
	for i := range r.sections {
		for _, k := range r.sections[i].lines {
			m.parts[len(r.tasks)+i].lines = append(m.parts[len(r.tasks)+i].lines, &r.lines[k])
		}
	}
	return m
}

// alikeDays returns for each day the first one on which gauges should show the same, the same
// enclosures are empty or kept apart, and the same people are there to be rung.
func (r *Round) alikeDays() []int {
	differs := make([]bool, r.Horizon.Days+1)
	cut := func(i int) { differs[min(max(i, 0), r.Horizon.Days)] = true }
	for i := range r.places {
		p := &r.places[i]
		cut(p.Apart)
		for _, s := range p.Heat {
			cut(s.From)
			cut(s.Until)
		}
		for _, s := range p.Damp {
			cut(s.From)
			cut(s.Until)
		}
		for on := 1; p.Empty != nil && on < r.Horizon.Days; on++ {
			differs[on] = differs[on] || p.empty(on) != p.empty(on-1)
		}
	}
	for _, x := range r.ring {
		cut(x.From)
		cut(x.Until)
	}
	out := make([]int, r.Horizon.Days)
	for on := 1; on < len(out); on++ {
		if out[on] = out[on-1]; differs[on] {
			out[on] = on
		}
	}
	return out
}

// once writes a part, or where only lengths are asked for and that is known leaves as much
// room as it takes.
func (d *day) once(part int, write func()) {
	if d.lengths == nil {
		write()
		return
	}
	p, like := &d.lengths.parts[part], d.lengths.like
	now := length{on: d.on, before: d.gap, begun: len(d.dst) > d.start}
	for _, k := range p.known {
		if k.before == now.before && k.begun == now.begun && like[k.on] == like[d.on] && p.same(k.on, d.on) {
			d.dst = slices.Grow(d.dst, k.bytes)[:len(d.dst)+k.bytes]
			d.gap = k.after
			return
		}
	}
	from := len(d.dst)
	write()
	now.bytes, now.after = len(d.dst)-from, d.gap
	p.known = append(p.known, now)
}

// same reports whether the same is due on two days.
func (p *piece) same(a, b int) bool {
	return !slices.ContainsFunc(p.lines, func(l *line) bool { return !slices.Equal(l.on(a), l.on(b)) })
}
