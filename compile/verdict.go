package compile

import (
	"slices"
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
	case len(r.Plan.Enclosures) == 0 && !r.Refused():
		return "No enclosure stands in the plan: nothing was judged, and no calendar shows care for an animal."
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
// not looked for, since a sheet does not say what others say, and where what decided is
// known of others only: of a kin, or of the type that a sheet of one's own belongs to.
func (r *Result) sound() string {
	switch practice := r.practice(); {
	case practice != "":
		return "No harm found by common practice for " + practice
	case r.unjudged() != "":
		return "No harm found by what is known"
	}
	return "Sound"
}

// practice names the types and the kin by which the collection's own sheets are judged.
func (r *Result) practice() string {
	var all []string
	for _, e := range r.Plan.Enclosures {
		if e.Sheet == nil || !r.Plan.Library.Own(e.Sheet.Name.V) {
			continue
		}
		by := e.Sheet.Lenders()
		if t := r.Plan.Library.Type(e.Sheet.Type.V); t != nil {
			by = []string{t.Title.V} // the wider types go without saying
		}
		for _, by := range by {
			if !slices.Contains(all, by) {
				all = append(all, by)
			}
		}
	}
	return wording.And(all)
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
		which := ": "
		if late > 1 {
			which = ", at worst "
		}
		return wording.Count(late, "need is", "needs are") + " not met in time" + which + r.worst() + "; every other need is met in time"
	case urgent:
		return "See to what is urgent first; beyond it, needs are met in time"
	}
	return "Every need is met in time"
}

// worst names the need that is met the latest, by the limit that it passes.
func (r *Result) worst() (text string) {
	most := 0.0
	for _, proofs := range r.Proofs {
		for i := range proofs {
			p := &proofs[i]
			if p.Met() {
				continue
			}
			if days, words := p.Worst(); text == "" || float64(days)/float64(max(1, p.Limit.Days)) > most {
				most, text = float64(days)/float64(max(1, p.Limit.Days)), words
			}
		}
	}
	return text
}

// Urgent returns how much is urgent.
func (r *Result) Urgent() int { return finding.Count(r.Findings)[finding.Urgent] }
