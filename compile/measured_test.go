package compile_test

import (
	"strings"
	"testing"

	"vivary/compile"
	"vivary/compile/balance"
)

// A measurement in the log narrows what is reckoned, one that is outside of what the animal
// bears is urgent in the next round and refuses nothing, and the next that is within answers
// it. The spot at the heater is held against what a surface may have, not the air.
func TestMeasured(t *testing.T) {
	text := heated("pandinus-imperator", "20 to 24 C", "20 x 10 x 12 in", " moisture = \"damp\"\n", device("mat", "16 W", "25 x 28 cm", "back", " thermostat = \"30 C\"\n"))
	urgent := func(log string) (all []string) {
		r := on(t, "2027-03-02", text, log)
		if r.Refused() {
			t.Errorf("refused by %q", log)
		}
		for _, f := range r.Findings {
			if f.Severity.String() == "urgent" {
				all = append(all, f.Text)
			}
		}
		return all
	}
	for _, c := range []struct{ log, want string }{
		{"2027-03-01 box measured 29 C 75 %\n", ""},
		{"2027-03-01 box measured spot 30 C air 22 C room 20 C 78 %\n", ""},
		{"2027-03-01 box measured spot 30 C, air 22 C, room 20 C\n", ""},
		{"2027-03-01 box measured spot 37 C\n", ""},
		{"2027-03-01 box measured spot 41 C room 20 C\n", "41 C was measured on Mon 1 Mar 2027"},
		{"2027-03-01 box measured air 37 C room 20 C\n", "37 C was measured on Mon 1 Mar 2027"},
		{"2027-03-01 box measured room 12 C air 20 C\n", ""},
		{"2027-03-01 box measured 12 C\n", "12 C was measured on Mon 1 Mar 2027"},
		{"2027-02-27 box measured air 37 C\n2027-03-01 box measured air 23 C\n", ""},
		{"2027-02-27 box measured air 37 C\n2027-03-01 box measured spot 30 C\n", "37 C was measured on Sat 27 Feb 2027"},
	} {
		if got := strings.Join(urgent(c.log), "; "); !strings.Contains(got, c.want) || (c.want == "") != (got == "") {
			t.Errorf("%s%q, want %q", c.log, got, c.want)
		}
	}

	zones := func(log string) *balance.Report {
		r := on(t, "2027-03-02", text, log)
		b, ok := balance.Of(r.Plan, r.Lives[0].Plan, r.Lives[0])
		if !ok {
			t.Fatal("nothing is reckoned")
		}
		return b
	}
	none, cold := zones(""), zones("2027-02-20 box measured spot 27 C air 20.5 C room 19 C power 16 W\n2027-02-24 box measured spot 28 C air 21.4 C room 20 C power 16 W\n")
	if cold.Readings != 2 || none.Belief != nil {
		t.Errorf("%d readings, and %v without one", cold.Readings, none.Belief)
	}
	if a, b := none.Stuck().Spot, cold.Stuck().Spot; b.High-b.Low >= a.High-a.Low || b.Likely >= a.Likely {
		t.Errorf("two measurements of a weak mat leave %v of %v", b, a)
	}
	if r := on(t, "2027-03-02", text, "2027-02-24 box measured spot 24 C air 21 C room 20 C power 16 W\n"); worst(r, "measured-odd") == "" || r.Refused() {
		t.Error("a mat at full power that warms its glass by 4 C is not asked about")
	}

	// What the plan says was measured is held against the same limits; without the room it
	// says nothing of the heat, and a day ahead is asked about.
	for measured, want := range map[string]string{
		"spot = \"30 C\"\n air = \"22 C\"\n room = \"20 C\"\n": "",
		"spot = \"60 C\"\n":                  "measured-harmful urgent",
		"air = \"45 C\"\n room = \"20 C\"\n": "measured-harmful urgent",
		"spot = \"30 C\"\n":                  "measured-odd advice",
		"humidity = \"20 %\"\n":              "measured-harmful urgent",
		"on = \"2029-01-01\"\n spot = \"30 C\"\n room = \"20 C\"\n": "measured-odd caution",
		"spot = \"22 C\"\n room = \"20 C\"\n power = \"16 W\"\n":    "measured-odd caution",
	} {
		r := on(t, "2027-03-02", strings.Replace(text, " heater", " measured {\n "+measured+" }\n heater", 1), "")
		rule, severity, _ := strings.Cut(want, " ")
		for _, id := range []string{"measured-harmful", "measured-odd"} {
			if got := worst(r, id); id == rule && got != severity || id != rule && rule == "" && got != "" {
				t.Errorf("%s%s %q, want %q", measured, id, got, want)
			}
		}
		if r.Refused() {
			t.Errorf("refused by %s", measured)
		}
	}
	// The room as it was measured is held against the room as it is said to be.
	if r := on(t, "2027-03-02", text, "2027-02-24 box measured room 12 C\n"); worst(r, "measured-odd") != "caution" {
		t.Error("a room of 12 C that is said to be at 20 to 24 C is not asked about")
	}
}

