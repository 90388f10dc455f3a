package main

import (
	"fmt"
	"path/filepath"
	"strings"

	"github.com/spf13/afero"

	"vivary/cmd/internal/publish"
	"vivary/compile"
	"vivary/compile/feeds"
	"vivary/compile/roster"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema/wording"
)

// folder returns the folder that a command is about.
func folder(f *flags, args []string) (string, error) {
	switch {
	case len(args) > 1:
		return "", fmt.Errorf("one folder is named here, and these are %d: %s; a name of several words stands in quotes", len(args), strings.Join(args, ", "))
	case len(args) == 1 && f.in != "":
		return "", fmt.Errorf("the folder is named twice: %s, and %s after --in", args[0], f.in)
	case len(args) == 1:
		return args[0], nil
	case f.in != "":
		return f.in, nil
	}
	return ".", nil
}

// quoted returns the name of a folder as it is typed after a command.
func quoted(name string) string {
	shown := filepath.ToSlash(name)
	if strings.ContainsAny(shown, " \t") {
		shown = "'" + shown + "'"
	}
	return shown
}

// compiled reads and compiles a collection, as compile does. A status other than fine ends
// the command; what is wrong has been printed.
func (w *world) compiled(f *flags, root, dir string) (*compile.Result, int) {
	r, err := w.compile(f, root, dir)
	if err != nil {
		fmt.Fprintf(w.err, "vivary: %v\n", wording.Plain(err))
		return nil, usage
	}
	return r, fine
}

// compile reads and compiles a collection.
//
// What the last feeds showed people is evidence of the days before today: dir is the
// folder in which they are.
func (w *world) compile(f *flags, root, dir string) (*compile.Result, error) {
	c, found, err := plan.Load(w.disk, root)
	if err != nil {
		return nil, err
	}
	now, err := w.moment(f, c.Location)
	if err != nil {
		return nil, err
	}
	return compile.From(compile.Input{Plan: c, Loaded: found, Now: now, Told: w.told(c, dir), Known: w.known(c, root, dir)}), nil
}

// calendars is the folder of a collection's calendars.
func (f *flags) calendars(root string) string {
	if f.out != "" {
		return f.out
	}
	return feedsIn(root)
}

// feedsIn is the folder of a collection's feeds, where no other was named.
func feedsIn(root string) string { return filepath.Join(root, "feeds") }

// told reads what the last feeds of a collection showed; nil where there are none.
func (w *world) told(c *plan.Collection, dir string) roster.Told {
	if c.About == nil {
		return nil
	}
	names := []string{c.About.Name.V}
	for _, x := range c.Calendars {
		names = append(names, x.Name.V, x.Formerly.V)
	}
	var heads [][]byte
	for _, name := range names {
		if head, err := publish.Head(w.disk, dir, name+".ics"); err == nil && name != "" {
			heads = append(heads, head)
		}
	}
	return feeds.ReadTold(c.About.Name.V, heads)
}

// known reads what the last feeds told of the animals, whichever calendars the plan has now.
func (w *world) known(c *plan.Collection, root, dir string) []compile.Known {
	if c.About == nil {
		return nil
	}
	files, err := afero.ReadDir(w.disk, dir)
	if err != nil {
		return nil // there are none
	}
	var heads [][]byte
	for _, f := range files {
		if filepath.Ext(f.Name()) != ".ics" {
			continue
		}
		if head, err := publish.Head(w.disk, dir, f.Name()); err == nil {
			heads = append(heads, head)
		}
	}
	return feeds.ReadKnown(c, heads, filepath.Clean(dir) == filepath.Clean(feedsIn(root)))
}

// refuse prints the findings that keep a command from being carried out.
func (w *world) refuse(r *compile.Result, what string) int {
	p := r.Printer()
	_ = p.Print(w.err, r.Findings)
	fmt.Fprintf(w.err, "\n%s: %s.\n", what, finding.Summary(r.Findings))
	return refused
}
