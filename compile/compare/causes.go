package compare

import (
	"slices"

	"vivary/compile"
	"vivary/plan/change"
)

// maxTrials bounds how many pieces are tried, each of which is a compilation of what it touches.
// Of more, those of one block are tried together.
const maxTrials = 24

// causes finds which pieces bring each effect, by making them one by one in the first collection
// and comparing. Pieces of an enclosure's own block are tried beside those of all others at once,
// since they say nothing of each other; where all effects of an enclosure can have one cause only,
// nothing is tried.
func (r *Report) causes(try Try) {
	w := &trials{r: r, own: map[string][]int{}, try: try}
	w.sort()
	var open []int
	for i := range r.Effects {
		e := &r.Effects[i]
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
	w.run(open)
	for _, i := range open {
		e := &r.Effects[i]
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
	own    map[string][]int // pieces of each enclosure's own block, by its first name
	shared []int
	// library are the pieces of the sheets by which the two are judged.
	library []int
}

// sort tells the pieces of each enclosure's own block from what all share, and from those of the
// library.
func (w *trials) sort() {
	for i := range w.r.Pieces {
		p := &w.r.Pieces[i]
		if id := w.enclosureOf(p); p.Library {
			w.library = append(w.library, i)
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
	if p.Type != "enclosure" && !p.Log() {
		return ""
	}
	for _, x := range w.r.pair {
		if x.is >= 0 && w.r.Is.Lives[x.is].Plan.Name.V == p.Name || x.was >= 0 && (w.r.Was.Lives[x.was].Plan.Name.V == p.Name || p.Before != "" && w.r.Was.Lives[x.was].Plan.Name.V == p.Before) {
			return x.id
		}
	}
	return ""
}

// could are the pieces that may bring an effect: those of its enclosure's block, and what all
// enclosures share; all there are where that is nothing.
func (w *trials) could(e *Effect) []int {
	id := e.keys[0].enclosure
	out := slices.Concat(w.own[id], w.shared, w.sheets(id))
	if e.keys[0].fact == "" && len(w.own[id]) > 0 {
		return w.own[id] // it came or went
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

// run tries pieces for the effects at some places.
func (w *trials) run(open []int) {
	sets := w.sets(open)
	if len(sets) > maxTrials {
		sets = w.blocks(sets)
	}
	for _, set := range sets[:min(len(sets), maxTrials)] {
		got := w.try(set)
		if got == nil || got.Roster == nil {
			continue
		}
		part := &Report{Was: w.r.Was, Is: got, pair: pairs(w.r.Was, got)}
		moved := map[key]bool{}
		for _, e := range part.animals() {
			for _, k := range e.keys {
				moved[k] = true
			}
		}
		for _, i := range open {
			e := &w.r.Effects[i]
			if !slices.ContainsFunc(e.keys, func(k key) bool { return moved[k] }) {
				continue
			}
			could := w.could(e)
			for _, p := range set {
				if slices.Contains(could, p) {
					e.Cause = append(e.Cause, p)
				}
			}
		}
	}
}

// sets are what is tried: each shared piece by itself, and of each enclosure's own the first, the
// second and so on, beside those of the others.
func (w *trials) sets(open []int) [][]int {
	needed := map[int]bool{}
	all := false
	for _, i := range open {
		could := w.could(&w.r.Effects[i])
		all = all || len(could) == len(w.r.Pieces) || w.r.Effects[i].keys[0].enclosure == ""
		for _, p := range could {
			needed[p] = true
		}
	}
	var out [][]int
	if slices.ContainsFunc(w.library, func(p int) bool { return needed[p] }) {
		out = append(out, w.library)
	}
	for _, p := range w.shared {
		if needed[p] {
			out = append(out, []int{p})
		}
	}
	var beside [][]int
	for _, x := range w.r.pair {
		n := 0
		for _, p := range w.own[x.id] {
			if !needed[p] {
				continue
			}
			if n == len(beside) {
				beside = append(beside, nil)
			}
			beside[n] = append(beside[n], p)
			n++
		}
	}
	if all { // an effect that any of them may have
		for _, set := range beside {
			for _, p := range set {
				out = append(out, []int{p})
			}
		}
		return out
	}
	return append(out, beside...)
}

// blocks puts pieces of one outermost block together.
func (w *trials) blocks(sets [][]int) [][]int {
	at := map[string]int{}
	var out [][]int
	for _, set := range sets {
		if len(set) != 1 {
			out = append(out, set)
			continue
		}
		k := w.r.Pieces[set[0]].Head()
		i, known := at[k]
		if !known {
			i = len(out)
			at[k], out = i, append(out, nil)
		}
		out[i] = append(out[i], set[0])
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
