package vtimezone

import "time"

// reading is what a zone's clocks show: seconds east of UTC, the abbreviation,
// and whether the database calls it daylight saving.
type reading struct {
	offset int
	name   string
	dst    bool
}

func read(t time.Time) reading {
	name, offset := t.Zone()
	return reading{offset, name, t.IsDST()}
}

// shows reports whether people could not tell a from b.
func (a reading) shows(b reading) bool { return a.offset == b.offset && a.name == b.name }

// onset is one change of a zone's clocks; at is the first instant after it.
type onset struct {
	at            time.Time
	before, after reading
}

// wall returns the clock time at which the onset happens, as it is written in
// DTSTART: with the offset before the change.
func (o onset) wall() time.Time {
	return o.at.UTC().Add(time.Duration(o.before.offset) * time.Second)
}

// daylight reports whether the onset begins a DAYLIGHT part. Where the database
// has winter as the saving (Europe/Dublin, Africa/Casablanca) it is turned
// round, because calendar apps expect DAYLIGHT to be the later clock.
func (o onset) daylight() bool {
	if o.before.dst == o.after.dst {
		return o.after.dst
	}
	return o.after.offset > o.before.offset
}

// epoch stands for the beginning of time: nothing earlier is written.
var epoch = time.Unix(0, 0).UTC()

// onsets returns the onset in force at begin and those after it up to end.
func onsets(loc *time.Location, begin, end time.Time) []onset {
	all := []onset{inForce(begin.In(loc))}
	t := begin.In(loc)
	was := read(t)
	for t.Before(end) {
		_, next := t.ZoneBounds()
		if next.IsZero() {
			break
		}
		// ZoneBounds also stops at New Year, and in leap years says on
		// 31 December that the period ends that day.
		if !next.After(t) {
			next = t.AddDate(0, 0, 1)
		}
		t = next
		if is := read(t); !is.shows(was) {
			all = append(all, onset{t, was, is})
			was = is
		}
	}
	return all
}

// inForce returns the last onset at or before t. One before 1970 is moved there
// and changes nothing.
func inForce(t time.Time) onset {
	is := read(t)
	for {
		start, _ := t.ZoneBounds()
		if start.Before(epoch) {
			return onset{epoch.Add(-time.Duration(is.offset) * time.Second), is, is}
		}
		t = start.Add(-time.Second)
		if was := read(t); !was.shows(is) {
			return onset{start, was, is}
		}
	}
}
