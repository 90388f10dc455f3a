package roster

import (
	"vivary/compile/horizon"
	"vivary/compile/recur"
	"vivary/plan"
	"vivary/schema/civil"
)

// People are the days of the keepers.
type People struct {
	Only     string // the one keeper of a collection that has just one
	Absences []Absence
	over     []Absence // those that ended not long before the horizon
	away     map[string]horizon.Days
}

// Absence is one away block on the horizon.
type Absence struct {
	Away     *plan.Away
	Days     horizon.Days // the days away
	Visits   horizon.Days // those of them on which the stand-in comes
	From, To int          // places on the horizon, cut to it; To is the day of return
	Before   int          // the place of the first day away, which may lie before the horizon
}

func people(c *plan.Collection, h horizon.Horizon) *People {
	p := &People{away: map[string]horizon.Days{}}
	if len(c.Keepers) == 1 {
		p.Only = c.Keepers[0].Name.V
	}
	for _, a := range c.Aways {
		if !a.From.Set() || !a.To.Set() || a.To.V < a.From.V {
			continue
		}
		from, to := int(a.From.V-h.From), int(a.To.V-h.From)
		if to < 0 && to >= -margin {
			p.over = append(p.over, Absence{Away: a, To: to, Before: from})
		}
		if to < 0 || from >= h.Days {
			continue
		}
		x := Absence{Away: a, Days: h.New(), Visits: h.New(), From: max(from, 0), To: min(to, h.Days), Before: from}
		x.Days.AddRun(from, to, h.Days)
		if a.Cover.Set() {
			if len(a.Visits) == 0 {
				x.Visits.Union(x.Days)
			} else {
				x.Visits = listed(a.Visits, h)
				for i := range x.Visits {
					x.Visits[i] &= x.Days[i]
				}
			}
		}
		p.Absences = append(p.Absences, x)
		if p.away[a.Name.V] == nil {
			p.away[a.Name.V] = h.New()
		}
		p.away[a.Name.V].Union(x.Days)
	}
	// Somebody who is away does not stand in for others.
	for k := range p.Absences {
		if days := p.away[p.Absences[k].Away.Cover.V]; days != nil {
			p.Absences[k].Visits.Subtract(days)
		}
	}
	return p
}

// Away returns the days on which a keeper is away, or nil for none.
func (p *People) Away(keeper string) horizon.Days { return p.away[keeper] }

// Doer returns who does what keeper would do on day i: the keeper, the stand-in
// on a day of a visit, or "" and false where nobody is there.
func (p *People) Doer(keeper string, i int) (string, bool) {
	for k := range p.Absences {
		a := &p.Absences[k]
		if a.Away.Name.V == keeper && a.Days.Has(i) {
			if a.Visits.Has(i) {
				return a.Away.Cover.V, true
			}
			return "", false
		}
	}
	return keeper, true
}

// listed returns the days of a list such as ["tue", "first sat"].
func listed(list []plan.Written[plan.Day], h horizon.Horizon) horizon.Days {
	out := h.New()
	var weekdays civil.Weekdays
	for _, d := range list {
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
		}
	}
	if weekdays != 0 {
		recur.Weekly(weekdays, 1, 0).Fill(out, h)
	}
	return out
}
