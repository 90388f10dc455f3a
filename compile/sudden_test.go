package compile_test

import (
	"strings"
	"testing"

	"vivary/plan/finding"
)

const (
	lead        = "keeper \"lead\" {\n  trained = \"feeding, breeding\"\n}\n"
	second      = "keeper \"second\" {\n  trained = \"feeding, breeding\"\n}\n"
	roundOfLead = "round \"evening\" {\n  at     = \"19:30\"\n  keeper = \"lead\"\n}\n"
)

// Somebody who falls ill refuses nothing. With another there who may do all, nothing is
// said; with nobody there it is urgent, stands first, and ends with the return.
func TestSuddenAbsence(t *testing.T) {
	home := dwelling + roundOfLead + box("home", "pandinus-imperator", "0.1", "")
	for _, c := range []struct {
		name, text, log string
		urgent          bool
	}{
		{"another is there", lead + second + home, "2027-03-01 keeper lead away \"ill\"\n", false},
		{"nobody is", lead + home, "2027-03-01 keeper lead away \"ill\"\n", true},
		{"and is back", lead + home, "2027-02-28 keeper lead away \"ill\"\n2027-03-01 keeper lead back\n", false},
		{"the other is ill too", lead + second + home, "2027-03-01 keeper lead away\n2027-03-01 keeper second away\n", true},
	} {
		usual, r := on(t, "2027-03-01", c.text, ""), on(t, "2027-03-01", c.text, c.log)
		if r.Refused() {
			t.Errorf("%s: refused", c.name)
		}
		known := map[string]bool{}
		for _, f := range usual.Findings {
			known[f.Rule.ID+f.Text] = true
		}
		urgent := false
		for _, f := range r.Findings {
			urgent = urgent || f.Severity == finding.Urgent
			if !c.urgent && !strings.Contains(c.log, "back") && f.Severity >= finding.Caution && !known[f.Rule.ID+f.Text] {
				t.Errorf("%s: %s %s", c.name, f.Severity, f.Text)
			}
		}
		if urgent != c.urgent {
			t.Errorf("%s: urgent %v", c.name, urgent)
		}
		for _, said := range r.Roster.Pressing {
			if len(said) != 1 || !strings.HasPrefix(said[0].Text, "somebody who may do it must come: Lead is away") {
				t.Errorf("%s: %+v", c.name, said)
			}
		}
	}
}
