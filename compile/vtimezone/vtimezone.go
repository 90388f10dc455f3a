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

const (
	// maxLines is how long a component may be: from about 200 lines on Google was seen
	// to garble a calendar (github.com/eoleedi/TimeTree-Exporter, issue 157).
	maxLines = 179
	// frame is how many lines stand round the onsets.
	frame = 4
	// early is how many years before that of the last day that is needed are not given
	// up for the length.
	early = 3
)

// Append appends the VTIMEZONE of the zone called name to dst. Its lines end in
// CRLF and are shorter than 75 octets, so they need no folding.
//
// Where the zone keeps one rule the component is two sub-components with a
// yearly RRULE and right for ever from the local date from. Where its changes
// do not fall on the nth weekday of a month (Africa/Casablanca, America/Santiago,
// Asia/Jerusalem) each has its own sub-component, but for a half that does: that is
// one with a rule. RDATE would be shorter, but ical.js 2.2.1 then ignores DTSTART and all
// but the first date of a line. BYDAY with BYMONTHDAY could say "the Sunday
// after the first Saturday", but Exchange and Outlook take only one of the two
// (MS-OXCICAL, 2.1.3.1.1.19.2.2).
//
// Such a component reaches through until and one change beyond, and on to ahead, since
// nobody may build it anew: whole years less where it would be too long. What is too long
// even so begins later than from, but early years before that of until at the latest.
//
// The text depends on the dates and the zone's data alone. The error is that
// of an unknown zone, or says that the dates are out of order or before 1970.
func Append(dst []byte, name string, from, until, ahead civil.Date) ([]byte, error) {
	loc, err := zone.Load(name)
	if err != nil {
		return dst, err
	}
	if until < from || from < 0 {
		return dst, fmt.Errorf("a time zone from %s until %s: the first date must be in 1970 or later and not after the last", from, until)
	}
	parts := fitting(loc, from, until, ahead)
	dst = append(dst, "BEGIN:VTIMEZONE\r\nTZID:"...)
	dst = append(dst, name...)
	dst = append(dst, "\r\nX-LIC-LOCATION:"...)
	dst = append(dst, name...)
	dst = append(dst, "\r\n"...)
	for i := range parts {
		dst = parts[i].append(dst)
	}
	return append(dst, "END:VTIMEZONE\r\n"...), nil
}

// fitting returns the parts that reach as far as they may.
func fitting(loc *time.Location, from, until, ahead civil.Date) []part {
	parts, ever := between(loc, from, until)
	year := func(d civil.Date) int { y, _, _ := d.YMD(); return y }
	for last := ahead; !ever && last > until; last = civil.Must(year(last)-1, time.December, 31) {
		if further, _ := between(loc, from, last); lines(further) <= maxLines {
			return further
		}
	}
	for first := year(from) + 1; lines(parts) > maxLines && first <= year(until)-early; first++ {
		parts, _ = between(loc, civil.Must(first, time.January, 1), until)
	}
	return parts
}

// part is a STANDARD or, with saving, a DAYLIGHT sub-component. Without a rule its
// onset happens once.
type part struct {
	onset
	saving bool
	rule   *yearly
}

// between returns the parts for some days, and whether they are right for ever.
func between(loc *time.Location, from, until civil.Date) (parts []part, ever bool) {
	// Local days begin at most 14 hours before, and end at most 12 hours after,
	// the days of UTC.
	begin, end := midnight(from).Add(-14*time.Hour), midnight(until+1).Add(12*time.Hour)
	all := onsets(loc, begin, end.AddDate(cycle+1, 0, 0))
	var ruled [2]bool // of every other onset, whether a rule says all to come
	for i, o := range all {
		if ruled[0] && ruled[1] {
			break
		}
		if !ruled[i%2] {
			// Time that never changes again is standard time, whatever it was before.
			p := part{o, o.daylight() && len(all) > 1, nil}
			if rule, ok := fit(all[i:]); ok {
				p.rule, ruled[i%2] = &rule, true
			}
			parts = append(parts, p)
		}
		if o.at.After(end) && !ruled[i%2] && i+1 < len(all) {
			return parts, false
		}
	}
	return parts, true
}

// lines counts the lines of a component.
func lines(parts []part) int {
	n := frame
	for i := range parts {
		if n += 6; parts[i].rule != nil {
			n++
		}
	}
	return n
}

func midnight(d civil.Date) time.Time {
	y, m, day := d.YMD()
	return time.Date(y, m, day, 0, 0, 0, 0, time.UTC)
}

func (p *part) append(dst []byte) []byte {
	kind := "STANDARD"
	if p.saving {
		kind = "DAYLIGHT"
	}
	dst = append(dst, "BEGIN:"...)
	dst = append(dst, kind...)
	dst = append(dst, "\r\nDTSTART:"...)
	dst = p.wall().AppendFormat(dst, "20060102T150405")
	if p.rule != nil {
		dst = append(dst, "\r\nRRULE:"...)
		dst = p.rule.append(dst)
	}
	dst = append(dst, "\r\nTZOFFSETFROM:"...)
	dst = appendOffset(dst, p.before.offset)
	dst = append(dst, "\r\nTZOFFSETTO:"...)
	dst = appendOffset(dst, p.after.offset)
	dst = append(dst, "\r\nTZNAME:"...)
	dst = append(dst, p.after.name...)
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
