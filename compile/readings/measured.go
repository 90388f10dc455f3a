package readings

import (
	"math"
	"slices"
	"strings"
	"time"

	"gonum.org/v1/gonum/stat"

	"vivary/compile/balance"
	"vivary/compile/climate"
	"vivary/compile/measure"
	"vivary/plan"
	"vivary/schema/civil"
	"vivary/schema/quantity"
	"vivary/schema/wording"
)

// settledFor is the time at the end of the readings of which the middle is taken for the plan: an hour with the lid open does not move it.
const settledFor = 7 * 86400

// Measured is what goes into the plan and the log: the medians at the end of the readings, with
// everything on as usual.
type Measured struct {
	At              int64 // the last reading
	From            int64
	Spot, Air, Room float64 // °C; not a number where it was not logged
	Damp            float64
	Power           float64 // W on average; not a number where it is not known
	Before, After   *balance.Report
}

// measured returns it, or why there is none.
func (r *Report) measured(b *Body) (m *Measured, why string) {
	_, last := r.Span()
	m = &Measured{At: last.Unix(), Spot: math.NaN(), Air: math.NaN(), Room: math.NaN(), Damp: math.NaN(), Power: math.NaN()}
	m.From = math.MinInt64
	for _, j := range r.Files {
		if j.Heat != nil {
			m.From = max(m.From, j.Series.Samples[0].At)
			m.At = min(m.At, j.Series.Samples[len(j.Series.Samples)-1].At)
		}
	}
	m.From = max(m.From, m.At-settledFor)
	if m.At-m.From < 12*3600 {
		return nil, "less than half a day was logged of all places at once"
	}
	_, _, timed := r.heated()
	middle := func(j *Judgement, damp bool) float64 {
		if j == nil {
			return math.NaN()
		}
		x := &j.heat
		if damp {
			x = &j.damp
		}
		var all []float64
		for i, at := range x.at {
			if at < m.From || at > m.At || b.Cooling != nil && at >= b.Cooling.From && at <= b.Cooling.Until+6*3600 {
				continue
			}
			if clock := civil.Clock(r.time(at).Hour() * 60); timed && (clock < r.Day.From+6*60 || clock >= r.Day.Until) {
				continue // a lamp warms for hours until all has settled
			}
			all = append(all, x.v[i])
		}
		if int64(len(all))*j.Series.Step < 3*3600 {
			return math.NaN()
		}
		slices.Sort(all)
		return stat.Quantile(0.5, stat.LinInterp, all, nil)
	}
	m.Spot, m.Air, m.Room, m.Damp = middle(r.of(measure.Spot), false), middle(r.of(measure.Air), false), middle(r.of(measure.Room), false), middle(r.of(measure.Air), true)
	if math.IsNaN(m.Spot) && math.IsNaN(m.Air) {
		return nil, "neither the warm spot nor the air was logged for long enough"
	}
	if math.IsNaN(m.Room) {
		return nil, "the room was not logged beside it, and without it a measurement says nothing of the heat"
	}
	if b.Loss != nil {
		m.Power = b.Loss.Duty * r.watt
	}
	if before, ok := balance.Of(r.Result.Plan, r.plan(), r.Life); ok {
		with := *r.plan()
		var c plan.Climate
		if with.Climate != nil {
			c = *with.Climate
		}
		c.Measured = m.block(r.plan())
		with.Climate = &c
		if after, ok := balance.Of(r.Result.Plan, &with, r.Life); ok {
			m.Before, m.After = before, after
		}
	}
	return m, ""
}

// value is one of the values as it is written: to a tenth, in the keeper's unit.
func value(v float64, u quantity.Unit) (text string, q quantity.Quantity) {
	in := rounded(quantity.Quantity{Value: v, Unit: u}.In(u), 1)
	text = wording.Number(in) + " " + u.String()
	d := quantity.Temperature
	switch u {
	case quantity.PercentRH:
		d = quantity.Humidity
	case quantity.Watt:
		d = quantity.Power
	}
	q, _ = quantity.Parse(text, d) // that it reads back a test holds
	return text, q
}

