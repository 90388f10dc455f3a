package plan

import "strings"

// walks orders a walk: those with an order first, by it, then by name.
func walks(a, b Written[int], an, bn string) bool {
	if a.Set() != b.Set() {
		return a.Set()
	}
	if a.V != b.V {
		return a.V < b.V
	}
	return Naturally(an, bn)
}

// Naturally reports whether a name stands before another as people number things: tub-2
// before tub-10.
func Naturally(a, b string) bool {
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
			if len(m) != len(n) {
				return len(m) < len(n)
			}
			if m != n {
				return m < n
			}
			i, j = x, y
			continue
		}
		if a[i] != b[j] {
			return a[i] < b[j]
		}
		i++
		j++
	}
	if len(a)-i != len(b)-j {
		return len(a)-i < len(b)-j
	}
	return a < b
}

func digit(c byte) bool { return c >= '0' && c <= '9' }
