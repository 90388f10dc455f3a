package explain

import (
	"strings"

	"vivary/compile"
	"vivary/plan"
	"vivary/schema/quantity"
)

func listTypes(r *compile.Result) []Line {
	var out []Line
	for _, n := range r.Plan.Library.TypeNames() {
		out = append(out, Line{Name: n, Text: r.Plan.Library.Type(n).Title.V})
	}
	return out
}

// explainType says what is common practice for all members of a care type: what suits
// each, what is wrong for any, and for which genera it does not hold.
func explainType(r *compile.Result, word string) []Answer {
	l := r.Plan.Library
	var out []Answer
	for _, n := range l.TypeNames() {
		t := l.Type(n)
		if !means(word, n, t.Title.V) {
			continue
		}
		var first, excepts []Line
		if t.Note.Set() {
			first = append(first, Line{Text: t.Note.V})
		}
		if len(t.Genera) > 0 {
			first = append(first, Line{Text: "Genera: " + strings.Join(texts(t.Genera), ", ")})
		}
		if t.In.Set() {
			first = append(first, Line{Text: "What it does not say itself is that of type " + t.In.V + "."})
		}
		first = append(first, Line{Text: "Size, heat to aim for, company, danger and law are stated by a species, never by a type."})
		for _, x := range t.Excepts {
			excepts = append(excepts, Line{Name: x.Name.V, Text: x.Because.V, Under: differs(l, r.Plan.Units, x)})
		}
		var figures, needs []Line
		for _, f := range t.Figures {
			figures = append(figures, typeFigure(l, r.Plan.Units, f))
		}
		for _, n := range t.Needs {
			needs = append(needs, typeNeed(l, n))
		}
		parts := part(part(part(nil, "", first), "Needs", needs), "Figures", figures)
		out = append(out, Answer{Title: "Type " + n + ": " + t.Title.V, Parts: part(parts, "Not so", excepts)})
	}
	return out
}

func differs(l *plan.Library, u quantity.Units, x *plan.Except) (out []string) {
	if x.Empty() {
		return []string{"a species of this genus states its own figures and needs"}
	}
	for _, f := range x.Figures {
		line := typeFigure(l, u, f)
		out = append(out, line.Name+" "+line.Text)
	}
	for _, n := range x.Needs {
		line := typeNeed(l, n)
		out = append(out, line.Name+" "+line.Text)
	}
	return out
}

func typeFigure(l *plan.Library, u quantity.Units, f *plan.Figure) Line {
	line := figureLine(l, u, f.Name.V, f)
	if f.Wrong.Set() {
		line.Text += " suits every one; " + f.Wrong.V + " is wrong for any"
	}
	return line
}

func typeNeed(l *plan.Library, n *plan.Need) Line {
	line := needLine(l, holding(n.Name.V, n.Stages), n)
	if n.Wrong.Set() {
		line.Text += "; more than " + n.Wrong.V.String() + " is too long for any"
	}
	return line
}
