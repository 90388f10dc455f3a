package check

import (
	"strconv"

	"vivary/plan"
	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/schema/quantity"
)

var heat = []*Rule{
	{Enclosure: heaterBare, Rule: finding.Rule{ID: "heater-bare", Severity: finding.Danger, Kills: true,
		Title:   "A heater has no thermostat.",
		Why:     "An electric heater goes on warming whatever the temperature. An unregulated heating tape reached 89 °C after a fault.",
		Source:  "arbreptiles.com/cages/flexburn.html: an unregulated tape reached 89 °C",
		Instead: "Put a thermostat in, its probe at the warmest spot that the animals can reach, and write the temperature at which it switches off.",
		Bad:     "climate {\n  heater \"mat\" {\n    power = \"90 W\"\n    place = \"side\"\n  }\n}\n",
		Good:    "climate {\n  heater \"mat\" {\n    power      = \"90 W\"\n    place      = \"side\"\n    thermostat = \"30 C\"\n  }\n}\n"}},
	{Enclosure: heaterOvershoot, Rule: finding.Rule{ID: "heater-overshoot", Severity: finding.Danger, Kills: true,
		Title:   "A thermostat lets the temperature go past what the species bears.",
		Why:     "Heat is the quickest killer. A thermostat switches off at its setting, and the temperature still rises by its swing.",
		Source:  "the species sheet; arbreptiles.com/cages/flexburn.html",
		Instead: "Set it so far below the limit that its swing fits in between.",
		Bad:     "climate {\n  heater \"mat\" {\n    power      = \"90 W\"\n    place      = \"side\"\n    thermostat = \"34 C\"\n    swing      = \"2 C\"\n  }\n}\n",
		Good:    "climate {\n  heater \"mat\" {\n    power      = \"90 W\"\n    place      = \"side\"\n    thermostat = \"30 C\"\n    swing      = \"2 C\"\n  }\n}\n"}},
	{Enclosure: targetHarms, Rule: finding.Rule{ID: "temperature-harmful", Severity: finding.Danger, Kills: true,
		Title:   "A temperature is planned that the species does not bear.",
		Why:     "Outside of its hard limits an animal is harmed within hours.",
		Source:  "the species sheet",
		Instead: "Plan a temperature within the limits. Where you know better, state a figure of your own in a species block, with its source.",
		Bad:     "climate {\n  warm_end = \"37 C\"\n  cool_end = \"26 C\"\n}\n",
		Good:    "climate {\n  warm_end = \"30 C\"\n  cool_end = \"26 C\"\n}\n"}},
	{Enclosure: roomTooHot, Rule: finding.Rule{ID: "room-too-hot", Severity: finding.Danger, Kills: true,
		Title:   "The room gets hotter than the species bears.",
		Why:     "Nothing in an enclosure cools it below its room. In a room that nobody entered animals died when its cooling failed.",
		Source:  "herpcenter.com/threads/rip-biscotti.53878, on the failure of an air conditioner; the species sheet",
		Instead: "Keep it in a cooler room, or cool the room and write what its thermometer shows then.",
		Bad:     "room \"east\" {\n  temperature = \"24 to 38 C\"\n}\n",
		Good:    "room \"east\" {\n  temperature = \"24 to 27 C\"\n}\n"}},
	{Enclosure: roomTooCold, Rule: finding.Rule{ID: "room-too-cold", Severity: finding.Error,
		Title:   "The room gets colder than the species bears, and nothing warms the enclosure.",
		Why:     "\"Room temperature\" was 21 °C to one keeper and 9 °C to another.",
		Source:  "scorpion.community/gedankenaustausch-exchange/room-temperature-t236.html; the species sheet",
		Instead: "Put in a heater with a thermostat, or keep the room warmer and write what its thermometer shows then.",
		Bad:     unheated("9 to 21 C"),
		Good:    unheated("18 to 25 C")}},
	{Collection: roomOneNumber, Rule: finding.Rule{ID: "room-one-number", Severity: finding.Error,
		Title:   "A room has one temperature for the whole year.",
		Why:     "No room has. Without its lowest and its highest temperature nothing can be said of a winter night or a hot week.",
		Source:  "scorpion.community/gedankenaustausch-exchange/room-temperature-t236.html",
		Instead: "Write the lowest and the highest that a thermometer in the room shows over the year.",
		Bad:     "room \"east\" {\n  temperature = \"25 C\"\n}\n",
		Good:    "room \"east\" {\n  temperature = \"24 to 27 C\"\n}\n"}},
	{Enclosure: heaterMisplaced, Rule: finding.Rule{ID: "heater-misplaced", Severity: finding.Error,
		Title:   "A heater is where the species must not have one.",
		Why:     "A burrower digs down to get away from heat. With a mat beneath the floor it digs towards it, and is burnt.",
		Source:  "reptiliansource.com/pages/asian-forest-scorpion-care; voofla.com, Titan Scorpions, 17 March 2022",
		Instead: "Put it on a side or the back, above the substrate, or over the lid.",
		Bad:     "climate {\n  heater \"mat\" {\n    power      = \"90 W\"\n    place      = \"under\"\n    thermostat = \"30 C\"\n  }\n}\n",
		Good:    "climate {\n  heater \"mat\" {\n    power      = \"90 W\"\n    place      = \"side\"\n    thermostat = \"30 C\"\n  }\n}\n"}},
	{Enclosure: heaterUnguarded, Rule: finding.Rule{ID: "heater-unguarded", Severity: finding.Error,
		Title:   "A heater inside the enclosure has no guard.",
		Why:     "Animals climb on it and do not feel a burn in time.",
		Source:  "common practice, no source",
		Instead: "Put it outside, or put a guard around it and write guarded = true.",
		Bad:     "climate {\n  heater \"lamp\" {\n    power      = \"90 W\"\n    place      = \"inside\"\n    thermostat = \"30 C\"\n  }\n}\n",
		Good:    "climate {\n  heater \"lamp\" {\n    power      = \"90 W\"\n    place      = \"inside\"\n    thermostat = \"30 C\"\n    guarded    = true\n  }\n}\n"}},
	{Collection: channelClash, Rule: finding.Rule{ID: "channel-clash", Severity: finding.Error,
		Title:   "Heaters share an outlet of a thermostat, but need different temperatures.",
		Why:     "One outlet holds one temperature: one of the enclosures will be wrong.",
		Source:  "common practice, no source",
		Instead: "Give them outlets of their own, or enclosures to share it that want the same.",
		Bad:     channelBoxes("\"20 C\""), Good: channelBoxes("\"30 C\"")}},
	{Enclosure: heaterUnchecked, Rule: finding.Rule{ID: "heater-unchecked", Severity: finding.Caution,
		Title:   "There is no thermometer besides the thermostat's own.",
		Why:     "The controller can be the thing that fails; its own reading does not show it.",
		Source:  "reptileamphibiangear.com/how-to/reptile-heat-mat-thermostat-usage-guide",
		Instead: "Put in a thermometer that keeps the lowest and the highest, and write thermometer = true.",
		Bad:     "climate {\n  heater \"mat\" {\n    power      = \"90 W\"\n    place      = \"side\"\n    thermostat = \"30 C\"\n  }\n}\n",
		Good:    "climate {\n  thermometer = true\n  heater \"mat\" {\n    power      = \"90 W\"\n    place      = \"side\"\n    thermostat = \"30 C\"\n  }\n}\n"}},
	{Enclosure: heaterWide, Rule: finding.Rule{ID: "heater-wide", Severity: finding.Caution,
		Title:   "A heater covers more than a third of a wall or of the floor.",
		Why:     "There is no cool end left to go to.",
		Source:  "leopardgeckos.co.za, on mats under geckos",
		Instead: "A smaller one, at one end.",
		Bad:     "climate {\n  heater \"mat\" {\n    power      = \"90 W\"\n    place      = \"side\"\n    thermostat = \"30 C\"\n    covers     = \"60 %\"\n  }\n}\n",
		Good:    "climate {\n  heater \"mat\" {\n    power      = \"90 W\"\n    place      = \"side\"\n    thermostat = \"30 C\"\n    covers     = \"30 %\"\n  }\n}\n"}},
	{Enclosure: thermostatOff, Rule: finding.Rule{ID: "thermostat-off-target", Severity: finding.Caution,
		Title:   "No thermostat is set to the temperature that is planned.",
		Why:     "The warm end becomes what the thermostat holds, not what the plan says.",
		Source:  "the plan itself",
		Instead: "Set the thermostat and the plan to the same temperature.",
		Bad:     "climate {\n  warm_end = \"30 C\"\n  cool_end = \"25 C\"\n  heater \"mat\" {\n    power      = \"90 W\"\n    place      = \"side\"\n    thermostat = \"26 C\"\n  }\n}\n",
		Good:    "climate {\n  warm_end = \"30 C\"\n  cool_end = \"25 C\"\n  heater \"mat\" {\n    power      = \"90 W\"\n    place      = \"side\"\n    thermostat = \"30 C\"\n  }\n}\n"}},
	{Enclosure: targetUnusual, Rule: finding.Rule{ID: "temperature-unusual", Severity: finding.Caution,
		Title:   "A temperature is planned that is borne, but not good for long.",
		Why:     "An animal held at the edge of what it bears does not show it until it is ill.",
		Source:  "the species sheet",
		Instead: "Plan nearer to what is aimed for; a part of the year is a season block; a reason is an accept block.",
		Bad:     "climate {\n  warm_end = \"34 C\"\n  cool_end = \"26 C\"\n}\n",
		Good:    "climate {\n  warm_end = \"30 C\"\n  cool_end = \"26 C\"\n}\n"}},
	{Enclosure: offTarget, Rule: finding.Rule{ID: "off-target", Severity: finding.Caution,
		Title:   "No part of the enclosure is at the temperature that is aimed for.",
		Why:     "Where even the cool end is too warm, or the warm end too cool, the animal cannot choose.",
		Source:  "the species sheet, which also says what is disputed",
		Instead: "Let one end lie within what is aimed for.",
		Bad:     "climate {\n  warm_end = \"90 F\"\n  cool_end = \"90 F\"\n}\n",
		Good:    "climate {\n  warm_end = \"86 F\"\n  cool_end = \"78 F\"\n}\n"}},
	{Enclosure: noGradient, Rule: finding.Rule{ID: "no-gradient", Severity: finding.Caution,
		Title:   "Warm end and cool end are nearly the same.",
		Why:     "An animal governs its temperature by where it sits.",
		Source:  "common practice, no source: a difference of 3 °C at the least",
		Instead: "Warm one end only.",
		Bad:     "climate {\n  warm_end = \"29 C\"\n  cool_end = \"28 C\"\n}\n",
		Good:    "climate {\n  warm_end = \"30 C\"\n  cool_end = \"26 C\"\n}\n"}},
	{Enclosure: seasonShort, Rule: finding.Rule{ID: "season-short", Severity: finding.Caution,
		Title:   "A season ends before its temperature could be reached and left again.",
		Why:     "What is changed faster than planned is a shock; what is changed as planned never arrives.",
		Source:  "common practice, no source",
		Instead: "A longer season, a smaller step, or a steeper ramp.",
		Bad:     "season \"rest\" {\n  from = \"1 dec\"\n  to   = \"20 dec\"\n  climate {\n    warm_end = \"22 C\"\n    cool_end = \"22 C\"\n  }\n}\n",
		Good:    "season \"rest\" {\n  from = \"1 dec\"\n  to   = \"28 feb\"\n  climate {\n    warm_end = \"25 C\"\n    cool_end = \"22 C\"\n  }\n}\n"}},
	{Enclosure: uvLamp, Rule: finding.Rule{ID: "uv-lamp", Severity: finding.Caution,
		Title:   "A lamp gives off ultraviolet light, which this species is spared.",
		Why:     "Sixteen hours a day of weak ultraviolet bleached the glow of a scorpion and changed how it reacts.",
		Source:  "Kloock et al. 2010, J. Arachnol. 38:441-445",
		Instead: "A heater without ultraviolet. A viewing lamp is for minutes, not on a timer.",
		Bad:     "climate {\n  heater \"lamp\" {\n    power      = \"90 W\"\n    place      = \"above\"\n    thermostat = \"30 C\"\n    uv         = true\n  }\n}\n",
		Good:    "climate {\n  heater \"lamp\" {\n    power      = \"90 W\"\n    place      = \"above\"\n    thermostat = \"30 C\"\n  }\n}\n"}},
	{Enclosure: noNightDrop, Rule: finding.Rule{ID: "no-night-drop", Severity: finding.Advice,
		Title:   "The heating runs day and night for a species that is used to cool nights.",
		Why:     "A slight drop at night is natural.",
		Source:  "the species sheet",
		Instead: "Write night, or hours for a heater on a timer.",
		Bad:     "climate {\n  warm_end = \"30 C\"\n  heater \"mat\" {\n    power      = \"90 W\"\n    place      = \"side\"\n    thermostat = \"30 C\"\n  }\n}\n",
		Good:    "climate {\n  warm_end = \"30 C\"\n  night    = \"22 to 25 C\"\n  heater \"mat\" {\n    power      = \"90 W\"\n    place      = \"side\"\n    thermostat = \"30 C\"\n  }\n}\n"}},
	{Enclosure: roomNearLimit, Rule: finding.Rule{ID: "room-near-limit", Severity: finding.Advice,
		Title:   "In the hot season the room comes within 2 °C of what the species bears.",
		Why:     "Warm air rises: a top shelf is warmer than the thermometer on the wall, and the next summer may be hotter.",
		Source:  "tarantulaforum.com/threads/my-country-just-got-hit-by-a-heat-wave-my-spiders-gonna-die.24927",
		Instead: "Low in the rack, and a plan for hot days: shade, a fan, less food.",
		Bad:     "room \"east\" {\n  temperature = \"24 to 34 C\"\n}\n",
		Good:    "room \"east\" {\n  temperature = \"24 to 28 C\"\n}\n"}},
}

