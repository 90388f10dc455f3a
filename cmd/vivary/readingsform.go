package main

import (
	"math"

	"vivary/compile/measure"
	"vivary/compile/readings"
)

// readingsForm is the JSON form of what loggers showed; schema/json/readings.schema.json
// describes it. Temperatures are in °C, humidities in %.
type readingsForm struct {
	envelope
	Enclosure string     `json:"enclosure"`
	From      string     `json:"from"`
	To        string     `json:"to"`
	Files     []fileForm `json:"files"`
	Body      bodyForm   `json:"body"`
	Measured  string     `json:"measured,omitempty"`
	Log       []string   `json:"log"`
}

// bodyForm is what the enclosure is like as a body in its room.
type bodyForm struct {
	Tau      *fitForm `json:"time_constant_minutes,omitempty"`
	TauCold  *float64 `json:"time_constant_if_the_room_is_half_a_kelvin_colder,omitempty"`
	TauWarm  *float64 `json:"time_constant_if_the_room_is_half_a_kelvin_warmer,omitempty"`
	TauAlone *fitForm `json:"time_constant_without_the_room,omitempty"`
	NoTau    string   `json:"time_constant_not_sure,omitempty"`
	Loss     *fitForm `json:"loss_watts_per_kelvin,omitempty"`
	Duty     *float64 `json:"duty,omitempty"`
	NoLoss   string   `json:"no_loss,omitempty"`
	Change   *fitForm `json:"air_changes_per_hour,omitempty"`
	AtMost   bool     `json:"air_changes_at_most,omitempty"`
	NoChange string   `json:"no_air_changes,omitempty"`
	PlanTau  *fitForm `json:"time_constant_by_the_plan,omitempty"`
	PlanLoss *fitForm `json:"loss_by_the_plan,omitempty"`
	PlanAir  *fitForm `json:"air_changes_by_the_plan,omitempty"`
}

type fitForm struct {
	Low    float64 `json:"low"`
	Likely float64 `json:"likely"`
	High   float64 `json:"high"`
}

func bodyOf(b *readings.Body) (out bodyForm) {
	fit := func(f readings.Fit) *fitForm { return &fitForm{exact(f.Low), exact(f.Value), exact(f.High)} }
	out.NoTau, out.NoLoss, out.NoChange = b.NoCooling, b.NoLoss, b.NoChange
	if c := b.Cooling; c != nil {
		if c.Decay != nil {
			out.Tau, out.TauCold, out.TauWarm = fit(c.Decay.Tau), orNull(c.Decay.Cold), orNull(c.Decay.Warm)
		}
		if c.Alone != nil {
			out.TauAlone = fit(c.Alone.Tau)
		}
	}
	if l := b.Loss; l != nil {
		out.Loss, out.Duty = fit(l.Fit), orNull(l.Duty)
	}
	if c := b.Change; c != nil {
		out.Change, out.AtMost = fit(c.Hour), c.AtMost
	}
	if e := b.Expected; e != nil {
		out.PlanTau = fit(readings.Fit{Low: float64(e.Tau.Low), Value: float64(e.Tau.Likely), High: float64(e.Tau.High)})
		out.PlanLoss = fit(readings.Fit{Low: float64(e.Loss.Low), Value: float64(e.Loss.Likely), High: float64(e.Loss.High)})
		out.PlanAir = fit(readings.Fit{Low: float64(b.AirChange.Low), Value: float64(b.AirChange.Likely), High: float64(b.AirChange.High)})
	}
	return out
}

type fileForm struct {
	File        string        `json:"file"`
	Place       string        `json:"place"`
	Read        string        `json:"read"`
	From        string        `json:"from"`
	To          string        `json:"to"`
	Step        int64         `json:"step_seconds"`
	Samples     int           `json:"readings"`
	Repeated    int           `json:"repeated"`
	Missing     int           `json:"missing"`
	Passed      int           `json:"passed_over"`
	Problems    []lineSaid    `json:"problems"`
	Temperature *judgedForm   `json:"temperature,omitempty"`
	Humidity    *judgedForm   `json:"humidity,omitempty"`
	Faults      []faultForm   `json:"faults"`
	Off         *accuracyForm `json:"may_be_off"`
	Gauge       string        `json:"gauge,omitempty"`
	Tested      *testedForm   `json:"tested,omitempty"`
}

type testedForm struct {
	On      string   `json:"on,omitempty"`
	Age     int      `json:"age_days"`
	Heat    float64  `json:"temperature_add"`
	Slope   float64  `json:"humidity_slope"`
	Add     float64  `json:"humidity_add"`
	Replace bool     `json:"replace"`
	Old     bool     `json:"old"`
	Wrong   []string `json:"wrong,omitempty"`
}

type accuracyForm struct {
	Temperature float64 `json:"temperature"`
	Humidity    float64 `json:"humidity"`
}

type lineSaid struct {
	Line int    `json:"line"`
	Text string `json:"text"`
}

type faultForm struct {
	Kind string `json:"kind"`
	From string `json:"from,omitempty"`
	To   string `json:"to,omitempty"`
	Text string `json:"text"`
}

type judgedForm struct {
	Coverage float64       `json:"coverage"`
	Enough   bool          `json:"enough"`
	Gaps     int           `json:"gaps"`
	Low      *float64      `json:"low"`
	Mean     *float64      `json:"mean"`
	High     *float64      `json:"high"`
	Day      *float64      `json:"mean_by_day"`
	Night    *float64      `json:"mean_by_night"`
	Limits   []verdictForm `json:"limits"`
}

