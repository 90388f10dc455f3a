package register

import "vivary/schema/quantity"

// Sexes. A line that does not say of which sex those are who went leaves open which are left:
// then as many count as males and females as are so for certain, and the others as of unknown
// sex. What is known of them is never more than what was written.

func plus(a, b quantity.Count) quantity.Count {
	return quantity.Count{Males: a.Males + b.Males, Females: a.Females + b.Females, Unsexed: a.Unsexed + b.Unsexed}
}

func minus(a quantity.Count) quantity.Count {
	return quantity.Count{Males: -a.Males, Females: -a.Females, Unsexed: -a.Unsexed}
}

func absolute(a quantity.Count) quantity.Count {
	if a.Total() < 0 {
		return minus(a)
	}
	return a
}

func fits(a, in quantity.Count) bool {
	return a.Males <= in.Males && a.Females <= in.Females && a.Unsexed <= in.Unsexed
}

// taken is who n of some are, and what is known otherwise of the others then. Said is what the
// line says of their sexes, or zero.
func taken(of quantity.Count, n int, said quantity.Count) (out, fixed quantity.Count) {
	switch {
	case n >= of.Total():
		return plus(of, quantity.Count{Unsexed: n - of.Total()}), fixed
	case said.Total() == n && fits(said, of):
		return said, fixed
	case of.Males == of.Total():
		return quantity.Count{Males: n}, fixed
	case of.Females == of.Total():
		return quantity.Count{Females: n}, fixed
	}
	out = quantity.Count{Unsexed: n}
	if said.Total() == n { // of one whose sex was not known till then
		known := quantity.Count{Males: min(said.Males, of.Males), Females: min(said.Females, of.Females)}
		known.Unsexed = n - known.Males - known.Females
		if fits(known, of) {
			return known, fixed
		}
	}
	left := quantity.Count{Males: max(0, of.Males-n), Females: max(0, of.Females-n)}
	left.Unsexed = of.Total() - n - left.Males - left.Females
	return out, plus(left, minus(plus(of, minus(out))))
}

// recounted is what a count changes: how many more or fewer they are, and of which sexes.
func recounted(of quantity.Count, n int, said quantity.Count) (count, fixed quantity.Count) {
	count = quantity.Count{Unsexed: n}
	if n < 0 {
		out, more := taken(of, -n, quantity.Count{})
		count, fixed = minus(out), more
	}
	if total := of.Total() + n; said.Total() == total && total > 0 {
		fixed = plus(said, minus(plus(of, count)))
	}
	return count, fixed
}
