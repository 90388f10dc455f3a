package feeds_test

import (
	"slices"
	"strings"
	"testing"
	"time"

	"vivary/compile"
	"vivary/compile/feeds"
	"vivary/compile/ical"
	"vivary/compile/life"
	"vivary/compile/recur"
	"vivary/compile/roster"
	"vivary/compile/rounds"
	"vivary/internal/oracles"
	"vivary/schema"
	"vivary/schema/civil"
)

// expect returns what a calendar must show: per round, or per care of one keeper
// or of all.
func expect(t *testing.T, r *compile.Result, feed int, calendar, keeper string) *expected {
	x := &expected{T: t, r: r, feed: feed, calendar: calendar, until: size(t, r, calendar).Until, passed: map[*life.Enclosure]bool{}}
	switch calendar {
	case "all":
		x.perRound("evening", "twice-weekly", "morning", "at-06:45", "at-07:15", "at-12:00", "at-17:15", "at-18:15")
	case "evening":
		x.perRound("evening", "twice-weekly")
	default:
		x.perCare(keeper)
		x.holds(keeper)
	}
	x.bands()
	x.leaves(keeper)
	oracles.Sort(x.list)
	return x
}

// expected lists what a calendar of a collection must show on the days for which
// it is made: from the days of the schedule's series, with the time package for
// zones. The calendar's own entries are not looked at.
type expected struct {
	*testing.T
	r        *compile.Result
	feed     int
	calendar string
	until    civil.Date // how far it looks
	list     []oracles.Occurrence
	passed   map[*life.Enclosure]bool // enclosures with something to do in this calendar
}

func (x *expected) uid(parts ...string) string {
	return ical.UID(append([]string{x.r.Plan.About.Name.V, x.calendar}, parts...)...)
}

// size is how large a calendar is.
func size(t testing.TB, r *compile.Result, name string) feeds.Size {
	t.Helper()
	for _, f := range feeds.Of(r) {
		if f.Name == name {
			_, size, err := f.Sized(nil, nil)
			if err != nil {
				t.Fatal(err)
			}
			return size
		}
	}
	t.Fatalf("no calendar %q", name)
	return feeds.Size{}
}

// add adds an occurrence of so many minutes.
func (x *expected) add(uid string, d civil.Date, at civil.Clock, minutes int, summary string) {
	y, m, day := d.YMD()
	utc := func(minute int) string {
		return time.Date(y, m, day, 0, minute, 0, 0, x.r.Plan.Location).UTC().Format("20060102T150405Z")
	}
	x.list = append(x.list, oracles.Occurrence{Feed: x.feed, UID: uid, Start: utc(int(at)), End: utc(int(at) + minutes), Summary: summary})
}

// allDay adds a band, if it begins while the calendar runs.
func (x *expected) allDay(uid string, from, until civil.Date, summary string) {
	if from >= today && from <= today+feeds.Days {
		x.list = append(x.list, oracles.Occurrence{Feed: x.feed, UID: uid, Start: strings.ReplaceAll(from.String(), "-", ""), End: strings.ReplaceAll(until.String(), "-", ""), Summary: summary})
	}
}

// perRound lists the days of the rounds of those names.
func (x *expected) perRound(names ...string) {
	for _, r := range x.r.Roster.Rounds {
		if !slices.Contains(names, r.Name.V) {
			continue
		}
		var picks []roster.Pick
		on := x.r.Horizon.New()
		for s := range x.r.Roster.All() {
			if s.Round == r {
				x.passed[s.Life] = true
				picks = append(picks, roster.Pick{Entry: s, Days: s.Days})
				on.Union(s.Days)
			}
		}
		sheet := rounds.New(x.r.Roster, r, picks)
		minutes := 60
		if r.Within.Set() {
			minutes = int(r.Within.V.Value)
		}
		for i := on.Next(x.r.Horizon.Today); i >= 0 && x.r.Horizon.Date(i) < x.until; i = on.Next(i + 1) {
			d := x.r.Horizon.Date(i)
			x.add(x.uid("round", r.Name.V, d.String()), d, r.Clock.V, minutes, string(sheet.Summary(nil, i)))
		}
	}
	x.allDay(x.uid("end"), x.until, x.until+1, "This calendar ends here")
}

// perCare lists each day of each series that one of the keepers does; all of them
// where none is named.
func (x *expected) perCare(keeper string) {
	for s := range x.r.Roster.All() {
		for k := s.Days.Next(x.r.Horizon.Today); k >= 0 && k < x.r.Horizon.Today+feeds.Days; k = s.Days.Next(k + 1) {
			if keeper != "" {
				if who, there := x.r.Roster.People.Doer(s.Keeper, k); !there || who != keeper {
					continue
				}
			}
			x.passed[s.Life] = true
			d := x.r.Horizon.Date(k)
			own := rounds.OwnDays(s)
			single := keeper != "" || s.Moved || len(s.Rules) != 1 || own != nil && own.Has(k) || !seriesHas(s, d)
			task := rounds.TaskOf(s)
			if p := s.Portion(k); p != nil && s.Kind == schema.KindFeed && (single || len(s.Menu) == 1) {
				task.Prey = rounds.PreyOf(x.r.Roster, s, p)
				task.Prey.Killed = task.Prey.Killed || s.Killed != nil && s.Killed.Has(k)
			}
			if fill := rounds.FillUps(s); fill != nil && fill.Has(k) {
				task = rounds.FillUp(x.r.Roster, s, k)
			}
			if m := s.Manner(k); m != nil {
				task.In(m)
			}
			summary := task.Sentence() + ": " + rounds.Target(s)
			x.add("", d, s.At(), max(s.Minutes, 5), summary)
		}
	}
}

// seriesHas reports whether a day is one of those of a rule that readers can read.
func seriesHas(s *roster.Entry, d civil.Date) bool {
	return slices.ContainsFunc(s.Rules[0].Series(), func(r recur.Rule) bool { return r.Contains(d) })
}

// holds lists the lines of states, where the calendar has entries of care.
func (x *expected) holds(keeper string) {
	for l := range x.passed {
		for _, h := range rounds.Stretches(l) {
			for d := max(h.From, today); d < min(h.Until, x.until) && keeper == ""; d++ {
				x.allDay("", d, d+1, h.Line([]*life.Enclosure{l}))
			}
		}
	}
}

func (x *expected) bands() {
	for _, l := range x.r.Lives {
		for _, g := range l.Groups {
			for _, w := range g.Windows {
				if !x.passed[l] {
					continue
				}
				name := l.Plan.Shown()
				if len(l.Groups) > 1 {
					name += " " + g.Animals.Name.V
				}
				until, title := w.Until, w.Title
				if until-w.From > 14 { // a long one is short at its beginning
					until, title = w.From+1, w.Title+" until "+(until-1).Short()
				}
				x.allDay(x.uid("band", l.Plan.Name.V, g.Animals.Name.V, w.Name), w.From, until, title+": "+name)
			}
		}
	}
}

// leaves lists the absences: the days away for everybody, what they mean to one
// keeper only for that keeper.
func (x *expected) leaves(keeper string) {
	for _, l := range x.r.Roster.Leaves() {
		if l.For == keeper {
			x.allDay(x.uid("leave", l.Name), l.From, l.From+civil.Date(l.Days), l.Title)
		}
	}
}
