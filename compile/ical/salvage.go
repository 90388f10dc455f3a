package ical

import (
	"bytes"
	"slices"
	"strconv"
	"strings"
	"time"
)

// since is from when Salvage counts hours: no feed is older.
var since = time.Date(2026, 1, 1, 0, 0, 0, 0, time.UTC)

// Salvage reads what can still be read of a feed that Remember refuses: one that is
// damaged, or nothing at all. An entry that stands there whole goes on as it was. All
// others begin at a SEQUENCE that no phone can have seen: the hours since 2026, which
// is more often than anything is built, and more than any that can be read.
func Salvage(feed []byte, now time.Time) *Memory {
	m := &Memory{byUID: map[string]int{}, zones: map[string][]byte{}}
	lost := map[string]bool{}
	for _, part := range parts(feed) {
		switch {
		case bytes.HasPrefix(part, []byte("BEGIN:VTIMEZONE\r\n")) && bytes.HasSuffix(part, []byte("\r\nEND:VTIMEZONE\r\n")):
			m.zones[restOf(part, "TZID:")] = part
		case bytes.HasPrefix(part, []byte("BEGIN:VEVENT\r\n")):
			uid, sequence := tells(part)
			m.floor = max(m.floor, sequence+1)
			_, twice := m.byUID[uid]
			// Two of one name: which of them phones have is not known.
			if lost[uid] = lost[uid] || twice; twice || !bytes.HasSuffix(part, []byte("\r\nEND:VEVENT\r\n")) || !m.quickEvent(part) {
				lost[uid] = true
			}
		}
	}
	m.events = slices.DeleteFunc(m.events, func(ev published) bool {
		return lost[ev.uid] || ev.zone != "" && m.zones[ev.zone] == nil
	})
	clear(m.byUID)
	for i := range m.events {
		m.byUID[m.events[i].uid] = i
	}
	seen := m.floor
	m.head(feed)
	m.floor = min(max(m.floor, seen, int(now.Sub(since).Hours())), maxSequence)
	return m
}

// parts cuts a feed where a component of the calendar begins, and after where it ends.
// Lines that end in LF alone get their CR back.
func parts(feed []byte) (out [][]byte) {
	feed = bytes.ReplaceAll(bytes.ReplaceAll(feed, []byte("\r\n"), []byte("\n")), []byte("\n"), []byte("\r\n"))
	begin := 0
	cut := func(at int) {
		if at > begin {
			out = append(out, feed[begin:at])
		}
		begin = at
	}
	at := 0
	for line := range bytes.Lines(feed) {
		if bytes.HasPrefix(line, []byte("BEGIN:VEVENT")) || bytes.HasPrefix(line, []byte("BEGIN:VTIMEZONE")) {
			cut(at)
		}
		at += len(line)
		if bytes.HasPrefix(line, []byte("END:VEVENT")) || bytes.HasPrefix(line, []byte("END:VTIMEZONE")) {
			cut(at)
		}
	}
	cut(len(feed))
	return out
}

// tells returns which entry a damaged one is and its SEQUENCE, as far as whole lines say.
func tells(part []byte) (uid string, sequence int) {
	for line := range bytes.Lines(part) {
		name, value, _ := strings.Cut(string(line), ":")
		value, whole := strings.CutSuffix(value, "\r\n")
		switch {
		case !whole:
		case name == "UID" && uid == "":
			uid = value
		case name == "SEQUENCE":
			if n, err := strconv.Atoi(value); err == nil && n > 0 {
				sequence = min(n, maxSequence-1)
			}
		}
	}
	return uid, sequence
}
