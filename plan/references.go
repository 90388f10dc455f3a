package plan

import (
	"maps"
	"slices"
	"strings"

	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/schema"
)

// references looks whether all that is named by rounds, absences, calendars, care
// and meals is there. Enclosures of which that cannot be said are doubtful.
func (r *resolver) references(doubtful map[string]bool) {
	c := r.c
	keeper := func(w Written[string]) {
		if w.Set() && c.keepers[w.V] == nil {
			r.unknownName(w, "keeper", keys(c.keepers))
		}
	}
	each := func(list []Written[string], what string, has func(string) bool, known func() []string) {
		for _, w := range list {
			if !has(w.V) {
				r.unknownName(w, what, known())
			}
		}
	}
	hasRound := func(s string) bool { return c.rounds[s] != nil }
	rounds := func() []string { return keys(c.rounds) }
	for _, x := range c.Rounds {
		keeper(x.Keeper)
	}
	for _, a := range c.Aways {
		keeper(a.Name)
		keeper(a.Cover)
		if a.From.Set() && a.To.Set() && a.To.V < a.From.V {
			r.found.Add(finding.Finding{Rule: ruleDate, At: a.To.At, Text: "the return (" + a.To.V.String() + ") is before the first day away (" + a.From.V.String() + ")",
				Write: "a day after " + a.From.V.String()})
		}
	}
	for _, k := range c.Calendars {
		each(k.Rounds, "round", hasRound, rounds)
		each(k.Keepers, "keeper", func(s string) bool { return c.keepers[s] != nil }, func() []string { return keys(c.keepers) })
		each(k.Rooms, "room", func(s string) bool { return c.rooms[s] != nil }, func() []string { return keys(c.rooms) })
		each(k.Enclosures, "enclosure", func(s string) bool { return c.enclosures[s] != nil || r.several[s] != nil }, func() []string { return keys(c.enclosures) })
		each(k.Kinds, "kind of care", func(s string) bool { return schema.FindKind(s) != nil }, kindNames)
	}
	timing := func(t *Timing) {
		keeper(t.Keeper)
		each(t.Round, "round", hasRound, rounds)
		if t.From.Set() && t.Until.Set() && t.Until.V < t.From.V {
			r.found.Add(finding.Finding{Rule: ruleDate, At: t.Until.At, Text: "the last day (" + t.Until.V.String() + ") is before the first (" + t.From.V.String() + ")",
				Write: "until = a day after " + t.From.V.String()})
		}
	}
	menu := func(f *Feeding) {
		for _, w := range f.asTyped().Menu() {
			r.prey(w)
		}
	}
	round := func(w Written[string]) {
		if w.Set() && !hasRound(w.V) {
			r.unknownName(w, "round", rounds())
		}
	}
	for _, x := range c.Rooms {
		round(x.Round)
	}
	for _, x := range c.Racks {
		round(x.Round)
	}
	cares := func(care []*Care, feeding []*Feeding) {
		for _, x := range care {
			r.kind(x, care)
			timing(&x.Timing)
		}
		for _, x := range feeding {
			timing(&x.Timing)
			menu(x)
		}
	}
	for _, e := range c.Enclosures {
		r.doubt(e, doubtful, func() {
			round(e.Round)
			cares(e.Care, e.Feeding)
		})
	}
	for _, s := range r.blocks.species {
		cares(s.Care, s.Feeding)
	}
	for _, t := range r.blocks.types {
		for _, x := range t.Feeding {
			menu(x)
		}
	}
}

// within returns a word of a text at its own place, or at that of the text where it
// is not plain which part is meant.
func (r *resolver) within(at source.Place, word string) Written[string] {
	typed := r.c.Files.Of(at)
	if strings.Count(typed, word) == 1 {
		at.Start += int32(strings.Index(typed, word))
		at.End = at.Start + int32(len(word))
	}
	return wrote(word, at)
}

// kind finds a care of which it is not known what it is. others are those beside it,
// whose names are taken.
func (r *resolver) kind(c *Care, others []*Care) {
	if c.What() != nil || c.Off.V {
		return
	}
	name := c.Name
	if c.Kind.Set() {
		name = c.Kind
	}
	r.notListed(name, "a kind of care", "kind = one of: ", kindNames(), func(better string) bool {
		return c.Kind.Set() || !slices.ContainsFunc(others, func(o *Care) bool { return o.Name.V == better })
	})
}

func kindNames() []string {
	var n []string
	for _, k := range schema.CareKinds {
		n = append(n, k.Name)
	}
	return n
}

func (r *resolver) unknownName(w Written[string], what string, known []string) {
	if r.unsaid(w.V) {
		return
	}
	f := finding.Finding{Rule: ruleUnknownName, At: w.At, Text: "there is no " + what + " " + quote(w.V)}
	if s := finding.Suggest(w.V, known); s != "" {
		f.Text += ": did you mean " + quote(s) + "?"
		f.Write = quote(s)
		f.Edits = finding.Instead(w.At, w.V, s)
	} else if len(known) > 0 && len(known) <= 12 {
		slices.Sort(known)
		f.Write = "one of: " + strings.Join(known, ", ")
	} else {
		f.Write = "define it, or use a name that is defined"
	}
	r.found.Add(f)
}

func keys[T any](m map[string]T) []string {
	return slices.Sorted(maps.Keys(m))
}
