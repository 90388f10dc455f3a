package main

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"vivary/compile"
	"vivary/compile/life"
	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/wording"
)

// changing are the words of the log from which something follows where they fit what was
// before: where nothing does, that is said.
var changing = []*schema.LogWord{schema.WordRecovered, schema.WordFound, schema.WordNotGravid, schema.WordDispersed, schema.WordSacTaken,
	schema.WordHatched, schema.WordFirstMoult, schema.WordQuarantined, schema.WordMites, schema.WordPremoult, schema.WordSealed}

// follows says what a line changed: what is held, what comes first, where animals are,
// and what the next build will say. The findings about the line itself have been said.
func (w *world) follows(before, after *compile.Result, said []finding.Finding, word *schema.LogWord) {
	if after.Roster == nil {
		fmt.Fprintln(w.out, "  The plan cannot be read now, so that what follows from the line is not known: see vivary check.")
		return
	}
	changed := slices.Concat(fresh(consequences(after), consequences(before)), fresh(states(before), states(after)))
	for _, s := range changed {
		fmt.Fprintln(w.out, "  "+s)
	}
	if len(said) == 0 && word == schema.WordRemark {
		fmt.Fprintln(w.out, "  A remark: nothing follows from it.")
	}
	if len(changed) == 0 && len(said) == 0 && slices.Contains(changing, word) {
		fmt.Fprintln(w.out, "  Nothing changes: nothing was held, asked or begun that this would end. See vivary why for how it stands.")
	}
	type key struct{ rule, text string }
	known := map[key]bool{}
	for _, f := range slices.Concat(before.Findings, said) {
		known[key{f.Rule.ID, f.Text}] = true
	}
	for _, f := range after.Findings {
		if f.Severity >= finding.Caution && !known[key{f.Rule.ID, f.Text}] {
			fmt.Fprintln(w.out, "  "+f.Brief())
		}
	}
	if after.Refused() {
		fmt.Fprintln(w.out, "  The plan is refused, though not by the log: see vivary check.")
	}
}

// consequences are what follows from the whole log as of today, a line each.
func consequences(r *compile.Result) (all []string) {
	for _, x := range r.Roster.Leaves() {
		if x.Sudden && x.From+civil.Date(x.Days) > r.Today {
			all = append(all, x.Title+": "+strings.Join(x.Lines, "; "))
		}
	}
	for _, l := range r.Lives {
		all = append(all, urgently(l.Plan.Shown(), l.Asks, l.Tasks)...)
		if l.HasMites {
			all = append(all, l.Plan.Shown()+": mites, last found "+l.Mites.Short()+": last in the round, tools of its own")
		}
		for _, g := range l.Groups {
			name := groupName(l, g)
			if s := present(g, r.Today); s != "" {
				all = append(all, name+": "+s)
			}
			for i := range g.Holds {
				if h := &g.Holds[i]; h.Until > r.Today {
					all = append(all, name+": "+held(h))
				}
			}
			for _, x := range g.Windows {
				if x.Until > r.Today {
					all = append(all, name+": "+x.Title+", "+wording.Dates(x.From, x.Until-1))
				}
			}
			all = append(all, urgently(name, g.Asks, g.Tasks)...)
		}
	}
	return all
}

func groupName(l *life.Enclosure, g *life.Group) string {
	return l.Plan.Shown() + " " + g.Animals.Name.V
}

// present says how many of a group there are, and of what stage.
func present(g *life.Group, today civil.Date) string {
	n, stage := g.Count(today), g.Stage(today)
	if n == 0 {
		return "none here now"
	}
	s := wording.Animals(n) + " here"
	if g.Guessed {
		s = "here"
	}
	if stage != "" {
		s += ", " + stage
	}
	if i := g.Instar(today); i > 0 {
		s += ", instar " + strconv.Itoa(i)
	}
	if g.Guessed {
		s += "; how many is not said, so log counted and their number once you see them"
	}
	return s
}

func held(h *life.Hold) string {
	s := h.State.Is
	if h.Part {
		s = "some: " + s
	}
	return s + " (" + h.Why + "; " + h.End + "): " + h.State.Rule
}

// urgently are questions, and tasks that come before all else, with the day on which they
// come first.
func urgently(name string, asks []life.Ask, tasks []life.Task) (all []string) {
	for i := range asks {
		a := &asks[i]
		s := name + ": asked from " + a.From.Short()
		if a.Urgent {
			s = name + ": FIRST from " + a.From.Short()
		}
		all = append(all, s+": "+a.Text)
	}
	for i := range tasks {
		if t := &tasks[i]; t.High {
			all = append(all, name+": first on "+t.On.Short()+": "+t.Text)
		}
	}
	return all
}

// fresh are the lines that are not among others.
func fresh(lines, others []string) (all []string) {
	known := map[string]bool{}
	for _, s := range others {
		known[s] = true
	}
	for _, s := range lines {
		if !known[s] {
			known[s] = true
			all = append(all, s)
		}
	}
	return all
}

// states are the states of today, in the words for their end.
func states(r *compile.Result) (all []string) {
	for _, l := range r.Lives {
		for _, g := range l.Groups {
			for i := range g.Holds {
				if h := &g.Holds[i]; h.From <= r.Today && r.Today < h.Until {
					all = append(all, groupName(l, g)+": "+over(h.State))
				}
			}
		}
	}
	return all
}

// over says that a state has ended. One that only may be so was a precaution.
func over(s *schema.State) string {
	if is, perhaps := strings.CutPrefix(s.Is, "may be "); perhaps {
		return "no longer held for " + is
	}
	return "no longer " + s.Is
}
