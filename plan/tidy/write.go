package tidy

import (
	"strings"
	"unicode/utf8"

	"vivary/plan/syntax"
	"vivary/schema"
)

// writer writes what is laid out.
type writer struct {
	p     *page
	out   strings.Builder
	run   []line // that follow each other, to be aligned
	depth int    // of the run
}

// line is a line of which the head is as wide as the others of its run.
type line struct{ head, rest, trail string }

// What is wider than this is not aligned with others: one long name would move all of them.
const (
	widestHead = 60
	widestLine = 100
)

func indent(depth int) string { return strings.Repeat("  ", depth) }

// lines writes lines as they are, at a depth.
func (w *writer) lines(depth int, texts ...string) {
	w.flush()
	for _, t := range texts {
		w.out.WriteString(indent(depth) + t + "\n")
	}
}

// add puts a line to the run.
func (w *writer) add(depth int, l line) {
	w.run, w.depth = append(w.run, l), depth
}

// flush writes the run.
func (w *writer) flush() {
	widest := 0
	for _, l := range w.run {
		if n := width(l.head); n <= widestHead {
			widest = max(widest, n)
		}
	}
	texts := make([]string, len(w.run))
	for i, l := range w.run {
		if texts[i] = l.rest; l.head != "" {
			texts[i] = l.head + blanks(widest-width(l.head)) + " " + l.rest
		}
	}
	for from := 0; from < len(w.run); {
		to := from + 1
		for commented(w.run, texts, from) && to < len(w.run) && commented(w.run, texts, to) {
			to++
		}
		w.commented(texts[from:to], w.run[from:to])
		from = to
	}
	w.run = w.run[:0]
}

func commented(run []line, texts []string, i int) bool {
	return run[i].trail != "" && width(texts[i]) <= widestLine
}

// commented writes lines with the comments behind them, one below the other.
func (w *writer) commented(texts []string, run []line) {
	widest := 0
	for _, t := range texts {
		widest = max(widest, width(t))
	}
	for i, t := range texts {
		w.out.WriteString(indent(w.depth) + t)
		if run[i].trail != "" {
			w.out.WriteString(blanks(widest-width(t)) + " " + run[i].trail)
		}
		w.out.WriteByte('\n')
	}
}

func blanks(n int) string { return strings.Repeat(" ", max(n, 0)) }

func width(s string) int { return utf8.RuneCountInString(s) }

// body writes what stands in a block.
func (w *writer) body(o *body, depth int) {
	first := true
	part := func() {
		w.flush()
		if !first {
			w.out.WriteByte('\n')
		}
		first = false
	}
	for _, s := range o.sections {
		if len(s.free) > 0 {
			part()
			w.lines(depth, w.p.texts(s.free)...)
		}
		for _, g := range s.groups {
			part()
			for _, x := range g.attrs {
				w.attr(x, o.of, depth)
			}
			w.lines(depth, w.p.texts(g.tail)...)
		}
		for i, x := range s.blocks {
			if i == 0 || x.blank || !x.inner.oneLine || !s.blocks[i-1].inner.oneLine {
				part()
			}
			w.block(x, depth)
		}
	}
	w.lines(depth, w.p.texts(o.end)...)
}

// attr writes an attribute.
func (w *writer) attr(x *thing, of *schema.Block, depth int) {
	if len(x.lead) > 0 {
		w.lines(depth, w.p.texts(x.lead)...)
	}
	trail, rest := w.p.text(x.trail), ""
	if g, ok := w.p.gapIn(int(x.attr.NameAt.End), int(x.attr.Value.At.Start), true, "="); ok && g.trail.to == 0 && len(g.runs) == 0 {
		rest = "= " + w.p.value(&x.attr.Value, described(of, x.attr.Name), depth)
	} else {
		rest = strings.TrimLeft(clean(w.p.src[x.attr.NameAt.End:x.attr.At.End]), " \t")
	}
	if strings.Contains(rest+trail, "\n") {
		w.lines(depth, joined(x.attr.Name, rest, trail))
		return
	}
	w.add(depth, line{x.attr.Name, rest, trail})
}

// joined are texts with a blank between them, where they are not empty.
func joined(texts ...string) string {
	var all []string
	for _, t := range texts {
		if t = strings.TrimLeft(t, " \t"); t != "" {
			all = append(all, t)
		}
	}
	return strings.Join(all, " ")
}

// block writes a block.
func (w *writer) block(x *thing, depth int) {
	if len(x.lead) > 0 {
		w.lines(depth, w.p.texts(x.lead)...)
	}
	head, trail := w.p.head(x.block, x.inner), w.p.text(x.trail)
	switch {
	case x.inner.oneLine && !strings.Contains(head+trail, "\n"):
		w.add(depth, line{head, w.p.braces(x.block, x.inner.of), trail})
	default:
		w.lines(depth, joined(head, "{", w.p.text(x.inner.trail)))
		w.body(x.inner, depth+1)
		w.lines(depth, joined("}", trail))
	}
	if len(x.tail) > 0 {
		w.lines(depth, w.p.texts(x.tail)...)
	}
}

// braces is a block that stands on one line, from its { on.
func (p *page) braces(b *syntax.Block, of *schema.Block) string {
	if len(b.Attrs) == 0 {
		return "{}"
	}
	a := &b.Attrs[0]
	return "{ " + a.Name + " = " + p.value(&a.Value, described(of, a.Name), 0) + " }"
}

// head is the type and the name of a block.
func (p *page) head(b *syntax.Block, o *body) string {
	at := int(b.TypeAt.End)
	out := b.Type
	for _, l := range b.Labels {
		g, ok := p.gapIn(at, int(l.At.Start), true, "")
		if !ok || g.trail.to > 0 || len(g.runs) > 0 {
			return clean(p.src[b.TypeAt.Start:o.from])
		}
		label := string(p.src[l.At.Start:l.At.End])
		if !strings.HasPrefix(label, `"`) {
			label = `"` + label + `"`
		}
		out += " " + label
		at = int(l.At.End)
	}
	if g, ok := p.gapIn(at, o.from, true, ""); !ok || g.trail.to > 0 || len(g.runs) > 0 {
		return clean(p.src[b.TypeAt.Start:o.from])
	}
	return out
}
