package plan

import (
	"strings"
	"sync"
	"testing"

	"vivary/schema"
)

// A sheet differs where it says so, and nowhere else; the same pointer comes back each
// time, to whoever asks; of no sheet, and of a state that is not in the table, it is
// what was asked for.
func TestStatesOfSpecies(t *testing.T) {
	lib := NewLibrary()
	damon, redknee := lib.Species("damon-diadema"), lib.Species("brachypelma-hamorii")
	sac := damon.State(schema.StateSac)
	if m := sac.May[schema.RowKilled]; m.Manner != schema.Hatch || m.Every != 14 || m.Source != "" {
		t.Errorf("a whip spider with a sac may have killed prey: %v, by %q", m, m.Source)
	}
	if sac.May[schema.RowDish] != schema.StateSac.May[schema.RowDish] || sac.Name != "sac" {
		t.Error("a sheet changes rows of which it does not speak")
	}
	// A female with a sac is not fed (N14, N16) and not misted (common practice).
	if s := redknee.State(schema.StateSac); s.May[schema.RowKilled].Manner != schema.Held || s.May[schema.RowMist].Manner != schema.Held || s.May[schema.RowKilled].Source != "N14, N16" {
		t.Errorf("a redknee with a sac: %v, %v", s.May[schema.RowKilled], s.May[schema.RowMist])
	}
	if damon.State(schema.StateSoft) != schema.StateSoft {
		t.Error("what a sheet does not change is the table's own")
	}
	var none *SpeciesSheet
	season := &schema.State{Name: "winter"}
	if none.State(schema.StateSac) != schema.StateSac || damon.State(season) != season {
		t.Error("of no sheet, or of a state not in the table, it is what was asked for")
	}
	var all sync.WaitGroup
	for range 8 {
		all.Go(func() {
			if damon.State(schema.StateSac) != sac || NewLibrary().Species("damon-diadema").State(schema.StateSac) != sac {
				t.Error("not the same pointer")
			}
		})
	}
	all.Wait()
}

// ownStates is a collection with a state block of its own for a whip spider.
func ownStates(t *testing.T, block string) (*SpeciesSheet, []string) {
	t.Helper()
	c, found := load(t, map[string]string{"a.care.hcl": sound + "species \"damon-diadema\" {\n" + block + "}\n"})
	return c.Library.Species("damon-diadema"), texts(found)
}

// A collection may be stricter without a word; where it allows more than what it is
// laid over it says why. What it does not say stays.
func TestOwnStates(t *testing.T) {
	s, found := ownStates(t, "  state \"sac\" {\n    care   = \"killed\"\n    manner = \"held\"\n  }\n")
	if len(found) > 0 {
		t.Error("stricter:", found)
	}
	if m := s.State(schema.StateSac).May[schema.RowKilled]; m.Manner != schema.Held {
		t.Errorf("its own word does not hold: %v", m)
	}
	weaker := "  state \"sac\" {\n    care   = \"killed\"\n    manner = \"hatch\"\n    every  = \"7 days\"\n"
	if _, found = ownStates(t, weaker+"  }\n"); len(found) != 1 || !strings.Contains(found[0], "no because, no source, no review") {
		t.Error("weaker, without a reason:", found)
	}
	const why = "    because = \"tried\"\n    source  = [\"us\"]\n    review  = \"2027-09-01\"\n"
	s, found = ownStates(t, weaker+why+"  }\n")
	if len(found) > 0 {
		t.Error("weaker, with a reason:", found)
	}
	base := NewLibrary().Species("damon-diadema")
	for _, b := range s.States {
		if rows := b.Weaker(base); b.Own != (len(rows) > 0) {
			t.Errorf("%s, own %v: weaker in %v", b.Rows, b.Own, rows)
		}
	}
	if s.State(schema.StateGravid).Rule != base.State(schema.StateGravid).Rule {
		t.Error("a block of its own takes others away")
	}
}

// A sheet that is like another has its states too, and is weaker or stricter than that.
func TestStatesOfLike(t *testing.T) {
	c, found := load(t, map[string]string{"a.care.hcl": sound + "species \"x\" {\n  like = \"damon-diadema\"\n" +
		"  state \"sac\" {\n    care   = \"killed\"\n    manner = \"usual\"\n  }\n}\n"})
	if got := texts(found); len(got) != 1 || !strings.Contains(got[0], "allows more") {
		t.Error(got)
	}
	if beneath := c.Library.Beneath("x"); beneath.State(schema.StateSac).May[schema.RowKilled].Every != 14 {
		t.Error("what it is laid over is not what it is like")
	}
}

// What cannot be read, or holds water, stands for nothing.
func TestStatesRefused(t *testing.T) {
	for block, want := range map[string]string{
		"state \"asleep\" {\n care = \"live\"\n manner = \"held\"\n}":                          "no state \"asleep\"",
		"state \"sac\" {\n care = \"tail\"\n manner = \"held\"\n}":                             "tail",
		"state \"sac\" {\n care = \"live\"\n manner = \"gently\"\n}":                           "gently",
		"state \"sac\" {\n care = \"all\"\n manner = \"held\"\n}":                              "water is never held",
		"state \"sac\" {\n care = \"mist, water\"\n manner = \"hatch\"\n from = \"3 days\"\n}": "water is never held",
		"state \"sac\" {\n care = \"mist\"\n}":                                                 "manner",
	} {
		s, found := ownStates(t, block+"\n")
		if len(found) != 1 || !strings.Contains(found[0], want) {
			t.Errorf("%s: found %v", block, found)
		}
		for _, b := range s.States {
			if b.Own {
				t.Errorf("%s: taken", block)
			}
		}
	}
}
