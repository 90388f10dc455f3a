package check

import (
	"slices"
	"strconv"

	"vivary/plan/finding"
	"vivary/schema/civil"
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
		Instead: "Move weekly care to another day with `from` or `on`, or give some of it to somebody else."}},
	{Collection: birthWhileAway, Rule: finding.Rule{ID: "birth-while-away", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "A birth, or what must follow one, falls into an absence.",
		Why:     "A brood that nobody sees is not separated, not fed and not held apart in time.",
		Source:  "lifeandscience.org/keepers/2011/05/18/scorplings: young found by surprise",
		Instead: "Let somebody trained in breeding cover it, or be there."}},
	{Collection: contactUnsaid, Rule: finding.Rule{ID: "contact-unsaid", Severity: finding.Advice, Silence: finding.ByReason,
		Title:   "Somebody stands in, and how to reach the keeper is not said.",
		Why:     "At ten in the evening a stand-in with a question needs a number, and a second one.",
		Source:  "homesafenhappy.com/petownerschecklist.htm and other checklists for owners",
		Instead: "Write phone in both keeper blocks. It is never put into a feed."}},
}

func twoPeople(r *Rule, c *Collection) {
	for _, x := range c.Plan.Rounds {
		if !x.People.Set() || x.People.V < 2 {
			continue
		}
		f := finding.Finding{Rule: &r.Rule, At: x.People.At, Source: r.Source}
		text := "the " + x.Shown() + " takes " + strconv.Itoa(x.People.V) + " people, and "
		if n := len(c.Plan.Keepers); x.People.V > n {
			f.Text, f.Write = text+"the plan has "+strconv.Itoa(n), "keeper \"second\" { }"
			c.Add(f)
			continue
		}
		for d := range c.Horizon.Days {
			if n := c.there(d); n < x.People.V {
				f.Text, f.Write = text+"on "+c.Horizon.Date(d).Words()+" there are "+strconv.Itoa(n), "another keeper, or fewer people while somebody is away"
				c.Add(f)
				break
			}
		}
	}
}

// there is how many keepers are not away on day i.
func (c *Collection) there(i int) int {
	n := 0
	for _, k := range c.Plan.Keepers {
		if away := c.Schedule.People.Away(k.Name.V); away == nil || !away.Has(i) {
			n++
		}
	}
	return n
}

// keeperUnsaid finds rounds of which nobody knows whose they are, once somebody is
// away.
func keeperUnsaid(r *Rule, c *Collection) {
	if len(c.Schedule.People.Absences) == 0 || len(c.Plan.Keepers) < 2 {
		return
	}
	for _, round := range c.Schedule.Rounds {
		if round.Keeper.Set() {
			continue
		}
		for _, s := range c.Schedule.In[round] {
			if s.Keeper == "" {
				at := round.At
				if !at.Written() {
					at = s.Origin
				}
				a := c.Schedule.People.Absences[0].Away
				c.Add(finding.Finding{Rule: &r.Rule, At: at, Text: "who does the " + round.Shown() + " is not said, so whether the absence of " + a.Name.V + " matters cannot be told",
					Source: r.Source, Write: "keeper = \"" + c.Plan.Keepers[0].Name.V + "\"", Also: []finding.Related{{At: a.At, Text: "the absence"}}})
				break
			}
		}
	}
}

func overBudget(r *Rule, c *Collection) {
	for _, k := range c.Plan.Keepers {
		if !k.Budget.Set() {
			continue
		}
		minutes := make([]int, c.Horizon.Days)
		for s := range c.Schedule.All() {
			for d := s.Days.Next(0); d >= 0; d = s.Days.Next(d + 1) {
				if who, there := c.Schedule.People.Doer(s.Keeper, d); there && who == k.Name.V {
					minutes[d] += s.Minutes
				}
			}
		}
		worst, over := 0, 0
		for d, m := range minutes {
			if float64(m) > k.Budget.V.Value {
				over++
			}
			if m > minutes[worst] {
				worst = d
			}
		}
		if over > 0 {
			c.Add(finding.Finding{Rule: &r.Rule, At: k.Budget.At, Source: r.Source,
				Text:  "about " + strconv.Itoa(minutes[worst]) + " min on " + c.Horizon.Date(worst).Words() + ", the longest of " + strconv.Itoa(over) + " days that are too long for " + k.Shown(),
				Limit: k.Budget.V.String() + " a day, as the plan says",
				Write: "from or on for weekly care, so that it falls on other days"})
		}
	}
}

func birthWhileAway(r *Rule, c *Collection) {
	for k := range c.Schedule.People.Absences {
		a := &c.Schedule.People.Absences[k]
		if cover := c.Plan.Keeper(a.Away.Cover.V); cover != nil && slices.Contains(cover.Trained.V, "breeding") {
			continue
		}
		from, to := c.Horizon.Date(a.From), c.Horizon.Date(a.To)
		overlaps := func(f, until civil.Date) bool { return f < to && from < until }
		for _, l := range c.Lives {
			for _, g := range l.Groups {
				for _, w := range g.Windows {
					if w.Births() && overlaps(w.From, w.Until) {
						c.Add(finding.Finding{Rule: &r.Rule, At: a.Away.At, In: l.Plan.Whole, Source: r.Source,
							Text:  l.Plan.Name.V + ": " + w.Title + " from " + w.From.Words() + " to " + (w.Until - 1).Words() + ", while " + a.Away.Name.V + " is away",
							Write: "a cover who is trained in breeding", Also: []finding.Related{{At: w.At, Text: "what was logged"}}})
					}
				}
			}
		}
	}
}

func contactUnsaid(r *Rule, c *Collection) {
	for k := range c.Schedule.People.Absences {
		a := c.Schedule.People.Absences[k].Away
		for _, name := range []string{a.Name.V, a.Cover.V} {
			if p := c.Plan.Keeper(name); p != nil && a.Cover.Set() && !p.Phone.Set() {
				c.Add(finding.Finding{Rule: &r.Rule, At: a.At, Source: r.Source, Text: "how to reach " + p.Shown() + " is not said, and " + a.Cover.V + " stands in", Write: "phone = \"…\" in keeper \"" + name + "\""})
			}
		}
	}
}
