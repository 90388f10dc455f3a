// Package food compares the energy of a group's meals with what such animals have
// been measured to spend at rest. It is a check of plausibility with a wide band: no
// rate has been measured on most species that are kept, Pandinus imperator among
// them, and growth and pregnancy are in no equation. It makes no findings.
package food

import (
	"vivary/compile/climate"
	"vivary/compile/life"
	"vivary/compile/roster"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/civil"
)

// Assimilation is the share of the energy in prey that is taken up (common practice,
// no source).
const Assimilation = 0.70

// Activity is by how much the field rate is above that at rest: 2 to 3 in Hadrurus
// arizonensis (King and Hadley 1979, Physiol. Zool.), 1 in an animal that hides.
const ActivityLow, ActivityHigh = 1, 3

// The band within which an amount is plausible, as multiples of the need at rest
// (judgement): half, because measured animals of one size differ by as much, and five
// times, because growth and young cost more than activity, and the eight crickets a week
// that keepers give a grown emperor (common practice, no source) are 4.6 times what rests
// at 25 g and 27 °C.
const plausibleLow, plausibleHigh = 0.5, 5

// Kin is whose measured rate stands for a species.
type Kin uint8

// The animals measured.
const (
	NoKin     Kin = iota
	Scorpion      // Urodacus armatus, Withers and Smith 1993
	Tarantula     // Euathlus truculentus, Nespolo and others 2011
)

func kinOf(f *plan.Figure) Kin {
	if f == nil || len(f.Words) == 0 {
		return NoKin
	}
	switch f.Words[0] {
	case "scorpion":
		return Scorpion
	case "tarantula":
		return Tarantula
	}
	return NoKin
}

// Rest returns what one animal spends at rest, in µW, for a mass in g at a temperature
// in °C; 0 where nothing was measured.
func (k Kin) Rest(mass, temperature float64) float64 {
	switch k {
	case Scorpion:
		return ScorpionRest(mass, temperature)
	case Tarantula:
		return TarantulaRest(mass, temperature)
	}
	return 0
}

// Verdict says how an amount compares with the need.
type Verdict uint8

// The verdicts. Neither Little nor Much refuses anything: the animal's abdomen has
// the last word.
const (
	Little    Verdict = iota + 1 // even if each item is large, less than half of what rest takes
	Plausible                    // within the band
	Much                         // even if each item is small, more than five times what rest takes
)

// Report is the week's food of one group. Energies are in kJ a week for one animal.
type Report struct {
	Group       *life.Group
	Kin         Kin
	Animals     int
	Mass        climate.Band[float64]         // g
	Measured    bool                          // Mass is of the animals themselves, not of the sheet
	Temperature climate.Band[climate.Celsius] // cool end, between, warm end
	Rest        climate.Band[float64]         // spent at rest
	Need        climate.Band[float64]         // in prey: plausible at the ends, moderately active between
	Offered     climate.Band[float64]
	Items       float64      // a week for one animal
	Usual       *plan.Figure // items-a-week; nil where no sheet says
	Verdict     Verdict

	of      []roster.Entry // the enclosure's, of which the meals are the group's
	library *plan.Library
}

// Of returns the report of a group from its own enclosure's series. A week is one in
// which nothing holds the meals. It is false where no rate was measured on its kin,
// or the mass of the animals or of their prey is not known, or nobody feeds them. It
// allocates nothing.
func Of(s *roster.Roster, of []roster.Entry, g *life.Group, today civil.Date) (Report, bool) {
	if g.Guessed || g.Animals.Unread {
		return Report{}, false // nobody knows among how many it is shared
	}
	r := Report{Group: g, Animals: g.Count(today), of: of, library: s.Plan.Library}
	var e *plan.Enclosure
	for i := range of {
		if m := &of[i]; isMeal(m, g) {
			if m.Meal.Unread {
				return r, false
			}
			e = m.Life.Plan
			n, each, ok := offered(s, m)
			if !ok {
				return r, false
			}
			r.Items += n
			r.Offered.Low += n * each.Low
			r.Offered.Likely += n * each.Likely
			r.Offered.High += n * each.High
		}
	}
	sheet := g.Sheet
	if r.Animals == 0 || r.Items == 0 || sheet == nil {
		return r, false
	}
	r.Kin = kinOf(sheet.Figure(schema.FigureMetabolicKin, ""))
	stage := g.Stage(today)
	if r.Kin == NoKin || !r.weigh(sheet, stage) || !r.warm(e) {
		return r, false
	}
	r.Usual = sheet.Figure(schema.FigureItemsAWeek, stage)
	r.Rest = climate.Band[float64]{
		Low:    Weekly(r.Kin.Rest(r.Mass.Low, float64(r.Temperature.Low))),
		Likely: Weekly(r.Kin.Rest(r.Mass.Likely, float64(r.Temperature.Likely))),
		High:   Weekly(r.Kin.Rest(r.Mass.High, float64(r.Temperature.High))),
	}
	r.Need = climate.Band[float64]{
		Low:    plausibleLow * r.Rest.Low / Assimilation,
		Likely: (ActivityLow + ActivityHigh) / 2 * r.Rest.Likely / Assimilation,
		High:   plausibleHigh * r.Rest.High / Assimilation,
	}
	switch {
	case r.Offered.High < r.Need.Low:
		r.Verdict = Little
	case r.Offered.Low > r.Need.High:
		r.Verdict = Much
	default:
		r.Verdict = Plausible
	}
	return r, true
}

// weigh takes the last weight in the log, else the plan's, else the sheet's.
func (r *Report) weigh(sheet *plan.SpeciesSheet, stage string) bool {
	m := r.Group.Weight()
	if !m.At.Written() {
		m = r.Group.Animals.Mass
	}
	if m.Set() {
		r.Mass, r.Measured = climate.Exactly(m.V.Value), true
	} else if f := sheet.Figure(schema.FigureMass, stage); f != nil {
		r.Mass = climate.Band[float64]{Low: f.Range.Low, Likely: (f.Range.Low + f.Range.High) / 2, High: f.Range.High}
	}
	return r.Mass.Low > 0
}

// warm takes the ends that are aimed for by day; without a heater the room's.
func (r *Report) warm(e *plan.Enclosure) bool {
	var low, high float64
	switch c := e.Climate; {
	case c != nil && c.WarmEnd.Set():
		low, high = c.WarmEnd.V.Low, c.WarmEnd.V.High
		if c.CoolEnd.Set() {
			low = c.CoolEnd.V.Low
		}
	case (c == nil || len(c.Heaters) == 0) && e.Place != nil && e.Place.Temperature.Set():
		low, high = e.Place.Temperature.V.Low, e.Place.Temperature.V.High
	default:
		f := e.Sheet.Figure(schema.FigureTemperatureTarget, "")
		if f == nil {
			return false
		}
		low, high = f.Range.Low, f.Range.High
	}
	r.Temperature = climate.Band[climate.Celsius]{Low: climate.Celsius(low), Likely: climate.Celsius((low + high) / 2), High: climate.Celsius(high)}
	return true
}
