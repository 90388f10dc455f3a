package main

import (
	"fmt"
	"path/filepath"
	"strings"
	"time"

	"vivary/cmd/internal/builder"
	"vivary/compile"
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

// builder returns what builds a collection.
func (w *world) builder(f *flags, root string) *builder.Builder {
	return &builder.Builder{Root: root, Out: f.calendars(root), Now: func(loc *time.Location) (time.Time, error) { return w.moment(f, loc) }}
}

// compiled reads and compiles a collection. A status other than fine ends the command; what
// is wrong has been printed.
func (w *world) compiled(f *flags, root string) (*compile.Result, int) {
	r, err := w.builder(f, root).Compile(w.disk)
	if err != nil {
		fmt.Fprintf(w.err, "vivary: %v\n", wording.Plain(err))
		return nil, usage
	}
	return r, fine
}

// calendars is the folder of a collection's calendars.
func (f *flags) calendars(root string) string {
	if f.out != "" {
		return f.out
	}
	return builder.Feeds(root)
}

// refuse prints the findings that keep a command from being carried out.
func (w *world) refuse(r *compile.Result, what string) int {
	p := r.Printer()
	_ = p.Print(w.err, r.Findings)
	fmt.Fprintf(w.err, "\n%s: %s.\n", what, finding.Summary(r.Findings))
	return refused
}
