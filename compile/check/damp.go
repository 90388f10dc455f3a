package check

import (
	"slices"

	"vivary/compile/balance"
	"vivary/compile/climate"
	"vivary/compile/life"
	"vivary/compile/roster"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/schema"
	"vivary/schema/quantity"
	"vivary/schema/wording"
)

// Damp rules compare what the air and the substrate come to with both ends of what the
// species bears. They come after the rules about what is written, which they name as the
// cause where there is one: the same mistake is said once.
var damp = []*Rule{
	{Rule: finding.Rule{ID: "humidity-lost", Severity: finding.Error, Silence: finding.ByReason,
		Title:   "The humidity that is aimed for cannot be held.",
		Why:     "The air that leaves carries more water out than the substrate gives off, or the glass fogs below that humidity and takes the water out of the air.",
		Source:  "water balance (ideal gas), fogging after ISO 13788; air changes are judgement, and so the band is wide",
		Instead: "A more closed lid, a damp substrate instead of spray, or a lower aim."}, Enclosure: humidityLost},
	{Rule: finding.Rule{ID: "air-too-wet", Severity: finding.Error, Silence: finding.ByReason,
		Title:   "The air settles damper than the species bears.",
		Why:     "An animal of dry places gets fungus (mycosis) and mites in wet air, and spiders of the trees and slings have died in wet, still air. Mould grows on what stays above 80 % for weeks; whether mould alone harms is disputed: keepers mostly call it harmless to a healthy animal and a sign of wet, old food and poor air, others call it deadly. It refuses only where the air is too damp at the driest end of what is likely.",
		Source:  "water balance (ideal gas); a dry crust after Penman 1940, from memory, agrees with sand over wet soil (Soil water evaporation suppression by sand mulches); air changes are judgement, and so the band is wide; 80 % for mould: ISO 13788, from memory",
		Instead: "A substrate that is dry on top, more openings, or a smaller dish."}, Enclosure: airTooWet},
	{Rule: finding.Rule{ID: "water-stands", Severity: finding.Error, Silence: finding.ByReason,
		Title:   "More water is brought in than the air can carry out, and the substrate fills.",
		Why:     "At 100 % the air takes no more: what is beyond stays as water, burrows stand in it, and animals die of it or of fungus (mycosis).",
		Source:  "water balance (ideal gas); a substrate takes up water from damp to field capacity (coir 35 to 60 %, judgement); reptilesmagazine.com, on misting systems: too much water in the substrate harms and kills",
		Instead: "Less water, or no amount: water until a squeezed handful holds together and gives no drops."}, Enclosure: waterStands},
	{Rule: finding.Rule{ID: "mist-volume", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "The amount that is misted is far from what the humidity takes.",
		Why:     "What is sprayed has to replace what the air carries out. Far less, and the substrate dries out over weeks; far more, and it gets wetter.",
		Source:  "water balance (ideal gas); air changes are judgement, and so the band is wide",
		Instead: "About the amount that vivary why shows for the enclosure, and the feel of the substrate."}, Enclosure: mistVolume},
}

const (
	// aridAir and aridWet are the humidities, in %, past which air is too damp for a species of
	// dry places whose sheet has no range (common practice, no source; some have 30 %
	// for Hadrurus, to prevent fungus).
	aridAir, aridWet = 60, 75
	// stillAir is the humidity, in %, past which still air has killed those that need it
	// to move (keepers' reports; no experiment).
	stillAir = 80
	// dampHouse is the humidity, in %, past which a room is damper than people's houses
	// are for long (judgement).
	dampHouse = 65
	// gauge is by how much, in % humidity, the likely value may be past a limit before it is
	// said: no gauge of a keeper shows less.
	gauge = 5
	// floodedIn is within how many days water stands where it refuses, at the favourable
	// end; wetIn where it is likely, and a caution. Whoever mists daily in ordinary
	// volumes comes past wetIn (judgement).
	floodedIn, wetIn = 30, 21
	// film is what a spraying of no stated amount leaves on the floor, in ml for each cm², where it is
	// to be reckoned: 0.4 mm, 50 ml in 40 x 30 cm (judgement).
	film = 0.04
	// hardly is the part of the least that the air carries out below which what is misted is
	// next to nothing (judgement).
	hardly = 0.25
)

// poured is the water that the care brings in.
func (e *Enclosure) poured() roster.Poured {
	if !e.watered {
		e.water, e.watered = roster.PouredInto(e.Series, e.Horizon, balance.DishHolds(e.Plan)), true
	}
	return e.water
}

