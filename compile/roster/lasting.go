package roster

import (
	"vivary/compile/life"
	"vivary/compile/recur"
)

// Lasting reports whether nothing that may come changes the days of an entry, or how it
// is done, or by whom: neither a state that the animals of its enclosure could come into,
// nor a season, nor a stage, nor an absence of its keeper, nor what a log brings, nor who
// else stands in a rack. Only
// such care may be told of for years to people who never hear of it again. It is decided
// by the tables of states and by what the plan says, never by what happens to stand in
// the window, so that it is the same with every build.
func (s *Shared) Lasting(e *Entry) bool {
	if e.Once != nil || e.Rack != nil || e.Store != nil || e.Meal != nil || e.Staged || e.Moved || len(e.Rules) != 1 || len(e.Round.On) > 0 || e.Timing.AfterLast.Set() {
		return false
	}
	if _, until := e.Rules[0].Bounds(); until < recur.MaxDate || s.goesAway(e.Keeper) {
		return false
	}
	return !life.Seasonal(e.Plan(), e.Kind) && e.Life.Undisturbed(e.Kind)
}

// goesAway reports whether the plan or the log tells of any absence of a keeper, long ago
// or far ahead. What is nobody's own is done by whoever is there.
func (s *Shared) goesAway(keeper string) bool {
	for _, a := range s.Plan.Aways {
		if a.Name.V == keeper {
			return true
		}
	}
	for i := range s.Plan.Sudden {
		if s.Plan.Sudden[i].Keeper == keeper {
			return true
		}
	}
	return false
}
