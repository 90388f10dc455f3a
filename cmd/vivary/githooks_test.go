package main

import (
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
)

// without is the same for somebody who does not have a program.
func (c *clone) without(program string) *clone {
	other := *c
	other.env = nil
	for _, e := range c.env {
		if dirs, ok := strings.CutPrefix(e, "PATH="); ok {
			var left []string
			for dir := range strings.SplitSeq(dirs, ":") {
				if _, err := os.Stat(filepath.Join(dir, program)); err != nil {
					left = append(left, dir)
				}
			}
			e = "PATH=" + strings.Join(left, ":")
		}
		other.env = append(other.env, e)
	}
	return &other
}

// hook puts a hook of the examples into a repository.
func (c *clone) hook(example, name string) {
	c.Helper()
	text, err := os.ReadFile(filepath.Join(repository, "examples", "git", example))
	if err != nil {
		c.Fatal(err)
	}
	path := strings.TrimSpace(c.git("rev-parse", "--git-path", "hooks/"+name))
	if !filepath.IsAbs(path) {
		path = filepath.Join(c.dir, path)
	}
	if err = os.MkdirAll(filepath.Dir(path), 0o755); err == nil {
		err = os.WriteFile(path, text, 0o755)
	}
	if err != nil {
		c.Fatal(err)
	}
}

// holds asks for something that a hook is to let through, or to refuse with some words, after
// which the branch is what it was.
func (c *clone) holds(about string, words []string, args ...string) {
	c.Helper()
	before := c.git("rev-parse", "--verify", "-q", "HEAD^{commit}")
	out, err := c.try("git", args...)
	moved := c.git("rev-parse", "HEAD") != before
	switch {
	case words == nil && (err != nil || !moved):
		c.Errorf("%s: refused, or nothing came of it: %v\n%s", about, err, out)
	case words != nil && (err == nil || moved):
		c.Errorf("%s: went through\n%s", about, out)
	}
	for _, w := range words {
		if !strings.Contains(out, w) {
			c.Errorf("%s: %q is not said:\n%s", about, w, out)
		}
	}
}

const burrowA = "enclosures/burrow-a.care.hcl"

// bareHeater takes the thermostat out of a plan, which refuses it.
func bareHeater(text string) string {
	return strings.Replace(text, "      thermostat = \"29 C\"\n", "", 1)
}

// The hook for commits judges what is staged, wherever it is called, and lets through what
// was seen.
func TestPreCommit(t *testing.T) {
	c := twoKeepers(t)
	c.hook("pre-commit", "pre-commit")
	sound, refusedBy := c.read(burrowA), []string{burrowA + ":", "heater-bare", "There was no commit"}
	soundly := func() { c.git("reset", "-q", "--hard"); c.git("clean", "-qfd") }

	c.write("enclosures/größe & “kröte” 7.care.hcl", strings.ReplaceAll(strings.ReplaceAll(sound, "burrow-a", "kröte-7"), "Burrow A", "Kröte 7"))
	c.git("add", "--all")
	c.holds("a sound plan in a file of any name", nil, "commit", "-m", "x")

	c.write(burrowA, bareHeater(sound))
	c.git("add", "--all")
	c.holds("a plan that is refused", refusedBy, "commit", "-m", "x")
	c.write(burrowA, sound)
	c.holds("refused as staged, sound in the folder", refusedBy, "commit", "-m", "x")
	soundly()

	c.write(burrowA, sound+"\n# a word\n")
	c.git("add", "--all")
	c.write(burrowA, bareHeater(sound))
	c.write("torn.care.hcl", "enclosure {")
	c.git("add", "-N", "torn.care.hcl")
	c.holds("sound as staged, refused in the folder", nil, "commit", "-m", "x")
	c.write("records/2026.care.log", c.read("records/2026.care.log")+"2026-11-24 burrow-a fed\n")
	c.holds("one file of several", nil, "commit", "-m", "x", "records/2026.care.log")
	c.holds("all files", []string{"torn.care.hcl:", "There was no commit"}, "commit", "-am", "x")
	soundly()

	c.write("enclosures/größe & “kröte” 7.care.hcl", "enclosure {")
	c.git("add", "--all")
	c.holds("a plan of any name that is refused", []string{"“kröte” 7.care.hcl:1:"}, "commit", "-m", "x")
	soundly()

	c.write(burrowA, bareHeater(sound))
	c.git("add", "--all")
	c.holds("without a check", nil, "commit", "--no-verify", "-m", "x")
	c.add("records/2026.care.log", "2026-11-24 burrow-b fed\n")
	c.git("add", "--all")
	c.holds("what was seen, of a plan that is refused", nil, "commit", "-m", "x")
	c.write("records/seen in größe & 7.care.log", "2026-11-24 burrow-b done water\n")
	c.git("add", "--all")
	c.holds("a log of any name", nil, "commit", "-m", "x")
	c.write("records/2026.care.log", strings.Replace(c.read("records/2026.care.log"), "2026-11-16 burrow-b fed\n", "", 1))
	c.git("add", "--all")
	c.holds("a log with a line less, of a plan that is refused", refusedBy, "commit", "-m", "x")
	c.git("reset", "-q", "--hard")
	c.write(burrowA, bareHeater(sound)+"\n# a word\n")
	c.git("add", "--all")
	c.holds("a plan that is refused still", refusedBy, "commit", "-m", "x")
	c.write("README.md", "# Our animals\n")
	c.git("reset", "-q")
	c.git("add", "README.md")
	c.write(burrowA, sound)
	c.git("add", burrowA)
	c.holds("a plan that is put right", nil, "commit", "-m", "x")
}

