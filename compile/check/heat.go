package check

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"vivary/compile/balance"
	"vivary/compile/climate"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/quantity"
	"vivary/schema/wording"
)

// Heat rules judge an enclosure by what it will be: with its heaters, in the coldest and
// in the warmest that its room gets, once a heater sticks. What the plan aims at counts
// beside that. A keeper's warm end is a spot at the heater, the cool end is the air, and
// the two are asked apart.
//
// An error takes even the favourable end of what is known to fail, all the year. What is
// short for a part of the year is a caution, and what harms nobody is advice.
var heat = []*Rule{
	{Enclosure: shortOf, Rule: finding.Rule{ID: "heat-lost", Severity: finding.Danger, Silence: finding.Never,
		Title:   "The heaters cannot keep the animals above what harms them in the coldest room.",
		Why:     "At the lowest temperature of the room even the warmest place inside is colder than the species bears, even if everything is better than likely.",
		Source:  "heat balance after ISO 6946; the limit is the species sheet's",
		Instead: "A warmer room, or a larger heater of the usual power for its size."}},
	{Enclosure: shortOf, Rule: finding.Rule{ID: "unheated", Severity: finding.Error, Silence: finding.ByReason,
		Title:   "Nothing heats or cools the enclosure, and its room is not what the species needs.",
		Why:     "Without a heater it is inside as it is in the room. An animal that is too cold all year does not feed, moult or breed, and does not show why.",
		Source:  "the species sheet",
		Instead: "A heater with a thermostat, another room, or a reason."}},
	{Enclosure: shortOf, Rule: finding.Rule{ID: "heat-short", Severity: finding.Error, Silence: finding.ByReason,
		Title:   "The warmest place, or the air, is colder than the species needs or than is aimed for.",
		Why:     "A heater makes a warm spot beside it, and warms the rest of the air by a few degrees only. An animal that is never warm enough does not feed or digest.",
		Source:  "heat balance after ISO 6946, the film after McAdams",
		Instead: "Where the spot is too cool: a mat of 150 to 250 W for a square metre, stuck flat on the wall, with foam behind it only if it is weak. Where the air is too cool: a warmer room, or a larger mat."}},
	{Enclosure: shortOf, Rule: finding.Rule{ID: "night-cold", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "In the coldest nights the air is colder than the species is kept at.",
		Why:     "Lamps are off by night; mats go on. Tropical animals are not used to cold nights, and a long row of them stops feeding and moults.",
		Source:  "the species sheet",
		Instead: "A mat or a ceramic heater for the night, or a warmer room."}},
	{Enclosure: shortOf, Rule: finding.Rule{ID: "too-warm", Severity: finding.Error, Silence: finding.ByReason,
		Title:   "The air gets too warm with the heaters working as they should.",
		Why:     "There is no cooler place to go to than the air at the far end.",
		Source:  "the species sheet; heat balance after ISO 6946",
		Instead: "Fewer watts, a timer, a cooler room, or the thermostat's probe where it is warmest."}},
	{Enclosure: stuckScalds, Rule: finding.Rule{ID: "stuck-scalds", Severity: finding.Danger, Silence: finding.Never,
		Title:   "If the thermostat sticks, the heater burns within minutes.",
		Why:     "Thermostats fail. With this heater always on, in the warmest room, even the favourable end of what is known lies above what burns skin in minutes. Animals do not draw back from heat that burns them.",
		Source:  "ISO 13732-1 on contact with hot surfaces (48 C for 10 minutes; from memory); Mader 2008, dvm360, on burns of reptiles",
		Instead: "A mat of 150 to 250 W for a square metre. A second thermostat does not make this one safe."}},
	{Enclosure: stuckHot, Rule: finding.Rule{ID: "stuck-hot", Severity: finding.Error, Silence: finding.ByReason,
		Title:   "If the thermostat sticks, the heater burns or overheats the animals.",
		Why:     "Thermostats fail. With this heater always on, in the warmest room, a surface that animals can lie on, or the air, gets past what they bear. They do not draw back from heat that burns them.",
		Source:  "ISO 13732-1 on contact with hot surfaces (43 C for 8 hours; from memory); Mader 2008, dvm360, on burns of reptiles; Punzo 1991, Bull. Br. arachnol. Soc. 8:277: half of the tarantulas died at 39.8 to 44.3 C",
		Instead: "A mat of 150 to 250 W for a square metre, without foam behind it; or a second thermostat in line with the first, set a little higher."}},
	{Enclosure: heaterFlux, Rule: finding.Rule{ID: "heater-flux", Severity: finding.Error, Silence: finding.ByReason,
		Title:   "A mat has more power for its size than mats have.",
		Why:     "Power for each square metre decides how hot a mat gets. Makers sell 137 to 230 W; foam or foil behind it sends twice as much in.",
		Source:  "maker pages and keepers' measurements of eight mats; chelonium.de: never above 42 C at 137 to 171 W",
		Instead: "Measure the mat and write its size; a larger mat of the same power gets less hot."}},
	{Enclosure: heatBeneath, Rule: finding.Rule{ID: "heat-beneath", Severity: finding.Error, Silence: finding.ByReason,
		Title:   "The floor above a mat gets hotter than an animal can touch.",
		Why:     "Substrate over a mat dries, and dry substrate insulates: the floor beneath it goes on warming, and a burrower digs towards it. A logger on such a floor showed above 60 C in a room of 20 C.",
		Source:  "Tortoise Trust forum, t=10207, 17 February 2014 (logged); reptiliansource.com and Bustard, British Tarantula Society, advise against; dubiaroaches.com and southernxreptiles.com use it with 2.5 to 5 cm of substrate at most",
		Instead: "Put it on a side or the back, above the substrate; or 2 cm of substrate over it, with the thermostat's probe on the floor itself."}},
	{Enclosure: probeFar, Rule: finding.Rule{ID: "probe-far", Severity: finding.Error, Silence: finding.ByReason,
		Title:   "The thermostat's probe is where it does not see how hot the heater gets.",
		Why:     "A thermostat holds the temperature of its probe. With the probe in the air or at the far end the heater goes on until that is warm, however hot it is itself.",
		Source:  "deadpanexotics.com, on temperature gradients; blackboxcages.com",
		Instead: "Put the probe on the warmest surface that the animals can reach, and set it to the warm end."}},
	{Enclosure: heaterRock, Rule: finding.Rule{ID: "heater-rock", Severity: finding.Error, Silence: finding.Never,
		Title:   "A heated stone or pad that the animals lie on.",
		Why:     "It has hot places, and they do not draw back from heat that burns them.",
		Source:  "Mader 2008, dvm360; veterinary-practice.com; wikivet, on burns of reptiles",
		Instead: "A mat outside on a wall, or a lamp over the lid."}},
	{Enclosure: heaterStrong, Rule: finding.Rule{ID: "heater-strong", Severity: finding.Advice, Silence: finding.ByReason,
		Title:   "A heater is much stronger than it needs to be.",
		Why:     "It is on for a small part of the time, so the spot swings, and if its thermostat fails it gets hotter.",
		Source:  "jbl.de, blog 271: a mat so weak that a failed controller cooks nobody",
		Instead: "The next smaller one."}},
	{Enclosure: measuredOdd, Rule: finding.Rule{ID: "measured-odd", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "What was measured lies far from what is to be expected of the plan.",
		Why:     "One of the two is wrong: the thermometer, where it lay, or what the plan says of heater, box and room.",
		Source:  "the plan itself; heat balance after ISO 6946",
		Instead: "Measure once more, some hours after the lid was last opened; look at power, size and place of the heater."}},
}

