package compile_test

import (
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"vivary/compile"
	"vivary/plan"
	"vivary/plan/finding"
)

// setup is what stands in testdata/setups of one species: an enclosure that a keeper of it
// would set up, and the mistakes that are typical for it.
type setup struct {
	at, species, text string
	wrong             []slip
}

// slip is one mistake: what is written instead of something, and the finding it gets.
type slip struct{ old, new, rule, severity string }

// blanks are how a plan is aligned.
var blanks = regexp.MustCompile(` +`)

var slipForm = regexp.MustCompile(`^# wrong: (.+) => (.*): ([a-z-]+) (danger|error|caution|advice)$`)

// setups reads the files of testdata/setups. A line "== name" begins a species; a line
// "# wrong: old => new: rule severity" says one mistake.
func setups(t *testing.T) (all []setup) {
	t.Helper()
	files, err := filepath.Glob("testdata/setups/*.txt")
	if err != nil || len(files) == 0 {
		t.Fatal("no set-ups", err)
	}
	for _, file := range files {
		text, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		for _, part := range strings.Split("\n"+string(text), "\n== ")[1:] {
			name, body, _ := strings.Cut(part, "\n")
			body = blanks.ReplaceAllString(body, " ")
			s := setup{at: filepath.Base(file) + ", " + name, species: name, text: body}
			for line := range strings.Lines(body) {
				m := slipForm.FindStringSubmatch(strings.TrimSpace(line))
				if m == nil && strings.Contains(line, "wrong:") {
					t.Errorf("%s: not a mistake: %s", s.at, line)
				}
				if m != nil {
					s.wrong = append(s.wrong, slip{m[1], m[2], m[3], m[4]})
				}
			}
			all = append(all, s)
		}
	}
	return all
}

// setupHead is the building that the enclosures stand in.
const setupHead = `collection "house" {
  time_zone  = "Europe/London"
  quarantine = "60 days"
}
room "east" {
  temperature = "22 to 25 C"
  humidity    = "45 to 65 %"
}
room "warm" {
  temperature = "25 to 28 C"
  humidity    = "50 to 70 %"
}
room "cool" {
  temperature = "19 to 22 C"
  humidity    = "50 to 70 %"
}
room "vault" {
  temperature = "24 to 27 C"
  humidity    = "40 to 60 %"
  locked      = true
}
keeper "lead" {
  trained = "venom, hairs, breeding"
}
round "evening" {
  at     = "19:30"
  keeper = "lead"
}
`

// For each species what a good keeper would set up builds without a word, and a mistake
// that is typical for it is found. Each set-up was written from the page of facts on its
// species; which mistakes are typical is common practice, no source.
func TestSetups(t *testing.T) {
	seen := map[string]bool{}
	for _, s := range setups(t) {
		if seen[s.species] {
			t.Errorf("%s: twice", s.at)
		}
		seen[s.species] = true
		t.Run(s.species, func(t *testing.T) {
			if !strings.Contains(s.text, `"`+s.species+`"`) {
				t.Errorf("%s: no enclosure of it", s.at)
			}
			r := on(t, "2027-03-02", setupHead+s.text, "")
			advice := 0
			for _, f := range r.Findings {
				if f.Severity == finding.Advice {
					advice++
				}
				if f.Severity > finding.Advice || advice > 1 {
					t.Errorf("%s: %s %s: %s (limit: %s; %s)", s.at, f.Severity, f.Rule.ID, f.Text, f.Limit, f.Write)
				}
			}
			if len(s.wrong) == 0 {
				t.Errorf("%s: no mistake", s.at)
			}
			for _, w := range s.wrong {
				if !strings.Contains(s.text, w.old) {
					t.Errorf("%s: %q is not in it", s.at, w.old)
					continue
				}
				if r := on(t, "2027-03-02", setupHead+s.with(w), ""); !has(r, w) {
					t.Errorf("%s: %s => %s: no %s %s", s.at, w.old, w.new, w.severity, w.rule)
					for _, f := range r.Findings {
						t.Logf("  %s %s: %s (%s)", f.Severity, f.Rule.ID, f.Text, f.Limit)
					}
				}
			}
		})
	}
	for _, name := range plan.NewLibrary().SpeciesNames() {
		if !seen[name] {
			t.Errorf("%s: no set-up of it in testdata/setups", name)
		}
	}
}

// with is the set-up with one mistake in it.
func (s setup) with(w slip) string {
	var lines []string
	for line := range strings.Lines(s.text) {
		if !strings.HasPrefix(line, "# wrong:") {
			line = strings.Replace(line, w.old, w.new, 1)
		}
		lines = append(lines, line)
	}
	return strings.Join(lines, "")
}

func has(r *compile.Result, w slip) bool {
	for _, f := range r.Findings {
		if f.Rule.ID == w.rule && f.Severity.String() == w.severity {
			return true
		}
	}
	return false
}
