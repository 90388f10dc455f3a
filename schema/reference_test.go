package schema

import (
	"flag"
	"os"
	"testing"
)

var update = flag.Bool("update", false, "write the generated page")

// The reference page is what Reference makes: a change of the language without the
// page fails here.
func TestReferencePage(t *testing.T) {
	const page = "REFERENCE.md"
	want := Reference()
	if *update {
		if err := os.WriteFile(page, []byte(want), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	got, err := os.ReadFile(page)
	if err != nil || string(got) != want {
		t.Fatalf("%s is stale: run go test ./schema -run Reference -update (%v)", page, err)
	}
}

// Everything in the language says what it is and shows how it is written.
func TestEverythingIsDescribed(t *testing.T) {
	seen := map[*Block]bool{}
	var walk func(b *Block)
	walk = func(b *Block) {
		if seen[b] {
			return
		}
		seen[b] = true
		if b.Doc == "" {
			t.Errorf("block %s has no description", b.Name)
		}
		names := map[string]bool{}
		for _, a := range b.Attrs {
			if a.Doc == "" || a.Example == "" && a.Name != "disputed" {
				t.Errorf("%s.%s has no description or example", b.Name, a.Name)
			}
			if names[a.Name] {
				t.Errorf("%s.%s is there twice", b.Name, a.Name)
			}
			names[a.Name] = true
			if (a.Kind == Ref || a.Kind == Refs) && Plan.Block(a.Ref) == nil {
				t.Errorf("%s.%s names blocks of type %q, which there are not", b.Name, a.Name, a.Ref)
			}
			if (a.Kind == Quantity || a.Kind == Range) && a.Dimension == 0 {
				t.Errorf("%s.%s has no dimension", b.Name, a.Name)
			}
		}
		for _, c := range b.Flat {
			for _, a := range c.Attrs {
				if first := b.Flattened(a.Name); first != nil && first != c {
					t.Errorf("%s.%s is of %s and of %s", b.Name, a.Name, first.Name, c.Name)
				}
			}
		}
		for _, c := range b.Blocks {
			if names[c.Name] {
				t.Errorf("%s.%s is an attribute and a block", b.Name, c.Name)
			}
			walk(c)
		}
	}
	walk(Plan)
}
