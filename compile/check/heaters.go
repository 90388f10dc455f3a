package check

import (
	"slices"
	"strconv"

	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/quantity"
)

// Heaters and their thermostats. Whether they are strong enough is for physics.
var heaters = []*Rule{
	{Enclosure: heaterBare, Rule: finding.Rule{ID: "heater-bare", Severity: finding.Danger, Silence: finding.Never,
		Title:   "A heater has no thermostat.",
		Why:     "An electric heater goes on warming whatever the temperature. An unregulated heating tape reached 89 °C after a fault.",
		Source:  "arbreptiles.com/cages/flexburn.html: an unregulated tape reached 89 °C",
		Instead: "Put a thermostat in, its probe at the warmest spot that the animals can reach, and write the temperature at which it switches off."}},
	{Enclosure: heaterOvershoot, Rule: finding.Rule{ID: "heater-overshoot", Severity: finding.Danger, Silence: finding.Never,
		Title:   "A thermostat lets the temperature go past what the species bears.",
		Why:     "Heat is the quickest killer. A thermostat switches off at its setting, and the temperature still rises by its swing.",
		Source:  "the species sheet; arbreptiles.com/cages/flexburn.html",
		Instead: "Set it so far below the limit that its swing fits in between."}},
	{Enclosure: heaterMisplaced, Rule: finding.Rule{ID: "heater-misplaced", Severity: finding.Error, Silence: finding.ByReason,
		Title:   "A heater is where it must not be.",
		Why:     "A lamp beneath a floor shines into nothing but the floor; and some species are kept away from heat of one side.",
		Source:  "common practice, no source; the species sheet",
		Instead: "Put a mat on a side or the back, above the substrate, and a lamp over the lid. A mat beneath the floor is judged by how hot the floor gets."}},
	{Enclosure: heaterUnguarded, Rule: finding.Rule{ID: "heater-unguarded", Severity: finding.Error, Silence: finding.Never,
		Title:   "A heater inside the enclosure has no guard.",
		Why:     "Animals climb on it and do not feel a burn in time.",
		Source:  "common practice, no source",
		Instead: "Put it outside, or put a guard around it and write guarded = true."}},
	{Collection: channelClash, Rule: finding.Rule{ID: "channel-clash", Severity: finding.Error, Silence: finding.ByReason,
		Title:   "Heaters share an outlet of a thermostat, but need different temperatures.",
		Why:     "One outlet holds one temperature: one of the enclosures will be wrong.",
		Source:  "common practice, no source",
		Instead: "Give them outlets of their own, or enclosures to share it that want the same."}},
	{Enclosure: heaterUnchecked, Rule: finding.Rule{ID: "heater-unchecked", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "There is no thermometer besides the thermostat's own.",
		Why:     "The controller can be the thing that fails; its own reading does not show it.",
		Source:  "reptileamphibiangear.com/how-to/reptile-heat-mat-thermostat-usage-guide",
		Instead: "Put in a thermometer that keeps the lowest and the highest, and write thermometer = true."}},
	{Enclosure: heaterWide, Rule: finding.Rule{ID: "heater-wide", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "A heater covers more than a third of a wall or of the floor.",
		Why:     "There is no cool end left to go to.",
		Source:  "leopardgeckos.co.za, on mats under geckos",
		Instead: "A smaller one, at one end."}},
	{Enclosure: thermostatOff, Rule: finding.Rule{ID: "thermostat-off-target", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "No thermostat is set to the temperature that is planned.",
		Why:     "The warm end becomes what the thermostat holds, not what the plan says.",
		Source:  "the plan itself",
		Instead: "Set the thermostat and the plan to the same temperature."}},
	{Enclosure: uvLamp, Rule: finding.Rule{ID: "uv-lamp", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "A lamp gives off ultraviolet light, which this species is spared.",
		Why:     "Sixteen hours a day of weak ultraviolet bleached the glow of a scorpion and changed how it reacts.",
		Source:  "Kloock et al. 2010, J. Arachnol. 38:441-445",
		Instead: "A heater without ultraviolet. A viewing lamp is for minutes, not on a timer."}},
}

// usualSwing is how far a thermostat lets the temperature go past its setting
// where the plan does not say, in °C.
const usualSwing = 1.0

