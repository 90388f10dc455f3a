package check

import (
	"strconv"

	"vivary/compile/life"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/quantity"
)

// The temperatures that are planned, and those of the room.
var temperatures = []*Rule{
	{Enclosure: targetHarms, Rule: finding.Rule{ID: "temperature-harmful", Severity: finding.Danger, Silence: finding.Never,
		Title:   "A temperature is planned that the species does not bear.",
		Why:     "Outside of its hard limits an animal is harmed within hours.",
		Source:  "the species sheet",
		Instead: "Plan a temperature within the limits. Where you know better, state a figure of your own in a species block, with its source."}},
	{Enclosure: roomTooHot, Rule: finding.Rule{ID: "room-too-hot", Severity: finding.Danger, Silence: finding.Never,
		Title:   "The room gets hotter than the species bears.",
		Why:     "Nothing in an enclosure cools it below its room. In a room that nobody entered animals died when its cooling failed.",
		Source:  "herpcenter.com/threads/rip-biscotti.53878, on the failure of an air conditioner; the species sheet",
		Instead: "Keep it in a cooler room, or cool the room and write what its thermometer shows then."}},
	{Enclosure: roomTooCold, Rule: finding.Rule{ID: "room-too-cold", Severity: finding.Error, Silence: finding.Never,
		Title:   "The room gets colder than the species bears, and nothing warms the enclosure.",
		Why:     "\"Room temperature\" was 21 °C to one keeper and 9 °C to another.",
		Source:  "scorpion.community/gedankenaustausch-exchange/room-temperature-t236.html; the species sheet",
		Instead: "Put in a heater with a thermostat, or keep the room warmer and write what its thermometer shows then."}},
	{Collection: roomSeasons, Rule: finding.Rule{ID: "room-seasons", Severity: finding.Error, Silence: finding.Never,
		Title:   "The winter or the summer of a room is not part of its year.",
		Why:     "What is judged by the year and what is judged by a season would not be of one room.",
		Source:  "the plan itself",
		Instead: "Write for the year the lowest and the highest of all seasons."}},
	{Collection: roomOneNumber, Rule: finding.Rule{ID: "room-one-number", Severity: finding.Error, Silence: finding.ByReason,
		Title:   "A room has one temperature for the whole year.",
		Why:     "No room has. Without its lowest and its highest temperature nothing can be said of a winter night or a hot week.",
		Source:  "scorpion.community/gedankenaustausch-exchange/room-temperature-t236.html",
		Instead: "Write the lowest and the highest that a thermometer in the room shows over the year."}},
	{Enclosure: targetUnusual, Rule: finding.Rule{ID: "temperature-unusual", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "A temperature is planned that is borne, but not good for long.",
		Why:     "An animal held at the edge of what it bears does not show it until it is ill.",
		Source:  "the species sheet",
		Instead: "Plan nearer to what is aimed for; a part of the year is a season block; a reason is an accept block."}},
	{Enclosure: offTarget, Rule: finding.Rule{ID: "off-target", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "No part of the enclosure is at the temperature that is aimed for.",
		Why:     "Where even the cool end is too warm, or the warm end too cool, the animal cannot choose.",
		Source:  "the species sheet, which also says what is disputed",
		Instead: "Let one end lie within what is aimed for."}},
	{Enclosure: noGradient, Rule: finding.Rule{ID: "no-gradient", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "Warm end and cool end are nearly the same.",
		Why:     "An animal governs its temperature by where it sits.",
		Source:  "common practice, no source: a difference of 3 K at the least",
		Instead: "Warm one end only."}},
	{Enclosure: seasonShort, Rule: finding.Rule{ID: "season-short", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "A season ends before its temperature could be reached and left again.",
		Why:     "What is changed faster than planned is a shock; what is changed as planned never arrives.",
		Source:  "common practice, no source",
		Instead: "A longer season, a smaller step, or a steeper ramp."}},
	{Enclosure: noNightDrop, Rule: finding.Rule{ID: "no-night-drop", Severity: finding.Advice, Silence: finding.ByReason,
		Title:   "The heating runs day and night for a species that is used to cool nights.",
		Why:     "A slight drop at night is natural.",
		Source:  "the species sheet",
		Instead: "Write night, or hours for a heater on a timer."}},
	{Enclosure: roomNearLimit, Rule: finding.Rule{ID: "room-near-limit", Severity: finding.Advice, Silence: finding.ByReason,
		Title:   "In the hot season the room comes within 2 K of what the species bears.",
		Why:     "Warm air rises: a top shelf is warmer than the thermometer on the wall, and the next summer may be hotter.",
		Source:  "tarantulaforum.com/threads/my-country-just-got-hit-by-a-heat-wave-my-spiders-gonna-die.24927",
		Instead: "Low in the rack, and a plan for hot days: shade, a fan, less food."}},
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
	hard := e.figure(schema.FigureTemperatureHard)
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
		e.Add(finding.Finding{Rule: &r.Rule, At: t.At, Text: text, Limit: e.within(hard.Range, t.V.Unit, hard), Source: e.Cite(hard), Write: t.words + " at " + e.insteadOf(t), Edits: t.edit(e.insteadOf(t))})
	})
}

