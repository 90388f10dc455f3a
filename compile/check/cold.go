package check

import (
	"math"

	"vivary/compile/balance"
	"vivary/compile/climate"
	"vivary/compile/life"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/quantity"
)

// short is how an enclosure is too cold or too warm, the worst of it: one cause is said
// once.
type short struct {
	id  string
	how finding.Severity
	f   finding.Finding
}

// shortOf says how the enclosure is too cold, and how too warm, if that is the rule's to say.
func shortOf(r *Rule, e *Enclosure) {
	cold, warm := e.feel()
	for _, s := range [2]*short{cold, warm} {
		if s == nil || s.id != r.ID {
			continue
		}
		f := s.f
		f.Rule = &r.Rule
		if f.Source == "" {
			f.Source = r.Source
		}
		e.add(f, s.how)
	}
}

// feel returns how the enclosure is too cold, and how too warm; nil for not.
func (e *Enclosure) feel() (cold, warm *short) {
	if !e.felt {
		e.felt = true
		e.cold, e.warm = e.tooCold(), e.tooWarm()
	}
	return e.cold, e.warm
}

// bearable is what a species bears for long: what its sheet calls soft, else its target.
func (e *Enclosure) bearable() *plan.Figure {
	if f := e.figure(schema.FigureTemperatureSoft); f != nil {
		return f
	}
	return e.figure(schema.FigureTemperatureTarget)
}

// resting reports whether the plan has a cool rest: the coldest part of the year is meant
// to be cool then.
func (e *Enclosure) resting() bool {
	for _, s := range e.Plan.Seasons {
		if !s.Off.V && life.CoolingOf(e.Plan, s).Rest {
			return true
		}
	}
	return false
}

// remembered is the worst that a figure gives which stands on memory alone.
func remembered(f *plan.Figure, how finding.Severity) finding.Severity {
	if f != nil && f.Quality.V == "memory" {
		return min(how, finding.Caution)
	}
	return how
}

// seasons is what an enclosure comes to: with what is on long enough to count as warmth, in
// the warmest, the usual and the coldest room, for the greater part of the year, and by
// night.
type seasons struct {
	p                                   *balance.Report
	hottest, usual, coldest, long, dark climate.Zones
	when                                string // of long
	rests, heated                       bool
}

func (e *Enclosure) seasons(p *balance.Report) seasons {
	s := seasons{p: p, hottest: p.Lasting(p.Box.Room.High), usual: p.Lasting(p.Box.Room.Middle()), coldest: p.Lasting(p.Box.Room.Low),
		dark: p.Dark(), when: "for the greater part of the year", rests: e.resting(), heated: e.Plan.Heated()}
	s.long = s.usual
	if w := e.Plan.Place.Winter; w.Set() {
		s.long, s.when = p.Lasting(climate.Celsius((w.V.Low+w.V.High)/2)), "all winter"
	}
	return s
}

func (e *Enclosure) tooCold() *short {
	if e.total() == 0 {
		return nil
	}
	if room, hard, ok := e.roomLimits(); ok && !e.Plan.Heated() && room.V.Low < hard.Range.Low && !hard.Range.Contains(room.V.Low) {
		return nil // its room is colder than it bears, which is another rule's
	}
	p, ok := e.report()
	if !ok {
		return e.roomCold()
	}
	s := e.seasons(p)
	if found := e.killing(&s); found != nil {
		return found
	}
	if found := e.allYear(&s); found != nil {
		return found
	}
	if found := e.aPart(&s); found != nil {
		return found
	}
	if found := e.nights(&s); found != nil {
		return found
	}
	return e.aimed(&s)
}

