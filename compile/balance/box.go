package balance

import (
	"slices"
	"strings"

	"vivary/compile/climate"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/quantity"
)

func box(c *plan.Collection, e *plan.Enclosure) climate.Enclosure {
	h := e.Housing
	in := h.Inside.V
	b := climate.Enclosure{
		Inside: climate.Box{Length: climate.Metre(in.Length / 1000), Width: climate.Metre(in.Width / 1000), Height: climate.Metre(in.Height / 1000)},
		Room:   room(c, e.Place),
	}
	if h.ShelfRise.Set() {
		b.Room.Low += climate.Celsius(h.ShelfRise.V.Low)
		b.Room.High += climate.Celsius(h.ShelfRise.V.High)
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
	switch h.StandsOn.V {
	case "feet", "wire":
		b.Base = climate.OnShelf
	case "foam":
		b.Base = climate.OnFoam
	}
	for _, f := range h.Faces {
		cover(&b, f)
	}
	b.Ventilation = ventilation(h)
	b.Substrate = substrate(h, e.Sheet)
	if h.Water.Or("dish") == "dish" {
		b.Dish = dish(b.Inside.FloorArea(), e.Sheet)
	}
	return b
}

// cover puts what a face block says on the box.
func cover(b *climate.Enclosure, f *plan.Face) {
	thick := climate.Metre(0)
	if f.Thick.Set() {
		thick = climate.Metre(f.Thick.V.Value / 1000)
	}
	c := climate.Cover{Warm: f.Beside.V == "warm box"}
	switch f.Backing.V {
	case "foam":
		c.Resistance = climate.CoverOf(climate.Foam, thick).Resistance
	case "cork":
		c.Resistance = climate.CoverOf(climate.Cork, thick).Resistance
	case "board":
		c.Resistance = climate.CoverOf(climate.Plywood, thick).Resistance
	case "foil":
		c.Resistance = climate.Foil.Resistance
	}
	b.Put(c, faces[f.Name.V]...)
}

// faces are what the name of a face block means.
var faces = map[string][]climate.Face{
	"back":  {climate.BackFace},
	"front": {climate.FrontFace},
	"left":  {climate.LeftFace},
	"right": {climate.RightFace},
	"lid":   {climate.LidFace},
	"base":  {climate.BaseFace},
	"walls": climate.Walls,
}

// Backing names what the plan says lies on a face, "" for nothing. Of several blocks about
// one face the last counts, as for the heat.
func Backing(h *plan.Housing, face climate.Face) string {
	backing := ""
	for _, f := range h.Faces {
		if slices.Contains(faces[f.Name.V], face) {
			backing = f.Backing.V
		}
	}
	if backing == "bare" {
		return ""
	}
	return backing
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

// devices are the kinds of heater as the physics knows them. Of any other, a slip of the
// pen or a heated stone, nothing is reckoned: it is refused for what it is.
var devices = map[string]climate.HeaterKind{"mat": climate.Mat, "cable": climate.Cable, "lamp": climate.Lamp, "ceramic": climate.Ceramic, "panel": climate.Panel}

var places = map[string]climate.Place{"side": climate.Side, "back": climate.Back, "under": climate.Under, "above": climate.Above, "inside": climate.Inside}

var probes = map[string]climate.Probe{"heater": climate.OnHeater, "air": climate.InAir, "cool end": climate.InAir}

var contacts = map[string]climate.Contact{"full": climate.FullContact, "loose": climate.LooseContact, "gap": climate.GapContact}

func heater(c *plan.Collection, e *plan.Enclosure, h *plan.Heater) climate.Heater {
	out := climate.Heater{Power: climate.Watt(h.Power.V.Value), Kind: devices[h.What()], Place: places[h.Place.V],
		Probe: probes[h.Probe.V], Contact: contacts[h.Contact.V]}
	if t := c.Setting(h); t.Set() {
		out.Thermostat, out.Setting = true, climate.Celsius(t.V.Value)
	}
	if h.Hours.Set() {
		out.HoursPerDay = climate.Hour(h.Hours.V.Value / 60)
	}
	in := e.Housing.Inside.V
	switch {
	case h.Size.Set():
		out.Area = climate.SquareMetre(h.Size.V.Area() / 1e4)
		out.Strip = climate.Metre(min(h.Size.V.Length, h.Size.V.Width) / 1000)
	case h.Length.Set():
		out.Area = climate.SquareMetre(h.Length.V.Value/1000) * climate.SquareMetre(climate.CableStrip)
	case h.Covers.Set():
		out.Area = climate.SquareMetre(h.Covers.V.Value / 100 * wallArea(in, h.Place.V))
	}
	return out
}

// wallArea returns the area of the face on which a heater is, in m².
func wallArea(in quantity.Size, place string) float64 {
	switch place {
	case "side":
		return in.Width * in.Height / 1e6
	case "back":
		return in.Length * in.Height / 1e6
	}
	return in.Length * in.Width / 1e6
}
