package plan

import (
	"strings"

	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/quantity"
)

// Development is a development block of a feeder sheet: how long a stage takes by the warmth.
type Development struct {
	Head
	Cited
	Size       Written[string]            `care:"size"`
	Base       Written[quantity.Quantity] `care:"base"`
	DegreeDays Written[float64]           `care:"degree_days"`
	Between    Written[quantity.Range]    `care:"between"`
	Observed   []Written[string]          `care:"observed"`
	Note       Written[string]            `care:"note"`

	// Points are the observed times, as far as they could be read.
	Points []Point
}

// Point is one observed time: how long it took, and at which temperature.
type Point struct {
	Takes quantity.Range // a duration
	At    quantity.Range // a temperature
}

// Develops returns what is known of a stage of a size, or nil: of that size alone, else of all.
func (f *FeederSheet) Develops(stage, size string) (of *Development) {
	for _, d := range f.Stages {
		if d.Name.V == stage && (!d.Size.Set() || d.Size.V == size) && (of == nil || d.Size.Set()) {
			of = d
		}
	}
	return of
}

// develops reads the observed times of a stage, and finds a line of which half is missing.
func (d *decoder) develops(x *Development) {
	for _, w := range x.Observed {
		takes, at, ok := strings.Cut(w.V, " at ")
		days, err := quantity.ParseRange(takes, quantity.Duration)
		if ok && err == nil {
			var warm quantity.Range
			if warm, err = quantity.ParseRange(at, quantity.Temperature); err == nil {
				x.Points = append(x.Points, Point{days, warm})
				continue
			}
		}
		d.found.Add(finding.Finding{Rule: ruleValue, At: w.At, Text: quote(w.V) + " is not how long a stage takes at which temperature", Write: "a time and its temperature with at between them, such as 9 days at 25 C"})
	}
	lack := ""
	switch {
	case x.Base.tried() && !x.DegreeDays.tried():
		lack = "degree_days"
	case x.DegreeDays.tried() && !x.Base.tried():
		lack = "base"
	case x.Base.Set() && x.DegreeDays.Set() && !x.Between.tried():
		lack = "between"
	}
	if a := schema.Development.Attr(lack); a != nil {
		d.found.Add(finding.Finding{Rule: ruleMissing, At: x.At, Text: "development" + named(&x.Head) + " has no " + lack + ": without it nothing can be reckoned by the warmth", Write: lack + ", " + a.Form()})
	}
}
