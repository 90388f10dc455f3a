package zone

import (
	"fmt"
	"regexp"
	"strconv"
	"strings"
	"time"
)

// Offset is what a name is that means no place: a fixed distance from Greenwich, or the
// letters for the time that clocks show in a part of the year.
type Offset struct {
	Says  string   // what it is, as it goes on after the name
	Zones []string // of places whose clocks show that, at some time of the year
	// Fixed says that a zone of that name is in the database and never changes its clock,
	// though those who write it mostly live where clocks change.
	Fixed bool
}

// principal are zones of places where many people live, of each offset those of most first:
// what is offered to whoever wrote no zone. That they exist, and their offsets, is tested.
var principal = []string{
	"Europe/London", "Europe/Berlin", "America/New_York", "America/Chicago", "America/Los_Angeles", "Australia/Sydney",
	"Europe/Paris", "Europe/Madrid", "Europe/Rome", "Europe/Warsaw", "Europe/Dublin", "Europe/Lisbon", "Europe/Athens", "Europe/Helsinki", "Europe/Kyiv",
	"Europe/Istanbul", "Europe/Moscow", "America/Denver", "America/Phoenix", "America/Toronto", "America/Vancouver", "America/Halifax", "America/St_Johns",
	"America/Anchorage", "Pacific/Honolulu", "America/Mexico_City", "America/Bogota", "America/Lima", "America/Caracas", "America/Puerto_Rico", "America/Santiago",
	"America/Sao_Paulo", "America/Argentina/Buenos_Aires", "America/Nuuk", "Atlantic/Azores", "Atlantic/Cape_Verde", "Atlantic/Reykjavik", "Africa/Abidjan",
	"Africa/Lagos", "Africa/Johannesburg", "Africa/Cairo", "Africa/Nairobi", "Asia/Jerusalem", "Asia/Riyadh", "Asia/Tehran", "Asia/Dubai", "Asia/Kabul",
	"Asia/Karachi", "Asia/Kolkata", "Asia/Kathmandu", "Asia/Dhaka", "Asia/Yangon", "Asia/Bangkok", "Asia/Jakarta", "Asia/Shanghai", "Asia/Singapore", "Asia/Hong_Kong",
	"Asia/Manila", "Australia/Perth", "Asia/Tokyo", "Asia/Seoul", "Australia/Adelaide", "Australia/Darwin", "Australia/Melbourne", "Australia/Brisbane",
	"Pacific/Guam", "Pacific/Noumea", "Pacific/Auckland", "Pacific/Fiji", "Pacific/Tongatapu",
}

// letters are the abbreviations that people write for a time, and the places that may be
// meant. They are general usage: no standard holds them, and several stand for two.
var letters = []struct {
	names, says string
	zones       string
	fixed       bool
}{
	{"GMT GMT0 GMT+0 GMT-0 Greenwich Etc/GMT Etc/Greenwich Etc/GMT0", "what clocks in Britain show in winter only", "Europe/London Europe/Dublin Europe/Lisbon Atlantic/Reykjavik Africa/Abidjan", true},
	{"BST", "what clocks in Britain show in summer only", "Europe/London", false},
	{"UK Britain GB-UK England Scotland Wales", "a country, and its zone has the name of a city", "Europe/London", false},
	{"IST", "the letters for the time of India, of Israel and of Ireland in summer", "Asia/Kolkata Asia/Jerusalem Europe/Dublin", false},
	{"WET WEST", "what clocks in the west of Europe show", "Europe/Lisbon Atlantic/Canary", false},
	{"CET CEST MET MEST MEZ MESZ", "what clocks in the middle of Europe show", "Europe/Berlin Europe/Paris Europe/Madrid Europe/Rome Europe/Warsaw", false},
	{"EET EEST", "what clocks in the east of Europe show", "Europe/Athens Europe/Helsinki Europe/Kyiv Europe/Bucharest", false},
	{"MSK", "the time of Moscow", "Europe/Moscow", false},
	{"EST", "what clocks in the east of North America show in winter only, and in the east of Australia", "America/New_York America/Toronto America/Detroit America/Panama Australia/Sydney", true},
	{"EDT ET EST5EDT EST/EDT Eastern", "what clocks in the east of North America show", "America/New_York America/Toronto America/Detroit", false},
	{"CST", "the letters for the time of the middle of North America in winter, of China and of Cuba", "America/Chicago America/Winnipeg America/Mexico_City Asia/Shanghai America/Havana", false},
	{"CDT CT CST6CDT CST/CDT Central", "what clocks in the middle of North America show", "America/Chicago America/Winnipeg America/Mexico_City", false},
	{"MST", "what clocks in the mountains of North America show in winter only", "America/Denver America/Edmonton America/Phoenix", true},
	{"MDT MT MST7MDT MST/MDT Mountain", "what clocks in the mountains of North America show", "America/Denver America/Edmonton America/Phoenix", false},
	{"PST PDT PT PST8PDT PST/PDT Pacific", "what clocks in the west of North America show", "America/Los_Angeles America/Vancouver America/Tijuana", false},
	{"US USA America", "a country of several zones", "America/New_York America/Chicago America/Denver America/Phoenix America/Los_Angeles Pacific/Honolulu", false},
	{"AKST AKDT", "what clocks in Alaska show", "America/Anchorage", false},
	{"AST ADT", "the letters for the time of the Atlantic coast of Canada, of the Caribbean and of Arabia", "America/Halifax America/Puerto_Rico Asia/Riyadh", false},
	{"NST NDT", "what clocks in Newfoundland show", "America/St_Johns", false},
	{"BRT ART", "what clocks in Brazil or Argentina show", "America/Sao_Paulo America/Argentina/Buenos_Aires", false},
	{"WAT CAT SAST EAT", "what clocks in a part of Africa show", "Africa/Lagos Africa/Johannesburg Africa/Nairobi", false},
	{"PKT", "the time of Pakistan", "Asia/Karachi", false},
	{"ICT WIB", "what clocks in the south-east of Asia show", "Asia/Bangkok Asia/Jakarta", false},
	{"SGT HKT PHT", "what clocks in Singapore, Hong Kong or Manila show", "Asia/Singapore Asia/Hong_Kong Asia/Manila", false},
	{"JST KST", "what clocks in Japan or Korea show", "Asia/Tokyo Asia/Seoul", false},
	{"AWST", "what clocks in the west of Australia show", "Australia/Perth", false},
	{"ACST ACDT", "what clocks in the middle of Australia show", "Australia/Adelaide Australia/Darwin", false},
	{"AEST AEDT", "what clocks in the east of Australia show", "Australia/Sydney Australia/Melbourne Australia/Brisbane Australia/Hobart", false},
	{"NZST NZDT", "what clocks in New Zealand show", "Pacific/Auckland", false},
}

