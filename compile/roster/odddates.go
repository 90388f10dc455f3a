package roster

import (
	"strconv"
	"strings"

	"vivary/compile/horizon"
	"vivary/compile/recur"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema/civil"
	"vivary/schema/wording"
)

// Dates that say nothing, and rounds of which it is not known which is meant.

// idle finds single dates to come which change nothing: what is planned on a day stands in
// on. Where the days of an interval are ours to choose, no date is wrong.
func (s *Shared) idle(found *finding.List, name string, notOn, alsoOn []plan.Written[plan.Day], on func(civil.Date) bool) {
	say := func(d plan.Written[plan.Day], text string, meant func(civil.Date) bool) {
		f := finding.Finding{Rule: ruleIdleDate, At: d.At, Text: d.V.First.Words() + " " + text, Write: "another date, or none"}
		if next, ok := nearestDay(d.V.First, s.Horizon.Now(), meant); ok {
			f.Write = "the date that is meant: the nearest is " + next.String() + ", " + next.Short()
		}
		found.Add(f)
	}
	for _, d := range notOn {
		if s.single(d.V) && !on(d.V.First) {
			say(d, "is a day on which "+name+" is left out anyway", on)
		}
	}
	for _, d := range alsoOn {
		if !s.single(d.V) || !on(d.V.First) {
			continue
		}
		switch not := by(s.Plan, notOn, d.V.First); {
		case not == nil:
			say(d, "is a day on which "+name+" stands anyway", func(x civil.Date) bool { return !on(x) })
		case s.single(not.V):
			say(d, "is in not_on as well: which of them is meant is not known, and also_on goes before", func(civil.Date) bool { return false })
		}
	}
}

// single reports whether an item of a list of days is one date that is not over.
func (s *Shared) single(d plan.Day) bool {
	return d.Kind == plan.Dated && d.First == d.Last && d.First >= s.Horizon.Now()
}

// nearestDay returns the nearest day to a date, from today on, of which something is true.
func nearestDay(d, today civil.Date, is func(civil.Date) bool) (civil.Date, bool) {
	for k := civil.Date(1); k <= 14; k++ {
		for _, x := range [...]civil.Date{d - k, d + k} {
			if x >= today && is(x) {
				return x, true
			}
		}
	}
	return 0, false
}

// over finds a list of days that has dates only, all of which are over, or further ahead
// than calendars reach.
func (s *Shared) over(found *finding.List, name, attr string, list []plan.Written[plan.Day]) {
	first, last := recur.MaxDate, recur.MinDate
	for _, d := range s.Plan.Days(list) {
		if d.V.Kind != plan.Dated {
			return
		}
		first, last = min(first, d.V.First), max(last, d.V.Last)
	}
	if len(list) == 0 || list[0].V.Kind == plan.NamedDays {
		return // what a dates block has is said there
	}
	if first > s.Horizon.Last() {
		found.Add(finding.Finding{Rule: ruleOverDate, At: list[0].At, Text: attr + " of " + name + " has nothing before " + first.Words() + ": calendars do not reach so far yet",
			Write: "another year, where that was meant; else nothing: it is shown once a build is made in the year before"})
		return
	}
	if last >= s.Horizon.Now() {
		return
	}
	found.Add(finding.Finding{Rule: ruleOverDate, At: list[0].At, Text: attr + " of " + name + " has nothing after " + last.Words() + ", and that is over",
		Write: "dates that are still ahead, or nothing"})
}

// oddDates finds dates of rounds, and of dates blocks, that say nothing.
func (s *Shared) oddDates() []finding.Finding {
	var found finding.List
	for _, x := range s.Plan.Dates {
		s.over(&found, x.Name.V, "on", x.On)
	}
	for _, x := range s.Plan.Rotas {
		for k, t := range x.Turns {
			s.over(&found, "a turn of "+shown(s.Plan, t.Name.V), "on", t.On)
			s.idleTurn(&found, x, k)
		}
	}
	for _, x := range s.Plan.Rounds {
		if x.Of != nil || len(x.NotOn)+len(x.AlsoOn) == 0 {
			continue
		}
		usual := usually(s.Plan, x, s.Horizon)
		s.idle(&found, "the "+x.Shown(), x.NotOn, x.AlsoOn, func(d civil.Date) bool {
			i, in := s.Horizon.Index(d)
			return in && usual.Has(i)
		})
		s.over(&found, "the "+x.Shown(), "not_on", x.NotOn)
		s.over(&found, "the "+x.Shown(), "also_on", x.AlsoOn)
	}
	return found.All
}

