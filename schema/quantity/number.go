package quantity

import (
	"strconv"
	"strings"
	"unicode/utf8"
)

// number reads the number that s begins with: "2.5", "2,5", "1/2", "1 1/2" or "½" of
// what is measured out in such parts, and the word for a small number of a time, "two".
func number(s string, d Dimension) (v float64, rest string, f fault) {
	sign := 1.0
	if s != "" && (s[0] == '+' || s[0] == '-' || s[0] == 0xE2) { // the minus sign and the dash begin with E2
		if r, n := utf8.DecodeRuneInString(s); strings.ContainsRune("+-−–", r) {
			if r != '+' {
				sign = -1
			}
			s = s[n:]
		}
	}
	v, rest, f = unsignedNumber(s, d)
	return sign * v, rest, f
}

func unsignedNumber(s string, d Dimension) (v float64, rest string, f fault) {
	n := digits(s)
	if n == 0 {
		if v, rest, ok := part(s, d); ok {
			return v, rest, fault{}
		}
		if v, rest, ok := numeral(s, d); ok {
			return v, rest, fault{}
		}
		if s == "" || s[0] != '.' || digits(s[1:]) == 0 {
			return 0, s, fault{kind: NoNumber}
		}
	}
	if v, rest, ok := part(s, d); ok {
		return v, rest, fault{}
	}
	whole := s[:n]
	if n < len(s) && (s[n] == '.' || s[n] == ',') {
		if m := digits(s[n+1:]); m > 0 {
			if s[n] == ',' && m == 3 && strings.Trim(whole, "0") != "" {
				return 0, s, fault{kind: Malformed, unit: s[:n+1+m], reason: hasThousand}
			}
			// Digits and a point are always read; too many of them give an infinity,
			// which is out of every bound.
			v, _ = strconv.ParseFloat(pointed(s[:n+1+m], n), 64)
			return v, s[n+1+m:], fault{}
		}
	}
	v, _ = strconv.ParseFloat(whole, 64)
	rest = s[n:]
	if rest != "" && (rest[0] == ' ' || rest[0] == '-') { // "1 1/2" and "1-1/2"
		if more, after, ok := part(rest[1:], d); ok {
			return v + more, after, fault{}
		}
	}
	if more, after, ok := part(rest, d); ok && digits(rest) == 0 { // "1½"
		return v + more, after, fault{}
	}
	return v, rest, fault{}
}

// pointed returns a number with a point for its comma at i.
func pointed(s string, i int) string {
	if s[i] == '.' {
		return s
	}
	return s[:i] + "." + s[i+1:]
}

// digits returns how many digits s begins with.
func digits(s string) int {
	n := 0
	for n < len(s) && s[n]-'0' <= 9 {
		n++
	}
	return n
}

// parted reports whether parts of a unit of d are written as fractions. "3/4 days" may
// be three to four, and "27/32 C" is a range.
func parted(d Dimension) bool {
	return d == Length || d == Area || d == Volume || d == Mass || d == Ratio
}

// part reads a fraction: a half, thirds, quarters, eighths or sixteenths.
func part(s string, d Dimension) (v float64, rest string, ok bool) {
	if !parted(d) || s == "" {
		return 0, s, false
	}
	if n := digits(s); n > 0 {
		if n+1 >= len(s) || s[n] != '/' {
			return 0, s, false
		}
		m := digits(s[n+1:])
		above, below := whole(s[:n]), whole(s[n+1:n+1+m])
		if m == 0 || above == 0 || above >= below || !strings.Contains(" 2 3 4 8 16 ", " "+s[n+1:n+1+m]+" ") {
			return 0, s, false
		}
		return float64(above) / float64(below), s[n+1+m:], true
	}
	r, n := utf8.DecodeRuneInString(s)
	if v, ok := vulgar[r]; ok {
		return v, s[n:], true
	}
	return 0, s, false
}

var vulgar = map[rune]float64{'½': 0.5, '⅓': 1. / 3, '⅔': 2. / 3, '¼': 0.25, '¾': 0.75, '⅛': 0.125, '⅜': 0.375, '⅝': 0.625, '⅞': 0.875}

// numerals are the words for how many of a time: "two weeks", "half an hour".
var numerals = [...]struct {
	word string
	v    float64
}{
	{"half an ", 0.5}, {"half a ", 0.5}, {"an ", 1}, {"a ", 1}, {"one ", 1}, {"two ", 2}, {"three ", 3}, {"four ", 4}, {"five ", 5}, {"six ", 6},
	{"seven ", 7}, {"eight ", 8}, {"nine ", 9}, {"ten ", 10}, {"eleven ", 11}, {"twelve ", 12},
}

func numeral(s string, d Dimension) (v float64, rest string, ok bool) {
	if d != Duration || s == "" || !letter(s[0]) {
		return 0, s, false
	}
	for i := range numerals {
		if rest, ok := cutWord(s, numerals[i].word); ok {
			return numerals[i].v, rest, true
		}
	}
	return 0, s, false
}

// Numeral returns the number that a word is, in digits, or "".
func Numeral(s string) string {
	if v, rest, ok := numeral(s+" ", Duration); ok && rest == "" && v >= 1 {
		return strconv.Itoa(int(v))
	}
	return ""
}

// whole reads a text of digits; what is far beyond any use here stays just that.
func whole(s string) int {
	n := 0
	for i := 0; i < len(s) && n < 1e9; i++ {
		n = n*10 + int(s[i]-'0')
	}
	return n
}
