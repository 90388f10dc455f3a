package check

import (
	"vivary/compile/stock"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/wording"
)

func weekendDelivery(r *Rule, c *Collection) {
	for _, s := range c.Plan.Sellers {
		if s.Fetched.V {
			continue // nothing waits in a depot
		}
		var wrong []string
		for _, d := range s.Delivers {
			if w := d.V.Weekday; d.V.Kind == plan.EachWeekday && (w == 6 || w <= 1) {
				wrong = append(wrong, w.String())
			}
		}
		if len(wrong) > 0 {
			c.Add(finding.Finding{Rule: &r.Rule, At: s.Delivers[0].At, Source: r.Source, Text: s.Shown() + " delivers on " + wording.And(wrong) + ": what comes then was in a depot over a weekend",
				Write: "days from tue to fri"})
		}
	}
}

func coldDelivery(r *Rule, c *Collection) {
	said := map[*plan.Seller]bool{}
	for _, l := range c.lots() {
		for _, x := range l.Supplies {
			s := x.Plan.From
			if !s.Depot.Set() || s.Depot.V || said[s] || s.Fetched.V {
				continue
			}
			for i := range x.Orders {
				if o := &x.Orders[i]; o.Frost || o.Heat {
					said[s] = true
					c.Add(finding.Finding{Rule: &r.Rule, At: s.Depot.At, Source: r.Source, Text: s.Shown() + " delivers " + l.Many() + " in the months of frost or heat too, and no depot holds them",
						Write: "a seller who has one; or frost and heat as the days on which the weather where you are holds a parcel back"})
					break
				}
			}
		}
	}
}

// longClosed finds sellers who bring nothing for so long that what came before does not keep, or
// that some meals have nothing at all.
func longClosed(r *Rule, c *Collection) {
	for _, l := range c.lots() {
		for _, x := range l.Supplies {
			if len(x.Orders) == 0 {
				continue // that is said by stock-short
			}
			at := x.Plan.From.Delivers
			if len(x.Plan.From.Closed) > 0 {
				at = x.Plan.From.Closed
			}
			f := finding.Finding{Rule: &r.Rule, At: at[0].At, Source: r.Source, Write: "another seller of the same prey for that time; or fewer days, if that is a slip"}
			keeps := stock.Keeps(l)
			switch {
			case len(x.Missed) > 0:
				f.Text = x.Plan.From.Shown() + " brings nothing for so long that some meals of " + l.Many() + " have no delivery before them at all"
			case keeps != nil && x.Longest() > int(keeps.Range.High/minutesOfDay):
				f.Text = x.Plan.From.Shown() + " brings nothing for so long that " + l.Many() + " from the delivery before are older by the last meal than they keep"
				f.Limit, f.Source = keeps.Range.String(), c.Cite(keeps)
			default:
				continue
			}
			c.Add(f)
		}
	}
}

const minutesOfDay = 24 * 60

// noReserve finds, by what was counted, young that would have nothing if the next parcel were held.
func noReserve(r *Rule, c *Collection) {
	for _, l := range c.lots() {
		h := l.Held
		if !l.Known || h == nil || len(l.Supplies) == 0 || l.Short.First >= 0 && l.Short.First-c.Horizon.Today <= outSoon {
			continue
		}
		when := "today"
		if h.In > 0 {
			when = "in " + wording.Days(h.In)
		}
		c.Add(finding.Finding{Rule: &r.Rule, At: l.Supplies[0].Plan.At, Source: r.Source, Limit: "the food of the young until the next delivery and " + wording.Days(stock.HeldFor) + " more",
			Text:  "by what was counted, young would have no " + l.Many() + " " + when + ", were the next parcel held back by the weather: " + wording.Count(h.Lacks, "more is", "more are") + " wanted for that",
			Write: "some from nearby, kept for the young alone; what was counted since, in the log, as " + l.Supplies[0].Plan.Name.V + " " + schema.WordCounted.Name + " and how many"})
	}
}

