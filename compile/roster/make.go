package roster

import (
	"cmp"
	"slices"
	"sync"

	"vivary/compile/horizon"
	"vivary/compile/identity"
	"vivary/compile/life"
	"vivary/compile/recur"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/civil"
)

// MaxEntries is how many entries a collection may have.
const MaxEntries = 600_000

// DefaultRound is the time of the round that is used where a plan has none.
const DefaultRound civil.Clock = 19*60 + 30

// steps are what becomes of an entry, in this order. Each takes it as the ones
// before have left it, and says why of every day that it changes.
//
// First stand the days as they are planned: everything else is an exception to them.
// Rounds come next, since a day without a round is no day for anything. Holds go
// before absences: what must not be done need not be moved, and a stand-in is never
// asked to do it. What the log put in the place of a meal is looked at once it is
// known on which day somebody is there to give it. What people were told comes after
// all these: it is what became of other days long ago, and must not be moved again. What
// was skipped is caught up then, for only then is it known whether something stands soon
// enough anyway. Last it is known which days stand, and so how each of them is done.
var steps = []func(*builder, *Entry){
	(*builder).plan,
	(*builder).onRounds,
	(*builder).hold,
	(*builder).absences,
	(*builder).inPlace,
	(*builder).asTold,
	(*builder).catchUp,
	(*builder).inHand,
}

// Share works out what the entries of all enclosures depend on. told is what the
// last feeds showed, nil where there are none.
func Share(c *plan.Collection, h horizon.Horizon, told Told) (*Shared, []finding.Finding) {
	p, found := people(c, h)
	s := &Shared{Plan: c, Horizon: h, People: p, Told: told}
	s.Rounds = append(s.Rounds, c.Rounds...)
	if len(s.Rounds) == 0 {
		s.Rounds = append(s.Rounds, madeRound("daily", DefaultRound))
	}
	s.rounds = newRounds(s)
	noted := map[*plan.SpeciesSheet]bool{nil: true}
	for _, e := range c.Enclosures {
		s.rounds.note(e.Care, e.Feeding)
		if sheet := e.Sheet; !noted[sheet] {
			noted[sheet] = true
			s.rounds.note(sheet.Care, sheet.Feeding)
		}
	}
	s.shows = newShows(s)
	found = append(found, s.clockChanges()...)
	found = append(append(found, s.oddDates()...), s.takeTurns()...)
	return s, append(found, s.twoTurns()...)
}

// SameRounds reports whether the rounds of two are the same, those among them that were
// made for times of care's own; and takes over the other's, so that entries of both
// are in the same ones.
func (s *Shared) SameRounds(o *Shared) bool {
	if !slices.EqualFunc(s.Rounds, o.Rounds, func(a, b *plan.Round) bool {
		return a == b || !a.At.Written() && !b.At.Written() && a.Name.V == b.Name.V
	}) {
		return false
	}
	s.Rounds, s.rounds = o.Rounds, o.rounds
	return true
}

// Enclosure makes the entries of one enclosure: a function of what is shared and of
// that enclosure's own plan and log, so that one can be worked out alone.
func (s *Shared) Enclosure(l *life.Enclosure) Sheet {
	b := builder{Shared: s, life: l}
	b.enclosure()
	return s.sheet(b.entries, b.found.All)
}

// builder makes the entries of one enclosure, of a rack or of a store.
type builder struct {
	*Shared
	life    *life.Enclosure
	rack    *Rack  // where it makes those of a rack
	store   *Store // where it makes those of a store
	entries []Entry
	one     Entry // the one of which the days are worked out
	found   finding.List
	slab    horizon.Days // day sets are cut from it
}

// benches are what one builder leaves to the next: a place to put entries together, which
// are large, and what is left of the slab.
var benches = sync.Pool{New: func() any { return &bench{entries: make([]Entry, 0, 32)} }}

type bench struct {
	entries []Entry
	slab    horizon.Days
}

// days returns an empty day set.
func (b *builder) days() horizon.Days {
	n := horizon.Words(b.Horizon.Days)
	if len(b.slab) < n {
		b.slab = make(horizon.Days, 32*n)
	}
	d := b.slab[:n:n]
	b.slab = b.slab[n:]
	return d
}

func (b *builder) enclosure() {
	left := benches.Get().(*bench)
	b.entries, b.slab = left.entries, left.slab
	if !b.deserted() {
		b.cares()
		for _, g := range b.life.Groups {
			b.meals(g)
		}
	}
	b.tasks()
	all := b.entries
	b.entries = ranked(all)
	for i := range b.entries {
		b.show(&b.entries[i])
	}
	b.clash()
	clear(all)
	left.entries, left.slab = all[:0], b.slab
	benches.Put(left)
}

