package readings

import (
	"fmt"
	"math"
	"strconv"
	"time"

	"vivary/compile/explain"
	"vivary/compile/measure"
	"vivary/schema/quantity"
	"vivary/schema/wording"
)

// Answer says the report for a keeper, in their units.
func (r *Report) Answer() explain.Answer {
	first, last := r.Span()
	a := explain.Answer{Title: r.plan().Shown() + ": what was measured, " + span(first, last)}
	for _, j := range r.Files {
		a.Parts = append(a.Parts, r.part(j))
	}
	a.Parts = append(a.Parts, r.bodyPart())
	if m := r.Measured; m != nil {
		a.Parts = append(a.Parts, explain.Part{Head: "For the climate block of the plan, " + span(r.time(m.From), r.time(m.At)), Code: m.Text(r.plan(), r.Result.Now.Location())}, r.narrower(m))
	}
	if len(r.Lines) > 0 {
		p := explain.Part{Head: "For the log"}
		for _, l := range r.Lines {
			p.Lines = append(p.Lines, explain.Line{Text: l.Text})
		}
		a.Parts = append(a.Parts, p)
	}
	return a
}

func span(first, last time.Time) string {
	return when(first) + " to " + when(last)
}

func when(t time.Time) string { return t.Format("Mon 2 Jan 2006 15:04") }

func (r *Report) time(at int64) time.Time { return time.Unix(at, 0).In(r.Result.Now.Location()) }

func (r *Report) at(at int64) string { return when(r.time(at)) }

// placeWords are the places in a keeper's words.
var placeWords = map[string]string{measure.Spot: "the warm spot", measure.Air: "the air away from the heater", measure.Room: "the room"}

// part says what one file says.
func (r *Report) part(j *Judgement) explain.Part {
	s := j.Series
	p := explain.Part{Head: j.Name + ", " + placeWords[j.Place]}
	line := func(name, text string, under ...string) {
		p.Lines = append(p.Lines, explain.Line{Name: name, Text: text, Under: under})
	}
	line("read", s.Shape.String())
	text := span(s.First(), s.Last()) + ", every " + lasting(s.Step) + ", " + wording.Count(len(s.Samples), "reading", "readings")
	if n := s.Repeated; n > 0 {
		text += "; " + wording.Count(n, "line", "lines") + " of an hour that came twice when the clocks were changed"
	}
	if n := s.Missing; n > 0 {
		text += "; " + wording.Count(n, "value is", "values are") + " no reading"
	}
	line("time", text)
	if s.Last().After(r.Result.Now.Add(time.Hour)) {
		line("clock", "that is after now, "+when(r.Result.Now)+": look at the clock of the logger, or say its zone with --zone")
	}
	for _, x := range s.Problems {
		line("line "+strconv.Itoa(x.Line), x.Text)
	}
	if n := s.Untold(); n > 0 {
		line("", "and "+wording.Count(n, "more line", "more lines")+" of which something is wrong")
	}
	if j.Tested != nil {
		p.Lines = append(p.Lines, r.tested(j.Tested)...)
	}
	for _, v := range []*Judged{j.Heat, j.Damp} {
		if v != nil {
			r.judged(&p, j, v)
		}
	}
	for _, f := range j.Faults {
		text := f.Text
		if f.From != 0 {
			text = r.at(f.From) + ": " + text
		}
		line("sensor", text)
	}
	return p
}

// judged says what one value was, and where it was outside.
func (r *Report) judged(p *explain.Part, j *Judgement, v *Judged) {
	name := "temperature"
	if v.Damp {
		name = "humidity"
	}
	line := func(name, text string, under ...string) {
		p.Lines = append(p.Lines, explain.Line{Name: name, Text: text, Under: under})
	}
	if math.IsNaN(v.Mean) {
		line(name, "no reading that says anything of it")
		return
	}
	text := r.value(v.Low, v.Damp) + " (" + r.at(v.LowAt) + ") to " + r.value(v.High, v.Damp) + " (" + r.at(v.HighAt) + "), mean " + r.value(v.Mean, v.Damp)
	if !math.IsNaN(v.DayMean) && !math.IsNaN(v.NightMid) {
		text += ", by day " + r.value(v.DayMean, v.Damp) + ", by night " + r.value(v.NightMid, v.Damp)
	}
	known := ""
	if !v.Enough() {
		known = "only " + percent(v.Coverage()) + " of the time is known: what happened in the rest nobody can say"
	} else if v.Gaps > 0 {
		known = percent(v.Coverage()) + " of the time is known; in " + wording.Count(v.Gaps, "gap", "gaps") + " of more than three steps nothing is"
	}
	if known != "" {
		line(name, text, known)
	} else {
		line(name, text)
	}
	for _, x := range v.Verdicts {
		line("", r.verdict(x, j.Off))
		if x.Hours() == 0 {
			continue
		}
		u := &p.Lines[len(p.Lines)-1].Under
		*u = append(*u, r.outside(&x.Above, "above", v.Damp)...)
		*u = append(*u, r.outside(&x.Below, "below", v.Damp)...)
		if x.Source != "" && x.Level == measure.Harm {
			*u = append(*u, x.Source)
		}
	}
}

