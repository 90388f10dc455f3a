package compile

import (
	"cmp"
	"slices"
	"strconv"

	"vivary/plan"
	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/schema/wording"
)

// named is how many enclosures of a rack are named in a finding, and how many of its texts
// stand there beside the first.
const named = 12

// ofRacks says what is found at one line of a rack once, of however many enclosures, and
// which these are. What accept blocks silence in each of them has been taken out.
func ofRacks(c *plan.Collection, all []finding.Finding) []finding.Finding {
	if len(c.Racks) == 0 {
		return all
	}
	in := map[source.Place]*plan.Enclosure{}
	for _, k := range c.Racks {
		for _, e := range k.Enclosures {
			in[e.Whole] = e
		}
	}
	type cause struct {
		rule *finding.Rule
		at   source.Place
	}
	at := map[cause][]finding.Finding{}
	out := all[:0:0]
	for _, f := range all {
		e := in[f.In]
		if e == nil || !c.RackOf(e).Says(f.At) {
			out = append(out, f)
			continue
		}
		k := cause{f.Rule, f.At}
		if at[k] == nil {
			out = append(out, f) // its place among the others
		}
		at[k] = append(at[k], f)
	}
	for i := range out {
		if same := at[cause{out[i].Rule, out[i].At}]; same != nil && in[out[i].In] != nil {
			out[i] = together(c, same, in)
		}
	}
	return out
}

// together makes one finding of those of one rule at one line of a rack: the worst, and
// what is said of which enclosures.
func together(c *plan.Collection, all []finding.Finding, in map[source.Place]*plan.Enclosure) finding.Finding {
	slices.SortStableFunc(all, func(a, b finding.Finding) int { return cmp.Compare(b.Severity, a.Severity) })
	f := all[0]
	k := c.RackOf(in[f.In])
	f.Also = slices.Clone(f.Also)
	var texts []string
	of := map[string][]string{}
	for _, x := range all {
		text := x.Text
		if x.Limit != "" {
			text += " (" + x.Limit + ")"
		}
		if of[text] == nil {
			texts = append(texts, text)
		}
		if name := in[x.In].Name.V; !slices.Contains(of[text], name) {
			of[text] = append(of[text], name)
		}
	}
	for i, text := range texts {
		if i > named {
			f.Also = append(f.Also, finding.Related{Text: "and " + strconv.Itoa(len(texts)-i) + " more"})
			break
		}
		said := "in " + some(of[text])
		if len(of[text]) == len(k.Enclosures) && len(of[text]) > 1 {
			said = "in all " + strconv.Itoa(len(of[text])) + " enclosures of rack " + k.Name.V
		}
		if i > 0 {
			said += ": " + text
		}
		f.Also = append(f.Also, finding.Related{Text: said})
	}
	return f
}

// some names enclosures, or the first of them and how many more.
func some(names []string) string {
	if len(names) <= named {
		return wording.And(names)
	}
	return wording.And(append(slices.Clone(names[:named]), strconv.Itoa(len(names)-named)+" more"))
}
