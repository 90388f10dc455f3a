package picture

import (
	"fmt"
	"math"
	"slices"
	"strconv"

	"vivary/compile/measure"
	"vivary/schema/civil"
	"vivary/schema/quantity"
	"vivary/schema/wording"
)

// mostBack is how many days of the past are shown where something was measured in them: a
// quarter, so that the coming year keeps most of the page.
const mostBack = 91

// dots are what was measured at one place, drawn alike.
type dots struct {
	place string
	shape func(p *page, x, y float64)
	days  []span
	words string // what the key says of them
	told  string // how much of it was outside of what, the worst of it
}

// span is what was measured on one day: the lowest and the highest.
type span struct {
	on        civil.Date
	low, high float64
}

// places are where something is measured, in the order of the key, and how it is drawn: places
// differ in shape, so that they part in grey.
var places = []struct {
	where, words string
	shape        func(p *page, x, y float64)
}{
	{measure.Spot, "spot", (*page).triangle},
	{measure.Air, "air", (*page).disc},
	{"night", "night", (*page).diamond},
	{"", "no place said", (*page).ring},
	{measure.Room, "room", (*page).square},
}

// firstShown is the first day of the picture: ten days ago, or the first reading of the last
// quarter.
func (p *page) firstShown() civil.Date {
	first := p.r.Today - daysBack
	for i := range p.life.Shown {
		if on := p.life.Shown[i].On - 1; on < first && on >= p.r.Today-mostBack {
			first = on
		}
	}
	return first
}

// measured are what was measured of the days shown, by place.
func (p *page) measured(damp bool, unit quantity.Unit) (all []dots) {
	held := measure.HeldOf(p.r.Plan, p.life)
	for _, place := range places {
		if damp && place.where == measure.Room {
			continue // that chart is of the enclosure
		}
		d := dots{place: place.words, shape: place.shape}
		var n, early int
		var out [3]int
		low, high := math.Inf(1), math.Inf(-1)
		for _, x := range held {
			if x.Damp != damp || x.Where != place.where || x.On > p.r.Today {
				continue
			}
			if !p.shows(x.On, x.On+1) {
				early++
				continue
			}
			n++
			v := x.Value.Value
			low, high = min(low, v), max(high, v)
			if x.Outside != nil {
				out[x.Outside.Level]++
			}
			if k := len(d.days); k > 0 && d.days[k-1].on == x.On {
				d.days[k-1].low, d.days[k-1].high = min(d.days[k-1].low, v), max(d.days[k-1].high, v)
			} else {
				d.days = append(d.days, span{x.On, v, v})
			}
		}
		if n == 0 {
			continue
		}
		what := place.words
		if damp && place.where == "" {
			what = "measured"
		}
		d.words = what + " " + quantity.FormatRange(rounded(low), rounded(high), unit)
		fine, told := "all as aimed for", ""
		if place.where == "" && !damp {
			fine = "none harmful" // more is not asked of it
		}
		for level, words := range [...]string{measure.Harm: "harmful", measure.Unusual: "unusual", measure.Aim: "not as aimed for"} {
			if out[level] == 0 {
				continue
			}
			if told == "" {
				d.told = strconv.Itoa(out[level]) + " of " + strconv.Itoa(n) + " " + words
			}
			told += ", " + strconv.Itoa(out[level]) + " " + words
		}
		if told == "" {
			d.told, told = fine, ", "+fine
		}
		of := ", " + what
		if what == "measured" {
			of = ""
		}
		said := fmt.Sprintf("Measured%s: %s from %s to %s, %s%s.", of, wording.Count(n, "reading", "readings"), d.days[0].on.Words(), d.days[len(d.days)-1].on.Words(), quantity.FormatRange(rounded(low), rounded(high), unit), told)
		if early > 0 {
			said += " " + wording.Count(early, "older reading is", "older readings are") + " not drawn."
		}
		p.say(said)
		all = append(all, d)
	}
	return all
}

// swatches are the lines of the key about what was measured.
func swatches(all []dots) (out []swatch) {
	for _, d := range all {
		out = append(out, swatch{words: d.words, shape: d.shape, silent: true}, swatch{words: d.told, silent: true})
	}
	return out
}

func rounded(v float64) float64 { return math.Round(v*10) / 10 }

// reach widens a scale to what was measured, but for slips of the pen no further than so far
// beyond what it shows anyway.
func reach(all []dots, most float64, low, high *float64) {
	least, last := *low-most, *high+most
	for _, d := range all {
		for _, x := range d.days {
			*low, *high = max(min(*low, x.low), least), min(max(*high, x.high), last)
		}
	}
}

// readings draws what was measured, over all else of a chart. What lies beyond the scale is
// drawn at its edge.
func (p *page) readings(all []dots, s scale) {
	at := func(v float64) float64 { return min(max(s.at(v), s.y+4), s.y+s.height-4) }
	for _, d := range slices.Backward(all) {
		for _, x := range d.days {
			if !p.shows(x.on, x.on+1) {
				continue
			}
			mid := (p.x(x.on) + p.x(x.on+1)) / 2
			if low, high := at(x.low), at(x.high); low-high > 1 {
				p.draw.line(mid, low, mid, high, stroke(ink, 1)...)
				d.shape(p, mid, high)
				d.shape(p, mid, low)
			} else {
				d.shape(p, mid, low)
			}
		}
	}
}

// The marks of readings: dark with a light rim, so that they stand out of every band.
const markRim = `stroke="white"`

func (p *page) disc(x, y float64) {
	p.draw.circle(x, y, 3.4, `fill="`+ink+`"`, markRim, `stroke-width="0.9"`)
}

func (p *page) ring(x, y float64) {
	p.draw.circle(x, y, 3, `fill="white"`, `stroke="`+ink+`"`, `stroke-width="1.4"`)
}

func (p *page) square(x, y float64) {
	p.draw.rect(x-2.8, y-2.8, 5.6, 5.6, `fill="white"`, `stroke="`+ink+`"`, `stroke-width="1.4"`)
}

func (p *page) triangle(x, y float64) { p.polygon(x, y-4.4, x+4, y+3, x-4, y+3) }

func (p *page) diamond(x, y float64) { p.polygon(x, y-4.4, x+4.4, y, x, y+4.4, x-4.4, y) }

func (p *page) polygon(at ...float64) {
	var d path
	for i := 0; i < len(at); i += 2 {
		command := byte('L')
		if i == 0 {
			command = 'M'
		}
		d.to(command, at[i], at[i+1])
	}
	d.WriteByte('Z')
	p.draw.path(d.String(), `fill="`+ink+`"`, markRim, `stroke-width="0.9"`)
}
