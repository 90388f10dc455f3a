package picture

import (
	"math"

	"vivary/compile/life"
	"vivary/plan"
	"vivary/schema/civil"
	"vivary/schema/quantity"
)

// course is a range of values for each day shown; NaN on days without one.
type course struct{ low, high []float64 }

// course returns what is planned for each day: base, and in a season what it says.
// A season's ramp in begins on its first day and its ramp out ends with its last,
// so that the animals have the whole of their usual climate outside it; one that
// is too short for both never gets there. Without a base only seasons have values.
func (p *page) course(base *quantity.Range, ramps bool, of func(*plan.Season) *quantity.Range) course {
	c := course{make([]float64, p.days), make([]float64, p.days)}
	for i := range c.low {
		c.low[i], c.high[i] = math.NaN(), math.NaN()
		if base != nil {
			c.low[i], c.high[i] = base.Low, base.High
		}
	}
	for _, s := range p.plan.Seasons {
		aim := of(s)
		if aim == nil {
			continue
		}
		rate := 0.0 // °C a day; 0 is at once
		if ramps && base != nil {
			if rate = life.UsualRamp / 7; s.Ramp.Set() && s.Ramp.V.Value > 0 {
				rate = s.Ramp.V.Value / 7
			}
		}
		p.eachTime(s, func(from, until civil.Date) {
			for d := max(from, p.from); d < min(until, p.until()); d++ {
				most := rate * float64(min(d-from, until-d))
				i := int(d - p.from)
				if rate == 0 {
					c.low[i], c.high[i] = aim.Low, aim.High
					continue
				}
				c.low[i] = base.Low + min(max(aim.Low-base.Low, -most), most)
				c.high[i] = base.High + min(max(aim.High-base.High, -most), most)
			}
		})
	}
	return c
}

// eachTime calls use for each time that a season comes up in the days shown, with
// its first day and the first after it.
func (p *page) eachTime(s *plan.Season, use func(from, until civil.Date)) {
	first, _, _ := p.from.YMD()
	last, _, _ := p.until().YMD()
	for year := first - 1; year <= last; year++ {
		if from, until, ok := life.InYear(s, year); ok && p.shows(from, until) {
			use(from, until)
		}
	}
}

// bandLeast is the least height of a band, so that a single value shows how it is
// drawn too.
const bandLeast = 4

// band draws a course, with y giving the height of a value.
func (p *page) band(c course, y func(float64) float64, style ...string) {
	for i := 0; i < p.days; {
		if math.IsNaN(c.low[i]) {
			i++
			continue
		}
		var top, foot []float64
		from := i
		for ; i < p.days && !math.IsNaN(c.low[i]); i++ {
			h, l := y(c.high[i]), y(c.low[i])
			more := max(0, (bandLeast-(l-h))/2)
			top, foot = append(top, h-more), append(foot, l+more)
		}
		var d path
		d.edge(p, top, from, false)
		d.edge(p, foot, from, true)
		d.WriteByte('Z')
		p.draw.path(d.String(), style...)
	}
}

// edge adds one edge of a band, from its first day to the end of its last, or back
// again. Points on a straight line are left out.
func (b *path) edge(p *page, y []float64, from int, back bool) {
	command := byte('M')
	if back {
		command = 'L'
	}
	n := len(y)
	for k := 0; k <= n; k++ {
		i := k
		if back {
			i = n - k
		}
		if i > 0 && i < n && math.Abs(2*y[i]-y[i-1]-y[min(i+1, n-1)]) < 1e-9 {
			continue
		}
		b.to(command, p.x(p.from+civil.Date(from+i)), y[min(i, n-1)])
		command = 'L'
	}
}

// span widens lowest and highest to what the course has.
func (c course) span(lowest, highest *float64) {
	for i := range c.low {
		if !math.IsNaN(c.low[i]) {
			*lowest, *highest = min(*lowest, c.low[i]), max(*highest, c.high[i])
		}
	}
}
