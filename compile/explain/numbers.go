package explain

import (
	"fmt"
	"strings"

	"vivary/compile"
	"vivary/plan"
	"vivary/schema/wording"
)

// writtenAs says of one of several enclosures with numbers where it is written, and what
// only some of them have.
func writtenAs(r *compile.Result, e *plan.Enclosure) []Line {
	if e.Of == "" {
		return nil
	}
	n := 0
	for _, o := range r.Plan.Enclosures {
		if o.Of == e.Of {
			n++
		}
	}
	out := plainly([]string{fmt.Sprintf("one of %s with numbers, enclosure %q (%s)", wording.Count(n, "enclosure", "enclosures"), e.Of, placed(r, &e.Head))})
	for _, a := range e.Differs() {
		out = append(out, apart(r, a))
	}
	return out
}

// apart says what a number block says.
func apart(r *compile.Result, a *plan.Apart) Line {
	body := a.Whole
	body.Start = a.At.End
	text := strings.Join(strings.Fields(strings.Trim(r.Plan.Files.Of(body), " {}\r\n")), " ")
	return Line{Name: "number " + a.Numbers.String(), Text: text + " (" + placed(r, &a.Head) + ")"}
}

// placed is where a block stands.
func placed(r *compile.Result, h *plan.Head) string {
	p := r.Plan.Files.Start(h.At)
	return fmt.Sprintf("%s:%d", p.File, p.Line)
}

// explainNumbers explains the name of a block with numbers.
func explainNumbers(r *compile.Result, word string) []Answer {
	var of []*plan.Enclosure
	for _, e := range r.Plan.Enclosures {
		if e.Of != "" && means(word, e.Of, "") {
			of = append(of, e)
		}
	}
	if len(of) == 0 {
		return nil
	}
	var here, differ []Line
	seen := map[*plan.Apart]bool{}
	for _, e := range of {
		here = append(here, Line{Name: e.Name.V, Text: describe(e)})
		for _, a := range e.Differs() {
			if !seen[a] {
				seen[a] = true
				differ = append(differ, apart(r, a))
			}
		}
	}
	parts := part(nil, "Which they are", here)
	parts = part(parts, "What only some of them have", differ)
	return []Answer{{Title: "Enclosures " + of[0].Of + ": " + wording.Count(len(of), "enclosure", "enclosures") + " with numbers (" + placed(r, &of[0].Head) + ")", Parts: parts, Written: block(&of[0].Head)}}
}
