package rounds

import (
	"slices"
	"strconv"
)

// day is the room in which the text of a day is put together.
type day struct {
	dst    []byte
	start  int
	limit  int  // how many bytes the text may have
	full   bool // it would have more
	gap    bool // an empty line is wanted before the next one
	on     int
	todo   [][]int32 // of each place: the tasks that are said of it alone
	due    []int32   // places
	others []int32
	a, b   []byte
	seen   []uint64 // of each place: which kinds have been counted
	kinds  []int
	// lengths are nil but where nothing else is asked for.
	lengths *lengths
	// walk is where each line is kept with what it asks for; nil where nobody wants it. next
	// is the line that is being written.
	walk *[]Line
	next Line
}

func (d *day) init(r *Round) {
	d.todo = make([][]int32, len(r.places))
	d.seen = make([]uint64, len(r.places))
	d.kinds = make([]int, len(r.kinds))
}

// write appends the text of a day, as far as so many bytes. Calendars, the day's
// list and the printed sheet are all written here, so that they cannot disagree.
//
// What is pressing stands first, then what may be done in which state, what is done
// before days when nobody comes and what to put on or have ready; then the round.
func (r *Round) write(dst []byte, on, limit int) []byte {
	d := &r.day
	d.dst, d.start, d.limit, d.on, d.full, d.gap = dst, len(dst), limit, on, false, false
	r.pressing(false)
	r.held()
	r.leaving(false)
	r.beforehand()
	d.gap = true
	r.part(false)
	if !d.full && r.any(true) {
		d.gap = true
		d.next.Sort = Heading
		d.line(lastOfAll)
		d.gap = false
		r.pressing(true)
		r.leaving(true)
		r.part(true)
	}
	d.next.Sort = Amiss
	d.once(len(r.tasks)+len(r.sections), r.amiss)
	return d.dst
}

// lastOfAll is the heading of what is kept apart.
const lastOfAll = "Last, with tools of their own:"

// any reports whether something is to be done on the day of what is kept apart, or
// of what is not.
func (r *Round) any(apart bool) bool {
	for i := range r.tasks {
		if t := &r.tasks[i]; t.apart == apart && t.count(r.day.on) > 0 {
			return true
		}
	}
	return false
}

// part writes the round proper, or the part of it that is kept apart.
func (r *Round) part(apart bool) {
	d := &r.day
	r.shared(apart)
	for i := range r.sections {
		if (i == r.apart()) == apart {
			d.once(len(r.tasks)+i, func() { r.section(&r.sections[i]) })
		}
	}
}

// leaving writes what is done before days when nobody comes: what it is, where, and
// until when.
func (r *Round) leaving(apart bool) {
	d := &r.day
	for i := range r.tasks {
		t := &r.tasks[i]
		if !t.leaving || t.apart != apart || d.full || t.count(d.on) == 0 {
			continue
		}
		what := r.items[t.lines[0].cells[0].item].Task
		note := what.Note
		what.Note = ""
		d.begin(what.Sentence())
		d.add(": ")
		d.list(r, t.places(d.on, d.due[:0]))
		r.asks(Leaving, i, d.due)
		if note != "" {
			d.add(" (" + note + ")")
		}
		d.end()
	}
}

// held writes what may be done at animals in some state.
func (r *Round) held() {
	d := &r.day
	for i := range r.holds {
		h := &r.holds[i]
		d.due = h.places(d.on, d.due[:0])
		if d.full || len(d.due) == 0 {
			continue
		}
		d.begin("")
		d.dst = h.append(d.dst, r, d.due)
		d.next.Sort, d.next.Of = States, r.of(d.due)
		d.end()
	}
}

// shared writes the tasks that have a line before the rooms.
func (r *Round) shared(apart bool) {
	d := &r.day
	of, others := r.count(apart), r.count(!apart)
	for i := range r.tasks {
		if t := &r.tasks[i]; t.common && t.apart == apart && !d.full {
			d.once(i, func() {
				if d.due = t.places(d.on, d.due[:0]); len(d.due) > 0 {
					r.asks(Todo, i, d.due)
					r.all(t, of, here[yes(others > 0)])
				}
			})
		}
	}
}

// here is said of all where others come last: "all" alone would be them too.
var here = [2]string{"", " here"}

// all writes a task that most enclosures may have, by those that have it not on the
// day where they are few: a long list of exceptions is not to be worked from.
func (r *Round) all(t *task, of int, here string) {
	d := &r.day
	all := of > few && !slices.ContainsFunc(d.due, func(p int32) bool { return r.places[p].Rack })
	if len(d.due) == of && all {
		d.begin("- ")
		from := len(d.dst)
		d.add("All ")
		d.dst = strconv.AppendInt(d.dst, int64(of), 10)
		d.add(here)
		d.named(from)
		d.add(": ")
		d.add(t.text)
		r.shows(t)
		d.end()
		return
	}
	d.a = r.list(d.a[:0], d.due)
	if left := of - len(d.due); 4*left <= of && all {
		d.b = append(append(append(d.b[:0], "All"...), here...), " but "...)
		d.b = appendNames(d.b, r.names, r.without(t.apart, d.due))
		if len(d.b) <= len(d.a) {
			d.begin("- ")
			d.dst = append(d.dst, d.b...)
			d.named(len(d.dst) - len(d.b))
			d.add(": ")
			d.add(t.text)
			r.shows(t)
			d.end()
			return
		}
	}
	d.begin("- ")
	d.add(t.first)
	d.add(": ")
	d.dst = append(d.dst, d.a...)
	d.named(len(d.dst) - len(d.a))
	r.shows(t)
	d.end()
}

