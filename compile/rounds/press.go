package rounds

import (
	"vivary/compile/horizon"
	"vivary/compile/life"
	"vivary/compile/roster"
	"vivary/schema"
)

// Pressed is how many minutes a look at something urgent takes, before anything is done
// about it. Common practice, no source.
const Pressed = 5

// PressedOn returns the days on which some picks of a round, or of a calendar, say what is
// urgent in an enclosure: the next ones on which they pass it.
func PressedOn(s *roster.Roster, l *life.Enclosure, picks []roster.Pick) horizon.Days {
	h := s.Horizon
	days, next := h.New(), h.New()
	for _, p := range picks {
		if p.Entry.Life == l {
			days.Union(p.Days)
		}
	}
	next.AddRun(h.Today, h.Today+roster.PressedFor, h.Days)
	days.Keep(next)
	return days
}

// pressing adds what is urgent in an enclosure.
func (g *gatherer) pressing(l *life.Enclosure, place int, picks []roster.Pick) {
	said := g.roster.Pressing[l]
	if len(said) == 0 {
		return
	}
	days := PressedOn(g.roster, l, picks)
	for k, text := range said {
		g.items = append(g.items, Item{Task: Task{Kind: schema.KindOther, Phrase: text, Own: true, Whole: true}, Place: place, Days: days,
			Rank: 3*before + k, Minutes: Pressed, High: true, Passing: true})
	}
}
