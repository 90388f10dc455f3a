package life

import (
	"maps"
	"slices"
	"strings"

	"vivary/compile/identity"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/slip"
)

// outbreak is how many weeks mites are followed up (common practice, no source).
const outbreak = 4

// care notes what was done, or not done, on a day of its own.
func (r *reader) care(e *plan.Event) {
	if len(e.Args) == 0 {
		r.found.Add(finding.Finding{Rule: ruleCare, At: e.WordAt, Text: e.Word.Name + " does not say which care",
			Write: e.Word.Name + " water"})
		return
	}
	name := e.Args[0].V
	if k := schema.KindCalled(name); k != nil && !r.knows(name) {
		name = k.Name
	}
	if !r.knows(name) {
		known := slices.Sorted(maps.Keys(r.cares))
		f := finding.Finding{Rule: ruleCare, At: e.Args[0].At, Text: "there is no care \"" + name + "\" here", Write: "one of: " + strings.Join(known, ", ")}
		if s := slip.Of(name, known); s != "" {
			f.Text += ": did you mean " + s + "?"
			f.Write = s
			if !strings.Contains(s, " ") { // in a log a name is one word
				f.Edits = finding.Instead(e.Args[0].At, e.Args[0].V, s)
			}
		}
		r.found.Add(f)
		return
	}
	if name == "feed" {
		for _, g := range r.out.Groups {
			if e.Group.V == "" || e.Group.V == g.Animals.Name.V {
				r.note(identity.OfMeal(r.out.Plan, schema.KindFeed, g.Animals, r.out.Plan.FeedingOf(g.Animals)).Care, e)
			}
		}
		return
	}
	r.note(name, e)
	// A kind stands for the cares of that kind, whatever they are called; and a care is
	// noted under the name it had first, whichever of its names the line has.
	for _, c := range r.out.Plan.Care {
		first := identity.OfCare(r.out.Plan, c.Name, c.Formerly).Care
		if first != name && (c.Name.V == name || c.KindName() == name) {
			r.note(first, e)
		}
	}
}

func (r *reader) note(name string, e *plan.Event) {
	if e.Word == schema.WordDone {
		if r.out.Done == nil {
			r.out.Done = map[string]civil.Date{}
		}
		r.out.Done[name] = e.Date
		return
	}
	if r.out.Skipped == nil {
		r.out.Skipped = map[string][]civil.Date{}
	}
	r.out.Skipped[name] = append(r.out.Skipped[name], e.Date)
}

// knows reports whether a care of that name is in the plan or the sheet, or is a
// kind of care.
func (r *reader) knows(name string) bool {
	if r.cares == nil {
		r.cares = map[string]bool{}
		for _, k := range schema.CareKinds {
			r.cares[k.Name] = true
		}
		for _, c := range r.out.Plan.Care {
			r.cares[c.Name.V], r.cares[identity.OfCare(r.out.Plan, c.Name, c.Formerly).Care] = true, true
		}
		if r.sheet != nil {
			for _, c := range r.sheet.Care {
				r.cares[c.Name.V] = true
			}
		}
	}
	return r.cares[name]
}

// whole concludes what is about the enclosure, after all groups.
func (r *reader) whole() {
	if s := r.mites; s.ok {
		r.out.Mites = s.on
		clear := r.clear()
		r.out.HasMites = after(s.on, clear) > r.today
		r.out.Tasks = append(r.out.Tasks, Task{Name: "mites/" + s.on.String(), Kind: schema.KindWatch, On: s.on, Times: clear / 7, Interval: 7,
			Text: "mites gone? look at joints and mouth from outside; own tools, last in the round", At: s.at})
	}
	if s := r.died; s.ok && (len(r.living()) > 0 || r.out.Plan.Culture.V) { // where nobody is left there are no others
		r.out.Tasks = append(r.out.Tasks, Task{Name: "after-death/" + s.on.String(), Kind: schema.KindWatch, On: s.on + 1,
			Text: "check the others from outside: water, heat record, leftovers, mites", At: s.at})
	}
	free := r.anyone()
	for _, t := range r.tracks {
		if k := &t.heads; t.now() > 0 && (k.again.ok || k.full.ok) {
			t.Tasks = r.keep(append(t.Tasks, k.tasks(free)...))
		}
	}
	if len(r.living()) > 1 || len(r.living()) == 1 && r.living()[0].now() > 1 {
		r.out.Tasks = append(r.out.Tasks, r.heads.tasks(free)...)
	}
	r.search()
	r.climate()
	r.out.Tasks = r.keep(r.out.Tasks)
	r.ask(r.out.Asks)
	for _, t := range r.tracks {
		r.ask(t.Asks)
	}
}

// clear is for how many days after the last mites the enclosure counts as having them.
func (r *reader) clear() int {
	if r.sheet != nil {
		if s := spanOf(r.sheet.Figure(schema.FigureMitesClear, "")); s.ok {
			return s.high
		}
	}
	return outbreak * 7
}

// anyone returns a search for a day that is free for all who live here: whoever
// digs for one disturbs the others too.
func (r *reader) anyone() func(civil.Date, schema.Row) (civil.Date, bool) {
	var all []Hold
	return func(on civil.Date, what schema.Row) (civil.Date, bool) {
		if all == nil {
			for i := range r.tracks {
				all = append(all, r.tracks[i].Holds...)
			}
			byDay(all)
		}
		return free(on, what, all)
	}
}