// killing is cold that harms within hours, heaters or not.
func (e *Enclosure) killing(s *seasons) *short {
	p, soft := s.p, e.bearable()
	if !s.heated || p.Box.Room.Low >= p.HardLow || s.dark.Air.Likely >= p.HardLow {
		return nil
	}
	// A place that is no more than not deadly is no refuge from air that harms.
	refuge := s.dark.Spot.Likely >= p.HardLow && (soft == nil || float64(s.dark.Spot.Likely) >= soft.Range.Low-1)
	how := finding.Caution // what kills is never mere advice
	if s.dark.Spot.High < p.HardLow || s.dark.Air.High < p.HardLow && !refuge {
		how = finding.Danger
	}
	hard := e.figure(schema.FigureTemperatureHard)
	return e.say("heat-lost", how, e.inColdest(p)+"the air inside is at about "+e.spread(s.dark.Air)+", and even the warmest place at about "+e.spread(s.dark.Spot), hard,
		e.atLeast(float64(p.HardLow), e.Plan.Degrees(), hard), "a room that is never so cold, or a larger heater")
}

// allYear is what is needed to live, and a surface on which it digests.
func (e *Enclosure) allYear(s *seasons) *short {
	soft, digests := e.bearable(), e.figure(schema.FigureSpotNeeded)
	if soft != nil && float64(s.hottest.Spot.High) < soft.Range.Low-rounding {
		return e.colder(s, remembered(soft, finding.Error), "it is too cold all the year: the warmest place is at "+e.spread(s.hottest.Spot)+" in a room at "+e.temperature(s.p.Box.Room.High), soft)
	}
	if digests != nil && float64(s.usual.Ground.High) < digests.Range.Low-rounding {
		return e.digesting(s, remembered(digests, finding.Error), s.usual, "it cannot digest what it eats")
	}
	return nil
}

// digesting says that no surface is warm enough on which it can lie.
func (e *Enclosure) digesting(s *seasons, how finding.Severity, z climate.Zones, what string) *short {
	f := e.figure(schema.FigureSpotNeeded)
	text := "the warmest ground that it finds is at about " + e.spread(z.Ground) + ": " + what
	if z.Spot.Likely > z.Ground.Likely+1 {
		text += "; a mat on a wall or on the lid warms no ground"
	}
	x := e.colder(s, how, text, f)
	x.f.Write = "a lamp above, on for 8 h or more, or a mat beneath thin substrate, with its probe on the warm ground"
	return x
}

// aPart is what is short for a part of the year.
func (e *Enclosure) aPart(s *seasons) *short {
	soft, digests := e.bearable(), e.figure(schema.FigureSpotNeeded)
	if s.rests {
		return nil
	}
	if soft != nil {
		slack := 1.0
		if soft.What == schema.FigureTemperatureTarget {
			slack = 2 // a sheet that says no more than what to aim at
		}
		switch {
		case float64(s.long.Spot.Likely) < soft.Range.Low-slack:
			return e.colder(s, finding.Caution, "it is too cold "+s.when+": the warmest place is at about "+e.spread(s.long.Spot), soft)
		case s.heated && float64(s.coldest.Spot.Likely) < soft.Range.Low-slack:
			return e.colder(s, finding.Caution, e.inColdest(s.p)+"the warmest place is at about "+e.spread(s.coldest.Spot), soft)
		}
	}
	if digests != nil && float64(s.coldest.Ground.Likely) < digests.Range.Low-rounding {
		return e.digesting(s, finding.Caution, s.coldest, "in a room at "+e.temperature(s.p.Box.Room.Low)+" it digests badly")
	}
	if f := s.p.Air.Figure; f != nil && f.What != schema.FigureTemperatureTarget && float64(s.long.Air.Likely) < f.Range.Low-1 {
		return e.colder(s, finding.Caution, "the air is usually at about "+e.spread(s.long.Air), f)
	}
	return nil
}

// nights are the coldest of them. Where a cool rest is planned these are meant.
func (e *Enclosure) nights(s *seasons) *short {
	if floor, f, air, ok := e.nightFloor(s); ok && air < floor-1 {
		return e.chilly(s, finding.Caution, floor, f)
	}
	return nil
}

