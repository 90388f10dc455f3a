package assist

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"vivary/compile"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema"
)

// body is a body that the schema has: the lines that open it, and those that shut it.
type body struct {
	open, shut string
	is         *schema.Block
	path       string
}

// bodies are all bodies of the schema, each once in each block in which it may stand.
func bodies() (all []body) {
	var walk func(b *schema.Block, open, shut, path string)
	walk = func(b *schema.Block, open, shut, path string) {
		all = append(all, body{open, shut, b, path})
		for _, c := range b.Blocks {
			label := ""
			if c.Label != "" {
				label = fmt.Sprintf(" %q", labelIn(c))
			}
			in := strings.Repeat("  ", strings.Count(open, "{"))
			walk(c, open+in+c.Name+label+" {\n", in+"}\n"+shut, path+"/"+c.Name)
		}
	}
	walk(schema.Plan, "", "", "")
	return all
}

// labelIn is the label of a block in its example.
func labelIn(b *schema.Block) string {
	for _, x := range newTree(b.Example, nil).root.blocks {
		if x.typ == b.Name {
			return x.label
		}
	}
	return "one"
}

func labels(all []Offer) (out []string) {
	for _, x := range all {
		out = append(out, x.Label)
	}
	return out
}

// empty is the result of a collection of which nothing is known.
func empty(t testing.TB) *compile.Result {
	return compiled(t, map[string]string{"a.care.hcl": "keeper \"lead\" {}\n"})
}

// In every body just that is offered which may stand there.
func TestBodies(t *testing.T) {
	r := empty(t)
	for _, b := range bodies() {
		var want []string
		for _, a := range mayStand(b.is) {
			want = append(want, a.Name)
		}
		for _, c := range b.is.Blocks {
			want = append(want, c.Name)
		}
		p := &Page{"b.care.hcl", []byte(b.open + b.shut), r}
		got := labels(p.Complete(len(b.open)))
		slices.Sort(got)
		slices.Sort(want)
		if !slices.Equal(got, want) {
			t.Errorf("%s: offered are %q, want %q", b.path, got, want)
		}
	}
}

// What is offered as an attribute is read without a finding about its line, whether with tab
// stops or without.
func TestInserted(t *testing.T) {
	files := folder(t, "../../examples/quillmoor")
	r := compiled(t, files)
	disk, reader := inMemory(t, files), new(plan.Reader)
	for _, b := range bodies() {
		p := &Page{"b.care.hcl", []byte(b.open + b.shut), r}
		for _, x := range p.Complete(len(b.open)) {
			if b.is == schema.Plan || x.Kind == KindBlock && !strings.Contains(x.Plain, "=") {
				continue
			}
			write(t, disk, "b.care.hcl", b.open+x.Plain+"\n"+b.shut)
			c, found, err := reader.Load(disk, "/c")
			if err != nil {
				t.Fatal(err)
			}
			for i := range found {
				f := &found[i]
				at := c.Files.Start(f.At)
				if at.File == "b.care.hcl" && int(f.At.Start) >= len(b.open) && int(f.At.End) <= len(b.open)+len(x.Plain) && textRule(f) {
					t.Errorf("%s: %q: %s: %s", b.path, x.Plain, f.Rule.ID, f.Text)
				}
			}
		}
	}
}

// textRule reports whether a finding is about the text itself, and not about a name that the
// collection does not have.
func textRule(f *finding.Finding) bool {
	return slices.Contains([]string{"value", "unknown-word", "syntax", "unit", "time-of-day", "time-zone", "too-many", "twice", "date"}, f.Rule.ID)
}

// Every word that an attribute allows is offered for it.
func TestChoices(t *testing.T) {
	r := empty(t)
	for _, b := range bodies() {
		for _, a := range mayStand(b.is) {
			line := b.open + a.Name + " = \""
			got := labels((&Page{"b.care.hcl", []byte(line + "\"\n" + b.shut), r}).Complete(len(line)))
			for _, c := range a.Choices {
				if !slices.Contains(got, c.Name) {
					t.Errorf("%s %s: %q is not offered", b.path, a.Name, c.Name)
				}
			}
		}
	}
}

// All that is named in the schema has names.
func TestVocabularies(t *testing.T) {
	for _, b := range bodies() {
		refs := []string{b.is.Names}
		for i := range b.is.Attrs {
			refs = append(refs, b.is.Attrs[i].Ref)
		}
		for _, ref := range refs {
			if ref != "" && vocabulary[ref] == nil {
				t.Errorf("%s: there are no names of a %s", b.path, ref)
			}
		}
	}
}

// Of every block, attribute and word of a choice it is said what it means.
func TestHovers(t *testing.T) {
	r := empty(t)
	says := func(text, of, doc string) {
		t.Helper()
		at := strings.Index(text, mark)
		p := &Page{"b.care.hcl", []byte(text[:at] + text[at+len(mark):]), r}
		if start, end, got := p.Hover(at); !strings.Contains(got, doc) || string(p.Text[start:end]) != of {
			t.Errorf("at %q: %q of %q, want %q of %q", text, got, p.Text[start:end], doc, of)
		}
	}
	for _, b := range bodies() {
		for _, a := range mayStand(b.is) {
			says(b.open+mark+a.Name+" = \"x\"\n"+b.shut, a.Name, a.Doc)
			for _, c := range a.Choices {
				if a.Kind == schema.Word || a.Kind == schema.Words {
					says(b.open+a.Name+" = \""+mark+c.Name+"\"\n"+b.shut, c.Name, c.Doc)
				}
			}
		}
		for _, c := range b.is.Blocks {
			says(b.open+mark+c.Name+" {}\n"+b.shut, c.Name, c.Doc)
		}
	}
	for _, w := range schema.LogWords {
		p := &Page{"b.care.log", []byte("2026-11-30 one " + w.Name), r}
		if _, _, got := p.Hover(len("2026-11-30 one ")); !strings.Contains(got, w.Doc) {
			t.Errorf("%s: %q", w.Name, got)
		}
	}
}

// Every word of the log is offered, also for an enclosure of which nothing is known.
func TestLogWords(t *testing.T) {
	line := "2026-11-30 one "
	got := labels((&Page{"b.care.log", []byte(line), empty(t)}).Complete(len(line)))
	for _, w := range schema.LogWords {
		if !slices.Contains(got, w.Name) {
			t.Errorf("%s is not offered", w.Name)
		}
	}
}
