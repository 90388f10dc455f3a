package ical

import (
	"math/bits"
	"strings"
	"unicode"
	"unicode/utf8"
)

// appendText appends s as TEXT (RFC 5545, 3.3.11). Unicode's line and paragraph
// separators become line breaks; CR and the other control characters, which
// have no place in a content line, go; bytes that are not UTF-8 become U+FFFD.
func appendText(b []byte, s string) []byte {
	from := 0 // start of what is not yet copied
	for i := 0; i < len(s); i += 8 {
		var x uint64
		if rest := s[i:]; len(rest) >= 8 {
			x = word(rest)
		} else {
			x = lastWord(rest)
		}
		for odd := marked(x); odd != 0; odd &= odd - 1 {
			// Past from unless the last character reached over this byte.
			if at := i + bits.TrailingZeros64(odd)/8; at >= from {
				b = append(b, s[from:at]...)
				var size int
				b, size = appendOdd(b, s[at:])
				from = at + size
			}
		}
	}
	return append(b, s[from:]...)
}

// blank reports whether nothing of s would be seen once appendText has it.
func blank(s string) bool {
	return !strings.ContainsFunc(s, func(r rune) bool { return unicode.IsGraphic(r) && !unicode.IsSpace(r) })
}

// appendOdd appends the first character of s, one that cannot be copied unseen,
// and returns how many bytes of s it takes.
func appendOdd(b []byte, s string) ([]byte, int) {
	switch c := s[0]; {
	case c == '\\' || c == ';' || c == ',':
		return append(b, '\\', c), 1
	case c == '\n':
		return append(b, '\\', 'n'), 1
	case c == '\t':
		return append(b, c), 1
	case c < utf8.RuneSelf:
		return b, 1
	}
	switch r, size := utf8.DecodeRuneInString(s); {
	case r == '\u0085' || r == '\u2028' || r == '\u2029':
		return append(b, '\\', 'n'), size
	case r <= '\u009f':
		return b, size
	default: // U+FFFD, where there is no character
		return utf8.AppendRune(b, r), size
	}
}

const (
	ones = 0x0101_0101_0101_0101 // times c: c in each byte of a word
	tops = 0x80 * ones
)

// word returns eight bytes, the first one lowest.
func word(s string) uint64 {
	_ = s[7]
	return uint64(s[0]) | uint64(s[1])<<8 | uint64(s[2])<<16 | uint64(s[3])<<24 |
		uint64(s[4])<<32 | uint64(s[5])<<40 | uint64(s[6])<<48 | uint64(s[7])<<56
}

// lastWord returns fewer than eight bytes with blanks behind them.
func lastWord(s string) uint64 {
	x := uint64(' ' * ones)
	for i := len(s) - 1; i >= 0; i-- {
		x = x<<8 | uint64(s[i])
	}
	return x
}

// marked sets the top bit of each byte of x that is not printable ASCII or is a
// backslash, semicolon or comma. All eight are looked at in one go, because
// most of a feed is text: with the top bits out of the way no sum carries into
// the next byte, and a sum reaches its top bit only if the byte is big enough.
func marked(x uint64) uint64 {
	low := x &^ tops
	plain := (low + (0x80-' ')*ones) & // not a control character
		((low ^ '\\'*ones) + 0x7f*ones) & ((low ^ ';'*ones) + 0x7f*ones) & ((low ^ ','*ones) + 0x7f*ones)
	return (x | (low + ones) | ^plain) & tops // not ASCII, or DEL, or not plain
}
