package ical

import (
	"bytes"
	"errors"
	"fmt"
	"maps"
	"slices"
	"strconv"
	"strings"
	"time"

	ics "github.com/arran4/golang-ical"

	"vivary/schema/civil"
)

// Memory is what the last published feed said of each entry. Write only reads
// it, so one Memory may serve several calls at once.
type Memory struct {
	events []published
	byUID  map[string]int    // place in events
	zones  map[string][]byte // VTIMEZONE by TZID
	feed   []byte
	made   time.Time
	floor  int // SEQUENCE at which entries begin that are not remembered
}

// published is an entry of the last feed.
type published struct {
	revision
	start   start
	uid     string
	zone    string     // TZID of the start, "" for a date
	lastDay civil.Date // on which a single entry ends
	single  bool
	bytes   []byte // the VEVENT as this package writes it
}

// Remember reads a feed that Write made. A feed that was cut short, that some
// other program wrote or that does not say how often each entry was changed is
// an error: to begin again at SEQUENCE 0 would make phones ignore every change
// until the numbers have caught up. Salvage goes on from what it still tells.
func Remember(feed []byte) (*Memory, error) {
	if err := whole(feed); err != nil {
		return nil, err
	}
	m, ok := quick(feed)
	if !ok {
		var err error
		if m, err = slowly(feed); err != nil {
			return nil, err
		}
	}
	m.head(feed)
	return m, nil
}

// slowly reads any feed of ours, whoever folded its lines since.
func slowly(feed []byte) (*Memory, error) {
	cal, err := ics.ParseCalendar(bytes.NewReader(feed))
	if err != nil {
		return nil, fmt.Errorf("the last feed cannot be read: %w", err)
	}
	ours := func(p ics.CalendarProperty) bool { return p.IANAToken == "PRODID" && p.Value == prodID }
	if !slices.ContainsFunc(cal.CalendarProperties, ours) {
		return nil, errors.New("the last feed was written by another program")
	}
	m := &Memory{byUID: map[string]int{}, zones: map[string][]byte{}}
	for _, c := range cal.Components {
		w := lines{}
		w.component(c)
		switch c := c.(type) {
		case *ics.VTimezone:
			m.zones[valueOf(c.Properties, "TZID")] = w.out
		case *ics.VEvent:
			ev, err := remembered(c, w.out)
			if err != nil {
				return nil, err
			}
			if _, twice := m.byUID[ev.uid]; twice {
				return nil, fmt.Errorf("the last feed has two entries with UID %q", ev.uid)
			}
			m.byUID[ev.uid] = len(m.events)
			m.events = append(m.events, ev)
		}
	}
	return m, nil
}

// whole checks what the reading library lets pass: that there is one VCALENDAR,
// that each BEGIN has its END, and that the last line is complete.
func whole(feed []byte) error {
	var open []string
	line, ended := 0, false
	for len(feed) > 0 {
		line++
		text, rest, complete := bytes.Cut(feed, []byte("\n"))
		feed = rest
		text = bytes.TrimSuffix(text, []byte("\r"))
		switch begin, end := bytes.HasPrefix(text, []byte("BEGIN:")), bytes.HasPrefix(text, []byte("END:")); {
		case ended:
			return fmt.Errorf("the last feed goes on after END:VCALENDAR (line %d)", line)
		case !complete:
			return fmt.Errorf("the last feed was cut short in line %d", line)
		case line == 1 && string(text) != "BEGIN:VCALENDAR":
			return errors.New("the last feed is not a calendar: its first line is not BEGIN:VCALENDAR")
		case begin:
			open = append(open, string(text[len("BEGIN:"):]))
		case end:
			name := string(text[len("END:"):])
			if len(open) == 0 || open[len(open)-1] != name {
				return fmt.Errorf("the last feed is damaged: END:%s without its BEGIN (line %d)", name, line)
			}
			open = open[:len(open)-1]
			ended = len(open) == 0
		}
	}
	if !ended {
		return fmt.Errorf("the last feed was cut short after line %d", line)
	}
	return nil
}

// remembered takes from an event what Write asks of it.
func remembered(c *ics.VEvent, rendered []byte) (published, error) {
	ev := published{uid: valueOf(c.Properties, "UID"), bytes: rendered}
	if ev.uid == "" {
		return ev, errors.New("the last feed has an entry without UID")
	}
	bad := func(name string) (published, error) {
		return ev, fmt.Errorf("the last feed has no usable %s for the entry with UID %q", name, ev.uid)
	}
	var err error
	if ev.sequence, err = strconv.Atoi(valueOf(c.Properties, "SEQUENCE")); err != nil || ev.sequence < 0 {
		return bad("SEQUENCE")
	}
	ev.sequence = min(ev.sequence, maxSequence)
	ev.at = valueOf(c.Properties, "LAST-MODIFIED")
	if _, err = time.Parse(instant, ev.at); err != nil {
		return bad("LAST-MODIFIED")
	}
	var ok bool
	if ev.start, ok = parseStart(valueOf(c.Properties, "DTSTART")); !ok {
		return bad("DTSTART")
	}
	end, ok := parseStart(valueOf(c.Properties, "DTEND"))
	if !ok {
		return bad("DTEND")
	}
	ev.lastDay = end.date
	if end.at < 0 {
		ev.lastDay-- // the end of an all-day entry is the day after it
	}
	ev.single = c.GetProperty(ics.ComponentPropertyRrule) == nil
	if tz := c.GetProperty(ics.ComponentPropertyDtStart).ICalParameters["TZID"]; len(tz) > 0 {
		ev.zone = tz[0]
	}
	return ev, nil
}

