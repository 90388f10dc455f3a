package page

import (
	"net/http"
	"strings"

	"vivary/compile"
	"vivary/plan/finding"
	"vivary/plan/source"
)

// findingsPage is what was found in the plan and its log.
type findingsPage struct {
	frame
	Verdict string
	InForce []string
	Summary string
	All     []foundView
	More    string
}

// foundView is a finding.
type foundView struct {
	ID, Severity, Text, Rule string
	Place                    string
	Before, Mark, Behind     string // the line of the plan, with the part meant
	Where, Limit, Source     string
	Write                    []string // the line to write
	Fix                      string   // what to do, in words
	Also                     []string
	Tanks                    []choice
	Why                      string
}

// maxFound is how many findings a page shows: nobody reads more at once.
const maxFound = 200

// findings shows what was found, the worst first.
func (q *request) findings() {
	r := q.h.Result
	out := findingsPage{frame: q.frame("Findings", "findings"), Verdict: r.Verdict(), InForce: r.InForce(), Summary: found(r.Findings)}
	for s := finding.Danger; ; s-- {
		for i := range r.Findings {
			if f := &r.Findings[i]; f.Severity == order[s] && len(out.All) < maxFound {
				out.All = append(out.All, viewOf(r, f, len(out.All)))
			}
		}
		if s == 0 {
			break
		}
	}
	if n := len(r.Findings) - len(out.All); n > 0 {
		out.More = "There are more: these are the worst " + itoa(len(out.All)) + " of " + itoa(len(r.Findings)) + "."
	}
	q.show(http.StatusOK, "findings", out)
}

// order is that in which severities are shown, from the last: what harms now first, then what
// refuses.
var order = [...]finding.Severity{finding.Advice, finding.Caution, finding.Error, finding.Danger, finding.Urgent}

func viewOf(r *compile.Result, f *finding.Finding, n int) foundView {
	v := foundView{ID: "f" + itoa(n+1), Severity: f.Severity.String(), Text: f.Text, Rule: f.Rule.ID, Where: f.Where, Limit: f.Limit, Source: f.Source, Why: f.Rule.Why}
	if f.At.Written() {
		v.Place = placeOf(r.Plan.Files, f.At)
		v.Before, v.Mark, v.Behind = excerpt(r.Plan.Files, f.At)
	}
	if v.Write = finding.Edited(r.Plan.Files, f.Edits); len(v.Write) == 0 {
		v.Fix = f.Write
	}
	for _, a := range f.Also {
		text := a.Text
		if a.At.Written() {
			text = placeOf(r.Plan.Files, a.At) + ": " + text
		}
		v.Also = append(v.Also, text)
	}
	for _, name := range f.Of[:min(len(f.Of), 12)] {
		if e := r.Plan.Enclosure(name); e != nil && r.Roster != nil {
			v.Tanks = append(v.Tanks, choice{name, e.Shown()})
		}
	}
	return v
}

func placeOf(files *source.Set, at source.Place) string {
	pos := files.Start(at)
	return pos.File + ":" + itoa(pos.Line)
}

// excerpt is the line of a place, before, in and behind it. Of a very long one it is what
// stands around the place.
func excerpt(files *source.Set, at source.Place) (before, mark, behind string) {
	text, from, to := files.Line(at)
	runes := []rune(text)
	if strings.TrimSpace(text) == "" || from > len(runes) {
		return "", "", ""
	}
	to = min(max(to, from+1), len(runes))
	const around = 80
	start, end := max(0, from-around), min(len(runes), to+around)
	to = min(to, from+3*around)
	end = min(end, to+around)
	return strings.TrimLeft(string(runes[start:from]), " \t"), string(runes[from:to]), string(runes[to:end])
}
