package main

import (
	"fmt"
	"slices"

	"vivary/cmd/internal/journal"
	"vivary/compile"
	"vivary/plan/finding"
	"vivary/schema"
)

// follows says what lines changed: what is held, what comes first, where animals are,
// and what the next build will say. The findings about the lines themselves have been said.
func (w *world) follows(before, after *compile.Result, said []finding.Finding, word *schema.LogWord) {
	if after.Roster == nil {
		fmt.Fprintln(w.out, "  The plan cannot be read now, so that what follows from the line is not known: see vivary check.")
		return
	}
	for _, s := range journal.Changes(before, after) {
		fmt.Fprintln(w.out, "  "+s)
	}
	if len(said) == 0 && word == schema.WordRemark {
		fmt.Fprintln(w.out, "  A remark: nothing follows from it.")
	}
	type key struct{ rule, text string }
	known := map[key]bool{}
	for _, f := range slices.Concat(before.Findings, said) {
		known[key{f.Rule.ID, f.Text}] = true
	}
	for _, f := range after.Findings {
		if f.Severity >= finding.Caution && !known[key{f.Rule.ID, f.Text}] {
			fmt.Fprintln(w.out, "  "+f.Brief())
		}
	}
	if after.Refused() {
		fmt.Fprintln(w.out, "  The plan is refused, though not by the log: see vivary check.")
	}
}
