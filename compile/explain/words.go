package explain

import (
	"strings"
	"unicode/utf8"

	"vivary/plan"
)

// heading is a word as it begins a line.
func heading(word string) string { return strings.ToUpper(word[:1]) + word[1:] }

// means reports whether a word that somebody typed is one of these names, whatever
// its capitals, and with spaces or hyphens.
func means(word string, names ...string) bool {
	for _, n := range names {
		if n != "" && alike(word, n) {
			return true
		}
	}
	return false
}

// alike reports whether plain makes the same of two words.
func alike(a, b string) bool {
	if len(a) != len(b) {
		return plain(a) == plain(b) // letters beyond ASCII have small ones of other lengths
	}
	for i := range len(a) {
		x, y := a[i], b[i]
		switch {
		case x >= utf8.RuneSelf || y >= utf8.RuneSelf:
			return plain(a) == plain(b)
		case x == y, plainByte(x) == plainByte(y):
		default:
			return false
		}
	}
	return true
}

func plainByte(c byte) byte {
	switch {
	case c == ' ':
		return '-'
	case 'A' <= c && c <= 'Z':
		return c + 'a' - 'A'
	}
	return c
}

func plain(s string) string { return strings.ReplaceAll(strings.ToLower(s), " ", "-") }

// texts are the words of a list.
func texts(list []plan.Written[string]) []string {
	var out []string
	for _, w := range list {
		out = append(out, w.V)
	}
	return out
}

// holding is the name of a fact with the stages that it holds for.
func holding(name string, stages []plan.Written[string]) string {
	if len(stages) == 0 {
		return name
	}
	return name + " (" + strings.Join(texts(stages), ", ") + ")"
}

// cited says whose word a fact is, what others say, and what is noted of it.
func cited(l *plan.Library, c plan.Cited, disputed, note string) []string {
	out := []string{l.Cite(c)}
	if disputed != "" {
		out = append(out, "others: "+disputed)
	}
	if note != "" {
		out = append(out, "note: "+note)
	}
	return out
}

// gather puts the names of which the same is said into one line each, in the order
// in which they come.
type gather struct {
	said  []string
	names map[string][]string
}

func (g *gather) add(name, said string) {
	if g.names == nil {
		g.names = map[string][]string{}
	}
	names := g.names[said]
	if len(names) == 0 {
		g.said = append(g.said, said)
	}
	if len(names) == 0 || names[len(names)-1] != name {
		g.names[said] = append(names, name)
	}
}

// lines are the names with what is said of them.
func (g *gather) lines() []Line {
	var out []Line
	for _, s := range g.said {
		out = append(out, Line{Text: strings.Join(g.names[s], ", ") + ": " + s})
	}
	return out
}

// part adds a part to those of an answer, unless it is empty.
func part(to []Part, head string, lines []Line) []Part {
	if len(lines) == 0 {
		return to
	}
	return append(to, Part{Head: head, Lines: lines})
}

// plainly makes lines of texts.
func plainly(all []string) []Line {
	var out []Line
	for _, s := range all {
		out = append(out, Line{Text: s})
	}
	return out
}
