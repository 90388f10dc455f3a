package explain

import (
	"slices"

	"vivary/compile"
	"vivary/compile/roster"
	"vivary/plan"
	"vivary/plan/source"
)

// Passage is where what an answer is about was written, for whoever can look up by whom.
type Passage struct {
	What string         // what was done there, as a line about it begins: "Written"
	At   []source.Place // in files of the collection
}

// passage adds a passage to others, unless it is in no file of the collection, or already
// there: what comes with the program was written by no keeper.
func passage(to []Passage, what string, at ...source.Place) []Passage {
	at = slices.DeleteFunc(slices.Clone(at), func(p source.Place) bool {
		return p.File <= 0 || slices.ContainsFunc(to, func(x Passage) bool { return slices.Contains(x.At, p) })
	})
	if len(at) == 0 {
		return to
	}
	return append(to, Passage{what, at})
}

// block is where a block was written.
func block(h *plan.Head) []Passage { return passage(nil, "Last changed", h.Whole) }

// timed is where it was written when a care is done.
func timed(e *roster.Entry) []Passage {
	if t := e.Timing; t != nil && e.Rack == nil {
		at := []source.Place{t.Every.At, t.Cron.At, t.AfterLast.At, t.Window.At, t.From.At, t.Until.At}
		for _, list := range [][]plan.Written[plan.Day]{t.On, t.NotOn, t.AlsoOn} {
			at = append(at, places(list)...)
		}
		at = append(append(at, places(t.Round)...), places(t.Clocks)...)
		if out := passage(nil, "Written", at...); out != nil {
			return out
		}
	}
	return passage(nil, "Written", e.Origin)
}

func places[T any](list []plan.Written[T]) (out []source.Place) {
	for _, w := range list {
		out = append(out, w.At)
	}
	return out
}

// decided is where it was written why a care is, or is not, on day i, besides when it is
// done.
func decided(e *roster.Entry, i int) []Passage {
	out := timed(e)
	c := e.Reason(i)
	switch {
	case c == nil:
		return out
	case c.Away != nil:
		return passage(out, decides, c.Away.Whole)
	case c.Hold != nil:
		return passage(out, decides, c.Hold.At)
	case c.Dates != nil:
		return passage(out, decides, c.Dates.At)
	case c.At == e.Origin:
		return out
	}
	return passage(out, decides, c.At)
}

const decides = "What decides that day was written"

// absent adds where absences to come were written.
func absent(to []Passage, r *compile.Result, of func(*plan.Away) bool) []Passage {
	for _, a := range r.Plan.Aways {
		if a.To.V >= r.Today && of(a) {
			to = passage(to, "The absence from "+a.From.V.Words()+" was written", a.Whole)
		}
	}
	return to
}
