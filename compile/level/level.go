// Package level lays work out over days: which care would have to stand on which other days so
// that no day asks more time of anybody than there is. It proposes, as turns of the plan; that
// every need is still met in time is for the proof to say, which is asked of each proposal.
package level

import (
	"cmp"
	"slices"
	"strings"

	"vivary/compile"
	"vivary/compile/check"
	"vivary/compile/roster"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/schema/civil"
	"vivary/schema/quantity"
)

// Measure is how long somebody works, or a round takes, on the days to come, against
// what the plan sets.
type Measure struct {
	Keeper *plan.Keeper // nil for a round
	Round  *plan.Round  // nil for one of the people
	Cap    int          // minutes a day, as the plan says
	Most   int          // minutes on the longest day
	On     civil.Date   // the first of the longest days
	Over   int          // on how many days it is more than there is
	Borne  bool         // they are so few that the rule about rounds says nothing: none is moved for them
	Weeks  int          // whole weeks that are looked ahead
	All    int          // minutes in all of them
	Stays  []Stay       // what of the longest day cannot be moved, the most first
	// Large are the longest times, in days, between two occasions of what takes more than half
	// of a day's time, so that one of it fits on a day; Alone is whether that can be done.
	Large []int
	Alone Verdict
	days  []int
}

// Shown is what people see.
func (m *Measure) Shown() string {
	if m.Keeper != nil {
		return m.Keeper.Shown()
	}
	return "the " + m.Round.Shown()
}

// Stay is work that stands where it is, and why.
type Stay struct {
	Minutes int
	Why     string
}

// Bound is on how many days a week the work must be done at the least, one day being no longer
// than there is: the sum divided by that, rounded up. More than seven is more than there are.
func (m *Measure) Bound() int { return (m.All + m.Cap*m.Weeks - 1) / (m.Cap * m.Weeks) }

// Week is how many minutes there are in a week, on the average.
func (m *Measure) Week() int { return (m.All + m.Weeks - 1) / m.Weeks }

// Move is a care that would stand on other days.
type Move struct {
	Key  Key
	Days string // how it would be written: `on = ["tue"]`
	By   int    // by how many days it moves
	Next civil.Date
}

// Layout is what is proposed.
type Layout struct {
	Was, Is []Measure // by name, people before rounds
	Moves   []Move
	// Texts are the files that would change, by path.
	Texts map[string][]byte
	// Best says that all places were tried: there is no better one.
	Best bool
	// Kept are the enclosures in which something was tried and taken back, since a need would
	// not have been met in time, or something else would have been wrong.
	Kept []string
}

// rounds is how often a layout is asked of the compiler.
const rounds = 8

// Of proposes a layout. try compiles the collection with other texts of some files; where it
// cannot it returns nil.
func Of(r *compile.Result, try func(texts map[string][]byte) *compile.Result) *Layout {
	out := &Layout{Was: Measures(r), Best: true}
	now, keep, kept := r, map[Key]bool{}, map[string]bool{}
	for range rounds {
		p := propose(now, keep)
		out.Best = out.Best && p.best
		if len(p.turns) == 0 {
			break
		}
		texts := edited(now.Plan, p.turns)
		for path, text := range out.Texts {
			if texts[path] == nil {
				texts[path] = text
			}
		}
		next := try(texts)
		if next == nil || next.Roster == nil {
			out.Best = false
			break
		}
		if bad := worse(r, next, p.turns); len(bad) > 0 {
			out.Best = false
			for _, t := range p.turns {
				if bad[t.Enclosure.Name.V] {
					keep[keyOf(&t)] = true
					kept[t.Enclosure.Name.V] = true
				}
			}
			continue
		}
		if !lighter(now, next, r) {
			out.Best = false
			break
		}
		for i, t := range p.turns {
			keep[keyOf(&t)] = true // what was done last is known of it as it was, not as it is now
			out.Moves = append(out.Moves, p.moves[i])
		}
		now, out.Texts = next, texts
	}
	moved := map[Key]bool{}
	for _, m := range out.Moves {
		moved[m.Key] = true
	}
	out.Is = measures(now, moved)
	for name := range kept {
		out.Kept = append(out.Kept, name)
	}
	slices.Sort(out.Kept)
	slices.SortFunc(out.Moves, func(a, b Move) int {
		return cmp.Or(strings.Compare(a.Key.Enclosure, b.Key.Enclosure), strings.Compare(a.Key.Name, b.Key.Name))
	})
	return out
}

func keyOf(t *plan.Turn) Key { return Key{t.Enclosure.Name.V, t.Name, t.Meal} }

// edited returns the files of a collection that turns change, as they are then.
func edited(c *plan.Collection, turns []plan.Turn) map[string][]byte {
	of := map[source.ID][]finding.Edit{}
	for _, e := range c.Turned(turns) {
		of[e.At.File] = append(of[e.At.File], e)
	}
	out := map[string][]byte{}
	for id, edits := range of {
		if text, err := finding.Apply(c.Files.Text(id), edits); err == nil {
			out[c.Files.Name(id)] = text
		}
	}
	return out
}

