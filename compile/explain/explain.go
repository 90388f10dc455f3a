// Package explain says why things are as they are: a rule, a figure and whose it is,
// an enclosure with its whole proof, a care on a day. What it returns is words in
// parts, to be printed by a terminal or shown by an editor; it concludes nothing that
// other packages have not found out.
package explain

import (
	"slices"
	"strconv"
	"strings"

	"vivary/compile"
	"vivary/schema/civil"
	"vivary/schema/quantity"
	"vivary/schema/slip"
	"vivary/schema/wording"
)

// Answer is what there is to say of one thing.
type Answer struct {
	Title string
	Parts []Part
	// Written is where it was written what an answer is about, as far as a keeper did.
	Written []Passage
}

// Part is what an answer says under one heading. The part without a heading comes
// first.
type Part struct {
	Head  string
	Lines []Line
	Code  string // lines of a plan, in place of Lines
}

// Line is one fact.
type Line struct {
	Name  string   // what it is about, where that stands in a column of its own
	Text  string   // the fact
	Under []string // what belongs to it: whose word it is, what others say
}

// Topic is one sort of things that can be explained.
type Topic struct {
	Name string // for several: "rules"
	// list names every one, with a few words on what it is; of explains what a word
	// means among them, and returns nothing where it means none.
	list func(*compile.Result) []Line
	of   func(*compile.Result, string) []Answer
	// animals says that two names that are alike in letters are two animals: none is ever
	// meant for another.
	animals bool
}

// Topics are all sorts of things that can be explained. Of a collection's own things
// nothing is explained while its plan cannot be worked out; of what is known of
// animals everything is.
var Topics = []*Topic{
	{Name: "enclosures", list: listEnclosures, of: explainEnclosure},
	{Name: "racks", list: listRacks, of: explainRack},
	{Name: "cares", list: listCares, of: explainCare},
	{Name: "rounds", list: listRounds, of: explainRound},
	{Name: "rotas", list: listRotas, of: explainRota},
	{Name: "rooms", list: listRooms, of: explainRoom},
	{Name: "keepers", list: listKeepers, of: explainKeeper},
	{Name: "deadlines", list: listDeadlines, of: explainDeadline},
	{Name: "stock", list: listStock, of: explainStore},
	{Name: "rules", list: listRules, of: explainRule},
	{Name: "species", list: listSpecies, of: explainSpecies, animals: true},
	{Name: "types", list: listTypes, of: explainType},
	{Name: "needs", list: listNeeds, of: explainNeed},
	{Name: "kinds", list: listKinds, of: explainKind},
	{Name: "figures", list: listFigures, of: explainFigure},
	{Name: "feeders", list: listFeeders, of: explainFeeder, animals: true},
	{Name: "sources", list: listSources, of: explainSource},
}

// Of explains a word in everything that it means. It returns nothing where it means
// nothing.
func Of(r *compile.Result, word string) []Answer {
	var out []Answer
	for _, t := range Topics {
		if means(word, t.Name) {
			out = append(out, Answer{Title: heading(t.Name), Parts: []Part{{Lines: t.list(r)}}})
		}
		out = append(out, t.of(r, word)...)
	}
	return inUnits(out, r.Plan.Units)
}

// inUnits tells the values that sheets and rules state in the keeper's units, beside their
// own.
func inUnits(all []Answer, u quantity.Units) []Answer {
	for i := range all {
		for j := range all[i].Parts {
			lines := all[i].Parts[j].Lines
			for k := range lines {
				lines[k].Text = wording.Prose(lines[k].Text, u)
				for n := range lines[k].Under {
					lines[k].Under[n] = wording.Prose(lines[k].Under[n], u)
				}
			}
		}
	}
	return all
}

// As explains a word as one of a sort of Topics, such as "rounds", whatever else it means.
func As(r *compile.Result, sort, word string) []Answer {
	for _, t := range Topics {
		if t.Name == sort {
			return inUnits(t.of(r, word), r.Plan.Units)
		}
	}
	return nil
}

