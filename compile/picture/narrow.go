package picture

import (
	"fmt"
	"io"
	"strconv"

	"vivary/compile"
	"vivary/compile/horizon"
	"vivary/schema/civil"
	"vivary/schema/wording"
)

// The narrow form is 360 units wide, as many pixels as a phone is: the letters are as large as
// elsewhere on it. The year goes down in strips of a quarter, each as wide as the whole.
const (
	narrowWidth = 360.0
	edge        = 8.0
	stripLeft   = 32.0
	stripRight  = narrowWidth - edge
	mostStrip   = 96   // days: a quarter
	body        = 12.0 // of text
	mostStripes = 8    // of a kind in one strip
)

// narrow is a picture in its narrow form while it is drawn from the top down.
type narrow struct {
	*page
	y float64
}

// YearNarrow writes what Year does in a form for a narrow screen, with the same that is said
// to those who do not see it. Its width is 360 pixels, its height as much as it takes.
func YearNarrow(w io.Writer, r *compile.Result, i int) error {
	if i < 0 || i >= len(r.Lives) {
		return fmt.Errorf("there is no enclosure %d: the collection has %d", i, len(r.Lives))
	}
	wide := newPage(r, i)
	wide.page()
	n := &narrow{page: newPage(r, i)}
	n.x0, n.x1 = stripLeft, stripRight
	n.down()
	n.said = wide.said
	var all canvas
	height := strconv.Itoa(int(n.y) + 1)
	all.begin("g", `font-family="Helvetica, Arial, sans-serif"`, `fill="`+ink+`"`)
	all.rect(0, 0, narrowWidth, n.y+1, `fill="white"`)
	all.out.Write(n.draw.out.Bytes())
	all.end("g")
	n.draw = all
	return n.write(w, `width="360"`, `height="`+height+`"`, `viewBox="0 0 360 `+height+`"`)
}

// down draws the parts from the top down.
func (n *narrow) down() {
	n.y = 6
	n.written(n.title(), 16, true, 3)
	n.written(n.inhabitants(), body, false, 8)
	heat, damp := n.temperatures(), n.humidity()
	n.key(heat, heat.heading)
	n.key(damp, damp.heading)
	meals, water := n.meals(1<<30), n.waterings()
	whole := *n.page
	many := (whole.days + mostStrip - 1) / mostStrip
	each := (whole.days + many - 1) / many
	for k := range many {
		n.from = whole.from + civil.Date(k*each)
		n.days = min(each, int(whole.until()-n.from))
		n.strip(heat, damp, meals, water)
	}
	n.from, n.days = whole.from, whole.days
	n.powerCut()
	n.legend()
	n.y += edge
}

// written writes a text across the picture, in at most so many lines.
func (n *narrow) written(s string, size float64, heavy bool, most int) {
	n.indented(edge, s, size, heavy, most)
	n.y += 3
}

// indented is written from a place on, without a gap below.
func (n *narrow) indented(x float64, s string, size float64, heavy bool, most int) {
	var style []string
	if heavy {
		style = []string{bold}
	}
	for _, l := range wording.Wrap(s, size, stripRight-x, heavy, most) {
		n.y += size * 1.25
		n.text(x, n.y, size, "start", l, style...)
	}
}

// key says what is drawn how in a chart of all strips, and what its lines mean.
func (n *narrow) key(c *chart, heading string) {
	n.y += 6
	n.written(heading, 14, true, 1)
	for _, it := range c.items {
		n.swatch(it)
	}
	scale := newScale(c.low, c.high, 0, 1, c.unit)
	var unseen canvas // what a chart says of its lines is the same in each strip
	unseen, n.draw = n.draw, unseen
	notes := n.limits(scale, c.hard, c.soft)
	n.draw = unseen
	for i, x := range notes {
		line := hardLine
		if c.hard == nil || i > 1 {
			line = softLine
		}
		n.swatch(swatch{words: x.text, line: line})
	}
}

// swatch is one line of a key.
func (n *narrow) swatch(it swatch) {
	top := n.y
	n.indented(edge+28, it.words, body, false, 3)
	for _, style := range it.styles {
		n.draw.rect(edge, top+5, 20, 10, style...)
	}
	if it.line != nil {
		n.draw.line(edge, top+11, edge+20, top+11, it.line...)
	}
	if it.shape != nil {
		it.shape(n.page, edge+10, top+10)
	}
	n.y += 2
}

// strip draws the days of a quarter. The scales are those of the whole year.
func (n *narrow) strip(heat, damp *chart, meals []marked, water []density) {
	n.y += 14
	n.draw.line(edge, n.y, stripRight, n.y, stroke(ink, 1)...)
	n.written(wording.Dates(n.from, n.until()-1), 14, true, 2)
	n.y += 36
	const tall, low = 130.0, 46.0
	top := n.y
	n.months(top, top+tall+low+gap)
	for _, c := range []struct {
		year, now *chart
		height    float64
	}{{heat, n.temperatures(), tall}, {damp, n.humidity(), low}} {
		c.now.low, c.now.high = c.year.low, c.year.high
		n.plot(c.now, n.y, c.height)
		n.y += c.height + gap
	}
	if n.shows(n.r.Today, n.r.Today+1) {
		n.today(top)
	}
	n.y -= gap - 4
	n.stripes("Season", n.seasons())
	n.stripes("Held", n.holds())
	n.stripes("May happen", n.windows())
	n.stripes("Away", n.absences())
	for i := range meals {
		n.mealMarks(&meals[i])
	}
	for i := range water {
		n.bars(&water[i])
	}
}