// insteadOf writes what is aimed for in the place of a target.
func (e *Enclosure) insteadOf(t target) string {
	f := e.figure(schema.FigureTemperatureTarget)
	if n := e.figure(schema.FigureNight); t.night && n != nil {
		f = n
	}
	if f == nil {
		f = e.figure(schema.FigureTemperatureSoft)
	}
	if f == nil {
		return ""
	}
	// The two ends have figures of their own where the sheet has them.
	for attr, what := range map[string]*schema.Figure{"warm_end": schema.FigureWarmSpot, "cool_end": schema.FigureAir} {
		if own := e.figure(what); own != nil && t.attr == attr {
			return quantity.FormatRange(own.Range.Low, own.Range.High, t.V.Unit)
		}
	}
	v := quantity.FormatRange(f.Range.Low, f.Range.High, t.V.Unit)
	switch t.attr {
	case "warm_end":
		v = quantity.FormatAtMost(f.Range.High, t.V.Unit)
	case "cool_end":
		v = quantity.FormatAtLeast(f.Range.Low, t.V.Unit)
	}
	return v
}

// edit writes another temperature for the target.
func (t target) edit(better string) []finding.Edit {
	if better == "" {
		return nil
	}
	return finding.Text(t.At, better)
}

// rounding is what a figure may be passed by, in °C: half a degree is what becomes of it
// when it is turned from one scale into the other and back.
const rounding = 0.5

// unusual returns what is borne for long at a target, and which way it is past that: below
// 0 for cooler. The warm end is a spot, which may be warmer than the air.
func (e *Enclosure) unusual(t target) (bears quantity.Range, way int) {
	soft, hard := e.figure(schema.FigureTemperatureSoft), e.figure(schema.FigureTemperatureHard)
	if soft == nil || t.season != nil || hard != nil && !hard.Range.Encloses(t.V) {
		return // a season says why; beyond the hard limit it has been said
	}
	bears = soft.Range
	if n := e.figure(schema.FigureNight); t.night && n != nil {
		bears.Low = min(bears.Low, n.Range.Low)
	}
	if spot := e.figure(schema.FigureWarmSpot); t.attr == "warm_end" && spot != nil {
		bears.High = max(bears.High, spot.Range.High)
	}
	switch {
	case t.V.High > bears.High+rounding:
		way = 1
	case t.V.Low < bears.Low-rounding:
		way = -1
	}
	return bears, way
}

func targetUnusual(r *Rule, e *Enclosure) {
	var first [2]*finding.Finding // cooler, warmer: one cause each
	e.targets(func(t target) {
		bears, way := e.unusual(t)
		if way == 0 {
			return
		}
		if f := first[max(0, way)]; f != nil {
			f.Also = append(f.Also, finding.Related{At: t.At, Text: "and " + t.what() + ", at " + t.V.String()})
			return
		}
		by := e.figure(schema.FigureTemperatureSoft)
		if n := e.figure(schema.FigureNight); t.night && way < 0 && n != nil && n.Range.Low == bears.Low {
			by = n
		}
		than := ": cooler"
		if way > 0 {
			than = ": warmer"
		}
		first[max(0, way)] = &finding.Finding{Rule: &r.Rule, At: t.At, Text: t.what() + " is planned at " + t.V.String() + than + " than is good for " + e.Sheet.Name.V,
			Limit: e.within(bears, t.V.Unit, by), Source: e.Cite(by), Write: t.words + " at " + e.insteadOf(t) + "; a season block where it is for a part of the year"}
	})
	for _, f := range first {
		if f != nil {
			e.Add(*f)
		}
	}
}

func offTarget(r *Rule, e *Enclosure) {
	c, f := e.Plan.Climate, e.figure(schema.FigureTemperatureTarget)
	if c == nil || f == nil {
		return
	}
	add := func(at source.Place, text string, u quantity.Unit) {
		e.Add(finding.Finding{Rule: &r.Rule, At: at, Text: text, Limit: e.within(f.Range, u, f), Source: e.Cite(f),
			Write: "the warm end at " + quantity.FormatAtMost(f.Range.High, u) + " and the cool end at " + quantity.FormatAtLeast(f.Range.Low, u)})
	}
	if cool := c.CoolEnd; e.noCoolEnd() {
		add(cool.At, "even the cool end is at "+cool.V.String()+": the whole enclosure is warmer than is aimed for", cool.V.Unit)
	}
	if warm := c.WarmEnd; warm.Set() && warm.V.High < f.Range.Low && !f.Range.Contains(warm.V.High) {
		add(warm.At, "even the warm end is at "+warm.V.String()+": the whole enclosure is cooler than is aimed for", warm.V.Unit)
	}
}

