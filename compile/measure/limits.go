// Package measure says what measured values are worth: how far a gauge is off by its tests, and
// the limits of each day that a value of a place is held against. It knows no files and words no
// findings: rules, pictures and what is said of loggers read it.
package measure

import (
	"math"

	"vivary/compile/life"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/quantity"
)

// Where in or at an enclosure a logger lies, in the words of the log.
const (
	Spot = "spot"
	Air  = "air"
	Room = "room"
)

// Places are all of them.
var Places = []string{Spot, Air, Room}

// Level is how bad it is to be outside of a limit.
type Level uint8

// The levels, the worst first.
const (
	Harm    Level = iota // what the species bears
	Unusual              // for which a reason is asked
	Aim                  // what the plan aims for, or the sheet
)

// Limit is a range within which a value is to stay. What is aimed for may differ by day and
// night, and in a season.
type Limit struct {
	Level  Level
	Damp   bool   // of the humidity; else of the temperature
	Of     string // what states it, in words: "temperature-hard, species sheet damon-diadema"
	Source string
	Fixed  bool            // Day is the same at all times
	Day    quantity.Range  // outside of seasons
	Night  *quantity.Range // nil for as by day
	Single bool            // a single value was stated, and Day is around it

	seasons []seasonal
}

// Seasonal reports whether a season makes another range of it.
func (l *Limit) Seasonal() bool { return len(l.seasons) > 0 }

// seasonal is what a season makes of it.
type seasonal struct {
	s          *plan.Season
	day, night *quantity.Range // nil for as usual
}

// around is how far from a single value a place may be, in K and in %: a thermostat swings by
// one, and a gauge is off by one (common practice, no source).
const (
	aroundHeat = 2.0
	aroundDamp = 5.0
)

// At returns the range on a day, or in the night that begins on it.
func (l *Limit) At(on civil.Date, night bool) quantity.Range {
	r := l.Day
	if night && l.Night != nil {
		r = *l.Night
	}
	if l.Fixed {
		return r
	}
	for i := range l.seasons {
		x := &l.seasons[i]
		own := x.day
		if night && x.night != nil {
			own = x.night
		}
		year, _, _ := on.YMD()
		for y := year - 1; y <= year && own != nil; y++ {
			from, until, ok := life.InYear(x.s, y)
			if !ok || on < from || on >= until {
				continue
			}
			if edge := rampDays(x.s, r, *own); on-from < edge || until-1-on < edge {
				return quantity.Range{Low: min(r.Low, own.Low), High: max(r.High, own.High), Unit: r.Unit}
			}
			return *own
		}
	}
	return r
}

// rampDays is how long a season takes to come, and to go.
func rampDays(s *plan.Season, usual, own quantity.Range) civil.Date {
	week := life.UsualRamp
	if s.Ramp.Set() && s.Ramp.V.Value > 0 {
		week = s.Ramp.V.Value
	}
	return civil.Date(math.Ceil(7 * max(math.Abs(usual.Low-own.Low), math.Abs(usual.High-own.High)) / week))
}

// LimitsOf are the limits of a place of an enclosure, as plan and sheet resolve them, the worst
// first. Of a room it is what the plan says of it, and nothing harms there.
func LimitsOf(c *plan.Collection, e *plan.Enclosure, place string) (all []*Limit) {
	if place == Room {
		return RoomLimits(e.Place)
	}
	heat := schema.FigureTemperatureHard
	if s := e.Sheet; s != nil {
		figure := func(what *schema.Figure, level Level, damp bool) {
			if f := s.Figure(what, ""); f != nil && !f.Value.Bad {
				r := f.Range
				if what == heat && place == Spot {
					high, by := plan.SurfaceRange(s, math.Inf(1))
					r.High = high.High
					if by != nil {
						f = by
					}
				}
				all = append(all, &Limit{Level: level, Damp: damp, Of: f.Name.V + ", species sheet " + s.Name.V, Source: c.Library.Cite(f.Cited), Fixed: true, Day: r})
			}
		}
		figure(heat, Harm, false)
		if place == Air {
			figure(schema.FigureTemperatureSoft, Unusual, false)
		}
		figure(schema.FigureHumidityHard, Harm, true)
		figure(schema.FigureHumiditySoft, Unusual, true)
	}
	if l := heatAim(e, place); l != nil {
		all = append(all, l)
	}
	if l := dampAim(e); l != nil {
		all = append(all, l)
	}
	return all
}

