package life

import (
	"strings"

	"vivary/compile/horizon"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/wording"
)

// seasonsBack is how many years before the horizon seasons are known: what they
// took out of an endless series of entries stays out for so long.
const seasonsBack = 3

// seasonAhead is how many days after the horizon a season may begin and still be of
// it: its meals end before it begins.
const seasonAhead = 60

// seasons says what the seasons of an enclosure hold, bring and ask for, for every year
// that the horizon touches and some before. The days are the plan's own. It needs the
// holds of all groups.
func (r *reader) seasons() {
	e, h := r.out.Plan, r.h
	if len(e.Seasons) == 0 || h.Days <= 0 {
		return
	}
	firstYear, _, _ := h.From.YMD()
	lastYear, _, _ := h.Last().YMD()
	for _, s := range e.Seasons {
		c := CoolingOf(e, s)
		may := statesOf(c, e.Sheet)
		for year := firstYear - seasonsBack; year <= lastYear+1; year++ {
			from, until, ok := InYear(s, year)
			if !ok || from > h.Last()+seasonAhead {
				continue
			}
			rest := c.rest(e.Sheet, from, until)
			r.unfit(rest)
			r.hold(rest, may)
			r.bring(rest)
			if rest.Until > h.Now() || len(rest.Unfit) > 0 && until > h.Now() {
				r.out.Rests = append(r.out.Rests, rest)
			}
		}
	}
	byDay(r.out.Holds)
	byDay(r.out.Halves)
}

// InYear returns the first day of a season in the year in which it begins, and the
// first day after it; false where the plan does not say both well.
func InYear(s *plan.Season, year int) (from, until civil.Date, ok bool) {
	if !s.From.Set() || !s.To.Set() || s.From.V.Kind != plan.DateOfYear || s.To.V.Kind != plan.DateOfYear {
		return 0, 0, false
	}
	from, to := dayIn(year, s.From.V), dayIn(year, s.To.V)
	if to < from {
		to = dayIn(year+1, s.To.V)
	}
	return from, to + 1, true
}

// seasonStates are the states of one season: in all of it, in it while the heaters are
// off, and before and after a rest, when there are only no meals. Nil is nothing held.
type seasonStates struct{ all, dark, fast, half *schema.State }

// statesOf says what a season takes out altogether and what by half. In a cool rest
// nobody is dug out, handled or moved, whatever becomes of the meals.
func statesOf(c *Cooling, sheet *plan.SpeciesSheet) (out seasonStates) {
	s := c.Season
	state := func(into **schema.State, rows ...schema.Row) {
		if *into == nil {
			*into = &schema.State{Box: true}
			if c.Rest && into == &out.all {
				**into = *sheet.State(schema.StateRest)
				// What becomes of meals the plan says, and heaters are tested while they are on.
				out.all.May[schema.RowDevice] = schema.May{}
				if !c.Fasting {
					out.all.May[schema.RowLive], out.all.May[schema.RowKilled] = schema.May{}, schema.May{}
				}
			}
			(*into).Name, (*into).Is = s.Name.V, s.Name.V
		}
		for _, r := range rows {
			(*into).May[r].Manner = schema.Held
		}
	}
	if c.Rest {
		state(&out.all)
	}
	switch {
	case c.Fasting:
		state(&out.all, schema.RowLive, schema.RowKilled)
		state(&out.fast, schema.RowLive, schema.RowKilled)
	case s.Feeding.V == "half":
		state(&out.half, schema.RowLive, schema.RowKilled)
	}
	switch s.Misting.V {
	case "none":
		state(&out.all, schema.RowMist)
	case "half":
		state(&out.half, schema.RowMist)
	}
	if c.Off {
		state(&out.dark, schema.RowDevice)
		if out.all != nil {
			*out.dark = *out.all
			out.dark.May[schema.RowDevice].Manner = schema.Held
		}
	}
	for _, x := range []*schema.State{out.all, out.dark, out.fast} {
		if x != nil {
			x.Rule = rule(x, c.Rest && x != out.fast)
		}
	}
	return out
}

// Seasonal reports whether a season of an enclosure leaves out care of a kind, or has it
// done otherwise, in whatever year.
func Seasonal(e *plan.Enclosure, k *schema.CareKind) bool {
	for _, s := range e.Seasons {
		may := statesOf(CoolingOf(e, s), e.Sheet)
		for _, x := range []*schema.State{may.all, may.dark, may.fast, may.half} {
			if x != nil && !x.Usual(k) {
				return true
			}
		}
	}
	return false
}

// rule says in a line what a season's state leaves.
func rule(s *schema.State, rest bool) string {
	var no []string
	if s.May[schema.RowKilled].Manner == schema.Held {
		no = append(no, "no food")
	}
	if s.May[schema.RowMist].Manner == schema.Held {
		no = append(no, "no misting")
	}
	if rest {
		no = append([]string{"water and a look"}, append(no, "do not dig")...)
	}
	return strings.Join(no, ", ")
}

// hold puts what one time of a season takes out.
func (r *reader) hold(x *Rest, may seasonStates) {
	s := x.Season
	put := func(state *schema.State, from, until civil.Date, why, end string) {
		if state != nil && from < until {
			r.out.Holds = append(r.out.Holds, Hold{From: from, Until: until, State: state, Cool: x.Rest, Why: why, End: end, At: s.At})
		}
	}
	end := wording.Until(x.Until)
	put(may.fast, x.Fast, x.From, s.Name.V+" from "+x.planned.Brief(), "full heat until then")
	if x.Off < x.On {
		put(may.all, x.From, x.Off, s.Name.V, end)
		put(may.dark, x.Off, x.On, s.Name.V, end)
		put(may.all, x.On, x.Until, s.Name.V, end)
	} else {
		put(may.all, x.From, x.Until, s.Name.V, end)
	}
	put(may.fast, x.Until, x.FirstMeal, s.Name.V+" is over", "first meal on "+x.FirstMeal.Short())
	put(may.fast, x.FirstMeal+1, x.Full, s.Name.V+" is over", "meals as usual from "+x.Full.Short())
	if may.half != nil && x.From < x.Until {
		r.out.Halves = append(r.out.Halves, Hold{From: x.From, Until: x.Until, State: may.half, Cool: x.Rest, Why: s.Name.V, End: end, At: s.At})
	}
}

// within reports whether anything that one time of a season brings may be of the horizon
// or be what a later meal is counted from.
func (x *Rest) within(h horizon.Horizon) bool { return x.Full >= h.From-400 && x.Fast <= h.Last() }

// dayIn is a day of the year in one year; 29 February is the 28th in most.
func dayIn(year int, d plan.Day) civil.Date {
	date, _ := civil.Of(year, d.Month, min(d.Day, civil.DaysIn(year, d.Month)))
	return date
}
