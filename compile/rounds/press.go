package rounds

import (
	"vivary/compile/horizon"
	"vivary/compile/life"
	"vivary/compile/roster"
	"vivary/plan/finding"
	"vivary/schema"
)

// Pressed is how many minutes a look at something urgent takes, before anything is done
// about it. Common practice, no source.
const Pressed = 5

// PressedOn returns the days on which some picks of a round, or of a calendar, say
// something urgent of an enclosure: the next ones on which they pass it.
func PressedOn(s *roster.Roster, l *life.Enclosure, picks []roster.Pick, first finding.First) horizon.Days {
	h := s.Horizon
	days := h.New()
	for _, p := range picks {
		if p.Entry.Life == l {
			days.Union(p.Days)
		}
	}
	from, until := max(h.Now(), first.From), h.Now()+roster.PressedFor
	if first.Until != 0 {
		until = min(until, first.Until)
	}
	next := h.New()
	next.AddRun(int(from-h.From), int(until-h.From), h.Days)
	days.Keep(next)
	return days
}

// pressing adds what is urgent in an enclosure.
func (g *gatherer) pressing(l *life.Enclosure, place int, picks []roster.Pick) {
	for k, first := range g.roster.Pressing[l] {
		g.items = append(g.items, Item{Task: Task{Kind: schema.KindOther, Phrase: first.Text, Own: true, Whole: true}, Place: place, Days: PressedOn(g.roster, l, picks, first),
			Rank: 3*before + k, Minutes: Pressed, High: true, Passing: true})
	}
}
