package schema

import "strings"

// Danger is what is known of a genus whose members are not to be called harmless without
// a reason.
type Danger struct {
	Genus, Says, Source string
}

const (
	remembered = "from memory, not seen in a source: look it up"
	permits    = "the genera for which Bavaria asks a permit, as team-tarantula.de/gesetze lists them"
	cramps     = "Hauke & Herzig 2020, preprint 202012.0145: of 363 bites 12.7 % with marked cramps"
)

// Dangers are genera with members that are a danger to people. Kin of listed species may
// be as bad (Rein & McWest, medical list, first part). A genus that is not here is not
// harmless: it is one of which nothing was found.
var Dangers = []Danger{
	{"Androctonus", "most sting deaths of North Africa", permits},
	{"Buthacus", "", permits}, {"Buthus", "", permits},
	{"Centruroides", "some have killed", permits}, {"Hottentotta", "", permits},
	{"Leiurus", "it has killed children", permits}, {"Mesobuthus", "", permits},
	{"Parabuthus", "one sting in ten is severe, and some spray venom at the eyes", permits},
	{"Tityus", "", permits}, {"Hemiscorpius", "", permits}, {"Nebo", "", permits},
	{"Poecilotheria", "cramps for days", "Fuchs et al. 2014, Toxicon 77:73"},
	{"Pterinochilus", "cramps", cramps}, {"Heteroscodra", "cramps", cramps}, {"Stromatopelma", "cramps", cramps},
	{"Latrodectus", "widow spiders", remembered}, {"Loxosceles", "recluse spiders", remembered}, {"Phoneutria", "wandering spiders", remembered},
	{"Sicarius", "sand spiders", remembered}, {"Hexophthalma", "sand spiders", remembered},
	{"Ceratogyrus", "its subfamily cramps", cramps}, {"Omothymus", "near kin cramp", cramps},
}

// DangerOf returns what is known of a genus, or nil.
func DangerOf(genus string) *Danger {
	for i := range Dangers {
		if strings.EqualFold(Dangers[i].Genus, genus) {
			return &Dangers[i]
		}
	}
	return nil
}

// DangerousGenera returns the genera of Dangers.
func DangerousGenera() (all []string) {
	for _, d := range Dangers {
		all = append(all, d.Genus)
	}
	return all
}
