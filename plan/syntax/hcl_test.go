package syntax

import (
	"bytes"
	"fmt"
	"io/fs"
	"math/big"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"
	"github.com/zclconf/go-cty/cty"

	"vivary/plan/source"
)

// theirs is a file as the HCL library reads it, in one text: blocks, attributes and
// values with their places. What a plan does not have is told as "computed".
func theirs(src []byte) (string, bool) {
	f, diags := hclsyntax.ParseConfig(src, "", hcl.InitialPos)
	if diags.HasErrors() {
		return "", false
	}
	var b strings.Builder
	theirBody(&b, f.Body.(*hclsyntax.Body))
	return b.String(), true
}

func theirBody(b *strings.Builder, body *hclsyntax.Body) {
	type item struct {
		at   int
		tell func()
	}
	var items []item
	for _, a := range body.Attributes {
		items = append(items, item{a.SrcRange.Start.Byte, func() {
			fmt.Fprintf(b, "%s@%d=", a.Name, a.NameRange.Start.Byte)
			theirValue(b, a.Expr)
			b.WriteByte('\n')
		}})
	}
	for _, x := range body.Blocks {
		items = append(items, item{x.TypeRange.Start.Byte, func() {
			fmt.Fprintf(b, "%s@%d", x.Type, x.TypeRange.Start.Byte)
			for i, l := range x.Labels {
				fmt.Fprintf(b, " %q@%d-%d", l, x.LabelRanges[i].Start.Byte, x.LabelRanges[i].End.Byte)
			}
			b.WriteString("{\n")
			theirBody(b, x.Body)
			fmt.Fprintf(b, "}@%d\n", x.CloseBraceRange.End.Byte)
		}})
	}
	slices.SortFunc(items, func(a, b item) int { return a.at - b.at })
	for _, x := range items {
		x.tell()
	}
}

func theirValue(b *strings.Builder, e hclsyntax.Expression) {
	r := e.Range()
	at := fmt.Sprintf("@%d-%d", r.Start.Byte, r.End.Byte)
	switch x := e.(type) {
	case *hclsyntax.TemplateExpr:
		var all string
		for _, part := range x.Parts {
			lit, ok := part.(*hclsyntax.LiteralValueExpr)
			if !ok || lit.Val.Type() != cty.String {
				b.WriteString("computed" + at)
				return
			}
			all += lit.Val.AsString()
		}
		fmt.Fprintf(b, "%q%s", all, at)
	case *hclsyntax.LiteralValueExpr:
		switch x.Val.Type() {
		case cty.Number:
			b.WriteString(x.Val.AsBigFloat().Text('g', 20) + at)
		case cty.Bool:
			fmt.Fprint(b, x.Val.True(), at)
		default:
			b.WriteString("computed" + at)
		}
	case *hclsyntax.TupleConsExpr:
		b.WriteByte('[')
		for _, item := range x.Exprs {
			theirValue(b, item)
			b.WriteByte(' ')
		}
		b.WriteString("]" + at)
	case *hclsyntax.UnaryOpExpr:
		b.WriteString("computed")
	default:
		b.WriteString("computed" + at)
	}
}

// ours is the same as this package reads it, and whether nothing is wrong.
func ours(src []byte) (string, bool) {
	var b strings.Builder
	f := Read(source.ID(1), src, 0, someWords, func(x *Block) bool {
		ourBlock(&b, x)
		return true
	})
	if len(f.Loose) > 0 {
		b.Reset() // the order of both is not kept
		b.WriteString("loose")
	}
	return b.String(), len(f.Mistakes) == 0
}

func ourBlock(b *strings.Builder, x *Block) {
	fmt.Fprintf(b, "%s@%d", x.Type, x.TypeAt.Start)
	for _, l := range x.Labels {
		fmt.Fprintf(b, " %q@%d-%d", l.Text, l.At.Start, l.At.End)
	}
	b.WriteString("{\n")
	type item struct {
		at   int32
		tell func()
	}
	var items []item
	for i := range x.Attrs {
		a := &x.Attrs[i]
		if x.Attr(a.Name) != a {
			items = append(items, item{a.At.Start, func() { b.WriteString("twice\n") }})
			continue
		}
		items = append(items, item{a.At.Start, func() {
			fmt.Fprintf(b, "%s@%d=", a.Name, a.NameAt.Start)
			ourValue(b, &a.Value)
			b.WriteByte('\n')
		}})
	}
	for _, in := range x.Blocks {
		items = append(items, item{in.Whole.Start, func() { ourBlock(b, in) }})
	}
	slices.SortFunc(items, func(a, b item) int { return int(a.at - b.at) })
	for _, i := range items {
		i.tell()
	}
	fmt.Fprintf(b, "}@%d\n", x.Whole.End)
}

