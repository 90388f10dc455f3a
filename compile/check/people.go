package check

import (
	"slices"
	"strconv"
	"strings"

	"vivary/compile/roster"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/wording"
)

// Rules about the people: whether they have the time, are there when it matters,
// and can be reached.
var people = []*Rule{
	{Collection: twoPeople, Rule: finding.Rule{ID: "people-few", Severity: finding.Error, Silence: finding.ByReason,
		Title:   "A round needs more people than there are.",
		Why:     "Work that is meant for two is done by one, or not at all.",
		Source:  "docslib.org/doc/2943989, Safe laboratory management for arachnids of medical importance, 2011",
		Instead: "Another keeper block, or fewer people."}},
	{Collection: keeperUnsaid, Rule: finding.Rule{ID: "keeper-unsaid", Severity: finding.Error, Silence: finding.ByReason,
		Title:   "Somebody is away, and who does a round is not said.",
		Why:     "With several keepers and no name at the round, nobody can tell whether an absence leaves the animals alone.",
		Source:  "the design of this program",
		Instead: "Name the keeper of the round."}},
	{Collection: overBudget, Rule: finding.Rule{ID: "day-too-long", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "A day asks more time of a keeper than there is.",
		Why:     "What does not fit is left out, and it is always the same things that are.",
		Source:  "virginiacheeseman.co.uk, a professional breeder's diary of a backlog; the minutes of each care are common practice, no source",
		Instead: "Move weekly care to another day with `from` or `on`, as `vivary level` proposes, or give some of it to somebody else."}},
	{Collection: birthWhileAway, Rule: finding.Rule{ID: "birth-while-away", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "A birth, or what must follow one, falls into an absence.",
		Why:     "A brood that nobody sees is not separated, not fed and not held apart in time.",
		Source:  "lifeandscience.org/keepers/2011/05/18/scorplings: young found by surprise",
		Instead: "Let somebody trained in breeding cover it, or be there."}},
	{Enclosure: livePrey, Rule: finding.Rule{ID: "live-prey-untrained", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "A meal is left out, since the plan has it live and whoever stands in is not trained in feeding.",
		Why:     "Live prey that is not watched bites a soft animal, and gets out. Without killed = false in the plan it is killed first, and given.",
		Source:  "common practice, no source",
		Instead: "Take out killed = false, or train them, or let the meal wait."}},
	{Enclosure: leftUntrained, Rule: finding.Rule{ID: "left-untrained", Severity: finding.Urgent, Silence: finding.Never,
		Title:   "Animals that must not be left without a trained person are.",
		Why:     "A birth, a brood, a moult, mites or an illness ask for decisions, and a stand-in who is not trained may only look from outside.",
		Source:  "common practice, no source; that disturbed mothers eat their young: chrisological.de nachwuchs [keeper]",
		Instead: "Let somebody who is trained stand in on those days, train whoever does, or leave later.",
		Now:     "its keeper goes away, and nobody trained for it comes: find somebody, or leave later"}},
	{Collection: contactUnsaid, Rule: finding.Rule{ID: "contact-unsaid", Severity: finding.Advice, Silence: finding.ByReason,
		Title:   "Somebody stands in, and how to reach the keeper is not said.",
		Why:     "At ten in the evening a stand-in with a question needs a number, and a second one.",
		Source:  "homesafenhappy.com/petownerschecklist.htm and other checklists for owners",
		Instead: "Write phone in both keeper blocks. It is never put into a feed."}},
}

// keeperUnsaid finds rounds of which nobody knows whose they are, once somebody is
// away.
func keeperUnsaid(r *Rule, c *Collection) {
	a := c.nextAway()
	if a == nil || len(c.Plan.Keepers) < 2 {
		return
	}
	for _, round := range c.Roster.Rounds {
		if round.Keeper.Set() {
			continue
		}
		for _, s := range c.Roster.In[round] {
			if s.Keeper == "" {
				at := round.At
				if !at.Written() {
					at = s.Origin
				}
				c.Add(finding.Finding{Rule: &r.Rule, At: at, Text: "who does the " + round.Shown() + " is not said, so whether the absence of " + a.Name.V + " matters cannot be told",
					Source: r.Source, Write: "who does it, as keeper", Also: []finding.Related{{At: a.At, Text: "the absence"}}})
				break
			}
		}
	}
}

// nextAway is the absence that is running or comes first, or nil.
func (c *Collection) nextAway() *plan.Away {
	for _, a := range c.aways() {
		return a
	}
	return nil
}

