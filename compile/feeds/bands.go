package feeds

import (
	"strings"

	"vivary/compile/ical"
	"vivary/plan"
)

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
				feed.Entries = append(feed.Entries, ical.Entry{
					UID:  s.uid("band", l.Plan.Formerly.Or(l.Plan.Name.V), g.Animals.Formerly.Or(g.Animals.Name.V), w.Name),
					Date: w.From, AllDay: true, Days: int(w.Until - w.From),
					Summary: w.Title + ": " + name, Description: w.Text,
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
	for _, x := range s.r.Schedule.People.Leaves(s.r.Plan) {
		if x.Keeper != "" && !plan.Lists(s.Plan.Keepers, x.Keeper) || x.Keeper == "" && len(s.Plan.Keepers) > 0 && x.Away != s.Plan.Keepers[0].V {
			continue
		}
		if x.From >= s.r.Horizon.Days || x.From+x.Days < -Kept {
			continue
		}
		feed.Entries = append(feed.Entries, ical.Entry{UID: s.uid("leave", x.Name), Date: s.r.Horizon.Date(x.From), AllDay: true, Days: max(1, x.Days),
			Summary: x.Title, Description: strings.Join(x.Lines, "\n")})
	}
}
