package rounds

import "math/bits"

// line is what shares a line of the round: a stretch of the items. due has for each
// day the items that are due, as bits: a round is walked on every day of a year, and
// on most days most of it is not due.
type line struct {
	from, end int
	words     int      // of 64 items
	due       []uint64 // words for each day
	full      run      // the line on a day on which all are due
}

// on returns the items that are due on a day.
func (l *line) on(day int) []uint64 { return l.due[day*l.words : (day+1)*l.words] }

// run is one line of a round on one day.
type run struct {
	*line
	stops   int // how many targets it names
	boxes   int // how many enclosures those are in
	minutes int
	totals  bool // some of them say how many items that is
}

// gather makes the lines of the round. The items of a line stand together.
func (r *Round) gather() {
	var all []line
	for i := range r.items {
		if i == 0 || !r.items[i-1].shares(&r.items[i]) {
			all = append(all, line{from: i})
		}
		all[len(all)-1].end = i + 1
	}
	r.lines = all
	for k := range all {
		l := &all[k]
		l.words = (l.end - l.from + 63) / 64
		l.due = make([]uint64, l.words*r.Horizon.Days)
		l.full = run{line: l}
		last := -1
		for i := l.from; i < l.end; i++ {
			at, bit := (i-l.from)>>6, uint64(1)<<((i-l.from)&63)
			days := r.items[i].days
			for d := days.Next(0); d >= 0; d = days.Next(d + 1) {
				l.due[d*l.words+at] |= bit
			}
			if r.differs(i, last) {
				r.count(&l.full, i, last)
				last = i
			}
		}
	}
}

func (a *item) shares(b *item) bool { return a.text == b.text && a.last == b.last && a.high == b.high }

// walk calls use for every line that has something to do on a day. Entries of a
// calendar, the list of what is due and sheets all walk a round by it, so that they
// cannot disagree about its lines.
func (r *Round) walk(day int, use func(run)) {
	for k := range r.lines {
		l := &r.lines[k]
		n := 0
		for _, w := range l.on(day) {
			n += bits.OnesCount64(w)
		}
		switch n {
		case 0:
		case l.end - l.from:
			use(l.full)
		default:
			x := run{line: l}
			r.stops(l, day, func(i, last int) { r.count(&x, i, last) })
			use(x)
		}
	}
}

// stops calls use for every item of a line that is something to do on a day, with
// the one before it, or -1.
func (r *Round) stops(l *line, day int, use func(i, last int)) {
	last := -1
	for at, w := range l.on(day) {
		for ; w != 0; w &= w - 1 {
			if i := l.from + at<<6 + bits.TrailingZeros64(w); r.differs(i, last) {
				use(i, last)
				last = i
			}
		}
	}
}

func (r *Round) count(x *run, i, last int) {
	it := &r.items[i]
	if last < 0 || r.items[last].box != it.box {
		x.boxes++
	}
	x.stops++
	x.minutes += it.minutes
	x.totals = x.totals || it.total != ""
}

// differs reports whether an item is more than the one before it says: the same
// look at the same animals is one look.
func (r *Round) differs(i, last int) bool {
	if last < 0 {
		return true
	}
	a, b := &r.items[last], &r.items[i]
	return b.total != "" || a.box != b.box || a.target != b.target
}

// all reports whether a line is for every enclosure of its part of the round, those
// apart or the others, and says no more of any: naming them would say nothing.
func (r *Round) all(x *run, day int) bool {
	return x.boxes == r.part(r.items[x.from].last, day) && x.boxes > 3 && !x.totals
}

// part returns how many enclosures the round passes on a day, of those that are
// kept apart or of the others.
func (r *Round) part(last bool, day int) int {
	apart := 0
	for _, until := range r.apartUntil {
		if day < until {
			apart++
		}
	}
	if last {
		return apart
	}
	return r.boxes - apart
}
