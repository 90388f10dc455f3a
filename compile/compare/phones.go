package compare

import (
	"slices"

	"vivary/compile/feeds"
	"vivary/compile/ical"
	"vivary/compile/identity"
	"vivary/schema/civil"
)

// Phone is what whoever subscribed to a calendar sees change.
type Phone struct {
	Calendar string // by name
	Shown    string
	New, Old bool // the calendar itself came, or is no more
	// Changed, Added and Gone are how many entries, of All that the calendar has now.
	Changed, Added, Gone, All int
	From                      civil.Date // the first day of these
}

// phones compares the entries of every calendar. A plan that is refused makes none: what is told
// is what would be.
func (r *Report) phones() {
	was := map[string]*feeds.Feed{}
	before, after := feeds.Of(r.Was), feeds.Of(r.Is)
	for i := range before {
		was[calendarID(&before[i])] = &before[i]
	}
	for i := range after {
		f := &after[i]
		id := calendarID(f)
		o := was[id]
		delete(was, id)
		p := Phone{Calendar: f.Name, Shown: f.Plan.Shown(), New: o == nil}
		if o != nil && f.Same(o) {
			continue
		}
		r.entries(&p, o, f)
		if p.New || p.Changed+p.Added+p.Gone > 0 {
			r.Phones = append(r.Phones, p)
		}
	}
	for i := range before {
		if f := &before[i]; was[calendarID(f)] == f {
			r.Phones = append(r.Phones, Phone{Calendar: f.Name, Shown: f.Plan.Shown(), Old: true})
		}
	}
}

func calendarID(f *feeds.Feed) string {
	if !f.Plan.At.Written() {
		return "\x00" // the one of a plan without calendars
	}
	return identity.Calendar(f.Plan)
}

func (r *Report) entries(p *Phone, before, after *feeds.Feed) {
	old := map[string]*ical.Entry{}
	if before != nil {
		all, err := before.Entries(nil)
		if err != nil {
			return
		}
		for i := range all {
			old[all[i].UID] = &all[i]
		}
	}
	felt := func(d civil.Date) {
		d = max(d, r.Is.Today)
		if p.From == 0 || d < p.From {
			p.From = d
		}
	}
	all, err := after.Entries(nil)
	if err != nil {
		return
	}
	p.All = len(all)
	for i := range all {
		e := &all[i]
		o := old[e.UID]
		delete(old, e.UID)
		switch {
		case o == nil:
			p.Added++
		case !sameEntry(o, e):
			p.Changed++
		default:
			continue
		}
		felt(e.Date)
	}
	for _, o := range old {
		p.Gone++
		felt(o.Date)
	}
}

func sameEntry(a, b *ical.Entry) bool {
	return a.Date == b.Date && a.At == b.At && a.AllDay == b.AllDay && a.Minutes == b.Minutes && a.Days == b.Days && a.RRule == b.RRule && a.Until == b.Until && a.HasUntil == b.HasUntil &&
		slices.Equal(a.ExDates, b.ExDates) && a.Summary == b.Summary && a.Description == b.Description && a.Location == b.Location && slices.Equal(a.Categories, b.Categories) && a.Remind == b.Remind
}
