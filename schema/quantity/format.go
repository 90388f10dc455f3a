package quantity

import "strconv"

// Format prints a canonical value in unit u, rounded to what a keeper can
// measure and without trailing zeros: 0.1 C, whole millilitres, but at least two
// digits that matter ("1.4 ml"). A limit that a keeper is told to write is
// printed by FormatAtLeast or FormatAtMost.
func Format(v float64, u Unit) string { return format(v, u, nearest) }

// FormatAtLeast is Format for a lower limit: it rounds up, so that whoever
// writes what is printed satisfies the limit. 15 cm is "6 in", not "5.9 in".
func FormatAtLeast(v float64, u Unit) string { return format(v, u, up) }

// FormatAtMost is Format for an upper limit: it rounds down.
func FormatAtMost(v float64, u Unit) string { return format(v, u, down) }

// FormatRange prints a canonical range in unit u, "79 to 90 F", rounded inwards
// unless it is too narrow for that.
func FormatRange(low, high float64, u Unit) string {
	u = shown(u, high)
	l, h := rounded(low, u, up), rounded(high, u, down)
	if l > h {
		return FormatBetween(low, high, u)
	}
	return joinRange(l, h, u)
}

// FormatBetween is FormatRange for two ends that are estimated or measured and no
// limits: each is rounded by itself.
func FormatBetween(low, high float64, u Unit) string {
	u = shown(u, high)
	return joinRange(rounded(low, u, nearest), rounded(high, u, nearest), u)
}

// joinRange prints two values, or one where they are the same.
func joinRange(l, h float64, u Unit) string {
	if l == h {
		return join(" to ", u, h)
	}
	return join(" to ", u, l, h)
}

func format(v float64, u Unit, dir direction) string {
	u = shown(u, v)
	return join("", u, rounded(v, u, dir))
}

// join prints values with a separator between them and their unit behind the last.
func join(sep string, u Unit, values ...float64) string {
	var buf [96]byte
	b := buf[:0]
	for k, x := range values {
		if k > 0 {
			b = append(b, sep...)
		}
		b = strconv.AppendFloat(b, x, 'f', -1, 64)
	}
	i := u.info()
	switch {
	case i.one != "" && len(values) > 0 && values[len(values)-1] == 1:
		b = append(append(b, ' '), i.one...)
	case i.name != "":
		b = append(append(b, ' '), i.name...)
	}
	return string(b)
}

// shown returns the unit to print v in: a share above 1 can't be read without
// a unit, so it becomes a percentage.
func shown(u Unit, v float64) Unit {
	if u == Fraction && v > 100 {
		return Percent
	}
	return u
}
