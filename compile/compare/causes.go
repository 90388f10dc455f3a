package compare

import (
	"slices"

	"vivary/compile"
	"vivary/plan/change"
)

// causes finds which pieces bring each effect, by making them one by one in the first collection
// and comparing. Pieces of an enclosure's own block are tried beside those of all others at once,
// since they say nothing of each other; where all effects of an enclosure can have one cause only,
// nothing is tried. again are the effects of a trial in which those in question are looked for.
func (r *Report) causes(try Try, all []Effect, again func(*Report) [][]Effect) {
	w := &trials{r: r, own: map[string][]int{}, try: try, all: all, again: again}
	w.sort()
	var open []int
	for i := range all {
		e := &all[i]
		could := w.could(e)
		switch {
		case len(could) == 1:
			e.Cause = could
		case len(could) > 1:
			open = append(open, i)
		}
	}
	if len(open) == 0 {
		return
	}
	w.without(w.run(open))
	for _, i := range open {
		e := &all[i]
		slices.Sort(e.Cause)
		e.Cause = slices.Compact(e.Cause)
		if len(e.Cause) == 0 { // several do it together
			e.Cause = w.could(e)
		}
	}
}

// trials are the pieces that are tried.
type trials struct {
	r      *Report
	try    Try
	all    []Effect // of which the causes are looked for
	again  func(*Report) [][]Effect
	own    map[string][]int // pieces of each enclosure's own block, by its first name
	shared []int
	around []int // of the house around the animals
	// library are the pieces of the sheets by which the two are judged.
	library []int
	ids     map[string]string // first names of enclosures, by their names in either
}

// sort tells the pieces of each enclosure's own block from what all share, and from those of the
// library.
func (w *trials) sort() {
	for i := range w.r.Pieces {
		p := &w.r.Pieces[i]
		if id := w.enclosureOf(p); p.Library {
			w.library = append(w.library, i)
		} else if w.aside(p) {
			w.around = append(w.around, i)
		} else if id != "" {
			w.own[id] = append(w.own[id], i)
		} else {
			w.shared = append(w.shared, i)
		}
	}
}

// sheets are the pieces of the library that are of the species of an enclosure, or of what its
// sheet is made from, and those of feeders.
func (w *trials) sheets(id string) (out []int) {
	if len(w.library) == 0 {
		return nil
	}
	names := map[string]bool{}
	for _, x := range w.r.pair {
		if x.id == id || id == "" {
			if x.was >= 0 {
				layers(w.r.Was, x.was, names)
			}
			if x.is >= 0 {
				layers(w.r.Is, x.is, names)
			}
		}
	}
	for _, i := range w.library {
		if p := &w.r.Pieces[i]; names[p.Name] || p.Type == "feeder" {
			out = append(out, i)
		}
	}
	return out
}

func layers(r *compile.Result, i int, into map[string]bool) {
	for _, name := range r.Plan.Library.Layers(r.Lives[i].Plan.Species.V) {
		into[name] = true
	}
}

// enclosureOf is the first name of the enclosure that a piece is of, or "". Lines of a log that
// say something of two enclosures are of none.
func (w *trials) enclosureOf(p *change.Piece) string {
	if p.Type != "enclosure" && !p.Log() || p.Between {
		return ""
	}
	if w.ids == nil {
		w.ids = make(map[string]string, 2*len(w.r.pair))
		for _, x := range w.r.pair {
			if x.was >= 0 {
				w.ids[w.r.Was.Lives[x.was].Plan.Name.V] = x.id
			}
		}
		for _, x := range w.r.pair {
			if x.is >= 0 {
				w.ids[w.r.Is.Lives[x.is].Plan.Name.V] = x.id
			}
		}
	}
	if id := w.ids[p.Name]; id != "" {
		return id
	}
	return w.ids[p.Before]
}

// could are the pieces that may bring an effect: those of its enclosure's block, and what all
// enclosures share; all there are where that is nothing.
func (w *trials) could(e *Effect) []int {
	id := e.keys[0].enclosure
	if id == house {
		return w.inHouse(e)
	}
	out := slices.Concat(w.own[id], w.shared, w.sheets(id))
	switch {
	case e.keys[0].fact == "" && len(w.own[id]) > 0:
		return w.own[id] // it came or went
	case e.Found != nil && e.Found.Rule.ID == missing && w.came(id):
		out = append(out, w.went()...) // it may be another that is no more
	}
	if len(out) == 0 || id == "" {
		out = out[:0]
		for i := range w.r.Pieces {
			if !w.r.Pieces[i].Library {
				out = append(out, i)
			}
		}
		out = append(out, w.sheets("")...)
	}
	slices.Sort(out)
	return out
}

// missing is the rule that speaks of a new enclosure where another is no more.
const missing = "animals-missing"

// came reports whether an enclosure is new.
func (w *trials) came(id string) bool {
	return slices.ContainsFunc(w.r.pair, func(p pair) bool { return p.id == id && p.was < 0 })
}

// went are the pieces of enclosures that are no more.
func (w *trials) went() (out []int) {
	for _, p := range w.r.pair {
		if p.is < 0 {
			out = append(out, w.own[p.id]...)
		}
	}
	return out
}

// idle are the pieces that no effect and no work has for a cause.
func (r *Report) idle() {
	used := make([]bool, len(r.Pieces))
	mark := func(all []int) {
		for _, i := range all {
			used[i] = true
		}
	}
	for i := range r.Effects {
		mark(r.Effects[i].Cause)
	}
	for i := range r.House {
		mark(r.House[i].Cause)
	}
	for i := range r.Rounds {
		mark(r.Rounds[i].Cause)
	}
	for i := range r.People {
		mark(r.People[i].Cause)
	}
	for i := range r.Care {
		mark(r.Care[i].Cause)
	}
	for i := range used {
		if !used[i] && !r.Pieces[i].Library {
			r.Idle = append(r.Idle, i)
		}
	}
}
