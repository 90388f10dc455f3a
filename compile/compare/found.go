package compare

import (
	"slices"
	"strings"

	"vivary/compile"
	"vivary/compile/check"
	"vivary/compile/identity"
	"vivary/compile/prove"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema/wording"
)

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

// folded puts what a finding says of a need into the one effect that tells of both: the way is the
// worse of the two.
func folded(all []Effect) []Effect {
	type at struct{ enclosure, need string }
	needs := map[at][]int{}
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
	}
	gone := make([]bool, len(all))
	for i := range all {
		e := &all[i]
		if e.Found == nil {
			continue
		}
		k := e.keys[0]
		need := prove.NeedOf(e.Found.Rule)
		if need == nil {
			continue
		}
		into := needs[at{k.enclosure, need.Name}]
		if len(into) == 0 || e.Way == Otherwise {
			gone[i] = e.Way == Otherwise && len(into) > 0
			continue
		}
		f := &all[worst(all, ofGroup(all, into, e))]
		f.Way = min(f.Way, e.Way)
		if e.Way == Better && e.Was != "" {
			f.Way = Better
		}
		if e.Is != "" {
			f.Found, f.Under = e.Found, append(f.Under, e.Is)
		}
		f.keys = append(f.keys, k)
		gone[i] = true
	}
	out := all[:0]
	for i := range all {
		if !gone[i] {
			out = append(out, all[i])
		}
	}
	return out
}

// ofGroup are those of some effects that are about the animals of which a finding speaks; all of
// them where it names none.
func ofGroup(all []Effect, of []int, found *Effect) (out []int) {
	for _, i := range of {
		if g := all[i].group; g != "" && strings.Contains(found.Found.Text, g) {
			out = append(out, i)
		}
	}
	if len(out) == 0 {
		return of
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
