package compile

import (
	"vivary/plan/finding"
	"vivary/schema/wording"
)

// Verdict says in one line how the collection stands.
func (r *Result) Verdict() string {
	n := wording.Count(len(r.Plan.Enclosures), "enclosure", "enclosures")
	sum := finding.Summary(r.Findings)
	if r.Refused() {
		return "Refused: " + sum + " in " + n + "."
	}
	sound := "Sound: " + n
	if sum != "" {
		sound = "Sound, with " + sum + " in " + n
	}
	needs := "Every need is met in time"
	if late := r.Late(); late > 0 {
		needs = wording.Count(late, "need is", "needs are") + " met later than advised, as said above; every other need is met in time"
	}
	return sound + ". " + needs + " until " + r.Horizon.Last().Words() + "."
}
