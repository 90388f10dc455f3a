package rounds

import (
	"regexp"
	"slices"
	"strings"

	"vivary/compile/horizon"
	"vivary/compile/life"
	"vivary/compile/roster"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/civil"
)

// Everything that reads the roster stands in this file; the form of a round knows
// only places, items and holds.

// gatherer collects what stands in a round.
type gatherer struct {
	roster *roster.Roster
	done   func(*roster.Entry) bool // nil for nothing
	lives  []*life.Enclosure
	places []Place
	items  []Item
	holds  []Hold
}

// New prepares a round. The picks are in walking order.
func New(s *roster.Roster, r *plan.Round, picks []roster.Pick) *Round {
	return prepare(s, r, picks, nil)
}

func prepare(s *roster.Roster, r *plan.Round, picks []roster.Pick, done func(*roster.Entry) bool) *Round {
	g := &gatherer{roster: s, done: done, items: make([]Item, 0, len(picks)+len(picks)/4)}
	at := map[*life.Enclosure]int{}
	for _, p := range picks {
		l := p.Entry.Life
		place, known := at[l]
		if !known {
			place = len(g.places)
			at[l] = place
			g.place(l)
		}
		if k := p.Entry.Rack; k != nil && !known {
			g.places[place].Rack = true
			g.showsOfRack(&g.places[place], k.Plan)
		} else if p.Entry.Store != nil {
			g.places[place].Rack = true // no animals of the collection live there
		} else if !known {
			g.shows(&g.places[place], l)
		}
		g.entry(p.Entry, place, p.Days)
	}
	for i, l := range g.lives {
		g.pressing(l, i, picks)
	}
	g.allowed(picks, at)
	for i := range g.items {
		if empty := g.places[g.items[i].Place].Empty; empty != nil {
			empty.Subtract(g.items[i].Days)
		}
	}
	lay := Make
	if done != nil {
		lay = Walked
	}
	out := lay(r, s.Horizon, g.places, g.items, g.holds)
	out.ring = g.rings(picks)
	if r.Turns != nil {
		out.by = func(on int) string {
			who, _ := s.People.Doer(r.Keeper.V, on)
			return person(s, who)
		}
	}
	return out
}

func (g *gatherer) place(l *life.Enclosure) {
	at := len(g.places)
	p := Place{Name: l.Plan.Name.V, Title: l.Plan.Shown(), Apart: g.apart(l), Empty: g.empty(l)}
	if l.Plan.Place != nil {
		p.Room = flat(l.Plan.Place.Shown())
	}
	g.places, g.lives = append(g.places, p), append(g.lives, l)
	g.held(l, at) // before its tasks, which do not repeat it
}

// mitesApart is for how many days an enclosure that had mites comes last.
const mitesApart = 28

// empty returns the days on which all animals of an enclosure are gone, nil for none.
func (g *gatherer) empty(l *life.Enclosure) horizon.Days {
	if !slices.ContainsFunc(l.Groups, func(x *life.Group) bool {
		return slices.ContainsFunc(x.Numbers, func(n life.Number) bool { return n.Count == 0 })
	}) {
		return nil
	}
	h := g.roster.Horizon
	out := h.New()
	for i := 0; i < h.Days; i++ {
		if !slices.ContainsFunc(l.Groups, func(x *life.Group) bool { return x.Count(h.Date(i)) > 0 }) {
			out.Add(i)
		}
	}
	if out.Next(0) < 0 {
		return nil
	}
	return out
}

// apart returns for how many days of the horizon an enclosure is kept apart.
func (g *gatherer) apart(l *life.Enclosure) int {
	until := civil.Date(0)
	for _, x := range l.Groups {
		until = max(until, x.Quarantined)
	}
	if l.HasMites {
		until = max(until, l.Mites+mitesApart)
	}
	h := g.roster.Horizon
	return min(max(0, int(until-h.From)), h.Days)
}

// entry adds what an entry is in the round. What the log says of a day is told with its
// year where that day is long ago.
func (g *gatherer) entry(x *roster.Entry, place int, days horizon.Days) {
	if x.Once == nil && (x.Group == nil || !x.Group.Logged) {
		g.entryOn(x, place, telling{0, days, x.Days})
		return
	}
	t := taskOf(x)
	text := t.Phrase + " " + t.Group
	if x.Ask != nil {
		text += " " + x.Ask.Aside
	}
	for _, p := range g.tellings(text, days, x.Days) {
		g.entryOn(x, place, p)
	}
}

