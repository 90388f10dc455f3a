package plan

import (
	"slices"
	"strings"

	"vivary/plan/finding"
	"vivary/schema/civil"
	"vivary/schema/slip"
	"vivary/schema/wording"
)

// library takes over the sheets of the collection's own and looks at them.
func (r *resolver) library() {
	lib := r.c.Library
	_, lib.own.species = byName(r, r.blocks.species, "species")
	_, lib.own.types = byName(r, r.blocks.types, "type")
	_, lib.own.feeders = byName(r, r.blocks.feeders, "feeder")
	_, lib.own.sources = byName(r, r.blocks.sources, "source")
	for name, s := range lib.own.species {
		lib.own.species[name] = lib.called(s)
	}
	for name, t := range lib.own.types {
		if as := lib.called(t.as); as != t.as {
			again := *t
			again.as = as
			lib.own.types[name] = &again
		}
	}
	for _, t := range lib.own.types {
		if t.In.Set() && lib.Type(t.In.V) == nil {
			r.unknownName(t.In, "care type", lib.TypeNames())
		}
	}
	for _, s := range lib.own.species {
		r.like(s)
		r.reasoned(s)
		r.allowed(s)
	}
}

// reasoned finds figures and needs of the collection's own that take the place of known
// ones and do not say why, on whose word and until when. Where nothing was known it is
// enough to say on whose word.
func (r *resolver) reasoned(s *SpeciesSheet) {
	base := r.c.Library.Beneath(s.Name.V)
	find := func(h *Head, known bool, because Written[string], review Written[civil.Date], src []Written[string]) {
		if lacks := unreasoned(because, review, src); known && lacks != "" {
			r.found.Add(finding.Finding{Rule: RuleUnreasoned, At: h.At,
				Text: quote(h.Name.V) + " takes the place of a known figure, but has " + lacks, Write: writeReason})
		} else if !known && len(src) == 0 {
			r.found.Add(finding.Finding{Rule: RuleUnreasoned, At: h.At,
				Text: quote(h.Name.V) + " does not say from whom it is known", Write: "source, on whose word: a page, a person, your own records"})
		}
	}
	for _, f := range s.Figures {
		known := base != nil && slices.ContainsFunc(base.Figures, func(b *Figure) bool { return b.What == f.What && b.OfType == "" })
		find(&f.Head, known, f.Because, f.Review, f.Source)
	}
	for _, n := range s.Needs {
		known := base != nil && slices.ContainsFunc(base.Needs, func(b *Need) bool { return b.What == n.What && b.OfType == "" })
		find(&n.Head, known, n.Because, n.Review, n.Source)
	}
}

// allowed finds a state block of the collection's own that allows more than what the
// sheet is laid over, and does not say why.
func (r *resolver) allowed(s *SpeciesSheet) {
	if len(s.States) == 0 {
		return
	}
	base := r.c.Library.Beneath(s.Name.V)
	for _, b := range s.States {
		rows, lacks := b.Weaker(base), unreasoned(b.Because, b.Review, b.Source)
		if rows == nil || lacks == "" {
			continue
		}
		r.found.Add(finding.Finding{Rule: RuleUnreasoned, At: b.At,
			Text:  "state " + quote(b.Name.V) + " allows more than is known to be safe, but has " + lacks,
			Limit: rows[0].String() + ": " + base.State(b.What).May[rows[0]].String(),
			Write: writeReason})
	}
}

// like finds a sheet that is like one that does not exist, or in the end like itself.
func (r *resolver) like(s *SpeciesSheet) {
	lib := r.c.Library
	seen := map[*SpeciesSheet]bool{}
	for at := s; at != nil && at.Like.Set(); at = lib.own.species[at.Like.V] {
		if seen[at] {
			if at == s {
				r.found.Add(finding.Finding{Rule: ruleValue, At: s.Like.At, Text: "like leads back to " + quote(s.Name.V), Write: "another species"})
			}
			return
		}
		seen[at] = true
	}
	if names := lib.TypeNames(); s.Type.Set() && !slices.Contains(names, s.Type.V) {
		f := finding.Finding{Rule: ruleUnknownName, At: s.Type.At, Text: "there is no care type " + quote(s.Type.V), Write: "one of: " + strings.Join(names, ", ")}
		if near := slip.Of(s.Type.V, names); near != "" {
			f.Text += ": did you mean " + quote(near) + "?"
			f.Write, f.Edits = "type = "+quote(near), finding.Instead(s.Type.At, s.Type.V, near)
		}
		r.found.Add(f)
	}
	if names := lib.SpeciesNames(); s.Like.Set() && !slices.Contains(names, s.Like.V) {
		r.unknownSpecies(s.Like)
	}
}

