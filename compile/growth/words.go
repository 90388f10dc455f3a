package growth

import (
	"math"
	"strconv"

	"vivary/compile/life"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/quantity"
	"vivary/schema/wording"
)

// Lines says the report in a keeper's words and in the units in which the plan
// measures the enclosure, one fact a line.
func (r *Report) Lines() []string {
	u := unitsOf(r.Life.Plan)
	out := r.stockLines(u)
	for _, g := range r.Life.Groups {
		out = append(out, r.growthLines(g, u)...)
		if c, ok := r.Course(g); ok {
			out = append(out, c.lines(u)...)
		}
	}
	out = append(out, r.broodLines(u)...)
	if d := r.TooSmall; d.When != Never && !(d.When == Now && r.Now.FloorOpen() && r.Now.volumeFits()) {
		out = append(out, "Too small "+d.words("for those who live here and the young that stay"))
	}
	if m := &r.Prey; m.When != Never {
		var why string
		if m.Least != nil {
			why = "too small for " + m.Stage + " animals, under " + m.Least.Name.V + " of " + m.Least.Value.V
			if m.Usual.Feeder != "" {
				why += "; the sheet feeds them " + m.Usual.String()
			}
		} else {
			why = "too big for the smallest " + m.Stage + " animals, over " + m.Share.Name.V + " of " + m.Share.Value.V
		}
		out = append(out, m.Prey.V.String()+" for "+m.Group.Animals.Name.V+" stops fitting "+m.Due.words(why))
	}
	return out
}

type units struct{ length, area, volume, mass quantity.Unit }

func unitsOf(e *plan.Enclosure) units {
	u := e.Units
	return units{u.Of(quantity.Millimetre), u.Of(quantity.SquareCentimetre), u.Of(quantity.Litre), u.Of(quantity.Gram)}
}

// words says when, and adds why.
func (d Due) words(why string) string {
	when := "at a time that no sheet tells"
	switch {
	case d.When == Now:
		when = "now"
	case d.When == Between && d.Until == 0:
		when = "from " + d.From.Words() + " at the earliest, or not at all"
	case d.When == Between && d.From == d.Until:
		when = wording.Between(d.From, d.Until)
	case d.When == Between:
		when = wording.Between(d.From, d.Until) + " (estimate)"
	}
	if why == "" {
		return when
	}
	return when + ": " + why
}

func (r *Report) stockLines(u units) (out []string) {
	s, sheet := &r.Now, r.Life.Plan.Sheet.Name.V
	if s.First == nil {
		return append(out, "Floor: the sheet of "+sheet+" says nothing of it.")
	}
	line := "Floor: " + needing(s.Animals) + quantity.FormatAtLeast(s.Floor, u.area)
	if s.Animals > 1 {
		line += ", " + quantity.Format(s.First.Range.Low, u.area) + " for the first"
		if s.Further == nil {
			line += " and half of that for each further (no figure; judgement)"
		}
	}
	if s.Sized {
		line += "; there are " + quantity.Format(s.Has, u.area)
		if s.FloorOpen() {
			line += ": less than suits every one of " + s.First.OfType
			if s.First.Beyond.High > 0 {
				line += "; too little for any is " + quantity.Format(s.wrong(), u.area)
			}
		} else {
			line += verdict(s.FloorFits())
		}
	}
	out = append(out, line+" [floor-first of "+sheet+"]")
	if s.Volume > 0 && s.Sized {
		out = append(out, "Volume: "+quantity.FormatAtLeast(s.Volume, u.volume)+" for one; there are "+quantity.Format(s.Holds, u.volume)+verdict(s.volumeFits())+" [volume-first of "+sheet+"]")
	}
	if s.HidesSet {
		line = "Hides: " + strconv.Itoa(s.Hides)
		perch := r.Life.Plan.Housing.Perches.V && !r.Life.Plan.Sheet.Is(schema.FigureLifestyle, "crevice") // cover enough on branches
		if n := Hiding(r.Life, r.Today); n > 0 && s.Sized && !perch {
			line += " for " + wording.Animals(n) + verdict(s.Hides >= n)
		}
		out = append(out, line)
	}
	if s.Most != nil && s.Animals > 1 {
		out = append(out, "Group: "+wording.Animals(s.Animals)+", at most "+strconv.Itoa(int(s.Most.Range.High))+verdict(float64(s.Animals) <= s.Most.Range.High)+" [group-max of "+sheet+"]")
	}
	if g := &r.Grown; g.Sized && g.Floor > s.Floor {
		out = append(out, "Once all are adult they need "+quantity.FormatAtLeast(g.Floor, u.area)+verdict(g.Fits()))
	}
	return out
}

