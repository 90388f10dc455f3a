package check_test

import (
	"strings"
	"testing"
)

// desert is a collection with an adult of a desert species and a season of its own.
func desert(collection, season string) string {
	return "collection \"c\" {\n  quarantine = \"60 days\"\n" + collection + "\n}\nroom \"cellar\" {\n  temperature = \"14 to 24 C\"\n}\nenclosure \"desert\" {\n  species = \"hadrurus-arizonensis\"\n  housing {\n    inside = \"40 x 30 x 40 cm\"\n    lid = \"solid, latched\"\n  }\n" +
		"  animals \"one\" {\n    count = 1\n    stage = \"adult\"\n  }\n  season \"rest\" {\n" + season + "\n    feeding = \"none\"\n    climate {\n      warm_end = \"14 to 16 C\"\n    }\n  }\n}\n"
}

// A rest belongs into the local winter: November to February north of the tropics, June to
// August south of them (common practice, no source). Where the place is near the equator,
// or is no place, nobody says what summer is.
func TestRestInYourSummer(t *testing.T) {
	const winter, summer = "    from = \"1 nov\"\n    to = \"28 feb\"", "    from = \"1 jun\"\n    to = \"31 aug\""
	for _, c := range []struct {
		collection, season string
		found              bool
	}{
		{`time_zone = "Australia/Sydney"`, winter, true},
		{`time_zone = "Australia/Sydney"`, summer, false},
		{`time_zone = "Europe/London"`, winter, false},
		{`time_zone = "Europe/London"`, summer, true},
		{`time_zone = "Africa/Nairobi"`, winter, false},
		{`time_zone = "Africa/Nairobi"`, summer, false},
		{`time_zone = "UTC"`, summer, false},
		{"time_zone = \"UTC\"\n  hemisphere = \"south\"", winter, true},
		{"time_zone = \"Europe/London\"\n  hemisphere = \"south\"", winter, true},
		{"time_zone = \"Australia/Sydney\"\n  hemisphere = \"north\"", winter, false},
	} {
		found := of(compiled(t, desert(c.collection, c.season)), "rest-summer")
		if len(found) > 0 != c.found || c.found && !strings.Contains(found[0].Text, "your summer") {
			t.Errorf("%s, %s: found %v", c.collection, strings.Fields(c.season)[2], found)
		}
	}
}
