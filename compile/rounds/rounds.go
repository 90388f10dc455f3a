// Package rounds says what stands in a round on a day, worded for the person in
// front of the tanks: what is held and what is pressing first, equal tasks of
// several enclosures in one line, in walking order. Calendars, the list of what
// is due and sheets all print what it returns.
package rounds

import (
	"cmp"
	"slices"
	"strconv"
	"strings"

	"vivary/compile/horizon"
	"vivary/compile/life"
	"vivary/compile/roster"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/civil"
)

// Round is one round with everything that ever stands in it.
type Round struct {
	Plan    *plan.Round
	Horizon horizon.Horizon
	// Days are the days on which anything is to be done.
	Days  horizon.Days
	items []item
	lines []line
	holds []hold
	boxes int // enclosures that the round passes
	// apartUntil says of each enclosure that is kept apart for how many days it is.
	apartUntil []int
}

// item is one task of one enclosure, or one item of its menu.
type item struct {
	days    horizon.Days
	text    string // equal texts share a line
	target  string // the enclosure, and the group where it has several
	total   string // "×12"
	box     int    // place in the walk
	rank    int
	minutes int
	high    bool
	since   string // of what is caught up: when it was last done
	kind    *schema.CareKind
	series  *roster.Entry
	last    bool // quarantine or mites: after everything else, with tools of its own
}

// hold is something that must not be done.
type hold struct {
	from, until int
	text        string
}

// urgent is the rank of what is done before everything else.
const urgent = -1000

// urgency is the order in which things are caught up: water, then the young, then
// the rest.
func urgency(x *roster.Entry, today civil.Date) int {
	switch {
	case x.Kind.Water:
		return 3*urgent + x.Kind.Rank
	case x.Group != nil && x.Group.Stage(today) == "young":
		return 2*urgent + x.Kind.Rank
	}
	return urgent + x.Kind.Rank
}

// New prepares a round. The picks are in walking order.
func New(s *roster.Roster, r *plan.Round, picks []roster.Pick) *Round {
	out := &Round{Plan: r, Horizon: s.Horizon, Days: s.Horizon.New(), items: make([]item, 0, len(picks)+len(picks)/4)}
	boxes := map[*life.Enclosure]int{}
	var lives []*life.Enclosure
	for _, p := range picks {
		x := p.Entry
		box, ok := boxes[x.Life]
		if !ok {
			box = len(boxes)
			boxes[x.Life] = box
			lives = append(lives, x.Life)
		}
		days := p.Days
		out.Days.Union(days)
		it := item{days: days, text: x.Task, target: Target(x), box: box, rank: x.Kind.Rank, minutes: x.Minutes, high: x.High, kind: x.Kind, series: x}
		if it.high {
			it.rank = urgent + it.rank
		}
		for k := range x.Causes {
			it.days = out.pressing(s, x, &x.Causes[k], it)
		}
		out.dishes(s, x, it)
	}
	out.boxes = len(boxes)
	out.apart(lives)
	for i := range out.items {
		if it := &out.items[i]; it.since != "" {
			it.text += " (" + it.since + ")"
		}
	}
	out.sort()
	out.gather()
	for _, l := range lives {
		out.held(s.Horizon, l)
	}
	return out
}

// pressing makes a task of its own, before all others, of what is caught up; it returns
// the days that are left.
func (r *Round) pressing(s *roster.Roster, x *roster.Entry, c *roster.Cause, it item) horizon.Days {
	if c.Why != roster.CaughtUp || !c.Days.Intersects(it.days) {
		return it.days
	}
	rest := it.days.Clone()
	rest.Subtract(c.Days)
	it.days = it.days.Clone()
	it.days.Keep(c.Days)
	it.high, it.rank = true, urgency(x, s.Horizon.Now())
	if c.Last != 0 {
		it.since = "last done " + c.Last.Short()
	}
	r.dishes(s, x, it)
	return rest
}

