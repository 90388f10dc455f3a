package picture

import (
	"errors"
	"io"
	"math"
	"strconv"
	"strings"

	"vivary/compile"
	"vivary/compile/growth"
	"vivary/compile/life"
	"vivary/schema/civil"
	"vivary/schema/quantity"
	"vivary/schema/wording"
)

// ErrNoCourse is for animals of which the log tells neither two weights nor two moults, or that
// are several together, so that a weight may be of any of them.
var ErrNoCourse = errors.New("of these the log tells neither two weights nor two moults of one animal that is followed alone")

// Growth writes how an animal of r.Lives[i] grew: its weights and moults by the log, beside what
// it was to weigh by the first of them and the moults since. Heights are logarithms, since an
// animal grows by factors. As wide as a page, or as a phone.
func Growth(w io.Writer, r *compile.Result, i int, g *life.Group, narrow bool) error {
	of, known := growth.Of(r.Lives[i], r.Plan, r.Today)
	var c growth.Course
	if known {
		c, known = of.Course(g)
	}
	if !known {
		return ErrNoCourse
	}
	first, moults := r.Today, c.Moults(r.Today)
	if len(c.Points) > 0 {
		first = min(first, c.Points[0].On)
	}
	if len(moults) > 0 {
		first = min(first, moults[0])
	}
	loc := r.Now.Location()
	width, side := 900.0, 52.0
	if narrow {
		width, side = narrowWidth, 44
	}
	title := r.Lives[i].Plan.Shown() + ", " + g.Animals.Shown() + ": growth from " + first.Words() + " to " + r.Today.Words()
	t := &track{Track: &Track{Title: title, From: (first - 3).At(0, loc).Unix(), Until: (r.Today + 4).At(0, loc).Unix(), Zone: loc}, x0: side, x1: width - 12}
	y := t.written(8, title, 16, true)
	for _, l := range c.Said() {
		l = strings.TrimSpace(l)
		y = t.written(y, l+".", body, false)
		t.said = append(t.said, l+".")
	}
	y = t.grown(y, &c, moults, r.Today, r.Lives[i].Plan.Units.Of(quantity.Gram), narrow)
	return t.finish(w, width, y+8)
}

// grown draws weights and moults, and returns where it ends.
func (t *track) grown(y float64, c *growth.Course, moults []civil.Date, today civil.Date, unit quantity.Unit, narrow bool) float64 {
	spans := c.Spans(today)
	at := func(d civil.Date) float64 { return t.x(d.At(0, t.Zone).Unix()) }
	key := func(words string, draw func(y float64)) {
		draw(y + 9)
		y = t.indented(y, words)
	}
	if len(spans) > 0 {
		key("to be expected by the first weight and the moults since", func(y float64) { t.draw.rect(8, y-5, 18, 10, class("a")) })
	}
	if len(c.Points) > 0 {
		key("weighed", func(y float64) { t.draw.circle(17, y, 3.4, class("t")) })
	}
	if len(spans) > 0 && len(c.Points) > 1 {
		key("what that weight was to be; soon after a moult that is known more narrowly", func(y float64) { t.draw.line(17, y-6, 17, y+6, class("h")) })
	}
	if len(moults) > 0 {
		key("a moult", func(y float64) { t.draw.line(17, y-6, 17, y+6, class("s")) })
	}
	y += 26
	height := 240.0
	if narrow {
		height = 200
	}
	low, high := math.Inf(1), math.Inf(-1)
	see := func(v float64) {
		if v > 0 {
			low, high = min(low, v), max(high, v)
		}
	}
	for i := range c.Points {
		see(c.Points[i].Mass)
	}
	for _, s := range spans {
		see(s.Mass.Low)
		see(s.Mass.High)
	}
	t.times(y, y+height, narrow)
	up := func(v float64) float64 { return y + height*(math.Log(high)-math.Log(v))/(math.Log(high)-math.Log(low)) }
	if low <= high {
		low, high = low/1.15, high*1.15
		for _, s := range spans {
			from, to := max(at(s.From), t.x0), min(at(s.To), t.x1)
			t.draw.rect(from, up(s.Mass.High), to-from, up(s.Mass.Low)-up(s.Mass.High), class("a"))
		}
		last := math.Inf(1)
		for _, v := range massTicks(low, high, unit) {
			h := up(v.mass)
			if last-h < 15 && !math.IsInf(last, 1) {
				continue
			}
			last = h
			t.draw.line(t.x0-3, h, t.x1, h, class("l"))
			t.text(t.x0-6, h+4, small, "end", v.words)
		}
		t.text(8, y-8, small, "start", unit.String())
	}
	for _, m := range moults {
		t.draw.line(at(m), y, at(m), y+height, class("s"))
		t.said = append(t.said, "A moult on "+m.Words()+".")
	}
	var line path
	for i := range c.Points {
		p := &c.Points[i]
		command := byte('L')
		if i == 0 {
			command = 'M'
		}
		line.to(command, at(p.On), up(p.Mass))
		text := p.On.Words() + ": " + quantity.Format(p.Mass, unit)
		if b := p.Expected.Round(); b.High > 0 {
			t.draw.line(at(p.On), up(p.Expected.Low), at(p.On), up(p.Expected.High), class("h"))
			text += ", " + quantity.FormatBetween(b.Low, b.High, unit) + " was to be expected"
		}
		t.said = append(t.said, text+".")
	}
	if len(c.Points) > 1 {
		t.draw.path(line.String(), class("v"), `stroke-linejoin="round"`)
	}
	for i := range c.Points {
		t.draw.circle(at(c.Points[i].On), up(c.Points[i].Mass), 3.4, class("t"))
	}
	t.draw.rect(t.x0, y, t.x1-t.x0, height, class("f"))
	return y + height + 20
}

// indented writes a line of a key, and returns where it ends.
func (t *track) indented(y float64, words string) float64 {
	for _, l := range wording.Wrap(words, body, t.x1-32, false, 3) {
		t.text(32, y+13, body, "start", l)
		y += 17
	}
	return y
}

// tick is a mass at a scale, in g and as it is written.
type tick struct {
	mass  float64
	words string
}

// massTicks are 1, 2 and 5 of each power of ten of a unit, between two masses in g.
func massTicks(low, high float64, unit quantity.Unit) (all []tick) {
	one := quantity.Quantity{Value: 1, Unit: unit}.In(unit) // so many of the unit are a gram
	for power := -6; power <= 9; power++ {
		for _, digit := range []float64{1, 2, 5} {
			v := digit * math.Pow(10, float64(power))
			if g := v / one; g >= low && g <= high {
				all = append(all, tick{g, strconv.FormatFloat(v, 'g', 6, 64)})
			}
		}
	}
	return all
}
