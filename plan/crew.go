package plan

import (
	"slices"
	"strings"
)

// crewWords are what keepers call those that clean up a substrate, as names of animals
// blocks. General usage of keepers, from memory.
var crewWords = []string{"woodlice", "woodlouse", "isopod", "isopods", "springtail", "springtails", "collembola", "crew", "cuc", "cleanup", "clean-up", "cleaners", "janitors"}

// isCrew reports whether an animals block is named for a clean-up crew: "woodlice",
// "clean-up-crew", "springtails-tropical".
func (a *Animals) isCrew() bool {
	name := strings.ToLower(strings.ReplaceAll(a.Name.V, "_", "-"))
	return slices.ContainsFunc(crewWords, func(w string) bool {
		return name == w || strings.HasPrefix(name, w+"-") || strings.HasSuffix(name, "-"+w)
	})
}

// withoutCrew parts a clean-up crew from the animals of an enclosure. Where there are no others
// they are what lives there.
func withoutCrew(all []*Animals) (animals, crew []*Animals) {
	if !slices.ContainsFunc(all, (*Animals).isCrew) {
		return all, nil
	}
	for _, a := range all {
		if a.isCrew() {
			crew = append(crew, a)
		} else {
			animals = append(animals, a)
		}
	}
	if len(animals) == 0 {
		return all, nil
	}
	return animals, crew
}
