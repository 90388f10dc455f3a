package rounds

import (
	"cmp"
	"slices"
	"strconv"
	"strings"

	"vivary/compile/life"
	"vivary/schema"
	"vivary/schema/civil"
)

// held adds what may be done at an enclosure while its animals are in a state: a line
// for the box, and one for each of its groups.
func (g *gatherer) held(l *life.Enclosure, place int) {
	eachHeld(l, func(holds []life.Hold, of *life.Group) { g.states(holds, of, groupOf(l, of), place) })
}

// eachHeld calls use for the holds of a box, and for those of each of its groups.
func eachHeld(l *life.Enclosure, use func(holds []life.Hold, of *life.Group)) {
	use(l.Holds, nil)
	for _, x := range l.Groups {
		holds := x.Holds
		if x.Mother != nil { // hers says it: they live on her
			holds = slices.DeleteFunc(slices.Clone(holds), func(h life.Hold) bool { return h.State.Name == schema.StateNewborn.Name })
		}
		use(holds, x)
	}
}

// groupOf is how a group is called where several live in an enclosure.
func groupOf(l *life.Enclosure, of *life.Group) string {
	if of == nil || len(l.Groups) < 2 {
		return ""
	}
	return called(of)
}

// Stretch is a run of days for which the line of a state says the same of an enclosure.
type Stretch struct {
	From, Until civil.Date // the first day, and the first after
	Group       string     // where several live there, of whom it is
	Text        string     // as in a round: "young on her since 5 Nov: water, lift nothing"
}

// Line is the line as it stands in a round, of some enclosures in walking order.
func (s *Stretch) Line(of []*life.Enclosure) string {
	h := held{group: s.Group, text: s.Text}
	names, places := alone(of)
	return string(h.appendNamed(nil, names, places))
}

// alone names enclosures where there is no round that tells those of one title apart.
func alone(of []*life.Enclosure) ([]name, []int32) {
	times, stems := map[string]int{}, map[string]int{}
	for _, l := range of {
		times[Brief(l)]++
	}
	names, places := make([]name, len(of)), make([]int32, len(of))
	for i, l := range of {
		places[i] = int32(i)
		if names[i].text = Brief(l); times[names[i].text] > 1 {
			names[i].text += " (" + l.Plan.Name.V + ")"
		}
		names[i].part(stems)
	}
	return names, places
}

// Stretches are the lines of the states of an enclosure, with the days on which they
// stand, whether these lie in the window or not: a stretch begins on the same day
// whenever it is asked for.
func Stretches(l *life.Enclosure) []Stretch {
	var out []Stretch
	eachHeld(l, func(holds []life.Hold, of *life.Group) {
		var cuts []civil.Date
		for i := range holds {
			cuts = append(cuts, holds[i].From, holds[i].Until)
		}
		cuts = append(cuts, turnsOf(holds, groupOf(l, of))...)
		slices.Sort(cuts)
		cuts = slices.Compact(cuts)
		begun := len(out)
		for i := 0; i+1 < len(cuts); i++ {
			n := 0
			if of != nil {
				n = of.Count(cuts[i])
			}
			text, group := said(holds, cuts[i], n), yearless(groupOf(l, of), cuts[i])
			if text == "" {
				continue
			}
			if k := len(out) - 1; k >= begun && out[k].Until == cuts[i] && out[k].Text == text && out[k].Group == group {
				out[k].Until = cuts[i+1]
				continue
			}
			out = append(out, Stretch{cuts[i], cuts[i+1], group, text})
		}
	})
	return out
}

// called is how a group is called in a round: as the plan names it, and one that the log
// made by its title: "young of 5 Mar".
func called(g *life.Group) string {
	if g.Logged {
		return flat(g.Animals.Shown())
	}
	return flat(g.Animals.Name.V)
}