// unheated is an enclosure without a heater in a room of a temperature.
func unheated(room string) string {
	return "room \"east\" {\n  temperature = \"" + room + "\"\n}\n" +
		"enclosure \"box\" {\n  species = \"pandinus-imperator\"\n  housing {\n    inside = \"76 x 46 x 41 cm\"\n    lid    = \"solid, latched\"\n    depth  = \"16 cm\"\n    hides  = 4\n  }\n  animals \"adults\" {\n    count = 3\n    stage = \"adult\"\n  }\n}\n"
}

// channelBoxes is two enclosures on one outlet of a thermostat.
func channelBoxes(other string) string {
	box := func(name, warm string) string {
		return "enclosure \"" + name + "\" {\n  species = \"brachypelma-hamorii\"\n  housing {\n    inside = \"40 x 30 x 25 cm\"\n    lid    = \"solid, latched\"\n    depth  = \"10 cm\"\n  }\n" +
			"  animals \"female\" {\n    count = \"0.1\"\n    stage = \"adult\"\n  }\n  climate {\n    warm_end = " + warm + "\n    heater \"mat\" {\n      power      = \"25 W\"\n      place      = \"side\"\n      thermostat = \"30 C\"\n      channel    = \"rack 1\"\n    }\n  }\n}\n"
	}
	return box("left", "\"29 to 30 C\"") + box("right", other)
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
		if h.Thermostat.At.Written() || e.setting(h).Set() {
			continue
		}
		text := "the " + h.Name.V + " has no thermostat"
		if h.Channel.Set() {
			text = "the " + h.Name.V + " is on outlet " + strconv.Quote(h.Channel.V) + ", of which no heater says its thermostat"
		}
		f := e.figure("temperature-target")
		write := "thermostat = \"…\""
		if f != nil {
			write = "thermostat = \"" + quantity.FormatAtMost(f.Range.High, e.degrees()) + "\""
		}
		e.Add(finding.Finding{Rule: &r.Rule, At: h.At, Text: text, Source: r.Source, Write: write})
	}
}

