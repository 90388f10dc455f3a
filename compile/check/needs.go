package check

import (
	"strings"

	"vivary/compile/life"
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

// needUnstated looks for the needs without which a proof says nothing, in every stage
// that the animals will have. Newborn young are not fed.
func needUnstated(r *Rule, e *Enclosure) {
	for _, g := range e.Life.Groups {
		unstated := e.unstated(r, g, e.Today)
		for k := 1; k < len(g.Stages) && !unstated; k++ {
			if on := g.Stages[k].From; on > e.Today && on <= e.Horizon.Last() {
				unstated = e.unstated(r, g, on)
			}
		}
		if unstated {
			return
		}
	}
}

// unstated finds what the sheet of a group does not state for the stage of a day, and
// reports whether there is any.
func (e *Enclosure) unstated(r *Rule, g *life.Group, on civil.Date) bool {
	if g.Count(on) == 0 {
		return false
	}
	lacks := lacking(g.Sheet, g.Stage(on))
	if len(lacks) == 0 {
		return false
	}
	f := finding.Finding{Rule: &r.Rule, At: origin(g), Source: r.Source}
	if g.Sheet == nil {
		f.Text = "the species of " + g.Animals.Name.V + " is not known: nothing is proved for them"
		f.Write = "in the log, where they are; or an enclosure of their own with its species"
	} else {
		f.Text = "the sheet of " + g.Sheet.Name.V + " states no need for " + strings.Join(lacks, ", nor for ") + " of " + g.Animals.Name.V
		f.Write = "need blocks in species \"" + g.Sheet.Name.V + "\", each with longest, source, quality and seen"
	}
	e.Add(f)
	return true
}

// lacking names what a sheet states no need for in a stage.
func lacking(s *plan.SpeciesSheet, stage string) (out []string) {
	has := map[*schema.NeedName]bool{}
	if s != nil {
		for _, n := range s.Needs {
			if stage == "" || len(n.Stages) == 0 || plan.Lists(n.Stages, stage) {
				has[n.What] = true
			}
		}
	}
	if !has[schema.NeedLook] {
		out = append(out, "look")
	}
	if !has[schema.NeedWater] && !has[schema.NeedMoisture] {
		out = append(out, "water or moisture")
	}
	if !has[schema.NeedFood] && stage != "newborn" {
		out = append(out, "food")
	}
	return out
}

// latestNewborn is how long young may be newborn where no sheet says. Common
// practice, no source.
const latestNewborn = 60

func newbornLate(r *Rule, e *Enclosure) {
	for _, g := range e.Life.Groups {
		a := g.Animals
		if g.Logged || !a.Born.Set() || a.Stage.V != "newborn" || e.count(g) == 0 || e.moulted(a) {
			continue
		}
		most := civil.Date(latestNewborn)
		if f := e.figure(schema.FigureOnMother); f != nil {
			most = civil.Date(f.Range.High / (24 * 60) * 2)
		}
		if a.Born.V+most < e.Today {
			e.Add(finding.Finding{Rule: &r.Rule, At: a.Stage.At, Source: r.Source,
				Text:  a.Name.V + " are called newborn, and were born on " + a.Born.V.Words(),
				Write: "the stage that they are in: young, once they have moulted"})
		}
	}
}

// moulted reports whether the log says that young of a block have had their first moult.
func (e *Enclosure) moulted(a *plan.Animals) bool {
	for i := range e.Collection.Plan.Log {
		x := &e.Collection.Plan.Log[i]
		if (x.Word == schema.WordFirstMoult || x.Word == schema.WordMoult) && x.Enclosure.V == e.Plan.Name.V && x.Group.V == a.Name.V {
			return true
		}
	}
	return false
}