// entryOn adds what an entry is on some days. A day on which it is caught up is a task
// of its own, before all others, and so is the last water before days when nobody
// comes.
func (g *gatherer) entryOn(x *roster.Entry, place int, p telling) {
	it := Item{Task: taskOf(x), Place: place, Days: p.days, Rank: x.Kind.Rank, Minutes: x.Minutes, High: x.High, Passing: x.Once != nil, Cautions: roster.Cautions(x.Life, x.Kind, g.roster.Horizon.Now())}
	if g.done != nil { // a calendar is told of neither
		it.Done, it.Said = g.done(x), x.Said()
	}
	if p.on != 0 {
		it.Task = Told(x, it.Task, p.on)
	}
	if x.High && x.Once != nil {
		it.Rank += max(x.Once.Interval, 1) // what is asked every day is more pressing than each week
	}
	if !slices.Equal(p.days, p.usual) {
		it.Usual = p.usual
	}
	if x.Group != nil {
		it.Animals = x.Group.Animals.Name.V
	}
	if x.Ask != nil {
		it.Answer = x.Ask.Write
	}
	if a := x.Ask; a != nil && x.High {
		it.Rank += harm(a.Harm)
		if it.Short, it.Aside = aside(x, it.Group); p.on != 0 {
			it.Short, it.Aside = yearless(it.Short, p.on), yearless(it.Aside, p.on)
		}
	}
	for k := range x.Causes {
		switch c := &x.Causes[k]; {
		case !c.Days.Intersects(it.Days):
		case c.Why == roster.CaughtUp:
			it.Days = g.caughtUp(x, c, it)
		case c.Why == roster.Leaving && x.Kind.Water:
			it.Days = g.fillUp(x, c, it)
		}
	}
	g.dishes(x, it)
}

// caughtUp adds what is caught up, and returns the days that are left.
func (g *gatherer) caughtUp(x *roster.Entry, c *roster.Cause, it Item) horizon.Days {
	rest := it.Days.Clone()
	rest.Subtract(c.Days)
	it.Days = both(it.Days, c.Days)
	it.High, it.Passing, it.Rank = true, true, urgency(x, g.roster.Horizon.Now())
	if c.Last != 0 {
		it.Note = "last done " + yearless(c.Last.Words(), g.roster.Horizon.Now())
	}
	g.dishes(x, it)
	return rest
}

// fillUp adds the last water before days when nobody comes, a task of its own for
// each of those days, and returns the days that are left.
func (g *gatherer) fillUp(x *roster.Entry, c *roster.Cause, it Item) horizon.Days {
	rest, on := it.Days.Clone(), both(it.Days, c.Days)
	rest.Subtract(c.Days)
	full := it
	full.Leaving, full.Passing = true, true
	for i := on.Next(0); i >= 0; i = on.Next(i + 1) {
		full.Days = g.roster.Horizon.New()
		full.Days.Add(i)
		full.Task = fill(g.roster, x, it.Task, i)
		g.dishes(x, full)
	}
	return rest
}

// fill is the last water before days when nobody comes, of the task that it is on other
// days.
func fill(s *roster.Roster, x *roster.Entry, t Task, on int) Task {
	if t.Phrase = "Before leaving, fill to the brim"; t.Own {
		t.Phrase = "Before leaving, to the brim: " + x.Task
	}
	comes, opens := s.People.Present(x.Keeper, on+1), s.Opens(x, on+1)
	if t.Note = "nobody comes until " + s.Horizon.Date(comes).Short(); opens > comes {
		t.Note = "nobody opens it until " + s.Horizon.Date(opens).Short()
	}
	return t
}

// FillUps are the days on which an entry is the last water before days when nobody
// comes, or nil for none.
func FillUps(x *roster.Entry) horizon.Days {
	if !x.Kind.Water {
		return nil
	}
	var out horizon.Days
	for k := range x.Causes {
		if c := &x.Causes[k]; c.Why == roster.Leaving {
			if out == nil {
				out = both(c.Days, x.Days)
			}
			out.Union(both(c.Days, x.Days))
		}
	}
	return out
}

