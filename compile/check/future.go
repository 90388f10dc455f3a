package check

import (
	"slices"
	"strconv"

	"vivary/compile/food"
	"vivary/compile/growth"
	"vivary/compile/life"
	"vivary/plan/finding"
	"vivary/schema/civil"
	"vivary/schema/quantity"
	"vivary/schema/wording"
)

// soon is how many days ahead something that grows out of its box or its prey is a
// caution, and later how many it is advice. Common practice, no source.
const (
	soon  = 90
	later = 365
)

// Rules about what is to come: growth, broods, and whether the food is enough.
var future = []*Rule{
	{Enclosure: outgrows, Rule: finding.Rule{ID: "outgrows-soon", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "The animals will outgrow the enclosure.",
		Why:     "Growth comes in moults, and a box that fits today is too small after the next two.",
		Source:  "Dyar's rule with the species' growth factor, or that of its kin; the floor is the species sheet's",
		Instead: "Plan the larger box."}},
	{Enclosure: preyOutgrown, Rule: finding.Rule{ID: "prey-outgrown", Severity: finding.Advice, Silence: finding.ByReason,
		Title:   "The prey will not fit the animals any more.",
		Why:     "An animal that has moulted takes larger prey, and hardly hunts what is tiny beside it. What is only small brings less, which its energy shows, and is not meant here.",
		Source:  "the species sheet; Dyar's rule for what they grow to",
		Instead: "Plan the larger prey, or take out what the plan writes of it, and the sheet's meals follow the stage."}},
	{Enclosure: energy, Rule: finding.Rule{ID: "food-energy", Severity: finding.Advice, Silence: finding.ByReason,
		Title:   "The food of a week is far from what the animals spend.",
		Why:     "Measured on kin: less than half of what rest takes starves in the long run, more than five times makes fat. No measurement exists for most species kept, so the band is wide and the abdomen has the last word.",
		Source:  "Withers and Smith 1993, J. therm. Biol. 18:13-18 (scorpions); Nespolo et al. 2011, Comp. Biochem. Physiol. A 159:379-382 (tarantulas); Finke 2002, Zoo Biol. 21:269-285 (prey)",
		Instead: "Look at the animals, and feed more or less."}},
}

// forecast returns what is to be expected of the enclosure, worked out once for all
// its rules.
func (e *Enclosure) forecast() (*growth.Report, bool) {
	if !e.grown {
		e.grown = true
		e.growth, e.grows = growth.Of(e.Life, e.Collection.Plan, e.Today)
	}
	return &e.growth, e.grows
}

func outgrows(r *Rule, e *Enclosure) {
	g, ok := e.forecast()
	if !ok || g.TooSmall.When != growth.Between || g.TooSmall.From > e.Today+later {
		return
	}
	area := func(cm2 float64) string {
		return quantity.Format(cm2, e.Plan.Units.Of(quantity.SquareCentimetre))
	}
	f := finding.Finding{Rule: &r.Rule, At: e.Plan.Housing.Inside.At, Source: r.Source,
		Text:  "the enclosure becomes too small " + e.grownBy(g.TooSmall),
		Limit: area(max(g.Grown.Floor, g.Brood.Reared)) + " of floor needed then, floor-first and floor-further of " + e.Sheet.Name.V + "; there are " + area(g.Now.Has),
		Write: "a larger inside by then"}
	if g.TooSmall.From <= e.Today+soon && !e.rears() {
		e.Add(f)
	} else {
		e.Soft(f, finding.Advice)
	}
}

// rears reports whether young are with their mother: where they will go is still open.
func (e *Enclosure) rears() bool {
	return slices.ContainsFunc(e.Life.Groups, func(g *life.Group) bool { return g.Mother != nil && e.count(g) > 0 })
}

// grownBy says when the enclosure is outgrown. A day that is reckoned from today is told by
// how far off it is: nobody saw it begin, and it would be another each morning.
func (e *Enclosure) grownBy(d growth.Due) string {
	tomorrow, ok := growth.Of(e.Life, e.Collection.Plan, e.Today+1)
	next := tomorrow.TooSmall
	off := func(day civil.Date) string { return strconv.Itoa(int(day - e.Today)) }
	switch {
	case !ok || next.From == d.From && next.Until == d.Until:
		return between(d)
	case next.From == d.From:
		return "from " + d.From.Words() + " on at the soonest, if they grow so"
	case d.Until == 0 || d.Until == d.From:
		return "in " + off(d.From) + " days at the soonest: it is not known when they last moulted"
	case d.From <= e.Today+1:
		return "within " + off(d.Until) + " days, it may be soon: it is not known when they last moulted"
	}
	return "in " + off(d.From) + " to " + off(d.Until) + " days, if they moulted today: it is not known when they last did"
}

func between(d growth.Due) string {
	if d.Until == 0 || d.Until == d.From {
		return "from " + d.From.Words() + " on, if they grow so"
	}
	return wording.Between(d.From, d.Until)
}

// preyOutgrown speaks of prey that is too small; prey that is too big is for the
// rules about prey.
func preyOutgrown(r *Rule, e *Enclosure) {
	if len(e.Plan.Feeding) == 0 {
		return // the sheet's meals follow the stage
	}
	g, ok := e.forecast()
	if !ok || g.Prey.Share != nil || g.Prey.Group == nil || !near(g.Prey.Due, e.Today) {
		return
	}
	m := &g.Prey
	text := m.Prey.V.String() + " is too small for " + m.Group.Animals.Name.V
	if m.When == growth.Between {
		text = m.Prey.V.String() + " will be too small for " + m.Group.Animals.Name.V + ", once they are " + m.Stage + ": " + between(m.Due)
	}
	x := finding.Finding{Rule: &r.Rule, At: m.Prey.At, Source: e.Cite(m.Least), Text: text,
		Limit: e.limit(quantity.Format(m.Least.Range.Low, quantity.Percent)+" of the animal's length at the least", m.Least)}
	if m.Usual.Feeder != "" {
		x.Write = m.Usual.String() + " from then on"
	}
	e.Add(x)
}

func near(d growth.Due, today civil.Date) bool {
	return d.When == growth.Now || d.When == growth.Between && d.From <= today+soon
}

func energy(r *Rule, e *Enclosure) {
	if len(e.Plan.Feeding) == 0 {
		return
	}
	for _, g := range e.Life.Groups {
		f, ok := food.Of(e.Roster, e.Series, g, e.Today)
		if !ok || f.Verdict == food.Plausible {
			continue
		}
		at := g.Animals.At
		if own := e.own(g); own != nil {
			at = own.At
		}
		e.Add(finding.Finding{Rule: &r.Rule, At: at, Source: r.Source,
			Text:  "the meals of " + g.Animals.Name.V + " bring " + wording.Energy(f.Offered, e.Plan.Units) + " a week for one animal: " + f.Verdict.String(),
			Limit: "about " + wording.Energy(f.Need, e.Plan.Units) + " a week by its kin's rate at rest, and what moving and growing add",
			Write: "look at the animals; more or fewer items"})
	}
}
