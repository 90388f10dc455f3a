package randomplan

import (
	"fmt"
	"slices"
	"strings"

	"vivary/schema/civil"
)

// Edit changes one small thing in the plan, as a keeper does between two builds,
// and says what.
func (p *Plan) Edit() string {
	for {
		if what := edits[p.rng.IntN(len(edits))](p); what != "" {
			return what
		}
	}
}

// edits return "" where there is nothing of that sort to change.
var edits = []func(*Plan) string{
	func(p *Plan) string {
		if len(p.rotas) == 0 {
			return ""
		}
		t := block("turn", pick(p, p.keepers).Name).set("on", list((p.Today + civil.Date(p.between(0, 30))).String()))
		p.rotas[0].add(t)
		return t.Name + " takes a day of the rota"
	},
	func(p *Plan) string {
		r := pick(p, p.rounds)
		r.text("at", pick(p, []string{"07:00", "11:00", "18:00", "20:45"}))
		return "round " + r.Name + " begins at another time"
	},
	func(p *Plan) string {
		c := p.someCare("care")
		if c == nil {
			return ""
		}
		c.drop("every", "on", "cron", "after_last", "from", "until", "at", "round", "window")
		p.timing(c, pick(p, slices.Concat(whenOften, whenWeekly)))
		return "care " + c.Name + " is done on other days"
	},
	func(p *Plan) string {
		f := p.someCare("feeding")
		if f == nil {
			return ""
		}
		f.set("per_animal", "3")
		return "more prey for " + f.Name
	},
	func(p *Plan) string {
		b := pick(p, p.Boxes)
		c := p.care("calibrate", whenSeldom)
		if slices.ContainsFunc(b.inner, func(x *Block) bool { return x.Name == c.Name }) {
			return ""
		}
		b.add(c)
		return "a new care in " + b.Name
	},
	func(p *Plan) string {
		b := pick(p, p.Boxes)
		of := b.of("care")
		if len(of) == 0 {
			return ""
		}
		gone := pick(p, of)
		if slices.ContainsFunc(p.Log, func(l Line) bool { return l.Box == b.Name && l.Rest == gone.Name }) {
			return ""
		}
		b.inner = slices.DeleteFunc(b.inner, func(x *Block) bool { return x == gone })
		return "care " + gone.Name + " of " + b.Name + " is gone"
	},
	func(p *Plan) string {
		from := p.Today + civil.Date(p.between(1, 60))
		a := block("away", pick(p, p.keepers).Name).text("from", from.String()).text("to", (from + civil.Date(p.between(1, 4))).String())
		p.cover(a, 3)
		p.aways = append(p.aways, a)
		return a.Name + " goes away on " + from.String()
	},
	func(p *Plan) string {
		if len(p.aways) == 0 {
			return ""
		}
		a := pick(p, p.aways)
		a.text("to", (date(a.get("to")) + 2).String())
		return "an absence of " + a.Name + " is longer"
	},
	func(p *Plan) string {
		if len(p.aways) == 0 {
			return ""
		}
		i := p.rng.IntN(len(p.aways))
		p.aways = slices.Delete(p.aways, i, i+1)
		return "somebody stays at home"
	},
	func(p *Plan) string {
		b := pick(p, p.Boxes)
		if b.has("formerly") {
			return ""
		}
		old := b.Name
		b.Name = old + "-new"
		b.text("formerly", old)
		for i := range p.Log {
			if p.Log[i].Box == old {
				p.Log[i].Box = b.Name
			}
		}
		for _, c := range p.calendars {
			for i := range c.attrs {
				c.attrs[i].value = strings.ReplaceAll(c.attrs[i].value, quoted(old), quoted(b.Name))
			}
		}
		return old + " is called " + b.Name
	},
	func(p *Plan) string {
		b := pick(p, p.Boxes)
		b.text("title", fmt.Sprintf("Case %d", len(p.Boxes)))
		return b.Name + " has another title"
	},
}

// someCare returns a block of care, or of meals, of some enclosure, or nil.
func (p *Plan) someCare(word string) *Block {
	var all []*Block
	for _, b := range p.Boxes {
		all = append(all, b.of(word)...)
	}
	if len(all) == 0 {
		return nil
	}
	return pick(p, all)
}
