package assist

import (
	"slices"
	"strings"

	"vivary/compile/explain"
	"vivary/plan"
	"vivary/schema"
)

// Hover says in markdown what stands at a byte of the text, and from where to where that is. The
// markdown is empty where there is nothing to say.
func (p *Page) Hover(at int) (start, end int, markdown string) {
	if at < 0 || at >= len(p.Text) || strings.IndexByte("\t\r\n", p.Text[at]) >= 0 {
		return 0, 0, ""
	}
	blank := p.Text[at] == ' '
	switch {
	case !strings.HasSuffix(p.Name, plan.LogSuffix):
	case blank:
		return 0, 0, ""
	default:
		return p.hoverLog(at)
	}
	w := p.at(at + 1)       // the byte is the last before it
	if blank && !w.quoted { // in a text it is part of it
		return 0, 0, ""
	}
	if w.whole == "" || w.in == nil || w.in.is == nil {
		return 0, 0, ""
	}
	start, end = w.from, w.from+len(w.whole)
	switch w.place {
	case inBody:
		markdown = p.aboutName(w)
	case inLabel:
		markdown = p.aboutLabel(w)
	case inValue:
		if a := p.attrOf(w); a != nil {
			markdown = p.aboutValue(w, a)
		}
	}
	if markdown == "" || at < start { // at the quote before it
		return 0, 0, ""
	}
	return start, end, markdown
}

// aboutName explains the type of a block or the name of an attribute.
func (p *Page) aboutName(w *where) string {
	if c := w.in.is.Block(w.whole); c != nil {
		return "**" + headOf(c) + "**\n\n" + c.Doc
	}
	a := attribute(w.in.is, w.whole)
	if a == nil {
		return ""
	}
	text := "**" + a.Name + "**"
	if a.Required {
		text += ", must be written"
	}
	text += "\n\n" + docOf(a)
	for i, c := range a.Choices {
		if i == mostChoices {
			break
		}
		text += "\n- `" + c.Name + "`: " + c.Doc
	}
	return text + p.beside(w, a)
}

// mostChoices is how many words are told of those that an attribute allows.
const mostChoices = 8

// beside is what the sheet of the species around states of the same, for the stages of its
// animals where it differs by stage, on whose word, and what others say.
func (p *Page) beside(w *where, a *schema.Attr) (text string) {
	s := p.sheet(w)
	if s == nil {
		return ""
	}
	stages := p.stages(w.in)
	for _, name := range a.Beside {
		s.Each(schema.FindFigure(schema.Figures, name), func(f *plan.Figure) {
			if len(f.Stages) > 0 && len(stages) > 0 && !slices.ContainsFunc(stages, func(s string) bool { return plan.Lists(f.Stages, s) }) {
				return
			}
			l := explain.Stated(p.Result, f)
			l.Under = slices.DeleteFunc(slices.Clone(l.Under), func(u string) bool { return strings.HasPrefix(u, "note: ") })
			text += "\n" + lineOf(l)
		})
	}
	if text != "" {
		text = "\n\n*" + s.Shown() + ", by its sheet:*\n" + text
	}
	return text
}

// stages are the stages of the animals of the enclosure around, as far as they are known.
func (p *Page) stages(b *block) (all []string) {
	e := p.enclosure(b)
	if e == nil {
		return nil
	}
	for _, l := range p.Result.Lives {
		if l.Plan != e {
			continue
		}
		for _, g := range l.Groups {
			if stage := g.Stage(p.Result.Today); stage != "" && g.Count(p.Result.Today) > 0 {
				all = append(all, stage)
			}
		}
	}
	return all
}

// aboutLabel explains what a block is called: the thing that it is, with what is known of it now.
func (p *Page) aboutLabel(w *where) string {
	b := w.in.is.Block(w.name)
	if b == nil || b.Label == "" {
		return ""
	}
	e := p.enclosure(w.in)
	switch b {
	case schema.Enclosure:
		return p.about("enclosure", w.whole)
	case schema.Care:
		if e != nil {
			if text := p.care(e, w.whole); text != "" {
				return text
			}
		}
	case schema.Feeding:
		if e != nil {
			return p.care(e, schema.KindFeed.Name+" "+w.whole)
		}
	case schema.Animals:
		if e != nil {
			return p.animals(e, w.whole)
		}
	}
	if b.Names != "" {
		return p.about(b.Names, w.whole)
	}
	if text := p.about(b.Name, w.whole); text != "" {
		return text
	}
	for _, n := range p.labelsOf(w, b) {
		if n.name == w.whole {
			return n.said()
		}
	}
	return ""
}

// said is what a list shows of a name, as it stands by itself.
func (n name) said() string {
	text := "**" + n.name + "**"
	if n.detail != "" {
		text += ": " + n.detail
	}
	if n.doc != "" {
		text += "\n\n" + n.doc
	}
	return text
}
