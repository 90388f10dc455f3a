package compile_test

import (
	"slices"
	"strings"
	"testing"

	"vivary/compile/balance"
	"vivary/compile/life"
	"vivary/compile/rounds"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/quantity"
)

// What a gauge should show has no number that neither the plan nor the sheet has, lies
// within what the species bears, and is what the set-ups come to on an ordinary day: a round
// that cries wolf at each reading is read no more.
func TestGauges(t *testing.T) {
	for _, s := range setups(t) {
		r := on(t, "2027-03-02", setupHead+s.text, "")
		for _, l := range r.Lives {
			known := numbers(r.Plan, l.Plan)
			for _, g := range life.Gauges(r.Plan, l, r.Horizon) {
				if !g.Heat.Known || !g.Harm.Known || !g.Damp.Known {
					t.Errorf("%s: not known: %+v", s.species, g)
				}
				for _, v := range []float64{g.Heat.Low, g.Heat.High, g.Harm.Low, g.Harm.High, g.Damp.Low, g.Damp.High} {
					if !slices.Contains(known, v) {
						t.Errorf("%s: nobody wrote %g: %v", s.species, v, known)
					}
				}
				if !g.Harm.Encloses(g.Heat.Range) {
					t.Errorf("%s: %s is not within %s", s.species, g.Heat, g.Harm)
				}
			}
			g := life.Gauges(r.Plan, l, r.Horizon)[0]
			if x, ok := balance.Of(r.Plan, l.Plan, l); ok {
				if cold, warm := float64(x.Usual().Air.Low), float64(x.Usual().Spot.Likely); cold < g.Heat.Low-1.5 || warm > g.Heat.High+1 {
					t.Errorf("%s: it comes to %.1f to %.1f C, and should show %s", s.species, cold, warm, g.Heat)
				}
			}
		}
	}
}

// numbers are those of an enclosure's plan and of its sheet that say how warm and damp it is
// to be.
func numbers(c *plan.Collection, e *plan.Enclosure) (all []float64) {
	add := func(w plan.Written[quantity.Range]) {
		if w.Set() {
			all = append(all, w.V.Low, w.V.High)
		}
	}
	if k := e.Climate; k != nil {
		add(k.WarmEnd)
		add(k.CoolEnd)
		add(k.Night)
		add(k.Humidity)
		for _, h := range k.Heaters {
			all = append(all, c.Setting(h).V.Value)
		}
	}
	for _, what := range []*schema.Figure{schema.FigureTemperatureHard, schema.FigureTemperatureTarget, schema.FigureAir, schema.FigureNight, schema.FigureWinterRest, schema.FigureHumidityTarget} {
		if f := e.Sheet.Figure(what, ""); f != nil {
			all = append(all, f.Range.Low, f.Range.High)
		}
	}
	return all
}

// gauged is a house whose boxes should show different things.
const gauged = `
enclosure "ROOM-NAME" {
  species = "pandinus-imperator"
  room    = "east"
  housing {
    inside = "60 x 45 x 40 cm"
    lid    = "solid, latched"
    depth  = "16 cm"
    hides  = 1
  }
  animals "one" {
    count = 1
    stage = "adult"
  }
  climate {
    warm_end = "WARM"
    cool_end = "22 C"
    night    = "21 C"
    heater "mat" {
      power      = "25 W"
      size       = "28 x 43 cm"
      place      = "side"
      thermostat = "29 C"
    }
  }
SEASON}
`

func gaugedBox(name, warm, season string) string {
	return strings.NewReplacer("ROOM-NAME", name, "WARM", warm, "SEASON", season).Replace(gauged)
}

// evening returns the lines of the evening round on a day.
func eveningOf(t *testing.T, day, text string) string {
	t.Helper()
	r := on(t, day, setupHead+text, "")
	round := r.Roster.Rounds[0]
	s := rounds.New(r.Roster, round, r.Roster.Picks(round, "")).On(r.Horizon.Today)
	return strings.Join(s.Lines, "\n")
}

