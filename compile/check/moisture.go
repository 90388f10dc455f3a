package check

import (
	"slices"
	"strconv"

	"vivary/compile/roster"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/quantity"
	"vivary/schema/wording"
)

// A species of damp places that gets no misting or watering at all is found by the
// proof, as is a gap between two of them.
var moisture = []*Rule{
	{Enclosure: humidityHarms, Rule: finding.Rule{ID: "humidity-harmful", Severity: finding.Error, Silence: finding.ByReason,
		Title:   "A humidity is planned that the species does not bear.",
		Why:     "A dry animal sticks in its moult; wet air brings mites, and fungus (mycosis) to animals of dry places.",
		Source:  "a species sheet that states a hard limit; scorpionforum.darkbb.com/t1846-molting-information-sheet",
		Instead: "Plan a humidity within the limits."}},
	{Enclosure: noWater, Rule: finding.Rule{ID: "no-water", Severity: finding.Error, Silence: finding.ByReason,
		Title:   "There is no water dish for a species that drinks from one.",
		Why:     "Some species take all their water from damp soil, food or droplets. This one is not known to.",
		Source:  "the species sheet",
		Instead: "A shallow dish that always holds water."}},
	{Enclosure: substrateMoisture, Rule: finding.Rule{ID: "substrate-moisture", Severity: finding.Error, Silence: finding.ByReason,
		Title:   "The substrate is kept dry for a species of damp places, or wet for one of dry places.",
		Why:     "A dry animal sticks in its moult. A desert animal on wet soil is overrun by mites.",
		Source:  "the species sheet; fr.scribd.com/document/79285516, a college's procedure on wet instead of humid",
		Instead: "Damp below for the one, dry for the other."}},
	{Enclosure: humidityUnusual, Rule: finding.Rule{ID: "humidity-unusual", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "A humidity is planned outside of what is good for the species.",
		Why:     "Keepers' figures differ. What none of them gives wants a reason.",
		Source:  "the species sheet",
		Instead: "Plan nearer to what is aimed for; a part of the year is a season block."}},
	{Enclosure: aridMist, Rule: finding.Rule{ID: "misted-too-often", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "A species of dry places is misted or watered often.",
		Why:     "Wet soil brings mites, and the animal cannot get away from it.",
		Source:  "fr.scribd.com/document/79285516, a college's procedure; the figure of 7 days is common practice, no source",
		Instead: "Mist rarely, and let all dry again. Water in a dish is enough."}},
	{Enclosure: wetSealed, Rule: finding.Rule{ID: "wet-sealed", Severity: finding.Error, Silence: finding.ByReason,
		Title:   "It is kept wet, and no air gets in.",
		Why:     "Keepers blame still, wet air for disease and deaths of spiders. Mould comes within days; whether mould alone harms is disputed.",
		Source:  "common practice; thetarantulacollective.com, Caribena versicolor, revised March 2025",
		Instead: "Openings, low on one side and high on the other, or soil that dries on top."}},
	{Enclosure: staleAir, Rule: finding.Rule{ID: "stale-air", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "Damp air is aimed for, and hardly any air gets through.",
		Why:     "Stagnant wet air grows mould. A laboratory's frames warped and moulded. Whether mould harms a healthy animal is disputed; it shows that the air is poor.",
		Source:  "freethoughtblogs.com/pharyngula, a university's spider laboratory; thetarantulacollective.com",
		Instead: "Hold the damp in the substrate, and let air through."}},
	{Enclosure: noCrossAir, Rule: finding.Rule{ID: "no-cross-air", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "A species that needs moving air has no openings on opposite sides.",
		Why:     "Still, wet air harms tree spiders and mantises more than dry air does: it brings mould and disease.",
		Source:  "the species sheet; thetarantulacollective.com, Caribena versicolor, revised March 2025",
		Instead: "Openings low on one side and high on the other."}},
	{Enclosure: meshTop, Rule: finding.Rule{ID: "mesh-top", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "A mesh lid lies over a species of damp places.",
		Why:     "Warm, damp air rises and leaves through the lid, and the substrate dries faster than it is misted.",
		Source:  "common practice, no source",
		Instead: "A solid lid with some holes, or cover most of the mesh and write \"part mesh\"."}},
	{Enclosure: youngDraught, Rule: finding.Rule{ID: "young-draught", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "Small young are kept in an enclosure with openings in its sides.",
		Why:     "A breeder found hers dried up at the vents.",
		Source:  "virginiacheeseman.co.uk/deserted, a professional breeder's diary",
		Instead: "Openings in the lid, until they have grown."}},
	{Enclosure: dishDeep, Rule: finding.Rule{ID: "dish-deep", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "The water dish is deep for the smallest animals.",
		Why:     "They drown in it.",
		Source:  "common practice, no source: no deeper than the animal is high, taken as a quarter of its length",
		Instead: "A shallower dish, or pebbles in it."}},
	{Enclosure: gaugeUntested, Rule: finding.Rule{ID: "gauge-untested", Severity: finding.Advice, Silence: finding.ByReason,
		Title:   "The gauges have not been tested for a year.",
		Why:     "Cheap hygrometers drift.",
		Source:  "hermitcrabassociation.com/phpBB/viewtopic.php?p=852642, on the salt test",
		Instead: "Test it over wet salt, which holds 75 %, and write the day."}},
	{Enclosure: humidityExact, Rule: finding.Rule{ID: "humidity-exact", Severity: finding.Advice, Silence: finding.ByReason,
		Title:   "Humidity is planned as one exact figure.",
		Why:     "No keeper's gauge shows it that well, and no enclosure holds it.",
		Source:  "tomsbigspiders.wordpress.com, on care sheets and their figures",
		Instead: "A band, or a substrate that is damp below."}},
}

