package revision

import (
	"context"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/spf13/afero"

	"vivary/plan"
)

// TestMain is also what a hook of git runs: it prints what the collection had at a commit.
func TestMain(m *testing.M) {
	if rev := os.Getenv("ASKED_REVISION"); rev != "" {
		if err := answer(os.Getenv("ASKED_FOLDER"), rev); err != nil {
			fmt.Println(err)
			os.Exit(1)
		}
		return
	}
	os.Exit(m.Run())
}

func answer(folder, rev string) error {
	r, err := Open(context.Background(), folder)
	if err != nil {
		return err
	}
	c, err := r.Find(rev)
	if err != nil {
		return err
	}
	disk, err := r.Files(c)
	if err != nil {
		return err
	}
	text, err := afero.ReadFile(disk, filepath.Join(folder, "a.care.hcl"))
	fmt.Printf("%s has: %s", c.Subject, text)
	return err
}

// work is a folder in which git is asked by its own command line.
type work struct {
	*testing.T
	dir string
}

// begin makes a repository with nothing of the machine's own configuration.
func begin(t *testing.T, flags ...string) work {
	t.Helper()
	dir, err := filepath.EvalSymlinks(t.TempDir())
	if err != nil {
		t.Fatal(err)
	}
	for name, value := range map[string]string{
		"HOME": dir, "XDG_CONFIG_HOME": dir, "GIT_CONFIG_GLOBAL": os.DevNull, "GIT_CONFIG_NOSYSTEM": "1", "GIT_CEILING_DIRECTORIES": filepath.Dir(dir),
		"GIT_AUTHOR_NAME": "Lead Keeper", "GIT_AUTHOR_EMAIL": "lead@house.example", "GIT_AUTHOR_DATE": "2026-03-12T09:30:00+01:00",
		"GIT_COMMITTER_NAME": "Lead Keeper", "GIT_COMMITTER_EMAIL": "lead@house.example", "GIT_COMMITTER_DATE": "2026-03-12T09:30:00+01:00",
	} {
		t.Setenv(name, value)
	}
	w := work{t, filepath.Join(dir, "house")}
	w.run(dir, "git", append(append([]string{"init", "-q", "-b", "main"}, flags...), w.dir)...)
	return w
}

func (w work) run(dir, name string, args ...string) string {
	w.Helper()
	c := exec.Command(name, args...)
	c.Dir = dir
	out, err := c.CombinedOutput()
	if err != nil {
		w.Fatalf("%s %v: %v\n%s", name, args, err, out)
	}
	return strings.TrimSpace(string(out))
}

func (w work) git(args ...string) string {
	w.Helper()
	return w.run(w.dir, "git", args...)
}

func (w work) write(name, text string) {
	w.Helper()
	name = filepath.Join(w.dir, name)
	if err := errors.Join(os.MkdirAll(filepath.Dir(name), 0o755), os.WriteFile(name, []byte(text), 0o644)); err != nil {
		w.Fatal(err)
	}
}

func (w work) link(to, name string) {
	w.Helper()
	if err := os.Symlink(to, filepath.Join(w.dir, name)); err != nil {
		w.Fatal(err)
	}
}

func (w work) commit(subject string) string {
	w.Helper()
	w.git("add", "-A")
	w.git("commit", "-q", "--allow-empty", "-m", subject)
	return w.git("rev-parse", "HEAD")
}

func open(t *testing.T, folder string) *Repo {
	t.Helper()
	r, err := Open(t.Context(), folder)
	if err != nil {
		t.Fatal(err)
	}
	return r
}

func (r *Repo) mustFind(t *testing.T, rev string) Commit {
	t.Helper()
	c, err := r.Find(rev)
	if err != nil {
		t.Fatal(err)
	}
	return c
}

func (r *Repo) mustFiles(t *testing.T, rev string) afero.Fs {
	t.Helper()
	disk, err := r.Files(r.mustFind(t, rev))
	if err != nil {
		t.Fatal(err)
	}
	return disk
}