// nightFloor returns how cold the nights may be, and how cold they get. Without a heater
// that is the room: what evaporates is not counted on.
func (e *Enclosure) nightFloor(s *seasons) (floor float64, f *plan.Figure, air float64, ok bool) {
	soft := e.bearable()
	air = float64(s.dark.Air.Likely)
	if !s.heated {
		air = max(air, float64(s.p.Box.Room.Low))
	}
	f = e.figure(schema.FigureNight)
	switch {
	case s.rests:
		return 0, nil, 0, false
	case f != nil:
		return f.Range.Low, f, air, true
	case soft != nil:
		return soft.Range.Low - usualDrop, soft, air, true
	}
	return 0, nil, 0, false
}

// usualDrop is how much colder than what is borne by day a night may be where the sheet
// has no figure for it, in °C. Judgement: two to three degrees are what keepers call slight.
const usualDrop = 3

func (e *Enclosure) chilly(s *seasons, how finding.Severity, floor float64, f *plan.Figure) *short {
	limit := e.atLeast(floor, e.Plan.Degrees(), f)
	if f.What != schema.FigureNight {
		u := e.Plan.Degrees()
		limit = quantity.FormatAtLeast(floor, u) + " at the least by night, " + quantity.Format(usualDrop, u.Step()) + " under " + e.limit(quantity.FormatAtLeast(f.Range.Low, u), f)
	}
	write := "a warmer room, or a mat, which goes on by night"
	for _, h := range e.heaters() {
		if !h.Hours.Set() && !h.Tube() {
			write = "a warmer room"
		}
		if h.Hours.Set() && h.Hours.V.Value < 24*60 && !radiant(h) {
			write = "the " + h.Name.V + " on by night too, without hours; or a warmer room"
		}
	}
	return e.say("night-cold", how, "in the coldest nights, with "+e.temperature(s.p.Box.Room.Low)+" in the room, the air inside is at about "+e.spread(s.dark.Air), f, limit, write)
}

// aimed is what is aimed for and missed, while what the species needs is met.
func (e *Enclosure) aimed(s *seasons) *short {
	if x := e.aimedSpot(s); x != nil {
		return x
	}
	if x := e.aimedAir(s); x != nil {
		return x
	}
	if floor, f, air, ok := e.nightFloor(s); ok && air < floor-rounding {
		return e.chilly(s, finding.Advice, floor, f)
	}
	return nil
}

// aimedSpot compares the warmest place with what is aimed for.
func (e *Enclosure) aimedSpot(s *seasons) *short {
	p := s.p
	want := &p.Spot
	if !want.Known() {
		return nil
	}
	least := want.Low - rounding
	z, room, how := s.coldest, p.Box.Room.Low, finding.Caution
	if s.rests { // in the coldest of the year it rests
		z, room = s.usual, p.Box.Room.Middle()
	}
	switch {
	case want.Planned && !s.heated:
		// A room goes up and down: what is planned is what it reaches.
		if z, room = s.hottest, p.Box.Room.High; float64(room) >= least {
			return nil
		}
	case want.Planned:
		if float64(z.Spot.Low) >= least || e.tooHotByPlan() || e.holds(p, z) {
			return nil // a setting that is off its target is another rule's
		}
		if float64(z.Spot.Likely) >= least {
			if how = finding.Advice; e.beneath() != nil {
				return nil // how deep the substrate over it is decides, and a mat beneath is judged by its floor
			}
		}
	default:
		// A species that a warm room suits needs no spot.
		z, room, how = s.usual, p.Box.Room.Middle(), finding.Advice
		if float64(z.Spot.Likely) >= least || float64(z.Air.Likely) >= p.Air.Low-rounding {
			return nil
		}
	}
	text := "nothing heats it, and the warmest place is as the room is, about " + e.spread(z.Spot)
	write, id := "a heater with a thermostat", "unheated"
	if s.heated {
		id, write = "heat-short", e.more(p, z)
		text = "the warm end is at about " + e.spread(z.Spot) + " in a room at " + e.temperature(room)
	}
	if !want.Planned {
		return e.say(id, how, text, want.Figure, e.atLeast(want.Low, e.Plan.Degrees(), want.Figure), write)
	}
	if how == finding.Advice {
		write = "a measurement, which tells: measured with spot and room; or " + write
	} else {
		write += "; or a warm end of " + quantity.FormatAtMost(float64(z.Spot.Likely), e.Plan.Degrees())
	}
	x := e.say("heat-short", how, text, nil, e.temperature(climate.Celsius(want.Low))+" is planned at the warm end", write)
	x.f.At = e.Plan.Climate.WarmEnd.At
	return x
}

