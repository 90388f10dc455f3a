package feeds

import (
	"slices"
	"strings"

	"vivary/compile/ical"
	"vivary/compile/identity"
	"vivary/compile/roster"
	"vivary/plan"
	"vivary/schema/civil"
)

// longest is how many days a band has at the most: a bar over months hides what is to be
// done on each day, and so a longer one is short at its beginning and says how long it is.
const longest = 14

// bands adds all-day entries for stretches of days in which something may happen
// to the animals.
func (s *selection) bands(feed *ical.Feed) {
	if len(s.Plan.Kinds) > 0 {
		return
	}
	for _, l := range s.lives {
		for _, g := range l.Groups {
			for _, w := range g.Windows {
				if w.Until <= s.r.Today-Kept || w.From > s.r.Horizon.Last() || w.Until <= w.From {
					continue
				}
				name := l.Plan.Shown()
				if len(l.Groups) > 1 {
					name += " " + g.Animals.Name.V
				}
				days, title := int(w.Until-w.From), w.Title
				if days > longest {
					days, title = 1, title+" until "+(w.Until-1).Short()
				}
				feed.Entries = append(feed.Entries, ical.Entry{
					UID:  s.uid("band", identity.Enclosure(l.Plan), identity.Animals(g.Animals), w.Name),
					Date: w.From, AllDay: true, Days: days,
					Summary: title + ": " + name, Description: w.Text,
				})
			}
		}
	}
}

// leaves adds all-day entries for absences: those of a keeper's own calendar for
// that keeper, and who is away for everybody whose rounds it touches.
func (s *selection) leaves(feed *ical.Feed) {
	// A stand-in is told that it is over also after the last visit.
	if len(s.Plan.Kinds) > 0 || len(s.lives) == 0 && !s.standsIn() {
		return
	}
	for _, x := range s.r.Roster.Leaves() {
		if !s.concerns(&x) || x.From > s.r.Horizon.Last() || x.From+civil.Date(x.Days) < s.r.Today-Kept {
			continue
		}
		feed.Entries = append(feed.Entries, ical.Entry{UID: s.uid("leave", x.Name), Date: x.From, AllDay: true, Days: max(1, x.Days),
			Summary: x.Title, Description: strings.Join(slices.Concat(x.Lines, s.r.Roster.Aid(&x)), "\n")})
	}
}

// concerns reports whether those who see the calendar are told of an absence: one
// without keepers tells everybody who is away, one with keepers its own of theirs.
func (s *selection) concerns(x *roster.Leave) bool {
	if x.For != "" {
		return plan.Lists(s.Plan.Keepers, x.For)
	}
	return len(s.Plan.Keepers) == 0 || plan.Lists(s.Plan.Keepers, x.Away)
}
