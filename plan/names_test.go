package plan

import (
	"slices"
	"strings"
	"testing"

	"vivary/schema"
)

// TestNames checks what keepers type is answered with: trade names, old names, look-alikes,
// names with the genus cut to its letter, and with another ending. A name of today counts
// first, several are named where the trade means several, and none is guessed. Which old
// name is which animal is from the notes of the sheets and their sources; that these are
// typed is common practice, no source.
func TestNames(t *testing.T) {
	lib := NewLibrary()
	for _, c := range []struct {
		written, want string
		as            NameIs
	}{
		{"Pandinus cavimanus", "pandinoides-cavimanus", NameFormer},
		{"pandinus cavimanus", "pandinoides-cavimanus", NameFormer},
		{"Pandinus cavimanus (Tanzania)", "pandinoides-cavimanus", NameFormer},
		{"P. cavimanus", "pandinoides-cavimanus", NameOther},
		{"Pandinus militaris", "pandinoides-cavimanus", NameFormer},
		{"red claw", "pandinoides-cavimanus", NameOther},
		{"Pandinus dictator", "pandinopsis-dictator", NameFormer},
		{"P. dictator", "pandinopsis-dictator", NameOther},
		{"Pandinus imperator", "pandinus-imperator", NameOther},
		{"pandinus.imperator", "pandinus-imperator", NameOther},
		{"P. imperator", "pandinus-imperator", NameOther},
		{"p imperator", "pandinus-imperator", NameOther},
		{"emperor", "pandinus-imperator", NameOther},
		{"Emperor scorpions", "pandinus-imperator", NameOther},
		{"Kaiserskorpion", "pandinus-imperator", NameOther},
		{"Pandinus", "pandinus-imperator", NameGenus},
		{"Pandinus sp.", "pandinus-imperator", NameGenus},
		{"Pandinus gambiensis", "pandinopsis-dictator", NameMistaken},
		{"Heterometrus swammerdami", "heterometrus-silenus", NameMistaken},
		{"H. spinifer", "heterometrus", NameOther},
		{"Brachypelma albopilosum", "tliltocatl-albopilosus", NameFormer},
		{"Brachypelma albopilosus", "tliltocatl-albopilosus", NameFormer},
		{"B. albopilosum", "tliltocatl-albopilosus", NameFormer},
		{"B. albopilosa", "tliltocatl-albopilosus", NameFormer},
		{"T. albopilosum", "tliltocatl-albopilosus", NameOther},
		{"Tliltocatl albopilosum", "tliltocatl-albopilosus", NameOther},
		{"Euathlus albopilosum", "tliltocatl-albopilosus", NameFormer},
		{"curlyhair", "tliltocatl-albopilosus", NameOther},
		{"B. vagans", "tliltocatl-vagans", NameFormer},
		{"T. vagans", "tliltocatl-vagans", NameOther},
		{"Brachypelma smithi", "brachypelma-emilia brachypelma-hamorii", NameMistaken},
		{"B. smithi", "brachypelma-emilia brachypelma-hamorii", NameMistaken},
		{"B. hamori", "brachypelma-hamorii", NameOther},
		{"B. boehmei", "brachypelma-boehmei", NameOther},
		{"Avicularia versicolor", "caribena-versicolor", NameFormer},
		{"A. versicolor", "caribena-versicolor", NameFormer},
		{"C. versicolor", "caribena-versicolor", NameOther},
		{"A. diversipes", "ybyrapora-diversipes", NameFormer},
		{"Avicularia hirsutum", "iridopelma-hirsutum", NameFormer},
		{"Haplopelma lividum", "cyriopagopus-lividus", NameFormer},
		{"H. lividum", "cyriopagopus-lividus", NameFormer},
		{"Cyriopagopus lividum", "cyriopagopus-lividus", NameOther},
		{"G. rosea", "grammostola-rosea", NameOther},
		{"Grammostola porteri", "grammostola-rosea", NameMistaken},
		{"G. porteri", "grammostola-rosea", NameMistaken},
		{"Theraphosa stirmi", "theraphosa-blondi", NameMistaken},
		{"T. stirmi", "theraphosa-blondi", NameMistaken},
		{"Mastigoproctus tohono", "mastigoproctus-giganteus", NameMistaken},
		{"Mastigoproctus floridanus", "mastigoproctus-giganteus", NameMistaken},
		{"Centruroides exilicauda", "centruroides-sculpturatus", NameMistaken},
		{"Scorpio maurus palmatus", "scorpio-maurus", NameMistaken},
		{"Phrixotrichus roseus", "grammostola-rosea", NameFormer},
		{"Phrixotrichus", "grammostola-rosea", NameGenusOnce},
		{"Phrixotrichus scrofa", "", NameOther},
		{"Haplopelma", "cyriopagopus-lividus", NameGenusOnce},
		{"Haplopelma sp.", "cyriopagopus-lividus", NameGenusOnce},
		{"Haplopelma hainanum", "", NameOther},
		{"Porcellio laevis 'dairy cow'", "porcellio-laevis", NameOther},
		{"Porcellio laevis “Dairy Cow”", "porcellio-laevis", NameOther},
		{"Porcellio expansus 'orange'", "", NameOther},
		{"isopod", "armadillidium-vulgare porcellio-laevis porcellio-scaber", NameOther},
		{"AGB", "archispirostreptus-gigas", NameOther},
		{"crestie", "correlophus-ciliatus", NameOther},
		{"pill bug", "armadillidium-vulgare", NameOther},
		{"G. aureostriata", "grammostola-pulchripes", NameFormer},
		{"C. darlingii", "ceratogyrus-darlingi", NameOther},
		{"C. bechuanicus", "ceratogyrus-darlingi", NameFormer},
		{"P. regalis", "poecilotheria-regalis", NameOther},
		{"P. murinus", "pterinochilus-murinus", NameOther},
		{"OBT", "pterinochilus-murinus", NameOther},
		{"GBB", "chromatopelma-cyaneopubescens", NameOther},
		{"C. exilicauda", "centruroides-sculpturatus", NameMistaken},
		{"Paruroctonus mesaensis", "smeringurus-mesaensis", NameFormer},
		{"H. spadix", "hadrurus-spadix", NameOther},
		{"death stalker", "leiurus-quinquestriatus", NameOther},
		{"L. quinquestriatus", "leiurus-quinquestriatus", NameOther},
		{"Leiurus hebraeus", "leiurus-quinquestriatus", NameMistaken},
		{"Rhacodactylus ciliatus", "correlophus-ciliatus", NameFormer},
		{"C. ciliatus", "correlophus-ciliatus", NameOther},
		{"E. macularius", "eublepharis-macularius", NameOther},
		{"Damon variegatus", "damon-diadema", NameMistaken},
		{"pink toe", "avicularia-avicularia avicularia-juruensis", NameOther},
		{"vinegaroons", "mastigoproctus-giganteus typopeltis-crucifer", NameOther},
		{"Avicularia", "avicularia-avicularia avicularia-juruensis", NameGenus},
		{"Androctonus", "androctonus-australis", NameGenus},
		// What is no name of anything stays one.
		{"a mouse", "", NameOther},
		{"P.", "", NameOther},
		{"imperator", "", NameOther},
		{"Pandinus cf. imperator", "", NameOther},
		{"Pandinus imperater", "", NameOther},
		{"P. cavimanis", "", NameOther},
		{"B. albo", "", NameOther},
		{"", "", NameOther},
	} {
		by := lib.ByOtherName(c.written)
		if got := strings.Join(by.Names(), " "); got != c.want || by.As != c.as {
			t.Errorf("%s: %q as %d, want %q as %d", c.written, got, by.As, c.want, c.as)
		}
		if one := by.One(); (one != nil) != (len(by.Sheets) == 1 && c.as < NameMistaken) {
			t.Errorf("%s: one: %t", c.written, one != nil)
		}
	}
}

