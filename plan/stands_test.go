package plan

import (
	"fmt"
	"strings"
	"testing"

	"github.com/spf13/afero"
)

// TestStandsAfterTooMuch: an enclosure at which was not looked, since so much was wrong before
// it, is looked at once that is put right.
func TestStandsAfterTooMuch(t *testing.T) {
	box := func(name, round string) string {
		return fmt.Sprintf("enclosure %q {\n  species = \"pandinus-imperator\"\n  room = \"east\"\n  round = [%q]\n  housing {\n    inside = \"60 x 40 x 40 cm\"\n    lid = \"solid, latched\"\n  }\n  animals \"a\" {\n    count = 1\n  }\n}\n", name, round)
	}
	house := "collection \"c\" {\n  time_zone = \"Europe/London\"\n}\nroom \"east\" {\n  temperature = \"20 C\"\n}\nround \"evening\" {\n  at = \"19:30\"\n}\n"
	var wrong, right strings.Builder
	for i := range MaxFound + 20 {
		wrong.WriteString(box(fmt.Sprintf("box-%03d", i), "nowhere"))
		right.WriteString(box(fmt.Sprintf("box-%03d", i), "evening"))
	}
	disk := afero.NewMemMapFs()
	write := func(name, text string) {
		if err := afero.WriteFile(disk, "c/"+name+PlanSuffix, []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	write("house", house)
	write("last", box("z", "nowhere-either"))
	var r Reader
	for _, text := range []string{wrong.String(), right.String()} {
		write("boxes", text)
		_, again, err := r.Load(disk, "c")
		if err != nil {
			t.Fatal(err)
		}
		_, fresh, _ := Load(disk, "c")
		if len(again) != len(fresh) {
			t.Fatalf("%d findings, fresh %d: %v", len(again), len(fresh), fresh[len(fresh)-1].Text)
		}
	}
}
