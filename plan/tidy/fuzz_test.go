package tidy_test

import (
	"bytes"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"

	"vivary/internal/hostile"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/plan/syntax"
	"vivary/plan/tidy"
	"vivary/schema"
)

// plans returns the texts of all plans of the repository.
func plans(t testing.TB) map[string][]byte {
	t.Helper()
	all := map[string][]byte{}
	err := filepath.WalkDir("../..", func(path string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() || !strings.HasSuffix(path, plan.PlanSuffix) {
			return err
		}
		all[path], err = os.ReadFile(path)
		return err
	})
	if err != nil || len(all) < 100 {
		t.Fatal(len(all), err)
	}
	return all
}

// said is a file as it is understood: its blocks with all that stands in them, in whatever
// order that may be, and what cannot be read of it.
func said(text []byte) string {
	o := plan.TreeOf(1, text)
	var b strings.Builder
	for _, x := range o.Blocks {
		saidBlock(&b, x, schema.Plan.Block(x.Type))
	}
	for _, a := range o.Loose {
		b.WriteString("loose " + string(text[a.At.Start:a.At.End]) + "\n")
	}
	for _, r := range o.Broken {
		fmt.Fprintf(&b, "broken %s %s %q\n", r.Type, r.Name, bytes.TrimSpace(text[r.At.Start:r.At.End]))
	}
	for _, f := range o.Found {
		b.WriteString(f.Text + "\n")
	}
	return b.String()
}

func saidBlock(b *strings.Builder, x *syntax.Block, of *schema.Block) {
	b.WriteString(x.Type)
	for _, l := range x.Labels {
		fmt.Fprintf(b, " %q", l.Text)
	}
	b.WriteString(" {\n")
	attrs := slices.Clone(x.Attrs)
	slices.SortStableFunc(attrs, func(a, b syntax.Attr) int { return strings.Compare(a.Name, b.Name) })
	for i := range attrs {
		b.WriteString(attrs[i].Name + " = ")
		var d *schema.Attr
		if of != nil {
			if d = of.Attr(attrs[i].Name); d == nil && of.Flattened(attrs[i].Name) != nil {
				d = of.Flattened(attrs[i].Name).Attr(attrs[i].Name)
			}
		}
		saidValue(b, &attrs[i].Value, d)
		b.WriteString("\n")
	}
	inner := slices.Clone(x.Blocks)
	slices.SortStableFunc(inner, func(a, b *syntax.Block) int { return strings.Compare(a.Type, b.Type) })
	for _, in := range inner {
		var d *schema.Block
		if of != nil {
			d = of.Block(in.Type)
		}
		saidBlock(b, in, d)
	}
	b.WriteString("}\n")
}

func saidValue(b *strings.Builder, v *syntax.Value, of *schema.Attr) {
	text := v.Text
	if of != nil && v.Kind == syntax.Text && !v.Filled {
		text = plan.Spelt(of, text)
	}
	fmt.Fprintf(b, "%d %t %q", v.Kind, v.Filled, text)
	for i := range v.Items {
		b.WriteString(", ")
		saidValue(b, &v.Items[i], of)
	}
}

// comments are those of a text that can be read, as the HCL library finds them, in order of
// what they say.
func comments(t *testing.T, text []byte) (all []string) {
	tokens, _ := hclsyntax.LexConfig(text, "", hcl.InitialPos)
	for _, x := range tokens {
		if x.Type == hclsyntax.TokenComment {
			var lines []string
			for line := range strings.SplitSeq(strings.TrimRight(string(x.Bytes), " \t\r\n"), "\n") {
				lines = append(lines, strings.TrimRight(line, " \t\r"))
			}
			all = append(all, strings.Join(lines, "\n"))
		}
	}
	slices.Sort(all)
	return all
}

// sound holds what is so of every text: what is tidy is tidy, says the same, has every comment,
// and is what the edits make of it; those of a part are among them.
func sound(t *testing.T, text []byte) {
	t.Helper()
	out, found := tidy.Text(1, text)
	if !utf8.Valid(text) || bytes.IndexByte(text, 0) >= 0 {
		if !bytes.Equal(out, text) || len(found) == 0 {
			t.Fatalf("%q is no text, and becomes %q", text, out)
		}
		return
	}
	if again, _ := tidy.Text(1, out); !bytes.Equal(again, out) {
		t.Fatalf("%q\nis tidy as\n%s\nand that as\n%s", text, out, again)
	}
	if a, b := said(text), said(out); a != b {
		t.Fatalf("%q\nsays\n%s\nand tidy\n%s\nit says\n%s", text, a, out, b)
	}
	edited, err := finding.Apply(text, tidy.Edits(1, text, source.Place{}))
	if err != nil || !bytes.Equal(edited, out) {
		t.Fatalf("%q\nis edited to\n%s\nand not to\n%s\n%v", text, edited, out, err)
	}
	if len(found) == 0 {
		if a, b := comments(t, text), comments(t, out); !slices.Equal(a, b) {
			t.Fatalf("%q\nhas the comments\n%q\nand tidy\n%s\n%q", text, a, out, b)
		}
	}
	at := source.Place{File: 1, Start: int32(len(text) / 3), End: int32(len(text) / 2)}
	part, err := finding.Apply(text, tidy.Edits(1, text, at))
	if err != nil {
		t.Fatal(err)
	}
	if whole, _ := tidy.Text(1, part); !bytes.Equal(whole, out) {
		t.Fatalf("%q\nin part tidy is\n%s\nand as a whole then\n%s\nnot\n%s", text, part, whole, out)
	}
}

