package explain

import (
	"strconv"
	"strings"

	"vivary/compile"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/wording"
)

func listRules(*compile.Result) []Line {
	var out []Line
	for _, r := range compile.Rules() {
		out = append(out, Line{Name: r.ID, Text: r.Title})
	}
	return out
}

// explainRule also takes the id in the brackets in which a finding has it.
func explainRule(_ *compile.Result, word string) []Answer {
	r := compile.FindRule(strings.Trim(word, "[]"))
	if r == nil {
		return nil
	}
	first := []Line{{Text: r.Title + " " + r.Why}, {Text: "What to do: " + r.Instead}, {Text: "Source: " + r.Source}, {Text: severe(r)}, {Text: r.Silence.String()}}
	parts := []Part{{Lines: first}}
	e := compile.Example(r.ID)
	if e.Words != "" {
		parts = append(parts, Part{Lines: []Line{{Text: e.Words}}})
	}
	if e.Found.Text != "" {
		parts = append(parts, Part{Head: "This is found", Code: e.Found.Shown()})
	}
	if e.NotFound.Text != "" {
		parts = append(parts, Part{Head: "This is not", Code: e.NotFound.Shown()})
	}
	return []Answer{{Title: "Rule " + r.ID + ": " + r.Severity.String(), Parts: parts}}
}

// severe says what a finding of the rule does to a build.
func severe(r *finding.Rule) string {
	if r.Severity.Refuses() {
		return "A plan in which it is found is not built."
	}
	return "A plan in which it is found is built all the same."
}

func listNeeds(*compile.Result) []Line {
	var out []Line
	for _, n := range schema.Needs {
		out = append(out, Line{Name: n.Name, Text: n.Doc})
	}
	return out
}

func explainNeed(r *compile.Result, word string) []Answer {
	n := schema.FindNeed(plain(word))
	if n == nil {
		return nil
	}
	var by []string
	for _, k := range schema.CareKinds {
		if k.Needs == n {
			by = append(by, k.Name)
		}
	}
	parts := []Part{{Lines: []Line{{Text: n.Doc}, {Text: "Care that meets it: " + strings.Join(by, ", ")}}}}
	var longest, proofs []Line
	for _, s := range sheets(r) {
		for _, x := range s.Needs {
			if x.Name.V == n.Name {
				longest = append(longest, needLine(r.Plan.Library, holding(s.Name.V, x.Stages), x))
			}
		}
	}
	for _, all := range r.Proofs {
		for i := range all {
			if p := &all[i]; p.Name == n {
				proofs = append(proofs, Line{Name: livesThere(p), Text: proven(r, p)})
			}
		}
	}
	parts = part(parts, "As the sheets have it", longest)
	return []Answer{{Title: "Need " + n.Name + ": " + n.Noun, Parts: part(parts, "In this collection", proofs)}}
}

// needLine says what a sheet states of a need.
func needLine(l *plan.Library, name string, n *plan.Need) Line {
	text := "at most " + n.Longest.V.String() + " apart"
	if n.Shortest.Set() {
		text += ", at least " + n.Shortest.V.String()
	}
	line := Line{Name: name, Text: text, Under: cited(l, n.Cited, n.Disputed.V, n.Note.V)}
	if n.Own {
		line.Under = append(line.Under, own(n.Because, n.Review))
	}
	return line
}

func listKinds(*compile.Result) []Line {
	var out []Line
	for _, k := range schema.CareKinds {
		out = append(out, Line{Name: k.Name, Text: k.Doc})
	}
	return out
}

func explainKind(r *compile.Result, word string) []Answer {
	k := schema.KindCalled(word)
	if k == nil {
		return nil
	}
	var has gather
	keepers := map[string]bool{}
	for _, x := range cares(r) {
		if s := x.series(); s.Kind == k {
			has.add(x.where(), s.Words()+" at "+wording.Clock(s.At(), r.Plan.Units)+by(r, s.Keeper))
			keepers[s.Keeper] = true
		}
	}
	title := "Kind of care " + k.Name
	if k.Phrase != "" {
		title += ": " + k.Phrase
	}
	facts := kindFacts(k)
	if l, _, ok := r.Plan.Learnt("", k); ok {
		facts = append(facts, "In this house it takes about "+strconv.Itoa(l.Minutes)+" min: the median of "+strconv.Itoa(l.Lines)+" lines of the log.")
	}
	return []Answer{{Title: title, Parts: part([]Part{{Lines: plainly(facts)}}, "Where it is done", has.lines())}}
}

// kindFacts says of a kind what it does for the animals and to them.
func kindFacts(k *schema.CareKind) []string {
	out := []string{k.Doc}
	if k.Needs != nil {
		out = append(out, "It meets the need "+k.Needs.Name+".")
	} else {
		out = append(out, "It meets none of the needs that are proved.")
	}
	switch {
	case k.Disturbs():
		out = append(out, "It disturbs: it waits while animals are to be left alone, and until the keeper is back from an absence.")
	case k.Water:
		out = append(out, "It brings drinking water: it is never held.")
	case k.Meal:
		out = append(out, "It is held while an animal must not be fed.")
	}
	out = append(out, "Who may do it: "+may(k))
	return append(out, "It takes about "+strconv.Itoa(k.Minutes)+" min where the plan does not say; that is common practice, no source.")
}

// may says who may do a kind of care. What a species asks of people is for the rules.
func may(k *schema.CareKind) string {
	out := "anybody"
	switch {
	case k.Meal:
		out = "anybody; a stand-in who is not trained in feeding gives prey that is killed first"
	case !k.StandIn:
		out = "the keeper, not a stand-in"
	}
	return out + "; with some species only who is trained (rules venom-untrained and hairs-untrained)"
}
