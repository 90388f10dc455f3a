package finding

import (
	"bufio"
	"io"
	"strconv"
	"strings"

	"vivary/plan/source"
	"vivary/schema/wording"
)

// Printer writes findings for people at a terminal.
type Printer struct {
	Files *source.Set
	// Named lists enclosures, by their names in the plan, as their keeper knows them. It may
	// be nil: then places alone are told.
	Named func(names []string) string
}

// painter is a writer that can show a text in a colour. Colour is only ever added to
// words that say the same.
type painter interface{ Paint(code, text string) }

// Print writes findings, the worst of them if they are very many: the place, severity,
// text and rule in one line as compilers do, then the line of the plan with the part
// meant, where else the same is found, the limit and its source, and what to do: the line
// to write, where an edit makes it, else words, which are never taken for such a line.
func (p Printer) Print(w io.Writer, all []Finding) error {
	b := bufio.NewWriter(w)
	printed, rest := most(groups(all))
	for i, g := range printed {
		if i > 0 {
			b.WriteByte('\n')
		}
		if at := g.first.At; at.Written() {
			b.WriteString(p.place(at) + ": ")
		}
		if err := paint(b, w, g.first.Severity); err != nil {
			return err
		}
		p.one(b, g)
	}
	if len(rest) > 0 {
		b.WriteString("\n" + summaryOf(rest) + "\n")
	}
	return b.Flush()
}

// paint writes a severity, in its colour where w shows colours.
func paint(b *bufio.Writer, w io.Writer, s Severity) error {
	color, ok := w.(painter)
	if !ok {
		b.WriteString(s.String())
		return nil
	}
	err := b.Flush() // what stands before it
	color.Paint([...]string{Advice: "36", Caution: "33", Urgent: "1;35", Error: "31", Danger: "1;31"}[s], s.String())
	return err
}

func (p Printer) one(b *bufio.Writer, g alike) {
	f := g.first
	b.WriteString(": " + wording.Line(f.Text) + " [" + f.Rule.ID + "]\n")
	if f.At.Written() {
		p.excerpt(b, f.At)
	}
	line := func(label, text string) {
		if text != "" {
			b.WriteString("    " + label + ": " + wording.Line(text) + "\n")
		}
	}
	if len(g.at) == 0 {
		line("in", f.Where)
	} else {
		if p.Named != nil {
			line("in", p.Named(g.of))
		}
		line("and at", p.others(f, g.at))
	}
	for _, r := range f.Also {
		if r.At.Written() {
			b.WriteString("    also: " + p.place(r.At) + ": " + wording.Line(r.Text) + "\n")
		} else {
			line("also", r.Text)
		}
	}
	line("limit", f.Limit)
	line("source", f.Source)
	fix := edited(p.Files, f.Edits, width)
	if len(fix) == 0 {
		line("fix", f.Write)
	}
	for i, l := range fix {
		label := "write: "
		if i > 0 {
			label = "       "
		}
		b.WriteString("    " + label + wording.Line(l) + "\n")
	}
}

// width is how much of a line is shown.
const width = 110

func (p Printer) place(at source.Place) string {
	pos := p.Files.Start(at)
	return wording.Line(pos.File) + ":" + strconv.Itoa(pos.Line) + ":" + strconv.Itoa(pos.Column)
}

// excerpt shows the line and marks the part meant. A very long line is cut around
// that part, so that a plan on one line still gives a readable finding.
func (p Printer) excerpt(b *bufio.Writer, at source.Place) {
	text, from, to := p.Files.Line(at)
	runes := []rune(strings.ReplaceAll(text, "\t", " "))
	if len(runes) == 0 || strings.TrimSpace(text) == "" {
		return
	}
	to = max(to, from+1)
	if from > len(runes) {
		return
	}
	start := 0
	if len(runes) > width {
		start = max(0, from-width/3)
	}
	end := min(len(runes), start+width)
	b.WriteString("  | " + wording.Line(string(runes[start:end])) + "\n")
	b.WriteString("  | " + strings.Repeat(" ", min(from, end)-start) + strings.Repeat("^", max(1, min(to, end)-from)) + "\n")
}

// Summary returns one line such as "1 danger, 2 urgent, 2 cautions", or "" for none.
func Summary(all []Finding) string {
	n := Count(all)
	var parts []string
	for s := len(n) - 1; s >= 0; s-- {
		if n[s] > 0 {
			parts = append(parts, Severity(s).count(n[s]))
		}
	}
	return strings.Join(parts, ", ")
}
