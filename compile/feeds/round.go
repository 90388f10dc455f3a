package feeds

import (
	"slices"

	"vivary/compile/ical"
	"vivary/compile/identity"
	"vivary/compile/rounds"
	"vivary/plan"
)

// byRounds makes one entry a round and day, and a last one that says that the
// calendar ends there.
func (s *selection) byRounds(feed *ical.Feed) {
	until := s.until()
	remind, place := s.remind(), s.place()
	var text []byte
	for _, r := range s.r.Roster.Rounds {
		if len(s.byRound[r]) == 0 {
			continue
		}
		sheet := rounds.New(s.r.Roster, r, s.byRound[r])
		feed.Entries = slices.Grow(feed.Entries, sheet.Days.Count()+8)
		name := identity.Round(r)
		for i := sheet.Days.Next(s.r.Horizon.Today); i >= 0 && i < until; i = sheet.Days.Next(i + 1) {
			date := s.r.Horizon.Date(i)
			text = sheet.Summary(text[:0], i)
			summary := string(text)
			text = sheet.Text(text[:0], i)
			feed.Entries = append(feed.Entries, ical.Entry{
				UID: s.uid("round", name, date.String()), Date: date, At: r.Clock.V, Minutes: length(r),
				Summary: summary, Description: string(text), Location: place, Remind: remind,
			})
		}
	}
	s.ends(feed, nil)
}

// until is the first place in the window that the feed does not reach.
func (s *selection) until() int { return min(int(s.reach-s.r.Horizon.From), s.r.Horizon.Days) }

// standsIn reports whether the calendar is that of people who only stand in for
// others.
func (s *selection) standsIn() bool {
	for _, k := range s.Plan.Keepers {
		if s.r.Roster.Regular(k.V) {
			return false
		}
	}
	return len(s.Plan.Keepers) > 0
}

func length(r *plan.Round) int {
	if r.Within.Set() {
		return int(r.Within.V.Value)
	}
	return 60
}

func (s *selection) remind() int {
	if s.Plan.Remind.Set() {
		return int(s.Plan.Remind.V.Value)
	}
	return 0
}

// place is the room, where the calendar has only one.
func (s *selection) place() string {
	name := ""
	for _, l := range s.lives {
		if l.Plan.Place == nil {
			return ""
		}
		if n := l.Plan.Place.Shown(); name == "" {
			name = n
		} else if n != name {
			return ""
		}
	}
	return name
}
