// Package screen is the one way by which text reaches a terminal: whatever a plan, a log,
// a name of a file or an argument holds, nothing of it steers the terminal.
package screen

import (
	"io"
	"unicode/utf8"

	"vivary/schema/wording"
)

// Screen writes what is seen of a text and leaves out the rest. The first failure to
// write is kept, and nothing is written after it.
type Screen struct {
	to     io.Writer
	colors bool
	rest   []byte // the beginning of a character whose end has not come yet
	failed error
}

// New returns a screen over a writer. Colours are shown or left out.
func New(to io.Writer, colors bool) *Screen { return &Screen{to: to, colors: colors} }

// Write writes a text without what is not seen. Bytes that are no character are shown as
// one that stands for them.
func (s *Screen) Write(text []byte) (int, error) {
	left := text
	if len(s.rest) > 0 {
		left = append(s.rest, text...)
	}
	out := make([]byte, 0, len(left))
	for len(left) > 0 && utf8.FullRune(left) {
		r, n := utf8.DecodeRune(left)
		if wording.Seen(r) {
			out = utf8.AppendRune(out, r)
		}
		left = left[n:]
	}
	s.rest = append([]byte(nil), left...)
	if s.raw(out); s.failed != nil {
		return 0, s.failed
	}
	return len(text), nil
}

// Paint writes a text in a colour, where colours are shown. The code is that of SGR
// (ECMA-48, 8.3.117).
func (s *Screen) Paint(code, text string) {
	s.Steer("\x1b["+code+"m", s.colors)
	_, _ = s.Write([]byte(text))
	s.Steer("\x1b[0m", s.colors)
}

// Steer writes characters of ours that steer the terminal, where that is wanted.
func (s *Screen) Steer(sequence string, wanted bool) {
	if wanted {
		s.raw([]byte(sequence))
	}
}

func (s *Screen) raw(text []byte) {
	if s.failed == nil && len(text) > 0 {
		_, s.failed = s.to.Write(text)
	}
}
