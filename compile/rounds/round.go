// Package rounds says what stands in a round on a day, worded for the person in
// front of the tanks. Calendars, the day's list and sheets all print what it
// returns; which days those are is for others to say.
package rounds

import (
	"cmp"
	"slices"

	"vivary/compile/horizon"
	"vivary/plan"
	"vivary/schema"
)

// Place is an enclosure of a round.
type Place struct {
	Name, Title string
	Room        string // the title of its room
	Rack        bool   // it is a rack of enclosures, at which something is done once for all: none of "all"
	Apart       int    // for how many days of the horizon it is kept apart: in quarantine, or with mites
	// Empty are the days on which nobody lives in it and nothing is done: nobody looks for
	// it among "all". It is nil for none.
	Empty horizon.Days
	// Heat and Damp are what thermometer and hygrometer should show, by day.
	Heat, Damp []Show
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
	Done    bool // the log says that it was done today
	// Said are the words of the log, behind the enclosure, that say that it was done; "" of
	// a question, which only the line that it asks for answers.
	Said string
	// Answer are the words to log where it is a question: "born and how many; or not-gravid".
	Answer  string
	Leaving bool // the last before days when nobody comes; before the round
	// Passing says that the log or an absence brought it, for a time. It stands in the
	// round like any other, and says nothing of how the round is best walked.
	Passing bool
	// Short and Aside are its words where one line is about several places: what is the same
	// at all of them, and what is this one's. No Short is a line of its own.
	Short, Aside string
	// Cautions are what to see to before it is done.
	Cautions []*schema.Caution
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

	each     bool // it is written enclosure by enclosure, however long that is
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
	cautions []caution
	kinds    []*schema.CareKind // by rank
	sections []section          // the rooms, then what is apart
	ring     []Ring
	by       func(on int) string // who does it where a rota says whose the day is, nil without one
	ticked   []Tick
	day      day
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
	return laid(r, h, places, items, holds, false)
}

// Walked is Make for a list that has room: every enclosure has its line, however long that is.
func Walked(r *plan.Round, h horizon.Horizon, places []Place, items []Item, holds []Hold) *Round {
	return laid(r, h, places, items, holds, true)
}

func laid(r *plan.Round, h horizon.Horizon, places []Place, items []Item, holds []Hold, each bool) *Round {
	out := &Round{Plan: r, Horizon: h, Days: h.New(), each: each, places: places, items: walked(items)}
	out.rooms()
	out.name()
	out.word()
	out.gather()
	out.vocabulary()
	out.caution()
	out.layout()
	out.hold(holds)
	out.day.init(out)
	out.tick()
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

// Minutes returns how long the round takes on a day, with what it takes to begin.
func (r *Round) Minutes(day int) int {
	n := 0
	if r.Days.Has(day) {
		n = r.Plan.Starts()
	}
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
