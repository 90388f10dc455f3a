package check

import (
	"slices"
	"strconv"

	"vivary/compile/stock"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/quantity"
	"vivary/schema/wording"
)

func oneCulture(r *Rule, c *Collection) {
	for _, l := range c.lots() {
		if len(l.Broods) > 0 && len(l.Cultures) == 1 && l.Cultures[0].AtOnce < 2 && len(l.Supplies) == 0 {
			x := l.Cultures[0]
			at := x.Plan.At
			if w := x.Plan.Culture.AtOnce; w.Set() {
				at = w.At
			}
			c.Add(finding.Finding{Rule: &r.Rule, At: at, Source: r.Source, Text: "the young that are expected in " + l.Broods[0].Life.Plan.Name.V + " live on " + l.Many() + ", and one culture alone yields them",
				Write: "2 or more as at_once; or a supply of the same prey"})
		}
	}
}

func lateCulture(r *Rule, c *Collection) {
	for _, l := range c.lots() {
		for _, x := range l.Cultures {
			late := x.Late()
			if late == 0 || len(l.Supplies) > 0 || slices.ContainsFunc(l.Cultures, func(o *stock.Culture) bool { return o.Lead.Known() && o.Late() == 0 }) {
				continue
			}
			at, when := x.Plan.At, "set up today"
			if w := x.Plan.Culture.From; w.Set() && w.V > c.Today {
				at, when = w.At, "set up on "+w.V.Words()
			}
			c.Add(finding.Finding{Rule: &r.Rule, At: at, Source: r.Source, Text: when + " it yields " + l.Many() + " " + wording.Days(late) + " after they may be needed for the first time",
				Limit: "a lead of up to " + wording.Days(int(x.Need-x.Latest)), Write: "a supply of the same prey until then; or, where one is set up already, " + x.Plan.Name.V + " " + schema.WordStarted.Name + " in the log, with its day"})
		}
	}
}

func cultureGap(r *Rule, c *Collection) {
	for _, l := range c.lots() {
		for _, x := range l.Cultures {
			if x.Gap == 0 || len(l.Supplies) > 0 {
				continue
			}
			why := "none that the log has yields"
			if x.Crashed > 0 {
				why = "it crashed, and none that was set up since yields"
			}
			c.Add(finding.Finding{Rule: &r.Rule, At: x.Plan.At, Source: r.Source, Text: l.Many() + " are fed " + ahead(int(x.Gap-c.Today)) + ", and " + why + " by then; set up as soon as may be it yields in " + wording.Days(int(x.Next-c.Today)),
				Write: x.Plan.Name.V + " " + schema.WordStarted.Name + " in the log, with its day, for each that is set up"})
		}
	}
}

func leadUnknown(r *Rule, c *Collection) {
	for _, l := range c.lots() {
		for _, x := range l.Cultures {
			if !x.Lead.Known() && (!x.Standing || len(x.Starts) > 0) && !wrongWarmth(x.Plan) { // a colony that is there yields
				c.Add(finding.Finding{Rule: &r.Rule, At: x.Plan.At, Source: r.Source, Text: "when a culture of " + l.Many() + " yields is not known: " + x.Lead.Why, Write: "how long it takes with you, as lead"})
			}
		}
	}
}

// wrongWarmth reports whether culture-warmth speaks of a culture.
func wrongWarmth(s *plan.Store) bool {
	if s.Sheet == nil {
		return false
	}
	at, f := s.Culture.Temperature, s.Sheet.Figure(schema.FeederTemperature)
	return at.Set() && f != nil && tooFarFrom(at.V, f.Range, s)
}

func feederWarmth(r *Rule, c *Collection) {
	for _, s := range c.Plan.Stores {
		if s.Tub != nil && !s.Tub.Frozen.V {
			warmth(r, c, s, s.Tub.Temperature, "stands at ")
		}
	}
}

// cultureWarmth finds cultures in which nothing breeds: colder or warmer than the sheet has it on
// every day, or so that nothing develops.
func cultureWarmth(r *Rule, c *Collection) {
	for _, s := range c.Plan.Stores {
		if s.Culture != nil {
			warmth(r, c, s, s.Culture.Temperature, "breeds at ")
		}
	}
}

// warmth finds a store that stands outside of what the sheet of its feeder has.
func warmth(r *Rule, c *Collection, s *plan.Store, at plan.Written[quantity.Range], verb string) {
	if s.Sheet == nil || !at.Set() {
		return
	}
	f := s.Sheet.Figure(schema.FeederTemperature)
	if f != nil && tooFarFrom(at.V, f.Range, s) {
		c.Add(finding.Finding{Rule: &r.Rule, At: at.At, Text: s.Name.V + " " + verb + at.V.String() + ", outside of what its sheet has", Limit: f.Range.String(), Source: c.Cite(f),
			Write: "where it stands warmer or cooler; or what it is, if that is a slip"})
	}
}

// tooFarFrom reports whether a warmth lies outside of a range. Of a culture the sheet's range is
// what it is kept at, and between the temperatures at which a stage was observed it breeds too.
func tooFarFrom(at, kept quantity.Range, s *plan.Store) bool {
	if at.High >= kept.Low && at.Low <= kept.High {
		return false
	}
	if s.Culture == nil {
		return true
	}
	if s.Culture.Lead.Set() {
		return false // it was seen to yield
	}
	for _, d := range s.Sheet.Stages {
		if d.Size.Set() && d.Size.V != s.Of.Size {
			continue
		}
		for _, p := range d.Points {
			kept.Low, kept.High = min(kept.Low, p.At.Low), max(kept.High, p.At.High)
		}
		if d.Between.Set() {
			kept.Low, kept.High = min(kept.Low, d.Between.V.Low), max(kept.High, d.Between.V.High)
		}
	}
	return at.High < kept.Low || at.Low > kept.High
}

// overdrawn finds cultures from which more was taken in the week up to today than they yield.
func overdrawn(r *Rule, c *Collection) {
	for _, l := range c.lots() {
		for _, x := range l.Cultures {
			if gives := int(x.Yield.High) * x.AtOnce; gives > 0 && x.Taken > gives {
				c.Add(finding.Finding{Rule: &r.Rule, At: x.Plan.At, Source: r.Source, Limit: "up to " + strconv.Itoa(gives) + " a week of all that yield at once",
					Text:  strconv.Itoa(x.Taken) + " " + l.Many() + " were harvested from " + x.Plan.Name.V + " within a week, more than it yields",
					Write: "how many one yields with you, as yields; in the log how many are left, where that was a slip"})
			}
		}
	}
}
