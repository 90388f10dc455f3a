package life

import (
	"math"

	"vivary/compile/horizon"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/quantity"
)

// Gauge is what thermometer and hygrometer of an enclosure should show on some days: what
// the plan aims for, and where it says nothing the species sheet. No figure is made up for
// it: a range that neither has is empty.
type Gauge struct {
	From, Until int // days of the horizon: the first, and the first after
	// Heat is from the coldest place by night to the warmest by day, since where the
	// thermometer is nobody wrote; Damp is the air's.
	Heat, Damp Span
	// Aimed says that the plan itself aims for a humidity, so that there is a hygrometer.
	Aimed bool
	// Harm is outside of what the animals are harmed.
	Harm Span
	// Heated says that a heater is on.
	Heated bool
}

// Span is a range that may not be known.
type Span struct {
	quantity.Range
	Known bool
}

// Gauges are those of an enclosure on all days of the horizon, in order. A season that is
// going on, or to come, has its own, step by step as somebody sets the heat.
func Gauges(c *plan.Collection, l *Enclosure, h horizon.Horizon) []Gauge {
	usual := usually(c, l.Plan)
	usual.Until = h.Days
	out := []Gauge{usual}
	for i := h.Today; len(l.Rests) > 0 && i < h.Days; i++ {
		g := seasonal(usual, l, h.Date(i))
		g.From, g.Until = i, h.Days
		last := &out[len(out)-1]
		if g.From = last.From; g == *last {
			continue
		}
		last.Until, g.From = i, i
		out = append(out, g)
	}
	return out
}

// usually is what gauges show outside of seasons.
func usually(c *plan.Collection, e *plan.Enclosure) Gauge {
	g := Gauge{Heated: e.Heated(), Harm: figure(e, schema.FigureTemperatureHard), Damp: figure(e, schema.FigureHumidityTarget)}
	air, night := figure(e, schema.FigureAir), figure(e, schema.FigureNight)
	if !air.Known {
		air = figure(e, schema.FigureTemperatureTarget)
	}
	if e.Climate == nil {
		g.Heat = air.with(night)
		return g.bounded(e)
	}
	var warm, cool, dark Span
	warm.set(e.Climate.WarmEnd)
	cool.set(e.Climate.CoolEnd)
	dark.set(e.Climate.Night)
	if !cool.Known {
		cool = air
	}
	if !dark.Known {
		dark = night
	}
	if !warm.Known {
		warm = setting(c, e)
	}
	g.Heat = warm.with(cool).with(dark)
	g.Damp.set(e.Climate.Humidity)
	g.Aimed = e.Climate.Humidity.Set()
	return g.bounded(e)
}

// setting is what the highest thermostat is set to.
func setting(c *plan.Collection, e *plan.Enclosure) (s Span) {
	for _, h := range e.Climate.Heaters {
		if t := c.Setting(h); t.Set() && !h.Tube() {
			s = s.with(Span{quantity.Range{Low: t.V.Value, High: t.V.Value, Unit: t.V.Unit}, true})
		}
	}
	return s
}

// seasonal is what gauges show on a day, which may be of a season.
func seasonal(usual Gauge, l *Enclosure, on civil.Date) Gauge {
	for _, x := range l.Rests {
		// The lowest and the highest are those since the last reading, which may be of
		// the day before.
		if x.From >= x.Until || on < x.From || on > x.Until {
			continue
		}
		g := usual
		g.Heat = x.heat(l.Plan, usual.Heat, on)
		g.Heated = usual.Heated && !(x.isDark && x.Off <= on && on < x.On)
		if s := x.Season.Climate; s != nil && s.Humidity.Set() {
			g.Damp.set(s.Humidity)
			g.Aimed = true
		}
		return g.bounded(l.Plan)
	}
	return usual
}

// heat is what a thermometer shows on a day of a season: at the warmest what the heat is set
// to, at the coldest what the season aims for.
func (r *Rest) heat(e *plan.Enclosure, usual Span, on civil.Date) Span {
	var aim, high Span
	if c := r.Season.Climate; c != nil {
		for _, w := range []plan.Written[quantity.Range]{c.WarmEnd, c.CoolEnd, c.Night} {
			var s Span
			s.set(w)
			aim = aim.with(s)
		}
	}
	if r.Rest {
		aim = aim.with(figure(e, schema.FigureWinterRest))
	} else {
		aim = aim.with(usual) // as cool as usual by night
	}
	for _, day := range []civil.Date{on - 1, on} {
		if t := r.setTo(day); !math.IsNaN(t) {
			high = high.with(Span{quantity.Range{Low: t, High: t, Unit: r.Unit}, true})
		} else if day < r.From || day >= r.Until {
			high = high.with(usual)
		}
	}
	switch {
	case !aim.Known:
		return Span{} // nobody says how cool it gets
	case high.Known && r.Rest:
		aim.High = max(aim.Low, high.High)
	}
	return aim
}

// setTo is what the heat is set to on a day of a season, in °C; NaN where it is off, or not
// known.
func (r *Rest) setTo(on civil.Date) float64 {
	t := r.Usual
	for _, s := range r.steps {
		if s.on <= on {
			t = s.heat
		}
	}
	return t
}

// with is a range that takes in another.
func (s Span) with(o Span) Span {
	switch {
	case !o.Known:
		return s
	case !s.Known:
		return o
	}
	s.Low, s.High = min(s.Low, o.Low), max(s.High, o.High)
	return s
}

// Within is the range that two have in common.
func (s Span) Within(o Span) Span {
	switch {
	case !o.Known:
		return s
	case !s.Known:
		return o
	}
	s.Low, s.High = max(s.Low, o.Low), min(s.High, o.High)
	s.Known = s.Low <= s.High
	return s
}

func (s *Span) set(w plan.Written[quantity.Range]) {
	if w.Set() {
		*s = Span{w.V, true}
	}
}

// bounded keeps what is shown within what the species bears, and has all of it in the
// keeper's unit.
func (g Gauge) bounded(e *plan.Enclosure) Gauge {
	if g.Heat.Known {
		g.Heat = g.Heat.Within(g.Harm)
	}
	g.Heat.Unit, g.Harm.Unit = e.Degrees(), e.Degrees()
	return g
}

// figure is what the sheet of an enclosure states.
func figure(e *plan.Enclosure, what *schema.Figure) Span {
	if e.Sheet == nil {
		return Span{}
	}
	f := e.Sheet.Figure(what, "")
	if f == nil {
		return Span{}
	}
	return Span{f.Range, true}
}
