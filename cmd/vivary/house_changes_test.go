package main

import (
	"regexp"
	"strings"

	"vivary/schema/civil"
)

// changes holds what a subscriber relies on between two builds: an entry is changed only
// if it says something else, says so if it does, and entries of days that are over stay.
func (j *judge) changes(is map[string][]byte) {
	for name, before := range j.last {
		was, now := entries(before), entries(is[name])
		for id, old := range was {
			e, there := now[id]
			switch {
			case !there:
				if name == "rounds" && j.over(old) {
					j.wrong("an entry of a day that is over is gone", nil, j.w.Today, old)
				}
			case e == old:
			case content(e) == content(old):
				j.wrong("an entry changed, and says the same", nil, j.w.Today, old+"\n"+e)
			case sequence(e) == sequence(old):
				j.wrong("an entry says something else, and did not change its number", nil, j.w.Today, old+"\n"+e)
			case name == "rounds" && j.over(old):
				j.wrong("an entry of a day that is over was changed", nil, j.w.Today, old+"\n"+e)
			}
		}
	}
}

// over reports whether an entry is of the days before today, and not of long ago: those
// of the last month stay.
func (j *judge) over(entry string) bool {
	m := dated.FindStringSubmatch(entry)
	if m == nil || strings.Contains(entry, "RRULE") || strings.Contains(entry, "VALUE=DATE") {
		return false
	}
	return m[1] < compact(j.w.Today) && m[1] > compact(j.w.Today-25)
}

func compact(d civil.Date) string { return strings.ReplaceAll(d.String(), "-", "") }

var (
	dated   = regexp.MustCompile(`(?m)^DTSTART[^:]*:(\d{8})`)
	counted = regexp.MustCompile(`(?m)^SEQUENCE:(\d+)`)
)

// content is what an entry says.
func content(e string) string {
	var out strings.Builder
	for line := range strings.Lines(e) {
		switch name, _, _ := strings.Cut(line, ":"); name {
		case "DTSTAMP", "LAST-MODIFIED", "SEQUENCE":
		default:
			out.WriteString(line)
		}
	}
	return out.String()
}

func sequence(e string) string {
	if m := counted.FindStringSubmatch(e); m != nil {
		return m[1]
	}
	return ""
}

// entries are the entries of a feed by UID, with lines put together (RFC 5545, 3.1).
func entries(feed []byte) map[string]string {
	out := map[string]string{}
	text := strings.ReplaceAll(strings.ReplaceAll(string(feed), "\r\n ", ""), "\r\n", "\n")
	for _, e := range strings.Split(text, "BEGIN:VEVENT\n")[1:] {
		e, _, _ = strings.Cut(e, "END:VEVENT\n")
		_, id, _ := strings.Cut(e, "UID:")
		id, _, _ = strings.Cut(id, "\n")
		out[id] = e
	}
	return out
}
