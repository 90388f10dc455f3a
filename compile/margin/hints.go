package margin

import (
	"cmp"
	"slices"
	"strconv"
	"strings"

	"vivary/compile"
	"vivary/compile/balance"
	"vivary/compile/horizon"
	"vivary/compile/roster"
	"vivary/plan"
	"vivary/plan/source"
	"vivary/plan/syntax"
	"vivary/schema"
	"vivary/schema/quantity"
	"vivary/schema/wording"
)

// Hints are the words behind the values of a stretch of a plan, in the order of its lines: of
// what the sheet brings behind a species, the power that is needed behind that of a heater, the
// next two days behind how often care comes, and a value in the keeper's units where it is
// typed in others. Where one line is of several enclosures, only what is true of all is said.
func Hints(r *compile.Result, id source.ID, in source.Place) []Note {
	if strings.HasSuffix(r.Plan.Files.Name(id), plan.LogSuffix) {
		return nil
	}
	h := &hints{r: r, id: id, in: in, by: map[int32]*hint{}}
	for _, b := range plan.TreeOf(id, r.Plan.Files.Text(id)).Blocks {
		if b.Whole.Start < in.End && in.Start < b.Whole.End {
			h.values(b, schema.Plan.Block(b.Type))
		}
	}
	if worked(r) {
		h.ticks = r.Roster.Ticks()
		for i := range r.Lives {
			h.box(i)
		}
		h.dates()
	}
	return h.notes()
}

type hints struct {
	r     *compile.Result
	id    source.ID
	in    source.Place
	ticks *roster.Ticks
	by    map[int32]*hint // by the end of the value
	often []timed         // how often care comes, as it is written
}

// hint is what is said behind a value: the parts that are true of all that it is of, of which
// most are told.
type hint struct {
	at    source.Place
	parts []string
	most  int
	more  string
}

// timed is how often some care comes, and on which days it does.
type timed struct {
	block   source.Place // the first line of its block
	at      source.Place
	days    horizon.Days
	one     *entry
	differs bool
}

func (h *hints) within(at source.Place) bool {
	return at.File == h.id && at.Start < h.in.End && h.in.Start < at.End
}

func (h *hints) add(x hint) {
	if !h.within(x.at) {
		return
	}
	y := h.by[x.at.End]
	if y == nil {
		h.by[x.at.End] = &x
		return
	}
	y.parts = slices.DeleteFunc(y.parts, func(p string) bool { return !slices.Contains(x.parts, p) })
	if y.more != x.more { // each has some of it on days of its own
		y.more = ""
	}
}

func (h *hints) notes() (out []Note) {
	for _, x := range h.by {
		if n := len(x.parts); n > x.most {
			x.parts = append(x.parts[:x.most:x.most], strconv.Itoa(n-x.most)+" more")
		}
		if len(x.parts) > 0 {
			out = append(out, Note{At: x.at, Text: strings.Join(x.parts, ", "), More: x.more})
		}
	}
	slices.SortFunc(out, func(a, b Note) int { return cmp.Compare(a.At.Start, b.At.Start) })
	return out
}

// values tells what is typed in other units than its keeper reads, and notes how often care
// comes.
func (h *hints) values(b *syntax.Block, d *schema.Block) {
	for i := range b.Attrs {
		a := &b.Attrs[i]
		if d != nil && measures(d, a.Name) && a.Value.Kind == syntax.Text {
			if told := wording.Prose(a.Value.Text, h.r.Plan.Units); told != a.Value.Text {
				h.add(hint{at: a.Value.At, parts: []string{told}, most: 1})
			}
		}
		if (b.Type == schema.Care.Name || b.Type == schema.Feeding.Name) && slices.Contains([]string{"every", "on", "cron"}, a.Name) && len(b.Labels) > 0 {
			at := b.TypeAt
			at.End = b.Labels[len(b.Labels)-1].At.End
			h.often = append(h.often, timed{block: at, at: a.Value.At})
		}
	}
	for _, in := range b.Blocks {
		var of *schema.Block
		if d != nil {
			of = d.Block(in.Type)
		}
		h.values(in, of)
	}
}

// measures reports whether an attribute is a quantity with a unit.
func measures(d *schema.Block, name string) bool {
	a := d.Attr(name)
	if in := d.Flattened(name); a == nil && in != nil {
		a = in.Attr(name)
	}
	return a != nil && slices.Contains([]schema.Kind{schema.Quantity, schema.Range, schema.Size, schema.Face2D}, a.Kind)
}

// box says what is to be said of one enclosure.
func (h *hints) box(i int) {
	e := h.r.Lives[i].Plan
	if e.At.File != h.id && !e.Template.Set() || unsure(e) {
		return // nothing of it is written here
	}
	if h.within(e.Species.At) && e.Sheet != nil {
		h.species(i)
	}
	if e.Climate != nil {
		for _, x := range e.Climate.Heaters {
			if h.within(x.Power.At) && x.Power.Set() {
				h.power(i, x)
			}
		}
	}
	h.mark(i)
}

