package ical

import (
	"bytes"
	"strconv"
	"strings"
	"time"

	"vivary/schema/civil"
)

// floorName is the property of ours that says at which SEQUENCE new entries begin, where
// that is not 0. Without it an entry that was taken out and comes back would begin anew,
// below what a phone may have kept.
const floorName = "X-VIVARY-SEQUENCE"

// madeName is the property that says when the feed was last revised (RFC 7986, 5.4).
const madeName = "LAST-MODIFIED"

// sourceName is the property that says from where the feed is fetched (RFC 7986, 5.8).
const sourceName = "SOURCE"

// skew is how far the clock may be behind that of the last feed and count as the same.
const skew = 24 * time.Hour

// headOf returns the value of a property of the calendar itself, "" for none.
func headOf(feed []byte, name string) string {
	for line := range bytes.Lines(feed) {
		text := strings.TrimRight(string(line), "\r\n")
		if value, ok := strings.CutPrefix(text, name+":"); ok {
			return value
		}
		if strings.HasPrefix(text, "BEGIN:") && text != "BEGIN:VCALENDAR" {
			break
		}
	}
	return ""
}

// head reads what the calendar itself says.
func (m *Memory) head(feed []byte) {
	m.feed = feed
	if n, err := strconv.Atoi(headOf(feed, floorName)); err == nil {
		m.floor = min(max(n, 0), maxSequence)
	}
	if made := headOf(feed, madeName); len(made) == len(instant) {
		m.made, _ = time.Parse(instant, made)
	}
}

// Made returns when the feed was last revised, as the clock then was; the zero time where
// that is not known.
func (m *Memory) Made() time.Time { return m.made }

// revisedAt sets when a feed was revised, in which that of the last one stands at a place.
// Where nothing else is new it stays, unless the clock was ahead then.
func (m *Memory) revisedAt(feed []byte, at int, now time.Time) {
	if m == nil || m.made.IsZero() || !bytes.Equal(feed, m.feed) || now.Add(skew).Before(m.made) {
		copy(feed[at:], stamp(now))
	}
}

// first is the SEQUENCE at which an entry begins that is not remembered.
func (m *Memory) first() int {
	if m == nil {
		return 0
	}
	return m.floor
}

// raised is the floor once some entries are no longer in the feed. One that was over when
// the feed was made does not come back.
func (m *Memory) raised(kept []bool) int {
	if m == nil {
		return 0
	}
	floor, made := m.floor, civil.FromTime(m.made)-1 // whatever the zone
	for i := range m.events {
		if ev := &m.events[i]; !kept[i] && (!ev.single || ev.lastDay >= made) {
			floor = max(floor, ev.sequence+1)
		}
	}
	return min(floor, maxSequence)
}

// Ends returns the last day of all single entries; false where there is none.
func (m *Memory) Ends() (last civil.Date, ok bool) {
	for i := range m.events {
		if ev := &m.events[i]; ev.single && (!ok || ev.lastDay > last) {
			last, ok = ev.lastDay, true
		}
	}
	return last, ok
}

// refreshName is the property that says how often a feed is to be fetched (RFC 7986, 5.7).
const refreshName = "REFRESH-INTERVAL"

// RefreshOf returns how often a feed asks to be fetched anew; 0 where it does not say, or
// says more than a year.
func RefreshOf(feed []byte) time.Duration {
	text := headOf(feed, refreshName+";VALUE=DURATION")
	if !ValidDuration(text) {
		return 0
	}
	const most = 366 * 24 * time.Hour
	units := map[byte]time.Duration{'W': 7 * 24 * time.Hour, 'D': 24 * time.Hour, 'H': time.Hour, 'M': time.Minute, 'S': time.Second}
	var sum time.Duration
	n := time.Duration(0)
	for i := range len(text) {
		switch c := text[i]; {
		case '0' <= c && c <= '9':
			n = n*10 + time.Duration(c-'0')
		case c != 'P' && c != 'T':
			if sum += n * units[c]; n > most/units[c] || sum > most {
				return 0
			}
			n = 0
		}
		if n > most {
			return 0
		}
	}
	return sum
}
