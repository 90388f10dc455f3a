package feeds

import (
	"slices"
	"strings"

	"vivary/compile/horizon"
	"vivary/compile/ical"
	"vivary/compile/identity"
	"vivary/compile/recur"
	"vivary/compile/roster"
	"vivary/compile/rounds"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/civil"
)

// byCare makes one entry for each care that has a rule which every client can read,
// else one for each of its days, and a last one that says what ends there.
func (s *selection) byCare(feed *ical.Feed, last *ical.Memory) {
	var picks []roster.Pick
	for _, r := range s.r.Roster.Rounds {
		picks = append(picks, s.byRound[r]...)
	}
	var lasting []*roster.Entry
	for _, p := range picks {
		base := s.entry(p.Entry)
		parts, ok := series(p.Entry)
		if !ok {
			s.each(feed, base, p.Entry, p.Days)
			continue
		}
		rest := p.Days.Clone()
		if s.own(p.Entry) {
			if s.r.Roster.Lasting(p.Entry) {
				lasting = append(lasting, p.Entry)
			}
			rest.Subtract(s.asEver(feed, base, p, parts, last))
		}
		s.otherwise(feed, base, p.Entry, rest, parts, last)
	}
	for _, r := range s.r.Roster.Rounds {
		s.pressing(feed, r)
	}
	s.holds(feed, last)
	if len(lasting) < len(picks) {
		s.ends(feed, lasting)
	}
}

// asEver makes the series of a care on the days on which it is done as ever, and returns
// these.
func (s *selection) asEver(feed *ical.Feed, base ical.Entry, p roster.Pick, parts []recur.Rule, last *ical.Memory) horizon.Days {
	until := s.reach - 1
	if s.r.Roster.Lasting(p.Entry) {
		until = recur.MaxDate
	}
	// What is held until something is logged, or done otherwise until then, ends the
	// series for now: it would need one more day left out with every build.
	if other, open := p.Entry.UsualUntil(); open {
		until = min(until, other-1)
	}
	shown := p.Days.Clone()
	if own := rounds.OwnDays(p.Entry); own != nil {
		shown.Subtract(own)
	}
	planned := s.r.Horizon.New()
	for i, rule := range parts {
		rule = rule.Between(recur.MinDate, until)
		rule.Fill(planned, s.r.Horizon)
		e := base
		e.UID = s.uid("care", p.Entry.ID.String(), part(i))
		s.mind(&e, p.Entry, nil)
		if s.repeat(&e, rule, shown, p.Entry.EachHeld, last) {
			feed.Entries = append(feed.Entries, e)
		}
	}
	planned.Keep(shown)
	return planned
}

// own reports whether a care is shown by its rule: in a calendar of everybody's, or of
// whoever does it where nobody is away. Who stands in does it on some days, each of them
// an entry.
func (s *selection) own(x *roster.Entry) bool {
	return len(s.Plan.Keepers) == 0 || plan.Lists(s.Plan.Keepers, x.Keeper)
}

// pressing makes entries of what is urgent, at the time of a round.
func (s *selection) pressing(feed *ical.Feed, r *plan.Round) {
	for _, l := range s.lives {
		for k, first := range s.r.Roster.Pressing[l] {
			days := rounds.PressedOn(s.r.Roster, l, s.byRound[r], first)
			for i := days.Next(0); i >= 0 && i < s.until(); i = days.Next(i + 1) {
				date := s.r.Horizon.Date(i)
				feed.Entries = append(feed.Entries, ical.Entry{
					UID:  s.uid("pressing", identity.Enclosure(l.Plan), identity.Round(r), date.String(), part(k)),
					Date: date, At: r.Clock.V, Minutes: rounds.Pressed, Remind: s.remind(),
					Summary: "FIRST: " + first.Text + ": " + rounds.Brief(l), Categories: []string{schema.KindOther.Name}})
			}
		}
	}
}

