package plan

import (
	"errors"
	"slices"
	"strings"

	"vivary/plan/finding"
	"vivary/plan/syntax"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/quantity"
	"vivary/schema/slip"
)

// settle reads the values of a sheet's figures and checks its words. Of other
// blocks it leaves everything as it is.
func (d *decoder) settle(block any) {
	switch s := block.(type) {
	case *SpeciesSheet:
		d.species(s)
	case *TypeSheet:
		d.careType(s)
	case *Enclosure:
		d.apart(s)
	case *FeederSheet:
		s.Figures = d.figures(s.Figures, schema.FeederFigures)
		for _, x := range s.Stages {
			d.develops(x)
		}
	}
}

func (d *decoder) species(s *SpeciesSheet) {
	for _, f := range s.Figures {
		f.or(&s.Cited)
	}
	for _, n := range s.Needs {
		n.or(&s.Cited)
	}
	for _, x := range s.Stages {
		x.or(&s.Cited)
	}
	for _, b := range s.States {
		b.or(&s.Cited)
	}
	s.Figures = d.figures(s.Figures, schema.Figures)
	for _, f := range s.Figures {
		d.stages(f.Stages)
	}
	s.States = d.states(s.States)
	s.resolve()
	s.Needs = d.needs(s.Needs)
	for _, st := range s.Stages {
		d.stages([]Written[string]{st.Name})
	}
	for _, c := range s.Care {
		d.stages(c.Stages)
	}
	for _, f := range s.Feeding {
		d.stages(f.Stages)
	}
}

// needs returns the needs that there are; each of the others is found.
func (d *decoder) needs(all []*Need) []*Need {
	out := make([]*Need, 0, len(all))
	for _, n := range all {
		n.What, n.Own = schema.FindNeed(n.Name.V), d.own
		d.stages(n.Stages)
		if n.What == nil {
			d.noWord(n.Name, "need", needNames())
			continue
		}
		out = append(out, n)
	}
	return out
}

func (d *decoder) stages(list []Written[string]) {
	for _, w := range list {
		if !isStage(w.V) {
			d.noWord(w, "stage", choiceNames(schema.Stages))
		}
	}
}

func (d *decoder) noWord(name Written[string], what string, known []string) {
	f := finding.Finding{Rule: ruleUnknownWord, At: name.At, Text: "there is no " + what + " " + quote(name.V), Write: "one of: " + strings.Join(known, ", ")}
	if s := slip.Of(name.V, known); s != "" {
		f.Text += ": did you mean " + s + "?"
		f.Write = s
		f.Edits = finding.Instead(name.At, name.V, s)
	}
	d.found.Add(f)
}

// writeReason is what is written where unreasoned finds something.
const writeReason = "because, with the reason; source, on whose word; and review, a date within a year or so"

// unreasoned says what is missing of a reason, as in "no because, no review".
func unreasoned(because Written[string], review Written[civil.Date], src []Written[string]) string {
	var lacks []string
	if !because.Set() {
		lacks = append(lacks, "no because")
	}
	if len(src) == 0 {
		lacks = append(lacks, "no source")
	}
	if !review.Set() {
		lacks = append(lacks, "no review")
	}
	return strings.Join(lacks, ", ")
}

// figures reads the values of figures and returns those that could be read: a
// figure without a value must not stand for one of 0, nor hide the built-in one.
func (d *decoder) figures(all []*Figure, known []*schema.Figure) []*Figure {
	out := make([]*Figure, 0, len(all))
	for _, f := range all {
		f.Own = d.own
		if d.figure(f, known) {
			out = append(out, f)
		}
	}
	return out
}

func (d *decoder) figure(f *Figure, known []*schema.Figure) bool {
	f.What = schema.FindFigure(known, f.Name.V)
	if f.What == nil {
		var names []string
		for _, k := range known {
			names = append(names, k.Name)
		}
		d.noWord(f.Name, "figure", names)
		return false
	}
	if !f.Value.Set() {
		return false
	}
	before := len(d.found.All)
	attr := &schema.Attr{Name: "value", Kind: f.What.Kind, Dimension: f.What.Dimension, Choices: f.What.Choices}
	fail := func(err error) {
		if err != nil {
			d.refuse(f.Value, attr, err)
		}
	}
	var err error
	if f.times[0], err = timesOf(f.Value.V, f.What); err == nil && f.Wrong.Set() {
		f.times[1], err = timesOf(f.Wrong.V, f.What)
	}
	if err == nil && f.Wrong.Set() && f.times[0].set() != f.times[1].set() {
		err = errors.New("value and wrong are both multiples of the animal, or neither")
	}
	if err != nil || f.times[0].set() {
		fail(err)
		return err == nil
	}
	if f.Wrong.Set() {
		f.Beyond, err = quantity.ParseRange(f.Wrong.V, f.What.Dimension)
		fail(err)
	}
	switch f.What.Kind {
	case schema.Range:
		f.Range, err = quantity.ParseRange(f.Value.V, f.What.Dimension)
		fail(err)
	case schema.Numbers:
		f.Range, err = quantity.ParseNumbers(f.Value.V)
		fail(err)
	case schema.Truth:
		f.Truth = f.Value.V == "true"
		if f.Value.V != "true" && f.Value.V != "false" {
			x := finding.Finding{Rule: ruleValue, At: f.Value.At, Text: quote(f.Value.V) + " is neither \"true\" nor \"false\"", Write: "one of the two"}
			if all := candidates(&syntax.Value{Text: f.Value.V}, attr); len(all) > 0 {
				x.Write = quote(all[0].v.Text)
				x.Edits = finding.Instead(f.Value.At, f.Value.V, all[0].v.Text)
			}
			d.found.Add(x)
		}
	case schema.Word:
		d.choice(attr, f.Value)
		f.Words = []string{f.Value.V}
	case schema.Words:
		for _, w := range listed(f.Value) {
			d.choice(attr, w)
			f.Words = append(f.Words, w.V)
		}
	}
	return len(d.found.All) == before
}

func isStage(s string) bool {
	return slices.ContainsFunc(schema.Stages, func(c schema.Choice) bool { return c.Name == s })
}

func needNames() []string {
	var n []string
	for _, x := range schema.Needs {
		n = append(n, x.Name)
	}
	return n
}

func choiceNames(list []schema.Choice) []string {
	var n []string
	for _, x := range list {
		n = append(n, x.Name)
	}
	return n
}