// NoPlace says what a name is that means no place, or returns nil. Some such names are in
// the database: whoever loads one is an hour wrong for half of the year where clocks
// change, or more, since the signs of Etc/GMT are turned round.
func NoPlace(written string) *Offset {
	name := strings.TrimSpace(written)
	for _, l := range letters {
		for _, n := range strings.Fields(l.names) {
			if strings.EqualFold(n, name) {
				return &Offset{Says: "it is " + l.says, Zones: strings.Fields(l.zones), Fixed: l.fixed}
			}
		}
	}
	minutes, turned, ok := offset(name)
	if !ok {
		return nil
	}
	o := &Offset{Zones: clocksAt(minutes), Fixed: true}
	o.Says = "it is " + ahead(minutes) + " on every day of the year, and most clocks change in spring and autumn"
	if turned {
		o.Says = "it is " + ahead(minutes) + ", since the signs of such names are turned round, on every day of the year"
	}
	return o
}

var offsetForm = regexp.MustCompile(`^(?i)(etc/)?(gmt|utc)?\s*([+−–-])\s*(\d{1,2})(?::?(\d{2}))?\s*h?$`)

// offset reads a distance from Greenwich in minutes, as people write it: GMT+1, UTC-05:30,
// +2. In Etc/GMT+1 the sign is that of POSIX, which counts the hours to the west.
func offset(name string) (minutes int, turned, ok bool) {
	m := offsetForm.FindStringSubmatch(name)
	if m == nil {
		return 0, false, false
	}
	hours, _ := strconv.Atoi(m[4])
	minutes, _ = strconv.Atoi(m[5])
	minutes += 60 * hours
	turned = m[1] != ""
	if (m[3] == "+") == turned {
		minutes = -minutes
	}
	return minutes, turned, minutes >= -14*60 && minutes <= 14*60
}

func ahead(minutes int) string {
	side := "ahead of"
	if minutes < 0 {
		side, minutes = "behind", -minutes
	}
	h := strconv.Itoa(minutes / 60)
	if m := minutes % 60; m > 0 {
		h += fmt.Sprintf(":%02d", m)
	}
	if h == "1" {
		return "one hour " + side + " Greenwich"
	}
	return h + " hours " + side + " Greenwich"
}

// clocksAt returns principal zones whose clocks are so far ahead in January or July, those
// first where that is the time of winter or of the whole year.
func clocksAt(minutes int) []string {
	var winter, summer []string
	for _, name := range principal {
		loc, err := Load(name)
		if err != nil {
			continue // the tests load each
		}
		a, b := at(loc, time.January), at(loc, time.July)
		switch minutes {
		case min(a, b):
			winter = append(winter, name)
		case max(a, b):
			summer = append(summer, name)
		}
	}
	const most = offered / 2
	if len(summer) > 0 && len(winter) > most {
		winter = winter[:most]
	}
	all := append(winter, summer...)
	return all[:min(offered, len(all))]
}
