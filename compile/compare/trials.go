package compare

import "slices"

// most bounds how many pieces are tried, each of which is a compilation of what it touches: fewer in
// a house of very many enclosures, where each takes seconds. Of more, those of one block are tried
// together, and what is then not found out has all that may bring it for a cause.
func (w *trials) most() int { return min(maxTrials, max(2, maxWork/(1+len(w.r.pair)))) }

const (
	maxTrials = 24
	maxWork   = 50_000 // enclosures compiled in all trials
)

// run tries pieces for the effects at some places: those of enclosures' own blocks first, which
// cost little. What they bring wholly is explained. What is left is from what is shared: where
// that is one piece, nothing is tried. The effects are returned that no set brings wholly.
func (w *trials) run(open []int) []int {
	left := w.trying(open, w.beside(open))
	sets := w.common(left)
	if len(sets) == 1 {
		only := w.marked(sets[0])
		for _, i := range left {
			w.blame(&w.all[i], only)
		}
		return left
	}
	return w.trying(left, sets)
}

// without finds what else some effects need that no piece alone brings wholly: with all pieces but
// one they are others, or are not there.
func (w *trials) without(open []int) {
	could := map[int]bool{}
	for _, i := range open {
		e := &w.all[i]
		own := w.own[e.keys[0].enclosure]
		if e.keys[0].enclosure == house {
			own = w.could(e)
		}
		for _, p := range own {
			could[p] = could[p] || !slices.Contains(e.Cause, p)
		}
		if len(e.Cause) == 0 {
			for _, p := range w.could(e) {
				could[p] = true
			}
		}
	}
	var sets [][]int
	for _, set := range slices.Concat(w.beside(open), w.common(open)) {
		if set = slices.DeleteFunc(slices.Clone(set), func(p int) bool { return !could[p] }); len(set) > 0 {
			sets = append(sets, set)
		}
	}
	if len(sets) > w.most() {
		return
	}
	for _, set := range sets {
		without := w.marked(set)
		var rest []int
		for p := range without {
			if !without[p] {
				rest = append(rest, p)
			}
		}
		brings, ok := w.brings(open, rest)
		if !ok {
			continue
		}
		for _, i := range open {
			e := &w.all[i]
			if !slices.ContainsFunc(e.keys, func(k key) bool { return brings[k] == e.Is }) {
				w.blame(e, without)
			}
		}
	}
}

// brings is what some effects are with a set of pieces made, by what they are about; false where
// that cannot be said.
func (w *trials) brings(open, set []int) (map[key]string, bool) {
	got := w.try(set)
	if got == nil || !understood(got) {
		return nil, false
	}
	out := map[key]string{}
	part := &Report{Was: w.r.Was, Is: got, pair: w.of(open, pairs(w.r.Was, got))}
	for _, e := range slices.Concat(w.again(part)...) {
		for _, k := range e.keys {
			out[k] = e.Is
		}
	}
	return out, true
}

// trying tries sets of pieces, and returns the effects that none of them brings wholly.
func (w *trials) trying(open []int, sets [][]int) (left []int) {
	if len(sets) > w.most() {
		sets = w.blocks(sets)
	}
	whole := map[int]bool{}
	for _, set := range sets[:min(len(sets), w.most())] {
		brings, _ := w.brings(open, set)
		with := w.marked(set)
		for _, i := range open {
			e := &w.all[i]
			for _, k := range e.keys {
				if is, some := brings[k]; some {
					w.blame(e, with)
					whole[i] = whole[i] || is == e.Is
				}
			}
		}
	}
	return slices.DeleteFunc(slices.Clone(open), func(i int) bool { return whole[i] })
}

// blame gives an effect those pieces of a set for causes that may bring it.
func (w *trials) blame(e *Effect, set []bool) {
	for _, p := range w.could(e) {
		if set[p] {
			e.Cause = append(e.Cause, p)
		}
	}
}

// marked is a set of pieces by their places.
func (w *trials) marked(set []int) []bool {
	out := make([]bool, len(w.r.Pieces))
	for _, p := range set {
		out[p] = true
	}
	return out
}

// of are those pairs that effects at some places are about; all of them where one is about the
// collection.
func (w *trials) of(open []int, all []pair) []pair {
	asked := map[string]bool{}
	for _, i := range open {
		for _, k := range w.all[i].keys {
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
	for _, p := range slices.Concat(w.shared, w.around) {
		if needed[p] {
			out = append(out, []int{p})
		}
	}
	return out
}

func (w *trials) needed(open []int) map[int]bool {
	out := map[int]bool{}
	for _, i := range open {
		for _, p := range w.could(&w.all[i]) {
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
		id := w.all[i].keys[0].enclosure
		return id == "" || id == house || len(w.own[id])+len(w.shared)+len(w.sheets(id)) == 0 // any of them may have brought it
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
