package feeds_test

import (
	"strings"
	"time"

	"vivary/internal/oracles"
	"vivary/schema/civil"
)

// yearsZones are zones of every kind: with a rule for ever to the north and to the south,
// without one, by half an hour and by quarters, with winter for the saving, at midnight,
// beside the date line, and without changes.
var yearsZones = []string{
	"Europe/London", "Europe/Dublin", "Europe/Berlin", "Europe/Chisinau", "Atlantic/Azores",
	"America/New_York", "America/Los_Angeles", "America/St_Johns", "America/Havana",
	"Australia/Sydney", "Australia/Adelaide", "Australia/Lord_Howe", "Pacific/Auckland", "Pacific/Chatham", "Pacific/Norfolk", "America/Asuncion",
	"Africa/Casablanca", "Africa/El_Aaiun", "America/Santiago", "Pacific/Easter", "America/Nuuk", "Asia/Jerusalem", "Asia/Gaza", "Africa/Cairo",
	"Asia/Beirut", "Antarctica/Troll",
	"Asia/Kolkata", "Asia/Kathmandu", "Pacific/Kiritimati", "Pacific/Marquesas", "Asia/Tokyo", "UTC",
}

// yearsPlan has in "alpha" what goes on for ever on days that are plain from the text,
// and in "dune" what a cool rest stops each winter.
func yearsPlan(zone string) string {
	return `
collection "years" {
  time_zone = "` + zone + `"
}
room "east" {
  temperature = "19 to 24 C"
  humidity    = "35 to 50 %"
}
keeper "lead" {
}
round "morning" {
  at     = "06:45"
  keeper = "lead"
}
round "evening" {
  at     = "19:30"
  keeper = "lead"
}
calendar "morning" {
  rounds = ["morning"]
}
calendar "evening" {
  rounds = ["evening"]
}
calendar "care" {
  enclosures = ["alpha"]
  kinds      = ["gut-load", "mist", "weigh", "feed", "leftovers"]
  entry      = "per care"
}
calendar "dune" {
  enclosures = ["dune"]
  kinds      = ["feed"]
  entry      = "per care"
}
` + sheet + box("alpha", `
  animals "one" {
    count = 1
    stage = "adult"
  }
  care "look" {
    every = "day"
    round = "morning"
  }
  care "mist" {
    every  = "9 days"
    from   = "2026-03-01"
    at     = "20:15"
    keeper = "lead"
  }
  care "gut-load" {
    every  = "2 days"
    from   = "2026-03-01"
    at     = "05:30"
    keeper = "lead"
  }
  care "weigh" {
    on     = ["last"]
    at     = "12:00"
    keeper = "lead"
  }
  feeding "one" {
    on         = ["fri"]
    round      = "evening"
    per_animal = 1
    prey       = "cricket adult"
  }
`) + `
enclosure "dune" {
  species = "hadrurus-arizonensis"
  room    = "east"
  housing {
    kind      = "glass"
    inside    = "45 x 30 x 40 cm"
    lid       = "part mesh, latched"
    gap       = "1.5 mm"
    vents     = "some"
    vents_at  = "top"
    substrate = "sand and clay, packed"
    moisture  = "damp below"
    depth     = "20 cm"
    hides     = 1
  }
  animals "mesa" {
    count   = "0.1.0"
    stage   = "adult"
    origin  = "captive bred"
    arrived = "2022-09-03"
  }
  climate {
    warm_end    = "29 to 31 C"
    cool_end    = "22 to 25 C"
    night       = "20 to 22 C"
    humidity    = "30 to 45 %"
    thermometer = true
    heater "ceramic" {
      power      = "75 W"
      place      = "above"
      thermostat = "30 C"
      guarded    = true
    }
  }
  season "cool rest" {
    from    = "15 nov"
    to      = "20 feb"
    ramp    = "4 C"
    feeding = "none"
    heating = "off"
    climate {
      warm_end = "19 to 20 C"
      cool_end = "19 to 20 C"
    }
  }
}
`
}

// doing is something that alpha needs for ever, at a time at which no zone changes its
// clocks, nor within an hour: there readers are of many minds.
type doing struct {
	title string // of its entry, as it begins
	at    civil.Clock
	on    func(civil.Date) bool
}

// yearsForever is what no animal, season or keeper can change: it goes on in each
// calendar that has it.
const yearsForever = "Feed the feeders"

var yearsDoings = []doing{
	{"Lid shut? ", 6*60 + 45, func(civil.Date) bool { return true }},
	{"Mist", 20*60 + 15, func(d civil.Date) bool { return (d-civil.Must(2026, 3, 1))%9 == 0 }},
	{yearsForever, 5*60 + 30, func(d civil.Date) bool { return (d-civil.Must(2026, 3, 1))%2 == 0 }},
	{"Weigh", 12 * 60, func(d civil.Date) bool { _, _, day := (d + 1).YMD(); return day == 1 }},
	{"Take out leftovers", 19*60 + 30, func(d civil.Date) bool { return d.Weekday() == time.Saturday }},
	{"Feed 1 adult cricket", 19*60 + 30, func(d civil.Date) bool { return d.Weekday() == time.Friday }},
}

// starts are the times in UTC at which it begins on the days from one until another, by
// the time package.
func (x doing) starts(loc *time.Location, from, until civil.Date) (out []string) {
	for d := from; d < until; d++ {
		if y, m, day := d.YMD(); x.on(d) {
			out = append(out, time.Date(y, m, day, 0, int(x.at), 0, 0, loc).UTC().Format("20060102T150405Z"))
		}
	}
	return out
}

// planned are the starts of what a calendar of alpha has, by title in one by care.
func (f yearsFeed) planned(from, until civil.Date) map[string][]string {
	out := map[string][]string{}
	for i, x := range yearsDoings {
		switch starts := x.starts(f.loc, from, until); {
		case f.name == "morning" && i == 0:
			out[""] = starts
		case f.name == "care" && i > 0:
			out[x.title] = starts
		}
	}
	return out
}

// shown are the starts of what a reader sees, by title in a calendar by care of alpha.
func (f yearsFeed) shown(seen []oracles.Occurrence, from, until civil.Date) map[string][]string {
	f.Helper()
	out := map[string][]string{}
	for _, o := range seen {
		if d := f.day(o.Start); len(o.Start) == 8 || d < from || d >= until {
			continue
		}
		title := ""
		for _, x := range yearsDoings {
			if f.name == "care" && strings.HasPrefix(o.Summary, x.title) {
				title = x.title
			}
		}
		out[title] = append(out[title], o.Start)
	}
	return out
}

// told are the days on which an entry says that something ends.
func (f yearsFeed) told(seen []oracles.Occurrence) (out []civil.Date) {
	for _, o := range seen {
		if len(o.Start) == 8 && strings.Contains(o.Summary, "ends here") {
			out = append(out, f.day(o.Start))
		}
	}
	return out
}

// day is the day on which something begins.
func (f yearsFeed) day(start string) civil.Date {
	at, err := time.Parse("20060102T150405Z"[:len(start)], start)
	if err != nil {
		f.Fatal(err)
	}
	if len(start) > 8 {
		at = at.In(f.loc)
	}
	return civil.FromTime(at)
}
