package compile_test

import (
	"fmt"
	"regexp"
	"slices"
	"strings"
	"testing"

	"vivary/compile/prove"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema"
)

// nonsense is what a figure that is not there leaves in a text.
var nonsense = regexp.MustCompile(`NaN|Inf\b|%!|<nil>|\b0 s\b|0001-01-01`)

// Every species lives through what a log can say of it, in every stage, without a text that
// means nothing: an animal alone, that feeds and refuses, moults, carries, lays, hatches,
// shuts itself in and dies.
func TestEverySpeciesLives(t *testing.T) {
	for _, name := range plan.NewLibrary().SpeciesNames() {
		for _, stage := range []string{"young", "juvenile", "subadult", "adult"} {
			text := setupHead + `enclosure "box" {
  species = "` + name + `"
  room    = "vault"
  housing {
    inside  = "60 x 45 x 45 cm"
    lid     = "solid, locked"
    vents   = "cross"
    depth   = "20 cm"
    hides   = 1
    perches = true
  }
  animals "one" {
    count  = "0.1"
    stage  = "` + stage + `"
    origin = "captive bred"
    paper  = "invoice 1"
  }
}
`
			log := "2026-08-01 box fed\n2026-08-20 box refused\n2026-09-01 box premoult\n2026-09-10 box moult\n2026-10-01 box fed\n"
			if stage == "adult" {
				log += "2026-10-05 box mated\n2026-11-20 box gravid\n2027-01-05 box laid 20\n2027-02-20 box hatched 12\n"
			} else {
				log += "2026-12-01 box sealed\n2027-02-20 box refused\n"
			}
			for _, f := range on(t, "2027-02-21", text, "").Findings {
				if slices.Contains(prove.Rules, f.Rule) {
					t.Errorf("%s, %s: what its sheet brings does not do: %s (%s)", name, stage, f.Text, f.Limit)
				}
			}
			for _, day := range []string{"2027-02-21", "2027-04-10", "2027-09-01"} {
				r := on(t, day, text, log)
				var all []string
				for _, f := range r.Findings {
					all = append(all, f.Text, f.Limit, f.Write, f.Source)
				}
				for _, l := range r.Lives {
					for _, g := range l.Groups {
						for _, x := range g.Tasks {
							all = append(all, x.Text)
						}
						for _, x := range g.Asks {
							all = append(all, x.Text, x.Said, x.Limit)
						}
						for _, x := range g.Holds {
							all = append(all, x.Why, x.End)
						}
					}
				}
				for _, s := range all {
					if found := nonsense.FindString(s); found != "" {
						t.Errorf("%s, %s, %s: %s in %q", name, stage, day, found, s)
					}
				}
				if v := r.Verdict(); v == "" || strings.Contains(v, fmt.Sprint(nil)) {
					t.Errorf("%s, %s, %s: verdict %q", name, stage, day, v)
				}
			}
		}
	}
}

// Every species in a room that is as its own sheet has the air is told nothing of heat above
// advice, and one of a warm surface is if nothing makes one. In a room that is some degrees
// cooler, with a mat as they are sold set to the warm spot of its sheet, nothing is refused.
func TestEverySpeciesIsWarm(t *testing.T) {
	library := plan.NewLibrary()
	for _, name := range library.SpeciesNames() {
		s := library.Species(name)
		air := s.Figure(schema.FigureAir, "")
		if air == nil {
			air = s.Figure(schema.FigureTemperatureTarget, "")
		}
		low, high := air.Range.Low+0.5, max(air.Range.Low+1.5, air.Range.High-1)
		room := func(low, high float64) string { return fmt.Sprintf("%.1f to %.1f C", low, high) }
		said := func(text string, least finding.Severity) (out []string) {
			for _, f := range on(t, "2027-03-02", text, "").Findings {
				if f.Severity >= least && slices.Contains(aboutHeat, f.Rule.ID) {
					out = append(out, f.Severity.String()+" "+f.Rule.ID+": "+f.Text+" ("+f.Limit+")")
				}
			}
			return out
		}
		alone := said(heated(name, room(low, high), "60 x 45 x 45 cm", " perches = true\n", ""), finding.Caution)
		if need := s.Figure(schema.FigureSpotNeeded, ""); need != nil && high < need.Range.Low {
			if len(alone) != 1 || !strings.HasPrefix(alone[0], "error unheated") {
				t.Errorf("%s without a warm surface at %s: %q", name, room(low, high), alone)
			}
		} else if len(alone) > 0 {
			t.Errorf("%s in a room of its own air, %s: %q", name, room(low, high), alone)
		}
		spot := s.Figure(schema.FigureWarmSpot, "")
		if spot == nil || spot.Range.Low < air.Range.Low+2 {
			continue
		}
		set := fmt.Sprintf(" thermostat = \"%.1f C\"\n", (spot.Range.Low+spot.Range.High)/2)
		place := device("mat", "20 W", "28 x 36 cm", "back", set)
		if s.Figure(schema.FigureSpotNeeded, "") != nil { // it lies on it
			place = device("lamp", "60 W", "", "above", " hours = \"12 h\"\n"+set)
		}
		if got := said(heated(name, room(air.Range.Low-2, air.Range.Low+2), "60 x 45 x 45 cm", " perches = true\n", place), finding.Error); len(got) > 0 {
			t.Errorf("%s with a mat at its warm spot in a room of %s: %q", name, room(air.Range.Low-2, air.Range.Low+2), got)
		}
	}
}
