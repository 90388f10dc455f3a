package main

import (
	"os"
	"strings"
	"testing"
	"time"

	"github.com/spf13/afero"
)

// TestReview: the example of a change and its comparison in all forms, as a reader gets it. It is
// short enough to be read to the end; REVIEW=write writes it anew.
func TestReview(t *testing.T) {
	t.Chdir("../..")
	day := time.Date(2026, 12, 1, 12, 0, 0, 0, time.UTC)
	for form, name := range map[string]string{"text": "comparison.txt", "markdown": "comparison.md", "json": "comparison.json"} {
		status, out, errs := at(afero.NewOsFs(), day, "compare", "examples/quillmoor", "examples/review/quillmoor", "--format", form)
		if status != refused || errs != "" {
			t.Errorf("%s: status %d, %s", form, status, errs)
		}
		name = "examples/review/" + name
		if os.Getenv("REVIEW") == "write" {
			if err := os.WriteFile(name, []byte(out), 0o644); err != nil {
				t.Fatal(err)
			}
			if form == "markdown" {
				drawComment(t, out, "examples/review/comparison.png")
			}
		}
		if is, err := os.ReadFile(name); err != nil || string(is) != out {
			t.Errorf("%s is not what is printed, %v: look at it, and write it anew", name, err)
		}
		open, _, _ := strings.Cut(out, "<details>")
		if n := strings.Count(open, "\n"); form != "json" && n > 60 {
			t.Errorf("%s has %d lines: nobody reads it to the end", name, n)
		}
	}
	// Six things differ, and nothing else.
	_, out, _ := at(afero.NewOsFs(), day, "compare", "examples/quillmoor", "examples/review/quillmoor", "--format", "json")
	if n := strings.Count(out, `"effect": `); n != 6 {
		t.Errorf("%d pieces differ between the two", n)
	}
}
