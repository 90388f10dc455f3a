// Package balance reads a planned enclosure as a body in a room: it fills in what
// the physics needs from what a plan says. The physics itself is package climate;
// what follows for the animals is for the rules.
package balance

import (
	"math"
	"slices"

	"vivary/compile/climate"
	"vivary/compile/life"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/quantity"
)

// Aim is a temperature that is aimed for.
type Aim struct {
	quantity.Range
	Planned bool         // as the plan states it; else by the species sheet
	Figure  *plan.Figure // the sheet's, where there is one
}

// Known reports whether anything is aimed for at all.
func (a *Aim) Known() bool { return a.Planned || a.Figure != nil }

// Report is what physics says of one enclosure. What is asked of it is worked out once.
type Report struct {
	Box     climate.Enclosure
	Heaters []climate.Heater
	// Written are the heaters as they are written, one for each of Heaters.
	Written []*plan.Heater

	// Spot and Air are aimed for: the warmest surface, the air by day.
	Spot, Air Aim
	RH        quantity.Range
	// HardLow and HardHigh are the species' limits, for the air; without end where its sheet
	// has none. Touch is how hot a surface may get that it can lie on.
	HardLow, HardHigh, Touch climate.Celsius

	Water climate.Water

	// Belief is what was measured; nil where nothing was. Readings is how many
	// measurements it is from.
	Belief   *climate.Belief
	Readings int
	// Odd says that what was measured is so far from what is to be expected that nothing is
	// reckoned with it.
	Odd bool

	depth  climate.Metre // of the substrate, the sheet's where the plan has none
	unsaid bool          // how air gets in

	few   [4]climate.Heater // room for the heaters of nearly every enclosure
	whose [4]*plan.Heater
	asked [8]answer
	next  int
}

type answer struct {
	c     climate.Conditions
	z     climate.Zones
	known bool
}

// Of returns the report, and whether plan and sheet say enough for one. The life of the
// enclosure has the measurements of the log.
func Of(c *plan.Collection, e *plan.Enclosure, l *life.Enclosure) (*Report, bool) {
	r := &Report{}
	return r, r.Read(c, e, l)
}

// Limited reports whether the species' limits are known.
func (r *Report) Limited() bool { return !math.IsInf(float64(r.HardLow), 0) }

// Read works out the report in place, without allocation where there are few
// heaters. It returns whether plan and sheet say enough: the inside, the room's
// temperatures and heaters of a kind that physics knows. A report that has been read is
// not copied.
func (r *Report) Read(c *plan.Collection, e *plan.Enclosure, l *life.Enclosure) bool {
	if e.Housing == nil || !e.Housing.Inside.Set() || e.Place == nil || !e.Place.Temperature.Set() || e.Sheet == nil || unread(e) {
		return false
	}
	hard, target, humid := e.Sheet.Figure(schema.FigureTemperatureHard, ""), e.Sheet.Figure(schema.FigureTemperatureTarget, ""), e.Sheet.Figure(schema.FigureHumidityTarget, "")
	r.HardLow, r.HardHigh = climate.Celsius(math.Inf(-1)), climate.Celsius(math.Inf(1))
	if hard != nil {
		r.HardLow, r.HardHigh = climate.Celsius(hard.Range.Low), climate.Celsius(hard.Range.High)
	}
	r.Touch = climate.Celsius(plan.SurfaceMax(e.Sheet))
	r.Box = box(c, e)
	r.unsaid = !e.Housing.Vents.Set() && r.Box.Ventilation == climate.LooseLid
	r.depth = r.Box.Substrate.Depth
	if f := e.Sheet.Figure(schema.FigureSubstrateDepthMin, ""); !e.Housing.Depth.Set() && f != nil {
		r.depth = climate.Metre(f.Range.Low / 1000)
	}
	if humid != nil {
		r.RH = humid.Range
	}
	r.Spot = sheetAim(e, schema.FigureWarmSpot, nil)
	r.Air = sheetAim(e, schema.FigureAir, target)
	r.Heaters, r.Written = r.few[:0], r.whose[:0]
	if e.Climate != nil {
		r.Spot.plan(e.Climate.WarmEnd)
		r.Air.plan(e.Climate.CoolEnd)
		if e.Climate.Humidity.Set() {
			r.RH = e.Climate.Humidity.V
		}
		for _, h := range e.Climate.Heaters {
			if _, ok := devices[h.What()]; !ok {
				return false
			}
			if h.Power.Set() && !h.Tube() {
				r.Heaters, r.Written = append(r.Heaters, heater(c, e, h)), append(r.Written, h)
			}
		}
		r.believe(e, l)
	}
	if r.RH.High > 0 {
		r.Water = r.Box.WaterNeed(r.Inside(), climate.Percent(r.RH.Low), climate.Percent(r.RH.High))
	}
	return true
}

// unread reports whether a value could not be read from which heat or damp is reckoned.
func unread(e *plan.Enclosure) bool {
	heater := func(h *plan.Heater) bool { return h.Unread }
	animals := func(a *plan.Animals) bool { return a.Unread }
	return e.Housing.Unread || e.Place.Unread || slices.ContainsFunc(e.Animals, animals) ||
		e.Climate != nil && (e.Climate.Unread || slices.ContainsFunc(e.Climate.Heaters, heater))
}

