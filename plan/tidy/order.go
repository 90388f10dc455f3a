package tidy

import (
	"cmp"
	"slices"
	"strings"
	"sync"

	"vivary/schema"
)

// places says of a type of block where in it its attributes and its blocks stand: in the order
// in which the schema describes them.
type places struct{ attrs, blocks map[string]int }

// placesOf are those of every type of block, found once.
var placesOf = sync.OnceValue(func() map[*schema.Block]places {
	all := map[*schema.Block]places{}
	var look func(b *schema.Block)
	look = func(b *schema.Block) {
		if _, seen := all[b]; seen {
			return
		}
		all[b] = listed(b)
		for _, in := range b.Blocks {
			look(in)
		}
	}
	look(schema.Plan)
	return all
})

func listed(b *schema.Block) places {
	p := places{map[string]int{}, map[string]int{}}
	put := func(to map[string]int, name string) {
		if _, there := to[name]; !there {
			to[name] = len(to)
		}
	}
	for i := range b.Attrs {
		put(p.attrs, b.Attrs[i].Name)
	}
	if b.Short != nil {
		for _, f := range b.Short() {
			put(p.attrs, strings.ReplaceAll(f.Name, "-", "_"))
		}
	}
	for _, of := range b.Flat {
		for i := range of.Attrs {
			put(p.attrs, of.Attrs[i].Name)
		}
	}
	for _, in := range b.Blocks {
		put(p.blocks, in.Name)
	}
	return p
}

// described is an attribute of a block as the schema describes it, or nil: the figures of a
// sheet that stand as attributes are told as they were typed.
func described(b *schema.Block, name string) *schema.Attr {
	if b == nil {
		return nil
	}
	if a := b.Attr(name); a != nil {
		return a
	}
	if in := b.Flattened(name); in != nil {
		return in.Attr(name)
	}
	return nil
}

// ordered puts things into the order of their names. A name without a place stays behind what
// it stands behind, since it is likely a slip of the keyboard.
func ordered(all []*thing, place map[string]int) {
	at := -1
	for _, x := range all {
		if n, known := place[x.name()]; known {
			at = n
		}
		x.place = at
	}
	slices.SortStableFunc(all, func(a, b *thing) int { return cmp.Compare(a.place, b.place) })
}