// oddDates finds dates of a care that say nothing.
func (b *builder) oddDates(e *Entry) {
	t := e.Timing
	if !e.free() {
		b.idle(&b.found, e.Name, t.NotOn, t.AlsoOn, func(d civil.Date) bool { return e.Planned(d) })
	}
	b.over(&b.found, e.Name, "on", t.On)
	b.over(&b.found, e.Name, "not_on", t.NotOn)
	b.over(&b.found, e.Name, "also_on", t.AlsoOn)
}

// takeTurns finds rounds that are named together by a room, a rack or an enclosure, and are
// held on one day.
func (s *Shared) takeTurns() []finding.Finding {
	var found finding.List
	said := map[plan.Written[string]]bool{}
	look := func(what, name string, list []plan.Written[string]) {
		if len(list) < 2 || said[list[0]] {
			return
		}
		said[list[0]] = true // the enclosures of a template have it from one place
		one, other, days := s.rounds.together(s.rounds.named(list))
		if one == nil {
			return
		}
		at := list[0].At
		for _, n := range list {
			if n.V == other.Name.V {
				at = n.At
			}
		}
		found.Add(finding.Finding{Rule: ruleTwoRounds, At: at,
			Text:  strings.TrimSpace(s.Horizon.Often(days)+" both the "+one.Shown()+" and the "+other.Shown()) + " are held: which of them the care of " + what + " " + strconv.Quote(name) + " is in is not known",
			Write: "rounds that are held on different days: not_on in one of them; what is done twice a day names both itself, in its care or feeding",
			Also:  []finding.Related{{At: one.At, Text: "the one"}, {At: other.At, Text: "the other"}}})
	}
	for _, x := range s.Plan.Rooms {
		look("room", x.Name.V, x.Round)
	}
	for _, x := range s.Plan.Racks {
		look("rack", x.Name.V, x.Round)
	}
	for _, x := range s.Plan.Enclosures {
		look("enclosure", x.Name.V, x.Round)
	}
	return found.All
}

// together returns the first two of some rounds that are held on one day, and that day, from
// today on; nil for none.
func (r *rounds) together(all []*plan.Round) (one, other *plan.Round, days horizon.Days) {
	for k, x := range all {
		for _, o := range all[:k] {
			days = r.heldOrAll(x)
			days.Keep(r.heldOrAll(o))
			if days.Next(r.s.Horizon.Today) >= 0 {
				return o, x, days
			}
		}
	}
	return nil, nil, nil
}

// heldOrAll returns a set of its own of the days on which a round is held.
func (r *rounds) heldOrAll(x *plan.Round) horizon.Days {
	if held := r.held[x]; held != nil {
		return held.Clone()
	}
	out := r.s.Horizon.New()
	out.AddRun(0, r.s.Horizon.Days, r.s.Horizon.Days)
	return out
}

// sometimesTwice finds a care in several rounds that is done in two of them on some of its
// days and in one on others, but for dates that are left out: which is meant is not known.
func (b *builder) sometimesTwice(e *Entry, all []*plan.Round) {
	if all = plan.Wholes(all); len(all) < 2 {
		return
	}
	h := b.Horizon
	planned := h.New()
	for _, r := range e.Rules {
		r.Fill(planned, h)
	}
	held, twice := h.New(), h.New()
	for _, x := range all {
		days := usually(b.Plan, x, h)
		days.Keep(planned)
		again := days.Clone()
		again.Keep(held)
		twice.Union(again)
		held.Union(days)
	}
	once := held.Clone()
	once.Subtract(twice)
	i := twice.Next(h.Today)
	if i < 0 || once.Next(h.Today) < 0 {
		return
	}
	var names []string
	for _, x := range all {
		if usually(b.Plan, x, h).Has(i) {
			names = append(names, "the "+x.Shown())
		}
	}
	b.found.Soft(finding.Finding{Rule: ruleTwoRounds, At: e.Timing.Round[0].At,
		Text:  e.Name + " is done twice " + h.Often(twice) + ", when " + wording.And(names) + " are held, and once " + h.Often(once),
		Write: "rounds that are held on different days, or rounds that are held on all of its days"}, finding.Caution)
}

// onceOnly finds a care for a date that stands in place of one of the sheet's. Where the need
// that this meets has a proof, that says it.
func (b *builder) onceOnly(c, sheet *plan.Care) {
	if sheet == nil || c == sheet || !plan.Once(c.On) || c.What().Needs != nil {
		return
	}
	b.found.Add(finding.Finding{Rule: ruleOnceOnly, At: c.On[0].At,
		Text:  c.Name.V + " is done on " + c.On[0].V.String() + " only, in place of what the species sheet has of it again and again",
		Write: "also_on in place of on, for a day besides; or another name, and " + c.KindName() + " as its kind"})
}
