package main

import (
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/spf13/afero"

	"vivary/plan"
	"vivary/plan/tidy"
	"vivary/schema"
)

// isTidy fails for a plan that tidy would write otherwise.
func isTidy(t *testing.T, name, text string) {
	t.Helper()
	if out, _ := tidy.Text(1, []byte(text)); string(out) != text {
		t.Errorf("%s is not tidy: it is to be\n%s", name, out)
	}
}

// What keepers learn from is tidy: the examples, what start writes, the plans on pages and the
// examples of the reference.
func TestWhatIsTaughtIsTidy(t *testing.T) {
	n := 0
	err := filepath.WalkDir(filepath.Join(repository, "examples"), func(path string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() || !strings.HasSuffix(path, plan.PlanSuffix) {
			return err
		}
		text, err := os.ReadFile(path)
		isTidy(t, path, string(text))
		n++
		return err
	})
	if err != nil || n < 40 {
		t.Fatal(n, err)
	}
	disk := afero.NewMemMapFs()
	at(disk, noon, "start", "c")
	at(disk, noon, "start", "c", "--sheet", "parabuthus-villosus")
	if s, out, e := at(disk, noon, "tidy", "c", "--check"); s != fine || out != "3 plans, tidy.\n" {
		t.Errorf("what start writes is not tidy: %s%s", out, e)
	}
	for _, name := range []string{"README.md", "examples/HOWTO.md"} {
		for _, f := range fences(t, name) {
			if f.lang == "hcl" {
				isTidy(t, name, f.text)
			}
		}
	}
	var examples func(b *schema.Block, head, end string)
	examples = func(b *schema.Block, head, end string) {
		depth := strings.Repeat("  ", strings.Count(head, "\n"))
		for _, in := range b.Blocks {
			shown := depth + strings.ReplaceAll(in.Example, "\n", "\n"+depth) + "\n"
			if in.Example != "" {
				isTidy(t, in.Name, head+strings.ReplaceAll(shown, depth+"\n", "\n")+end)
			}
			examples(in, head+depth+in.Name+" \"x\" {\n", depth+"}\n"+end)
		}
	}
	examples(schema.Plan, "", "")
}
