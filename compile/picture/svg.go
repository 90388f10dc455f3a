package picture

import (
	"bytes"
	"encoding/xml"
	"strconv"
	"strings"
)

// mark begins every picture of ours, and nothing else: whoever is to write over a file
// knows by it that nobody else made it. A picture that another program has changed and
// saved is that program's.
const mark = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<!-- vivary: the year of an enclosure -->\n"

// Ours reports whether a text is a picture that this package wrote, as it wrote it.
func Ours(text []byte) bool { return bytes.HasPrefix(text, []byte(mark)) }

// canvas writes the few elements of SVG 1.1 of which a picture is made. Coordinates have
// one digit after the point, a 40th of a millimetre on paper; attributes come as they
// stand in the file, name="value".
type canvas struct{ out bytes.Buffer }

// begin opens an element, end closes one, and empty is one that holds nothing.
func (c *canvas) begin(name string, attrs ...string) { c.open(name, attrs, ">\n") }

func (c *canvas) end(name string) { c.out.WriteString("</" + name + ">\n") }

func (c *canvas) empty(name string, attrs ...string) { c.open(name, attrs, "/>\n") }

func (c *canvas) open(name string, attrs []string, close string) {
	c.out.WriteString("<" + name)
	for _, a := range attrs {
		c.out.WriteString(" " + a)
	}
	c.out.WriteString(close)
}

// words is an element that holds a text, whatever stands in it.
func (c *canvas) words(name, s string, attrs ...string) {
	c.open(name, attrs, ">")
	_ = xml.EscapeText(&c.out, []byte(s)) // a buffer takes all
	c.end(name)
}

func (c *canvas) rect(x, y, width, height float64, style ...string) {
	c.empty("rect", with(style, "x y width height", x, y, width, height)...)
}

func (c *canvas) line(x1, y1, x2, y2 float64, style ...string) {
	c.empty("line", with(style, "x1 y1 x2 y2", x1, y1, x2, y2)...)
}

func (c *canvas) circle(x, y, r float64, style ...string) {
	c.empty("circle", with(style, "cx cy r", x, y, r)...)
}

func (c *canvas) path(d string, style ...string) {
	c.empty("path", append([]string{`d="` + d + `"`}, style...)...)
}

func (c *canvas) text(x, y float64, s string, style ...string) {
	c.words("text", s, with(style, "x y", x, y)...)
}

// with puts coordinates before a style, each by its name.
func with(style []string, names string, at ...float64) []string {
	out := make([]string, 0, len(at)+len(style))
	for i, name := range strings.Fields(names) {
		out = append(out, name+`="`+strconv.FormatFloat(at[i], 'f', 1, 64)+`"`)
	}
	return append(out, style...)
}
