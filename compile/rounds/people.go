package rounds

import (
	"strconv"

	"vivary/compile/horizon"
	"vivary/compile/life"
	"vivary/compile/roster"
	"vivary/schema"
	"vivary/schema/wording"
)

// note is what is said of an enclosure about the people of a round.
type note struct {
	text string
	team bool
	shut bool // nothing is opened, so that what may be done inside is not said beside it
}

// allowed adds what whoever comes may not do, and who goes in together where it takes
// several. A number stands in no calendar: others may read those.
func (g *gatherer) allowed(picks []roster.Pick, at map[*life.Enclosure]int) {
	type key struct {
		place int
		note
	}
	days := map[key]horizon.Days{}
	var order []key
	for _, p := range picks {
		x := p.Entry
		if x.Shut == nil && x.Hatch == nil && x.Crew().Or(1) < 2 {
			continue
		}
		for i := p.Days.Next(g.roster.Horizon.Today); i >= 0; i = p.Days.Next(i + 1) {
			n := access(g.roster, x, i)
			if n.text == "" {
				continue
			}
			k := key{at[x.Life], n}
			if days[k] == nil {
				days[k] = g.roster.Horizon.New()
				order = append(order, k)
			}
			days[k].Add(i)
		}
	}
	for _, k := range order {
		if k.shut {
			g.unsay(k.place, days[k])
		}
	}
	for _, k := range order {
		g.spans(Hold{Place: k.place, Text: k.text, Team: k.team}, days[k])
	}
}

// unsay takes what is held at a place off some days.
func (g *gatherer) unsay(place int, days horizon.Days) {
	all := g.holds
	g.holds = nil
	for _, h := range all {
		if h.Place != place {
			g.holds = append(g.holds, h)
			continue
		}
		left := g.roster.Horizon.New()
		left.AddRun(h.From, h.Until, g.roster.Horizon.Days)
		left.Subtract(days)
		g.spans(h, left)
	}
}

// spans adds a hold for each run of days.
func (g *gatherer) spans(h Hold, days horizon.Days) {
	for i := days.Next(0); i >= 0; i = days.Next(h.Until) {
		h.From, h.Until = i, i+1
		for h.Until < g.roster.Horizon.Days && days.Has(h.Until) {
			h.Until++
		}
		g.holds = append(g.holds, h)
		if h.Until >= g.roster.Horizon.Days {
			return
		}
	}
}

// access is what an entry's access on day i makes to be said.
func access(s *roster.Roster, x *roster.Entry, i int) note {
	a := s.May(x, i)
	switch {
	case a.Barred:
		return note{text: "do not open (not yours" + ring(s, x, i) + ")", shut: true}
	case a.Lacks != "" && a.Manner == schema.Hatch:
		return note{text: "nothing but through the hatch (" + a.Hold.State.Is + ring(s, x, i) + ")"}
	case a.Lacks != "":
		why := "locked"
		if a.Hold != nil {
			why = a.Hold.State.Is
		}
		return note{text: "do not open (" + why + ring(s, x, i) + ")", shut: true}
	case a.Few:
		why := "it takes " + strconv.Itoa(x.Crew().V) + " people"
		if a.Manner == schema.Hatch {
			why += "; water through the hatch, lift nothing"
		}
		return note{text: "do not enter alone (" + why + ring(s, x, i) + ")"}
	case len(a.Team) > 1 && !outside(x.Kind):
		return note{text: peopleWord(x.Crew().V) + ": " + team(s, a.Team, x.Crew().V), team: true}
	}
	return note{}
}

// outside reports whether a kind of care can be done without opening anything.
func outside(k *schema.CareKind) bool {
	a := roster.Access{Manner: schema.Outside}
	return a.Does(k)
}

func peopleWord(n int) string {
	if n != 2 {
		return strconv.Itoa(n) + " people"
	}
	return "two people"
}

// team names who goes in: the first does the round, and as many of the others as it
// takes.
func team(s *roster.Roster, names []string, n int) string {
	var shown []string
	for _, name := range names {
		shown = append(shown, flat(person(s, name)))
	}
	switch {
	case len(shown) == n:
		return wording.And(shown)
	case n == 2:
		return shown[0] + " and " + wording.Or(shown[1:])
	}
	return shown[0] + " and " + strconv.Itoa(n-1) + " of " + wording.And(shown[1:])
}

// ring says whom to ring, and never the number.
func ring(s *roster.Roster, x *roster.Entry, i int) string {
	name := s.Ring(x, i)
	if name == "" {
		return ""
	}
	text := "; ring " + flat(person(s, name))
	if k := s.Plan.Keeper(name); k != nil && k.Phone.Set() {
		text += ", number on your sheet"
	}
	return text
}

func person(s *roster.Roster, name string) string {
	if k := s.Plan.Keeper(name); k != nil {
		return k.Shown()
	}
	return name
}
