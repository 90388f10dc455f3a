package check

import (
	"slices"
	"strings"

	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/wording"
)

// Rules about what a sheet does not say: a rule without its figure is silent, and that is
// not the same as finding no harm.
var unsaid = []*Rule{
	{Collection: venomUnsaid, Rule: finding.Rule{ID: "venom-unsaid", Severity: finding.Error, Silence: finding.Never,
		Title:   "It is not said how dangerous a species is to people.",
		Why:     "Locks, training and the card at the door hang on it. Kin are no guide: of more than 2,200 scorpions 104 are medically significant, and near relatives of harmless ones are among them.",
		Source:  "Ward et al. 2018, Toxicon 151:137-155",
		Instead: "Look it up and write it, with where you have it from."}},
	{Collection: notJudged, Rule: finding.Rule{ID: "not-judged", Severity: finding.Caution, Silence: finding.Never,
		Title:   "A species sheet leaves out what others state.",
		Why:     "Rules that ask for it are silent. What is not judged is not sound.",
		Source:  "the design of this program",
		Instead: "State what you know, each with where you have it from."}},
	{Collection: typeException, Rule: finding.Rule{ID: "type-exception", Severity: finding.Error, Silence: finding.Never,
		Title:   "A species belongs to a genus for which its care type does not hold.",
		Why:     "The type says what suits every other member. What suits this genus it does not know.",
		Source:  "the design of this program",
		Instead: "Take another type, or none and state its own figures and needs."}},
}

func typeException(r *Rule, c *Collection) {
	for _, s := range c.sheets {
		t := c.Plan.Library.Type(s.Type.V)
		if t == nil {
			continue
		}
		if x := t.Exception(s.Genus()); x != nil && x.Empty() {
			c.Add(finding.Finding{Rule: &r.Rule, At: s.Type.At, Source: r.Source,
				Text:  s.Name.V + " is not cared for like " + t.Title.V + ": " + x.Because.V,
				Write: "another type; or its own figures and needs, without type"})
		}
	}
}

func venomUnsaid(r *Rule, c *Collection) {
	for _, s := range c.sheets {
		if s.Figure(schema.FigureVenom, "") != nil {
			continue
		}
		f := finding.Finding{Rule: &r.Rule, At: s.At, Text: "how dangerous the venom of " + s.Name.V + " is to people is not said", Source: r.Source,
			Write: "figure \"venom\" with value \"none\", \"mild\" or \"medically significant\", and source"}
		if s.Like.Set() {
			f.Limit = "no sheet lends it: " + s.Like.V + " may be harmless and its kin not"
		}
		c.Add(f)
	}
}

func notJudged(r *Rule, c *Collection) {
	for _, s := range c.sheets {
		unknown := slices.DeleteFunc(s.Unknown(), func(f *schema.Figure) bool { return f == schema.FigureVenom })
		if len(unknown) == 0 {
			continue
		}
		var names []string
		for _, f := range unknown {
			names = append(names, f.Name)
		}
		c.Add(finding.Finding{Rule: &r.Rule, At: s.At, Source: r.Source,
			Text:  "of " + s.Name.V + " is not judged: " + wording.And(unjudged(s)),
			Write: "a figure, with source, for each that you know of: " + strings.Join(names, ", ")})
	}
}

// unjudged leaves out venom, which has a rule of its own.
func unjudged(s *plan.SpeciesSheet) []string {
	return slices.DeleteFunc(s.Unjudged(), func(about string) bool { return about == schema.FigureVenom.About })
}
