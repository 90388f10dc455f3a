package roster

import (
	"slices"
	"time"

	"vivary/compile/horizon"
	"vivary/compile/recur"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema/civil"
)

// listed returns the days of a list such as ["tue", "first sat", "2027-07-20 to 2027-09-01"].
func listed(c *plan.Collection, list []plan.Written[plan.Day], h horizon.Horizon) horizon.Days {
	out := h.New()
	var weekdays civil.Weekdays
	for _, d := range c.Days(list) {
		switch d.V.Kind {
		case plan.EachWeekday:
			weekdays = weekdays.With(d.V.Weekday)
		case plan.NthWeekday:
			recur.MonthWeekday(d.V.Nth, d.V.Weekday, 1, 0).Fill(out, h)
		case plan.DayOfMonth:
			if d.V.Day < 0 {
				recur.MonthDays(0, true, 1, 0).Fill(out, h)
			} else {
				recur.MonthDays(1<<d.V.Day, false, 1, 0).Fill(out, h)
			}
		case plan.DateOfYear:
			recur.Yearly(d.V.Month, d.V.Day).Fill(out, h)
		case plan.PartOfYear, plan.Dated:
			for _, r := range spans(d.V, h) {
				r.Fill(out, h)
			}
		}
	}
	if weekdays != 0 {
		recur.Weekly(weekdays, 1, 0).Fill(out, h)
	}
	return out
}

// spans returns the rules of a day that is a date, or a part of every year: of this a rule
// for each year that the window touches.
func spans(d plan.Day, h horizon.Horizon) []recur.Rule {
	daily := recur.EveryDays(1, 0)
	if d.Kind == plan.Dated {
		return []recur.Rule{daily.Between(d.First, d.Last)}
	}
	from, _, _ := h.From.YMD()
	until, _, _ := h.Last().YMD()
	var out []recur.Rule
	for year := from - 1; year <= until+1; year++ {
		first, ok := civil.Of(year, d.Month, d.Day)
		if !ok { // the 29th of February
			first = civil.Must(year, time.March, 1)
		}
		end := year
		if yearEnds := d.ToMonth < d.Month || d.ToMonth == d.Month && d.ToDay < d.Day; yearEnds {
			end++
		}
		out = append(out, daily.Between(first, civil.Must(end, d.ToMonth, min(d.ToDay, civil.DaysIn(end, d.ToMonth)))))
	}
	return out
}

// by returns the item of a list of days that a date is among, or nil.
func by(c *plan.Collection, list []plan.Written[plan.Day], date civil.Date) *plan.Written[plan.Day] {
	for i := range list {
		for _, d := range c.Days(list[i : i+1]) {
			if d.V.Is(date) {
				return &list[i]
			}
		}
	}
	return nil
}

// exceptions takes out the days that a care is not done on all the same, and puts in those
// that it is done on besides.
func (b *builder) exceptions(e *Entry) {
	t := e.Timing
	if e.Once != nil || t == nil || len(t.NotOn) == 0 && len(t.AlsoOn) == 0 {
		return
	}
	h := b.Horizon
	also := listed(b.Plan, t.AlsoOn, h)
	for i := also.Next(0); i >= 0; i = also.Next(i + 1) {
		if d := h.Date(i); !e.Days.Has(i) && e.first <= d && d <= e.last {
			b.put(e, b.cause(AlsoOn, t.AlsoOn, d), i)
		}
	}
	not := listed(b.Plan, t.NotOn, h)
	not.Subtract(also)
	not.Keep(e.Days)
	for i := not.Next(0); i >= 0; i = not.Next(i + 1) {
		b.take(e, b.cause(NotOn, t.NotOn, h.Date(i)), i)
	}
	if not.Next(h.Today) >= 0 && e.Days.Next(h.Today) < 0 && e.goesOn(h) {
		b.found.Add(finding.Finding{Rule: ruleNeverHappens, At: t.NotOn[0].At, Text: e.Name + " does not come up on any day of the coming year: not_on leaves none", Write: "fewer days in not_on"})
	}
}

// goesOn reports whether the rules of an entry go on past the days that are looked at.
func (e *Entry) goesOn(h horizon.Horizon) bool {
	return slices.ContainsFunc(e.Rules, func(r recur.Rule) bool {
		_, more := r.Next(h.Last() + 1)
		return more
	})
}

// cause is a reason that is an item of a list of days.
func (b *builder) cause(w Why, list []plan.Written[plan.Day], date civil.Date) Cause {
	c := Cause{Why: w, Dates: by(b.Plan, list, date)}
	c.At = c.Dates.At
	return c
}
