package ical

import (
	"bytes"
	"errors"
	"slices"
	"strconv"
	"strings"
	"time"

	ics "github.com/arran4/golang-ical"
	"golang.org/x/text/unicode/norm"

	"vivary/schema/zone"
)

// Todo is something to be done once, as it stands in a list of tasks. Its times are instants:
// apps disagree about a day without a time, and about a zone that they do not know.
type Todo struct {
	UID         string
	Start, Due  time.Time // Due is later
	Summary     string
	Description string
	First       bool // before all others
}

// WriteTodo appends a todo that is still to be done to dst, as an object of its own.
func WriteTodo(dst []byte, t *Todo, now time.Time) []byte {
	w := &lines{out: append(dst, "BEGIN:VCALENDAR\r\nVERSION:2.0\r\n"...)}
	w.text("PRODID", prodID)
	w.out = append(w.out, "BEGIN:VTODO\r\n"...)
	w.text("UID", t.UID)
	w.todo(t, 0, now)
	if t.First {
		w.raw("PRIORITY", "1")
	}
	w.out = append(w.out, "STATUS:NEEDS-ACTION\r\nEND:VTODO\r\nEND:VCALENDAR\r\n"...)
	return w.out
}

// todo writes what Revised replaces. There is no LAST-MODIFIED: what a list has of it is of
// whoever ticked, and may be all that says when.
func (w *lines) todo(t *Todo, sequence int, now time.Time) {
	w.raw("DTSTAMP", stamp(now))
	w.raw("SEQUENCE", strconv.Itoa(sequence))
	w.raw("DTSTART", stamp(t.Start))
	w.raw("DUE", stamp(t.Due))
	w.text("SUMMARY", (&Entry{Summary: t.Summary}).title())
	w.some("DESCRIPTION", t.Description)
}

// ReviseTodo returns an object of a list with a todo in place of what it was. All else that
// stands in it stays, such as an alarm that somebody set on it.
func ReviseTodo(old []byte, t *Todo, now time.Time) []byte {
	all := unfolded(old)
	begin, end := slices.Index(all, "BEGIN:VTODO"), slices.Index(all, "END:VTODO")
	if begin < 0 || end < begin || slices.Contains(all[begin+1:], "BEGIN:VTODO") {
		return WriteTodo(nil, t, now)
	}
	w, depth, sequence := &lines{}, 0, 0
	var kept []string
	for _, line := range all[begin+1 : end] {
		name, value := property(line)
		switch {
		case name == "BEGIN":
			depth++
		case name == "END":
			depth--
		}
		if name == "SEQUENCE" && depth == 0 {
			sequence, _ = strconv.Atoi(value)
		}
		if depth > 0 || name == "END" || !slices.Contains(replaced, name) {
			kept = append(kept, line)
		}
	}
	w.whole(all[:begin+1])
	w.todo(t, min(max(sequence, 0), maxSequence-1)+1, now)
	w.whole(kept)
	w.whole(all[end:])
	return w.out
}

// replaced are the properties of a todo that a revision replaces.
var replaced = []string{"DTSTAMP", "SEQUENCE", "LAST-MODIFIED", "DTSTART", "DUE", "DURATION", "SUMMARY", "DESCRIPTION"}

// whole writes lines as they are, folded.
func (w *lines) whole(all []string) {
	for _, line := range all {
		if line != "" {
			w.begin(line)
			w.end()
		}
	}
}

// unfolded are the content lines of an object.
func unfolded(text []byte) []string {
	s := strings.ReplaceAll(string(text), "\r\n", "\n")
	s = strings.NewReplacer("\n ", "", "\n\t", "").Replace(s)
	return strings.Split(strings.TrimSuffix(s, "\n"), "\n")
}

// property returns the name of a content line in capitals, and its value where it has no
// parameters.
func property(line string) (name, value string) {
	name, value, _ = strings.Cut(line, ":")
	name, _, _ = strings.Cut(name, ";")
	return strings.ToUpper(name), value
}

// Seen is a todo as it stands in a list, whoever wrote it last.
type Seen struct {
	UID, Summary, Description string
	Start                     time.Time // zero where none is said, or in a zone that is not known
	Done                      bool
	Cancelled                 bool      // left out on purpose
	At                        time.Time // when it was done; zero where nothing says so
}

// ErrNoTodo is the error of an object in which no todo stands.
var ErrNoTodo = errors.New("no task stands in it")

// ReadTodo reads an object of a list. It is done if anything in it says so: apps differ in
// what they write, and some put what was done beside the todo, under the same UID.
func ReadTodo(object []byte) (Seen, error) {
	cal, err := ics.ParseCalendar(bytes.NewReader(object))
	if err != nil {
		return Seen{}, err
	}
	var s Seen
	for i, t := range cal.Todos() {
		get := func(name ics.ComponentProperty) string {
			if p := t.GetProperty(name); p != nil {
				return p.Value
			}
			return ""
		}
		if i == 0 {
			s = Seen{UID: get(ics.ComponentPropertyUniqueId), Summary: get(ics.ComponentPropertySummary), Description: get(ics.ComponentPropertyDescription),
				Start: moment(t.GetProperty(ics.ComponentPropertyDtStart))}
		}
		status := strings.ToUpper(strings.TrimSpace(get(ics.ComponentPropertyStatus)))
		s.Cancelled = s.Cancelled || status == "CANCELLED"
		if status != "COMPLETED" && get(ics.ComponentPropertyCompleted) == "" && strings.TrimSpace(get(ics.ComponentPropertyPercentComplete)) != "100" {
			continue
		}
		s.Done = true
		if s.At = moment(t.GetProperty(ics.ComponentPropertyCompleted)); s.At.IsZero() {
			s.At = moment(t.GetProperty(ics.ComponentPropertyLastModified))
		}
	}
	if s.UID == "" {
		return s, ErrNoTodo
	}
	s.Cancelled = s.Cancelled && !s.Done
	return s, nil
}

// moment reads a time: in UTC, or in a zone by its name. A day alone, and a time in no zone,
// say no moment.
func moment(p *ics.IANAProperty) time.Time {
	if p == nil {
		return time.Time{}
	}
	value := strings.TrimSpace(p.Value)
	if t, err := time.Parse(instant, value); err == nil {
		return t
	}
	names := p.ICalParameters["TZID"]
	if len(names) != 1 {
		return time.Time{}
	}
	loc, err := zone.Load(names[0])
	if err != nil {
		return time.Time{}
	}
	t, err := time.ParseInLocation("20060102T150405", value, loc)
	if err != nil {
		return time.Time{}
	}
	return t.UTC()
}

// Same reports whether a list has a todo as it is to be. Whatever somebody wrote behind its
// text is theirs.
func (s *Seen) Same(t *Todo) bool {
	return even(s.Summary) == even((&Entry{Summary: t.Summary}).title()) && strings.HasPrefix(even(s.Description), even(t.Description)) && (s.Start.IsZero() || s.Start.Equal(t.Start.Truncate(time.Second)))
}

// even is a text without the blanks that apps add and take away, and with letters put together
// in one way.
func even(text string) string {
	var all []string
	for line := range strings.Lines(strings.TrimSpace(text)) {
		all = append(all, strings.TrimRight(line, " \t\r\n"))
	}
	return norm.NFC.String(strings.Join(all, "\n"))
}
