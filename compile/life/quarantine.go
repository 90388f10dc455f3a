package life

import (
	"math"

	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/quantity"
)

// askedFor is how many days after an arrival a missing length of quarantine is
// asked for: keepers use up to 90 days (common practice, no source).
const askedFor = 90

// quarantine keeps those apart that have come, from the last arrival on. There is
// no good source for a length, so the collection states its own.
func (r *reader) quarantine(t *track) {
	s := t.arrived
	if a := t.Animals.Arrived; !s.ok && a.Set() {
		s = seen{a.V, a.At, true}
	}
	if !s.ok {
		return
	}
	var length quantity.Quantity
	if r.c.About != nil {
		length = r.c.About.Quarantine.V
	}
	if length.Value <= 0 {
		if after(s.on, askedFor) > r.h.From && s.on <= r.h.From {
			r.found.Add(finding.Finding{Rule: ruleQuarantine, At: s.at,
				Text:  t.Animals.Name.V + " arrived on " + s.on.Words() + ", and how long arrivals are kept apart is not stated",
				Write: "quarantine = \"60 days\", or your own figure, in the collection block"})
		}
		return
	}
	end := after(s.on, int(math.Ceil(length.Value/day)))
	if end <= r.h.From {
		// The day of the decision itself still stands.
		if end < r.h.From {
			return
		}
	} else {
		t.Quarantined = end
		t.Windows = append(t.Windows, Window{Kind: QuarantineWindow, From: s.on, Until: end, Name: "quarantine/" + s.on.String(), Title: "Quarantine",
			Text: "Last in every round, tools of its own. No one joins it, it joins no one.", At: s.at})
	}
	t.Tasks = append(t.Tasks, Task{Name: "quarantine-end/" + s.on.String(), Kind: schema.KindOther, On: end,
		Text: "end of quarantine: eats, droppings sound, no mites? decide, join or stay apart", At: s.at})
}
