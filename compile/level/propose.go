package level

import (
	"slices"
	"strconv"

	"vivary/compile"
	"vivary/compile/prove"
	"vivary/compile/roster"
	"vivary/plan"
	"vivary/plan/finding"
)

// proposal is what one look at a compilation comes to.
type proposal struct {
	turns []plan.Turn
	moves []Move
	best  bool
}

// propose looks for other days. What is moved is reckoned to be done then as it is now; what
// comes of it in truth the compiler says.
func propose(r *compile.Result, keep map[Key]bool) proposal {
	l := newLoads(r)
	if l.over() == 0 {
		return proposal{best: true}
	}
	var cares []*care
	var tasks []Task
	for _, x := range gather(r, keep) {
		if x.why == stays {
			cares = append(cares, x)
			tasks = append(tasks, l.task(x))
		}
	}
	at, best := Solve(tasks, l.all)
	out := proposal{best: best}
	for i, k := range at {
		if k == 0 {
			continue
		}
		x, n := cares[i], cares[i].shifts[k-1]
		t := x.turned(r, n)
		m := Move{Key: x.key, Days: t.Line(), By: n}
		for d := range moved(x.entries[0], r.Horizon, n) {
			m.Next = r.Horizon.Date(d)
			break
		}
		out.turns, out.moves = append(out.turns, *t), append(out.moves, m)
	}
	return out
}

// loads are those of a collection: of each of the people and of all together, and of rounds that
// have a time. Whoever has no budget is not given a longer day than the longest there is.
type loads struct {
	r     *compile.Result
	all   []Load
	who   map[string]int
	round map[*plan.Round]int
	house int
}

func newLoads(r *compile.Result) *loads {
	l := &loads{r: r, who: map[string]int{}, round: map[*plan.Round]int{}}
	work := r.Roster.Work()
	add := func(days []int, limit int) int {
		from := r.Horizon.Today
		days = slices.Clone(days[from:r.Horizon.Days])
		if limit == 0 {
			limit = slices.Max(days)
		}
		l.all = append(l.all, Load{limit, days})
		return len(l.all) - 1
	}
	house := make([]int, r.Horizon.Days)
	var names []string
	for who, days := range work {
		names = append(names, who)
		for d, n := range days {
			house[d] += n
		}
	}
	slices.Sort(names)
	for _, who := range names {
		limit := 0
		if k := r.Plan.Keeper(who); k != nil && k.Budget.Set() {
			limit = minutes(k.Budget.V)
		}
		l.who[who] = add(work[who], limit)
	}
	for _, x := range plan.Wholes(r.Plan.Rounds) {
		if days := r.Minutes(x); x.Within.Set() && days != nil {
			limit := minutes(x.Within.V) * max(1, x.People.V)
			if seldom(r, days, limit) {
				limit = max(limit, slices.Max(days[r.Horizon.Today:r.Horizon.Days]))
			}
			l.round[x] = add(days, limit)
		}
	}
	l.house = add(house, 0)
	return l
}

// over is by how much all are over.
func (l *loads) over() (n int) {
	for i := range l.all {
		for d := range l.all[i].Days {
			n += l.all[i].over(d)
		}
	}
	return n
}

// task is a care as work that may be moved.
func (l *loads) task(x *care) Task {
	t := Task{ID: x.key.Enclosure + " " + x.key.Name, Options: 1 + len(x.shifts)}
	for _, e := range x.entries {
		t.Minutes = max(t.Minutes, e.Minutes)
	}
	shift := func(option int) int {
		if option == 0 {
			return 0
		}
		return x.shifts[option-1]
	}
	t.Far = func(option int) int { return abs(shift(option)) }
	var known []Work
	last := -1
	t.Work = func(option int) []Work {
		if option == last {
			return known
		}
		known, last = known[:0], option
		for _, e := range x.entries {
			known = l.work(known, e, shift(option))
		}
		return known
	}
	return t
}

// work appends what an entry is, once it is moved by n days.
func (l *loads) work(out []Work, e *roster.Entry, n int) []Work {
	from := l.r.Horizon.Today
	at, timed := l.round[e.Round.Whole()]
	duty := l.r.Roster.People.Of(e.Keeper)
	for d := range moved(e, l.r.Horizon, n) {
		who, there := e.Keeper, true
		switch {
		case e.Round.Turns != nil && (e.Timing == nil || !e.Timing.Keeper.Set()):
			who, there = l.r.Roster.People.Doer(l.r.Roster.TurnOf(e, d), d)
		case duty != nil:
			who, there = l.r.Roster.Doer(e, d)
		}
		if !there {
			continue
		}
		day := d - from
		if i, ok := l.who[who]; ok {
			out = append(out, Work{i, day, e.Minutes})
		}
		if timed {
			out = append(out, Work{at, day, e.Minutes})
		}
		out = append(out, Work{l.house, day, e.Minutes})
	}
	return out
}

// worse returns the enclosures in which something is worse than it was, of those that turns are
// about: a need is met later than it may be, or something is found that was not. What is found
// elsewhere is the fault of all.
func worse(was, is *compile.Result, turns []plan.Turn) map[string]bool {
	bad := map[string]bool{}
	before := longestGaps(was)
	for key, p := range longestGaps(is) {
		if o, ok := before[key]; !p.Met() && (!ok || o.Met() || p.Longest > o.Longest || p.Breach.To-p.Breach.From > o.Breach.To-o.Breach.From) {
			bad[key.enclosure] = true
		}
	}
	of := map[string]bool{}
	for i := range turns {
		of[turns[i].Enclosure.Name.V] = true
	}
	had := found(was)
	for key, n := range found(is) {
		switch {
		case n <= had[key]:
		case key.enclosure != "":
			bad[key.enclosure] = true
		default:
			return of
		}
	}
	for name := range bad {
		if !of[name] {
			return of
		}
	}
	return bad
}

// needKey names a proof.
type needKey struct{ enclosure, group, need, stage string }

func longestGaps(r *compile.Result) map[needKey]*prove.Proof {
	out := map[needKey]*prove.Proof{}
	for _, all := range r.Proofs {
		for i := range all {
			p := &all[i]
			k := needKey{p.Life.Plan.Name.V, "", p.Name.Name, p.Stage}
			if p.Group != nil {
				k.group = p.Group.Animals.Name.V
			}
			for out[k] != nil {
				k.stage += "/" + strconv.Itoa(p.Begin)
			}
			out[k] = p
		}
	}
	return out
}

type foundKey struct{ enclosure, rule string }

// found counts what is found that is more than advice.
func found(r *compile.Result) map[foundKey]int {
	out := map[foundKey]int{}
	for _, f := range r.Single() {
		if f.Severity != finding.Advice {
			out[foundKey{f.In.Name, f.Rule.ID}]++
		}
	}
	return out
}
