package picture

import (
	"cmp"
	"slices"
	"strconv"
	"strings"

	"vivary/compile/life"
	"vivary/compile/roster"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/wording"
)

// seasons are the stripes of the plan's seasons, each with what it changes.
func (p *page) seasons() []stripe {
	var out []stripe
	for _, s := range p.plan.Seasons {
		p.eachTime(s, func(from, until civil.Date) {
			label := wording.Printed(s.Name.V) + ", " + p.dates(from, until)
			state := p.heldIn(s, from, until)
			var changes []string
			if state != nil {
				changes = append(changes, held(state))
			}
			if s.Feeding.V == "half" {
				changes = append(changes, "every second meal")
			}
			if s.Misting.V == "half" {
				changes = append(changes, "every second misting")
			}
			if len(changes) > 0 {
				label += ": " + strings.Join(changes, ", ")
			}
			p.say("Season: " + label + ".")
			out = append(out, stripe{from: from, until: until, label: label, fills: fills(state)})
		})
	}
	return out
}

// heldIn returns all that one time of a season holds on some of its days, or nil for
// nothing.
func (p *page) heldIn(s *plan.Season, from, until civil.Date) *schema.State {
	var all *schema.State
	for _, h := range p.life.Holds {
		if h.At != s.At || h.Until <= from || h.From >= until {
			continue
		}
		if all == nil {
			all = &schema.State{Name: h.State.Name, Is: h.State.Is}
		}
		for row, may := range h.State.May {
			if may.Manner > all.May[row].Manner {
				all.May[row] = may
			}
		}
	}
	return all
}

// holds are the stripes of the states that animals are in, because of what was seen.
func (p *page) holds() []stripe {
	var out []stripe
	for _, g := range p.life.Groups {
		for i := range g.Holds {
			h := &g.Holds[i]
			if !p.shows(h.From, h.Until) {
				continue
			}
			label := p.whose(g) + h.Why + ", " + h.End + ": " + cmp.Or(h.State.Rule, held(h.State))
			p.say("State: " + label + ".")
			out = append(out, stripe{from: h.From, until: h.Until, label: label, fills: fills(h.State)})
		}
	}
	return out
}

// windows are the stripes of what may happen.
func (p *page) windows() []stripe {
	var out []stripe
	for _, g := range p.life.Groups {
		for i := range g.Windows {
			w := &g.Windows[i]
			if !p.shows(w.From, w.Until) {
				continue
			}
			label := p.whose(g) + w.Title + ", " + p.dates(w.From, w.Until)
			p.say("Window: " + label + ". " + w.Text)
			out = append(out, stripe{from: w.From, until: w.Until, label: label, fills: []string{`fill="` + paleFill + `"`}})
		}
	}
	return out
}

// absences are the stripes of the days on which somebody who cares for the
// enclosure is away, with a tick for each day on which the stand-in comes.
func (p *page) absences() []stripe {
	if p.r.Roster == nil {
		return nil
	}
	var out []stripe
	for _, d := range p.r.Roster.People.Duties() {
		for _, r := range d.Runs {
			if p.keeps(d.Keeper) && p.shows(r.Begun, r.Ends) {
				out = append(out, p.absence(d, &r))
			}
		}
	}
	return out
}

func (p *page) absence(d *roster.Duty, r *roster.Run) stripe {
	s := stripe{from: r.Begun, until: r.Ends, fills: []string{`fill="` + roomFill + `"`}}
	n := 0
	var who []string
	for i := d.Visits.Next(r.From); i >= 0 && i < r.To; i = d.Visits.Next(i + 1) {
		n++
		if name, _ := p.r.Roster.People.Doer(d.Keeper, i); !slices.Contains(who, p.keeper(name)) {
			who = append(who, p.keeper(name))
		}
		if on := p.r.Horizon.Date(i); on < p.until() {
			s.ticks = append(s.ticks, on)
		}
	}
	s.label = p.keeper(d.Keeper) + " away " + p.day(s.from) + ", back " + p.day(s.until)
	if n > 0 {
		s.label += ", " + wording.And(who) + " comes on " + wording.Days(n)
	} else {
		s.label += ", nobody comes"
	}
	p.say("Absence: " + s.label + ".")
	return s
}

func (p *page) keeps(keeper string) bool {
	for i := range p.series {
		if p.series[i].Keeper == keeper {
			return true
		}
	}
	return false
}

func (p *page) keeper(name string) string {
	if k := p.r.Plan.Keeper(name); k != nil {
		return k.Shown()
	}
	return name
}

// whose begins a label with the group that it is about, where there is more than
// one; of ends one so.
func (p *page) whose(g *life.Group) string {
	if len(p.life.Groups) < 2 {
		return ""
	}
	return g.Animals.Shown() + ": "
}

func (p *page) of(g *life.Group) string {
	if g == nil || len(p.life.Groups) < 2 {
		return ""
	}
	return " · " + g.Animals.Shown()
}

// dates prints a stretch of days, first and last: "15 Nov to 20 Feb".
func (p *page) dates(from, until civil.Date) string {
	last := until - 1
	if last < from {
		last = from
	}
	if last == from {
		return p.day(from)
	}
	return p.day(from) + " to " + p.day(last)
}

// day prints a day, with its year where that is not plain.
func (p *page) day(d civil.Date) string {
	s := d.Brief()
	if d < p.r.Today.AddMonths(-6) || d > p.r.Today.AddMonths(11) {
		y, _, _ := d.YMD()
		s += " " + strconv.Itoa(y)
	}
	return s
}

// held says what a state holds.
func held(s *schema.State) string {
	var words []string
	for _, h := range holding {
		if s != nil && s.May[h.row].Manner == schema.Held {
			words = append(words, h.words)
		}
	}
	return strings.Join(words, ", ")
}

// fills are the patterns of a hold, over each other.
func fills(s *schema.State) []string {
	out := []string{`fill="white"`}
	for _, h := range holding {
		if s != nil && s.May[h.row].Manner == schema.Held {
			out = append(out, fill(h.pattern))
		}
	}
	return out
}
