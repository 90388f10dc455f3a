package picture

import (
	"fmt"
	"io"
	"math"
	"strconv"
	"strings"
	"time"

	"vivary/schema/civil"
	"vivary/schema/quantity"
	"vivary/schema/wording"
)

// Track is what loggers showed over a time, to be drawn.
type Track struct {
	Title       string
	From, Until int64 // seconds since 1970
	Zone        *time.Location
	Panels      []Panel
}

// Panel is one value of one place.
type Panel struct {
	Heading    string
	Unit       quantity.Unit
	At         []int64
	V          []float64       // °C or %
	Gap        int64           // seconds; longer ones are left open
	Hard, Soft *quantity.Range // what the species bears, what is usual; nil for not known
	Aim        []Stretch       // what is aimed for, in order of time
	AimWords   string
	Band       []Stretch // the same as it is drawn: in a year a day is too narrow for two
}

// Stretch is a range over a time.
type Stretch struct {
	From, Until int64
	Low, High   float64
}

// The looks of a track, in light and in dark. What is outside differs in lightness and in width
// as well, and stands in a row of its own below.
const trackStyle = `
.g{fill:#fff}.t{fill:#1a1a1a}.l{stroke:#c8c8c8;stroke-width:.7;fill:none}.f{stroke:#555;stroke-width:.8;fill:none}
.a{fill:#cfe3d4}.v{stroke:#1b4f8f;stroke-width:1.2;fill:none}.o{stroke:#b23a00;stroke-width:2.2;fill:none}
.h{stroke:#1a1a1a;stroke-width:2;fill:none}.s{stroke:#1a1a1a;stroke-width:1;stroke-dasharray:6 4;fill:none}
.m1{fill:#1a1a1a}.m2{fill:#b23a00}.m3{fill:#d9a27c}
@media (prefers-color-scheme:dark){.g{fill:#161616}.t{fill:#ededed}.l{stroke:#444}.f{stroke:#999}.a{fill:#234530}.v{stroke:#8ec5ff}.o{stroke:#ffa066}
.h,.s{stroke:#ededed}.m1{fill:#ededed}.m2{fill:#ffa066}.m3{fill:#8a5a3c}}
`

func class(name string) string { return `class="` + name + `"` }

// track is one while it is drawn.
type track struct {
	*Track
	draw   canvas
	x0, x1 float64
	said   []string
}

// Draw writes it as SVG, as wide as a page, or as a phone.
func (x *Track) Draw(w io.Writer, narrow bool) error {
	width, side := 900.0, 46.0
	if narrow {
		width, side = narrowWidth, 36
	}
	t := &track{Track: x, x0: side, x1: width - 12}
	y := 8.0
	y = t.written(y, x.Title, 16, true)
	for i := range x.Panels {
		y = t.panel(y+10, &x.Panels[i], narrow)
	}
	return t.finish(w, width, y+8)
}

// finish writes what was drawn, so wide and so high.
func (t *track) finish(w io.Writer, width, y float64) error {
	height := strconv.Itoa(int(y) + 1)
	size := strconv.Itoa(int(width))
	var all canvas
	all.out.WriteString(mark)
	all.begin("svg", `width="`+size+`"`, `height="`+height+`"`, `viewBox="0 0 `+size+" "+height+`"`, `xmlns="http://www.w3.org/2000/svg"`)
	all.words("title", wording.Printed(t.Title))
	all.words("desc", wording.Printed(strings.Join(t.said, " ")))
	all.begin("style")
	all.out.WriteString(trackStyle)
	all.end("style")
	all.begin("g", `font-family="Helvetica, Arial, sans-serif"`)
	all.rect(0, 0, width, y+1, class("g"))
	all.out.Write(t.draw.out.Bytes())
	all.end("g")
	all.end("svg")
	_, err := w.Write(all.out.Bytes())
	return err
}

func (t *track) text(x, y, size float64, anchor, s string, style ...string) {
	if s = wording.Printed(s); s != "" {
		t.draw.text(x, y, s, append([]string{fmt.Sprintf(`font-size="%g"`, size), `text-anchor="` + anchor + `"`, class("t")}, style...)...)
	}
}

