package picture

import (
	"fmt"
	"strings"
	"unicode"
)

const bold = `font-weight="bold"`

// text draws one line of text. Its font is whatever sans-serif the reader has.
func (p *page) text(x, y, size float64, anchor, s string, style ...string) {
	if s = clean(s); s == "" {
		return
	}
	attrs := []string{fmt.Sprintf(`font-size="%g"`, size), `text-anchor="` + anchor + `"`}
	p.draw.text(x, y, s, append(attrs, style...)...)
}

// clean makes one line of what somebody wrote: no line ends, and nothing that is
// not seen, such as marks that turn the direction of all that follows.
func clean(s string) string {
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

// width is how wide a text becomes at the most. No font is embedded, so the widths
// are rounded up from DejaVu Sans, the widest sans-serif in common use.
func width(s string, size float64, heavy bool) float64 {
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

// fit shortens a text to a width, with an ellipsis for what is gone.
func fit(s string, size, most float64, heavy bool) string {
	s = clean(s)
	if width(s, size, heavy) <= most {
		return s
	}
	runes := []rune(s)
	for n := len(runes) - 1; n > 0; n-- {
		if t := strings.TrimRight(string(runes[:n]), " ,:·") + "…"; width(t, size, heavy) <= most {
			return t
		}
	}
	return ""
}

// wrap breaks a text into lines of at most a width; the last is shortened where
// there would be more than n.
func wrap(s string, size, most float64, n int) []string {
	var lines []string
	words := strings.Fields(clean(s))
	for len(words) > 0 {
		k := 1
		for k < len(words) && width(strings.Join(words[:k+1], " "), size, false) <= most {
			k++
		}
		if len(lines) == n-1 {
			k = len(words)
		}
		lines = append(lines, fit(strings.Join(words[:k], " "), size, most, false))
		words = words[k:]
	}
	return lines
}
