package check

import (
	"slices"

	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/quantity"
)

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
	e.Add(finding.Finding{Rule: &r.Rule, At: e.Plan.Housing.Vents.At, Text: wet + ", and no air gets in", Limit: "some openings where it is wet", Source: r.Source, Write: e.openings()})
}

// openings is what is to be there where no air gets in.
func (e *Enclosure) openings() string {
	if e.word(schema.FigureVentilation) == "cross" {
		return "openings on opposite sides, and then cross in vents"
	}
	return "some openings, and then some in vents"
}

func staleAir(r *Rule, e *Enclosure) {
	h := e.Plan.Housing
	if e.sealed() != "" || airTwice(h) != "" {
		return // said by wet-sealed, or by air-unclear
	}
	if h.Vents.V == "none" {
		e.Add(finding.Finding{Rule: &r.Rule, At: h.Vents.At, Text: "no air at all gets in", Limit: "some openings, for every animal", Source: r.Source, Write: e.openings()})
		return
	}
	if e.word(schema.FigureVentilation) == "cross" {
		return // said by no-cross-air
	}
	aim := 0.0
	if c := e.Plan.Climate; c != nil && c.Humidity.Set() {
		aim = c.Humidity.V.High
	} else if f := e.figure(schema.FigureHumidityTarget); f != nil {
		aim = f.Range.High
	}
	if aim > dampAir && !h.Vents.At.Written() && h.LidIs("solid") {
		e.Soft(finding.Finding{Rule: &r.Rule, At: h.At, Text: "humidity of " + quantity.Format(aim, quantity.PercentRH) + " is aimed for, and how air gets in is not said",
			Limit: above(), Source: r.Source, Write: "vents, with what openings there are"}, finding.Advice)
	}
}

// airTwice says how lid or walls and vents contradict each other, or "".
func airTwice(h *plan.Housing) string {
	switch {
	case h.Vents.V != "none" && h.Vents.V != "few":
		return ""
	case h.Kind.V == "mesh":
		return "the enclosure is of mesh"
	case h.LidIs("mesh"):
		return "the lid is mesh"
	case h.LidIs("part mesh") && h.Vents.V == "none":
		return "the lid is part mesh"
	}
	return ""
}

func airUnclear(r *Rule, e *Enclosure) {
	h := e.Plan.Housing
	if mesh := airTwice(h); mesh != "" {
		e.Add(finding.Finding{Rule: &r.Rule, At: h.Vents.At, Text: "vents = \"" + h.Vents.V + "\" says that hardly any air gets in, and " + mesh,
			Limit: "one of the two", Source: r.Source, Write: "vents as it is with that lid, or the lid as it is"})
	}
}

func noCrossAir(r *Rule, e *Enclosure) {
	h := e.Plan.Housing
	if e.word(schema.FigureVentilation) != "cross" || h.Vents.Bad || h.Vents.V == "cross" || h.Vents.V == "all" || h.Vents.V == "none" || h.Kind.V == "mesh" ||
		e.sealed() != "" || airTwice(h) != "" {
		return
	}
	f := e.figure(schema.FigureVentilation)
	x := finding.Finding{Rule: &r.Rule, At: h.Vents.At, Text: "the openings of the enclosure are not on opposite sides", Limit: e.limit("openings on opposite sides", f), Source: e.Cite(f), Write: "openings on opposite sides, and then cross in vents"}
	if !h.Vents.Set() {
		x.At, x.Text = h.At, "it is not said that air gets through from side to side"
	}
	// On the ground, and for the small in cups, openings of any kind will do: what harms is air
	// that is wet and still, which air-too-wet judges (common practice, no source).
	high, grown := e.livesHigh(), e.hasGrown()
	switch {
	case h.Vents.V == "top": // air moves under mesh, if not from side to side
		e.Soft(x, finding.Advice)
	case h.Vents.V == "few" && (high || grown && e.hunts()), high && grown:
		e.Add(x)
	case !h.Vents.Set():
		e.Soft(x, finding.Advice)
	}
}

// livesHigh reports whether the species lives above the ground.
func (e *Enclosure) livesHigh() bool {
	w := e.word(schema.FigureLifestyle)
	return w == "tree" || w == "bark"
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
			Write: "most of the mesh covered, and then part mesh in lid"})
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
			e.Add(finding.Finding{Rule: &r.Rule, At: at, Text: "the small animals (" + g.Animals.Name.V + ") may dry up beside openings in the sides", Source: r.Source, Write: "openings in the lid only, and then top in vents_at"})
			return
		}
	}
}
