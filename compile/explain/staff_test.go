package explain

import "testing"

// TestStaff: of four that are needed a house has nine, of two five (zooreviewer, August 2020, by
// the rule; the sums are checked by hand).
func TestStaff(t *testing.T) {
	for needed, want := range map[int]int{1: 3, 2: 5, 4: 9, 10: 21} {
		if got := Staff(needed); got != want {
			t.Errorf("%d are needed: %d, not %d", needed, got, want)
		}
	}
}
