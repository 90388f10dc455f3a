package picture

import (
	"math"
	"strconv"

	"vivary/compile/balance"
	"vivary/compile/climate"
	"vivary/schema/quantity"
	"vivary/schema/wording"
)

// Where the power cut is drawn, and where it and the rest are told.
const (
	cutRight  = 560
	tellLeft  = 704
	cutHeight = 150
)

// powerCut draws how air and substrate cool after a power cut, and says in words
// how long each stays above what harms, always with the ends of its band.
func (p *page) powerCut(y float64) {
	cut := p.cut()
	if cut.known {
		p.cutChart(y, &cut.stays, &cut.cools, p.x0, cutRight, tellLeft)
	}
	p.key(y, cutHeight, cutHeading, cut.items)
	at := y + 11
	p.text(tellLeft, at, size, "start", cutHeading+":", bold)
	for _, l := range cut.lines {
		p.say(cutHeading + ": " + l + ".")
		for _, part := range wording.Wrap(l, small, right-tellLeft, false, 2) {
			at += 15
			p.text(tellLeft, at, small, "start", part)
		}
	}
}

const cutHeading = "After a power cut"

// powerCut is what becomes of an enclosure in a power cut, in a room that stays as it is and in
// a house that cools; not known where the plan does not say enough.
type powerCut struct {
	known        bool
	stays, cools climate.Cooldown
	items        []swatch
	lines        []string
}

func (p *page) cut() (out powerCut) {
	b, ok := balance.Of(p.r.Plan, p.plan, p.life)
	if !ok || !b.Limited() {
		out.lines = []string{"for this the plan has to say inside, room temperature and species"}
		return out
	}
	out.known, out.stays, out.cools = true, b.Cooldown(), b.ColdHouse()
	c, cold := &out.stays, &out.cools
	t := func(v climate.Celsius) string { return quantity.Format(float64(v), p.deg) }
	low := quantity.FormatAtLeast(float64(c.Limit), p.deg)
	first := "from " + t(c.Start) + " in a room that stays at " + t(c.Room) + ", air " + reaches(c.Air, low) + "; substrate " + reaches(c.Substrate, low)
	if len(b.Heaters) == 0 {
		first = "without a heater the inside stays as the room is, " + t(c.Room) + " at the coldest"
	}
	out.lines = []string{first, "if the house cools too, with " + t(0) + " outside, air " + reaches(cold.Air, low) + "; substrate " + reaches(cold.Substrate, low)}
	out.items = []swatch{
		{words: "air, likely course", line: airLine(2.6)},
		{words: "substrate, likely course", line: substrateLine(2.6)},
		{words: "thin: the house cools too"},
		{words: "box: harmful from then on;"},
		{words: "upper air, lower substrate"},
	}
	return out
}

// cutChart draws the courses: thick in a room that stays as it is, thin in one
// that cools. What each is stands between the right end and where there is something else.
func (p *page) cutChart(y float64, c, cold *climate.Cooldown, left, right, next float64) {
	banded := c // whose bands are drawn
	if math.IsInf(float64(c.Air.Likely), 1) {
		banded = cold
	}
	span := cutSpan(banded)
	stays, cools := c.AppendCurve(nil, span, 121), cold.AppendCurve(nil, span, 121)
	last := cools[len(cools)-1]
	lowest := float64(min(c.Limit, last.Air, last.Substrate))
	highest := float64(max(c.Start, c.SubstrateStart, c.Limit))
	margin := max((highest-lowest)/12, 0.5)
	s := newScale(lowest-margin, highest+margin, y+4, cutHeight-4, p.deg)
	x := func(m climate.Minute) float64 { return left + (right-left)*float64(m/span) }
	limit := s.at(float64(c.Limit))

	p.draw.rect(left, limit, right-left, s.y+s.height-limit, fill("harm"), `fill-opacity="0.45"`)
	p.frame(s, left, right)
	p.minutes(span, x, s.y+s.height, right)
	p.draw.line(left, limit, right, limit, hardLine...)
	notes := []note{{limit, "harmful"}}
	for _, one := range []struct {
		points     []climate.Point
		thick      float64
		air, below string
	}{{cools, 1.1, "air, cold house", "substrate, cold house"}, {stays, 2.6, "air", "substrate"}} {
		var air, sub path
		command := byte('M')
		for _, q := range one.points {
			air.to(command, x(q.After), s.at(float64(q.Air)))
			sub.to(command, x(q.After), s.at(float64(q.Substrate)))
			command = 'L'
		}
		p.draw.path(sub.String(), substrateLine(one.thick)...)
		p.draw.path(air.String(), airLine(one.thick)...)
		end := one.points[len(one.points)-1]
		notes = append(notes, note{s.at(float64(end.Air)), one.air}, note{s.at(float64(end.Substrate)), one.below})
	}
	p.reach(banded.Air, span, x, limit-4, warmLine)
	p.reach(banded.Substrate, span, x, limit+4, cool)
	apart(notes, 13, s.y+4, s.y+s.height)
	for _, n := range notes {
		if next == 0 {
			return // there is no room: the key says it
		}
		p.text(right+6, n.y+4, small, "start", wording.Fit(n.text, small, next-right-10, false))
	}
}

