package prove_test

import (
	"slices"

	"vivary/compile"
	"vivary/compile/life"
	"vivary/compile/prove"
	"vivary/compile/roster"
	"vivary/schema"
)

// The count by day that the proof is compared with.

// lives reports whether a group has animals on a day.
func lives(r *compile.Result, g *life.Group, d int) bool {
	on := r.Horizon.Date(d)
	return g.Count(on) > 0 && !(g.Logged && on < g.Since.V)
}

// result is what is compared of a proof.
type result struct {
	Longest, From, To, Times int
	Breach, Missed           prove.Gap
	Limit                    prove.Limit
}

// alone is how many times were longer than usual, and sound since nobody came; and how
// many were not, since nobody had come too often.
type alone struct{ whole, half, often int }

// count finds the longest time and the first that is too long by walking over the
// days with counters.
func count(r *compile.Result, p *prove.Proof) (result, alone) {
	if p.Name.Name == "leftovers" {
		return countLeftovers(r, p), alone{}
	}
	n, today := p.End, r.Horizon.Today
	met := occasions(r, p)
	var out result
	for d := p.Begin; d < n; d++ {
		out.Times += one(met[d])
	}
	since, first := began(r, p)
	last := start(r, p, met, since)
	w := walk{today: today, begin: p.Begin, last: last, recovered: 1 << 30, since: since, first: first, out: &out}
	w.allowed, w.full = figures(r, p)
	w.known = func(from int) bool {
		return from < 0 || leftOutSince(r, p, from) || from == since && p.Group != nil && p.Group.Logged
	}
	w.waits = func(d int) bool {
		return waits(r, p, r.Horizon.Date(d)) && !(first > 0 && d >= since && d <= since+first)
	}
	w.pauses = func(d int) bool {
		on := r.Horizon.Date(d)
		return p.Name.Name == "food" && slices.ContainsFunc(p.Group.Holds, func(h life.Hold) bool {
			return h.State == schema.StateRefused && h.From <= on && on < h.Until && h.Out(schema.RowKilled)
		})
	}
	for d := last + 1; d < n; d++ {
		if d == today {
			w.late = w.waited + 1
		}
		if d >= 0 && met[d] {
			w.end(d, 1)
			continue
		}
		if d < 0 || !w.waits(d) {
			w.waited++
			if d >= today {
				w.after++
			}
			w.someone = w.someone || d >= 0 && !nobody(r, p, d)
		}
		w.some = w.some || d >= 0 && nobody(r, p, d)
	}
	w.end(n, 0)
	return out, w.alone
}

// never is a day before all others.
const never = -1 << 19

// began returns the day before the one since which a need holds without a break, or never
// where it always did. Young begin on the day of their first moult, and then it is said
// within how many days they must have eaten.
func began(r *compile.Result, p *prove.Proof) (since, first int) {
	if p.Group == nil {
		return cameHere(r, p.Begin), 0
	}
	stage := func(d int) string { return p.Group.Stage(r.Horizon.Date(d)) }
	d := p.Begin
	for d > -1000 && lives(r, p.Group, d-1) && stage(d-1) == p.Stage {
		d--
	}
	f := p.Group.Sheet.Figure(schema.FigureFirstMeal, p.Stage)
	if f != nil && d > -1000 && lives(r, p.Group, d-1) && stage(d-1) == "newborn" {
		return d, int(f.Range.High / (24 * 60))
	}
	for d > -1000 && lives(r, p.Group, d-1) && stage(d-1) != "newborn" {
		d--
	}
	if d <= -1000 {
		return never, 0
	}
	return d - 1, 0
}

// cameHere returns the day before the one since which those who live in the enclosure are
// there without a break.
func cameHere(r *compile.Result, d int) int {
	out := d
	for _, g := range r.Lives[0].Groups {
		if d > r.Horizon.Today && lives(r, g, d-1) {
			return cameHere(r, d-1)
		}
		from := d
		for from > -1000 && lives(r, g, from) {
			from--
		}
		if from <= -1000 {
			from = never
		}
		out = min(out, from)
	}
	return out
}

// start is the day from which is counted: the first on which the need was met. Where
// there is none before the days of the proof, it is yesterday; or the day before the first
// that is known to have been left out, which lies before all that is known where an
// absence does. It is never before the need began; what began before all that is known
// says nothing of what was done since.
func start(r *compile.Result, p *prove.Proof, met []bool, since int) int {
	for d := range p.Begin {
		if met[d] {
			return max(d, since)
		}
	}
	if since >= -1 {
		return since
	}
	first := r.Horizon.Today
	for _, c := range leftOut(r, p) {
		for d := range r.Horizon.Days {
			switch {
			case !c.Days.Has(d):
			case c.Away != nil && c.Away.From.V < r.Horizon.From:
				return -1
			default:
				first = min(first, d)
			}
		}
	}
	return first - 1
}

