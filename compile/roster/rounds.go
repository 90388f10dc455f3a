package roster

import (
	"cmp"
	"slices"
	"strings"

	"vivary/compile/horizon"
	"vivary/compile/recur"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema/civil"
	"vivary/schema/quantity"
	"vivary/schema/wording"
)

// rounds finds the round in which a care is done. Care at a time of its own, in
// no round of the plan, gets a round made for that time.
type rounds struct {
	first   *plan.Round
	byName  map[string]*plan.Round
	parts   map[*plan.Round][]*plan.Round // of rounds with a rota: those of others than their keeper
	byClock map[civil.Clock]*plan.Round
	held    map[*plan.Round]horizon.Days // of rounds that are not held every day
	s       *Shared
}

// heldOn returns the days on which a round is held, whoever does it, nil for every day.
func heldOn(c *plan.Collection, x *plan.Round, h horizon.Horizon) horizon.Days {
	if x.Daily() {
		return nil
	}
	out := usually(c, x, h)
	out.Subtract(listed(c, x.NotOn, h))
	out.Union(listed(c, x.AlsoOn, h))
	return out
}

// Parts returns a round of the plan and, where it goes by a rota, those of its parts that have a
// day at all: together they are the round.
func (s *Shared) Parts(x *plan.Round) []*plan.Round { return s.rounds.with(x) }

// InAll returns the entries of a round, whoever does them by its rota.
func (r *Roster) InAll(x *plan.Round) []*Entry {
	if x.Turns == nil {
		return r.In[x]
	}
	var out []*Entry
	for _, part := range r.Parts(x) {
		out = append(out, r.In[part]...)
	}
	return out
}

// HeldOn returns the days on which a round is held, nil for every day.
func (s *Shared) HeldOn(x *plan.Round) horizon.Days { return s.rounds.held[x] }

// WholeHeldOn returns the days on which a round is held, by whomever of its rota, nil for every day.
func (s *Shared) WholeHeldOn(x *plan.Round) horizon.Days {
	if x.Turns == nil {
		return s.rounds.held[x]
	}
	return heldOn(s.Plan, x, s.Horizon)
}

// TurnOf returns whose an entry is that is done on day i in its round: another's, where a rota
// gives that day to them.
func (s *Shared) TurnOf(e *Entry, i int) string {
	if e.Round.Turns == nil {
		return e.Keeper
	}
	for _, part := range s.rounds.with(e.Round.Whole()) {
		if s.rounds.held[part].Has(i) {
			return part.Keeper.V
		}
	}
	return e.Keeper
}

// usually returns the days of a round but for exceptions.
func usually(c *plan.Collection, x *plan.Round, h horizon.Horizon) horizon.Days {
	if len(x.On) > 0 {
		return listed(c, x.On, h)
	}
	out := h.New()
	out.AddRun(0, h.Days, h.Days)
	return out
}

func newRounds(s *Shared) *rounds {
	r := &rounds{s: s, first: usualRound(s.Rounds), byName: map[string]*plan.Round{}, parts: map[*plan.Round][]*plan.Round{}, byClock: map[civil.Clock]*plan.Round{}, held: map[*plan.Round]horizon.Days{}}
	shared := map[*plan.Rota]*shared{}
	for _, x := range s.Rounds {
		if x.Of != nil {
			r.parts[x.Of] = append(r.parts[x.Of], x)
		} else {
			r.byName[x.Name.V] = x
			if r.byClock[x.Clock.V] == nil && x.Daily() {
				r.byClock[x.Clock.V] = x
			}
		}
		held := heldOn(s.Plan, x, s.Horizon)
		if x.Turns != nil {
			if shared[x.Turns] == nil {
				shared[x.Turns] = s.share(x.Turns)
			}
			held = shared[x.Turns].of(x, held, s.Horizon)
		}
		if held != nil {
			r.held[x] = held
		}
	}
	return r
}

// with returns a round with its parts: of those that a rota makes only the ones that have a
// day at all.
func (r *rounds) with(x *plan.Round) []*plan.Round {
	if x.Turns == nil {
		return []*plan.Round{x}
	}
	var out []*plan.Round
	for _, part := range append([]*plan.Round{x}, r.parts[x]...) {
		if !r.held[part].Empty() {
			out = append(out, part)
		}
	}
	if len(out) == 0 {
		return []*plan.Round{x}
	}
	return out
}

