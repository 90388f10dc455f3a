// Package vtimezone writes the VTIMEZONE component (RFC 5545, 3.6.5) of an IANA
// time zone, as short as a calendar app needs it. It neither reads such
// components nor writes the history of a zone before the feed begins.
package vtimezone

import (
	"fmt"
	"time"

	"vivary/schema/civil"
	"vivary/schema/zone"
)

// Append appends the VTIMEZONE of the zone called name to dst. Its lines end in
// CRLF and are shorter than 75 octets, so they need no folding.
//
// Where the zone keeps one rule the component is two sub-components with a
// yearly RRULE and right for ever from the local date from. Where its changes
// do not fall on the nth weekday of a month (Africa/Casablanca, America/Santiago,
// Asia/Jerusalem) each has its own sub-component, through until and one change
// beyond. RDATE would be shorter, but ical.js 2.2.1 then ignores DTSTART and all
// but the first date of a line. BYDAY with BYMONTHDAY could say "the Sunday
// after the first Saturday", but Exchange and Outlook take only one of the two
// (MS-OXCICAL, 2.1.3.1.1.19.2.2).
//
// The text depends on from, until and the zone's data alone. The error is that
// of an unknown zone, or says that the dates are out of order or before 1970.
func Append(dst []byte, name string, from, until civil.Date) ([]byte, error) {
	loc, err := zone.Load(name)
	if err != nil {
		return dst, err
	}
	if until < from || from < 0 {
		return dst, fmt.Errorf("a time zone from %s until %s: the first date must be in 1970 or later and not after the last", from, until)
	}
	// Local days begin at most 14 hours before, and end at most 12 hours after,
	// the days of UTC.
	begin, end := midnight(from).Add(-14*time.Hour), midnight(until+1).Add(12*time.Hour)
	all := onsets(loc, begin, end.AddDate(cycle+1, 0, 0))

	dst = append(dst, "BEGIN:VTIMEZONE\r\nTZID:"...)
	dst = append(dst, name...)
	dst = append(dst, "\r\nX-LIC-LOCATION:"...)
	dst = append(dst, name...)
	dst = append(dst, "\r\n"...)
	for i, o := range all {
		// Time that never changes again is standard time, whatever it was before.
		saving := o.daylight() && len(all) > 1
		if first, second, ok := steady(all[i:]); ok {
			dst = appendOnset(dst, o, saving, &first)
			dst = appendOnset(dst, all[i+1], !saving, &second)
			break
		}
		dst = appendOnset(dst, o, saving, nil)
		if o.at.After(end) {
			break
		}
	}
	return append(dst, "END:VTIMEZONE\r\n"...), nil
}

func midnight(d civil.Date) time.Time {
	y, m, day := d.YMD()
	return time.Date(y, m, day, 0, 0, 0, 0, time.UTC)
}

// appendOnset appends a STANDARD or, with saving, a DAYLIGHT sub-component;
// without a rule the onset happens once.
func appendOnset(dst []byte, o onset, saving bool, r *yearly) []byte {
	kind := "STANDARD"
	if saving {
		kind = "DAYLIGHT"
	}
	dst = append(dst, "BEGIN:"...)
	dst = append(dst, kind...)
	dst = append(dst, "\r\nDTSTART:"...)
	dst = o.wall().AppendFormat(dst, "20060102T150405")
	if r != nil {
		dst = append(dst, "\r\nRRULE:"...)
		dst = r.append(dst)
	}
	dst = append(dst, "\r\nTZOFFSETFROM:"...)
	dst = appendOffset(dst, o.before.offset)
	dst = append(dst, "\r\nTZOFFSETTO:"...)
	dst = appendOffset(dst, o.after.offset)
	dst = append(dst, "\r\nTZNAME:"...)
	dst = append(dst, o.after.name...)
	dst = append(dst, "\r\nEND:"...)
	dst = append(dst, kind...)
	return append(dst, "\r\n"...)
}

// appendOffset appends seconds east of UTC as +hhmm, with seconds only where
// there are some (RFC 5545, 3.3.14).
func appendOffset(dst []byte, s int) []byte {
	sign := byte('+')
	if s < 0 {
		sign, s = '-', -s
	}
	dst = append(dst, sign)
	dst = appendTwo(dst, s/3600)
	dst = appendTwo(dst, s/60%60)
	if s%60 != 0 {
		dst = appendTwo(dst, s%60)
	}
	return dst
}

func appendTwo(dst []byte, n int) []byte { return append(dst, byte('0'+n/10), byte('0'+n%10)) }
