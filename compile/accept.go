package compile

import (
	"slices"

	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema/civil"
	"vivary/schema/slip"
)

var (
	ruleAcceptUnknown = &finding.Rule{ID: "accept-unknown", Severity: finding.Error,
		Title:   "An accept block names no rule.",
		Why:     "It would silence nothing, while whoever wrote it thinks that it does.",
		Source:  "the design of this program",
		Instead: "Use the id that stands in brackets at the end of the finding."}
	ruleAcceptNever = &finding.Rule{ID: "accept-never", Severity: finding.Error,
		Title:   "An accept block tries to silence what is never silenced.",
		Why:     "What can kill an animal or hurt a person, and what cannot be understood, has to be put right.",
		Source:  "the design of this program",
		Instead: "Put the cause right, and take the accept block out."}
	ruleAcceptOver = &finding.Rule{ID: "accept-over", Severity: finding.Caution,
		Title:   "The date of an accept block has passed.",
		Why:     "The finding that it silenced is back, so that somebody looks at it again.",
		Source:  "the design of this program",
		Instead: "Put the cause right, or give a new date and a reason that holds today."}
	ruleAcceptLong = &finding.Rule{ID: "accept-long", Severity: finding.Error,
		Title:   "An accept block silences a rule for longer than a year.",
		Why:     "A finding that never comes back is looked at by nobody.",
		Source:  "the design of this program",
		Instead: "Give a date within a year, and look at it again then."}
	ruleTooFar = &finding.Rule{ID: "too-far", Severity: finding.Error,
		Title:   "An absence ends further ahead than is looked.",
		Why:     "The proof reaches to the end of every absence, up to ten years ahead. Beyond that nothing would be proved.",
		Source:  "a bound of this program",
		Instead: "Look at the year of the return."}
)

// Accepted is a finding that an accept block silences.
type Accepted struct {
	finding.Finding
	By *plan.Accept
}

// accept takes out the findings that accept blocks silence, and adds those about the blocks
// themselves. It returns what was taken out too, in the order in which findings are printed.
func accept(c *plan.Collection, all []finding.Finding, today civil.Date) (left []finding.Finding, accepted []Accepted) {
	var about finding.List
	silenced, over := map[silence]*plan.Accept{}, map[silence]*plan.Accept{}
	for _, e := range c.Enclosures {
		for _, a := range e.Accepts {
			r := FindRule(a.Name.V)
			switch {
			case r == nil:
				f := finding.Finding{Rule: ruleAcceptUnknown, At: a.Name.At, Text: "there is no rule " + a.Name.V, Write: "the id in brackets at the end of the finding"}
				var ids []string
				for _, x := range Rules() {
					ids = append(ids, x.ID)
				}
				if s := slip.Of(a.Name.V, ids); s != "" {
					f.Text += ": did you mean " + s + "?"
					f.Write = s
					if FindRule(s).Silence != finding.Never {
						f.Edits = finding.Instead(a.Name.At, a.Name.V, s)
					}
				}
				about.Add(f)
			case r.Silence == finding.Never:
				about.Add(finding.Finding{Rule: ruleAcceptNever, At: a.Name.At, Text: r.ID + " is never silenced: " + r.Title,
					Write: "no such block; what helps is told by vivary why " + r.ID, Edits: finding.Without(c.Files.Text(a.Whole.File), a.Whole)})
			case a.Until.Set() && a.Until.V <= today:
				over[silence{e.Box(), r}] = a
				about.Add(finding.Finding{Rule: ruleAcceptOver, At: a.Until.At, Text: r.ID + " was accepted until " + a.Until.V.Words() + ", which has passed",
					Write: "put it right, or a new date and reason"})
			case a.Until.Set() && int(a.Until.V-today) > longestAccept:
				by := a.Until.V.NotAfter(today + longestAccept).String()
				about.Add(finding.Finding{Rule: ruleAcceptLong, At: a.Until.At, Text: r.ID + " would be accepted until " + a.Until.V.Words(),
					Limit: "a year and a month ahead", Write: by + ", or sooner", Edits: finding.Instead(a.Until.At, a.Until.V.String(), by)})
			case accepts(a, today):
				silenced[silence{e.Box(), r}] = a
			}
		}
	}
	var taken []finding.Finding
	if len(silenced) > 0 {
		all = slices.DeleteFunc(all, func(f finding.Finding) bool {
			out := silenced[silence{f.In, f.Rule}] != nil && f.Silenced()
			if out {
				taken = append(taken, f)
			}
			return out
		})
	}
	for _, f := range inUnits(finding.Sort(c.Files, taken), c.Units) {
		accepted = append(accepted, Accepted{f, silenced[silence{f.In, f.Rule}]})
	}
	for i := range all {
		if a := over[silence{all[i].In, all[i].Rule}]; a != nil && all[i].Silenced() {
			back(&all[i], a)
		}
	}
	return append(all, about.All...), accepted
}

// accepts reports whether an accept block silences its rule today.
func accepts(a *plan.Accept, today civil.Date) bool {
	r := FindRule(a.Name.V)
	return r != nil && r.Silence != finding.Never && a.Until.Set() && a.Until.V > today && int(a.Until.V-today) <= longestAccept
}

// back makes of what an accept block silenced until its end what it is now. Time alone
// brought it, and refuses nothing.
func back(f *finding.Finding, a *plan.Accept) {
	if f.Severity.Refuses() {
		f.Severity = finding.Urgent
	}
	f.Accepted = true
	f.Also = append(f.Also[:len(f.Also):len(f.Also)], finding.Related{At: a.At, Text: "accepted until " + a.Until.V.Words() + ", which has passed"})
}

// longestAccept is how many days ahead a rule may be silenced.
const longestAccept = 400

// silence is one rule silenced in one enclosure.
type silence struct {
	in   finding.Box
	rule *finding.Rule
}
