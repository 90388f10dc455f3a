package compile

import (
	"vivary/compile/check"
	"vivary/plan"
)

// InForce says of each limit that this collection sets aside that it does, and until when:
// its own weaker limits, then what accept blocks silence. Every build and check names
// them, so that nobody forgets that less is proved.
func (r *Result) InForce() []string {
	var out []string
	for _, w := range check.WeakerOf(r.Plan) {
		line := "Own limit of " + w.Sheet + ": " + w.Here + "; known is " + w.Known
		if w.Review.Set() {
			line += "; until " + w.Review.V.Words()
		}
		out = append(out, line+because(w.Because.V))
	}
	in := map[*plan.Accept][]*plan.Enclosure{} // a template, or a block with numbers, says it of several
	var all []*plan.Accept
	for _, e := range r.Plan.Enclosures {
		for _, a := range e.Accepts {
			if accepts(a, r.Today) {
				if in[a] == nil {
					all = append(all, a)
				}
				in[a] = append(in[a], e)
			}
		}
	}
	for _, a := range all {
		out = append(out, "Accepted in "+some(in[a])+": "+a.Name.V+" until "+a.Until.V.Words()+because(a.Because.V))
	}
	return out
}

func because(text string) string {
	if text == "" {
		return ""
	}
	return " (" + text + ")"
}
