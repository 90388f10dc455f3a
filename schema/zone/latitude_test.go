package zone

import (
	"strconv"
	"strings"
	"testing"
)

// Latitudes as any atlas has them, to the degree.
func TestLatitude(t *testing.T) {
	for name, want := range map[string]float64{
		"Australia/Sydney": -34, "NZ": -37, "Africa/Johannesburg": -26, "America/Argentina/Buenos_Aires": -35,
		"Europe/London": 52, "GB": 52, "America/Phoenix": 33, "US/Arizona": 33, "Asia/Singapore": 1, "Africa/Nairobi": -1,
	} {
		if got, ok := Latitude(name); !ok || got != want {
			t.Errorf("%s is at %v, %v; want %v", name, got, ok, want)
		}
	}
	for _, name := range []string{"UTC", "Etc/GMT+3", "nowhere"} {
		if got, ok := Latitude(name); ok {
			t.Errorf("%s is at %v, and is no place", name, got)
		}
	}
}

// Every zone that is a region and a city has a place, and nothing else has.
func TestLatitudesAreOfZones(t *testing.T) {
	known := map[string]bool{}
	for line := range strings.Lines(latitudes) {
		name, degrees, _ := strings.Cut(strings.TrimSpace(line), " ")
		if v, err := strconv.ParseFloat(degrees, 64); err != nil || v < -90 || v > 90 {
			t.Errorf("%q: %v", line, err)
		}
		known[name] = true
		if _, err := Load(name); err != nil {
			t.Error(err)
		}
	}
	for _, name := range Names() {
		if region, _, city := strings.Cut(name, "/"); city && region != "Etc" && !known[name] {
			t.Errorf("%s has no latitude", name)
		}
	}
}
