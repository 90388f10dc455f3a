package check

import (
	"vivary/compile/balance"
	"vivary/compile/climate"
	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/quantity"
	"vivary/schema/wording"
)

// Climate rules compare what the plan aims for with what its devices and its room
// can do. An error needs even the favourable end of the band to fail; where only
// the unfavourable end fails, it is a caution.
var physics = []*Rule{
	{Rule: finding.Rule{ID: "humidity-lost", Severity: finding.Error, Silence: finding.ByReason,
		Title:   "The humidity that is aimed for cannot be held.",
		Why:     "The air that leaves carries more water out than the substrate gives off, or the glass fogs below that humidity and takes the water out of the air.",
		Source:  "water balance (ideal gas), fogging after ISO 13788; air changes are judgement, and so the band is wide",
		Instead: "A more closed lid, a damp substrate instead of spray, or a lower aim."}, Enclosure: humidityLost},
}

// report returns the physics of the enclosure, worked out once for all its rules.
func (e *Enclosure) report() (*balance.Report, bool) {
	if !e.reported {
		e.reported = true
		e.known = e.balance.Read(e.Collection.Plan, e.Plan, e.Life)
	}
	return &e.balance, e.known
}

func (e *Enclosure) temperature(t climate.Celsius) string {
	return quantity.Format(float64(t), e.Plan.Degrees())
}

// unsure adds a finding for something that may not hold: a caution where the
// likely value fails, advice where only the unfavourable end does. Bands are so
// wide that a caution for the latter would stand on every plan.
func (e *Enclosure) unsure(f finding.Finding, likelyHolds bool) {
	if likelyHolds {
		e.Soft(f, finding.Advice)
		return
	}
	e.Soft(f, finding.Caution)
}

func humidityLost(r *Rule, e *Enclosure) {
	p, ok := e.report()
	if !ok || e.word(schema.FigureMoisture) == "arid" || p.Water.Verdict == climate.Holds || p.Water.Verdict == 0 {
		return
	}
	low := climate.Percent(p.RH.Low)
	if p.Water.Verdict == climate.MayNotHold && p.Water.Unmisted.Likely >= low && p.Water.FogsAt.Likely >= low {
		return // likely held without any misting
	}
	at := e.Plan.Housing.At
	if e.Plan.Climate != nil && e.Plan.Climate.Humidity.Set() {
		at = e.Plan.Climate.Humidity.At
	}
	least := quantity.Format(p.RH.Low, quantity.PercentRH)
	f := finding.Finding{Rule: &r.Rule, At: at, Source: r.Source, Write: "a more closed lid, a damp substrate, or a lower humidity; vivary why " + e.Plan.Name.V + " shows the balance"}
	w := &p.Water
	if w.Ceiling <= w.Supply && w.Ceiling != 0 {
		f.Text = "the coldest wall fogs at about " + wording.Band(w.FogsAt, "%") + " humidity, and " + least + " is the least that is aimed for"
		f.Limit = "what the glass does not take out of the air, with " + e.temperature(p.Inside()) + " inside and " + e.temperature(p.Box.Room.Low) + " outside"
	} else {
		f.Text = "at " + least + " the air carries out about " + wording.Band(w.Needed, "ml") + " of water a day, and dish and substrate give off " + wording.Band(w.Sustained, "ml")
		f.Limit = "what evaporates inside; spray alone is gone in " + wording.Band(w.MistFades, "min")
	}
	switch {
	case w.Verdict == climate.MayNotHold:
		e.Soft(f, finding.Advice) // what misting adds is not counted
	case p.Box.Ventilation >= climate.FullMeshTop:
		e.Add(f)
	default:
		// How much air passes a partly closed lid is judgement, and a gauge decides.
		e.Soft(f, finding.Caution)
	}
}