func verdict(enough bool) string {
	if enough {
		return ": enough"
	}
	return ": too little"
}

func needing(n int) string {
	return wording.Animals(n) + wording.Noun(n, " needs ", " need ")
}

func (r *Report) growthLines(g *life.Group, u units) (out []string) {
	growth, steps, ok := r.Forecast(g)
	if !ok {
		return nil
	}
	sheet := r.Life.Plan.Sheet
	from := "growth-factor of " + sheet.Name.V
	if growth.Figure == nil {
		from = "of " + growth.Kin
	} else if q := growth.Figure.Quality; q.Set() {
		from += ", " + q.V
	}
	out = append(out, "Growth of "+g.Animals.Name.V+" by Dyar's rule, a length times "+wording.Span(growth.Low, growth.High)+" at each moult ["+from+"]:")
	if len(steps) == 0 {
		return append(out, toGo(g, sheet, growth, r.Life.Plan.Units))
	}
	for _, s := range steps {
		line := "  instar " + strconv.Itoa(s.Instar) + ", " + s.Stage
		if l := s.Length.Round(); l.High > 0 {
			line += ": " + quantity.FormatBetween(l.Low, l.High, u.length)
		}
		if m := s.Mass.Round(); m.High > 0 {
			line += ", " + quantity.FormatBetween(m.Low, m.High, u.mass)
		}
		if s.Due.When == Now {
			line += "; now"
		} else {
			line += "; from a moult " + s.Due.words("")
		}
		out = append(out, line)
	}
	if m := sheet.Figure(schema.FigureMoultsToAdult, ""); m != nil {
		out = append(out, "  Adult after "+m.Value.V+" moults [moults-to-adult of "+sheet.Name.V+"]")
	}
	return out
}

// toGo is for species whose instars are not counted: how many moults lead to the
// length of an adult. A scorpion's length is written without its tail and stands in
// the sheets with it, so there it can't be told.
func toGo(g *life.Group, sheet *plan.SpeciesSheet, growth Factor, u quantity.Units) string {
	long, adult := g.Animals.Length, sheet.Figure(schema.FigureLength, "adult")
	if !long.Set() || adult == nil || sheet.Is(schema.FigureMetabolicKin, "scorpion") {
		return "  Its instar is not known: write instar, or a length, and the forecast follows."
	}
	few := math.Ceil(max(0, Moults(long.V.Value, adult.Range.Low, growth.High)))
	many := math.Ceil(max(0, Moults(long.V.Value, adult.Range.High, growth.Low)))
	return "  From " + long.V.String() + " about " + wording.Span(few, many) + " moults to an adult of " + adult.Told(u) + "; no sheet says how long that takes."
}

func (r *Report) broodLines(u units) (out []string) {
	b := &r.Brood
	if b.Mothers == 0 {
		return nil
	}
	many := "how many young there may be no sheet says"
	if b.Young.High > 0 {
		many = wording.Span(b.Young.Low, b.Young.High) + " young"
	}
	line := "Brood: " + many + ", birth possible " + b.Birth.words("")
	if b.Birth.When == Now {
		line = "Brood: " + many
		line += ", born " + b.Birth.Until.Words()
	}
	out = append(out, line)
	switch {
	case b.Stay && b.Reared > 0:
		line = "They stay with their mother [separation of " + r.Life.Plan.Sheet.Name.V + "]: as juveniles up to " + wording.Number(b.Total.High) + " animals need " + quantity.FormatAtLeast(b.Reared, u.area)
		if r.Now.Sized {
			line += verdict(r.Now.Has >= b.Reared*Tolerance)
		}
		out = append(out, line)
	case b.Leave:
		line = "They are taken out [separation of " + r.Life.Plan.Sheet.Name.V + "] " + b.Leaving.words("") + "; there are " + strconv.Itoa(b.Places) + " places for them" + verdict(b.Young.High <= float64(b.Places))
		if b.Young.Low <= float64(b.Places) && b.Young.High > float64(b.Places) {
			line += " for a large brood"
		}
		out = append(out, line)
	}
	return out
}
