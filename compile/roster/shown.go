package roster

import (
	"slices"

	"vivary/compile/horizon"
	"vivary/plan"
)

// Calendar is a calendar with what falls into it. Feeds write what stands here, and
// the proof counts on nothing else.
type Calendar struct {
	Plan *plan.Calendar
	// Picks returns what falls into it, in walking order. It is put together when first asked:
	// whoever types in a plan looks at no calendar.
	Picks func() []Pick
	Empty bool // nothing falls into it
}

// Pick is an entry in a calendar, on the days on which that shows it.
type Pick struct {
	Entry *Entry
	Days  horizon.Days
}

// shows finds the calendars that may hold an entry by the narrowest of what they
// select, so that a plan with a calendar for each of many rooms is gone through once.
type shows struct {
	all                                []*plan.Calendar
	any                                []int // calendars that select none of the following
	enclosures, rooms, rounds, keepers map[string][]int
	// days has for each calendar that selects keepers, by whose an entry is, the days on
	// which one of the calendar's does it.
	days []map[string]horizon.Days
}

func newShows(s *Shared) *shows {
	x := &shows{all: s.Plan.RoundCalendars(), enclosures: map[string][]int{}, rooms: map[string][]int{}, rounds: map[string][]int{}, keepers: map[string][]int{}}
	if len(x.all) == 0 {
		x.all = []*plan.Calendar{everything(s.Plan)}
	}
	put := func(m map[string][]int, names []plan.Written[string], i int) {
		seen := map[string]bool{}
		for _, n := range names {
			if !seen[n.V] {
				seen[n.V] = true
				m[n.V] = append(m[n.V], i)
			}
		}
	}
	x.days = make([]map[string]horizon.Days, len(x.all))
	for i, c := range x.all {
		switch {
		case len(c.Enclosures) > 0:
			put(x.enclosures, c.Enclosures, i)
		case len(c.Rooms) > 0:
			put(x.rooms, c.Rooms, i)
		case len(c.Rounds) > 0:
			put(x.rounds, c.Rounds, i)
		case len(c.Keepers) > 0:
			for whose := range s.daysOf(of(c)) { // those who stand in see it too
				x.keepers[whose] = append(x.keepers[whose], i)
			}
		default:
			x.any = append(x.any, i)
		}
		if len(c.Keepers) > 0 {
			x.days[i] = s.daysOf(of(c))
		}
	}
	return x
}

// Picks returns what is done in a round, in walking order: all of it, or what one
// keeper does of it.
func (r *Roster) Picks(round *plan.Round, keeper string) []Pick { return r.PicksOf(keeper)(round) }

// PicksOf returns Picks of a keeper, for several rounds.
func (r *Roster) PicksOf(keeper string) func(*plan.Round) []Pick {
	var mask map[string]horizon.Days
	if keeper != "" {
		mask = r.daysOf(func(who string) bool { return who == keeper })
	}
	return func(round *plan.Round) []Pick {
		out := make([]Pick, 0, len(r.In[round]))
		for _, e := range r.In[round] {
			days := e.Days
			if keeper != "" {
				days = done(e, mask)
			}
			if !days.Empty() {
				out = append(out, Pick{e, days})
			}
		}
		return out
	}
}

// done returns the days of an entry that are among those on which it is done by
// whoever the days are of. Where these are all of them, it is that very set.
func done(e *Entry, of map[string]horizon.Days) horizon.Days {
	days, ok := of[e.Keeper]
	if !ok {
		return make(horizon.Days, len(e.Days))
	}
	if e.Days.Within(days) {
		return e.Days
	}
	out := e.Days.Clone()
	out.Keep(days)
	return out
}

// everything is the calendar of a plan that has none.
func everything(p *plan.Collection) *plan.Calendar {
	c := &plan.Calendar{}
	if p.About != nil {
		c.Name.V, c.Title.V, c.Title.At = p.About.Name.V, p.Title(), p.About.Name.At
		if slices.ContainsFunc(p.Calendars, func(o *plan.Calendar) bool { return o.Name.V == c.Name.V }) {
			c.Name.V += "-rounds" // that of the dates of the house is called so
		}
	}
	return c
}

