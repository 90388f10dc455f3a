package compare

import (
	"bufio"
	"fmt"
	"io"
	"strings"
)

// A usual change is read to its end on one screen: of each part so many lines are told, and of a
// section so many parts, and how many more there are.
const (
	shownParts = 8
	shownLines = 6
)

// Print writes a report for a terminal. whole tells everything, however much it is.
func (r *Report) Print(w io.Writer, whole bool) error {
	out := bufio.NewWriter(w)
	fmt.Fprintf(out, "%s.\n", r.Sum())
	for _, s := range r.Sections() {
		fmt.Fprintf(out, "\n%s\n", s.Head)
		parts, more := s.Parts, 0
		if !whole && len(parts) > shownParts {
			parts, more = parts[:shownParts-1], len(parts)-shownParts+1
		}
		for _, p := range parts {
			p.print(out, whole)
		}
		if more > 0 {
			fmt.Fprintf(out, "  and %d more of the kind: all of it with --whole\n", more)
		}
	}
	return out.Flush()
}

func (p *Part) print(out *bufio.Writer, whole bool) {
	indent := "  "
	for _, c := range p.Cause {
		fmt.Fprintf(out, "  %s\n", c)
		indent = "    "
	}
	lines, more := p.Lines, 0
	if !whole && len(lines) > shownLines {
		lines, more = lines[:shownLines-1], len(lines)-shownLines+1
	}
	for _, l := range lines {
		where := l.Where
		if where != "" {
			where += ": "
		}
		fmt.Fprintf(out, "%s%s%s\n", indent, where, l.Text)
		if whole {
			for _, u := range l.Under {
				fmt.Fprintf(out, "%s  %s\n", indent, u)
			}
		}
		if whole && l.Was+l.Is != "" {
			fmt.Fprintf(out, "%s  was %s\n%s  is  %s\n", indent, l.Was, indent, l.Is)
		}
	}
	if more > 0 {
		fmt.Fprintf(out, "%sand %d more: all of it with --whole\n", indent, more)
	}
}

// Markdown writes a report for a comment on a change: what harms stands open, and all else is
// short, with the details folded.
func (r *Report) Markdown(w io.Writer, title string) error {
	out := bufio.NewWriter(w)
	fmt.Fprintf(out, "### %s\n\n**%s.**\n", escaped(title), escaped(r.Sum()))
	sections := r.Sections()
	for _, s := range sections {
		fmt.Fprintf(out, "\n#### %s\n\n", s.Head)
		n := 0
		for _, p := range s.Parts {
			if n++; n == shownParts && len(s.Parts) > shownParts {
				fmt.Fprintf(out, "- and %d more, below\n", len(s.Parts)-n+1)
				break
			}
			p.markdown(out)
		}
	}
	if r.details() {
		fmt.Fprint(out, "\n<details>\n<summary>All of it, with the weeks of the coming year</summary>\n\n```\n")
		fmt.Fprint(out, "A letter is a week, from · for no day to █ for seven.\n")
		var whole strings.Builder
		_ = r.Print(&whole, true)
		fmt.Fprint(out, strings.ReplaceAll(whole.String(), "```", "'''"))
		fmt.Fprint(out, "```\n\n</details>\n")
	}
	return out.Flush()
}

// details reports whether there is more to tell than stands open.
func (r *Report) details() bool { return len(r.Effects)+len(r.Care) > 0 }

func (p *Part) markdown(out *bufio.Writer) {
	indent := ""
	for _, c := range p.Cause {
		if place, text, placed := strings.Cut(c, "  "); placed {
			fmt.Fprintf(out, "- `%s` %s\n", strings.ReplaceAll(place, "`", "'"), escaped(text))
		} else {
			fmt.Fprintf(out, "- %s\n", escaped(c))
		}
		indent = "  "
	}
	for n, l := range p.Lines {
		if n == shownLines-1 && len(p.Lines) > shownLines {
			fmt.Fprintf(out, "%s- and %d more, below\n", indent, len(p.Lines)-n)
			return
		}
		where := ""
		if l.Where != "" {
			where = "**" + escaped(l.Where) + "**: "
		}
		fmt.Fprintf(out, "%s- %s%s\n", indent, where, escaped(l.Text))
	}
}

// escaped is a text that a page shows as it is: nothing in it is a mark, an address or somebody
// who is called.
func escaped(s string) string {
	var out strings.Builder
	for i, c := range s {
		switch {
		case strings.ContainsRune("\\`*_[]|~", c):
			out.WriteByte('\\')
			out.WriteRune(c)
		case c == '<':
			out.WriteString("&lt;")
		case c == '>':
			out.WriteString("&gt;")
		case c == '&':
			out.WriteString("&amp;")
		case c == '@', c == '#': // nobody of that name is called, and no thread of that number named
			out.WriteRune(c)
			out.WriteString(apart)
		case c == ':' && strings.HasPrefix(s[i:], "://"), c == '.' && strings.HasSuffix(strings.ToLower(s[:i]), "www"):
			out.WriteRune(c)
			out.WriteString(apart)
		default:
			out.WriteRune(c)
		}
	}
	return out.String()
}

// apart is a character without width. A page looks for names and addresses after it has read what
// is escaped, so that only something between keeps them from being found.
const apart = "&#8203;"
