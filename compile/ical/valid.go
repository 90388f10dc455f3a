package ical

import (
	"regexp"
	"strings"
)

// ValidURI reports whether s can stand as a URI value: a scheme, a colon and
// only the characters of RFC 3986, 2. Anything else (a blank, a letter that is
// not ASCII, a line break that would start a property of its own) is not one.
func ValidURI(s string) bool {
	scheme, rest, ok := strings.Cut(s, ":")
	if !ok || scheme == "" || rest == "" {
		return false
	}
	for i := 0; i < len(scheme); i++ {
		c := scheme[i]
		letter := 'a' <= c|0x20 && c|0x20 <= 'z'
		if !letter && (i == 0 || !('0' <= c && c <= '9' || c == '+' || c == '-' || c == '.')) {
			return false
		}
	}
	for i := 0; i < len(rest); i++ {
		switch c := rest[i]; c {
		case '"', '<', '>', '\\', '^', '`', '{', '|', '}':
			return false
		default:
			if c <= ' ' || c >= 0x7f {
				return false
			}
		}
	}
	return true
}

// duration is the unsigned form of RFC 5545, 3.3.6: units may not be skipped
// and hours need their T, so that "P1H" is none.
var duration = func() *regexp.Regexp {
	const clock = `T(\d+H(\d+M(\d+S)?)?|\d+M(\d+S)?|\d+S)`
	return regexp.MustCompile(`^P(\d+W|\d+D(` + clock + `)?|` + clock + `)$`)
}()

// ValidDuration reports whether s is a positive duration such as "PT6H" or "P1D".
func ValidDuration(s string) bool {
	return duration.MatchString(s) && strings.ContainsAny(s, "123456789")
}
