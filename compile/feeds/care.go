package feeds

import (
	"slices"

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

// perCare makes one entry for each care: endless where its days have a rule that
// every client can read, else one for each of its days.
func (s *selection) perCare(feed *ical.Feed, last *ical.Memory) {
	whole := len(s.Plan.Keepers) == 0
	var picks []roster.Pick
	for _, r := range s.r.Roster.Rounds {
		picks = append(picks, s.byRound[r]...)
	}
	for _, p := range picks {
		days := p.Days
		base := s.entry(p.Entry)
		parts, ok := endless(p.Entry)
		if !ok || !whole {
			s.each(feed, base, p.Entry, days)
			continue
		}
		// What is held until something is logged, or done otherwise until then, ends the
		// series for now: it would need one more day left out with every build, and a
		// calendar that nobody builds anew would begin again by itself.
		other, open := p.Entry.UsualUntil()
		planned := s.r.Horizon.New()
		for i, rule := range parts {
			if open {
				rule = rule.Between(recur.MinDate, other-1)
			}
			rule.Fill(planned, s.r.Horizon)
			e := base
			e.UID = s.uid("care", p.Entry.ID.String(), part(i))
			if s.repeat(&e, p.Entry, rule, last) {
				feed.Entries = append(feed.Entries, e)
			}
		}
		// Days to which something was moved, because nobody is there on its own.
		moved := days.Clone()
		moved.Subtract(planned)
		if own := rounds.OwnDays(p.Entry); own != nil {
			own.Keep(days)
			moved.Union(own)
		}
		s.each(feed, base, p.Entry, moved)
	}
	for _, r := range s.r.Roster.Rounds {
		s.pressing(feed, r)
	}
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

// endless returns the rules of a series, none of which share a day, where every
// client can read all of them.
func endless(x *roster.Entry) ([]recur.Rule, bool) {
	if x.Moved || len(x.Rules) != 1 {
		return nil, false
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

// repeat fills in the start, the rule and the days left out. It reports false
// where no day is left.
func (s *selection) repeat(e *ical.Entry, x *roster.Entry, rule recur.Rule, last *ical.Memory) bool {
	if rule.Never() {
		return false
	}
	start, known := last.First(e.UID)
	// What had not begun may begin sooner than was thought: young moult early.
	if next, ok := rule.Next(s.r.Today); !known || !rule.Contains(start) || ok && next < start {
		if !ok {
			return false
		}
		start = next
	}
	if start > s.zoneEnd() {
		return false
	}
	text, _ := rule.RRule()
	e.Date, e.RRule = start, text
	if _, until := rule.Bounds(); until < recur.MaxDate {
		e.Until, e.HasUntil = until, true
	}
	e.ExDates = s.without(e, x, rule, last)
	// A series whose days are all left out must not be written.
	d, ok := rule.Next(start)
	for ok {
		if _, out := slices.BinarySearch(e.ExDates, d); !out {
			return true
		}
		d, ok = rule.Next(d + 1)
	}
	return false
}

// without returns the days of a rule from start on that are left out: on the
// horizon those on which it is not done, before it those that holds took out and
// those that were left out when the entry was last published, or came after its end,
// since what was once left out stays left out. The horizon counts to the end of a month, or the
// entries of a season would change with every day.
func (s *selection) without(e *ical.Entry, x *roster.Entry, rule recur.Rule, last *ical.Memory) []civil.Date {
	var out []civil.Date
	start := e.Date
	for _, d := range last.Left(e.UID) {
		if d >= start && d < s.r.Today && rule.Contains(d) {
			out = append(out, d)
		}
	}
	if end, ok := last.Ended(e.UID, s.r.Plan.Location); ok {
		for d, ok := rule.Next(max(start, end+1)); ok && d < s.r.Today; d, ok = rule.Next(d + 1) {
			out = append(out, d)
		}
	}
	x.EachHeld(start, s.r.Today, func(d civil.Date) {
		if rule.Contains(d) {
			out = append(out, d)
		}
	})
	h := s.r.Horizon
	planned := h.New()
	rule.Fill(planned, h)
	planned.Subtract(x.Days)
	if own := rounds.OwnDays(x); own != nil {
		of := h.New()
		rule.Fill(of, h)
		own.Keep(of)
		planned.Union(own) // each is an entry of its own
	}
	_, _, beyond := h.Last().YMD()
	for i := planned.Next(h.Today); i >= 0 && i < h.Days-beyond; i = planned.Next(i + 1) {
		if d := h.Date(i); d >= start {
			out = append(out, d)
		}
	}
	slices.Sort(out)
	return slices.Compact(out)
}

// each makes one entry for each of some days.
func (s *selection) each(feed *ical.Feed, base ical.Entry, x *roster.Entry, days horizon.Days) {
	fill := rounds.FillUps(x)
	for i := days.Next(s.r.Horizon.Today); i >= 0 && i < s.until(); i = days.Next(i + 1) {
		e := base
		e.Date = s.r.Horizon.Date(i)
		e.UID = s.uid("care", x.ID.String(), e.Date.String())
		t, dead := rounds.TaskOf(x), x.Killed != nil && x.Killed.Has(i)
		if p := x.Portion(i); p != nil && x.Kind == schema.KindFeed {
			t = s.dish(x, p, dead)
		} else if dead {
			t = t.Dead()
		}
		if fill != nil && fill.Has(i) {
			t = rounds.FillUp(s.r.Roster, x, i)
		}
		if m := x.Manner(i); m != nil {
			t.In(m)
		}
		e.Summary = alone(x, t)
		feed.Entries = append(feed.Entries, e)
	}
}

// entry returns what all entries of a series have in common.
func (s *selection) entry(x *roster.Entry) ical.Entry {
	e := ical.Entry{At: x.At(), Minutes: max(x.Minutes, 5), Remind: s.remind(), Categories: []string{x.Kind.Name}}
	e.Summary = alone(x, rounds.TaskOf(x))
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
	if x.Timing != nil && x.Timing.Because.Set() {
		if e.Description != "" {
			e.Description += "\n"
		}
		e.Description += "Why: " + x.Timing.Because.V
	}
	return e
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
