// Package roster says who does what, for whom, on which day and why, and to whom
// it is shown: one value that feeds, the day's list, the proof, the checks and the
// reasons read, and none of them concludes again. It judges nothing: whether what
// is left is enough is for package prove to say.
package roster

import (
	"iter"

	"vivary/compile/horizon"
	"vivary/compile/identity"
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
	ID     identity.Identity
	Life   *life.Enclosure
	Group  *life.Group // nil for care of the whole enclosure
	Rack   *Rack       // of what is done once for all in a rack; Life is then the rack's own
	Store  *Store      // of what is done for feeder animals; Life is then the store's own
	Name   string      // the care's name, or the kind and the group's name of a meal
	Kind   *schema.CareKind
	Round  *plan.Round
	Keeper string // who does it where nobody is away; "" where nobody is named

	// Rules give the days as planned. Where days were moved, or depend on those of
	// another entry, Moved is set and only Days tells.
	Rules []recur.Rule
	Moved bool
	// Days are the days of the window on which it stands; Shown those of them on which
	// a calendar, or a list on paper, shows it to who does it.
	Days, Shown horizon.Days
	// Causes say why days are not as planned, in the order of the steps that made them.
	Causes []Cause
	// Killed are those of Days on which prey is killed first, because nobody comes in
	// time to take out what is left, or whoever comes is not to feed it live, or live prey
	// would harm animals in the state that some are in.
	Killed horizon.Days
	// Manners say how it is done on those of Days on which it is not done as usual, each
	// day once.
	Manners []Manner

	// Shut are the days from today on on which whoever does it may not open the enclosure,
	// or nil for none: what is done from outside stands. Hatch are those on which a state
	// lets them do no more than what goes through the hatch. May says why.
	Shut, Hatch horizon.Days

	Task    string  // what to do, as a line of a round begins
	Water   float64 // ml that it brings in each time, where the care has an amount
	Own     bool    // the task is in the keeper's own words
	Menu    []Portion
	Minutes int
	High    bool // before everything else in its round

	Origin source.Place // where it was written: in the plan, or in a species sheet
	Cited  plan.Cited
	// FromSheet says that it is the species sheet's care, with none of the plan's own
	// in its place.
	FromSheet bool
	// Staged says that how often it is done, or whether, is for some stages of life only.
	Staged bool
	Timing *plan.Timing  // nil of a task that the log brought, and of nothing else
	Meal   *plan.Feeding // of a meal, and of the leftovers and the gut-load it brings
	Stage  string        // of these, where it is the meal of a stage that is still to come after another
	After  int           // of what goes with a meal: how many days after it, -1 for the day before
	Once   *life.Task    // of a task that the log brought, or of one for feeder animals
	Given  horizon.Days  // of the latter: its days, where it is done on several
	Ask    *life.Ask     // of a task that is a question

	// Logged is the last day on which the log says that it was done, or -1. It counts as
	// done also where it was not planned, and stands in no list of today.
	Logged int

	whole []recur.Rule // its rules before it was parted into an entry for each round
	*making
}

// making is what is known of an entry only while its days are worked out. It is then that of
// all the rounds in which it is done by the same people, in; held are the days on which any
// of them is held, nil for every day, and others the rounds in which others do it. Then it
// is parted into an entry for each round (turns.go).
type making struct {
	in, others []*plan.Round
	held       horizon.Days
	several    bool // whether the round is part of its identity
	// first and last bound the days that it may have beside those of its rules.
	first, last civil.Date
}

// Portion is one item of a rotating menu.
type Portion struct {
	Prey  plan.Prey
	Items float64      // for each animal
	Days  horizon.Days // on which it is this item's turn, holds not taken out
}

// Plan returns the enclosure's plan.
func (e *Entry) Plan() *plan.Enclosure { return e.Life.Plan }

// isMeal reports whether it is the meals of a group, not something that goes with
// them or that the log brought.
func (e *Entry) isMeal() bool { return e.Meal != nil && e.Kind == schema.KindFeed }

// Feeds reports whether it offers food to its group: a meal, or a task of the log
// that is one.
func (e *Entry) Feeds() bool {
	return e.Kind.Needs == schema.NeedFood || e.Once != nil && e.Once.Meal
}

// At returns the time of day.
func (e *Entry) At() civil.Clock { return e.Round.Clock.V }

// Portion returns the menu item whose turn it is on day i, or nil.
func (e *Entry) Portion(i int) *Portion {
	for k := range e.Menu {
		if e.Menu[k].Days.Has(i) {
			return &e.Menu[k]
		}
	}
	return nil
}

// Planned reports whether one of the entry's rules has the day.
func (e *Entry) Planned(d civil.Date) bool {
	for _, r := range e.Rules {
		if r.Contains(d) {
			return true
		}
	}
	return false
}

// Roster is all entries of a collection, with the days of its people and what falls
// into its calendars. But for Pressing it is not changed once Make has returned it.
type Roster struct {
	*Shared
	Lives     []*life.Enclosure        // in walking order
	Racks     []*Rack                  // by name
	Stores    []*Store                 // by name
	Of        [][]Entry                // of each of Lives, by kind
	In        map[*plan.Round][]*Entry // the entries of each round, in walking order
	Calendars []Calendar               // as in the plan; one that shows everything where it has none
	Unshown   []*Entry                 // those that stand on a day on which nobody is shown them, in walking order
	Findings  []finding.Finding
	// Pressing is what is urgent in an enclosure and no question of the log asks, each in
	// the words of a round: it stands first in every round that passes, from today on for
	// so many days as PressedFor. It is known once all is judged.
	Pressing map[*life.Enclosure][]finding.First
}

// PressedFor is for how many days what is urgent stands first in the rounds of a calendar:
// feeds are fetched late and built seldom. Common practice, no source.
const PressedFor = 14

// Shared is what the entries of every enclosure depend on beside the enclosure's own
// plan and log.
type Shared struct {
	Plan    *plan.Collection
	Horizon horizon.Horizon
	Rounds  []*plan.Round // those of the plan, and those made for times of their own
	People  *People
	Told    Told // what the last feeds showed, nil for nothing known
	rounds  *rounds
	shows   *shows
}

// All yields every entry, by enclosure in walking order, then by kind. What is done for a
// rack comes before its first enclosure, and what is done for feeder animals last.
func (r *Roster) All() iter.Seq[*Entry] {
	at := r.before()
	return func(yield func(*Entry) bool) {
		for i := range r.Of {
			if x := at[i]; x != nil {
				for k := range x.Entries {
					if !yield(&x.Entries[k]) {
						return
					}
				}
			}
			for k := range r.Of[i] {
				if !yield(&r.Of[i][k]) {
					return
				}
			}
		}
		for _, x := range r.Stores {
			for k := range x.Entries {
				if !yield(&x.Entries[k]) {
					return
				}
			}
		}
	}
}

// before returns the racks by the place of their first enclosure.
func (r *Roster) before() map[int]*Rack {
	at := make(map[int]*Rack, len(r.Racks))
	for _, k := range r.Racks {
		at[k.first] = k
	}
	return at
}

// Doer returns who does an entry on day i, and whether anybody does: "" and true
// where it is nobody's in particular.
func (s *Shared) Doer(e *Entry, i int) (string, bool) { return s.People.Doer(e.Keeper, i) }
