package climate

import "math"

// What tables and other programs state, in terms of what the enclosure is worked
// out with.

// WaterPerDay returns the water that air changes carry out, which is what must be
// supplied to hold rh: ρ·n·V·(w_in - w_room)·24, density at inside conditions.
// Negative if the room is the damper.
func WaterPerDay(n PerHour, v CubicMetre, in Celsius, rh Percent, room Celsius, roomRH Percent, p Pascal) GramPerDay {
	e := VapourPressure(in, rh)
	return waterPerDay(n, v, DryAirDensity(in, e, p), humidityRatioOf(e, p)-HumidityRatio(room, roomRH, p))
}

// VapourPressure returns the partial pressure of water vapour in air at t and rh.
func VapourPressure(t Celsius, rh Percent) Pascal {
	return Pascal(rh/100) * SaturationPressure(t)
}

// DewPoint returns the temperature at which air at t and rh is saturated; below
// the triple point that is the frost point. Air without any water has none: -Inf.
func DewPoint(t Celsius, rh Percent) Celsius {
	return dewPointOf(VapourPressure(t, rh))
}

// AbsoluteHumidity returns the mass of water in a volume of air: e/(Rv·T).
func AbsoluteHumidity(t Celsius, rh Percent) GramPerCubicMetre {
	return vapourDensity(VapourPressure(t, rh), t)
}

// HumidityRatio returns the mass of water for each mass of dry air at station
// pressure p. ASHRAE Fundamentals 2017 ch. 1 eq. 20.
func HumidityRatio(t Celsius, rh Percent, p Pascal) KilogramPerKilogram {
	return humidityRatioOf(VapourPressure(t, rh), p)
}

// SurfaceRise returns how much warmer than its surroundings a flat heater gets
// when nothing turns it off: q/(1/Rup + 1/Rdown).
func SurfaceRise(flux WattPerSquareMetre, up, down SquareMetreKelvinPerWatt) Kelvin {
	return Kelvin(float64(flux) / float64(1/up+1/down))
}

// SteadyHeatLoss returns the power that keeps the inside at in while the room is
// at room; negative if the inside is the colder.
func SteadyHeatLoss(loss WattPerKelvin, in, room Celsius) Watt {
	return Watt(float64(loss) * float64(in-room))
}

// TemperatureAfterCoolingRoom returns the temperature of one lump after a time in
// a room that itself falls towards outside with its own time constant.
func TemperatureAfterCoolingRoom(tau Second, start, room0, outside Celsius, roomTau, after Second) Celsius {
	if math.Abs(float64(roomTau-tau)) < 1e-4*float64(tau) {
		roomTau *= 1.001 // the formula is 0/0 where both agree
	}
	k := (room0 - outside) * Celsius(roomTau/(roomTau-tau))
	return outside + k*Celsius(math.Exp(-float64(after/roomTau))) + (start-outside-k)*Celsius(math.Exp(-float64(after/tau)))
}

// SlowTimeConstant returns the longer of the two time constants.
func (m TwoNode) SlowTimeConstant() Second {
	return Second(1 / m.Fall(0, 0, 0, RoomCourse{}).rate[1])
}

// DutyCycle returns the share of time a heater of the given power must run to
// cover load: at most 1, and 1 if there is a load but no heater.
func DutyCycle(load, heater Watt) Share {
	switch {
	case load <= 0:
		return 0
	case load >= heater:
		return 1
	}
	return Share(load / heater)
}

// ShareInwards returns the part of a flat heater's heat that goes in, from the
// resistance on either side to sinks at about the same temperature.
func ShareInwards(in, out SquareMetreKelvinPerWatt) Share { return Share(out / (in + out)) }
