// Package revision reads a collection as git has it: at a commit, and who wrote a line.
//
// git itself is asked, by its plumbing alone. Nothing is written to the repository, nothing
// is fetched, and no program runs that a configuration names.
package revision

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"os/exec"
	"path"
	"path/filepath"
	"strings"
	"time"
)

// ErrNoGit says that git is not installed.
var ErrNoGit = errors.New("revisions are read with git, which is not installed here, or not found")

// ErrNoRepo says that a folder is in no repository.
var ErrNoRepo = errors.New("no folder of a git repository")

// Repo is a git repository as seen from a folder in it. It is for one goroutine at a time.
type Repo struct {
	ctx     context.Context
	program string
	env     []string
	run     string            // the folder in which git is asked
	folder  string            // that of the collection, as a path from the root of the disk
	top     string            // of the work tree, or the bare repository, without links
	links   map[string]string // on the way to the folder
	below   string            // where the collection stands in a tree, "" for its top
	shallow bool              // not all commits are here
	kept    store
}

// Open finds the repository of a folder: one in a work tree, a bare repository, or a path
// into the tree of either, which need not be on the disk now. What git does ends with ctx.
func Open(ctx context.Context, folder string) (*Repo, error) {
	program, err := exec.LookPath("git")
	if err != nil {
		return nil, ErrNoGit
	}
	whole, err := filepath.Abs(folder)
	if err != nil {
		return nil, err
	}
	r := &Repo{ctx: ctx, program: program, folder: whole}
	var rest string
	r.run, rest = onDisk(whole)
	dir, err := r.find()
	if err != nil {
		return nil, r.unopened(err)
	}
	real, err := filepath.EvalSymlinks(r.run)
	if err != nil {
		return nil, err
	}
	facts, err := r.git("rev-parse", "--is-bare-repository", "--is-inside-work-tree", "--is-shallow-repository")
	if err != nil {
		return nil, r.unopened(err)
	}
	said := strings.Fields(facts)
	if len(said) != 3 {
		return nil, fmt.Errorf("git is too old, or says of this folder what is not understood: %q", facts)
	}
	r.shallow = said[2] == "true"
	within := ""
	switch {
	case said[1] == "true":
		prefix, err := r.git("rev-parse", "--show-prefix")
		if err != nil {
			return nil, r.unopened(err)
		}
		within = strings.TrimSuffix(strings.TrimSuffix(prefix, "\n"), "/")
		r.top = real
		for range segments(within) {
			r.top = filepath.Dir(r.top)
		}
	case said[0] == "true":
		r.top = real
		if rel, ok := inside(dir, real); ok {
			r.top, within = dir, rel
		}
	default:
		return nil, fmt.Errorf("%q is %w: it holds what git keeps for itself", filepath.ToSlash(folder), ErrNoRepo)
	}
	r.below = path.Join(within, filepath.ToSlash(rest))
	r.links = map[string]string{}
	for at := r.run; at != filepath.Dir(at); at = filepath.Dir(at) {
		if to, err := os.Readlink(at); err == nil {
			r.links[at] = to
		}
	}
	return r, nil
}

// onDisk parts a path into the folder that is there and what is not.
func onDisk(whole string) (there, rest string) {
	for there = whole; ; {
		if info, err := os.Stat(there); err == nil && info.IsDir() {
			return there, rest
		}
		up := filepath.Dir(there)
		if up == there {
			return there, rest
		}
		rest = filepath.Join(filepath.Base(there), rest)
		there = up
	}
}

// inside returns the path of what stands in a folder, with slashes, "" for the folder.
func inside(dir, whole string) (string, bool) {
	rel, err := filepath.Rel(dir, whole)
	if err != nil || rel == ".." || strings.HasPrefix(rel, ".."+string(filepath.Separator)) {
		return "", false
	}
	if rel == "." {
		rel = ""
	}
	return filepath.ToSlash(rel), true
}

// find returns where git keeps the repository. The one in which a folder stands goes before
// the one for which a hook runs; of that one the objects are seen that a push has brought
// and not yet left there.
func (r *Repo) find() (string, error) {
	hook := os.Getenv("GIT_DIR")
	if hook != "" {
		hook, _ = filepath.Abs(hook)
	}
	r.env = environment(false)
	dir, err := r.gitDir()
	switch {
	case err == nil && hook != "" && sameFolder(dir, hook):
		r.env = environment(true)
	case errors.Is(err, ErrNoRepo) && hook != "":
		tree, _ := filepath.Abs(os.Getenv("GIT_WORK_TREE"))
		r.env = append(environment(true), "GIT_DIR="+hook, "GIT_WORK_TREE="+tree)
		if os.Getenv("GIT_WORK_TREE") == "" && r.isBare() {
			r.env = r.env[:len(r.env)-1]
		}
		if dir, again := r.gitDir(); again == nil {
			return dir, nil
		}
	}
	return dir, err
}

func (r *Repo) isBare() bool {
	said, err := r.git("config", "--type=bool", "--get", "core.bare")
	return err == nil && strings.TrimSpace(said) == "true"
}

func (r *Repo) gitDir() (string, error) {
	said, err := r.git("rev-parse", "--absolute-git-dir")
	if err != nil {
		return "", err
	}
	return filepath.EvalSymlinks(filepath.FromSlash(strings.TrimSuffix(said, "\n")))
}

func sameFolder(a, b string) bool {
	x, err := os.Stat(a)
	y, other := os.Stat(b)
	return err == nil && other == nil && os.SameFile(x, y)
}

