package compile

import (
	"strings"

	"vivary/plan"
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
		sum = r.sound() + ", but " + sum + " in " + n
	case sum != "":
		sum = r.sound() + ", with " + sum + " in " + n
	default:
		sum = r.sound() + ": " + n
	}
	return sum + ". " + r.unjudged() + r.needs(urgent) + " until " + r.Horizon.Last().Words() + "."
}

// sound is the word for a plan in which no harm was found. It is another where some was
// not looked for, since a sheet does not say what others say.
func (r *Result) sound() string {
	if r.unjudged() != "" {
		return "No harm found by what is known"
	}
	return "Sound"
}

// unjudged says what was not looked for, and of which species.
func (r *Result) unjudged() string {
	var all []string
	seen := map[*plan.SpeciesSheet]bool{}
	for _, e := range r.Plan.Enclosures {
		if e.Sheet == nil || seen[e.Sheet] {
			continue
		}
		seen[e.Sheet] = true
		if about := e.Sheet.Unjudged(); len(about) > 0 {
			all = append(all, wording.And(about)+" of "+e.Sheet.Name.V)
		}
	}
	if all == nil {
		return ""
	}
	return "Not judged: " + strings.Join(all, "; ") + ". "
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
