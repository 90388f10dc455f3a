package explain_test

import (
	"strings"
	"testing"
	"time"

	"vivary/compile"
	"vivary/compile/explain"
	"vivary/internal/planned"
)

// TestTakes says of each care how long it takes and who says so: the plan before the house's
// own log, and that before common practice. Rounds, and the days of the people, are as long.
func TestTakes(t *testing.T) {
	const house = `collection "c" {
  time_zone = "Europe/London"
}

room "r" {
  temperature = "22 to 25 C"
}

keeper "lead" { budget = "60 min" }

round "evening" {
  at     = "19:30"
  keeper = "lead"
  start  = "10 min"
  within = "60 min"
}

enclosure "tub" {
  species = "grammostola-pulchra"
  room    = "r"
  numbers = "1 to 2"

  housing {
    inside = "40 x 30 x 30 cm"
    lid    = "solid, latched"
    vents  = "some"
    depth  = "12 cm"
    hides  = 1
  }

  animals "one" {
    count  = 1
    stage  = "adult"
    origin = "captive bred"
  }

  care "water" { every = "2 days" }

  care "deep-clean" {
    every   = "6 months"
    minutes = "52 min"
  }
}
`
	const log = `2026-11-01 tub-1 done water 3 min
2026-11-03 tub-1 done water 4 min
2026-11-05 tub-1 done water 8 min
2026-11-06 tub-1 done deep-clean 20 min
2026-11-07 tub-1 done deep-clean 20 min
2026-11-08 tub-1 done deep-clean 20 min
`
	c, found := planned.Sound(t, planned.With(house, log))
	r := compile.Compile(c, found, time.Date(2026, 11, 25, 9, 0, 0, 0, time.UTC))
	for word, want := range map[string]string{
		"tub-1/water":      "It takes about 4 minutes: the median of 3 lines of the log about tub-1",
		"tub-2/water":      "It takes about 1 minute (common practice, no source)",
		"tub-1/deep-clean": "It takes about 52 minutes, as is written there",
	} {
		all := explain.Of(r, word)
		var text strings.Builder
		for _, a := range all {
			for _, p := range a.Parts {
				for _, l := range p.Lines {
					text.WriteString(l.Text + "\n")
				}
			}
		}
		if !strings.Contains(text.String(), want+"\n") {
			t.Errorf("%s is explained by\n%swithout %q", word, text.String(), want)
		}
	}
	work, x := r.Roster.Work(), r.Plan.Rounds[0]
	for d := r.Horizon.Today; d < r.Horizon.Days; d++ {
		if a, b := work["lead"][d], r.Minutes(x)[d]; a != b {
			t.Fatalf("on %s lead works %d min, and the only round takes %d", r.Horizon.Date(d), a, b)
		}
	}
	c, found = planned.Sound(t, planned.With(strings.Replace(house, "  start  = \"10 min\"\n", "", 1), log))
	before := compile.Compile(c, found, r.Now).Roster.Work()["lead"]
	for d := r.Horizon.Today; d < r.Horizon.Days; d++ {
		if before[d] > 0 && work["lead"][d] != before[d]+10 {
			t.Fatalf("on %s lead works %d min with 10 to begin, and %d without", r.Horizon.Date(d), work["lead"][d], before[d])
		}
	}
}
