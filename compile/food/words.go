package food

import (
	"slices"
	"strconv"
	"strings"

	"vivary/compile/climate"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/quantity"
	"vivary/schema/wording"
)

// Lines says the report in a keeper's words and in the units of the plan, one fact a
// line.
func (r *Report) Lines(e *plan.Enclosure) []string {
	u := e.Units
	deg, gram := u.Of(quantity.Celsius), u.Of(quantity.Gram)
	of := "by the sheet"
	if r.Measured {
		of = "as weighed"
	}
	out := []string{
		"Food of " + r.Group.Animals.Name.V + ": " + wording.Items(r.Items) + " a week each, " + wording.Energy(r.Offered, u) + r.usual(),
		"One of " + quantity.FormatBetween(r.Mass.Low, r.Mass.High, gram) + " " + of + " at " + quantity.FormatBetween(float64(r.Temperature.Low), float64(r.Temperature.High), deg) +
			" burns " + wording.Energy(r.Rest, u) + " a week at rest [" + r.Kin.String() + "]",
		"At " + quantity.Format(100*Assimilation, quantity.Percent) + " taken up, " + wording.Energy(r.Need, u) + " a week is plausible: " + r.Verdict.String(),
	}
	if each := r.each(u); len(each) > 1 {
		out = append(out, "One item brings: "+strings.Join(each, ", ")+". What is small brings less, and is no worse for it")
	}
	if r.Animals > 1 {
		n := float64(r.Animals)
		out = append(out, "All "+strconv.Itoa(r.Animals)+": "+wording.Items(r.Items*n)+" a week, "+
			wording.Energy(climate.Band[float64]{Low: n * r.Offered.Low, Likely: n * r.Offered.Likely, High: n * r.Offered.High}, u))
	}
	if d, ok := r.dries(e); ok {
		out = append(out, "Without drinking it loses "+quantity.Format(d, quantity.Percent)+" of its weight a day or more; the body water of Scorpionidae falls from "+quantity.Format(DryingLimit, quantity.Percent)+" on: "+
			wording.Days(int(DryingLimit/d))+" at the most, a damp-loving species fewer [Withers and Smith 1993; Gefen and Ar 2005]")
	}
	return append(out, r.Kin.caution())
}

// each says what one item of each kind on the menu brings.
func (r *Report) each(u quantity.Units) (out []string) {
	var seen []plan.Prey
	for i := range r.of {
		if !isMeal(&r.of[i], r.Group) {
			continue
		}
		for _, m := range r.of[i].Menu {
			if energy, ok := Energy(r.library, m.Prey); ok && !slices.Contains(seen, m.Prey) {
				seen = append(seen, m.Prey)
				out = append(out, m.Prey.String()+" "+wording.Energy(energy, u))
			}
		}
	}
	return out
}

func (r *Report) usual() string {
	if r.Usual == nil {
		return ""
	}
	return "; usual are " + r.Usual.Value.V + " items [items-a-week]"
}

// dries returns what a scorpion loses a day, in %, at the driest that is aimed for. The
// limit holds for one family; those of deserts lose less and bear more.
func (r *Report) dries(e *plan.Enclosure) (float64, bool) {
	if r.Kin != Scorpion || e.Sheet.Family.V != "Scorpionidae" {
		return 0, false
	}
	var rh float64
	if c := e.Climate; c != nil && c.Humidity.Set() {
		rh = c.Humidity.V.Low
	} else if f := e.Sheet.Figure(schema.FigureHumidityTarget, ""); f != nil {
		rh = f.Range.Low
	} else {
		return 0, false
	}
	d := ScorpionDrying(r.Mass.Likely, float64(r.Temperature.Likely), rh)
	return d, d > 0.005
}

// String names the animals measured, and the paper.
func (k Kin) String() string {
	switch k {
	case Scorpion:
		return "as Urodacus armatus: Withers and Smith 1993"
	case Tarantula:
		return "as Euathlus truculentus: Nespolo and others 2011"
	}
	return "nothing measured"
}

func (k Kin) caution() string {
	if k == Scorpion {
		return "A rough check: it was measured on a scorpion of dry country, none on Pandinus or Heterometrus; growth and young are not in it. The abdomen has the last word."
	}
	return "A rough check: it was measured on one small tarantula; growth and eggs are not in it. The abdomen has the last word."
}

// String says the verdict to a keeper.
func (v Verdict) String() string {
	switch v {
	case Little:
		return "less than half of what rest alone takes; a thin abdomen says the same"
	case Plausible:
		return "what is offered lies within it"
	case Much:
		return "more than even growth or young would explain; what is left over is taken out, and a fat abdomen asks for a pause"
	}
	return "no verdict"
}
