package randomplan

import (
	"vivary/schema/civil"
)

// turns adds, to some plans, two rounds that take turns, by weekday or in holidays too.
func (p *Plan) turns() {
	if p.chance(50) {
		from := p.Today + civil.Date(p.between(-20, 120))
		on := []string{from.String() + " to " + (from + civil.Date(p.between(2, 40))).String()}
		if p.chance(50) {
			on = append(on, "24 dec to 2 jan")
		}
		p.dates = append(p.dates, block("dates", "holidays").set("on", list(on...)))
	}
	if p.chance(45) {
		return
	}
	week := block("round", "weekday").text("at", "07:45").set("on", list("mon to fri"))
	end := block("round", "weekend").text("at", "10:30").set("on", list("sat", "sun"))
	if len(p.dates) > 0 && p.chance(70) {
		week.set("not_on", list("holidays"))
		end.set("on", list("sat", "sun", "holidays"))
	}
	for _, r := range []*Block{week, end} {
		if p.chance(96) {
			r.text("keeper", pick(p, p.keepers).Name)
		}
	}
	p.rounds = append(p.rounds, week, end)
	p.inTurn = list("weekday", "weekend")
	if p.chance(30) {
		p.inTurn = list("weekend", "weekday")
	}
}

// free are care and meals that may be left out for a while.
var free = map[string]bool{"spot-clean": true, "dish": true, "moisture": true, "weigh": true, "count": true, "notes": true, "deep-clean": true}

// exceptions adds dates on which care is not done, or done besides.
func (p *Plan) exceptions(c *Block) {
	soon := func() civil.Date { return p.Today + civil.Date(p.between(-10, 90)) }
	if p.chance(10) {
		c.set("also_on", list(soon().String(), soon().String()))
	}
	switch {
	case c.has("not_on"):
	case free[c.Name] && len(p.dates) > 0 && p.chance(25):
		c.set("not_on", list("holidays", soon().String()))
	case free[c.Name] && p.chance(20):
		from := soon()
		c.set("not_on", list(from.String()+" to "+(from+civil.Date(p.between(0, 9))).String(), "25 dec"))
	case c.Word == "feeding" && p.chance(12):
		c.set("not_on", list(soon().String()))
	case p.chance(2):
		c.set("not_on", list(soon().String())) // some needs bear it
	}
}

// once adds care for a date, which most enclosures have now and then.
func (p *Plan) once(b *Box) {
	if p.chance(15) {
		c := block("care", "visit").text("kind", "other").text("task", "Somebody looks at the mouthparts")
		b.add(c.set("on", list((p.Today + civil.Date(p.between(-30, 200))).String())))
	}
}
