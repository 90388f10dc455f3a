package prove

import (
	"slices"

	"vivary/compile/horizon"
	"vivary/compile/life"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/civil"
)

// A proof is over days of one stage, and each day is judged by the stage of that day. So
// a time between two meals that crosses from one stage into the next is too long where
// it is, on some day, longer than what the stage of that day allows: a juvenile that ate
// last when it was young has the time of a juvenile from its moult on, and not before.

// stay is a group with its stages on the days of the window on which there are animals.
type stay struct {
	*life.Group
	stages []stretch
	one    [1]stretch // nearly all have one
}

// stretch is some days of a group in one stage: from is the first of them, longAgo where
// it was so before the window, and to the first after them.
type stretch struct {
	stage    string
	from, to int
}

// lives works out who lives in the enclosure from today on. Groups of whose species
// nothing is known have no proof; a rule names them.
func (w *prover) lives() {
	w.stays = make([]stay, 0, len(w.life.Groups))
	for _, g := range w.life.Groups {
		if g.Sheet == nil {
			continue
		}
		w.stays = append(w.stays, stay{Group: g})
		x := &w.stays[len(w.stays)-1]
		if x.stages = x.one[:0]; len(g.Stages)+len(g.Numbers) == 2 && !g.Logged {
			x.whole(w.s.Horizon)
		} else {
			x.divide(w.s.Horizon)
		}
		if len(x.stages) == 0 || x.stages[len(x.stages)-1].to <= w.s.Horizon.Today {
			w.stays = w.stays[:len(w.stays)-1]
		}
	}
}

// whole is for a group that does not change.
func (x *stay) whole(h horizon.Horizon) {
	if x.Numbers[0].Count > 0 {
		x.stages = append(x.stages, stretch{x.Stages[0].Stage, longAgo, h.Days})
	}
}

// divide cuts the days of a group where its stage changes, where it comes and where it
// ends.
func (x *stay) divide(h horizon.Horizon) {
	var cuts []int
	begin := longAgo
	if x.Logged {
		begin = int(x.Since.V - h.From)
	}
	cut := func(on civil.Date) {
		if at := int(on - h.From); at > begin && at < h.Days {
			cuts = append(cuts, at)
		}
	}
	for _, s := range x.Stages[1:] {
		cut(s.From)
	}
	for _, n := range x.Numbers[1:] {
		cut(n.From)
	}
	slices.Sort(cuts)
	for k := -1; k < len(cuts); k++ {
		from, to := begin, h.Days
		if k >= 0 {
			from = cuts[k]
		}
		if k+1 < len(cuts) {
			to = cuts[k+1]
		}
		on := h.Date(to - 1)
		if from >= to || x.Count(on) == 0 {
			continue
		}
		stage := x.Stage(on)
		if last := len(x.stages) - 1; last >= 0 && x.stages[last].to == from && x.stages[last].stage == stage {
			x.stages[last].to = to
		} else {
			x.stages = append(x.stages, stretch{stage, from, to})
		}
	}
}

// asked is a need on some days, with what goes with these.
type asked struct {
	need      *plan.Need
	group     *life.Group
	stage     string
	from, to  int // the days
	since     int // the day before the need began to hold, or longAgo
	first     int // within how many days of since young must have eaten; 0 where they have
	firstMeal *plan.Figure
	fast      *plan.Figure // the fast that is looked into
	// Of a need of the whole enclosure: for how many days it may be left, and by which
	// figure.
	left  int
	alone *plan.Figure
}

// holds reports whether a stage has a need: young on their mother are not fed.
func holds(n *schema.NeedName, stage string) bool {
	return stage != newborn || n != schema.NeedFood && n != schema.NeedLeftovers
}

const newborn = "newborn"

