package main

import (
	"context"
	"path/filepath"
	"strings"
	"time"

	"vivary/cmd/internal/revision"
	"vivary/compile"
	"vivary/compile/explain"
	"vivary/plan/source"
	"vivary/schema/civil"
	"vivary/schema/wording"
)

// lookUp is how long git may take to say who wrote something: an answer does not wait for
// what it can do without.
const lookUp = 2 * time.Second

// wrote is what is known of who wrote something.
type wrote struct {
	what string
	revision.Written
}

// whoWrote adds to answers who wrote what they are about, as far as git knows: without git,
// or outside of a repository, nothing. It returns the same of each answer, as values.
func (w *world) whoWrote(r *compile.Result, answers []explain.Answer) [][]wrote {
	out := make([][]wrote, len(answers))
	if !w.revisions {
		return out
	}
	ctx, end := context.WithTimeout(w.context(), lookUp)
	defer end()
	asked := map[source.ID][]revision.Lines{}
	passages(answers, func(_ int, p explain.Passage) {
		for _, at := range p.At {
			asked[at.File] = append(asked[at.File], spanOf(r, at))
		}
	})
	known := map[source.ID][]revision.Written{}
	for id, lines := range asked {
		known[id] = blame(ctx, r.Plan.Files.Name(id), r.Plan.Files.Text(id), lines)
	}
	passages(answers, func(i int, p explain.Passage) {
		var all []revision.Written
		for _, at := range p.At {
			if of := known[at.File]; of != nil {
				all, known[at.File] = append(all, of[0]), of[1:]
			}
		}
		if last := revision.Latest(all); last.Open || last.ID != "" {
			out[i] = append(out[i], wrote{p.What, last})
		}
	})
	for i := range answers {
		say(&answers[i], out[i])
	}
	return out
}

func passages(answers []explain.Answer, do func(int, explain.Passage)) {
	for i, a := range answers {
		for _, p := range a.Written {
			do(i, p)
		}
	}
}

// spanOf are the lines on which a place is.
func spanOf(r *compile.Result, at source.Place) revision.Lines {
	from, to := r.Plan.Files.Points(at)
	return revision.Lines{First: from.Line, Last: to.Line}
}

// blame returns who wrote lines of a file of the collection, nil where that is not known. A
// file has the repository in which it stands, whichever that of the collection is.
func blame(ctx context.Context, name string, text []byte, lines []revision.Lines) []revision.Written {
	real, err := filepath.EvalSymlinks(filepath.FromSlash(name))
	if err != nil {
		return nil
	}
	r, err := revision.Open(ctx, filepath.Dir(real))
	if err != nil {
		return nil
	}
	out, err := r.Blame(filepath.Base(real), text, lines)
	if err != nil {
		return nil
	}
	return out
}

// say adds the lines that say who wrote what an answer is about.
func say(a *explain.Answer, all []wrote) {
	var lines []explain.Line
	for _, x := range all {
		lines = append(lines, explain.Line{Text: x.words()})
	}
	switch n := len(a.Parts) - 1; {
	case lines == nil:
	case n >= 0 && a.Parts[n].Head == "" && a.Parts[n].Code == "":
		a.Parts[n].Lines = append(a.Parts[n].Lines, lines...)
	default:
		a.Parts = append(a.Parts, explain.Part{Head: "Who wrote it", Lines: lines})
	}
}

// words says it in a line, such as: Written by Lead keeper on Thu 12 Mar 2026 in 3f2a1b0
// "Mist every second day".
func (x wrote) words() string {
	day := ""
	if !x.When.IsZero() {
		day = civil.FromTime(x.When).Words()
	}
	switch {
	case x.Open:
		return x.what + ", and not committed yet"
	case x.Earlier && day != "":
		return x.what + " in or before " + x.Short + " of " + day + ": what came before is not in this clone"
	case x.Earlier:
		return x.what + " in or before " + x.Short + ": what came before is not in this clone"
	}
	out := x.what
	if author := short(x.Author); author != "" {
		out += " by " + author
	}
	if day != "" {
		out += " on " + day
	}
	out += " in " + x.Short
	if about := short(x.Subject); about != "" {
		out += ` "` + about + `"`
	}
	return out
}

// mostOf is how much is shown of a name or a subject, in characters.
const mostOf = 100

func short(s string) string {
	all := []rune(strings.TrimSpace(wording.Line(s)))
	if len(all) > mostOf {
		return strings.TrimRight(string(all[:mostOf]), " ") + "…"
	}
	return string(all)
}

// wroteForm is one revision in the JSON form of why.
type wroteForm struct {
	What    string `json:"what"` // as the line about it begins
	State   string `json:"state"`
	ID      string `json:"id,omitempty"`
	Author  string `json:"author,omitempty"`
	At      string `json:"at,omitempty"`
	Subject string `json:"subject,omitempty"`
}

func (x wrote) form() wroteForm {
	out := wroteForm{What: x.what, State: "committed", ID: x.ID, Author: x.Author, Subject: x.Subject}
	switch {
	case x.Open:
		out.State = "uncommitted"
	case x.Earlier:
		out.State = "in-or-before"
	}
	if !x.When.IsZero() {
		out.At = x.When.Format(time.RFC3339)
	}
	return out
}