// In puts a task into the words of a manner.
func (t *Task) In(m *roster.Manner) {
	t.Manner = Manner(m.May)
	t.Prey = bounded(t.Prey, t.Manner)
}

// OwnDays are the days of an entry with words that are not those of every day: the last
// water before leaving, killed prey, and whatever a state lets be done only so and so;
// nil for none.
func OwnDays(x *roster.Entry) horizon.Days {
	out := FillUps(x)
	add := func(days horizon.Days) {
		if days == nil {
			return
		}
		if out == nil {
			out = both(days, x.Days)
		}
		out.Union(both(days, x.Days))
	}
	add(x.Killed)
	for k := range x.Manners {
		add(x.Manners[k].Days)
	}
	return out
}

// FillUp is what an entry asks for on one of its FillUps, where it stands alone.
func FillUp(s *roster.Roster, x *roster.Entry, on int) Task { return fill(s, x, TaskOf(x), on) }

// harm is where an urgent question stands among what is done first: what harms soonest
// before all else, what bears a day with what is caught up.
func harm(h life.Harm) int {
	if h == life.HarmSlow {
		return 0
	}
	return (3 + int(h)) * before
}

// aside parts a question into what is the same at every place, and what is this one's.
func aside(x *roster.Entry, group string) (short, aside string) {
	a := x.Ask
	if a.Short == "" {
		return small(flat(x.Task)), group
	}
	if aside = flat(a.Aside); group != "" {
		aside = group + ", " + aside
	}
	return small(flat(a.Short)), aside
}

// before is by how much something comes before what is done in its usual order.
const before = -1000

// urgency is the order in which things are caught up: water, then the young, then
// the rest.
func urgency(x *roster.Entry, today civil.Date) int {
	switch {
	case x.Kind.Water:
		return 2*before + x.Kind.Rank
	case x.Group != nil && x.Group.Stage(today) == "young":
		return before + x.Kind.Rank
	}
	return x.Kind.Rank
}

// taskOf is what a series asks for, without the prey of a meal.
func taskOf(x *roster.Entry) Task {
	t := Task{Kind: x.Kind, Phrase: x.Task, Own: x.Own}
	if x.Group != nil && len(x.Life.Groups) > 1 {
		t.Group = called(x.Group)
	}
	return t
}

// dishes adds an item for each manner in which it is done, which a state brings for a
// time, and one for the days on which it is done as usual.
func (g *gatherer) dishes(x *roster.Entry, it Item) {
	for k := range x.Manners {
		m := &x.Manners[k]
		if !m.Days.Intersects(it.Days) {
			continue
		}
		one := it
		one.Days, one.Passing = both(it.Days, m.Days), true
		if m.May.Manner == schema.Outside {
			one.Cautions = nil // nothing is opened
		}
		one.Manner = g.besides(m.May, one.Place, one.Days)
		g.dish(x, one)
		if it.Usual == nil {
			it.Usual = it.Days // the form of the round is not to hang on a state
		}
		it.Days = it.Days.Clone()
		it.Days.Subtract(m.Days)
	}
	g.dish(x, it)
}

// Manner words a cell of the table of states, as it stands behind a task: "through the
// hatch, lift nothing"; empty for as usual.
func Manner(m schema.May) string {
	how, words := m.Manner.String(), flat(m.Words)
	switch brief, _, _ := strings.Cut(how, ","); {
	case m.Manner == schema.AsUsual, m.Manner == schema.Outside && strings.Contains(words, "outside"):
		return words
	case words == "":
		return how
	default:
		return brief + ", " + words
	}
}

// besides words a manner as Manner does, without what the lines of states say on those
// days at the head of the round: that nothing is opened or lifted, or its very words.
func (g *gatherer) besides(m schema.May, place int, days horizon.Days) string {
	words := flat(m.Words)
	repeats := func(text string) bool { return strings.Contains(text, words) }
	switch {
	case m.Manner == schema.AsUsual && !strings.Contains(words, oneItem) && g.says(place, days, repeats):
		return ""
	case m.Manner != schema.AsUsual && g.says(place, days, still.MatchString):
		return words
	}
	return Manner(m)
}

