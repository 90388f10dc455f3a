package roster

import (
	"slices"
	"strconv"

	"vivary/compile/identity"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/plan/source"
)

// clashes finds blocks of one identity: the UIDs of their entries would be the same. Of a name that an
// enclosure, a round, a calendar, a care or animals had formerly and another has now
// identity-clash speaks, and it is not said twice; here are keepers, racks, and what came to
// one identity in another way.
func clashes(c *plan.Collection) []finding.Finding {
	var found finding.List
	what, stops := "enclosure", slices.Clip(c.Enclosures)
	for _, k := range c.Racks {
		if c.Enclosure(k.Name.V) == nil { // else it has been said
			what, stops = "enclosure or rack", append(stops, k.Stop)
		}
	}
	known := func(e *plan.Enclosure) bool { return c.Enclosure(e.Name.V) == e }
	apart(&found, what, stops, known, func(e *plan.Enclosure) (n, f plan.Written[string]) { return e.Name, e.Formerly })
	apart(&found, "keeper", c.Keepers, func(*plan.Keeper) bool { return false }, func(e *plan.Keeper) (n, f plan.Written[string]) { return e.Name, e.Formerly })
	return found.All
}

// clash finds entries of the enclosure that would be the same to a phone.
func (b *builder) clash() {
	byID := make(map[identity.Identity]*Entry, len(b.entries))
	for i := range b.entries {
		e := &b.entries[i]
		if o := byID[e.ID]; o != nil && !renamed(e, o) {
			b.found.Add(clash(e.Plan().Name.V+" "+e.Name, o.Plan().Name.V+" "+o.Name, e.Origin, o.Origin))
		}
		byID[e.ID] = e
	}
}

// renamed reports whether one of two entries has a former name of the plan, which is told of
// elsewhere where the plan writes both.
func renamed(a, b *Entry) bool {
	care := func(e *Entry) bool { return e.Timing != nil && e.Timing.Formerly.Set() }
	animals := func(e *Entry) bool { return e.Group != nil && e.Group.Animals.Formerly.Set() }
	return animals(a) || animals(b) || !a.FromSheet && !b.FromSheet && (care(a) || care(b))
}

// apart finds blocks of a kind that had the same name first. Of two that are told of
// elsewhere nothing is said.
func apart[T any](found *finding.List, what string, all []T, told func(T) bool, names func(T) (name, formerly plan.Written[string])) {
	var had map[string]bool // names are there once, so that a name which nobody had before is one thing's
	for _, x := range all {
		if _, formerly := names(x); formerly.Set() {
			if had == nil {
				had = map[string]bool{}
			}
			had[formerly.V] = true
		}
	}
	type one struct {
		of   T
		name plan.Written[string]
		at   source.Place
	}
	first := map[string]one{}
	for _, x := range all {
		name, formerly := names(x)
		key, place := formerly.Or(name.V), name.At
		if formerly.Set() {
			place = formerly.At
		}
		if !had[key] {
			continue
		}
		o, twice := first[key]
		if !twice {
			first[key] = one{x, name, place}
		} else if !told(x) || !told(o.of) {
			found.Add(clash(what+" "+strconv.Quote(name.V), what+" "+strconv.Quote(o.name.V), place, o.at))
		}
	}
}

func clash(one, other string, at, also source.Place) finding.Finding {
	return finding.Finding{Rule: ruleOneIdentity, At: at, Text: one + " and " + other + " would be one and the same in every calendar, by the names they had first",
		Write: "another formerly, or none: each thing had a name of its own",
		Also:  []finding.Related{{At: also, Text: "the other"}}}
}
