package picture

import (
	"fmt"
	"strconv"

	"vivary/schema"
	"vivary/schema/quantity"
	"vivary/schema/wording"
)

// swatch is one line of the key at the left of a chart.
type swatch struct {
	words  string
	styles [][]string                  // drawn over each other
	line   []string                    // or drawn as a line
	silent bool                        // it is said to those who do not see elsewhere, in full
	shape  func(p *page, x, y float64) // or as a mark
}

// frame draws the ticks and the outline of a chart from x0 to x1.
func (p *page) frame(s scale, x0, x1 float64) {
	s.ticks(func(v, y float64) {
		p.draw.line(x0-4, y, x1, y, `stroke="`+gridLine+`"`, `stroke-width="0.6"`)
		p.text(x0-7, y+4, small, "end", strconv.FormatFloat(v, 'f', -1, 64))
	})
	p.draw.rect(x0, s.y, x1-x0, s.height, `fill="none"`, `stroke="`+frameLine+`"`, `stroke-width="0.8"`)
}

// key writes a heading at the left of a chart, and below it what is drawn how,
// as far as the height allows.
func (p *page) key(y, height float64, heading string, items []swatch) {
	p.text(left, y+11, size, "start", wording.Fit(heading, size, keyWidth, true), bold)
	y += 29
	for _, it := range items {
		if height -= 17; height < 15 {
			return
		}
		for _, style := range it.styles {
			p.draw.rect(left, y-9, 18, 10, style...)
		}
		if it.line != nil {
			p.draw.line(left, y-4, left+18, y-4, it.line...)
		}
		if it.shape != nil {
			it.shape(p, left+9, y-4)
		}
		p.text(left+24, y, small, "start", wording.Fit(it.words, small, keyWidth-24, false))
		y += 17
	}
}

// limits draws what the species bears: where it is harmed, and where its keeper is
// asked for a reason. Either may be nil. It returns what they say.
func (p *page) limits(s scale, hard, soft *quantity.Range) (notes []note) {
	line := func(v float64, words string, style ...string) {
		y := s.at(v)
		p.draw.line(p.x0, y, p.x1, y, style...)
		notes = append(notes, note{y, words})
	}
	beyond := func(r *quantity.Range, style ...string) {
		if y := s.at(r.High); y > s.y {
			p.draw.rect(p.x0, s.y, p.x1-p.x0, y-s.y, style...)
		}
		if y := s.at(r.Low); y < s.y+s.height {
			p.draw.rect(p.x0, y, p.x1-p.x0, s.y+s.height-y, style...)
		}
	}
	low := func(r *quantity.Range) string { return quantity.FormatAtLeast(r.Low, s.unit) }
	high := func(r *quantity.Range) string { return quantity.FormatAtMost(r.High, s.unit) }
	if hard != nil {
		beyond(hard, fill("harm"), `fill-opacity="0.45"`)
		line(hard.High, "harmful above "+high(hard), hardLine...)
		line(hard.Low, "harmful below "+low(hard), hardLine...)
	}
	if soft != nil {
		line(soft.High, "unusual above "+high(soft), softLine...)
		line(soft.Low, "unusual below "+low(soft), softLine...)
	}
	return notes
}

// chart is temperature or humidity over the days shown, before it is drawn.
type chart struct {
	heading    string
	unit       quantity.Unit
	low, high  float64         // of the scale
	hard, soft *quantity.Range // what the species bears; nil where nobody says
	room       *quantity.Range // drawn behind all else, nil for not
	bands      []band
	measured   []dots
	items      []swatch // what is drawn how
}

// band is a course in its styles, drawn over each other.
type band struct {
	course
	styles [][]string
}

// plot draws a chart without its key, and returns what stands at its lines.
func (p *page) plot(c *chart, y, height float64) []note {
	s := newScale(c.low, c.high, y, height, c.unit)
	if c.room != nil {
		p.draw.rect(p.x0, s.at(c.room.High), p.x1-p.x0, s.at(c.room.Low)-s.at(c.room.High), roomStyles[0]...)
	}
	p.frame(s, p.x0, p.x1)
	for _, b := range c.bands {
		for _, style := range b.styles {
			p.band(b.course, s.at, style...)
		}
	}
	notes := p.limits(s, c.hard, c.soft)
	p.readings(c.measured, s)
	return notes
}

// chart draws a chart with its key at the left and what stands at its lines at the right.
func (p *page) chart(c *chart, y, height float64) {
	notes := p.plot(c, y, height)
	p.key(y, height, c.heading, c.items)
	apart(notes, 13, y+4, y+height)
	for _, n := range notes {
		p.text(noteLeft, n.y+4, small, "start", wording.Fit(n.text, small, right-noteLeft, false))
		p.say(n.text + ".")
	}
}

var (
	hardLine = []string{`stroke="` + ink + `"`, `stroke-width="2.4"`}
	softLine = []string{`stroke="` + ink + `"`, `stroke-width="1.1"`, `stroke-dasharray="7 4"`}
)

// species returns a figure of the sheet as a range, or nil.
func (p *page) species(what *schema.Figure) *quantity.Range {
	if p.plan.Sheet == nil {
		return nil
	}
	f := p.plan.Sheet.Figure(what, "")
	if f == nil || f.Value.Bad {
		return nil
	}
	return &f.Range
}

// shown prints a canonical range in the keeper's unit.
func shown(r quantity.Range, u quantity.Unit) string { return quantity.FormatRange(r.Low, r.High, u) }

func stroke(colour string, w float64) []string {
	return []string{`stroke="` + colour + `"`, fmt.Sprintf(`stroke-width="%g"`, w)}
}
