package editor

import (
	"slices"
	"testing"
	"time"
	"unicode/utf16"

	"vivary/cmd/internal/protocol"
	"vivary/compile"
	"vivary/compile/margin"
	"vivary/internal/planned"
	"vivary/plan/source"
)

// Where tokens are told they are found again by whoever counts as the editor does: letters
// beyond the first plane are two units, those that combine are each one.
func TestTokensAreCountedAsTheEditorDoes(t *testing.T) {
	const text = "# 🦂🦂 e\u0301\ncollection \"c\" {\n  title = \"🦂 Ve\u0301lin\" # 🦎 x\n  time_zone = \"UTC\"\n}\r\nkeeper \"a\" { title = \"𝔄\" } // 🦂\n"
	c, found := planned.Files(t, planned.With(text, ""))
	r := compile.Compile(c, found, time.Date(2026, 11, 30, 12, 0, 0, 0, time.UTC))
	id := c.Files.Files()[0]
	tokens := margin.Tokens(r, id)
	for _, encoding := range []protocol.Encoding{protocol.UTF8, protocol.UTF16} {
		lines := protocol.NewLines([]byte(text), encoding)
		at := func(p source.Place) protocol.Range { return lines.Range(int(p.Start), int(p.End)) }
		data := told(tokens, at, nil)
		if len(data) != 5*len(tokens) || len(tokens) < 12 {
			t.Fatalf("%d tokens, %d numbers", len(tokens), len(data))
		}
		line, from := 0, 0
		for i, x := range tokens {
			d := data[5*i:]
			if d[0] > 0 {
				from = 0
			}
			line, from = line+int(d[0]), from+int(d[1])
			want := c.Files.Of(x.At)
			if got := cut(text, encoding, line, from, int(d[2])); got != want {
				t.Errorf("%s: line %d, %d, %d: %q, not %q", encoding, line, from, d[2], got, want)
			}
			if int(d[3]) >= len(legend.TokenTypes) {
				t.Errorf("%q is of no type", want)
			}
		}
		some := told(tokens, at, &protocol.Range{Start: protocol.Position{Line: 2}, End: protocol.Position{Line: 3}})
		if len(some) == 0 || len(some) >= len(data) || some[0] != 2 {
			t.Errorf("of two lines: %v", some)
		}
	}
}

// cut takes a stretch out of a line, counted from the beginning.
func cut(text string, e protocol.Encoding, line, from, n int) string {
	lines := slices.Collect(func(yield func(string) bool) {
		for len(text) > 0 {
			i := slices.Index([]byte(text), '\n')
			if i < 0 {
				i = len(text) - 1
			}
			if !yield(text[:i]) {
				return
			}
			text = text[i+1:]
		}
	})
	if e == protocol.UTF8 {
		return lines[line][from : from+n]
	}
	return string(utf16.Decode(utf16.Encode([]rune(lines[line]))[from : from+n]))
}

// The legend has standard types only, each once, and one for each sort and name.
func TestLegend(t *testing.T) {
	standard := []string{"namespace", "type", "class", "enum", "interface", "struct", "typeParameter", "parameter", "variable", "property", "enumMember",
		"event", "function", "method", "macro", "keyword", "modifier", "comment", "string", "number", "regexp", "operator", "decorator"}
	for i, x := range legend.TokenTypes {
		if !slices.Contains(standard, x) || slices.Index(legend.TokenTypes, x) != i {
			t.Errorf("%s", x)
		}
	}
	for _, x := range legend.TokenModifiers {
		if !slices.Contains([]string{"declaration", "definition", "readonly", "static", "deprecated", "abstract", "async", "modification", "documentation", "defaultLibrary"}, x) {
			t.Errorf("%s", x)
		}
	}
	for s := margin.BlockType; s <= margin.Remark; s++ {
		if !slices.Contains(legend.TokenTypes, tokenTypes[s]) {
			t.Errorf("sort %d is told as %q", s, tokenTypes[s])
		}
	}
	for of, x := range nameTypes {
		if !slices.Contains(legend.TokenTypes, x) {
			t.Errorf("%s is told as %q", of, x)
		}
	}
}
