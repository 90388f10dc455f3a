package picture

import (
	"fmt"

	"vivary/schema/civil"
	"vivary/schema/wording"
)

// stripe is a stretch of days with a label.
type stripe struct {
	from, until civil.Date
	label       string
	fills       []string // drawn over each other
	ticks       []civil.Date
}

const (
	lanePitch  = 17.0
	laneHeight = 13.0
)

// lane is one row of stripes that do not touch each other, labels included.
type lane []laid

// laid is a stripe with its place.
type laid struct {
	stripe
	x0, x1, textX float64
	anchor, text  string
	boxed         bool    // the label lies on the stripe
	a, b          float64 // what it takes of the lane, label included
}

// lay puts stripes into as few lanes as it can, at most n, and returns how many
// found no place.
func (p *page) lay(all []stripe, n int) (lanes []lane, left int) {
	for _, s := range all {
		it := p.label(s)
		placed := false
		for i := range lanes {
			if placed = lanes[i].free(it); placed {
				lanes[i] = append(lanes[i], it)
				break
			}
		}
		switch {
		case placed:
		case len(lanes) < n:
			lanes = append(lanes, lane{it})
		default:
			left++
		}
	}
	return lanes, left
}

func (l lane) free(it laid) bool {
	for _, o := range l {
		if it.a < o.b+6 && o.a < it.b+6 {
			return false
		}
	}
	return true
}

// label finds the place of a stripe's label: on it, else behind it, else before
// it; where it fits nowhere it is shortened for the widest of these.
func (p *page) label(s stripe) laid {
	it := laid{stripe: s, x0: p.x(s.from), x1: p.x(s.until), text: wording.Printed(s.label)}
	it.x1 = max(it.x1, it.x0+2.5)
	if it.x1 > p.x1 {
		it.x0, it.x1 = p.x1-2.5, p.x1
	}
	const pad = 5
	w := wording.Width(it.text, small, false) + 2*pad
	inside, behind, before := it.x1-it.x0, p.x1-it.x1, it.x0-p.x0
	if len(s.ticks) > 0 {
		inside = 0 // the label would hide them
	}
	most := max(inside, behind, before)
	if w > most {
		it.text = wording.Fit(it.text, small, most-2*pad, false)
		w = wording.Width(it.text, small, false) + 2*pad
	}
	it.a, it.b = it.x0, it.x1
	switch {
	case w <= inside:
		it.textX, it.anchor, it.boxed = (it.x0+it.x1)/2, "middle", true
	case w <= behind:
		it.textX, it.anchor, it.b = it.x1+pad, "start", it.x1+w
	default:
		it.textX, it.anchor, it.a = it.x0-pad, "end", it.x0-w
	}
	return it
}

// lanes draws lanes from y down, named at the left of the first.
func (p *page) lanes(y float64, name string, all []lane, left int) {
	if left > 0 {
		name += fmt.Sprintf(" (%d more not drawn)", left)
	}
	p.rowName(y+10, name)
	for _, l := range all {
		for _, s := range l {
			for _, f := range s.fills {
				p.draw.rect(s.x0, y, s.x1-s.x0, laneHeight, f)
			}
			for _, d := range s.ticks {
				p.draw.rect(p.x(d), y, max(p.x(d+1)-p.x(d)-0.4, 1), laneHeight, `fill="`+ink+`"`)
			}
			p.draw.rect(s.x0, y, s.x1-s.x0, laneHeight, append([]string{`fill="none"`}, stroke(frameLine, 0.9)...)...)
			if s.boxed && len(s.fills) > 1 {
				w := wording.Width(s.text, small, false)
				p.draw.rect(s.textX-w/2-3, y+0.8, w+6, laneHeight-1.6, `fill="white"`)
			}
			p.text(s.textX, y+10.2, small, s.anchor, s.text)
		}
		y += lanePitch
	}
}

func (p *page) rowName(y float64, name string) {
	p.text(left, y, small, "start", wording.Fit(name, small, rowWidth, false))
}
