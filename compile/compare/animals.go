package compare

import (
	"math"
	"slices"
	"strings"

	"vivary/compile"
	"vivary/compile/check"
	"vivary/compile/horizon"
	"vivary/compile/identity"
	"vivary/compile/prove"
	"vivary/compile/roster"
	"vivary/plan"
	"vivary/plan/finding"
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
	e := Effect{Way: Otherwise, Topic: f.topic, Of: []string{r.name(p)}, Name: f.name, Limit: f.limit, keys: []key{{p.id, f.key}}}
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

// said is one finding about one enclosure; "" for none.
type said struct {
	*finding.Finding
	enclosure string // its first name
	name      string
	by        *plan.Accept // that silences it, or nil
}

// findings are those of a compilation, one for each enclosure that each is about, by what they
// are of.
func findings(r *compile.Result) map[key][]said {
	id := make(map[string]string, len(r.Lives))
	for _, l := range r.Lives {
		id[l.Plan.Name.V] = identity.Enclosure(l.Plan)
	}
	out := map[key][]said{}
	add := func(f *finding.Finding, by *plan.Accept) {
		if f.Severity == finding.Advice {
			return // worth knowing, and no change for the animals
		}
		s := said{f, id[f.In.Name], f.In.Name, by}
		k := key{s.enclosure, "rule " + f.Rule.ID}
		out[k] = append(out[k], s)
	}
	all := r.Single()
	for i := range all {
		add(&all[i], nil)
	}
	for i := range r.Accepted {
		add(&r.Accepted[i].Finding, r.Accepted[i].By)
	}
	return out
}

// found compares the findings. One that says the same before and after is no change.
func (r *Report) found() []Effect {
	was, is := findings(r.Was), findings(r.Is)
	keys := make([]key, 0, len(was)+len(is))
	for k := range was {
		keys = append(keys, k)
	}
	for k := range is {
		if _, both := was[k]; !both {
			keys = append(keys, k)
		}
	}
	slices.SortFunc(keys, func(a, b key) int {
		if c := strings.Compare(a.enclosure, b.enclosure); c != 0 {
			return c
		}
		return strings.Compare(a.fact, b.fact)
	})
	var out []Effect
	for _, k := range keys {
		out = append(out, r.cameAndWent(k, was[k], is[k])...)
	}
	return out
}

// cameAndWent are the effects of what is found by one rule in one enclosure. What is accepted, with
// a reason and until a day, is told as such, and is no better for it.
func (r *Report) cameAndWent(k key, was, is []said) (out []Effect) {
	took := make([]bool, len(was))
	find := func(fits func(o *said) bool) *said {
		for i := range was {
			if !took[i] && fits(&was[i]) {
				took[i] = true
				return &was[i]
			}
		}
		return nil
	}
	var left []said
	for _, s := range is {
		if find(func(o *said) bool {
			return o.Severity == s.Severity && (o.by == nil) == (s.by == nil) &&
				(named(o.Text, was) == named(s.Text, is) || r.Was.Plan.Units != r.Is.Plan.Units) // who counts otherwise says the same
		}) == nil {
			left = append(left, s)
		}
	}
	for _, s := range left {
		e := Effect{Topic: topicOf(s.Rule), Of: of(s.name), Name: s.Rule.ID, Is: s.words(), Limit: s.Limit, Found: s.Finding, keys: []key{k}}
		old := find(func(*said) bool { return true })
		if old != nil {
			e.Was = old.words()
		}
		switch {
		case s.by != nil && old == nil:
			e.Way = Worse
		case s.by != nil || old != nil && old.by != nil && !s.harms():
			e.Way = Otherwise
		case s.harms() && (old == nil || !old.harms()):
			e.Way = Harm
		case old == nil || s.Severity > old.Severity:
			e.Way = Worse
		case s.Severity < old.Severity:
			e.Way = Better
		default:
			e.Way = Otherwise
		}
		out = append(out, e)
	}
	for i, s := range was {
		if !took[i] {
			out = append(out, Effect{Way: Better, Topic: topicOf(s.Rule), Of: of(s.name), Name: s.Rule.ID, Was: s.words(), Found: s.Finding, keys: []key{k}})
		}
	}
	return out
}

// harms reports whether a finding is harm: it refuses, or is urgent, and nobody accepts it.
func (s *said) harms() bool { return s.Severity >= finding.Urgent && s.by == nil }

// words are what a finding says, without the name of its enclosure, which stands beside it.
func (s *said) words() string {
	text := strings.TrimPrefix(s.Text, s.name+": ")
	if s.by != nil {
		text += "; accepted until " + s.by.Until.V.Words() + ": " + wording.Line(s.by.Because.V)
	}
	return text
}

// named is what a finding says, whatever its enclosure is called.
func named(text string, all []said) string {
	if len(all) == 0 || all[0].name == "" {
		return text
	}
	return strings.ReplaceAll(text, all[0].name, "\x00")
}

func of(name string) []string {
	if name == "" {
		return nil
	}
	return []string{name}
}

// topicOf is what a rule is about.
func topicOf(rule *finding.Rule) Topic {
	if prove.NeedOf(rule) != nil {
		return Needs
	}
	switch check.AboutOf(rule.ID) {
	case check.AboutHeat:
		return Heat
	case check.AboutDamp:
		return Damp
	case check.AboutFood:
		return Food
	case check.AboutCompany:
		return Company
	}
	return Found
}

// folded puts what a finding says of a need, or of a thing that is found too, beneath the one
// effect that tells of both: the way is the worse of the two.
func folded(all []Effect) []Effect {
	type at struct{ enclosure, need string }
	needs := map[at][]int{}
	topics := map[at][]int{}
	for i := range all {
		e := &all[i]
		if e.Found != nil || len(e.keys) == 0 {
			continue
		}
		k := e.keys[0]
		if name, is := strings.CutPrefix(k.fact, "need "); is {
			name, _, _ = strings.Cut(name, "/")
			needs[at{k.enclosure, name}] = append(needs[at{k.enclosure, name}], i)
		}
		topics[at{k.enclosure, e.Topic.String()}] = append(topics[at{k.enclosure, e.Topic.String()}], i)
	}
	gone := make([]bool, len(all))
	for i := range all {
		e := &all[i]
		if e.Found == nil {
			continue
		}
		k := e.keys[0]
		if need := prove.NeedOf(e.Found.Rule); need != nil {
			into := needs[at{k.enclosure, need.Name}]
			if len(into) == 0 || e.Way == Otherwise {
				gone[i] = e.Way == Otherwise && len(into) > 0
				continue
			}
			f := &all[worst(all, into)]
			f.Way = min(f.Way, e.Way)
			if e.Way == Better && e.Was != "" {
				f.Way = Better
			}
			if e.Is != "" {
				f.Found, f.Under = e.Found, append(f.Under, e.Is)
			}
			f.keys = append(f.keys, k)
			gone[i] = true
			continue
		}
		if e.Topic == Found || e.Way == Otherwise || e.Way == Better {
			continue
		}
		for _, j := range topics[at{k.enclosure, e.Topic.String()}] { // what is written otherwise is told beneath what is found of it
			if x := &all[j]; x.Found == nil && !gone[j] && x.Way != Better && strings.HasPrefix(x.keys[0].fact, "aim ") {
				e.Under = append(e.Under, x.Name+": "+becomes(x.Was, x.Is))
				e.keys = append(e.keys, x.keys...)
				gone[j] = true
			}
		}
	}
	out := all[:0]
	for i := range all {
		if !gone[i] {
			out = append(out, all[i])
		}
	}
	return out
}

// worst is which of some effects is the worst, the first of them.
func worst(all []Effect, of []int) int {
	out := of[0]
	for _, i := range of[1:] {
		if all[i].Way < all[out].Way {
			out = i
		}
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
