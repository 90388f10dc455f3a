package daylist

import (
	"cmp"
	"slices"
	"sync"

	"vivary/compile"
	"vivary/compile/roster"
	"vivary/plan/finding"
	"vivary/schema/civil"
)

// Memory makes lists again and again, from one compilation after another by the same Reader.
// What it made it keeps until the next time: the list of a round in which nothing has changed
// is the same value. The zero Memory is ready to use, by any number at once.
type Memory struct {
	mu   sync.Mutex
	kept map[Asked]map[string]*kept // by what was asked for, and by round
	last map[Asked]made
}

// made are the lists that were made last.
type made struct {
	of    *roster.Roster
	lists []*List
}

// kept are the lists of a round, with all that they were made from.
type kept struct {
	today civil.Date
	picks []roster.Pick
	done  []bool            // those of the picks that are done
	press [][]finding.First // what is urgent in each enclosure of them
	lists []*List
}

// Of is as the function Of. Nobody changes what it returns.
func (m *Memory) Of(r *compile.Result, asked Asked) []*List {
	m.mu.Lock()
	defer m.mu.Unlock()
	if last := m.last[asked]; last.of == r.Roster {
		return slices.Clone(last.lists)
	}
	before, now := m.kept[asked], map[string]*kept{}
	ticks := r.Roster.Ticks()
	done := func(e *roster.Entry) bool { return ticks.Has(e, r.Horizon.Today) }
	var out []*List
	picksOf := r.Roster.PicksOf(asked.Keeper)
	for _, round := range r.Roster.Rounds {
		name := round.Name.V
		if asked.Round != "" && name != asked.Round {
			continue
		}
		picks := picksOf(round)
		if len(picks) == 0 {
			continue
		}
		k := &kept{today: r.Today, picks: picks}
		for i, p := range picks {
			k.done = append(k.done, done(p.Entry))
			if i == 0 || p.Entry.Life != picks[i-1].Entry.Life {
				k.press = append(k.press, r.Roster.Pressing[p.Entry.Life])
			}
		}
		if was := before[name]; k.same(was) {
			k.lists = was.lists
		} else {
			k.lists = listed(r, round, picks, asked, done)
		}
		now[name] = k
		out = append(out, k.lists...)
	}
	if m.kept == nil {
		m.kept, m.last = map[Asked]map[string]*kept{}, map[Asked]made{}
	}
	slices.SortStableFunc(out, func(a, b *List) int { return cmp.Compare(a.Date, b.Date) })
	m.kept[asked], m.last[asked] = now, made{r.Roster, out}
	return slices.Clone(out)
}

// same reports whether lists would be made from the very same as before. An entry that is the
// same is one of which all that it depends on is.
func (k *kept) same(o *kept) bool {
	return o != nil && k.today == o.today && slices.Equal(k.done, o.done) &&
		slices.EqualFunc(k.press, o.press, slices.Equal) &&
		slices.EqualFunc(k.picks, o.picks, func(a, b roster.Pick) bool { return a.Entry == b.Entry && slices.Equal(a.Days, b.Days) })
}
