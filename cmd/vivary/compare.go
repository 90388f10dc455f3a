package main

import (
	"errors"
	"fmt"
	"path/filepath"
	"strings"
	"time"

	"github.com/spf13/afero"

	"vivary/cmd/internal/compared"
	"vivary/cmd/internal/revision"
	"vivary/compile/compare"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/schema/wording"
)

// comparePlans says what changes for the animals from one collection to another.
func comparePlans(w *world, f *flags, args []string) int {
	fail := func(err error) int {
		fmt.Fprintf(w.err, "vivary compare: %v\n", wording.Plain(err))
		return usage
	}
	c := &comparing{w: w, f: f}
	was, is, err := c.sides(args)
	if err != nil {
		return fail(err)
	}
	if f.library != "" {
		from := afero.NewIOFS(afero.NewBasePathFs(w.disk, f.library))
		if was.Sheets, err = plan.SheetsFrom(from); err != nil {
			return fail(fmt.Errorf("--library %s: %w", quoted(f.library), err))
		}
	}
	r, err := compared.Of(was.Side, is.Side, func(loc *time.Location) (time.Time, error) { return w.moment(f, loc) })
	if err != nil {
		return fail(err)
	}
	title := was.name + " → " + is.name + ", as of " + r.Is.Today.Words()
	switch f.format {
	case "json":
		printJSON(w, compareForms(r, was.name, is.name))
	case "markdown":
		_ = r.Markdown(w.out, title)
	default:
		fmt.Fprintf(w.out, "%s\n", title)
		_ = r.Print(w.out, f.whole)
		if r.Unread != nil {
			_ = r.Unread.Printer().Print(w.out, r.Refuses)
		}
	}
	return differs(r)
}

// differs is the exit status of a comparison.
func differs(r *compare.Report) int {
	switch {
	case r.Harmed():
		return refused
	case r.Changed():
		return pressing
	}
	return fine
}

// comparing is a comparison of which the two sides are looked for.
type comparing struct {
	w    *world
	f    *flags
	root string
	repo *revision.Repo // nil until it is asked for
	none error          // why there is no repository
}

// side is one of two collections, and what it is called.
type side struct {
	compared.Side
	name string
}

// sides finds what is compared: two that are named, one and the folder as it is, or that and the
// last revision. A trial is laid over the first, or over the folder.
func (c *comparing) sides(args []string) (was, is side, err error) {
	if len(args) > 2 {
		return was, is, fmt.Errorf("two are compared, and here stand %d: %s", len(args), strings.Join(args, ", "))
	}
	if c.f.trial != "" && len(args) > 1 {
		return was, is, errors.New("with --if one is named at the most: the other is the same with the trial")
	}
	c.find()
	switch {
	case c.f.trial != "" && len(args) == 0:
		was, err = c.folder(c.root, "the plan as it is")
	case len(args) == 0:
		was, err = c.revision("HEAD")
	default:
		was, err = c.named(args[0])
	}
	switch {
	case err != nil:
	case c.f.trial != "":
		is, err = c.trial(was)
	case len(args) == 2:
		is, err = c.named(args[1])
	default:
		is, err = c.folder(c.root, "the folder as it is")
	}
	return was, is, err
}

// find finds the folder of the collection, which is there on the disk or in a repository alone.
func (c *comparing) find() {
	if c.root = c.f.in; c.root == "" {
		c.root = "."
	}
	if root, err := c.w.root(c.f, nil); err == nil {
		c.root = root
	}
}

// open finds the repository in which the folder is.
func (c *comparing) open() error {
	if c.repo == nil && c.none == nil {
		c.repo, c.none = revision.Open(c.w.context(), c.root)
	}
	return c.none
}

// named is what a word names: a folder or a revision.
func (c *comparing) named(word string) (side, error) {
	info, err := c.w.disk.Stat(word)
	there, isFile := err == nil && info.IsDir(), err == nil && !info.IsDir()
	path := strings.ContainsAny(word, `/\`) || strings.Trim(word, ".") == ""
	if isFile && path {
		return c.folder(word, word) // which says that it is a file
	}
	if there && path {
		return c.folder(word, filepath.ToSlash(word))
	}
	of, err := c.revision(word)
	switch {
	case there && err == nil:
		return side{}, fmt.Errorf("%q is a folder and a revision: ./%s is the folder, and a longer name such as refs/heads/%s the revision", word, word, word)
	case there:
		return c.folder(word, filepath.ToSlash(word))
	case err == nil:
		return of, nil // in a bare repository HEAD is a file too
	case isFile:
		return c.folder(word, word)
	case c.none != nil:
		return side{}, fmt.Errorf("%q is no folder here, and no revision: %w", word, c.none)
	}
	return of, err
}

// folder is the collection in a folder of the disk.
func (c *comparing) folder(root, name string) (side, error) {
	info, err := c.w.disk.Stat(root)
	switch {
	case err != nil:
		return side{}, fmt.Errorf("the folder %s cannot be read: %w", quoted(root), err)
	case !info.IsDir():
		return side{}, fmt.Errorf("%s is a file: name the folder that holds the collection", quoted(root))
	case plan.Standing(c.w.disk, root) == "":
		return side{}, fmt.Errorf("no plan stands below %s: name the folder of a collection, or two revisions", quoted(root))
	}
	return side{compared.Side{Disk: within(c.w.disk, root)}, name}, nil
}

// within is a disk on which a folder of another is the root.
func within(disk afero.Fs, root string) afero.Fs {
	if filepath.Clean(root) == "." { // afero takes no name for one below it
		return disk
	}
	return afero.NewBasePathFs(disk, root)
}

// revision is the collection as it was at a revision.
func (c *comparing) revision(word string) (side, error) {
	if err := c.open(); err != nil {
		return side{}, err
	}
	commit, err := c.repo.Find(word)
	if err != nil {
		return side{}, err
	}
	files, err := c.repo.Files(commit)
	if err != nil {
		return side{}, err
	}
	out := side{compared.Side{Disk: within(files, c.root)}, wording.Line(commit.Short + " " + commit.Subject)}
	if word != commit.Short && !strings.HasPrefix(commit.ID, word) {
		out.name = word + " (" + out.name + ")"
	}
	if c.f.ownDays {
		out.At = commit.When
	}
	return out, nil
}

// trial is a side with a file laid over it.
func (c *comparing) trial(was side) (side, error) {
	name := c.f.trial
	if !strings.HasSuffix(name, plan.PlanSuffix) && !strings.HasSuffix(name, plan.LogSuffix) {
		return side{}, fmt.Errorf("--if %s: a trial is a plan, with a name that ends in %s, or lines of a log, in %s", quoted(name), plan.PlanSuffix, plan.LogSuffix)
	}
	text, found := plan.TextOf(c.w.disk, name, 1)
	var disk afero.Fs
	var err error
	if len(found) == 0 {
		disk, found, err = compared.Laid(was.Disk, name, text)
	}
	if err != nil {
		return side{}, err
	}
	if len(found) > 0 {
		return side{}, errors.New(c.unread(name, text, found))
	}
	return side{compared.Side{Disk: disk, Sheets: was.Sheets, At: was.At}, "with " + filepath.ToSlash(name)}, nil
}

// unread says what of a trial cannot be read.
func (c *comparing) unread(name string, text []byte, found []finding.Finding) string {
	var files source.Set
	id := files.Add(filepath.ToSlash(name), text)
	for i := range found {
		found[i].At.File = id
	}
	var out strings.Builder
	_ = finding.Printer{Files: &files}.Print(&out, found)
	return "the trial cannot be read:\n" + strings.TrimRight(out.String(), "\n")
}
