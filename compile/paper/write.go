package paper

import (
	"bytes"
	"html"
	"strings"

	"vivary/schema/wording"
)

// markup writes the few elements of HTML of which a document is made. Whatever stands in a
// text of a plan, it is one line of characters that are seen.
type markup struct{ out bytes.Buffer }

func escape(s string) string { return html.EscapeString(wording.Line(s)) }

func (m *markup) raw(s string) { m.out.WriteString(s) }

// open opens an element of a class, "" for none.
func (m *markup) open(name, class string) {
	m.raw("<" + name)
	if class != "" {
		m.raw(` class="` + class + `"`)
	}
	m.raw(">\n")
}

func (m *markup) close(name string) { m.raw("</" + name + ">\n") }

// words is an element that holds a text, and nothing where there is none.
func (m *markup) words(name, class, text string) {
	if text == "" {
		return
	}
	m.raw("<" + name)
	if class != "" {
		m.raw(` class="` + class + `"`)
	}
	m.raw(">" + escape(text) + "</" + name + ">\n")
}

// plain writes lines of plain text.
type plain struct{ out bytes.Buffer }

// rule stands between two sheets.
const rule = "----------------------------------------------------------------------"

func (p *plain) line(s string) {
	p.out.WriteString(strings.TrimRight(wording.Line(s), " "))
	p.out.WriteByte('\n')
}

// gap is an empty line.
func (p *plain) gap() { p.out.WriteByte('\n') }