func swing(h *plan.Heater) float64 {
	if h.Swing.Set() {
		return h.Swing.V.Value
	}
	return usualSwing
}

func (e *Enclosure) heaters() []*plan.Heater {
	if e.Plan.Climate == nil {
		return nil
	}
	return e.Plan.Climate.Heaters
}

func heaterBare(r *Rule, e *Enclosure) {
	for _, h := range e.heaters() {
		if h.Thermostat.At.Written() || e.Collection.Plan.Setting(h).Set() || h.Tube() {
			continue
		}
		text := "the " + h.Name.V + " has no thermostat"
		if h.Channel.Set() {
			text = "the " + h.Name.V + " is on outlet " + strconv.Quote(h.Channel.V) + ", of which no heater says its thermostat"
		}
		f := e.figure(schema.FigureTemperatureTarget)
		write := "a thermostat, and its setting as thermostat"
		if f != nil {
			write = "a thermostat, set to " + quantity.FormatAtMost(f.Range.High, e.Plan.Degrees()) + " at the most, and its setting as thermostat"
		}
		e.Add(finding.Finding{Rule: &r.Rule, At: h.At, Text: text, Source: r.Source, Write: write})
	}
}

func heaterOvershoot(r *Rule, e *Enclosure) {
	hard := e.figure(schema.FigureTemperatureHard)
	if hard == nil {
		return
	}
	for _, h := range e.heaters() {
		t := e.Collection.Plan.Setting(h)
		if !t.Set() || hard.Range.Contains(t.V.Value+swing(h)) || t.V.Value+swing(h) < hard.Range.Low {
			continue
		}
		u, s := t.V.Unit, swing(h)
		lower := quantity.FormatAtMost(e.aim(hard.Range.High-s), u)
		over := "may overshoot by "
		if !h.Swing.Set() {
			over = "as usual may overshoot by "
		}
		e.Add(finding.Finding{Rule: &r.Rule, At: t.At,
			Text: "the thermostat switches off at " + t.V.String() + " and " + over + quantity.Format(s, u.Step()) + ": " +
				quantity.Format(t.V.Value+s, u) + " is past what " + e.Sheet.Name.V + " bears",
			Limit: e.atMost(hard.Range.High, u, hard), Source: e.Cite(hard),
			Write: "the thermostat at " + lower + " or lower", Edits: finding.Text(t.At, lower)})
	}
}

// aim is the upper end of what is aimed for, and at most v.
func (e *Enclosure) aim(v float64) float64 {
	if f := e.figure(schema.FigureTemperatureTarget); f != nil {
		v = min(v, f.Range.High)
	}
	return v
}

func heaterMisplaced(r *Rule, e *Enclosure) {
	not := e.figure(schema.FigureHeaterNot)
	for _, h := range e.heaters() {
		flat := !radiant(h)
		switch {
		case !h.Place.Set(), h.Place.V == "under" && flat: // one beneath is judged by what it does
		case h.Place.V == "under":
			e.Add(finding.Finding{Rule: &r.Rule, At: h.Place.At, Text: "the " + h.Name.V + " is beneath the floor, where only a mat or a cable can be", Source: r.Source, Write: "the " + h.Name.V + " above, over the lid"})
		case not != nil && slices.Contains(not.Words, h.Place.V):
			e.Add(finding.Finding{Rule: &r.Rule, At: h.Place.At, Text: "the " + h.Name.V + " is " + placed(h.Place.V) + ", where " + e.Sheet.Name.V + " must not have one",
				Limit: e.limit("not "+not.Value.V, not), Source: e.Cite(not), Write: "the " + h.Name.V + " on a side wall"})
		}
	}
}

func placed(place string) string {
	switch place {
	case "under":
		return "beneath the floor"
	case "above":
		return "over the lid"
	case "inside":
		return "within the box"
	}
	return "on the " + place
}

func heaterUnguarded(r *Rule, e *Enclosure) {
	for _, h := range e.heaters() {
		if h.Place.V == "inside" && !h.Guarded.V {
			e.Add(finding.Finding{Rule: &r.Rule, At: h.Place.At, Text: "the " + h.Name.V + " is within reach of the animals and has no guard",
				Source: r.Source, Write: "a guard around it, and then true as guarded"})
		}
	}
}

