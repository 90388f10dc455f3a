package check

import (
	"strconv"

	"vivary/compile/life"
	"vivary/compile/roster"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/schema"
	"vivary/schema/quantity"
	"vivary/schema/wording"
)

// What is fed. Nothing is checked of vertebrate prey and supplements: no sheet says
// of any that it is bad.
var prey = []*Rule{
	{Enclosure: preyUneaten, Rule: finding.Rule{ID: "prey-uneaten", Severity: finding.Error, Silence: finding.ByReason,
		Title:   "Prey is given to animals that eat none.",
		Why:     "It feeds nobody, and live insects bite those that moult. Eaters of leaves, wood and soil that take a little protein take it dead.",
		Source:  "the species sheet; common practice",
		Instead: "The leaves, fruit or wood that they live on.",
		Now:     "live prey is with animals that eat none: take it out"}},
	{Enclosure: preyHeavy, Rule: finding.Rule{ID: "prey-heavy", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "A prey item is heavy for the animal.",
		Why:     "Large prey injures, or is refused and left in.",
		Source:  "the species sheet; keepers quote a third to a half",
		Instead: "A smaller size, or kill it first."}},
	{Enclosure: preyLong, Rule: finding.Rule{ID: "prey-long", Severity: finding.Error, Silence: finding.ByReason,
		Title:   "A prey item is long for the animal.",
		Why:     "Large prey injures, or is refused and left in. Live prey that is longer than the animal's body refuses, for every hunter.",
		Source:  "the species sheet; keepers quote a third to a half",
		Instead: "A smaller size, or kill it first.",
		Now:     "prey longer than the animal is planned: give a smaller size, or a part of it"}},
	{Enclosure: richPrey, Rule: finding.Rule{ID: "prey-rich", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "A fat feeder comes up more often than it should.",
		Why:     "It is a treat: as a diet it makes an animal fat and lacks what it needs.",
		Source:  "the feeder's sheet",
		Instead: "More of the others in the menu."}},
	{Enclosure: wildPrey, Rule: finding.Rule{ID: "prey-wild", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "Prey is caught outdoors.",
		Why:     "It may carry pesticide, mites and worms.",
		Source:  "arachnopets.com/tarantulas/tcs.htm",
		Instead: "Bred feeders."}},
	{Enclosure: samePrey, Rule: finding.Rule{ID: "prey-same", Severity: finding.Advice, Silence: finding.ByReason,
		Title:   "It is always the same prey.",
		Why:     "No feeder has all that an animal needs.",
		Source:  "a museum keeper, dbuzz-explorer.netlify.app/@herpetologyguy/caring-for-feeders",
		Instead: "Two or three in turn."}},
}

// menuAt is where an item of the menu stands in the plan; where the sheet brings
// it, the animals that it is for.
func (e *Enclosure) menuAt(s *roster.Entry, k int) source.Place {
	if f := e.own(s.Group); f != nil {
		if menu := f.Menu(); k < len(menu) {
			return menu[k].At
		}
	}
	return s.Group.Animals.At
}

// preyUneaten speaks of what a plan gives beside the sheet, which gives no prey to such
// animals.
func preyUneaten(r *Rule, e *Enclosure) {
	f := e.figure(schema.FigureEats)
	if f == nil || e.Sheet.Preys() {
		return
	}
	e.meals(func(s *roster.Entry) {
		x := finding.Finding{Rule: &r.Rule, At: e.menuAt(s, 0), Text: s.Group.Animals.Name.V + " get " + s.Menu[0].Prey.String() + ", and " + e.Sheet.Name.V + " eats no prey",
			Limit: e.limit("leaves, fruit, wood or soil", f), Source: e.Cite(f), Write: "no feeding here; care \"leaves\" is its food"}
		switch {
		case f.Words[0] == "plants":
			e.Add(x)
		case !s.Meal.Killed.V:
			x.Text = s.Group.Animals.Name.V + " get live " + s.Menu[0].Prey.String() + ", and " + e.Sheet.Name.V + " eats only what is dead of it"
			x.Write = "prey that is killed first (killed); its food is care \"leaves\""
			e.Soft(x, finding.Caution)
		}
	})
}

func preyHeavy(r *Rule, e *Enclosure) {
	e.tooBig(r, schema.FigurePreyMassShare, "weighs up to ", (*Enclosure).bodyMass, func(z *plan.FeederSize) plan.Written[quantity.Range] { return z.Mass }, never)
}

func preyLong(r *Rule, e *Enclosure) {
	e.tooBig(r, schema.FigurePreyLengthShare, "is up to ", (*Enclosure).bodyLength, func(z *plan.FeederSize) plan.Written[quantity.Range] { return z.Length }, e.longer)
}

