package ical

import (
	"bytes"
	"cmp"
	"math"
	"slices"
	"strconv"
	"time"

	"vivary/schema/civil"
)

// prodID names the writer (RFC 5545, 3.7.3). It carries no version: a release
// would change every feed. Remember takes only feeds that bear it.
const prodID = "-//vivary//care calendar//EN"

// maxSequence is the greatest INTEGER (RFC 5545, 3.3.8), at which SEQUENCE stays.
const maxSequence = 1<<31 - 1

// revision is the part of an entry that says how often and when it was changed.
type revision struct {
	sequence int
	at       string // in the form of instant, so that later ones sort behind
}

// Write appends the feed to dst and returns the longer slice.
//
// An entry that m remembers with the same content keeps its SEQUENCE, DTSTAMP
// and LAST-MODIFIED, and so its bytes; one with other content gets the next
// SEQUENCE and now, or a second after the remembered instant if that is later.
// An entry unknown to m (nil if there was no feed before) starts now, at SEQUENCE 0
// or where no entry has been that was taken out and may come back. Entries of m
// that are single, began on or after keepFrom, ended before today and are no longer
// in f are kept as they were, and series that are no longer in f, or begin anew in it,
// end yesterday and stay as long, so that a phone does not lose what was done; all
// others are dropped.
//
// Entries are sorted by start and UID. Without entries the feed is valid only by
// its VTIMEZONE, since RFC 5545, 3.6, wants at least one component: give it one
// entry that says so, or at least Timezone.
func Write(dst []byte, f *Feed, m *Memory, now time.Time, keepFrom, today civil.Date) []byte {
	w := &lines{out: dst}
	w.param("TZID", f.Zone)
	w.zone, w.line = w.line, nil
	at := stamp(now)
	all, floor := arrange(f, m, keepFrom, today, at)

	w.out = append(w.out, "BEGIN:VCALENDAR\r\nVERSION:2.0\r\n"...)
	w.text("PRODID", prodID)
	w.out = append(w.out, "CALSCALE:GREGORIAN\r\n"...)
	w.raw(madeName, at)
	made := len(w.out) - len(at) - len("\r\n")
	if m != nil && !m.made.IsZero() {
		copy(w.out[made:], stamp(m.made))
	}
	w.calendar(f)
	if floor > 0 {
		w.raw(floorName, strconv.Itoa(floor))
	}
	w.out = append(w.out, f.Timezone...)
	for _, zone := range foreignZones(all, f.Zone) {
		w.out = append(w.out, m.zones[zone]...)
	}
	for _, p := range all {
		if p.entry == nil {
			w.out = append(w.out, p.last.bytes...)
			continue
		}
		if p.last == nil {
			w.event(f, p.entry, revision{m.first(), at})
			continue
		}
		w.revised(f, p.entry, p.last, at)
	}
	w.out = append(w.out, "END:VCALENDAR\r\n"...)
	m.revisedAt(w.out[len(dst):], made-len(dst), now)
	return w.out
}

// place is an entry's place in the feed: one of the feed's own, with what was
// last published of it, or a past one kept from the last feed (entry is nil).
type place struct {
	start
	uid   string
	entry *Entry
	last  *published
}

// start orders entries; an all-day entry comes before the timed ones of its day.
type start struct {
	date civil.Date
	at   civil.Clock // -1 for all-day
}

func (e *Entry) start() start {
	if e.AllDay {
		return start{e.Date, -1}
	}
	return start{e.Date, e.At}
}