// channelUse is what the enclosures on one outlet of a thermostat agree on so far.
type channelUse struct {
	first   *plan.Heater
	band    quantity.Range
	setting plan.Written[quantity.Quantity]
}

// radiant reports whether a heater shines or radiates, and does not lie on a face.
func radiant(h *plan.Heater) bool { return h.What() != "mat" && h.What() != "cable" }

func channelClash(r *Rule, c *Collection) {
	rackClash(r, c)
	var uses map[string]*channelUse
	for _, e := range c.Plan.Enclosures {
		if e.Climate == nil || e.Sheet == nil {
			continue
		}
		for _, h := range e.Climate.Heaters {
			if !h.Channel.Set() {
				continue
			}
			if uses == nil {
				uses = map[string]*channelUse{}
			}
			band, ok := wanted(e)
			if !ok {
				continue
			}
			u := uses[h.Channel.V]
			if u == nil {
				uses[h.Channel.V] = &channelUse{h, band, h.Thermostat}
				continue
			}
			f := finding.Finding{Rule: &r.Rule, At: h.Channel.At, In: e.Box(), Source: r.Source, Write: "an outlet of its own, and its name as channel",
				Also: []finding.Related{{At: u.first.Channel.At, Text: "the outlet's first heater"}}}
			both := quantity.Range{Low: max(u.band.Low, band.Low), High: min(u.band.High, band.High), Unit: band.Unit}
			switch {
			case both.Low > both.High:
				f.Text = "outlet " + strconv.Quote(h.Channel.V) + " should hold " + band.String() + " here, and " + u.band.String() + " elsewhere"
				c.Add(f)
			case u.setting.Set() && h.Thermostat.Set() && !(quantity.Range{Low: u.setting.V.Value, High: u.setting.V.Value}).Contains(h.Thermostat.V.Value):
				f.Text = "outlet " + strconv.Quote(h.Channel.V) + " is set to " + h.Thermostat.V.String() + " here, and to " + u.setting.V.String() + " elsewhere"
				c.Add(f)
			case radiant(u.first) != radiant(h):
				f.Text = "outlet " + strconv.Quote(h.Channel.V) + " switches a " + u.first.What() + " and a " + h.What() + ": its one probe sees how hot one of them gets"
				c.found.Soft(f, finding.Caution)
			default:
				u.band = both
				if !u.setting.Set() {
					u.setting = h.Thermostat
				}
			}
		}
	}
}

// wanted is the temperature that the warm end of an enclosure should have.
func wanted(e *plan.Enclosure) (quantity.Range, bool) {
	if e.Climate.WarmEnd.Set() {
		return e.Climate.WarmEnd.V, true
	}
	if f := e.Sheet.Figure(schema.FigureTemperatureSoft, ""); f != nil {
		return f.Range, true
	}
	return quantity.Range{}, false
}

func heaterUnchecked(r *Rule, e *Enclosure) {
	c := e.Plan.Climate
	if c == nil || len(c.Heaters) == 0 || c.Thermometer.V || c.Thermometer.Bad {
		return
	}
	for _, h := range c.Heaters {
		if e.Collection.Plan.Setting(h).Set() {
			e.Add(finding.Finding{Rule: &r.Rule, At: e.deviceAt(h, c.At), Text: "the thermostat's own probe is the only thermometer", Source: r.Source, Write: "a thermometer of its own, and then true as thermometer"})
			return
		}
	}
}

