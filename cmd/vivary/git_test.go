package main

import (
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
)

// clone is a collection in git, as it lies on one machine. Nothing of the settings of this
// machine, or of whoever runs the tests, has a part in it.
type clone struct {
	*testing.T
	dir string
	env []string
}

// nobody is the environment of git for somebody who has set nothing. The program is called
// vivary there, and it is noon.
func nobody(t *testing.T) []string {
	t.Helper()
	home := t.TempDir()
	bin := filepath.Join(home, "bin")
	self, err := os.Executable()
	if err == nil {
		err = os.MkdirAll(filepath.Join(bin, "the"), 0o755)
	}
	if err == nil {
		err = os.Symlink(self, filepath.Join(bin, "the", "vivary"))
	}
	if err == nil {
		err = os.WriteFile(filepath.Join(bin, "vivary"), []byte("#!/bin/sh\nexec '"+bin+"/the/vivary' --now 2026-11-25 \"$@\"\n"), 0o755)
	}
	if err != nil {
		t.Fatal(err)
	}
	temporary := filepath.Join(home, "for a moment")
	if err := os.Mkdir(temporary, 0o755); err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() {
		if left, err := os.ReadDir(temporary); len(left) > 0 || err != nil {
			t.Errorf("something is left behind: %v %v", left, err)
		}
	})
	return []string{"PATH=" + bin + ":" + os.Getenv("PATH"), "HOME=" + home, "LC_ALL=C.UTF-8", "TZ=UTC", "NO_COLOR=1",
		"GIT_CONFIG_GLOBAL=/dev/null", "GIT_CONFIG_SYSTEM=/dev/null", "GIT_TERMINAL_PROMPT=0", "GIT_EDITOR=true",
		"GIT_AUTHOR_NAME=Lead keeper", "GIT_AUTHOR_EMAIL=lead@quillmoor.example", "GIT_COMMITTER_NAME=Lead keeper", "GIT_COMMITTER_EMAIL=lead@quillmoor.example", "TMPDIR=" + temporary}
}

// inGit is a new repository in a folder.
func inGit(t *testing.T, dir string, env []string) *clone {
	t.Helper()
	c := &clone{t, dir, env}
	if err := os.MkdirAll(dir, 0o755); err != nil {
		t.Fatal(err)
	}
	c.git("-c", "init.defaultBranch=main", "init", "-q")
	return c
}

// cloned is another copy of it, of which it is the origin.
func (c *clone) cloned(args ...string) *clone {
	c.Helper()
	other := &clone{c.T, filepath.Join(c.TempDir(), "other copy"), c.env}
	c.git(append(append([]string{"clone", "-q"}, args...), c.dir, other.dir)...)
	return other
}

// try runs a program there.
func (c *clone) try(program string, args ...string) (string, error) {
	cmd := exec.Command(program, args...)
	cmd.Dir, cmd.Env = c.dir, c.env
	for _, e := range c.env { // the program is looked for where it will run
		if path, ok := strings.CutPrefix(e, "PATH="); ok {
			for dir := range strings.SplitSeq(path, ":") {
				if info, err := os.Stat(filepath.Join(dir, program)); err == nil && !info.IsDir() {
					cmd.Path, cmd.Err = filepath.Join(dir, program), nil
					break
				}
			}
		}
	}
	out, err := cmd.CombinedOutput()
	return string(out), err
}

func (c *clone) git(args ...string) string {
	c.Helper()
	out, err := c.try("git", args...)
	if err != nil {
		c.Fatalf("git %s: %v\n%s", strings.Join(args, " "), err, out)
	}
	return out
}

// vivary runs the program there, and holds how it ends.
func (c *clone) vivary(status int, args ...string) string {
	c.Helper()
	cmd, got := "vivary", 0
	out, err := c.try(cmd, args...)
	if exit, ok := err.(*exec.ExitError); ok {
		got = exit.ExitCode()
	} else if err != nil {
		c.Fatal(err)
	}
	if got != status {
		c.Errorf("vivary %s: status %d, not %d\n%s", strings.Join(args, " "), got, status, out)
	}
	return out
}

func (c *clone) path(name string) string { return filepath.Join(c.dir, filepath.FromSlash(name)) }

// write writes a file anew.
func (c *clone) write(name, text string) {
	c.Helper()
	err := os.MkdirAll(filepath.Dir(c.path(name)), 0o755)
	if err == nil {
		err = os.WriteFile(c.path(name), []byte(text), 0o644)
	}
	if err != nil {
		c.Fatal(err)
	}
}

func (c *clone) read(name string) string {
	c.Helper()
	text, err := os.ReadFile(c.path(name))
	if err != nil {
		c.Fatal(err)
	}
	return string(text)
}

// add appends to a file.
func (c *clone) add(name, text string) {
	c.Helper()
	old, _ := os.ReadFile(c.path(name))
	c.write(name, string(old)+text)
}

// commit commits all that there is.
func (c *clone) commit(about string) {
	c.Helper()
	c.git("add", "--all")
	c.git("commit", "-q", "-m", about)
}

// houseInGit is a first collection in git.
func houseInGit(t *testing.T) *clone {
	t.Helper()
	c := inGit(t, filepath.Join(t.TempDir(), "house"), nobody(t))
	c.vivary(fine, "start")
	c.commit("a first collection")
	return c
}
