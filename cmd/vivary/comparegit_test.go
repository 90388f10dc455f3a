package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// quillmoorInGit is the example collection in git, with a commit.
func quillmoorInGit(t *testing.T) *clone {
	t.Helper()
	c := inGit(t, filepath.Join(t.TempDir(), "ein Haus für Tiere"), append(nobody(t), "GIT_AUTHOR_DATE=2026-11-02T10:00:00Z", "GIT_COMMITTER_DATE=2026-11-02T10:00:00Z"))
	if err := os.CopyFS(c.dir, os.DirFS("../../examples/quillmoor")); err != nil {
		t.Fatal(err)
	}
	c.commit("The house as it is")
	return c
}

// edit writes other words in a file.
func (c *clone) edit(name, old, now string) {
	c.Helper()
	text := c.read(name)
	if !strings.Contains(text, old) {
		c.Fatalf("%s has no %q", name, old)
	}
	c.write(name, strings.Replace(text, old, now, 1))
}

// compares holds how a comparison ends, and what stands in what is printed.
func (c *clone) compares(status int, args []string, words ...string) {
	c.Helper()
	out := c.vivary(status, append([]string{"compare"}, args...)...)
	for _, w := range words {
		if !strings.Contains(out, w) {
			c.Errorf("%v: %q does not stand in\n%s", args, w, out)
		}
	}
}

// TestCompareInGit: revisions, the folder as it is, names that were changed, and whatever a
// repository can be.
func TestCompareInGit(t *testing.T) {
	g := quillmoorInGit(t)
	g.compares(fine, nil, "HEAD", "Nothing changes for the animals")

	g.edit("enclosures/burrow-a.care.hcl", `every  = "day"`, `every  = "2 days"`)
	g.compares(pressing, nil, "the folder as it is", `burrow-a, care mist, every: "day" → "2 days"`)
	g.compares(pressing, []string{"--in", filepath.Join(g.dir, "enclosures")}, "burrow-a, care mist")
	g.commit("Mist every second day")
	g.compares(fine, nil)
	g.compares(pressing, []string{"HEAD~1"}, "Worse for 1 enclosure")
	g.compares(pressing, []string{"HEAD", "HEAD~1"}, "Better for 1 enclosure")

	// What only moves, or is called otherwise, is no change for the animals.
	g.git("mv", "enclosures/west.care.hcl", "shelf.care.hcl")
	g.edit("enclosures/burrow-b.care.hcl", `enclosure "burrow-b" {`, "enclosure \"fern-den\" {\n  formerly = \"burrow-b\"")
	g.commit("A shelf of its own")
	g.compares(fine, []string{"HEAD~1", "HEAD"}, "in another file: nothing else", "enclosure burrow-b is called fern-den")

	// Harm, and what cannot be understood.
	g.edit("enclosures/burrow-a.care.hcl", `      thermostat = "30 C"`+"\n", "")
	g.compares(refused, nil, "Harm for 1 enclosure", "heater-bare")
	g.edit("rooms.care.hcl", "room \"east\" {", "room \"east\" {{")
	g.compares(refused, nil, "cannot be understood", "rooms.care.hcl:1")
	g.git("checkout", "-q", "--", ".")

	// Names that are none, or two.
	g.compares(usage, []string{"nonsense"}, "nonsense")
	g.compares(usage, []string{"HEAD", "HEAD", "HEAD"}, "two are compared")
	g.compares(usage, []string{"--", "-x"}, "-x")

	// A file that is called as a revision is: a bare repository has such a HEAD.
	for _, name := range []string{"HEAD", "card"} {
		if err := os.WriteFile(filepath.Join(g.dir, name), []byte("x\n"), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	g.compares(fine, []string{"HEAD", "HEAD"}, "Nothing changes")
	g.compares(usage, []string{"card"}, "card is a file")

	// A bare clone has no folder as it is; a shallow one not all revisions.
	bare, shallow := filepath.Join(t.TempDir(), "bare.git"), filepath.Join(t.TempDir(), "shallow")
	g.git("clone", "-q", "--bare", g.dir, bare)
	g.git("clone", "-q", "--depth", "1", "file://"+strings.ReplaceAll(g.dir, " ", "%20"), shallow)
	g.compares(pressing, []string{"HEAD~2", "HEAD~1", "--in", bare}, "Worse for 1 enclosure")
	g.compares(usage, []string{"--in", bare}, "no plan stands below")
	g.compares(fine, []string{"--in", shallow})
	g.compares(usage, []string{"HEAD~1", "--in", shallow}, "shallow")

	// No repository, and no git.
	alone := t.TempDir()
	if err := os.CopyFS(alone, os.DirFS("../../examples/quillmoor")); err != nil {
		t.Fatal(err)
	}
	g.compares(usage, []string{"--in", alone}, "git repository")
	g.compares(fine, []string{alone, alone, "--in", alone})
	for i, e := range g.env {
		if path, ok := strings.CutPrefix(e, "PATH="); ok {
			g.env[i] = "PATH=" + strings.Split(path, ":")[0] + ":" + sh(t)
		}
	}
	g.compares(usage, nil, "git", "not installed")
	g.compares(fine, []string{alone, alone})
}

// TestCompareOwnDays: what was is told as it was on its day, and what only time changed is not
// told.
func TestCompareOwnDays(t *testing.T) {
	g := quillmoorInGit(t)
	g.edit("enclosures/burrow-a.care.hcl", `every  = "day"`, `every  = "2 days"`)
	g.env = append(g.env, "GIT_AUTHOR_DATE=2027-06-02T10:00:00Z")
	g.commit("Mist every second day")
	out := g.vivary(pressing, "compare", "HEAD~1", "HEAD", "--own-days")
	if !strings.Contains(out, "as of Wed 2 Jun 2027") || !strings.Contains(out, "moisture: every day → every 2 days") {
		t.Error(out)
	}
	g.env = append(g.env, "GIT_AUTHOR_DATE=2028-06-02T10:00:00Z")
	g.edit("rooms.care.hcl", "East room", "The east room")
	g.commit("A title")
	g.compares(fine, []string{"HEAD~1", "HEAD", "--own-days"}, "Nothing changes for the animals")
}

// sh is a folder of programs in which there is a shell and no git.
func sh(t *testing.T) string {
	t.Helper()
	dir := t.TempDir()
	if err := os.Symlink("/bin/sh", filepath.Join(dir, "sh")); err != nil {
		t.Fatal(err)
	}
	return dir
}
