package check

import (
	"slices"
	"strings"

	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema/quantity"
)

// Hours of the people against figures that the plan itself sets: what is agreed with somebody,
// or what the law asks for where they work, is for the house to look up and to write down.
var hours = []*Rule{
	{Collection: weekLong, Rule: finding.Rule{ID: "week-too-long", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "A week asks more time of a keeper than the plan sets.",
		Why:     "What does not fit is left out, or somebody works longer than was agreed.",
		Source:  "the plan's own week; the minutes of each care are common practice, no source",
		Instead: "Give some of it to somebody else, do some of it less often where the needs allow it, or set another figure."}},
	{Collection: restShort, Rule: finding.Rule{ID: "rest-short", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "From the last round of a day to the first of the next a keeper has less rest than the plan sets.",
		Why:     "Whoever comes late in the evening and early in the morning makes mistakes, and with some animals makes them once.",
		Source:  "the plan's own rest; 11 h a day are in directive 2003/88/EC, by osha.europa.eu",
		Instead: "Another time or another keeper for one of the rounds, or another figure."}},
	{Collection: meanLong, Rule: finding.Rule{ID: "weeks-too-long", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "Over many weeks a keeper works longer on average than the plan sets.",
		Why:     "What one long week asks the next may give back. What does not come back is how somebody works.",
		Source:  "the plan's own mean_week; 48 h a week on average are in directive 2003/88/EC, by osha.europa.eu, over how long is from memory",
		Instead: "Give some of it to somebody else, by a rota or by a round of theirs, or set another figure."}},
	{Collection: noBreak, Rule: finding.Rule{ID: "break-short", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "A keeper works longer without a break than the plan sets.",
		Why:     "Whoever is tired lifts the wrong lid.",
		Source:  "the plan's own break; that there is one after 6 h is in directive 2003/88/EC, by osha.europa.eu, and how long it is differs by country",
		Instead: "A round at another time, some of it by somebody else, or another figure."}},
	{Collection: offWorked, Rule: finding.Rule{ID: "rest-day-worked", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "A keeper has work on a rest day of theirs.",
		Why:     "Either nobody comes that day, or somebody never rests.",
		Source:  "the plan's own off; a day off in each week is in directive 2003/88/EC, by osha.europa.eu",
		Instead: "Give these days to somebody else, by a rota or a round of theirs."}},
}

// mondays calls use for the first days of the weeks that lie within the horizon whole.
func (c *Collection) mondays(use func(i int)) {
	from := c.Horizon.Today
	for c.Horizon.Date(from).Weekday() != c.Plan.Units.Week() {
		from++
	}
	for ; from+7 <= c.Horizon.Days; from += 7 {
		use(from)
	}
}

func weekLong(r *Rule, c *Collection) {
	if !slices.ContainsFunc(c.Plan.Keepers, func(k *plan.Keeper) bool { return k.Week.Set() }) {
		return
	}
	work := c.working()
	for _, k := range c.Plan.Keepers {
		days := work[k.Name.V]
		if !k.Week.Set() || days == nil {
			continue
		}
		worst := c.longestWeek(days)
		if float64(worst) > k.Week.V.Value {
			c.Add(finding.Finding{Rule: &r.Rule, At: k.Week.At, Source: r.Source,
				Text:  "up to about " + quantity.Format(float64(worst), quantity.Hours) + " a week: over the figure you set for " + k.Shown(),
				Limit: k.Week.V.String() + " a week, as the plan says",
				Write: "another keeper for some of the rounds, or another figure"})
		}
	}
}

// longestWeek returns how many minutes the longest whole week has, of those of each day.
func (c *Collection) longestWeek(days []int) (worst int) {
	c.mondays(func(i int) {
		if i+7 <= len(days) {
			worst = max(worst, int(mean(days[i:i+7], 1)))
		}
	})
	return worst
}

// Hours is how much one of the people works from today on, in minutes: on the longest day and in
// the longest week, and how long the shortest rest is between two days that follow each other,
// where there are such.
type Hours struct {
	Day, Week, Rest int
	Rested          bool
}

// Hours returns how much each keeper of the plan works, in their order.
func (c *Collection) Hours() []Hours {
	work := c.Roster.Work()
	out := make([]Hours, len(c.Plan.Keepers))
	for i, k := range c.Plan.Keepers {
		x := &out[i]
		for _, n := range work[k.Name.V] {
			x.Day = max(x.Day, n)
		}
		x.Week = c.longestWeek(work[k.Name.V])
		days := c.shifts(k.Name.V)
		for d := c.Horizon.Today; d+1 < c.Horizon.Days; d++ {
			if rest, both := resting(days[d], days[d+1]); both && (!x.Rested || rest < x.Rest) {
				x.Rest, x.Rested = rest, true
			}
		}
	}
	return out
}

// resting returns the minutes from the end of one day's work to the beginning of the next day's;
// false where on one of the two there is none.
func resting(a, b shift) (int, bool) { return 24*60 - a.to + b.from, a.to > 0 && b.to > 0 }

// shift is from when until when somebody is at work on a day, in minutes of it, with the round
// that begins it and the one that ends it; to is 0 where they do nothing.
type shift struct {
	from, to    int
	first, last *plan.Round
}

func restShort(r *Rule, c *Collection) {
	for _, k := range c.Plan.Keepers {
		if !k.Rest.Set() {
			continue
		}
		days := c.shifts(k.Name.V)
		short, worst, at := c.Horizon.New(), 0, -1
		for d := c.Horizon.Today; d+1 < c.Horizon.Days; d++ {
			if rest, both := resting(days[d], days[d+1]); both && float64(rest) < k.Rest.V.Value {
				short.Add(d)
				if at < 0 || rest < worst {
					worst, at = rest, d
				}
			}
		}
		if last := c.Horizon.Days - 1; last > 0 && short.Has(last-1) {
			short.Add(last) // what comes after it is not looked at
		}
		if at >= 0 {
			c.Add(finding.Finding{Rule: &r.Rule, At: k.Rest.At, Source: r.Source,
				Text: strings.TrimSpace("from the end of the "+days[at].last.Shown()+" to the "+days[at+1].first.Shown()+" "+k.Shown()+" has about "+quantity.Format(float64(worst), quantity.Hours)+" "+c.Horizon.Often(short)) +
					": under the figure you set",
				Limit: k.Rest.V.String() + ", as the plan says",
				Write: "another time, or another keeper, for one of the two; or another figure"})
		}
	}
}

// shifts are the days of a keeper: each round lasts as long as what they do in it.
func (c *Collection) shifts(keeper string) []shift {
	out := make([]shift, c.Horizon.Days)
	for _, x := range c.Roster.Rounds {
		for d, n := range c.takes(x, keeper) {
			if n == 0 {
				continue
			}
			s := &out[d]
			from := int(x.Clock.V)
			if to := from + n + x.Starts(); to > s.to {
				s.to, s.last = to, x
			}
			if s.first == nil || from < s.from {
				s.from, s.first = from, x
			}
		}
	}
	return out
}

// takes is how long a keeper works in a round on each day, without what it takes to begin.
func (c *Collection) takes(x *plan.Round, keeper string) []int {
	out := make([]int, c.Horizon.Days)
	for _, e := range c.Roster.In[x] {
		for d := e.Days.Next(c.Horizon.Today); d >= 0 && d < c.Horizon.Days; d = e.Days.Next(d + 1) {
			if who, there := c.Roster.Doer(e, d); there && who == keeper {
				out[d] += e.Minutes
			}
		}
	}
	return out
}
