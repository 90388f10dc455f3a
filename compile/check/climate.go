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
	{Rule: finding.Rule{ID: "heat-lost", Severity: finding.Danger, Silence: finding.Never,
		Title:   "The heaters cannot keep the enclosure above what kills in the coldest room.",
		Why:     "At the lowest temperature of the room more heat is lost than the heaters give, even if everything is better than likely.",
		Source:  "heat balance after ISO 6946; the limit is the species sheet's",
		Instead: "More watts, a warmer room, or foam on the outside of the walls."}, Enclosure: heatLost},
	{Rule: finding.Rule{ID: "heat-short", Severity: finding.Error, Silence: finding.ByReason,
		Title:   "The heaters cannot reach the temperature that is aimed for.",
		Why:     "What the walls, the lid and the air changes lose at that temperature is more than the heaters give. A mat on a pane also gives much of its heat to the room.",
		Source:  "heat balance after ISO 6946; air changes and heat shares are judgement, and so the band is wide",
		Instead: "More watts, a warmer room, a closed lid, or a lower aim."}, Enclosure: heatShort},
	{Rule: finding.Rule{ID: "stuck-hot", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "If the thermostat sticks, the heater goes past what kills.",
		Why:     "Thermostats fail. With this heater always on, in the warmest room, even the favourable end of the band lies above the species' limit.",
		Source:  "arbreptiles.com/cages/flexburn.html: an unregulated tape reached 89 C after a fault; heat balance after ISO 6946",
		Instead: "A second thermostat in line with the first, set a little higher, or fewer watts."}, Enclosure: stuckHot},
}

// report returns the physics of the enclosure, worked out once for all its rules.
func (e *Enclosure) report() (*balance.Report, bool) {
	if !e.reported {
		e.reported = true
		e.known = e.balance.Read(e.Collection.Plan, e.Plan)
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

func heatLost(r *Rule, e *Enclosure) {
	p, ok := e.report()
	if !ok || len(p.Heaters) == 0 || p.Box.Room.Low >= p.HardLow {
		return // without a heater another rule speaks
	}
	b := p.Floor()
	if b.Verdict == climate.Holds {
		return
	}
	f := finding.Finding{Rule: &r.Rule, At: e.Plan.Place.Temperature.At,
		Text:   "at " + e.temperature(p.Box.Room.Low) + " in the room, holding " + e.Plan.Name.V + " above " + e.temperature(p.HardLow) + " takes about " + wording.Band(b.Needed, "W") + ", and the heaters give " + wording.Band(b.Supply, "W") + " inside",
		Limit:  e.temperature(p.HardLow) + " at the least, temperature-hard of " + e.Sheet.Name.V,
		Source: e.Cite(e.figure(schema.FigureTemperatureHard)),
		Write:  "more power, or a room that is never so cold",
		Also:   []finding.Related{{At: e.Plan.Climate.Heaters[0].At, Text: "the heater"}}}
	if b.Verdict == climate.CannotHold {
		e.Add(f)
	} else {
		e.Soft(f, finding.Caution) // what kills is never mere advice
	}
}

func heatShort(r *Rule, e *Enclosure) {
	p, ok := e.report()
	if !ok || len(p.Heaters) == 0 || !e.Plan.Climate.WarmEnd.Set() || p.Gradient.Balance.Verdict == climate.Holds || p.Gradient.Mean <= p.Box.Room.Low {
		return
	}
	b := &p.Gradient.Balance
	f := finding.Finding{Rule: &r.Rule, At: e.Plan.Climate.WarmEnd.At,
		Text:   e.temperature(p.Gradient.Mean) + " on average in a room at " + e.temperature(p.Box.Room.Low) + " takes about " + wording.Band(b.Needed, "W") + " inside, and the heaters give " + wording.Band(b.Supply, "W"),
		Limit:  "a rise of " + wording.Rise(b.RiseReachable, e.Plan.Degrees()) + " above the room is all that these heaters reach",
		Source: r.Source, Write: "more power, a warmer room, or a lower warm_end; vivary why " + e.Plan.Name.V + " shows the balance",
		Also: []finding.Related{{At: e.Plan.Climate.Heaters[0].At, Text: "the heater"}}}
	if b.Verdict == climate.CannotHold {
		e.Add(f)
	} else {
		e.unsure(f, b.Margin.Likely >= 1)
	}
}

func stuckHot(r *Rule, e *Enclosure) {
	p, ok := e.report()
	if !ok || len(p.Heaters) == 0 {
		return
	}
	hot := p.Gradient.Balance.WarmestIfStuck
	if hot.Low <= p.HardHigh {
		return
	}
	e.Add(finding.Finding{Rule: &r.Rule, At: e.Plan.Climate.Heaters[0].At,
		Text:   "with its heaters always on, " + e.Plan.Name.V + " gets to about " + wording.Degrees(hot, e.Plan.Degrees()) + " in the warmest room",
		Limit:  e.temperature(p.HardHigh) + " at the most, temperature-hard of " + e.Sheet.Name.V,
		Source: e.Cite(e.figure(schema.FigureTemperatureHard)),
		Write:  "a second thermostat in line, or fewer watts"})
}
