package check

import (
	"cmp"
	"slices"

	"vivary/compile/life"
	"vivary/compile/roster"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/wording"
)

// need is why animals must not be left on a day without somebody who is trained.
type need struct {
	why    string
	skills []string // one of them will do
	plan   bool     // the plan itself says so, and not the log
	also   finding.Related
}

var (
	forBroods = []string{schema.SkillBreeding}
	forCare   = []string{schema.SkillBreeding, schema.SkillFeeding}
)

// ailing are the states that somebody who knows the animals has to see every day
// (common practice, no source).
var ailing = []*schema.State{schema.StateIll, schema.StateTreated, schema.StateMites, schema.StateSettling}

const (
	ailingFor = 30 // days for which an illness of which no end is logged is taken to go on
	newcomer  = 7  // days from arrival
	helpless  = 1  // days: whoever may be left no longer is never left without training
)

// like reports whether what is needed is the same: a birth goes on as young with their
// mother.
func (n need) like(o need) bool { return n.plan == o.plan && slices.Equal(n.skills, o.skills) }

// leftUntrained finds days of absences on which nobody who is trained comes to animals
// that must not be without. An error is what the plan says of both; what the log or
// time brought is urgent.
func leftUntrained(r *Rule, e *Enclosure) {
	for _, d := range e.Roster.People.Duties() {
		x := e.whose(d.Keeper)
		if x == nil {
			continue
		}
		for k := range d.Runs {
			run := &d.Runs[k]
			var first need
			from, last := -1, 0
			for i := max(run.From, e.Horizon.Today); i < run.To; i++ {
				n, ok := e.needs(i)
				if !ok || e.attended(x, n, i) || from >= 0 && !n.like(first) {
					continue
				}
				if from < 0 {
					from, first = i, n
				}
				last = i
			}
			if from >= 0 {
				e.leftAlone(r, run.Blocks[0], x, first, from, last)
			}
		}
	}
}

// leftAlone says that nobody trained is there from day from to day last.
func (e *Enclosure) leftAlone(r *Rule, first *plan.Away, x *roster.Entry, n need, from, last int) {
	a := first
	for _, o := range e.Collection.Plan.Aways {
		if o.Name.V == first.Name.V && o.From.V <= e.Horizon.Date(from) && e.Horizon.Date(from) < o.To.V {
			a = o
		}
	}
	on := "on " + e.Horizon.Date(from).Words()
	if last > from {
		on = "from " + wording.Dates(e.Horizon.Date(from), e.Horizon.Date(last))
	}
	f := finding.Finding{Rule: &r.Rule, At: a.At, Source: r.Source, Write: e.whoCould(x, n, from),
		Text: e.Plan.Name.V + ": " + n.why + ", and " + on + " nobody trained in " + wording.Or(n.skills) + " is there"}
	if who, there := e.Roster.Doer(x, from); there {
		f.Text += " (" + e.named(who) + " stands in)"
	}
	f.First = e.first(a, x, n, from, last)
	if n.also.At.Written() {
		f.Also = []finding.Related{n.also}
	}
	if n.plan {
		f.Severity, f.Once, f.Strict = finding.Error, "away "+place(a.At), 1
	}
	e.Add(f)
}

// first is what the rounds say: on the last days before, to who is still there and can
// see to it; and then to who stands in, who can only ring.
func (e *Enclosure) first(away *plan.Away, x *roster.Entry, n need, from, last int) []finding.First {
	begins, ends := e.Horizon.Date(from), e.Horizon.Date(last)+1
	who := "somebody trained in " + wording.Or(n.skills)
	out := []finding.First{{From: begins, Until: ends, Text: "ring " + e.named(e.rings(x, n, from)) + ": " + who + " must come by"}}
	if from > e.Horizon.Today && !away.Logged {
		on := "on " + begins.Short()
		if ends > begins+1 {
			on = "from " + begins.Short() + " to " + (ends - 1).Short()
		}
		out = append(out, finding.First{From: begins - roster.PressedFor, Until: begins, Text: "before leaving, see that " + who + " comes by " + on + ": " + n.why})
	}
	return out
}

// rings is whom a stand-in rings: somebody who is trained, else whose enclosure it is.
func (e *Enclosure) rings(x *roster.Entry, n need, i int) string {
	for _, k := range e.Collection.Plan.Keepers {
		if who, _ := e.Roster.Doer(x, i); k.Name.V != who && e.able(k.Name.V, n, i) && (k.Name.V == x.Keeper || e.Roster.People.There(k.Name.V, i)) {
			return k.Name.V
		}
	}
	return x.Keeper
}

