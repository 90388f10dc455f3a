// Package paper makes everything that is printed: the sheet of a round, the sheet of somebody
// who stands in, labels for tanks, cards for emergencies. A document is a value; it is written as a page of HTML that
// any browser prints, and as plain text. What stands on paper is concluded elsewhere: a plan,
// its lists of days, the table of states.
//
// Another document is a file of its own with a function that returns a Document of the parts
// in parts.go; a part that none of these is goes there, with its form in HTML, in text, and in
// paper.css.
package paper

import (
	"bytes"
	_ "embed"
	"io"

	"vivary/compile"
	"vivary/schema/civil"
	"vivary/schema/wording"
)

// Document is something to be printed.
type Document struct {
	Title  string // as a window shows it
	Sheets []Sheet

	letter bool   // it is printed on US letter paper, else on A4
	stamp  string // as of when the plan is
}

// Sheet begins on a page of its own.
type Sheet struct {
	Head  string // runs at the head of each of its pages: what it is, and for which day
	Parts []Part
	// Large is read from a wall by somebody who is afraid: nothing on it is small.
	Large bool
	// Bare has no running head: labels, which are cut out and have a stamp each.
	Bare bool
}

// Part is a part of a sheet. Those there are stand in parts.go.
type Part interface {
	html(*markup)
	text(*plain)
}

// document begins a document of a collection.
func document(r *compile.Result, title string) *Document {
	d := &Document{Title: title, letter: r.Plan.Letter(), stamp: "Plan of " + r.Today.Words() + ", " + wording.Clock(civil.Clock(r.Now.Hour()*60+r.Now.Minute()), r.Plan.Units)}
	return d
}

// add adds a sheet.
func (d *Document) add(head string, parts ...Part) {
	d.Sheets = append(d.Sheets, Sheet{Head: head, Parts: parts})
}

// CSS is how all documents look, on paper and on a screen. A server whose pages may hold no
// style of their own serves it under an address.
//
//go:embed paper.css
var CSS []byte

// Options say how a document is written as HTML.
type Options struct {
	// Style is the address of CSS; where it is "" the page holds all of it, so that it is
	// one file.
	Style string
	// Before is put at the beginning of the body, where it is not printed: a page's way back.
	// It is HTML.
	Before string
}

// mark begins every document that is written as HTML, and nothing else: whoever is to write
// over a file knows by it that nobody else made it.
const mark = "<!DOCTYPE html>\n<!-- vivary: to be printed -->\n"

// Ours reports whether a text is a document that this package wrote, as it wrote it.
func Ours(text []byte) bool { return bytes.HasPrefix(text, []byte(mark)) }

// HTML writes the document as a page of HTML. The same document gives the same bytes.
func (d *Document) HTML(w io.Writer, o Options) error {
	m := &markup{}
	m.raw(mark + `<html lang="en">` + "\n<head>\n" + `<meta charset="utf-8">` + "\n" + `<meta name="viewport" content="width=device-width, initial-scale=1">` + "\n")
	m.words("title", "", d.Title)
	if o.Style == "" {
		m.raw("\n<style>\n" + string(CSS) + "</style>\n")
	} else {
		m.raw("\n" + `<link rel="stylesheet" href="` + escape(o.Style) + "\">\n")
	}
	size := "a4"
	if d.letter {
		size = "letter"
	}
	m.raw("</head>\n" + `<body class="` + size + "\">\n")
	if o.Before != "" {
		m.raw(`<div class="screen">` + o.Before + "</div>\n")
	}
	for i := range d.Sheets {
		d.Sheets[i].html(m, d.stamp)
	}
	m.raw("</body>\n</html>\n")
	_, err := w.Write(m.out.Bytes())
	return err
}

func (s *Sheet) html(m *markup, stamp string) {
	if s.Bare {
		m.open("section", "sheet bare")
	} else {
		class := "sheet"
		if s.Large {
			class += " large"
		}
		m.open("section", class)
		// Rows at the head and the foot of a table come again on each page; a header does not.
		m.open("div", "head")
		m.open("div", "running")
		m.words("span", "what", s.Head)
		m.words("span", "stamp", stamp)
		m.close("div")
		m.open("div", "space")
		m.close("div")
		m.close("div")
		m.open("div", "body")
	}
	for _, p := range s.Parts {
		p.html(m)
	}
	if !s.Bare {
		m.close("div")
	}
	m.close("section")
}

// Text writes the document as plain text, for a terminal.
func (d *Document) Text(w io.Writer) error {
	p := &plain{}
	for i := range d.Sheets {
		if i > 0 {
			p.line("")
			p.line(rule)
		}
		if !d.Sheets[i].Bare {
			p.line(d.Sheets[i].Head)
		}
		for _, part := range d.Sheets[i].Parts {
			part.text(p)
		}
	}
	p.line("")
	p.line(d.stamp)
	_, err := w.Write(p.out.Bytes())
	return err
}
