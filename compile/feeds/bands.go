package feeds

import "vivary/compile/ical"

// bands adds all-day entries for stretches of days in which something may happen.
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
