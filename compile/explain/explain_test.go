package explain

import (
	"fmt"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/spf13/afero"

	"vivary/compile"
	"vivary/plan"
	"vivary/schema/civil"
)

// house are dates of a house and its feeder animals.
const house = `
keeper "weekend" {
}
rota "free-weekends" {
  turn "weekend" {
    on = ["sat"]
  }
}

deadline "dwa-licence" {
  kind   = "licence"
  by     = "2028-02-28"
  keeper = "lead"
}

deadline "rcd" {
  kind = "rcd-test"
  last = "2026-03-01"
}

deadline "some-day" {
  does = "paint the door"
}

seller "fen" {
  delivers = ["tue to fri"]
}

supply "crickets" {
  prey   = "cricket adult"
  seller = "fen"
  packs  = [25]
}

tub "roaches" {
  prey    = "roach medium"
  count   = 40
  counted = "2026-11-20"
}

culture "flies" {
  prey = "fruit-fly melanogaster"
}
`

// quillmoor is the example as of a day, with a rack that still waits for boxes.
func quillmoor(t *testing.T) *compile.Result {
	t.Helper()
	disk := afero.NewCopyOnWriteFs(afero.NewOsFs(), afero.NewMemMapFs())
	if err := afero.WriteFile(disk, "../../examples/quillmoor/rack.care.hcl", []byte("rack \"spare\" {\n  room = \"east\"\n}\n"+numbers+house), 0o644); err != nil {
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

// numbers are some enclosures in one block.
const numbers = `enclosure "crate" {
  numbers = "1 to 3"
  species = "heterometrus-silenus"
  room    = "east"

  housing {
    kind   = "tub"
    inside = "40 x 30 x 32 cm"
    lid    = "solid, latched"
    vents  = "some"
    depth  = "15 cm"
  }

  animals "one" {
    count = 1
    stage = "adult"
  }

  number "2"      { stage = "subadult" }
  number "2 to 3" { depth = "16 cm" }
}
`

// One of several enclosures with numbers says where it is written and what only some have;
// the name of the block says which there are.
func TestNumbersAreExplained(t *testing.T) {
	r := quillmoor(t)
	lines := func(word string) (out []string) {
		for _, a := range Of(r, word) {
			out = append(out, a.Title)
			for _, p := range a.Parts {
				if p.Head == "Where it is written" || p.Head == "What only some of them have" {
					for _, l := range p.Lines {
						out = append(out, l.Name+" "+l.Text)
					}
				}
			}
		}
		return out
	}
	const file = "../../examples/quillmoor/rack.care.hcl"
	for word, want := range map[string][]string{
		"crate-1": {"Enclosure crate-1: Crate 1, Vietnam forest scorpion, in East room", " one of 3 enclosures with numbers, enclosure \"crate\" (" + file + ":4)"},
		"crate-2": {"Enclosure crate-2: Crate 2, Vietnam forest scorpion, in East room", " one of 3 enclosures with numbers, enclosure \"crate\" (" + file + ":4)",
			"number 2 stage = \"subadult\" (" + file + ":22)", "number 2 to 3 depth = \"16 cm\" (" + file + ":23)"},
		"crate": {"Enclosures crate: 3 enclosures with numbers (" + file + ":4)", "number 2 stage = \"subadult\" (" + file + ":22)", "number 2 to 3 depth = \"16 cm\" (" + file + ":23)"},
	} {
		if got := lines(word); !slices.Equal(got, want) {
			t.Errorf("%s:\n%s", word, strings.Join(got, "\n"))
		}
	}
}

// What there is to say of a rule is said here and nowhere else: its page has a line of it.
func TestRulesAreTold(t *testing.T) {
	for _, r := range compile.Rules() {
		all := explainRule(nil, r.ID)
		if len(all) == 0 {
			t.Fatalf("%s is not explained", r.ID)
		}
		said := fmt.Sprint(all)
		e := compile.Example(r.ID)
		for _, want := range []string{r.Severity.String(), r.Title, r.Why, r.Instead, r.Source, r.Silence.String(), e.Words, e.Found.Shown(), e.NotFound.Shown()} {
			if !strings.Contains(said, want) {
				t.Errorf("why %s does not say %q", r.ID, want)
			}
		}
	}
}
