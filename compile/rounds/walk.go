package rounds

// run is one line of a round on one day: a stretch of the items, those that share
// its words, some of which may be for other days.
type run struct {
	from, end int
	stops     int // how many targets it names
	boxes     int // how many enclosures those are in
	minutes   int
	totals    bool // some of them say how many items that is
}

// number gives the items that share a line the same number. They stand together.
func (r *Round) number() {
	for i := 1; i < len(r.items); i++ {
		a, b := &r.items[i-1], &r.items[i]
		b.line = a.line
		if a.text != b.text || a.last != b.last || a.high != b.high {
			b.line++
		}
	}
}

// next returns the first line at or after item k that has something to do on a
// day, and whether there is one. Entries of a calendar, the agenda and sheets all
// walk a round by it, so that they cannot disagree about its lines.
func (r *Round) next(k, day int) (run, bool) {
	for k < len(r.items) {
		first := &r.items[k]
		x := run{from: k, end: k}
		last := -1
		for ; x.end < len(r.items); x.end++ {
			it := &r.items[x.end]
			if it.line != first.line {
				break
			}
			if !r.stop(x.end, last, day) {
				continue
			}
			if last < 0 || r.items[last].box != it.box {
				x.boxes++
			}
			last = x.end
			x.stops++
			x.minutes += it.minutes
			x.totals = x.totals || it.total != ""
		}
		if x.stops > 0 {
			return x, true
		}
		k = x.end
	}
	return run{}, false
}

// stop reports whether item i is something to do on a day after item last of the
// same line, which is -1 for none: the same look at the same animals is one look.
func (r *Round) stop(i, last, day int) bool {
	it := &r.items[i]
	if !it.days.Has(day) {
		return false
	}
	return last < 0 || it.total != "" || it.box != r.items[last].box || it.target != r.items[last].target
}

// all reports whether a line is for every one of a round's enclosures and says no
// more of any, so that naming them says nothing.
func (x *run) all(of int) bool { return x.boxes == of && of > 3 && !x.totals }
