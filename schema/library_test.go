package schema_test

import (
	"io/fs"
	"path"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"vivary/schema"
	"vivary/schema/quantity"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"
	"github.com/zclconf/go-cty/cty"
	"github.com/zclconf/go-cty/cty/convert"
)

// These tests read the library as plain HCL. They hold the data to the schema and
// to each other; whether a figure is true is for its source to say.

// TestLibraryIsWellFormed checks that every sheet uses the language as described
// and says of every fact where it is from.
func TestLibraryIsWellFormed(t *testing.T) {
	for file, blocks := range library(t) {
		for _, b := range blocks {
			if b.kind != "source" && b.label != file {
				t.Errorf("%s: block %q: the file should be named as its block", file, b.label)
			}
			wellFormed(t, b, schema.Plan, nil)
		}
	}
}

// sheet is the type in which a block stands, nil for none: it says for all where they are
// from.
func wellFormed(t *testing.T, b *block, outer *schema.Block, sheet *block) {
	def := outer.Block(b.kind)
	if def == nil {
		t.Errorf("%s: no block %q in %s", b.at, b.kind, outer.Name)
		return
	}
	for name, v := range b.attrs {
		if f := def.Shortened(name); f != nil {
			if !fits(v, f.Kind, f.Dimension, f.Choices) {
				t.Errorf("%s: %s = %q does not fit", b.at, name, v)
			}
		} else if a := def.Attr(name); a == nil {
			t.Errorf("%s: no attribute %q in %s", b.at, name, b.kind)
		} else if !fits(v, a.Kind, a.Dimension, a.Choices) {
			t.Errorf("%s: %s = %q is not as the schema wants it", b.at, name, v)
		}
	}
	for i := range def.Attrs {
		if def.Attrs[i].Required && b.attrs[def.Attrs[i].Name] == nil {
			t.Errorf("%s: %s is missing", b.at, def.Attrs[i].Name)
		}
	}
	if def.Attr("quality") != nil && def != schema.Species {
		for _, name := range []string{"source", "quality", "seen"} {
			if b.attrs[name] == nil && (sheet == nil || sheet.attrs[name] == nil) {
				t.Errorf("%s: does not say %s", b.at, name)
			}
		}
	}
	if b.kind == "figure" {
		list := schema.Figures
		if outer == schema.Feeder {
			list = schema.FeederFigures
		}
		f := schema.FindFigure(list, b.label)
		if f == nil {
			t.Errorf("%s: no figure of that name", b.at)
		} else if sheet != nil && multiple.MatchString(b.text("value")) {
			// whether the figure can have one is for package plan, which reads it
		} else if !fits(b.attrs["value"], f.Kind, f.Dimension, f.Choices) {
			t.Errorf("%s: value %q does not fit", b.at, b.text("value"))
		} else if b.attrs["stages"] != nil && !f.ByStage {
			t.Errorf("%s: does not differ between stages", b.at)
		}
	}
	if b.kind == "need" && schema.FindNeed(b.label) == nil {
		t.Errorf("%s: no need of that name", b.at)
	}
	if b.kind == "state" && schema.FindState(b.label) == nil {
		t.Errorf("%s: no state of that name", b.at)
	}
	if b.kind == "care" && schema.FindKind(b.careKind()) == nil {
		t.Errorf("%s: no kind of care of that name", b.at)
	}
	for _, s := range b.attrs["stages"] {
		if !named(schema.Stages, s) {
			t.Errorf("%s: no stage %q", b.at, s)
		}
	}
	if def == schema.Type || def == schema.Species {
		sheet = b
	}
	for _, in := range b.inner {
		wellFormed(t, in, def, sheet)
	}
}

// TestLibrarySources checks that every source named exists and every source is used.
func TestLibrarySources(t *testing.T) {
	lib := library(t)
	known, used := map[string]bool{}, map[string]bool{}
	for _, blocks := range lib {
		for _, b := range blocks {
			if b.kind == "source" {
				if known[b.label] {
					t.Errorf("%s: twice", b.at)
				}
				known[b.label] = true
			}
		}
	}
	inText := regexp.MustCompile(`\b(O?[PK][0-9]+[a-d]?|[FGN][0-9]+[a-d]?|[CTA][0-9]+[a-z]?|OS[0-9]+|S[0-9]+[a-c])\b`)
	for _, s := range schema.States {
		for row, may := range s.May {
			for _, id := range inText.FindAllString(may.Source, -1) {
				used[id] = true
				if !known[id] {
					t.Errorf("state %s, %s: source %q is not in schema/sources", s.Name, schema.Row(row), id)
				}
			}
		}
	}
	for _, blocks := range lib {
		each(blocks, func(b *block) {
			ids := slices.Clone(b.attrs["source"])
			for _, name := range []string{"disputed", "note", "because"} {
				ids = append(ids, inText.FindAllString(b.text(name), -1)...)
			}
			for _, id := range ids {
				used[id] = true
				if !known[id] {
					t.Errorf("%s: source %q is not in schema/sources", b.at, id)
				}
			}
		})
	}
	for id := range known {
		if !used[id] {
			t.Errorf("source %q is not used", id)
		}
	}
}