// aways are the absences that are not over, by first day.
func (c *Collection) aways() []*plan.Away {
	var out []*plan.Away
	for _, a := range c.Plan.Aways {
		if a.From.Set() && a.To.Set() && a.To.V >= a.From.V && a.To.V > c.Today && a.From.V <= c.Horizon.Last() {
			out = append(out, a)
		}
	}
	return out
}

// working is how long everybody works on each day, for all rules that ask.
func (c *Collection) working() roster.Work {
	if c.work == nil {
		c.work = c.Roster.Work()
	}
	return c.work
}

func overBudget(r *Rule, c *Collection) {
	if !slices.ContainsFunc(c.Plan.Keepers, func(k *plan.Keeper) bool { return k.Budget.Set() }) {
		return
	}
	work := c.working()
	for _, k := range c.Plan.Keepers {
		if !k.Budget.Set() {
			continue
		}
		worst, over := 0, c.Horizon.New()
		for d, m := range work[k.Name.V] {
			if float64(m) > k.Budget.V.Value {
				over.Add(d)
			}
			worst = max(worst, m)
		}
		if !over.Empty() {
			c.Add(finding.Finding{Rule: &r.Rule, At: k.Budget.At, Source: r.Source,
				Text:  strings.TrimSpace("up to about "+strconv.Itoa(worst)+" min a day "+c.Horizon.Often(over)) + ": too long for " + k.Shown(),
				Limit: k.Budget.V.String() + " a day, as the plan says",
				Write: "other days for weekly care (from, or on), so that less falls on one"})
		}
	}
}

func birthWhileAway(r *Rule, c *Collection) {
	for _, a := range c.aways() {
		if cover := c.Plan.Keeper(a.Cover.V); cover != nil && cover.TrainedOn(schema.SkillBreeding, a.From.V) {
			continue
		}
		for i, l := range c.Lives {
			if !c.keeps(a.Name.V, i) {
				continue
			}
			for _, g := range l.Groups {
				for _, w := range g.Windows {
					if w.Births() && w.From < a.To.V && a.From.V < w.Until {
						c.Add(finding.Finding{Rule: &r.Rule, At: a.At, In: l.Plan.Box(), Source: r.Source,
							Text:  l.Plan.Name.V + ": " + w.Title + " from " + wording.Dates(w.From, w.Until-1) + ", while " + a.Name.V + " is away",
							Write: "a cover who is trained in breeding", Also: []finding.Related{{At: w.At, Text: "what was logged"}}})
					}
				}
			}
		}
	}
}

// keeps reports whether a keeper does anything for the enclosure at one place of Lives.
func (c *Collection) keeps(keeper string, i int) bool {
	return i < len(c.Roster.Of) && slices.ContainsFunc(c.Roster.Of[i], func(e roster.Entry) bool { return e.Keeper == keeper })
}

func contactUnsaid(r *Rule, c *Collection) {
	for _, a := range c.aways() {
		for _, name := range []string{a.Name.V, a.Cover.V} {
			if p := c.Plan.Keeper(name); p != nil && a.Cover.Set() && !p.Phone.Set() {
				c.Add(finding.Finding{Rule: &r.Rule, At: a.At, Source: r.Source, Text: "how to reach " + p.Shown() + " is not said, and " + a.Cover.V + " stands in", Write: "the number, or where it stands, as phone of keeper \"" + name + "\""})
			}
		}
	}
}

// livePrey finds meals that a plan has live and that are left out, since whoever stands
// in is not to feed live prey.
func livePrey(r *Rule, e *Enclosure) {
	for i := range e.Series {
		s := &e.Series[i]
		if s.Meal == nil || s.Kind != schema.KindFeed || !s.Meal.Killed.Set() || s.Meal.Killed.V {
			continue
		}
		for _, out := range s.Causes {
			d := out.Days.Next(e.Horizon.Today)
			if out.Why != roster.Untrained || d < 0 || e.Roster.May(s, d).Live {
				continue
			}
			who, _ := e.Roster.Doer(s, d)
			e.Add(finding.Finding{Rule: &r.Rule, At: s.Meal.Killed.At, Source: r.Source,
				Text:  "the meal of " + e.Horizon.Date(d).Words() + " is left out: " + who + " stands in, and is not said to be trained in feeding live prey",
				Write: "killed prey on those days; or feeding under trained of keeper \"" + who + "\", once shown"})
			break
		}
	}
}