// unopened says in a keeper's words why a repository cannot be read.
func (r *Repo) unopened(err error) error {
	shown := filepath.ToSlash(r.folder)
	var failed *failure
	switch {
	case errors.Is(err, ErrNoRepo):
		return fmt.Errorf("%q is %w: there are no revisions of it; git init begins one", shown, ErrNoRepo)
	case errors.As(err, &failed) && failed.says("dubious ownership", "unsafe repository"):
		return fmt.Errorf("the repository of %q belongs to somebody else, and git reads it only where that is allowed: git config --global --add safe.directory %s", shown, r.owned(failed))
	case errors.As(err, &failed) && failed.says("safe.bareRepository"):
		return fmt.Errorf("your configuration of git (safe.bareRepository) keeps it from reading the bare repository %q: name a folder of a work tree, or set GIT_DIR", shown)
	}
	return err
}

// owned returns the folder that git wants to be named as safe.
func (r *Repo) owned(f *failure) string {
	if _, after, found := strings.Cut(f.words, "safe.directory "); found {
		line, _, _ := strings.Cut(after, "\n")
		return line
	}
	return filepath.ToSlash(r.run)
}

// segments are the names in a path of a tree.
func segments(p string) []string {
	if p == "" {
		return nil
	}
	return strings.Split(p, "/")
}

// ours are the variables of git that say where a repository is and how paths are read, which
// is for us to say.
var ours = []string{"GIT_DIR", "GIT_WORK_TREE", "GIT_INDEX_FILE", "GIT_PREFIX", "GIT_COMMON_DIR", "GIT_NAMESPACE",
	"GIT_LITERAL_PATHSPECS", "GIT_GLOB_PATHSPECS", "GIT_NOGLOB_PATHSPECS", "GIT_ICASE_PATHSPECS",
	"GIT_EXTERNAL_DIFF", "GIT_DIFF_OPTS", "GIT_SHALLOW_FILE", "GIT_ALLOW_PROTOCOL"}

// objects say where there are more objects than those of the repository.
var objects = []string{"GIT_OBJECT_DIRECTORY", "GIT_ALTERNATE_OBJECT_DIRECTORIES", "GIT_QUARANTINE_PATH"}

// environment is that in which git runs. With more, objects that wait to be taken are seen.
func environment(more bool) (env []string) {
	for _, v := range os.Environ() {
		name, _, _ := strings.Cut(v, "=")
		if !contains(ours, name) && (more || !contains(objects, name)) {
			env = append(env, v)
		}
	}
	// Where a clone has only some of the objects the others are not fetched: older versions
	// know no variable for that, but of a protocol that is not allowed nothing is asked.
	return append(env, "GIT_OPTIONAL_LOCKS=0", "GIT_TERMINAL_PROMPT=0", "GIT_NO_LAZY_FETCH=1", "GIT_ALLOW_PROTOCOL=",
		"GIT_PAGER=cat", "LC_ALL=C", "LANGUAGE=C")
}

func contains(all []string, name string) bool {
	for _, x := range all {
		if strings.EqualFold(x, name) {
			return true
		}
	}
	return false
}

// failure is a command of git that did not do what it was asked.
type failure struct {
	words string // what it said
	of    error
}

func (f *failure) Error() string {
	said := strings.TrimSpace(f.words)
	if line, _, more := strings.Cut(said, "\n"); more {
		said = line
	}
	if said == "" {
		return "git could not be asked: " + f.of.Error()
	}
	return "git says: " + strings.TrimPrefix(said, "fatal: ")
}

func (f *failure) Unwrap() error { return f.of }

func (f *failure) says(any ...string) bool {
	for _, words := range any {
		if strings.Contains(f.words, words) {
			return true
		}
	}
	return false
}

// maxSaid bounds what one command of git may say, in bytes.
const maxSaid = 64 << 20

// bounded keeps what is written to it, up to a bound.
type bounded struct{ bytes.Buffer }

func (b *bounded) Write(p []byte) (int, error) {
	if b.Len()+len(p) > maxSaid {
		return 0, errors.New("it says more than is read")
	}
	return b.Buffer.Write(p)
}

// command is one of git, to be run. What a configuration may have it run is turned off.
func (r *Repo) command(args ...string) *exec.Cmd {
	c := exec.CommandContext(r.ctx, r.program, append([]string{"--no-pager", "-c", "core.fsmonitor=false", "-c", "core.hooksPath=" + os.DevNull}, args...)...)
	c.Dir, c.Env = r.run, r.env
	c.WaitDelay = time.Second
	return c
}

// git asks git and returns what it says.
func (r *Repo) git(args ...string) (string, error) {
	return r.gitOf(nil, args...)
}

// gitOf is git, with a text for it to read.
func (r *Repo) gitOf(text []byte, args ...string) (string, error) {
	var out, words bounded
	c := r.command(args...)
	c.Stdin, c.Stdout, c.Stderr = bytes.NewReader(text), &out, &words
	if err := c.Run(); err != nil {
		return "", r.failed(err, words.String())
	}
	return out.String(), nil
}

// failed is the error of a command that ended with err.
func (r *Repo) failed(err error, words string) error {
	switch {
	case r.ctx.Err() != nil:
		return fmt.Errorf("git was not done in time: %w", r.ctx.Err())
	case strings.Contains(words, "not a git repository"):
		return ErrNoRepo
	case errors.Is(err, fs.ErrNotExist):
		return ErrNoGit
	}
	return &failure{words, err}
}
