package plan

import (
	"maps"
	"slices"
	"strconv"
	"strings"

	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/wording"
)

// Gone is a gone block: what became of animals that the plan no longer has. Its name is
// that of an enclosure, which need not stand in the plan.
type Gone struct {
	Head
	Animals Written[int]    `care:"animals"` // unset for all of them
	Because Written[string] `care:"because"`
	Note    Written[string] `care:"note"`
}

// Departures is what a log says of the numbers of animals in an enclosure, which need not
// stand in the plan.
type Departures struct {
	// Lines is how many of its lines may change how many animals there are.
	Lines int
	// Left is how many died or left the collection by it, as it is written: everybody, a
	// number beyond all, where a line that takes all of a group away gives none.
	Left int
}

// everybody is more than any enclosure holds, and less than would overflow in a sum.
const everybody = 1_000_000

// counting are the words of the log by which the number of animals somewhere can change.
var counting = []*schema.LogWord{
	schema.WordArrived, schema.WordLaid, schema.WordSacTaken, schema.WordHatched, schema.WordBorn, schema.WordFirstMoult, schema.WordDispersed,
	schema.WordSeparated, schema.WordCounted, schema.WordMoved, schema.WordEscaped, schema.WordFound, schema.WordDied, schema.WordWithdrawn,
}

// Departed returns what the log says of the numbers in an enclosure, by the name that it
// has now, or had where it stands in the plan no more.
func (c *Collection) Departed(name string) Departures { return c.departed[name] }

// Logged returns the names of all enclosures of which the log speaks.
func (c *Collection) Logged() []string { return slices.Sorted(maps.Keys(c.departed)) }

// depart gathers them. A line that stands twice is one.
func (r *resolver) depart() {
	out := map[string]Departures{}
	seen := map[string]bool{}
	for i := range r.events {
		e := &r.events[i]
		if e.Keeper.Set() {
			continue
		}
		d := out[e.Enclosure.V]
		if line := r.c.Files.Of(e.At); slices.Contains(counting, e.Word) && !seen[line] {
			seen[line] = true
			d.Lines++
			d.Left += leaving(e)
			if to := destination(e); to != "" && to != e.Enclosure.V {
				at := out[to]
				at.Lines++
				out[to] = at
			}
		}
		out[e.Enclosure.V] = d
	}
	r.c.departed = out
}

// leaving is how many animals a line takes out of the collection.
func leaving(e *Event) int {
	switch {
	case e.Word != schema.WordDied && e.Word != schema.WordMoved || destination(e) != "":
		return 0
	case e.Number.Set():
		return int(min(e.Number.V, everybody))
	case e.Word == schema.WordDied:
		return 1
	}
	return everybody
}

// destination is the enclosure to which a line moves animals, or "".
func destination(e *Event) string {
	if e.Word == nil || e.Word.After != schema.AfterEnclosure || len(e.Args) == 0 {
		return ""
	}
	return e.Args[0].V
}

// goneBlocks looks at what is said of animals that went.
func (r *resolver) goneBlocks() {
	r.c.Gone = r.blocks.gone
	r.c.gone = make(map[string]*Gone, len(r.c.Gone))
	for _, g := range r.c.Gone {
		switch {
		case g.Name.V == "": // said already
		case r.c.enclosures[g.Name.V] == nil:
			r.c.gone[g.Name.V] = g
		case !g.Animals.Set():
			r.found.Add(finding.Finding{Rule: ruleValue, At: g.At, Text: quote(g.Name.V) + " stands in the plan: how many of its animals went is not said", Write: "as animals how many went, " + strconv.Itoa(r.c.enclosures[g.Name.V].Total()) + " where all of them did"})
		}
	}
}

// Total is how many animals the plan itself puts into an enclosure.
func (e *Enclosure) Total() (n int) {
	for _, a := range e.Animals {
		n += a.Count.V.Total()
	}
	return n
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
	if len(r.strangers) == 0 {
		return
	}
	known := slices.Concat(keysOf(r, "enclosure", r.c.enclosures), keysOf(r, "rack", r.c.racks), keysOf(r, "store", r.c.stores))
	slices.Sort(known)
	for _, s := range r.strangers {
		f := finding.Finding{Rule: ruleUnknownName, At: s.at.At, Text: "there is no enclosure " + quote(s.at.V)}
		if s.lines > 1 {
			f.Text += ", of which " + wording.Count(s.lines, "line speaks", "lines speak")
		}
		gone := "where it is no longer kept, in the plan a gone block of that name, with what became of the animals as because"
		near := r.sameNumber(s.at.V)
		if near == "" {
			near = r.slip(s.at.V, known)
		}
		if near != "" {
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

// sameNumber is the enclosure that has the same name but for zeros before its number, as in
// tub-07, or "".
func (r *resolver) sameNumber(name string) string {
	bare := strings.TrimRight(name, "0123456789")
	n := strings.TrimLeft(name[len(bare):], "0")
	if n == "" || bare == "" {
		return ""
	}
	for _, zeros := range []string{"", "0", "00"} {
		if x := bare + zeros + n; r.c.enclosures[x] != nil {
			return x
		}
	}
	return ""
}
