package check

import (
	"cmp"
	"slices"
	"strconv"
	"strings"

	"vivary/compile/horizon"
	"vivary/plan/finding"
	"vivary/schema/quantity"
)

// meanWeeks is over how many weeks an average is taken that does not say it.
const meanWeeks = 17

func meanLong(r *Rule, c *Collection) {
	for _, k := range c.Plan.Keepers {
		if !k.MeanWeek.Set() {
			continue
		}
		days, over := c.working()[k.Name.V], max(1, k.MeanOver.Or(meanWeeks))
		if days == nil {
			continue
		}
		worst := 0.0
		c.mondays(func(i int) {
			if i+7*over <= c.Horizon.Days {
				worst = max(worst, mean(days[i:i+7*over], over))
			}
		})
		if worst > k.MeanWeek.V.Value {
			c.Add(finding.Finding{Rule: &r.Rule, At: k.MeanWeek.At, Source: r.Source,
				Text:  "up to about " + quantity.Format(worst, quantity.Hours) + " a week on average over " + strconv.Itoa(over) + " weeks: over the figure you set for " + k.Shown(),
				Limit: k.MeanWeek.V.String() + " a week, as the plan says",
				Write: "somebody else for some of it, or another figure"})
		}
	}
}

// mean is what some days come to in a week, of so many.
func mean(days []int, weeks int) float64 {
	sum := 0
	for _, m := range days {
		sum += m
	}
	return float64(sum) / float64(weeks)
}

// breakAfter is for how many minutes somebody works without a break where the plan does not say.
const breakAfter = 6 * 60

func noBreak(r *Rule, c *Collection) {
	for _, k := range c.Plan.Keepers {
		if !k.Break.Set() {
			continue
		}
		most := float64(breakAfter)
		if k.BreakAfter.Set() {
			most = k.BreakAfter.V.Value
		}
		long, worst := c.Horizon.New(), 0
		for d, all := range c.spells(k.Name.V) {
			if n := longest(all, int(k.Break.V.Value)); float64(n) > most {
				long.Add(d)
				worst = max(worst, n)
			}
		}
		if worst > 0 {
			c.Add(finding.Finding{Rule: &r.Rule, At: k.Break.At, Source: r.Source,
				Text:  strings.TrimSpace(k.Shown()+" works for up to about "+quantity.Format(float64(worst), quantity.Hours)+" without a break of "+k.Break.V.String()+" "+c.Horizon.Often(long)) + ": over the figure you set",
				Limit: quantity.Format(most, quantity.Hours) + ", as the plan says",
				Write: "another time, or another keeper, for one of the rounds; or another figure"})
		}
	}
}

// spell is a time of work on a day, in minutes of it.
type spell struct{ from, to int }

// longest is the longest time without a break of so many minutes; spells may overlap.
func longest(all []spell, least int) (out int) {
	slices.SortFunc(all, func(a, b spell) int { return cmp.Compare(a.from, b.from) })
	begun, until := -1, -1
	for _, s := range all {
		if begun < 0 || s.from-until >= least {
			begun, until = s.from, s.from
		}
		until = max(until, s.to)
		out = max(out, until-begun)
	}
	return out
}

// spells are the times of work of a keeper on each day, a round each.
func (c *Collection) spells(keeper string) [][]spell {
	out := make([][]spell, c.Horizon.Days)
	for _, x := range c.Roster.Rounds {
		for d, n := range c.takes(x, keeper) {
			if n > 0 {
				out[d] = append(out[d], spell{int(x.Clock.V), int(x.Clock.V) + n + x.Starts()})
			}
		}
	}
	return out
}

func offWorked(r *Rule, c *Collection) {
	for _, k := range c.Plan.Keepers {
		off := c.Roster.People.Off(k.Name.V)
		if off == nil {
			continue
		}
		var worked horizon.Days
		for d := off.Next(c.Horizon.Today); d >= 0 && d < c.Horizon.Days; d = off.Next(d + 1) {
			if days := c.working()[k.Name.V]; days != nil && days[d] > 0 {
				if worked == nil {
					worked = c.Horizon.New()
				}
				worked.Add(d)
			}
		}
		if worked != nil {
			c.Add(finding.Finding{Rule: &r.Rule, At: k.Off[0].At, Source: r.Source,
				Text:  strings.TrimSpace(k.Shown() + " has work " + c.Horizon.Often(worked) + ", on rest days"),
				Write: "somebody else on these days: a turn of a rota, or a round of theirs; or other rest days"})
		}
	}
}
