package main

import (
	"bytes"
	"encoding/json"
	"fmt"

	"vivary/compile"
	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/schema/wording"
)

// What is printed as JSON is for programs: schema/JSON.md says of each form what it means,
// and schema/json has a JSON Schema for each. A form of one version only ever gets more
// fields; what changes or takes away one is another version.

// envelope begins everything that is printed as JSON.
type envelope struct {
	Format  string `json:"format"`
	Version int    `json:"version"`
}

// begin returns the envelope of what a command prints.
func begin(command string) envelope { return envelope{"vivary/" + command, 1} }

// standingForm is how a collection stands.
type standingForm struct {
	Today      string   `json:"today"` // where the animals are
	Refused    bool     `json:"refused"`
	Urgent     int      `json:"urgent"` // how many of the findings
	Enclosures int      `json:"enclosures"`
	Verdict    string   `json:"verdict"`
	InForce    []string `json:"in_force,omitempty"` // limits that the collection sets aside
}

func howItStands(r *compile.Result) standingForm {
	return standingForm{r.Today.String(), r.Refused(), r.Urgent(), len(r.Plan.Enclosures), r.Verdict(), r.InForce()}
}

// place is a stretch of a file. Lines and columns count from 1, columns in characters as
// people count them; Start and End count bytes from 0. The end is the first place after it.
type place struct {
	File      string `json:"file"`
	Line      int    `json:"line"`
	Column    int    `json:"column"`
	EndLine   int    `json:"end_line"`
	EndColumn int    `json:"end_column"`
	Start     int    `json:"start"`
	End       int    `json:"end"`
}

type findingForm struct {
	Rule       string      `json:"rule"`
	Severity   string      `json:"severity"`
	At         *place      `json:"at,omitempty"`
	Text       string      `json:"text"`
	Where      string      `json:"where,omitempty"`      // of which enclosures the text is true, in words
	Enclosures []string    `json:"enclosures,omitempty"` // that its cause touches, by their names in the plan
	Limit      string      `json:"limit,omitempty"`
	Source     string      `json:"source,omitempty"`
	Write      string      `json:"write,omitempty"`
	Edits      []editForm  `json:"edits,omitempty"`
	Also       []relatedTo `json:"also,omitempty"`
}

// editForm is a change of a text: what stands at a place gives way to another text.
type editForm struct {
	place
	Text string `json:"text"`
}

type relatedTo struct {
	At   *place `json:"at,omitempty"`
	Text string `json:"text"`
}

// findingForms returns all findings, however many they are.
func findingForms(files *source.Set, all []finding.Finding) []findingForm {
	at := func(p source.Place) *place {
		if !p.Written() {
			return nil
		}
		from, to := files.Start(p), files.End(p)
		return &place{from.File, from.Line, from.Column, to.Line, to.Column, int(p.Start), int(p.End)}
	}
	out := make([]findingForm, 0, len(all))
	for i := range all {
		f := &all[i]
		j := findingForm{Rule: f.Rule.ID, Severity: f.Severity.String(), At: at(f.At), Text: f.Text, Where: f.Where, Enclosures: f.Of, Limit: f.Limit, Source: f.Source, Write: f.Write}
		for _, e := range f.Edits {
			j.Edits = append(j.Edits, editForm{*at(e.At), e.Text})
		}
		for _, a := range f.Also {
			j.Also = append(j.Also, relatedTo{at(a.At), a.Text})
		}
		out = append(out, j)
	}
	return out
}

// printJSON prints a form. It leaves a failure to write to run, which sees it when it
// flushes. What does not reach a terminal is escaped, so that it reaches a program.
func printJSON(w *world, form any) {
	var b bytes.Buffer
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false)
	e.SetIndent("", "  ")
	_ = e.Encode(form)
	var out bytes.Buffer
	for _, r := range b.String() {
		switch {
		case wording.Seen(r):
			out.WriteRune(r)
		default: // none of these is beyond what four digits tell
			fmt.Fprintf(&out, `\u%04x`, r)
		}
	}
	_, _ = w.out.Write(out.Bytes())
}
