package randomplan

import (
	"math/rand/v2"

	"vivary/schema/civil"
)

// shares lets others have days of some rounds, in some plans with several people: weekends, every
// other week, a holiday, a swap. It throws dice of its own, so that all else in the plan of a
// seed is as it was before there were rotas.
func (p *Plan) shares() {
	rng := p.rng
	p.rng = rand.New(rand.NewPCG(p.Seed, 0x726f7461))
	defer func() { p.rng = rng }()
	for _, k := range p.keepers {
		if p.chance(15) {
			k.set("off", pick(p, []string{`["sun"]`, `["wed", "thu"]`}))
		}
		if p.chance(15) {
			k.add(block("training", "course").text("in", pick(p, []string{"feeding", "breeding, feeding", "venom"})).text("until", (p.Today + civil.Date(p.between(-40, 200))).String()))
		}
		if p.chance(5) {
			k.set("rooms", list(pick(p, p.rooms).Name))
		}
	}
	if len(p.keepers) < 2 || p.chance(60) {
		return
	}
	r := block("rota", "shared").text("week_a", (p.Today - civil.Date(p.between(0, 20))).String())
	weeks := 0
	for range p.between(1, 3) {
		t := block("turn", pick(p, p.keepers).Name)
		switch p.between(0, 3) {
		case 0:
			from := p.Today + civil.Date(p.between(-10, 80))
			t.set("on", list(from.String()+" to "+(from+civil.Date(p.between(0, 12))).String()))
		case 1:
			t.set("on", list((p.Today + civil.Date(p.between(-3, 30))).String()))
		default:
			if weeks == 2 {
				continue // a third would have a day that somebody has
			}
			t.set("on", pick(p, []string{`["sat", "sun"]`, `["fri"]`, `["mon to fri"]`})).text("weeks", string(rune('a'+weeks)))
			weeks++
		}
		r.add(t)
	}
	if len(r.inner) == 0 {
		return
	}
	some := false
	for _, x := range p.rounds {
		if x.has("keeper") && p.chance(60) {
			x.text("rota", r.Name)
			some = true
		}
	}
	if some {
		p.rotas = append(p.rotas, r)
	}
}
