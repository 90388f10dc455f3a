package compile_test

import (
	"os"
	"regexp"
	"slices"
	"strings"
	"testing"

	"vivary/compile"
	"vivary/plan/finding"
	"vivary/schema/civil"
)

// whenHead is the building of the plans in testdata/when.txt, and tubOf what stands in their
// enclosures in place of a line TUB.
const (
	whenHead = `collection "house" {
  time_zone  = "Europe/London"
  quarantine = "60 days"
}
keeper "lead" {
  phone   = "on the door"
  trained = "hairs, breeding, feeding"
}
keeper "ana" {
  phone   = "on the door"
  trained = "hairs, breeding, feeding"
}
`
	tubOf = `  species = "tliltocatl-albopilosus"
  housing {
    kind      = "tub"
    inside    = "35 x 30 x 22 cm"
    lid       = "solid, latched"
    vents     = "cross"
    substrate = "coir and topsoil"
    moisture  = "damp below"
    depth     = "16 cm"
    hides     = 1
  }
  animals "one" {
    count  = 1
    stage  = "subadult"
    origin = "captive bred"
    paper  = "own brood"
  }
`
	roomOf = `room "room" {
  temperature = "23 to 26 C"
  humidity    = "50 to 65 %"
`
)

var (
	saidForm = regexp.MustCompile(`^# (danger|error|caution|advice): ([a-z-]+)$`)
	doneForm = regexp.MustCompile(`^# ([0-9-]{10}): ([a-z0-9/-]+) (in .+|not)$`)
)

// Plans in which keepers say when something is done, and in which of their rounds: those of
// good practice pass without a word, and have the days that were meant; what was not meant
// is found.
func TestWhen(t *testing.T) {
	text, err := os.ReadFile("testdata/when.txt")
	if err != nil {
		t.Fatal(err)
	}
	cases := strings.Split("\n"+string(text), "\n== ")[1:]
	if len(cases) < 40 {
		t.Errorf("%d plans", len(cases))
	}
	for _, c := range cases {
		name, body, _ := strings.Cut(c, "\n")
		t.Run(name, func(t *testing.T) {
			body := strings.NewReplacer("  TUB\n", tubOf, "ROOM\n", roomOf).Replace(body)
			if !strings.Contains(body, "room \"room\" {") {
				body = roomOf + "}\n" + body
			}
			r := on(t, "2027-03-01", whenHead+body, "")
			var want []string
			for line := range strings.Lines(body) {
				line = strings.TrimSpace(line)
				if m := saidForm.FindStringSubmatch(line); m != nil {
					want = append(want, m[1]+" "+m[2])
				} else if m := doneForm.FindStringSubmatch(line); m != nil {
					if got := doneIn(r, m[2], m[1]); got != m[3] {
						t.Errorf("%s on %s is done %s, want %s", m[2], m[1], got, m[3])
					}
				} else if strings.HasPrefix(line, "#") {
					t.Errorf("not understood: %s", line)
				}
			}
			var got []string
			for _, f := range r.Findings {
				got = append(got, f.Severity.String()+" "+f.Rule.ID)
				if len(want) == 0 && f.Severity > finding.Advice {
					t.Errorf("%s %s: %s (%s; %s)", f.Severity, f.Rule.ID, f.Text, f.Limit, f.Write)
				}
			}
			for _, w := range want {
				if !slices.Contains(got, w) {
					t.Errorf("no %s in %v", w, got)
				}
			}
			if len(want) == 0 && len(got) > 1 {
				t.Errorf("a good plan gets %v", got)
			}
		})
	}
}

// doneIn says in which rounds a care is done on a day, "in evening", or "not".
func doneIn(r *compile.Result, care, day string) string {
	on, err := civil.Parse(day)
	if err != nil {
		return err.Error()
	}
	box, name, _ := strings.Cut(care, "/")
	i, _ := r.Horizon.Index(on)
	var in []string
	for k, l := range r.Roster.Lives {
		for j := range r.Roster.Of[k] {
			if e := &r.Roster.Of[k][j]; l.Plan.Name.V == box && strings.ReplaceAll(e.Name, " ", "-") == name && e.Days.Has(i) {
				in = append(in, e.Round.Name.V)
			}
		}
	}
	if len(in) == 0 {
		return "not"
	}
	slices.Sort(in)
	return "in " + strings.Join(in, " and ")
}