// Skin of people is harmed by burns in 8 hours and by scalds in minutes (ISO 13732-1, from
// memory). Nothing lower was published for animals.
const (
	burns  = 43.0
	scalds = 50.0
)

func (e *Enclosure) touchingLimit() string {
	if f := e.figure(schema.FigureSurfaceMax); f != nil {
		return e.atMost(f.Range.High, e.Plan.Degrees(), f)
	}
	return e.temperature(schema.UsualSurfaceMax) + " at the most, a precaution: no lethal temperature of most species is published"
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

func (e *Enclosure) spread(b climate.Band[climate.Celsius]) string {
	return wording.Degrees(b, e.Plan.Degrees())
}

// short is how an enclosure is too cold or too warm, the worst of it: one cause is said
// once.
type short struct {
	id  string
	how finding.Severity
	f   finding.Finding
}

// shortOf says how the enclosure is too cold, and how too warm, if that is the rule's to say.
func shortOf(r *Rule, e *Enclosure) {
	if !e.felt {
		e.felt = true
		e.cold, e.warm = e.tooCold(), e.tooWarm()
	}
	for _, s := range []*short{e.cold, e.warm} {
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

// bearable is what a species bears for long: what its sheet calls soft, else its target.
func (e *Enclosure) bearable() *plan.Figure {
	if f := e.figure(schema.FigureTemperatureSoft); f != nil {
		return f
	}
	return e.figure(schema.FigureTemperatureTarget)
}

// resting reports whether the plan has a part of the year that is meant to be cool.
func (e *Enclosure) resting() bool { return len(e.Plan.Seasons) > 0 }

// remembered is the worst that a figure gives which stands on memory alone.
func remembered(f *plan.Figure, how finding.Severity) finding.Severity {
	if f != nil && f.Quality.V == "memory" {
		return min(how, finding.Caution)
	}
	return how
}

func (e *Enclosure) tooCold() *short {
	if e.total() == 0 || e.rock() != nil {
		return nil
	}
	if room, hard, ok := e.roomLimits(); ok && !e.Plan.Heated() && room.V.Low < hard.Range.Low && !hard.Range.Contains(room.V.Low) {
		return nil // its room is colder than it bears, which is another rule's
	}
	p, ok := e.report()
	if !ok {
		return e.roomCold()
	}
	heated, u := e.Plan.Heated(), e.Plan.Degrees()
	night := p.Dark()
	hard := e.figure(schema.FigureTemperatureHard)
	soft, digests := e.bearable(), e.figure(schema.FigureSpotNeeded)
	if heated && p.Box.Room.Low < p.HardLow && night.Air.Likely < p.HardLow {
		// A place that is no more than not deadly is no refuge from air that harms.
		refuge := night.Spot.Likely >= p.HardLow && (soft == nil || float64(night.Spot.Likely) >= soft.Range.Low-1)
		how := finding.Caution // what kills is never mere advice
		if night.Spot.High < p.HardLow || night.Air.High < p.HardLow && !refuge {
			how = finding.Danger
		}
		return e.say("heat-lost", how, e.inColdest(p)+"the air inside is at about "+e.spread(night.Air)+", and even the warmest place at about "+e.spread(night.Spot), hard,
			e.atLeast(float64(p.HardLow), u, hard), "a room that is never so cold, or a larger heater")
	}
	// All the year: what is needed to live, and a surface on which it digests.
	hottest, usual, coldest := p.Warmest(), p.Usual(), p.Coldest()
	if soft != nil && float64(hottest.Spot.High) < soft.Range.Low-rounding {
		return e.colder(remembered(soft, finding.Error), "it is too cold all the year: the warmest place is at "+e.spread(hottest.Spot)+" in a room at "+e.temperature(p.Box.Room.High), soft)
	}
	if digests != nil && float64(usual.Spot.High) < digests.Range.Low-rounding {
		return e.colder(remembered(digests, finding.Error), "the warmest place that it finds is at "+e.spread(usual.Spot)+": it cannot digest what it eats", digests)
	}
	// A part of it.
	long, season := usual, "for the greater part of the year"
	if w := e.Plan.Place.Winter; w.Set() {
		long, season = p.At(climate.Conditions{Room: climate.Celsius((w.V.Low + w.V.High) / 2)}), "all winter"
	}
	rests := e.resting()
	if soft != nil && !rests {
		slack := 1.0
		if soft.What == schema.FigureTemperatureTarget {
			slack = 2 // a sheet that says no more than what to aim at
		}
		switch {
		case float64(long.Spot.Likely) < soft.Range.Low-slack:
			return e.colder(finding.Caution, "it is too cold "+season+": the warmest place is at about "+e.spread(long.Spot), soft)
		case heated && float64(coldest.Spot.Likely) < soft.Range.Low-slack:
			return e.colder(finding.Caution, e.inColdest(p)+"the warmest place is at about "+e.spread(coldest.Spot), soft)
		}
	}
	if digests != nil && !rests && float64(coldest.Spot.Likely) < digests.Range.Low-rounding {
		return e.colder(finding.Caution, e.inColdest(p)+"the warmest place is at about "+e.spread(coldest.Spot)+", and it digests badly", digests)
	}
	// The nights. Where a cool rest is planned the coldest of them are meant.
	floor, nights := math.Inf(-1), e.figure(schema.FigureNight)
	switch {
	case rests:
	case nights != nil:
		floor = nights.Range.Low
	case soft != nil:
		floor, nights = soft.Range.Low-usualDrop, soft
	}
	if float64(night.Air.Likely) < floor-1 {
		return e.chilly(finding.Caution, p, floor, nights)
	}
	// What is aimed for.
	if s := e.aimedSpot(p, coldest, usual); s != nil {
		return s
	}
	if s := e.aimedAir(p, long); s != nil {
		return s
	}
	if float64(night.Air.Likely) < floor-rounding {
		return e.chilly(finding.Advice, p, floor, nights)
	}
	return nil
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
func (e *Enclosure) colder(how finding.Severity, text string, f *plan.Figure) *short {
	limit := e.atLeast(f.Range.Low, e.Plan.Degrees(), f)
	if e.Plan.Heated() {
		return e.say("heat-short", how, text, f, limit, "a warmer room, or a larger mat, which lifts the air by a few degrees only; vivary why "+e.Plan.Name.V+" shows the balance")
	}
	return e.say("unheated", how, "nothing heats it, and "+text, f, limit, "heater \"mat\" { power = \"…\", size = \"…\", place = \"side\", thermostat = \"…\" } in the climate block; or another room")
}

func (e *Enclosure) inColdest(p *balance.Report) string {
	return "in a room at " + e.temperature(p.Box.Room.Low) + " "
}

func (e *Enclosure) chilly(how finding.Severity, p *balance.Report, floor float64, nights *plan.Figure) *short {
	return e.say("night-cold", how, "in the coldest nights, with "+e.temperature(p.Box.Room.Low)+" in the room, the air inside is at about "+e.spread(p.Dark().Air), nights,
		e.atLeast(floor, e.Plan.Degrees(), nights), "a warmer room, or a mat, which goes on by night")
}

// usualDrop is how much colder than what is borne by day a night may be where the sheet
// has no figure for it, in °C. Judgement: two to three degrees are what keepers call slight.
const usualDrop = 3

// aimedSpot compares the warmest place with what is aimed for.
func (e *Enclosure) aimedSpot(p *balance.Report, coldest, usual climate.Zones) *short {
	want := &p.Spot
	if !want.Known() {
		return nil
	}
	least := want.Low - rounding
	z, how := coldest, finding.Caution
	switch {
	case want.Planned && !e.Plan.Heated():
		// A room goes up and down: what is planned is what it reaches.
		if z = p.Warmest(); float64(p.Box.Room.High) >= least {
			return nil
		}
	case want.Planned:
		if float64(z.Spot.Low) >= least || e.tooHotByPlan() {
			return nil
		}
		if float64(z.Spot.Likely) >= least {
			if how = finding.Advice; e.beneath() != nil {
				return nil // how deep the substrate over it is decides, and a mat beneath is judged by its floor
			}
		}
	default:
		// A species that a warm room suits needs no spot.
		z, how = usual, finding.Advice
		if float64(z.Spot.Likely) >= least || float64(z.Air.Likely) >= p.Air.Low-rounding {
			return nil
		}
	}
	text := "nothing heats it, and the warmest place is as the room is, about " + e.spread(z.Spot)
	write, id := "a heater with a thermostat", "unheated"
	if e.Plan.Heated() {
		id = "heat-short"
		text = "the warm end is at about " + e.spread(z.Spot) + " at full power in a room at " + e.temperature(roomOf(p, z))
		write = "a larger mat, or one of more watts for its size"
	}
	if !want.Planned {
		return e.say(id, how, text, want.Figure, e.atLeast(want.Low, e.Plan.Degrees(), want.Figure), write)
	}
	x := e.say("heat-short", how, text, nil, e.temperature(climate.Celsius(want.Low))+" is planned at the warm end", write+"; or warm_end = \""+quantity.FormatAtMost(float64(z.Spot.Likely), e.Plan.Degrees())+"\"")
	x.f.At = e.Plan.Climate.WarmEnd.At
	return x
}

// roomOf is the room of the coldest or of the usual zones.
func roomOf(p *balance.Report, z climate.Zones) climate.Celsius {
	if z == p.Coldest() {
		return p.Box.Room.Low
	}
	return p.Box.Room.Middle()
}

// aimedAir compares the air with what the species is kept at, and with what is planned.
func (e *Enclosure) aimedAir(p *balance.Report, long climate.Zones) *short {
	f := p.Air.Figure
	if f != nil && !e.resting() && float64(long.Air.Likely) < f.Range.Low-1 {
		how := finding.Caution
		if f.What == schema.FigureTemperatureTarget {
			how = finding.Advice // what to aim at, missed by a little, and what is borne is met
		}
		return e.colder(how, "the air is usually at about "+e.spread(long.Air), f)
	}
	if p.Air.Planned && float64(long.Air.High) < p.Air.Low-1 && e.Plan.Heated() && !e.noCoolEnd() && !e.tooWarmByPlan() {
		x := e.say("heat-short", finding.Advice, "the cool end is the air, and that is usually at about "+e.spread(long.Air), nil,
			e.temperature(climate.Celsius(p.Air.Low))+" is planned at the cool end", "cool_end = \""+quantity.FormatRange(math.Floor(float64(p.Coldest().Air.Likely)), math.Ceil(float64(p.Warmest().Air.Likely)), e.Plan.Degrees())+"\", or a warmer room")
		x.f.At = e.Plan.Climate.CoolEnd.At
		return x
	}
	return nil
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
		Write: "heater \"mat\" { power = \"…\", place = \"side\", thermostat = \"…\" } in the climate block; or another room"}}
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
		x.At, x.Write = e.Plan.Climate.Heaters[0].At, "fewer watts, a lower thermostat, or a cooler room"
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

// bare reports whether a heater of the enclosure has no thermostat: another rule says it.
func (e *Enclosure) bare() bool {
	for _, h := range e.heaters() {
		if !e.Collection.Plan.Setting(h).Set() && !h.Tube() {
			return true
		}
	}
	return false
}

// radiates reports whether the spot is made by what is not flat on a face: how hot it is
// there is known within a dozen degrees only, and nothing is refused for it.
func radiates(p *balance.Report, z climate.Zones) bool {
	return z.Warmest >= 0 && p.Written[z.Warmest].What() != "mat" && p.Written[z.Warmest].What() != "cable"
}

// beneath returns the first mat or cable under the floor, or nil.
func (e *Enclosure) beneath() *plan.Heater {
	for _, h := range e.heaters() {
		if h.Place.V == "under" && (h.What() == "mat" || h.What() == "cable") {
			return h
		}
	}
	return nil
}

// stuck returns what a failed thermostat comes to in the warmest room, and whether that is
// for these rules to say: a heater without a thermostat, or with its probe elsewhere, is
// another rule's.
func (e *Enclosure) stuck() (p *balance.Report, z climate.Zones, ok bool) {
	p, ok = e.report()
	if !ok || len(p.Heaters) == 0 || e.bare() || e.far() {
		return p, z, false
	}
	return p, p.Stuck(), true
}

// scalded reports whether even the favourable end of the spot burns in minutes.
func scalded(p *balance.Report, z climate.Zones) bool {
	return z.Warmest >= 0 && z.Spot.Low > scalds && !radiates(p, z)
}

// gets words what a failed thermostat comes to.
func (e *Enclosure) gets(p *balance.Report, z climate.Zones) string {
	return e.always(p) + "the surface at the " + p.Written[z.Warmest].Name.V + " gets to about " + e.spread(z.Spot)
}

func (e *Enclosure) always(p *balance.Report) string {
	return "if its thermostat sticks, in a room at " + e.temperature(p.Box.Room.High) + ", "
}

func stuckScalds(r *Rule, e *Enclosure) {
	p, z, ok := e.stuck()
	if !ok || !scalded(p, z) {
		return
	}
	e.Add(finding.Finding{Rule: &r.Rule, At: p.Written[z.Warmest].At, Text: e.gets(p, z), Limit: e.touchingLimit(), Source: r.Source,
		Write: "a mat of 150 to 250 W for a square metre, and its size"})
}

func stuckHot(r *Rule, e *Enclosure) {
	p, z, ok := e.stuck()
	if !ok || scalded(p, z) {
		return
	}
	how, bad := e.hotSpot(p, z)
	air := finding.Caution
	if z.Air.Low > p.HardHigh {
		air = finding.Error
	}
	if z.Air.Likely > p.HardHigh && (!bad || air > how) {
		hard := e.figure(schema.FigureTemperatureHard)
		e.add(finding.Finding{Rule: &r.Rule, At: p.Written[max(0, z.Warmest)].At, Text: e.always(p) + "the air gets to about " + e.spread(z.Air),
			Limit: e.atMost(float64(p.HardHigh), e.Plan.Degrees(), hard), Source: e.Cite(hard), Write: "fewer watts, or a second thermostat in line"}, air)
		return
	}
	if !bad {
		return
	}
	w := p.Written[z.Warmest]
	x := finding.Finding{Rule: &r.Rule, At: w.At, Source: r.Source, Text: e.gets(p, z), Limit: e.touchingLimit(),
		Write: "a mat of 150 to 250 W for a square metre without foam behind it, or a second thermostat in line"}
	switch {
	case radiates(p, z):
		x.Write = "fewer watts, or farther away; or a second thermostat in line"
	case how == finding.Advice:
		x.Text += ", if it is of the usual size"
		x.Write = "size = \"…\", length and width of the " + w.Name.V
	}
	e.add(x, how)
}

// hotSpot judges the spot of a failed thermostat.
func (e *Enclosure) hotSpot(p *balance.Report, z climate.Zones) (how finding.Severity, bad bool) {
	if z.Warmest < 0 {
		return 0, false
	}
	w := p.Written[z.Warmest]
	switch {
	case w.Place.V == "inside":
		return 0, false // a guard keeps them off it, or another rule speaks
	case radiates(p, z):
		return finding.Caution, z.Spot.Low > burns
	case z.Spot.Low > burns:
		return finding.Error, true
	case z.Spot.Likely <= p.Touch || e.wrongSize(p):
		return 0, false
	case !w.Size.Set() && !w.Covers.Set() && !w.Length.Set():
		return finding.Advice, true // its size is a guess, and with it how hot it gets
	}
	return finding.Caution, true
}

// add adds a finding at a severity of its rule or below.
func (e *Enclosure) add(f finding.Finding, how finding.Severity) {
	if how >= f.Rule.Severity {
		e.Add(f)
		return
	}
	e.Soft(f, how)
}

// Flux beyond which a mat is asked about, is cautioned where something lies behind it, and
// is none that is sold, in W for a square metre.
const (
	fluxAsked  = 250
	fluxBacked = 150
	fluxNone   = 400
)

// flux returns the power of a square metre of a mat of which the plan says how large it is,
// and whether something lies behind it that sends its heat in.
func flux(p *balance.Report, i int) (q float64, backed, ok bool) {
	h, w := &p.Heaters[i], p.Written[i]
	if w.What() != "mat" || !(w.Size.Set() || w.Covers.Set()) {
		return 0, false, false
	}
	return float64(p.Box.Flux(h)), p.Box.Covers[p.Box.Face(h)].Resistance >= climate.Foil.Resistance, true
}

func unsold(q float64, backed bool) bool { return q > fluxNone || q > fluxAsked && backed }

// wrongSize reports whether a mat has a power for its size that none has which is sold.
func (e *Enclosure) wrongSize(p *balance.Report) bool {
	for i := range p.Heaters {
		if q, backed, ok := flux(p, i); ok && unsold(q, backed) {
			return true
		}
	}
	return false
}

func heaterFlux(r *Rule, e *Enclosure) {
	p, ok := e.report()
	if !ok {
		return
	}
	_, stuck, judged := e.stuck()
	burning := judged && stuck.Warmest >= 0 && !radiates(p, stuck)
	if burning && stuck.Spot.Low > burns {
		return // said by how hot it gets
	}
	for i := range p.Heaters {
		w := p.Written[i]
		q, backed, ok := flux(p, i)
		if !ok || q <= fluxBacked || q <= fluxAsked && !backed {
			continue
		}
		x := finding.Finding{Rule: &r.Rule, At: w.Power.At, Source: r.Source, Limit: "137 to 230 W for a square metre are sold",
			Text: "the " + w.Name.V + " has " + strconv.Itoa(int(q+0.5)) + " W for a square metre"}
		side := math.Sqrt(w.Power.V.Value/float64(climate.UsualFlux)) * 1000
		x.Write = "the size of the mat that you have: one of " + w.Power.V.String() + " is about " + quantity.Format(side, e.Plan.Housing.Inside.V.Unit) + " square"
		switch {
		case unsold(q, backed):
			e.Add(x)
		case burning && stuck.Spot.Likely > p.Touch:
		case q > fluxBacked && backed:
			x.Text += ", and " + e.backing(w) + " behind it sends most of that in"
			x.Write = "nothing behind it, or a weaker mat"
			e.Soft(x, finding.Caution)
		case q > fluxAsked:
			e.Soft(x, finding.Advice)
		}
	}
}

// backing names what lies behind a heater.
func (e *Enclosure) backing(h *plan.Heater) string {
	for _, f := range e.Plan.Housing.Faces {
		if f.Backing.Set() && f.Backing.V != "bare" {
			return f.Backing.V
		}
	}
	return "what lies"
}

// heatBeneath judges a mat beneath the floor by what it does once its substrate is dry.
func heatBeneath(r *Rule, e *Enclosure) {
	h := e.beneath()
	p, ok := e.report()
	if h == nil || !ok {
		return
	}
	z := p.Dried()
	if e.bare() {
		z = p.DriedStuck()
	}
	x := finding.Finding{Rule: &r.Rule, At: h.Place.At, Source: r.Source, Limit: e.touchingLimit(), Write: "place = \"side\""}
	if z.Floor.Likely > p.Touch {
		x.Text = "once the substrate over the " + h.Name.V + " has dried, the floor beneath it gets to about " + e.spread(z.Floor)
		e.Add(x)
		return
	}
	not, life := e.figure(schema.FigureHeaterNot), e.figure(schema.FigureLifestyle)
	against := not != nil && strings.Contains(not.Value.V, "under")
	switch {
	case against:
		x.Limit, x.Source = e.limit("not "+not.Value.V, not), e.Cite(not)
	case e.word(schema.FigureLifestyle) == "burrower":
		x.Limit, x.Source = e.limit("a burrower", life), e.Cite(life)
	default:
		return
	}
	x.Source += "; for it, with thin substrate: dubiaroaches.com, southernxreptiles.com"
	x.Text = fmt.Sprintf("the %s is beneath the floor, which gets to about %s; keepers do it, and others advise against it for animals that dig down to get away from heat", h.Name.V, e.spread(z.Floor))
	e.Soft(x, finding.Caution)
}

// far reports whether a probe hangs where it does not see its heater, with the harm done.
func (e *Enclosure) far() bool {
	p, ok := e.report()
	if !ok {
		return false
	}
	z := p.Coldest()
	return z.Warmest >= 0 && p.Heaters[z.Warmest].Probe == climate.InAir && z.Spot.Likely > p.Touch && !radiates(p, z)
}

func probeFar(r *Rule, e *Enclosure) {
	if !e.far() || e.bare() {
		return
	}
	p, _ := e.report()
	z := p.Coldest()
	h := p.Written[z.Warmest]
	x := finding.Finding{Rule: &r.Rule, At: h.Probe.At, Limit: e.touchingLimit(), Source: r.Source, Write: "probe = \"spot\", and thermostat = what the warm end is to be",
		Text: "with its probe " + probed(h) + " the " + h.Name.V + " gets to about " + e.spread(z.Spot) + " at the surface in a room at " + e.temperature(p.Box.Room.Low)}
	if z.Spot.Low > burns {
		e.Add(x)
		return
	}
	e.Soft(x, finding.Caution)
}

func probed(h *plan.Heater) string {
	if h.Probe.V == "cool end" {
		return "at the cool end"
	}
	return "in the air"
}

// rock returns the heater that the animals lie on, or nil.
func (e *Enclosure) rock() *plan.Heater {
	for _, h := range e.heaters() {
		if h.What() == "rock" {
			return h
		}
	}
	return nil
}

func heaterRock(r *Rule, e *Enclosure) {
	if h := e.rock(); h != nil {
		e.Add(finding.Finding{Rule: &r.Rule, At: h.At, Text: "the animals lie on the heater itself", Source: r.Source, Write: "heater \"mat\" on a side wall, with a thermostat"})
	}
}

// strong is the part of the time, in the coldest room, below which a heater is called too
// strong.
const strong = 0.3

func heaterStrong(r *Rule, e *Enclosure) {
	p, ok := e.report()
	if !ok || len(p.Heaters) != 1 || e.bare() || !p.Heaters[0].Thermostat {
		return
	}
	z := p.Coldest()
	if s := p.Stuck(); s.Warmest >= 0 && s.Spot.Low > burns && !radiates(p, s) {
		return // said by how hot it gets
	}
	if z.Warmest < 0 || radiates(p, z) || !(z.Duty.High < strong) || z.Spot.Likely < p.Heaters[0].Setting-1 {
		return
	}
	h := p.Written[0]
	e.Add(finding.Finding{Rule: &r.Rule, At: h.Power.At, Source: r.Source, Limit: "a third of the time in the coldest room",
		Text:  "the " + h.Name.V + " is on for " + wording.Band(share(z.Duty), "%") + " of the time even in the coldest room",
		Write: "power = \"" + quantity.Format(math.Ceil(h.Power.V.Value*float64(z.Duty.Likely)*2), quantity.Watt) + "\", or about that"})
}

func share(b climate.Band[climate.Share]) climate.Band[climate.Percent] {
	return climate.Band[climate.Percent]{Low: climate.Percent(100 * b.Low), Likely: climate.Percent(100 * b.Likely), High: climate.Percent(100 * b.High)}
}

func measuredOdd(r *Rule, e *Enclosure) {
	p, ok := e.report()
	if !ok || p.Belief == nil || !p.Belief.Odd {
		return
	}
	at := e.Plan.Climate.At
	if m := e.Plan.Climate.Measured; m != nil {
		at = m.At
	}
	e.Add(finding.Finding{Rule: &r.Rule, At: at, Text: "what was measured is far from what heater, box and room give", Source: r.Source,
		Limit: "vivary why " + e.Plan.Name.V + " says what is to be expected", Write: "the measurement once more, or the heater's power, size and place as they are"})
}