// TestStatedOnce checks that no sheet states a figure twice for a stage.
func TestStatedOnce(t *testing.T) {
	for _, kind := range []string{"species", "type"} {
		for _, s := range sheets(t, kind) {
			for _, stage := range schema.Stages {
				for _, f := range schema.Figures {
					if n := len(s.figures(f.Name, stage.Name)); n > 1 {
						t.Errorf("%s: %d figures %q for stage %s", s.at, n, f.Name, stage.Name)
					}
				}
			}
		}
	}
}

// TestFeeders checks that no feeder lacks a required figure or a size to offer.
func TestFeeders(t *testing.T) {
	for _, s := range sheets(t, "feeder") {
		for _, f := range schema.FeederFigures {
			if n := len(s.figures(f.Name, "")); f.Required && n == 0 || n > 1 {
				t.Errorf("%s: %d figures %q", s.at, n, f.Name)
			}
		}
		var before *block
		for _, b := range s.inner {
			if b.kind != "size" {
				continue
			}
			if b.attrs["mass"] == nil || b.attrs["length"] == nil {
				t.Errorf("%s: no mass or no length", b.at)
			} else if before != nil {
				grows(t, before, b, "mass", quantity.Mass)
				grows(t, before, b, "length", quantity.Length)
			}
			before = b
		}
		if before == nil {
			t.Errorf("%s: no size", s.at)
		}
	}
}

// grows checks that a size is more than the one before it: neither end of it less, and
// one of them more.
func grows(t *testing.T, before, b *block, name string, d quantity.Dimension) {
	t.Helper()
	was, err := quantity.ParseRange(before.text(name), d)
	is, err2 := quantity.ParseRange(b.text(name), d)
	if err != nil || err2 != nil || is.Low < was.Low || is.High < was.High || is.Low+is.High == was.Low+was.High {
		t.Errorf("%s: %s of %q does not grow after %q", b.at, name, b.text(name), before.text(name))
	}
}

// The trade calls several feeders by these names. Which is meant, only the keeper knows.
var sharedNames = map[string]string{
	"field cricket":        "black-cricket steppe-cricket",
	"feldgrille":           "black-cricket steppe-cricket",
	"orange-spotted roach": "orange-spot-roach roach",
	"maggot":               "blow-fly-larva house-fly-larva",
	"fliegenmade":          "blow-fly-larva house-fly-larva",
	"pinky":                "blow-fly-larva pinky-mouse",
	"pinkie":               "blow-fly-larva pinky-mouse",
	"galleria mellonella":  "wax-moth waxworm", // of any stage
	"lucilia sericata":     "blow-fly blow-fly-larva",
	"musca domestica":      "house-fly house-fly-larva",
}

// TestFeederNames checks that no name means two feeders, those excepted of which that is
// known, and none two sizes of one.
func TestFeederNames(t *testing.T) {
	of := map[string][]string{}
	for _, s := range sheets(t, "feeder") {
		names := slices.Concat([]string{s.label, s.text("title"), s.text("plural")}, s.attrs["also"])
		if latin := strings.Fields(s.text("latin")); len(latin) > 1 {
			names = append(names, strings.Trim(latin[0]+" "+latin[1], ","))
		}
		own := map[string]bool{}
		for _, n := range names {
			n = strings.ToLower(n)
			for _, form := range []string{n, strings.ReplaceAll(n, "-", " ")} {
				if !own[form] {
					own[form] = true
					of[form] = append(of[form], s.label)
				}
			}
		}
		sizes := map[string]bool{}
		for _, b := range s.inner {
			for _, n := range slices.Concat([]string{b.label}, b.attrs["also"]) {
				if n = strings.ToLower(n); b.kind == "size" && sizes[n] {
					t.Errorf("%s: %q means two sizes", s.at, n)
				}
				if b.kind == "size" {
					sizes[n] = true
				}
			}
		}
	}
	shared := map[string]string{}
	for n, all := range sharedNames {
		shared[strings.ReplaceAll(n, "-", " ")], shared[n] = all, all
	}
	for n, all := range of {
		slices.Sort(all)
		if got := strings.Join(all, " "); len(all) > 1 && shared[n] != got || len(all) == 1 && shared[n] != "" {
			t.Errorf("%q is a name of %s, not of %q", n, got, shared[n])
		}
	}
}