// humidities calls use for every humidity that the plan states.
func (e *Enclosure) humidities(use func(words string, season *plan.Season, h plan.Written[quantity.Range])) {
	if c := e.Plan.Climate; c != nil && c.Humidity.Set() {
		use("humidity", nil, c.Humidity)
	}
	for _, s := range e.Plan.Seasons {
		if s.Climate != nil && s.Climate.Humidity.Set() {
			use("humidity of season "+strconv.Quote(s.Name.V), s, s.Climate.Humidity)
		}
	}
}

func humidityHarms(r *Rule, e *Enclosure) {
	hard := e.figure(schema.FigureHumidityHard)
	if hard == nil {
		return
	}
	e.humidities(func(words string, _ *plan.Season, h plan.Written[quantity.Range]) {
		if !hard.Range.Encloses(h.V) {
			e.Add(finding.Finding{Rule: &r.Rule, At: h.At, Text: words + " is planned at " + h.V.String() + ", beyond what " + e.Sheet.Name.V + " bears",
				Limit: e.within(hard.Range, h.V.Unit, hard), Source: e.Cite(hard), Write: e.humidityInstead()})
		}
	})
}

func humidityUnusual(r *Rule, e *Enclosure) {
	soft, hard := e.figure(schema.FigureHumiditySoft), e.figure(schema.FigureHumidityHard)
	if soft == nil {
		return
	}
	e.humidities(func(words string, s *plan.Season, h plan.Written[quantity.Range]) {
		if s != nil || soft.Range.Encloses(h.V) || hard != nil && !hard.Range.Encloses(h.V) {
			return
		}
		f := soft
		if t := e.figure(schema.FigureHumidityTarget); t != nil {
			f = t // which says what is disputed
		}
		dry := "drier"
		if h.V.High > soft.Range.High {
			dry = "damper"
		}
		e.Add(finding.Finding{Rule: &r.Rule, At: h.At, Text: words + " is planned at " + h.V.String() + ": " + dry + " than is good for " + e.Sheet.Name.V,
			Limit: e.within(soft.Range, h.V.Unit, soft), Source: e.Cite(f), Write: e.humidityInstead()})
	})
}

func (e *Enclosure) humidityInstead() string {
	f := e.figure(schema.FigureHumidityTarget)
	if f == nil {
		f = e.figure(schema.FigureHumiditySoft)
	}
	if f == nil {
		return ""
	}
	return "humidity = \"" + f.Range.String() + "\""
}

func humidityExact(r *Rule, e *Enclosure) {
	e.humidities(func(words string, _ *plan.Season, h plan.Written[quantity.Range]) {
		if h.V.Single() {
			e.Add(finding.Finding{Rule: &r.Rule, At: h.At, Text: words + " is planned at exactly " + h.V.String(), Source: r.Source,
				Write: "humidity = \"" + quantity.FormatRange(max(h.V.Low-5, 0), min(h.V.High+5, 100), h.V.Unit) + "\""})
		}
	})
}

func noWater(r *Rule, e *Enclosure) {
	w := e.Plan.Housing.Water
	if w.Set() && w.V == "none" && e.word(schema.FigureDrinks) == "dish" {
		f := e.figure(schema.FigureDrinks)
		e.Add(finding.Finding{Rule: &r.Rule, At: w.At, Text: "there is no dish, and " + e.Sheet.Name.V + " drinks from one", Limit: e.limit("drinks from a dish", f), Source: e.Cite(f), Write: "water = \"dish\""})
	}
}

