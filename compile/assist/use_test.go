package assist

import (
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/rogpeppe/go-internal/txtar"
)

var update = flag.Bool("update", false, "write what is offered and said into testdata/use")

// mark is where the cursor stands in a page of testdata/use.
const mark = "▮"

// TestUse holds what a keeper of Quillmoor is offered or told in situations of their day. Each
// file has the page as it is typed, with a mark where the cursor stands, and then the first
// five offers with the text that the best would put in, or what is said of the word.
func TestUse(t *testing.T) {
	files, err := filepath.Glob("testdata/use/*.txtar")
	if err != nil || len(files) < 20 {
		t.Fatalf("%d situations: %v", len(files), err)
	}
	r := compiled(t, folder(t, "../../examples/quillmoor"))
	for _, file := range files {
		t.Run(strings.TrimSuffix(filepath.Base(file), ".txtar"), func(t *testing.T) {
			a, err := txtar.ParseFile(file)
			if err != nil || len(a.Files) != 2 {
				t.Fatalf("%d files: %v", len(a.Files), err)
			}
			before, after, marked := strings.Cut(strings.TrimSuffix(string(a.Files[0].Data), "\n"), mark)
			if !marked {
				t.Fatal("no mark")
			}
			p := &Page{a.Files[0].Name, []byte(before + after), r}
			got := ""
			switch a.Files[1].Name {
			case "offers":
				got = firstFive(p.Complete(len(before)))
			case "hover":
				_, _, got = p.Hover(len(before))
				got += "\n"
			}
			got = strings.ReplaceAll(got, "/c/", "")
			if *update {
				a.Files[1].Data = []byte(got)
				if err := os.WriteFile(file, txtar.Format(a), 0o644); err != nil {
					t.Fatal(err)
				}
			} else if want := string(a.Files[1].Data); got != want {
				t.Errorf("got:\n%swant:\n%s", got, want)
			}
		})
	}
}

func firstFive(all []Offer) string {
	var b strings.Builder
	for _, x := range all[:min(len(all), 5)] {
		fmt.Fprintf(&b, "%s: %s\n", x.Label, x.Detail)
	}
	if len(all) > 0 {
		fmt.Fprintf(&b, "\nthe first puts in: %s\n", strings.ReplaceAll(all[0].Edit.Text, "\n", "\n    "))
	}
	return b.String()
}
