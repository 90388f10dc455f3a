package main

import (
	"errors"
	"fmt"
	"io"
	"slices"
	"strings"
	"unicode/utf8"

	"vivary/compile"
	"vivary/compile/explain"
	"vivary/schema/civil"
	"vivary/schema/wording"
)

// why prints what a word means, in everything that it means.
func why(w *world, f *flags, args []string) int {
	word, err := asked(f, args)
	if err != nil {
		fmt.Fprintf(w.err, "vivary why: %v\n", wording.Plain(err))
		return usage
	}
	root, _ := w.root(f, nil)
	r, status := w.compiled(f, root)
	switch {
	case status != fine:
		return status
	case f.svg != "":
		return drawNamed(w, f, r, word)
	case word == "" && f.format == "json":
		printJSON(w, whyForms(nil, explain.Index(r)))
		return fine
	case word == "":
		printIndex(w.out, r)
		return fine
	}
	answers := explain.Of(r, word)
	if f.on != "" {
		d, _ := civil.Parse(f.on) // asked has read it
		answers = explain.On(r, word, d)
	}
	if len(answers) == 0 {
		return unexplained(w, r, word)
	}
	by := w.whoWrote(r, answers)
	if f.format == "json" {
		out := whyForms(by, answers...)
		out.Growth = growthForms(r, word)
		printJSON(w, out)
		return fine
	}
	for i, a := range answers {
		if i > 0 {
			fmt.Fprint(w.out, "\n\n")
		}
		printAnswer(w.out, a)
	}
	return fine
}

// asked returns the word that is asked about, "" where there is none.
func asked(f *flags, args []string) (string, error) {
	if len(args) > 1 {
		return "", fmt.Errorf("name one thing; a name of several words stands in quotes: %q", strings.Join(args, " "))
	}
	word := strings.Join(args, "")
	if f.svg != "" && word == "" {
		return "", errors.New("--svg draws an enclosure: name it")
	}
	if f.narrow && f.svg == "" {
		return "", errors.New("--narrow goes with --svg: it is about what is drawn")
	}
	if f.on == "" {
		return word, nil
	}
	if _, err := civil.Parse(f.on); err != nil {
		return "", fmt.Errorf("--on: %w", err)
	}
	if !strings.Contains(word, "/") {
		return "", errors.New("--on goes with a care: ENCLOSURE/CARE")
	}
	return word, nil
}

// unexplained says that a word means nothing, and which was likely meant. While the
// plan cannot be worked out, what is wrong with it comes first.
func unexplained(w *world, r *compile.Result, word string) int {
	if r.Roster == nil && len(r.Plan.Enclosures) > 0 {
		return w.refuse(r, "Nothing of this collection can be explained until this is put right")
	}
	fmt.Fprintf(w.err, "vivary why: nothing is named %q", word)
	if near := explain.Nearest(r, word); len(near) > 0 {
		fmt.Fprintf(w.err, ": did you mean %s?", wording.Or(near))
	} else if cares := explain.Cares(r, word); len(cares) > 0 && strings.Contains(word, "/") {
		fmt.Fprintf(w.err, "; of %s there are %s", word[:strings.IndexByte(word, '/')], wording.And(cares))
	}
	fmt.Fprintln(w.err, "\nWhat can be explained: vivary why")
	return usage
}

// drawNamed draws the year of the enclosure of that name, or how animals in it grew.
func drawNamed(w *world, f *flags, r *compile.Result, name string) int {
	name, animals, grown := strings.Cut(name, "/")
	e := r.Plan.Enclosure(name)
	if e == nil {
		fmt.Fprintf(w.err, "vivary why: --svg draws an enclosure, and there is none named %q\n", name)
		return usage
	}
	for i, l := range r.Lives {
		if l.Plan == e && grown {
			return drawGrowth(w, f, r, i, animals)
		}
		if l.Plan == e {
			return draw(w, f, r, i)
		}
	}
	return w.refuse(r, "Nothing of this collection can be drawn until this is put right")
}

// whyForm is what why prints as JSON.
type whyForm struct {
	envelope
	Answers []answerForm `json:"answers"`
	Growth  []growthForm `json:"growth,omitempty"` // of an enclosure
}

type answerForm struct {
	Title string      `json:"title"`
	Parts []partForm  `json:"parts"`
	Wrote []wroteForm `json:"wrote,omitempty"`
}

type partForm struct {
	Head  string     `json:"head,omitempty"`
	Lines []lineForm `json:"lines"`
	Code  string     `json:"code,omitempty"` // lines of a plan
}

type lineForm struct {
	Name  string   `json:"name,omitempty"` // what it is about
	Text  string   `json:"text"`
	Under []string `json:"under,omitempty"` // what belongs to it
}

// whyForms are answers, with who wrote what each is about where that is known.
func whyForms(by [][]wrote, answers ...explain.Answer) whyForm {
	out := whyForm{envelope: begin("why"), Answers: []answerForm{}}
	for i, a := range answers {
		j := answerForm{Title: a.Title, Parts: []partForm{}}
		for _, p := range a.Parts {
			part := partForm{p.Head, []lineForm{}, p.Code}
			for _, l := range p.Lines {
				part.Lines = append(part.Lines, lineForm(l))
			}
			j.Parts = append(j.Parts, part)
		}
		if i < len(by) {
			for _, x := range by[i] {
				j.Wrote = append(j.Wrote, x.form())
			}
		}
		out.Answers = append(out.Answers, j)
	}
	return out
}

func printIndex(out io.Writer, r *compile.Result) {
	printAnswer(out, explain.Index(r))
	fmt.Fprint(out, "\nOne of them: vivary why NAME\nAll of a sort: vivary why rules\nA care on a day: vivary why ENCLOSURE/CARE --on DAY\n")
}

func printAnswer(out io.Writer, a explain.Answer) {
	fmt.Fprintln(out, a.Title)
	for _, p := range a.Parts {
		fmt.Fprintln(out)
		if p.Head != "" {
			fmt.Fprintf(out, "%s:\n", p.Head)
		}
		if p.Code != "" {
			fmt.Fprint(out, indent(p.Code))
		}
		printLines(out, p)
	}
}

// widest is how wide the column of names grows; a longer name pushes its line out.
const widest = 40

// printLines prints the lines of a part, their names in a column. Lines below a
// heading are indented.
func printLines(out io.Writer, p explain.Part) {
	wide, margin := 0, ""
	for _, l := range p.Lines {
		wide = max(wide, min(widest, utf8.RuneCountInString(l.Name)))
	}
	if p.Head != "" || wide > 0 {
		margin = "  "
	}
	for _, l := range p.Lines {
		if l.Name != "" {
			fmt.Fprintf(out, "%s%-*s  %s\n", margin, wide, l.Name, l.Text)
		} else {
			fmt.Fprintf(out, "%s%s\n", margin, l.Text)
		}
		for _, u := range l.Under {
			fmt.Fprintf(out, "%s    %s\n", margin, u)
		}
	}
}

func indent(s string) string {
	return "    " + strings.Join(slices.Collect(strings.Lines(strings.TrimRight(s, "\n"))), "    ") + "\n"
}
