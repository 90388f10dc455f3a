package picture

import (
	"vivary/plan"
	"vivary/schema/quantity"
)

// target is one temperature that is aimed for, over the year.
type target struct {
	words  string
	base   *quantity.Range // outside the seasons; nil where only seasons have it
	season func(*plan.Season) *quantity.Range
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

// targets returns what is aimed for, and whether that includes what the room does.
func (p *page) targets() (list []target, room bool) {
	var base plan.Climate
	if p.plan.Climate != nil {
		base = *p.plan.Climate
	}
	off := func(s *plan.Season) *quantity.Range {
		if s.Heating.V == "off" && p.plan.Place != nil {
			return written(p.plan.Place.Temperature)
		}
		return nil
	}
	of := func(pick func(*plan.SeasonClimate) plan.Written[quantity.Range], offToo bool) func(*plan.Season) *quantity.Range {
		return func(s *plan.Season) *quantity.Range {
			if s.Climate != nil {
				if r := written(pick(s.Climate)); r != nil {
					return r
				}
			}
			if offToo {
				return off(s)
			}
			return nil
		}
	}
	warmEnd := of(func(c *plan.SeasonClimate) plan.Written[quantity.Range] { return c.WarmEnd }, true)
	if base.WarmEnd.Set() {
		list = append(list, target{"warm end", written(base.WarmEnd), warmEnd, warmStyles})
	} else if len(base.Heaters) > 0 {
		list = append(list, target{"as the species sheet", p.species("temperature-target"), warmEnd, warmStyles})
	} else if p.plan.Place != nil && p.plan.Place.Temperature.Set() {
		list, room = append(list, target{"as the room", written(p.plan.Place.Temperature), warmEnd, warmStyles}), true
	} else {
		list = append(list, target{"warm end", nil, warmEnd, warmStyles})
	}
	list = append(list,
		target{"cool end", written(base.CoolEnd), of(func(c *plan.SeasonClimate) plan.Written[quantity.Range] { return c.CoolEnd }, base.CoolEnd.Set()), coolStyles},
		target{"night", written(base.Night), of(func(c *plan.SeasonClimate) plan.Written[quantity.Range] { return c.Night }, base.Night.Set()), nightStyles})
	return list, room
}

func written(w plan.Written[quantity.Range]) *quantity.Range {
	if !w.Set() {
		return nil
	}
	return &w.V
}

// temperatures draws what is aimed for by day and by night against what the
// species bears.
func (p *page) temperatures(y, height float64) {
	hard, soft := p.species("temperature-hard"), p.species("temperature-soft")
	list, roomIsTarget := p.targets()
	var room *quantity.Range
	if p.plan.Place != nil && !roomIsTarget {
		room = written(p.plan.Place.Temperature)
	}
	lowest, highest := 1e9, -1e9
	for _, r := range []*quantity.Range{hard, soft, room} {
		if r != nil {
			lowest, highest = min(lowest, r.Low), max(highest, r.High)
		}
	}
	courses := make([]course, len(list))
	for i, t := range list {
		courses[i] = p.course(t.base, true, t.season)
		courses[i].span(&lowest, &highest)
	}
	if lowest > highest {
		lowest, highest = 15, 30
	}
	margin := max((highest-lowest)/18, 1)
	s := newScale(lowest-margin, highest+margin, y, height, p.deg)

	var items []swatch
	p.say("Temperatures:")
	if room != nil {
		p.draw.Rect(plotLeft, s.at(room.High), plotRight-plotLeft, s.at(room.Low)-s.at(room.High), roomStyles[0]...)
	}
	p.frame(s, plotLeft, plotRight)
	for i, t := range list {
		for _, style := range t.styles {
			p.band(courses[i], s.at, style...)
		}
		if t.base != nil {
			items = append(items, swatch{t.words + " " + shown(*t.base, p.deg), t.styles})
		}
		for _, season := range p.plan.Seasons {
			if r := t.season(season); r != nil && t.words != "as the room" {
				words := "in " + season.Name.V + ": " + shown(*r, p.deg)
				if t.base == nil {
					items = append(items, swatch{t.words + " " + words, t.styles})
				} else {
					items = append(items, swatch{words, nil})
				}
			}
		}
	}
	if list[len(list)-1].base == nil && !roomIsTarget {
		items = append(items, swatch{"night as day: none planned", nil})
	}
	if room != nil {
		items = append(items, swatch{"room " + shown(*room, p.deg), roomStyles})
	}
	for _, it := range items {
		p.say(it.words + ".")
	}
	p.key(y, height, "Temperature, "+p.deg.String(), items)
	p.limits(s, hard, soft)
}

// humidity draws the humidity that is planned against what the species bears.
func (p *page) humidity(y, height float64) {
	base, words := p.species("humidity-target"), "as the species sheet"
	if p.plan.Climate != nil && p.plan.Climate.Humidity.Set() {
		base, words = written(p.plan.Climate.Humidity), "planned"
	}
	season := func(s *plan.Season) *quantity.Range {
		if s.Climate == nil {
			return nil
		}
		return written(s.Climate.Humidity)
	}
	s := newScale(0, 100, y, height, quantity.PercentRH)
	p.say("Humidity:")
	p.frame(s, plotLeft, plotRight)
	style := outlined(fill("cool"), cool)
	p.band(p.course(base, false, season), s.at, style...)
	var items []swatch
	if base != nil {
		items = append(items, swatch{words + " " + shown(*base, quantity.PercentRH), [][]string{style}})
	}
	for _, x := range p.plan.Seasons {
		if r := season(x); r != nil {
			items = append(items, swatch{"in " + x.Name.V + ": " + shown(*r, quantity.PercentRH), nil})
		}
	}
	for _, it := range items {
		p.say(it.words + ".")
	}
	p.key(y, height, "Humidity, %", items)
	p.limits(s, p.species("humidity-hard"), p.species("humidity-soft"))
}
