package assist

import (
	"slices"
	"strconv"
	"strings"

	"vivary/plan"
	"vivary/schema"
	"vivary/schema/quantity"
)

// after offers what may stand behind a word of the log.
func (p *Page) after(o *offers, l *logLine) {
	switch l.word.After {
	case schema.AfterNumber:
		if len(l.args) == 0 {
			p.howMany(o, l)
		}
	case schema.AfterPrey:
		p.eaten(o, l)
	case schema.AfterEnclosure:
		p.movedTo(o, l)
	case schema.AfterWeight:
		o.quantity(p, l, quantity.Mass)
	case schema.AfterCare:
		if len(l.args) == 0 && !l.care {
			p.cares(o, l)
		}
	case schema.AfterDays:
		for _, d := range []string{"7 days", "10 days", "14 days"} {
			if len(l.args) == 0 {
				o.put(offer{Offer: Offer{Label: d, Detail: "how long the course takes", Kind: KindValue}}, false)
			}
		}
	case schema.AfterMeasure:
		p.measures(o, l)
	case schema.AfterTest:
		p.tests(o, l)
	case schema.AfterWord:
		p.takenBack(o, l)
	}
}

// howMany offers how many of the animals there are.
func (p *Page) howMany(o *offers, l *logLine) {
	n := 0
	if l.life != nil {
		for _, g := range l.life.Groups {
			if l.group == "" || g.Animals.Name.V == l.group {
				n += g.Count(p.Result.Today)
			}
		}
	}
	for _, k := range []int{n, 1, 2, 3} {
		if k > 0 && k <= max(n, 3) && !o.has(strconv.Itoa(k)) {
			detail := "of them"
			if k == n {
				detail = "all that are here"
			}
			o.put(offer{Offer: Offer{Label: strconv.Itoa(k), Detail: detail, Kind: KindValue}}, false)
		}
	}
}

// eaten offers prey: what is planned for the animals first. Behind a feeder stand its sizes.
func (p *Page) eaten(o *offers, l *logLine) {
	args := l.args
	if len(args) > 0 {
		if _, err := strconv.ParseFloat(args[0], 64); err == nil {
			args = args[1:]
		}
	}
	usual := map[string]int{}
	if l.life != nil {
		for _, f := range l.life.Plan.Feeding {
			for _, x := range f.Menu() {
				usual[x.V.String()] = 1
			}
		}
	}
	for _, x := range p.feeders() {
		feeder, size, _ := strings.Cut(x.Label, " ")
		x.usual = usual[x.Label]
		switch {
		case len(args) == 0:
			o.put(x, false)
		case len(args) == 1 && args[0] == feeder:
			x.Label, x.also = size, nil
			o.put(x, false)
		}
	}
}

// movedTo offers the enclosures to which animals go, and the animals that they join there.
func (p *Page) movedTo(o *offers, l *logLine) {
	var args []string
	for _, a := range l.args {
		if _, err := strconv.ParseFloat(a, 64); err != nil && a != "to" {
			args = append(args, a)
		}
	}
	switch to := len(l.args) > 0 && l.args[len(l.args)-1] == "to"; len(args) {
	case 0:
		if !to {
			o.put(offer{Offer: Offer{Label: "to", Detail: "the enclosure they went to", Kind: KindLogWord}, usual: 1}, true)
		}
		for _, e := range p.Result.Plan.Enclosures {
			if e.Name.V != l.enclosure {
				o.put(offer{Offer: Offer{Label: e.Name.V, Detail: shownOf(e), Kind: KindName}, also: []string{e.Shown()}}, false)
			}
		}
	case 1:
		there := *l
		there.enclosure, there.life = args[0], p.life(args[0])
		p.groups(o, &there)
	}
}

// cares offers the care of the enclosure, what is due today first. What the plan does not have
// is offered too: it can be done all the same.
func (p *Page) cares(o *offers, l *logLine) {
	for _, n := range p.due(l) {
		o.put(offer{Offer: Offer{Label: n.name, Detail: n.detail, Kind: KindName}, usual: 1}, false)
	}
	for _, n := range p.careNames(l) {
		if !o.has(n.name) {
			o.put(offer{Offer: Offer{Label: n.name, Detail: n.detail, Doc: n.doc, Kind: n.kind}, also: n.also, usual: n.usual}, false)
		}
	}
}

