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
	slices.SortFunc(got, Naturally)
	if !slices.Equal(got, want) {
		t.Error(got)
	}
}
