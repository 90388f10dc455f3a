package picture

import (
	"strconv"
	"time"

	"vivary/schema/civil"
	"vivary/schema/wording"
)

// axis draws the months and the years behind all charts from y to end.
func (p *page) axis(y, end float64) {
	p.draw.rect(p.x0, y, p.x(p.r.Today)-p.x0, end-y, `fill="`+past+`"`)
	for m := 0; m <= 16; m++ {
		year, month, _ := p.from.AddMonths(m).YMD()
		first := civil.Must(year, month, 1)
		if first >= p.from && first < p.until() {
			x := p.x(first)
			p.draw.line(x, y-4, x, end+4, `stroke="`+gridLine+`"`, `stroke-width="0.8"`)
			words := first.Brief()
			p.text(x+2, y-6, size, "start", words)
			p.text(x+2, end+14, size, "start", words)
			if month == time.January && first > p.r.Today {
				p.text(x+2, y-20, size, "start", strconv.Itoa(year), bold)
			}
		}
		if middle := first + 14; middle >= p.from && middle < p.until() {
			p.draw.line(p.x(middle), end, p.x(middle), end+4, `stroke="`+frameLine+`"`, `stroke-width="0.8"`)
		}
	}
	p.draw.line(p.x0, end, p.x1, end, `stroke="`+frameLine+`"`, `stroke-width="0.8"`)
	p.say("The days from " + wording.Dates(p.from, p.until()-1) + " are shown; today is " + p.r.Today.Words() + ".")
}

// today marks today across the charts, over what they show.
func (p *page) today(y, end float64) {
	x := p.x(p.r.Today)
	p.draw.line(x, y-16, x, end+4, stroke(ink, 1.6)...)
	p.text(x, y-20, size, "end", "today, "+p.r.Today.Words(), bold)
}
