package compare

import (
	"bytes"

	"vivary/compile/feeds"
	"vivary/compile/identity"
	"vivary/compile/roster"
	"vivary/schema/civil"
)

// Phone is what whoever subscribed to a calendar sees change.
type Phone struct {
	Calendar string // by name
	Shown    string
	New, Old bool // the calendar itself came, or is no more
	// Changed, Added and Gone are how many entries, of All that the calendar has now.
	Changed, Added, Gone, All int
	From                      civil.Date // the first day of these
}

// phones compares the entries of every calendar. A plan that is refused makes none, and those that
// are on phones stay.
func (r *Report) phones() {
	if r.Is.Refused() {
		return
	}
	was := map[string]*feeds.Feed{}
	before, after := feeds.Of(r.Was), feeds.Of(r.Is)
	for i := range before {
		was[calendarID(&before[i])] = &before[i]
	}
	all := make([]Phone, len(after))
	roster.Each(len(after), func(i int) {
		f := &after[i]
		all[i] = r.phone(was[calendarID(f)], f)
	})
	for i := range after {
		delete(was, calendarID(&after[i]))
		if p := &all[i]; p.New || p.Changed+p.Added+p.Gone > 0 {
			r.Phones = append(r.Phones, *p)
		}
	}
	for i := range before {
		if f := &before[i]; was[calendarID(f)] == f {
			r.Phones = append(r.Phones, Phone{Calendar: f.Name, Shown: f.Plan.Shown(), Old: true})
		}
	}
}

func calendarID(f *feeds.Feed) string {
	switch {
	case f.Plan.At.Written():
	case f.Plan.OfHouse():
		return "\x00dates" // the one of a plan that has no calendar of its dates
	default:
		return "\x00" // the one of a plan without calendars
	}
	return identity.Calendar(f.Plan)
}

// phone compares the entries of one calendar; before is nil for one that is new.
func (r *Report) phone(before, after *feeds.Feed) Phone {
	p := Phone{Calendar: after.Name, Shown: after.Plan.Shown(), New: before == nil}
	if before != nil && after.Same(before) {
		return p
	}
	old := map[string]event{}
	if before != nil {
		old = events(before)
	}
	felt := func(d civil.Date) {
		if d = max(d, r.Is.Today); p.From == 0 || d < p.From {
			p.From = d
		}
	}
	now := events(after)
	p.All = len(now)
	for uid, e := range now {
		o, there := old[uid]
		delete(old, uid)
		switch {
		case !there:
			p.Added++
		case !bytes.Equal(o.text, e.text):
			p.Changed++
		default:
			continue
		}
		felt(e.on)
	}
	for _, o := range old {
		p.Gone++
		felt(o.on)
	}
	return p
}

// event is one entry of a feed, as it stands there.
type event struct {
	text []byte
	on   civil.Date
}

// events are the entries of a feed as somebody has it who subscribes to it today, by UID. Both
// feeds of a comparison are made at one moment, so that what differs is what a reader sees.
func events(f *feeds.Feed) map[string]event {
	out := map[string]event{}
	rest, err := f.Bytes(nil)
	if err != nil {
		return out
	}
	begin, end := []byte("\r\nBEGIN:VEVENT\r\n"), []byte("\r\nEND:VEVENT\r\n")
	for {
		i := bytes.Index(rest, begin)
		if i < 0 {
			return out
		}
		rest = rest[i+2:]
		text := rest[:max(0, bytes.Index(rest, end))]
		out[string(property(text, "UID"))] = event{text, dayIn(property(text, "DTSTART"))}
		rest = rest[len(text):]
	}
}

// property is what follows the name of a property, parameters and all, on its first line.
func property(text []byte, name string) []byte {
	i := bytes.Index(text, []byte("\r\n"+name))
	if i < 0 {
		return nil
	}
	line := text[i+2+len(name):]
	if n := bytes.IndexByte(line, '\r'); n >= 0 {
		line = line[:n]
	}
	return line
}

// dayIn is the day at the end of DTSTART;TZID=Europe/London:20270301T193000.
func dayIn(value []byte) civil.Date {
	_, day, _ := bytes.Cut(value, []byte{':'})
	if len(day) < 8 {
		return 0
	}
	d, _ := civil.Parse(string(day[:4]) + "-" + string(day[4:6]) + "-" + string(day[6:8]))
	return d
}
