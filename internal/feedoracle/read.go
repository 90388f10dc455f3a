// Package feedoracle reads calendars as a phone does, with libraries that share no
// code with what wrote them. It knows nothing of plans: tests ask it what people
// were told, and on which days.
package feedoracle

import (
	"bytes"
	"fmt"
	"slices"
	"strings"
	"sync"
	"time"

	ics "github.com/arran4/golang-ical"
	"github.com/teambition/rrule-go"

	"vivary/schema/civil"
)

// Occurrence is one entry on one day.
type Occurrence struct {
	Calendar, UID string
	Day           civil.Date // in the zone of the entry
	At            string     // "19:30", or "" for a whole day
	Length        time.Duration
	Summary       string
	Description   string
	Location      string
	Kind          string // of care, from the categories; "" for other entries
}

// Read returns what a calendar shows from one day until another, in the order of
// days, and all its UIDs in the order of the file.
func Read(calendar string, feed []byte, from, until civil.Date) (shown []Occurrence, uids []string, err error) {
	cal, err := ics.ParseCalendar(bytes.NewReader(feed))
	if err != nil {
		return nil, nil, fmt.Errorf("%s: %w", calendar, err)
	}
	for _, e := range cal.Events() {
		uids = append(uids, e.Id())
		some, err := entry(calendar, e, from, until)
		if err != nil {
			return nil, nil, fmt.Errorf("%s, entry %s: %w", calendar, e.Id(), err)
		}
		shown = append(shown, some...)
	}
	slices.SortStableFunc(shown, func(a, b Occurrence) int { return int(a.Day - b.Day) })
	return shown, uids, nil
}

// entry expands one entry.
func entry(calendar string, e *ics.VEvent, from, until civil.Date) ([]Occurrence, error) {
	start, allDay, err := moment(e, ics.ComponentPropertyDtStart)
	if err != nil {
		return nil, err
	}
	days, err := starts(e, start, from, until)
	if err != nil || len(days) == 0 {
		return nil, err
	}
	end, _, err := moment(e, ics.ComponentPropertyDtEnd)
	if err != nil {
		return nil, err
	}
	o := Occurrence{Calendar: calendar, UID: e.Id(), Summary: text(e, ics.ComponentPropertySummary), Description: text(e, ics.ComponentPropertyDescription),
		Location: text(e, ics.ComponentPropertyLocation), Kind: text(e, ics.ComponentPropertyCategories), Length: end.Sub(start)}
	if !allDay {
		o.At = start.Format("15:04")
	}
	var out []Occurrence
	for _, at := range days {
		o.Day = civil.FromTime(at)
		out = append(out, o)
	}
	return out, nil
}

// moment reads when an entry begins or ends.
func moment(e *ics.VEvent, name ics.ComponentProperty) (at time.Time, allDay bool, err error) {
	p := e.GetProperty(name)
	if p == nil {
		return at, false, fmt.Errorf("no %s", name)
	}
	if len(p.Value) == len("20060102") {
		at, err = time.Parse("20060102", p.Value)
		return at, true, err
	}
	if utc, ok := strings.CutSuffix(p.Value, "Z"); ok {
		at, err = time.Parse("20060102T150405", utc)
		return at, false, err
	}
	if len(p.ICalParameters["TZID"]) != 1 {
		return at, false, fmt.Errorf("%s without a zone", name)
	}
	loc, err := zone(p.ICalParameters["TZID"][0])
	if err != nil {
		return at, false, err
	}
	at, err = time.ParseInLocation("20060102T150405", p.Value, loc)
	return at, false, err
}

var zones sync.Map // of *time.Location by name; they are read from a file each time

func zone(name string) (*time.Location, error) {
	if z, ok := zones.Load(name); ok {
		return z.(*time.Location), nil
	}
	z, err := time.LoadLocation(name)
	if err == nil {
		zones.Store(name, z)
	}
	return z, err
}

// starts returns the times at which an entry begins from one day until another.
func starts(e *ics.VEvent, start time.Time, from, until civil.Date) ([]time.Time, error) {
	first, last := from.At(0, start.Location()), until.At(0, start.Location()).Add(-time.Second)
	rule := e.GetProperty(ics.ComponentPropertyRrule)
	if rule == nil {
		if start.Before(first) || start.After(last) {
			return nil, nil
		}
		return []time.Time{start}, nil
	}
	option, err := rrule.StrToROption(rule.Value)
	if err != nil {
		return nil, err
	}
	option.Dtstart = start
	r, err := rrule.NewRRule(*option)
	if err != nil {
		return nil, err
	}
	out, err := leftOut(e, start.Location())
	if err != nil {
		return nil, err
	}
	return slices.DeleteFunc(r.Between(first, last, true), func(t time.Time) bool { return out[t.Unix()] }), nil
}

// leftOut are the starts that an entry leaves out.
func leftOut(e *ics.VEvent, zone *time.Location) (map[int64]bool, error) {
	out := map[int64]bool{}
	for _, p := range e.GetProperties(ics.ComponentPropertyExdate) {
		for v := range strings.SplitSeq(p.Value, ",") {
			form := "20060102T150405"
			if len(v) == len("20060102") {
				form = "20060102"
			}
			at, err := time.ParseInLocation(form, strings.TrimSuffix(v, "Z"), zone)
			if err != nil {
				return nil, err
			}
			out[at.Unix()] = true
		}
	}
	return out, nil
}

func text(e *ics.VEvent, name ics.ComponentProperty) string {
	if p := e.GetProperty(name); p != nil {
		return p.Value
	}
	return ""
}
