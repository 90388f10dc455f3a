package feeds_test

import (
	"testing"
	"time"

	"vivary/compile"
	"vivary/compile/feeds"
	"vivary/compile/ical"
	"vivary/compile/roster"
	"vivary/internal/planned"
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