// aimedAir compares the air with what is planned, or with what a sheet aims at that says
// no more.
func (e *Enclosure) aimedAir(s *seasons) *short {
	p, u := s.p, e.Plan.Degrees()
	if f := p.Air.Figure; f != nil && f.What == schema.FigureTemperatureTarget && !s.rests && float64(s.long.Air.Likely) < f.Range.Low-1 {
		return e.colder(s, finding.Advice, "the air is usually at about "+e.spread(s.long.Air), f)
	}
	if !p.Air.Planned || float64(s.long.Air.High) >= p.Air.Low-1 || !s.heated || e.noCoolEnd() || e.tooWarmByPlan() {
		return nil
	}
	least := math.Floor(float64(s.coldest.Air.Likely))
	if soft := e.bearable(); soft != nil {
		least = max(least, soft.Range.Low)
	}
	x := e.say("heat-short", finding.Advice, "the cool end is the air, and that is usually at about "+e.spread(s.long.Air), nil,
		e.temperature(climate.Celsius(p.Air.Low))+" is planned at the cool end", quantity.FormatRange(least, max(least+1, math.Ceil(float64(s.hottest.Air.Likely))), u)+" as cool end, or a warmer room")
	x.f.At = e.Plan.Climate.CoolEnd.At
	return x
}

// say makes a finding at the heater, or at the enclosure where there is none. Without a
// source it has that of its rule.
func (e *Enclosure) say(id string, how finding.Severity, text string, f *plan.Figure, limit, write string) *short {
	x := finding.Finding{At: e.Plan.At, Text: text, Limit: limit, Write: write, Also: []finding.Related{{At: e.Plan.Place.Temperature.At, Text: "the room"}}}
	if f != nil {
		x.Source = e.Cite(f)
	}
	if e.Plan.Heated() {
		x.At = e.Plan.Climate.Heaters[0].At
	}
	return &short{id, how, x}
}

// colder says that a figure of the sheet is missed.
func (e *Enclosure) colder(s *seasons, how finding.Severity, text string, f *plan.Figure) *short {
	limit := e.atLeast(f.Range.Low, e.Plan.Degrees(), f)
	if !s.heated {
		return e.say("unheated", how, "nothing heats it, and "+text, f, limit, "in the climate block a heater with a thermostat, with its power, size and place; or another room")
	}
	write := "a warmer room, or " + e.more(s.p, s.coldest) + "; vivary why " + e.Plan.Name.V + " shows the balance"
	if e.holds(s.p, s.coldest) && s.p.Heaters[s.coldest.Warmest].Setting < climate.Celsius(f.Range.Low) {
		write = "the thermostat at " + quantity.FormatAtLeast(f.Range.Low, e.Plan.Degrees()) + " or more, with its probe on the warmest surface"
	}
	return e.say("heat-short", how, text, f, limit, write)
}

// holds reports whether a thermostat, and not the power of the heater, decides how warm
// the spot is.
func (e *Enclosure) holds(p *balance.Report, z climate.Zones) bool {
	return z.Warmest >= 0 && p.Heaters[z.Warmest].Thermostat && p.Heaters[z.Warmest].Probe != climate.InAir && z.Duty.Likely < 0.99 && z.Spot.Low >= p.Heaters[z.Warmest].Setting-1
}

// more says what gives more heat, of the heater that makes the spot.
func (e *Enclosure) more(p *balance.Report, z climate.Zones) string {
	if z.Warmest < 0 {
		return "a larger heater"
	}
	switch w := p.Written[z.Warmest]; w.What() {
	case "mat":
		return "a larger mat, which lifts the air by a few degrees only"
	case "cable":
		return "more cable"
	default:
		return "more watts in the " + w.Name.V
	}
}

