package horizon

// Tally counts how often each day is in one of many sets. It counts as a column of bits for
// each power of two, over whole words, which is some ten times faster than day by day.
type Tally struct {
	columns []Days
	carry   Days
}

// Add counts the days of a set.
func (t *Tally) Add(s Days) {
	t.carry = append(t.carry[:0], s...)
	for _, c := range t.columns {
		left := false
		for i, w := range t.carry {
			c[i], t.carry[i] = c[i]^w, c[i]&w
			left = left || t.carry[i] != 0
		}
		if !left {
			return
		}
	}
	if !t.carry.Empty() {
		t.columns = append(t.columns, t.carry.Clone())
	}
}

// Each calls do for the days that are in any of the sets, with in how many: in parts, which
// are to be added up.
func (t *Tally) Each(do func(day, times int)) {
	for power, c := range t.columns {
		for day := c.Next(0); day >= 0; day = c.Next(day + 1) {
			do(day, 1<<power)
		}
	}
}
