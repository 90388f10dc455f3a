package ical

import (
	"math/rand/v2"
	"strings"
	"testing"
	"unicode/utf8"
)

// unfold is RFC 5545, 3.1: a line break and the one blank after it go.
func unfold(s string) string {
	return strings.NewReplacer("\r\n ", "", "\r\n\t", "").Replace(s)
}

// checkLines reports lines that are too long, not UTF-8, not ended by CRLF, cut
// after a lone backslash, or blank.
func checkLines(t *testing.T, text string) {
	t.Helper()
	if !strings.HasSuffix(text, "\r\n") {
		t.Errorf("no CRLF at the end of %q", text)
	}
	lines := strings.Split(strings.TrimSuffix(text, "\r\n"), "\r\n")
	for i, line := range lines {
		switch {
		case len(line) > 75:
			t.Errorf("%d octets: %q", len(line), line)
		case !utf8.ValidString(line):
			t.Errorf("not UTF-8: %q", line)
		case strings.ContainsAny(line, "\r\n"):
			t.Errorf("a bare CR or LF: %q", line)
		case (len(line)-len(strings.TrimRight(line, `\`)))%2 == 1 && i+1 < len(lines) && strings.HasPrefix(lines[i+1], " "):
			t.Errorf("cut between backslash and letter: %q", line)
		case strings.Trim(line, " \t") == "":
			t.Errorf("a line of blanks in %q", text)
		}
	}
}

func TestUnfoldIsThatOfTheStandard(t *testing.T) {
	// RFC 5545, 3.1, the example.
	const folded = "DESCRIPTION:This is a lo\r\n ng description\r\n  that exists on a long line.\r\n"
	const long = "DESCRIPTION:This is a long description that exists on a long line.\r\n"
	if got := unfold(folded); got != long {
		t.Errorf("unfolded to %q", got)
	}
	var w lines
	w.text("DESCRIPTION", "This is a long description that exists on a long line.")
	if string(w.out) != long {
		t.Errorf("wrote %q", w.out)
	}
}

func TestText(t *testing.T) {
	for _, c := range []struct{ source, in, want string }{
		{"RFC 5545, 3.3.11", "Project XYZ Final Review\nConference Room - 3B\nCome Prepared.",
			`Project XYZ Final Review\nConference Room - 3B\nCome Prepared.`},
		{"RFC 5545, 3.3.11: backslash, semicolon and comma are escaped, colon and quotes are not", `a\b;c,d:e"f`, `a\\b\;c\,d:e"f`},
		{"RFC 5545, 3.1: no controls but HTAB", "a\r\nb\x00\x1b\x7f\u0085c\td\re", `a\nb\nc` + "\tde"},
		{"Unicode 5.8: line and paragraph separators end a line", "a\u2028b\u2029c\u0084", `a\nb\nc`},
		{"RFC 5545, 3.1.4: UTF-8; Unicode 3.9: U+FFFD for what is not", "a\xffb\xe2\x82c", "a\uFFFDb\uFFFD\uFFFDc"},
		{"a replacement character that is written as one stays", "\uFFFD", "\uFFFD"},
	} {
		if got := string(appendText(nil, c.in)); got != c.want {
			t.Errorf("%s: %q became %q, want %q", c.source, c.in, got, c.want)
		}
	}
}

func TestParameter(t *testing.T) {
	for _, c := range []struct{ source, in, want string }{
		{"RFC 6868, 3.1", `George Herman "Babe" Ruth`, `George Herman ^'Babe^' Ruth`},
		{"RFC 6868, 3.2", "Pittsburgh Pirates\n115 Federal St\nPittsburgh, PA 15212", `"Pittsburgh Pirates^n115 Federal St^nPittsburgh, PA 15212"`},
		{"RFC 6868, 3: the circumflex itself", "a^b", "a^^b"},
		{"RFC 5545, 3.2: quoted for colon and semicolon; no controls", "a:b;c\x00\r", `"a:b;c"`},
		{"no backslash, which golang-ical takes for an escape", `a\b`, "ab"},
		{"an IANA name as it is", "America/Argentina/Buenos_Aires", "America/Argentina/Buenos_Aires"},
	} {
		if got := string(appendParam(nil, c.in)); got != c.want {
			t.Errorf("%s: %q became %q, want %q", c.source, c.in, got, c.want)
		}
	}
}

// TestFoldAtEveryOffset moves what must not be cut over the end of the line, one
// octet at a time.
func TestFoldAtEveryOffset(t *testing.T) {
	for _, tail := range []string{`\`, "\n", ";", `\\\\\`, "ä", "ト", "🦂", "  x", " ", "\t \tx", strings.Repeat(`\`, 200), strings.Repeat("🦂", 50), strings.Repeat(" ", 60) + "x", strings.Repeat("a b", 40)} {
		for n := range 160 {
			value := strings.Repeat("x", n) + tail
			var w lines
			w.text("SUMMARY", value)
			checkLines(t, string(w.out))
			if want := "SUMMARY:" + string(appendText(nil, value)) + "\r\n"; unfold(string(w.out)) != want {
				t.Fatalf("%d octets and %q: unfolded to %q, want %q", n, tail, unfold(string(w.out)), want)
			}
		}
	}
}

func TestFoldRandomText(t *testing.T) {
	random := rand.New(rand.NewPCG(5545, 31))
	alphabet := []rune("ab \\\\\\;,\n\té€ト🦂\u00a0\u200d")
	for range 3000 {
		value := make([]rune, random.IntN(400))
		for i := range value {
			if value[i] = alphabet[random.IntN(len(alphabet))]; random.IntN(4) == 0 {
				value[i] = rune(random.IntN(0x11_0000)) // surrogates too: they become U+FFFD
			}
		}
		var w lines
		w.text("DESCRIPTION", string(value))
		checkLines(t, string(w.out))
		if want := "DESCRIPTION:" + string(appendText(nil, string(value))) + "\r\n"; unfold(string(w.out)) != want {
			t.Fatalf("unfolded to %q, want %q", unfold(string(w.out)), want)
		}
	}
}
