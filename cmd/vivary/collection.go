package main

import (
	"errors"
	"fmt"

	"vivary/compile"
	"vivary/plan"
	"vivary/plan/finding"
)

// folder returns the folder that a command is about.
func folder(f *flags, args []string) (string, error) {
	switch {
	case len(args) > 1:
		return "", errors.New("name one folder only")
	case len(args) == 1 && f.in != "":
		return "", errors.New("name the folder once: after the command, or with --in")
	case len(args) == 1:
		return args[0], nil
	case f.in != "":
		return f.in, nil
	}
	return ".", nil
}

// compiled reads and compiles a collection. A status other than fine ends the
// command; what is wrong has been printed.
func (w *world) compiled(f *flags, root string) (*compile.Result, int) {
	c, found, err := plan.Load(w.disk, root)
	if err != nil {
		fmt.Fprintf(w.err, "vivary: %v\n", err)
		return nil, usage
	}
	now, err := w.moment(f, c.Location)
	if err != nil {
		fmt.Fprintf(w.err, "vivary: %v\n", err)
		return nil, usage
	}
	return compile.Compile(c, found, now), fine
}

// refuse prints the findings that keep a command from being carried out.
func (w *world) refuse(r *compile.Result, what string) int {
	p := finding.Printer{Files: r.Plan.Files, Color: w.color && w.live}
	_ = p.Print(w.err, r.Findings)
	fmt.Fprintf(w.err, "\n%s: %s.\n", what, finding.Summary(r.Findings))
	return refused
}