// states adds the lines of some holds, from each day on which one begins or ends until
// the next.
func (g *gatherer) states(holds []life.Hold, of *life.Group, group string, place int) {
	if len(holds) == 0 {
		return
	}
	h := g.roster.Horizon
	var cuts []civil.Date
	for i := range holds {
		if x := &holds[i]; x.Until > h.From && x.From <= h.Last() {
			cuts = append(cuts, max(x.From, h.From), min(x.Until, h.Last()+1))
		}
	}
	for _, d := range turnsOf(holds, group) {
		if h.From < d && d <= h.Last() {
			cuts = append(cuts, d)
		}
	}
	slices.Sort(cuts)
	cuts = slices.Compact(cuts)
	for i := 0; i+1 < len(cuts); i++ {
		n := 0
		if of != nil {
			n = of.Count(cuts[i])
		}
		if text := said(holds, cuts[i], n); text != "" {
			g.holds = append(g.holds, Hold{Place: place, From: int(cuts[i] - h.From), Until: int(cuts[i+1] - h.From), Text: text, Group: yearless(group, cuts[i])})
		}
	}
}

// turnsOf are the days from which on the lines of some holds are told otherwise, with a
// year or without.
func turnsOf(holds []life.Hold, group string) []civil.Date {
	out := turns(group)
	for i := range holds {
		out = append(out, turns(holds[i].Why+" "+holds[i].End)...)
	}
	return out
}

// said words the states of a day, the strictest first: why, what may be done, and until
// when. A state that another one includes is not said beside it. Of n animals some may be
// in a state alone: then it says of how many.
func said(holds []life.Hold, on civil.Date, n int) string {
	var all []*life.Hold
	for i := range holds {
		if h := &holds[i]; h.From <= on && on < h.Until && rule(h.State) != "" {
			all = append(all, h)
		}
	}
	slices.SortStableFunc(all, func(a, b *life.Hold) int {
		return cmp.Or(cmp.Compare(strictness(b.State), strictness(a.State)), cmp.Compare(b.Until, a.Until))
	})
	var parts []string
	why := ""
	for k, h := range all {
		if slices.ContainsFunc(all[:k], func(o *life.Hold) bool { return includes(o.State, h.State) }) {
			continue
		}
		text := rule(h.State)
		if h.Part && h.Out(schema.RowLive) {
			text = "killed prey for all, lift nothing"
		}
		if because := cmp.Or(h.Why, h.State.Is); because != why {
			why, text = because, some(h, n)+because+": "+text
		}
		if h.End != "" {
			text += " (" + h.End + ")"
		}
		parts = append(parts, yearless(flat(text), on))
	}
	return strings.Join(parts, "; ")
}

// some says of how many of n animals a state is, where it is not of all.
func some(h *life.Hold, n int) string {
	if !h.Part || n < 2 {
		return ""
	}
	return strconv.Itoa(min(max(h.Some, 1), n)) + " of " + strconv.Itoa(n) + ", "
}

// apartFor is what the heading of the last part of a round says already.
var apartFor = []string{schema.StateQuarantine.Name, schema.StateMites.Name}

// holding are the words for what is not to be done, for a state without a rule: a
// season says itself what it holds.
var holding = []struct {
	row  schema.Row
	text string
}{{schema.RowKilled, "no food"}, {schema.RowDeep, "do not dig"}, {schema.RowMist, "no misting"}, {schema.RowDevice, "heating off"}}

// rule is what may be done in a state, in one line; empty where there is nothing to
// mind.
func rule(s *schema.State) string {
	if slices.Contains(apartFor, s.Name) {
		return ""
	}
	if strings.HasPrefix(s.Rule, "water") {
		return "at most " + s.Rule // it allows, and asks for nothing that the list does not
	}
	if s.Rule != "" {
		return s.Rule
	}
	var out []string
	for _, w := range holding {
		if s.May[w.row].Manner == schema.Held {
			out = append(out, w.text)
		}
	}
	return strings.Join(out, ", ")
}

// strictness is how much of the care a state holds.
func strictness(s *schema.State) int {
	n := 0
	for _, m := range s.May {
		n += int(m.Manner)
	}
	return n
}

// includes reports whether nothing that one state asks for is left out where another
// is heeded.
func includes(strict, other *schema.State) bool {
	if strictness(other) == 0 {
		return rule(strict) == rule(other)
	}
	for r := range other.May {
		if other.May[r].Manner > strict.May[r].Manner {
			return false
		}
	}
	return true
}
