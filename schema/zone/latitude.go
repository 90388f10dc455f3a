package zone

import (
	_ "embed"
	"strconv"
	"strings"
	"sync"
)

// latitudes.txt has the latitude of each zone's principal place, in whole degrees,
// south of the equator below zero. It is made from the coordinates in zone.tab and
// zone1970.tab of the tz database, release 2025b, older names by its links; both are
// in the public domain. Zones that are no place, such as UTC, are not in it.
//
//go:embed latitudes.txt
var latitudes string

// places is the table, read on first use.
var places = sync.OnceValue(func() map[string]float64 {
	out := make(map[string]float64)
	for line := range strings.Lines(latitudes) {
		name, degrees, _ := strings.Cut(strings.TrimSpace(line), " ")
		out[name], _ = strconv.ParseFloat(degrees, 64) // the tests read each line
	}
	return out
})

// Latitude returns the latitude of a zone's principal place in degrees, south of the
// equator below zero; false for a zone that is no place.
func Latitude(name string) (float64, bool) {
	v, ok := places()[name]
	return v, ok
}