// degrees is the unit in which the keeper writes temperatures.
func (e *Enclosure) degrees() quantity.Unit {
	switch c := e.Plan.Climate; {
	case c != nil && c.WarmEnd.Set():
		return c.WarmEnd.V.Unit
	case e.Plan.Place != nil && e.Plan.Place.Temperature.Set():
		return e.Plan.Place.Temperature.V.Unit
	}
	return quantity.Celsius
}

func heaterOvershoot(r *Rule, e *Enclosure) {
	hard := e.figure("temperature-hard")
	if hard == nil {
		return
	}
	for _, h := range e.heaters() {
		t := e.setting(h)
		if !t.Set() || hard.Range.Contains(t.V.Value+swing(h)) || t.V.Value+swing(h) < hard.Range.Low {
			continue
		}
		u, s := t.V.Unit, usualSwing
		step := quantity.CelsiusStep
		if u == quantity.Fahrenheit {
			step = quantity.FahrenheitStep
		}
		s = swing(h)
		over := "may overshoot by "
		if !h.Swing.Set() {
			over = "as usual may overshoot by "
		}
		e.Add(finding.Finding{Rule: &r.Rule, At: t.At,
			Text: "the thermostat switches off at " + t.V.String() + " and " + over + quantity.Format(s, step) + ": " +
				quantity.Format(t.V.Value+s, u) + " is past what " + e.Sheet.Name.V + " bears",
			Limit: e.atMost(hard.Range.High, u, hard), Source: e.Cite(hard),
			Write: "thermostat = \"" + quantity.FormatAtMost(e.aim(hard.Range.High-s), u) + "\", or lower"})
	}
}

