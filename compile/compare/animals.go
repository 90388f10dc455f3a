package compare

import (
	"math"
	"slices"
	"strings"

	"vivary/compile"
	"vivary/compile/horizon"
	"vivary/compile/roster"
	"vivary/schema/civil"
	"vivary/schema/wording"
)

// animals are the effects of each enclosure by itself, in no order yet.
func (r *Report) animals() []Effect {
	each := make([][]Effect, len(r.pair))
	roster.Each(len(r.pair), func(i int) {
		switch p := r.pair[i]; {
		case p.was < 0:
			each[i] = []Effect{r.arrived(p)}
		case p.is < 0:
			each[i] = []Effect{r.left(p)}
		case !sameBox(r.Was, r.Is, p):
			each[i] = r.differ(p)
		}
	})
	return folded(append(slices.Concat(each...), r.found()...))
}

// eachAnimal are the effects for the animals, for whoever looks for what causes them.
func (r *Report) eachAnimal() [][]Effect { return [][]Effect{r.animals()} }

// sameBox reports whether an enclosure was taken as it was from one compilation to the other.
func sameBox(was, is *compile.Result, p pair) bool {
	a, b := was.Proofs[p.was], is.Proofs[p.is]
	return was.Lives[p.was] == is.Lives[p.is] && was.Plan.SharesWith(is.Plan) && len(a) == len(b) && (len(a) == 0 || &a[0] == &b[0])
}

// differ compares the facts of an enclosure.
func (r *Report) differ(p pair) []Effect {
	var out []Effect
	peopled := false // others live there, or in another stage
	// What physics says follows from the plan and from what was measured.
	x, y := r.Was.Lives[p.was], r.Is.Lives[p.is]
	still := x.Plan.SameAs(y.Plan) && slices.Equal(x.Measured, y.Measured)
	a, b := factsOf(r.Was, p.was, r.Is.Plan.Units, !still), factsOf(r.Is, p.is, r.Is.Plan.Units, !still)
	for len(a) > 0 || len(b) > 0 {
		order := 0
		switch {
		case len(a) == 0:
			order = 1
		case len(b) == 0:
			order = -1
		default:
			order = strings.Compare(a[0].key, b[0].key)
		}
		var x, y *fact
		if order <= 0 {
			x, a = &a[0], a[1:]
		}
		if order >= 0 {
			y, b = &b[0], b[1:]
		}
		if x == nil || y == nil || !x.same(y) {
			e := r.effect(p, x, y)
			e.alone = x == nil || y == nil
			peopled = peopled || strings.HasPrefix(e.keys[0].fact, "animals ")
			out = append(out, e)
		}
	}
	if peopled { // what they take comes and goes with them
		out = slices.DeleteFunc(out, func(e Effect) bool {
			return e.alone && e.Way == Otherwise && (e.Topic == Needs || e.Topic == Food || e.keys[0].fact == "room" || e.keys[0].fact == "water")
		})
	}
	return out
}

// effect is what becomes of a fact; one of the two may be nil.
func (r *Report) effect(p pair, x, y *fact) Effect {
	f := y
	if f == nil {
		f = x
	}
	e := Effect{Way: Otherwise, Topic: f.topic, Of: []string{r.name(p)}, Name: f.name, Limit: f.limit, group: f.group, keys: []key{{p.id, f.key}}}
	was, is := unranked, unranked
	var before, after horizon.Days
	if x != nil {
		e.Was, was, before = x.whole(), x.rank, x.days
	}
	if y != nil {
		e.Is, is, after = y.whole(), y.rank, y.days
	}
	if x != nil && y != nil && x.text == y.text { // what is usual stays: only the exception is told
		e.Was, e.Is = orAs(x), orAs(y)
	}
	switch {
	case x == nil || y == nil || x.limit == y.limit:
	case e.Was == e.Is:
		e.Was, e.Is, e.Limit = "limit "+orNone(x.limit), "limit "+orNone(y.limit), ""
	case e.Limit == "":
		e.Limit = "none, was " + x.limit
	default:
		e.Limit += ", was " + orNone(x.limit)
	}
	switch {
	case is > was:
		e.Way = Worse
	case is < was && f.longest > 0 && x != nil && y != nil && !x.harm && y.days.Count() < x.days.Count():
		// It comes less often: what is left of it only lies nearer together.
	case is < was:
		e.Way = Better
	}
	e.From, e.was, e.is = felt(r.Is.Horizon, before, after), before, after
	return e
}

// same reports whether two facts of one key are no change. An absence takes a few meals out of a
// year, and with them as much of what is eaten in a week, as little as it is noticed; and that care
// comes now and then sooner than it must is no loss.
func (f *fact) same(o *fact) bool {
	switch {
	case f.limit != o.limit:
		return false
	case f.means != "" && o.means != "":
		return f.means == o.means
	case f.whole() == o.whole():
		return true
	case f.much > 0 && o.much > 0:
		return f.of == o.of && math.Abs(f.much-o.much) < f.much/8
	}
	return f.longest > 0 && f.rank == o.rank
}

// whole is all that a fact says.
func (f *fact) whole() string { return strings.TrimSuffix(f.text+", "+f.once, ", ") }

// orAs is what is so beside the usual; the usual where nothing is.
func orAs(f *fact) string {
	switch {
	case f.once != "":
		return f.once
	case f.longest > 0:
		return "at most " + wording.Days(f.longest) + " apart"
	}
	return f.text
}

func orNone(s string) string {
	if s == "" {
		return "none"
	}
	return s
}

// felt is the first day from today on that is in one of two sets alone; 0 where that is today, or
// no day.
func felt(h horizon.Horizon, a, b horizon.Days) civil.Date {
	for i := h.Today; i < h.Days; i++ {
		if has(a, i) != has(b, i) {
			return h.Date(i)
		}
	}
	return 0
}

func has(s horizon.Days, i int) bool { return i>>6 < len(s) && s.Has(i) }

// arrived is an enclosure that was not there.
func (r *Report) arrived(p pair) Effect {
	l := r.Is.Lives[p.is]
	return Effect{Way: Otherwise, Topic: Company, Of: []string{l.Plan.Name.V}, Name: "new", Is: living(r.Is, p.is), keys: []key{{p.id, ""}}}
}

// left is one that is not there any more. What that means for its animals the rule about missing
// animals says.
func (r *Report) left(p pair) Effect {
	l := r.Was.Lives[p.was]
	return Effect{Way: Otherwise, Topic: Company, Of: []string{l.Plan.Name.V}, Name: "taken out", Was: living(r.Was, p.was), keys: []key{{p.id, ""}}}
}

// living says who lives in an enclosure.
func living(r *compile.Result, i int) string {
	l := r.Lives[i]
	n := 0
	for _, g := range l.Groups {
		n += g.Count(r.Today)
	}
	out := wording.Animals(n)
	if n == 0 {
		out = "nobody lives there"
	}
	if s := l.Plan.Sheet; s != nil {
		out += ", " + s.Shown()
	}
	return out
}

// becomes is what was and is in one line.
func becomes(was, is string) string {
	switch {
	case was == "":
		return is
	case is == "":
		return was + " → nothing"
	}
	return was + " → " + is
}