// daysOf returns, by whose an entry is, the days on which it is done by one of some.
// What is nobody's is done by none of them.
func (s *Shared) daysOf(of func(who string) bool) map[string]horizon.Days {
	out := map[string]horizon.Days{}
	for _, k := range s.Plan.Keepers {
		days, name := s.Horizon.New(), k.Name.V
		for i := range s.Horizon.Days {
			if who, there := s.People.Doer(name, i); there && of(who) {
				days.Add(i)
			}
		}
		if !days.Empty() {
			out[name] = days
		}
	}
	return out
}

// candidates calls use for the calendars that may hold an entry.
func (x *shows) candidates(e *Entry, use func(int)) {
	room := ""
	if place := e.Plan().Place; place != nil {
		room = place.Name.V
	}
	for _, list := range [...][]int{x.ofBoxes(e), x.rooms[room], x.rounds[e.Round.Name.V], x.keepers[e.Keeper], x.any} {
		for _, i := range list {
			if c := x.all[i]; selectsBox(c.Enclosures, e) && selects(c.Rooms, room) && selects(c.Rounds, e.Round.Name.V) && selects(c.Kinds, e.Kind.Name) {
				use(i)
			}
		}
	}
}

// ofBoxes returns the calendars that select an enclosure that an entry is for, each once.
func (x *shows) ofBoxes(e *Entry) (all []int) {
	if e.Rack == nil && e.Plan().Of == "" {
		return x.enclosures[e.Plan().Name.V]
	}
	for _, box := range e.boxes() {
		all = append(all, x.enclosures[box.Name.V]...)
		if box.Of != "" {
			all = append(all, x.enclosures[box.Of]...)
		}
	}
	slices.Sort(all)
	return slices.Compact(all)
}

// selectsBox reports whether a list of enclosures has one that an entry is for.
func selectsBox(list []plan.Written[string], e *Entry) bool {
	return len(list) == 0 || slices.ContainsFunc(e.boxes(), func(box *plan.Enclosure) bool { return box.In(list) })
}

// selects reports whether a list of names has one; an empty list has all.
func selects(list []plan.Written[string], name string) bool {
	return len(list) == 0 || plan.Lists(list, name)
}

// show says on which days an entry is shown to who does it: by a calendar, or where
// its round is worked from a list on paper or at the terminal. A calendar without
// keepers is seen by everybody, one with keepers only by them.
func (b *builder) show(e *Entry) {
	if e.Round.ListedElsewhere() {
		e.Shown = e.Days
		return
	}
	some := false
	b.shows.candidates(e, func(i int) {
		if b.shows.days[i] == nil {
			e.Shown = e.Days
			return
		}
		some = true
	})
	if e.Shown != nil {
		return
	}
	e.Shown = b.days()
	if some {
		b.shows.candidates(e, func(i int) {
			e.Shown.Union(b.shows.within(i, e))
		})
	}
}

// UnshownFor names why an entry is shown to nobody: its round and whose it is. What
// has the same is said once.
func (e *Entry) UnshownFor() string { return "unshown " + e.Round.Name.V + " " + e.Keeper }

// Unshown returns the first day from i on on which an entry stands and nobody is shown
// it, or -1.
func (e *Entry) Unshown(i int) int {
	if &e.Days[0] == &e.Shown[0] {
		return -1 // as most are
	}
	for i = e.Days.Next(i); i >= 0 && e.Shown.Has(i); i = e.Days.Next(i + 1) {
	}
	return i
}

// within returns the days on which calendar i shows an entry.
func (x *shows) within(i int, e *Entry) horizon.Days {
	if x.days[i] == nil {
		return e.Days
	}
	return done(e, x.days[i])
}

// of reports whether somebody is one of a calendar's keepers.
func of(c *plan.Calendar) func(string) bool {
	return func(who string) bool { return plan.Lists(c.Keepers, who) }
}
