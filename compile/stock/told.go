package stock

import (
	"strings"

	"vivary/plan"
	"vivary/schema/quantity"
	"vivary/schema/wording"
)

// Told says what is known of how long a stage takes: what was observed, the line by which it is
// reckoned, and between which temperatures; each "" where there is none.
func Told(d *plan.Development) (observed, line, between string) {
	var seen []string
	for _, w := range d.Observed {
		seen = append(seen, w.V)
	}
	if l, within, ok := LineOf(d); ok {
		line = wording.Number(quantity.Decimals(l.Sum, 1)) + " above " + quantity.Format(quantity.Decimals(l.Base, 1), quantity.Celsius)
		if !d.Base.Set() {
			line += ", a line through what was observed"
		}
		between = within.String()
	}
	return strings.Join(seen, ", "), line, between
}
