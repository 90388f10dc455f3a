package growth

import (
	"slices"
	"strconv"

	"vivary/compile/climate"
	"vivary/compile/life"
	"vivary/schema/civil"
	"vivary/schema/quantity"
	"vivary/schema/wording"
)

// Course is how an animal grew, as weights and moults in the log tell, beside how it was to grow.
// Of several animals together a weight or a moult may be of any, so that there is none of them.
type Course struct {
	Group  *life.Group
	Growth Factor // of the length at a moult
	Points []Point
	Times  []Time

	grows bool // something is expected of its weight: it is not grown, and by how much it grows is known
}

// Point is a weight.
type Point struct {
	On     civil.Date
	Mass   float64 // g
	Moults int     // since the first weight
	// Expected is what it was to weigh by the first weight and the moults since, zero of the first
	// itself. Alike says that both were taken soon after a moult, or no moult lies between: else an
	// instar is wide, since an animal weighs twice as much at its end, and so is the band.
	Expected climate.Band[float64]
	Alike    bool
}

// Time is the time between two moults.
type Time struct {
	From, To    civil.Date
	Instar      int // 0 where it is not known
	Least, Most int // days that it lasts by the sheet; 0, 0 where that is not known
}

// Days is how long it was.
func (t *Time) Days() int { return int(t.To - t.From) }

// soonAfter is for how many days after a moult a weight is that of a fresh animal: until it has
// fed a few times (ours; common practice, no source).
const soonAfter = 21

// near is by how much a weight may be off before it is held to be another than expected: a meal
// in it, and a kitchen scale (ours; common practice, no source).
const near = 0.1

// Course returns how an animal grew, false where the log tells neither two weights nor two moults.
func (r *Report) Course(g *life.Group) (Course, bool) {
	c := Course{Group: g}
	if g.Count(r.Today) != 1 || g.Sheet != r.Life.Plan.Sheet || g.Sheet == nil {
		return c, false
	}
	var f figures
	f.read(g.Sheet)
	growth, known := f.growth()
	c.Growth = growth
	for _, w := range g.Weights {
		if w.On > r.Today || w.Weight.V.Value <= 0 || g.Count(w.On) > 1 {
			continue
		}
		p := Point{On: w.On, Mass: w.Weight.V.Value}
		if len(c.Points) == 0 {
			c.grows = known && stageOf(g.Stage(p.On)) != adult
		} else if c.grows { // who is grown only goes up and down
			first := &c.Points[0]
			p.Moults = moultsBetween(g.Moults, first.On, p.On)
			p.Alike = p.Moults == 0 || fresh(g.Moults, first.On) && fresh(g.Moults, p.On)
			p.Expected = expected(growth.cubed(), first.Mass, p.Moults, p.Alike)
		}
		c.Points = append(c.Points, p)
	}
	for i := 1; i < len(g.Moults); i++ {
		t := Time{From: g.Moults[i-1], To: g.Moults[i], Instar: g.Instar(g.Moults[i-1])}
		if least, most, ok := f.lasts(t.Instar); ok {
			t.Least, t.Most = least, most
		}
		c.Times = append(c.Times, t)
	}
	return c, len(c.Points) > 1 || len(c.Times) > 0
}

// expected is what an animal weighs after some moults: the mass grows by the cube of the factor
// of the length at each. Within one instar it may double (Przibram's rule, as compared with
// rearings by Francke and Sissom 1984, J. Arachnol. 12:1-20), so that two weights of which
// nobody knows when they were taken in it are worth a moult more or less.
func expected(mass Factor, first float64, moults int, alike bool) climate.Band[float64] {
	b := mass.grow(climate.Exactly(first), moults, moults)
	switch {
	case moults == 0: // from its own moult up to the next
		b.Low, b.High = first, first*mass.High
	case !alike:
		b.Low, b.High = b.Low/mass.High, b.High*mass.High
	}
	return b
}

func moultsBetween(all []civil.Date, from, to civil.Date) (n int) {
	for _, d := range all {
		if d > from && d <= to {
			n++
		}
	}
	return n
}

// fresh reports whether a day is soon after a moult.
func fresh(all []civil.Date, on civil.Date) bool {
	return slices.ContainsFunc(all, func(d civil.Date) bool { return d <= on && on-d <= soonAfter })
}

// Pace is whether an animal grows as it was to.
type Pace int

// The paces.
const (
	AsReckoned Pace = iota
	Behind
	Ahead
	Unsure // nothing to go by
)

// Weight is the pace by the last weight.
func (c *Course) Weight() Pace {
	if len(c.Points) < 2 {
		return Unsure
	}
	switch p := &c.Points[len(c.Points)-1]; {
	case p.Expected.High <= 0:
		return Unsure
	case p.Mass < p.Expected.Low*(1-near):
		return Behind
	case p.Mass > p.Expected.High*(1+near):
		return Ahead
	}
	return AsReckoned
}

// Time is the pace by the last time between two moults.
func (c *Course) Time() Pace {
	if len(c.Times) == 0 {
		return Unsure
	}
	switch t := &c.Times[len(c.Times)-1]; {
	case t.Most == 0:
		return Unsure
	case t.Days() > t.Most:
		return Behind
	case t.Days() < t.Least:
		return Ahead
	}
	return AsReckoned
}

// mostPoints is how many weights and moults are told.
const mostPoints = 6

// lines tell it, and what it says of food.
func (c *Course) lines(u units) (out []string) {
	name := c.Group.Animals.Name.V
	if n := len(c.Points); n > 1 {
		from := max(0, n-mostPoints)
		line := "Weights of " + name + ":"
		if from > 0 {
			line = "Weights of " + name + ", the last " + strconv.Itoa(n-from) + " of " + strconv.Itoa(n) + ":"
		}
		out = append(out, line)
		for i := from; i < n; i++ {
			p := &c.Points[i]
			line := "  " + p.On.Words() + ": " + quantity.Format(p.Mass, u.mass)
			if b := p.Expected.Round(); b.High > 0 {
				line += "; by the first one " + quantity.FormatBetween(b.Low, b.High, u.mass) + ", with " + wording.Count(p.Moults, "moult", "moults") + " since"
			}
			out = append(out, line)
		}
	}
	if n := len(c.Times); n > 0 {
		for i := max(0, n-mostPoints); i < n; i++ {
			t := &c.Times[i]
			line := "  Between the moults of " + t.From.Words() + " and " + t.To.Words() + ": " + wording.Days(t.Days())
			if t.Most > 0 {
				line += "; instar " + strconv.Itoa(t.Instar) + " lasts " + wording.Span(float64(t.Least), float64(t.Most)) + " days by the sheet"
			}
			out = append(out, line)
		}
	}
	return append(out, c.food()...)
}

// food is what that says of what it eats: no more than it can.
func (c *Course) food() (out []string) {
	switch c.Weight() {
	case Behind:
		out = append(out, "  Lighter than was to be expected: look whether it eats what it is given, how warm it is, and for mites, before it is given more")
	case Ahead:
		out = append(out, "  Heavier than was to be expected: no reason to give more. Where its abdomen is much wider than the rest, smaller meals or longer times between them (common practice, no source)")
	case AsReckoned:
		out = append(out, "  By weight it grows as was to be expected")
	}
	switch c.Time() {
	case Behind:
		out = append(out, "  It took longer to moult than the sheet has: cooler, or less food, and no harm by itself")
	case Ahead:
		out = append(out, "  It moulted sooner than the sheet has: warmer, or more food")
	}
	return out
}