// A scientific name with its genus cut to the letter means nothing that the whole name does
// not mean: no name is taken across species.
func TestCutNames(t *testing.T) {
	lib := NewLibrary()
	for _, name := range lib.SpeciesNames() {
		s := lib.Species(name)
		whole := []string{strings.ReplaceAll(s.Binomial(), "-", " ")}
		for _, w := range s.Former {
			whole = append(whole, w.V)
		}
		for _, w := range whole {
			genus, of, ok := strings.Cut(w, " ")
			if !ok || strings.Contains(of, "sp.") {
				continue
			}
			by := lib.ByOtherName(genus[:1] + ". " + of)
			if by.As >= NameMistaken || !slices.Contains(by.Names(), name) {
				t.Errorf("%s. %s: %v as %d, and not %s", genus[:1], of, by.Names(), by.As, name)
			}
			for _, other := range by.Sheets {
				if !hasEpithet(other, of) {
					t.Errorf("%s. %s: %s has no such name", genus[:1], of, other.Name.V)
				}
			}
		}
	}
}

func hasEpithet(s *SpeciesSheet, of string) bool {
	ends := func(w string) bool { return strings.HasSuffix(slug(w), slug(of)) }
	return ends(s.Binomial()) || slices.ContainsFunc(slices.Concat(s.Also, s.Former), func(w Written[string]) bool { return ends(w.V) })
}