// series returns the rules of a care, none of which share a day, where every client
// can read all of them. What the log brought for many days has one too; a question has
// none, since it goes on day by day until it is answered.
func series(x *roster.Entry) ([]recur.Rule, bool) {
	if t := x.Once; t != nil && x.Ask == nil && t.Times >= many && !rounds.Turns(x) {
		every := max(1, t.Interval)
		return []recur.Rule{recur.EveryDays(every, t.On).Between(recur.MinDate, t.On+civil.Date((t.Times-1)*every))}, true
	}
	if x.Moved || len(x.Rules) != 1 {
		return nil, false
	}
	if from, until := x.Rules[0].Bounds(); from == until {
		return nil, false // once
	}
	parts := x.Rules[0].Series()
	return parts, len(parts) > 0
}

func part(i int) string {
	if i == 0 {
		return ""
	}
	return string(rune('a' + i))
}

// repeat fills in the start, the rule and the days left out of a series that is shown
// on some days; held are those of the past that states took out. It reports false where
// no day is left.
func (s *selection) repeat(e *ical.Entry, rule recur.Rule, shown horizon.Days, held func(from, until civil.Date, use func(civil.Date)), last *ical.Memory) bool {
	if rule.Never() {
		return false
	}
	start, known := last.First(e.UID)
	e.RRule, _ = rule.RRule()
	// By another rule the days that are over would not be those that were shown.
	known = known && last.Rule(e.UID) == e.RRule
	next, ok := s.next(rule, shown)
	switch {
	case !known || start >= s.r.Today || !rule.Contains(start):
		// What had not begun may begin sooner than was thought, since young moult early, or
		// later: one whose first day is left out could not be told from one without any.
		start = next
	case start < s.oldest():
		// The zone is written from the oldest start on, and a series would keep all of its
		// past; on a phone the years before are over.
		start, ok = rule.Next(s.oldest())
	default:
		ok = true
	}
	if !ok || start > s.zoneEnd() {
		return false
	}
	e.Date = start
	e.ExDates = s.without(e, rule, shown, held, last)
	// One whose days are all left out must not be written.
	for d, left := e.Date, e.ExDates; len(left) > 0 && left[0] == d; left = left[1:] {
		if d, ok = rule.Next(d + 1); !ok {
			return false
		}
	}
	if _, until := rule.Bounds(); until < recur.MaxDate {
		e.Until, e.HasUntil = until, true
	}
	return true
}

// next is the first day of a rule, from today on, that is not left out.
func (s *selection) next(rule recur.Rule, shown horizon.Days) (civil.Date, bool) {
	d, ok := rule.Next(s.r.Today)
	for ok {
		if i, in := s.r.Horizon.Index(d); !in || i >= s.known() || shown.Has(i) {
			break
		}
		d, ok = rule.Next(d + 1)
	}
	return d, ok
}

// known is the first place in the window of which a series says nothing yet. It counts to
// the end of a month, or the entries of a season would change with every day.
func (s *selection) known() int {
	_, _, beyond := s.r.Horizon.Last().YMD()
	return s.r.Horizon.Days - beyond
}

// oldest is the day before which no series begins. It moves once a year, or a feed would
// change every day.
func (f *Feed) oldest() civil.Date {
	y, _, _ := f.r.Today.YMD()
	return civil.Must(y-1, 1, 1)
}

// without returns the days of a rule from start on that are left out: on the
// horizon those on which it is not shown, before it those that holds took out and
// those that were left out when the entry was last published, or came after its end,
// since what was once left out stays left out.
func (s *selection) without(e *ical.Entry, rule recur.Rule, shown horizon.Days, held func(from, until civil.Date, use func(civil.Date)), last *ical.Memory) []civil.Date {
	var out []civil.Date
	start := e.Date
	add := func(d civil.Date) {
		if d >= start && rule.Contains(d) {
			out = append(out, d)
		}
	}
	for _, d := range last.Left(e.UID) {
		if d < s.r.Today {
			add(d)
		}
	}
	if end, ok := last.Ended(e.UID, s.r.Plan.Location); ok {
		for d, ok := rule.Next(max(start, end+1)); ok && d < s.r.Today; d, ok = rule.Next(d + 1) {
			out = append(out, d)
		}
	}
	if held != nil {
		held(start, s.r.Today, add)
	}
	h := s.r.Horizon
	planned := h.New()
	rule.Fill(planned, h)
	planned.Subtract(shown)
	for i := planned.Next(h.Today); i >= 0 && i < s.known(); i = planned.Next(i + 1) {
		add(h.Date(i))
	}
	slices.Sort(out)
	return slices.Compact(out)
}

