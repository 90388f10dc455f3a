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
	NoScale                     // degrees of a scale that is not said
	WrongUnit                   // the unit measures something else
	UnknownUnit                 // no such unit
	OutOfOrder                  // the lower value of a range comes last
	OutOfBounds                 // below absolute zero, negative, above 100 % humidity, absurd
	TooOften                    // an interval that is more than once in so many days
	Malformed                   // anything else, such as a second number
)

var kinds = [...]string{"no error", "no number", "no unit", "no scale", "wrong unit", "unknown unit", "out of order", "out of bounds", "too often", "malformed"}

// String returns the kind in words, "no unit".
func (k Kind) String() string {
	if int(k) >= len(kinds) {
		k = 0
	}
	return kinds[k]
}

// Error says what is wrong with a written value, and how it can be put right. All
// errors of this package are of type *Error.
type Error struct {
	Kind    Kind
	Text    string // what was written
	Unit    string // the part that is wrong, of a WrongUnit or UnknownUnit
	Nearest string // the unit that was probably meant, of an UnknownUnit, or ""
	Instead string // a whole text that is accepted and means the same, or ""
	// Either are the texts of which one is meant, where it is not plain which.
	Either []string
	Times  int          // of a TooOften: how often
	Per    IntervalUnit // and in what

	reason string
	form   form
}

// Error says in one sentence what is wrong. What to write instead is in Instead and
// Either, or else in Like.
func (e *Error) Error() string {
	text := quote(e.Text)
	switch e.Kind {
	case NoNumber:
		return text + " does not begin with a number"
	case NoUnit:
		return text + " has no unit"
	case NoScale:
		return text + " does not say in which degrees"
	case WrongUnit:
		return text + " is not " + e.form.article + " " + e.form.name + ": " + e.reason
	case UnknownUnit:
		return text + ": there is no unit " + quote(e.Unit) + " for " + e.form.article + " " + e.form.name
	case OutOfOrder:
		return text + " has its lower value last"
	}
	return text + " " + e.reason
}

// Like says how such a value is written, with examples: `a temperature, such as "30 C" or
// "86 F"`.
func (e *Error) Like() string { return e.form.shown() }

// Like says how a value of the dimension is written, with examples.
func (d Dimension) Like() string { return d.form().shown() }

func (f form) shown() string { return f.article + " " + f.name + ", such as " + f.like }

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

// build makes the error of a fault. Of the texts that may be meant the first is taken
// that reads, so that nothing is proposed that fails again.
func (f fault) build(text string, d Dimension, w form, meant []string, reads func(string) bool) *Error {
	e := &Error{Kind: f.kind, Text: text, form: w, reason: f.reason}
	switch f.kind {
	case UnknownUnit:
		e.Unit, e.Nearest = f.unit, likeliest(f.unit, d)
		if e.Nearest != "" {
			meant = append(meant, strings.ReplaceAll(text, f.unit, e.Nearest))
		}
	case WrongUnit:
		e.Unit = f.unit
	case Malformed:
		if f.reason == hasThousand {
			for _, mark := range []string{".", ""} {
				if t := strings.ReplaceAll(text, f.unit, strings.ReplaceAll(f.unit, ",", mark)); reads(t) {
					e.Either = append(e.Either, t)
				}
			}
			return e
		}
	}
	for _, t := range meant {
		if t = folded(t); t != text && reads(t) {
			e.Instead = t
			break
		}
	}
	return e
}

func quantityError(s string, d Dimension, f fault, span bool) error {
	e := f.build(s, d, d.form(), meant(s, d, f, span), func(t string) bool {
		_, f := read(t, d, span)
		return f.kind == 0
	})
	if f.kind == NoUnit || f.kind == NoScale {
		e.settle(e.Readings(d, Range{}, nil))
	}
	return e
}

// settle takes what a text without a unit may mean.
func (e *Error) settle(fit []string) {
	if len(fit) == 1 {
		e.Instead, fit = fit[0], nil
	}
	e.Either = fit
}
