package plan

import (
	"fmt"
	"strings"
	"testing"
)

// A round is named in four places, and each says where there is none of that name. Up
// to twelve names are listed, more are not.
func TestUnknownRounds(t *testing.T) {
	for known, want := range map[int]string{12: "one of: r1, ", 13: "define it"} {
		var text strings.Builder
		text.WriteString("collection \"c\" {\n  time_zone = \"Etc/UTC\"\n}\n")
		for i := range known {
			fmt.Fprintf(&text, "round \"r%d\" {\n  at = \"08:%02d\"\n}\n", i+1, i)
		}
		text.WriteString(`
calendar "all" {
  rounds = ["of-calendar"]
}
enclosure "tub" {
  species = "pandinus-imperator"
  round   = "of-enclosure"
  animals "adults" {
    count = 1
    stage = "adult"
  }
  feeding "adults" {
    every     = "7 days"
    round     = "of-feeding"
    offer     = "cricket"
  }
  care "water" {
    every = "day"
    round = "of-care"
  }
}
`)
		_, found := load(t, map[string]string{"a.care.hcl": text.String()})
		for _, place := range []string{"calendar", "enclosure", "feeding", "care"} {
			said := ""
			for _, f := range found {
				if strings.Contains(f.Text, `there is no round "of-`+place+`"`) {
					said = f.Write
				}
			}
			if !strings.HasPrefix(said, want) {
				t.Errorf("of %d rounds and an unknown one in a %s: %q", known, place, said)
			}
		}
	}
}