// On says why a care, ENCLOSURE/CARE, is or is not done on a day. It returns nothing
// where there is no such care.
func On(r *compile.Result, care string, d civil.Date) []Answer {
	var out []Answer
	for _, same := range turns(caresOf(r, care)) {
		x := whose(r, same, d)
		s := x.series()
		from := timed(s)
		if i, in := r.Horizon.Index(d); in {
			from = decided(s, i)
		}
		out = append(out, Answer{Title: x.title(), Written: from, Parts: []Part{{Lines: []Line{
			{Text: d.Words() + ": " + strings.Join(why(r, s, d), "; ")}, {Text: origin(r, s)},
		}}}})
	}
	return out
}

// whose is that of some cares which is done on a day by whose turn it is.
func whose(r *compile.Result, same []care, d civil.Date) care {
	i, in := r.Horizon.Index(d)
	for _, x := range same {
		if held := r.Roster.HeldOn(x.series().Round); in && len(same) > 1 && held.Has(i) {
			return x
		}
	}
	return same[0]
}

// Index says what can be explained: how much of each sort, and a few of them.
func Index(r *compile.Result) Answer {
	var lines []Line
	for _, t := range Topics {
		all := t.list(r)
		if len(all) == 0 {
			continue
		}
		lines = append(lines, Line{Name: t.Name, Text: strconv.Itoa(len(all)) + ": " + examples(all)})
	}
	return Answer{Title: "What can be explained", Parts: []Part{{Lines: lines}}}
}

// Names are the names that begin so of what can be explained, with a few words on what each
// is, for somebody who is typing one. It takes no time to speak of: cares have to be worked
// out and are left out, and of species and sources, which have to be read, only those are
// there of which something is typed. The collection may be one that is not compiled.
func Names(r *compile.Result, begin string) []Line {
	var all []Line
	for _, t := range Topics {
		all = append(all, Line{Name: t.Name, Text: "all of them"})
		switch {
		case t.Name == "cares" || t.Name == "sources" && (begin == "" || begin[0] > 'Z'):
		case t.Name == "species":
			all = append(all, speciesNames(r, begin)...)
		default:
			all = append(all, t.list(r)...)
		}
	}
	return slices.DeleteFunc(all, func(l Line) bool { return !strings.HasPrefix(l.Name, begin) })
}

// speciesNames are the species whose names begin so. Of many it is not said what each is.
func speciesNames(r *compile.Result, begin string) (all []Line) {
	if begin == "" {
		return nil
	}
	for _, name := range r.Plan.Library.SpeciesNames() {
		if strings.HasPrefix(name, begin) {
			all = append(all, Line{Name: name})
		}
	}
	for i := range all {
		if len(all) <= 5 {
			all[i].Text = r.Plan.Library.Species(all[i].Name).Shown()
		}
	}
	return all
}

// examples names a few of a list, from all along it.
func examples(all []Line) string {
	const most = 3
	var some []string
	for k := range min(most, len(all)) {
		some = append(some, all[k*max(1, len(all)/most)].Name)
	}
	if len(all) > most {
		some = append(some, "…")
	}
	return strings.Join(some, ", ")
}

// Nearest returns the names that may be meant by a word that means nothing: the one from
// which it is a slip of the keyboard, or the species near to it by name, of which none is
// meant more than another.
func Nearest(r *compile.Result, word string) []string {
	if s := nearestCare(r, word); s != "" {
		return []string{s}
	}
	var known []string
	for _, t := range Topics {
		known = append(known, t.Name)
		if t.animals {
			continue
		}
		for _, l := range t.list(r) {
			known = append(known, l.Name)
		}
	}
	if s := slip.Of(word, known); s != "" {
		return []string{s}
	}
	return r.Plan.Library.NearNames(word)
}

// worked reports whether the plan could be read well enough for its days to be
// worked out.
func worked(r *compile.Result) bool { return r.Roster != nil && len(r.Roster.Of) == len(r.Lives) }
