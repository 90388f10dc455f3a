package compile

import (
	"slices"
	"strings"

	"vivary/compile/life"
	"vivary/compile/prove"
	"vivary/compile/roster"
	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/schema/wording"
)

// press tells the roster what is urgent in each enclosure, so that it stands first in its
// rounds. What the log asks is an entry already; what an accept block silenced until it
// ended is for whoever wrote that, not for whoever stands in front of the tank.
func (r *Result) press(all []finding.Finding) {
	at := map[string]*life.Enclosure{}
	for i := range all {
		f := &all[i]
		if f.Severity != finding.Urgent || f.In.Name == "" || f.Rule.Told || slices.Contains(life.Rules, f.Rule) && !f.Rule.Slip || f.Rule.Now == "" && f.Accepted {
			continue
		}
		if len(at) == 0 {
			for _, l := range r.Lives {
				at[l.Plan.Name.V] = l
			}
		}
		l := at[f.In.Name]
		if l == nil || f.Rule == prove.RuleMissed && r.catchesUp(l, f.At) {
			continue
		}
		if r.Roster.Pressing == nil {
			r.Roster.Pressing = map[*life.Enclosure][]finding.First{}
		}
		for _, first := range firsts(f, l) {
			if said := r.Roster.Pressing[l]; !slices.Contains(said, first) {
				r.Roster.Pressing[l] = append(said, first)
			}
		}
	}
}

// firsts are the lines of a finding in the rounds of an enclosure.
func firsts(f *finding.Finding, l *life.Enclosure) []finding.First {
	switch {
	case f.Told:
		return nil
	case len(f.First) > 0:
		return f.First
	case f.Rule.Now != "":
		return []finding.First{{Text: f.Rule.Now}}
	}
	return []finding.First{{Text: strings.TrimPrefix(f.Text, l.Plan.Name.V+": ")}} // the round names it
}

// catchesUp reports whether a round to come brings first what was missed at an enclosure,
// or at its rack, where that is what a finding is about.
func (r *Result) catchesUp(l *life.Enclosure, at source.Place) bool {
	caught := func(e roster.Entry) bool {
		return slices.ContainsFunc(e.Causes, func(c roster.Cause) bool {
			return c.Why == roster.CaughtUp && c.Days.Next(r.Horizon.Today) >= 0
		})
	}
	if k := r.Roster.RackOf(l.Plan); k != nil && k.Plan.Says(at) {
		return slices.ContainsFunc(k.Entries, caught)
	}
	i := slices.Index(r.Lives, l)
	return i < len(r.Roster.Of) && slices.ContainsFunc(r.Roster.Of[i], caught)
}

// Alone are the findings that are urgent, a line each, as they are said where nothing beside
// them tells which enclosure they are about.
func (r *Result) Alone() (out []string) {
	for i := range r.Findings {
		f := &r.Findings[i]
		if f.Severity != finding.Urgent {
			continue
		}
		of, names := f.Of, []string(nil)
		if len(of) == 0 && f.In.Name != "" {
			of = []string{f.In.Name}
		}
		for _, name := range of {
			if e := r.Plan.Enclosure(name); e != nil && !strings.Contains(f.Text, e.Shown()) && !strings.HasPrefix(f.Text, name+": ") {
				names = append(names, e.Shown())
			}
		}
		said := f.Said()
		if f.Where == "" && len(names) > 0 {
			said = wording.And(names) + ": " + said
		}
		out = append(out, said)
	}
	return out
}
