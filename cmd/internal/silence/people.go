package silence

import (
	"maps"
	"slices"
	"strings"

	"vivary/cmd/internal/keys"
	"vivary/compile"
	"vivary/schema/civil"
)

// Person is somebody who is written to.
type Person struct {
	Keeper  string // "" for an address that is no keeper's
	Address string
	Page    string // the keeper's own page, "" for none
}

// People are those who are told, on a day: of everything, since whoever is there has to know
// what the one who should have come did not do.
//
// A keeper who has care of their own is told, but for the days on which they are away; one
// who only stands in is told while they do. Where that leaves nobody every keeper is told
// who has an address: somebody who is far away can still ring somebody. Addresses of the mail
// block are told always, and have no page.
func People(r *compile.Result, ring *keys.Ring, base string, day civil.Date) []Person {
	told := map[string]bool{}
	if r.Roster != nil {
		told = there(r, day)
	}
	out := keepers(r, ring, base, func(name string) bool { return told[name] })
	if len(out) == 0 && (r.Roster == nil || len(ring.Mail.To) == 0) {
		out = keepers(r, ring, base, func(string) bool { return true })
	}
	for _, address := range ring.Mail.To {
		if !slices.ContainsFunc(out, func(p Person) bool { return strings.EqualFold(p.Address, address) }) {
			out = append(out, Person{Address: address})
		}
	}
	return out
}

func keepers(r *compile.Result, ring *keys.Ring, base string, told func(name string) bool) (out []Person) {
	for _, name := range slices.Sorted(maps.Keys(ring.Keepers)) {
		k := ring.Keepers[name]
		known := r.Plan.Keeper(name) != nil || r.Roster == nil // a plan that is not understood may lack them
		if k.Mail != "" && known && told(name) {
			own := ""
			if base != "" {
				own = base + "/k/" + string(k.Key) + "/"
			}
			out = append(out, Person{name, k.Mail, own})
		}
	}
	return out
}

// there are the keepers who are there on a day: with care of their own, or standing in.
func there(r *compile.Result, day civil.Date) map[string]bool {
	out := map[string]bool{}
	i, within := r.Horizon.Index(day)
	if !within {
		return out
	}
	for e := range r.Roster.All() {
		out[e.Keeper] = true
	}
	var away, covers []string
	for _, k := range r.Plan.Keepers {
		run := r.Roster.AwayOn(k.Name.V, i)
		if run == nil {
			continue
		}
		away = append(away, k.Name.V)
		for _, a := range run.Blocks {
			if a.From.V <= day && day < a.To.V {
				covers = append(covers, a.Cover.V)
			}
		}
	}
	for _, name := range covers {
		out[name] = true
	}
	for _, name := range away {
		delete(out, name)
	}
	delete(out, "")
	return out
}
