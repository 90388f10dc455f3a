package main

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"strings"

	"vivary/cmd/internal/publish"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/plan/tidy"
	"vivary/schema/wording"
)

// tidyPlans lays out plans.
func tidyPlans(w *world, f *flags, args []string) int {
	if len(args) == 1 && args[0] == "-" {
		return w.tidyInput(f)
	}
	t := &tidier{world: w, check: f.check}
	err := error(nil)
	if f.name != "" {
		err = errors.New("--name goes with a hyphen in place of a file: vivary tidy - --name FILE")
	} else {
		err = t.list(f, args)
	}
	if err != nil {
		fmt.Fprintf(w.err, "vivary tidy: %v\n", wording.Plain(err))
		return usage
	}
	for _, path := range t.paths {
		t.file(path)
	}
	return t.done()
}

// tidyInput lays out what stands on standard input.
func (w *world) tidyInput(f *flags) int {
	var text []byte
	if w.in != nil {
		var err error
		if text, err = io.ReadAll(io.LimitReader(w.in, plan.MaxFile+1)); err != nil {
			fmt.Fprintf(w.err, "vivary tidy: %v\n", wording.Plain(err))
			return refused
		}
	}
	if len(text) > plan.MaxFile {
		fmt.Fprintf(w.err, "vivary tidy: more than %d MiB is no plan. Nothing was written.\n", plan.MaxFile>>20)
		return refused
	}
	t := &tidier{world: w, check: f.check}
	name := f.name
	if name == "" {
		name = "standard input"
	}
	id := t.set.Add(name, text)
	if strings.HasSuffix(name, plan.LogSuffix) {
		if t.found = plan.Unread(id, text); !f.check {
			t.write(text)
		}
		return t.told()
	}
	out, found := tidy.Text(id, text)
	t.found = found
	switch {
	case !f.check:
		t.write(out)
	case !bytes.Equal(out, text):
		t.changed = 1
		t.show(name, id, text)
	}
	return t.told()
}

// write writes a text as it is.
func (t *tidier) write(text []byte) {
	if _, err := t.raw.Write(text); err != nil {
		t.failed = true
		fmt.Fprintf(t.err, "vivary tidy: %v\n", wording.Plain(err))
	}
}

// tidier lays out files, one after another.
type tidier struct {
	*world
	check bool
	paths []string // of plans and logs

	set            source.Set
	found          []finding.Finding
	plans, changed int
	failed         bool // a file could not be written
}

// list lists the files that are named, and those of the folders.
func (t *tidier) list(f *flags, args []string) error {
	if len(args) == 0 || f.in != "" {
		root, err := t.root(f, args)
		if err != nil {
			return err
		}
		args = []string{root}
	}
	for _, arg := range args {
		info, err := t.disk.Stat(arg)
		switch {
		case errors.Is(err, os.ErrNotExist):
			return fmt.Errorf("there is no file or folder %q", arg)
		case err != nil:
			return err
		case info.IsDir():
			t.folder(arg)
		case !strings.HasSuffix(arg, plan.PlanSuffix) && !strings.HasSuffix(arg, plan.LogSuffix):
			return fmt.Errorf("%q is no plan: the name of a plan ends in %s", arg, plan.PlanSuffix)
		case !info.Mode().IsRegular():
			return fmt.Errorf("%q is %s and no file", arg, wording.FileKind(info.Mode()))
		default:
			t.paths = append(t.paths, arg)
		}
	}
	return nil
}

// folder lists the files below a folder. What a link leads to has another name, by which it is
// laid out; it may be another collection's too.
func (t *tidier) folder(root string) {
	all, odd := plan.Below(t.disk, root)
	for _, x := range all {
		if x.Linked {
			fmt.Fprintf(t.err, "%s is reached by a link, and left as it is: name it, or what the link leads to.\n", filepath.ToSlash(x.Path))
			continue
		}
		t.paths = append(t.paths, x.Path)
	}
	for _, x := range odd {
		x.Found.At.File = t.set.Add(filepath.ToSlash(x.Path), nil)
		t.found = append(t.found, x.Found)
	}
}

// file lays out a file.
func (t *tidier) file(path string) {
	shown := filepath.ToSlash(path)
	id := t.set.Add(shown, nil)
	text, found := plan.TextOf(t.disk, path, id)
	if found != nil {
		t.found = append(t.found, found...)
		return
	}
	t.set.Put(id, shown, text)
	if strings.HasSuffix(path, plan.LogSuffix) {
		t.found = append(t.found, plan.Unread(id, text)...)
		return
	}
	t.plans++
	out, found := tidy.Text(id, text)
	t.found = append(t.found, found...)
	if bytes.Equal(out, text) {
		return
	}
	if !t.check {
		if err := publish.Swap(t.disk, path, text, out); err != nil {
			t.failed = true
			fmt.Fprintf(t.err, "vivary tidy: %v\n", wording.Plain(err))
			return
		}
	}
	t.changed++
	t.show(shown, id, text)
}

// The most that is shown of what would change in a file.
const (
	shownHunks = 5
	shownLines = 8
)

// show names a file that has changed, or shows what would change in it.
func (t *tidier) show(name string, id source.ID, text []byte) {
	if !t.check {
		fmt.Fprintln(t.out, name)
		return
	}
	edits := tidy.Edits(id, text, source.Place{})
	for i, e := range edits {
		if i == shownHunks {
			fmt.Fprintf(t.out, "%s: and %s more\n", name, wording.Count(len(edits)-i, "change", "changes"))
			break
		}
		fmt.Fprintf(t.out, "%s:%d:\n", name, t.set.Start(e.At).Line)
		t.lines("-", string(text[e.At.Start:e.At.End]))
		t.lines("+", e.Text)
	}
}

func (t *tidier) lines(mark, text string) {
	n := 0
	for line := range strings.Lines(text) {
		if n++; n > shownLines {
			fmt.Fprintf(t.out, "  %s …\n", mark)
			return
		}
		fmt.Fprintf(t.out, "  %s %s\n", mark, strings.TrimRight(line, "\r\n"))
	}
}

// done says how it stands, and returns the exit status.
func (t *tidier) done() int {
	status := t.told()
	switch {
	case t.changed > 0 && t.check:
		fmt.Fprintf(t.out, "%s of %d would change: vivary tidy\n", wording.Count(t.changed, "plan", "plans"), t.plans)
	case t.changed == 0 && status == fine:
		fmt.Fprintf(t.out, "%s, tidy.\n", wording.Count(t.plans, "plan", "plans"))
	}
	return status
}

// told prints what was found, and returns the exit status.
func (t *tidier) told() int {
	_ = finding.Printer{Files: &t.set}.Print(t.err, finding.Sort(&t.set, t.found))
	if finding.Refuses(t.found) {
		fmt.Fprintln(t.err, "\nWhat cannot be read stays as it is.")
	}
	if t.failed || finding.Refuses(t.found) || t.check && t.changed > 0 {
		return refused
	}
	return fine
}
