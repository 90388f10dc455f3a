package rounds

import (
	"slices"
	"strconv"

	"vivary/compile/horizon"
	"vivary/schema"
	"vivary/schema/wording"
)

// caution is what to see to before some of the care of a round, with the places where that
// is on each day. It is one line for all of them: said at each of sixty tubs nobody would
// read it.
type caution struct {
	text string // as it begins a line
	line line
	// kinds are those of the round that ask for it wherever they are done, nil where one of
	// them does so at some places only: then the line says what is done instead of where.
	kinds []*schema.CareKind
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
			x.kinds = r.wherever(c)
			r.cautions = append(r.cautions, x)
		}
	}
}

// wherever returns the kinds that ask for a caution, nil where one of them has an item that
// does not.
func (r *Round) wherever(c *schema.Caution) []*schema.CareKind {
	var out []*schema.CareKind
	for _, k := range r.kinds {
		some, all := false, true
		for i := range r.items {
			if it := &r.items[i]; it.Kind == k {
				asks := slices.Contains(it.Cautions, c)
				some, all = some || asks, all && asks
			}
		}
		if some && !all {
			return nil
		}
		if some {
			out = append(out, k)
		}
	}
	return out
}

// done words which of some kinds are done on the day.
func (r *Round) done(kinds []*schema.CareKind) string {
	var words []string
	for _, k := range kinds {
		if slices.ContainsFunc(r.tasks, func(t task) bool { return r.kinds[t.kind] == k && t.count(r.day.on) > 0 }) {
			words = append(words, k.Short())
		}
	}
	return wording.And(words)
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
		d.next.Sort = Ready
		d.end()
	}
}

// appendCaution appends the line of a caution on the day. A round of one enclosure does
// not name it. Of more than a few, all of them alike, it says what is done: of sixty tubs
// a list of twenty stands at the task already.
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
	if len(d.due) > few && c.kinds != nil {
		return append(append(dst, "for "...), r.done(c.kinds)...)
	}
	return r.list(dst, d.due)
}