// It says so where the program is not there, and finds it where it is said to be.
func TestPreCommitWithoutTheProgram(t *testing.T) {
	c := twoKeepers(t)
	c.hook("pre-commit", "pre-commit")
	there := filepath.Join(strings.TrimPrefix(c.env[slices.IndexFunc(c.env, func(e string) bool { return strings.HasPrefix(e, "HOME=") })], "HOME="), "bin")
	c = c.without("vivary")
	c.add("records/2026.care.log", "2026-11-24 burrow-b fed\n")
	c.git("add", "--all")
	c.holds("what was seen", nil, "commit", "-m", "x")
	c.add(burrowA, "\n# a word\n")
	c.git("add", "--all")
	c.holds("a plan", []string{"no program vivary here", "git config vivary.program", "--no-verify"}, "commit", "-m", "x")
	if err := os.Symlink(there, filepath.Join(filepath.Dir(there), "other programs")); err != nil {
		t.Fatal(err)
	}
	c.git("config", "vivary.program", "~/other programs/vivary")
	c.holds("a plan, with the program elsewhere", nil, "commit", "-m", "x")
}

// It works for a first commit, in another folder of the same repository, for a repository
// that is more than a collection, and knows which animals there were by calendars that are
// not in git.
func TestPreCommitElsewhere(t *testing.T) {
	house := inGit(t, filepath.Join(t.TempDir(), "the whole house"), nobody(t))
	house.hook("pre-commit", "pre-commit")
	house.git("config", "--add", "vivary.collection", "the animals")
	house.git("config", "--add", "vivary.collection", "club/die Kröten")
	house.vivary(fine, "start", "the animals")
	house.vivary(fine, "start", "club/die Kröten")
	house.write("no plan.care.hcl", "this is none")
	house.git("add", "--all")
	if out, err := house.try("git", "commit", "-m", "first"); err != nil {
		t.Fatalf("the first commit: %v\n%s", err, out)
	}
	sound := house.read("club/die Kröten/" + burrowA)
	words := []string{"club/die Kröten/" + burrowA + ":", "heater-bare"}
	house.write("club/die Kröten/"+burrowA, bareHeater(sound))
	house.git("add", "--all")
	house.holds("one of two collections", words, "commit", "-m", "x")
	inside := &clone{t, house.path("the animals"), house.env}
	inside.holds("from within the other", words, "commit", "-m", "x")
	house.git("reset", "-q", "--hard")

	tree := &clone{t, filepath.Join(t.TempDir(), "a second folder"), house.env}
	house.git("worktree", "add", "-q", "-b", "other", tree.dir)
	tree.write("club/die Kröten/"+burrowA, bareHeater(sound))
	tree.git("add", "--all")
	tree.holds("in another folder of the repository", words, "commit", "-m", "x")
	tree.write("club/die Kröten/"+burrowA, sound+"\n# a word\n")
	tree.git("add", "--all")
	tree.holds("in another folder of the repository", nil, "commit", "-m", "x")

	house.write(".git/info/exclude", "feeds/\n")
	house.vivary(fine, "build", "the animals")
	house.write("the animals/"+burrowA, strings.Replace(house.read("the animals/"+burrowA), `"0.1.0"`, "0", 1))
	house.git("add", "--all")
	house.holds("animals that the last calendars knew", []string{"animals-missing"}, "commit", "-m", "x")
}

// A merge that git makes without a word is judged too.
func TestPreMergeCommit(t *testing.T) {
	c := twoKeepers(t)
	c.hook("pre-commit", "pre-merge-commit")
	box := strings.ReplaceAll(strings.ReplaceAll(c.read(burrowA), "burrow-a", "burrow-c"), "Burrow A", "Burrow C")
	err := c.merged("box", func() { c.write("enclosures/burrow-c.care.hcl", box) }, func() { c.write("new.care.hcl", box) })
	if err == nil || !strings.Contains(err.Error(), "burrow-c") || !strings.Contains(err.Error(), "[twice]") {
		t.Errorf("the same box twice: %v", err)
	}
	c.git("checkout", "-q", "main")
	if err := c.merged("log", func() { c.add("records/2026.care.log", "2026-11-24 burrow-a fed\n") }, func() { c.write(burrowA, bareHeater(c.read(burrowA))) }); err != nil {
		t.Errorf("what was seen is kept from a plan that is refused: %v", err)
	}
}