// Measures are the people and the rounds for which the plan sets how long there is.
func Measures(r *compile.Result) []Measure { return measures(r, nil) }

// measures are Measures after some cares were moved, which therefore could be.
func measures(r *compile.Result, moved map[Key]bool) (out []Measure) {
	work := r.Roster.Work()
	add := func(m Measure, days []int) {
		if days == nil { // of somebody who only stands in
			days = make([]int, r.Horizon.Days)
		}
		m.days, m.Weeks = days, (r.Horizon.Days-r.Horizon.Today)/7
		if m.Weeks <= 0 || m.Cap <= 0 {
			return
		}
		at := r.Horizon.Today
		for d := r.Horizon.Today; d < r.Horizon.Days; d++ {
			if d < r.Horizon.Today+7*m.Weeks {
				m.All += days[d]
			}
			if days[d] > m.Cap {
				m.Over++
			}
			if days[d] > days[at] {
				at = d
			}
		}
		m.Most, m.On = days[at], r.Horizon.Date(at)
		out = append(out, m)
	}
	for _, k := range r.Plan.Keepers {
		if k.Budget.Set() {
			add(Measure{Keeper: k, Cap: minutes(k.Budget.V)}, work[k.Name.V])
		}
	}
	for _, x := range plan.Wholes(r.Plan.Rounds) {
		if x.Within.Set() {
			m := Measure{Round: x, Cap: minutes(x.Within.V) * max(1, x.People.V)}
			if days := r.Minutes(x); days != nil {
				m.Borne = seldom(r, days, m.Cap)
				add(m, days)
			}
		}
	}
	reasons(r, out, moved)
	return out
}

// seldom reports whether a round is too long on so few days that nothing is said of it.
func seldom(r *compile.Result, days []int, limit int) bool {
	over := 0
	for d := r.Horizon.Today; d < r.Horizon.Days; d++ {
		if days[d] > limit {
			over++
		}
	}
	return check.Seldom(over, r.Horizon)
}

func minutes(q quantity.Quantity) int { return int(q.Value) }

// reasons says of the longest day of each why its work cannot be moved.
func reasons(r *compile.Result, all []Measure, moved map[Key]bool) {
	for _, x := range gather(r, nil) {
		for i := range all {
			if gap := x.gap(); all[i].Over > 0 && gap > 0 && all[i].large(r, x) {
				all[i].Large = append(all[i].Large, gap)
			}
		}
		if x.why == stays || moved[x.key] {
			continue
		}
		for _, e := range x.entries {
			for i := range all {
				m := &all[i]
				d := int(m.On - r.Horizon.From)
				if m.Over == 0 || !e.Days.Has(d) || !m.does(r, e, d) {
					continue
				}
				at := slices.IndexFunc(m.Stays, func(s Stay) bool { return s.Why == x.why })
				if at < 0 {
					at = len(m.Stays)
					m.Stays = append(m.Stays, Stay{Why: x.why})
				}
				m.Stays[at].Minutes += e.Minutes
			}
		}
	}
	for i := range all {
		if len(all[i].Large) > 1 {
			all[i].Alone = OneADay(all[i].Large)
		}
		slices.SortStableFunc(all[i].Stays, func(a, b Stay) int {
			return cmp.Or(cmp.Compare(b.Minutes, a.Minutes), strings.Compare(a.Why, b.Why))
		})
	}
}

// large reports whether a care takes more than half of the time that there is on a day.
func (m *Measure) large(r *compile.Result, x *care) bool {
	return slices.ContainsFunc(x.entries, func(e *roster.Entry) bool {
		d := e.Days.Next(r.Horizon.Today)
		return e.Once == nil && d >= 0 && 2*e.Minutes > m.Cap && m.does(r, e, d)
	})
}

// does reports whether an entry is done by this one of the people, or in this round.
func (m *Measure) does(r *compile.Result, e *roster.Entry, d int) bool {
	if m.Round != nil {
		return e.Round.Whole() == m.Round
	}
	who, there := r.Roster.Doer(e, d)
	return there && who == m.Keeper.Name.V
}

// lighter reports whether a layout is over on fewer minutes than the one before, and no day of
// anybody is longer than the longest was at first.
func lighter(was, is, first *compile.Result) bool {
	a, b := Measures(was), Measures(is)
	if len(a) != len(b) {
		return false
	}
	over := func(all []Measure) (n int) {
		for i := range all {
			for _, m := range all[i].days {
				if !all[i].Borne {
					n += max(0, m-all[i].Cap)
				}
			}
		}
		return n
	}
	if over(b) >= over(a) {
		return false
	}
	before, after := longest(first), longest(is)
	for who, n := range after {
		if n > before[who] {
			return false
		}
	}
	return true
}

// longest is the longest day of each of the people, and under a name that nobody has of all
// of them together.
func longest(r *compile.Result) map[string]int {
	out := map[string]int{}
	all := make([]int, r.Horizon.Days)
	for who, days := range r.Roster.Work() {
		for d, n := range days {
			out[who] = max(out[who], n)
			all[d] += n
		}
	}
	out[together] = slices.Max(all)
	return out
}

// together is the name that nobody has.
const together = " "
