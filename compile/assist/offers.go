package assist

import (
	"cmp"
	"slices"
	"strings"
)

// offers gathers what may be written at a place.
type offers struct {
	page     *Page
	from, to int
	typed    string
	all      []offer
}

// offer is one of them, with what decides about its place in the list.
type offer struct {
	Offer
	also  []string // other names of it: it is found by these too
	usual int      // how usual it is here; 0 as all others
	match match
}

// match says how what is typed fits, the best first.
type match uint8

const (
	begins match = iota // the label begins with it
	within              // a word of the label does, or another name
	other
)

// fits tells how a word that is typed fits an offer, and by which of its names.
func fits(typed, label string, also []string) (match, string) {
	if typed == "" || hasFold(label, typed) {
		return begins, label
	}
	for i := 1; i < len(label); i++ {
		if strings.IndexByte(" -_/", label[i-1]) >= 0 && hasFold(label[i:], typed) {
			return within, label
		}
	}
	for _, a := range also {
		if hasFold(a, typed) {
			return within, a
		}
	}
	for _, a := range also {
		if n := strings.LastIndexByte(a, ' '); n >= 0 && hasFold(a[n+1:], typed) {
			return within, a
		}
	}
	return other, label
}

// hasFold is strings.HasPrefix, whatever the capitals.
func hasFold(s, prefix string) bool {
	return len(s) >= len(prefix) && strings.EqualFold(s[:len(prefix)], prefix)
}

// add adds an offer that replaces what is typed with text.
func (o *offers) add(x offer, text string) {
	x.Edit = Edit{o.from, o.to, text}
	if x.Plain == "" {
		x.Plain = text
	}
	by := ""
	x.match, by = fits(o.typed, x.Label, x.also)
	if x.match == within && by != x.Label {
		x.Filter = by + " " + x.Label
	} else if len(x.also) > 0 {
		x.Filter = x.Label + " " + strings.Join(x.also, " ")
	}
	o.all = append(o.all, x)
}

// best returns the offers that fit what is typed, or all where none does, the best first: what
// begins so, then what is usual here, then in the order in which they were added.
func (o *offers) best() []Offer {
	if slices.ContainsFunc(o.all, func(x offer) bool { return x.match < other }) {
		o.all = slices.DeleteFunc(o.all, func(x offer) bool { return x.match == other })
	}
	slices.SortStableFunc(o.all, func(a, b offer) int {
		return cmp.Or(cmp.Compare(a.match, b.match), cmp.Compare(b.usual, a.usual))
	})
	out := make([]Offer, 0, min(len(o.all), Most))
	for i := range o.all[:min(len(o.all), Most)] {
		x := o.all[i].Offer
		x.Rank = i
		out = append(out, x)
	}
	return out
}
