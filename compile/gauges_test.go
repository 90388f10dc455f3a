package compile_test

import (
	"math"
	"slices"
	"strings"
	"testing"

	"vivary/compile"
	"vivary/compile/measure"
	"vivary/plan/finding"
)

const gaugeHouse = `collection "c" {
  time_zone = "Europe/London"
}
room "east" {
  temperature = "20 to 24 C"
  gauge "wall" {}
}
rack "shelf" {
  room = "east"
  gauge "clip" {}
}
template "tub" {
  species = "pandinus-imperator"
  rack    = "shelf"
  housing {
    kind      = "glass"
    inside    = "60 x 45 x 40 cm"
    lid       = "solid, latched"
    substrate = "coir and topsoil"
    depth     = "15 cm"
    hides     = 2
  }
  animals "one" {
    count = 1
    stage = "adult"
  }
  climate {
    humidity = "75 to 85 %"
    gauge "disc" {
      test "bought" {
        on       = "2026-10-01"
        at       = "22 C"
        salt     = "NaCl"
        humidity = "74 %"
      }
    }
  }
}
enclosure "tub-1" { template = "tub" }
enclosure "tub-2" { template = "tub" }
`

func gaugeFindings(r *compile.Result) (all []finding.Finding) {
	for _, f := range r.Findings {
		if strings.HasPrefix(f.Rule.ID, "gauge-") || strings.HasPrefix(f.Rule.ID, "log-") {
			all = append(all, f)
		}
	}
	return all
}

// A test is noted where all else is noted. It is of the gauge of that tub alone, the newest of a
// kind holds, and what is corrected and what is found are one.
func TestGaugesTestedByTheLog(t *testing.T) {
	const log = "2026-11-20 east tested 22 C shows 22.4 C\n" +
		"2026-11-20 shelf tested clip table salt 22 C 72.4 %\n" +
		"2026-11-21 tub-2 tested disc salt 22 C 60 % \"\"\n" + // no salt of that name: it is taken for a word too many
		"2026-11-22 tub-2 tested disc NaCl 71.6 F 66 %\n"
	r := on(t, "2026-11-25", gaugeHouse, log)
	tested := func(place string) *measure.Tested {
		t.Helper()
		gauges := r.Plan.GaugesAt(place)
		if len(gauges) != 1 {
			t.Fatalf("%s has %d gauges", place, len(gauges))
		}
		return measure.TestedOf(r.Plan.Tests(place, gauges[0]), r.Today)
	}
	near := func(what string, got, want float64) {
		t.Helper()
		if math.Abs(got-want) > 0.02 {
			t.Errorf("%s: %.3f, want %.3f", what, got, want)
		}
	}
	near("the room's thermometer", tested("east").Heat(20), 19.6)
	near("the rack's, with 75.41 % over the salt at 22 C", tested("shelf").Damp(72.4), 75.41)
	near("the first tub's, by its block", tested("tub-1").Damp(74), 75.41)
	near("the second tub's, by the log", tested("tub-2").Damp(66), 75.41)
	off := 0
	for _, f := range gaugeFindings(r) {
		switch {
		case f.Rule.ID == "gauge-off":
			off++
			if f.In.Name != "tub-2" || !strings.Contains(f.Text, "9.4 % of humidity, over one salt") {
				t.Errorf("%s: %s", f.In.Name, f.Text)
			}
		case f.Rule.ID == "log-line" && strings.Contains(f.Text, "it is not clear what \"salt\" is"):
		default:
			t.Errorf("found too: %s: %s", f.Rule.ID, f.Text)
		}
	}
	if off != 1 {
		t.Errorf("%d gauges are off", off)
	}
	back := on(t, "2026-11-25", gaugeHouse, log+"2026-11-23 tub-2 withdrawn tested\n2026-11-23 east withdrawn tested\n")
	if slices.ContainsFunc(back.Findings, func(f finding.Finding) bool { return f.Rule.ID == "gauge-off" }) {
		t.Error("a test that was taken back still counts")
	}
	if n := len(back.Plan.Tests("east", back.Plan.GaugesAt("east")[0])); n != 0 {
		t.Errorf("%d tests of the room's gauge stand", n)
	}
}

// What cannot be is told with its place, and refuses nothing; nor does time that passes.
func TestGaugeTestsThatCannotBe(t *testing.T) {
	for line, want := range map[string]string{
		"2026-11-20 tub-1 tested":                            "the temperature there is missing",
		"2026-11-20 tub-1 tested NaCl 22 C":                  "what the gauge showed over the salt is missing",
		"2026-11-20 tub-1 tested 22 C 71 %":                  "over which salt it lay is missing",
		"2026-11-20 tub-1 tested 22 C":                       "what the gauge showed is missing",
		"2026-11-20 tub-1 tested NaCl 22 C 171 %":            "not clear what",
		"2026-11-20 tub-1 tested NaCl 80 C 71 %":             "what the salt holds is known from 0 to 50 C",
		"2026-11-20 tub-1 tested dial NaCl 22 C 71 %":        "has no gauge \"dial\"",
		"2026-11-20 tub-1 tested NaCl MgCl2 22 C 71 %":       "not clear what",
		"2026-11-20 tub-1 tested NaCl 22 C 71 % 72 %":        "not clear what",
		"2026-10-01 tub-1 tested NaCl 22 C 40 %":             "in another test of that day",
		"2026-11-20 tub-1 tested MgCl2 22 C 70 %":            "nearly the same over both salts",
		"2026-11-20 east tested 22 C 22.5 C":                 "",
		"2026-11-20 east tested 22 C 22.5 C 23 C":            "not clear what",
		"2026-11-20 shelf tested dial NaCl 22 C 71 %":        "has no gauge \"dial\"",
		"2026-11-20 tub-1 one tested disc NaCl 22 C 90 %":    "off by 14.6 %",
		"2026-11-20 tub-1 tested disc 22 C shows 24 C":       "off by 2 K",
		"2026-11-20 tub-1 tested disc MgCl2 22 C 0 %":        "off by 33 % of humidity",
		"2026-11-20 tub-1 tested disc NaCl 22 C shows 71 % ": "",
	} {
		r := on(t, "2026-11-25", gaugeHouse, line+"\n")
		var texts []string
		for _, f := range gaugeFindings(r) {
			if f.Rule.ID != "gauge-untested" {
				texts = append(texts, f.Text)
			}
		}
		if all := strings.Join(texts, "\n"); want == "" && all != "" || !strings.Contains(all, want) {
			t.Errorf("%s: %q, want %q", line, all, want)
		}
		if r.Refused() {
			t.Errorf("%s refuses the plan", line)
		}
	}
	for _, day := range []string{"2026-11-25", "2027-10-02", "2031-01-01"} {
		r := on(t, day, gaugeHouse, "")
		n := 0
		for _, f := range gaugeFindings(r) {
			n++
			if f.Severity != finding.Advice || f.Rule.ID != "gauge-untested" {
				t.Errorf("%s: %s %s", day, f.Rule.ID, f.Text)
			}
		}
		if n != 1 {
			t.Errorf("%s: the untested gauges are spoken of %d times", day, n)
		}
	}
}