// once says a finding together with those of the rules that are its cause, or of which it
// is the cause: the worst of them is said, and of the same severity what was there first.
func (e *Enclosure) once(f *finding.Finding, what string, rules ...string) {
	f.Once, f.Own, f.Strict = what, true, 2
	for i := range e.found.All {
		if x := &e.found.All[i]; slices.Contains(rules, x.Rule.ID) {
			x.Once, x.Own, x.Strict = what, true, 1
		}
	}
}

// tooWet is once for what is too wet: what is planned too dry is another mistake.
func (e *Enclosure) tooWet(f *finding.Finding) {
	causes := []string{"stale-air", "wet-sealed", "no-cross-air", "misted-too-often", "air-too-wet", "water-stands"}
	if e.Plan.Housing.Moisture.V != "dry" {
		causes = append(causes, "substrate-moisture")
	}
	if most, _, _ := e.tooDamp(); e.Plan.Climate != nil && e.Plan.Climate.Humidity.V.High > most {
		causes = append(causes, "humidity-unusual", "humidity-harmful")
	}
	e.once(f, "too wet", causes...)
}

// tooDry is tooWet for what is too dry.
func (e *Enclosure) tooDry(f *finding.Finding) {
	causes := []string{"mesh-top", "humidity-lost"}
	if e.Plan.Housing.Moisture.V == "dry" {
		causes = append(causes, "substrate-moisture")
	}
	e.once(f, "too dry", causes...)
}

// hasNeed reports whether the sheet states a need of any who live here.
func (e *Enclosure) hasNeed(what *schema.NeedName) bool {
	for _, n := range e.Sheet.Needs {
		if n.What != what {
			continue
		}
		for _, g := range e.Life.Groups {
			if e.count(g) > 0 && (len(n.Stages) == 0 || plan.Lists(n.Stages, e.stage(g))) {
				return true
			}
		}
	}
	return false
}

func humidityLost(r *Rule, e *Enclosure) {
	p, ok := e.report()
	if !ok || e.word(schema.FigureMoisture) == "arid" {
		return
	}
	w := &p.Water
	verdict := min(w.Supply, w.Ceiling)
	if verdict == climate.Holds || verdict == 0 {
		return
	}
	low := climate.Percent(p.RH.Low)
	if verdict == climate.MayNotHold && w.Unmisted.Likely >= low && w.FogsAt.Likely >= low {
		return // likely held without any misting
	}
	water := e.poured()
	misted := water.Until || water.Day > 0
	if !misted && e.hasNeed(schema.NeedMoisture) {
		return // said by the proof
	}
	if hard := e.figure(schema.FigureHumidityHard); misted && e.word(schema.FigureDrinks) == "droplets" && e.word(schema.FigureVentilation) == "cross" &&
		(hard == nil || w.Unmisted.Likely >= climate.Percent(hard.Range.Low)) {
		return // it drinks what is sprayed, and lives in moving air: between two sprayings the air is that of the room
	}
	at := e.Plan.Housing.At
	if e.Plan.Climate != nil && e.Plan.Climate.Humidity.Set() {
		at = e.Plan.Climate.Humidity.At
	}
	least := quantity.Format(p.RH.Low, quantity.PercentRH)
	f := finding.Finding{Rule: &r.Rule, At: at, Source: r.Source, Write: "a more closed lid, a damp substrate, or a lower humidity; vivary why " + e.Plan.Name.V + " shows the balance"}
	if w.Ceiling <= w.Supply && w.Ceiling != 0 {
		f.Text = "the coldest wall fogs at about " + wording.Band(w.FogsAt, "%") + " humidity, and " + least + " is the least that is aimed for"
		f.Limit = "what the glass does not take out of the air, with " + e.temperature(p.Inside()) + " inside and " + e.temperature(p.Box.Room.Middle()) + " outside"
	} else {
		f.Text = "at " + least + " the air carries out about " + wording.Amount(w.Needed, e.in(quantity.Millilitre)) + " of water a day, and dish and substrate give off " + wording.Amount(w.Sustained, e.in(quantity.Millilitre))
		f.Limit = "what evaporates inside; spray alone is gone in " + wording.Band(w.MistFades, "min")
	}
	e.tooDry(&f)
	misted = water.Until || climate.GramPerDay(water.Day) >= w.Least.Low
	switch {
	case w.Ceiling == climate.Holds && misted && p.Box.Ventilation < climate.FullMeshTop:
		// Whoever mists until it is damp, or enough, brings what the air carries out.
		if verdict == climate.CannotHold {
			e.Soft(f, finding.Advice)
		}
	case verdict == climate.MayNotHold:
		e.Soft(f, finding.Advice)
	case p.Box.Ventilation >= climate.FullMeshTop:
		e.Add(f)
	default:
		// How much air passes a partly closed lid is judgement, and a gauge decides.
		e.Soft(f, finding.Caution)
	}
}

