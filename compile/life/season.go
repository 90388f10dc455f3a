package life

import (
	"vivary/compile/horizon"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/wording"
)

// seasonsBack is how many years before the horizon seasons are known: what they
// took out of an endless series of entries stays out for so long.
const seasonsBack = 3

// seasons returns what an enclosure's seasons take out altogether and what by half,
// for every year that the horizon touches and some before. The days are the plan's
// own, so that the hemisphere is too.
func seasons(all []*plan.Season, h horizon.Horizon) (out, halves []Hold) {
	if len(all) == 0 || h.Days <= 0 {
		return nil, nil
	}
	firstYear, _, _ := h.From.YMD()
	lastYear, _, _ := h.Last().YMD()
	for year := firstYear - seasonsBack; year <= lastYear; year++ {
		for _, s := range all {
			from, end, ok := InYear(s, year)
			if !ok || from > h.Last() {
				continue
			}
			hold := Hold{From: from, Until: end, Why: s.Name.V, End: wording.Until(end), At: s.At}
			all, half := states(s)
			if all != nil {
				hold.State = all
				out = append(out, hold)
			}
			if half != nil {
				hold.State = half
				halves = append(halves, hold)
			}
		}
	}
	byDay(out)
	byDay(halves)
	return out, halves
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

// states says what a season takes out altogether and what by half; nil for nothing.
// Nothing is fed while the heaters are off, because food is not digested, unless the
// plan says that it is: a room may be warm enough in summer.
func states(s *plan.Season) (all, half *schema.State) {
	put := func(word string, rows ...schema.Row) {
		into := map[string]**schema.State{"none": &all, "half": &half}[word]
		if into == nil {
			return
		}
		if *into == nil {
			*into = &schema.State{Name: s.Name.V, Is: s.Name.V, Box: true}
		}
		for _, r := range rows {
			(*into).May[r].Manner = schema.Held
		}
	}
	put(s.Feeding.V, schema.RowLive, schema.RowKilled)
	put(s.Misting.V, schema.RowMist)
	if s.Heating.V == "off" {
		put("none", schema.RowDevice)
		if !s.Feeding.Set() {
			put("none", schema.RowLive, schema.RowKilled)
		}
	}
	return all, half
}

// dayIn is a day of the year in one year; 29 February is the 28th in most.
func dayIn(year int, d plan.Day) civil.Date {
	date, _ := civil.Of(year, d.Month, min(d.Day, civil.DaysIn(year, d.Month)))
	return date
}