// block is a block of a sheet with its values as text, a list of one where it is
// not a list.
type block struct {
	at, kind, label string
	attrs           map[string][]string
	inner           []*block
}

func (b *block) text(name string) string { return strings.Join(b.attrs[name], ", ") }

func (b *block) careKind() string {
	if k := b.text("kind"); k != "" {
		return k
	}
	return b.label
}

// holds reports whether the block is for a stage.
func (b *block) holds(stage string) bool {
	return b.attrs["stages"] == nil || slices.Contains(b.attrs["stages"], stage)
}

// figures returns the figures of a name that hold for a stage, without those of
// one instar.
func (b *block) figures(name, stage string) (list []*block) {
	for _, f := range b.inner {
		if f.kind == "figure" && f.label == name && f.attrs["instar"] == nil && f.holds(stage) {
			list = append(list, f)
		}
	}
	return list
}

func each(blocks []*block, do func(*block)) {
	for _, b := range blocks {
		do(b)
		each(b.inner, do)
	}
}

// fits reports whether values are of a kind.
// multiple is the form of a figure of a type that follows from the size of the animal.
var multiple = regexp.MustCompile(` (length|span)$`)

func fits(v []string, k schema.Kind, d quantity.Dimension, words []schema.Choice) bool {
	var err error
	text := strings.Join(v, ", ")
	switch k {
	case schema.Quantity:
		_, err = quantity.Parse(text, d)
	case schema.Range:
		_, err = quantity.ParseRange(text, d)
	case schema.Numbers:
		return regexp.MustCompile(`^[0-9]+(\.[0-9]+)?( to [0-9]+(\.[0-9]+)?)?$`).MatchString(text)
	case schema.Number, schema.Whole:
		_, err = strconv.ParseFloat(text, 64)
	case schema.Truth:
		return text == "true" || text == "false"
	case schema.Every:
		_, err = quantity.ParseInterval(text)
	case schema.Date:
		return regexp.MustCompile(`^20[0-9]{2}-[01][0-9]-[0-3][0-9]$`).MatchString(text)
	case schema.Word:
		return named(words, text)
	case schema.Words:
		for _, w := range strings.Split(text, ", ") {
			if !named(words, w) {
				return false
			}
		}
	}
	return err == nil && text != ""
}

func named(words []schema.Choice, s string) bool {
	return slices.ContainsFunc(words, func(c schema.Choice) bool { return c.Name == s })
}

// sheets returns the blocks of one kind.
func sheets(t *testing.T, kind string) (list []*block) {
	for _, blocks := range library(t) {
		for _, b := range blocks {
			if b.kind == kind {
				list = append(list, b)
			}
		}
	}
	if len(list) == 0 {
		t.Fatalf("no %s in the library", kind)
	}
	return list
}

// library reads every file of the library, by its name without folder and ending.
func library(t *testing.T) map[string][]*block {
	t.Helper()
	lib := map[string][]*block{}
	err := fs.WalkDir(schema.Library, ".", func(name string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		src, err := fs.ReadFile(schema.Library, name)
		if err != nil {
			return err
		}
		f, diags := hclsyntax.ParseConfig(src, name, hcl.InitialPos)
		if diags.HasErrors() {
			return diags
		}
		file := strings.TrimSuffix(path.Base(name), ".care.hcl")
		lib[file] = read(t, f.Body.(*hclsyntax.Body), file).inner
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	return lib
}

func read(t *testing.T, body *hclsyntax.Body, at string) *block {
	b := &block{at: at, attrs: map[string][]string{}}
	for name, a := range body.Attributes {
		v, diags := a.Expr.Value(nil) // no variables, no functions
		if diags.HasErrors() {
			t.Errorf("%s: %v", at, diags)
			continue
		}
		b.attrs[name] = texts(v)
	}
	for _, in := range body.Blocks {
		c := read(t, in.Body, at+": "+in.Type+" "+strings.Join(in.Labels, " "))
		c.kind, c.label = in.Type, strings.Join(in.Labels, " ")
		b.inner = append(b.inner, c)
	}
	return b
}

// texts returns a literal as text; one that is neither text, number, truth nor a
// list of them is returned empty, and so does not fit.
func texts(v cty.Value) (list []string) {
	if v.Type().IsTupleType() {
		for _, e := range v.AsValueSlice() {
			list = append(list, texts(e)...)
		}
		return list
	}
	if s, err := convert.Convert(v, cty.String); err == nil && s.IsKnown() && !s.IsNull() {
		return []string{s.AsString()}
	}
	return nil
}
