package plan

import (
	"slices"
	"strings"

	"vivary/schema/slip"
)

// Namesakes are the species that a name means which is not that of a sheet.
type Namesakes struct {
	Sheets []*SpeciesSheet
	As     NameIs
}

// NameIs says what a name is to the species that bear it.
type NameIs uint8

const (
	// NameOther is another name of today: a common name, the scientific name, a trade name.
	NameOther NameIs = iota
	// NameFormer is a name it had before.
	NameFormer
	// NameMistaken is one under which it is sold, and which means something else.
	NameMistaken
	// NameGenus is that of its genus.
	NameGenus
	// NameGenusOnce is that of a genus in which it once stood, and others may still.
	NameGenusOnce
)

// ByOtherName looks for species by a common, former or mistaken name, also one with its
// genus cut to the first letter, or with another ending of gender. A name of today counts
// before one of the past, and both before a mistake; one that is written in full counts
// before one that is cut. Several are returned where the trade calls several by that name.
func (l *Library) ByOtherName(written string) Namesakes {
	if kin := l.InGenus(written); len(kin) > 0 {
		return Namesakes{Sheets: l.each(kin), As: NameGenus}
	}
	name := spokenAs(written)
	others := l.otherNames()
	if found := l.best(others.same[name.sameKey()], func(n *otherName) bool { return name.same(n.words) }); len(found.Sheets) > 0 {
		return found
	}
	if key, ok := name.shortKey(); ok {
		if found := l.best(others.short[key], func(n *otherName) bool { return name.short(n.words) }); len(found.Sheets) > 0 {
			return found
		}
	}
	genus, ok := name.onlyGenus()
	if ok {
		if kin := l.InGenus(genus); len(kin) > 0 {
			return Namesakes{Sheets: l.each(kin), As: NameGenus}
		}
	} else if len(name) == 1 {
		genus = name[0]
	}
	return l.onceIn(genus)
}

// onceIn returns the species that once stood in a genus.
func (l *Library) onceIn(genus string) (found Namesakes) {
	if genus == "" {
		return found
	}
	for _, of := range l.otherNames().onceIn[genus] {
		found.Sheets, found.As = append(found.Sheets, l.Species(of)), NameGenusOnce
	}
	return found
}

// SoldAs returns the species that are sold by a name which is another's, or are taken for it.
func (l *Library) SoldAs(written string) (all []*SpeciesSheet) {
	name, last := spokenAs(written), ""
	for _, n := range l.otherNames().same[name.sameKey()] { // in the order of the sheets
		if n.as == NameMistaken && n.of != last && name.same(n.words) {
			all, last = append(all, l.Species(n.of)), n.of
		}
	}
	return all
}

// vague are the words of trade names that say of what kind an animal is, and not which.
var vague = map[string]bool{"tarantula": true, "tarantulas": true, "scorpion": true, "scorpions": true, "gecko": true, "geckos": true, "geko": true, "isopod": true, "isopods": true,
	"woodlouse": true, "spider": true, "spiders": true, "millipede": true, "millipedes": true, "mantis": true, "roach": true, "cockroach": true, "centipede": true, "giant": true, "the": true, "adult": true, "baby": true, "sling": true, "pet": true}

// mostNear is how many sheets are named at the most where a name is near those of several.
const mostNear = 6

// formOf returns the species whose scientific name a name begins with, with more behind it:
// that of a colour form, or of a place.
func (l *Library) formOf(written string) []string {
	if w := spokenAs(written); len(w) > 2 && l.Species(w[0]+"-"+w[1]) != nil {
		return []string{w[0] + "-" + w[1]}
	}
	return nil
}

// NearNames returns the species that may be meant by a name that is none of theirs: with a
// slip of the pen, or with words left out. None of them is ever taken; a keeper says which.
func (l *Library) NearNames(written string) (names []string) {
	name := spokenAs(written)
	whole, core := name.joined(), name.told()
	for _, of := range l.SpeciesNames() {
		s := l.Species(of)
		all := []string{s.Title.V, s.Binomial()}
		for _, list := range [][]Written[string]{s.Also, s.Former} {
			for _, w := range list {
				all = append(all, w.V)
			}
		}
		if slices.ContainsFunc(all, func(n string) bool {
			other := spokenAs(n)
			its := other.told()
			switch {
			case near(whole, other.joined()), near(core, its):
				return true
			}
			return len(core) >= 6 && len(its) >= 6 && (strings.Contains(its, core) || strings.HasSuffix(core, its) || len(its) > len(core)/2 && strings.Contains(core, its))
		}) {
			names = append(names, of)
		}
	}
	if len(names) > mostNear {
		return nil // a word that many share tells nothing
	}
	return names
}