func substrateMoisture(r *Rule, e *Enclosure) {
	m := e.Plan.Housing.Moisture
	if !m.Set() {
		return
	}
	text, write := "", ""
	switch e.word(schema.FigureMoisture) {
	case "damp":
		if m.V == "dry" {
			text, write = "the substrate is kept dry through, and "+e.Sheet.Name.V+" depends on damp", "moisture = \"damp below\""
		}
	case "arid":
		if m.V == "damp" || m.V == "wet" {
			text, write = "the substrate is kept "+m.V+" through, and "+e.Sheet.Name.V+" lives in dry places", "moisture = \"dry\""
		}
	}
	if text != "" {
		f := e.figure(schema.FigureMoisture)
		e.Add(finding.Finding{Rule: &r.Rule, At: m.At, Text: text, Limit: e.limit(f.Value.V, f), Source: e.Cite(f), Write: write})
	}
}

// usualMistGap is the least number of days between two mistings of a species of
// dry places where its sheet has none (common practice, no source).
const usualMistGap = 7

func aridMist(r *Rule, e *Enclosure) {
	if e.word(schema.FigureMoisture) != "arid" {
		return
	}
	f := e.figure(schema.FigureMistIntervalMin)
	least := usualMistGap
	if f != nil {
		least = int(f.Range.Low / (24 * 60))
	}
	for i := range e.Series {
		s := &e.Series[i]
		if s.Kind.Needs != schema.NeedMoisture || s.Timing == nil || s.FromSheet {
			continue
		}
		if gap := shortest(s, e.Horizon.Today); gap > 0 && gap < least {
			x := finding.Finding{Rule: &r.Rule, At: s.Origin, Text: s.Name + " comes up every " + wording.Step(gap) + ", and " + e.Sheet.Name.V + " lives in dry places",
				Limit: wording.Days(least) + " between two at the least", Source: r.Source, Write: "every = \"" + wording.Days(least) + "\", or longer"}
			if f != nil {
				x.Limit, x.Source = e.limit(x.Limit, f), e.Cite(f)
			}
			e.Add(x)
		}
	}
}

// shortest is the least number of days between two occasions of a series, or 0.
func shortest(s *roster.Entry, today int) int {
	least := 0
	last := s.Days.Next(today)
	for d := last; d >= 0; last = d {
		if d = s.Days.Next(d + 1); d >= 0 && (least == 0 || d-last < least) {
			least = d - last
		}
	}
	return least
}

func above() string {
	return "some openings above " + quantity.Format(dampAir, quantity.PercentRH)
}

// dampAir is the relative humidity, in %, above which still air is warned of.
const dampAir = 75

// sealed says what is wet in a box without openings, or "". Of those that need moving air
// a damp that is planned counts too.
func (e *Enclosure) sealed() string {
	h := e.Plan.Housing
	if h.Vents.V != "none" || h.Kind.V == "mesh" || h.LidIs("mesh") || h.LidIs("part mesh") {
		return ""
	}
	c := e.Plan.Climate
	switch {
	case h.Moisture.V == "wet":
		return "the substrate is kept wet"
	case e.word(schema.FigureVentilation) == "cross" && c != nil && c.Humidity.Set() && c.Humidity.V.High > dampAir:
		return "humidity of " + quantity.Format(c.Humidity.V.High, quantity.PercentRH) + " is planned"
	}
	return ""
}

func wetSealed(r *Rule, e *Enclosure) {
	wet := e.sealed()
	if wet == "" {
		return
	}
	write := "vents = \"some\""
	if e.word(schema.FigureVentilation) == "cross" {
		write = "vents = \"cross\""
	}
	e.Add(finding.Finding{Rule: &r.Rule, At: e.Plan.Housing.Vents.At, Text: wet + ", and no air gets in", Limit: "some openings where it is wet", Source: r.Source, Write: write})
}

func staleAir(r *Rule, e *Enclosure) {
	h := e.Plan.Housing
	if e.word(schema.FigureVentilation) == "cross" || e.sealed() != "" {
		return // said by no-cross-air, or by wet-sealed
	}
	aim := 0.0
	if c := e.Plan.Climate; c != nil && c.Humidity.Set() {
		aim = c.Humidity.V.High
	} else if f := e.figure(schema.FigureHumidityTarget); f != nil {
		aim = f.Range.High
	}
	switch {
	case h.Vents.V == "none":
		e.Add(finding.Finding{Rule: &r.Rule, At: h.Vents.At, Text: "no air at all gets in", Limit: "some openings, for every animal", Source: r.Source, Write: "vents = \"some\""})
	case aim <= dampAir:
	case h.Vents.V == "few":
		e.Add(finding.Finding{Rule: &r.Rule, At: h.Vents.At, Text: "humidity of " + quantity.Format(aim, quantity.PercentRH) + " is aimed for, and hardly any air gets in",
			Limit: above(), Source: r.Source, Write: "vents = \"some\""})
	case !h.Vents.At.Written() && h.LidIs("solid"):
		e.Soft(finding.Finding{Rule: &r.Rule, At: h.At, Text: "humidity of " + quantity.Format(aim, quantity.PercentRH) + " is aimed for, and how air gets in is not said",
			Limit: above(), Source: r.Source, Write: "vents = \"some\", or what they are"}, finding.Advice)
	}
}