// RoomLimits are those of a room: what the plan says of it.
func RoomLimits(room *plan.Room) (all []*Limit) {
	if room == nil {
		return nil
	}
	of := "what the plan says of room " + room.Name.V
	if room.Temperature.Set() {
		all = append(all, &Limit{Level: Aim, Of: of, Fixed: true, Day: room.Temperature.V})
	}
	if room.Humidity.Set() {
		all = append(all, &Limit{Level: Aim, Damp: true, Of: of, Fixed: true, Day: room.Humidity.V})
	}
	return all
}

// heatAim is what temperature is aimed for at a place: as planned, else as the sheet has it.
func heatAim(e *plan.Enclosure, place string) *Limit {
	var c plan.Climate
	if e.Climate != nil {
		c = *e.Climate
	}
	l := &Limit{Level: Aim, Of: "the plan"}
	own := func(s *plan.SeasonClimate) plan.Written[quantity.Range] { return s.CoolEnd }
	day, figures := c.CoolEnd, []*schema.Figure{schema.FigureAir, schema.FigureTemperatureTarget}
	if place == Spot {
		own = func(s *plan.SeasonClimate) plan.Written[quantity.Range] { return s.WarmEnd }
		day, figures = c.WarmEnd, []*schema.Figure{schema.FigureWarmSpot}
	}
	if !l.aim(e, day, figures, aroundHeat) {
		return nil
	}
	if place == Air {
		n := Limit{}
		if n.aim(e, c.Night, []*schema.Figure{schema.FigureNight}, aroundHeat) {
			l.Night = &n.Day
		}
	}
	for _, s := range e.Seasons {
		x := seasonal{s: s}
		if s.Climate != nil {
			x.day = stated(own(s.Climate), aroundHeat)
			if place == Air {
				x.night = stated(s.Climate.Night, aroundHeat)
			}
		}
		if x.day == nil && s.Heating.V == "off" && e.Place != nil && e.Place.Temperature.Set() {
			x.day = &e.Place.Temperature.V
		}
		if x.night == nil {
			x.night = x.day
		}
		if x.day != nil || x.night != nil {
			l.seasons = append(l.seasons, x)
		}
	}
	l.Fixed = l.Night == nil && l.seasons == nil
	return l
}

// dampAim is what humidity is aimed for.
func dampAim(e *plan.Enclosure) *Limit {
	var planned plan.Written[quantity.Range]
	if e.Climate != nil {
		planned = e.Climate.Humidity
	}
	l := &Limit{Level: Aim, Damp: true, Of: "the plan"}
	if !l.aim(e, planned, []*schema.Figure{schema.FigureHumidityTarget}, aroundDamp) {
		return nil
	}
	for _, s := range e.Seasons {
		if s.Climate != nil && s.Climate.Humidity.Set() {
			l.seasons = append(l.seasons, seasonal{s, stated(s.Climate.Humidity, aroundDamp), nil})
		}
	}
	l.Fixed = l.seasons == nil
	return l
}

// aim takes what is planned, else the first of the figures that the sheet has.
func (l *Limit) aim(e *plan.Enclosure, planned plan.Written[quantity.Range], figures []*schema.Figure, around float64) bool {
	if r := stated(planned, around); r != nil {
		l.Day, l.Single = *r, planned.V.Single()
		return true
	}
	for _, what := range figures {
		if e.Sheet == nil {
			return false
		}
		if f := e.Sheet.Figure(what, ""); f != nil && !f.Value.Bad {
			l.Of = f.Name.V + ", species sheet " + e.Sheet.Name.V
			l.Single = f.Range.Single()
			l.Day = widened(f.Range, around)
			return true
		}
	}
	return false
}

func stated(w plan.Written[quantity.Range], around float64) *quantity.Range {
	if !w.Set() {
		return nil
	}
	r := widened(w.V, around)
	return &r
}

func widened(r quantity.Range, around float64) quantity.Range {
	if r.Single() {
		r.Low, r.High = r.Low-around, r.High+around
	}
	return r
}
