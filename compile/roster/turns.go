package roster

import (
	"slices"

	"vivary/compile/horizon"
	"vivary/compile/recur"
	"vivary/plan"
	"vivary/schema/civil"
)

// Care that names several rounds is done, on each of its days, in all of them that are held.
// So rounds of different days take turns, and what is in two rounds of one day is done
// twice. What becomes of its days (absences, holds, what is moved or caught up) is worked
// out once for all rounds that the same people do: what falls on a Friday evening may move
// to Saturday morning. Only then is it known in which round each day is.

// shares parts the rounds of a care by who does it, and with how many.
func (b *builder) shares(t *plan.Timing, all []*plan.Round) [][]*plan.Round {
	if len(all) == 1 {
		return [][]*plan.Round{all}
	}
	type crew struct {
		keeper string
		people int
	}
	var out [][]*plan.Round
	var crews []crew
	for _, x := range all {
		c := crew{b.keeperOf(t, x), x.People.Or(1)}
		k := slices.Index(crews, c)
		if k < 0 {
			k = len(crews)
			crews, out = append(crews, c), append(out, nil)
		}
		out[k] = append(out[k], x)
	}
	return out
}

// inRounds makes an entry of each share of the rounds of a care; several says that the round
// is part of its identity.
func (b *builder) inRounds(e Entry, all []*plan.Round, several bool, use func(Entry)) {
	t, bounds := e.Timing, *e.making
	for _, in := range b.shares(t, all) {
		e.making = &making{in: in, several: several, first: bounds.first, last: bounds.last}
		e.Round = in[0]
		if len(in) < len(all) {
			e.others = slices.DeleteFunc(slices.Clone(all), func(x *plan.Round) bool { return slices.Contains(in, x) })
		}
		e.held = b.anyHeld(in)
		use(e)
	}
}

// several reports whether a care has several rounds or times.
func several(t *plan.Timing, all []*plan.Round) bool {
	return len(plan.Wholes(all)) > 1 || len(t.Round)+len(t.Clocks) > 1 || t.Cron.Set()
}

// anyHeld returns the days on which one of some rounds is held, nil for every day.
func (b *builder) anyHeld(in []*plan.Round) horizon.Days {
	if len(in) == 1 {
		return b.rounds.held[in[0]]
	}
	out := b.days()
	for _, x := range in {
		held := b.rounds.held[x]
		if held == nil {
			return nil
		}
		out.Union(held)
	}
	return out
}

// part adds an entry once its days are known: one for each of its rounds, with the days on
// which that is held. A day on which none is, since it was done then, is in the first.
func (b *builder) part(e Entry) {
	if len(e.in) == 1 {
		b.entries = append(b.entries, e)
		return
	}
	before := len(b.entries)
	for k, x := range e.in {
		part := e
		part.Round = x
		if e.several || x.Of != nil {
			part.ID = e.ID.In(x)
		}
		mine := b.days()
		mine.AddRun(0, b.Horizon.Days, b.Horizon.Days)
		if held := b.rounds.held[x]; held != nil {
			mine.Keep(held)
			if k == 0 && e.held != nil {
				b.addRest(mine, e.held)
			}
		}
		if b.cut(&part, mine) || k == len(e.in)-1 && len(b.entries) == before {
			b.entries = append(b.entries, part)
		}
	}
}

// addRest adds to a set the days that another has not.
func (b *builder) addRest(to, but horizon.Days) {
	rest := b.days()
	rest.AddRun(0, b.Horizon.Days, b.Horizon.Days)
	rest.Subtract(but)
	to.Union(rest)
}

// cut leaves of an entry the days of one round, and reports whether there are any on which it
// stands, or would but for some reason.
func (b *builder) cut(e *Entry, mine horizon.Days) (any bool) {
	keep := func(days horizon.Days) horizon.Days {
		if days == nil {
			return nil
		}
		out := days.Clone()
		out.Keep(mine)
		return out
	}
	all := e.Days
	e.Days, e.Killed = keep(all), keep(e.Killed)
	causes, manners := e.Causes, e.Manners
	e.Causes, e.Manners = nil, nil
	elsewhere := all.Clone()
	for _, c := range causes {
		elsewhere.Union(c.Days)
		if c.Days = keep(c.Days); !c.Days.Empty() {
			e.Causes = append(e.Causes, c)
		}
	}
	any = !e.Days.Empty() || len(e.Causes) > 0
	elsewhere.Subtract(mine)
	for _, m := range manners {
		if m.Days = keep(m.Days); !m.Days.Empty() {
			e.Manners = append(e.Manners, m)
		}
	}
	for i := elsewhere.Next(0); i >= 0; i = elsewhere.Next(i + 1) {
		b.mark(e, Cause{Why: OtherRound, At: e.Round.At, Round: b.roundOn(e, i)}, i)
	}
	if e.Logged >= 0 && !mine.Has(e.Logged) {
		e.Logged = -1
	}
	if e.Round.Turns != nil && !e.Moved {
		e.whole, e.Moved = e.Rules, true
	}
	if len(e.Round.On) > 0 && !e.Moved {
		e.whole = e.Rules
		e.Rules, e.Moved = b.narrowed(e.Rules, e.Round)
	}
	return any
}

// roundOn returns the round in which an entry is done on day i, the first of several.
func (b *builder) roundOn(e *Entry, i int) *plan.Round {
	for _, x := range e.in {
		if held := b.rounds.held[x]; held == nil || held.Has(i) {
			return x
		}
	}
	return e.in[0]
}

// narrowed returns rules with the weekdays of a round only, where there are such rules; else
// the same ones, and true, since they do not tell the days any more. What the round is held
// on beside its weekdays are days beside the rules.
func (b *builder) narrowed(rules []recur.Rule, x *plan.Round) (out []recur.Rule, lost bool) {
	var on civil.Weekdays
	for _, d := range x.On {
		if d.V.Kind == plan.EachWeekday {
			on = on.With(d.V.Weekday)
		}
	}
	for _, r := range rules {
		r, ok := r.OnWeekdays(on)
		if !ok {
			return rules, true
		}
		if !r.Never() {
			out = append(out, r)
		}
	}
	return out, len(out) == 0
}
