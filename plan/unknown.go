package plan

import (
	"slices"
	"strings"

	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/plan/syntax"
	"vivary/schema"
	"vivary/schema/slip"
	"vivary/schema/wording"
)

// hasBlock reports whether a block has one of a type and with labels already.
func hasBlock(in *syntax.Block, kind string, labels []syntax.Label) bool {
	return slices.ContainsFunc(in.Blocks, func(b *syntax.Block) bool {
		return b.Type == kind && slices.EqualFunc(b.Labels, labels, func(x, y syntax.Label) bool { return x.Text == y.Text })
	})
}

// unknown finds a word that is not known there. fits says whether another could stand
// in its place: the nearest may be there already.
func (d *decoder) unknown(at source.Place, what, name, where string, known []string, fits func(string) bool) {
	f := finding.Finding{Rule: ruleUnknownWord, At: at,
		Text: "there is no " + what + " " + quote(name) + " in " + where}
	s, kind := slip.Of(name, known), schema.KindCalled(name)
	in := homes(what, name)
	switch {
	case s != "":
		f.Write = s
		f.Text += ": did you mean " + s + "?"
		if fits(s) {
			f.Edits = finding.Instead(f.At, name, s)
		}
	case meant[name] != "" && slices.Contains(known, meant[name]):
		f.Write = meant[name] + ", if that is what is meant; else one of: " + strings.Join(known, ", ")
	case what == "block" && kind != nil && slices.Contains(known, "care"):
		f.Write = "care, with the name " + quote(kind.Name) + ", if it is to be done; else one of: " + strings.Join(known, ", ")
	case len(in) > 0 && len(in) <= maxHomes:
		f.Text += ": it belongs " + wording.Or(in)
		f.Write = "the same there, and not here"
	default:
		f.Write = "one of: " + strings.Join(known, ", ")
	}
	d.found.Add(f)
}

// meant are words of keepers for which the language has others.
var meant = map[string]string{
	"holiday": "away", "holidays": "away", "vacation": "away", "absence": "away", "trip": "away",
	"tank": "enclosure", "vivarium": "enclosure", "terrarium": "enclosure", "cage": "enclosure", "tub": "enclosure", "box": "enclosure",
	"person": "keeper", "carer": "keeper", "vet": "contact", "animal": "animals", "task": "care", "food": "feeding", "feed": "feeding", "meal": "feeding",
	"rest": "season", "winter": "season", "brumation": "season", "hibernation": "season",
	"amount": "per_animal", "quantity": "per_animal", "number_of_prey": "per_animal", "how_many": "per_animal", "feeder": "prey", "food_item": "prey",
	"frequency": "every", "interval": "every", "schedule": "every", "days": "on", "time": "at", "start": "from", "end": "to", "sex": "count", "males": "count", "females": "count",
	"size": "inside", "dimensions": "inside", "age": "stage", "heat": "climate", "wattage": "power", "watts": "power", "position": "place", "location": "room",
}

// maxHomes is of how many blocks it is said that a word belongs there.
const maxHomes = 3

// homes say in which blocks a word may stand.
func homes(what, name string) (in []string) {
	seen := map[*schema.Block]bool{}
	var look func(b *schema.Block)
	look = func(b *schema.Block) {
		if seen[b] {
			return
		}
		seen[b] = true
		if what == "block" && b.Block(name) != nil || what == "attribute" && b.Attr(name) != nil {
			if b == schema.Plan {
				in = append(in, "outside of all blocks")
			} else {
				in = append(in, "in "+b.Name)
			}
		}
		for _, c := range b.Blocks {
			look(c)
		}
	}
	look(schema.Plan)
	slices.Sort(in)
	return slices.Compact(in)
}

// headPlace is the first line of a block, without its brace.
func headPlace(blk *syntax.Block) source.Place {
	at := blk.TypeAt
	if n := len(blk.Labels); n > 0 {
		at.End = blk.Labels[n-1].At.End
	}
	return at
}

func blockNames(b *schema.Block) []string {
	var n []string
	for _, c := range b.Blocks {
		n = append(n, c.Name)
	}
	return n
}

func ownNames(b *schema.Block) []string {
	var n []string
	for _, a := range b.Attrs {
		n = append(n, a.Name)
	}
	if b.Short != nil {
		for _, f := range b.Short() {
			n = append(n, strings.ReplaceAll(f.Name, "-", "_"))
		}
	}
	for _, c := range b.Flat {
		for _, a := range c.Attrs {
			if b.Flattened(a.Name) == c {
				n = append(n, a.Name)
			}
		}
	}
	return append(n, blockNames(b)...)
}

// opening says in words what a block begins with.
func opening(b *schema.Block) string {
	switch b.Label {
	case "":
		return "the word " + b.Name
	case "name":
		return "the word " + b.Name + " and its name in quotes"
	}
	return "the word " + b.Name + " and the " + b.Label + ", in quotes"
}

func named(h *Head) string {
	if h.Name.V == "" {
		return ""
	}
	return " " + quote(h.Name.V)
}

func quote(s string) string {
	if r := []rune(s); len(r) > 60 {
		s = string(r[:57]) + "…"
	}
	return "\"" + s + "\""
}

func lower(s string) string {
	if s == "" {
		return s
	}
	return strings.ToLower(s[:1]) + strings.TrimSuffix(s[1:], ".")
}
