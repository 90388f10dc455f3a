package picture

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"vivary/compile/horizon"
	"vivary/compile/life"
	"vivary/compile/roster"
	"vivary/compile/rounds"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/wording"
)

// marked is a row with a mark on each day on which something is given.
type marked struct {
	name                string
	group               *life.Group
	given, left, killed horizon.Days
}

// meals returns the rows of what is eaten, one for each item of each group, at
// most n: what is more is put together into the last.
func (p *page) meals(n int) []marked {
	var rows []marked
	for i := range p.series {
		s := &p.series[i]
		if !s.Kind.Meal && s.Kind.Needs != schema.NeedFood {
			continue
		}
		if len(s.Menu) == 0 {
			rows = p.mark(rows, s, s.Task+p.of(s.Group), nil)
			continue
		}
		for k := range s.Menu {
			prey := rounds.PreyOf(p.r.Roster, s, &s.Menu[k])
			rows = p.mark(rows, s, prey.String()+p.of(s.Group), s.Menu[k].Days)
		}
	}
	for _, r := range rows {
		p.say("Meals: " + r.name + ", on " + wording.Days(r.given.Count()) + "; left out on " + strconv.Itoa(r.left.Count()) + ".")
	}
	if len(rows) > n {
		rest := &rows[n-1]
		rest.name = fmt.Sprintf("%d other kinds of meal", len(rows)-n+1)
		for _, r := range rows[n:] {
			rest.given.Union(r.given)
			rest.left.Union(r.left)
			rest.killed.Union(r.killed)
		}
		rows = rows[:n]
	}
	return rows
}

// mark adds the days of a series to the row of that name; turns, where there are
// any, are the days on which it is this item's turn.
func (p *page) mark(rows []marked, s *roster.Entry, name string, turns horizon.Days) []marked {
	k := slices.IndexFunc(rows, func(r marked) bool { return r.name == name && r.group == s.Group })
	if k < 0 {
		k = len(rows)
		h := p.r.Horizon
		rows = append(rows, marked{name: name, group: s.Group, given: h.New(), left: h.New(), killed: h.New()})
	}
	add := func(to, days horizon.Days) {
		if days == nil {
			return
		}
		for i := days.Next(p.r.Horizon.Today); i >= 0 && p.r.Horizon.Date(i) < p.until(); i = days.Next(i + 1) {
			if turns == nil || turns.Has(i) {
				to.Add(i)
			}
		}
	}
	r := &rows[k]
	add(r.given, s.Days)
	add(r.left, s.Out(roster.Held, roster.Halved, roster.Nobody, roster.Waits, roster.LeftIn, roster.Skipped, roster.InPlace, roster.TooSoon, roster.NotOn))
	add(r.killed, s.Killed)
	r.left.Subtract(r.given)
	return rows
}

const (
	markPitch = 15.0
	markTall  = 11.0
	markShort = 4.0
)

// draw draws the row with its foot at y: a tall mark for what is given, one in two
// pieces for prey that is killed first, a stub for what is left out.
func (r *marked) draw(p *page, y float64) {
	p.rowName(y-1, r.name)
	r.strokes(p, y)
	p.text(noteLeft, y-1, small, "start", wording.Count(r.given.Count(), "time", "times"))
}

// strokes draws the marks.
func (r *marked) strokes(p *page, y float64) {
	p.draw.line(p.x0, y, p.x1, y, stroke(gridLine, 0.6)...)
	var given, left path
	for i := range p.r.Horizon.Days {
		x := p.x(p.r.Horizon.Date(i)) + 1
		switch {
		case r.killed.Has(i):
			given.to('M', x, y)
			given.to('L', x, y-4)
			given.to('M', x, y-7)
			given.to('L', x, y-markTall)
		case r.given.Has(i):
			given.to('M', x, y)
			given.to('L', x, y-markTall)
		case r.left.Has(i):
			left.to('M', x, y)
			left.to('L', x, y-markShort)
		}
	}
	for _, marks := range []*path{&given, &left} {
		if marks.Len() > 0 {
			p.draw.path(marks.String(), append(stroke(ink, 1.7), `fill="none"`)...)
		}
	}
}

// density is a row of bars: how often something is done in each whole week.
type density struct {
	name  string
	weeks []int
}

// waterings returns the rows of drinking water and of what keeps the enclosure damp.
func (p *page) waterings() []density {
	var rows []density
	add := func(name string, takes func(*roster.Entry) bool) {
		n := int(p.until()-p.r.Today) / 7 * 7
		row := density{weeks: make([]int, n/7)}
		var names []string
		for i := range p.series {
			s := &p.series[i]
			if !takes(s) || s.Once != nil {
				continue
			}
			if !slices.Contains(names, s.Task) {
				names = append(names, s.Task)
			}
			for k := s.Days.Next(p.r.Horizon.Today); k >= 0 && k < p.r.Horizon.Today+n; k = s.Days.Next(k + 1) {
				row.weeks[(k-p.r.Horizon.Today)/7]++
			}
		}
		if names == nil {
			p.say(name + ": none planned.")
			return
		}
		row.name = strings.Join(names, ", ")
		p.say(row.name + ": " + row.often() + ".")
		rows = append(rows, row)
	}
	add("Drinking water", func(s *roster.Entry) bool { return s.Kind.Water })
	add("Misting", func(s *roster.Entry) bool { return s.Kind.Needs == schema.NeedMoisture })
	return rows
}

// often says how often in a week.
func (d *density) often() string {
	return wording.Span(float64(slices.Min(d.weeks)), float64(slices.Max(d.weeks))) + " a week"
}

const (
	barPitch = 21.0
	barTall  = 17.0
)

func (d *density) draw(p *page, y float64) {
	p.rowName(y-2, d.name)
	d.weekly(p, y)
	p.text(noteLeft, y-2, small, "start", wording.Fit(d.often(), small, right-noteLeft, false))
}

// weekly draws the bars of the weeks shown.
func (d *density) weekly(p *page, y float64) {
	p.draw.line(p.x0, y, p.x1, y, stroke(gridLine, 0.6)...)
	most := max(slices.Max(d.weeks), 7)
	for k, n := range d.weeks {
		from := p.r.Today
		if !p.shows(from+7*civil.Date(k), from+7*civil.Date(k+1)) {
			continue
		}
		x0, x1 := p.x(from+7*civil.Date(k)), p.x(from+7*civil.Date(k+1))
		h := barTall * float64(n) / float64(most)
		if n > 0 {
			p.draw.rect(x0+0.5, y-h, max(x1-x0-1, 0.5), h, `fill="`+cool+`"`)
		}
	}
}
