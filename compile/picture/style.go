package picture

import (
	"strconv"
	"strings"

	"vivary/schema"
)

// Colours differ in lightness first, so that they part in grey and for eyes that
// do not tell red from green; what they mean is also said by pattern, line or word.
const (
	ink       = "#1a1a1a"
	warm      = "#f2a33a" // light orange
	warmLine  = "#8a4b00"
	cool      = "#1b4f8f" // dark blue
	past      = "#f0f0f0"
	roomFill  = "#e2e2e2"
	gridLine  = "#c8c8c8"
	paleFill  = "#fff6e6"
	frameLine = "#555"
)

// patterns defines the hatchings. Each is see-through, so that several can lie
// over each other.
func patterns(d *canvas) {
	d.begin("defs")
	pattern := func(id string, step float64, style ...string) {
		units := []string{`id="` + id + `"`, `patternUnits="userSpaceOnUse"`}
		d.begin("pattern", with(append(units, style...), "x y width height", 0, 0, step, step)...)
	}
	hatch := func(id string, step float64, path, colour string, wide string) {
		pattern(id, step, `fill="none"`)
		d.path(path, `stroke="`+colour+`"`, `stroke-width="`+wide+`"`)
		d.end("pattern")
	}
	hatch("harm", 6, "M-1 1L1 -1M0 6L6 0M5 7L7 5", ink, "1.3")
	hatch("cool", 5, "M-1 4L1 6M0 0L5 5M4 -1L6 1", cool, "1.7")
	hatch("no-meals", 7, "M-1 1L1 -1M0 7L7 0M6 8L8 6", "#333", "1.1")
	hatch("no-misting", 6, "M3 0L3 6", "#333", "1")
	hatch("no-heating", 5, "M0 2.5L5 2.5", "#333", "1")
	for _, dots := range []struct{ id, colour string }{{"no-digging", "#333"}, {"night", ink}} {
		pattern(dots.id, 5)
		d.circle(2.5, 2.5, 1, `fill="`+dots.colour+`"`)
		d.end("pattern")
	}
	d.end("defs")
}

// holding is what a hold takes out, its pattern and its words.
var holding = []struct {
	row            schema.Row
	pattern, words string
}{
	{schema.RowKilled, "no-meals", "no meals"},
	{schema.RowDeep, "no-digging", "left alone"},
	{schema.RowMist, "no-misting", "no misting"},
	{schema.RowDevice, "no-heating", "heaters off"},
}

func fill(pattern string) string { return `fill="url(#` + pattern + `)"` }

// path writes the commands of a path.
type path struct{ strings.Builder }

func (b *path) to(command byte, x, y float64) {
	b.WriteByte(command)
	b.WriteString(strconv.FormatFloat(x, 'f', 1, 64))
	b.WriteByte(' ')
	b.WriteString(strconv.FormatFloat(y, 'f', 1, 64))
}
