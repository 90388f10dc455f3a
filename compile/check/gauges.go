package check

import (
	"math"

	"vivary/compile/measure"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/quantity"
	"vivary/schema/wording"
)

// Rules about gauges: whether what they show can be gone by. What a test comes to is reckoned by
// package measure, for what is corrected and for what is said here.
var gauges = []*Rule{
	{Collection: gaugeUntested, Rule: finding.Rule{ID: "gauge-untested", Severity: finding.Advice, Silence: finding.ByReason,
		Title:   "The gauges have not been tested for a year.",
		Why:     "Cheap hygrometers drift.",
		Source:  "hermitcrabassociation.com/phpBB/viewtopic.php?p=852642, on the salt test",
		Instead: "Test it over wet salt, which holds 75 %, and write the day."}},
	{Collection: gaugeOff, Rule: finding.Rule{ID: "gauge-off", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "A gauge was off by more than is worth correcting.",
		Why:     "Drift is half a percent a year. What is off by ten times as much is worn or was wet, and may show anything next month.",
		Source:  "common practice, no source: more than 5 % of humidity or 1 K is replaced",
		Instead: "Another gauge, tested before it is trusted. Where one salt showed it, a second one first."}},
	{Collection: gaugeTestOdd, Rule: finding.Rule{ID: "gauge-test-odd", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "A test of a gauge says nothing, or two say different things.",
		Why:     "Readings are corrected by it.",
		Source:  "L. Greenspan, J. Res. Nat. Bur. Stand. 81A, 89 (1977), on what salts hold; how long it settles is common practice, no source",
		Instead: "The test again: sealed in over the slurry for half a day to a day, within a degree all the time."}},
}

// gaugePlaced is a gauge with where it is.
type gaugePlaced struct {
	*plan.Gauge
	place string
	box   finding.Box // of an enclosure; none for a rack or a room
	done  civil.Date  // when care of the enclosure last tested its gauges
}

// eachGauge calls use for every gauge of the collection.
func (c *Collection) eachGauge(use func(gaugePlaced)) {
	for _, room := range c.Plan.Rooms {
		for _, g := range room.Gauges {
			use(gaugePlaced{Gauge: g, place: room.Name.V})
		}
	}
	for _, k := range c.Plan.Racks {
		for _, g := range k.Gauges {
			use(gaugePlaced{Gauge: g, place: k.Name.V})
		}
	}
	for _, l := range c.Lives {
		if l.Plan.Climate == nil {
			continue
		}
		for _, g := range l.Plan.Climate.Gauges {
			use(gaugePlaced{g, l.Plan.Name.V, l.Plan.Box(), calibrated(l.Plan, l.Done)})
		}
	}
}

func (g *gaugePlaced) tested(c *Collection) *measure.Tested {
	return measure.TestedOf(c.Plan.Tests(g.place, g.Gauge), c.Today)
}

// calibrated is the last day on which the log says that the gauges of an enclosure were tested.
func calibrated(e *plan.Enclosure, done map[string]civil.Date) (last civil.Date) {
	for _, x := range e.Care {
		if x.What() == schema.KindCalibrate {
			last = max(last, done[x.Name.V])
		}
	}
	return max(last, done[schema.KindCalibrate.Name])
}

// testedWithin is for how many days a test of a gauge is good before another is advised.
const testedWithin = 365

func gaugeUntested(r *Rule, c *Collection) {
	const write = "a test of them, logged as tested or as done calibrate; and a care \"calibrate\" every 6 months"
	for _, l := range c.Lives {
		climate := l.Plan.Climate
		if climate == nil || !climate.GaugeTested.Set() {
			continue
		}
		if last := max(climate.GaugeTested.V, calibrated(l.Plan, l.Done)); c.Today-last > testedWithin {
			c.Add(finding.Finding{Rule: &r.Rule, At: climate.GaugeTested.At, In: l.Plan.Box(), Text: "the gauges were last tested on " + last.Words(), Limit: "once a year", Source: r.Source, Write: write})
		}
	}
	c.eachGauge(func(g gaugePlaced) {
		last := g.done
		if t := g.tested(c); t != nil {
			last = max(last, t.On)
		}
		text := "gauge " + g.Name.V + " was never tested"
		if last != 0 {
			text = "gauge " + g.Name.V + " was last tested on " + last.Words()
		}
		if last == 0 || c.Today-last > testedWithin {
			c.Add(finding.Finding{Rule: &r.Rule, At: g.At, In: g.box, Once: r.ID, Text: text, Limit: "once a year", Source: r.Source,
				Write: "a test over table salt for half a day to a day, logged as tested " + g.Name.V + " NaCl, the temperature there and what it showed"})
		}
	})
}

func gaugeOff(r *Rule, c *Collection) {
	c.eachGauge(func(g gaugePlaced) {
		t := g.tested(c)
		if t == nil || !t.Replace() || math.IsInf(t.FarDamp, 1) { // said as a test that cannot be
			return
		}
		off, limit := "", ""
		if t.FarHeat > measure.BadHeat {
			off, limit = g.kelvins(t.FarHeat, c), g.kelvins(measure.BadHeat, c)
		}
		if t.FarDamp > measure.BadDamp {
			if off != "" {
				off, limit = off+" and ", limit+" or "
			}
			off += wording.Number(math.Round(10*t.FarDamp)/10) + " % of humidity"
			limit += quantity.Format(measure.BadDamp, quantity.PercentRH) + " of humidity"
			if t.Salts == 1 {
				off += ", over one salt"
			}
		}
		c.Add(finding.Finding{Rule: &r.Rule, At: g.At, In: g.box, Text: "gauge " + g.Name.V + " was off by " + off + " when it was last tested: what it shows is corrected by that, and no more to be gone by", Limit: limit, Source: r.Source,
			Write: "another gauge, and its test"})
	})
}

// kelvins is a difference of temperatures in the keeper's degrees.
func (g *gaugePlaced) kelvins(k float64, c *Collection) string {
	if c.Plan.Units.Same(quantity.Fahrenheit) {
		return wording.Number(math.Round(18*k)/10) + " F"
	}
	return wording.Number(math.Round(10*k)/10) + " K"
}

func gaugeTestOdd(r *Rule, c *Collection) {
	c.eachGauge(func(g gaugePlaced) {
		t := g.tested(c)
		if t == nil {
			return
		}
		for _, w := range t.Wrong {
			at := g.At
			if w.Test != nil {
				at = w.Test.At
			}
			c.Add(finding.Finding{Rule: &r.Rule, At: at, In: g.box, Text: "gauge " + g.Name.V + ", " + w.Text, Source: r.Source, Write: w.Write})
		}
	})
}
