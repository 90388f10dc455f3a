package plan

import (
	"slices"
	"strings"

	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/quantity"
)

// settle reads the values of a sheet's figures and checks its words.
func (l *Library) settle(s *SpeciesSheet, own bool) {
	s.Figures = l.figures(s.Figures, schema.Figures, own)
	for _, f := range s.Figures {
		l.stages(f.Stages)
		if own {
			l.reason(f.Head, f.Because, f.Review, f.Source)
		}
	}
	s.Needs = l.needs(s.Needs, own)
	for _, n := range s.Needs {
		if own {
			l.reason(n.Head, n.Because, n.Review, n.Source)
		}
	}
	for _, st := range s.Stages {
		l.stages([]Written[string]{st.Name})
	}
	for _, c := range s.Care {
		l.stages(c.Stages)
	}
	for _, f := range s.Feeding {
		l.stages(f.Stages)
	}
}

// needs returns the needs that there are; each of the others is found.
func (l *Library) needs(all []*Need, own bool) []*Need {
	out := make([]*Need, 0, len(all))
	for _, n := range all {
		n.What, n.Own = schema.FindNeed(n.Name.V), own
		l.stages(n.Stages)
		if n.What == nil {
			l.unknown(n.Name, "need", needNames())
			continue
		}
		out = append(out, n)
	}
	return out
}

func (l *Library) stages(list []Written[string]) {
	for _, w := range list {
		if !isStage(w.V) {
			l.unknown(w, "stage", choiceNames(schema.Stages))
		}
	}
}

func (l *Library) unknown(name Written[string], what string, known []string) {
	f := finding.Finding{Rule: ruleUnknownWord, At: name.At, Text: "there is no " + what + " " + quote(name.V), Write: "one of: " + strings.Join(known, ", ")}
	if s := finding.Suggest(name.V, known); s != "" {
		f.Text += ": did you mean " + s + "?"
		f.Write = s
		f.Edits = finding.Instead(name.At, name.V, s)
	}
	l.found.Add(f)
}

// reason finds a figure of the collection's own that does not say why, on whose
// word and until when.
func (l *Library) reason(h Head, because Written[string], review Written[civil.Date], src []Written[string]) {
	var lacks []string
	if !because.Set() {
		lacks = append(lacks, "because")
	}
	if len(src) == 0 {
		lacks = append(lacks, "source")
	}
	if !review.Set() {
		lacks = append(lacks, "review")
	}
	if len(lacks) > 0 {
		l.found.Add(finding.Finding{Rule: RuleUnreasoned, At: h.At,
			Text:  quote(h.Name.V) + " takes the place of a known figure, but has no " + strings.Join(lacks, ", no "),
			Write: "because = \"…\", source = [\"…\"] and review = a date within a year or so"})
	}
}

// figures reads the values of figures and returns those that could be read: a
// figure without a value must not stand for one of 0, nor hide the built-in one.
func (l *Library) figures(all []*Figure, known []*schema.Figure, own bool) []*Figure {
	out := make([]*Figure, 0, len(all))
	for _, f := range all {
		f.Own = own
		if l.figure(f, known) {
			out = append(out, f)
		}
	}
	return out
}

func (l *Library) figure(f *Figure, known []*schema.Figure) bool {
	f.What = schema.FindFigure(known, f.Name.V)
	if f.What == nil {
		var names []string
		for _, k := range known {
			names = append(names, k.Name)
		}
		l.unknown(f.Name, "figure", names)
		return false
	}
	if !f.Value.Set() {
		return false
	}
	d := decoder{file: f.Value.At.File}
	attr := &schema.Attr{Name: "value", Kind: f.What.Kind, Dimension: f.What.Dimension, Choices: f.What.Choices, Example: "\"…\""}
	fail := func(err error) {
		if err != nil {
			d.refuse(f.Value, attr, err)
		}
	}
	var err error
	switch f.What.Kind {
	case schema.Range:
		f.Range, err = quantity.ParseRange(f.Value.V, f.What.Dimension)
		fail(err)
	case schema.Numbers:
		f.Range, err = ParseNumbers(f.Value.V)
		fail(err)
	case schema.Truth:
		f.Truth = f.Value.V == "true"
		if f.Value.V != "true" && f.Value.V != "false" {
			d.found.Add(finding.Finding{Rule: ruleValue, At: f.Value.At, Text: "value is \"true\" or \"false\"", Write: "value = \"true\""})
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
	l.found.All = append(l.found.All, d.found.All...)
	return len(d.found.All) == 0
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
