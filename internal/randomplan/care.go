package randomplan

import (
	"fmt"
	"slices"
	"strings"
)

// when is a way of saying when, as attributes. Each list goes with an interval that
// the needs of most species bear.
var (
	whenDaily = []string{"every = day", "every = 1 days", `on = ["mon", "tue", "wed", "thu", "fri", "sat", "sun"]`, "cron = 30 19 * * *", "cron = 15 7 * * *", "every = day\nat = 06:45"}
	whenOften = []string{"every = 2 days", "every = day", "every = 2 days\nfrom = 2026-01-05", `on = ["mon", "wed", "fri", "sun"]`, `on = ["tue", "thu", "sat", "sun"]`,
		"after_last = 2 days", "cron = 0 12 */2 * *", "cron = 30 19 * * *", "cron = 15 7 * * 0,1,3,5", "after_last = 1 days"}
	whenWeekly = []string{"every = 7 days", "every = 1 weeks", `on = ["sun"]`, "every = 5 days", "after_last = 7 days", "cron = 40 21 * * 1,4", `on = ["mon", "thu"]`}
	whenMeal   = []string{"every = 5 days", "every = 7 days", `on = ["tue", "fri"]`, `on = ["wed"]`, "after_last = 6 days", "every = 4 days\nfrom = 2026-01-03", "cron = 30 19 * * 2,5", "every = 10 days", ""}
	whenSeldom = []string{"every = 14 days", "every = 1 months", `on = ["first sun"]`, `on = ["15th"]`, `on = ["first tue", "last"]`, "every = 30 days", "cron = 15 7 1,15 * 5", `on = ["wed"]` + "\nevery = 2 weeks", "after_last = 21 days"}
	whenOdd    = []string{"every = 4 days", "every = 9 days", "every = 3 months", `on = ["1 apr", "29 feb"]`, "every = 2 days\nuntil = 2027-06-30", "every = 3 days\nfrom = 2026-12-01", "cron = 0 22 * * 6", "every = 25 days"}
)

// cares adds care of the plan's own beside what the species sheet brings, and meals.
func (p *Plan) cares(b *Box, r *recipe) {
	own := []struct {
		kind string
		when []string
		in   int // of a hundred
		not  bool
	}{
		{"look", whenDaily, 30, false}, {"water", whenOften, 40, !r.dish}, {"heat", whenDaily, 20, r.species == "porcellio-scaber"}, {r.damp, whenOften, 35, r.damp == ""},
		{"spot-clean", whenWeekly, 30, false}, {"dish", whenWeekly, 15, !r.dish}, {"moisture", whenWeekly, 10, false}, {"weigh", whenSeldom, 20, r.damp == "moisten"},
		{"count", whenSeldom, 10, false}, {"deep-clean", []string{"every = 6 months", "every = 3 months"}, 10, false}, {"device-test", []string{"every = 30 days", `on = ["first sat", "16th"]`}, 10, r.heater == nil},
		{"leaves", []string{"every = 4 weeks", "every = 14 days"}, 20, len(r.prey) > 0},
	}
	for _, o := range own {
		if !o.not && p.chance(o.in) {
			b.add(p.care(o.kind, o.when))
		}
	}
	if p.chance(15) {
		b.add(p.care("notes", whenWeekly).text("kind", "other").text("task", "Write up the notes"))
	}
	if p.chance(10) {
		b.add(p.care("evening-look", whenDaily).text("kind", "look").text("task", "Second look at the lid"))
	}
	p.once(b)
	if len(r.prey) == 0 {
		return
	}
	for _, g := range b.Groups {
		if p.chance(65) {
			b.add(p.meal(g, r.prey))
		}
	}
}

func (p *Plan) care(name string, when []string) *Block {
	c := block("care", name)
	if p.chance(4) {
		when = whenOdd
	}
	p.timing(c, pick(p, when))
	if p.chance(15) && (name == "mist" || name == "moisten") {
		c.text("amount", pick(p, []string{"60 ml", "150 ml"}))
	}
	if p.chance(8) {
		c.text("formerly", "former-"+name)
	}
	if p.chance(8) {
		c.text("because", "measured last month")
	}
	p.exceptions(c)
	return c
}

// canWait is care that may stand in a round which is not held every day.
var canWait = []string{"spot-clean", "dish", "moisture", "weigh", "count", "deep-clean", "device-test", "leaves", "notes", "calibrate"}

// timing writes when, in which round and by whom.
func (p *Plan) timing(c *Block, when string) {
	for line := range strings.Lines(when) {
		name, value, _ := strings.Cut(strings.TrimSpace(line), " = ")
		if strings.HasPrefix(value, "[") {
			c.set(name, value)
		} else {
			c.text(name, value)
		}
	}
	if c.has("cron") || c.has("at") {
		if p.chance(20) || len(p.keepers) > 1 && p.chance(85) {
			c.text("keeper", pick(p, p.keepers).Name)
		}
		return
	}
	switch some := p.some(); {
	case len(some) > 0 && p.chance(30) && slices.Contains(canWait, c.Name):
		c.text("round", pick(p, some)).text("window", pick(p, []string{"2 days", "4 days", "6 days"}))
	case p.inTurn != "" && p.chance(25):
		c.set("round", p.inTurn)
	case p.chance(25):
		c.text("round", pick(p, p.daily()))
	case p.chance(6):
		c.set("round", list(p.daily()...))
	}
	if p.chance(12) {
		c.text("keeper", pick(p, p.keepers).Name)
	}
}

func (p *Plan) meal(g *Group, prey []string) *Block {
	f := block("feeding", g.Name)
	p.timing(f, pick(p, whenMeal))
	f.set("per_animal", fmt.Sprint(p.between(1, 2)))
	if len(prey) > 1 && p.chance(50) {
		f.set("rotate", list(prey...))
	} else {
		f.text("prey", pick(p, prey))
	}
	if p.chance(10) {
		f.set("killed", "true")
	}
	if p.chance(15) {
		f.set("gut_load", "true")
	}
	if p.chance(6) {
		f.text("formerly", "former-"+g.Name)
	}
	if p.chance(12) {
		f.text("leftovers_round", pick(p, p.daily()))
	} else if p.inTurn != "" && p.chance(15) {
		f.set("leftovers_round", p.inTurn)
	}
	p.exceptions(f)
	return f
}
