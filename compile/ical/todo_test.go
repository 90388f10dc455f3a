package ical

import (
	"bytes"
	"strings"
	"testing"
	"time"

	ics "github.com/arran4/golang-ical"
)

var aTodo = Todo{UID: "vivary-1", Start: time.Date(2026, 11, 25, 19, 30, 0, 0, time.UTC), Due: time.Date(2026, 11, 25, 20, 30, 0, 0, time.UTC),
	Summary: "Fresh water: Tub 1 to 3", Description: "Fresh water:\n- Tub 1; \\ left, \"x\"\n- Tub 2\nBEGIN:VTODO\n" + strings.Repeat("ü ", 60), First: true}

var atNoon = time.Date(2026, 11, 25, 12, 0, 0, 0, time.UTC)

// What is written is one object with one task, which is read as it was meant, by us and by a
// library.
func TestTodo(t *testing.T) {
	text := WriteTodo(nil, &aTodo, atNoon)
	for line := range strings.Lines(string(text)) {
		if !strings.HasSuffix(line, "\r\n") || len(line) > maxOctets+2 {
			t.Errorf("%q", line)
		}
	}
	cal, err := ics.ParseCalendar(bytes.NewReader(text))
	if err != nil || len(cal.Todos()) != 1 || len(cal.Events()) != 0 {
		t.Fatalf("%v:\n%s", err, text)
	}
	s, err := ReadTodo(text)
	if err != nil || s.UID != aTodo.UID || s.Done || s.Cancelled || !s.Start.Equal(aTodo.Start) || !s.Same(&aTodo) || s.Summary != aTodo.Summary {
		t.Errorf("%+v, %v", s, err)
	}
	for _, want := range []string{"DTSTART:20261125T193000Z\r\n", "DUE:20261125T203000Z\r\n", "STATUS:NEEDS-ACTION\r\n", "PRIORITY:1\r\n"} {
		if !strings.Contains(string(text), want) {
			t.Errorf("no %q in\n%s", want, text)
		}
	}
	if strings.Contains(string(text), "RRULE") || strings.Contains(string(text), "LAST-MODIFIED") {
		t.Errorf("%s", text)
	}
}

// A revision replaces what is ours and leaves what an app or somebody put there.
func TestReviseTodo(t *testing.T) {
	old := strings.Replace(string(WriteTodo(nil, &aTodo, atNoon)), "STATUS:", "X-MINE;A=\"b:c\":"+strings.Repeat("kept ", 30)+"\r\nLAST-MODIFIED:20261125T130000Z\r\nCLASS:PRIVATE\r\n"+
		"BEGIN:VALARM\r\nACTION:DISPLAY\r\nDESCRIPTION:mine\r\nSUMMARY:mine\r\nTRIGGER:-PT5M\r\nEND:VALARM\r\nPERCENT-COMPLETE:50\r\nSTATUS:", 1)
	old = strings.Replace(old, "BEGIN:VTODO", "X-HEAD:kept\r\nBEGIN:VTIMEZONE\r\nTZID:x\r\nEND:VTIMEZONE\r\nBEGIN:VTODO", 1)
	for _, ends := range []string{"\r\n", "\n"} {
		next := aTodo
		next.Summary, next.Description, next.Start, next.Due = "Mist: Tub 4", "anew", aTodo.Start.Add(time.Hour), aTodo.Due.Add(time.Hour)
		got := string(ReviseTodo([]byte(strings.ReplaceAll(old, "\r\n", ends)), &next, atNoon))
		s, err := ReadTodo([]byte(got))
		if err != nil || !s.Same(&next) || s.UID != aTodo.UID || s.Description != "anew" {
			t.Errorf("%+v, %v:\n%s", s, err, got)
		}
		flat := strings.ReplaceAll(got, "\r\n ", "")
		for _, want := range []string{"X-MINE;A=\"b:c\":" + strings.Repeat("kept ", 30) + "\r\n", "CLASS:PRIVATE\r\n", "DESCRIPTION:mine\r\nSUMMARY:mine\r\nTRIGGER:-PT5M\r\n", "SEQUENCE:1\r\n", "X-HEAD:kept\r\n", "TZID:x\r\n", "PERCENT-COMPLETE:50\r\n", "PRIORITY:1\r\n"} {
			if strings.Count(flat, want) != 1 {
				t.Errorf("%q is not there once:\n%s", want, flat)
			}
		}
		for _, gone := range []string{"LAST-MODIFIED", "Tub 1"} {
			if strings.Contains(flat, gone) {
				t.Errorf("%s is still there:\n%s", gone, flat)
			}
		}
	}
}

// Whatever an app leaves of a task, it is read as done only where it says so, or not at all.
func TestReadTodo(t *testing.T) {
	object := func(lines ...string) string {
		return "BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:x\r\nBEGIN:VTODO\r\nUID:a\r\n" + strings.Join(append(lines, "END:VTODO", "END:VCALENDAR", ""), "\r\n")
	}
	at := time.Date(2026, 11, 25, 19, 42, 0, 0, time.UTC)
	for name, x := range map[string]struct {
		text            string
		done, cancelled bool
		at              time.Time
	}{
		"open":             {text: object("STATUS:NEEDS-ACTION")},
		"begun":            {text: object("STATUS:IN-PROCESS", "PERCENT-COMPLETE:99")},
		"nothing said":     {text: object("SUMMARY:x")},
		"status":           {object("STATUS:COMPLETED"), true, false, time.Time{}},
		"small letters":    {object("STATUS:completed"), true, false, time.Time{}},
		"time":             {object("COMPLETED:20261125T194200Z"), true, false, at},
		"percent":          {object("PERCENT-COMPLETE:100", "LAST-MODIFIED:20261125T194200Z"), true, false, at},
		"both times":       {object("STATUS:COMPLETED", "LAST-MODIFIED:20261126T000000Z", "COMPLETED:20261125T194200Z"), true, false, at},
		"a day":            {object("STATUS:COMPLETED", "COMPLETED;VALUE=DATE:20261125"), true, false, time.Time{}},
		"no zone":          {object("STATUS:COMPLETED", "COMPLETED:20261125T194200"), true, false, time.Time{}},
		"unknown zone":     {object("STATUS:COMPLETED", "COMPLETED;TZID=Mars/North:20261125T194200"), true, false, time.Time{}},
		"a zone":           {object("STATUS:COMPLETED", "COMPLETED;TZID=America/New_York:20261125T144200"), true, false, at},
		"rubbish":          {object("STATUS:COMPLETED", "COMPLETED:yesterday"), true, false, time.Time{}},
		"called off":       {object("STATUS:CANCELLED"), false, true, time.Time{}},
		"done, called off": {object("STATUS:CANCELLED", "COMPLETED:20261125T194200Z"), true, false, at},
	} {
		s, err := ReadTodo([]byte(x.text))
		if err != nil || s.Done != x.done || s.Cancelled != x.cancelled || !s.At.Equal(x.at) {
			t.Errorf("%s: %+v, %v", name, s, err)
		}
	}
	for _, text := range []string{"", "x", "BEGIN:VCALENDAR\r\nEND:VCALENDAR\r\n", "BEGIN:VCALENDAR\r\nBEGIN:VEVENT\r\nUID:a\r\nEND:VEVENT\r\nEND:VCALENDAR\r\n", object("BEGIN:VALARM")} {
		if s, err := ReadTodo([]byte(text)); err == nil && s.Done {
			t.Errorf("%q is read as %+v", text, s)
		}
	}
}