// values are what was measured, by their names in the plan, in order.
func (m *Measured) values(e *plan.Enclosure) (names, texts []string) {
	deg := e.Degrees()
	for _, x := range []struct {
		name string
		v    float64
		u    quantity.Unit
	}{{"spot", m.Spot, deg}, {"air", m.Air, deg}, {"room", m.Room, deg}, {"humidity", m.Damp, quantity.PercentRH}, {"power", m.Power, quantity.Watt}} {
		if math.IsNaN(x.v) {
			continue
		}
		text, _ := value(x.v, x.u)
		names, texts = append(names, x.name), append(texts, text)
	}
	return names, texts
}

// block is the block as it would be read.
func (m *Measured) block(e *plan.Enclosure) *plan.Measured {
	out := &plan.Measured{}
	deg := e.Degrees()
	set := func(to *plan.Written[quantity.Quantity], v float64, u quantity.Unit) {
		if !math.IsNaN(v) {
			_, q := value(v, u)
			*to = plan.Written[quantity.Quantity]{V: q, At: e.Name.At}
		}
	}
	set(&out.Spot, m.Spot, deg)
	set(&out.Air, m.Air, deg)
	set(&out.Room, m.Room, deg)
	set(&out.Power, m.Power, quantity.Watt)
	return out
}

// Text is the block for the plan.
func (m *Measured) Text(e *plan.Enclosure, loc *time.Location) string {
	names, texts := m.values(e)
	names, texts = append([]string{"on"}, names...), append([]string{civil.FromTime(time.Unix(m.At, 0).In(loc)).String()}, texts...)
	wide := 0
	for _, n := range names {
		wide = max(wide, len(n))
	}
	var b strings.Builder
	b.WriteString("measured {\n")
	for i, n := range names {
		b.WriteString("  " + n + strings.Repeat(" ", wide-len(n)) + " = \"" + texts[i] + "\"\n")
	}
	b.WriteString("}\n")
	return b.String()
}

// Line is a line for the log.
type Line struct {
	On   civil.Date
	Text string
}

// lines are those for the log: where it was surely past what the species bears, and what it was
// at the end.
func (r *Report) lines(m *Measured) (out []Line) {
	loc := r.Result.Now.Location()
	add := func(at int64, text string) {
		t := time.Unix(at, 0).In(loc)
		if on := civil.FromTime(t); on <= r.Result.Today {
			out = append(out, Line{on, on.String() + " " + t.Format("15:04") + " " + r.plan().Name.V + " measured " + text})
		}
	}
	for _, j := range r.Files {
		if j.Place == measure.Room {
			continue
		}
		for _, v := range []*Judged{j.Heat, j.Damp} {
			if v == nil {
				continue
			}
			for _, x := range v.Verdicts {
				if x.Level != measure.Harm {
					continue
				}
				for _, o := range []*Outside{&x.Above, &x.Below} {
					if o.Sure <= 0 {
						continue
					}
					text, _ := value(o.Peak, r.unit(v.Damp))
					if !v.Damp {
						text = j.Place + " " + text
					}
					add(o.PeakAt, text+` "logger: `+hours(o.Hours)+` past what it bears"`)
				}
			}
		}
	}
	if m != nil {
		names, texts := m.values(r.plan())
		var words []string
		for i, n := range names {
			if n != "humidity" {
				words = append(words, n)
			}
			words = append(words, texts[i])
		}
		add(m.At, strings.Join(words, " "))
	}
	slices.SortStableFunc(out, func(a, b Line) int { return strings.Compare(a.Text[:16], b.Text[:16]) })
	return out
}

// narrowed is how much narrower a band has become, in words; "" where it is not known.
func (r *Report) narrowed(of func(*balance.Report) climate.Band[climate.Celsius], m *Measured) string {
	u := r.plan().Degrees()
	return wording.Degrees(of(m.Before), u) + ", with it " + wording.Degrees(of(m.After), u)
}