// still finds the words of a rule by which nothing is opened or lifted.
var still = regexp.MustCompile("through the hatch|lift nothing|open nothing|leave alone")

// says reports whether on each of some days the line of a state tells something of an
// enclosure.
func (g *gatherer) says(place int, days horizon.Days, something func(text string) bool) bool {
	left := days.Clone()
	for i := range g.holds {
		if h := &g.holds[i]; h.Place == place && something(h.Text) {
			told := g.roster.Horizon.New()
			told.AddRun(max(h.From, 0), h.Until, g.roster.Horizon.Days)
			left.Subtract(told)
		}
	}
	return left.Next(0) < 0
}

// oneItem begins the words of a manner that bounds a meal, whatever its usual portion is.
const oneItem = "one small item"

// dish adds an item for each item of the menu, on the days of its turn, apart from
// those on which the prey is killed first.
func (g *gatherer) dish(x *roster.Entry, it Item) {
	if len(x.Menu) == 0 || x.Kind != schema.KindFeed {
		g.task(x, it)
		return
	}
	for k := range x.Menu {
		one := it
		one.Prey = bounded(PreyOf(g.roster, x, &x.Menu[k]), it.Manner)
		if one.Days = it.Days; len(x.Menu) > 1 {
			one.Days = both(it.Days, x.Menu[k].Days)
			if it.Usual != nil {
				one.Usual = both(it.Usual, x.Menu[k].Days)
			}
		}
		if x.Killed != nil && one.Days.Intersects(x.Killed) {
			dead := one
			dead.Days, dead.Prey.Killed, dead.Passing = both(one.Days, x.Killed), true, true
			g.items = append(g.items, dead)
			one.Days = one.Days.Clone()
			one.Days.Subtract(x.Killed)
		}
		g.items = append(g.items, one)
	}
}

// bounded returns what is given in a manner that may bound it.
func bounded(p Prey, manner string) Prey {
	if strings.Contains(manner, oneItem) {
		p.Each = min(p.Each, 1)
	}
	return p
}

// task adds an item without a menu. Where the log brought it, its prey may have to be
// killed on some days.
func (g *gatherer) task(x *roster.Entry, it Item) {
	if x.Killed != nil && it.Days.Intersects(x.Killed) {
		dead := it
		dead.Days = both(it.Days, x.Killed)
		dead.Task = dead.Task.Dead()
		g.items = append(g.items, dead)
		it.Days = it.Days.Clone()
		it.Days.Subtract(x.Killed)
	}
	g.items = append(g.items, it)
}

// both returns the days that are in two sets.
func both(a, b horizon.Days) horizon.Days {
	out := a.Clone()
	for i := range out {
		out[i] &= b[i]
	}
	return out
}

// PreyOf is an item of a menu for the animals that there are today.
func PreyOf(s *roster.Roster, x *roster.Entry, p *roster.Portion) Prey {
	out := Prey{One: p.Prey.String(), Many: p.Prey.String(), Each: p.Items, Animals: x.Group.Count(s.Horizon.Now()), Uncounted: x.Group.Guessed, Killed: x.Meal.Killed.V, Dust: x.Meal.Dusted.V}
	if f := s.Plan.Library.Feeder(p.Prey.Feeder); f != nil {
		// A title may be longer than what is said every day: "house cricket".
		out.One, out.Many = strings.ReplaceAll(f.Name.V, "-", " "), f.Plural.Or(f.Name.V+"s")
		if p.Prey.Size != "" {
			out.One, out.Many = p.Prey.Size+" "+out.One, p.Prey.Size+" "+out.Many
		}
	}
	return out
}

// Brief is the name of an enclosure, where it stands alone.
func Brief(l *life.Enclosure) string { return brief(l.Plan.Shown()) }

// Target is the name of what a series is for, where it stands alone.
func Target(x *roster.Entry) string {
	name := Brief(x.Life)
	if x.Group != nil && len(x.Life.Groups) > 1 {
		name += " " + x.Group.Animals.Name.V
	}
	return name
}

// TaskOf is what a series asks for, without prey or group, where it stands alone.
func TaskOf(x *roster.Entry) Task {
	t := taskOf(x)
	t.Group = ""
	return t
}