// aim is the upper end of what is aimed for, and at most v.
func (e *Enclosure) aim(v float64) float64 {
	if f := e.figure("temperature-target"); f != nil {
		v = min(v, f.Range.High)
	}
	return v
}

// target is one temperature that the plan states.
type target struct {
	attr   string // as it is written
	words  string
	season *plan.Season
	night  bool
	plan.Written[quantity.Range]
}

// targets calls use for every temperature that the plan states.
func (e *Enclosure) targets(use func(target)) {
	if c := e.Plan.Climate; c != nil {
		three(nil, c.WarmEnd, c.CoolEnd, c.Night, use)
	}
	for _, s := range e.Plan.Seasons {
		if c := s.Climate; c != nil {
			three(s, c.WarmEnd, c.CoolEnd, c.Night, use)
		}
	}
}

func three(s *plan.Season, warm, cool, night plan.Written[quantity.Range], use func(target)) {
	if warm.Set() {
		use(target{"warm_end", "the warm end", s, false, warm})
	}
	if cool.Set() {
		use(target{"cool_end", "the cool end", s, false, cool})
	}
	if night.Set() {
		use(target{"night", "the night", s, true, night})
	}
}

func (t target) what() string {
	if t.season != nil {
		return t.words + " of season " + strconv.Quote(t.season.Name.V)
	}
	return t.words
}

