package main

import (
	"fmt"
	"runtime/debug"

	"vivary/compile"
	"vivary/compile/sarif"
	"vivary/schema/wording"
)

func checkPlan(w *world, f *flags, args []string) int {
	root, err := w.root(f, args)
	if err != nil {
		fmt.Fprintf(w.err, "vivary check: %v\n", wording.Plain(err))
		return usage
	}
	r, status := w.compiled(f, root)
	if status != fine {
		return status
	}
	switch f.format {
	case "json":
		printJSON(w, checkForm{begin("check"), howItStands(r), findingForms(r.Plan.Files, r.Findings)})
	case "sarif":
		printJSON(w, sarif.Of(r, r.Findings, ourselves(root)))
	default:
		_ = r.Printer().Print(w.out, r.Findings)
		if len(r.Findings) > 0 {
			fmt.Fprintln(w.out)
		}
		fmt.Fprintln(w.out, r.Verdict())
		inForce(w, r)
	}
	switch {
	case r.Refused():
		return refused
	case f.urgentFails && r.Urgent() > 0:
		return pressing
	}
	return fine
}

// ourselves is what a log of findings says of the program, and of the folder of the
// collection.
func ourselves(root string) sarif.Tool {
	v := versionForm{}
	if info, ok := debug.ReadBuildInfo(); ok {
		v.read(info)
	}
	return sarif.Tool{Version: v.Module, Folder: root}
}

// inForce names the limits that the collection sets aside.
func inForce(w *world, r *compile.Result) {
	for _, line := range r.InForce() {
		fmt.Fprintln(w.out, "  "+line)
	}
}

// checkForm is what check prints as JSON.
type checkForm struct {
	envelope
	standingForm
	Findings []findingForm `json:"findings"`
}