// arrange returns the entries to write, in order, and the SEQUENCE at which those that
// a later build adds begin.
func arrange(f *Feed, m *Memory, keepFrom, today civil.Date, at string) ([]place, int) {
	all := make([]place, 0, len(f.Entries))
	var produced []bool
	if m != nil {
		produced = make([]bool, len(m.events))
	}
	for i := range f.Entries {
		e := &f.Entries[i]
		p := place{start: e.start(), uid: e.UID, entry: e}
		if m != nil {
			if k, ok := m.byUID[e.UID]; ok {
				produced[k] = true
				p.last = &m.events[k]
				if ev, ok := p.last.past(e, f, m, keepFrom, today, at); ok {
					all = append(all, place{start: ev.start, uid: ev.uid, last: ev})
				}
			}
		}
		all = append(all, p)
	}
	for k, done := range produced {
		ev := &m.events[k]
		if done {
			continue
		}
		if ev, ok := ev.over(f, keepFrom, today, at); ok {
			produced[k] = true
			all = append(all, place{start: ev.start, uid: ev.uid, last: ev})
		}
	}
	slices.SortStableFunc(all, func(a, b place) int {
		return cmp.Or(cmp.Compare(a.date, b.date), cmp.Compare(a.at, b.at), cmp.Compare(a.uid, b.uid))
	})
	return all, m.raised(produced)
}

// foreignZones returns the zones of kept entries that the feed has since left.
func foreignZones(all []place, own string) []string {
	var zones []string
	for _, p := range all {
		if p.entry == nil && p.last.zone != "" && p.last.zone != own && !slices.Contains(zones, p.last.zone) {
			zones = append(zones, p.last.zone)
		}
	}
	slices.Sort(zones)
	return zones
}

// calendar writes the properties of the calendar itself, each RFC 7986 one with
// the older X- name that more readers know. There is no METHOD: it would demand
// an ORGANIZER (RFC 5546, 3.2.1). There is no LAST-MODIFIED either: the feed
// changes only when an entry does.
func (w *lines) calendar(f *Feed) {
	w.some("NAME", f.Name)
	w.some("X-WR-CALNAME", f.Name)
	w.some("DESCRIPTION", f.Description)
	w.some("X-WR-CALDESC", f.Description)
	if ValidURI(f.Source) {
		w.typed(sourceName, "URI", f.Source)
	}
	if ValidDuration(f.Refresh) {
		w.typed(refreshName, "DURATION", f.Refresh)
		w.raw("X-PUBLISHED-TTL", f.Refresh)
	}
	w.some("COLOR", f.Color)
	w.some("X-APPLE-CALENDAR-COLOR", f.Hex)
	w.some("X-WR-TIMEZONE", f.Zone)
	w.told(f.Told)
	w.here(f.Salt, f.Here)
}

// revised writes an entry as if nothing had changed, and once more with a new
// revision if that is not what was last published.
func (w *lines) revised(f *Feed, e *Entry, last *published, now string) {
	begin, r := len(w.out), last.revision
	w.event(f, e, r)
	if bytes.Equal(w.out[begin:], last.bytes) {
		return
	}
	w.out = w.out[:begin]
	if now <= last.at {
		// A reader that looks for a later LAST-MODIFIED would miss this change.
		now = second(last.at)
	}
	w.event(f, e, revision{min(r.sequence, maxSequence-1) + 1, now})
}

// title is the entry's SUMMARY, never one that shows as nothing: libical takes it out
// and reports an error, and nobody would know what to do.
func (e *Entry) title() string {
	if !blank(e.Summary) {
		return e.Summary
	}
	for _, c := range e.Categories {
		if !blank(c) {
			return c
		}
	}
	return "Care"
}

func (w *lines) event(f *Feed, e *Entry, r revision) {
	w.out = append(w.out, "BEGIN:VEVENT\r\n"...)
	w.text("UID", e.UID)
	w.raw("DTSTAMP", r.at)
	w.raw("LAST-MODIFIED", r.at)
	w.begin("SEQUENCE:")
	w.line = strconv.AppendInt(w.line, int64(r.sequence), 10)
	w.end()
	w.times(f, e)
	w.text("SUMMARY", e.title())
	w.some("DESCRIPTION", e.Description)
	w.some("LOCATION", e.Location)
	for _, c := range e.Categories {
		w.some("CATEGORIES", c)
	}
	// Care does not make anybody busy.
	w.out = append(w.out, "TRANSP:TRANSPARENT\r\n"...)
	if e.Remind > 0 {
		w.alarm(e)
	}
	w.out = append(w.out, "END:VEVENT\r\n"...)
}

