package wording

import (
	"strings"
	"unicode"
)

// Printed makes one line of what somebody wrote, for a picture or a label: no line ends, and
// nothing that is not printed, such as marks that turn the direction of all that follows.
func Printed(s string) string {
	s = strings.Map(func(r rune) rune {
		switch {
		case unicode.IsSpace(r):
			return ' '
		case !unicode.IsPrint(r):
			return -1
		}
		return r
	}, s)
	return strings.Join(strings.Fields(s), " ")
}

// Width is how wide a text becomes at the most, in the unit of the size of its letters. No font
// is embedded in what is drawn, so that the widths are rounded up from DejaVu Sans, the widest
// sans-serif in common use.
func Width(s string, size float64, heavy bool) float64 {
	w := 0.0
	for _, r := range s {
		switch {
		case strings.ContainsRune(" !'(),./:;[]|ijlftrI·-", r):
			w += 0.42
		case strings.ContainsRune("mwMW@%…", r):
			w += 1
		case unicode.IsUpper(r) && r < 128:
			w += 0.79
		case r < 128 && (unicode.IsLetter(r) || unicode.IsDigit(r)):
			w += 0.64
		case r < 128:
			w += 0.84
		default:
			w += 1.1
		}
	}
	if heavy {
		w *= 1.12
	}
	return w * size
}

// Fit shortens a text to a width, with an ellipsis for what is gone.
func Fit(s string, size, most float64, heavy bool) string {
	s = Printed(s)
	if Width(s, size, heavy) <= most {
		return s
	}
	runes := []rune(s)
	for n := len(runes) - 1; n > 0; n-- {
		if t := strings.TrimRight(string(runes[:n]), " ,:·") + "…"; Width(t, size, heavy) <= most {
			return t
		}
	}
	return ""
}

// Wrap breaks a text into lines of at most a width; the last is shortened where there would be
// more than n.
func Wrap(s string, size, most float64, heavy bool, n int) []string {
	var lines []string
	words := strings.Fields(Printed(s))
	for len(words) > 0 {
		k := 1
		for k < len(words) && Width(strings.Join(words[:k+1], " "), size, heavy) <= most {
			k++
		}
		if len(lines) == n-1 {
			k = len(words)
		}
		lines = append(lines, Fit(strings.Join(words[:k], " "), size, most, heavy))
		words = words[k:]
	}
	return lines
}