// The limit that is named is the one that decided, in the plan and in the log: the surface
// that is needed below it, the surface's own limit above it, the air's for the air.
func TestMeasuredAgainstWhat(t *testing.T) {
	text := heated("eublepharis-macularius", "20 to 24 C", "90 x 45 x 45 cm", " moisture = \"dry\"\n", device("lamp", "60 W", "", "above", " hours = \"12 h\"\n thermostat = \"32 C\"\n"))
	for _, c := range []struct{ plan, log, want string }{
		{"spot = \"25 C\"\n room = \"22 C\"\n", "spot 25 C room 22 C", "spot-needed"},
		{"spot = \"49 C\"\n room = \"22 C\"\n", "spot 49 C room 22 C", "surface-max"},
		{"air = \"45 C\"\n room = \"22 C\"\n", "air 45 C room 22 C", "temperature-hard"},
	} {
		inPlan := on(t, "2027-03-02", strings.Replace(text, " heater", " measured {\n "+c.plan+" }\n heater", 1), "")
		inLog := on(t, "2027-03-02", text, "2027-03-01 box measured "+c.log+"\n")
		for _, r := range []*compile.Result{inPlan, inLog} {
			var got []string
			for _, f := range r.Findings {
				if f.Rule.ID != "measured-odd" && strings.Contains(f.Text, "was measured") {
					got = append(got, f.Limit)
				}
			}
			if len(got) != 1 || !strings.Contains(got[0], c.want) {
				t.Errorf("%s: the limits named are %q, want one of %s", c.log, got, c.want)
			}
		}
	}
}

// Of a heater that is of no known kind nothing is reckoned: what is said is that it is not
// one, and nothing of a mat that it is not.
func TestNoKindOfHeater(t *testing.T) {
	lamp := heated("eublepharis-macularius", "20 to 24 C", "90 x 45 x 45 cm", " moisture = \"dry\"\n", device("lamp", "60 W", "", "above", " hours = \"12 h\"\n thermostat = \"32 C\"\n"))
	for _, kind := range []string{"lapm", "rock"} {
		r := on(t, "2027-03-02", strings.Replace(lamp, "heater \"lamp\"", "heater \""+kind+"\"", 1), "")
		if !r.Refused() {
			t.Errorf("%s is not refused", kind)
		}
		for _, f := range r.Findings {
			if strings.Contains(f.Text, "mat ") {
				t.Errorf("%s: %s", kind, f.Text)
			}
		}
		for _, id := range []string{"heat-short", "heat-lost", "measured-odd", "stuck-hot", "too-warm"} {
			if got := worst(r, id); got != "" {
				t.Errorf("%s: %s %s", kind, id, got)
			}
		}
	}
}
