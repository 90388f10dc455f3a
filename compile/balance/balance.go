// Package balance reads a planned enclosure as a body in a room: it fills in what
// the physics needs from what a plan says. The physics itself is package climate;
// what follows for the animals is for the rules.
package balance

import (
	"strings"

	"vivary/compile/climate"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/quantity"
)

// Report is what physics says of one enclosure.
type Report struct {
	Box     climate.Enclosure
	Heaters []climate.Heater
	// Warm and Cool are the ends aimed for by day, Humidity the band. Where the plan
	// does not say, they are the species sheet's.
	Warm, Cool climate.Celsius
	RH         quantity.Range
	// HardLow and HardHigh are the species' limits.
	HardLow, HardHigh climate.Celsius

	Gradient climate.Gradient
	Water    climate.Water

	depth  climate.Metre     // of the substrate, the sheet's where the plan has none
	unsaid bool              // how air gets in
	few    [4]climate.Heater // room for the heaters of nearly every enclosure
}

// Of returns the report, and whether plan and sheet say enough for one.
func Of(c *plan.Collection, e *plan.Enclosure) (*Report, bool) {
	r := &Report{}
	return r, r.Read(c, e)
}

// Read works out the report in place, without allocation where there are few
// heaters. It returns whether plan and sheet say enough: the inside, the room's
// temperatures and the species' limits. A report that has been read is not copied.
func (r *Report) Read(c *plan.Collection, e *plan.Enclosure) bool {
	if e.Housing == nil || !e.Housing.Inside.Set() || e.Place == nil || !e.Place.Temperature.Set() || e.Sheet == nil {
		return false
	}
	hard, target, humid := e.Sheet.Figure(schema.FigureTemperatureHard, ""), e.Sheet.Figure(schema.FigureTemperatureTarget, ""), e.Sheet.Figure(schema.FigureHumidityTarget, "")
	if hard == nil || target == nil || humid == nil {
		return false
	}
	r.HardLow, r.HardHigh = climate.Celsius(hard.Range.Low), climate.Celsius(hard.Range.High)
	r.Box = box(c, e)
	r.unsaid = !e.Housing.Vents.Set() && r.Box.Ventilation == climate.LooseLid
	r.depth = r.Box.Substrate.Depth
	if f := e.Sheet.Figure(schema.FigureSubstrateDepthMin, ""); !e.Housing.Depth.Set() && f != nil {
		r.depth = climate.Metre(f.Range.Low / 1000)
	}
	r.Warm, r.Cool = ends(e, target.Range)
	r.RH = humid.Range
	if e.Climate != nil {
		if e.Climate.Humidity.Set() {
			r.RH = e.Climate.Humidity.V
		}
		r.Heaters = r.few[:0]
		for _, h := range e.Climate.Heaters {
			r.Heaters = append(r.Heaters, heater(h))
		}
	}
	r.Gradient = r.Box.Gradient(r.Warm, r.Cool, r.Heaters)
	r.Water = r.Box.WaterNeed(r.Air(), climate.Percent(r.RH.Low), climate.Percent(r.RH.High))
	return true
}

// Air is the temperature of the air inside as a whole.
func (r *Report) Air() climate.Celsius { return r.Gradient.Mean }

// Watered is what becomes of so many ml of water a day. Where it is not said how air gets
// in, there may be some openings.
func (r *Report) Watered(ml float64) climate.Watered {
	b := r.Box
	b.Substrate.Depth = r.depth
	w := b.Watered(r.Air(), climate.GramPerDay(ml))
	if r.unsaid {
		b.Ventilation = climate.SmallVents
		more := b.Watered(r.Air(), climate.GramPerDay(ml))
		w.Saturated.High, w.Stands.High = more.Saturated.High, more.Stands.High
	}
	return w
}

// Floor is the balance at the species' hard limit: whether the heaters keep the
// inside from getting there.
func (r *Report) Floor() climate.Balance { return r.Box.Balance(r.HardLow, r.Heaters) }

// Cooldown is a power cut in the coldest room, which keeps its temperature.
func (r *Report) Cooldown() climate.Cooldown { return r.powerCut(climate.RoomCourse{}) }

// ColdHouse is a power cut in a house that cools too, towards frost outside.
func (r *Report) ColdHouse() climate.Cooldown {
	return r.powerCut(climate.RoomCourse{Outside: 0, TimeConstant: climate.DwellingTimeConstant})
}

func (r *Report) powerCut(room climate.RoomCourse) climate.Cooldown {
	return r.Box.PowerCut(r.Gradient.Mean, r.HardLow, r.Heaters, room)
}

// ends returns the warm and the cool end that are aimed for by day.
func ends(e *plan.Enclosure, target quantity.Range) (warm, cool climate.Celsius) {
	middle := func(r quantity.Range) climate.Celsius { return climate.Celsius((r.Low + r.High) / 2) }
	room := e.Place.Temperature.V
	switch {
	case e.Climate != nil && e.Climate.WarmEnd.Set():
		warm = middle(e.Climate.WarmEnd.V)
		cool = warm
	case e.Climate == nil || len(e.Climate.Heaters) == 0:
		// Without a heater the inside is what the room is.
		warm = climate.Celsius(room.Low)
		cool = warm
	default:
		warm, cool = climate.Celsius(target.High), climate.Celsius(target.Low)
	}
	if e.Climate != nil && e.Climate.CoolEnd.Set() {
		cool = middle(e.Climate.CoolEnd.V)
	}
	return warm, cool
}