func targetHarms(r *Rule, e *Enclosure) {
	hard := e.figure("temperature-hard")
	if hard == nil {
		return
	}
	e.targets(func(t target) {
		if hard.Range.Encloses(t.V) {
			return
		}
		text := t.what() + " is planned at " + t.V.String() + ": colder than " + e.Sheet.Name.V + " bears"
		if t.V.High > hard.Range.High {
			text = t.what() + " is planned at " + t.V.String() + ": hotter than " + e.Sheet.Name.V + " bears"
		}
		e.Add(finding.Finding{Rule: &r.Rule, At: t.At, Text: text, Limit: e.within(hard.Range, t.V.Unit, hard), Source: e.Cite(hard), Write: e.insteadOf(t)})
	})
}

// insteadOf writes what is aimed for in the place of a target.
func (e *Enclosure) insteadOf(t target) string {
	f := e.figure("temperature-target")
	if n := e.figure("night"); t.night && n != nil {
		f = n
	}
	if f == nil {
		f = e.figure("temperature-soft")
	}
	if f == nil {
		return ""
	}
	v := quantity.FormatRange(f.Range.Low, f.Range.High, t.V.Unit)
	switch t.attr {
	case "warm_end":
		v = quantity.FormatAtMost(f.Range.High, t.V.Unit)
	case "cool_end":
		v = quantity.FormatAtLeast(f.Range.Low, t.V.Unit)
	}
	return t.attr + " = \"" + v + "\""
}

func targetUnusual(r *Rule, e *Enclosure) {
	soft, hard := e.figure("temperature-soft"), e.figure("temperature-hard")
	if soft == nil {
		return
	}
	e.targets(func(t target) {
		if t.season != nil || hard != nil && !hard.Range.Encloses(t.V) {
			return // a season says why; beyond the hard limit it has been said
		}
		bears := soft.Range
		if n := e.figure("night"); t.night && n != nil {
			bears.Low = min(bears.Low, n.Range.Low)
		}
		if bears.Encloses(t.V) {
			return
		}
		text := t.what() + " is planned at " + t.V.String() + ": cooler than is good for " + e.Sheet.Name.V
		if t.V.High > bears.High {
			text = t.what() + " is planned at " + t.V.String() + ": warmer than is good for " + e.Sheet.Name.V
		}
		e.Add(finding.Finding{Rule: &r.Rule, At: t.At, Text: text, Limit: e.within(bears, t.V.Unit, soft), Source: e.Cite(soft),
			Write: e.insteadOf(t) + "; a season block where it is for a part of the year"})
	})
}

