package tidy

import (
	"bytes"
	"strings"
)

// gap is what stands between two things that mean something: comments, blanks and ends of
// lines.
type gap struct {
	trail run   // comments behind the thing before, on its line
	runs  []run // comments on lines of their own
	blank bool  // a blank line stands before the thing behind
	lines int   // how many lines end in it
}

// run is comments on one line, with nothing else between them.
type run struct {
	from, to int
	blank    bool // a blank line stands before it
}

// gapIn reads what stands from one byte to another. after says that something stands before it
// on its line; of the characters of marks, such as a comma, some may stand in it. ok is false
// where anything else does.
func (p *page) gapIn(from, to int, after bool, marks string) (g gap, ok bool) {
	ended := 0 // lines since the last comment, or since what stands before
	if !after {
		ended = 1
	}
	for i := from; i < to; {
		switch c := p.src[i]; {
		case c == '\n':
			ended++
			g.lines++
			i++
		case c == ' ' || c == '\t' || c == '\r' || strings.IndexByte(marks, c) >= 0:
			i++
		case c == '#' || c == '/':
			end := p.comment(i, to)
			if end < 0 || !g.add(p.src, i, end, ended) {
				return g, false
			}
			ended, i = 0, end
		default:
			return g, false
		}
	}
	g.blank = ended > 1
	return g, true
}

// comment returns where a comment ends that begins at a byte, or -1 where none does.
func (p *page) comment(from, to int) int {
	rest := p.src[from:to]
	switch {
	case rest[0] == '#' || bytes.HasPrefix(rest, []byte("//")):
		if i := bytes.IndexByte(rest, '\n'); i >= 0 {
			return from + i
		}
		return to
	case bytes.HasPrefix(rest, []byte("/*")):
		if i := bytes.Index(rest[2:], []byte("*/")); i >= 0 {
			return from + 2 + i + 2
		}
	}
	return -1
}

// add takes a comment, before which so many lines have ended since the last thing. It returns
// false where it stands behind another on a line, and a mark between the two.
func (g *gap) add(src []byte, from, to, ended int) bool {
	if ended > 0 {
		g.runs = append(g.runs, run{from, to, ended > 1})
		return true
	}
	on := &g.trail
	if n := len(g.runs); n > 0 {
		on = &g.runs[n-1]
	}
	if on.to == 0 {
		on.from, on.to = from, to
		return true
	}
	between := src[on.to:from]
	on.to = to
	return len(bytes.TrimLeft(between, " \t\r")) == 0
}

// clean is a text as it stands, without blanks at the ends of its lines, which all end alike.
func clean(b []byte) string {
	if bytes.IndexByte(b, '\n') < 0 {
		return string(bytes.TrimRight(b, " \t\r"))
	}
	var out []byte
	for line := range bytes.SplitSeq(b, []byte{'\n'}) {
		out = append(append(out, bytes.TrimRight(line, " \t\r")...), '\n')
	}
	return string(out[:len(out)-1])
}

// groups are the runs parted by blank lines.
func (g *gap) groups() (all [][]run) {
	for i, r := range g.runs {
		if i == 0 || r.blank {
			all = append(all, nil)
		}
		all[len(all)-1] = append(all[len(all)-1], r)
	}
	return all
}

// parted says of the comments in a gap where they belong.
type parted struct {
	tail []run   // right beneath the thing before
	free [][]run // by themselves
	lead []run   // right above the thing behind
}

// part says where they belong. first says that nothing stands before the gap, and last that
// nothing stands behind it.
func (g *gap) part(first, last bool) (p parted) {
	all := g.groups()
	if n := len(all); n > 0 && !g.blank && !last {
		p.lead, all = all[n-1], all[:n-1]
	}
	if len(all) > 0 && !all[0][0].blank && !first {
		p.tail, all = all[0], all[1:]
	}
	p.free = all
	return p
}

func (p *page) text(r run) string { return clean(p.src[r.from:r.to]) }

func (p *page) texts(runs []run) (all []string) {
	for _, r := range runs {
		all = append(all, p.text(r))
	}
	return all
}
