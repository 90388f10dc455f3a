package ical

import (
	"bytes"
	"slices"
	"strconv"
	"strings"
	"time"

	"vivary/schema/civil"
)

// over returns what stays in a feed of an entry that it no longer makes: what was done
// until yesterday, back to keepFrom, or nothing. A single entry of the past stays as it
// was. A series ends yesterday, with a new revision where it had not ended before.
func (ev *published) over(f *Feed, keepFrom, today civil.Date, now string) (*published, bool) {
	if ev.single {
		return ev, ev.start.date >= keepFrom && ev.lastDay < today
	}
	rule := ev.value("RRULE")
	end, ends := until(rule, f)
	switch {
	case ends && end < today:
		return ev, end >= keepFrom
	case ev.start.date >= today || ev.start.at >= 0 && ev.zone != f.Zone || ev.leavesOutStart():
		return nil, false // it may have had no day yet
	}
	rule, _, _ = strings.Cut(rule, ";UNTIL=")
	return ev.ended(rule+";UNTIL="+string(appendUntil(nil, today-1, ev.start.at < 0, f)), now), true
}

// ended is the series with another rule, and a new revision.
func (ev *published) ended(rule, now string) *published {
	out := *ev
	if out.at = now; now <= ev.at {
		out.at = second(ev.at)
	}
	out.sequence = min(ev.sequence, maxSequence-1) + 1
	out.bytes = ev.with(map[string]string{"DTSTAMP": out.at, "LAST-MODIFIED": out.at, "SEQUENCE": strconv.Itoa(out.sequence), "RRULE": rule})
	return &out
}

// past is what a series was until yesterday, where the entry that has its UID now begins
// anew: a care that comes on other days from now on was done on those that it had. It is
// an entry of its own, without a reminder.
func (ev *published) past(e *Entry, f *Feed, m *Memory, keepFrom, today civil.Date, now string) (*published, bool) {
	if ev.single || ev.start.date >= today || e.Date < today {
		return nil, false
	}
	uid := UID(ev.uid, "until", today.String())
	if _, known := m.byUID[uid]; known {
		return nil, false
	}
	over, ok := ev.over(f, keepFrom, today, now)
	if !ok {
		return nil, false
	}
	out := *over
	out.uid, out.sequence = uid, m.first()
	out.bytes = over.with(map[string]string{"UID": uid, "SEQUENCE": strconv.Itoa(out.sequence)})
	if from := bytes.Index(out.bytes, []byte("BEGIN:VALARM\r\n")); from >= 0 {
		out.bytes = append(out.bytes[:from:from], "END:VEVENT\r\n"...)
	}
	return &out, true
}

// with is the text of the entry with other values of some of its properties.
func (ev *published) with(values map[string]string) []byte {
	w := lines{}
	for line := range bytes.SplitSeq(bytes.TrimSuffix(ev.unfolded(), []byte("\r\n")), []byte("\r\n")) {
		w.line = append(w.line[:0], line...)
		name, _, _ := strings.Cut(string(line), ":")
		if value, other := values[name]; other {
			w.line = append(append(w.line[:0], name...), ":"+value...)
		}
		w.end()
	}
	return w.out
}

// unfolded are the lines of the entry, each whole.
func (ev *published) unfolded() []byte { return bytes.ReplaceAll(ev.bytes, []byte("\r\n "), nil) }

// value returns the value of a property without parameters, or "".
func (ev *published) value(name string) string {
	_, rest, ok := bytes.Cut(ev.unfolded(), []byte("\r\n"+name+":"))
	if !ok {
		return ""
	}
	line, _, _ := bytes.Cut(rest, []byte("\r\n"))
	return string(line)
}

// leavesOutStart reports whether the first day of the series is left out.
func (ev *published) leavesOutStart() bool {
	m := Memory{events: []published{*ev}, byUID: map[string]int{ev.uid: 0}}
	return slices.Contains(m.Left(ev.uid), ev.start.date)
}

// until is the last day of a rule.
func until(rule string, f *Feed) (civil.Date, bool) {
	_, text, ok := strings.Cut(rule, ";UNTIL=")
	if !ok {
		return 0, false
	}
	if at, err := time.Parse(instant, text); err == nil {
		return civil.FromTime(at.In(location(f))), true
	}
	day, ok := parseStart(text)
	return day.date, ok
}

// appendUntil appends the end of a rule: the whole last day, so that no reader loses
// its start over a clock change; in UTC where the start is zoned (RFC 5545, 3.3.10).
func appendUntil(dst []byte, last civil.Date, allDay bool, f *Feed) []byte {
	if allDay {
		return last.Append(dst, "")
	}
	return last.At(23*60+59, location(f)).Add(59*time.Second).UTC().AppendFormat(dst, instant)
}