// usualRound is the first round that is held every day, or the first of all.
func usualRound(all []*plan.Round) *plan.Round {
	for _, x := range all {
		if x.Daily() {
			return x
		}
	}
	return all[0]
}

// note makes rounds for the times of its own that care has, of an enclosure or of a
// species sheet. It is called for all of them before series are made.
func (r *rounds) note(care []*plan.Care, feeding []*plan.Feeding) {
	clocks := func(t *plan.Timing) {
		for _, c := range t.Clocks {
			r.clock(c.V)
		}
		if t.Cron.Set() {
			if _, cs, err := recur.ParseCron(t.Cron.V); err == nil {
				for _, c := range cs {
					r.clock(c)
				}
			}
		}
	}
	for _, c := range care {
		clocks(&c.Timing)
	}
	for _, f := range feeding {
		clocks(&f.Timing)
	}
}

func (r *rounds) clock(c civil.Clock) {
	if r.byClock[c] != nil {
		return
	}
	x := madeRound("at-"+c.String(), c)
	x.Title.V = wording.Clock(c, r.s.Plan.Units) + " round"
	r.byClock[c] = x
	i, _ := slices.BinarySearchFunc(r.s.Rounds, c, func(x *plan.Round, c civil.Clock) int { return cmp.Compare(x.Clock.V, c) })
	r.s.Rounds = slices.Insert(r.s.Rounds, i, x)
}

// of returns the rounds in which a care is done.
func (r *rounds) of(e *plan.Enclosure, t *plan.Timing, clocks []civil.Clock) []*plan.Round {
	var out []*plan.Round
	if len(clocks) == 0 {
		out = r.named(t.Round)
	}
	for _, c := range t.Clocks {
		if x := r.byClock[c.V]; x != nil {
			out = append(out, r.with(x)...)
		}
	}
	for _, c := range clocks {
		if x := r.byClock[c]; x != nil {
			out = append(out, r.with(x)...)
		}
	}
	if len(out) == 0 {
		return r.usual(e)
	}
	return out
}

// usual returns the rounds of an enclosure's care that names none: the enclosure's,
// the room's, or the first of the collection.
func (r *rounds) usual(e *plan.Enclosure) []*plan.Round {
	if out := r.named(e.Round); len(out) > 0 {
		return out
	}
	if e.Place != nil {
		if out := r.named(e.Place.Round); len(out) > 0 {
			return out
		}
	}
	return r.with(r.first)
}

// named returns the rounds that a list names, each once.
func (r *rounds) named(list []plan.Written[string]) []*plan.Round {
	var out []*plan.Round
	for _, n := range list {
		if x := r.byName[n.V]; x != nil && !slices.ContainsFunc(out, func(o *plan.Round) bool { return o.Whole() == x }) {
			out = append(out, r.with(x)...)
		}
	}
	return out
}

// on reports whether a round of an entry is held on day i, which may lie outside the window.
func (b *builder) on(e *Entry, i int) bool {
	return e.held == nil || i >= 0 && i < b.Horizon.Days && e.held.Has(i)
}

// onRounds moves days on which no round is held to the nearest on which one is, as far as
// the care's window allows. Of care that is done in rounds of several people, those that
// are held do it. Where a round is not held for once, since its plan says so, what cannot
// be moved is left out: the proof says whether what is left is enough.
func (b *builder) onRounds(e *Entry) {
	if e.held == nil {
		return
	}
	e.Moved = e.Moved || e.Round.Turns != nil // a rule does not tell whose turn it is
	off := b.Horizon.New()                    // without a round
	for i := e.Days.Next(0); i >= 0; i = e.Days.Next(i + 1) {
		if e.held.Has(i) {
			continue
		}
		c, usual := b.unheld(e, i)
		e.Moved = e.Moved || usual
		b.take(e, c, i)
		if b.elsewhere(e, i) {
			continue
		}
		if to, ok := b.nearest(e, i); ok {
			if b.on(e, to) { // else whoever has that day does it
				b.put(e, Cause{Why: Moved, At: c.At}, to)
			}
		} else if usual && i >= b.Horizon.Today && i < b.Horizon.Days-maxWindow {
			off.Add(i)
		}
	}
	if !e.free() && !off.Empty() {
		b.found.Add(finding.Finding{Rule: ruleOffRound, At: e.Origin,
			Text:  strings.TrimSpace(e.Name+" is due "+b.Horizon.Often(off)) + ", when there is no " + roundNames(e.in),
			Write: "a window within which it may be moved, other days, or a round on more days",
			Also:  []finding.Related{{At: e.Round.At, Text: "the round"}}})
	}
}

