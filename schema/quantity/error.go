package quantity

import (
	"strings"
	"unicode/utf8"
)

// Kind is a way in which a text fails to be a value.
type Kind uint8

// The kinds of Error.
const (
	NoNumber    Kind = iota + 1 // it does not begin with a number
	NoUnit                      // a bare number where a unit is needed
	WrongUnit                   // the unit measures something else
	UnknownUnit                 // no such unit, or one that is not read
	OutOfOrder                  // the lower value of a range comes last
	OutOfBounds                 // below absolute zero, negative, above 100 % humidity, absurd
	Malformed                   // anything else, such as a decimal comma
)

var kinds = [...]string{"no error", "no number", "no unit", "wrong unit", "unknown unit", "out of order", "out of bounds", "malformed"}

// String returns the kind in words, "no unit".
func (k Kind) String() string {
	if int(k) >= len(kinds) {
		k = 0
	}
	return kinds[k]
}

// Error says what is wrong with a written value and what to write. All errors of
// this package are of type *Error.
type Error struct {
	Kind    Kind
	Text    string // what was written
	Unit    string // the part that is wrong, of a WrongUnit or UnknownUnit
	Nearest string // the unit that was probably meant, of an UnknownUnit, or ""
	Instead string // a whole text that is accepted and probably meant, or ""

	reason string
	form   form
}

// Error explains the fault to a keeper in one sentence.
func (e *Error) Error() string {
	text := quote(e.Text)
	a := e.form.article + " " + e.form.name
	like := a + " is written like " + e.form.like
	instead := like
	if e.Instead != "" {
		instead = "write " + quote(e.Instead)
	}
	switch e.Kind {
	case NoNumber:
		return text + " does not begin with a number: " + like
	case NoUnit:
		if e.Instead != "" {
			return text + " ends without a unit: " + instead
		}
		return text + " has no unit: " + like
	case WrongUnit:
		return text + " is not " + a + ": " + e.reason + "; " + like
	case UnknownUnit:
		return text + ": there is no unit " + quote(e.Unit) + " for " + a + "; " + instead
	case OutOfOrder:
		return text + " has its lower value last: " + instead
	case OutOfBounds:
		return text + " " + e.reason + ": " + like
	}
	return text + " " + e.reason + ": " + instead
}

// quote puts a text in quotation marks, cut short if it is long.
func quote(s string) string {
	const most = 60
	if len(s) > most {
		n := most
		for n > 0 && !utf8.RuneStart(s[n]) {
			n--
		}
		s = s[:n] + "…"
	}
	return `"` + strings.ToValidUTF8(s, "?") + `"`
}

// build makes the error of a fault. reads reports whether a text would be
// accepted, so that nothing is proposed that fails again.
func (f fault) build(text string, d Dimension, w form, instead string, reads func(string) bool) *Error {
	if t := strings.Join(strings.Fields(text), " "); t != text && reads(t) {
		f, instead = fault{kind: Malformed, reason: hasSpaces}, t
	}
	e := &Error{Kind: f.kind, Text: text, form: w, reason: f.reason}
	switch f.kind {
	case UnknownUnit:
		e.Unit, e.Nearest = f.unit, likeliest(f.unit, d)
		if instead == "" && e.Nearest != "" {
			instead = strings.ReplaceAll(text, f.unit, e.Nearest)
		}
	case WrongUnit:
		e.Unit = f.unit
	case NoUnit:
		if f.unit != "" {
			instead = text + " " + f.unit
		}
	case Malformed:
		if f.reason == hasComma {
			instead = strings.ReplaceAll(text, ",", ".")
		}
	}
	if instead != "" && reads(instead) {
		e.Instead = instead
	}
	return e
}

func quantityError(s string, d Dimension, f fault, span bool) error {
	instead := ""
	if f.kind == OutOfOrder {
		r, _ := read(s, d, span)
		instead = Range{r.High, r.Low, r.Unit}.String()
	}
	return f.build(s, d, d.form(), instead, func(t string) bool {
		_, f := read(t, d, span)
		return f.kind == 0
	})
}