// Those that should show the same are told together, and what is done otherwise once; in one
// unit, whatever a box is written in.
func TestGaugesTogether(t *testing.T) {
	text := eveningOf(t, "2027-03-02", gaugedBox("tub-1", "28 C", "")+gaugedBox("tub-2", "28 C", "")+gaugedBox("tub-3", "29 C", "")+gaugedBox("tub-4", "84 F", ""))
	for _, want := range []string{
		"- All 4: read lowest and highest temperature, reset; should show:\n  21 to 28 C: Tub 1 and 2\n  21 to 29 C: Tub 3\n  21 to 28.8 C: Tub 4\n",
		"\n\nToo warm: probe in its place? Too cold: heater plugged in and warm? Harm outside 15 to 35 C. Above it: heater off at the plug. Below it: warm the room. Open no lid for it. Log it (measured).",
	} {
		if !strings.Contains(text, want) {
			t.Errorf("no %q in\n%s", want, text)
		}
	}
	alike := eveningOf(t, "2027-03-02", gaugedBox("tub-1", "28 C", "")+gaugedBox("tub-2", "28 C", ""))
	if want := "reset: should show 21 to 28 C"; !strings.Contains(alike, want) || strings.Contains(alike, "should show:") {
		t.Errorf("no %q in\n%s", want, alike)
	}
}

// What the plan does not say is the sheet's: of an emperor the air 22 to 28 C by day, the
// night 20 to 25 C, and harm outside 15 to 35 C.
func TestGaugesOfSheets(t *testing.T) {
	begin, end := strings.Index(gauged, "    warm_end"), strings.Index(gauged, "    heater")
	for climate, want := range map[string]string{
		"":                                "20 to 29 C",
		"    night = \"18 C\"\n":          "18 to 29 C",
		"    cool_end = \"18 to 23 C\"\n": "18 to 29 C",
		"    warm_end = \"31 C\"\n":       "20 to 31 C",
		"    warm_end = \"38 C\"\n":       "20 to 35 C",
		"    humidity = \"70 to 80 %\"\n": "20 to 29 C, air 70 to 80 %",
	} {
		text := eveningOf(t, "2027-03-02", strings.NewReplacer("ROOM-NAME", "box", "SEASON", "").Replace(gauged[:begin]+climate+gauged[end:]))
		if !strings.Contains(text, "should show "+want+"\n") {
			t.Errorf("%s: no %q in\n%s", climate, want, text)
		}
	}
	bare := gauged[:strings.Index(gauged, "  climate")] + "}\n"
	if text := eveningOf(t, "2027-03-02", strings.ReplaceAll(bare, "ROOM-NAME", "box")); !strings.Contains(text, "should show 20 to 28 C\n") || !strings.Contains(text, "\n\nToo warm: cool the room. Too cold: warm the room. Harm") {
		t.Error(text)
	}
}

// In a season it is what the season aims for, as far as the heat is set down by then.
func TestGaugesOfSeasons(t *testing.T) {
	const season = `  season "cooler" {
    from = "1 feb"
    to   = "30 apr"
    ramp = "2 C"
    climate {
      warm_end = "25 C"
      cool_end = "20 C"
      night    = "19 C"
    }
  }
`
	for day, want := range map[string]string{"2027-01-20": "21 to 29 C", "2027-03-20": "19 to 29 C", "2027-05-20": "21 to 29 C"} {
		if text := eveningOf(t, day, gaugedBox("box", "29 C", season)); !strings.Contains(text, "should show "+want+"\n") {
			t.Errorf("%s: no %q in\n%s", day, want, text)
		}
	}
	rest := strings.NewReplacer("pandinus-imperator", "hadrurus-arizonensis").Replace(gaugedBox("box", "29 C", strings.NewReplacer("cooler", "rest", "    ramp", "    heating = \"off\"\n    ramp", "25 C", "19 C", "20 C", "18 C", "19 C", "17 C").Replace(season)))
	for day, want := range map[string]string{"2027-02-01": " to 29 C", "2027-02-03": " to 27 C", "2027-02-12": " to 25 C", "2027-03-20": " to 19 C"} {
		text := eveningOf(t, day, rest)
		if !strings.Contains(text, want+"\n") {
			t.Errorf("%s: no %q in\n%s", day, want, text)
		}
		if off := strings.Contains(text, "Too warm: cool the room."); off != (want == " to 19 C") {
			t.Errorf("%s: what is done of a heater that is off:\n%s", day, text)
		}
	}
}
