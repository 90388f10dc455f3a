package plan

import (
	"cmp"
	"strings"
)

// walks orders a walk: those with an order first, by it, then by name.
func walks(a, b Written[int], an, bn string) int {
	switch {
	case a.Set() && !b.Set():
		return -1
	case b.Set() && !a.Set():
		return 1
	case a.V != b.V:
		return cmp.Compare(a.V, b.V)
	}
	return Naturally(an, bn)
}

// Naturally compares two names as people number things: tub-2 stands before tub-10.
func Naturally(a, b string) int {
	i, j := 0, 0
	for i < len(a) && j < len(b) {
		if digit(a[i]) && digit(b[j]) {
			x, y := i, j
			for x < len(a) && digit(a[x]) {
				x++
			}
			for y < len(b) && digit(b[y]) {
				y++
			}
			m, n := strings.TrimLeft(a[i:x], "0"), strings.TrimLeft(b[j:y], "0")
			if m != n {
				return cmp.Or(cmp.Compare(len(m), len(n)), cmp.Compare(m, n))
			}
			i, j = x, y
			continue
		}
		if a[i] != b[j] {
			return cmp.Compare(a[i], b[j])
		}
		i++
		j++
	}
	return cmp.Or(cmp.Compare(len(a)-i, len(b)-j), cmp.Compare(a, b))
}

func digit(c byte) bool { return c >= '0' && c <= '9' }
