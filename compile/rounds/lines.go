package rounds

import (
	"cmp"
	"math/bits"
	"slices"

	"vivary/compile/horizon"
	"vivary/schema"
)

// task is what shares its words: the lines of one text.
type task struct {
	key
	text   string
	first  string // it at the beginning of a line
	kind   int    // among the kinds of the round
	common bool   // it has a line of its own before the rooms
	lines  []line
}

// line is a task in one section. due has for each day the cells that are due, as
// bits: a round is walked on every day of a year, and on most days most of it is
// not due.
type line struct {
	task    int
	section int
	cells   []cell
	words   int      // of 64 cells
	due     []uint64 // words for each day
	minutes int      // of all cells
}

// cell is a task at one place.
type cell struct {
	place   int32
	item    int32
	minutes int32
}

// word puts the items into words, each text once.
func (r *Round) word() {
	r.said = make([]int32, len(r.items))
	tasks, texts := map[Task]int32{}, map[string]int32{}
	for i := range r.items {
		t := &r.items[i].Task
		k, known := tasks[*t]
		if !known {
			text := t.String()
			if k, known = texts[text]; !known {
				k = int32(len(r.texts))
				texts[text] = k
				r.texts = append(r.texts, text)
			}
			tasks[*t] = k
		}
		r.said[i] = k
	}
}

// key tells tasks apart: one text may stand in several places of the order.
type key struct {
	said                 int32
	rank                 int
	high, leaving, apart bool
}

// gather makes the tasks and their lines.
func (r *Round) gather() {
	byTask := r.sort(r.split())
	// The list of lines moves while it grows, so that tasks get their parts of it at
	// the end.
	from := make([]int, len(r.tasks)+1)
	for t, parts := range byTask {
		r.cells(t, parts)
		from[t+1] = len(r.lines)
	}
	for t := range r.tasks {
		r.tasks[t].lines = r.lines[from[t]:from[t+1]]
	}
}

// sort makes the tasks in the order in which they are done, and returns the parts
// of each.
func (r *Round) sort(parts []part) [][]part {
	keys := map[key]int{}
	var tasks []task
	var of [][]part
	for _, p := range parts {
		it := &r.items[p.item]
		at := key{r.said[p.item], it.Rank, it.High, it.Leaving, p.apart}
		k, known := keys[at]
		if !known {
			k = len(tasks)
			keys[at] = k
			tasks = append(tasks, task{key: at, text: r.texts[at.said], first: it.Task.Sentence()})
			of = append(of, nil)
		}
		of[k] = append(of[k], p)
	}
	order := make([]int, len(tasks))
	for i := range order {
		order[i] = i
	}
	slices.SortFunc(order, func(x, y int) int { return tasks[x].before(&tasks[y]) })
	r.tasks = make([]task, len(order))
	sorted := make([][]part, len(order))
	for i, k := range order {
		r.tasks[i], sorted[i] = tasks[k], of[k]
	}
	return sorted
}

// before compares two tasks by the order in which they are done.
func (a *task) before(b *task) int {
	switch {
	case a.apart != b.apart:
		return yes(a.apart) - yes(b.apart)
	case a.high != b.high:
		return yes(b.high) - yes(a.high)
	case a.leaving != b.leaving:
		return yes(b.leaving) - yes(a.leaving)
	}
	return cmp.Or(cmp.Compare(a.rank, b.rank), cmp.Compare(a.text, b.text))
}

func yes(x bool) int {
	if x {
		return 1
	}
	return 0
}

// vocabulary lists the kinds of the round's tasks, by rank.
func (r *Round) vocabulary() {
	for i := range r.tasks {
		if k := r.items[r.tasks[i].lines[0].cells[0].item].Kind; !slices.Contains(r.kinds, k) {
			r.kinds = append(r.kinds, k)
		}
	}
	slices.SortFunc(r.kinds, func(a, b *schema.CareKind) int { return cmp.Compare(a.Rank, b.Rank) })
	for i := range r.tasks {
		r.tasks[i].kind = slices.Index(r.kinds, r.items[r.tasks[i].lines[0].cells[0].item].Kind)
	}
}

// cells adds the lines of a task. The same look at the same animals is one look,
// whoever asks for it.
func (r *Round) cells(t int, parts []part) {
	var days []horizon.Days
	var l *line
	for k, p := range parts {
		it := &r.items[p.item]
		if k > 0 && r.items[parts[k-1].item].Place == it.Place {
			both := days[len(days)-1].Clone()
			both.Union(p.days)
			days[len(days)-1] = both
			continue
		}
		s := r.room[it.Place]
		if p.apart {
			s = r.apart()
		}
		if l == nil || l.section != s {
			l.fill(days, r.Horizon.Days)
			days = days[:0]
			r.lines = append(r.lines, line{task: t, section: s, cells: make([]cell, 0, len(parts)-k)})
			l = &r.lines[len(r.lines)-1]
		}
		l.cells = append(l.cells, cell{int32(it.Place), p.item, int32(it.Minutes)})
		l.minutes += it.Minutes
		days = append(days, p.days)
	}
	l.fill(days, r.Horizon.Days)
}

// fill fills in on which of n days the cells of a line are due.
func (l *line) fill(days []horizon.Days, n int) {
	if l == nil {
		return
	}
	l.words = (len(l.cells) + 63) / 64
	l.due = make([]uint64, l.words*n)
	for i, set := range days {
		at, bit := i>>6, uint64(1)<<(i&63)
		for d := set.Next(0); d >= 0; d = set.Next(d + 1) {
			l.due[d*l.words+at] |= bit
		}
	}
}

// on returns the cells of a line that are due on a day.
func (l *line) on(day int) []uint64 { return l.due[day*l.words : (day+1)*l.words] }

// count returns how many cells of a line are due on a day.
func (l *line) count(day int) int {
	n := 0
	for _, w := range l.on(day) {
		n += bits.OnesCount64(w)
	}
	return n
}

// each calls use for every cell of a line that is due on a day.
func (l *line) each(day int, use func(*cell)) {
	for at, w := range l.on(day) {
		for ; w != 0; w &= w - 1 {
			use(&l.cells[at<<6+bits.TrailingZeros64(w)])
		}
	}
}
