// Package assist says what may be written where a keeper types, and what a word in a plan or a
// log means. It works on the text as it is at that moment, half a line included, and knows no
// editor and no protocol; what is right or wrong in a plan it leaves to package check.
package assist

import (
	"strings"

	"vivary/compile"
	"vivary/plan"
)

// Page is a file as somebody edits it, with what is known of the collection around it.
type Page struct {
	// Name is that of the file as Result.Plan.Files names it, with slashes; it ends in
	// plan.PlanSuffix or plan.LogSuffix.
	Name string
	// Text is what is typed now. Result may be of a moment before: no place in it is one of
	// Text.
	Text []byte
	// Result is never nil. Where the plan is not understood it has no Roster.
	Result *compile.Result
}

// Edit puts Text in the place of the bytes from Start to End of a page's text.
type Edit struct {
	Start, End int
	Text       string
}

// OfferKind is the sort of thing that an offer is, by which an editor draws it.
type OfferKind uint8

// The sorts of offers.
const (
	KindBlock     OfferKind = iota // a type of block
	KindAttribute                  // the name of an attribute
	KindChoice                     // one of the words that an attribute allows
	KindName                       // something of the collection: a room, a keeper, an enclosure
	KindKnown                      // something of the library: a species, a feeder, a figure, a rule
	KindValue                      // a value: a quantity, a day, a number
	KindUnit                       // a unit behind a number
	KindLogWord                    // a word of the log
)

// Offer is one thing that may be written at a place.
type Offer struct {
	Label  string // what a list shows, and what is looked for in it unless Filter is set
	Detail string // a few words beside it, on one line
	Doc    string // what it means, in markdown: a few lines
	Kind   OfferKind
	// Edit replaces what is typed of the word. With Snippet its text has tab stops in the
	// syntax of LSP's snippets, and Plain is the same without them.
	Edit    Edit
	Plain   string
	Snippet bool
	// Filter is what the word that is typed is compared with, where that is not the label: a
	// species is found by its trade name too. An editor that goes on by itself while more is
	// typed compares with it.
	Filter string
	Rank   int // 0 is the best
}

// Most is how many offers there are at most at one place. Where there are so many, more
// may fit: an editor asks again when more is typed.
const Most = 300

// Complete returns what may be written at a byte of the text, best first. It returns
// nothing where nothing can be told: in a remark, in a free text.
func (p *Page) Complete(at int) []Offer {
	at = min(max(at, 0), len(p.Text))
	if strings.HasSuffix(p.Name, plan.LogSuffix) {
		return p.completeLog(at)
	}
	w := p.at(at)
	o := &offers{page: p, from: w.from, to: w.to, typed: w.typed}
	switch w.place {
	case inBody:
		p.names(o, w)
	case inLabel:
		p.labels(o, w)
	case inValue:
		p.values(o, w)
	}
	return o.best()
}

// Indent returns the blanks with which the line of a byte begins. An offer of several lines is
// laid out as if its first line had none: whoever puts it in adds them to the others.
func (p *Page) Indent(at int) string {
	line := p.Text[lineStart(p.Text, min(max(at, 0), len(p.Text))):]
	n := 0
	for n < len(line) && (line[n] == ' ' || line[n] == '\t') {
		n++
	}
	return string(line[:n])
}

// lineStart returns where the line of a byte begins.
func lineStart[T ~string | ~[]byte](text T, at int) int {
	for at > 0 && text[at-1] != '\n' && text[at-1] != '\r' {
		at--
	}
	return at
}

// lineEnd returns where the line of a byte ends, without its end.
func lineEnd[T ~string | ~[]byte](text T, at int) int {
	for at < len(text) && text[at] != '\n' && text[at] != '\r' {
		at++
	}
	return at
}