func (w *lines) times(f *Feed, e *Entry) {
	if e.AllDay {
		w.date("DTSTART", e.Date)
		w.date("DTEND", e.Date+civil.Date(max(e.Days, 1)))
	} else {
		w.local("DTSTART", e.Date, e.At, "00")
		end, seconds := int(e.At)+max(e.Minutes, 1), "00"
		if end >= 24*60 {
			// Midnight is the next day's, and some zones skip it once a year.
			end, seconds = 24*60-1, "59"
		}
		// Readers put an end that a clock change leaves out before the start.
		for end > int(e.At)+1 && w.skipped(e.Date, civil.Clock(end), f) {
			end, seconds = end-1, "00"
		}
		w.local("DTEND", e.Date, civil.Clock(end), seconds)
	}
	if e.RRule == "" {
		return
	}
	w.begin("RRULE:")
	w.line = appendRaw(w.line, e.RRule)
	if e.HasUntil {
		w.line = append(w.line, ";UNTIL="...)
		w.line = appendUntil(w.line, e.Until, e.AllDay, f)
	}
	w.end()
	for _, d := range e.ExDates {
		if e.AllDay {
			w.date("EXDATE", d)
		} else {
			w.local("EXDATE", d, e.At, "00")
		}
	}
}

func (w *lines) date(name string, d civil.Date) {
	w.begin(name)
	w.param("VALUE", "DATE")
	w.line = append(w.line, ':')
	w.line = d.Append(w.line, "")
	w.end()
}

func (w *lines) local(name string, d civil.Date, c civil.Clock, seconds string) {
	w.begin(name)
	w.line = append(w.line, w.zone...)
	w.line = append(w.line, ':')
	w.line = d.Append(w.line, "")
	w.line = append(w.line, 'T')
	w.line = c.Append(w.line, "")
	w.line = append(w.line, seconds...)
	w.end()
}

// alarm writes the reminder. Its UID follows the entry's (RFC 9074, 4).
func (w *lines) alarm(e *Entry) {
	w.out = append(w.out, "BEGIN:VALARM\r\n"...)
	w.text("UID", UID(e.UID, "alarm"))
	w.out = append(w.out, "ACTION:DISPLAY\r\n"...)
	w.begin("TRIGGER:-PT")
	w.line = strconv.AppendInt(w.line, int64(e.Remind), 10)
	w.line = append(w.line, 'M')
	w.end()
	w.text("DESCRIPTION", e.title())
	w.out = append(w.out, "END:VALARM\r\n"...)
}

// instant is the form of a time in UTC (RFC 5545, 3.3.5).
const instant = "20060102T150405Z"

// latest is the last time that instant can show: a year has four digits.
const latest = "99991231T235959Z"

// stamp returns a time in the form of instant, latest for later ones.
func stamp(t time.Time) string {
	if t = t.UTC(); t.Year() > 9999 {
		return latest
	}
	return t.Format(instant)
}

// second returns the instant a second after s, which Remember has found good.
func second(s string) string {
	t, _ := time.Parse(instant, s)
	return stamp(t.Add(time.Second))
}

// skipped reports whether no clock in the feed's zone shows c on d. Entries come
// in order of days, most of them between the same two clock changes.
func (w *lines) skipped(d civil.Date, c civil.Clock, f *Feed) bool {
	if w.steadyFrom < d && d < w.steadyTo {
		return false
	}
	year, month, day := d.YMD()
	t := time.Date(year, month, day, 0, int(c), 0, 0, location(f))
	from, to := t.ZoneBounds()
	w.steadyFrom, w.steadyTo = 0, math.MaxInt32 // in a zone without changes
	if !from.IsZero() {
		w.steadyFrom = civil.FromTime(from)
	}
	if !to.IsZero() {
		w.steadyTo = civil.FromTime(to) - 1 // the day the clock leaves may be the one before
	}
	return t.Hour()*60+t.Minute() != int(c)
}

func location(f *Feed) *time.Location {
	if f.Location == nil {
		return time.UTC
	}
	return f.Location
}