// tooDamp returns the humidity past which the air is too damp for the species, that past
// which it refuses, and the figure that says so, if one does.
func (e *Enclosure) tooDamp() (caution, refuse float64, f *plan.Figure) {
	soft, hard := e.figure(schema.FigureHumiditySoft), e.figure(schema.FigureHumidityHard)
	switch {
	case soft != nil && soft.OfType == "":
		return soft.Range.High, soft.Range.High, soft
	case soft != nil && hard != nil: // between the two it is not known for the species
		return soft.Range.High, hard.Range.High, soft
	case soft != nil:
		return soft.Range.High, 100, soft
	case e.word(schema.FigureMoisture) == "arid":
		return aridAir, aridWet, nil
	}
	return 100, 100, nil
}

// littleAir reports whether the openings are said to be none or few.
func littleAir(h *plan.Housing) bool {
	return (h.Vents.V == "none" || h.Vents.V == "few") && !meshed(h)
}

// airSaid reports whether it is said how air gets in, and in one way only.
func airSaid(h *plan.Housing) bool {
	if !h.Vents.Set() {
		return meshed(h)
	}
	return !meshed(h) || h.Vents.V != "none" && h.Vents.V != "few"
}

func meshed(h *plan.Housing) bool {
	return h.Kind.V == "mesh" || h.LidIs("mesh") || h.LidIs("part mesh")
}

// airTooWet goes by the grown: what a sheet says of humidity is for them, and the young are
// kept damper. Only of a species of dry places it looks at juveniles too.
func airTooWet(r *Rule, e *Enclosure) {
	p, ok := e.report()
	if !ok || p.Water.Verdict == 0 || e.word(schema.FigureDrinks) == "soil" {
		return // those that drink from the soil live in its damp part
	}
	h, arid := e.Plan.Housing, e.word(schema.FigureMoisture) == "arid"
	water := e.poured()
	day := 0.0
	if arid {
		// Spray that comes and goes is what a damp species lives with. A dry one has no
		// damp substrate that it would only refill. Who does not say how much sprays as usual.
		day = water.Day
		if !e.hasNeed(schema.NeedMoisture) { // one that has it wets a part: a moist box
			day += water.Times * film * float64(p.Box.Inside.FloorArea()) * 1e4
		}
	}
	most, refused, f := e.tooDamp()
	air := p.Own(day, most)
	driest, room := p.OfRoom()
	bears := refused
	if hard := e.figure(schema.FigureHumidityHard); hard != nil {
		bears = hard.Range.High
	}
	grown := e.hasGrown() || arid && !e.all(small)
	stifles := max(stillAir, climate.Percent(most)) // a sheet that has more knows better
	still := e.word(schema.FigureVentilation) == "cross" && littleAir(h) && air.Likely > stifles && (e.livesHigh() || !e.all(small))
	sling := e.drowned() && littleAir(h) && air.Likely > stillAir
	if sling {
		still, stifles = true, stillAir
	}
	var how finding.Severity
	own := true
	switch {
	case sling, still && air.Low > stifles, air.Low > climate.Percent(refused) && (grown || arid):
		how = r.Severity
	case grown && driest > climate.Percent(bears):
		how, own = r.Severity, false
	case still, air.Likely > climate.Percent(most)+gauge && grown && !e.tubbed():
		how = finding.Caution
	case grown && room > max(climate.Percent(most)+gauge, dampHouse):
		how, own = finding.Caution, false
	default:
		return
	}
	if own && airTwice(h) != "" {
		return // said by air-unclear
	}
	x := finding.Finding{Rule: &r.Rule}
	switch {
	case still && own:
		x.Limit, x.Source = wording.AtMost(float64(stifles), quantity.PercentRH)+" where little air gets through, for those that need it to move and for the smallest", "keepers' reports of deaths in wet, still air; no experiment"
	case f != nil:
		x.Limit, x.Source = e.atMost(most, quantity.PercentRH, f), e.Cite(f)
	default:
		x.Limit, x.Source = wording.AtMost(most, quantity.PercentRH)+" for species of dry places", "common practice, no source"
	}
	if !own {
		x.At, x.Text = e.Plan.Place.Humidity.At, "the air of the room alone comes to about "+quantity.Format(float64(room), quantity.PercentRH)+" inside"
		x.Write = "a drier room: nothing in the enclosure makes its air drier than that"
		e.tooWet(&x)
		e.soften(x, how)
		return
	}
	if !h.Moisture.Set() || !airSaid(h) {
		// What is not said, or said in two ways, is taken to be as usual: that may be wrong.
		if how < r.Severity {
			return
		}
		how = finding.Advice
	}
	x.Text = "it settles at about " + wording.Band(air, "%") + " humidity"
	if day > 0 {
		x.Text = "with the water that is brought in " + x.Text
	}
	if usual := min(balance.House.High, most); e.Plan.Place.Humidity.V.High > usual {
		x.Text += ", in a room that is no damper than " + quantity.Format(usual, quantity.PercentRH)
	}
	if still {
		x.Text += ", and hardly any air gets in"
	}
	x.At, x.Write = e.drier(p.Box.Substrate.Moisture)
	if unwatered := p.Own(0, most); day > 0 && !still && unwatered.Likely <= climate.Percent(most)+gauge {
		x.At, x.Write = water.At, "less water, or more seldom, until all has dried again; a dish is enough to drink from"
	}
	e.tooWet(&x)
	e.soften(x, how)
}

