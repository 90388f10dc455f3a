package picture

import (
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/quantity"
)

// target is one temperature that is aimed for, over the year.
type target struct {
	words  string
	base   *quantity.Range // outside the seasons; nil where only seasons have it
	own    func(*plan.SeasonClimate) plan.Written[quantity.Range]
	styles [][]string
}

func outlined(fillStyle, line string, more ...string) []string {
	return append([]string{fillStyle, `stroke="` + line + `"`, `stroke-width="1"`}, more...)
}

var (
	warmStyles  = [][]string{outlined(`fill="`+warm+`"`, warmLine)}
	coolStyles  = [][]string{outlined(fill("cool"), cool)}
	nightStyles = [][]string{outlined(fill("night"), ink, `stroke-dasharray="1.5 2"`)}
	roomStyles  = [][]string{{`fill="` + roomFill + `"`, `fill-opacity="0.8"`}}
)

// targets returns what is aimed for: the warm end or what stands for it, the cool
// end and the night.
func (p *page) targets() [3]target {
	var c plan.Climate
	if p.plan.Climate != nil {
		c = *p.plan.Climate
	}
	list := [3]target{
		{"warm end", written(c.WarmEnd), func(s *plan.SeasonClimate) plan.Written[quantity.Range] { return s.WarmEnd }, warmStyles},
		{"cool end", written(c.CoolEnd), func(s *plan.SeasonClimate) plan.Written[quantity.Range] { return s.CoolEnd }, coolStyles},
		{"night", written(c.Night), func(s *plan.SeasonClimate) plan.Written[quantity.Range] { return s.Night }, nightStyles},
	}
	switch first := &list[0]; {
	case first.base != nil:
	case len(c.Heaters) > 0:
		first.words, first.base = "species sheet", p.species(schema.FigureTemperatureTarget)
	case p.room() != nil:
		first.words, first.base, first.styles = asRoom, p.room(), [][]string{outlined(`fill="`+roomFill+`"`, frameLine)}
	}
	return list
}

// asRoom is the target of an enclosure without a heater.
const asRoom = "as the room"

func (p *page) room() *quantity.Range {
	if p.plan.Place == nil {
		return nil
	}
	return written(p.plan.Place.Temperature)
}

// in returns what a season makes of a target: what it says; else its warm end,
// where that is colder than the target is otherwise; else, with the heaters off
// and no warm end, what the room has. Nil is no change.
func (t *target) in(s *plan.Season, room *quantity.Range) *quantity.Range {
	if s.Climate != nil {
		if r := written(t.own(s.Climate)); r != nil {
			return r
		}
		if w := written(s.Climate.WarmEnd); w != nil {
			if t.base != nil && w.Low < t.base.Low {
				return w
			}
			return nil
		}
	}
	if s.Heating.V == "off" && t.base != nil && t.words != asRoom {
		return room
	}
	return nil
}

func written(w plan.Written[quantity.Range]) *quantity.Range {
	if !w.Set() {
		return nil
	}
	return &w.V
}

// temperatures is what is aimed for by day and by night against what the species bears.
func (p *page) temperatures() *chart {
	hard, soft := p.species(schema.FigureTemperatureHard), p.species(schema.FigureTemperatureSoft)
	list, room := p.targets(), p.room()
	out := &chart{heading: "Temperature, " + p.deg.String(), unit: p.deg, hard: hard, soft: soft}
	lowest, highest := 1e9, -1e9
	for _, r := range []*quantity.Range{hard, soft, room} {
		if r != nil {
			lowest, highest = min(lowest, r.Low), max(highest, r.High)
		}
	}
	for _, t := range list {
		c := p.course(t.base, true, func(s *plan.Season) *quantity.Range { return t.in(s, room) })
		c.span(&lowest, &highest)
		out.bands = append(out.bands, band{c, t.styles})
	}
	if lowest > highest {
		lowest, highest = 15, 30
	}
	out.measured = p.measured(false, p.deg)
	reach(out.measured, 12, &lowest, &highest)
	margin := max((highest-lowest)/18, 1)
	out.low, out.high = lowest-margin, highest+margin
	if room != nil && list[0].words != asRoom {
		out.room = room
	}
	out.items = swatches(out.measured)
	for _, t := range list {
		if t.base != nil {
			out.items = append(out.items, swatch{words: t.words + " " + shown(*t.base, p.deg), styles: t.styles})
		}
		for _, season := range p.plan.Seasons {
			if r := t.in(season, room); r != nil {
				words := "in " + season.Name.V + ": " + shown(*r, p.deg)
				if t.base == nil {
					out.items = append(out.items, swatch{words: t.words + " " + words, styles: t.styles})
				} else {
					out.items = append(out.items, swatch{words: words})
				}
			}
		}
	}
	switch {
	case list[0].base == nil:
		out.items = append(out.items, swatch{words: "no temperature planned"})
	case list[2].base == nil && list[0].words != asRoom:
		out.items = append(out.items, swatch{words: "night as day: none planned"})
	}
	if out.room != nil {
		out.items = append(out.items, swatch{words: "room " + shown(*room, p.deg), styles: roomStyles})
	}
	p.say("Temperatures:")
	p.sayItems(out)
	return out
}

func (p *page) sayItems(c *chart) {
	for _, it := range c.items {
		if !it.silent {
			p.say(it.words + ".")
		}
	}
}

// humidity is the humidity that is planned against what the species bears.
func (p *page) humidity() *chart {
	base, words := p.species(schema.FigureHumidityTarget), "species sheet"
	if p.plan.Climate != nil && p.plan.Climate.Humidity.Set() {
		base, words = written(p.plan.Climate.Humidity), "planned"
	}
	season := func(s *plan.Season) *quantity.Range {
		if s.Climate == nil {
			return nil
		}
		return written(s.Climate.Humidity)
	}
	style := outlined(fill("cool"), cool)
	out := &chart{heading: "Humidity, %", unit: quantity.PercentRH, low: 0, high: 100,
		hard: p.species(schema.FigureHumidityHard), soft: p.species(schema.FigureHumiditySoft),
		bands: []band{{p.course(base, false, season), [][]string{style}}}}
	out.measured = p.measured(true, quantity.PercentRH)
	out.items = swatches(out.measured)
	if base != nil {
		out.items = append(out.items, swatch{words: words + " " + shown(*base, quantity.PercentRH), styles: [][]string{style}})
	}
	for _, x := range p.plan.Seasons {
		if r := season(x); r != nil {
			out.items = append(out.items, swatch{words: "in " + x.Name.V + ": " + shown(*r, quantity.PercentRH)})
		}
	}
	p.say("Humidity:")
	p.sayItems(out)
	return out
}