// asks returns a need of the group's own in its kth stage. Newborn days do not count:
// the time of young runs from their first moult, and the first meal has a limit of its
// own where the sheet has one.
func (x *stay) asks(k int, n *plan.Need) asked {
	s := x.stages[k]
	a := asked{need: n, group: x.Group, stage: s.stage, from: s.from, to: s.to, since: s.from - 1}
	for j := k; j > 0 && x.stages[j-1].to == x.stages[j].from && holds(n.What, x.stages[j-1].stage); j-- {
		a.since = x.stages[j-1].from - 1
	}
	if n.What != schema.NeedFood {
		return a
	}
	a.fast = x.Sheet.Figure(schema.FigureFastAlarm, s.stage)
	ridden := k > 0 && x.stages[k-1].to == s.from && x.stages[k-1].stage == newborn
	free := k == 0 && x.Logged && x.Born != 0 && x.Since.V == x.Born // they hatched ready to feed
	if ridden || free {
		if f := x.Sheet.Figure(schema.FigureFirstMeal, s.stage); f != nil {
			a.since, a.first, a.firstMeal = s.from, wholeDays(f.Range.High), f
		}
	}
	return a
}

// shared returns the needs of the whole enclosure: on each day the strictest of those of
// the groups that live there.
func (w *prover) shared() []asked {
	out := make([]asked, 0, len(schema.Needs))
	for _, d := range w.days() {
		before := len(out)
		for k := range w.stays {
			if s := w.stays[k].at(d.from); s != nil {
				for _, n := range w.stays[k].Sheet.NeedsOf(s.stage) {
					if n.What != nil && !n.What.OfGroup {
						out = strictest(out, before, asked{need: n, from: d.from, to: d.to, since: d.since})
					}
				}
			}
		}
		left, alone := w.left(d.from)
		for k := before; k < len(out); k++ {
			out[k].left, out[k].alone = left, alone
		}
		out = merged(out, before)
	}
	return out
}

// strictest puts a need among those of the same days, from the place first on.
func strictest(all []asked, first int, a asked) []asked {
	for k := first; k < len(all); k++ {
		if o := &all[k]; o.need.What == a.need.What {
			if a.need.Longest.V.Value < o.need.Longest.V.Value {
				*o = a
			}
			return all
		}
	}
	return append(all, a)
}

// merged joins needs, from the place first on, to the same of the days before: what is
// not changed by who comes or grows is one proof.
func merged(all []asked, first int) []asked {
	out := all[:first]
	for _, a := range all[first:] {
		k := slices.IndexFunc(out[:first], func(o asked) bool {
			return o.to == a.from && o.need == a.need && o.left == a.left && o.alone == a.alone
		})
		if k >= 0 {
			out[k].to = a.to
		} else {
			out = append(out, a)
		}
	}
	return out
}

// days cuts the days from today on where somebody comes, goes or changes.
func (w *prover) days() []span {
	today, end := w.s.Horizon.Today, w.s.Horizon.Days
	var buf [4]int
	cuts := append(buf[:0], today, end)
	for k := range w.stays {
		for _, s := range w.stays[k].stages {
			for _, at := range [...]int{s.from, s.to} {
				if at > today && at < end {
					cuts = append(cuts, at)
				}
			}
		}
	}
	slices.Sort(cuts)
	cuts = slices.Compact(cuts)
	out := make([]span, 0, len(cuts)-1)
	for k, from := range cuts[:len(cuts)-1] {
		since := w.since(from)
		if since == from {
			continue // nobody lives there
		}
		if n := len(out); n > 0 && out[n-1].to == from {
			since = out[n-1].since
		}
		out = append(out, span{from, cuts[k+1], since})
	}
	return out
}

// span is some days on which animals live in an enclosure, without a change. since is
// the day before they came, or longAgo.
type span struct{ from, to, since int }

// since returns the day before the first of those who live there on a day came; the day
// itself where nobody does.
func (w *prover) since(day int) int {
	since := day
	for k := range w.stays {
		x := &w.stays[k]
		for j := range x.stages {
			if s := &x.stages[j]; s.from <= day && day < s.to {
				for ; j > 0 && x.stages[j-1].to == x.stages[j].from; j-- {
				}
				since = min(since, x.stages[j].from-1)
			}
		}
	}
	return since
}

// at returns the stage of a group on a day, or nil where it has no animals.
func (x *stay) at(day int) *stretch {
	for k := range x.stages {
		if s := &x.stages[k]; s.from <= day && day < s.to {
			return s
		}
	}
	return nil
}
