package climate

import (
	"math/rand/v2"
	"testing"
)

func pick[T any](r *rand.Rand, of ...T) T { return of[r.IntN(len(of))] }

func randomEnclosure(r *rand.Rand) Enclosure {
	between := func(lo, hi float64) float64 { return lo + (hi-lo)*r.Float64() }
	low := between(12, 24)
	dry := between(20, 60)
	e := Enclosure{
		Inside:      Box{Metre(between(0.1, 1.5)), Metre(between(0.1, 0.8)), Metre(between(0.1, 1))},
		Wall:        Sheet{Material: Material(r.IntN(int(Mesh)))},
		Lid:         Lid{Kind: LidKind(r.IntN(3)), Sheet: Sheet{Material: pick(r, Glass, Plywood)}},
		Ventilation: Ventilation(r.IntN(ventilationCount)),
		Substrate:   Substrate{Soil(r.IntN(soilCount)), Moisture(r.IntN(moistureCount)), Metre(between(0, 0.2))},
		Base:        Base(r.IntN(3)),
		Dish:        Dish{Litre(between(0, 1)), SquareMetre(between(0, 0.02))},
		Room: Room{Low: Celsius(low), High: Celsius(low + between(0, 6)), RHLow: Percent(dry),
			RHHigh: Percent(dry + between(0, 30)), Altitude: Metre(between(0, 2500))},
	}
	if r.IntN(2) == 0 {
		e.Put(CoverOf(Foam, 0.02), Walls...)
	}
	return e
}

func ordered[T ~float64](t *testing.T, what string, b Band[T]) {
	t.Helper()
	if !(b.Low <= b.Likely && b.Likely <= b.High) {
		t.Errorf("%s is not in order: %v", what, b)
	}
}

// randomHeater draws a heater, with a thermostat or without.
func randomHeater(r *rand.Rand, room Celsius) Heater {
	return Heater{Power: Watt(3 + 100*r.Float64()), Place: Place(r.IntN(5)), Kind: HeaterKind(r.IntN(5)),
		Area: pick(r, SquareMetre(0), 0.03, 0.1), Contact: Contact(r.IntN(4)), HoursPerDay: Hour(r.IntN(25)),
		Thermostat: r.IntN(2) == 0, Setting: room + Celsius(1+15*r.Float64()), Probe: Probe(r.IntN(3))}
}

// What must hold for any enclosure: common sense, no source.
func TestDirections(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 6))
	for range 1500 {
		e := randomEnclosure(r)
		target := e.Room.Low + Celsius(1+14*r.Float64())
		h := randomHeater(r, e.Room.Low)
		one := []Heater{h}
		c := Conditions{Room: e.Room.Low}
		z := e.Zones(one, c, nil)
		limit := e.Room.Low + (target-e.Room.Low)*Celsius(r.Float64())
		course := pick(r, RoomCourse{}, RoomCourse{0, 24})
		cut := e.PowerCut(target, limit, z.Below, course)

		ordered(t, "air", z.Air)
		ordered(t, "spot", z.Spot)
		if h.flat() && h.Place == Under {
			ordered(t, "floor", z.Floor)
		}
		ordered(t, "duty", z.Duty)
		ordered(t, "draw", z.Draw)
		ordered(t, "air cools", cut.Air)
		ordered(t, "substrate cools", cut.Substrate)
		if z.Duty.High > 1 || z.Duty.Low < 0 || z.Below < 0 || z.Below > 1 {
			t.Errorf("duty %v, %v from below", z.Duty, z.Below)
		}
		if cut.SubstrateStart > target || cut.SubstrateStart < e.Room.Low {
			t.Errorf("substrate starts at %g between %g and %g", cut.SubstrateStart, e.Room.Low, target)
		}
		if z.Spot.Likely < z.Air.Likely {
			t.Errorf("the warm spot, %v, is colder than the air, %v", z.Spot, z.Air)
		}
		const near = 0.02 // what the search leaves
		if h.Thermostat && h.Probe == AtSpot && z.Warmest == 0 && z.Spot.Likely > max(h.Setting, z.Air.Likely)+near {
			t.Errorf("a thermostat at %g with its probe on the spot leaves it at %v", h.Setting, z.Spot)
		}
		if h.Thermostat && h.Probe == InAir && z.Air.Likely > max(h.Setting, e.Zones(nil, c, nil).Air.Likely)+near {
			t.Errorf("a thermostat at %g with its probe in the air leaves it at %v", h.Setting, z.Air)
		}
		more, wrapped, closed := h, e, e
		more.Power *= 1.3
		wrapped.Put(CoverOf(Foam, 0.05), Walls...)
		warmer := c
		warmer.Room++
		stuck, dark := c, c
		stuck.Stuck, dark.Dark = true, true
		closed.Ventilation = Sealed
		bigger := e.Zones([]Heater{more}, c, nil)
		in := e.Zones(one, warmer, nil)
		always := e.Zones(one, stuck, nil)
		for _, d := range []struct {
			what           string
			lesser, higher Celsius
		}{
			{"more watts, colder air", z.Air.Likely, bigger.Air.Likely},
			{"a warmer room, colder air", z.Air.Likely, in.Air.Likely},
			{"a warmer room, a colder spot", z.Spot.Likely, in.Spot.Likely},
			{"stuck, a colder spot", z.Spot.Likely, always.Spot.Likely},
			{"stuck, colder air", z.Air.Likely, always.Air.Likely},
			{"in the dark, warmer air", e.Zones(one, dark, nil).Air.Likely, z.Air.Likely},
			{"a colder room, cools later", Celsius(func() Minute { f := e; f.Room.Low--; return f.PowerCut(target, limit, z.Below, course).Air.Likely }()), Celsius(cut.Air.Likely)},
			{"the limit is met sooner when it is lower", Celsius(cut.Air.Likely), Celsius(e.PowerCut(target, limit-0.5, z.Below, course).Air.Likely)},
		} {
			if d.what == "a warmer room, a colder spot" && h.Probe == InAir {
				continue // held by its air, a heater works less in a warmer room
			}
			if !(d.lesser <= d.higher+near) {
				t.Errorf("%s: %.3f against %.3f for %+v with %+v", d.what, d.lesser, d.higher, e, h)
			}
		}
		if h.flat() && h.Place != Under && h.Place != Above {
			// Foam behind a mat sends more of its heat in.
			if w := wrapped.Zones(one, stuck, nil); w.Spot.Likely < always.Spot.Likely-near {
				t.Errorf("foam behind a mat cools it, from %v to %v: %+v with %+v", always.Spot, w.Spot, e, h)
			}
		}
		if t.Failed() {
			return
		}
	}
}

