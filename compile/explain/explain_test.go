package explain

import (
	"strings"
	"testing"
	"time"

	"github.com/spf13/afero"

	"vivary/compile"
	"vivary/plan"
	"vivary/schema/civil"
)

// quillmoor is the example as of a day, with a rack that still waits for boxes.
func quillmoor(t *testing.T) *compile.Result {
	t.Helper()
	disk := afero.NewCopyOnWriteFs(afero.NewOsFs(), afero.NewMemMapFs())
	if err := afero.WriteFile(disk, "../../examples/quillmoor/rack.care.hcl", []byte("rack \"spare\" {\n  room = \"east\"\n}\n"), 0o644); err != nil {
		t.Fatal(err)
	}
	c, found, err := plan.Load(disk, "../../examples/quillmoor")
	if err != nil {
		t.Fatal(err)
	}
	return compile.Compile(c, found, time.Date(2026, 11, 25, 12, 0, 0, 0, time.UTC))
}

// Whatever is listed is explained, under its own name and in words.
func TestListedIsExplained(t *testing.T) {
	r := quillmoor(t)
	for _, topic := range Topics {
		all := topic.list(r)
		if len(all) == 0 {
			t.Errorf("no %s are listed", topic.Name)
		}
		seen := map[string]bool{}
		for _, l := range all {
			if seen[l.Name] || l.Text == "" {
				t.Errorf("%s: %q is listed twice, or without words", topic.Name, l.Name)
			}
			seen[l.Name] = true
			answers := topic.of(r, l.Name)
			if len(answers) == 0 {
				t.Errorf("%s: %s is listed and not explained", topic.Name, l.Name)
			}
			for _, a := range answers {
				if !strings.Contains(a.Title, l.Name) || len(a.Parts) == 0 {
					t.Errorf("%s: %s is explained as %q", topic.Name, l.Name, a.Title)
				}
			}
		}
	}
}

// Without a plan that can be worked out everything that is known of animals is still
// explained, and nothing of the collection.
func TestBeforePlan(t *testing.T) {
	disk := afero.NewMemMapFs()
	if err := disk.MkdirAll("c", 0o755); err != nil {
		t.Fatal(err)
	}
	c, found, err := plan.Load(disk, "c")
	if err != nil {
		t.Fatal(err)
	}
	r := compile.Compile(c, found, time.Date(2026, 11, 25, 12, 0, 0, 0, time.UTC))
	for _, word := range []string{"water-gap", "water", "floor-first", "k4", "cricket", "pandinus-imperator", "mist"} {
		if len(Of(r, word)) == 0 {
			t.Errorf("%s is not explained", word)
		}
	}
	for _, word := range []string{"evening", "burrow-a", "burrow-a/look", ""} {
		if a := Of(r, word); len(a) > 0 {
			t.Errorf("%q is explained as %q", word, a[0].Title)
		}
	}
	if a := On(r, "burrow-a/look", civil.Must(2026, 11, 26)); len(a) > 0 {
		t.Errorf("a day is explained as %q", a[0].Title)
	}
}

// A word is known by its other spellings, and is never taken for an empty one.
func TestMeans(t *testing.T) {
	for _, x := range []struct {
		word, name string
		want       bool
	}{{"Burrow A", "burrow-a", true}, {"k4", "K4", true}, {"burrow", "burrow-a", false}, {"", "", false}} {
		if means(x.word, x.name) != x.want {
			t.Errorf("%q for %q: %v", x.word, x.name, !x.want)
		}
	}
}