// species says what the sheet brings where the plan says nothing.
func (h *hints) species(i int) {
	e, u := h.r.Lives[i].Plan, h.r.Plan.Units
	var parts []string
	warm, air, damp := e.Sheet.Figure(schema.FigureWarmSpot, ""), e.Sheet.Figure(schema.FigureAir, ""), e.Sheet.Figure(schema.FigureHumidityTarget, "")
	if air == nil {
		air = e.Sheet.Figure(schema.FigureTemperatureTarget, "")
	}
	planned := e.Climate
	if planned == nil {
		planned = &plan.Climate{}
	}
	if warm != nil && !planned.WarmEnd.Set() {
		parts = append(parts, "spot "+warm.Told(u))
	}
	switch {
	case air == nil || planned.CoolEnd.Set():
	case warm != nil || planned.WarmEnd.Set():
		parts = append(parts, "air "+air.Told(u))
	default:
		parts = append(parts, air.Told(u))
	}
	if damp != nil && !planned.Humidity.Set() {
		parts = append(parts, damp.Told(u))
	}
	brought, more := h.brought(i)
	h.add(hint{at: e.Species.At, parts: append(parts, brought...), most: len(parts) + mostBrought, more: more})
}

// mostBrought is how many sorts of care from the sheet are told behind its name.
const mostBrought = 2

// brought is the care that the sheet brings: water and food first, then what keeps it damp
// and clean; in the order of a round in more.
func (h *hints) brought(i int) (parts []string, more string) {
	var by [3][]string
	var lines []string
	seen := map[string]bool{}
	for k := range h.r.Roster.Of[i] {
		e := &h.r.Roster.Of[i][k]
		if !e.FromSheet || e.After != 0 || seen[e.Name] {
			continue
		}
		seen[e.Name] = true
		text := called(h.r, e, 1) + " " + e.Words()
		lines = append(lines, text)
		switch e.Kind.Needs {
		case schema.NeedWater, schema.NeedFood:
			by[0] = append(by[0], text)
		case schema.NeedMoisture, schema.NeedCleaning:
			by[1] = append(by[1], text)
		default:
			by[2] = append(by[2], text)
		}
	}
	if parts = slices.Concat(by[:]...); len(parts) > mostBrought {
		more = strings.Join(lines, "\n")
	}
	return parts, more
}

// power says what a heater needs to hold what it is set to, in the coldest room.
func (h *hints) power(i int, x *plan.Heater) {
	l := h.r.Lives[i]
	if k := h.r.Plan.RackOf(l.Plan); k != nil && k.Whole.File == x.At.File && k.Whole.Start <= x.At.Start && x.At.End <= k.Whole.End {
		return // it is shared
	}
	b, ok := balance.Of(h.r.Plan, l.Plan, l)
	if !ok {
		return
	}
	set := h.r.Plan.Setting(x)
	if need, known := b.Needed(); known && set.Set() {
		text := "needs " + wording.Band(need, "W") + " for " + h.r.Plan.Units.Tell(set.V) + " in a room of " + quantity.Format(float64(b.Box.Room.Low), l.Plan.Degrees())
		h.add(hint{at: x.Power.At, parts: []string{text}, most: 1})
	}
}

// mark notes on which days the care of an enclosure comes that is written in the file.
func (h *hints) mark(i int) {
	if len(h.often) == 0 {
		return
	}
	mine := map[int]horizon.Days{}
	for k := range h.r.Roster.Of[i] {
		e := &h.r.Roster.Of[i][k]
		if e.Origin.File != h.id || e.FromSheet || e.Once != nil || e.Kind.OfMeal != 0 {
			continue
		}
		at := slices.IndexFunc(h.often, func(t timed) bool { return t.block.Start == e.Origin.Start })
		if at < 0 {
			continue
		}
		if mine[at] == nil {
			mine[at] = e.Days.Clone()
		} else {
			mine[at].Union(e.Days)
		}
		h.often[at].one = e
	}
	for at, days := range mine {
		t := &h.often[at]
		t.differs = t.differs || t.days != nil && !slices.Equal(t.days, days)
		t.days = days
	}
}

// dates says the next two days of care that does not come every day.
func (h *hints) dates() {
	for _, t := range h.often {
		if t.days == nil || t.differs {
			continue
		}
		today := h.r.Horizon.Today
		first := t.days.Next(today)
		if first == today && h.ticks.Has(t.one, today) {
			first = t.days.Next(today + 1)
		}
		if first < 0 {
			h.add(hint{at: t.at, parts: []string{"not until " + h.r.Horizon.Last().Words()}, most: 1})
			continue
		}
		second := t.days.Next(first + 1)
		if second == first+1 && t.days.Has(second+1) {
			continue // daily, or nearly
		}
		dates := []string{day(h.r, h.r.Horizon.Date(first))}
		if second >= 0 {
			dates = append(dates, day(h.r, h.r.Horizon.Date(second)))
		}
		h.add(hint{at: t.at, parts: dates, most: 2})
	}
}
