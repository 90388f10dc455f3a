// Package daylist makes the lists of days that people work from: the rounds of today, without
// what the log says was done, and of the days to come, each with who does it and whom to ring.
// A terminal, a page and paper print what it returns.
package daylist

import (
	"slices"

	"vivary/compile"
	"vivary/compile/roster"
	"vivary/compile/rounds"
	"vivary/plan"
	"vivary/schema/civil"
)

// Asked is which lists are asked for.
type Asked struct {
	Days   int    // from today on, at least 1
	Round  string // only this round; "" for all
	Keeper string // only what this keeper does; "" for everybody
	Brief  bool   // of the days after today no more than the summary
}

// List is a round on a day.
type List struct {
	rounds.Sheet
	Summary string   // as a month shows it; "" where nothing is left to be done
	Keepers []string // who does it, by name; none where nobody is named
	Ring    []string // whom to ring, with the numbers, for who stands in and for lists on paper
}

// Of returns the rounds of the days asked for, by day and time. The plan must have been
// understood: r has a roster.
func Of(r *compile.Result, asked Asked) []*List { return new(Memory).Of(r, asked) }

// listed makes the lists of one round.
func listed(r *compile.Result, round *plan.Round, picks []roster.Pick, asked Asked, done func(*roster.Entry) bool) (out []*List) {
	x := rounds.Ticked(r.Roster, round, picks, done)
	for day := r.Horizon.Today; day < r.Horizon.Today+asked.Days; day++ {
		if !x.Days.Has(day) {
			continue
		}
		l := &List{Sheet: rounds.Sheet{Round: x.Plan, Date: r.Horizon.Date(day), Open: x.Open(day)}}
		if !asked.Brief || day == r.Horizon.Today {
			l.Sheet, l.Keepers, l.Ring = x.On(day), doers(r, picks, day), ring(r, x.Plan, picks, day)
		}
		if l.Open {
			l.Summary = string(x.Summary(nil, day))
		}
		out = append(out, l)
	}
	return out
}

// Leaves returns who is away, and what that asks of people, on a day: of a keeper that is
// named nothing that is for others only.
func Leaves(r *compile.Result, on civil.Date, keeper string) []roster.Leave {
	return slices.DeleteFunc(r.Roster.Leaves(), func(x roster.Leave) bool {
		return on < x.From || on >= x.From+civil.Date(max(1, x.Days)) || keeper != "" && x.For != "" && x.For != keeper
	})
}

// First is something urgent, with the enclosure in which it is.
type First struct {
	Text      string
	Enclosure *plan.Enclosure
}

// Unpassed returns what is urgent today in enclosures that none of the lists passes today:
// nobody would be told of it.
func Unpassed(r *compile.Result, lists []*List) (out []First) {
	for _, l := range r.Lives {
		if slices.ContainsFunc(lists, func(s *List) bool { return s.Date == r.Today && s.Passes(l.Plan.Name.V) }) {
			continue
		}
		for _, first := range r.Roster.Pressing[l] {
			if first.On(r.Today) {
				out = append(out, First{first.Text, l.Plan})
			}
		}
	}
	return out
}

// doers names those who do something of a round on a day, by name.
func doers(r *compile.Result, picks []roster.Pick, day int) []string {
	var out []string
	for _, p := range picks {
		if who, _ := r.Roster.Doer(p.Entry, day); p.Days.Has(day) && who != "" && !slices.Contains(out, who) {
			out = append(out, who)
		}
	}
	slices.Sort(out)
	return out
}

// ring returns whom to ring, with the numbers, for a round on a day: where somebody stands
// in, or the round is worked from a list that no calendar shows. Feeds are read by others
// too, so that no number stands in any of them.
func ring(r *compile.Result, round *plan.Round, picks []roster.Pick, day int) []string {
	if !round.ListedElsewhere() && !slices.ContainsFunc(picks, func(p roster.Pick) bool {
		who, there := r.Roster.Doer(p.Entry, day)
		return there && p.Days.Has(day) && who != p.Entry.Keeper
	}) {
		return nil
	}
	return Numbers(r.Plan, doers(r, picks, day))
}

// Numbers returns whom to ring, with the numbers: every keeper and contact that has one, but
// for those who are there themselves.
func Numbers(c *plan.Collection, there []string) (out []string) {
	for _, k := range c.Keepers {
		if k.Phone.Set() && !slices.Contains(there, k.Name.V) {
			out = append(out, k.Shown()+" "+k.Phone.V)
		}
	}
	for _, x := range c.Contacts {
		if x.Phone.Set() {
			out = append(out, x.Shown()+" "+x.Phone.V)
		}
	}
	return out
}

// Shown returns the name of a keeper as people see it.
func Shown(c *plan.Collection, keeper string) string {
	if k := c.Keeper(keeper); k != nil {
		return k.Shown()
	}
	return keeper
}