// shows writes what the gauges should show at the places that are due.
func (r *Round) shows(t *task) { r.day.dst = r.appendShows(r.day.dst, t, r.day.due, r.list) }

// without returns the places of a part of the round that are not among some.
func (r *Round) without(apart bool, some []int32) []int32 {
	d := &r.day
	d.others = d.others[:0]
	for i := range r.places {
		if len(some) > 0 && some[0] == int32(i) {
			some = some[1:]
		} else if p := &r.places[i]; (d.on < p.Apart) == apart && !p.Rack && !p.empty(d.on) {
			d.others = append(d.others, int32(i))
		}
	}
	return d.others
}

// count returns how many enclosures a part of the round has on the day.
func (r *Round) count(apart bool) int {
	n := 0
	for i := range r.places {
		if p := &r.places[i]; (r.day.on < p.Apart) == apart && !p.Rack && !p.empty(r.day.on) {
			n++
		}
	}
	return n
}

func (p *Place) empty(on int) bool { return p.Empty != nil && p.Empty.Has(on) }

// section writes what remains in a room, or of what is kept apart.
func (r *Round) section(s *section) {
	title := s.title
	head := func() {
		if title != "" {
			r.day.gap = true
			r.day.next.Sort = Heading
			r.day.line(title)
			r.day.gap = false
			title = ""
		}
	}
	if s.byTask {
		r.byTask(s, head)
	} else {
		r.byPlace(s, head)
	}
}

// byTask writes a line for each task.
func (r *Round) byTask(s *section, head func()) {
	d := &r.day
	for _, i := range s.lines {
		l := &r.lines[i]
		if d.full || l.count(d.on) == 0 {
			continue
		}
		head()
		d.begin("- ")
		d.add(r.tasks[l.task].first)
		if !s.alone {
			d.add(": ")
			d.due = l.places(d.on, d.due[:0])
			from := len(d.dst)
			d.dst = appendNames(d.dst, r.short, d.due)
			d.named(from)
		} else {
			d.due = l.places(d.on, d.due[:0])
		}
		d.dst = r.appendShows(d.dst, &r.tasks[l.task], d.due, r.shortNames)
		r.asks(Todo, l.task, d.due)
		d.end()
	}
}

func (r *Round) shortNames(dst []byte, places []int32) []byte {
	return appendNames(dst, r.short, places)
}

// byPlace writes a line for each enclosure, and one for neighbours of which the very
// same is to be said.
func (r *Round) byPlace(s *section, head func()) {
	d := &r.day
	for _, i := range s.lines {
		l := &r.lines[i]
		l.each(d.on, func(c *cell) { d.todo[c.place] = append(d.todo[c.place], int32(l.task)) })
	}
	names := r.short
	if s == &r.sections[r.apart()] {
		names = r.names
	}
	d.due = d.due[:0]
	for _, p := range s.places {
		if len(d.todo[p]) == 0 {
			continue
		}
		if len(d.due) > 0 && (!slices.Equal(d.todo[d.due[0]], d.todo[p]) || !r.sameShows(d.due[0], p)) {
			r.neighbours(names, head)
		}
		d.due = append(d.due, p)
	}
	r.neighbours(names, head)
	for _, p := range s.places {
		d.todo[p] = d.todo[p][:0]
	}
}

// neighbours writes what is to be done at the places that were put together.
func (r *Round) neighbours(names []name, head func()) {
	d := &r.day
	if d.full || len(d.due) == 0 {
		return
	}
	head()
	d.begin("- ")
	from := len(d.dst)
	d.dst = appendNames(d.dst, names, d.due)
	d.named(from)
	for k, t := range d.todo[d.due[0]] {
		d.add(separator[min(k, 1)])
		d.add(r.tasks[t].text)
		if show := r.showText(&r.tasks[t], d.due[0]); show != "" {
			d.add(": " + should + " " + show)
		}
		r.asks(Todo, int(t), d.due)
	}
	d.end()
	d.due = d.due[:0]
}

// separator is what stands before the first task of a line, and before the others.
var separator = [2]string{": ", "; "}

// count returns at how many places a task is due on a day.
func (t *task) count(on int) int {
	n := 0
	for i := range t.lines {
		n += t.lines[i].count(on)
	}
	return n
}

// places appends where a task is due on a day, in walking order.
func (t *task) places(on int, dst []int32) []int32 {
	for i := range t.lines {
		dst = t.lines[i].places(on, dst)
	}
	return dst
}

func (l *line) places(on int, dst []int32) []int32 {
	l.each(on, func(c *cell) { dst = append(dst, c.place) })
	return dst
}

// places appends where a hold stands on a day, each place once.
func (h *held) places(on int, dst []int32) []int32 {
	for i := range h.spans {
		x := &h.spans[i]
		if x.from <= on && on < x.until && (len(dst) == 0 || dst[len(dst)-1] != x.place) {
			dst = append(dst, x.place)
		}
	}
	return dst
}

// begin begins a line.
func (d *day) begin(text string) {
	if d.gap && len(d.dst) > d.start {
		d.dst = append(d.dst, '\n')
	}
	d.gap = false
	d.add(text)
}

func (d *day) add(text string) { d.dst = append(d.dst, text...) }

func (d *day) list(r *Round, places []int32) {
	d.due = places
	d.dst = r.list(d.dst, places)
}

// end ends a line. Once the text is full nothing more is written.
func (d *day) end() {
	d.keep()
	d.dst = append(d.dst, '\n')
	d.full = len(d.dst)-d.start > d.limit
}

func (d *day) line(text string) {
	d.begin(text)
	d.end()
}
