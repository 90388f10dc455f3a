package journal

import (
	"iter"
	"slices"
	"strconv"
	"strings"

	"vivary/compile"
	"vivary/compile/life"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/wording"
)

// changing are the words of the log from which something follows where they fit what was
// before: where nothing does, they are not written.
var changing = []*schema.LogWord{schema.WordRecovered, schema.WordFound, schema.WordNotGravid, schema.WordDispersed, schema.WordSacTaken,
	schema.WordHatched, schema.WordFirstMoult, schema.WordQuarantined, schema.WordMites, schema.WordPremoult, schema.WordSealed}

// Changes are what follows from a collection as it is after lines of the log, and did not
// before: what is held, what comes first, where animals are; a sentence each.
func Changes(before, after *compile.Result) []string {
	return slices.Concat(fresh(consequences(after), consequences(before)), fresh(states(before), states(after)))
}

// idle returns the word of lines that end or begin something where they do neither, as far as
// the whole of what follows from the log tells; nil where one does.
func idle(before, after *compile.Result, words []*schema.LogWord) *schema.LogWord {
	other := func(w *schema.LogWord) bool { return !slices.Contains(changing, w) }
	if after.Roster == nil || before.Roster == nil || len(words) == 0 || slices.ContainsFunc(words, other) || len(Changes(before, after)) > 0 || !sameDays(before, after) {
		return nil
	}
	return words[0]
}

// sameDays reports whether everything is done on the same days.
func sameDays(before, after *compile.Result) bool {
	next, stop := iter.Pull(before.Roster.All())
	defer stop()
	for e := range after.Roster.All() {
		o, ok := next()
		if !ok || o.ID != e.ID || o.Task != e.Task || !slices.Equal(o.Days, e.Days) {
			return false
		}
	}
	_, more := next()
	return !more
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
