package keys

import (
	"io/fs"
	"runtime"
	"strings"
	"unicode"

	"github.com/zclconf/go-cty/cty"
)

// open reports whether others than its owner can read or write a file. Where permissions are
// not kept in a mode they are not looked at.
func open(mode fs.FileMode) bool { return runtime.GOOS != "windows" && mode.Perm()&0o077 != 0 }

func literal(k Key) cty.Value { return cty.StringVal(string(k)) }

// shown is a character of a title as it may stand in a comment.
func shown(r rune) rune {
	if unicode.IsControl(r) || strings.ContainsRune("\u2028\u2029", r) {
		return ' '
	}
	return r
}