func heaterWide(r *Rule, e *Enclosure) {
	const third = 100.0 / 3
	var all map[string]float64
	if len(e.heaters()) > 1 {
		all = map[string]float64{}
	}
	for _, h := range e.heaters() {
		if part, ok := e.faceShare(h); ok && all != nil {
			all[h.Place.V] += part
			if all[h.Place.V] > 1.05 && part <= 1.05 && all[h.Place.V]-part <= 1.05 {
				e.Add(finding.Finding{Rule: &r.Rule, At: h.Size.At, Text: "the " + h.Name.V + " and what else is " + placed(h.Place.V) + " are together larger than that wall or floor", Source: r.Source,
					Limit: "the wall or floor", Write: "their sizes as they are, or another place"})
			}
		}
		x := finding.Finding{Rule: &r.Rule, Source: r.Source}
		switch part, ok := e.faceShare(h); {
		case h.Covers.Set() && h.Covers.V.Value > third+1: // gauged by eye
			x.At, x.Text = h.Covers.At, "the "+h.Name.V+" covers "+quantity.Format(h.Covers.V.Value, quantity.Percent)+" of its wall or floor"
			x.Limit, x.Write = "a third at the most", "a smaller one, of fewer watts, at one end"
		case ok && part > 1.05 && e.Plan.Housing.Inside.V.VolumeLitres() < cup:
			continue // small boxes stand against a mat in a row
		case ok && part > 1.05:
			x.At, x.Text = h.Size.At, "the "+h.Name.V+" is larger than the wall or floor that it is on"
			x.Limit, x.Write = "the wall or floor", "its size as it is, or another place"
		case ok && part > 0.75 && part <= 1.05 && h.Place.V != "side": // on a side wall the other end stays cool
			x.At, x.Text = h.Size.At, "the "+h.Name.V+" covers "+quantity.Format(100*part, quantity.Percent)+" of its wall or floor"
			x.Limit, x.Write = "a half at the most, better a third", "a smaller one, of fewer watts, at one end"
		default:
			continue
		}
		e.Add(x)
	}
}

// cup is the volume, in litres, below which a box is one of several against one mat.
const cup = 10

// faceShare returns how much of its wall or floor a heater of a stated size covers.
func (e *Enclosure) faceShare(h *plan.Heater) (part float64, ok bool) {
	z, in := h.Size, e.Plan.Housing.Inside
	if !z.Set() || !in.Set() || h.Place.V == "inside" {
		return 0, false
	}
	face := in.V.Length * in.V.Width
	switch h.Place.V {
	case "side":
		face = in.V.Width * in.V.Height
	case "back":
		face = in.V.Length * in.V.Height
	}
	return z.V.Length * z.V.Width / face, true
}

// onHeater is how much colder the spot may be than a probe that lies on the mat itself, in
// °C: 1 where it is taped on, 2 to 3 where it is loose, by the resistance between them.
const onHeater = 3.0

func thermostatOff(r *Rule, e *Enclosure) {
	c := e.Plan.Climate
	if c == nil || !c.WarmEnd.Set() || e.tooHotByPlan() {
		return
	}
	var top, bottom plan.Written[quantity.Quantity]
	slack := 0.0
	for _, h := range c.Heaters {
		t := e.Collection.Plan.Setting(h)
		if !t.Set() || h.Probe.V == "air" || h.Probe.V == "cool end" {
			continue // such a setting is not that of the warm end
		}
		if h.Probe.V == "heater" {
			slack = max(slack, onHeater)
		}
		slack = max(slack, swing(h))
		if !top.Set() || t.V.Value > top.V.Value {
			top = t
		}
		if !bottom.Set() || t.V.Value < bottom.V.Value {
			bottom = t
		}
	}
	if !top.Set() {
		return
	}
	at, text := top, ""
	switch {
	case top.V.Value < c.WarmEnd.V.Low-slack-1e-9:
		text = "the thermostat switches off at " + top.V.String() + ", before the warm end reaches " + c.WarmEnd.V.String()
	case bottom.V.Value > c.WarmEnd.V.High+slack+1e-9:
		at, text = bottom, "the thermostat switches off at "+bottom.V.String()+", when the warm end is past "+c.WarmEnd.V.String()
	default:
		return
	}
	e.Add(finding.Finding{Rule: &r.Rule, At: at.At, Text: text, Source: r.Source, Write: "the thermostat at " + c.WarmEnd.V.HighQ().String() + ", or another warm end",
		Also: []finding.Related{{At: c.WarmEnd.At, Text: "what is planned"}}})
}

func uvLamp(r *Rule, e *Enclosure) {
	for _, h := range e.heaters() {
		if h.UV.V && e.true(schema.FigureUVNot) {
			f := e.figure(schema.FigureUVNot)
			e.Add(finding.Finding{Rule: &r.Rule, At: h.UV.At, Text: "the " + h.Name.V + " gives off ultraviolet light", Limit: e.limit("no ultraviolet light", f), Source: e.Cite(f), Write: "a lamp without ultraviolet light"})
		}
	}
}