// tubbed reports whether a species of damp places is on damp soil in a tub with a few
// holes, as many are kept (common practice, no source).
func (e *Enclosure) tubbed() bool {
	h := e.Plan.Housing
	return e.word(schema.FigureMoisture) == "damp" && h.Moisture.V != "wet" && h.Vents.V != "none"
}

// drowned reports whether some of the smallest of a kind that hunts are on soil that is wet, or
// in a box into which no air gets. They lie on the soil, and cannot get away from it.
func (e *Enclosure) drowned() bool {
	h := e.Plan.Housing
	return e.hunts() && (h.Moisture.V == "wet" || h.Vents.V == "none") &&
		slices.ContainsFunc(e.Life.Groups, func(g *life.Group) bool { return small(e.stage(g)) && e.count(g) > 0 && !g.Beside })
}

// soften adds a finding at a severity up to the rule's own.
func (e *Enclosure) soften(f finding.Finding, how finding.Severity) {
	if how == f.Rule.Severity {
		e.Add(f)
		return
	}
	e.Soft(f, how)
}

// drier returns what to change for drier air, and where that stands.
func (e *Enclosure) drier(m climate.Moisture) (at source.Place, write string) {
	const open = "more openings, a thicker layer that is dry on top, or a smaller dish"
	h := e.Plan.Housing
	dry, vents := "", ""
	if m > climate.MoistBelow {
		dry = "the substrate dry on top and damp below"
	}
	if e.word(schema.FigureVentilation) == "cross" && h.Vents.V != "cross" && h.Vents.V != "all" {
		vents = "openings on opposite sides"
	} else if littleAir(h) || !h.Vents.Set() {
		vents = "some more openings"
	}
	switch {
	case dry != "" && vents != "":
		return h.Moisture.At, dry + ", and " + vents
	case dry != "":
		return h.Moisture.At, dry
	case vents != "" && h.Vents.Set():
		return h.Vents.At, vents
	case vents != "":
		return h.At, vents
	case h.Moisture.Set():
		return h.Moisture.At, open
	}
	return h.At, open
}

func waterStands(r *Rule, e *Enclosure) {
	water := e.poured()
	p, ok := e.report()
	if water.Day <= 0 || !ok || p.Water.Verdict == 0 {
		return
	}
	w := p.Watered(water.Day)
	if !(w.Stands.Likely < floodedIn) {
		e.atOnce(r, p, &w)
		return
	}
	after := "after about " + wording.Lasting(climate.InMinutes(w.Stands))
	if w.Spare.High <= 0 {
		after = "on the floor"
	}
	f := finding.Finding{Rule: &r.Rule, At: water.At, Source: r.Source,
		Text:  e.about(water.Day) + " of water a day are brought in, and at 100 % the air carries out " + wording.Amount(w.Saturated, e.in(quantity.Millilitre)) + ": the rest stays, and water stands " + after,
		Limit: "what the air carries out and the substrate takes up; a squeezed handful holds together and gives no drops",
		Write: e.atMostDaily(&p.Water) + "or leave out the amount and water until it is damp"}
	e.tooWet(&f)
	bare := w.Spare.High <= 0
	switch {
	case bare && !drowns(&w, p.Box.Inside.FloorArea()): // on a bare floor it is seen, and wiped up
		if w.Added > w.Saturated.High {
			e.Soft(f, finding.Caution)
		} else {
			e.Soft(f, finding.Advice)
		}
	case w.Stands.High < floodedIn && e.atOnce(r, p, &w):
	case w.Stands.High < floodedIn:
		e.Add(f)
	case e.atOnce(r, p, &w):
	case w.Stands.Likely < wetIn:
		e.Soft(f, finding.Caution)
	default:
		e.Soft(f, finding.Advice)
	}
}

