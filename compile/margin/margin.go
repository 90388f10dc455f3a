// Package margin says what stands beside the lines of a file: above a block what comes next
// and how its needs stand, behind a value what follows from it, and what each word of the text
// is. It concludes nothing, and knows bytes and places only: how an editor draws them is for
// whoever asks.
package margin

import (
	"cmp"
	"slices"
	"strings"

	"vivary/compile"
	"vivary/compile/roster"
	"vivary/plan"
	"vivary/plan/source"
	"vivary/schema/civil"
)

// Note is words that stand beside a place of a text and not in it.
type Note struct {
	At   source.Place // the block that a line of words stands above, the value that a hint stands behind
	Text string
	More string // what is too long to stand there, or ""
}

// Lenses are the lines of words above the blocks of a file, in the order of its lines: above
// what has animals the next thing to be done and how the needs stand, above a round who does it
// and how long it takes, above people and absences who is there. There are none where the plan
// could not be understood well enough for its days to be worked out.
func Lenses(r *compile.Result, id source.ID) []Note {
	if !worked(r) {
		return nil
	}
	l := &lenses{r: r, id: id, ticks: r.Roster.Ticks()}
	l.boxes()
	l.racks()
	for _, x := range plan.Wholes(r.Plan.Rounds) {
		l.add(&x.Head, l.round(x))
	}
	for _, k := range r.Plan.Keepers {
		l.add(&k.Head, l.keeper(k))
	}
	for _, a := range r.Plan.Aways {
		if !a.Logged {
			l.add(&a.Head, l.away(a))
		}
	}
	slices.SortStableFunc(l.out, func(a, b Note) int { return cmp.Compare(a.At.Start, b.At.Start) })
	return l.out
}

// worked reports whether the days of the plan could be worked out.
func worked(r *compile.Result) bool {
	return r.Roster != nil && len(r.Roster.Of) == len(r.Lives) && len(r.Proofs) == len(r.Lives)
}

// lenses are those of one file in the making.
type lenses struct {
	r     *compile.Result
	id    source.ID
	ticks *roster.Ticks
	out   []Note
}

// add puts parts above a block of the file, unless there are none.
func (l *lenses) add(h *plan.Head, parts []string) {
	if h.At.File == l.id && len(parts) > 0 {
		l.out = append(l.out, Note{At: h.At, Text: strings.Join(parts, "; ")})
	}
}

// yearApart is from how many days on a day is told with its year, as in rounds.
const yearApart = 300

// day is a day as it is told here.
func day(r *compile.Result, d civil.Date) string {
	switch away := d - r.Today; {
	case away == 0:
		return "today"
	case away == 1:
		return "tomorrow"
	case away > yearApart || away < -yearApart:
		return d.Words()
	}
	return d.Short()
}

// person is somebody by the name that people see.
func person(r *compile.Result, name string) string {
	if k := r.Plan.Keeper(name); k != nil {
		return k.Shown()
	}
	return name
}
