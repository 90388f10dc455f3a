package check

import (
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/quantity"
)

// What a thermometer showed.
var measured = []*Rule{
	{Collection: measuredHarm, Rule: finding.Rule{ID: "measured-harm", Severity: finding.Urgent, Silence: finding.Never,
		Title:   "The thermometer showed what the species does not bear.",
		Why:     "Heat that sticks kills within hours, and no plan shows it.",
		Source:  "the species sheet's temperature-hard",
		Instead: "Mend it at once, and log measured when it is right again.",
		Now:     "too hot or too cold by the thermometer: heating off or on, a cool or a warm place for them; log measured again"}},
}

// fresh is for how many days a measurement says how it is now. Common practice, no source.
const fresh = 2

// measuredHarm looks at the last temperature of each enclosure.
func measuredHarm(r *Rule, c *Collection) {
	seen := map[string]bool{}
	for i := len(c.Plan.Log) - 1; i >= 0 && c.Plan.Log[i].Date >= c.Today-fresh; i-- {
		x := &c.Plan.Log[i]
		if x.Word != schema.WordMeasured || seen[x.Enclosure.V] {
			continue
		}
		t, ok := temperatureOf(x)
		if !ok {
			continue
		}
		seen[x.Enclosure.V] = true
		l := c.life(x.Enclosure.V)
		if l == nil || l.Plan.Sheet == nil {
			continue
		}
		f := l.Plan.Sheet.Figure(schema.FigureTemperatureHard, "adult")
		if f == nil || f.Range.Contains(t.Value) {
			continue
		}
		c.Add(finding.Finding{Rule: &r.Rule, At: x.At, In: l.Plan.Whole, Source: c.Cite(f),
			Text:  x.Enclosure.V + " was at " + t.String() + " on " + x.Date.Words(),
			Limit: quantity.FormatRange(f.Range.Low, f.Range.High, t.Unit) + ", temperature-hard of " + l.Plan.Sheet.Name.V,
			Write: "mend it now; in the log measured, and what it is then"})
	}
}

// temperatureOf returns the temperature of a line that says what was measured.
func temperatureOf(x *plan.Event) (quantity.Quantity, bool) {
	for _, a := range x.Args {
		if t, err := quantity.Parse(a.V, quantity.Temperature); err == nil {
			return t, true
		}
	}
	return quantity.Quantity{}, false
}
