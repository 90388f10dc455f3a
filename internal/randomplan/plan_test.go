package randomplan

import (
	"maps"
	"testing"
)

// TestSeedIsThePlan: a seed gives the same files again, also after another plan was
// edited, and an edit changes them.
func TestSeedIsThePlan(t *testing.T) {
	for seed := range uint64(50) {
		p := New(seed)
		before := p.Files(p.Today)
		q := p.Clone()
		what := q.Edit()
		if maps.Equal(q.Files(q.Today), before) {
			t.Errorf("seed %d: %s, and nothing is changed", seed, what)
		}
		again := New(seed)
		if !maps.Equal(p.Files(p.Today), before) || !maps.Equal(again.Files(again.Today), before) {
			t.Errorf("seed %d gives another plan the second time", seed)
		}
	}
}