// FuzzText: whatever stands in a text.
func FuzzText(f *testing.F) {
	for _, text := range plans(f) {
		if len(text) < 1500 {
			f.Add(text, []byte{})
			f.Add(text, []byte{1, 9, 4, 7, 30, 2, 6, 5})
		}
	}
	for _, s := range oddities {
		f.Add([]byte(s), []byte{})
	}
	f.Fuzz(func(t *testing.T, text, by []byte) {
		if len(by) > 0 && len(by) < 100 {
			text = []byte(hostile.Mutated(string(text), "", by).Plan)
		}
		sound(t, text)
	})
}

// oddities are texts at the edges of what is laid out.
var oddities = []string{
	"room a{}", "room \"a\" {\n}\n", "keeper \"a\" {} # x\nkeeper \"bcd\" {} // y\n", "/* a */ room /* b */ \"a\" /* c */ { /* d */ order /* e */ = /* f */ 1 /* g */\n} /* h */",
	"room \"a\" {\n  order = 1 /* a\n  b */\n  # c\n}\n# d", "round \"r\" {\n on = [ # a\n\n \"tue\" # b\n , /* c */ \"Wed\",\n # d\n\n # e\n ] # f\n at=\"0730\"\n}",
	"enclosure \"a\" {\n # 1\n\n # 2\n care \"x\" {}\n # 3\n\n species = \"s\"\n # 4\n\n housing {}\n title = \"t\"\n # 5\n}", "room \"a\" { order = [[1], /* x */ 2,\n3] }",
	"\ufeffroom \"a\" {\r\n\torder = 1\r\n\r\n\r\n}\r\n", "order = 1\nroom \"a\" {\n order = 1\n", "care \"x\" {\n}\n  room \"a\" {\n}", "room a {\n titel = 1\n order = 2\n foo = 3\n title = \"t\"\n}",
	"/**//**/ /**/", "/*\n*/ /* a */\nroom a {}", "room a { order = \"$${x}\" }\nroom b { order = \"\\u0032\\u0038C\" }",
}

func TestOddities(t *testing.T) {
	for _, s := range oddities {
		sound(t, []byte(s))
	}
}

func TestHostile(t *testing.T) {
	for in := range hostile.Inputs(4<<10, func(string) bool { return true }) {
		sound(t, []byte(in.Plan))
	}
}

// Every plan of the repository, as it stands and with its layout spoilt: what is spoilt comes
// back as what it was, tidy.
func TestEveryPlan(t *testing.T) {
	for path, text := range plans(t) {
		sound(t, text)
		want, _ := tidy.Text(1, text)
		if strings.Contains(path, "mistakes") && !strings.HasPrefix(path, "../../examples") {
			continue // most of them are mistakes of the text
		}
		for i, spoil := range spoilt {
			if i == len(spoilt)-1 && strings.Contains(path, "words-and-units") {
				continue // a name that is no name has its place by where it was written
			}
			spoiled := spoil(want)
			if got, _ := tidy.Text(1, spoiled); !bytes.Equal(got, want) {
				t.Errorf("%s, spoilt, is not as it was: %s", path, firstDifference(got, want))
			}
		}
	}
}

func firstDifference(got, want []byte) string {
	a, b := strings.Split(string(got), "\n"), strings.Split(string(want), "\n")
	for i := range min(len(a), len(b)) {
		if a[i] != b[i] {
			return fmt.Sprintf("line %d\n%s\nin place of\n%s", i+1, a[i], b[i])
		}
	}
	return fmt.Sprintf("%d and %d lines", len(a), len(b))
}

// spoilt are ways to spoil the layout of a text.
var spoilt = []func([]byte) []byte{
	func(b []byte) []byte { return bytes.ReplaceAll(b, []byte{'\n'}, []byte("\r\n")) },
	func(b []byte) []byte { return append([]byte("\ufeff"), bytes.TrimSpace(b)...) },
	func(b []byte) []byte { return bytes.ReplaceAll(b, []byte("\n\n"), []byte("\n \t\n\n\n")) },
	func(b []byte) []byte { // no indents, and more of them
		var out []byte
		for i, line := range bytes.SplitAfter(b, []byte{'\n'}) {
			out = append(append(out, strings.Repeat("\t", i%3)...), bytes.TrimLeft(line, " ")...)
		}
		return out
	},
	func(b []byte) []byte { // nothing aligned, and blanks behind
		var out []byte
		for line := range bytes.SplitSeq(bytes.TrimSuffix(b, []byte{'\n'}), []byte{'\n'}) {
			if name, value, ok := bytes.Cut(line, []byte(" = ")); ok && !bytes.ContainsAny(name, "{\"#") {
				line = slices.Concat(bytes.TrimRight(name, " "), []byte{'='}, value)
			}
			out = append(append(out, line...), "  \n"...)
		}
		return out
	},
	func(b []byte) []byte { // attributes the other way round
		lines := bytes.SplitAfter(b, []byte{'\n'})
		for from := 0; from < len(lines); from++ {
			to := from
			for to < len(lines) && oneAttr.Match(lines[to]) {
				to++
			}
			slices.Reverse(lines[from:to])
			from = to
		}
		return bytes.Join(lines, nil)
	},
}

// oneAttr is a line with an attribute and nothing else. A note or a figure may stand twice in a
// block, in one with a mistake.
var oneAttr = regexp.MustCompile(`^ *\w+ += [^\[#]*(\[[^\[#]*\])?\n$`)
