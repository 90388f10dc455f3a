package main

import (
	"encoding/json"
	"fmt"

	"vivary/compile"
	"vivary/plan/finding"
	"vivary/plan/source"
)

func checkPlan(w *world, f *flags, args []string) int {
	root, err := w.root(f, args)
	if err != nil {
		fmt.Fprintf(w.err, "vivary check: %v\n", err)
		return usage
	}
	r, status := w.compiled(f, root, feedsIn(root))
	if status != fine {
		return status
	}
	if f.format == "json" {
		checkJSON(w, r)
	} else {
		p := finding.Printer{Files: r.Plan.Files}
		_ = p.Print(w.out, r.Findings)
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

// place is a place of the JSON form. Lines and columns count from 1.
type place struct {
	File   string `json:"file"`
	Line   int    `json:"line"`
	Column int    `json:"column"`
	Start  int    `json:"start"` // in bytes, from 0
	End    int    `json:"end"`
}

type jsonFinding struct {
	Rule     string    `json:"rule"`
	Severity string    `json:"severity"`
	At       *place    `json:"at,omitempty"`
	Text     string    `json:"text"`
	Limit    string    `json:"limit,omitempty"`
	Source   string    `json:"source,omitempty"`
	Write    string    `json:"write,omitempty"`
	Edits    []edit    `json:"edits,omitempty"`
	Also     []related `json:"also,omitempty"`
}

// edit is a change of a text, of the JSON form: what stands at a place gives way to
// another text.
type edit struct {
	place
	Text string `json:"text"`
}

type related struct {
	At   *place `json:"at,omitempty"`
	Text string `json:"text"`
}

func checkJSON(w *world, r *compile.Result) {
	at := func(p source.Place) *place {
		if !p.Written() {
			return nil
		}
		pos := r.Plan.Files.Start(p)
		return &place{pos.File, pos.Line, pos.Column, int(p.Start), int(p.End)}
	}
	out := struct {
		Refused  bool          `json:"refused"`
		Urgent   int           `json:"urgent"` // how many of the findings
		Findings []jsonFinding `json:"findings"`
		InForce  []string      `json:"in_force,omitempty"` // limits that the collection sets aside
	}{r.Refused(), r.Urgent(), []jsonFinding{}, r.InForce()}
	for i := range r.Findings {
		f := &r.Findings[i]
		j := jsonFinding{Rule: f.Rule.ID, Severity: f.Severity.String(), At: at(f.At), Text: f.Text, Limit: f.Limit, Source: f.Source, Write: f.Write}
		for _, e := range f.Edits {
			j.Edits = append(j.Edits, edit{*at(e.At), e.Text})
		}
		for _, a := range f.Also {
			j.Also = append(j.Also, related{at(a.At), a.Text})
		}
		out.Findings = append(out.Findings, j)
	}
	printJSON(w, out)
}

// printJSON leaves a failure to write to run, which sees it when it flushes.
func printJSON(w *world, what any) {
	e := json.NewEncoder(w.out)
	e.SetEscapeHTML(false)
	e.SetIndent("", "  ")
	_ = e.Encode(what)
}