type verdictForm struct {
	Level  string       `json:"level"`
	Of     string       `json:"of"`
	Source string       `json:"source,omitempty"`
	Low    float64      `json:"low"`
	High   float64      `json:"high"`
	Night  *rangeForm   `json:"by_night,omitempty"`
	Above  *outsideForm `json:"above,omitempty"`
	Below  *outsideForm `json:"below,omitempty"`
}

type rangeForm struct {
	Low  float64 `json:"low"`
	High float64 `json:"high"`
}

type outsideForm struct {
	Hours   float64 `json:"hours"`
	Degrees float64 `json:"degree_hours"`
	Longest float64 `json:"longest_hours"`
	From    string  `json:"longest_from"`
	Peak    float64 `json:"furthest"`
	PeakAt  string  `json:"furthest_at"`
	Sure    float64 `json:"sure_hours"`
	Perhaps float64 `json:"perhaps_hours"`
	Days    int     `json:"days"`
	Nights  int     `json:"nights"`
}

// levelNames are the levels for programs.
var levelNames = [...]string{measure.Harm: "harm", measure.Unusual: "unusual", measure.Aim: "aim"}

func newReadingsForm(r *readings.Report) readingsForm {
	first, last := r.Span()
	loc := r.Result.Now.Location()
	out := readingsForm{envelope: begin("readings"), Enclosure: r.Life.Plan.Name.V, From: instant(first.Unix(), loc), To: instant(last.Unix(), loc), Files: []fileForm{}, Body: bodyOf(r.Body), Log: []string{}}
	if r.Measured != nil {
		out.Measured = r.Measured.Text(r.Life.Plan, loc)
	}
	for _, l := range r.Lines {
		out.Log = append(out.Log, l.Text)
	}
	for _, j := range r.Files {
		s := j.Series
		x := fileForm{File: j.Name, Place: j.Place, Read: s.Shape.String(), From: instant(s.Samples[0].At, loc), To: instant(s.Samples[len(s.Samples)-1].At, loc),
			Step: s.Step, Samples: len(s.Samples), Repeated: s.Repeated, Missing: s.Missing, Passed: s.Passed, Problems: []lineSaid{}, Faults: []faultForm{},
			Off: &accuracyForm{j.Off.Heat, j.Off.Damp}}
		for _, p := range s.Problems {
			x.Problems = append(x.Problems, lineSaid{p.Line, p.Text})
		}
		for _, t := range j.Faults {
			form := faultForm{Kind: t.Kind, Text: t.Text}
			if t.From != 0 {
				form.From, form.To = instant(t.From, loc), instant(t.Until, loc)
			}
			x.Faults = append(x.Faults, form)
		}
		at := func(at int64) string { return instant(at, loc) }
		x.Temperature, x.Humidity = judgedOf(j.Heat, at), judgedOf(j.Damp, at)
		if j.Gauge != nil {
			x.Gauge = j.Gauge.Name.V
		}
		if t := j.Tested; t != nil {
			x.Tested = &testedForm{On: dateOf(t.On), Age: t.Age, Heat: exact(t.HeatOff), Slope: exact(t.Slope), Add: exact(t.Add), Replace: t.Replace(), Old: t.On != 0 && t.Old(), Wrong: wrongOf(t)}
		}
		out.Files = append(out.Files, x)
	}
	return out
}

func judgedOf(j *readings.Judged, at func(int64) string) *judgedForm {
	if j == nil {
		return nil
	}
	out := &judgedForm{Coverage: exact(j.Coverage()), Enough: j.Enough(), Gaps: j.Gaps, Low: orNull(j.Low), Mean: orNull(j.Mean), High: orNull(j.High),
		Day: orNull(j.DayMean), Night: orNull(j.NightMid), Limits: []verdictForm{}}
	for _, v := range j.Verdicts {
		x := verdictForm{Level: levelNames[v.Level], Of: v.Of, Source: v.Source, Low: exact(v.Day.Low), High: exact(v.Day.High), Above: outsideOf(&v.Above, at), Below: outsideOf(&v.Below, at)}
		if v.Night != nil {
			x.Night = &rangeForm{exact(v.Night.Low), exact(v.Night.High)}
		}
		out.Limits = append(out.Limits, x)
	}
	return out
}

func outsideOf(o *readings.Outside, at func(int64) string) *outsideForm {
	if !o.Any() {
		return nil
	}
	return &outsideForm{exact(o.Hours), exact(o.Degrees), exact(o.Longest), at(o.From), exact(o.Peak), at(o.PeakAt), exact(o.Sure), exact(o.Perhaps), o.Days, o.Nights}
}

// orNull is a value, or null where there is none.
func orNull(x float64) *float64 {
	if math.IsNaN(x) {
		return nil
	}
	x = exact(x)
	return &x
}

// exact leaves out digits that no gauge has.
func exact(x float64) float64 { return math.Round(x*1e4) / 1e4 }

// wrongOf are the texts of what is wrong with the tests of a gauge.
func wrongOf(t *measure.Tested) (all []string) {
	for _, w := range t.Wrong {
		all = append(all, w.Text)
	}
	return all
}
