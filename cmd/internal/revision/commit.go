package revision

import (
	"errors"
	"fmt"
	"os"
	"path"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"time"

	"vivary/plan"
)

// Commit is a revision.
type Commit struct {
	ID, Short string
	Author    string    // as the repository's own list of names has it
	When      time.Time // it was written, where its author's clock was
	Subject   string    // the first line of its message
	tree      string
	landed    time.Time // it became what it is: a commit can be written long before it is taken
}

// format is how git is asked for a commit: what stands in Commit, with zeros between.
const format = "--format=%H%x00%h%x00%T%x00%aI%x00%cI%x00%aN%x00%s"

// commitsOf reads what rev-list says in that format, each behind a line of its own.
func commitsOf(said string) (out []Commit) {
	for line := range strings.Lines(said) {
		part := strings.SplitN(strings.TrimSuffix(line, "\n"), "\x00", 7)
		if len(part) < 7 {
			continue // "commit" and its id
		}
		when, _ := time.Parse(time.RFC3339, part[3]) // one that no calendar has is none
		landed, _ := time.Parse(time.RFC3339, part[4])
		out = append(out, Commit{part[0], part[1], strings.ToValidUTF8(part[5], "\ufffd"), when, strings.ToValidUTF8(part[6], "\ufffd"), part[2], landed})
	}
	return out
}

// Find returns the commit that a keeper means: a branch, a tag, a number of git's, whole or
// the beginning of it, or a way from one of them, HEAD~3.
func (r *Repo) Find(rev string) (Commit, error) {
	switch {
	case strings.TrimSpace(rev) == "" || strings.ContainsFunc(rev, func(c rune) bool { return c < ' ' }):
		return Commit{}, errors.New("no revision is named: name a branch, a tag or the number of a commit, such as HEAD")
	case strings.Contains(rev, ".."):
		first, last, _ := strings.Cut(rev, "..")
		return Commit{}, fmt.Errorf("%q is a stretch of revisions: name one, such as %s", rev, either(first, strings.TrimPrefix(last, "."), "HEAD"))
	case rev[0] == '^' || strings.Contains(rev, ":"):
		return Commit{}, fmt.Errorf("%q names no single revision: name a branch, a tag or the number of a commit", rev)
	}
	said, err := r.git("rev-parse", "--verify", "--end-of-options", rev+"^{commit}")
	if err != nil {
		return Commit{}, r.unfound(rev, err)
	}
	said, err = r.git("rev-list", "--no-walk", "--encoding=UTF-8", format, strings.TrimSpace(said), "--")
	if err != nil {
		return Commit{}, r.unfound(rev, err)
	}
	found := commitsOf(said)
	if len(found) != 1 {
		return Commit{}, fmt.Errorf("git says of %q what is not understood", rev)
	}
	return found[0], nil
}

func either(names ...string) string {
	return names[slices.IndexFunc(names, func(s string) bool { return s != "" })]
}

// unfound says why there is no commit of that name.
func (r *Repo) unfound(rev string, err error) error {
	var failed *failure
	if !errors.As(err, &failed) {
		return err
	}
	switch {
	case failed.says("is ambiguous"):
		return fmt.Errorf("several revisions begin with %q: write more of the one that is meant", rev)
	case failed.says("expected commit type", "bad object type"):
		return fmt.Errorf("%q is in the repository, and is no commit: name a branch, a tag or the number of a commit", rev)
	}
	if _, err := r.git("rev-parse", "--verify", "--quiet", "HEAD^{commit}"); err != nil {
		if any, err := r.git("rev-list", "--all", "--max-count=1"); err == nil && any == "" {
			return fmt.Errorf("there is no revision %q: nothing has been committed yet", rev)
		}
	}
	if r.shallow {
		return fmt.Errorf("there is no revision %q here: this is a shallow clone, which has the last revisions only; git fetch --unshallow brings all, git fetch --deepen=100 some more", rev)
	}
	return fmt.Errorf("there is no revision %q here: git log --oneline lists them, git branch --all and git tag the names", rev)
}

// read are the patterns of the files of the collection that are read, for git.
func (r *Repo) read() []string {
	at := quoteGlob(r.below)
	return []string{":(top,glob)" + path.Join(at, "**/*"+plan.PlanSuffix), ":(top,glob)" + path.Join(at, "**/*"+plan.LogSuffix)}
}

// quoteGlob is a path as a pattern that is that path alone.
func quoteGlob(p string) string {
	return strings.NewReplacer(`\`, `\\`, `*`, `\*`, `?`, `\?`, `[`, `\[`).Replace(p)
}

// Log returns the commits that changed a plan or a log below the folder, newest first, at
// most n. They are steps of one line: a merge is one step, in which all came that it
// brought. A folder is not followed to where it was before it was moved. cut says that what
// came before is not known, since a shallow clone ends there: its last commit may have
// changed nothing.
func (r *Repo) Log(from Commit, n int) (list []Commit, cut bool, err error) {
	args := []string{"rev-list", "--first-parent", "--encoding=UTF-8", format, "--max-count=" + strconv.Itoa(n), from.ID, "--"}
	said, err := r.git(append(args, r.read()...)...)
	if err != nil {
		return nil, false, err
	}
	list = commitsOf(said)
	if !r.shallow || len(list) == n {
		return list, false, nil
	}
	first, err := r.git("rev-list", "--first-parent", "--max-parents=0", from.ID, "--")
	if err != nil {
		return nil, false, err
	}
	return list, r.cutAt(strings.TrimSpace(first)), nil
}

// cutAt reports whether a commit had others before it that are not here.
func (r *Repo) cutAt(id string) bool {
	where, err := r.git("rev-parse", "--git-path", "shallow")
	if err != nil {
		return false
	}
	where = filepath.FromSlash(strings.TrimSuffix(where, "\n"))
	if !filepath.IsAbs(where) {
		where = filepath.Join(r.run, where)
	}
	text, err := os.ReadFile(where)
	return err == nil && slices.Contains(strings.Fields(string(text)), id)
}

// Renames returns the names that plans and logs have in b, with those that they had in a,
// where git sees that a file was renamed. Paths are below the folder, with slashes.
func (r *Repo) Renames(a, b Commit) (map[string]string, error) {
	args := []string{"diff-tree", "-r", "-z", "-M", "-l1000", "--diff-filter=R", "--name-status", "--no-ext-diff", "--no-textconv", a.ID, b.ID, "--"}
	said, err := r.git(append(args, r.read()...)...)
	if err != nil {
		return nil, err
	}
	out := map[string]string{}
	part := strings.Split(said, "\x00")
	for ; len(part) >= 3; part = part[3:] {
		if strings.HasPrefix(part[0], "R") {
			out[r.shown(part[2])] = r.shown(part[1])
		}
	}
	return out, nil
}

// shown is a path of a tree as seen from the folder of the collection.
func (r *Repo) shown(p string) string {
	if r.below == "" {
		return p
	}
	return strings.TrimPrefix(p, r.below+"/")
}
