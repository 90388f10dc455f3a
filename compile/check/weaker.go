package check

import (
	"slices"
	"strconv"

	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/civil"
)

// Weaker is one limit or need of the collection's own that asks for less than what is
// built in.
type Weaker struct {
	Sheet   string // the species
	Here    string // "water may be 6 days away", "lid is any"
	Known   string // "2 days at the longest, need \"water\" of the built-in sheet"
	Was     string // what would be written for it
	At      plan.Written[string]
	Because plan.Written[string]
	Review  plan.Written[civil.Date]
	Cited   plan.Cited // of what is built in
}

// WeakerOf returns what the sheets of a collection's enclosures ask less than what is
// built in, in walking order.
func WeakerOf(c *plan.Collection) []Weaker {
	var out []Weaker
	seen := map[string]bool{}
	for _, e := range c.Enclosures {
		if e.Sheet == nil || seen[e.Sheet.Name.V] {
			continue
		}
		seen[e.Sheet.Name.V] = true
		if base := c.Library.Against(e.Sheet.Name.V); base != nil {
			out = append(out, weakerThan(e.Sheet, base)...)
		}
	}
	return out
}

// weakerThan compares what is the collection's own in a sheet with what lies beneath it.
func weakerThan(s, base *plan.SpeciesSheet) []Weaker {
	var out []Weaker
	for _, n := range s.Needs {
		if b := strongestOf(base, n); n.Own && b != nil && asksLess(n, b) {
			out = append(out, Weaker{Sheet: s.Name.V, Here: n.Name.V + " may be " + n.Longest.V.String() + " away here" + mild(n),
				Known: b.Longest.V.String() + " at the longest, need \"" + b.Name.V + "\" of " + whose(b.Cited),
				Was:   b.Longest.V.String(),
				At:    plan.Written[string]{V: n.Name.V, At: n.Longest.At}, Because: n.Because, Review: n.Review, Cited: b.Cited})
		}
	}
	for _, f := range s.Figures {
		if b := known(base, f); f.Own && b != nil && weaker(f, b) {
			out = append(out, Weaker{Sheet: s.Name.V, Here: f.Name.V + " is " + f.Value.V + " here",
				Known: b.Value.V + ", " + b.Name.V + " of " + whose(b.Cited),
				Was:   b.Value.V,
				At:    plan.Written[string]{V: f.Name.V, At: f.Value.At}, Because: f.Because, Review: f.Review, Cited: b.Cited})
		}
	}
	return out
}

// strongestOf returns the need of a sheet whose place one takes that asks the most of
// one of its stages, or nil.
func strongestOf(base *plan.SpeciesSheet, n *plan.Need) *plan.Need {
	var most *plan.Need
	for _, stage := range stagesOf(n.Stages) {
		for _, b := range base.NeedsOf(stage) {
			if b.What == n.What && b.Longest.Set() && (most == nil || b.Longest.V.Value < most.Longest.V.Value) {
				most = b
			}
		}
	}
	return most
}

func asksLess(n, b *plan.Need) bool {
	return n.Longest.Set() && n.Longest.V.Value > b.Longest.V.Value || mild(n) != "" && mild(b) == ""
}

// mild says that a need which is not met is only a caution.
func mild(n *plan.Need) string {
	if n.Severity.V == "caution" {
		return ", and more is only a caution"
	}
	return ""
}

// known returns the figure of a sheet whose place one takes, or nil: of several that which
// it is weaker than.
func known(base *plan.SpeciesSheet, f *plan.Figure) *plan.Figure {
	if f.Instar.Set() {
		return base.Instar(f.What, f.Instar.V)
	}
	if len(f.Stages) == 0 { // it holds for all stages
		out := base.Figure(f.What, "")
		base.Each(f.What, func(b *plan.Figure) {
			if !b.Instar.Set() && (out == nil || weaker(f, b) && !weaker(f, out)) {
				out = b
			}
		})
		return out
	}
	for _, stage := range stagesOf(f.Stages) {
		if b := base.Figure(f.What, stage); b != nil && (weaker(f, b) || len(f.Stages) < 2) {
			return b
		}
	}
	return nil
}

// stagesOf are the stages of a list; "" stands for all of them.
func stagesOf(list []plan.Written[string]) []string {
	if len(list) == 0 {
		return []string{""}
	}
	var out []string
	for _, w := range list {
		out = append(out, w.V)
	}
	return out
}

// weaker reports whether one value of a figure asks for less than another.
func weaker(f, than *plan.Figure) bool {
	higher, lower := f.Range.High > than.Range.High || f.Range.Low > than.Range.Low, f.Range.High < than.Range.High || f.Range.Low < than.Range.Low
	switch f.What.Kind {
	case schema.Truth:
		higher, lower = f.Truth && !than.Truth, !f.Truth && than.Truth
	case schema.Word:
		at := func(x *plan.Figure) int {
			return slices.IndexFunc(f.What.Choices, func(c schema.Choice) bool { return slices.Contains(x.Words, c.Name) })
		}
		higher, lower = at(f) > at(than), at(f) < at(than)
	case schema.Words:
		lacks := func(x, y *plan.Figure) bool {
			return slices.ContainsFunc(y.Words, func(w string) bool { return !slices.Contains(x.Words, w) })
		}
		higher, lower = lacks(than, f), lacks(f, than)
	}
	switch f.What.Weaker() {
	case schema.Higher:
		return higher
	case schema.Lower:
		return lower
	case schema.Wider:
		return f.Range.High > than.Range.High || f.Range.Low < than.Range.Low
	case schema.Other:
		return higher || lower
	}
	return false
}

// sheetWeaker names each, so that whoever reads the plan sees that less is proved.
func sheetWeaker(r *Rule, c *Collection) {
	for _, w := range c.weaker() {
		c.Add(finding.Finding{Rule: &r.Rule, At: w.At.At, Source: c.cite(w.Cited), Text: w.Here, Limit: w.Known,
			Write: w.Was + ", as is known; or leave it: this only makes it seen"})
	}
}

// longestReview is for how many days a weaker limit may stand unseen: a year and a month.
const longestReview = 400

func reviewFar(r *Rule, c *Collection) {
	for _, w := range c.weaker() {
		if w.Review.Set() && int(w.Review.V-c.Today) > longestReview {
			by := w.Review.V.NotAfter(c.Today + longestReview).String()
			c.Add(finding.Finding{Rule: &r.Rule, At: w.Review.At, Source: r.Source,
				Text:  strconv.Quote(w.At.V) + " of " + w.Sheet + " asks for less than is known, and is looked at again only on " + w.Review.V.Words(),
				Limit: "a year and a month ahead; " + w.Known, Write: by + ", or sooner",
				Edits: finding.Instead(w.Review.At, w.Review.V.String(), by)})
		}
	}
}

// weaker is WeakerOf of the collection, looked for once.
func (c *Collection) weaker() []Weaker {
	if c.less == nil {
		c.less = append([]Weaker{}, WeakerOf(c.Plan)...)
	}
	return c.less
}

// whose says of whom something is known that a sheet of one's own is measured by.
func whose(c plan.Cited) string {
	if c.OfType != "" {
		return c.OfType
	}
	return "the built-in sheet"
}
