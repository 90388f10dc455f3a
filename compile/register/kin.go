package register

import (
	"cmp"

	"vivary/schema"
)

// Kin are two of one brood, or one and its young, that live together grown or were paired,
// where plan or log tell of both.
type Kin struct {
	A, B *Row
	Why  string // "one brood, 2025-06 fern", "young of burrow-a/fern"
}

// kin names those of each enclosure. Two of one sex for certain are no pair.
func kin(rows []*Row) (out []Kin) {
	in := map[string][]*Row{}
	for _, r := range rows {
		if r.Here() && r.Stage == grown {
			in[r.Place.Name.V] = append(in[r.Place.Name.V], r)
		}
	}
	for _, r := range rows {
		if !r.Here() || r.Stage != grown {
			continue
		}
		if why := r.brood(); why != "" && r.Count.Males > 0 && r.Count.Females > 0 {
			out = append(out, Kin{r, r, why})
		}
		past := false
		for _, o := range in[r.Place.Name.V] {
			if past = past || o == r; !past || o == r || !r.pairs(o) {
				continue
			}
			if why := r.related(o); why != "" {
				out = append(out, Kin{r, o, why})
			}
		}
	}
	return out
}

var grown = schema.Stages[len(schema.Stages)-1].Name

// pairs reports whether a male of the one and a female of the other may be there.
func (r *Row) pairs(o *Row) bool {
	males := func(x *Row) bool { return x.Count.Females < x.Count.Total() }
	females := func(x *Row) bool { return x.Count.Males < x.Count.Total() }
	return r.Group.Sheet == o.Group.Sheet && (males(r) && females(o) || females(r) && males(o))
}

// brood names of which brood all of a row are; "" where that is not known.
func (r *Row) brood() string {
	switch {
	case r.Brood != "":
		return "one brood, " + r.Brood
	case r.Dam != "" && r.Born > 0:
		return "one brood, of " + r.Dam + " on " + r.Born.Words()
	}
	return ""
}

func (r *Row) related(o *Row) string {
	switch {
	case r.brood() != "" && r.brood() == o.brood():
		return r.brood()
	case r.Dam == o.ID || o.Dam == r.ID:
		return "young of " + cmp.Or(r.Dam, o.Dam)
	}
	return ""
}
