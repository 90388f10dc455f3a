package balance

import (
	"encoding/csv"
	"math"
	"os"
	"strconv"
	"testing"

	"vivary/compile/climate"
)

// tank is an enclosure of the handbook's cases, in a room of 21 °C.
func tank(in climate.Box, v climate.Ventilation, depth climate.Metre, h climate.Heater) *Report {
	h.Thermostat, h.Setting = true, 30
	return &Report{Heaters: []climate.Heater{h}, Box: climate.Enclosure{Inside: in, Ventilation: v,
		Substrate: climate.Substrate{Soil: climate.Coir, Moisture: climate.MoistBelow, Depth: depth},
		Room:      climate.Room{Low: 21, High: 21, RHLow: 45, RHHigh: 45}}}
}

// What is needed to hold 30 °C is the part of the time for which the handbook's heater is on,
// of its power; a weaker one of the same size in the same place needs just as much.
func TestNeededHoldsTheHandbook(t *testing.T) {
	f, err := os.Open("../climate/testdata/heat-checks.csv")
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	rows, err := csv.NewReader(f).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	ten, sixty := climate.Box{Length: 0.508, Width: 0.254, Height: 0.305}, climate.Box{Length: 0.60, Width: 0.45, Height: 0.40}
	cases := map[string]func(climate.Watt) *Report{
		"duty30-g10-8": func(p climate.Watt) *Report {
			return tank(ten, climate.LooseLid, 0.10, climate.Heater{Power: p * 8, Area: 0.04})
		},
		"duty30-g10-16": func(p climate.Watt) *Report {
			return tank(ten, climate.LooseLid, 0.10, climate.Heater{Power: p * 16, Area: 0.071})
		},
		"duty30-g60-25": func(p climate.Watt) *Report {
			return tank(sixty, climate.SmallVents, 0.12, climate.Heater{Power: p * 25, Area: 0.12})
		},
		"duty30-g60-45": func(p climate.Watt) *Report {
			return tank(sixty, climate.SmallVents, 0.12, climate.Heater{Power: p * 45, Area: 0.18})
		},
	}
	seen := 0
	for _, row := range rows {
		of := cases[row[0]]
		if of == nil {
			continue
		}
		seen++
		need, ok := of(1).Needed()
		if !ok {
			t.Fatalf("%s: not known", row[0])
		}
		for k, got := range []climate.Watt{need.Low, need.Likely, need.High} {
			duty, err := strconv.ParseFloat(row[3+k], 64)
			if err != nil {
				t.Fatal(err)
			}
			if want := duty * float64(of(1).Heaters[0].Power); math.Abs(float64(got)-want) > 0.06*want {
				t.Errorf("%s: %.2f W, the handbook has %.2f", row[0], got, want)
			}
		}
		if weak, ok := of(0.25).Needed(); !ok || math.Abs(float64(weak.Likely-need.Likely)) > 0.03*float64(need.Likely) {
			t.Errorf("%s: a quarter of the power needs %v, not %v", row[0], weak, need)
		}
	}
	if seen != len(cases) {
		t.Errorf("%d cases in the file", seen)
	}
}

// Nothing is said where it is not known.
func TestNeededIsNotKnown(t *testing.T) {
	r := tank(climate.Box{Length: 0.5, Width: 0.3, Height: 0.3}, climate.LooseLid, 0.1, climate.Heater{Power: 8, Area: 0.04})
	r.Heaters[0].Thermostat = false
	if x, ok := r.Needed(); ok {
		t.Errorf("without a thermostat: %v", x)
	}
	r.Heaters[0].Thermostat = true
	r.Heaters = append(r.Heaters, r.Heaters[0])
	if x, ok := r.Needed(); ok {
		t.Errorf("of two: %v", x)
	}
	if x, ok := (&Report{}).Needed(); ok {
		t.Errorf("of none: %v", x)
	}
}
