package life

import (
	"slices"

	"vivary/schema"
)

// ofSeasons are the states that nothing but a season brings.
var ofSeasons = []*schema.State{schema.StateBeforeRest, schema.StateRest, schema.StateAfterRest}

// Undisturbed reports whether care of a kind is done as ever in every state that animals
// of the enclosure could come into, by the sheets of all that live there. What its
// seasons do is for Seasonal to say.
func (l *Enclosure) Undisturbed(k *schema.CareKind) bool {
	for _, s := range schema.States {
		if slices.Contains(ofSeasons, s) {
			continue
		}
		if !l.Plan.Sheet.State(s).Usual(k) {
			return false
		}
		for _, g := range l.Groups {
			if !g.Sheet.State(s).Usual(k) {
				return false
			}
		}
	}
	return true
}
