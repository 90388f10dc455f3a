package roster

import (
	"slices"
	"strconv"

	"vivary/compile/identity"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/wording"
)

// Leave is what an absence means for people on one day, apart from the rounds.
type Leave struct {
	Name  string // stable: part of the entry's identity
	Title string
	Lines []string
	From  civil.Date // the first day
	Days  int
	// For says whom it is for: the one who is away, the one who stands in, or
	// everybody, "". Away is who is away.
	For, Away string
	// Sudden says that the log alone tells of it.
	Sudden bool

	// begins has whose time with animals that they may not know begins with it, in which
	// run of whose days away; nil for nobody's. Roster.Aid says what they are to know.
	begins *begins
}

// Leaves returns what absences mean: getting ready on the last day before, the days
// away, and the return, for the keeper; the day before, the first visit and handing back
// for whoever covers. It is one set for a run of days away, however many blocks make it.
func (s *Shared) Leaves() []Leave {
	var out []Leave
	for _, d := range s.People.Duties() {
		for k := range d.Runs {
			out = append(out, s.leaves(d, &d.Runs[k])...)
		}
	}
	return out
}

func (s *Shared) leaves(d *Duty, r *Run) []Leave {
	if r.sudden() {
		return s.suddenLeaves(d, r)
	}
	keeper := shown(s.Plan, d.Keeper)
	id := had(s.Plan, d.Keeper) + "/" + r.Begun.String()
	until := r.Ends.Short()
	away := Leave{Away: d.Keeper, Name: id + "/away", Title: keeper + " is away", From: r.Begun, Days: int(r.Ends - r.Begun)}
	ready := []string{"Fill every dish", "Check every lid, lock and thermostat"}
	back := []string{"Count the animals and look at every lid", "Read the lowest and the highest temperatures", "Write down what was seen"}
	var out []Leave
	for k, name := range r.covers() {
		visits := s.visits(d, r, name)
		cover, suffix, first := shown(s.Plan, name), "", s.visit(d, r, name)
		if k > 0 {
			suffix = "/" + had(s.Plan, name)
		}
		away.Lines = append(away.Lines, cover+" stands in until "+r.until(name).Short()+told(visits, ", on "))
		back = append([]string{"Tell " + cover + " that you are back"}, back...)
		out = append(out,
			Leave{Away: d.Keeper, Name: id + "/stand-in-eve" + suffix, Title: "You stand in for " + keeper + " from " + first.Short(), From: r.since(name) - 1, Days: 1, For: name,
				Lines: slices.Concat(line(told(visits, "Your days: ")), []string{"Have keys, portions and numbers at hand", "Ask now what is not clear"})},
			Leave{Away: d.Keeper, Name: id + "/stand-in" + suffix, Title: "You stand in for " + keeper, From: first, Days: 1, For: name,
				Lines:  slices.Concat(line(told(visits, "Your days: ")), schema.StandIn),
				begins: &begins{d, r, []string{name}}},
			Leave{Away: d.Keeper, Name: id + "/handed-back" + suffix, Title: "Handed back to " + keeper, From: r.until(name), Days: 1, For: name,
				Lines: []string{keeper + s.again(d.Keeper)}})
	}
	if len(out) == 0 {
		away.Lines = []string{"Nobody stands in until " + until}
	} else {
		ready = append(ready, "Lay out the portions and label them with their dates", "Leave the numbers of a mentor and a veterinarian")
		back = append(back[:len(back)-3:len(back)-3], append([]string{"Read the notes"}, back[len(back)-3:]...)...)
	}
	// Who has no calendar of their own reads that of everybody.
	if others := slices.DeleteFunc(r.covers(), s.hasCalendar); len(others) > 0 {
		away.begins = &begins{d, r, others}
	}
	for _, name := range d.inRun(r) {
		if !slices.Contains(r.covers(), name) { // for somebody who fell ill on a trip
			out = append(out, s.steps(d, r, name))
		}
	}
	out = append(out, away,
		Leave{Away: d.Keeper, Name: id + "/ready", Title: "Get ready to leave tomorrow", Lines: ready, From: r.Begun - 1, Days: 1, For: d.Keeper})
	if r.open() {
		return out
	}
	return append(out, Leave{Away: d.Keeper, Name: id + "/return", Title: "Back today", Lines: back, From: r.Ends, Days: 1, For: d.Keeper})
}

