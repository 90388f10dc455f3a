package main

import (
	"net/http/httptest"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"github.com/spf13/afero"
)

// The example of each command does what the command says, in the collection of the examples.
func TestExamplesOfCommands(t *testing.T) {
	t.Setenv("XDG_CONFIG_HOME", "/.settings")
	server := httptest.NewServer(&shelf{objects: map[string]string{}})
	defer server.Close()
	here := strings.NewReplacer("https://tasks.example", server.URL, "127.0.0.1:8424", "127.0.0.1:0", "/srv/www/", "") // what is outside is here
	quillmoor, _ := copied("examples/quillmoor")
	inGit := quillmoorInGit(t)
	inGit.edit("rooms.care.hcl", "East room", "The east room")
	inGit.commit("A title")
	for _, c := range commands {
		disk := quillmoor
		if c.name == "start" {
			disk = afero.NewMemMapFs()
		}
		words := shellWords(here.Replace(c.try))
		if words[0] != "vivary" || words[1] != c.name {
			t.Errorf("%s is no example of %s", c.try, c.name)
			continue
		}
		if c.name == "compare" || c.name == "history" { // of what is in git
			if out := inGit.vivary(fine, words[1:]...); out == "" {
				t.Errorf("%s says nothing", c.try)
			}
		} else if status, out, errs := at(disk, noon, words[1:]...); status != fine || out == "" && c.name != "editor" {
			t.Errorf("%s: status %d: %s%s", c.try, status, out, errs)
		}
		if _, out, _ := at(nil, noon, "help", c.name); !strings.Contains(out, c.try) {
			t.Errorf("help %s shows no example", c.name)
		}
	}
}

// The pages of the manual are what the table of commands says, and both programs that show
// such pages show each without a warning.
func TestManual(t *testing.T) {
	dir := filepath.Join(t.TempDir(), "man1")
	disk := afero.NewOsFs()
	for range 2 { // pages of ours are replaced
		status, out, errs := at(disk, noon, "man", dir)
		if status != fine || errs != "" || strings.Count(out, "\n") != len(commands)+1 {
			t.Fatal(status, out, errs)
		}
	}
	for _, c := range append(commands, command{name: ""}) {
		page := filepath.Join(dir, strings.TrimSuffix("vivary-"+c.name, "-")+".1")
		for _, line := range [][]string{{"mandoc", "-T", "lint", "-W", "warning", page}, {"man", "-l", "--warnings", "-E", "UTF-8", "-P", "cat", page}} {
			x := exec.Command(line[0], line[1:]...)
			x.Env = append(os.Environ(), "LC_ALL=C.UTF-8", "MANWIDTH=200")
			var wrong strings.Builder
			x.Stderr = &wrong
			out, err := x.Output()
			if err != nil || wrong.Len() > 0 || line[0] == "mandoc" && len(out) > 0 {
				t.Errorf("%s: %v %s%s", strings.Join(line, " "), err, out, &wrong)
			}
			if line[0] == "man" {
				shows(t, page, string(out), &c)
			}
		}
	}
	other := filepath.Join(dir, "vivary-due.1")
	if err := os.WriteFile(other, []byte(".TH DUE 1\n"), 0o644); err != nil {
		t.Fatal(err)
	}
	if status, _, errs := at(disk, noon, "man", dir); status != refused || !strings.Contains(errs, "vivary did not make it") {
		t.Errorf("a page of somebody else: %d, %s", status, errs)
	}
}

// shows holds that a page has what there is to say of a command, word for word.
func shows(t *testing.T, page, shown string, c *command) {
	t.Helper()
	flat := strings.Join(strings.Fields(shown), " ")
	want := []string{c.short, c.long, c.try}
	for _, f := range flagTable {
		if c.name != "" && c.has(f.name) {
			want = append(want, strings.TrimSpace("--"+f.name+" "+f.value), f.doc[1:])
		}
	}
	for _, text := range want {
		if text := strings.Join(strings.Fields(text), " "); !strings.Contains(flat, text) {
			t.Errorf("%s does not show %q:\n%s", page, text, shown)
		}
	}
}
