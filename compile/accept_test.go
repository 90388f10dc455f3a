package compile_test

import (
	"testing"
	"time"

	"vivary/compile"
	"vivary/compile/check"
	"vivary/internal/planned"
)

// example compiles an example of a rule within a collection that is sound.
func example(t *testing.T, fragment string) *compile.Result {
	t.Helper()
	text, log := check.Example(fragment)
	c, found := planned.Files(t, planned.With(text, log))
	return compile.Compile(c, found, time.Date(2026, 11, 25, 12, 0, 0, 0, time.UTC))
}

func finds(r *compile.Result, id string) bool {
	for _, f := range r.Findings {
		if f.Rule.ID == id {
			return true
		}
	}
	return false
}

// An accept block silences its rule in its own enclosure until its date, and no
// other, and nothing that kills.
func TestAccept(t *testing.T) {
	const shallow = "housing {\n  kind      = \"glass\"\n  inside    = \"76 x 46 x 41 cm\"\n  lid       = \"solid, latched\"\n  vents     = \"some\"\n  substrate = \"coir\"\n  moisture  = \"damp\"\n  depth     = \"6 cm\"\n  hides     = 4\n}\n"
	accept := func(rule, until string) string {
		return "accept \"" + rule + "\" {\n  because = \"deeper tank in January\"\n  until   = \"" + until + "\"\n}\n"
	}
	if !finds(example(t, shallow), "substrate-shallow") {
		t.Fatal("the substrate is not found shallow at all")
	}
	if finds(example(t, shallow+accept("substrate-shallow", "2026-11-26")), "substrate-shallow") {
		t.Error("it is found in spite of accept")
	}
	if r := example(t, shallow+accept("substrate-shallow", "2026-11-25")); !finds(r, "substrate-shallow") || !finds(r, "accept-over") {
		t.Error("on the day until, it does not come back")
	}
	if !finds(example(t, shallow+accept("mesh-top", "2027-06-01")), "substrate-shallow") {
		t.Error("another rule's accept silences it")
	}
	const dry = "care \"water\" {\n  every = \"9 days\"\n}\n"
	if !finds(example(t, dry+accept("water-gap", "2027-06-01")), "water-gap") {
		t.Error("a broken need is silenced")
	}
	const bare = "climate {\n  warm_end    = \"28 to 29 C\"\n  cool_end    = \"26 C\"\n  humidity    = \"70 to 82 %\"\n  thermometer = true\n\n  heater \"mat\" {\n    power = \"25 W\"\n    size  = \"28 x 43 cm\"\n    place = \"side\"\n  }\n}\n"
	if !finds(example(t, bare+accept("heater-bare", "2027-06-01")), "heater-bare") {
		t.Error("what kills is silenced")
	}
}
