package compare

import (
	"cmp"
	"slices"
	"strconv"
	"strings"

	"vivary/plan/change"
	"vivary/schema/wording"
)

// together says once what is the same in several enclosures and has one cause, or the same edit of
// each of them, and puts the
// worst first; effects of one cause stand together.
func (r *Report) together(all []Effect) []Effect {
	order := make(map[string]int, len(r.pair))
	for i, p := range r.pair {
		order[r.name(p)] = i
	}
	at := map[string]int{}
	var out []Effect
	for _, e := range all {
		k := e.sameAs() + "\x01" + r.alike(e.Cause)
		i, known := at[k]
		if !known {
			at[k] = len(out)
			e.Of, e.keys, e.Cause = slices.Clone(e.Of), slices.Clone(e.keys), slices.Clone(e.Cause)
			out = append(out, e)
			continue
		}
		o := &out[i]
		o.Of = append(o.Of, e.Of...)
		o.keys = append(o.keys, e.keys...)
		o.Cause = append(o.Cause, e.Cause...)
		if e.From != 0 && (o.From == 0 || e.From < o.From) {
			o.From = e.From
		}
	}
	for i := range out {
		slices.Sort(out[i].Cause)
		out[i].Cause = slices.Compact(out[i].Cause)
	}
	out = listed(out)
	first := map[string]int{} // the first enclosure that a cause touches
	for i := range out {
		e := &out[i]
		slices.SortFunc(e.Of, func(a, b string) int { return cmp.Compare(order[a], order[b]) })
		e.Of = slices.Compact(e.Of)
		e.Where = r.where(e.Of)
		k := e.Way.String() + causeKey(e.Cause)
		n := len(r.pair)
		if len(e.Of) > 0 {
			n = order[e.Of[0]]
		}
		if was, known := first[k]; !known || n < was {
			first[k] = n
		}
	}
	slices.SortStableFunc(out, func(a, b Effect) int {
		ka, kb := causeKey(a.Cause), causeKey(b.Cause)
		return cmp.Or(cmp.Compare(a.Way, b.Way), cmp.Compare(first[a.Way.String()+ka], first[b.Way.String()+kb]), cmp.Compare(ka, kb), cmp.Compare(b.severity(), a.severity()),
			cmp.Compare(len(b.Of), len(a.Of)), cmp.Compare(a.Topic, b.Topic), cmp.Compare(a.place(order), b.place(order)), cmp.Compare(a.Name, b.Name))
	})
	return out
}

// tells are the facts that what a rule finds tells too, by their keys.
var tells = map[string][]string{
	"temperature-harmful": {"aim warm end", "aim cool end", "aim night"},
	"temperature-unusual": {"aim warm end", "aim cool end", "aim night"},
	"humidity-harmful":    {"aim humidity"},
	"humidity-unusual":    {"aim humidity"},
	"heat-lost":           {"heat air"},
	"heat-short":          {"heat air"},
	"too-warm":            {"heat air"},
	"floor-small":         {"room"},
}

// beneath puts what was and is beneath what is found of it, where both have one cause: told beside
// it, it would be the same thing twice.
func beneath(all []Effect) []Effect {
	type told struct{ enclosure, cause, fact string }
	by := map[told]int{}
	for i := range all {
		if e := &all[i]; e.Found != nil && e.Way <= Worse {
			for _, fact := range tells[e.Found.Rule.ID] {
				by[told{e.keys[0].enclosure, causeKey(e.Cause), fact}] = i
			}
		}
	}
	gone := make([]bool, len(all))
	for i := range all {
		x := &all[i]
		k, found := by[told{x.keys[0].enclosure, causeKey(x.Cause), x.keys[0].fact}]
		if gone[i] = found && x.Way != Better; gone[i] {
			e := &all[k]
			e.Under = append(slices.Clip(e.Under), x.Name+": "+becomes(x.Was, x.Is))
			e.keys = append(slices.Clip(e.keys), x.keys...)
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

// listed says once what becomes the same of several things in the same enclosures: "heat and look".
func listed(all []Effect) []Effect {
	at := map[string]int{}
	names := map[int][]string{}
	var out []Effect
	for _, e := range all {
		k := strings.Join([]string{e.Way.String(), e.Topic.String(), causeKey(e.Cause), e.Was, e.Is, e.Limit, e.From.String(), strings.Join(e.Of, "\x01"), strconv.FormatBool(e.Found != nil)}, "\x02")
		i, known := at[k]
		if !known || e.Topic != Needs {
			at[k] = len(out)
			names[len(out)] = []string{e.Name}
			out = append(out, e)
			continue
		}
		o := &out[i]
		names[i] = append(names[i], e.Name)
		o.Name = wording.And(names[i])
		o.keys = append(slices.Clip(o.keys), e.keys...)
		o.Under = append(slices.Clip(o.Under), e.Under...)
	}
	return out
}

func (e *Effect) severity() int {
	if e.Found == nil {
		return 0
	}
	return int(e.Found.Severity)
}

func (e *Effect) place(order map[string]int) int {
	if len(e.Of) == 0 {
		return len(order)
	}
	return order[e.Of[0]]
}

// sameAs is the same for effects that say the same of different enclosures. What came and what
// went is counted, not told by its animals.
func (e *Effect) sameAs() string {
	parts := []string{e.Way.String(), e.Topic.String(), e.Name, e.Limit}
	if e.Found != nil {
		parts = append(parts, e.Found.Rule.ID)
	}
	was, is := e.Was, e.Is
	under := slices.Clone(e.Under)
	for _, name := range e.Of { // a finding may name its enclosure
		was, is = strings.ReplaceAll(was, name, "\x00"), strings.ReplaceAll(is, name, "\x00")
		for i := range under {
			under[i] = strings.ReplaceAll(under[i], name, "\x00")
		}
	}
	return strings.Join(append(append(parts, was, is), under...), "\x01")
}

// alike is the same for causes that change the same of enclosures in the same way.
func (r *Report) alike(cause []int) string {
	var out strings.Builder
	for _, i := range cause {
		out.WriteString(like(&r.Pieces[i], i) + "\x02")
	}
	return out.String()
}

// like is the same for a value that is written otherwise in several enclosures; any other piece is
// like none.
func like(p *change.Piece, i int) string {
	if p.Type != "enclosure" || p.Attr == "" || p.Attr == "name" {
		return strconv.Itoa(i)
	}
	return strings.Join(append(slices.Clone(p.In), p.Attr, value(p.Was), value(p.Is)), "\x03")
}

func causeKey(all []int) string {
	var out strings.Builder
	for _, i := range all {
		out.WriteString(strconv.Itoa(i) + ",")
	}
	return out.String()
}

// where names enclosures as their keeper knows them.
func (r *Report) where(names []string) string {
	if len(names) == 0 {
		return ""
	}
	for _, named := range r.named {
		if s := named(names); s != "" {
			return s
		}
	}
	return strings.Join(names, ", ")
}