func airLine(w float64) []string { return append(stroke(warmLine, w), `fill="none"`) }

func substrateLine(w float64) []string {
	return append(stroke(cool, w), `fill="none"`, `stroke-dasharray="6 3"`)
}

// cutSpan is how much time is shown: until both have fallen to the limit, at least
// two hours and at most two days.
func cutSpan(c *climate.Cooldown) climate.Minute {
	want := climate.Minute(0)
	for _, b := range []climate.Band[climate.Minute]{c.Air, c.Substrate} {
		for _, m := range []climate.Minute{b.Likely, b.High} {
			if !math.IsInf(float64(m), 0) {
				want = max(want, m*1.1)
			}
		}
	}
	if want == 0 {
		want = 24 * 60
	}
	for _, hours := range []climate.Minute{2, 4, 6, 8, 12, 18, 24, 36} {
		if want <= hours*60 {
			return hours * 60
		}
	}
	return 48 * 60
}

// minutes draws the axis of time since the power cut.
func (p *page) minutes(span climate.Minute, x func(climate.Minute) float64, y, right float64) {
	step := climate.Minute(30)
	for _, step = range []climate.Minute{30, 60, 120, 180, 240, 360, 480} {
		if span/step <= 8 {
			break
		}
	}
	for m := climate.Minute(0); m <= span; m += step {
		p.draw.line(x(m), y, x(m), y+4, stroke(frameLine, 0.8)...)
		words := strconv.Itoa(int(m))
		if span > 360 {
			words = strconv.Itoa(int(m/60)) + " h"
		}
		p.text(x(m), y+16, small, "middle", words)
	}
	unit := "min"
	if span > 360 {
		unit = ""
	}
	p.text(right+24, y+16, small, "start", unit)
}

// reach draws the band of a time along the limit line: a box from its low to its high
// end with a mark at what is likely.
func (p *page) reach(b climate.Band[climate.Minute], span climate.Minute, x func(climate.Minute) float64, y float64, colour string) {
	if math.IsInf(float64(b.Low), 0) || b.Low > span {
		return
	}
	from, to := x(b.Low), x(min(b.High, span))
	p.draw.rect(from, y-2.5, to-from, 5, append([]string{`fill="white"`}, stroke(colour, 1.4)...)...)
	if b.Likely <= span {
		p.draw.line(x(b.Likely), y-4, x(b.Likely), y+4, stroke(colour, 2.6)...)
	}
}

// reaches says when something is as cold as low, with the ends of the band.
func reaches(b climate.Band[climate.Minute], low string) string {
	if math.IsInf(float64(b.Likely), 1) {
		return "does not fall to " + low
	}
	if b.Likely <= 0 {
		return "is at " + low + " or below from the start"
	}
	return "falls to " + low + " in about " + wording.Lasting(b)
}
