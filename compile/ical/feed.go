// Package ical writes calendar entries as iCalendar (RFC 5545, RFC 7986) and
// reads the last published feed back, so that an entry which did not change
// keeps its bytes. It knows nothing of plans, tasks, files or the present
// moment, and it does not expand recurrence rules.
package ical

import (
	"time"

	"vivary/schema/civil"
)

// Entry is one calendar entry, single or repeating. Start and length are as the
// wall calendar and the wall clock of the feed's zone show them.
type Entry struct {
	UID     string      // as UID makes it; no two entries of a feed share one
	Date    civil.Date  // first day
	At      civil.Clock // start on that day, unless AllDay
	AllDay  bool
	Minutes int // length of a timed entry: at least 1, cut at the end of the day
	Days    int // length of an all-day entry: at least 1

	RRule    string     // RRULE value without UNTIL and COUNT, "" for a single entry
	Until    civil.Date // last day on which the series may start, if HasUntil
	HasUntil bool
	ExDates  []civil.Date // days of the series left out

	Summary     string // what shows as nothing is replaced, see title
	Description string
	Location    string
	Categories  []string // one property each: many readers do not split lists
	Remind      int      // minutes before the start; 0 or less for no reminder
}

// Feed is one calendar. It has no UID of its own (RFC 7986, 5.3): vdirsyncer, which
// copies the properties of the calendar into each entry, takes the first UID that it
// finds there for the entry's, and keeps one entry of all.
type Feed struct {
	Name        string
	Description string
	Zone        string         // IANA name, never empty; written as TZID
	Location    *time.Location // the same zone, nil for UTC; it turns Until into an instant
	Timezone    []byte         // the zone's VTIMEZONE, complete lines with CRLF, valid from the oldest entry on, kept ones too
	Color       string         // a CSS3 name such as "teal" (RFC 7986, 5.9)
	Hex         string         // the same as "#RRGGBB", for readers that want X-APPLE-CALENDAR-COLOR
	Source      string         // where the feed is fetched from; left out unless ValidURI
	Refresh     string         // an RFC 5545 duration such as "PT6H"; left out unless ValidDuration
	Told        []Told         // what the feed shows, for a later build
	Salt        string         // of the ids of Here
	Here        []Here         // the enclosures that it shows, for a later build
	Entries     []Entry
}
