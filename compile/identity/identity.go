// Package identity names what stands in calendars for ever: by the names that
// blocks had first, whatever they are called now. Phase, UID, the keys of the log and
// the check for clashes all read what is made here.
package identity

import (
	"vivary/compile/recur"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/civil"
)

// Identity is the name of one care of one enclosure. Two that are equal are one and
// the same thing to a phone.
type Identity struct {
	Enclosure string
	Care      string // "feed adults" of a meal, and the key under which the log speaks of it
	Round     string // of a care that is done in more than one round, or by a cron line
}

// OfCare is the identity of a care.
func OfCare(e *plan.Enclosure, name, formerly plan.Written[string]) Identity {
	return Identity{Enclosure: Enclosure(e), Care: first(name, formerly)}
}

// OfMeal is the identity of the meals of some animals, or of what goes with them.
// A name that the feeding had formerly is one that the animals had.
func OfMeal(e *plan.Enclosure, kind *schema.CareKind, a *plan.Animals, f *plan.Feeding) Identity {
	name := Animals(a)
	if f != nil {
		name = f.Timing.Formerly.Or(name)
	}
	return Identity{Enclosure: Enclosure(e), Care: Meal(kind, name)}
}

// Meal is the key of the meals of some animals, by the name they had first.
func Meal(kind *schema.CareKind, animals string) string { return kind.Name + " " + animals }

// OfTask is the identity of a task that the log brought; its name has the day.
func OfTask(e *plan.Enclosure, name string) Identity {
	return Identity{Enclosure: Enclosure(e), Care: name}
}

// In is the identity of a care in one of its rounds, or in a part of one.
func (id Identity) In(r *plan.Round) Identity {
	id.Round = Round(r)
	if r.By != nil {
		id.Round += "/" + Keeper(r.By)
	}
	return id
}

// Of is the identity of a task of some of the animals, where others have one of the
// same name.
func (id Identity) Of(a *plan.Animals) Identity {
	id.Care += "/" + Animals(a)
	return id
}

// String returns the identity as it enters a UID.
func (id Identity) String() string {
	s := id.Enclosure + "/" + id.Care
	if id.Round != "" {
		s += "/" + id.Round
	}
	return s
}

// Told is the text by which feeds tell on which days a care was shown, in whichever of
// its rounds.
func (id Identity) Told() string { return id.Enclosure + "/" + id.Care }

// Phase returns the stable first day of an interval of so many days without one of
// its own: hashed, so that forty tubs are not all due on one day, and the same in
// every round of a care.
func (id Identity) Phase(days int) civil.Date {
	return recur.Phase(id.Told(), days)
}

// Enclosure is the name that an enclosure had first; the functions below are the
// same for other blocks.
func Enclosure(e *plan.Enclosure) string { return first(e.Name, e.Formerly) }

// Animals is the first name of an animals block.
func Animals(a *plan.Animals) string { return first(a.Name, a.Formerly) }

// Round is the first name of a round. The parts of a round share no day, and are one round.
func Round(r *plan.Round) string { return first(r.Name, r.Formerly) }

// Keeper is the first name of a keeper.
func Keeper(k *plan.Keeper) string { return first(k.Name, k.Formerly) }

// Calendar is the first name of a calendar.
func Calendar(c *plan.Calendar) string { return first(c.Name, c.Formerly) }

func first(name, formerly plan.Written[string]) string { return formerly.Or(name.V) }
