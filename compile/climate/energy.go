package climate

// DaysPerMonth is the mean length of a month, 365.25/12.
const DaysPerMonth Day = 30.4375

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

// Energy returns what a mean power draws over a span of days.
func Energy(mean Watt, d Day) KilowattHour {
	return KilowattHour(float64(mean) * float64(d) * 24 / 1000)
}