// cares adds the care of the whole enclosure: the plan's own, and what the sheet has
// beside it. Without a sheet nothing is known, which has been said.
func (b *builder) cares() {
	e, sheet := b.life.Plan, b.boxSheet()
	if sheet == nil {
		return
	}
	for _, c := range e.Care {
		b.care(c, b.sheetCare(c), recur.MinDate, recur.MaxDate)
	}
	rack := b.Plan.RackOf(e)
	b.sheetCares(func(c *plan.Care, from, until civil.Date) {
		if rack == nil || !rack.DoesFor(e, c.What()) {
			b.care(c, c, from, until)
		}
	})
}

// sheetCares calls use for the care that the sheet brings beside the plan's own, with its
// first and last day.
func (b *builder) sheetCares(use func(c *plan.Care, from, until civil.Date)) {
	e, sheet := b.life.Plan, b.boxSheet()
	if sheet == nil || b.deserted() || len(b.life.Groups) == 0 && !e.Culture.V {
		return // nobody is here: what the plan itself does not ask for waits for them
	}
	for _, c := range sheet.Care {
		if c.KindName() == schema.KindDeviceTest.Name && !e.Heated() {
			continue // there is nothing to test
		}
		if from, until, ok := b.fits(c.Stages); ok && !replaced(e, c) {
			use(c, from, until)
		}
	}
}

// deserted reports whether all animals that lived here are dead or gone.
func (b *builder) deserted() bool {
	for _, g := range b.life.Groups {
		if g.Count(b.Horizon.Now()) > 0 {
			return false
		}
	}
	return len(b.life.Groups) > 0
}

// tasks adds what the log brought, and what it is asked.
func (b *builder) tasks() {
	add := func(g *life.Group, tasks []life.Task, asks []life.Ask) {
		for i := range tasks {
			b.once(g, &tasks[i], nil)
		}
		b.asks(g, asks)
	}
	add(nil, b.life.Tasks, b.life.Asks)
	for _, g := range b.life.Groups {
		add(g, g.Tasks, g.Asks)
	}
}

// ranked returns the entries in the order of their kinds. An entry is large, so that
// places are sorted and each is moved once. They are made now.
func ranked(all []Entry) []Entry {
	order := make([]int, len(all))
	for i := range order {
		order[i] = i
	}
	slices.SortStableFunc(order, func(x, y int) int { return cmp.Compare(all[x].Kind.Rank, all[y].Kind.Rank) })
	out := make([]Entry, len(all))
	for i, k := range order {
		out[i] = all[k]
		out[i].making = nil
	}
	return out
}

// standsFor reports whether a care of the plan's own takes the place of one of the
// sheet's: of the same name, or of the same kind. "other" is no kind in this: two
// such cares have nothing in common. What is done on some dates only, under a name of
// its own, is done besides.
func standsFor(own, sheet *plan.Care) bool {
	kind := own.KindName()
	return own.Name.V == sheet.Name.V || kind == sheet.KindName() && kind != schema.KindOther.Name && !plan.Once(own.On)
}

// replaced reports whether the plan has a care of its own for one of the sheet's.
func replaced(e *plan.Enclosure, sheet *plan.Care) bool {
	return slices.ContainsFunc(e.Care, func(own *plan.Care) bool { return standsFor(own, sheet) })
}

// sheetCare returns the sheet's care that one of the plan's stands for, or nil: one
// for the animals that live here, else for those of another stage.
func (b *builder) sheetCare(own *plan.Care) *plan.Care {
	var other *plan.Care
	for _, x := range b.boxSheet().Care {
		switch {
		case !standsFor(own, x):
		case b.fitting(x):
			return x
		case other == nil:
			other = x
		}
	}
	return other
}

// fitting reports whether a sheet's care is for animals that live here, or will.
func (b *builder) fitting(c *plan.Care) bool {
	_, _, ok := b.fits(c.Stages)
	return ok
}