// verdict says one limit, and how long it was outside.
func (r *Report) verdict(v *Verdict, off measure.Accuracy) string {
	what := "Outside of what it bears"
	switch v.Level {
	case measure.Unusual:
		what = "Outside of what is usual"
	case measure.Aim:
		what = "Outside of what is aimed for"
	}
	what += ", " + r.limit(v.Limit) + " (" + v.Of + "): "
	if v.Hours() == 0 {
		if v.Above.Perhaps+v.Below.Perhaps > 0 {
			return what + "never as read; the gauge may hide " + hours(v.Above.Perhaps+v.Below.Perhaps) + " of it, since it may be off by " + r.off(v.Damp, off)
		}
		return what + "never"
	}
	return what + hours(v.Hours())
}

// limit is a range by day and by night.
func (r *Report) limit(l *measure.Limit) string {
	u := r.unit(l.Damp)
	text := quantity.FormatRange(l.Day.Low, l.Day.High, u)
	if l.Night != nil && *l.Night != l.Day {
		text += " by day and " + quantity.FormatRange(l.Night.Low, l.Night.High, u) + " by night"
	}
	if l.Single {
		text += ", around the single value that is stated"
	}
	if l.Seasonal() {
		text += ", in a season as that says"
	}
	return text
}

// outside says one side.
func (r *Report) outside(o *Outside, which string, damp bool) (out []string) {
	if !o.Any() {
		return nil
	}
	text := which + " it for " + hours(o.Hours) + " on " + wording.Days(o.Days)
	if o.Nights > 0 {
		text += " (" + wording.Count(o.Nights, "night", "nights") + " among them)"
	}
	text += ", " + r.degreeHours(o.Degrees, damp) + "; the longest " + hours(o.Longest) + " from " + r.at(o.From) + "; the furthest " + r.value(o.Peak, damp) + " at " + r.at(o.PeakAt)
	sure := "surely " + hours(o.Sure) + ", as far as a gauge tells"
	switch {
	case o.Sure <= 0:
		sure = "none of it is sure: the gauge may be off by as much"
	case o.Hours-o.Sure < 0.05:
		sure = "all of it surely"
	}
	return []string{text, sure}
}

func (r *Report) unit(damp bool) quantity.Unit {
	if damp {
		return quantity.PercentRH
	}
	return r.plan().Degrees()
}

// value is a reading, to a tenth.
func (r *Report) value(v float64, damp bool) string {
	u := r.unit(damp)
	return strconv.FormatFloat(quantity.Quantity{Value: v, Unit: u}.In(u), 'f', 1, 64) + " " + u.String()
}

// off is how far a gauge may be off.
func (r *Report) off(damp bool, a measure.Accuracy) string {
	if damp {
		return trimmed(a.Damp, 1) + " %"
	}
	return r.difference(a.Heat)
}

// difference is one of temperatures.
func (r *Report) difference(k float64) string {
	if r.plan().Degrees() == quantity.Fahrenheit {
		return trimmed(k*1.8, 1) + " F"
	}
	return trimmed(k, 1) + " K"
}

func (r *Report) degreeHours(x float64, damp bool) string {
	switch {
	case damp:
		return trimmed(x, 1) + " % h"
	case r.plan().Degrees() == quantity.Fahrenheit:
		return trimmed(x*1.8, 1) + " F h"
	}
	return trimmed(x, 1) + " K h"
}

// hours is a length of time in hours, in the unit that suits it.
func hours(h float64) string {
	switch {
	case h < 1:
		return fmt.Sprintf("%d min", max(1, int(math.Round(h*60))))
	case h < 72:
		return trimmed(h, 1) + " h"
	}
	return trimmed(h/24, 1) + " days"
}

func percent(x float64) string { return trimmed(math.Floor(1000*x)/10, 1) + " %" }
