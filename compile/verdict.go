package compile

import (
	"vivary/plan/finding"
	"vivary/schema/wording"
)

// Verdict says in one line how the collection stands.
func (r *Result) Verdict() string {
	n := wording.Count(len(r.Plan.Enclosures), "enclosure", "enclosures")
	sum := finding.Summary(r.Findings)
	urgent := r.Urgent() > 0
	switch {
	case r.Refused():
		return "Refused: " + sum + " in " + n + "."
	case urgent:
		sum = "Sound, but " + sum + " in " + n
	case sum != "":
		sum = "Sound, with " + sum + " in " + n
	default:
		sum = "Sound: " + n
	}
	return sum + ". " + r.needs(urgent) + " until " + r.Horizon.Last().Words() + "."
}

// needs says whether needs are met.
func (r *Result) needs(urgent bool) string {
	late := r.Late()
	switch {
	case late > 0:
		return wording.Count(late, "need is", "needs are") + " met later than advised, as said above; every other need is met in time"
	case urgent:
		return "See to what is urgent first; beyond it, needs are met in time"
	}
	return "Every need is met in time"
}

// Urgent returns how much is urgent.
func (r *Result) Urgent() int { return finding.Count(r.Findings)[finding.Urgent] }
