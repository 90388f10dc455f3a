package plan

import (
	"slices"
	"testing"
)

// Names are walked past as people number things.
func TestNaturally(t *testing.T) {
	want := []string{"box", "tub", "tub-1", "tub-02", "tub-3", "tub-3a", "tub-10"}
	got := slices.Clone(want)
	slices.Sort(got)
	slices.SortFunc(got, func(a, b string) int {
		switch {
		case Naturally(a, b):
			return -1
		case Naturally(b, a):
			return 1
		}
		return 0
	})
	if !slices.Equal(got, want) {
		t.Error(got)
	}
}
