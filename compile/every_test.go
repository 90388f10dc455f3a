package compile_test

import (
	"fmt"
	"regexp"
	"slices"
	"strings"
	"testing"

	"vivary/compile/prove"
	"vivary/plan"
)

// nonsense is what a figure that is not there leaves in a text.
var nonsense = regexp.MustCompile(`NaN|Inf\b|%!|<nil>|\b0 s\b|0001-01-01`)

// Every species lives through what a log can say of it, in every stage, without a text that
// means nothing: an animal alone, that feeds and refuses, moults, carries, lays, hatches,
// shuts itself in and dies.
func TestEverySpeciesLives(t *testing.T) {
	for _, name := range plan.NewLibrary().SpeciesNames() {
		for _, stage := range []string{"young", "juvenile", "subadult", "adult"} {
			text := setupHead + `enclosure "box" {
  species = "` + name + `"
  room    = "vault"
  housing {
    inside  = "60 x 45 x 45 cm"
    lid     = "solid, locked"
    vents   = "cross"
    depth   = "20 cm"
    hides   = 1
    perches = true
  }
  animals "one" {
    count  = "0.1"
    stage  = "` + stage + `"
    origin = "captive bred"
    paper  = "invoice 1"
  }
}
`
			log := "2026-08-01 box fed\n2026-08-20 box refused\n2026-09-01 box premoult\n2026-09-10 box moult\n2026-10-01 box fed\n"
			if stage == "adult" {
				log += "2026-10-05 box mated\n2026-11-20 box gravid\n2027-01-05 box laid 20\n2027-02-20 box hatched 12\n"
			} else {
				log += "2026-12-01 box sealed\n2027-02-20 box refused\n"
			}
			for _, f := range on(t, "2027-02-21", text, "").Findings {
				if slices.Contains(prove.Rules, f.Rule) {
					t.Errorf("%s, %s: what its sheet brings does not do: %s (%s)", name, stage, f.Text, f.Limit)
				}
			}
			for _, day := range []string{"2027-02-21", "2027-04-10", "2027-09-01"} {
				r := on(t, day, text, log)
				var all []string
				for _, f := range r.Findings {
					all = append(all, f.Text, f.Limit, f.Write, f.Source)
				}
				for _, l := range r.Lives {
					for _, g := range l.Groups {
						for _, x := range g.Tasks {
							all = append(all, x.Text)
						}
						for _, x := range g.Asks {
							all = append(all, x.Text, x.Said, x.Limit)
						}
						for _, x := range g.Holds {
							all = append(all, x.Why, x.End)
						}
					}
				}
				for _, s := range all {
					if found := nonsense.FindString(s); found != "" {
						t.Errorf("%s, %s, %s: %s in %q", name, stage, day, found, s)
					}
				}
				if v := r.Verdict(); v == "" || strings.Contains(v, fmt.Sprint(nil)) {
					t.Errorf("%s, %s, %s: verdict %q", name, stage, day, v)
				}
			}
		}
	}
}
