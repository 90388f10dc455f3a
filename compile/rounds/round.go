// Package rounds says what stands in a round on a day, worded for the person in
// front of the tanks. Calendars, the day's list and sheets all print what it
// returns; which days those are is for others to say.
package rounds

import (
	"cmp"
	"math/bits"
	"slices"

	"vivary/compile/horizon"
	"vivary/plan"
	"vivary/schema"
)

// Place is an enclosure of a round.
type Place struct {
	Name, Title string
	Room        string // the title of its room
	Apart       int    // for how many days of the horizon it is kept apart: in quarantine, or with mites
}

// Item is a task at one place, on some days.
type Item struct {
	Task
	Place   int    // in walking order
	Animals string // whose it is, also where they live alone; empty for all of the enclosure
	Days    horizon.Days
	Rank    int // the order in which things are done, lowest first
	Minutes int
	High    bool // before everything else
	// Passing says that the log or an absence brought it, for a time. It stands in the
	// round like any other, and says nothing of how the round is best walked.
	Passing bool
}

// Hold is what must not be done at a place, from a day until another.
type Hold struct {
	Place       int
	From, Until int
	What        string // "Leave alone"
	Group       string // whose it is, where several groups live in the enclosure
	Why         string // "young since 5 Nov; until Sat 5 Dec"
}

// Round is one round with everything that ever stands in it. It keeps room for
// the day that it writes, so that one round is for one goroutine at a time.
type Round struct {
	Plan    *plan.Round
	Horizon horizon.Horizon
	// Days are the days on which anything is to be done.
	Days horizon.Days

	places   []Place
	names    []name
	items    []Item
	tasks    []task // the rounds proper, then what is apart
	lines    []line
	holds    []held
	kinds    []*schema.CareKind // by rank
	sections []section          // the rooms, then what is apart
	day      day
}

