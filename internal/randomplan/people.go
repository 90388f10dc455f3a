package randomplan

import (
	"fmt"
	"slices"

	"vivary/schema/civil"
)

// Phone is the number of a plan's keeper. Numbers of this range are nobody's.
func Phone(i int) string { return fmt.Sprintf("01632 96%04d", 157+i) }

// people adds keepers and their rounds. The first round is held every day; one
// that is not is used by care that can wait for it.
func (p *Plan) people() {
	for i := range p.between(1, 3) {
		k := block("keeper", []string{"lead", "relief", "third"}[i])
		k.text("phone", Phone(i))
		if p.chance(60) {
			k.text("trained", pick(p, []string{"feeding", "hairs, breeding, feeding", "venom, hairs, breeding, feeding", "hairs"}))
		}
		if p.chance(10) {
			k.text("formerly", "former-"+k.Name)
		}
		p.keepers = append(p.keepers, k)
	}
	at := []string{"08:15", "13:00", "19:30"}
	for i := range p.between(1, 3) {
		r := block("round", []string{"first", "second", "third"}[i]).text("at", at[i])
		if p.chance(96) {
			r.text("keeper", pick(p, p.keepers).Name)
		}
		if i > 0 && p.chance(40) {
			r.set("on", pick(p, []string{`["mon", "wed", "fri"]`, `["tue"]`, `["sat", "sun"]`, `["first sat", "15th", "sun"]`}))
		}
		if p.chance(10) {
			r.text("formerly", "former-"+r.Name)
		}
		if p.chance(30) {
			r.text("within", pick(p, []string{"45 min", "90 min", "3 h"}))
		}
		p.rounds = append(p.rounds, r)
	}
}

// daily are the rounds that are held every day.
func (p *Plan) daily() []string { return p.roundsOn(false) }

// some are the rounds that are held on some days.
func (p *Plan) some() []string { return p.roundsOn(true) }

func (p *Plan) roundsOn(days bool) (out []string) {
	for _, r := range p.rounds {
		if r.has("on") == days {
			out = append(out, r.Name)
		}
	}
	return out
}

// absences adds blocks of days away: the first anywhere, others mostly in some
// relation to one before.
func (p *Plan) absences() {
	if p.chance(25) {
		return
	}
	n := min(p.between(1, 6), p.between(1, 6), p.between(1, 6))
	var spans [][2]civil.Date
	for range n {
		s := p.span(spans)
		spans = append(spans, s)
		who := pick(p, p.keepers).Name
		if len(p.aways) > 0 && p.chance(50) {
			who = p.aways[len(p.aways)-1].Name
		}
		a := block("away", who).text("from", s[0].String()).text("to", s[1].String())
		p.cover(a, int(s[1]-s[0]))
		p.aways = append(p.aways, a)
	}
}

// span is the first day of an absence and the day of return.
func (p *Plan) span(before [][2]civil.Date) [2]civil.Date {
	from := p.Today - 25 + civil.Date(p.rng.IntN(160))
	if len(before) > 0 && p.chance(70) {
		b := pick(p, before)
		from = pick(p, []civil.Date{b[0], b[0] + 1, (b[0] + b[1]) / 2, b[1] - 1, b[1], b[1] + 1})
	}
	return [2]civil.Date{from, from + civil.Date(pick(p, []int{1, 2, 3, 4, 6, 9, 14, 21}))}
}

// cover says who stands in. Longer absences are mostly covered, and mostly on days
// close enough together.
func (p *Plan) cover(a *Block, days int) {
	others := slices.DeleteFunc(p.Keepers(), func(k string) bool { return k == a.Name })
	if len(others) == 0 || p.chance(20) && days < 7 {
		if days > 2 && p.chance(85) {
			a.text("to", (date(a.get("from")) + civil.Date(p.between(1, 2))).String())
		}
		return
	}
	a.text("cover", pick(p, others))
	if p.chance(40) {
		a.set("visits", pick(p, []string{`["mon", "wed", "fri", "sun"]`, `["mon", "thu"]`, `["tue", "sat"]`, `["tue", "thu", "sat", "sun"]`, `["mon", "wed", "fri"]`, `["sun"]`}))
	}
}

// views adds calendars: none, some kind of selection, or several of them.
func (p *Plan) views() {
	add := func(name string) *Block {
		c := block("calendar", name)
		if p.chance(50) {
			c.text("entry", "per care")
		}
		if p.chance(20) {
			c.text("remind", "10 min")
		}
		if p.chance(10) {
			c.text("formerly", "former-"+name)
		}
		p.calendars = append(p.calendars, c)
		return c
	}
	each := func(word string, of []string) {
		for _, n := range of {
			if !p.chance(12) {
				add("by-"+n).set(word, list(n))
			}
		}
	}
	switch p.rng.IntN(12) {
	case 0, 1:
	case 2, 3, 4:
		add("everything")
	case 5, 6:
		each("keepers", p.Keepers())
	case 7:
		each("rooms", names(p.rooms))
	case 8:
		each("rounds", names(p.rounds))
	case 9:
		add("meals").set("kinds", list("feed", "leftovers"))
		if p.chance(70) {
			add("rest").set("kinds", list("look", "heat", "moisture", "water", "mist", "moisten", "leaves", "spot-clean", "dish", "deep-clean", "count", "weigh", "device-test", "other", "gut-load"))
		}
	case 10:
		for _, b := range p.Boxes {
			add("of-"+b.Name).set("enclosures", list(b.Name))
		}
	default:
		if k := p.Keepers(); p.chance(50) {
			add("stand-in").set("keepers", list(k[len(k)-1]))
		} else {
			p.rng.Shuffle(len(k), func(i, j int) { k[i], k[j] = k[j], k[i] })
			add("people").set("keepers", list(k...))
			add("everything")
		}
	}
}

// houses adds rooms.
func (p *Plan) houses() {
	for i := range p.between(1, 2) {
		r := block("room", fmt.Sprintf("room-%d", i+1)).text("temperature", "22 to 25 C").text("humidity", "50 to 60 %")
		switch {
		case p.inTurn != "" && p.chance(35):
			r.set("round", p.inTurn)
		case len(p.rounds) > 1:
			r.text("round", pick(p, p.daily()))
		}
		p.rooms = append(p.rooms, r)
	}
}

// Selected are the enclosures that each calendar may hold, by its name.
func (p *Plan) Selected() map[string][]string {
	out := map[string][]string{}
	if len(p.calendars) == 0 {
		for _, b := range p.Boxes {
			out[p.about.Name] = append(out[p.about.Name], b.Name)
		}
	}
	for _, c := range p.calendars {
		for _, b := range p.Boxes {
			if (!c.has("rooms") || c.lists("rooms", b.get("room"))) && (!c.has("enclosures") || c.lists("enclosures", b.Name)) {
				out[c.Name] = append(out[c.Name], b.Name)
			}
		}
	}
	return out
}