func (e *Enclosure) inColdest(p *balance.Report) string {
	return "in a room at " + e.temperature(p.Box.Room.Low) + " "
}

// roomCold is what can be said where the plan does not say enough for a balance: an
// unheated box is as its room is.
func (e *Enclosure) roomCold() *short {
	room := e.Plan.Place
	f := e.bearable()
	if room == nil || !room.Temperature.Set() || e.Plan.Heated() || f == nil {
		return nil
	}
	t := room.Temperature
	how, what := finding.Error, "all the year"
	switch {
	case t.V.High < f.Range.Low-rounding:
	case (t.V.Low+t.V.High)/2 < f.Range.Low-rounding && !e.resting():
		how, what = finding.Caution, "for the greater part of its range"
	default:
		return nil
	}
	return &short{"unheated", remembered(f, how), finding.Finding{At: e.Plan.At, Text: "nothing heats it, and room " + room.Name.V + ", at " + t.V.String() + ", is too cold " + what + " for " + e.Sheet.Name.V,
		Limit: e.within(f.Range, t.V.Unit, f), Source: e.Cite(f), Also: []finding.Related{{At: t.At, Text: "the room"}},
		Write: "a mat on a side wall with a thermostat, as heater in the climate block; or another room"}}
}

// tooWarm says that the air gets too warm though all works as planned. A room that is too
// hot by itself for what the species bears is another rule's.
func (e *Enclosure) tooWarm() *short {
	p, ok := e.report()
	if !ok || e.total() == 0 || p.Box.Room.High > p.HardHigh {
		return nil
	}
	hot, cold := p.Warmest(), p.Coldest()
	soft, hard, air := e.bearable(), e.figure(schema.FigureTemperatureHard), p.Air.Figure
	say := func(how finding.Severity, text string, most float64, f *plan.Figure) *short {
		x := finding.Finding{At: e.Plan.At, Text: text, Limit: e.atMost(most, e.Plan.Degrees(), f), Source: e.Cite(f), Write: "a cooler room",
			Also: []finding.Related{{At: e.Plan.Place.Temperature.At, Text: "the room"}}}
		if !e.Plan.Heated() {
			return &short{"unheated", how, x}
		}
		if x.At = e.Plan.Climate.Heaters[0].At; hot.Draw.Likely > 0 {
			x.Write = "fewer watts, a lower thermostat, or a cooler room"
		}
		return &short{"too-warm", how, x}
	}
	gets := func() string {
		return "the air gets to about " + e.spread(hot.Air) + " in a room at " + e.temperature(p.Box.Room.High)
	}
	switch {
	case hot.Air.Low > p.HardHigh+rounding:
		return say(finding.Error, gets(), float64(p.HardHigh), hard)
	case soft != nil && float64(cold.Air.Low) > soft.Range.High+rounding:
		return say(remembered(soft, finding.Error), "it is too warm all the year: even in the coldest room the air is at about "+e.spread(cold.Air), soft.Range.High, soft)
	case soft != nil && e.Plan.Place.Summer.Set() && float64(e.summer(p).Air.Likely) > soft.Range.High+rounding:
		return say(finding.Caution, "it is too warm all summer: the air is usually at about "+e.spread(e.summer(p).Air), soft.Range.High, soft)
	case soft != nil && float64(hot.Air.Likely) > soft.Range.High+1:
		return say(finding.Caution, gets(), soft.Range.High, soft)
	case air != nil && float64(cold.Air.Low) > air.Range.High+rounding:
		return say(finding.Caution, "there is no cooler place: even in the coldest room the air is at about "+e.spread(cold.Air), air.Range.High, air)
	}
	return nil
}

// summer is what the enclosure usually comes to in the three hottest months.
func (e *Enclosure) summer(p *balance.Report) climate.Zones {
	t := e.Plan.Place.Summer.V
	return p.At(climate.Conditions{Room: climate.Celsius((t.Low + t.High) / 2)})
}
