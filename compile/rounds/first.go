package rounds

import (
	"bytes"
	"cmp"
	"slices"
	"strconv"
)

// pressing writes what is done before everything else, in the order of urgency. What is
// the same at several places but for a day or a number is one line.
func (r *Round) pressing(apart bool) {
	d := &r.day
	if d.full {
		return
	}
	lines, _ := r.firsts(apart, 1<<30)
	for _, l := range lines {
		d.begin("")
		d.dst = append(d.dst, l.text...)
		for _, i := range l.tasks {
			r.asks(Pressing, i, r.tasks[i].places(d.on, nil))
		}
		d.end()
	}
}

// pressing is a line of what is done before everything else, with its tasks.
type pressing struct {
	text  []byte
	tasks []int
}

// firsts returns the lines of what is done before everything else, as many as have room
// in so many bytes, and how many have not.
func (r *Round) firsts(apart bool, room int) (lines []pressing, left int) {
	var done map[int]bool
	for i := range r.tasks {
		if done[i] || !r.first(i, apart) {
			continue
		}
		if done == nil {
			done = map[int]bool{}
		}
		l := r.firstLine(i, done)
		switch n := len(l.text) + 1; {
		case n <= room:
			lines, room = append(lines, l), room-n
		case n > MaxText && room > MaxText/4: // so many names: as many of them as there is room for
			l.text = append(cut(l.text, room-len(cutShort)), " …"...)
			lines, room = append(lines, l), 0
		default:
			left++
		}
	}
	return lines, left
}

// first reports whether a task is done before everything else on the day.
func (r *Round) first(i int, apart bool) bool {
	t := &r.tasks[i]
	return t.high && t.apart == apart && t.count(r.day.on) > 0
}

// firstLine writes the line of a task, with those that differ only in what is said of
// each place; it marks the tasks that are in it.
func (r *Round) firstLine(i int, done map[int]bool) pressing {
	t, short := &r.tasks[i], r.item(i).Short
	same := []int{i}
	for k := i + 1; k < len(r.tasks) && short != ""; k++ {
		if !done[k] && r.tasks[k].rank == t.rank && r.item(k).Short == short && r.first(k, t.apart) {
			same = append(same, k)
			done[k] = true
		}
	}
	on := r.day.on
	slices.SortStableFunc(same, func(a, b int) int { // in walking order
		return cmp.Compare(r.tasks[a].places(on, nil)[0], r.tasks[b].places(on, nil)[0])
	})
	out := []byte("FIRST: ")
	if len(same) == 1 {
		out = append(append(out, t.text...), ": "...)
		places := t.places(on, nil)
		return pressing{r.appendShows(r.list(out, places), t, places, r.list), same}
	}
	out = append(append(out, short...), ": "...)
	for n, k := range same {
		if n > 0 {
			out = append(out, ", "...)
		}
		out = r.list(out, r.tasks[k].places(on, nil))
		if a := r.item(k).Aside; a != "" {
			out = append(append(append(out, " ("...), a...), ')')
		}
	}
	return pressing{out, same}
}

// item is the first item of a task: all of them have its words.
func (r *Round) item(i int) *Item { return &r.items[r.tasks[i].lines[0].cells[0].item] }

// shortened writes the text of a day that has no room for all of it. What is done before
// everything else stays, and routine is cut.
func (r *Round) shortened(dst []byte, on, limit int) []byte {
	d := &r.day
	limit -= len(more)
	here, last := r.bounded(false, limit*2/3), r.bounded(true, limit/3)
	if len(last) > 0 {
		last = append([]byte("\n"+lastOfAll+"\n"), last...)
	}
	d.dst, d.start, d.limit, d.on, d.full, d.gap = append(dst, here...), len(dst), limit-len(last)-len(cutShort), on, false, false
	r.held()
	r.leaving(false)
	r.beforehand()
	d.gap = true
	r.part(false)
	if d.full {
		d.dst = append(cut(d.dst, d.start+d.limit), cutShort...)
	}
	d.dst = append(d.dst, last...)
	if d.limit = limit; !d.full && r.any(true) {
		if d.gap = false; len(last) == 0 {
			d.gap = true
			d.line(lastOfAll)
			d.gap = false
		}
		r.leaving(true)
		r.part(true)
		d.dst = cut(d.dst, min(len(d.dst), d.start+limit))
	}
	return append(bytes.TrimRight(d.dst, "\n"), more...)
}

// bounded are the lines of what is done before everything else, in so many bytes. Where
// they are more the last one says how many: nothing pressing is left out in silence.
func (r *Round) bounded(apart bool, room int) (out []byte) {
	const told = " more, for which there is no room here: see the list of the day\n"
	lines, left := r.firsts(apart, room-len(told)-len("FIRST: 100000"))
	for _, l := range lines {
		out = append(append(out, l.text...), '\n')
	}
	if left > 0 {
		out = append(out, "FIRST: "+strconv.Itoa(left)+told...)
	}
	return out
}
