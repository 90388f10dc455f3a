package main

import (
	"fmt"
	"strings"
	"testing"
	"time"

	"github.com/spf13/afero"
)

// TestABuildSaysWhatIsTooLarge: of a calendar that is too large even for half a year the
// build says how many entries it has, as they stand in the file; of one that fits once it
// looks less far ahead it says nothing.
func TestABuildSaysWhatIsTooLarge(t *testing.T) {
	on := time.Date(2027, time.February, 15, 12, 0, 0, 0, time.UTC)
	for rounds, noisy := range map[int]bool{2: false, 4: false, 6: true} {
		var b strings.Builder
		b.WriteString("collection \"c\" {\n  time_zone = \"Europe/London\"\n}\nroom \"east\" {\n  temperature = \"22 to 25 C\"\n  humidity = \"50 to 60 %\"\n}\n")
		var names []string
		for i := range rounds {
			names = append(names, fmt.Sprintf("\"r-%d\"", i))
			fmt.Fprintf(&b, "round \"r-%d\" {\n  at = \"%02d:00\"\n}\n", i, 8+2*i)
		}
		fmt.Fprintf(&b, `enclosure "box-1" {
  species = "pandinus-imperator"
  room    = "east"
  housing {
    inside = "76 x 46 x 41 cm"
    lid    = "solid, latched"
    depth  = "16 cm"
    hides  = 4
  }
  animals "adults" {
    count = 3
    stage = "adult"
  }
  care "look" {
    every = "day"
    round = [%s]
  }
}
`, strings.Join(names, ", "))
		d := disk(t, map[string]string{"a.care.hcl": b.String()})
		status, out, errs := at(d, on, "build", "c")
		if status != fine {
			t.Fatalf("%d rounds: %s%s", rounds, out, errs)
		}
		feed, err := afero.ReadFile(d, "c/feeds/c.ics")
		if err != nil {
			t.Fatal(err)
		}
		want := fmt.Sprintf("has %d entries", strings.Count(string(feed), "BEGIN:VEVENT"))
		if strings.Contains(errs, "[calendar-noisy]") != noisy || noisy && !strings.Contains(strings.Join(strings.Fields(errs), " "), want) {
			t.Errorf("%d rounds, want %v, %s:\n%s", rounds, noisy, want, errs)
		}
	}
}
