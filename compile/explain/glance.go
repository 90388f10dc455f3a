package explain

import (
	"cmp"
	"slices"

	"vivary/compile"
	"vivary/compile/life"
	"vivary/compile/prove"
	"vivary/compile/roster"
	"vivary/plan"
	"vivary/schema/wording"
)

// glances is how many lines of a sort a glance has, and fewer where each is long.
const (
	glances = 5
	fewer   = 3
)

// Glance explains an enclosure in a few lines, for who only passes: who lives there in what
// state, what is done next, and which needs have the least to spare. Of a block with numbers it
// says which enclosures they are. It returns nothing for what is none.
func Glance(r *compile.Result, name string) []Answer {
	if !worked(r) {
		return nil
	}
	for i, l := range r.Lives {
		if l.Plan.Name.V == name {
			return inUnits([]Answer{glance(r, i)}, r.Plan.Units)
		}
	}
	all := explainNumbers(r, name)
	for i := range all {
		for k := range all[i].Parts {
			all[i].Parts[k].Lines = few(all[i].Parts[k].Lines)
		}
	}
	return inUnits(all, r.Plan.Units)
}

func glance(r *compile.Result, i int) Answer {
	l := r.Lives[i]
	here := slices.DeleteFunc(animals(r, i), func(x Line) bool { return x.Name == "" || emptied(r, i, x.Name) })
	parts := part(nil, "Animals", here[:min(len(here), fewer)])
	parts = part(parts, "Next", soonest(r, i))
	return Answer{Title: "Enclosure " + l.Plan.Name.V + ": " + describe(l.Plan), Parts: part(parts, "Needs", scarcest(r, i))}
}

func few(all []Line) []Line { return all[:min(len(all), glances)] }

// emptied reports whether nobody is left of some animals.
func emptied(r *compile.Result, i int, group string) bool {
	for _, g := range r.Lives[i].Groups {
		if g.Animals.Name.V == group {
			return g.Count(r.Today) == 0
		}
	}
	return false
}

// soonest are the cares of an enclosure that are done next: of the same day what is pressing
// first, then in the order of the round, each once.
func soonest(r *compile.Result, i int) []Line {
	next := func(e *roster.Entry) int {
		if d := e.Days.Next(r.Horizon.Today); d >= 0 {
			return d
		}
		return r.Horizon.Days
	}
	var all []*roster.Entry
	for k := range r.Roster.Of[i] {
		if e := &r.Roster.Of[i][k]; next(e) < r.Horizon.Days {
			all = append(all, e)
		}
	}
	slices.SortStableFunc(all, func(a, b *roster.Entry) int {
		return cmp.Or(cmp.Compare(next(a), next(b)), -cmp.Compare(pressing(a), pressing(b)))
	})
	var out []Line
	for _, e := range all {
		line := Line{Name: day(r, r.Horizon.Date(next(e))), Text: e.Task + by(r, e.Keeper)}
		if !slices.ContainsFunc(out, func(x Line) bool { return x.Name == line.Name && x.Text == line.Text }) {
			out = append(out, line)
		}
	}
	return few(out)
}

// pressing is 1 for what stands before everything else in its round, and for a question.
func pressing(e *roster.Entry) int {
	if e.High || e.Ask != nil {
		return 1
	}
	return 0
}

// scarcest are the needs of an enclosure, those first that are not met, then those of which the
// longest time comes nearest to what is allowed.
func scarcest(r *compile.Result, i int) []Line {
	spare := func(p *prove.Proof) int {
		if !p.Met() {
			return -1
		}
		return max(0, p.Allowed-p.Longest)
	}
	var all []*prove.Proof
	for k := range r.Proofs[i] {
		all = append(all, &r.Proofs[i][k])
	}
	slices.SortStableFunc(all, func(a, b *prove.Proof) int { return cmp.Compare(spare(a), spare(b)) })
	var out []Line
	for _, p := range all[:min(len(all), fewer)] {
		out = append(out, Line{Name: needOf(p), Text: proven(r, p)})
	}
	return out
}

// GlanceRound explains a round in a few lines: when it is, who does it, and when next.
func GlanceRound(r *compile.Result, name string) []Answer {
	if !worked(r) {
		return nil
	}
	for _, x := range r.Roster.Rounds {
		if x.Name.V != name {
			continue
		}
		days := r.Horizon.New()
		stops := map[*life.Enclosure]bool{}
		for _, part := range r.Roster.Parts(x) {
			for _, e := range r.Roster.In[part] {
				stops[e.Life] = true
				days.Union(e.Days)
			}
		}
		lines := append(roundHead(r, x), Line{Text: "It passes " + wording.Count(len(stops), "enclosure", "enclosures")})
		if len(stops) > 0 {
			lines = append(lines, Line{Text: "Next: " + coming(r, days, glances)})
		}
		return inUnits([]Answer{{Title: roundTitle(x), Parts: []Part{{Lines: lines}}}}, r.Plan.Units)
	}
	return nil
}

// Animals explains some animals of an enclosure: how many there are, in what state, what is held
// and why, how long they can be left, and whether what is theirs alone is met.
func Animals(r *compile.Result, enclosure *plan.Enclosure, group string) []Answer {
	if !worked(r) {
		return nil
	}
	for i, l := range r.Lives {
		if l.Plan != enclosure {
			continue
		}
		named := func(all []Line) []Line { return slices.DeleteFunc(all, func(x Line) bool { return x.Name != group }) }
		parts := part(nil, "", named(animals(r, i)))
		parts = part(parts, "If nobody comes", named(leaving(r, l)))
		var needs []Line
		for k := range r.Proofs[i] {
			if p := &r.Proofs[i][k]; p.Group != nil && p.Group.Animals.Name.V == group {
				needs = append(needs, Line{Name: p.Name.Name, Text: proven(r, p)})
			}
		}
		if len(parts) == 0 {
			return nil
		}
		parts = part(parts, "Needs", needs)
		return inUnits([]Answer{{Title: "Animals " + group + " of " + l.Plan.Name.V + ": " + describe(l.Plan), Parts: parts}}, r.Plan.Units)
	}
	return nil
}
