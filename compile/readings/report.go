// Package readings says what loggers showed of an enclosure: where it was outside of the limits
// that plan and sheet give it, whether a sensor is at fault, what the enclosure is like as a body
// in its room, and what of that goes into the plan and the log. It reads no files: package logger
// does.
package readings

import (
	"math"
	"slices"
	"time"

	"vivary/compile"
	"vivary/compile/life"
	"vivary/compile/logger"
	"vivary/compile/measure"
	"vivary/plan"
)

// File is what one logger wrote, of one place.
type File struct {
	Name   string // of the file, for people
	Place  string // Spot, Air or Room
	Series *logger.Series
	Gauge  *plan.Gauge // nil where no plan names it
	Tests  []*plan.GaugeTest
	Off    measure.Accuracy
}

// Options are what the plan does not say.
type Options struct {
	Day  Daylight
	Watt float64 // what the heaters draw while they are on, by a power meter; 0 for not known
}

// Report is what the files say of one enclosure, or of a room alone.
type Report struct {
	Result *compile.Result
	Life   *life.Enclosure
	Files  []*Judgement
	Day    Daylight

	Body       *Body
	Measured   *Measured // nil where nothing goes into the plan
	Unmeasured string    // why not
	Lines      []Line    // for the log

	watt float64
}

// Judgement is one file, judged.
type Judgement struct {
	*File
	Heat, Damp *Judged // nil for none
	Faults     []Fault
	Tested     *measure.Tested // nil where no gauge was tested
	heat, damp values
}

// Of judges files against the limits of an enclosure.
func Of(r *compile.Result, l *life.Enclosure, files []*File, o Options) *Report {
	out := &Report{Result: r, Life: l, Day: o.Day}
	if o.Day == (Daylight{}) {
		out.Day = UsualDay
	}
	for _, f := range files {
		out.Files = append(out.Files, out.judgement(f))
	}
	out.watt = o.Watt
	out.Body = out.body(o)
	if out.doubted() {
		out.Unmeasured = "one of the files cannot be as it is read"
		return out
	}
	out.Measured, out.Unmeasured = out.measured(out.Body)
	out.Lines = out.lines(out.Measured)
	return out
}

func (r *Report) judgement(f *File) *Judgement {
	s := f.Series
	j := &Judgement{File: f, Faults: faults(s, f.Off.Heat, f.Off.Damp), Tested: measure.TestedOf(f.Tests, r.Result.Today)}
	j.Faults = append(doubts(s), j.Faults...)
	if f.Place == measure.Spot {
		j.Faults = append(j.Faults, throughSwitch(s, r.unswitched(), j.Faults)...)
	}
	var heatBy, dampBy func(float64) float64
	if t := j.Tested; t != nil {
		heatBy, dampBy = t.Heat, t.Damp
	}
	first, last := s.Samples[0].At, s.Samples[len(s.Samples)-1].At
	limits := measure.LimitsOf(r.Result.Plan, r.plan(), f.Place)
	heat, damp := s.Has()
	if heat {
		j.heat = valuesOf(s, false, heatBy)
		j.Heat = judge(&j.heat, false, first, last, limits, f.Off.Heat, r.Day)
	}
	if damp {
		j.damp = valuesOf(s, true, dampBy)
		j.Damp = judge(&j.damp, true, first, last, limits, f.Off.Damp, r.Day)
	}
	return j
}

func (r *Report) plan() *plan.Enclosure { return r.Life.Plan }

// Span is from the first to the last reading of all files.
func (r *Report) Span() (first, last time.Time) {
	lo, hi := int64(math.MaxInt64), int64(math.MinInt64)
	for _, j := range r.Files {
		lo = min(lo, j.Series.Samples[0].At)
		hi = max(hi, j.Series.Samples[len(j.Series.Samples)-1].At)
	}
	loc := r.Result.Now.Location()
	return time.Unix(lo, 0).In(loc), time.Unix(hi, 0).In(loc)
}

// of returns the file of a place, or nil; of several the longest.
func (r *Report) of(place string) *Judgement {
	all := slices.DeleteFunc(slices.Clone(r.Files), func(j *Judgement) bool { return j.Place != place })
	if len(all) == 0 {
		return nil
	}
	return slices.MaxFunc(all, func(a, b *Judgement) int { return len(a.Series.Samples) - len(b.Series.Samples) })
}
