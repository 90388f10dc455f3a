package climate

// DaysPerMonth is the mean length of a month, 365.25/12.
const DaysPerMonth Day = 30.4375

// Energy returns what a mean power draws over a span of days.
func Energy(mean Watt, d Day) KilowattHour {
	return KilowattHour(float64(mean) * float64(d) * 24 / 1000)
}
