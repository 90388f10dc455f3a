package rounds

import "vivary/compile/horizon"

// layout says how the round is worked: which tasks have a line of their own before
// the rooms, and whether a room is worked by enclosure or by task.
//
// It is not counted for each day: the form would change from one day to the next
// with the days on which water falls, and an entry would change because another
// day did. Counted is what the round has for good, also where a hold takes out all
// of its days for now; neither does the form hang on what comes and goes with the
// log.
func (r *Round) layout() {
	c := r.lasting()
	for i := range r.sections {
		s := &r.sections[i]
		s.byTask = !r.each && c.tasks[i] < len(s.places)
		if len(r.places) == 1 {
			s.title, s.alone, s.byTask = r.names[0].text, true, true
		}
	}
	for i := range r.tasks {
		t := &r.tasks[i]
		t.common = !t.high && !t.leaving && len(r.places) > 1 && r.common(t, c) && !(r.each && r.showsDiffer(t))
	}
	for i := range r.lines {
		if t := &r.tasks[r.lines[i].task]; !t.high && !t.leaving && !t.common {
			s := &r.sections[r.lines[i].section]
			s.lines = append(s.lines, i)
		}
	}
}

// common reports whether a task has a line of its own before the rooms: one that
// most enclosures have and many at once, and every task where all are in one room
// which is worked by task, so that its lines have one order.
func (r *Round) common(t *task, c *census) bool {
	apart := &r.sections[r.apart()]
	if t.apart {
		return apart.byTask || c.often[t.said] && r.most(c.apart[t.said], len(apart.places))
	}
	return r.apart() == 1 && r.sections[0].byTask || c.often[t.said] && r.most(c.places[t.said], r.boxes())
}

// showsDiffer reports whether the gauges that a task reads should show at one place what
// they should not at another.
func (r *Round) showsDiffer(t *task) bool {
	first, known := "", false
	for i := range t.lines {
		for k := range t.lines[i].cells {
			text := ""
			if s := r.show(r.kinds[t.kind], t.lines[i].cells[k].place, r.Horizon.Today); s != nil {
				text = s.Text
			}
			if known && text != first {
				return true
			}
			first, known = text, true
		}
	}
	return false
}

// boxes is how many enclosures the round passes.
func (r *Round) boxes() int {
	n := 0
	for i := range r.places {
		if !r.places[i].Rack {
			n++
		}
	}
	return n
}

// most reports whether a task that is the same at so many enclosures is said of all: at
// more than three, and half of those there are; or at nearly all, where each has its line.
func (r *Round) most(n, of int) bool {
	if r.each {
		return n > few && 10*n >= 9*of
	}
	return n > few && 2*n >= of
}

// few is of how many enclosures "all" is not said: their names are as short.
const few = 3

// census counts what a round has for good.
type census struct {
	tasks         []int  // of each section: how many different ones
	places, apart []int  // of each text: at how many places, and at how many that are kept apart
	often         []bool // and whether it is done at many of them at once
}

// lasting counts what a round has for good.
func (r *Round) lasting() *census {
	n := len(r.texts)
	c := &census{make([]int, len(r.sections)), make([]int, n), make([]int, n), make([]bool, n)}
	type once struct {
		section int
		said    int32
	}
	seen := map[once]bool{}
	last := make([]int, len(r.texts))
	for i := range r.items {
		it, k := &r.items[i], r.said[i]
		if it.High || it.Leaving || it.Passing || last[k] == it.Place+1 {
			continue
		}
		last[k] = it.Place + 1
		c.places[k]++
		s := r.room[it.Place]
		if r.places[it.Place].Apart > 0 {
			c.apart[k]++
			s = r.apart()
		}
		if x := (once{s, k}); !seen[x] {
			seen[x] = true
			c.tasks[s]++
		}
	}
	r.often(c)
	return c
}

// often finds what is done at many places at once: on the days of the whole horizon
// on which it comes up, at three of ten on average. What comes up for one today and
// another tomorrow, as a weekly cleaning does, is done where one stands anyway.
func (r *Round) often(c *census) {
	total, union := make([]int, len(r.texts)), make([]horizon.Days, len(r.texts))
	for i := range r.items {
		it, k := &r.items[i], r.said[i]
		if it.High || it.Leaving || it.Passing || c.places[k] <= few {
			continue
		}
		if union[k] == nil {
			union[k] = r.Horizon.New()
		}
		days := it.Days
		if it.Usual != nil {
			days = it.Usual
		}
		union[k].Union(days)
		total[k] += days.Count()
	}
	of := 3
	if r.each {
		of = 9
	}
	for k := range total {
		c.often[k] = union[k] != nil && 10*total[k] >= of*union[k].Count()*c.places[k]
	}
}