// sort puts the items in the order in which they are done. An item is large, so
// that places are sorted and each is moved once.
func (r *Round) sort() {
	order := make([]int, len(r.items))
	for i := range order {
		order[i] = i
	}
	slices.SortStableFunc(order, func(x, y int) int {
		a, b := &r.items[x], &r.items[y]
		switch {
		case a.last != b.last:
			if b.last {
				return -1
			}
			return 1
		case a.rank != b.rank:
			return cmp.Compare(a.rank, b.rank)
		case a.text != b.text:
			return cmp.Compare(a.text, b.text)
		}
		return cmp.Compare(a.box, b.box)
	})
	sorted := make([]item, len(order))
	for i, k := range order {
		sorted[i] = r.items[k]
	}
	r.items = sorted
}

// dishes adds an item, or one for each item of its menu.
func (r *Round) dishes(s *roster.Roster, x *roster.Entry, it item) {
	if len(x.Menu) == 0 || x.Kind != schema.KindFeed {
		r.task(x, it)
		return
	}
	if x.Killed != nil {
		dead, live := it, it
		dead.days, live.days = it.days.Clone(), it.days.Clone()
		for i := range dead.days {
			dead.days[i] &= x.Killed[i]
		}
		live.days.Subtract(x.Killed)
		r.menu(s, x, dead, true)
		r.menu(s, x, live, false)
		return
	}
	r.menu(s, x, it, false)
}

// task adds an item of a task that is no meal of a menu; on some days its prey may be
// killed first.
func (r *Round) task(x *roster.Entry, it item) {
	if x.Killed != nil && x.Killed.Intersects(it.days) {
		dead := it
		dead.text += ", killed"
		dead.days = it.days.Clone()
		dead.days.Keep(x.Killed)
		it.days = it.days.Clone()
		it.days.Subtract(x.Killed)
		r.items = append(r.items, dead)
	}
	r.items = append(r.items, it)
}

// menu adds an item for each item of a menu. Equal items of a menu are one line.
func (r *Round) menu(s *roster.Roster, x *roster.Entry, it item, killed bool) {
	if len(x.Menu) == 1 {
		it.text, it.total = s.DishAs(x, &x.Menu[0], s.Horizon.Now(), killed)
		r.items = append(r.items, it)
		return
	}
	from := len(r.items)
next:
	for k := range x.Menu {
		one := it
		one.text, one.total = s.DishAs(x, &x.Menu[k], s.Horizon.Now(), killed)
		one.days = s.Horizon.New()
		for i := range one.days {
			one.days[i] = it.days[i] & x.Menu[k].Days[i]
		}
		for j := from; j < len(r.items); j++ {
			if r.items[j].text == one.text {
				r.items[j].days.Union(one.days)
				continue next
			}
		}
		r.items = append(r.items, one)
	}
}

// apart moves what is in quarantine, or has mites, to the end of the round.
func (r *Round) apart(lives []*life.Enclosure) {
	for box, l := range lives {
		until := civil.Date(0)
		for _, g := range l.Groups {
			until = max(until, g.Quarantined)
		}
		if l.HasMites && l.Mites+28 > until {
			until = l.Mites + 28
		}
		if until <= r.Horizon.Now() {
			continue
		}
		n := min(int(until-r.Horizon.From), r.Horizon.Days)
		r.apartUntil = append(r.apartUntil, n)
		for i, end := 0, len(r.items); i < end; i++ {
			if r.items[i].box != box {
				continue
			}
			before, after := r.Horizon.New(), r.Horizon.New()
			before.AddRun(0, n, r.Horizon.Days)
			after.AddRun(n, r.Horizon.Days, r.Horizon.Days)
			for k := range before {
				before[k] &= r.items[i].days[k]
				after[k] &= r.items[i].days[k]
			}
			normal := r.items[i]
			r.items[i].last, r.items[i].days = true, before
			if after.Count() > 0 {
				normal.days = after
				r.items = append(r.items, normal)
			}
		}
	}
}

