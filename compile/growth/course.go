package growth

import (
	"vivary/compile/climate"
	"vivary/schema/civil"
)

// Span is what an animal was to weigh between two moults.
type Span struct {
	From, To civil.Date
	Moults   int // since the first weight
	Mass     climate.Band[float64]
}

// Spans are what it was to weigh from the first weight up to a day, from moult to moult, as wide
// as an instar is: whoever was weighed soon after its moults is held to less (Point.Expected).
// None where nothing is expected of its weight.
func (c *Course) Spans(until civil.Date) (all []Span) {
	if len(c.Points) == 0 || !c.grows {
		return nil
	}
	first := &c.Points[0]
	add := func(from, to civil.Date, moults int) {
		if from < to {
			all = append(all, Span{from, to, moults, expected(c.Growth.cubed(), first.Mass, moults, false)})
		}
	}
	from, n := first.On, 0
	for _, m := range c.Group.Moults {
		if m > first.On && m <= until {
			add(from, m, n)
			from, n = m, n+1
		}
	}
	add(from, until+1, n)
	return all
}

// Moults are the moults that the log has, up to a day.
func (c *Course) Moults(until civil.Date) (all []civil.Date) {
	for _, m := range c.Group.Moults {
		if m <= until {
			all = append(all, m)
		}
	}
	return all
}

// Said is what the course says of food, in words.
func (c *Course) Said() []string { return c.food() }
