package prove

import (
	"strconv"
	"strings"

	"vivary/compile/horizon"
	"vivary/compile/roster"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/schema"
	"vivary/schema/quantity"
)

// Findings returns a finding for each need that is not met in time: its first
// breach, with dates, the chain of causes and what would mend it.
func Findings(s *roster.Roster, proofs []Proof) []finding.Finding {
	var l finding.List
	for i := range proofs {
		if p := &proofs[i]; !p.Met() {
			l.Soft(p.finding(s), p.severity())
		}
		if p := &proofs[i]; p.Missed.From != p.Missed.To {
			l.Add(p.missed(s))
		}
	}
	return l.All
}

// missed says by how much a need was missed, once that cannot be helped any more.
func (p *Proof) missed(s *roster.Roster) finding.Finding {
	h := s.Horizon
	f := finding.Finding{Rule: ruleMissed, At: p.at(), In: p.Life.Plan.Whole,
		Text:   p.subject() + ": " + days(p.length(p.Missed)) + " without " + p.Name.Noun + ", from " + h.Date(p.Missed.From).Words() + " to " + h.Date(p.Missed.To).Words(),
		Limit:  days(p.allowed(p.Missed.From, p.Missed.To, -1<<20)) + " at the longest, need " + strconv.Quote(p.Need.Name.V) + " of " + p.Life.Plan.Sheet.Name.V,
		Source: s.Plan.Library.Cite(p.Need.Cited),
		Write:  "nothing: it comes first in the round of " + h.Date(p.Missed.To).Short() + "; look closely at the animals"}
	if p.Missed.From < -roster.LookBack {
		f.Text = p.subject() + ": more than " + days(roster.LookBack) + " without " + p.Name.Noun
	}
	return f
}

// severity is the need's own: an error unless its sheet says caution. What is never
// met is an error whatever the sheet says. What a hold of the log keeps from being
// met is a caution: the log has to say how it went on, not the plan.
func (p *Proof) severity() finding.Severity {
	held := false
	if p.Excused != nil {
		for d := max(0, p.Breach.From); d < p.Breach.To; d++ {
			held = held || p.Excused.Has(d)
		}
	}
	switch {
	case held:
		return finding.Caution
	case p.Times == 0:
		return finding.Error
	case p.Need.Severity.V == "caution":
		return finding.Caution
	}
	return finding.Error
}

func (p *Proof) finding(s *roster.Roster) finding.Finding {
	h := s.Horizon
	f := finding.Finding{Rule: byNeed[p.Name], At: p.at(), In: p.Life.Plan.Whole}
	who := p.subject()
	switch {
	case len(p.By) == 0:
		f.Text = who + ": nothing in the plan or the species sheet brings " + p.Name.Noun
	case p.Name.PerMeal:
		f.Text = who + ": the meal of " + h.Date(p.Breach.From).Words() + " is followed by a look for leftovers only " + after(h, p.Breach)
	default:
		f.Text = who + ": " + days(p.length(p.Breach)) + " without " + p.Name.Noun + ", " + stretch(h, p.Breach)
	}
	if p.severity() == finding.Caution && p.Excused != nil && len(p.causes(s)) > 0 && !p.Name.PerMeal {
		f.Text += ", held for longer than anybody should leave it"
	}
	f.Limit = days(p.Allowed) + " at the longest"
	if p.Group != nil && p.Group.Stage(h.From) != "" {
		f.Limit += " for stage " + p.Group.Stage(h.From)
	}
	f.Limit += ", need " + strconv.Quote(p.Need.Name.V) + " of " + p.Life.Plan.Sheet.Name.V
	f.Source = s.Plan.Library.Cite(p.Need.Cited)
	f.Write = p.mend(s)
	f.Also = p.causes(s)
	return f
}

// length is a gap without the days that are excused.
func (p *Proof) length(g Gap) int {
	n := g.To - g.From
	if p.Excused != nil {
		for d := max(0, g.From+1); d < g.To; d++ {
			if p.Excused.Has(d) {
				n--
			}
		}
	}
	return n
}

func (p *Proof) subject() string {
	name := p.Life.Plan.Name.V
	if p.Group != nil && len(p.Life.Groups) > 1 {
		name += " " + p.Group.Animals.Name.V
	}
	return name
}

