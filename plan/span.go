package plan

import (
	"cmp"
	"errors"
	"slices"
	"strconv"
	"strings"
)

// Span is numbers of enclosures, one after another.
type Span struct {
	Low, High int
	// Digits is how many digits each has at the least, with zeros before it; 0 where no
	// zeros are written.
	Digits int
}

// digits bounds a number of an enclosure.
const digits = 6

// spanForms is how numbers are written.
const spanForms = "\"1 to 40\", or \"1 to 12, 15, 20 to 24\""

// spanError says why numbers cannot be read, and what is meant where that is plain.
type spanError struct{ text, instead string }

func (e spanError) Error() string { return e.text }

// Spans are numbers of enclosures, in order, none twice.
type Spans []Span

// ParseSpans reads numbers and ranges of them: "1 to 12, 15,
// 20 to 24". A range may be written with a dash too, and the last comma as "and".
func ParseSpans(s string) (Spans, error) {
	var out Spans
	for _, item := range strings.Split(strings.ReplaceAll(s, " and ", ", "), ",") {
		item = strings.TrimSpace(item)
		x, err := parseSpan(item)
		if err != nil {
			return nil, err
		}
		if x.High < x.Low {
			low, high, _ := ends(item)
			return nil, spanError{quote(item) + " ends before it begins", strings.Replace(s, item, high+" to "+low, 1)}
		}
		out = append(out, x)
	}
	slices.SortFunc(out, func(a, b Span) int { return cmp.Compare(a.Low, b.Low) })
	for i := 1; i < len(out); i++ {
		if a, b := out[i-1], out[i]; b.Low <= a.High {
			e := spanError{text: "number " + strconv.Itoa(b.Low) + " is there twice"}
			if a.Digits == b.Digits {
				e.instead = out.joined().String()
			}
			return nil, e
		}
	}
	return out, nil
}

// ends cuts a range in two.
func ends(item string) (low, high string, ok bool) {
	for _, to := range []string{" to ", "–", "-"} {
		if low, high, ok = strings.Cut(item, to); ok {
			return strings.TrimSpace(low), strings.TrimSpace(high), true
		}
	}
	return item, item, false
}

func parseSpan(item string) (Span, error) {
	low, high, _ := ends(item)
	var x Span
	for _, end := range []struct {
		text string
		to   *int
	}{{low, &x.Low}, {high, &x.High}} {
		n, err := strconv.ParseUint(end.text, 10, 31)
		if err != nil || len(end.text) > digits {
			return x, errors.New(quote(item) + " is not a number of up to " + strconv.Itoa(digits) + " digits, or a range of them: write " + spanForms)
		}
		*end.to = int(n)
		if len(end.text) > 1 && end.text[0] == '0' {
			x.Digits = max(len(low), len(high))
		}
	}
	return x, nil
}

// someNumbers reads the numbers of a block. One number alone could as well mean how many.
func someNumbers(s string) (Spans, error) {
	all, err := ParseSpans(s)
	if _, _, ranged := ends(s); err == nil && len(all) == 1 && !ranged {
		return nil, spanError{text: quote(s) + " is one number: it is not clear whether there are so many, or one of that number; write \"1 to " + strings.TrimSpace(s) + "\", or one enclosure with the number in its name"}
	}
	return all, err
}

// write returns a number as names have it.
func (x Span) write(n int) string {
	s := strconv.Itoa(n)
	return strings.Repeat("0", max(0, x.Digits-len(s))) + s
}

// write returns one of the numbers as the names of its span have it.
func (all Spans) write(n int) string {
	i, _ := slices.BinarySearchFunc(all, n, func(x Span, n int) int { return cmp.Compare(x.High, n) })
	return all[i].write(n)
}

// String returns the numbers as they are written in a plan.
func (all Spans) String() string {
	texts := make([]string, len(all))
	for i, x := range all {
		texts[i] = x.write(x.Low)
		if x.High > x.Low {
			texts[i] += " to " + x.write(x.High)
		}
	}
	return strings.Join(texts, ", ")
}

// joined makes one of spans that overlap. They are in order.
func (all Spans) joined() Spans {
	out := all[:1:1]
	for _, x := range all[1:] {
		if last := &out[len(out)-1]; x.Low <= last.High {
			last.High = max(last.High, x.High)
		} else {
			out = append(out, x)
		}
	}
	return out
}

// Count returns how many numbers there are.
func (all Spans) Count() (n int) {
	for _, x := range all {
		n += x.High - x.Low + 1
	}
	return n
}

// strays returns the numbers that are not among others. A range may go over those within
// it that were taken out, but not past the first or the last.
func (all Spans) strays(others Spans) (out Spans) {
	between := Spans{{Low: others[0].Low, High: others[len(others)-1].High}}
	for _, x := range all {
		if one := (Spans{x}); x.Low < x.High && len(one.and(others)) > 0 {
			out = append(out, one.less(between)...)
		} else {
			out = append(out, one.less(others)...)
		}
	}
	return out
}

// and returns the numbers that are among both.
func (all Spans) and(others Spans) (out Spans) {
	for i, k := 0, 0; i < len(all) && k < len(others); {
		a, b := all[i], others[k]
		if low, high := max(a.Low, b.Low), min(a.High, b.High); low <= high {
			out = append(out, Span{low, high, a.Digits})
		}
		if a.High < b.High {
			i++
		} else {
			k++
		}
	}
	return out
}

// less returns the numbers that are not among others.
func (all Spans) less(others Spans) (out Spans) {
	for _, x := range all {
		for len(others) > 0 && others[0].High < x.Low {
			others = others[1:]
		}
		for _, o := range others {
			if o.Low > x.High {
				break
			}
			if o.Low > x.Low {
				out = append(out, Span{x.Low, o.Low - 1, x.Digits})
			}
			x.Low = o.High + 1
		}
		if x.Low <= x.High {
			out = append(out, x)
		}
	}
	return out
}