// months draws where months and years begin, behind the charts of a strip.
func (n *narrow) months(y, end float64) {
	if past0 := n.x(n.r.Today); past0 > n.x0 {
		n.draw.rect(n.x0, y, past0-n.x0, end-y-gap, `fill="`+past+`"`)
	}
	for m := 0; m <= 4; m++ {
		year, month, _ := n.from.AddMonths(m).YMD()
		first := civil.Must(year, month, 1)
		if !n.shows(first, first+1) {
			continue
		}
		x := n.x(first)
		n.draw.line(x, y-4, x, end-gap+4, `stroke="`+gridLine+`"`, `stroke-width="0.8"`)
		words := first.Brief()
		if month == 1 {
			words += " " + strconv.Itoa(year)
		}
		if x+wording.Width(words, body, false) < stripRight {
			n.text(x+2, y-6, body, "start", words)
		}
	}
}

// today marks today across the charts of a strip.
func (n *narrow) today(top float64) {
	x := n.x(n.r.Today)
	n.draw.line(x, top-16, x, n.y-gap, stroke(ink, 1.6)...)
	words, anchor := "today, "+n.r.Today.Brief(), "start"
	if x += 3; x+wording.Width(words, body, true) > stripRight {
		x, anchor = x-6, "end"
	}
	n.text(x, top-20, body, anchor, words, bold)
}

// stripes draws stretches of days of a kind, each with its words above it.
func (n *narrow) stripes(name string, all []stripe) {
	left := 0
	for i, s := range all {
		if !n.shows(s.from, s.until) {
			continue
		}
		if i >= mostStripes {
			left++
			continue
		}
		n.y += 4
		n.indented(edge, name+": "+s.label, body, false, 6)
		n.y += 6
		x0, x1 := n.x(s.from), max(n.x(s.until), n.x(s.from)+2.5)
		if x1 > stripRight {
			x0, x1 = stripRight-2.5, stripRight
		}
		for _, f := range s.fills {
			n.draw.rect(x0, n.y, x1-x0, laneHeight, f)
		}
		for _, d := range s.ticks {
			if n.shows(d, d+1) {
				n.draw.rect(n.x(d), n.y, max(n.x(d+1)-n.x(d)-0.6, 1), laneHeight, `fill="`+ink+`"`)
			}
		}
		n.draw.rect(x0, n.y, x1-x0, laneHeight, append([]string{`fill="none"`}, stroke(frameLine, 0.9)...)...)
		n.y += laneHeight
	}
	if left > 0 {
		n.written(fmt.Sprintf("%s: %d more not drawn", name, left), body, false, 2)
	}
}

// mealMarks draws the marks of a meal on the days of a strip, with its name above.
func (n *narrow) mealMarks(m *marked) {
	shown := m.within(n.page)
	if shown.given.Empty() && shown.left.Empty() {
		return
	}
	n.y += 4
	n.indented(edge, m.name+", "+wording.Count(shown.given.Count(), "time", "times"), body, false, 3)
	n.y += markTall + 4
	shown.strokes(n.page, n.y)
}

// within are the marks of the days shown.
func (r *marked) within(p *page) marked {
	days := p.r.Horizon.New()
	days.AddRun(int(p.from-p.r.Horizon.From), int(p.until()-p.r.Horizon.From), p.r.Horizon.Days)
	cut := func(all horizon.Days) horizon.Days {
		out := all.Clone()
		out.Keep(days)
		return out
	}
	return marked{name: r.name, group: r.group, given: cut(r.given), left: cut(r.left), killed: cut(r.killed)}
}

// bars draws how often something is done in each week of a strip.
func (n *narrow) bars(d *density) {
	n.y += 4
	n.indented(edge, d.name+": "+d.often(), body, false, 3)
	n.y += barTall + 4
	d.weekly(n.page, n.y)
}

// powerCut draws and says what becomes of it in a power cut.
func (n *narrow) powerCut() {
	n.y += 14
	n.draw.line(edge, n.y, stripRight, n.y, stroke(ink, 1)...)
	n.written(cutHeading, 14, true, 1)
	cut := n.cut()
	for _, l := range cut.lines {
		n.written(l, body, false, 8)
	}
	for _, it := range cut.items {
		n.swatch(it)
	}
	if cut.known {
		n.cutChart(n.y+6, &cut.stays, &cut.cools, n.x0, stripRight-34, 0)
		n.y += cutHeight + 30
	}
}

// legend says what the marks mean.
func (n *narrow) legend() {
	n.y += 8
	n.written(meanings, 14, true, 1)
	for _, m := range n.marks() {
		top := n.y
		n.indented(edge+32, m.words, body, false, 2)
		m.draw(edge, top+body*1.25)
		n.y += 3
	}
}
