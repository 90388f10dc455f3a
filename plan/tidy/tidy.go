// Package tidy lays out the text of a plan: attributes and blocks in the order of the schema,
// one spelling of values, even blanks and line ends; every comment where it belongs. It changes
// no meaning, and mends no mistake: what cannot be read stays as it is, to the byte.
//
// An outermost block is laid out by itself. Its order among the others is the keeper's: rooms
// and tanks stand in a file as somebody walks past them. Within a block a comment that stands
// by itself divides it, and nothing moves past it; a blank line between attributes makes groups
// of them, and each is put in order by itself.
package tidy

import (
	"bytes"

	"vivary/plan"
	"vivary/plan/finding"
	"vivary/plan/source"
)

// Text returns the text of a plan file as it is when it is tidy, and what of it cannot be
// read, at its places in file id. Of a file in which an outermost block cannot be read all
// others are laid out; one of which more is not understood comes back as it is.
func Text(id source.ID, text []byte) ([]byte, []finding.Finding) {
	p, found := laidOut(id, text)
	if p == nil {
		return text, found
	}
	return p.joined(), found
}

// Edits returns the changes that make a text tidy, in the order of their places: whole lines,
// and of them no more than it takes. Of a place of the text they are those of the outermost
// blocks, with the comments on them, that it touches; all of them where the place is nowhere,
// the zero Place. None are returned for what Text leaves as it is.
func Edits(id source.ID, text []byte, within source.Place) []finding.Edit {
	p, _ := laidOut(id, text)
	if p == nil {
		return nil
	}
	return p.edits(id, within)
}

// laidOut lays out a text; nil where it is left as it is.
func laidOut(id source.ID, text []byte) (*page, []finding.Finding) {
	o := plan.TreeOf(id, text)
	if o.Unfit {
		return nil, o.Found
	}
	p := &page{src: text}
	if !p.layOut(o) {
		return nil, o.Found
	}
	size := 0
	for _, s := range p.all {
		size += len(s.text) + 2
	}
	if size > plan.MaxFile {
		return nil, append(o.Found, plan.TooLarge(id))
	}
	return p, o.Found
}

// page is a file that is laid out.
type page struct {
	src []byte
	all []stretch
}

// stretch is a part of the file as it was and as it is to be: an outermost block with the
// comments on it, comments that stand by themselves, or what is left as it is. Between two
// stretches stands nothing but blanks and ends of lines.
type stretch struct {
	from, to int    // in the text, without the end of its last line
	text     string // to be, without the end of its last line
	close    bool   // no blank line stands before it
}

// between is what stands before a stretch of a tidy file.
func (s *stretch) between(first bool) string {
	switch {
	case first:
		return ""
	case s.close:
		return "\n"
	}
	return "\n\n"
}

func (p *page) joined() []byte {
	var out bytes.Buffer
	for i := range p.all {
		out.WriteString(p.all[i].between(i == 0))
		out.WriteString(p.all[i].text)
	}
	out.WriteByte('\n')
	return out.Bytes()
}
