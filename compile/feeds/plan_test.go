package feeds_test

import (
	"slices"
	"strings"
	"testing"
	"time"

	"vivary/compile"
	"vivary/compile/feeds"
	"vivary/compile/ical"
	"vivary/compile/life"
	"vivary/compile/roster"
	"vivary/compile/rounds"
	"vivary/internal/oracles"
	"vivary/internal/planned"
	"vivary/schema"
	"vivary/schema/civil"
)

// today begins a year of 366 days with both clock changes of either hemisphere.
var today = civil.Must(2027, time.February, 15)

// sheet is a species without care of its own, so that a plan has only the care
// that stands in it.
const sheet = `
species "fixture" {
  title = "fixture"
  stage "juvenile" {
    instars = "4 to 5"
  }
  stage "adult" {
    instars = "6"
  }
  figure "moults-as-adult" {
    value   = "false"
    source  = ["fixture"]
    because = "fixture of this test"
    review  = "2040-01-01"
  }
  figure "gestation" {
    value   = "200 to 300 days"
    source  = ["fixture"]
    because = "fixture of this test"
    review  = "2040-01-01"
  }
}
`

// box returns an enclosure block with housing and the given rest.
func box(name, rest string) string {
	return "enclosure \"" + name + "\" {\n  species = \"fixture\"\n  housing {\n    kind   = \"glass\"\n    inside = \"60 x 40 x 40 cm\"\n    lid    = \"solid, latched\"\n  }\n" + rest + "}\n"
}

// everyKind is a collection with every way of saying when something is done. The
// care of one keeper is covered on visits in July and by nobody at the end of
// October, when clocks change; the other is never away.
func everyKind(zone string) string {
	return `
collection "fixtures" {
  time_zone = "` + zone + `"
}
room "east" {
  temperature = "21 to 24 C"
}
keeper "lead" {
}
keeper "relief" {
}
keeper "steady" {
}
round "morning" {
  at     = "08:00"
  keeper = "steady"
}
round "evening" {
  at     = "19:30"
  keeper = "lead"
  within = "45 min"
}
round "twice-weekly" {
  at     = "21:00"
  keeper = "steady"
  on     = ["mon", "thu"]
}
away "lead" {
  from   = "2027-07-10"
  to     = "2027-07-24"
  cover  = "relief"
  visits = ["tue", "sat"]
}
away "lead" {
  from = "2027-10-28"
  to   = "2027-11-09"
}
calendar "all" {
  remind = "10 min"
}
calendar "evening" {
  rounds = ["evening", "twice-weekly"]
}
calendar "care" {
  entry = "per care"
}
calendar "relief" {
  entry   = "per care"
  keepers = ["relief"]
}
` + sheet + box("alpha", `
  animals "only" {
    count = 3
    stage = "juvenile"
  }
  care "look" {
    every = "day"
  }
  care "mist" {
    every  = "day"
    at     = ["08:00", "18:15"]
    keeper = "steady"
  }
  care "water" {
    every  = "2 days"
    round  = "morning"
    from   = "2027-03-01"
    until  = "2027-11-30"
  }
  care "heat" {
    every  = "3 days"
    round  = ["morning", "evening"]
  }
  care "moisture" {
    cron   = "15 7,17 * * 1-5"
    keeper = "steady"
  }
  care "dish" {
    cron   = "45 6 1,15 * *"
    keeper = "steady"
  }
  care "count" {
    cron   = "0 12 13 * 5"
    keeper = "steady"
  }
  care "weigh" {
    on    = ["last"]
    round = "morning"
  }
  care "spot-clean" {
    on    = ["first sun"]
    round = "morning"
  }
  care "handle" {
    on     = ["tue", "fri"]
    every  = "2 weeks"
    round  = "morning"
  }
  care "calibrate" {
    on    = ["31st"]
    round = "morning"
  }
  care "device-test" {
    every = "2 months"
    from  = "2026-12-31"
    round = "morning"
  }
  care "leaves" {
    on    = ["29 feb", "1 apr"]
    round = "morning"
  }
  care "pair" {
    on    = ["5th"]
    every = "1 year"
    round = "morning"
  }
  feeding "only" {
    on         = ["tue", "fri"]
    round      = "morning"
    per_animal = 2
    rotate     = ["cricket adult", "roach medium", "cricket adult"]
    gut_load   = true
  }
  season "rest" {
    from    = "1 mar"
    to      = "20 apr"
    feeding = "half"
  }
`) + box("beta", `
  animals "one" {
    count = 1
    stage = "juvenile"
  }
  animals "mother" {
    count = "0.1.0"
    stage = "adult"
  }
  care "water" {
    after_last = "3 days"
    round      = "twice-weekly"
    window     = "2 days"
  }
  care "deep-clean" {
    every = "5 weeks"
    round = "morning"
  }
  feeding "one" {
    every      = "5 days"
    per_animal = 1
    prey       = "cricket small"
    round      = "evening"
    leftovers  = "2 days"
  }
  feeding "mother" {
    every      = "1 month"
    per_animal = 1
    prey       = "cricket small"
    killed     = true
    round      = "morning"
  }
`)
}