// atOnce judges the most that is poured in on one day by what the substrate takes up, and
// reports whether that is what is wrong: a month of it would not be.
func (e *Enclosure) atOnce(r *Rule, p *balance.Report, w *climate.Watered) bool {
	water := e.poured()
	once := water.Once / 1000
	if w.Spare.High <= 0 || once <= float64(w.Spare.Low) || water.Once < 10*water.Day {
		return false
	}
	f := finding.Finding{Rule: &r.Rule, At: water.OnceAt, Source: r.Source,
		Text:  e.about(water.Once) + " of water come in on one day, and the substrate takes up " + wording.Amount(millilitres(w.Spare), e.in(quantity.Litre)) + ": the rest stands in it",
		Limit: "what the substrate takes up; a squeezed handful holds together and gives no drops",
		Write: "less at a time, and more often"}
	e.tooWet(&f)
	if once > float64(w.Spare.High) {
		e.Add(f)
	} else {
		e.Soft(f, finding.Caution)
	}
	return true
}

// drowns reports whether water stands 5 mm deep on a bare floor within a day (judgement).
func drowns(w *climate.Watered, floor climate.SquareMetre) bool {
	const film = 5000 // g/m²
	return float64(w.Added-w.Saturated.High) > film*float64(floor)
}

func mistVolume(r *Rule, e *Enclosure) {
	water := e.poured()
	p, ok := e.report()
	if water.Day <= 0 || !ok || p.Water.Verdict == 0 || e.word(schema.FigureMoisture) == "arid" || p.Watered(water.Day).Stands.Likely < floodedIn {
		return // a species of dry places is judged by how often, and by the air
	}
	w := &p.Water
	f := finding.Finding{Rule: &r.Rule, At: water.At, Source: r.Source, Text: e.about(water.Day) + " of water a day are brought in, and " + p.RH.String() + " takes about " + wording.Amount(w.Misted, e.in(quantity.Millilitre)),
		Limit: "as much as the air carries out beyond what the dish gives off"}
	const feel = "feel the substrate: a squeezed handful holds together and gives no drops"
	switch day := climate.GramPerDay(water.Day); {
	case w.Most.High <= 0: // drier than the room is aimed for: no volume fits that
		return
	case day > w.Most.High:
		f.Write = e.atMostDaily(w) + "and " + feel
		e.tooWet(&f)
	case day < w.Least.Low && !water.Until && e.word(schema.FigureMoisture) == "damp":
		f.Write = "about " + wording.Amount(w.Misted, e.in(quantity.Millilitre)) + " a day in all, and " + feel
		e.tooDry(&f)
		if day < hardly*w.Misted.Low && !e.all(small) {
			e.Add(f)
			return
		}
	default:
		return
	}
	e.Soft(f, finding.Advice)
}

// atMostDaily is the most that the high end of the range may take, as the beginning of what
// to write.
func (e *Enclosure) atMostDaily(w *climate.Water) string {
	if w.Most.High < 1 {
		return "no misting, "
	}
	return "at most " + quantity.FormatAtMost(float64(w.Most.High), e.in(quantity.Millilitre)) + " a day in all, "
}

// about is a volume of water in the keeper's unit.
func (e *Enclosure) about(ml float64) string {
	return quantity.Format(quantity.Significant(ml, 2), e.in(quantity.Millilitre))
}

// millilitres is a band of litres in the canonical unit of volumes.
func millilitres[T ~float64](b climate.Band[T]) climate.Band[float64] {
	return climate.Band[float64]{Low: 1000 * float64(b.Low), Likely: 1000 * float64(b.Likely), High: 1000 * float64(b.High)}
}
