package house

import (
	"maps"
	"slices"
	"strings"
	"testing"
)

// TestSeedIsTheHouse: a seed gives the same year again, and nobody is lost in it by the
// house itself.
func TestSeedIsTheHouse(t *testing.T) {
	for seed := range uint64(5) {
		a, b := New(seed), New(seed)
		for range 120 {
			a.Pass(3)
			b.Pass(3)
			if a.Came != a.Here()+a.Loose+a.Went {
				t.Fatalf("seed %d, %s: %d came, %d are here, %d went", seed, a.Today, a.Came, a.Here(), a.Went)
			}
		}
		if !maps.Equal(a.Files(a.Today), b.Files(b.Today)) {
			t.Errorf("seed %d gives another year the second time", seed)
		}
		words := map[string]int{}
		for _, l := range a.Log {
			for _, w := range []string{"moult", "premoult", "born", "first_moult", "separated", "moved", "died", "arrived", "mites", "refused", "fed", "mated", "laid", "hatched", "escaped", "found"} {
				if slices.Contains(strings.Fields(l.Text), w) {
					words[w]++
				}
			}
		}
		if len(words) < 12 {
			t.Errorf("seed %d: a year without much in it: %v", seed, words)
		}
		t.Log(len(a.Log), words)
	}
}
