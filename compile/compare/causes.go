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
	ids     map[string]string // first names of enclosures, by their names in either
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

// run tries pieces for the effects at some places: those of enclosures' own blocks first, which
// cost little. What they bring wholly is explained. What is left is from what is shared: where
// that is one piece, nothing is tried.
func (w *trials) run(open []int) {
	left := w.trying(open, w.beside(open))
	sets := w.common(left)
	if len(sets) == 1 {
		for _, i := range left {
			w.blame(&w.r.Effects[i], sets[0])
		}
		return
	}
	w.trying(left, sets)
}

// trying tries sets of pieces, and returns the effects that none of them brings wholly.
func (w *trials) trying(open []int, sets [][]int) (left []int) {
	if len(sets) > maxTrials {
		sets = w.blocks(sets)
	}
	whole := map[int]bool{}
	for _, set := range sets[:min(len(sets), maxTrials)] {
		got := w.try(set)
		if got == nil || !understood(got) {
			continue
		}
		brings := map[key]string{}
		part := &Report{Was: w.r.Was, Is: got, pair: w.of(open, pairs(w.r.Was, got))}
		for _, e := range part.animals() {
			for _, k := range e.keys {
				brings[k] = e.Is
			}
		}
		for _, i := range open {
			e := &w.r.Effects[i]
			for _, k := range e.keys {
				if is, some := brings[k]; some {
					w.blame(e, set)
					whole[i] = whole[i] || is == e.Is
				}
			}
		}
	}
	return slices.DeleteFunc(slices.Clone(open), func(i int) bool { return whole[i] })
}

// blame gives an effect those pieces of a set for causes that may bring it.
func (w *trials) blame(e *Effect, set []int) {
	could := w.could(e)
	for _, p := range set {
		if slices.Contains(could, p) {
			e.Cause = append(e.Cause, p)
		}
	}
}

// of are those pairs that effects at some places are about; all of them where one is about the
// collection.
func (w *trials) of(open []int, all []pair) []pair {
	asked := map[string]bool{}
	for _, i := range open {
		for _, k := range w.r.Effects[i].keys {
			asked[k.enclosure] = true
		}
	}
	if asked[""] {
		return all
	}
	return slices.DeleteFunc(all, func(p pair) bool { return !asked[p.id] })
}

// common is what all enclosures share of what may bring some effects: each piece by itself, and
// the library as one.
func (w *trials) common(open []int) (out [][]int) {
	needed := w.needed(open)
	if slices.ContainsFunc(w.library, func(p int) bool { return needed[p] }) {
		out = append(out, w.library)
	}
	for _, p := range w.shared {
		if needed[p] {
			out = append(out, []int{p})
		}
	}
	return out
}

func (w *trials) needed(open []int) map[int]bool {
	out := map[int]bool{}
	for _, i := range open {
		for _, p := range w.could(&w.r.Effects[i]) {
			out[p] = true
		}
	}
	return out
}

// beside are pieces of enclosures' own blocks: of each the first, the second and so on, beside
// those of the others. Each is by itself where an effect is about the collection.
func (w *trials) beside(open []int) (out [][]int) {
	needed := w.needed(open)
	alone := slices.ContainsFunc(open, func(i int) bool {
		id := w.r.Effects[i].keys[0].enclosure
		return id == "" || len(w.own[id])+len(w.shared)+len(w.sheets(id)) == 0 // any of them may have brought it
	})
	for _, x := range w.r.pair {
		n := 0
		for _, p := range w.own[x.id] {
			switch {
			case !needed[p]:
				continue
			case alone:
				out = append(out, []int{p})
				continue
			case n == len(out):
				out = append(out, nil)
			}
			out[n] = append(out[n], p)
			n++
		}
	}
	return out
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