// everyState is a log of that collection: a moult behind us, one ahead, a mating.
const everyState = `2027-02-10 alpha moult
2027-02-12 beta one premoult
2027-02-14 beta done water
`

// compiled compiles a plan and a log as of noon of a day. A plan that cannot be
// read, or a schedule that is refused, fails the test.
func compiled(t testing.TB, text, log string, on civil.Date) *compile.Result {
	t.Helper()
	c, found := planned.Sound(t, planned.With(text, log))
	r := compile.Compile(c, found, on.At(12*60, c.Location))
	for _, f := range r.Roster.Findings {
		if f.Severity.Refuses() {
			t.Fatalf("%s: %s (%s)", f.Rule.ID, f.Text, f.Write)
		}
	}
	return r
}

// built returns the feed of that name and its bytes.
func built(t testing.TB, r *compile.Result, name string, last *ical.Memory) []byte {
	t.Helper()
	for _, f := range feeds.Of(r) {
		if f.Name == name {
			b, err := f.Bytes(last)
			if err != nil {
				t.Fatal(err)
			}
			return b
		}
	}
	t.Fatalf("no calendar %q", name)
	return nil
}

// remembered reads a feed back.
func remembered(t testing.TB, feed []byte) *ical.Memory {
	t.Helper()
	m, err := ical.Remember(feed)
	if err != nil {
		t.Fatal(err)
	}
	return m
}

// expect returns what a calendar must show: per round, or per care of one keeper
// or of all.
func expect(t *testing.T, r *compile.Result, feed int, calendar, keeper string) *expected {
	x := &expected{T: t, r: r, feed: feed, calendar: calendar, passed: map[*life.Enclosure]bool{}}
	switch calendar {
	case "all":
		x.perRound("evening", "twice-weekly", "morning", "at-06:45", "at-07:15", "at-12:00", "at-17:15", "at-18:15")
	case "evening":
		x.perRound("evening", "twice-weekly")
	default:
		x.perCare(keeper)
	}
	x.bands()
	x.leaves(keeper)
	oracles.Sort(x.list)
	return x
}

// expected lists what a calendar of a collection must show on the days for which
// it is made: from the days of the schedule's series, with the time package for
// zones. The calendar's own entries are not looked at.
type expected struct {
	*testing.T
	r        *compile.Result
	feed     int
	calendar string
	list     []oracles.Occurrence
	passed   map[*life.Enclosure]bool // enclosures with something to do in this calendar
}

func (x *expected) uid(parts ...string) string {
	return ical.UID(append([]string{x.r.Plan.About.Name.V, x.calendar}, parts...)...)
}

// add adds an occurrence of so many minutes.
func (x *expected) add(uid string, d civil.Date, at civil.Clock, minutes int, summary string) {
	y, m, day := d.YMD()
	utc := func(minute int) string {
		return time.Date(y, m, day, 0, minute, 0, 0, x.r.Plan.Location).UTC().Format("20060102T150405Z")
	}
	x.list = append(x.list, oracles.Occurrence{Feed: x.feed, UID: uid, Start: utc(int(at)), End: utc(int(at) + minutes), Summary: summary})
}

// allDay adds a band, if it begins while the calendar runs.
func (x *expected) allDay(uid string, from, until civil.Date, summary string) {
	if from >= today && from <= today+feeds.Days {
		x.list = append(x.list, oracles.Occurrence{Feed: x.feed, UID: uid, Start: strings.ReplaceAll(from.String(), "-", ""), End: strings.ReplaceAll(until.String(), "-", ""), Summary: summary})
	}
}

