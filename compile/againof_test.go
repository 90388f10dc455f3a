package compile_test

import (
	"strings"
	"testing"
	"time"

	"github.com/spf13/afero"

	"vivary/compile"
	"vivary/plan"
	"vivary/schema/civil"
	"vivary/schema/zone"
)

// TestAgainOfASpecies: what is said once of a species is said by the next enclosure of it
// where the first one goes, and what a sheet of the collection's own says of another species is
// known to enclosures in which nothing was changed.
func TestAgainOfASpecies(t *testing.T) {
	box := func(name string) string {
		return "enclosure \"" + name + `" {
  species = "centruroides-vittatus"
  housing {
    inside    = "40 x 30 x 30 cm"
    lid       = "solid, latched"
    vents     = "cross"
    substrate = "sand"
    depth     = "5 cm"
    hides     = 2
  }
  animals "one" {
    count  = 1
    stage  = "adult"
    origin = "captive bred"
  }
}
`
	}
	house := "collection \"c\" {\n  time_zone = \"Europe/London\"\n}\nroom \"east\" {\n  temperature = \"24 to 27 C\"\n  humidity = \"40 to 60 %\"\n}\nround \"evening\" {\n  at = \"19:30\"\n}\n"
	own := "species \"centruroides-vittatus\" {\n  like = \"centruroides-vittatus\"\n  mistaken = [\"bark scorpion of our own\"]\n}\n"
	disk := afero.NewMemMapFs()
	var reader plan.Reader
	var last *compile.Result
	now := civil.Must(2027, 3, 1).At(12*60, loadZone(t, "Europe/London"))
	for step, files := range []map[string]string{
		{"a": box("ash"), "b": box("birch"), "house": house},
		{"b": box("birch"), "house": house},
		{"a": box("ash"), "b": box("birch"), "house": house},
		{"a": box("ash"), "b": box("birch"), "house": house, "own": own},
		{"a": box("ash"), "b": box("birch"), "house": house},
	} {
		for _, name := range []string{"a", "b", "house", "own"} {
			_ = disk.Remove("c/" + name + ".care.hcl")
			if text, there := files[name]; there {
				if err := afero.WriteFile(disk, "c/"+name+".care.hcl", []byte(text), 0o644); err != nil {
					t.Fatal(err)
				}
			}
		}
		c, found, err := reader.Load(disk, "c")
		if err != nil {
			t.Fatal(err)
		}
		again := compile.From(compile.Input{Plan: c, Loaded: found, Now: now, Last: last})
		last = again
		c, found, err = plan.Load(disk, "c")
		if err != nil {
			t.Fatal(err)
		}
		if got, want := told(again), told(compile.Compile(c, found, now)); got != want {
			t.Errorf("step %d: again\n%s\nfresh\n%s", step, got, want)
		}
		if !strings.Contains(told(again), "look-alike") {
			t.Errorf("step %d: no look-alike is told of", step)
		}
	}
}

func loadZone(t *testing.T, name string) *time.Location {
	t.Helper()
	loc, err := zone.Load(name)
	if err != nil {
		t.Fatal(err)
	}
	return loc
}
