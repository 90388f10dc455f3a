package main

import (
	"os"
	"strings"
	"testing"
)

// What a first collection has for git does what it says, asked of git itself: also below a
// repository that leaves out every log, and on a machine that changes the ends of lines.
func TestStartForGit(t *testing.T) {
	house := inGit(t, t.TempDir(), nobody(t))
	house.write(".gitignore", "*.log\n*.hcl\n")
	house.write(".gitattributes", "* -text\n*.log merge=binary\n")
	house.git("config", "core.autocrlf", "true")
	c := &clone{t, house.path("the animals"), house.env}
	house.vivary(fine, "start", "the animals")
	c.vivary(fine, "note", "burrow-a", "fed")
	c.vivary(fine, "build")
	for _, left := range []string{".vivary-lock", "feeds/.vivary-lock", "feeds/.vivary-switch", "feeds/.evening.ics.1.new", "enclosures/.burrow-a.care.hcl.12.new", "my-collection.keys"} {
		c.write(left, "left behind\n")
	}
	house.commit("begun")
	got := strings.Fields(c.git("-c", "core.quotePath=false", "ls-files"))
	want := ".gitattributes .gitignore collection.care.hcl enclosures/burrow-a.care.hcl feeds/my-collection.ics records/2026.care.log records/README.txt"
	if strings.Join(got, " ") != want {
		t.Errorf("git has %s\nand not %s", got, want)
	}
	wantLines := map[string]string{"records/2026.care.log": "text eol=lf merge=union", "enclosures/burrow-a.care.hcl": "text eol=lf diff=care", "feeds/my-collection.ics": "-text -diff -merge"}
	for path, line := range wantLines {
		if !strings.Contains(c.read(".gitattributes"), " "+line+"\n") {
			t.Errorf("no line has %s, for %s", line, path)
		}
	}
	for path := range wantLines {
		before := c.read(path)
		if err := os.Remove(c.path(path)); err != nil {
			t.Fatal(err)
		}
		c.git("checkout", "-q", "--", path)
		if c.read(path) != before {
			t.Errorf("%s does not come back from git as it was", path)
		}
	}
}

// The line above a change names the enclosure with nothing set, and the care by the line of
// settings that stands in the file.
func TestWhereGitSaysAChangeIs(t *testing.T) {
	c := houseInGit(t)
	two := c.read("enclosures/burrow-a.care.hcl") + strings.ReplaceAll(strings.ReplaceAll(c.read("enclosures/burrow-a.care.hcl"), "burrow-a", "burrow-b"), "Burrow A", "Burrow B")
	c.write("enclosures/burrow-a.care.hcl", two)
	c.commit("two of them")
	c.write("enclosures/burrow-a.care.hcl", strings.ReplaceAll(two, `amount = "60 ml"`, `amount = "80 ml"`))
	heads := func() string {
		var all []string
		for line := range strings.Lines(c.git("diff", "-U0")) {
			if strings.HasPrefix(line, "@@") {
				_, head, _ := strings.Cut(strings.TrimPrefix(line, "@@"), "@@")
				all = append(all, strings.TrimSpace(head))
			}
		}
		return strings.Join(all, ", ")
	}
	if got := heads(); got != `enclosure "burrow-a" {, enclosure "burrow-b" {` {
		t.Errorf("with nothing set git names %s", got)
	}
	_, line, _ := strings.Cut(c.read(".gitattributes"), "#   ")
	line, _, _ = strings.Cut(line, "\n")
	if out, err := c.try("sh", "-c", line); err != nil {
		t.Fatalf("%s: %v %s", line, err, out)
	}
	if got := heads(); got != `care "mist" {, care "mist" {` {
		t.Errorf("with %s git names %s", line, got)
	}
}

// Files for git that are the keeper's own stay as they are, and what they lack is said:
// nothing where they lack nothing.
func TestStartBesideFilesForGit(t *testing.T) {
	c := inGit(t, t.TempDir(), nobody(t))
	mine := "*.md text\n  *.care.log text eol=lf merge=union  \n"
	c.write(".gitattributes", mine)
	c.write(".gitignore/not a file", "")
	out := c.vivary(fine, "start")
	if c.read(".gitattributes") != mine {
		t.Error("the keeper's own file was changed")
	}
	for _, want := range []string{"\n.gitattributes is yours", "\n  *.care.hcl text eol=lf diff=care\n  *.ics -text -diff -merge\n\n", "\n.gitignore is yours", "\n  .vivary-lock\n", "\n  !*.care.log\n"} {
		if !strings.Contains(out, want) {
			t.Errorf("%q is not said:\n%s", want, out)
		}
	}
	if strings.Contains(out, "merge=union") {
		t.Errorf("a line that is there is asked for:\n%s", out)
	}
	if out := houseInGit(t).vivary(refused, "start"); strings.Contains(out, ".git") {
		t.Errorf("of a collection that is there: %s", out)
	}
	all := inGit(t, t.TempDir(), c.env)
	for _, x := range forGit {
		all.write(x.name, "# mine\n"+x.text)
	}
	if out := all.vivary(fine, "start"); strings.Contains(out, "is yours") {
		t.Errorf("of files that have all of it: %s", out)
	}
}