// written writes a text across the picture, and returns where it ends.
func (t *track) written(y float64, s string, size float64, heavy bool) float64 {
	var style []string
	if heavy {
		style = []string{bold}
	}
	for _, l := range wording.Wrap(s, size, t.x1-8, heavy, 4) {
		y += size * 1.25
		t.text(8, y, size, "start", l, style...)
	}
	return y + 3
}

func (t *track) x(at int64) float64 {
	return t.x0 + (t.x1-t.x0)*float64(at-t.From)/float64(max(1, t.Until-t.From))
}

// panel draws one value with its limits, and returns where it ends.
func (t *track) panel(y float64, p *Panel, narrow bool) float64 {
	y = t.written(y, p.Heading, 14, true)
	if p.AimWords != "" {
		t.draw.rect(8, y+4, 18, 10, class("a"))
		y = t.indented(y, p.AimWords)
	}
	for _, l := range []struct {
		r     *quantity.Range
		words string
		class string
	}{{p.Hard, "harmful outside of ", "h"}, {p.Soft, "unusual outside of ", "s"}} {
		if l.r != nil {
			t.draw.line(8, y+9, 26, y+9, class(l.class))
			t.text(32, y+13, body, "start", l.words+quantity.FormatRange(l.r.Low, l.r.High, p.Unit))
			y += 17
		}
	}
	y += 20
	height := 170.0
	if narrow {
		height = 150
	}
	low, high := math.Inf(1), math.Inf(-1)
	for i, at := range p.At {
		if at >= t.From && at <= t.Until {
			low, high = min(low, p.V[i]), max(high, p.V[i])
		}
	}
	if low > high {
		t.said = append(t.said, p.Heading+": no reading in this time.")
		t.text(t.x0, y, body, "start", "no reading in this time")
		return y + 10
	}
	for _, s := range p.Aim {
		if s.Until > t.From && s.From < t.Until {
			low, high = min(low, s.Low), max(high, s.High)
		}
	}
	least := 4.0
	if p.Unit == quantity.PercentRH {
		least = 20
	}
	if gap := least - (high - low); gap > 0 {
		low, high = low-gap/2, high+gap/2
	}
	low, high = low-(high-low)*0.06, high+(high-low)*0.06
	s := newScale(low, high, y, height, p.Unit)
	t.times(y, y+height, narrow)
	for _, a := range p.Band {
		from, until := max(a.From, t.From), min(a.Until, t.Until)
		if from < until {
			top := min(max(s.at(a.High), y), y+height)
			t.draw.rect(t.x(from), top, t.x(until)-t.x(from), min(max(s.at(a.Low), y), y+height)-top, class("a"))
		}
	}
	s.ticks(func(v, at float64) {
		t.draw.line(t.x0-3, at, t.x1, at, class("l"))
		t.text(t.x0-6, at+4, small, "end", strconv.FormatFloat(v, 'f', -1, 64))
	})
	for _, l := range []struct {
		r     *quantity.Range
		class string
	}{{p.Hard, "h"}, {p.Soft, "s"}} {
		for k := range 2 {
			if l.r == nil {
				continue
			}
			v := l.r.High
			if k == 1 {
				v = l.r.Low
			}
			if v > low && v < high {
				t.draw.line(t.x0, s.at(v), t.x1, s.at(v), class(l.class))
			}
		}
	}
	t.curve(p, s)
	t.draw.rect(t.x0, y, t.x1-t.x0, height, class("f"))
	return t.outside(p, y+height+20)
}

// manyDays are those from which on months are shown, and no days.
const manyDays = 62

// level is how bad a value is: 0 as aimed for, 1 harmful, 2 unusual, 3 not as aimed for.
func (p *Panel) level(at int64, v float64, k *int) int {
	for *k < len(p.Aim) && p.Aim[*k].Until <= at {
		*k++
	}
	switch {
	case p.Hard != nil && (v < p.Hard.Low || v > p.Hard.High):
		return 1
	case p.Soft != nil && (v < p.Soft.Low || v > p.Soft.High):
		return 2
	case *k < len(p.Aim) && p.Aim[*k].From <= at && (v < p.Aim[*k].Low || v > p.Aim[*k].High):
		return 3
	}
	return 0
}

