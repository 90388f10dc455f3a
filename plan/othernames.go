package plan

import (
	"cmp"
	"slices"
	"strings"
)

// otherNames are the names of all species that are not those of their sheets, by what they
// are looked for: a plan may name 16,000 enclosures by them.
type otherNames struct {
	same   map[string][]otherName
	short  map[shortKey][]otherName
	genus  map[string][]string // the sheets of a genus, in order
	onceIn map[string][]string // those that once stood in one
}

// otherName is one of them.
type otherName struct {
	of    string // the sheet
	as    NameIs
	words spoken
}

// shortKey is what two names have in common of which one is the other, cut (spoken.short).
type shortKey struct {
	words          int
	initial        byte
	middle, ending string
}

// otherNames gathers them when it is first asked: the sheets of a library do not change.
func (l *Library) otherNames() *otherNames {
	l.namesOnce.Do(func() {
		x := &otherNames{map[string][]otherName{}, map[shortKey][]otherName{}, map[string][]string{}, map[string][]string{}}
		for _, of := range l.SpeciesNames() {
			if genus, _, more := strings.Cut(of, "-"); more {
				x.genus[genus] = append(x.genus[genus], of)
			}
			x.add(of, l.Species(of))
		}
		l.names = x
	})
	return l.names
}

func (x *otherNames) add(of string, s *SpeciesSheet) {
	add := func(text string, as NameIs) {
		n := otherName{of, as, spokenAs(text)}
		same := n.words.sameKey()
		x.same[same] = append(x.same[same], n)
		if key, ok := n.words.shortKey(); ok {
			x.short[key] = append(x.short[key], n)
		}
	}
	add(s.Title.V, NameOther)
	add(s.Binomial(), NameOther)
	for _, w := range s.Also {
		add(w.V, NameOther)
	}
	for _, w := range s.Former {
		add(w.V, NameFormer)
		if old := spokenAs(w.V); len(old) > 1 && !slices.Contains(x.onceIn[old[0]], of) {
			x.onceIn[old[0]] = append(x.onceIn[old[0]], of)
		}
	}
	for _, w := range s.Mistaken {
		add(w.V, NameMistaken)
	}
}

// best returns the species of those names that are the one that is meant, as far as they are
// so in the best sense.
func (l *Library) best(names []otherName, is func(*otherName) bool) (found Namesakes) {
	var fit []*otherName
	for i := range names {
		if is(&names[i]) {
			fit = append(fit, &names[i])
		}
	}
	if len(fit) == 0 {
		return found
	}
	found.As = slices.MinFunc(fit, func(a, b *otherName) int { return cmp.Compare(a.as, b.as) }).as
	last := ""
	for _, n := range fit { // in the order of the sheets
		if n.as == found.As && n.of != last {
			found.Sheets = append(found.Sheets, l.Species(n.of))
			last = n.of
		}
	}
	return found
}

// sameKey is the same for all names that are one (spoken.same).
func (w spoken) sameKey() string { return strings.TrimSuffix(strings.Join(w, ""), "s") }

// shortKey is the same for all names of which one is another that is cut.
func (w spoken) shortKey() (key shortKey, ok bool) {
	last := len(w) - 1
	if last < 1 || w[0] == "" {
		return key, false
	}
	return shortKey{len(w), w[0][0], strings.Join(w[1:last], " "), stem(w[last])}, true
}
