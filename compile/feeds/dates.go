package feeds

import (
	"strings"

	"vivary/compile/deadline"
	"vivary/compile/ical"
	"vivary/plan"
	"vivary/schema/civil"
	"vivary/schema/wording"
)

// dates adds the dates of the house up to a day: all-day entries from the lead of each on, each
// week, and on its day.
func (f *Feed) dates(feed *ical.Feed, reach civil.Date) {
	today := f.r.Today
	for i := range f.r.Deadlines {
		d := &f.r.Deadlines[i]
		if !f.concernsDate(d) {
			continue
		}
		last := civil.Date(0)
		for k := range d.Times {
			t := &d.Times[k]
			for _, on := range t.Days(today, today-Kept, reach) {
				if on <= last { // told for the time before this one already
					continue
				}
				last = on
				feed.Entries = append(feed.Entries, ical.Entry{UID: f.uid("deadline", d.First, on.String()), Date: on, AllDay: true, Days: 1,
					Summary: d.Line(t, on), Description: f.dateText(d, t, on)})
			}
		}
	}
	feed.Entries = append(feed.Entries, ical.Entry{UID: f.uid("end"), Date: reach, AllDay: true, Days: 1,
		Summary: "This calendar ends here", Description: "Entries were made up to this day. Run vivary build again, and the calendar goes on."})
}

// concernsDate reports whether those who see the calendar are told of a date of the house.
func (f *Feed) concernsDate(d *deadline.Deadline) bool {
	return len(f.Plan.Keepers) == 0 || d.Keeper == "" || plan.Lists(f.Plan.Keepers, d.Keeper)
}

func (f *Feed) dateText(d *deadline.Deadline, t *deadline.Time, on civil.Date) string {
	var out []string
	if d.Does != "" {
		out = append(out, strings.ToUpper(d.Does[:1])+d.Does[1:]+".")
	}
	switch {
	case on > t.By:
		out = append(out, "It was to be done by "+t.By.Words()+", "+wording.Days(int(on-t.By))+" ago.")
	case on == t.By:
		out = append(out, "It is to be done today.")
	default:
		out = append(out, "It is to be done by "+t.By.Words()+", in "+wording.Days(int(t.By-on))+".")
	}
	if k := f.r.Plan.Keeper(d.Keeper); k != nil {
		out = append(out, "By: "+k.Shown()+".")
	}
	if d.Name != "" {
		out = append(out, "Once done: vivary note deadline "+d.Name+" done. Until then it comes again each week.")
	}
	return strings.Join(out, "\n")
}
