package check

import (
	"slices"
	"strconv"

	"vivary/compile/roster"
	"vivary/plan/finding"
)

// What a keeper was shown, and until when that holds.
var training = []*Rule{
	{Enclosure: trainingOver, Rule: finding.Rule{ID: "training-over", Severity: finding.Urgent, Silence: finding.ByReason,
		Title:   "A training has ended that somebody needs for animals in their rounds.",
		Why:     "Hands forget, and rules of a house change. Nobody is sent away from their animals by a date: it is for the house to renew it.",
		Source:  "common practice, no source; that there is no standard for it, and each house writes its own: Krebs and Krupp, safe handling of venomous animals",
		Instead: "Renew it, and write a new day in until; or give these rounds to somebody else.",
		Now:     "somebody's training for these animals has ended: have it renewed, and until then work slowly and tell somebody before opening"}},
}

func trainingOver(r *Rule, e *Enclosure) {
	skills := roster.Skills(e.Life)
	if len(skills) == 0 {
		return
	}
	var said []string
	for i := range e.Series {
		s := &e.Series[i]
		k := e.Collection.Plan.Keeper(s.Keeper)
		if k == nil || s.Once != nil || slices.Contains(said, s.Keeper) {
			continue
		}
		for _, skill := range skills {
			t := k.Ends(skill)
			if t == nil || t.Until.V >= e.Today {
				continue
			}
			said = append(said, s.Keeper)
			e.Add(finding.Finding{Rule: &r.Rule, At: t.Until.At, Source: r.Source,
				Text:  "the training of " + k.Shown() + " in " + skill + " ended on " + t.Until.V.Words() + ", and they look after " + e.Sheet.Name.V,
				Limit: "until " + t.Until.V.String() + ", as the plan says", Once: "training " + place(t.Until.At),
				Write: "once it is renewed, the new day as until; or another keeper than " + strconv.Quote(s.Keeper) + " for these rounds",
				First: []finding.First{{From: t.Until.V + 1, Until: e.Today + roster.PressedFor, Text: "training of " + k.Shown() + " in " + skill + " ended on " + t.Until.V.Brief() + ": have it renewed"}}})
			break
		}
	}
}
