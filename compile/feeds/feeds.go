// Package feeds makes the calendars of a collection: which entries there are, and
// their words. How entries become bytes is the business of package ical.
package feeds

import (
	"vivary/compile"
	"vivary/compile/horizon"
	"vivary/compile/ical"
	"vivary/compile/life"
	"vivary/compile/rounds"
	"vivary/compile/schedule"
	"vivary/compile/vtimezone"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/civil"
)

const (
	// Days is how many days of entries a calendar holds.
	Days = 366
	// Kept is for how many days entries of the past stay in a calendar.
	Kept = 31
	// Refresh is how often clients are asked to fetch a feed anew.
	Refresh = "PT6H"
)

// Feed is one calendar of a collection, ready to be made.
type Feed struct {
	Name string // of its file, without the ending
	Plan *plan.Calendar
	r    *compile.Result
}

// Of returns the calendars of a collection, in the order of their names. Where
// the plan has none, there is one that holds everything.
func Of(r *compile.Result) []Feed {
	var out []Feed
	for _, c := range r.Plan.Calendars {
		out = append(out, Feed{c.Name.V, c, r})
	}
	if len(out) == 0 {
		c := &plan.Calendar{}
		c.Name.V = r.Plan.About.Name.V
		c.Title.V = r.Plan.Title()
		c.Title.At = r.Plan.About.Name.At
		out = append(out, Feed{c.Name.V, c, r})
	}
	return out
}

// Bytes makes the feed. last is what was last published, nil for nothing; entries
// that did not change keep the bytes they have there.
func (f *Feed) Bytes(last *ical.Memory) ([]byte, error) { return f.Append(nil, last) }

// Append is Bytes that appends to dst, so that the feeds of many rooms can be made
// in one buffer, one after another.
func (f *Feed) Append(dst []byte, last *ical.Memory) ([]byte, error) {
	feed, err := f.make(last)
	if err != nil {
		return dst, err
	}
	return ical.Write(dst, feed, last, f.r.Now, f.r.Today-Kept, f.r.Today), nil
}

// Entries returns the feed's entries.
func (f *Feed) Entries(last *ical.Memory) ([]ical.Entry, error) {
	feed, err := f.make(last)
	if err != nil {
		return nil, err
	}
	return feed.Entries, nil
}

func (f *Feed) make(last *ical.Memory) (*ical.Feed, error) {
	c, about := f.Plan, f.r.Plan.About
	feed := &ical.Feed{
		ID:          f.uid("calendar"),
		Name:        c.Shown(),
		Description: "Care rounds of " + f.r.Plan.Title() + ". Set this calendar's own alert in your app: many apps ignore reminders of a subscribed calendar. What is due today is always shown by: vivary due.",
		Zone:        about.TimeZone.V, Location: f.r.Plan.Location, Refresh: Refresh,
	}
	if about.Web.Set() {
		feed.Source = about.Web.V + "/" + f.Name + ".ics"
	}
	for _, x := range schema.Colors {
		if x.Name == c.Color.V {
			feed.Color, feed.Hex = x.Name, x.Doc
		}
	}
	// The zone is written from the year before last on, not from today: it would
	// change with every clock change otherwise.
	y, _, _ := f.r.Today.YMD()
	zone, err := vtimezone.Append(nil, about.TimeZone.V, civil.Must(y-1, 1, 1), f.r.Horizon.Last())
	if err != nil {
		return nil, err
	}
	feed.Timezone = zone
	s := f.pick()
	if c.Entry.V == "per care" {
		s.perCare(feed, last)
	} else {
		s.perRound(feed)
	}
	s.bands(feed)
	s.leaves(feed)
	if len(feed.Entries) == 0 {
		feed.Entries = append(feed.Entries, ical.Entry{UID: f.uid("empty"), Date: f.r.Today, AllDay: true, Days: 1,
			Summary: "Nothing to do in " + c.Shown(), Description: "No care falls into this calendar. Look at what it selects."})
	}
	return feed, nil
}

// uid names something of this calendar for ever.
func (f *Feed) uid(parts ...string) string {
	return ical.UID(append([]string{f.r.Plan.About.Name.V, f.Plan.Formerly.Or(f.Plan.Name.V)}, parts...)...)
}

// selection is what falls into a calendar.
type selection struct {
	*Feed
	byRound map[*plan.Round][]rounds.Pick
	lives   []*life.Enclosure // that it passes
}

// pick returns what falls into the calendar: by round, and in walking order.
func (f *Feed) pick() *selection {
	s := &selection{Feed: f, byRound: map[*plan.Round][]rounds.Pick{}}
	c := f.Plan
	has := func(list []plan.Written[string], name string) bool { return len(list) == 0 || plan.Lists(list, name) }
	masks := map[string]horizon.Days{}
	seen := map[*life.Enclosure]bool{}
	for _, r := range f.r.Schedule.Rounds {
		if !has(c.Rounds, r.Name.V) {
			continue
		}
		for _, x := range f.r.Schedule.In[r] {
			e := x.Life.Plan
			room := ""
			if e.Place != nil {
				room = e.Place.Name.V
			}
			if !has(c.Enclosures, e.Name.V) || !has(c.Rooms, room) || !has(c.Kinds, x.Kind.Name) {
				continue
			}
			p := rounds.Pick{Series: x}
			if len(c.Keepers) > 0 {
				if p.Days = f.doneBy(x, masks); p.Days == nil {
					continue
				}
			}
			s.byRound[r] = append(s.byRound[r], p)
			if !seen[x.Life] {
				seen[x.Life] = true
				s.lives = append(s.lives, x.Life)
			}
		}
	}
	return s
}

// doneBy returns the days of a series on which one of the calendar's keepers does
// it, or nil for none.
func (f *Feed) doneBy(x *schedule.Series, masks map[string]horizon.Days) horizon.Days {
	mask, ok := masks[x.Keeper]
	if !ok {
		mask = f.r.Horizon.New()
		for i := range f.r.Horizon.Days {
			if who, there := f.r.Schedule.People.Doer(x.Keeper, i); there && plan.Lists(f.Plan.Keepers, who) {
				mask.Add(i)
			}
		}
		masks[x.Keeper] = mask
	}
	out := x.Days.Clone()
	some := false
	for i := range out {
		out[i] &= mask[i]
		some = some || out[i] != 0
	}
	if !some {
		return nil
	}
	return out
}
