package life

import (
	"math"
	"strconv"

	"vivary/plan"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/quantity"
)

// What the sheets do not say of a cool rest, in days. Two weeks without food at full
// heat empty the gut (reptifiles.com on brumation, of leopard geckos; 10 to 14 days for
// scorpions is common practice, as are the other two).
const (
	usualFullHeat  = 14 // from the last meal to the first step down
	usualFirstMeal = 5  // from the day the heat is back to the first meal
	usualFullMeals = 7  // from that one to meals as usual
)

// Rest is one time that a season comes up in an enclosure, with the days that follow
// from it.
type Rest struct {
	*Cooling
	From  civil.Date // the first step down; the season's first day
	Until civil.Date // the heat is back; the day after the season's last
	// Fast is the first day without meals, FirstMeal the day of the one small item after
	// it, and Full that from which meals are as usual; all From or Until where meals go on.
	Fast, FirstMeal, Full civil.Date
	// Off and On are the days on which the heaters go off and on again; they are the same where
	// they never do.
	Off, On civil.Date
	isDark  bool
	planned civil.Date // From, as the plan has it
	Unfit   []Unfit    // why it is not for these animals, most certain first
	steps   []step
}

// Planned returns the first day that the plan has, and the first after its last, whatever
// became of it.
func (r *Rest) Planned() (from, until civil.Date) {
	year, _, _ := r.planned.YMD()
	from, until, _ = InYear(r.Season, year)
	return from, until
}

// step is a day on which somebody sets the heat.
type step struct {
	on   civil.Date
	heat float64 // °C; NaN where no more is known than off and on
	what turn
}

type turn uint8

const (
	down turn = iota
	off       // down, and the heater with it
	up
	on // up, and the heater with it
	back
)

// rest lays out the days of one time.
func (c *Cooling) rest(sheet *plan.SpeciesSheet, from, until civil.Date) *Rest {
	r := &Rest{Cooling: c, From: from}
	n := c.steps(int(until - from))
	for i := range n {
		r.steps = append(r.steps, step{from + civil.Date(7*i), c.level(i + 1), down})
	}
	// Where there is no time to go all the way down the heaters stay on.
	if c.Off && n == 0 {
		r.dark(from)
		if c.heated {
			r.steps = append(r.steps, step{from, math.NaN(), off})
		}
	} else if last := n - 1; c.Off && c.level(n) <= c.Aim {
		r.steps[last].what = off
		r.dark(r.steps[last].on)
	}
	r.warm(until-civil.Date(7*max(0, n-1)), n)
	r.meals(sheet)
	return r
}

// dark notes that the heaters are off from a day on.
func (r *Rest) dark(from civil.Date) { r.Off, r.isDark = from, true }

// warm adds the steps back from the level of so many steps down, the first of them on a
// day. The last has the usual warmth.
func (r *Rest) warm(first civil.Date, n int) {
	for i := range n {
		s := step{first + civil.Date(7*i), min(r.Usual, r.level(n)+float64(i+1)*r.ramp), up}
		if i == n-1 {
			s.what, s.heat = back, r.Usual
		}
		if i == 0 && r.isDark {
			s.what = on
		}
		r.steps = append(r.steps, s)
	}
	if n == 0 && r.isDark && r.heated {
		r.steps = append(r.steps, step{first, math.NaN(), on})
	}
	r.On, r.Until = first, first+civil.Date(7*max(0, n-1))
	if !r.isDark {
		r.Off = first
	}
}

// meals puts the last and the first meal, where there are none in between.
func (r *Rest) meals(sheet *plan.SpeciesSheet) {
	if !r.Fasting || !r.Rest {
		r.Fast, r.FirstMeal, r.Full = r.From, r.Until, r.Until
		return
	}
	span := func(what *schema.Figure, usual int, middle bool) int {
		if sheet == nil {
			return usual
		}
		s := spanOf(sheet.Figure(what, "adult"))
		switch {
		case !s.ok:
			return usual
		case middle:
			return (s.low + s.high) / 2
		}
		return s.high
	}
	r.Fast = r.From - civil.Date(span(schema.FigureRestFullHeat, usualFullHeat, false))
	r.FirstMeal = r.Until + civil.Date(span(schema.FigureRestFirstMeal, usualFirstMeal, true))
	r.Full = r.FirstMeal + civil.Date(span(schema.FigureRestFullMeals, usualFullMeals, false))
}

// end ends the rest on a day, before its time: from there the heat goes up again. Where it
// has not begun it never does.
func (r *Rest) end(day civil.Date, sheet *plan.SpeciesSheet) {
	if day <= r.From {
		r.Fast, r.From = min(r.Fast, day), day
		r.Off, r.On, r.Until, r.FirstMeal, r.Full, r.steps = day, day, day, day, day, nil
		return
	}
	n := 0
	for n < len(r.steps) && r.steps[n].on < day && r.steps[n].what <= off {
		n++
	}
	r.steps = r.steps[:n:n]
	r.isDark = r.isDark && r.Off < day
	if n == 1 && math.IsNaN(r.steps[0].heat) {
		n = 0
	}
	r.warm(day, n)
	r.meals(sheet)
}

// words say what to do at a step.
func (r *Rest) words(s step) string {
	heat := quantity.Format(s.heat, r.Unit)
	set := "set the thermostat to " + heat
	if !r.thermostat {
		set = "set the heater so that the warm end is at " + heat
	}
	ends := ": " + r.Season.Name.V + " ends by steps"
	if math.IsNaN(s.heat) || s.heat == r.Usual {
		ends = ": " + r.Season.Name.V + " is over"
	}
	switch s.what {
	case off:
		text := "switch the heater off: " + r.Season.Name.V
		if !math.IsNaN(s.heat) {
			text += ", at about " + heat + " from here"
		}
		return text
	case on:
		if math.IsNaN(s.heat) {
			return "switch the heater on again" + ends
		}
		return "switch the heater on, " + set + ends
	case up, back:
		return set + ends
	}
	return set + ": " + r.Season.Name.V + ", step " + strconv.Itoa(1+int(s.on-r.From)/7)
}
