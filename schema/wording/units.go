package wording

import (
	"strconv"

	"vivary/schema/civil"
	"vivary/schema/quantity"
)

// Clock is a time of day as the keeper writes it: "19:30", or "7:30 pm".
func Clock(c civil.Clock, u quantity.Units) string {
	if !u.TwelveHours {
		return c.String()
	}
	half := " am"
	if c >= 12*60 {
		half = " pm"
	}
	hour := (c/60+11)%12 + 1
	text := strconv.Itoa(int(hour))
	if m := int(c % 60); m < 10 {
		text += ":0" + strconv.Itoa(m)
	} else {
		text += ":" + strconv.Itoa(m)
	}
	return text + half
}

// Amount is Band for values in the canonical unit of what is measured, told in the keeper's
// unit for what is stated in u: "180 ml (40 to 500)", "6 fl oz (1.4 to 17)".
func Amount[B ~struct{ Low, Likely, High T }, T ~float64](b B, u quantity.Unit) string {
	x := struct{ Low, Likely, High T }(b)
	return band(u.Convert(float64(x.Low)), u.Convert(float64(x.Likely)), u.Convert(float64(x.High)), u.String())
}

// Energy is Band for kilojoules, in the keeper's unit of energy.
func Energy[B ~struct{ Low, Likely, High T }, T ~float64](b B, u quantity.Units) string {
	x := struct{ Low, Likely, High T }(b)
	name, each := u.Energy()
	return band(float64(x.Low)/each, float64(x.Likely)/each, float64(x.High)/each, name)
}