func TestOpen(t *testing.T) {
	w := begin(t)
	w.write("animals/a.care.hcl", "one\n")
	w.write("animals/deep/b.care.hcl", "two\n")
	w.commit("First")
	bare := filepath.Join(filepath.Dir(w.dir), "plans.git")
	w.git("clone", "-q", "--bare", w.dir, bare)
	other := filepath.Join(filepath.Dir(w.dir), "other")
	w.git("worktree", "add", "-q", other, "-b", "other")
	w.run(filepath.Dir(w.dir), "ln", "-s", filepath.Join(w.dir, "animals"), "through")
	w.git("checkout", "-q", "--detach")

	for folder, file := range map[string]string{
		w.dir:                                   "animals/a.care.hcl",
		filepath.Join(w.dir, "animals"):         "a.care.hcl",
		filepath.Join(w.dir, "animals/deep"):    "b.care.hcl",
		filepath.Join(w.dir, "animals/../"):     "animals/deep/b.care.hcl",
		bare:                                    "animals/a.care.hcl",
		filepath.Join(bare, "animals"):          "a.care.hcl",
		other:                                   "animals/a.care.hcl",
		filepath.Join(other, "animals"):         "a.care.hcl",
		filepath.Join(w.dir, "../through"):      "a.care.hcl",
		filepath.Join(w.dir, "../through/deep"): "b.care.hcl",
	} {
		r := open(t, folder)
		if _, err := afero.ReadFile(r.mustFiles(t, "HEAD"), filepath.Join(folder, file)); err != nil {
			t.Errorf("%s: %v", folder, err)
		}
	}

	// A folder that is on the disk no more is still in the tree of its day.
	w.git("rm", "-q", "-r", "animals")
	w.git("commit", "-q", "-m", "Gone")
	gone := filepath.Join(w.dir, "animals/deep")
	if _, err := afero.ReadFile(open(t, gone).mustFiles(t, "HEAD~1"), filepath.Join(gone, "b.care.hcl")); err != nil {
		t.Error(err)
	}
	_, err := open(t, gone).Files(open(t, gone).mustFind(t, "HEAD"))
	if err == nil || !strings.Contains(err.Error(), `there is no folder "animals/deep"`) {
		t.Errorf("of a folder that is gone: %v", err)
	}
}

func TestOpenRefuses(t *testing.T) {
	w := begin(t)
	w.write("a.care.hcl", "one\n")
	w.commit("First")
	refused := func(folder string, is error, words string) {
		t.Helper()
		_, err := Open(t.Context(), folder)
		if err == nil || is != nil && !errors.Is(err, is) || !strings.Contains(err.Error(), words) {
			t.Errorf("%s: %v, and not %q", folder, err, words)
		}
	}
	refused(filepath.Dir(w.dir), ErrNoRepo, "git init begins one")
	refused(filepath.Join(w.dir, ".git"), ErrNoRepo, "what git keeps for itself")

	t.Setenv("GIT_TEST_ASSUME_DIFFERENT_OWNER", "1")
	refused(w.dir, nil, "git config --global --add safe.directory "+w.dir)
	t.Setenv("GIT_TEST_ASSUME_DIFFERENT_OWNER", "0")

	over, end := context.WithCancel(t.Context())
	end()
	if _, err := Open(over, w.dir); !errors.Is(err, context.Canceled) {
		t.Errorf("when all was over: %v", err)
	}
	t.Setenv("PATH", t.TempDir())
	refused(w.dir, ErrNoGit, "not installed")
}

// In a hook the environment says which repository it is; a push that is being judged has
// left its objects in none.
func TestHooks(t *testing.T) {
	w := begin(t)
	w.write("animals/a.care.hcl", "one\n")
	w.commit("First")
	bare := filepath.Join(filepath.Dir(w.dir), "plans.git")
	w.git("clone", "-q", "--bare", w.dir, bare)
	self, err := os.Executable()
	if err != nil {
		t.Fatal(err)
	}
	hook := func(dir, name, text string) {
		t.Helper()
		if err := os.WriteFile(filepath.Join(dir, "hooks", name), []byte("#!/bin/sh\n"+text+"\n"), 0o755); err != nil {
			t.Fatal(err)
		}
	}
	ask := "ASKED_FOLDER=animals ASKED_REVISION=$new exec '" + self + "'"
	hook(bare, "pre-receive", "read old new ref\nASKED_FOLDER=$PWD/animals ASKED_REVISION=$new exec '"+self+"'")
	hook(filepath.Join(w.dir, ".git"), "post-commit", "new=HEAD\n"+ask)

	w.write("animals/a.care.hcl", "two\n")
	w.git("add", "-A")
	if said := w.git("commit", "-q", "-m", "Second"); said != "Second has: two" {
		t.Errorf("after a commit: %s", said)
	}
	if said := w.git("push", bare, "main"); !strings.Contains(said, "remote: Second has: two") {
		t.Errorf("before a push is taken: %s", said)
	}

	// A hook of one repository that looks into the folder of another sees that one.
	t.Setenv("GIT_DIR", filepath.Join(bare))
	t.Setenv("GIT_OBJECT_DIRECTORY", t.TempDir())
	if got := open(t, w.dir).mustFind(t, "HEAD").Subject; got != "Second" {
		t.Errorf("it sees %s", got)
	}
	// One that is apart from its work tree is found by what the environment says alone.
	t.Setenv("GIT_OBJECT_DIRECTORY", "")
	os.Unsetenv("GIT_OBJECT_DIRECTORY")
	apart := filepath.Join(filepath.Dir(w.dir), "apart")
	if err := os.Mkdir(apart, 0o755); err != nil {
		t.Fatal(err)
	}
	t.Setenv("GIT_DIR", filepath.Join(w.dir, ".git"))
	t.Setenv("GIT_WORK_TREE", apart)
	if _, err := afero.ReadFile(open(t, apart).mustFiles(t, "HEAD"), filepath.Join(apart, "animals/a.care.hcl")); err != nil {
		t.Error(err)
	}
}

