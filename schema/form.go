package schema

import (
	"strings"

	"vivary/schema/civil"
	"vivary/schema/quantity"
)

// Form says in words how a value of the attribute is written. Whatever it gives as an
// example is one of the form, never a value to be taken: `a power, such as "28 W"`.
func (a *Attr) Form() string {
	switch a.Kind {
	case Word:
		return "one of: " + strings.Join(choiceNames(a.Choices), ", ")
	case Words:
		return "in quotes, with commas between them, one or more of: " + strings.Join(choiceNames(a.Choices), ", ")
	case Ref, Refs:
		return "the name of a " + a.Ref + ", in quotes"
	case Quantity:
		return a.Dimension.Like()
	case Range:
		return a.Dimension.Like() + ", or a range, such as " + rangeOf[a.Dimension]
	case Date:
		return civil.DateForm
	case Clock:
		return civil.ClockForm
	case Size:
		return `a size, such as "76 x 46 x 41 cm" or "20 x 10 x 12 in"`
	case Face2D:
		return `a size, such as "28 x 43 cm" or "11 x 17 in"`
	case Count:
		return `a count, such as "1.2.0", which is males.females.unsexed, or 5`
	case Every:
		return `an interval, such as "day", "3 days", "2 weeks" or "month"`
	case On:
		return `days, such as "tue", "mon to fri", "first sun", "15th", "1 apr", "2027-07-20" or the name of a dates block`
	case Text, Truth:
		return kindInfo[a.Kind].doc
	}
	i := kindInfo[a.Kind]
	return i.doc + ", such as " + i.example
}

// Sort says in a few words what sort of value the attribute has: "range of temperature".
func (a *Attr) Sort() string {
	sort := kindInfo[a.Kind].name
	if a.Dimension != 0 {
		sort += " of " + a.Dimension.String()
	}
	if a.Kind == Ref || a.Kind == Refs {
		sort += " of a " + a.Ref
	}
	return sort
}

// rangeOf are examples of the form of a range.
var rangeOf = map[quantity.Dimension]string{
	quantity.Temperature: `"27 to 32 C"`, quantity.TemperatureStep: `"1 to 3 C"`, quantity.Humidity: `"75 to 85 %"`, quantity.Length: `"10 to 12 cm"`,
	quantity.Area: `"400 to 600 cm2"`, quantity.Volume: `"100 to 150 ml"`, quantity.Mass: `"20 to 30 g"`, quantity.Power: `"5 to 7 W"`,
	quantity.Duration: `"7 to 18 months"`, quantity.EnergyDensity: `"5 to 6 kJ/g"`, quantity.Ratio: `"20 to 30 %"`,
}

func choiceNames(choices []Choice) (all []string) {
	for _, c := range choices {
		all = append(all, c.Name)
	}
	return all
}