// A curve starts at the start, falls, and meets the limit at the likely time.
func TestCurve(t *testing.T) {
	e := exampleA()
	c := e.PowerCut(30, 24, 0, RoomCourse{})
	points := c.AppendCurve(nil, c.Air.Likely, 25)
	if len(points) != 25 || points[0].Air < 29.999999 || points[0].Substrate > 26.85 || points[0].Substrate < 26.83 {
		t.Errorf("starts at %+v", points[0])
	}
	for i := 1; i < len(points); i++ {
		if points[i].Air >= points[i-1].Air {
			t.Errorf("the air warms at %v", points[i])
		}
	}
	near(t, "the air at the likely time", float64(points[24].Air), 24, 0.001)
}

// One enclosure must cost little: a collection has thousands, and the whole build
// at most a few seconds.
func BenchmarkEnclosure(b *testing.B) {
	e := exampleA()
	e.Room = Room{Low: 18, High: 23, RHLow: 40, RHHigh: 60, Altitude: 300}
	e.Dish.Surface = 0.0079
	heaters := []Heater{{Power: 28, Place: Side, Thermostat: true, Setting: 30}, {Power: 40, Place: Above, Kind: Lamp, HoursPerDay: 12}}
	b.Run("Zones", func(b *testing.B) {
		for b.Loop() {
			e.Zones(heaters, Conditions{Room: 18}, nil)
		}
	})
	b.Run("PowerCut", func(b *testing.B) {
		for b.Loop() {
			e.PowerCut(28, 22, 0, RoomCourse{})
		}
	})
	b.Run("PowerCutCoolingRoom", func(b *testing.B) {
		for b.Loop() {
			e.PowerCut(28, 22, 0, RoomCourse{0, DwellingTimeConstant})
		}
	})
	b.Run("WaterNeed", func(b *testing.B) {
		for b.Loop() {
			e.WaterNeed(28, 70, 85)
		}
	})
	b.Run("All", func(b *testing.B) {
		for b.Loop() {
			e.Zones(heaters, Conditions{Room: 18}, nil)
			e.PowerCut(28, 22, 0, RoomCourse{})
			e.WaterNeed(28, 70, 85)
		}
	})
}

// Nothing in the answers may be allocated.
func TestNoAllocation(t *testing.T) {
	e := exampleA()
	heaters := []Heater{{Power: 28, Place: Under}}
	if n := testing.AllocsPerRun(100, func() {
		e.Zones(heaters, Conditions{Room: 18}, nil)
		e.PowerCut(28, 22, 0, RoomCourse{0, 24})
		e.WaterNeed(28, 70, 85)
	}); n != 0 {
		t.Errorf("%g allocations for an enclosure, want none", n)
	}
}
