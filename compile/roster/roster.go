// Package schedule turns the care of a collection into series: what is done, on
// which days, at what time, by whom, and why. It holds back what the animals'
// state forbids; whether enough is left is for package prove to say.
package roster

import (
	"iter"

	"vivary/compile/horizon"
	"vivary/compile/life"
	"vivary/compile/recur"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/schema"
	"vivary/schema/civil"
)

// Entry is one thing done again and again at one time of day, for one enclosure
// or for one group in it.
type Entry struct {
	Life   *life.Enclosure
	Group  *life.Group // nil for care of the whole enclosure
	Name   string      // the care's name, or the kind and the group's name of a meal
	Kind   *schema.CareKind
	Round  *plan.Round
	Keeper string // who does it where nobody is away; "" where nobody is named

	// Rules give the days as planned. Where days were moved, or depend on those of
	// another series, Moved is set and only Days tells.
	Rules []recur.Rule
	Moved bool
	// Days are the days on the horizon on which it is done; Held those on which a
	// hold takes it out; Left those on which it is left out, because nobody is there to
	// do it; Passed those of Left on which it is not that: the log says that it was
	// skipped today, or another meal stands in its place or was given so near to it
	// that it comes too soon. Killed are those of Days on which prey is killed first,
	// because nobody comes the next day.
	Days, Held, Left, Passed, Killed horizon.Days

	// Owed says that the last occasion before today was left undone. It is caught up
	// on day CaughtUp; Last is the last day on which it was done.
	Owed     bool
	CaughtUp int
	Last     civil.Date

	Task    string // what to do, as a line of a round begins
	Menu    []Portion
	Minutes int
	High    bool // before everything else in its round

	Origin source.Place // where it was written: in the plan, or in a species sheet
	Cited  plan.Cited
	// FromSheet says that it is the species sheet's care, with none of the plan's own
	// in its place.
	FromSheet bool
	Timing    *plan.Timing  // nil of a task that the log brought, and of nothing else
	Meal      *plan.Feeding // of a meal, and of the leftovers and the gut-load it brings
	After     int           // of what goes with a meal: how many days after it, -1 for the day before
	Once      *life.Task    // of a task that the log brought

	// past says of places before the horizon what an absence made of a meal there:
	// given on that day, or left out.
	past map[int]bool
}

// Portion is one item of a rotating menu.
type Portion struct {
	Prey  plan.Prey
	Items float64      // for each animal
	Days  horizon.Days // on which it is this item's turn, holds not taken out
}

// Plan returns the enclosure's plan.
func (s *Entry) Plan() *plan.Enclosure { return s.Life.Plan }

// isMeal reports whether it is the meals of a group, not something that goes with
// them or that the log brought.
func (s *Entry) isMeal() bool { return s.Meal != nil && s.Kind == schema.KindFeed }

// At returns the time of day.
func (s *Entry) At() civil.Clock { return s.Round.Clock.V }

// Identity names the series for ever: the enclosure and the care by the names
// they had first, and the round where the care is done in more than one.
func (s *Entry) Identity() string {
	id := s.Life.Plan.Formerly.Or(s.Life.Plan.Name.V) + "/" + s.Name
	if s.Timing == nil {
		return id
	}
	if s.Timing.Formerly.Set() {
		id = s.Life.Plan.Formerly.Or(s.Life.Plan.Name.V) + "/" + s.Timing.Formerly.V
	}
	if len(s.Timing.Round)+len(s.Timing.Clocks) > 1 || s.Timing.Cron.Set() {
		id += "/" + s.Round.Formerly.Or(s.Round.Name.V)
	}
	return id
}

// Portion returns the menu item whose turn it is on day i, or nil.
func (s *Entry) Portion(i int) *Portion {
	for k := range s.Menu {
		if s.Menu[k].Days.Has(i) {
			return &s.Menu[k]
		}
	}
	return nil
}

// Roster is all series of a collection, with the days of its people. It is not
// changed once Make has returned it.
type Roster struct {
	Plan     *plan.Collection
	Horizon  horizon.Horizon
	Lives    []*life.Enclosure        // in walking order
	Of       [][]Entry                // of each of Lives, by kind
	Rounds   []*plan.Round            // those of the plan, and those made for times of their own
	In       map[*plan.Round][]*Entry // the series of each round, in walking order
	People   *People
	Findings []finding.Finding
}

// All yields every series, by enclosure in walking order, then by kind.
func (s *Roster) All() iter.Seq[*Entry] {
	return func(yield func(*Entry) bool) {
		for i := range s.Of {
			for k := range s.Of[i] {
				if !yield(&s.Of[i][k]) {
					return
				}
			}
		}
	}
}