func box(c *plan.Collection, e *plan.Enclosure) climate.Enclosure {
	h := e.Housing
	in := h.Inside.V
	b := climate.Enclosure{
		Inside: climate.Box{Length: climate.Metre(in.Length / 1000), Width: climate.Metre(in.Width / 1000), Height: climate.Metre(in.Height / 1000)},
		Room:   room(c, e.Place),
	}
	b.Wall = climate.Sheet{Material: wall(h.Kind.V)}
	if h.Wall.Set() {
		b.Wall.Thickness = climate.Metre(h.Wall.V.Value / 1000)
	}
	b.Lid = climate.Lid{Kind: climate.SolidLid, Sheet: climate.Sheet{Material: b.Wall.Material}}
	switch {
	case h.LidIs("part mesh"):
		b.Lid.Kind = climate.PartMeshLid
	case h.LidIs("mesh"):
		b.Lid.Kind = climate.MeshLid
	}
	b.Ventilation = ventilation(h)
	b.Substrate = substrate(h, e.Sheet)
	if h.Water.Or("dish") == "dish" {
		b.Dish = dish(b.Inside.FloorArea(), e.Sheet)
	}
	return b
}

func room(c *plan.Collection, p *plan.Room) climate.Room {
	r := climate.DefaultRoom
	r.Low, r.High = climate.Celsius(p.Temperature.V.Low), climate.Celsius(p.Temperature.V.High)
	if p.Humidity.Set() {
		r.RHLow, r.RHHigh = climate.Percent(p.Humidity.V.Low), climate.Percent(p.Humidity.V.High)
	}
	if c.About != nil && c.About.Altitude.Set() {
		r.Altitude = climate.Metre(c.About.Altitude.V.Value / 1000)
	}
	return r
}

func wall(kind string) climate.Material {
	switch kind {
	case "acrylic":
		return climate.Acrylic
	case "tub":
		return climate.Polypropylene
	case "pvc":
		return climate.PVC
	case "wood":
		return climate.Plywood
	case "mesh":
		return climate.Mesh
	}
	return climate.Glass
}

// ventilation takes the vents as written, else what the lid lets through.
func ventilation(h *plan.Housing) climate.Ventilation {
	if h.Kind.V == "mesh" {
		return climate.AllMesh
	}
	switch h.Vents.V {
	case "none":
		return climate.Sealed
	case "few":
		return climate.LooseLid
	case "some":
		return climate.SmallVents
	case "cross":
		return climate.FrontAndMesh
	case "top":
		return climate.FullMeshTop
	case "all":
		return climate.AllMesh
	}
	switch {
	case h.LidIs("part mesh"):
		return climate.FrontAndMesh
	case h.LidIs("mesh"):
		return climate.FullMeshTop
	}
	return climate.LooseLid
}

// dish is one as people use it (judgement): 10 cm across, 200 ml, for a species of dry
// places 5 cm and 40 ml, and in a small box no more than a twentieth of the floor.
func dish(floor climate.SquareMetre, sheet *plan.SpeciesSheet) climate.Dish {
	d := climate.Dish{Volume: 0.2, Surface: 0.0079}
	if sheet.Is(schema.FigureMoisture, "arid") {
		d = climate.Dish{Volume: 0.04, Surface: 0.002}
	}
	d.Surface = min(d.Surface, floor/20)
	return d
}

// moisture is how damp the substrate is kept: as written, else as is usual for the species.
func moisture(h *plan.Housing, sheet *plan.SpeciesSheet) string {
	switch {
	case h.Moisture.Set():
		return h.Moisture.V
	case sheet.Is(schema.FigureMoisture, "arid"):
		return "dry"
	}
	return "damp below"
}

func substrate(h *plan.Housing, sheet *plan.SpeciesSheet) climate.Substrate {
	s := climate.Substrate{Depth: climate.Metre(h.Depth.V.Value / 1000)}
	words := strings.ToLower(h.Substrate.V)
	switch {
	case strings.Contains(words, "sand"):
		s.Soil = climate.Sand
	case strings.Contains(words, "soil") || strings.Contains(words, "loam") || strings.Contains(words, "clay"):
		s.Soil = climate.Loam
	default:
		s.Soil = climate.Coir
	}
	switch moisture(h, sheet) {
	case "damp below":
		s.Moisture = climate.MoistBelow
	case "damp":
		s.Moisture = climate.Moist
	case "wet":
		s.Moisture = climate.Wet
	default:
		s.Moisture = climate.Dry
	}
	return s
}

func heater(h *plan.Heater) climate.Heater {
	out := climate.Heater{Power: climate.Watt(h.Power.V.Value), Thermostat: h.Thermostat.Set()}
	switch h.Name.V {
	case "cable":
		out.Kind = climate.Cable
	case "lamp":
		out.Kind = climate.Lamp
	case "ceramic":
		out.Kind = climate.Ceramic
	case "panel":
		out.Kind = climate.Panel
	}
	switch h.Place.V {
	case "back":
		out.Place = climate.Back
	case "under":
		out.Place = climate.Under
	case "above":
		out.Place = climate.Above
	default:
		out.Place = climate.Side
	}
	if h.Hours.Set() {
		out.HoursPerDay = climate.Hour(h.Hours.V.Value / 60)
	}
	return out
}