var holdWords = []struct {
	mask life.Mask
	text string
}{{life.Meals, "no food"}, {life.Disturbing, "leave alone"}, {life.Misting, "no misting"}, {life.Heating, "heating off"}}

// held adds the holds of an enclosure that matter in this round.
func (r *Round) held(h horizon.Horizon, l *life.Enclosure) {
	add := func(x *life.Hold, name string) {
		var said []string
		for _, w := range holdWords {
			if x.What&w.mask != 0 {
				said = append(said, w.text)
			}
		}
		text := strings.Join(said, ", ")
		text = strings.ToUpper(text[:1]) + text[1:]
		r.holds = append(r.holds, hold{int(x.From - h.From), int(x.Until - h.From), text + ": " + name + " (" + x.Why + "; " + x.End + ")"})
	}
	for i := range l.Holds {
		add(&l.Holds[i], l.Plan.Shown())
	}
	for _, g := range l.Groups {
		for i := range g.Holds {
			add(&g.Holds[i], targetOf(l, g))
		}
	}
}

// Target is the name of what a series is for, as people see it.
func Target(s *roster.Entry) string { return targetOf(s.Life, s.Group) }

func targetOf(l *life.Enclosure, g *life.Group) string {
	name := brief(l.Plan.Shown())
	if g != nil && len(l.Groups) > 1 {
		name += " " + g.Animals.Name.V
	}
	return name
}

// maxName is how many characters of a title stand in a list. A longer one would
// push the others out of the entry.
const maxName = 40

// brief is a title as it stands in a list: on one line, and not too long.
func brief(title string) string {
	plain := true
	for i := 0; i < len(title); i++ {
		plain = plain && title[i] >= ' ' && title[i] < 0x7f
	}
	if plain && len(title) <= maxName {
		return title
	}
	title = strings.Join(strings.FieldsFunc(title, func(r rune) bool { return r <= ' ' || r == 0x7f }), " ")
	if r := []rune(title); len(r) > maxName {
		return string(r[:maxName-1]) + "…"
	}
	return title
}

// Line is one line of a round.
type Line struct {
	Text    string
	Targets []Stop
	All     bool // it is for every enclosure of its part of the round, and has no more to say of any
	Boxes   int  // how many enclosures it is for
	Minutes int
	High    bool
	Last    bool
	Kind    *schema.CareKind
}

// Stop is one enclosure of a line.
type Stop struct {
	Name, Total string
	Series      *roster.Entry
}

// Sheet is a round on one day.
type Sheet struct {
	Round   *plan.Round
	Date    civil.Date
	Holds   []string
	Lines   []Line
	Minutes int
}

// On returns the round on day i of the horizon.
func (r *Round) On(i int) Sheet {
	s := Sheet{Round: r.Plan, Date: r.Horizon.Date(i)}
	for k := range r.holds {
		if h := &r.holds[k]; h.from <= i && i < h.until {
			s.Holds = append(s.Holds, h.text)
		}
	}
	r.walk(i, func(x run) {
		first := &r.items[x.from]
		l := Line{Text: first.text, High: first.high, Last: first.last, Kind: first.kind, Minutes: x.minutes, All: r.all(&x, i), Boxes: x.boxes, Targets: make([]Stop, 0, x.stops)}
		r.stops(x.line, i, func(k, _ int) {
			it := &r.items[k]
			l.Targets = append(l.Targets, Stop{it.target, it.total, it.series})
		})
		s.Lines = append(s.Lines, l)
		s.Minutes += x.minutes
	})
	return s
}

// Names returns the targets of a line as they are read, "all 8 enclosures" where
// that is so.
func (l *Line) Names() string {
	if l.All {
		return "all " + strconv.Itoa(l.Boxes)
	}
	var b []byte
	for i, t := range l.Targets {
		if i > 0 {
			b = append(b, ", "...)
		}
		b = append(b, t.Name...)
		if t.Total != "" {
			b = append(b, ' ')
			b = append(b, t.Total...)
		}
	}
	return string(b)
}
