package life

import (
	"math"

	"vivary/plan"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/quantity"
)

// day is a day in the unit of a duration, which is the minute.
const day = 24 * 60

// span is a figure that is a length of time, in whole days: from below no day is
// lost and from above none is added. The zero span is one that nobody knows.
type span struct {
	low, high int
	cited     plan.Cited
	ok        bool
}

// days returns a figure for a stage. Where the stage is not known the longest of
// all stages holds, being the strictest of a wait.
func (t *track) days(what *schema.Figure, stage string) span {
	if t.Sheet == nil {
		return span{}
	}
	f := t.Sheet.Figure(what, stage)
	if f == nil && stage == "" {
		t.Sheet.Each(what, func(x *plan.Figure) {
			if !x.Instar.Set() && (f == nil || x.Range.High > f.Range.High) {
				f = x
			}
		})
	}
	return spanOf(f)
}

// instar returns how long an instar lasts.
func (t *track) instar(n int) span {
	if t.Sheet == nil {
		return span{}
	}
	return spanOf(t.Sheet.Instar(schema.FigureInstarLength, n))
}

// or returns the span, or n days on no word but common practice.
func (s span) or(n int) span {
	if s.ok {
		return s
	}
	return span{low: n, high: n, ok: true}
}

func (s span) String() string {
	return quantity.FormatRange(float64(s.low*day), float64(s.high*day), quantity.Days)
}

func spanOf(f *plan.Figure) span {
	if f == nil || f.Range.High < 0 {
		return span{}
	}
	return span{int(math.Floor(f.Range.Low / day)), int(math.Ceil(f.Range.High / day)), f.Cited, true}
}

func after(d civil.Date, days int) civil.Date { return d + civil.Date(days) }
