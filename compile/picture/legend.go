package picture

import (
	"vivary/schema"
	"vivary/schema/wording"
)

// legend says what lines, hatchings and marks mean, at the lower right.
func (p *page) legend(y float64) {
	y += 106
	p.text(tellLeft, y, size, "start", meanings, bold)
	const rowStep, column = 16, 244
	for n, m := range p.marks() {
		x, at := float64(tellLeft+n/5*column), y+float64(n%5+1)*rowStep
		m.draw(x, at)
		p.text(x+30, at, small, "start", wording.Fit(m.words, small, column-36, false))
	}
}

const meanings = "What the marks mean:"

// meaning is what a mark means, which is drawn with its foot at a place.
type meaning struct {
	words string
	draw  func(x, y float64)
}

// marks are all marks of a picture.
func (p *page) marks() (all []meaning) {
	item := func(words string, draw func(x, y float64)) { all = append(all, meaning{words, draw}) }
	item("harmful beyond this line", func(x, y float64) {
		p.draw.rect(x, y-9, 22, 5, fill("harm"), `fill-opacity="0.45"`)
		p.draw.line(x, y-3, x+22, y-3, hardLine...)
	})
	item("unusual beyond this line", func(x, y float64) { p.draw.line(x, y-4, x+22, y-4, softLine...) })
	item("a meal", func(x, y float64) { p.draw.line(x+11, y, x+11, y-10, stroke(ink, 1.7)...) })
	item("a meal of prey killed first", func(x, y float64) {
		p.draw.line(x+11, y, x+11, y-4, stroke(ink, 1.7)...)
		p.draw.line(x+11, y-7, x+11, y-11, stroke(ink, 1.7)...)
	})
	item("left out or moved", func(x, y float64) { p.draw.line(x+11, y, x+11, y-4, stroke(ink, 1.7)...) })
	for _, h := range holding {
		words := h.words
		if h.row == schema.RowDeep {
			words += ": no digging, no moving"
		}
		item(words, func(x, y float64) {
			p.draw.rect(x, y-9, 22, 11, append([]string{fill(h.pattern)}, stroke(frameLine, 0.9)...)...)
		})
	}
	item("away; a tick is a visit", func(x, y float64) {
		p.draw.rect(x, y-9, 22, 11, append([]string{`fill="` + roomFill + `"`}, stroke(frameLine, 0.9)...)...)
		p.draw.rect(x+9, y-9, 1.7, 11, `fill="`+ink+`"`)
		p.draw.rect(x+15, y-9, 1.7, 11, `fill="`+ink+`"`)
	})
	return all
}
