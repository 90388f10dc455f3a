// Package feeds makes the calendars of a collection: which entries there are, and
// their words. How entries become bytes is the business of package ical.
package feeds

import (
	"cmp"
	"reflect"
	"slices"

	"vivary/compile"
	"vivary/compile/ical"
	"vivary/compile/identity"
	"vivary/compile/life"
	"vivary/compile/roster"
	"vivary/compile/vtimezone"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/civil"
)

const (
	// Days is how many days of entries a calendar holds.
	Days = 366
	// Kept is for how many days entries of the past stay in a calendar.
	Kept = compile.Kept
	// Refresh is how often clients are asked to fetch a feed anew.
	Refresh = "PT6H"
)

// Feed is one calendar of a collection, ready to be made.
type Feed struct {
	Name  string // of its file, without the ending
	Plan  *plan.Calendar
	r     *compile.Result
	picks []roster.Pick
}

// Of returns the calendars of a collection, in the order of their names. Where
// the plan has none, there is one that holds everything.
func Of(r *compile.Result) []Feed {
	var out []Feed
	for i := range r.Roster.Calendars {
		c := &r.Roster.Calendars[i]
		out = append(out, Feed{c.Plan.Name.V, c.Plan, r, c.Picks()})
	}
	for _, c := range r.Plan.Calendars {
		if c.OfHouse() {
			out = append(out, Feed{Name: c.Name.V, Plan: c, r: r})
		}
	}
	slices.SortStableFunc(out, func(a, b Feed) int { return cmp.Compare(a.Name, b.Name) })
	return out
}

// Same reports whether a feed has what another has, of the compilation before this one:
// then it need not be made anew.
func (f *Feed) Same(o *Feed) bool {
	return f.Name == o.Name && (f.Plan == o.Plan || !f.Plan.At.Written() && !o.Plan.At.Written()) &&
		f.r.Today == o.r.Today && f.r.Plan.SharesWith(o.r.Plan) &&
		(!f.Plan.OfHouse() || reflect.DeepEqual(f.r.Deadlines, o.r.Deadlines)) &&
		slices.EqualFunc(f.picks, o.picks, func(a, b roster.Pick) bool {
			return a.Entry == b.Entry && slices.Equal(a.Days, b.Days) && slices.Equal(f.r.Roster.Pressing[a.Entry.Life], o.r.Roster.Pressing[b.Entry.Life])
		})
}

// Bytes makes the feed. last is what was last published, nil for nothing; entries
// that did not change keep the bytes they have there.
func (f *Feed) Bytes(last *ical.Memory) ([]byte, error) {
	out, _, err := f.Sized(nil, last)
	return out, err
}

// Entries returns the feed's entries.
func (f *Feed) Entries(last *ical.Memory) ([]ical.Entry, error) {
	_, size, err := f.Sized(nil, last)
	if err != nil {
		return nil, err
	}
	feed, err := f.make(last, size.Until)
	if err != nil {
		return nil, err
	}
	return feed.Entries, nil
}

// make makes the feed as far as a day, of which it says nothing.
func (f *Feed) make(last *ical.Memory, reach civil.Date) (*ical.Feed, error) {
	c, about := f.Plan, f.r.Plan.About
	feed := &ical.Feed{
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
	feed.Told = f.told(reach)
	feed.Salt, feed.Here = compile.Salt(f.r.Plan), f.here()
	if f.Plan.OfHouse() {
		feed.Description = "Dates of the house of " + f.r.Plan.Title() + ": what ends, what is tested, what is looked at again. What is done is logged (deadline NAME done), and told no more."
		f.dates(feed, reach)
	} else {
		s := f.pick()
		s.reach = reach
		if f.perCare() {
			s.byCare(feed, last)
		} else {
			s.byRounds(feed)
		}
		s.bands(feed)
		s.leaves(feed)
	}
	if len(feed.Entries) == 0 {
		feed.Entries = append(feed.Entries, ical.Entry{UID: f.uid("empty"), Date: f.r.Today, AllDay: true, Days: 1,
			Summary: "Nothing to do in " + c.Shown(), Description: "No care falls into this calendar as the plan stands. Where it is that of somebody who stands in, nobody is away; else look at what it selects."})
	}
	var err error
	feed.Timezone, err = f.timezone(feed.Entries)
	return feed, err
}

// zoneYears is how many years beyond this one the time zone of a calendar reaches where it
// has no rule: endless entries are read for years in a calendar that nobody builds anew.
const zoneYears = 10

// zoneEnd is the day to which it reaches then. What first begins later is told of once
// it is nearer: no reader could say at what time it is.
func (f *Feed) zoneEnd() civil.Date {
	year, _, _ := f.r.Today.YMD()
	return civil.Must(year+zoneYears, 12, 31)
}

// timezone writes the zone of entries, by whole years: from the year before this one on,
// not from today, or it would change with every clock change; earlier where a series
// began earlier, since readers take what is not covered for another time of day.
func (f *Feed) timezone(entries []ical.Entry) ([]byte, error) {
	year, _, _ := f.r.Today.YMD()
	first := year - 1
	for i := range entries {
		if y, _, _ := entries[i].Date.YMD(); y < first && !entries[i].AllDay {
			first = y
		}
	}
	last, _, _ := f.r.Horizon.Last().YMD()
	return vtimezone.Append(nil, f.r.Plan.About.TimeZone.V,
		civil.Must(first, 1, 1), civil.Must(max(last, year+2), 12, 31), f.zoneEnd())
}

// perCare reports whether an entry is one care, not one round.
func (f *Feed) perCare() bool { return f.Plan.Entry.V == "per care" }

// uid names something of this calendar for ever.
func (f *Feed) uid(parts ...string) string {
	return ical.UID(append([]string{f.r.Plan.About.Name.V, identity.Calendar(f.Plan)}, parts...)...)
}

// selection is what falls into a calendar.
type selection struct {
	*Feed
	reach   civil.Date // the first day of which it says nothing
	byRound map[*plan.Round][]roster.Pick
	lives   []*life.Enclosure // that it passes
}

// pick sorts what falls into the calendar by round.
func (f *Feed) pick() *selection {
	s := &selection{Feed: f, byRound: map[*plan.Round][]roster.Pick{}}
	var last *life.Enclosure
	for _, p := range f.picks {
		s.byRound[p.Entry.Round] = append(s.byRound[p.Entry.Round], p)
		if p.Entry.Life != last { // picks are in walking order
			last = p.Entry.Life
			s.lives = append(s.lives, last)
		}
	}
	return s
}