// at is the plan line that has to change: that of the care, where the plan wrote
// one, else the animals or the enclosure.
func (p *Proof) at() source.Place {
	for _, s := range p.By {
		if s.Timing == nil {
			continue
		}
		for _, t := range []source.Place{timingPlace(s.Timing), s.Origin} {
			if t.Written() && t.File == p.Life.Plan.At.File {
				return t
			}
		}
	}
	if p.Group != nil {
		return p.Group.Animals.At
	}
	return p.Life.Plan.At
}

func timingPlace(t *plan.Timing) source.Place {
	switch {
	case t.Every.Set():
		return t.Every.At
	case len(t.On) > 0:
		return t.On[0].At
	case t.Cron.Set():
		return t.Cron.At
	}
	return t.AfterLast.At
}

// causes are the holds and absences that lie in the breach.
func (p *Proof) causes(s *roster.Roster) []finding.Related {
	var out []finding.Related
	h := s.Horizon
	overlaps := func(from, to int) bool { return from < p.Breach.To && to > p.Breach.From }
	for k := range s.People.Absences {
		a := &s.People.Absences[k]
		if !overlaps(a.From, a.To) {
			continue
		}
		for _, x := range p.By {
			if x.Keeper != a.Away.Name.V || x.Left == nil {
				continue
			}
			text := a.Away.Name.V + " is away from " + a.Away.From.V.Words() + " to " + a.Away.To.V.Words()
			if a.Away.Cover.Set() {
				text += ", covered by " + a.Away.Cover.V + " on visits only"
			} else {
				text += ", covered by nobody"
			}
			out = append(out, finding.Related{At: a.Away.At, Text: text})
			break
		}
	}
	for _, g := range p.Life.Groups {
		if p.Group != nil && g != p.Group {
			continue
		}
		for _, x := range g.Holds {
			if Holds(&x, p.Name) && overlaps(int(x.From-h.From), int(x.Until-h.From)) {
				out = append(out, finding.Related{At: x.At, Text: "held: " + x.Why + ", " + x.End})
			}
		}
	}
	return out
}

// mend says the smallest change that would mend the breach.
func (p *Proof) mend(s *roster.Roster) string {
	if len(p.By) == 0 {
		if p.Name == schema.NeedFood {
			return "feeding \"" + p.name() + "\", with every = \"" + step(p.Allowed) + "\", per_animal and prey in it"
		}
		return "a care block of a kind that brings " + p.Name.Noun + ", with every = \"" + step(p.Allowed) + "\""
	}
	for k := range s.People.Absences {
		a := &s.People.Absences[k]
		if a.From < p.Breach.To && a.To > p.Breach.From {
			for _, x := range p.By {
				if x.Keeper == a.Away.Name.V && x.Left != nil {
					if !a.Away.Cover.Set() {
						return "cover = \"…\" in this absence, with a visit every " + step(p.Allowed)
					}
					return "visits in this absence no further than " + days(p.Allowed) + " apart"
				}
			}
		}
	}
	if p.Name.PerMeal {
		return "leftovers = \"" + days(p.Allowed) + "\", or killed = true"
	}
	return "every = \"" + step(p.Allowed) + "\", or more often"
}

func (p *Proof) name() string {
	if p.Group != nil {
		return p.Group.Animals.Name.V
	}
	return p.Life.Plan.Name.V
}

// step is an interval of so many days as a plan writes it.
func step(n int) string {
	if n == 1 {
		return "day"
	}
	return days(n)
}

func days(n int) string { return quantity.Format(float64(n)*24*60, quantity.Days) }

func stretch(h horizon.Horizon, g Gap) string {
	from, to := "from before "+h.Date(0).Words(), "to the end of what was looked at"
	if g.From >= 0 {
		from = "from " + h.Date(g.From).Words()
	}
	if g.To < h.Days {
		to = "to " + h.Date(g.To).Words()
	}
	return strings.TrimSpace(from + " " + to)
}

func after(h horizon.Horizon, g Gap) string {
	if g.To >= h.Days {
		return "never"
	}
	return "on " + h.Date(g.To).Words() + ", " + days(g.To-g.From) + " later"
}
