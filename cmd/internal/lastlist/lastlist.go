// Package lastlist reads what published calendars ask of people in the coming days, as a
// phone reads them. It is for the day on which the plan itself can say nothing: what was
// last sound still stands in the feeds.
package lastlist

import (
	"bytes"
	"cmp"
	"errors"
	"path/filepath"
	"slices"
	"strings"
	"time"

	ics "github.com/arran4/golang-ical"
	"github.com/spf13/afero"
	"github.com/teambition/rrule-go"

	"vivary/cmd/internal/publish"
	"vivary/compile/ical"
	"vivary/schema/civil"
	"vivary/schema/zone"
)

// Item is one entry of a calendar on one of its days.
type Item struct {
	Calendar string // the name of its file, without the ending
	Day      civil.Date
	At       string // "19:30", or "" for a whole day
	Summary  string
	Text     string // may have several lines
}

// List is what the calendars of a folder ask, by day and time. What several of them show
// in the same words is in it once.
type List struct {
	Items []Item
	Made  time.Time // when a build last changed anything in them; zero for never
	Found int       // how many calendars there are
	Wrong []string  // what of them could not be read, in words
}

// Read reads every calendar that vivary wrote into a folder, from one day until before
// another. A folder that is not there has none.
func Read(disk afero.Fs, dir string, from, until civil.Date) List {
	var out List
	files, err := afero.ReadDir(disk, dir)
	if err != nil {
		return out
	}
	for _, info := range files {
		name, ok := strings.CutSuffix(info.Name(), ".ics")
		if !ok {
			continue
		}
		text, err := publish.Last(disk, dir, info.Name())
		if errors.Is(err, publish.ErrNoFile) || err == nil && !ical.Ours(text) {
			continue
		}
		if err == nil {
			err = out.calendar(name, text, from, until)
		}
		if err != nil {
			out.Wrong = append(out.Wrong, filepath.ToSlash(filepath.Join(dir, info.Name()))+" cannot be read: "+err.Error())
		}
	}
	slices.SortStableFunc(out.Items, func(a, b Item) int { return cmp.Or(cmp.Compare(a.Day, b.Day), cmp.Compare(a.At, b.At)) })
	said := map[Item]bool{}
	out.Items = slices.DeleteFunc(out.Items, func(x Item) bool {
		x.Calendar = ""
		again := said[x]
		said[x] = true
		return again
	})
	return out
}

func (l *List) calendar(name string, text []byte, from, until civil.Date) error {
	cal, err := ics.ParseCalendar(bytes.NewReader(text))
	if err != nil {
		return err
	}
	l.Found++
	for _, e := range cal.Events() {
		if made, err := time.Parse("20060102T150405Z", value(e, ics.ComponentPropertyLastModified)); err == nil && made.After(l.Made) {
			l.Made = made
		}
		days, at, err := days(e, from, until)
		if err != nil {
			return err
		}
		for _, d := range days {
			l.Items = append(l.Items, Item{name, d, at, value(e, ics.ComponentPropertySummary), value(e, ics.ComponentPropertyDescription)})
		}
	}
	return nil
}

// days returns the days from one until before another on which an entry stands, and its
// time of day. One over several whole days stands on each of them.
func days(e *ics.VEvent, from, until civil.Date) (out []civil.Date, at string, err error) {
	start, allDay, err := moment(e, ics.ComponentPropertyDtStart)
	if err != nil {
		return nil, "", err
	}
	first := civil.FromTime(start)
	if !allDay {
		at = start.Format("15:04")
	}
	rule := value(e, ics.ComponentPropertyRrule)
	if rule == "" {
		end, _, err := moment(e, ics.ComponentPropertyDtEnd)
		if err != nil {
			return nil, "", err
		}
		last := first + 1
		if allDay {
			last = max(last, civil.FromTime(end))
		}
		for d := max(first, from); d < min(last, until); d++ {
			out = append(out, d)
		}
		return out, at, nil
	}
	out, err = repeated(e, start, rule, from, until)
	return out, at, err
}

// repeated returns the days of a series, those that were left out excepted.
func repeated(e *ics.VEvent, start time.Time, rule string, from, until civil.Date) ([]civil.Date, error) {
	option, err := rrule.StrToROption(rule)
	if err != nil {
		return nil, err
	}
	option.Dtstart = start
	r, err := rrule.NewRRule(*option)
	if err != nil {
		return nil, err
	}
	var left []civil.Date
	for _, p := range e.Properties {
		if p.IANAToken != string(ics.ComponentPropertyExdate) {
			continue
		}
		for one := range strings.SplitSeq(p.Value, ",") {
			d, err := day(one)
			if err != nil {
				return nil, err
			}
			left = append(left, d)
		}
	}
	var out []civil.Date
	for _, t := range r.Between(from.At(0, start.Location()), until.At(0, start.Location()), true) {
		if d := civil.FromTime(t); d < until && !slices.Contains(left, d) {
			out = append(out, d)
		}
	}
	return out, nil
}

var errMoment = errors.New("an entry does not say when it is")

// moment reads when an entry begins or ends, in its own zone.
func moment(e *ics.VEvent, name ics.ComponentProperty) (at time.Time, allDay bool, err error) {
	p := e.GetProperty(name)
	if p == nil {
		return at, false, errMoment
	}
	if d, err := day(p.Value); err == nil && len(p.Value) == 8 {
		return d.At(0, time.UTC), true, nil
	}
	loc := time.UTC
	if tz := p.ICalParameters["TZID"]; len(tz) == 1 {
		if loc, err = zone.Load(tz[0]); err != nil {
			return at, false, err
		}
	}
	at, err = time.ParseInLocation("20060102T150405", strings.TrimSuffix(p.Value, "Z"), loc)
	return at, false, err
}

// day reads the day of "20270710" and "20270710T193000".
func day(s string) (civil.Date, error) {
	s, _, _ = strings.Cut(s, "T")
	if len(s) != 8 {
		return 0, errMoment
	}
	return civil.Parse(s[:4] + "-" + s[4:6] + "-" + s[6:])
}

func value(e *ics.VEvent, name ics.ComponentProperty) string {
	if p := e.GetProperty(name); p != nil {
		return p.Value
	}
	return ""
}
