package tidy

import (
	"strings"

	"vivary/plan"
	"vivary/plan/syntax"
	"vivary/schema"
)

// value is a value as a tidy plan has it. Where it has several lines, all but the first are
// indented as those of an attribute at a depth are.
func (p *page) value(v *syntax.Value, of *schema.Attr, depth int) string {
	typed := clean(p.src[v.At.Start:v.At.End])
	switch {
	case v.Kind == syntax.Text && !v.Filled && of != nil:
		if better := plan.Spelt(of, v.Text); better != v.Text {
			return `"` + better + `"`
		}
	case v.Kind == syntax.List:
		if l, ok := p.list(v, of); ok {
			return l.text(depth)
		}
	}
	return typed
}

// list is a list as it is to be written.
type list struct {
	trail  string // behind the [
	rows   []row
	closed []string // comments on lines of their own before the ]
	over   bool     // several lines
}

// row is what stands on a line of a list.
type row struct {
	above []string // comments on lines of their own
	blank bool     // a blank line stands above
	items []string
	trail string
}

// list reads a list. ok is false for one with lists in it, or with comments in odd places.
func (p *page) list(v *syntax.Value, of *schema.Attr) (l list, ok bool) {
	at := int(v.At.Start) + 1
	var last *row
	for i := range len(v.Items) + 1 {
		to := int(v.At.End) - 1
		if i < len(v.Items) {
			to = int(v.Items[i].At.Start)
		}
		g, ok := p.gapIn(at, to, true, ",")
		if !ok || g.odd(p) || i < len(v.Items) && v.Items[i].Kind == syntax.List {
			return l, false
		}
		l.over = l.over || g.lines > 0
		trail := p.text(g.trail)
		if last == nil {
			l.trail = trail
		} else if trail != "" {
			last.trail = trail
		}
		if i == len(v.Items) {
			l.closed = p.texts(g.runs)
			break
		}
		if last == nil || g.lines > 0 {
			l.rows = append(l.rows, row{above: p.texts(g.runs), blank: last != nil && (g.blank || len(g.runs) > 0 && g.runs[0].blank)})
			last = &l.rows[len(l.rows)-1]
		}
		x := &v.Items[i]
		last.items = append(last.items, p.value(x, of, 0))
		at = int(x.At.End)
	}
	return l, l.over || len(l.closed) == 0
}

// odd reports whether a comment stands in a gap of a list where it cannot be written again: on
// one line between two things, or over several lines.
func (g *gap) odd(p *page) bool {
	return g.trail.to > 0 && (g.lines == 0 || strings.Contains(p.text(g.trail), "\n"))
}

// text is the list as it is written.
func (l *list) text(depth int) string {
	if !l.over || len(l.rows) == 0 && l.trail == "" && len(l.closed) == 0 {
		var all []string
		for _, r := range l.rows {
			all = append(all, r.items...)
		}
		return "[" + strings.Join(all, ", ") + "]"
	}
	var w writer
	w.lines(0, joined("[", l.trail))
	for _, r := range l.rows {
		if r.blank {
			w.flush()
			w.out.WriteByte('\n')
		}
		if len(r.above) > 0 {
			w.lines(depth+1, r.above...)
		}
		w.add(depth+1, line{rest: strings.Join(r.items, ", ") + ",", trail: r.trail})
	}
	w.lines(depth+1, l.closed...)
	w.lines(depth, "]")
	return strings.TrimSuffix(w.out.String(), "\n")
}
