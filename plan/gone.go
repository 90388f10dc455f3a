package plan

import (
	"slices"
	"strings"

	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/wording"
)

// Gone is a gone block: what became of the animals of an enclosure that the plan no longer
// has, by its name.
type Gone struct {
	Head
	Because Written[string] `care:"because"`
	Note    Written[string] `care:"note"`
}

// destination is the enclosure to which a line moves animals, or "".
func destination(e *Event) string {
	if e.Word == nil || e.Word.After != schema.AfterEnclosure || len(e.Args) == 0 {
		return ""
	}
	return e.Args[0].V
}

// goneBlocks looks at what is said of enclosures that are no longer kept.
func (r *resolver) goneBlocks() {
	r.c.Gone = r.blocks.gone
	r.c.gone = make(map[string]*Gone, len(r.c.Gone))
	for _, g := range r.c.Gone {
		switch {
		case g.Name.V == "": // said already
		case r.c.enclosures[g.Name.V] == nil:
			r.c.gone[g.Name.V] = g
		default:
			r.found.Add(finding.Finding{Rule: ruleValue, At: g.At, Text: quote(g.Name.V) + " stands in the plan too: it is kept, or it is gone", Write: "one of the two blocks taken out",
				Also: []finding.Related{{At: r.c.enclosures[g.Name.V].At, Text: "the enclosure"}}})
		}
	}
}

// isGone reports whether a line is about an enclosure that is no longer kept.
func (r *resolver) isGone(e *Event) bool {
	return !e.Keeper.Set() && r.c.enclosures[e.Enclosure.V] == nil && r.c.racks[e.Enclosure.V] == nil && r.c.gone[e.Enclosure.V] != nil
}

// ofGone looks at a line about an enclosure that is no longer kept. What it says is over;
// animals that it brought to an enclosure of the plan are not there by it any more.
func (r *resolver) ofGone(e *Event) {
	to := r.c.enclosures[destination(e)]
	if to == nil {
		return
	}
	r.found.Add(finding.Finding{Rule: ruleUnknownName, At: e.Enclosure.At,
		Text:  quote(e.Enclosure.V) + " is gone by the plan, and by this line animals of it came to " + to.Name.V + ", where nobody knows of them now",
		Write: "its block in the plan again; or their number in " + to.Name.V + ", and this line taken back: " + e.Date.String() + " " + e.Enclosure.V + " withdrawn " + e.Word.Name + " " + e.Date.String(),
		Also:  []finding.Related{{At: r.c.gone[e.Enclosure.V].At, Text: "the plan says so here"}}})
}

// stranger is an enclosure that is not there, and of which the log speaks.
type stranger struct {
	at    Written[string] // in the first line
	lines int
}

// unknownEnclosure notes that a line is about an enclosure that is not there.
func (r *resolver) unknownEnclosure(w Written[string]) {
	if i, known := r.stranger[w.V]; known {
		r.strangers[i].lines++
	} else if !r.unsaid(w.V) {
		r.stranger[w.V] = len(r.strangers)
		r.strangers = append(r.strangers, stranger{w, 1})
	}
}

// sayStrangers says of each once that it is not there. Which is meant is guessed from a slip
// of the hand alone: what a log says changes calendars for months.
func (r *resolver) sayStrangers() {
	known := slices.Concat(keysOf(r, "enclosure", r.c.enclosures), keysOf(r, "rack", r.c.racks))
	slices.Sort(known)
	for _, s := range r.strangers {
		f := finding.Finding{Rule: ruleUnknownName, At: s.at.At, Text: "there is no enclosure " + quote(s.at.V)}
		if s.lines > 1 {
			f.Text += ", of which " + wording.Count(s.lines, "line speaks", "lines speak")
		}
		gone := "where it is no longer kept, in the plan: gone " + quote(s.at.V) + " { because = \"…\" }"
		if near := r.slip(s.at.V, known); near != "" {
			f.Text += ": did you mean " + quote(near) + "?"
			f.Write, f.Edits = quote(near), finding.Instead(s.at.At, s.at.V, near)
			f.Also = []finding.Related{{Text: gone}}
		} else {
			f.Write = "the name of one; or, " + gone
			if len(known) > 0 && len(known) <= maxNamed {
				f.Write = "one of: " + strings.Join(known, ", ") + "; or, " + gone
			}
		}
		r.found.Add(f)
	}
}