func offTarget(r *Rule, e *Enclosure) {
	c, f := e.Plan.Climate, e.figure("temperature-target")
	if c == nil || f == nil {
		return
	}
	add := func(at source.Place, text string, u quantity.Unit) {
		e.Add(finding.Finding{Rule: &r.Rule, At: at, Text: text, Limit: e.within(f.Range, u, f), Source: e.Cite(f),
			Write: "warm_end = \"" + quantity.FormatAtMost(f.Range.High, u) + "\", cool_end = \"" + quantity.FormatAtLeast(f.Range.Low, u) + "\""})
	}
	if cool := c.CoolEnd; cool.Set() && cool.V.Low > f.Range.High && !f.Range.Contains(cool.V.Low) {
		add(cool.At, "even the cool end is at "+cool.V.String()+": the whole enclosure is warmer than is aimed for", cool.V.Unit)
	}
	if warm := c.WarmEnd; warm.Set() && warm.V.High < f.Range.Low && !f.Range.Contains(warm.V.High) {
		add(warm.At, "even the warm end is at "+warm.V.String()+": the whole enclosure is cooler than is aimed for", warm.V.Unit)
	}
}

// leastGradient is the difference between warm end and cool end that is asked for,
// in °C.
const leastGradient = 3.0

func noGradient(r *Rule, e *Enclosure) {
	c := e.Plan.Climate
	if c == nil || !c.WarmEnd.Set() || !c.CoolEnd.Set() || c.WarmEnd.V.High-c.CoolEnd.V.Low > leastGradient-1e-9 {
		return
	}
	text := "warm end " + c.WarmEnd.V.String() + " and cool end " + c.CoolEnd.V.String() + " leave the animals no choice"
	if c.WarmEnd.V.High < c.CoolEnd.V.Low {
		text = "the cool end, " + c.CoolEnd.V.String() + ", is warmer than the warm end, " + c.WarmEnd.V.String()
	}
	step := quantity.CelsiusStep
	if c.WarmEnd.V.Unit == quantity.Fahrenheit {
		step = quantity.FahrenheitStep
	}
	e.Add(finding.Finding{Rule: &r.Rule, At: c.CoolEnd.At, Text: text, Limit: quantity.FormatAtLeast(leastGradient, step) + " between them at the least",
		Source: r.Source, Write: "cool_end = \"" + quantity.FormatAtMost(c.WarmEnd.V.High-leastGradient, c.CoolEnd.V.Unit) + "\", or lower"})
}

// roomLimits returns what the room has over the year and what the species bears.
func (e *Enclosure) roomLimits() (room plan.Written[quantity.Range], hard *plan.Figure, ok bool) {
	if e.Plan.Place == nil || !e.Plan.Place.Temperature.Set() {
		return room, nil, false
	}
	hard = e.figure("temperature-hard")
	return e.Plan.Place.Temperature, hard, hard != nil
}

func roomTooHot(r *Rule, e *Enclosure) {
	if room, hard, ok := e.roomLimits(); ok && room.V.High > hard.Range.High && !hard.Range.Contains(room.V.High) {
		e.roomFinding(r, room, "room "+e.Plan.Place.Name.V+" gets as hot as "+room.V.HighQ().String()+": more than "+e.Sheet.Name.V+" bears",
			e.atMost(hard.Range.High, room.V.Unit, hard), e.Cite(hard), "room = a cooler room")
	}
}

func roomNearLimit(r *Rule, e *Enclosure) {
	const margin = 2
	if room, hard, ok := e.roomLimits(); ok && hard.Range.Contains(room.V.High) && room.V.High > hard.Range.High-margin {
		e.roomFinding(r, room, "room "+e.Plan.Place.Name.V+" gets as hot as "+room.V.HighQ().String()+", near what "+e.Sheet.Name.V+" bears",
			e.atMost(hard.Range.High, room.V.Unit, hard), e.Cite(hard), "")
	}
}