// care adds the entries of a care, one for each of its rounds. What the plan does
// not say of when it is done is taken from the sheet's, which is c itself where the
// plan has none of its own. It is done on no day before from, nor after until.
func (b *builder) care(c, sheet *plan.Care, from, until civil.Date) {
	kind := schema.FindKind(c.KindName())
	if kind == nil || c.Off.V {
		return
	}
	t := &c.Timing
	staged := sheet != nil && len(sheet.Stages) > 0 && (c == sheet || !says(t))
	if !says(t) && sheet != nil {
		merged := *t
		merged.Every, merged.On, merged.Cron, merged.AfterLast = sheet.Every, sheet.On, sheet.Cron, sheet.AfterLast
		t = &merged
	}
	id := identity.OfCare(b.life.Plan, c.Name, t.Formerly)
	last, has := b.life.Done[id.Care]
	w, ok := b.when(t, c.At, id, last, has)
	if !ok {
		return
	}
	w.rules = between(w.rules, from, until)
	b.onceOnly(c, sheet)
	own := c.Task
	if !own.Set() && sheet != nil && sheet.KindName() == c.KindName() {
		own = sheet.Task
	}
	task := own.Or(kind.Phrase)
	if task == "" {
		task = c.Name.V
	}
	water := 0.0
	if c.Amount.Set() {
		if c == sheet { // what a sheet says is told in the keeper's units
			task += " " + b.life.Plan.Units.Tell(c.Amount.V)
		} else {
			task += " " + c.Amount.V.String()
		}
		water = c.Amount.V.Value
	}
	e := Entry{ID: id, Life: b.life, Name: c.Name.V, Kind: kind, Rules: w.rules, Task: task, Water: water, Own: own.Set() || kind.Phrase == "",
		Minutes: b.minutes(t, kind), Origin: c.At, Cited: plan.Cited{Source: c.Source, Quality: c.Quality, Seen: c.Seen}, FromSheet: c == sheet, Staged: staged, Timing: t, making: &making{first: from, last: until}}
	all := b.rounds.of(b.life.Plan, t, w.clocks)
	b.odd(&e, all)
	b.inRounds(e, all, several(t, all), func(e Entry) { b.add(e) })
}

// odd finds what is odd in when a care of the plan is done.
func (b *builder) odd(e *Entry, all []*plan.Round) {
	if e.FromSheet {
		return
	}
	b.oddDates(e)
	if len(e.Timing.Round) > 1 {
		b.sometimesTwice(e, all)
	}
}

// minutes is how long a kind of care takes here: as the plan says, as the house's own log
// does, or as is usual.
func (b *builder) minutes(t *plan.Timing, kind *schema.CareKind) int {
	if t != nil && t.Minutes.Set() {
		return int(t.Minutes.V.Value)
	}
	if l, _, ok := b.Plan.Learnt(b.life.Plan.Name.V, kind); ok {
		return l.Minutes
	}
	return kind.Minutes
}

// add takes an entry through all steps, and returns it as it is before it is parted into one
// for each of its rounds.
func (b *builder) add(one Entry) Entry {
	e := &b.one // where no step has to make room for it
	*e = one
	b.own(e)
	e.Days, e.Logged = b.days(), -1
	for _, step := range steps {
		step(b, e)
	}
	b.part(*e)
	return *e
}

// own says whose an entry is, and by what name. Where it is done in one round of several,
// that is part of it.
func (b *builder) own(e *Entry) {
	e.Keeper = b.keeperOf(e.Timing, e.Round)
	if len(e.in) == 1 && (e.several || e.Round.Of != nil) {
		e.ID = e.ID.In(e.Round)
	}
}

// keeperOf is whose care in a round is: as the care says, the round, or the only one there is.
func (b *builder) keeperOf(t *plan.Timing, x *plan.Round) string {
	switch {
	case t != nil && t.Keeper.Set():
		return t.Keeper.V
	case x.Keeper.Set():
		return x.Keeper.V
	}
	return b.People.Only
}

// once adds a task that the log brought; ask is the question that it is, if it is one.
func (b *builder) once(g *life.Group, t *life.Task, ask *life.Ask) {
	id := identity.OfTask(b.life.Plan, t.Name)
	if g != nil && slices.ContainsFunc(b.entries, func(e Entry) bool { return e.ID == id }) {
		id = id.Of(g.Animals)
	}
	e := Entry{ID: id, Life: b.life, Group: g, Name: t.Name, Kind: t.Kind, Task: t.Text,
		Minutes: cmp.Or(t.Minutes, t.Kind.Minutes), High: t.High, Origin: t.At, Cited: t.Cited, Once: t, Ask: ask, Moved: true, making: &making{}}
	all := b.rounds.usual(b.life.Plan)
	b.inRounds(e, all, len(plan.Wholes(all)) > 1, func(e Entry) { b.add(e) })
}