// noCoolEnd reports whether even the cool end is planned warmer than is aimed for, and no
// warmer than is borne, of which another rule speaks.
func (e *Enclosure) noCoolEnd() bool {
	c, f := e.Plan.Climate, e.figure(schema.FigureTemperatureTarget)
	if c == nil || f == nil || !c.CoolEnd.Set() || c.CoolEnd.V.Low <= f.Range.High || f.Range.Contains(c.CoolEnd.V.Low) {
		return false
	}
	return !e.tooWarmByPlan()
}

// tooWarmByPlan reports whether the cool end is planned past what is borne for long.
func (e *Enclosure) tooWarmByPlan() bool {
	hard := e.figure(schema.FigureTemperatureHard)
	c := e.Plan.Climate
	_, way := e.unusual(target{attr: "cool_end", Written: c.CoolEnd})
	return way > 0 || hard != nil && !hard.Range.Encloses(c.CoolEnd.V)
}

// tooHotByPlan reports whether the warm end is planned past what is borne.
func (e *Enclosure) tooHotByPlan() bool {
	hard, c := e.figure(schema.FigureTemperatureHard), e.Plan.Climate
	_, way := e.unusual(target{attr: "warm_end", Written: c.WarmEnd})
	return way > 0 || hard != nil && !hard.Range.Encloses(c.WarmEnd.V)
}

// leastGradient is the difference between warm end and cool end that is asked for,
// in °C.
const leastGradient = 3.0

func noGradient(r *Rule, e *Enclosure) {
	c := e.Plan.Climate
	if c == nil || !c.WarmEnd.Set() || !c.CoolEnd.Set() || c.WarmEnd.V.High-c.CoolEnd.V.Low > leastGradient-1e-9 {
		return
	}
	if c.WarmEnd.V.High >= c.CoolEnd.V.Low && (e.noCoolEnd() || e.tooWarmByPlan()) {
		return // all of it is too warm: one cause
	}
	text := "warm end " + c.WarmEnd.V.String() + " and cool end " + c.CoolEnd.V.String() + " leave the animals no choice"
	if c.WarmEnd.V.High < c.CoolEnd.V.Low {
		text = "the cool end, " + c.CoolEnd.V.String() + ", is warmer than the warm end, " + c.WarmEnd.V.String()
	}
	cooler := quantity.FormatAtMost(c.WarmEnd.V.High-leastGradient, c.CoolEnd.V.Unit)
	e.Add(finding.Finding{Rule: &r.Rule, At: c.CoolEnd.At, Text: text, Limit: quantity.FormatAtLeast(leastGradient, c.WarmEnd.V.Unit.Step()) + " between them at the least",
		Source: r.Source, Write: "the cool end at " + cooler + " or lower"})
}

// roomLimits returns what the room has over the year where the enclosure stands, and what
// the species bears.
func (e *Enclosure) roomLimits() (room plan.Written[quantity.Range], hard *plan.Figure, ok bool) {
	if e.Plan.Place == nil || !e.Plan.Place.Temperature.Set() {
		return room, nil, false
	}
	hard, room = e.figure(schema.FigureTemperatureHard), e.Plan.Place.Temperature
	if h := e.Plan.Housing; h != nil && h.ShelfRise.Set() { // where it stands
		room.V.Low += h.ShelfRise.V.Low
		room.V.High += h.ShelfRise.V.High
	}
	return room, hard, hard != nil
}

func roomTooHot(r *Rule, e *Enclosure) {
	if room, hard, ok := e.roomLimits(); ok && room.V.High > hard.Range.High && !hard.Range.Contains(room.V.High) {
		e.roomFinding(r, room, "room "+e.Plan.Place.Name.V+" gets as hot as "+room.V.HighQ().String()+": more than "+e.Sheet.Name.V+" bears",
			e.atMost(hard.Range.High, room.V.Unit, hard), e.Cite(hard), "a cooler room")
	}
}

