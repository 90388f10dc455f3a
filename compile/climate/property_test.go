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
	return Enclosure{
		Inside:      Box{Metre(between(0.1, 1.5)), Metre(between(0.1, 0.8)), Metre(between(0.1, 1))},
		Wall:        Sheet{Material: Material(r.IntN(int(Mesh)))},
		Wrap:        pick(r, Metre(0), 0.02),
		Lid:         Lid{Kind: LidKind(r.IntN(3)), Sheet: Sheet{Material: pick(r, Glass, Plywood)}},
		Ventilation: Ventilation(r.IntN(ventilationCount)),
		Substrate:   Substrate{Soil(r.IntN(soilCount)), Moisture(r.IntN(moistureCount)), Metre(between(0, 0.2))},
		Base:        Base(r.IntN(3)),
		Dish:        Dish{Litre(between(0, 1)), SquareMetre(between(0, 0.02))},
		Room: Room{Low: Celsius(low), High: Celsius(low + between(0, 6)), RHLow: Percent(dry),
			RHHigh: Percent(dry + between(0, 30)), Altitude: Metre(between(0, 2500))},
	}
}

func ordered[T ~float64](t *testing.T, what string, b Band[T]) {
	t.Helper()
	if !(b.Low <= b.Likely && b.Likely <= b.High) {
		t.Errorf("%s is not in order: %v", what, b)
	}
}

