package assist

import (
	"strings"

	"vivary/plan"
	"vivary/schema"
)

// sheet returns the sheet of the species around: as it is typed now, else as the enclosure has
// it, from its template for one. It is nil where none is known.
func (p *Page) sheet(w *where) *plan.SpeciesSheet {
	l := p.Result.Plan.Library
	for x := w.in; x != nil; x = x.in {
		if a := x.attr("species"); a != nil {
			written := a.value(w.tree.src)
			if s := l.Species(written); s != nil {
				return s
			}
			if by := l.ByOtherName(written); by.As != plan.NameMistaken && by.One() != nil {
				return by.One()
			}
		}
		if x.is == schema.Species {
			return l.Species(x.label)
		}
	}
	if e := p.enclosure(w.in); e != nil {
		return e.Sheet
	}
	return nil
}

// sheetInShort says of a species how warm and how damp it is kept, and what is dangerous.
func (p *Page) sheetInShort(s *plan.SpeciesSheet) string {
	var lines []string
	for _, f := range schema.Figures {
		aim := f == schema.FigureTemperatureTarget || f == schema.FigureHumidityTarget
		if x := s.Figure(f, ""); x != nil && (aim || f.Warns && f.Kind == schema.Word) {
			if text := warning(f, x); aim {
				lines = append(lines, f.Name+": "+x.Told(p.Result.Plan.Units))
			} else if text != "" {
				lines = append(lines, "**"+f.Name+": "+text+"**")
			}
		}
	}
	out := "*" + s.Latin.V + "*"
	if len(lines) > 0 {
		out += "\n\n" + strings.Join(lines, "  \n")
	}
	return out
}

// warning is what a figure that warns says, or "" where it says that there is nothing.
func warning(f *schema.Figure, x *plan.Figure) string {
	if len(x.Words) == 0 || x.Words[0] == f.Choices[0].Name {
		return ""
	}
	for _, c := range f.Choices {
		if c.Name == x.Words[0] {
			return c.Name + ", " + c.Doc
		}
	}
	return ""
}

func hazards(f *plan.FeederSheet) string {
	var out []string
	for _, h := range f.Hazards {
		out = append(out, h.V)
	}
	if len(out) == 0 {
		return f.Note.V
	}
	return strings.Join(out, "; ")
}
