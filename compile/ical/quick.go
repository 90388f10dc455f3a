package ical

import (
	"bytes"
	"strconv"
	"time"
)

// Ours reports whether a file is a feed that vivary wrote.
func Ours(feed []byte) bool { return bytes.Contains(feed, []byte("\r\nPRODID:"+prodID+"\r\n")) }

// quick reads a feed that stands as Write left it: lines that end in CRLF, and
// events that begin with the properties in Write's own order. It reports false for
// any other, which is then for the library to read. Reading the feeds of 10,000
// enclosures by the library alone takes longer than everything else in a build.
func quick(feed []byte) (*Memory, bool) {
	if !Ours(feed) || bytes.Count(feed, []byte("\n")) != bytes.Count(feed, []byte("\r\n")) {
		return nil, false
	}
	n := bytes.Count(feed, []byte("\r\nBEGIN:VEVENT\r\n"))
	m := &Memory{byUID: make(map[string]int, n), zones: map[string][]byte{}, events: make([]published, 0, n)}
	rest, ok := feed, true
	for ok {
		var zone, event []byte
		at := bytes.Index(rest, []byte("\r\nBEGIN:V"))
		if at < 0 {
			return m, len(m.events) == n
		}
		rest = rest[at+2:]
		switch {
		case bytes.HasPrefix(rest, []byte("BEGIN:VTIMEZONE\r\n")):
			if zone, ok = block(rest, "END:VTIMEZONE\r\n"); ok {
				m.zones[restOf(zone, "TZID:")] = zone
				rest = rest[len(zone)-2:]
			}
		case bytes.HasPrefix(rest, []byte("BEGIN:VEVENT\r\n")):
			if event, ok = block(rest, "END:VEVENT\r\n"); ok {
				ok = m.quickEvent(event)
				rest = rest[len(event)-2:]
			}
		default:
			ok = false
		}
	}
	return nil, false
}

// block returns the beginning of text up to and with a line.
func block(text []byte, end string) ([]byte, bool) {
	i := bytes.Index(text, []byte("\r\n"+end))
	if i < 0 {
		return nil, false
	}
	return text[:i+2+len(end)], true
}

// restOf returns the rest of the first line that begins so.
func restOf(block []byte, name string) string {
	i := bytes.Index(block, []byte("\r\n"+name))
	if i < 0 {
		return ""
	}
	rest := block[i+2+len(name):]
	return string(rest[:bytes.IndexByte(rest, '\r')])
}

// quickEvent takes from an event what Write asks of it.
func (m *Memory) quickEvent(event []byte) bool {
	ev := published{bytes: event}
	rest := event[len("BEGIN:VEVENT\r\n"):]
	next := func(name string) (string, bool) {
		i := bytes.IndexByte(rest, '\r')
		line := rest[:i]
		rest = rest[i+2:]
		if !bytes.HasPrefix(line, []byte(name)) || len(rest) > 0 && rest[0] == ' ' {
			return "", false
		}
		return string(line[len(name):]), true
	}
	var stamp, sequence, from, to string
	for _, x := range []struct {
		name string
		to   *string
	}{{"UID:", &ev.uid}, {"DTSTAMP:", &stamp}, {"LAST-MODIFIED:", &ev.at}, {"SEQUENCE:", &sequence}, {"DTSTART;", &from}, {"DTEND;", &to}} {
		var ok bool
		if *x.to, ok = next(x.name); !ok {
			return false
		}
	}
	var err error
	if ev.sequence, err = strconv.Atoi(sequence); err != nil || ev.sequence < 0 || stamp != ev.at {
		return false
	}
	ev.sequence = min(ev.sequence, maxSequence)
	if _, err := time.Parse(instant, ev.at); err != nil {
		return false
	}
	var end start
	var ok bool
	if ev.start, ev.zone, ok = quickTime(from); !ok {
		return false
	}
	if end, _, ok = quickTime(to); !ok {
		return false
	}
	ev.lastDay = end.date
	if end.at < 0 {
		ev.lastDay--
	}
	ev.single = !bytes.HasPrefix(rest, []byte("RRULE:"))
	for len(rest) > 0 { // a line without a colon is damage, for the library to name
		i := bytes.IndexByte(rest, '\r')
		if rest[0] != ' ' && bytes.IndexByte(rest[:i], ':') < 0 {
			return false
		}
		rest = rest[i+2:]
	}
	if _, twice := m.byUID[ev.uid]; twice || ev.uid == "" {
		return false
	}
	m.byUID[ev.uid] = len(m.events)
	m.events = append(m.events, ev)
	return true
}

// quickTime reads "TZID=Europe/London:20270710T193000" and "VALUE=DATE:20270710".
func quickTime(s string) (start, string, bool) {
	zone, date := "", false
	for i := 0; i < len(s); i++ {
		if s[i] == ':' {
			if zone, date = s[:i], s[:i] == "VALUE=DATE"; date {
				zone = ""
			} else if len(zone) < 6 || zone[:5] != "TZID=" || zone[5] == '"' {
				return start{}, "", false
			} else {
				zone = zone[5:]
			}
			t, ok := parseStart(s[i+1:])
			return t, zone, ok && (t.at < 0) == date
		}
	}
	return start{}, "", false
}