// What must hold for any enclosure: common sense, no source.
func TestDirections(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 6))
	for range 3000 {
		e := randomEnclosure(r)
		target := e.Room.Low + Celsius(1+14*r.Float64())
		h := Heater{Power: Watt(5 + 150*r.Float64()), Place: Place(r.IntN(4)), Kind: HeaterKind(r.IntN(5)),
			Thermostat: r.IntN(2) == 0, HoursPerDay: Hour(r.IntN(25))}
		one := []Heater{h}
		b := e.Balance(target, one)
		w := e.WaterNeed(target, 60, 80)
		limit := e.Room.Low + (target-e.Room.Low)*Celsius(r.Float64())
		course := pick(r, RoomCourse{}, RoomCourse{0, 24})
		c := e.PowerCut(target, limit, one, course)

		ordered(t, "loss", b.Loss)
		ordered(t, "needed", b.Needed)
		ordered(t, "supply", b.Supply)
		ordered(t, "margin", b.Margin)
		ordered(t, "rise", b.RiseReachable)
		ordered(t, "duty", b.Duty)
		ordered(t, "month", b.Month)
		ordered(t, "stuck", b.WarmestIfStuck)
		ordered(t, "share", e.heatShare(&h))
		ordered(t, "air", c.Air)
		ordered(t, "substrate", c.Substrate)
		ordered(t, "water", w.Needed)
		ordered(t, "mist", w.Misted)
		ordered(t, "fog", w.FogsAt)
		ordered(t, "unmisted", w.Unmisted)

		if b.Duty.High > 1 || b.Duty.Low < 0 {
			t.Errorf("duty %v", b.Duty)
		}
		if w.FogsAt.High > 100 || w.Unmisted.High > 100 || w.DriestRH > 100 {
			t.Errorf("more than saturated: %+v", w)
		}
		if c.SubstrateStart > target || c.SubstrateStart < e.Room.Low {
			t.Errorf("substrate starts at %g between %g and %g", c.SubstrateStart, e.Room.Low, target)
		}
		type direction struct {
			what   string
			lesser float64
			higher float64
		}
		more := h
		more.Power *= 1.3
		bigger := e.Balance(target, []Heater{more})
		hotter := e.Balance(target+1, one)
		wrapped, cold, damp := e, e, e
		wrapped.Wrap += 0.02
		cold.Room.Low--
		damp.Room.RHLow, damp.Room.RHHigh = damp.Room.RHLow+5, damp.Room.RHHigh+5
		for _, d := range []direction{
			{"more watts, lower rise", float64(b.RiseReachable.Likely), float64(bigger.RiseReachable.Likely)},
			{"more watts, worse verdict", float64(b.Verdict), float64(bigger.Verdict)},
			{"more watts, cooler if stuck", float64(b.WarmestIfStuck.High), float64(bigger.WarmestIfStuck.High)},
			{"more watts, longer duty", float64(bigger.Duty.Likely), float64(b.Duty.Likely)},
			{"warmer target, fewer watts needed", float64(b.Needed.Likely), float64(hotter.Needed.Likely)},
			{"warmer target, better verdict", float64(hotter.Verdict), float64(b.Verdict)},
			{"warmer target, less energy", float64(b.Month.Likely), float64(hotter.Month.Likely)},
			{"wrapped, more loss", float64(wrapped.Balance(target, nil).Loss.Likely), float64(b.Loss.Likely)},
			{"wrapped, cools sooner", float64(c.Air.Likely) * (1 - 1e-9), float64(wrapped.PowerCut(target, limit, nil, course).Air.Likely)},
			{"colder room, better verdict", float64(cold.Balance(target, one).Verdict), float64(b.Verdict)},
			{"colder room, cools later", float64(cold.PowerCut(target, limit, one, course).Air.Likely), float64(c.Air.Likely)},
			{"more water for a drier target", float64(e.WaterNeed(target, 50, 70).Needed.Likely), float64(w.Needed.Likely)},
			{"more water in a damper room", float64(damp.WaterNeed(target, 60, 80).Needed.Likely), float64(w.Needed.Likely)},
			{"the limit is met sooner when it is lower", float64(c.Air.Likely), float64(e.PowerCut(target, limit-0.5, one, course).Air.Likely)},
			{"a cooling room keeps the air warm longer", float64(e.PowerCut(target, limit, one, RoomCourse{0, 24}).Air.Likely), float64(e.PowerCut(target, limit, one, RoomCourse{}).Air.Likely) * (1 + 1e-6)},
		} {
			if d.what == "wrapped, cools sooner" && h.Place == Under {
				continue // the heater's place changes where the heat sits at the start
			}
			if !(d.lesser <= d.higher) {
				t.Errorf("%s: %g against %g for %+v with %+v to %.2f °C, limit %.2f", d.what, d.lesser, d.higher, e, h, target, limit)
			}
		}
		if e.Ventilation+1 < ventilationCount {
			open := e
			open.Ventilation++
			if open.WaterNeed(target, 60, 80).Needed.Likely < w.Needed.Likely || open.Balance(target, nil).Loss.Likely < b.Loss.Likely {
				t.Errorf("more open, less lost: %+v", e)
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
	c := e.PowerCut(30, 24, nil, RoomCourse{})
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
	heaters := []Heater{{Power: 28, Place: Side, Thermostat: true}, {Power: 40, Place: Above, Kind: Lamp, HoursPerDay: 12}}
	b.Run("Balance", func(b *testing.B) {
		for b.Loop() {
			e.Balance(28, heaters)
		}
	})
	b.Run("PowerCut", func(b *testing.B) {
		for b.Loop() {
			e.PowerCut(28, 22, heaters, RoomCourse{})
		}
	})
	b.Run("PowerCutCoolingRoom", func(b *testing.B) {
		for b.Loop() {
			e.PowerCut(28, 22, heaters, RoomCourse{0, DwellingTimeConstant})
		}
	})
	b.Run("WaterNeed", func(b *testing.B) {
		for b.Loop() {
			e.WaterNeed(28, 70, 85)
		}
	})
	b.Run("All", func(b *testing.B) {
		for b.Loop() {
			e.Balance(28, heaters)
			e.PowerCut(28, 22, heaters, RoomCourse{})
			e.WaterNeed(28, 70, 85)
		}
	})
}

// Nothing in the answers may be allocated.
func TestNoAllocation(t *testing.T) {
	e := exampleA()
	heaters := []Heater{{Power: 28, Place: Under}}
	if n := testing.AllocsPerRun(100, func() {
		e.Balance(28, heaters)
		e.PowerCut(28, 22, heaters, RoomCourse{0, 24})
		e.WaterNeed(28, 70, 85)
	}); n != 0 {
		t.Errorf("%g allocations for an enclosure, want none", n)
	}
}