// lateDelivery finds young that may eat before anything that is ordered now can be there.
func lateDelivery(r *Rule, c *Collection) {
	for _, l := range c.lots() {
		if len(l.Supplies) == 0 || len(l.Cultures) > 0 || l.Known && l.Hand > 0 {
			continue
		}
		x := l.Supplies[0]
		comes, ok := x.Soonest(c.Today)
		for i := range l.Broods {
			b := &l.Broods[i]
			if ok && comes+civil.Date(x.Gut) <= b.From || b.From <= c.Today {
				continue
			}
			at := x.Plan.From.At
			if w := x.Plan.From.Lead; w.Set() {
				at = w.At
			}
			f := finding.Finding{Rule: &r.Rule, At: at, Source: r.Source, Write: "another seller, or a tub of them from nearby, so that some are there by then"}
			f.Text = "the young that are expected in " + b.Life.Plan.Name.V + " may eat " + l.Many() + " in " + wording.Days(int(b.From-c.Today)) + ", and what is ordered today from " + x.Plan.From.Shown() + " comes "
			if ok {
				f.Text += "in " + wording.Days(int(comes-c.Today))
			} else {
				f.Text += "on no day of the coming year"
			}
			c.Add(f)
			break
		}
	}
}

// idleSupply finds what is bought for no meal.
func idleSupply(r *Rule, c *Collection) {
	for _, l := range c.lots() {
		for _, x := range l.Supplies {
			if l.Fed(c.Horizon) || len(l.Broods) > 0 || x.Plan.Supply.Besides.Set() {
				continue
			}
			f := finding.Finding{Rule: &r.Rule, At: x.Plan.Prey.At, Source: r.Source, Text: "no meal of the coming year takes " + l.Many() + ", so that none are ever ordered", Write: "the size that the meals take; or besides, how many are used in a week beside the plan"}
			var other []string
			for _, o := range c.lots() {
				if o.Prey.Feeder == l.Prey.Feeder && o.Fed(c.Horizon) {
					other = append(other, o.Prey.String())
				}
			}
			if len(other) > 0 {
				f.Write = wording.Or(other) + ", which the meals take; or besides, how many are used in a week beside the plan"
			}
			c.Add(f)
		}
	}
}

// deliveredTwice finds two lines of one day that say of one supply or tub that as many came in.
// The reader takes lines that are the same to the letter for one already.
func deliveredTwice(r *Rule, c *Collection) {
	type parcel struct {
		store string
		on    civil.Date
		n     float64
	}
	first := map[parcel]*plan.Event{}
	for i := range c.Plan.Log {
		e := &c.Plan.Log[i]
		if e.Word != schema.WordDelivered || !e.Number.Set() || c.Plan.Store(e.Enclosure.V) == nil || int(c.Today-e.Date) > outSoon {
			continue
		}
		k := parcel{e.Enclosure.V, e.Date, e.Number.V}
		if o := first[k]; o == nil {
			first[k] = e
		} else {
			c.Add(finding.Finding{Rule: &r.Rule, At: e.WordAt, Source: r.Source, Text: "two lines of this day say of " + k.store + " that as many were delivered, and both count",
				Write: "if it was one parcel, " + k.store + " " + schema.WordCounted.Name + " and how many there are; else a word in each that tells them apart", Also: []finding.Related{{At: o.WordAt, Text: "the other"}}})
		}
	}
}

// longestGut is from how many hours on nothing is gained: twice what was measured.
const longestGut = 96

// gutLong finds gut-loading that is longer than it helps.
func gutLong(r *Rule, c *Collection) {
	for _, s := range c.Plan.Stores {
		if s.GutLoad.Set() && s.GutLoad.V.Value > longestGut*60 {
			c.Add(finding.Finding{Rule: &r.Rule, At: s.GutLoad.At, Source: r.Source, Limit: "48 h", Text: s.Name.V + " is gut-loaded for " + s.GutLoad.V.String() + ", and comes as much earlier for it", Write: "48 h"})
		}
	}
}
