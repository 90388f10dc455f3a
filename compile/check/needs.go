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
	{Enclosure: needUnstated, Rule: finding.Rule{ID: "need-unstated", Severity: finding.Error, Kills: true,
		Title:   "The species sheet does not state what these animals need.",
		Why:     "The proof can only prove what a sheet asks for. A sheet that asks for nothing would let everything pass.",
		Source:  "the design of this program",
		Instead: "State the needs look, water or moisture, and food, for every stage that is kept.",
		Bad:     "species \"bare\" {\n  title = \"bare\"\n}\nenclosure \"box\" {\n  species = \"bare\"\n  room    = \"east\"\n\n  housing {\n    inside = \"60 x 45 x 40 cm\"\n    lid    = \"solid, latched\"\n  }\n\n  animals \"one\" {\n    count = 1\n    stage = \"adult\"\n  }\n}\n",
		Good:    "animals \"one\" {\n  count  = 1\n  stage  = \"adult\"\n  origin = \"captive bred\"\n  paper  = \"invoice 3\"\n}\n"}},
	{Enclosure: newbornLate, Rule: finding.Rule{ID: "newborn-late", Severity: finding.Error, Kills: true,
		Title:   "Animals are called newborn for longer than they can be.",
		Why:     "Newborn young live on what they were born with and are not fed. Once they have moulted they starve within weeks.",
		Source:  "the species sheet's time on the mother; Sarmento et al. 2008, J. Arachnol. 36:476-479: unfed second instars died between day 11 and day 30",
		Instead: "Write the stage that they are in now, or log first_moult.",
		Bad:     "animals \"brood\" {\n  count  = 12\n  stage  = \"newborn\"\n  born   = \"2026-01-01\"\n  origin = \"captive bred\"\n  paper  = \"bred here\"\n}\n",
		Good:    "animals \"brood\" {\n  count  = 12\n  stage  = \"newborn\"\n  born   = \"2026-11-20\"\n  origin = \"captive bred\"\n  paper  = \"bred here\"\n}\n"}},
	{Collection: sheetWeaker, Rule: finding.Rule{ID: "sheet-weaker", Severity: finding.Caution,
		Title:   "The collection's own sheet asks for less than the built-in one.",
		Why:     "That may be right here. Whoever reads the plan should see that the proof proves less.",
		Source:  "the built-in species sheet",
		Instead: "Keep the reason beside it, and a date within a year at which it is looked at again.",
		Bad:     "species \"pandinus-imperator\" {\n  need \"water\" {\n    longest = \"6 days\"\n    source  = [\"own records\"]\n    quality = \"own\"\n    seen    = \"2026-10-01\"\n    because = \"large dishes\"\n    review  = \"2027-06-01\"\n  }\n}\n",
		Good:    "species \"pandinus-imperator\" {\n  need \"water\" {\n    longest = \"2 days\"\n    source  = [\"own records\"]\n    quality = \"own\"\n    seen    = \"2026-10-01\"\n    because = \"large dishes\"\n    review  = \"2027-06-01\"\n  }\n}\n"}},
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

// sheetWeaker compares the collection's own needs and limits with the built-in ones.
func sheetWeaker(r *Rule, c *Collection) {
	for _, s := range c.sheets {
		base := c.Plan.Library.Built(s.Name.V)
		if base == nil {
			continue
		}
		for _, n := range s.Needs {
			if !n.Own {
				continue
			}
			for _, b := range base.Needs {
				if b.Name.V == n.Name.V && sameStages(b.Stages, n.Stages) && n.Longest.Set() && n.Longest.V.Value > b.Longest.V.Value {
					c.Add(finding.Finding{Rule: &r.Rule, At: n.Longest.At, Source: c.cite(b.Cited),
						Text:  n.Name.V + " may be " + n.Longest.V.String() + " away here",
						Limit: b.Longest.V.String() + " at the longest, need \"" + b.Name.V + "\" of the built-in sheet",
						Write: "longest = \"" + b.Longest.V.String() + "\", or leave it: this only makes it seen"})
				}
			}
		}
		for _, f := range s.Figures {
			if !f.Own || f.What != schema.FigureUnattended && f.What != schema.FigureTemperatureHard {
				continue
			}
			for _, b := range base.Figures {
				if b.What == f.What && sameStages(b.Stages, f.Stages) && (f.Range.High > b.Range.High || f.What == schema.FigureTemperatureHard && f.Range.Low < b.Range.Low) {
					c.Add(finding.Finding{Rule: &r.Rule, At: f.Value.At, Source: c.cite(b.Cited),
						Text:  f.Name.V + " is " + f.Value.V + " here",
						Limit: b.Value.V + ", " + b.Name.V + " of the built-in sheet",
						Write: "value = \"" + b.Value.V + "\", or leave it: this only makes it seen"})
				}
			}
		}
	}
}

// sameStages reports whether two lists of stages have one in common; an empty list
// is all stages.
func sameStages(a, b []plan.Written[string]) bool {
	if len(a) == 0 || len(b) == 0 {
		return true
	}
	for _, x := range a {
		if plan.Lists(b, x.V) {
			return true
		}
	}
	return false
}
