package rounds

import (
	"slices"
	"strconv"

	"vivary/compile/horizon"
	"vivary/schema"
)

// caution is what to see to before some of the care of a round, with the places where that
// is on each day. It is one line for all of them: said at each of sixty tubs nobody would
// read it.
type caution struct {
	text string // as it begins a line
	line line
}

// caution finds what has to be seen to before the care of the round.
func (r *Round) caution() {
	for _, c := range schema.Cautions {
		x := caution{text: Before(c)}
		var days []horizon.Days
		for i := range r.items {
			it := &r.items[i]
			if !slices.Contains(it.Cautions, c) {
				continue
			}
			if n := len(days); n > 0 && x.line.cells[n-1].place == int32(it.Place) {
				days[n-1].Union(it.Days)
				continue
			}
			x.line.cells = append(x.line.cells, cell{place: int32(it.Place), item: int32(i)})
			days = append(days, it.Days.Clone())
		}
		if len(days) > 0 {
			x.line.fill(days, r.Horizon.Days)
			r.cautions = append(r.cautions, x)
		}
	}
}

// Before is a caution as it stands in a line of its own.
func Before(c *schema.Caution) string { return large(c.Text) }

// beforehand writes what to see to before the round, each thing once, with where.
func (r *Round) beforehand() {
	d := &r.day
	for i := range r.cautions {
		if d.full || r.cautions[i].line.count(d.on) == 0 {
			continue
		}
		d.begin("")
		d.dst = r.appendCaution(d.dst, &r.cautions[i])
		d.end()
	}
}

// appendCaution appends the line of a caution on the day. A round of one enclosure does
// not name it.
func (r *Round) appendCaution(dst []byte, c *caution) []byte {
	dst = append(dst, c.text...)
	if len(r.places) == 1 {
		return dst
	}
	d := &r.day
	d.due = c.line.places(d.on, d.due[:0])
	dst = append(dst, ": "...)
	if n := len(d.due); n > few && n == r.count(false)+r.count(true) {
		return strconv.AppendInt(append(dst, "all "...), int64(n), 10)
	}
	return r.list(dst, d.due)
}