// task is what shares its words: the lines of one text.
type task struct {
	key
	first string // its text at the beginning of a line
	kind  int    // among the kinds of the round
	lines []line
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

// section is a stretch of the walk that is worked through before the next: a room,
// or what is kept apart and comes last.
type section struct {
	title  string
	places []int32
	lines  []int // by rank
	byTask bool
	alone  bool // its title is that of the only enclosure, which no line has to name
}

// held is what shares the words of a hold.
type held struct {
	what, why string
	spans     []span
}

type span struct {
	place       int32
	from, until int
}

// Make prepares a round from the places that it passes, in walking order, what is
// to be done there and what must not be done.
func Make(r *plan.Round, h horizon.Horizon, places []Place, items []Item, holds []Hold) *Round {
	out := &Round{Plan: r, Horizon: h, Days: h.New(), places: places, names: named(places)}
	out.items = items
	out.rooms()
	out.gather()
	out.vocabulary()
	out.layout()
	out.leave(holds)
	out.day.init(out)
	return out
}

// rooms makes a section of each room, and a last one of what is kept apart.
func (r *Round) rooms() {
	at := map[string]int{}
	apart := section{}
	for i := range r.places {
		p := &r.places[i]
		k, ok := at[p.Room]
		if !ok {
			k = len(r.sections)
			at[p.Room] = k
			r.sections = append(r.sections, section{title: p.Room})
		}
		r.sections[k].places = append(r.sections[k].places, int32(i))
		if p.Apart > 0 {
			apart.places = append(apart.places, int32(i))
		}
	}
	if len(r.sections) == 1 {
		r.sections[0].title = ""
	}
	r.sections = append(r.sections, apart)
}

// apart is the section of what is kept apart.
func (r *Round) apart() int { return len(r.sections) - 1 }

// part is an item on some of its days. What is kept apart for a time is two parts,
// the first of which comes last in the round.
type part struct {
	item  int32
	apart bool
	days  horizon.Days
}

// split takes the items apart, and leaves out what never comes up.
func (r *Round) split() []part {
	out := make([]part, 0, len(r.items)+len(r.items)/8)
	add := func(i int, apart bool, days horizon.Days) {
		if days.Next(0) >= 0 {
			out = append(out, part{int32(i), apart, days})
		}
	}
	for i := range r.items {
		it := &r.items[i]
		r.Days.Union(it.Days)
		n := r.places[it.Place].Apart
		if n <= 0 {
			add(i, false, it.Days)
			continue
		}
		before, after := r.Horizon.New(), it.Days.Clone()
		before.AddRun(0, n, r.Horizon.Days)
		after.Subtract(before)
		for k := range before {
			before[k] &= it.Days[k]
		}
		add(i, false, after)
		add(i, true, before)
	}
	return out
}

// key tells tasks apart: one text may stand in several places of the order.
type key struct {
	text        string
	rank        int
	high, apart bool
}

// gather makes the tasks and their lines.
func (r *Round) gather() {
	parts := r.split()
	byTask := r.sort(parts)
	section := make([]int, len(r.places))
	for s := range r.sections[:r.apart()] {
		for _, p := range r.sections[s].places {
			section[p] = s
		}
	}
	// The list of lines moves while it grows, so that tasks get their parts of it at
	// the end.
	from := make([]int, len(r.tasks)+1)
	for t, parts := range byTask {
		r.cells(t, parts, section)
		from[t+1] = len(r.lines)
	}
	for t := range r.tasks {
		r.tasks[t].lines = r.lines[from[t]:from[t+1]]
	}
}

// sort makes the tasks in the order in which they are done, and returns the parts
// of each.
func (r *Round) sort(parts []part) [][]part {
	texts, keys := map[Task]string{}, map[key]int{}
	var tasks []task
	var of [][]part
	for _, p := range parts {
		it := &r.items[p.item]
		text, known := texts[it.Task]
		if !known {
			text = it.Task.String()
			texts[it.Task] = text
		}
		at := key{text, it.Rank, it.High, p.apart}
		k, known := keys[at]
		if !known {
			k = len(tasks)
			keys[at] = k
			tasks = append(tasks, task{key: at, first: it.Task.Sentence()})
			of = append(of, nil)
		}
		of[k] = append(of[k], p)
	}
	order := make([]int, len(tasks))
	for i := range order {
		order[i] = i
	}
	slices.SortFunc(order, func(x, y int) int { return tasks[x].before(&tasks[y].key) })
	r.tasks = make([]task, len(order))
	sorted := make([][]part, len(order))
	for i, k := range order {
		r.tasks[i], sorted[i] = tasks[k], of[k]
	}
	return sorted
}

// before compares two tasks by the order in which they are done.
func (a *key) before(b *key) int {
	switch {
	case a.apart != b.apart:
		return yes(a.apart) - yes(b.apart)
	case a.high != b.high:
		return yes(b.high) - yes(a.high)
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
func (r *Round) cells(t int, parts []part, section []int) {
	slices.SortStableFunc(parts, func(a, b part) int { return cmp.Compare(r.items[a.item].Place, r.items[b.item].Place) })
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
		s := section[it.Place]
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

// layout says of each section whether it is worked by enclosure or by task: by
// what has fewer lines when everything comes up at once, by enclosure where that is
// the same. Whoever passes a few different tanks stops at each and does all that is
// to be done there; whoever passes forty tubs carries the bottle past all of them,
// then the prey.
//
// It is not counted for each day: the form would change from one day to the next
// with the days on which water falls, and an entry would change because another
// day did. Neither does it hang on what comes and goes with the log.
//
// A round of one enclosure names it once, and has a line for each task.
func (r *Round) layout() {
	section := make([]int, len(r.places))
	for i := range r.sections {
		for _, p := range r.sections[i].places {
			section[p] = i
		}
	}
	// Counted is what the round has for good, also where a hold takes out all of its
	// days for now: the form must not change with a hold.
	type lasting struct {
		section int
		task    Task
	}
	seen := map[lasting]bool{}
	count := make([]int, len(r.sections))
	for i := range r.items {
		it := &r.items[i]
		if k := (lasting{section[it.Place], it.Task}); !it.High && !it.Passing && !seen[k] {
			seen[k] = true
			count[k.section]++
		}
	}
	for i := range r.lines {
		s := &r.sections[r.lines[i].section]
		s.lines = append(s.lines, i)
	}
	for i := range r.sections {
		s := &r.sections[i]
		s.byTask = count[i] < len(s.places)
		if len(r.places) == 1 {
			s.title, s.alone, s.byTask = r.names[0].text, true, true
		}
	}
}

// leave puts together the holds of the same words.
func (r *Round) leave(holds []Hold) {
	type words struct{ what, group, why string }
	at := map[words]int{}
	for i := range holds {
		h := &holds[i]
		w := words{h.What, h.Group, h.Why}
		k, ok := at[w]
		if !ok {
			k = len(r.holds)
			at[w] = k
			why := flat(h.Why)
			if h.Group != "" {
				why = h.Group + ", " + why
			}
			r.holds = append(r.holds, held{what: h.What, why: why})
		}
		r.holds[k].spans = append(r.holds[k].spans, span{int32(h.Place), h.From, h.Until})
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

// Minutes returns how long the round takes on a day.
func (r *Round) Minutes(day int) int {
	n := 0
	for i := range r.lines {
		l := &r.lines[i]
		if l.count(day) == len(l.cells) {
			n += l.minutes
			continue
		}
		l.each(day, func(c *cell) { n += int(c.minutes) })
	}
	return n
}