func sheetAim(e *plan.Enclosure, what *schema.Figure, other *plan.Figure) Aim {
	f := e.Sheet.Figure(what, "")
	if f == nil {
		f = other
	}
	if f == nil {
		return Aim{}
	}
	return Aim{Range: f.Range, Figure: f}
}

func (a *Aim) plan(w plan.Written[quantity.Range]) {
	if w.Set() {
		a.Range, a.Planned = w.V, true
	}
}

// At returns what the enclosure comes to under some conditions.
func (r *Report) At(c climate.Conditions) climate.Zones {
	for i := range r.asked {
		if a := &r.asked[i]; a.known && a.c == c {
			return a.z
		}
	}
	a := &r.asked[r.next%len(r.asked)]
	r.next++
	*a = answer{c, r.Box.Zones(r.Heaters, c, r.Belief), true}
	return a.z
}

// Coldest is what it comes to as planned, by day in the coldest room.
func (r *Report) Coldest() climate.Zones { return r.At(climate.Conditions{Room: r.Box.Room.Low}) }

// Usual is the same in the middle of the room's range.
func (r *Report) Usual() climate.Zones { return r.At(climate.Conditions{Room: r.Box.Room.Middle()}) }

// Warmest is the same in the warmest room.
func (r *Report) Warmest() climate.Zones { return r.At(climate.Conditions{Room: r.Box.Room.High}) }

// Lasting is what it comes to as planned in a room, without heaters that are on for too
// short to count as warmth.
func (r *Report) Lasting(room climate.Celsius) climate.Zones {
	brief := false
	for i := range r.Heaters {
		if h := r.Heaters[i].HoursPerDay; h > 0 && h < climate.WarmHours {
			brief = true
		}
	}
	return r.At(climate.Conditions{Room: room, Brief: brief})
}

// Dark is the coldest night: what a timer switches is off.
func (r *Report) Dark() climate.Zones {
	return r.At(climate.Conditions{Room: r.Box.Room.Low, Dark: r.timed()})
}

// Stuck is the warmest room with every heater always on.
func (r *Report) Stuck() climate.Zones {
	return r.At(climate.Conditions{Room: r.Box.Room.High, Stuck: true})
}

// DriedStuck and Dried are the same, and as planned in the coldest room, once the
// substrate over a mat beneath has dried out.
func (r *Report) DriedStuck() climate.Zones {
	return r.At(climate.Conditions{Room: r.Box.Room.High, Stuck: true, Dry: true})
}

// Dried is what it comes to as planned once the substrate over a mat beneath is dry.
func (r *Report) Dried() climate.Zones {
	return r.At(climate.Conditions{Room: r.Box.Room.Low, Dry: true})
}

func (r *Report) timed() bool {
	for i := range r.Heaters {
		if h := r.Heaters[i].HoursPerDay; h > 0 && h < 24 {
			return true
		}
	}
	return false
}

// Inside is the air that is usual inside.
func (r *Report) Inside() climate.Celsius { return r.Usual().Air.Likely }

// Month is what the heaters draw in a mean month in the mean room, in kWh.
func (r *Report) Month() climate.Band[climate.KilowattHour] {
	day, share := r.Usual(), r.lit()
	night := day
	if share < 1 {
		night = r.At(climate.Conditions{Room: r.Box.Room.Middle(), Dark: true})
	}
	mean := func(by func(climate.Band[climate.Watt]) climate.Watt) climate.KilowattHour {
		return climate.Energy(by(day.Draw)*climate.Watt(share)+by(night.Draw)*climate.Watt(1-share), climate.DaysPerMonth)
	}
	return climate.Band[climate.KilowattHour]{
		Low:    mean(func(b climate.Band[climate.Watt]) climate.Watt { return b.Low }),
		Likely: mean(func(b climate.Band[climate.Watt]) climate.Watt { return b.Likely }),
		High:   mean(func(b climate.Band[climate.Watt]) climate.Watt { return b.High }),
	}
}

// lit is the part of the day in which heaters on a timer are on: the longest of them.
func (r *Report) lit() float64 {
	share := 0.0
	for i := range r.Heaters {
		if h := r.Heaters[i].HoursPerDay; h > 0 && h < 24 {
			share = max(share, float64(h)/24)
		}
	}
	if share == 0 {
		return 1
	}
	return share
}

// Watered is what becomes of so many ml of water a day. Where it is not said how air gets
// in, there may be some openings.
func (r *Report) Watered(ml float64) climate.Watered {
	b := r.Box
	b.Substrate.Depth = r.depth
	w := b.Watered(r.Inside(), climate.GramPerDay(ml))
	if r.unsaid {
		b.Ventilation = climate.SmallVents
		more := b.Watered(r.Inside(), climate.GramPerDay(ml))
		w.Saturated.High, w.Stands.High = more.Saturated.High, more.Stands.High
	}
	return w
}

// Cooldown is a power cut in the coldest room, which keeps its temperature.
func (r *Report) Cooldown() climate.Cooldown { return r.powerCut(climate.RoomCourse{}) }

// ColdHouse is a power cut in a house that cools too, towards frost outside.
func (r *Report) ColdHouse() climate.Cooldown {
	return r.powerCut(climate.RoomCourse{Outside: 0, TimeConstant: climate.DwellingTimeConstant})
}

func (r *Report) powerCut(room climate.RoomCourse) climate.Cooldown {
	z := r.Coldest()
	return r.Box.PowerCut(z.Air.Likely, r.HardLow, z.Below, room)
}