// again says what somebody does who is back.
func (s *Shared) again(keeper string) string {
	if s.ByRota(keeper) {
		return " does the rounds again from today, on the days that the rota says"
	}
	return " does the rounds again from today"
}

// listedVisits is how many visits are listed; of more, the first of them and the last.
const listedVisits = 14

// visits says on which days somebody comes who does not come on each; "" where they do.
func (s *Shared) visits(d *Duty, r *Run, cover string) string {
	from, ok := s.Horizon.Index(s.visit(d, r, cover))
	if !ok {
		return ""
	}
	var spans []string
	every := true
	for _, x := range d.stands {
		if x.keeper != cover {
			continue
		}
		for i, until := from, min(int(r.until(cover)-s.Horizon.From), r.To); i < until; i++ {
			every = every && x.days.Has(i)
		}
		for i := x.days.Next(from); i >= 0 && i < r.To; {
			last := i
			for last+1 < r.To && x.days.Has(last+1) {
				last++
			}
			span := s.Horizon.Date(i).Short()
			if last == i+1 {
				last = i // two days are named each
			}
			if last > i {
				span += " to " + s.Horizon.Date(last).Short()
			}
			spans = append(spans, span)
			i = x.days.Next(last + 1)
		}
	}
	switch n := len(spans); {
	case every:
		return ""
	case n > listedVisits:
		spans = append(spans[:listedVisits-1:listedVisits-1], strconv.Itoa(n-listedVisits)+" more", spans[n-1])
	}
	return wording.And(spans)
}

// told puts words before what is said, and line makes a line of it; of nothing none.
func told(text, before string) string {
	if text == "" {
		return ""
	}
	return before + text
}

func line(text string) []string {
	if text == "" {
		return nil
	}
	return []string{text}
}

// covers are those who stand in during a run, by the first day on which they do.
func (r *Run) covers() []string {
	var out []string
	seen := map[string]bool{"": true}
	for _, a := range r.Blocks {
		if name := a.Cover.Or(""); !seen[name] {
			seen[name] = true
			out = append(out, name)
		}
	}
	return out
}

// hasCalendar reports whether somebody reads of leaves in a calendar of their own.
func (s *Shared) hasCalendar(who string) bool {
	return slices.ContainsFunc(s.Plan.RoundCalendars(), func(c *plan.Calendar) bool { return len(c.Kinds) == 0 && plan.Lists(c.Keepers, who) })
}

// visit is the first day of a run on which somebody comes.
func (s *Shared) visit(d *Duty, r *Run, cover string) civil.Date {
	since := r.since(cover)
	for _, x := range d.stands {
		if i, ok := s.Horizon.Index(since); ok && x.keeper == cover {
			if i = x.days.Next(i); i >= 0 && i < r.To {
				return s.Horizon.Date(i)
			}
		}
	}
	return since
}

// since and until are the first day on which somebody stands in, and the day on which
// they have handed back.
func (r *Run) since(cover string) civil.Date {
	for _, a := range r.Blocks {
		if a.Cover.Or("") == cover {
			return a.From.V
		}
	}
	return r.Begun
}

func (r *Run) until(cover string) civil.Date {
	last := r.Begun
	for _, a := range r.Blocks {
		if a.Cover.Or("") == cover {
			last = max(last, a.To.V)
		}
	}
	return last
}

// had is the name that a keeper had first.
func had(c *plan.Collection, keeper string) string {
	if k := c.Keeper(keeper); k != nil {
		return identity.Keeper(k)
	}
	return keeper
}

func shown(c *plan.Collection, keeper string) string {
	if k := c.Keeper(keeper); k != nil {
		return k.Shown()
	}
	return keeper
}

// Regular reports whether a keeper does anything as their own, and does not only
// stand in for others.
func (r *Roster) Regular(keeper string) bool {
	for e := range r.All() {
		if e.Keeper == keeper {
			return true
		}
	}
	return false
}
