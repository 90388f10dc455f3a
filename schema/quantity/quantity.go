package quantity

import "math"

// Quantity is one value and the unit it was written in.
type Quantity struct {
	Value float64 // in the canonical unit of Unit's dimension
	Unit  Unit    // as written
}

// String prints the value in its own unit, "86 F", with as many digits as it
// takes to read the same value back.
func (q Quantity) String() string { return Range{q.Value, q.Value, q.Unit}.String() }

// In returns the value in unit u, or NaN if u measures something else.
func (q Quantity) In(u Unit) float64 {
	if u.Dimension() == 0 || u.Dimension() != q.Unit.Dimension() {
		return math.NaN()
	}
	return settle(u.info().written(q.Value))
}

// Range is two values, both included, and the unit they were written in. A
// single value is a Range whose ends are equal.
type Range struct {
	Low, High float64 // in the canonical unit of Unit's dimension
	Unit      Unit    // as written
}

// String prints the range in its own unit, "27 to 32 C", or "30 C" if it is a
// single value. It reads back as the same range.
func (r Range) String() string {
	u := shown(r.Unit, r.High)
	if r.Single() {
		return join("", u, shortest(r.Low, u))
	}
	return join(" to ", u, shortest(r.Low, u), shortest(r.High, u))
}

// Single reports whether the range is one value.
func (r Range) Single() bool { return r.Low == r.High }

// Contains reports whether the canonical value v lies in the range. Differences
// below the ninth decimal, which only arithmetic makes, do not count.
func (r Range) Contains(v float64) bool {
	v = settle(v)
	return settle(r.Low) <= v && v <= settle(r.High)
}

// Encloses reports whether all of o, a range of the same dimension, lies in r.
func (r Range) Encloses(o Range) bool { return r.Contains(o.Low) && r.Contains(o.High) }

// LowQ returns the lower end in the range's unit.
func (r Range) LowQ() Quantity { return Quantity{r.Low, r.Unit} }

// HighQ returns the upper end in the range's unit.
func (r Range) HighQ() Quantity { return Quantity{r.High, r.Unit} }