// Two animals are mixed up both ways: each sheet names the other.
func TestLookAlikes(t *testing.T) {
	lib := NewLibrary()
	pairs := 0
	for _, name := range lib.SpeciesNames() {
		s := lib.Species(name)
		for _, a := range lib.LookAlikes(s) {
			for _, o := range a.Sheets {
				pairs++
				if o == s {
					t.Errorf("%s is taken for itself", name)
				}
				if !slices.ContainsFunc(lib.LookAlikes(o), func(b LookAlike) bool { return slices.Contains(b.Sheets, s) }) {
					t.Errorf("%s names %s, and not the other way round", name, o.Name.V)
				}
			}
		}
	}
	if pairs < 40 {
		t.Errorf("%d pairs", pairs)
	}
	emperor := lib.Species("pandinus-imperator")
	for _, stage := range []string{"newborn", "young", "juvenile", "subadult", "adult"} {
		if emperor.Figure(schema.FigureLooks, stage) == nil {
			t.Errorf("looks of an emperor, %s: not said", stage)
		}
	}
}

// Names that are none of any species, but near some, are answered with these; what is near
// none, or near as many as a word such as "blue" is, with none. They are asked back always,
// and never taken. That these are typed is common practice, no source.
func TestNearNames(t *testing.T) {
	lib := NewLibrary()
	for written, want := range map[string]string{
		"leopard geko":          "eublepharis-macularius",
		"crested geko":          "correlophus-ciliatus",
		"emperor scorpian":      "pandinus-imperator",
		"emporer scorpion":      "pandinus-imperator",
		"emporer":               "pandinus-imperator",
		"Asian forest scorpoin": "heterometrus",
		"rosehair tarantula":    "grammostola-rosea",
		"fat tail scorpion":     "androctonus-australis",
		"antilles pinktoe":      "avicularia-avicularia avicularia-juruensis caribena-versicolor",
		"dairy cow isopod":      "porcellio-laevis",
		"golden knee":           "grammostola-pulchripes",
		"ghost manits":          "phyllocrania-paradoxa",
		"madagascan hisser":     "gromphadorhina-portentosa",
		"orange baboon spider":  "hysterocrates-gigas pterinochilus-murinus",
		"desert hairy":          "hadrurus-arizonensis hadrurus-spadix",
		"tarantula":             "",
		"scorpion":              "",
		"blue":                  "",
		"african clawed frog":   "",
		"bearded dragon":        "",
		"black widow":           "",
		"corn snake":            "",
		"powder blue isopod":    "",
		"dubia":                 "",
		"":                      "",
	} {
		if by := lib.ByOtherName(written); len(by.Sheets) > 0 {
			t.Errorf("%s is taken for %v", written, by.Names())
		}
		if got := strings.Join(lib.NearNames(written), " "); got != want {
			t.Errorf("%s: near %q, want %q", written, got, want)
		}
	}
}

// No name that is of two words of Latin is taken for a sheet of another species: neither its
// own name, nor one that it had, nor what it is mixed up with by any sheet. What is mixed up
// is never One.
func TestMistakenIsNeverTaken(t *testing.T) {
	lib := NewLibrary()
	n := 0
	for _, of := range lib.SpeciesNames() {
		for _, m := range lib.Species(of).Mistaken {
			if !strings.Contains(m.V, " ") {
				continue
			}
			n++
			if one := lib.ByOtherName(m.V).One(); one != nil && slices.ContainsFunc(one.Mistaken, func(w Written[string]) bool { return w.V == m.V }) {
				t.Errorf("%s is taken for %s, which is sold by that name", m.V, one.Name.V)
			}
		}
	}
	if n < 50 {
		t.Errorf("%d names", n)
	}
}