// curve draws the readings: where there are more than fit, all that lies between the lowest and
// the highest of each place. What is outside is drawn over it once more.
func (t *track) curve(p *Panel, s scale) {
	var line, out path
	const step = 0.8
	column, last := -1, int64(0)
	var lo, hi, end, outLow, outHigh float64
	least := 3 // the level from which on it is drawn as outside: in months days and nights run together
	if t.Until-t.From > manyDays*86400 {
		least = 2
	}
	begun := false
	flush := func() {
		if column < 0 {
			return
		}
		x := t.x0 + float64(column)*step
		command := byte('L')
		if !begun {
			command = 'M'
		}
		line.to(command, x, s.at(lo))
		if hi > lo {
			line.to('L', x, s.at(hi))
		}
		line.to('L', x, s.at(end))
		begun = true
		if outLow <= outHigh {
			out.to('M', x, s.at(outLow)+0.6)
			out.to('L', x, s.at(outHigh)-0.6)
		}
	}
	k := 0
	for i, at := range p.At {
		if at < t.From || at > t.Until {
			continue
		}
		c, v := int((t.x(at)-t.x0)/step), p.V[i]
		if c != column || at-last > p.Gap {
			flush()
			if at-last > p.Gap {
				begun = false
			}
			column, lo, hi, outLow, outHigh = c, v, v, math.Inf(1), math.Inf(-1)
		}
		lo, hi, end, last = min(lo, v), max(hi, v), v, at
		if level := p.level(at, v, &k); level > 0 && level <= least {
			outLow, outHigh = min(outLow, v), max(outHigh, v)
		}
	}
	flush()
	t.draw.path(line.String(), class("v"), `stroke-linejoin="round"`)
	if out.Len() > 0 {
		t.draw.path(out.String(), class("o"), `stroke-linecap="square"`)
	}
}

// outside draws below the chart when it was outside, a row for each level of it.
func (t *track) outside(p *Panel, y float64) float64 {
	words := [...]string{1: "harmful", 2: "unusual", 3: "not as aimed for"}
	hours := [4]float64{}
	type run struct{ from, until int64 }
	runs := [4][]run{}
	k := 0
	for i := 0; i+1 < len(p.At); i++ {
		at, next := p.At[i], p.At[i+1]
		if at < t.From || next > t.Until || next-at > p.Gap {
			continue
		}
		level := p.level(at, p.V[i], &k)
		if level == 0 {
			continue
		}
		hours[level] += float64(next-at) / 3600
		if all := runs[level]; len(all) > 0 && t.x(at)-t.x(all[len(all)-1].until) < 0.5 {
			all[len(all)-1].until = next
		} else {
			runs[level] = append(runs[level], run{at, next})
		}
	}
	any := false
	for level := 1; level <= 3; level++ {
		if len(runs[level]) == 0 {
			continue
		}
		any = true
		text := words[level] + ": about " + wording.Number(math.Round(hours[level])) + " h"
		t.said = append(t.said, p.Heading+": "+text+".")
		y += 14
		t.text(t.x0, y, body, "start", text)
		y += 4
		for _, r := range runs[level] {
			t.draw.rect(t.x(r.from), y, max(1, t.x(r.until)-t.x(r.from)), 7, class("m"+strconv.Itoa(level)))
		}
		y += 8
	}
	if !any {
		y += 14
		t.text(t.x0, y, body, "start", "never outside")
		t.said = append(t.said, p.Heading+": never outside.")
		y += 4
	}
	return y
}

// times draws where days, or months, begin.
func (t *track) times(y, end float64, narrow bool) {
	first := civil.FromTime(time.Unix(t.From, 0).In(t.Zone))
	days := int(math.Ceil(float64(t.Until-t.From) / 86400))
	most := 13
	if narrow {
		most = 6
	}
	each := max(1, (days+most-1)/most)
	free := t.x0 - 1
	for k := 0; k <= days+31; k++ {
		on := first + civil.Date(k)
		_, _, d := on.YMD()
		if days > manyDays && d != 1 || days <= manyDays && k%each != 0 {
			continue
		}
		at := on.At(0, t.Zone).Unix()
		if at < t.From || at > t.Until {
			continue
		}
		x := t.x(at)
		t.draw.line(x, y, x, end+4, class("l"))
		if text := on.Brief(); x >= free && x+wording.Width(text, small, false) <= t.x1 {
			t.text(x+2, end+14, small, "start", text)
			free = x + wording.Width(text, small, false) + 8
		}
	}
}