// near reports whether two names may be one, written with a slip or two. It is for names
// that are only listed, so that it may find more than slip.Of does.
func near(a, b string) bool {
	if len(a) <= 4 || len(b) <= 4 {
		return false
	}
	most := 1
	if len(a) >= 7 {
		most = 2
	}
	return slip.Between(a, b) <= most
}

// joined is a name without the spaces between its words.
func (w spoken) joined() string { return strings.Join(w, "") }

// told is the same of the words that tell which animal it is.
func (w spoken) told() string {
	return strings.Join(slices.DeleteFunc(slices.Clone(w), func(s string) bool { return vague[s] }), "")
}

func (l *Library) each(names []string) (sheets []*SpeciesSheet) {
	for _, name := range names {
		sheets = append(sheets, l.Species(name))
	}
	return sheets
}

// InGenus returns the names of the species sheets of a genus, which is written alone.
func (l *Library) InGenus(genus string) []string {
	return slices.Clone(l.otherNames().genus[slug(genus)])
}

// One returns the species that a name means, or nil where that is none, not one alone, or
// another than it says.
func (n Namesakes) One() *SpeciesSheet {
	if len(n.Sheets) != 1 || n.As >= NameMistaken {
		return nil
	}
	return n.Sheets[0]
}

// Names returns the names of their sheets.
func (n Namesakes) Names() (all []string) {
	for _, s := range n.Sheets {
		all = append(all, s.Name.V)
	}
	return all
}

// spoken is a name in the words in which a keeper writes it.
type spoken []string

// spokenAs returns the words of a name, in small letters. A place in brackets behind it
// tells a locality and no species, and what stands in quotes behind it a colour form.
func spokenAs(s string) spoken {
	if i := strings.IndexAny(s, "'\"‘’“”"); i > 0 && s[i-1] == ' ' && strings.Contains(strings.TrimSpace(s[:i]), " ") {
		s = s[:i]
	}
	if before, in, ok := strings.Cut(s, "("); ok && strings.HasSuffix(in, ")") && strings.Contains(strings.TrimSpace(before), " ") {
		s = before
	}
	return strings.Split(slug(s), "-")
}

// same reports whether two names are one. How words are put together in a trade name
// differs: pink toe, pinktoe, pink-toe; and one may be written of several animals.
func (w spoken) same(name spoken) bool {
	a, b := strings.Join(w, ""), strings.Join(name, "")
	return a != "" && strings.TrimSuffix(a, "s") == strings.TrimSuffix(b, "s")
}

// short reports whether a name is the scientific one of two or more words, with its genus
// cut to the first letter ("B. vagans") or its last word in another gender ("albopilosum"
// for "albopilosus"). A name that is only similar is none.
func (w spoken) short(name spoken) bool {
	if len(w) < 2 || len(w) != len(name) || w[0] == "" || name[0] == "" {
		return false
	}
	last := len(w) - 1
	return (w[0] == name[0] || len(w[0]) == 1 && w[0][0] == name[0][0]) &&
		slices.Equal(w[1:last], name[1:last]) && stem(w[last]) == stem(name[last])
}

// endings are those that an epithet takes after the gender of its genus, and those of a
// genitive that is written with one i or two.
var endings = []string{"us", "um", "a", "ensis", "ense", "ii", "i"}

// stem returns an epithet without such an ending.
func stem(epithet string) string {
	for _, e := range endings {
		if s, ok := strings.CutSuffix(epithet, e); ok && len(s) > 2 {
			return s
		}
	}
	return epithet
}

// onlyGenus returns the genus of a name that says of the species that it is not known.
func (w spoken) onlyGenus() (string, bool) {
	if len(w) == 2 && (w[1] == "sp" || w[1] == "spp" || w[1] == "species") {
		return w[0], true
	}
	return "", false
}
