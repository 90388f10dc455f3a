package plan

import (
	"slices"
	"strconv"
	"strings"

	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/civil"
)

// A rota gives days of a round to others than its keeper. To all that comes after this package
// each of them then has a round of their own, on their days: so absences, holds and the proof
// know of no rota, and who is away on a day of theirs is simply away.

// Rota is a rota block.
type Rota struct {
	Head
	Title Written[string]     `care:"title"`
	WeekA Written[civil.Date] `care:"week_a"`
	Turns []*RotaTurn         `care:"turn"`
	Note  Written[string]     `care:"note"`
}

// Shown returns the title that people see.
func (r *Rota) Shown() string { return title(r.Title, r.Name.V) }

// RotaTurn is a turn block. Its name is the keeper's.
type RotaTurn struct {
	Head
	On    []Written[Day]    `care:"on"`
	Weeks Written[[]string] `care:"weeks"`
	Note  Written[string]   `care:"note"`
}

// Dated reports whether a turn says dates, and not only days that come every week or month.
func (t *RotaTurn) Dated(c *Collection) bool {
	return slices.ContainsFunc(c.Days(t.On), func(d Written[Day]) bool {
		return d.V.Kind == Dated || d.V.Kind == DateOfYear || d.V.Kind == PartOfYear
	})
}

// Weeks is after how many weeks the rota begins anew.
func (r *Rota) Weeks() int {
	n := 1
	for _, t := range r.Turns {
		for _, w := range t.Weeks.V {
			n = max(n, weekOf(w)+1)
		}
	}
	return n
}

// weekOf is the place of a letter among the weeks of a rota.
func weekOf(letter string) int {
	return slices.IndexFunc(schema.RotaWeeks, func(c schema.Choice) bool { return c.Name == letter })
}

// InWeek reports whether a date is in a week of a turn, in a rota of n weeks. Weeks begin with
// Monday, as what is done every other week does.
func (r *Rota) InWeek(t *RotaTurn, n int, d civil.Date) bool {
	if !t.Weeks.Set() {
		return true
	}
	monday := func(d civil.Date) int { return int(d) - (int(d.Weekday())+6)%7 }
	k := ((monday(d)-monday(r.WeekA.V))/7%n + n) % n
	return slices.ContainsFunc(t.Weeks.V, func(w string) bool { return weekOf(w) == k })
}

// Wholes are the rounds of the plan of which some are, or are parts, each once.
func Wholes(all []*Round) []*Round {
	var out []*Round
	for _, x := range all {
		if w := x.Whole(); !slices.Contains(out, w) {
			out = append(out, w)
		}
	}
	return out
}

// maxParts bounds the rounds that rotas make.
const maxParts = 2_000

// parting is of which blocks the parts of a round were made.
type parting struct {
	round *Round
	rota  *Rota
}

// rotas puts behind each round that goes by a rota its parts, one for each other keeper who has
// a turn. Where its blocks are those of the load before, so are they.
func (r *resolver) rotas() {
	c := r.c
	if len(c.Rotas) == 0 && !slices.ContainsFunc(c.Rounds, func(x *Round) bool { return x.Rota.Set() }) {
		return
	}
	r.ofRotas()
	c.parted = map[parting][]*Round{}
	var out []*Round
	for _, x := range c.Rounds {
		all := r.parts(x)
		if len(out)+len(all) > len(c.Rounds)+maxParts {
			r.found.Add(finding.Finding{Rule: ruleTooMany, At: x.Rota.At, Text: "with the round" + named(&x.Head) + " rotas part rounds into more than are looked at",
				Limit: strconv.Itoa(maxParts) + " rounds of one keeper each", Write: "fewer people with turns in one rota, or fewer rounds"})
			all = []*Round{x}
		}
		if c.rounds[x.Name.V] == x {
			c.rounds[x.Name.V] = all[0]
		}
		out = append(out, all...)
	}
	c.Rounds = out
}

// parts returns a round, and behind it its parts.
func (r *resolver) parts(x *Round) []*Round {
	rota := r.c.rotas[x.Rota.V]
	if rota == nil {
		return []*Round{x}
	}
	key := parting{x, rota}
	who := r.others(x, rota)
	if r.last != nil {
		if all := r.last.parted[key]; len(all) == len(who)+1 && !slices.ContainsFunc(who, func(k *Keeper) bool {
			return !slices.ContainsFunc(all, func(p *Round) bool { return p.By == k })
		}) {
			r.c.parted[key] = all
			return all
		}
	}
	whole := *x
	whole.Turns = rota
	all := []*Round{&whole}
	for _, k := range who {
		part := whole
		part.Of, part.By = &whole, k
		part.Keeper.V = k.Name.V
		all = append(all, &part)
	}
	r.c.parted[key] = all
	return all
}

// others are those who have a turn and are not the round's own keeper, by name.
func (r *resolver) others(x *Round, rota *Rota) (out []*Keeper) {
	for _, k := range r.c.Keepers {
		if k.Name.V != x.Keeper.V && slices.ContainsFunc(rota.Turns, func(t *RotaTurn) bool { return t.Name.V == k.Name.V }) {
			out = append(out, k)
		}
	}
	return out
}

// ofRotas looks at rotas, and at the rounds that go by them.
func (r *resolver) ofRotas() {
	c := r.c
	used := map[string]bool{}
	for _, x := range c.Rounds {
		if !x.Rota.Set() {
			continue
		}
		used[x.Rota.V] = true
		if c.rotas[x.Rota.V] == nil {
			r.unknownName(x.Rota, "rota", keysOf(r, "rota", c.rotas))
		} else if !x.Keeper.Set() && !x.Keeper.Bad {
			r.found.Add(finding.Finding{Rule: ruleMissing, At: x.Rota.At, Text: "the round" + named(&x.Head) + " goes by a rota and has no keeper: whose the days are that no turn has is not said",
				Write: "who has them, as keeper of the round"})
		}
	}
	for _, rota := range c.Rotas {
		if !used[rota.Name.V] && !r.unread.mayHold(rota.Name.V) {
			r.found.Add(finding.Finding{Rule: ruleDatesUnnamed, At: rota.At, Text: "rota" + named(&rota.Head) + " is named nowhere: no round goes by it",
				Write: quote(rota.Name.V) + " as rota in the rounds that go by it"})
		}
		for _, t := range rota.Turns {
			if t.Name.V != "" && c.keepers[t.Name.V] == nil {
				r.unknownName(t.Name, "keeper", keysOf(r, "keeper", c.keepers))
			}
			r.days(t.On)
			if t.Weeks.Set() && !rota.WeekA.At.Written() {
				r.found.Add(finding.Finding{Rule: ruleMissing, At: t.Weeks.At, Text: "rota" + named(&rota.Head) + " has no week_a: which week is " + strings.Join(t.Weeks.V, ", ") + " cannot be told",
					Write: "any day of a week a, as week_a of the rota"})
			}
		}
	}
}
