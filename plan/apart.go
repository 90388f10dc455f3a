package plan

import (
	"reflect"
	"slices"

	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/schema/wording"
)

// saidTwice finds what two of the number blocks about an enclosure say both. said are the
// places at which that has been found.
func saidTwice(e *Enclosure, about []*Apart, said map[source.Place]bool, out *finding.List) {
	type first struct {
		by *Apart
		at source.Place
	}
	by := map[string]first{}
	for _, b := range about {
		eachSaid(reflect.ValueOf(b).Elem(), "", func(what, name string, at source.Place) {
			a, again := by[what]
			if !again {
				by[what] = first{b, at}
			} else if a.by != b && !said[at] {
				said[at] = true
				out.Add(contradiction(e, a.by, b, name, a.at, at))
			}
		})
	}
}

// contradiction is what is found of two number blocks that say the same of one enclosure.
func contradiction(e *Enclosure, a, b *Apart, name string, first, second source.Place) finding.Finding {
	same := a.Numbers.and(b.Numbers).and(e.Numbers.V)
	f := finding.Finding{Rule: ruleTwice, At: second, Text: name + " of " + e.Name.V + " " + same.String() + " is said twice",
		Write: "it in one of the two lines only", Also: []finding.Related{{At: first, Text: "the first"}}}
	wide := a
	if b.Numbers.Count() > a.Numbers.Count() {
		wide = b
	}
	if left := wide.Numbers.less(same); len(left) > 0 && a.Numbers.Count() != b.Numbers.Count() && things(reflect.ValueOf(wide).Elem()) == 1 {
		f.Edits = inQuotes(wide.Name.At, left.String()) // the other is the exception
	}
	return f
}

// eachSaid calls use for all that a block and those in it say: for what it is, which is the
// same for attributes that say one thing in different ways, its name and its place.
func eachSaid(v reflect.Value, path string, use func(what, name string, at source.Place)) {
	b := bindings[v.Type()]
	for _, x := range b.order {
		if f := v.FieldByIndex(x.field); tried(f) {
			what := x.attr.Name
			for _, ways := range instead {
				if slices.Contains(ways, what) {
					what = ways[0]
				}
			}
			use(path+what, x.attr.Name, placeOf(f))
		}
	}
	for name, ib := range b.inner {
		for _, x := range each(v.FieldByIndex(ib.field)) {
			eachSaid(x, path+name+" "+headOf(x.Addr()).Name.V+"/", use)
		}
	}
}

// things counts what a block and those in it say.
func things(v reflect.Value) (n int) {
	eachSaid(v, "", func(string, string, source.Place) { n++ })
	return n
}

// placeOf is where an attribute was written; of a list, its first.
func placeOf(v reflect.Value) source.Place {
	if v.Kind() == reflect.Slice {
		if v.Len() == 0 {
			return source.Place{}
		}
		v = v.Index(0)
	}
	return v.Addr().Interface().(interface{ place() source.Place }).place()
}

// firstIn is where the first of what a block says stands.
func firstIn(v reflect.Value) (first source.Place) {
	eachSaid(v, "", func(_, _ string, at source.Place) {
		if !first.Written() || at.Start < first.Start {
			first = at
		}
	})
	return first
}

// unnamed gives what a number block says of the animals, without a block of them, to the
// animals of the enclosure; where there is not just one block of them it is not known of
// which.
func (e *Enclosure) unnamed() {
	i := slices.IndexFunc(e.Animals, func(a *Animals) bool { return !a.At.Written() })
	if i < 0 {
		return
	}
	flat := e.Animals[i]
	e.Animals = slices.Delete(slices.Clone(e.Animals), i, i+1)
	if len(e.Animals) == 1 {
		e.found = e.twiceOf(flat, e.Animals[0])
		e.Animals[0] = merged(reflect.ValueOf(flat), reflect.ValueOf(e.Animals[0])).Interface().(*Animals)
		return
	}
	if len(e.Animals) > 1 { // that there is none is found besides
		var found finding.List
		found.Add(finding.Finding{Rule: ruleMissing, At: firstIn(reflect.ValueOf(flat).Elem()), Text: "there are several animals blocks, " + wording.And(e.groups()) + ": it is not said which of them is meant",
			Write: "this in a block animals " + quote(e.Animals[0].Name.V) + " within the number block"})
		e.found = found.All
	}
}

// twiceOf finds what number blocks say of animals both within a block of them and without.
func (e *Enclosure) twiceOf(flat, block *Animals) []finding.Finding {
	by := map[string]source.Place{}
	eachSaid(reflect.ValueOf(block).Elem(), "", func(what, _ string, at source.Place) {
		if slices.ContainsFunc(e.apart, func(a *Apart) bool { return a.says(at) }) {
			by[what] = at
		}
	})
	var found finding.List
	eachSaid(reflect.ValueOf(flat).Elem(), "", func(what, name string, at source.Place) {
		if first, again := by[what]; again {
			found.Add(finding.Finding{Rule: ruleTwice, At: at, Text: name + " is said twice of the same animals", Write: "it in one of the two lines only",
				Also: []finding.Related{{At: first, Text: "the first"}}})
		}
	})
	return found.All
}