func noCrossAir(r *Rule, e *Enclosure) {
	h := e.Plan.Housing
	if e.word(schema.FigureVentilation) != "cross" || h.Vents.Bad || h.Vents.V == "cross" || h.Vents.V == "all" || h.Kind.V == "mesh" || e.sealed() != "" {
		return
	}
	f := e.figure(schema.FigureVentilation)
	x := finding.Finding{Rule: &r.Rule, At: h.Vents.At, Text: "the openings of the enclosure are not on opposite sides", Limit: e.limit("openings on opposite sides", f), Source: e.Cite(f), Write: "vents = \"cross\""}
	if !h.Vents.Set() {
		x.At, x.Text = h.At, "it is not said that air gets through from side to side"
	}
	e.Add(x)
}

func meshTop(r *Rule, e *Enclosure) {
	h := e.Plan.Housing
	if e.word(schema.FigureMoisture) == "damp" && h.Lid.Set() && h.LidIs("mesh") {
		f := e.figure(schema.FigureMoisture)
		text := "the damp that " + e.Sheet.Name.V + " depends on leaves through a mesh lid"
		for _, x := range e.heaters() {
			if x.Place.V == "above" && !x.Tube() {
				text += ", and the " + x.Name.V + " above dries it: air that is 10 C warmer is at little more than half the humidity"
				break
			}
		}
		e.Add(finding.Finding{Rule: &r.Rule, At: h.Lid.At, Text: text, Limit: e.limit("damp", f), Source: r.Source,
			Write: "lid = \"part mesh, latched\", with most of it covered"})
	}
}

func youngDraught(r *Rule, e *Enclosure) {
	h := e.Plan.Housing
	at := h.Vents.At
	side := h.Vents.V == "cross" || h.Vents.V == "all"
	if h.VentsAt.Set() { // it says where they are
		side, at = slices.Contains(h.VentsAt.V, "side"), h.VentsAt.At
	}
	if !side || e.word(schema.FigureVentilation) == "cross" || e.word(schema.FigureMoisture) == "arid" {
		return
	}
	for _, g := range e.Life.Groups {
		if small(e.stage(g)) && e.count(g) > 0 && !g.Beside {
			e.Add(finding.Finding{Rule: &r.Rule, At: at, Text: "the small animals (" + g.Animals.Name.V + ") may dry up beside openings in the sides", Source: r.Source, Write: "vents_at = \"top\""})
			return
		}
	}
}

func dishDeep(r *Rule, e *Enclosure) {
	const share = 0.25
	d := e.Plan.Housing.DishDepth
	if !d.Set() {
		return
	}
	for _, g := range e.Life.Groups {
		stage := e.stage(g)
		if !small(stage) && stage != "juvenile" || e.count(g) == 0 {
			continue
		}
		long, known := e.bodyLength(g)
		if !known || d.V.Value <= long.Low*share {
			continue
		}
		e.Add(finding.Finding{Rule: &r.Rule, At: d.At, Text: g.Animals.Name.V + " of " + quantity.Format(long.Low, d.V.Unit) + " may drown in a dish " + d.V.String() + " deep",
			Limit: wording.AtMost(long.Low*share, d.V.Unit), Source: r.Source, Write: "dish_depth = \"" + quantity.FormatAtMost(long.Low*share, d.V.Unit) + "\", or pebbles in the dish"})
		return
	}
}

func gaugeUntested(r *Rule, e *Enclosure) {
	c := e.Plan.Climate
	if c == nil || !c.GaugeTested.Set() {
		return
	}
	last := c.GaugeTested.V
	for _, x := range e.Plan.Care {
		if on, ok := e.Life.Done[x.Name.V]; ok && x.What() == schema.KindCalibrate {
			last = max(last, on)
		}
	}
	if on, ok := e.Life.Done["calibrate"]; ok {
		last = max(last, on)
	}
	if e.Today-last > 365 {
		e.Add(finding.Finding{Rule: &r.Rule, At: c.GaugeTested.At, Text: "the gauges were last tested on " + last.Words(), Limit: "once a year", Source: r.Source, Write: "care \"calibrate\" { every = \"6 months\" }"})
	}
}
