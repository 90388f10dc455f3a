package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
)

const gitPage = "examples/GIT.md"

// The commands of the page on git are done one after another, by somebody who has what they
// speak of, and do what stands there.
func TestGitPage(t *testing.T) {
	c := &clone{t, t.TempDir(), nobody(t)}
	examples, err := filepath.Abs(filepath.Join(repository, "examples"))
	if err != nil {
		t.Fatal(err)
	}
	server := inGit(t, filepath.Join(t.TempDir(), "plans.git"), c.env)
	done := map[string]int{}
	for _, f := range fences(t, gitPage) {
		if f.lang != "bash" {
			continue
		}
		in := c
		switch done[f.head]++; {
		case strings.HasPrefix(f.text, "git merge"):
			c.calendarsOnBothSides()
		case strings.HasPrefix(f.head, "Have what is pushed"):
			server.git("config", "core.bare", "true")
			in = &clone{t, server.path(".git"), c.env}
		}
		out, err := in.try("bash", "-e", "-c", strings.ReplaceAll(f.text, "/opt/vivary/examples", examples))
		if err != nil {
			t.Fatalf("%s: %v\n%s", f.name(), err, out)
		}
		switch {
		case strings.HasPrefix(f.text, "git merge"):
			if !strings.Contains(out, "CONFLICT") || c.git("status", "--porcelain") != "" || len(met(c.vivary(fine, "check"))) > 0 || !strings.Contains(c.vivary(fine, "build"), "unchanged") {
				t.Errorf("calendars of both sides do not come together:\n%s\n%s", out, c.git("status"))
			}
		case strings.HasPrefix(f.text, "git log"):
			if !strings.Contains(out, "wetter") || strings.Contains(out, "A note in the log") {
				t.Errorf("not the changes of the enclosure: %s", out)
			}
		case strings.HasPrefix(f.text, "git config diff"):
			if want := strings.TrimSpace(f.text); !strings.Contains(c.read(".gitattributes"), "#   "+want+"\n") {
				t.Errorf("start writes another line than %s", want)
			}
		case strings.Contains(f.text, "hooks/"):
			hook := c.path(".git/hooks/pre-merge-commit")
			if in != c {
				hook = in.path("hooks/pre-receive")
			}
			if info, err := os.Stat(hook); err != nil || info.Mode()&0o100 == 0 {
				t.Errorf("%s: nothing that git would run is there: %v", f.name(), err)
			}
		case strings.Contains(f.text, "vivary.program"):
			if c.git("config", "vivary.program") != "/opt/vivary/vivary\n" || c.git("config", "vivary.collection") != "animals\n" {
				t.Error("the settings of the hooks are others")
			}
		}
	}
	if len(done) != 6 {
		t.Errorf("commands stand in %d sections: %v", len(done), done)
	}
	for _, x := range forGit {
		for line := range strings.Lines(x.text) {
			if line = strings.TrimSpace(line); line != "" && line[0] != '#' && !strings.Contains(page(t, gitPage), "\n    "+line+"\n") {
				t.Errorf("the page lacks a line of %s: %s", x.name, line)
			}
		}
	}
	for _, key := range []string{"vivary.collection", "vivary.program"} {
		for _, hook := range []string{"pre-commit", "pre-receive"} {
			if !strings.Contains(page(t, "examples/git/"+hook), key) {
				t.Errorf("%s knows no %s", hook, key)
			}
		}
	}
}

// calendarsOnBothSides has two branches with different plans and the calendars of each.
func (c *clone) calendarsOnBothSides() {
	c.Helper()
	c.vivary(fine, "build")
	c.commit("the calendars")
	c.git("checkout", "-q", "-b", "relief")
	c.write(burrowA, strings.Replace(c.read(burrowA), `"60 ml"`, `"70 ml"`, 1))
	c.vivary(fine, "build")
	c.commit("wetter")
	c.git("checkout", "-q", "-")
	c.vivary(fine, "note", "2026-11-24", "burrow-a", "refused")
	c.vivary(fine, "build")
	c.commit("A note in the log")
}
