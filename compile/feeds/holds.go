package feeds

import (
	"cmp"
	"slices"
	"strconv"

	"vivary/compile/horizon"
	"vivary/compile/ical"
	"vivary/compile/life"
	"vivary/compile/rounds"
)

// line is what may be done in a state, at one enclosure or at several.
type line struct {
	rounds.Stretch
	of  []*life.Enclosure
	nth int // among those of one beginning and one text
}

// holds adds what may be done at enclosures while animals are in a state, in the words
// of a round, on each day: a band over months would hide what is to be done on each. It
// stands on all days of the state where the care of the enclosure is theirs who read the
// calendar, and on those of their visits where they stand in.
func (s *selection) holds(feed *ical.Feed, last *ical.Memory) {
	days := map[*life.Enclosure]horizon.Days{} // of the visits; nil where the care is their own
	for _, p := range s.picks {
		was, known := days[p.Entry.Life]
		switch {
		case s.own(p.Entry):
			days[p.Entry.Life] = nil
		case !known:
			days[p.Entry.Life] = p.Days.Clone()
		case was != nil:
			was.Union(p.Days)
		}
	}
	var own, visits []*life.Enclosure
	for _, l := range s.lives {
		if days[l] == nil {
			own = append(own, l)
		} else {
			visits = append(visits, l)
		}
	}
	for _, x := range lines(own) {
		s.stands(feed, &x, last)
	}
	s.onVisits(feed, lines(visits), days)
}

// lines returns the lines of some enclosures, those that are the same together.
func lines(of []*life.Enclosure) []line {
	var out []line
	at := map[rounds.Stretch]int{}
	for _, l := range of {
		for _, x := range rounds.Stretches(l) {
			k, known := at[x]
			if !known {
				k = len(out)
				at[x] = k
				out = append(out, line{Stretch: x})
			}
			if n := len(out[k].of); n == 0 || out[k].of[n-1] != l {
				out[k].of = append(out[k].of, l)
			}
		}
	}
	slices.SortStableFunc(out, func(a, b line) int {
		return cmp.Or(cmp.Compare(a.From, b.From), cmp.Compare(a.Group, b.Group), cmp.Compare(a.Text, b.Text), cmp.Compare(a.Until, b.Until))
	})
	for k := 1; k < len(out); k++ {
		if a, b := &out[k-1], &out[k]; a.From == b.From && a.Group == b.Group && a.Text == b.Text {
			b.nth = a.nth + 1
		}
	}
	return out
}

// stands adds a line on each of its days.
func (s *selection) stands(feed *ical.Feed, x *line, last *ical.Memory) {
	e := ical.Entry{UID: s.uid("hold", x.From.String(), x.Group, x.Text, strconv.Itoa(x.nth)), AllDay: true, Days: 1, RRule: "FREQ=DAILY", HasUntil: true}
	e.Until = min(x.Until, s.reach) - 1
	start, known := last.First(e.UID)
	if !known || start < x.From {
		start = max(x.From, s.r.Today)
	}
	e.Date = max(start, s.oldest())
	if e.Until < e.Date || e.Until < s.r.Today-Kept {
		return
	}
	e.Summary = x.Line(x.of)
	feed.Entries = append(feed.Entries, e)
}

// onVisits adds lines on the days on which somebody comes to some of their enclosures.
func (s *selection) onVisits(feed *ical.Feed, all []line, days map[*life.Enclosure]horizon.Days) {
	h := s.r.Horizon
	for k := range all {
		x := &all[k]
		for d := max(x.From, s.r.Today); d < min(x.Until, s.reach); d++ {
			var there []*life.Enclosure
			for _, l := range x.of {
				if i, in := h.Index(d); in && days[l].Has(i) {
					there = append(there, l)
				}
			}
			if len(there) > 0 {
				feed.Entries = append(feed.Entries, ical.Entry{UID: s.uid("hold", x.From.String(), x.Group, x.Text, strconv.Itoa(x.nth), d.String()),
					Date: d, AllDay: true, Days: 1, Summary: x.Line(there)})
			}
		}
	}
}
