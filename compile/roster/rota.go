package roster

import (
	"slices"
	"strings"

	"vivary/compile/horizon"
	"vivary/plan"
	"vivary/plan/finding"
)

// shared is whose the days of a rota are.
type shared struct {
	turns []int // of each day of the window the place of the turn that has it, -1 for none
	rota  *plan.Rota
}

// share gives out the days of a rota, the turns with dates last.
func (s *Shared) share(r *plan.Rota) *shared {
	out := &shared{make([]int, s.Horizon.Days), r}
	for i := range out.turns {
		out.turns[i] = -1
	}
	for _, dated := range [...]bool{false, true} {
		s.turns(r, dated, func(k, i, _ int) { out.turns[i] = k })
	}
	return out
}

// turns calls use for each day of each turn of a rota that has dates, or has none, in the order
// of the text; before is the last turn of the same sort that has the day, -1 for none.
func (s *Shared) turns(r *plan.Rota, dated bool, use func(turn, day, before int)) {
	n := r.Weeks()
	last := make([]int, s.Horizon.Days)
	for i := range last {
		last[i] = -1
	}
	for k, t := range r.Turns {
		if t.Dated(s.Plan) != dated {
			continue
		}
		days := listed(s.Plan, t.On, s.Horizon)
		for i := days.Next(0); i >= 0 && i < s.Horizon.Days; i = days.Next(i + 1) {
			if r.InWeek(t, n, s.Horizon.Date(i)) {
				use(k, i, last[i])
				last[i] = k
			}
		}
	}
}

// ByRota reports whether a keeper has days of a round that goes by a rota.
func (s *Shared) ByRota(keeper string) bool {
	return slices.ContainsFunc(s.Rounds, func(x *plan.Round) bool { return x.Turns != nil && x.Keeper.V == keeper })
}

// of returns the days of a round, or of a part of one, of those on which the whole is held.
func (x *shared) of(r *plan.Round, held horizon.Days, h horizon.Horizon) horizon.Days {
	out := h.New()
	for i, k := range x.turns {
		if held != nil && !held.Has(i) {
			continue
		}
		whose := r.Whole().Keeper.V
		if k >= 0 {
			whose = x.rota.Turns[k].Name.V
		}
		if whose == r.Keeper.V {
			out.Add(i)
		}
	}
	return out
}

// twoTurns finds days of a rota that two people have. Of turns without dates that is so for
// ever; of two with dates the one that stands last is meant, most likely.
func (s *Shared) twoTurns() []finding.Finding {
	var found finding.List
	for _, r := range s.Plan.Rotas {
		for _, dated := range [...]bool{false, true} {
			both := map[[2]int]horizon.Days{}
			var order [][2]int
			s.turns(r, dated, func(k, i, before int) {
				if before < 0 || r.Turns[before].Name.V == r.Turns[k].Name.V || i < s.Horizon.Today {
					return
				}
				pair := [2]int{before, k}
				if both[pair] == nil {
					both[pair] = s.Horizon.New()
					order = append(order, pair)
				}
				both[pair].Add(i)
			})
			for _, pair := range order {
				one, other := r.Turns[pair[0]], r.Turns[pair[1]]
				f := finding.Finding{Rule: ruleTwoTurns, At: other.At,
					Text:  strings.TrimSpace(s.Horizon.Often(both[pair])+" both "+shown(s.Plan, one.Name.V)+" and "+shown(s.Plan, other.Name.V)) + " have the day",
					Write: "other days for one of the two, or weeks that differ",
					Also:  []finding.Related{{At: one.At, Text: "the other"}}}
				if dated || !weekly(one) || !weekly(other) { // it may come up on some day of a year to come
					f.Text += ": " + shown(s.Plan, other.Name.V) + " is taken to have it, whose turn stands last"
					f.Write = "these days taken out of the turn that stands first"
					found.Soft(f, finding.Caution)
					continue
				}
				found.Add(f)
			}
		}
	}
	return found.All
}

// idleTurn finds single dates of a turn that are its keeper's anyway: most often another day was
// meant to be swapped.
func (s *Shared) idleTurn(found *finding.List, r *plan.Rota, k int) {
	t := r.Turns[k]
	without := *r
	without.Turns = slices.Delete(slices.Clone(r.Turns), k, k+1)
	var rounds []*plan.Round
	for _, x := range s.Plan.Rounds {
		if x.Of == nil && x.Turns == r {
			rounds = append(rounds, x)
		}
	}
	var others *shared
	for _, d := range t.On {
		i, in := s.Horizon.Index(d.V.First)
		if !s.single(d.V) || !in || len(rounds) == 0 {
			continue
		}
		if others == nil {
			others = s.share(&without)
		}
		whose := others.turns[i]
		theirs := func(x *plan.Round) bool {
			if whose < 0 {
				return x.Keeper.V == t.Name.V
			}
			return without.Turns[whose].Name.V == t.Name.V
		}
		if !slices.ContainsFunc(rounds, func(x *plan.Round) bool { return !theirs(x) }) {
			found.Add(finding.Finding{Rule: ruleIdleDate, At: d.At, Text: d.V.First.Words() + " is a day of " + shown(s.Plan, t.Name.V) + " anyway: the turn changes nothing",
				Write: "the day that is swapped, or nothing"})
		}
	}
}

// weekly reports whether a turn has days of the week only.
func weekly(t *plan.RotaTurn) bool {
	return !slices.ContainsFunc(t.On, func(d plan.Written[plan.Day]) bool { return d.V.Kind != plan.EachWeekday })
}