// whose returns an entry of the enclosure that is a keeper's own, or nil.
func (e *Enclosure) whose(keeper string) *roster.Entry {
	for i := range e.Series {
		if x := &e.Series[i]; x.Keeper == keeper && x.Once == nil {
			return x
		}
	}
	return nil
}

// attended reports whether somebody comes on day i who is trained in what is needed. A
// keeper's own days need no training: their training is a matter of the species.
func (e *Enclosure) attended(x *roster.Entry, n need, i int) bool {
	for k := range e.Series {
		who, there := e.Roster.Doer(&e.Series[k], i)
		if there && e.Series[k].Days.Has(i) && (who == e.Series[k].Keeper || e.able(who, n, i)) {
			return true
		}
	}
	who, there := e.Roster.Doer(x, i)
	return there && (who == x.Keeper || e.able(who, n, i))
}

// able reports whether somebody is trained in what is needed on day i, and may stand in here.
func (e *Enclosure) able(who string, n need, i int) bool {
	k := e.Collection.Plan.Keeper(who)
	return k != nil && k.StandsIn(e.Plan) && slices.ContainsFunc(n.skills, func(skill string) bool { return k.TrainedOn(skill, e.Horizon.Date(i)) })
}

// whoCould says who could stand in, or be trained.
func (e *Enclosure) whoCould(x *roster.Entry, n need, i int) string {
	for _, k := range e.Collection.Plan.Keepers {
		if k.Name.V != x.Keeper && e.Roster.People.There(k.Name.V, i) && e.able(k.Name.V, n, i) {
			return k.Name.V + " as cover on those days"
		}
	}
	if who, there := e.Roster.Doer(x, i); there && who != "" {
		return "once they are, " + n.skills[0] + " under trained of keeper \"" + who + "\"; or a later day to leave"
	}
	return "as cover somebody who is trained in " + wording.Or(n.skills) + ", or a later day to leave"
}

// needs says why the animals must not be left on day i without somebody who is trained.
func (e *Enclosure) needs(i int) (need, bool) {
	if h := e.Roster.Undisturbed(e.Life, i); h != nil {
		return need{because(h), forBroods, h.Planned(e.Life), finding.Related{At: h.At, Text: h.Why}}, true
	}
	on := e.Horizon.Date(i)
	for _, g := range e.Life.Groups {
		if g.Count(on) == 0 {
			continue
		}
		if n, ok := e.newOrIll(g, on); ok {
			return n, true
		}
		if n, ok := e.helpless(g, on); ok {
			return n, true
		}
	}
	if l := e.Life; l.HasMites && on < l.Mites+ailingFor {
		return need{"mites on " + l.Mites.Brief(), forCare, false, finding.Related{}}, true
	}
	return need{}, false
}

// because is why a hold stands, as a round says it.
func because(h *life.Hold) string { return cmp.Or(h.Why, h.State.Is) }

func (e *Enclosure) newOrIll(g *life.Group, on civil.Date) (need, bool) {
	if a := g.Animals.Arrived; !g.Logged && a.Set() && a.V <= on && on < a.V+newcomer {
		return need{g.Animals.Name.V + " arrived " + a.V.Brief(), forCare, true, finding.Related{}}, true
	}
	for k := range g.Holds {
		h := &g.Holds[k]
		until := h.Until
		if h.Open {
			until = min(until, max(h.From, e.Today)+ailingFor)
		}
		if h.From <= on && on < until && slices.ContainsFunc(ailing, func(s *schema.State) bool { return h.State != nil && s.Name == h.State.Name }) {
			return need{because(h), forCare, h.Planned(e.Life), finding.Related{At: h.At, Text: h.Why}}, true
		}
	}
	return need{}, false
}

// helpless is of young that may not be left for longer than a day.
func (e *Enclosure) helpless(g *life.Group, on civil.Date) (need, bool) {
	stage := g.Stage(on)
	if stage != "newborn" && stage != "young" {
		return need{}, false
	}
	f := e.Sheet.Figure(schema.FigureUnattended, stage)
	if f == nil || f.Range.High > helpless*24*60 {
		return need{}, false
	}
	written := !g.Logged && g.Animals.Stage.Set() && g.Animals.Stage.V == stage
	return need{g.Animals.Name.V + " are " + stage, forCare, written, finding.Related{}}, true
}
