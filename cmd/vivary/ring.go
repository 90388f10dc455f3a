package main

import (
	"slices"

	"vivary/compile"
	"vivary/compile/roster"
	"vivary/plan"
)

// ring returns whom to ring, with the numbers, for a round on a day: where somebody
// stands in, or the round is worked from a list that no calendar shows. Feeds are read
// by others too, so that no number stands in any of them.
func ring(r *compile.Result, round *plan.Round, picks []roster.Pick, day int) []string {
	if !round.ListedElsewhere() && !slices.ContainsFunc(picks, func(p roster.Pick) bool {
		who, there := r.Roster.Doer(p.Entry, day)
		return there && p.Days.Has(day) && who != p.Entry.Keeper
	}) {
		return nil
	}
	doing := doers(r, picks, day)
	var out []string
	for _, k := range r.Plan.Keepers {
		if k.Phone.Set() && !slices.Contains(doing, k.Name.V) {
			out = append(out, k.Shown()+" "+k.Phone.V)
		}
	}
	for _, c := range r.Plan.Contacts {
		if c.Phone.Set() {
			out = append(out, c.Shown()+" "+c.Phone.V)
		}
	}
	return out
}
