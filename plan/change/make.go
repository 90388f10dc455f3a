package change

import (
	"bytes"
	"slices"
	"strings"

	"vivary/plan/finding"
	"vivary/plan/source"
)

// outer are blocks that others name: where a piece names one that came with another piece, it
// cannot be made without that.
var outer = []string{"room", "keeper", "round", "rack", "template", "dates", "contact", "seller", "supply", "tub", "culture", "species", "feeder", "source"}

// With returns the texts of the files that differ from those of the first collection once some
// of the pieces are made in it, by their places in Pieces; a new file among them by its name. What
// a piece names and another piece brings is made too. False is returned where the pieces cannot
// be made together.
func (c *Changes) With(pieces ...int) (map[string][]byte, bool) {
	pieces = c.needed(pieces)
	edits := map[source.ID][]finding.Edit{}
	adds := map[string]string{}
	for _, i := range pieces {
		for _, e := range c.Pieces[i].edits {
			edits[e.At.File] = append(edits[e.At.File], e)
		}
		for _, x := range c.Pieces[i].adds {
			adds[x.file] += x.text
		}
	}
	out := make(map[string][]byte, len(edits)+len(adds))
	for id, of := range edits {
		text, err := finding.Apply(c.a.Files.Text(id), of)
		if err != nil {
			return nil, false
		}
		out[c.a.Files.Name(id)] = text
	}
	was := texts(c.a)
	for name, more := range adds {
		text, begun := out[name]
		if !begun {
			text = was[name].text
		}
		if len(text) > 0 && text[len(text)-1] != '\n' {
			more = "\n" + more
		}
		out[name] = append(slices.Clip(text), more...)
	}
	for name, text := range out {
		if len(bytes.TrimSpace(text)) == 0 {
			out[name] = []byte("# nothing\n") // a file that holds nothing is a finding
		}
	}
	return out, true
}

// needed adds to pieces those that bring what they name: blocks that others name, names that were
// changed, and the enclosures that lines of a log are about.
func (c *Changes) needed(pieces []int) []int {
	out := slices.Clone(pieces)
	made := make([]bool, len(c.Pieces))
	for _, i := range out {
		made[i] = true
	}
	var bring []int
	for i := range c.Pieces {
		if c.Pieces[i].brings() && !made[i] {
			bring = append(bring, i)
		}
	}
	for k := 0; k < len(out); k++ {
		p := &c.Pieces[out[k]]
		for _, i := range bring {
			if !made[i] && p.names(&c.Pieces[i]) {
				made[i] = true
				out = append(out, i)
			}
		}
	}
	slices.Sort(out)
	return out
}

// brings reports whether a piece brings a name that others may stand for.
func (p *Piece) brings() bool {
	return len(p.In) == 0 && (p.Attr == "name" && p.Before != "" || p.Attr == "" && !p.Was.Written() && (slices.Contains(outer, p.Type) || p.Type == "enclosure"))
}

// names reports whether a piece names what another brings.
func (p *Piece) names(q *Piece) bool {
	if p.Log() {
		return p.Name == q.Name || slices.ContainsFunc(p.Lines, func(l Side) bool { return slices.Contains(strings.Fields(l.Text), q.Name) })
	}
	return strings.Contains(p.Is.Text, `"`+q.Name+`"`)
}