// parseStart reads "20270710" and "20270710T193000".
func parseStart(s string) (start, bool) {
	day, clock, timed := strings.Cut(s, "T")
	if len(day) != 8 {
		return start{}, false
	}
	d, err := civil.Parse(day[:4] + "-" + day[4:6] + "-" + day[6:])
	if err != nil || !timed {
		return start{d, -1}, err == nil
	}
	if len(clock) != 6 {
		return start{}, false
	}
	c, err := civil.ParseClock(clock[:2] + ":" + clock[2:4])
	return start{d, c}, err == nil
}

func valueOf(props []ics.IANAProperty, name string) string {
	for i := range props {
		if props[i].IANAToken == name {
			return props[i].Value
		}
	}
	return ""
}

// component writes a component as this package would have written it, so that
// bytes can be compared whatever folded the lines in between.
func (w *lines) component(c ics.Component) {
	name := ""
	switch c := c.(type) {
	case *ics.VEvent:
		name = "VEVENT"
	case *ics.VAlarm:
		name = "VALARM"
	case *ics.VTimezone:
		name = "VTIMEZONE"
	case *ics.Standard:
		name = "STANDARD"
	case *ics.Daylight:
		name = "DAYLIGHT"
	case *ics.GeneralComponent:
		name = c.Token
	}
	w.raw("BEGIN", name)
	for _, p := range c.UnknownPropertiesIANAProperties() { // all of them, whatever the name says
		w.property(p.BaseProperty)
	}
	for _, sub := range c.SubComponents() {
		w.component(sub)
	}
	w.raw("END", name)
}

func (w *lines) property(p ics.BaseProperty) {
	w.begin(p.IANAToken)
	for _, name := range slices.Sorted(maps.Keys(p.ICalParameters)) {
		for i, v := range p.ICalParameters[name] {
			v = unhat.Replace(v)
			if i == 0 {
				w.param(name, v)
			} else {
				w.line = appendParam(append(w.line, ','), v)
			}
		}
	}
	w.line = append(w.line, ':')
	if p.GetValueType() == ics.ValueDataTypeText {
		w.line = appendText(w.line, p.Value)
	} else {
		w.line = appendRaw(w.line, p.Value)
	}
	w.end()
}

// unhat undoes the parameter encoding of RFC 6868, which the library does not know.
var unhat = strings.NewReplacer("^^", "^", "^'", `"`, "^n", "\n")

// First returns the first day of an entry as it was last published.
func (m *Memory) First(uid string) (civil.Date, bool) {
	if m == nil {
		return 0, false
	}
	i, ok := m.byUID[uid]
	if !ok {
		return 0, false
	}
	return m.events[i].start.date, true
}

// Rule returns the rule of a series as it was last published, without its end; "" for
// an entry that had none.
func (m *Memory) Rule(uid string) string {
	if m == nil {
		return ""
	}
	i, ok := m.byUID[uid]
	if !ok {
		return ""
	}
	rule, _, _ := strings.Cut(m.events[i].value("RRULE"), ";UNTIL=")
	return rule
}

// Ended returns the last day that the rule of a series had when it was last published,
// in the time zone of the feed; false where it had no end.
func (m *Memory) Ended(uid string, zone *time.Location) (civil.Date, bool) {
	if m == nil {
		return 0, false
	}
	i, ok := m.byUID[uid]
	if !ok {
		return 0, false
	}
	text := string(bytes.ReplaceAll(m.events[i].bytes, []byte("\r\n "), nil)) // long lines are folded
	_, text, ok = strings.Cut(text, ";UNTIL=")
	if !ok {
		return 0, false
	}
	text, _, _ = strings.Cut(text, "\r\n")
	if at, err := time.Parse(instant, text); err == nil {
		return civil.FromTime(at.In(zone)), true
	}
	day, ok := parseStart(text)
	return day.date, ok
}

// Left returns the days of a series that were left out when it was last published.
func (m *Memory) Left(uid string) []civil.Date {
	if m == nil {
		return nil
	}
	i, ok := m.byUID[uid]
	if !ok {
		return nil
	}
	var out []civil.Date
	for line := range bytes.Lines(m.events[i].bytes) {
		if bytes.HasPrefix(line, []byte("EXDATE")) { // short enough never to be folded
			if d, ok := parseStart(string(bytes.TrimSpace(line[bytes.LastIndexByte(line, ':')+1:]))); ok {
				out = append(out, d.date)
			}
		}
	}
	return out
}