// species returns the sheet of an enclosure's species, or nil.
func (r *resolver) species(e *Enclosure) *SpeciesSheet {
	if !e.Species.Set() {
		return nil
	}
	lib := r.c.Library
	if sheet := lib.Species(e.Species.V); sheet != nil {
		return sheet
	}
	by := lib.ByOtherName(e.Species.V)
	if len(by.Sheets) == 0 {
		r.unknownSpecies(e.Species)
		return nil
	}
	sheet := by.One()
	f := finding.Finding{Rule: ruleOldName, At: e.Species.At}
	switch names := by.Names(); {
	case by.As == NameMistaken:
		f.Text = "there is no species sheet " + quote(e.Species.V) + "; it is taken for " + wording.And(names) + ", or sold by that name, and is another animal"
	case by.As == NameGenus:
		f.Text = quote(e.Species.V) + " is a genus; of it there " + wording.Noun(len(names), "is ", "are ") + wording.And(names)
	case by.As == NameGenusOnce:
		f.Text = quote(e.Species.V) + " is a genus in which " + wording.And(names) + " once stood; others may still"
	case sheet == nil:
		f.Text = quote(e.Species.V) + " is a name of several: " + wording.And(names)
	case by.As == NameFormer:
		f.Text = quote(e.Species.V) + " is a former name; the sheet " + sheet.Name.V + " is used"
	default:
		f.Text = quote(e.Species.V) + " is another name; the sheet " + sheet.Name.V + " is used"
	}
	if sheet == nil { // which is meant is for the keeper to say
		f.Rule, f.Write = ruleUnknownName, strings.Join(quotedEach(by.Names()), " or ")+", if that is what yours are"
		if by.As == NameMistaken || by.As == NameGenusOnce {
			f.Write += "; else a sheet of its own: vivary start --sheet " + slug(e.Species.V)
		}
	} else {
		if sold := lib.SoldAs(e.Species.V); len(sold) > 0 {
			f.Text += "; " + wording.And(Namesakes{Sheets: sold}.Names()) + wording.Noun(len(sold), " is", " are") + " sold by that name too"
		}
		f.Write, f.Edits = "species = "+quote(sheet.Name.V), finding.Instead(e.Species.At, e.Species.V, sheet.Name.V)
	}
	r.found.Add(f)
	return sheet
}

// unknownSpecies finds a species of which there is no sheet. None is ever taken for another:
// it says which are near by name or of the same genus, and how to write a sheet of one's
// own, of a care type, those first that have its genus.
func (r *resolver) unknownSpecies(w Written[string]) {
	lib := r.c.Library
	if r.unsaid(w.V) {
		return
	}
	genus, _, _ := strings.Cut(slug(w.V), "-")
	kin, types := lib.InGenus(genus), lib.TypesOf(genus)
	near := lib.formOf(w.V)
	if len(near) == 0 {
		near = lib.NearNames(w.V)
	}
	if len(near) > 0 {
		r.found.Add(finding.Finding{Rule: ruleUnknownName, At: w.At, Text: "there is no species sheet " + quote(w.V) + "; near it by name " + wording.Noun(len(near), "is ", "are ") + wording.And(near),
			Write: strings.Join(quotedEach(near), " or ") + ", if that is what yours are; else a sheet of its own: vivary start --sheet " + slug(w.V)})
		return
	}
	f := finding.Finding{Rule: ruleUnknownName, At: w.At, Text: "there is no species sheet " + quote(w.V),
		Write: "a sheet of its own, of type " + strings.Join(quotedEach(types), " or ") + ": vivary start --sheet " + slug(w.V) + " begins one"}
	if len(types) == 0 { // of any genus: which there are is said by the command
		f.Write = "a sheet of its own, of the care type that fits: vivary start --sheet " + slug(w.V) + " begins one, and vivary why types lists these"
	}
	switch len(kin) {
	case 0:
		if feeders := lib.feedersCalled(w.V); len(feeders) > 0 {
			f.Text += "; as prey it is the feeder " + feeders[0].Name.V
		}
	case 1:
		f.Text += "; of its genus there is " + kin[0] + ", which is another animal"
	default:
		f.Text += "; of its genus there are " + wording.And(kin) + ", which are other animals"
	}
	r.found.Add(f)
}

// quotedEach puts each name into quotes.
func quotedEach(names []string) (out []string) {
	for _, n := range names {
		out = append(out, quote(n))
	}
	return out
}