// Nothing runs that a configuration names, and the repository is left as it was.
func TestHostileRepository(t *testing.T) {
	w := begin(t)
	w.write("a.care.hcl", strings.Repeat("one line\n", 20))
	w.write(".gitattributes", "* diff=trap filter=trap\n")
	first := w.commit("First")
	w.git("mv", "a.care.hcl", "b.care.hcl")
	w.commit("Second")
	marker := filepath.Join(filepath.Dir(w.dir), "sprung")
	trap := filepath.Join(filepath.Dir(w.dir), "trap")
	if err := os.WriteFile(trap, []byte("#!/bin/sh\ntouch '"+marker+"'\ncat \"$@\"\n"), 0o755); err != nil {
		t.Fatal(err)
	}
	for _, name := range []string{"core.fsmonitor", "core.pager", "core.sshCommand", "core.editor", "diff.external", "diff.trap.textconv", "diff.trap.command",
		"filter.trap.clean", "filter.trap.smudge", "gpg.program", "core.askPass", "credential.helper", "uploadpack.packObjectsHook"} {
		w.git("config", name, trap)
	}
	for _, name := range []string{"rev-parse", "rev-list", "cat-file", "diff-tree", "blame"} {
		w.git("config", "alias."+name, "!"+trap)
		w.git("config", "pager."+name, trap)
	}
	w.git("config", "log.showSignature", "true")
	w.git("config", "remote.origin.url", "ext::"+trap)
	w.git("config", "remote.origin.promisor", "true")
	w.git("config", "protocol.ext.allow", "always")
	for _, hook := range []string{"post-index-change", "reference-transaction", "post-checkout"} {
		w.run(w.dir, "cp", trap, filepath.Join(w.dir, ".git/hooks", hook))
	}
	sprung := func() bool {
		_, err := os.Stat(marker)
		return err == nil && os.Remove(marker) == nil
	}
	c := exec.Command("git", "status")
	c.Dir = w.dir
	_ = c.Run()
	if !sprung() {
		t.Fatal("the traps are none: git status springs them")
	}
	before := state(t, filepath.Join(w.dir, ".git"))

	r := open(t, w.dir)
	a, b := r.mustFind(t, first), r.mustFind(t, "HEAD")
	r.mustFiles(t, first)
	if _, err := r.Find("nowhere"); err == nil {
		t.Error("what is nowhere was found")
	}
	if all, _, err := r.Log(b, 10); err != nil || len(all) != 2 {
		t.Error(all, err)
	}
	if names, err := r.Renames(a, b); err != nil || names["b.care.hcl"] != "a.care.hcl" {
		t.Error(names, err)
	}
	lost := w.git("rev-parse", "HEAD:b.care.hcl")
	if err := os.Rename(filepath.Join(w.dir, ".git/objects", lost[:2], lost[2:]), filepath.Join(w.dir, "lost")); err != nil {
		t.Fatal(err)
	}
	if _, err := open(t, w.dir).Files(b); err == nil || !strings.Contains(err.Error(), "not on this machine") {
		t.Errorf("of an object that would have to be fetched: %v", err)
	}
	if sprung() {
		t.Error("a program ran that the configuration names")
	}
	if err := os.Rename(filepath.Join(w.dir, "lost"), filepath.Join(w.dir, ".git/objects", lost[:2], lost[2:])); err != nil {
		t.Fatal(err)
	}
	if after := state(t, filepath.Join(w.dir, ".git")); after != before {
		t.Errorf("the repository was\n%s\nand is\n%s", before, after)
	}
}

// state is all that stands below a folder, and when it was written.
func state(t *testing.T, dir string) string {
	t.Helper()
	var all strings.Builder
	err := filepath.WalkDir(dir, func(path string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		info, err := d.Info()
		if err == nil {
			fmt.Fprintln(&all, path, info.Size(), info.ModTime().Format(time.RFC3339Nano))
		}
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return all.String()
}

func TestNotInTime(t *testing.T) {
	w := begin(t)
	w.write("a"+plan.PlanSuffix, "one\n")
	w.commit("First")
	ctx, end := context.WithCancel(t.Context())
	r, err := Open(ctx, w.dir)
	if err != nil {
		t.Fatal(err)
	}
	c := r.mustFind(t, "HEAD")
	end()
	if _, err := r.Files(c); !errors.Is(err, context.Canceled) {
		t.Errorf("files: %v", err)
	}
	if _, err := r.Find("HEAD"); !errors.Is(err, context.Canceled) {
		t.Errorf("find: %v", err)
	}
}