// due are the cares of an enclosure or a rack that stand today, with their tasks.
func (p *Page) due(l *logLine) (all []name) {
	r := p.Result
	if r.Roster == nil {
		return nil
	}
	rack, _ := p.rackOf(l)
	for e := range r.Roster.All() {
		if e.Plan().Name.V != l.enclosure && (rack == nil || e.Rack == nil || e.Rack.Plan != rack) || !e.Days.Has(r.Horizon.Today) || e.Once != nil {
			continue
		}
		called := e.Name
		if e.Kind.Meal {
			called = e.Kind.Name
		}
		if !strings.Contains(called, " ") && !slices.ContainsFunc(all, func(n name) bool { return n.name == called }) {
			all = append(all, name{name: called, detail: "today: " + e.Task})
		}
	}
	return all
}

// careNames are the cares that an enclosure has by its plan and its sheet, and all kinds.
func (p *Page) careNames(l *logLine) (all []name) {
	add := func(list []*plan.Care, usual int) {
		for _, c := range list {
			if !slices.ContainsFunc(all, func(n name) bool { return n.name == c.Name.V }) {
				n := name{name: c.Name.V, usual: usual, kind: KindName, detail: c.Task.V}
				if k := c.What(); k != nil {
					n.doc = k.Doc
				}
				all = append(all, n)
			}
		}
	}
	if e := p.Result.Plan.Enclosure(l.enclosure); e != nil {
		add(e.Care, 0)
		if e.Sheet != nil {
			add(e.Sheet.Care, 0)
		}
	}
	for _, k := range kindNames(p, nil) {
		if !slices.ContainsFunc(all, func(n name) bool { return n.name == k.name }) {
			k.usual = -1
			all = append(all, k)
		}
	}
	return all
}

// measures offers the words for where it was measured, and units behind a number.
func (p *Page) measures(o *offers, l *logLine) {
	if o.quantity(p, l, quantity.Temperature) {
		o.quantity(p, l, quantity.Humidity)
		o.quantity(p, l, quantity.Power)
		return
	}
	for _, c := range schema.MeasuredAt {
		if !slices.Contains(l.args, c.Name) {
			o.put(offer{Offer: Offer{Label: c.Name, Detail: c.Doc, Kind: KindChoice}}, true)
		}
	}
}

// tests offers the gauges that can have been tested, the salts, and units behind a number.
func (p *Page) tests(o *offers, l *logLine) {
	if o.quantity(p, l, quantity.Temperature) {
		o.quantity(p, l, quantity.Humidity)
		return
	}
	if len(l.args) == 0 {
		for _, g := range p.Result.Plan.GaugesAt(l.enclosure) {
			o.put(offer{Offer: Offer{Label: g.Name.V, Detail: "a gauge there", Kind: KindName}, usual: 1}, true)
		}
	}
	for _, c := range schema.Salts {
		if !slices.Contains(l.args, c.Name) {
			o.put(offer{Offer: Offer{Label: c.Name, Detail: c.Doc, Kind: KindChoice}, also: c.Also}, true)
		}
	}
	if len(l.args) > 1 && !slices.Contains(l.args, schema.ShowsWord) {
		o.put(offer{Offer: Offer{Label: schema.ShowsWord, Detail: "then the temperature that the gauge showed", Kind: KindChoice}}, true)
	}
}

// quantity offers units behind a number, and reports whether one stands there.
func (o *offers) quantity(p *Page, l *logLine, d quantity.Dimension) bool {
	if len(l.args) == 0 {
		return false
	}
	if _, err := strconv.ParseFloat(l.args[len(l.args)-1], 64); err != nil {
		return false
	}
	for _, u := range unitsOf(&schema.Attr{Dimension: d}) {
		usual := 0
		if p.Result.Plan.Units.Same(u.unit) {
			usual = 1
		}
		o.put(offer{Offer: Offer{Label: u.name, Detail: d.String(), Kind: KindUnit}, usual: usual}, false)
	}
	return true
}

// takenBack offers the words of the last lines about the enclosure, with their days.
func (p *Page) takenBack(o *offers, l *logLine) {
	if len(l.args) > 1 {
		return
	}
	for i := range slices.Backward(p.Result.Plan.Log) {
		e := &p.Result.Plan.Log[i]
		if e.Enclosure.V != l.enclosure || e.Word == nil || l.group != "" && e.Group.V != l.group {
			continue
		}
		if label := e.Word.Name + " " + e.Date.String(); len(l.args) == 0 && !o.has(label) && len(o.all) < mostElsewhere {
			o.put(offer{Offer: Offer{Label: label, Detail: "the line of " + e.Date.Words(), Kind: KindValue}}, false)
		}
	}
}