// each makes one entry for each of some days.
func (s *selection) each(feed *ical.Feed, base ical.Entry, x *roster.Entry, days horizon.Days) {
	for i := days.Next(s.r.Horizon.Today); i >= 0 && i < s.until(); i = days.Next(i + 1) {
		e := base
		e.Date = s.r.Horizon.Date(i)
		e.UID = s.uid("care", x.ID.String(), e.Date.String())
		e.Summary = s.words(x, i, x.Portion(i))
		s.mind(&e, x, x.Manner(i))
		feed.Entries = append(feed.Entries, e)
	}
}

// words is what an entry asks for on day i, with an item of its menu or none.
func (s *selection) words(x *roster.Entry, i int, item *roster.Portion) string {
	t, dead := rounds.TaskOf(x), x.Killed != nil && x.Killed.Has(i)
	if item != nil && x.Kind == schema.KindFeed {
		t = s.dish(x, item, dead)
	} else if dead {
		t = t.Dead()
	}
	if fill := rounds.FillUps(x); fill != nil && fill.Has(i) {
		t = rounds.FillUp(s.r.Roster, x, i)
	}
	if m := x.Manner(i); m != nil {
		t.In(m)
	}
	return alone(x, rounds.Told(x, t, s.r.Horizon.Date(i)))
}

// entry returns what all entries of a series have in common.
func (s *selection) entry(x *roster.Entry) ical.Entry {
	e := ical.Entry{At: x.At(), Minutes: max(x.Minutes, 5), Remind: s.remind(), Categories: []string{x.Kind.Name}}
	t := rounds.TaskOf(x)
	if x.Once != nil {
		t = rounds.Told(x, t, x.Once.On)
	}
	e.Summary = alone(x, t)
	if len(x.Menu) == 1 && x.Kind == schema.KindFeed {
		e.Summary = alone(x, s.dish(x, &x.Menu[0], false))
	}
	if len(x.Menu) > 1 && x.Kind == schema.KindFeed {
		e.Description = "In turn:"
		for k := range x.Menu {
			task := s.dish(x, &x.Menu[k], false)
			e.Description += "\n- " + task.Sentence()
		}
	}
	if place := x.Plan().Place; place != nil {
		e.Location = place.Shown()
	}
	// What goes with a meal has the meal's timing, and is not done for its reason.
	if x.Timing != nil && x.Timing.Because.Set() && (x.Meal == nil || x.Kind == schema.KindFeed) {
		if e.Description != "" {
			e.Description += "\n"
		}
		e.Description += "Why: " + x.Timing.Because.V
	}
	return e
}

// mind puts what to see to before a care, done in a manner or as usual, before all else in
// the text of its entry.
func (s *selection) mind(e *ical.Entry, x *roster.Entry, m *roster.Manner) {
	if m != nil && m.May.Manner == schema.Outside {
		return // nothing is opened
	}
	var lines []string
	for _, c := range roster.Cautions(x.Life, x.Kind, s.r.Today) {
		lines = append(lines, rounds.Before(c))
	}
	if e.Description != "" {
		lines = append(lines, e.Description)
	}
	e.Description = strings.Join(lines, "\n")
}

// dish is a meal when it is an item's turn.
func (s *selection) dish(x *roster.Entry, p *roster.Portion, killed bool) rounds.Task {
	t := rounds.TaskOf(x)
	t.Prey = rounds.PreyOf(s.r.Roster, x, p)
	t.Prey.Killed = t.Prey.Killed || killed
	return t
}

// alone is the title of an entry that has nothing but one task.
func alone(x *roster.Entry, t rounds.Task) string { return t.Sentence() + ": " + rounds.Target(x) }
