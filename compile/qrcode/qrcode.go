// Package qrcode makes a picture of an address that a phone's camera reads: a QR code
// (ISO/IEC 18004) in SVG, for paper and for pages. It has no style sheet and no script, so
// that a page which forbids both shows it.
package qrcode

import (
	"fmt"
	"strconv"
	"strings"

	"rsc.io/qr/coding"
)

// Wear is what a code has to bear.
type Wear int

const (
	// Clean is for a page, or a sheet that is kept dry: a seventh of it may be lost.
	Clean Wear = iota
	// Worn is for a label on a tub, which gets wet and scratched: nearly a third may be lost.
	Worn
)

// levels are the levels of error correction for each Wear.
var levels = [...]coding.Level{Clean: coding.M, Worn: coding.H}

// quiet is how many modules stay white on each side; the standard asks for four.
const quiet = 4

// longest is how many characters an address may have. A code of more would have modules that
// a phone cannot tell apart on paper.
const longest = 400

// Code is the code of an address.
type Code struct{ grid *coding.Code }

// Of returns the code of an address, which is of plain characters without spaces, as
// addresses are; else, and where it is longer than a phone could read, it is an error.
func Of(address string, wear Wear) (*Code, error) {
	if address == "" {
		return nil, fmt.Errorf("there is no address to make a code of")
	}
	if len(address) > longest {
		return nil, fmt.Errorf("an address of %d characters is too long for a code: at most %d", len(address), longest)
	}
	for _, r := range address {
		if r <= ' ' || r > '~' {
			return nil, fmt.Errorf("the address holds %q: an address is of plain letters, digits and signs without spaces; write other characters as %%20 and so on", r)
		}
	}
	text := coding.String(address)
	for v := coding.Version(coding.MinVersion); v <= coding.MaxVersion; v++ {
		if text.Bits(v) <= v.DataBytes(levels[wear])*8 {
			return best(text, v, levels[wear])
		}
	}
	return nil, fmt.Errorf("an address of %d characters is too long for a code", len(address))
}

// best returns the code with the mask that a reader is least confused by.
func best(text coding.Encoding, v coding.Version, level coding.Level) (*Code, error) {
	var found *Code
	least := 0
	for mask := coding.Mask(0); mask < 8; mask++ {
		plan, err := coding.NewPlan(v, level, mask)
		if err != nil {
			return nil, err
		}
		grid, err := plan.Encode(text)
		if err != nil {
			return nil, err
		}
		c := &Code{grid}
		if n := c.penalty(); found == nil || n < least {
			found, least = c, n
		}
	}
	return found, nil
}

// Modules is how many squares it has on a side, the white ones around it among them.
func (c *Code) Modules() int { return c.grid.Size + 2*quiet }

// Black reports whether the square in a column and a row is black, both from 0 at the top
// left, the white ones around it counted.
func (c *Code) Black(x, y int) bool { return c.grid.Black(x-quiet, y-quiet) }

// Screen writes it for a screen, no wider than so many pixels unless there are more squares:
// each takes the same whole number of pixels. About says in words what it leads to.
func (c *Code) Screen(pixels int, about string) string {
	return c.svg(strconv.Itoa(max(1, pixels/c.Modules())*c.Modules()), about)
}

// dots is how many dots a printer has in an inch, at the least: a square that takes a whole
// number of them has sharp edges.
const dots = 300

// least is how many dots wide a square is at the least: a quarter of a millimetre, which
// phones were seen to read at a hand's width.
const least = 3

// Print writes it for paper, no wider than so many millimetres, and reports whether its
// squares are large enough there for a phone.
func (c *Code) Print(millimetres float64, about string) (string, bool) {
	n := int(millimetres / 25.4 * dots / float64(c.Modules()))
	inches := float64(max(1, n)*c.Modules()) / dots
	return c.svg(strconv.FormatFloat(inches*25.4, 'f', 3, 64)+"mm", about), n >= least
}

// svg is one path of runs of black squares.
func (c *Code) svg(side, about string) string {
	n := strconv.Itoa(c.Modules())
	var b strings.Builder
	b.WriteString(`<svg xmlns="http://www.w3.org/2000/svg" width="` + side + `" height="` + side + `" viewBox="0 0 ` + n + " " + n +
		`" shape-rendering="crispEdges" role="img"><title>` + escape.Replace(about) + `</title><path fill="#fff" d="M0 0h` + n + "v" + n + "h-" + n + `z"/><path fill="#000" d="`)
	for y := range c.Modules() {
		for x := 0; x < c.Modules(); x++ {
			from := x
			for c.Black(x, y) {
				x++
			}
			if x > from {
				run := strconv.Itoa(x - from)
				b.WriteString("M" + strconv.Itoa(from) + " " + strconv.Itoa(y) + "h" + run + "v1h-" + run + "z")
			}
		}
	}
	b.WriteString(`"/></svg>`)
	return b.String()
}

var escape = strings.NewReplacer("&", "&amp;", "<", "&lt;", ">", "&gt;", `"`, "&#34;")
