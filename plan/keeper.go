package plan

import (
	"slices"

	"vivary/schema"
	"vivary/schema/civil"
)

// Training is a training block of a keeper.
type Training struct {
	Head
	In    Written[[]string]   `care:"in"`
	On    Written[civil.Date] `care:"on"`
	By    Written[string]     `care:"by"`
	Until Written[civil.Date] `care:"until"`
	Note  Written[string]     `care:"note"`
}

// TrainedIn reports whether a keeper was ever shown something, whenever that ends.
func (k *Keeper) TrainedIn(skill string) bool {
	return slices.Contains(k.Trained.V, skill) || k.training(skill) != nil
}

// Skills are what a keeper was ever shown, in the order in which they are listed.
func (k *Keeper) Skills() (out []string) {
	for _, c := range schema.Skills {
		if k.TrainedIn(c.Name) {
			out = append(out, c.Name)
		}
	}
	return out
}

// TrainedOn reports whether what a keeper was shown holds on a day. A training block goes before
// trained, since it says until when.
func (k *Keeper) TrainedOn(skill string, d civil.Date) bool {
	t := k.training(skill)
	if t == nil {
		return slices.Contains(k.Trained.V, skill)
	}
	return !t.Until.Set() || d <= t.Until.V
}

// Ends returns the training by which a keeper is trained in something, where that ends on a day;
// nil where it does not.
func (k *Keeper) Ends(skill string) *Training {
	if t := k.training(skill); t != nil && t.Until.Set() {
		return t
	}
	return nil
}

// training is, of the trainings in something, the one that holds longest; nil for none.
func (k *Keeper) training(skill string) (out *Training) {
	for _, t := range k.Training {
		if slices.Contains(t.In.V, skill) && (out == nil || out.Until.Set() && (!t.Until.Set() || t.Until.V > out.Until.V)) {
			out = t
		}
	}
	return out
}

// TrainingEnds reports whether any training ends on a day.
func (c *Collection) TrainingEnds() bool {
	return slices.ContainsFunc(c.Keepers, func(k *Keeper) bool {
		return slices.ContainsFunc(k.Training, func(t *Training) bool { return t.Until.Set() })
	})
}

// StandsIn reports whether a keeper may stand in for others at an enclosure.
func (k *Keeper) StandsIn(e *Enclosure) bool {
	if len(k.Rooms)+len(k.Enclosures) == 0 {
		return true
	}
	return e.Place != nil && Lists(k.Rooms, e.Place.Name.V) || len(k.Enclosures) > 0 && e.In(k.Enclosures)
}

// keepers looks at what keepers name.
func (r *resolver) keepers() {
	c := r.c
	for _, k := range c.Keepers {
		r.days(k.Off)
		for _, w := range k.Rooms {
			if c.rooms[w.V] == nil {
				r.unknownName(w, "room", keysOf(r, "room", c.rooms))
			}
		}
		for _, w := range k.Enclosures {
			if c.enclosures[w.V] == nil && r.several[w.V] == nil {
				r.unknownName(w, "enclosure", keysOf(r, "enclosure", c.enclosures))
			}
		}
	}
}
