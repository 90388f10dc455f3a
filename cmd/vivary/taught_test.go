package main

import (
	"os"
	"regexp"
	"strings"
	"testing"

	"github.com/spf13/afero"
)

// noteTaught finds the notes that a page teaches.
var noteTaught = regexp.MustCompile(`(?m)^ *vivary note (.+)$`)

// shellWords parts a command line as a shell does, as far as pages need it.
func shellWords(line string) (words []string) {
	for i, part := range strings.Split(line, `"`) {
		if i%2 == 1 {
			words = append(words, part)
		} else {
			words = append(words, strings.Fields(part)...)
		}
	}
	return words
}

// What start and the README teach first is written without a word of caution.
func TestTaughtNotes(t *testing.T) {
	readme, err := os.ReadFile("../../README.md")
	if err != nil {
		t.Fatal(err)
	}
	disk := afero.NewMemMapFs()
	at(disk, noon, "start", "c")
	taught, _ := afero.ReadFile(disk, "c/records/README.txt")
	notes := noteTaught.FindAllStringSubmatch(string(taught)+string(readme), -1)
	if len(notes) < 3 {
		t.Fatalf("only %d notes are taught", len(notes))
	}
	tubs := ""
	for _, n := range []string{"1", "2", "7", "8", "9", "10", "11", "12"} {
		plan, _ := afero.ReadFile(disk, "c/enclosures/burrow-a.care.hcl")
		tubs += strings.NewReplacer("\"burrow-a\"", "\"tub-"+n+"\"", "Burrow A", "Tub "+n).Replace(string(plan))
	}
	_ = afero.WriteFile(disk, "c/tubs.care.hcl", []byte(tubs), 0o644)
	for i, n := range notes {
		own := afero.NewCopyOnWriteFs(disk, afero.NewMemMapFs())
		if s, out, e := at(own, noon, append([]string{"note", "--in", "c"}, shellWords(n[1])...)...); s != fine || e != "" || out == "" {
			t.Errorf("%d: %s: status %d, %s%s", i, n[0], s, out, e)
		}
	}
}