// perRound lists the days of the rounds of those names.
func (x *expected) perRound(names ...string) {
	for _, r := range x.r.Roster.Rounds {
		if !slices.Contains(names, r.Name.V) {
			continue
		}
		var picks []roster.Pick
		on := x.r.Horizon.New()
		for s := range x.r.Roster.All() {
			if s.Round == r {
				x.passed[s.Life] = true
				picks = append(picks, roster.Pick{Entry: s, Days: s.Days})
				on.Union(s.Days)
			}
		}
		sheet := rounds.New(x.r.Roster, r, picks)
		minutes := 60
		if r.Within.Set() {
			minutes = int(r.Within.V.Value)
		}
		for i := on.Next(x.r.Horizon.Today); i >= 0 && i < x.r.Horizon.Today+feeds.Days; i = on.Next(i + 1) {
			d := x.r.Horizon.Date(i)
			x.add(x.uid("round", r.Name.V, d.String()), d, r.Clock.V, minutes, string(sheet.Summary(nil, i)))
		}
	}
	x.allDay(x.uid("end"), today+feeds.Days, today+feeds.Days+1, "This calendar ends here")
}

// perCare lists each day of each series that one of the keepers does; all of them
// where none is named.
func (x *expected) perCare(keeper string) {
	for s := range x.r.Roster.All() {
		for k := s.Days.Next(x.r.Horizon.Today); k >= 0 && k < x.r.Horizon.Today+feeds.Days; k = s.Days.Next(k + 1) {
			if keeper != "" {
				if who, there := x.r.Roster.People.Doer(s.Keeper, k); !there || who != keeper {
					continue
				}
			}
			x.passed[s.Life] = true
			d := x.r.Horizon.Date(k)
			part := d.String()
			if keeper == "" && !s.Moved && len(s.Rules) == 1 {
				for n, rule := range s.Rules[0].Series() {
					if rule.Contains(d) {
						part = [...]string{"", "b", "c", "d", "e", "f", "g", "h", "i", "j", "k", "l"}[n]
					}
				}
			}
			if own := rounds.OwnDays(s); own != nil && own.Has(k) {
				part = d.String()
			}
			task := rounds.TaskOf(s)
			if p := s.Portion(k); p != nil && s.Kind == schema.KindFeed && (part == d.String() || len(s.Menu) == 1) {
				task.Prey = rounds.PreyOf(x.r.Roster, s, p)
				task.Prey.Killed = task.Prey.Killed || s.Killed != nil && s.Killed.Has(k)
			}
			if fill := rounds.FillUps(s); fill != nil && fill.Has(k) {
				task = rounds.FillUp(x.r.Roster, s, k)
			}
			if m := s.Manner(k); m != nil {
				task.In(m)
			}
			summary := task.Sentence() + ": " + rounds.Target(s)
			x.add(x.uid("care", s.ID.String(), part), d, s.At(), max(s.Minutes, 5), summary)
		}
	}
}

func (x *expected) bands() {
	for _, l := range x.r.Lives {
		for _, g := range l.Groups {
			for _, w := range g.Windows {
				if !x.passed[l] {
					continue
				}
				name := l.Plan.Shown()
				if len(l.Groups) > 1 {
					name += " " + g.Animals.Name.V
				}
				until, title := w.Until, w.Title
				if until-w.From > 14 { // a long one is short at its beginning
					until, title = w.From+1, w.Title+" until "+(until-1).Short()
				}
				x.allDay(x.uid("band", l.Plan.Name.V, g.Animals.Name.V, w.Name), w.From, until, title+": "+name)
			}
		}
	}
}

// leaves lists the absences: the days away for everybody, what they mean to one
// keeper only for that keeper.
func (x *expected) leaves(keeper string) {
	for _, l := range x.r.Roster.Leaves() {
		if l.For == keeper {
			x.allDay(x.uid("leave", l.Name), l.From, l.From+civil.Date(l.Days), l.Title)
		}
	}
}

// find returns the series of that name.
func find(t testing.TB, r *compile.Result, enclosure, name string) *roster.Entry {
	t.Helper()
	for s := range r.Roster.All() {
		if s.Life.Plan.Name.V == enclosure && s.Name == name {
			return s
		}
	}
	t.Fatalf("no series %s/%s", enclosure, name)
	return nil
}