func ourValue(b *strings.Builder, v *Value) {
	at := fmt.Sprintf("@%d-%d", v.At.Start, v.At.End)
	switch {
	case v.Kind == Text && !v.Filled:
		fmt.Fprintf(b, "%q%s", v.Text, at)
	case v.Kind == Number && v.Text[0] != '-':
		n, _, err := big.ParseFloat(v.Text, 10, 512, big.ToNearestEven)
		if err != nil {
			b.WriteString(err.Error())
			return
		}
		b.WriteString(n.Text('g', 20) + at)
	case v.Kind == Number:
		b.WriteString("computed")
	case v.Kind == Truth:
		b.WriteString(v.Text + at)
	case v.Kind == List:
		b.WriteByte('[')
		for i := range v.Items {
			ourValue(b, &v.Items[i])
			b.WriteByte(' ')
		}
		b.WriteString("]" + at)
	default:
		b.WriteString("computed" + at)
	}
}

// someWords are a few of the words of plans.
var someWords = &Words{
	Outer: map[string]bool{"collection": true, "room": true, "round": true, "enclosure": true, "keeper": true},
	Inner: map[string]bool{"housing": true, "animals": true, "care": true, "climate": true, "heater": true},
	Attrs: map[string]bool{"species": true, "room": true, "depth": true, "stage": true, "on": true, "warm_end": true},
}

// plans returns the texts of all plans of the repository.
func plans(t testing.TB) map[string][]byte {
	t.Helper()
	all := map[string][]byte{}
	err := filepath.WalkDir("../..", func(path string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() || !strings.HasSuffix(path, ".care.hcl") {
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

// What is read without a mistake is read as the HCL library reads it, to the byte: every
// plan and sheet of the repository.
func TestAsTheLibraryReadsIt(t *testing.T) {
	for path, src := range plans(t) {
		want, fine := theirs(src)
		got, sound := ours(src)
		if !fine || !sound {
			if fine != sound && !strings.Contains(path, "mistakes") {
				t.Errorf("%s: read by the library: %t, by us: %t", path, fine, sound)
			}
			continue
		}
		if got != want && got != "loose" {
			t.Errorf("%s differs:\n%s", path, firstDifference(got, want))
		}
	}
}

func firstDifference(got, want string) string {
	a, b := strings.Split(got, "\n"), strings.Split(want, "\n")
	for i := range min(len(a), len(b)) {
		if a[i] != b[i] {
			return fmt.Sprintf("ours   %s\ntheirs %s", a[i], b[i])
		}
	}
	return fmt.Sprintf("%d and %d lines", len(a), len(b))
}

// Whatever stands in a text: what is read without a mistake, the HCL library reads as the
// same, and every edit can be made.
func FuzzRead(f *testing.F) {
	for _, src := range plans(f) {
		if len(src) < 3000 {
			f.Add(src)
		}
	}
	for _, s := range oddities {
		f.Add([]byte(s))
	}
	f.Fuzz(func(t *testing.T, src []byte) { agree(t, src) })
}

// oddities are texts at the edges of the grammar.
var oddities = []string{
	"room \"a\" {}", "room a {}", "room a { depth = 1 }", "room a { depth = [1, \"b\", true,\n] }", "room \"a\\u00e9\" { depth = \"\\u0041\\n\" }",
	"room a { depth = \"$${x} %%{y} $5 100%\" }", "room a { depth = -1.5e3 }", "room a { # {\n// }\n/* \" */ depth = 1\n}\n", "\ufeffroom a {\n}\n",
	"room a {\r\n  depth = 1\r\n}\r\n", "room é {\n  depth = \"e\u0301\"\n}", "room a { depth = 1.e }", "room a { depth = 01 }", "room a { depth = \"a\" \"b\" }",
	"room a { depth = <<E\nx\nE\n}", "room a {\n depth = [\n# x\n1,\n2 # y\n]\n}", "room \"a\" \"b\" { }", "room \"$${a}\" {}", "room a { depth = [ [1], [] ] }",
	"room a { depth = \"x\" /* y */ }", "room a {\n depth = \"x\" /* \n */\n}", "room a-b_c { d-e_f = 1 }", "room a { depth = \"${x}\" }", "room a { depth = \"$$$${x}\" }",
}

func agree(t *testing.T, src []byte) {
	t.Helper()
	if !utf8.Valid(src) || bytes.IndexByte(src, 0) >= 0 {
		return // is not given to us
	}
	got, sound := ours(src)
	if !sound || got == "loose" || strings.Contains(got, "twice") {
		return
	}
	want, fine := theirs(src)
	if !fine {
		if strings.Contains(got, "computed") {
			return // words without quotes, of which package plan says that
		}
		t.Fatalf("the library does not read\n%q\nand we read\n%s", src, got)
	}
	if got != want && !strings.Contains(want, "computed") && !strings.Contains(got, "computed") {
		t.Fatalf("%q differs:\n%s", src, firstDifference(got, want))
	}
}

func TestOddities(t *testing.T) {
	for _, s := range oddities {
		agree(t, []byte(s))
		if _, fine := theirs([]byte(s)); fine {
			if got, sound := ours([]byte(s)); !sound && !strings.Contains(s, "<<") {
				t.Errorf("the library reads %q, and we do not: %s", s, got)
			}
		}
	}
}
