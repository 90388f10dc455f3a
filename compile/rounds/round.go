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
	// Usual are the days on which whoever does the round does it, where Days are those
	// of one person: a stand-in is to find the round as its keeper knows it.
	Usual   horizon.Days
	Rank    int // the order in which things are done, lowest first
	Minutes int
	High    bool // before everything else
	Leaving bool // the last before days when nobody comes; before the round
	// Passing says that the log or an absence brought it, for a time. It stands in the
	// round like any other, and says nothing of how the round is best walked.
	Passing bool
}

// Hold is a state in which the animals of a place are, from a day until another.
type Hold struct {
	Place       int
	From, Until int
	// Text says why, what may be done, and until when: "young since 5 Nov: water through
	// the hatch, lift nothing (until Sat 5 Dec)".
	Text  string
	Group string // whose it is, where several groups live in the enclosure
	Team  bool   // it is no hold, but says who goes in together
}

// Round is one round with everything that ever stands in it. It keeps room for
// the day that it writes, so that one round is for one goroutine at a time.
type Round struct {
	Plan    *plan.Round
	Horizon horizon.Horizon
	// Days are the days on which anything is to be done.
	Days horizon.Days

	places   []Place
	room     []int   // of each place, among the sections
	names    []name  // as they are told apart in the whole round
	short    []name  // as they are told apart in their room
	items    []Item  // in walking order
	said     []int32 // of each item, among the texts
	texts    []string
	tasks    []task // the round proper, then what is apart
	lines    []line
	holds    []held
	kinds    []*schema.CareKind // by rank
	sections []section          // the rooms, then what is apart
	day      day
}

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

// section is a stretch of the walk that is worked through before the next: a room,
// or what is kept apart and comes last.
type section struct {
	title  string
	label  string // the title as it stands within a line
	places []int32
	lines  []int // by rank, of what has no line before the rooms
	byTask bool
	alone  bool // its title is that of the only enclosure, which no line has to name
}

// held is what shares the words of a hold.
type held struct {
	text, group string
	team        bool
	spans       []span
}

type span struct {
	place       int32
	from, until int
}

// Make prepares a round from the places that it passes, in walking order, what is
// to be done there and in which states the animals are.
func Make(r *plan.Round, h horizon.Horizon, places []Place, items []Item, holds []Hold) *Round {
	out := &Round{Plan: r, Horizon: h, Days: h.New(), places: places, items: walked(items)}
	out.rooms()
	out.name()
	out.word()
	out.gather()
	out.vocabulary()
	out.layout()
	out.hold(holds)
	out.day.init(out)
	return out
}

// walked returns items in walking order.
func walked(items []Item) []Item {
	byPlace := func(a, b Item) int { return cmp.Compare(a.Place, b.Place) }
	if slices.IsSortedFunc(items, byPlace) {
		return items
	}
	items = slices.Clone(items)
	slices.SortStableFunc(items, byPlace)
	return items
}

// elsewhere is the title of the places that are in no room, where others are.
const elsewhere = "Elsewhere"

// rooms makes a section of each room, and a last one of what is kept apart.
func (r *Round) rooms() {
	at := map[string]int{}
	r.room = make([]int, len(r.places))
	apart := section{}
	for i := range r.places {
		p := &r.places[i]
		k, ok := at[p.Room]
		if !ok {
			k = len(r.sections)
			at[p.Room] = k
			r.sections = append(r.sections, section{title: cmp.Or(p.Room, elsewhere)})
		}
		r.room[i] = k
		r.sections[k].places = append(r.sections[k].places, int32(i))
		if p.Apart > 0 {
			apart.places = append(apart.places, int32(i))
		}
	}
	if len(r.sections) == 1 {
		r.sections[0].title = ""
	}
	for i := range r.sections {
		r.sections[i].label = brief(r.sections[i].title)
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
		s.byTask = c.tasks[i] < len(s.places)
		if len(r.places) == 1 {
			s.title, s.alone, s.byTask = r.names[0].text, true, true
		}
	}
	for i := range r.tasks {
		t := &r.tasks[i]
		t.common = !t.high && !t.leaving && len(r.places) > 1 && r.common(t, c)
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
		return apart.byTask || c.often[t.said] && most(c.apart[t.said], len(apart.places))
	}
	return r.apart() == 1 && r.sections[0].byTask || c.often[t.said] && most(c.places[t.said], len(r.places))
}

// most is of how many enclosures a task is the same before it is said of all: of
// more than three, and of half of those there are.
func most(n, of int) bool { return n > few && 2*n >= of }

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
	for k := range total {
		c.often[k] = union[k] != nil && 10*total[k] >= 3*union[k].Count()*c.places[k]
	}
}

// hold puts together the holds of the same words.
func (r *Round) hold(holds []Hold) {
	type words struct{ text, group string }
	at := map[words]int{}
	for i := range holds {
		h := &holds[i]
		w := words{h.Text, h.Group}
		k, ok := at[w]
		if !ok {
			k = len(r.holds)
			at[w] = k
			r.holds = append(r.holds, held{text: h.Text, group: h.Group, team: h.Team})
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
