package compile

import (
	"cmp"
	"slices"
	"strconv"
	"strings"

	"vivary/plan"
	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/schema/quantity"
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
	in := map[finding.Box]*plan.Enclosure{}
	for _, k := range c.Racks {
		for _, e := range k.Enclosures {
			in[e.Box()] = e
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
func together(c *plan.Collection, all []finding.Finding, in map[finding.Box]*plan.Enclosure) finding.Finding {
	slices.SortStableFunc(all, func(a, b finding.Finding) int { return cmp.Compare(b.Severity, a.Severity) })
	f := all[0]
	k := c.RackOf(in[f.In])
	f.Also = slices.Clone(f.Also)
	var texts []string
	of := map[string][]string{}
	said := map[string]string{} // by the text without the name of its enclosure
	for _, x := range all {
		text, name := x.Text, in[x.In].Name.V
		if x.Limit != "" {
			text += " (" + x.Limit + ")"
		}
		same := strings.ReplaceAll(text, name, "\x00")
		if said[same] == "" {
			said[same] = text
			texts = append(texts, text)
		}
		text = said[same]
		if n := len(of[text]); n == 0 || of[text][n-1] != name {
			of[text] = append(of[text], name)
		}
	}
	for i, text := range texts {
		if i > named {
			f.Also = append(f.Also, finding.Related{Text: "and " + strconv.Itoa(len(texts)-i) + " more"})
			break
		}
		where := "in " + some(of[text])
		if len(of[text]) == len(k.Enclosures) && len(of[text]) > 1 {
			where = "in all " + strconv.Itoa(len(of[text])) + " enclosures of rack " + k.Name.V
		}
		if i > 0 {
			where += ": " + text
		}
		f.Also = append(f.Also, finding.Related{Text: where})
	}
	for _, h := range k.Heaters {
		if w := h.Power.V; k.Share > 1 && h.Power.Set() && (f.At == h.At || f.At == h.Power.At) {
			f.Also = append(f.Also, finding.Related{Text: w.String() + " for " + strconv.Itoa(k.Share) + " places: " + quantity.Format(w.Value/float64(k.Share), w.Unit) + " for each"})
		}
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