func roomNearLimit(r *Rule, e *Enclosure) {
	const margin = 2
	if _, warm := e.feel(); warm != nil {
		return // said by what it comes to inside
	}
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
	if !e.Plan.Heated() {
		e.roomFinding(r, room, text+"there is no heater", limit, e.Cite(hard), "a heater with a thermostat, or a warmer room")
		return
	}
	for _, s := range e.Plan.Seasons {
		if s.Heating.V == "off" {
			e.Add(finding.Finding{Rule: &r.Rule, At: s.Heating.At, Text: text + "in season " + strconv.Quote(s.Name.V) + " the heaters are off",
				Limit: limit, Source: e.Cite(hard), Write: "the heaters on, and a climate block for the season", Edits: finding.Text(s.Heating.At, "on"),
				Also: []finding.Related{{At: room.At, Text: "the room"}}})
		}
	}
}

// roomFinding is at the enclosure: a room is right or wrong for what stands in it.
func (e *Enclosure) roomFinding(r *Rule, room plan.Written[quantity.Range], text, limit, source, write string) {
	at := e.Plan.At
	if h := e.Plan.Housing; h != nil && h.ShelfRise.Set() {
		at, text = h.ShelfRise.At, "on its shelf, "+text
	}
	e.Add(finding.Finding{Rule: &r.Rule, At: at, Text: text, Limit: limit, Source: source, Write: write,
		Also: []finding.Related{{At: room.At, Text: "the room"}}})
}

func roomOneNumber(r *Rule, c *Collection) {
	for _, x := range c.Plan.Rooms {
		if t := x.Temperature; t.Set() && t.V.Single() {
			c.Add(finding.Finding{Rule: &r.Rule, At: t.At, Text: "room " + x.Name.V + " is said to be at " + t.V.String() + " all year",
				Source: r.Source, Write: "the lowest and the highest that your thermometer shows over the year"})
		}
	}
}

// roomSeasons finds a winter or a summer of a room that lies outside of its year.
func roomSeasons(r *Rule, c *Collection) {
	for _, x := range c.Plan.Rooms {
		for _, t := range []struct {
			name string
			plan.Written[quantity.Range]
		}{{"winter", x.Winter}, {"summer", x.Summer}} {
			if y := x.Temperature; t.Set() && y.Set() && !(quantity.Range{Low: y.V.Low - rounding, High: y.V.High + rounding}).Encloses(t.V) {
				c.Add(finding.Finding{Rule: &r.Rule, At: t.At, Text: "the " + t.name + " of room " + x.Name.V + " is at " + t.V.String() + ", and its whole year at " + y.V.String(),
					Source: r.Source, Write: "temperature with all of the year in it, as your thermometer shows it",
					Also: []finding.Related{{At: y.At, Text: "the whole year"}}})
			}
		}
		if w, s := x.Winter, x.Summer; w.Set() && s.Set() && w.V.Low+w.V.High > s.V.Low+s.V.High+2*rounding {
			c.Add(finding.Finding{Rule: &r.Rule, At: w.At, Text: "the winter of room " + x.Name.V + " is warmer than its summer", Source: r.Source, Write: "the two the other way round, or as your thermometer shows them",
				Also: []finding.Related{{At: s.At, Text: "the summer"}}})
		}
	}
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
		ramp := life.UsualRamp
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

// dayOf is the place of a day of the year in a year of 365 days.
func dayOf(d plan.Day) (int, bool) {
	if d.Kind != plan.DateOfYear {
		return 0, false
	}
	on, ok := civil.Of(2025, d.Month, min(d.Day, civil.DaysIn(2025, d.Month)))
	return int(on - civil.Must(2025, 1, 1)), ok
}

func noNightDrop(r *Rule, e *Enclosure) {
	c, drop := e.Plan.Climate, e.figure(schema.FigureNightDrop)
	if c == nil || drop == nil || c.Unread || c.Night.Set() || !e.Plan.Heated() || e.noCoolEnd() || c.CoolEnd.Set() && e.tooWarmByPlan() {
		return
	}
	for _, h := range c.Heaters {
		if h.Hours.Set() && h.Hours.V.Value < 24*60 {
			return
		}
	}
	// The air follows the room: where that is so much cooler at its coldest, the nights are.
	if p, ok := e.report(); ok && float64(p.Warmest().Air.Likely-p.Dark().Air.Likely) >= drop.Range.Low-rounding {
		return
	}
	write := "cooler nights (night), or hours for a heater on a timer"
	if n := e.figure(schema.FigureNight); n != nil {
		write = "nights of " + quantity.FormatRange(n.Range.Low, n.Range.High, e.Plan.Degrees()) + " (night)"
	}
	e.Add(finding.Finding{Rule: &r.Rule, At: c.At, Text: "it is as warm by night as by day", Limit: e.within(drop.Range, e.Plan.Degrees().Step(), drop) + ", cooler by night", Source: e.Cite(drop), Write: write})
}
