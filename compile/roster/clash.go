package roster

import (
	"slices"
	"strconv"

	"vivary/compile/identity"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/plan/source"
)

// clashes finds entries of one identity: their UIDs would be the same. A name that
// one enclosure had formerly and another has now is the usual way to get there. It is
// said once for two enclosures, rounds, keepers or calendars.
func (r *Roster) clashes() []finding.Finding {
	var found finding.List
	what, stops := "enclosure", slices.Clip(r.Plan.Enclosures)
	for _, k := range r.Plan.Racks {
		if r.Plan.Enclosure(k.Name.V) == nil { // else it has been said
			what, stops = "enclosure or rack", append(stops, k.Stop)
		}
	}
	apart(&found, what, stops, func(e *plan.Enclosure) (n, f plan.Written[string]) { return e.Name, e.Formerly })
	apart(&found, "round", r.Plan.Rounds, func(e *plan.Round) (n, f plan.Written[string]) { return e.Name, e.Formerly })
	apart(&found, "keeper", r.Plan.Keepers, func(e *plan.Keeper) (n, f plan.Written[string]) { return e.Name, e.Formerly })
	apart(&found, "calendar", r.Plan.Calendars, func(e *plan.Calendar) (n, f plan.Written[string]) { return e.Name, e.Formerly })
	for i := range r.Of {
		byID := map[identity.Identity]*Entry{}
		for k := range r.Of[i] {
			e := &r.Of[i][k]
			if o := byID[e.ID]; o != nil {
				found.Add(clash(e.Plan().Name.V+" "+e.Name, o.Plan().Name.V+" "+o.Name, e.Origin, o.Origin))
			}
			byID[e.ID] = e
		}
	}
	return found.All
}

// apart finds blocks of a kind that had the same name first.
func apart[T any](found *finding.List, what string, all []T, names func(T) (name, formerly plan.Written[string])) {
	first := map[string]plan.Written[string]{}
	at := map[string]source.Place{}
	for _, x := range all {
		name, formerly := names(x)
		key, place := formerly.Or(name.V), name.At
		if formerly.Set() {
			place = formerly.At
		}
		if o, twice := first[key]; twice {
			found.Add(clash(what+" "+strconv.Quote(name.V), what+" "+strconv.Quote(o.V), place, at[key]))
			continue
		}
		first[key], at[key] = name, place
	}
}

func clash(one, other string, at, also source.Place) finding.Finding {
	return finding.Finding{Rule: ruleOneIdentity, At: at, Text: one + " and " + other + " would be one and the same in every calendar, by the names they had first",
		Write: "another formerly, or none: each thing had a name of its own",
		Also:  []finding.Related{{At: also, Text: "the other"}}}
}