// tooBig compares the largest of a size of prey with the smallest of the animals.
// Killed prey does not fight back and is taken in pieces.
func (e *Enclosure) tooBig(r *Rule, what *schema.Figure, is string, body func(*Enclosure, *life.Group) (quantity.Range, bool), of func(*plan.FeederSize) plan.Written[quantity.Range],
	whole func(*life.Group, quantity.Range) (float64, finding.Severity, bool)) {
	e.meals(func(s *roster.Entry) {
		if s.Meal.Killed.V {
			return
		}
		share := e.least(what, e.stage(s.Group))
		own, known := body(e, s.Group)
		for k := range s.Menu {
			z := e.size(s.Menu[k].Prey)
			if z == nil || !of(z).Set() {
				continue
			}
			item := of(z).V
			prey := func() finding.Finding {
				return finding.Finding{Rule: &r.Rule, At: e.menuAt(s, k), Write: "a smaller size, or prey that is killed first (killed)",
					Text: "a " + s.Menu[k].Prey.String() + " " + is + quantity.Format(item.High, e.in(item.Unit))}
			}
			if long, how, bad := whole(s.Group, item); bad {
				x, about := prey(), quantity.Format(long, e.in(item.Unit))
				x.Text += ": longer than " + s.Group.Animals.Name.V + ", of about " + about
				if how != r.Severity {
					x.Text += ", as far as can be told"
				}
				x.Limit, x.Source = "no longer than the animal's body, "+about, r.Source
				e.Soft(x, how)
				continue
			}
			if share == nil || !known {
				continue
			}
			most := own.Low * share.Range.High / 100
			if item.High > most*(1+1e-9) {
				x := prey()
				x.Text += ": too big for " + s.Group.Animals.Name.V + " of " + quantity.Format(own.Low, e.in(own.Unit))
				x.Limit, x.Source = wording.AtMost(most, e.in(item.Unit))+": "+e.limit(quantity.Format(share.Range.High, quantity.Percent)+" of the animal", share), e.Cite(share)
				e.Soft(x, finding.Caution)
			}
		}
	})
}

// longer judges a size of prey by the length of the animals: the largest of it is longer
// than they are in the middle, and the smallest than the smallest of them. That is wrong
// for all hunters. Where no length is known of the stage it is guessed from the grown, and
// cautioned.
func (e *Enclosure) longer(g *life.Group, item quantity.Range) (long float64, how finding.Severity, bad bool) {
	own, known := e.bodyLength(g)
	how = finding.Error
	if !known {
		if e.of(schema.FigureLength, "adult") == nil {
			return 0, how, false
		}
		own.Low = e.typicalLength(g)
		own.High, how = own.Low, finding.Caution
	}
	long = (own.Low + own.High) / 2
	return long, how, e.Sheet.Preys() && item.High > long*(1+1e-9) && item.Low > own.Low*(1+1e-9)
}

// never is longer for what is no length.
func never(*life.Group, quantity.Range) (float64, finding.Severity, bool) { return 0, 0, false }

func (e *Enclosure) size(p plan.Prey) *plan.FeederSize {
	f := e.Feeder(p.Feeder)
	if f == nil {
		return nil
	}
	return f.Size(p.Size)
}

func richPrey(r *Rule, e *Enclosure) {
	e.meals(func(s *roster.Entry) {
		for k := range s.Menu {
			first := k
			n := 0
			for j := range s.Menu {
				if s.Menu[j].Prey.Feeder == s.Menu[k].Prey.Feeder {
					first = min(first, j)
					n++
				}
			}
			if first < k {
				continue
			}
			sheet := e.Feeder(s.Menu[k].Prey.Feeder)
			if sheet == nil {
				continue
			}
			f := sheet.Figure(schema.FeederShareMax)
			if share := 100 * float64(n) / float64(len(s.Menu)); f != nil && share > f.Range.High+1 {
				e.Add(finding.Finding{Rule: &r.Rule, At: e.menuAt(s, k), Text: sheet.Name.V + " is " + quantity.Format(share, quantity.Percent) + " of the meals",
					Limit: f.Value.V + " at the most, share-max of " + sheet.Name.V, Source: e.Cite(f), Write: "rotate with more of the others"})
			}
		}
	})
}

func wildPrey(r *Rule, e *Enclosure) {
	for _, f := range e.Plan.Feeding {
		if f.Wild.V {
			e.Add(finding.Finding{Rule: &r.Rule, At: f.Wild.At, Text: "the prey of " + f.Name.V + " is caught outdoors", Source: r.Source, Write: "bred feeders, and no wild"})
		}
	}
}

// sameFor is for how many weeks the same prey is passed over (common practice, no
// source).
const sameFor = 12

// samePrey leaves the smallest out: there is little that they can take.
func samePrey(r *Rule, e *Enclosure) {
	e.meals(func(s *roster.Entry) {
		f := e.own(s.Group)
		if f == nil || len(f.Menu()) == 0 || small(e.stage(s.Group)) || s.Days.Count() < 2 || !e.Sheet.Preys() || e.Feeder(s.Menu[0].Prey.Feeder) == nil {
			return
		}
		for k := range s.Menu {
			if s.Menu[k].Prey.Feeder != s.Menu[0].Prey.Feeder {
				return
			}
		}
		last, first := -1, s.Days.Next(e.Horizon.Today)
		for d := first; d >= 0; d = s.Days.Next(d + 1) {
			last = d
		}
		if last-first <= sameFor*7 {
			return
		}
		e.Add(finding.Finding{Rule: &r.Rule, At: e.menuAt(s, 0), Text: s.Group.Animals.Name.V + " get nothing but " + s.Menu[0].Prey.Feeder, Limit: strconv.Itoa(sameFor) + " weeks on one feeder",
			Source: r.Source, Write: "another feeder in turn with it, in rotate"})
	})
}
