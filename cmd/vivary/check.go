package main

import (
	"fmt"

	"vivary/compile"
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
	if f.format == "json" {
		printJSON(w, checkForm{begin("check"), howItStands(r), findingForms(r.Plan.Files, r.Findings)})
	} else {
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
