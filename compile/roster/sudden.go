package roster

import (
	"slices"

	"vivary/compile/horizon"
	"vivary/compile/life"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/wording"
)

// A sudden absence is a fact of the log. Nobody could get ready for it: nothing is done
// before leaving, and no cover was asked. Whoever else is there does the rounds.

// openAway is for how many days from today an absence is taken to go on of which the log
// does not say that it is over (common practice, no source).
const openAway = 14

// sudden returns the absences of which the log tells, as blocks that stand at its lines.
func sudden(c *plan.Collection, h horizon.Horizon, found *finding.List) []*plan.Away {
	var out []*plan.Away
	for i := range c.Sudden {
		s := &c.Sudden[i]
		back := s.Back
		if back > h.Now() {
			found.Add(tooSoon(s.BackAt, back, h))
			back = 0
		}
		if s.From > h.Now() {
			found.Add(tooSoon(s.At, s.From, h))
			continue
		}
		a := &plan.Away{Logged: true, Open: back == 0}
		a.At, a.Whole = s.At, s.At
		a.Name.V, a.Name.At = s.Keeper, s.At
		a.From.V, a.From.At = s.From, s.At
		a.To.V, a.To.At = back, s.At
		if a.Open {
			a.To.V = h.Now() + openAway
		}
		if a.To.V > h.From {
			out = append(out, a)
		}
	}
	return out
}

// tooSoon is a line about a day that has not come.
func tooSoon(at source.Place, day civil.Date, h horizon.Horizon) finding.Finding {
	return finding.Finding{Rule: life.RuleFuture, At: at, Text: day.Words() + " is after today, " + h.Now().Words(),
		Write: "an away block for what is planned; in the log, the day on which it was so"}
}

// inPlace has somebody else do the rounds on the days of a sudden absence on which nobody
// stands in as planned.
func (p *People) inPlace(c *plan.Collection, a *plan.Away, h horizon.Horizon) {
	d := p.duty[a.Name.V]
	for i := max(0, int(a.From.V-h.From)); i < min(int(a.To.V-h.From), h.Days); i++ {
		if d.Visits.Has(i) {
			continue
		}
		if who := p.other(c, a.Name.V, i); who != "" {
			day := h.New()
			day.Add(i)
			d.Visits.Add(i)
			d.stand(who, day)
		}
	}
}

// other returns who is there on day i beside a keeper, the one who is trained in most;
// "" for nobody.
func (p *People) other(c *plan.Collection, keeper string, i int) string {
	who, most := "", -1
	for _, k := range c.Keepers {
		if n := len(k.Skills()); k.Name.V != keeper && n > most && p.There(k.Name.V, i) {
			who, most = k.Name.V, n
		}
	}
	return who
}

// sudden reports whether the log alone tells of a run of days away.
func (r *Run) sudden() bool {
	for _, a := range r.Blocks {
		if !a.Logged {
			return false
		}
	}
	return true
}

// open reports whether it is not known when a run of days away ends.
func (r *Run) open() bool {
	return slices.ContainsFunc(r.Blocks, func(a *plan.Away) bool { return a.Open && a.To.V == r.Ends })
}

// suddenLeaves are what a sudden absence means for people: who is away, and the return
// once it is known.
func (s *Shared) suddenLeaves(d *Duty, r *Run) []Leave {
	keeper, id := shown(s.Plan, d.Keeper), had(s.Plan, d.Keeper)+"/"+r.Begun.String()
	away := Leave{Away: d.Keeper, Sudden: true, Name: id + "/away", Title: keeper + " is away", From: r.Begun, Days: int(r.Ends - r.Begun), Lines: []string{s.instead(d, r)}, begins: &begins{d, r, d.inRun(r)}}
	var out []Leave
	for _, name := range d.inRun(r) {
		out = append(out, s.steps(d, r, name))
	}
	if r.open() {
		away.Lines = append(away.Lines, "Until the log says: keeper "+d.Keeper+" back")
		return append(out, away)
	}
	return append(out, away, Leave{Away: d.Keeper, Sudden: true, Name: id + "/return", Title: "Back today: catch up", From: r.Ends, Days: 1, For: d.Keeper,
		Lines: []string{"What was left out stands in your rounds", "Read the notes", "Count the animals and look at every lid", "Read the lowest and the highest temperatures"}})
}

// steps is what is told to somebody who does the rounds of one who is suddenly away. It
// lasts as long: its first day may be over before anybody writes it down.
func (s *Shared) steps(d *Duty, r *Run, name string) Leave {
	from, until := r.Ends, r.Ends
	for _, x := range d.stands {
		if x.keeper != name {
			continue
		}
		for i := x.days.Next(r.From); i >= 0 && i < r.To; i = x.days.Next(i + 1) {
			from, until = min(from, s.Horizon.Date(i)), s.Horizon.Date(i)+1
		}
	}
	return Leave{Away: d.Keeper, Sudden: true, Name: had(s.Plan, d.Keeper) + "/" + r.Begun.String() + "/stand-in/" + had(s.Plan, name), Title: "You stand in for " + shown(s.Plan, d.Keeper),
		From: from, Days: int(until - from), For: name, Lines: schema.StandIn, begins: &begins{d, r, []string{name}}}
}

// inRun are those who stand in on any day of a run.
func (d *Duty) inRun(r *Run) []string {
	var out []string
	for _, x := range d.stands {
		if i := x.days.Next(r.From); i >= 0 && i < r.To {
			out = append(out, x.keeper)
		}
	}
	return out
}

// instead says who does the rounds in a run.
func (s *Shared) instead(d *Duty, r *Run) string {
	var names []string
	for _, name := range d.inRun(r) {
		names = append(names, shown(s.Plan, name))
	}
	if len(names) == 0 {
		return "Nobody else is there: somebody must come"
	}
	return wording.Or(names) + " does the rounds, or whoever else is there"
}