// leftOut are the causes that say that something was left out, and not how the plan has
// it.
func leftOut(r *compile.Result, p *prove.Proof) (out []*roster.Cause) {
	for s := range r.Roster.All() {
		for k := range s.Causes {
			switch c := &s.Causes[k]; c.Why {
			case roster.Skipped, roster.Nobody, roster.Waits, roster.LeftIn, roster.Held:
				if meets(s, p) {
					out = append(out, c)
				}
			}
		}
	}
	return out
}

// leftOutSince reports whether something is known to have been left out from a day until
// today.
func leftOutSince(r *compile.Result, p *prove.Proof, from int) bool {
	for _, c := range leftOut(r, p) {
		for d := from; d < r.Horizon.Today; d++ {
			if c.Days.Has(d) {
				return true
			}
		}
	}
	return false
}

// walk is what is counted on the way.
type walk struct {
	today, begin  int // today, and the first day of the proof
	allowed, full int
	since, first  int  // the first moult of young, and within how many days they must have eaten
	last          int  // when it was met last
	waited        int  // days since then that count
	late          int  // how late it is today, before anything is done
	after         int  // days from today on that count
	some, someone bool // a day since then with nobody, and one with somebody
	recovered     int  // days since the last time that was longer than usual
	soft          bool // whether the one that was found has excused days in it
	waits, pauses func(d int) bool
	known         func(from int) bool // whether something was left out from a day until today
	out           *result
	alone         alone
	times         [][2]int // the days on which times alone that were longer than usual ended, and their length
}

// excused reports whether a need does not hold on one of some days, or meals pause.
func (w *walk) excused(from, to int) bool {
	for d := max(0, from); d < to; d++ {
		if w.waits(d) || w.pauses(d) {
			return true
		}
	}
	return false
}

// end ends a time on day to, which counts as more days itself.
func (w *walk) end(to, more int) {
	half := max(w.allowed, (w.full+1)/2)
	limit := prove.Limit{Days: w.allowed}
	left := w.full > w.allowed && w.some && !w.someone
	took := w.waited + more
	whole := w.waited + 1 // had it ended on that day
	switch {
	case w.first > 0 && w.last == w.since:
		limit = prove.Limit{Days: w.first, First: true}
	case !left:
	case w.recovered+1 >= w.full: // both ends are days of care
		limit = prove.Limit{Days: w.full, Alone: true}
	case half > w.allowed:
		limit = prove.Limit{Days: half, Alone: true, Again: true}
	}
	if limit.Alone && whole > w.allowed && whole <= limit.Days {
		days := whole
		for _, x := range w.times {
			if x[0] > to-120 {
				days += x[1]
			}
		}
		if days > 42 {
			limit = prove.Limit{Days: w.allowed, Often: true}
			w.alone.often++
		}
	}
	if took > w.allowed && took <= limit.Days {
		w.alone.half, w.alone.whole = w.alone.half+one(limit.Again), w.alone.whole+one(!limit.Again)
	}
	if to >= w.begin {
		gap, from := took, w.last
		if w.last < w.today && w.late > limit.Days && w.known(w.last) {
			if w.begin == w.today {
				w.out.Missed = prove.Gap{From: w.last, To: to}
			}
			gap, from = w.after+more, w.today-1
			limit = prove.Limit{Days: w.allowed}
		} else if gap > w.out.Longest {
			w.out.Longest, w.out.From, w.out.To = gap, w.last, to
		}
		// What is the plan's alone is found before what a hold has a part in, and what lasts
		// beyond today before what is over.
		over := w.out.Breach.To <= w.today && to > w.today && w.soft == w.excused(from, to)
		if gap > limit.Days && (w.out.Breach == (prove.Gap{}) || over || w.soft && !w.excused(from, to)) {
			w.out.Breach, w.out.Limit, w.soft = prove.Gap{From: from, To: to}, limit, w.excused(from, to)
		}
	}
	if w.recovered += to - w.last; whole > half {
		w.recovered = 0
	}
	if left && whole > w.allowed {
		w.times = append(w.times, [2]int{to, whole})
	}
	w.last, w.waited, w.after, w.some, w.someone, w.late = to, 0, 0, false, false, 0
}
