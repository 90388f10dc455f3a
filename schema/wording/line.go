package wording

import "strings"

// Seen reports whether a character may stand in what is shown to people: not one that
// steers a terminal, and not a mark that turns the direction of writing, which would let
// a text show one thing and mean another. Ends of lines and tabs are seen.
func Seen(r rune) bool {
	switch {
	case r == '\n' || r == '\t':
		return true
	case r < 0x20, r >= 0x7f && r < 0xa0: // what steers a terminal
		return false
	case r == 0x061c, r == 0x200e, r == 0x200f, r >= 0x202a && r <= 0x202e, r >= 0x2066 && r <= 0x206f:
		return false
	case r == 0x2028, r == 0x2029: // ends of lines, to some
		return false
	}
	return r != 0xfeff
}

// Line makes one line of what somebody wrote, of characters that are seen.
func Line(s string) string {
	return strings.Map(func(r rune) rune {
		switch {
		case r == '\n', r == '\t', r == 0x2028, r == 0x2029:
			return ' '
		case !Seen(r):
			return -1
		}
		return r
	}, s)
}