func roomTooCold(r *Rule, e *Enclosure) {
	room, hard, ok := e.roomLimits()
	if !ok || room.V.Low >= hard.Range.Low || hard.Range.Contains(room.V.Low) {
		return
	}
	text := "room " + e.Plan.Place.Name.V + " gets as cold as " + room.V.LowQ().String() + ": colder than " + e.Sheet.Name.V + " bears, and "
	limit := e.atLeast(hard.Range.Low, room.V.Unit, hard)
	if len(e.heaters()) == 0 {
		e.roomFinding(r, room, text+"there is no heater", limit, e.Cite(hard), "heater \"mat\" { power = \"…\", place = \"side\", thermostat = \"…\" } in the climate block")
		return
	}
	for _, s := range e.Plan.Seasons {
		if s.Heating.V == "off" {
			e.Add(finding.Finding{Rule: &r.Rule, At: s.Heating.At, Text: text + "in season " + strconv.Quote(s.Name.V) + " the heaters are off",
				Limit: limit, Source: e.Cite(hard), Write: "heating = \"on\", and a climate block for the season",
				Also: []finding.Related{{At: room.At, Text: "the room"}}})
		}
	}
}

// roomFinding is at the enclosure: a room is right or wrong for what stands in it.
func (e *Enclosure) roomFinding(r *Rule, room plan.Written[quantity.Range], text, limit, source, write string) {
	e.Add(finding.Finding{Rule: &r.Rule, At: e.Plan.At, Text: text, Limit: limit, Source: source, Write: write,
		Also: []finding.Related{{At: room.At, Text: "the room"}}})
}

func roomOneNumber(r *Rule, c *Collection) {
	for _, x := range c.Plan.Rooms {
		if t := x.Temperature; t.Set() && t.V.Single() {
			c.Add(finding.Finding{Rule: &r.Rule, At: t.At, Text: "room " + x.Name.V + " is said to be at " + t.V.String() + " all year",
				Source: r.Source, Write: "temperature = \"" + quantity.FormatRange(t.V.Low-2, t.V.High+4, t.V.Unit) + "\", or whatever your thermometer shows"})
		}
	}
}

func heaterMisplaced(r *Rule, e *Enclosure) {
	for _, h := range e.heaters() {
		if !h.Place.Set() {
			continue
		}
		not := e.figure("heater-not")
		switch {
		case not != nil && has(not.Words, h.Place.V):
			e.Add(finding.Finding{Rule: &r.Rule, At: h.Place.At, Text: "the " + h.Name.V + " is " + placed(h.Place.V) + ", where " + e.Sheet.Name.V + " must not have one",
				Limit: e.limit("not "+not.Value.V, not), Source: e.Cite(not), Write: "place = \"side\""})
		case h.Place.V == "under" && e.word("lifestyle") == "burrower":
			life := e.figure("lifestyle")
			e.Add(finding.Finding{Rule: &r.Rule, At: h.Place.At, Text: "the " + h.Name.V + " is beneath the floor, where " + e.Sheet.Name.V + " digs down to get away from heat",
				Limit: e.limit("a burrower", life), Source: e.Cite(life), Write: "place = \"side\""})
		}
	}
}

func has(words []string, word string) bool {
	for _, w := range words {
		if w == word {
			return true
		}
	}
	return false
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
				Source: r.Source, Write: "guarded = true, once it has one"})
		}
	}
}

// channelUse is what the enclosures on one outlet of a thermostat agree on so far.
type channelUse struct {
	first   *plan.Heater
	band    quantity.Range
	setting plan.Written[quantity.Quantity]
}

