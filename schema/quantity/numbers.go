package quantity

var numbersForm = form{"number", "a", `"6", or a range, such as "10 to 35"`}

// ParseNumbers reads a plain number, or two with "to" or a dash between them; none is
// below zero. The error is an *Error.
func ParseNumbers(s string) (Range, error) {
	r, f := readNumbers(s)
	if f.kind == 0 {
		return r, nil
	}
	var meant []string
	if f.kind == OutOfOrder {
		meant = append(meant, Range{r.High, r.Low, None}.String())
	}
	return Range{}, f.build(s, 0, numbersForm, append(meant, bared(folded(s))), func(t string) bool {
		_, f := readNumbers(t)
		return f.kind == 0
	})
}

func readNumbers(s string) (Range, fault) {
	low, high, rest, f := ends(s, 0, true)
	r := Range{low, high, None}
	switch {
	case f.kind != 0:
		return Range{}, f
	case rest != "":
		return Range{}, fault{kind: Malformed, reason: "is more than a number or a range of numbers"}
	case low < 0:
		return Range{}, fault{kind: OutOfBounds, reason: "is below zero"}
	case high > largest || low > largest:
		return Range{}, fault{kind: OutOfBounds, reason: "is too large to be meant"}
	case low > high:
		return r, fault{kind: OutOfOrder}
	}
	return r, fault{}
}
