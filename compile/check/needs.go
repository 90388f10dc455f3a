package check

import (
	"strings"

	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/civil"
)

// Rules about the needs themselves: what no sheet states, nothing proves.
var needs = []*Rule{
	{Enclosure: needUnstated, Rule: finding.Rule{ID: "need-unstated", Severity: finding.Error, Silence: finding.Never,
		Title:   "The species sheet does not state what these animals need.",
		Why:     "The proof can only prove what a sheet asks for. A sheet that asks for nothing would let everything pass.",
		Source:  "the design of this program",
		Instead: "State the needs look, water or moisture, and food, for every stage that is kept."}},
	{Enclosure: newbornLate, Rule: finding.Rule{ID: "newborn-late", Severity: finding.Urgent, Silence: finding.Never,
		Title:   "Animals are called newborn for longer than they can be.",
		Why:     "Newborn young live on what they were born with and are not fed. Once they have moulted they starve within weeks.",
		Source:  "the species sheet's time on the mother; Sarmento et al. 2008, J. Arachnol. 36:476-479: unfed second instars died between day 11 and day 30",
		Instead: "Write the stage that they are in now, or log first_moult.",
		Now:     "newborn for too long: white still on her back, or moulted and hungry? Log what you see"}},
	{Collection: sheetWeaker, Rule: finding.Rule{ID: "sheet-weaker", Severity: finding.Caution, Silence: finding.Never,
		Title:   "The collection's own sheet asks for less than the built-in one.",
		Why:     "That may be right here. Whoever reads the plan should see that the proof proves less.",
		Source:  "the built-in species sheet",
		Instead: "Keep the reason beside it, and a date within a year at which it is looked at again."}},
	{Collection: reviewFar, Rule: finding.Rule{ID: "review-far", Severity: finding.Error, Silence: finding.Never,
		Title:   "A limit of your own that asks for less is not looked at again within a year.",
		Why:     "It takes the place of what is known to harm. A date that is far away is none.",
		Source:  "the design of this program",
		Instead: "Give a date within a year, and look at it again then."}},
}

// needUnstated looks for the needs without which a proof says nothing. Newborn young
// are not fed.
func needUnstated(r *Rule, e *Enclosure) {
	for _, g := range e.Life.Groups {
		stage := e.stage(g)
		has := map[*schema.NeedName]bool{}
		for _, n := range e.Sheet.Needs {
			if stage == "" || len(n.Stages) == 0 || plan.Lists(n.Stages, stage) {
				has[n.What] = true
			}
		}
		var lacks []string
		if !has[schema.NeedLook] {
			lacks = append(lacks, "look")
		}
		if !has[schema.NeedWater] && !has[schema.NeedMoisture] {
			lacks = append(lacks, "water or moisture")
		}
		if !has[schema.NeedFood] && stage != "newborn" {
			lacks = append(lacks, "food")
		}
		if len(lacks) > 0 {
			e.Add(finding.Finding{Rule: &r.Rule, At: g.Animals.At, Source: r.Source,
				Text:  "the sheet of " + e.Sheet.Name.V + " states no need for " + strings.Join(lacks, ", nor for ") + " of " + g.Animals.Name.V,
				Write: "need blocks in species \"" + e.Sheet.Name.V + "\", each with longest, source, quality and seen"})
			return
		}
	}
}

// latestNewborn is how long young may be newborn where no sheet says. Common
// practice, no source.
const latestNewborn = 60

func newbornLate(r *Rule, e *Enclosure) {
	for _, g := range e.Life.Groups {
		a := g.Animals
		if !a.Born.Set() || e.stage(g) != "newborn" {
			continue
		}
		most := civil.Date(latestNewborn)
		if f := e.figure(schema.FigureOnMother); f != nil {
			most = civil.Date(f.Range.High / (24 * 60) * 2)
		}
		if a.Born.V+most < e.Today {
			e.Add(finding.Finding{Rule: &r.Rule, At: a.Stage.At, Source: r.Source,
				Text:  a.Name.V + " are called newborn, and were born on " + a.Born.V.Words(),
				Write: "stage = \"young\", or the stage that they are in"})
		}
	}
}