func channelClash(r *Rule, c *Collection) {
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
			f := finding.Finding{Rule: &r.Rule, At: h.Channel.At, In: e.Whole, Source: r.Source, Write: "channel = an outlet of its own",
				Also: []finding.Related{{At: u.first.Channel.At, Text: "the outlet's first heater"}}}
			both := quantity.Range{Low: max(u.band.Low, band.Low), High: min(u.band.High, band.High), Unit: band.Unit}
			switch {
			case both.Low > both.High:
				f.Text = "outlet " + strconv.Quote(h.Channel.V) + " should hold " + band.String() + " here, and " + u.band.String() + " elsewhere"
				c.Add(f)
			case u.setting.Set() && h.Thermostat.Set() && !(quantity.Range{Low: u.setting.V.Value, High: u.setting.V.Value}).Contains(h.Thermostat.V.Value):
				f.Text = "outlet " + strconv.Quote(h.Channel.V) + " is set to " + h.Thermostat.V.String() + " here, and to " + u.setting.V.String() + " elsewhere"
				c.Add(f)
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
	if f := e.Sheet.Figure("temperature-soft", ""); f != nil {
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
		if e.setting(h).Set() {
			e.Add(finding.Finding{Rule: &r.Rule, At: c.At, Text: "the thermostat's own probe is the only thermometer", Source: r.Source, Write: "thermometer = true, once there is one"})
			return
		}
	}
}

func heaterWide(r *Rule, e *Enclosure) {
	const third = 100.0 / 3
	for _, h := range e.heaters() {
		if h.Covers.Set() && h.Covers.V.Value > third+1 { // gauged by eye
			e.Add(finding.Finding{Rule: &r.Rule, At: h.Covers.At, Text: "the " + h.Name.V + " covers " + quantity.Format(h.Covers.V.Value, quantity.Percent) + " of its wall or floor",
				Limit: "a third at the most", Source: r.Source, Write: "covers = \"30 %\", with a smaller one"})
		}
	}
}

func thermostatOff(r *Rule, e *Enclosure) {
	c := e.Plan.Climate
	if c == nil || !c.WarmEnd.Set() {
		return
	}
	var top, bottom plan.Written[quantity.Quantity]
	slack := 0.0
	for _, h := range c.Heaters {
		t := e.setting(h)
		if !t.Set() {
			continue
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
	e.Add(finding.Finding{Rule: &r.Rule, At: at.At, Text: text, Source: r.Source, Write: "thermostat = \"" + c.WarmEnd.V.HighQ().String() + "\", or another warm_end",
		Also: []finding.Related{{At: c.WarmEnd.At, Text: "what is planned"}}})
}

func seasonShort(r *Rule, e *Enclosure) {
	c := e.Plan.Climate
	if c == nil || !c.WarmEnd.Set() {
		return
	}
	for _, s := range e.Plan.Seasons {
		if s.Climate == nil || !s.Climate.WarmEnd.Set() || !s.From.Set() || !s.To.Set() {
			continue
		}
		ramp := 3.0 // °C a week, where nothing is written
		if s.Ramp.Set() {
			ramp = s.Ramp.V.Value
		}
		to := s.Climate.WarmEnd.V
		step := max(to.Low-c.WarmEnd.V.High, c.WarmEnd.V.Low-to.High, 0)
		days := length(s)
		if ramp <= 0 || days <= 0 || 2*7*step/ramp <= float64(days) {
			continue
		}
		e.Add(finding.Finding{Rule: &r.Rule, At: s.From.At, Text: "season " + strconv.Quote(s.Name.V) + " lasts " + strconv.Itoa(days) + " days, and going to " + to.String() + " and back takes " + strconv.Itoa(int(2*7*step/ramp+0.5)),
			Source: r.Source, Write: "from and to further apart"})
	}
}

// length is how many days a season lasts.
func length(s *plan.Season) int {
	from, ok1 := dayOf(s.From.V)
	to, ok2 := dayOf(s.To.V)
	if !ok1 || !ok2 {
		return 0
	}
	if to < from {
		to += 365
	}
	return to - from + 1
}

func uvLamp(r *Rule, e *Enclosure) {
	for _, h := range e.heaters() {
		if h.UV.V && e.true("uv-not") {
			f := e.figure("uv-not")
			e.Add(finding.Finding{Rule: &r.Rule, At: h.UV.At, Text: "the " + h.Name.V + " gives off ultraviolet light", Limit: e.limit("no ultraviolet light", f), Source: e.Cite(f), Write: "uv = false, with another lamp"})
		}
	}
}

func noNightDrop(r *Rule, e *Enclosure) {
	c, drop := e.Plan.Climate, e.figure("night-drop")
	if c == nil || drop == nil || c.Night.Set() || len(c.Heaters) == 0 {
		return
	}
	for _, h := range c.Heaters {
		if h.Hours.Set() && h.Hours.V.Value < 24*60 {
			return
		}
	}
	step := quantity.CelsiusStep
	if e.degrees() == quantity.Fahrenheit {
		step = quantity.FahrenheitStep
	}
	write := "hours = \"14 h\" for a heater on a timer"
	if n := e.figure("night"); n != nil {
		write = "night = \"" + quantity.FormatRange(n.Range.Low, n.Range.High, e.degrees()) + "\""
	}
	e.Add(finding.Finding{Rule: &r.Rule, At: c.At, Text: "it is as warm by night as by day", Limit: e.within(drop.Range, step, drop) + ", cooler by night", Source: e.Cite(drop), Write: write})
}