// unheld says why none of an entry's rounds is held on day i, and whether that is so on such
// days: else it is so on this day for once.
func (b *builder) unheld(e *Entry, i int) (c Cause, usual bool) {
	date := b.Horizon.Date(i)
	for _, x := range e.in {
		if by(b.Plan, x.NotOn, date) != nil && (len(x.On) == 0 || by(b.Plan, x.On, date) != nil) {
			return b.cause(NoRound, x.NotOn, date), false
		}
	}
	return Cause{Why: NoRound, At: e.Round.At}, true
}

// roundNames are rounds of which none is held: "Weekday round", or "Weekday round and no
// Weekend round".
func roundNames(in []*plan.Round) string {
	var names []string
	for _, x := range in {
		names = append(names, x.Shown())
	}
	return strings.Join(names, " and no ")
}

// elsewhere reports whether a round of a care that is another person's is held on day i.
func (b *builder) elsewhere(e *Entry, i int) bool {
	for _, x := range e.others {
		if held := b.rounds.held[x]; held == nil || held.Has(i) {
			return true
		}
	}
	return false
}

// free reports whether the keeper has chosen no day: the phase of an interval without a
// first day is ours.
func (e *Entry) free() bool {
	if e.FromSheet || e.Once != nil {
		return true
	}
	t := e.Timing
	return len(t.On) == 0 && !t.Cron.Set() && !t.From.Set()
}

// usualWindow is by how many days what has no window of its own may be moved to a
// round (common practice, no source).
const usualWindow = 3

// window is by how many days an entry may be moved to a round: what is done every so
// often on no chosen day, by as long as that is.
func (e *Entry) window() int {
	switch {
	case e.Timing != nil && e.Timing.Window.Set():
		return windowDays(e.Timing.Window.V)
	case e.Timing != nil && e.Timing.Every.Set() && e.free():
		return min(max(usualWindow, interval(e.Timing.Every.V)), maxWindow)
	case e.free():
		return usualWindow
	}
	return 0
}

// interval is about how many days an interval has.
func interval(v quantity.Interval) int {
	switch v.Unit {
	case quantity.Day:
		return v.N
	case quantity.Week:
		return 7 * v.N
	}
	return maxWindow
}

// nearest returns the nearest day to i on which the round of an entry is held, or that of others
// who do the same, the earlier of two, within its window.
// What is looked for after a meal is not looked for on its day. What the log brought waits for the
// next round, however far: before its day it may harm, as a meal before fangs are hard does, and
// it must not be lost.
func (b *builder) nearest(e *Entry, i int) (to int, ok bool) {
	if e.Once != nil {
		for to = i; to < b.Horizon.Days && !b.anyOn(e, to); to++ {
		}
		return to, to < b.Horizon.Days
	}
	for k := 1; k <= e.window(); k++ {
		for _, to := range [2]int{i - k, i + k} {
			if b.anyOn(e, to) && (e.After <= 0 || to > i-e.After) {
				return to, true
			}
		}
	}
	return 0, false
}

// anyOn reports whether on day i a round is held in which an entry is done, by whomever.
func (b *builder) anyOn(e *Entry, i int) bool {
	return b.on(e, i) || i >= 0 && i < b.Horizon.Days && b.elsewhere(e, i)
}

// madeRound returns a round that nobody wrote.
func madeRound(name string, c civil.Clock) *plan.Round {
	r := &plan.Round{}
	r.Name.V = name
	r.Clock.V = c
	return r
}
