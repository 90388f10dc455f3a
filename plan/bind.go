package plan

import (
	"fmt"
	"reflect"

	"vivary/schema"
)

// binding joins one block type of the schema to the Go struct that holds it. The
// schema says which attributes there are; the struct's tags say where they go.
type binding struct {
	block *schema.Block
	attrs map[string]*attrBinding
	inner map[string]*blockBinding
	order []*attrBinding
	// requires says that something must be written in the block, or in one within it.
	requires bool
}

type attrBinding struct {
	attr  *schema.Attr
	field []int
}

type blockBinding struct {
	binding *binding
	field   []int
	list    bool         // a slice of pointers, one a label
	elem    reflect.Type // the struct
}

// Made once, before anything is read: bindings by struct type, and the structs of
// the blocks that may stand outside every other, by the block's name.
var (
	bindings = map[reflect.Type]*binding{}
	topTypes = map[string]reflect.Type{}
)

func init() {
	for _, b := range []struct {
		holder any
		block  *schema.Block
	}{
		{About{}, schema.Collection}, {Room{}, schema.Room}, {Rack{}, schema.Rack}, {Keeper{}, schema.Keeper}, {Contact{}, schema.Contact},
		{Round{}, schema.Round}, {Rota{}, schema.Rota}, {Dates{}, schema.Dates}, {Away{}, schema.Away}, {Calendar{}, schema.Calendar}, {Deadline{}, schema.Deadline},
		{Enclosure{}, schema.Enclosure}, {Template{}, schema.Template}, {Gone{}, schema.Gone},
		{Seller{}, schema.Seller}, {Supply{}, schema.Supply}, {Tub{}, schema.Tub}, {Culture{}, schema.Culture},
		{SpeciesSheet{}, schema.Species}, {TypeSheet{}, schema.Type}, {FeederSheet{}, schema.Feeder}, {Source{}, schema.Source},
	} {
		t := reflect.TypeOf(b.holder)
		if _, err := bind(t, b.block); err != nil {
			panic(err) // the schema and the structs of this package disagree
		}
		topTypes[b.block.Name] = t
	}
}

func bind(t reflect.Type, block *schema.Block) (*binding, error) {
	b := &binding{block: block, attrs: map[string]*attrBinding{}, inner: map[string]*blockBinding{}}
	for _, f := range reflect.VisibleFields(t) {
		name := f.Tag.Get("care")
		if name == "" {
			continue
		}
		if a := block.Attr(name); a != nil && !isBlockField(f.Type) {
			ab := &attrBinding{a, f.Index}
			b.attrs[name] = ab
			b.order = append(b.order, ab)
			b.requires = b.requires || a.Required
			continue
		}
		inner := block.Block(name)
		if inner == nil {
			return nil, fmt.Errorf("plan: %s has %q, which block %s has not", t, name, block.Name)
		}
		elem, list := f.Type, false
		if elem.Kind() == reflect.Slice {
			elem, list = elem.Elem(), true
		}
		elem = elem.Elem()
		ib, err := bind(elem, inner)
		if err != nil {
			return nil, err
		}
		b.requires = b.requires || ib.requires
		b.inner[name] = &blockBinding{ib, f.Index, list, elem}
	}
	for _, a := range block.Attrs {
		if b.attrs[a.Name] == nil {
			return nil, fmt.Errorf("plan: %s has no place for %s of block %s", t, a.Name, block.Name)
		}
	}
	for _, c := range block.Blocks {
		if b.inner[c.Name] == nil {
			return nil, fmt.Errorf("plan: %s has no place for block %s of %s", t, c.Name, block.Name)
		}
	}
	bindings[t] = b
	return b, nil
}

func isBlockField(t reflect.Type) bool {
	if t.Kind() == reflect.Slice {
		t = t.Elem()
	}
	return t.Kind() == reflect.Pointer
}

// instead are attributes that say one thing in different ways: a block that writes
// one takes none of the others from a template.
var instead = [][]string{{"every", "on", "cron", "after_last"}, {"prey", "rotate"}}

// taken returns the attributes that a block may not take, since it says the same
// in another way.
func taken(b *binding, v reflect.Value) map[string]bool {
	out := map[string]bool{}
	for _, ways := range instead {
		for _, name := range ways {
			if a := b.attrs[name]; a != nil && tried(v.FieldByIndex(a.field)) {
				for _, other := range ways {
					out[other] = true
				}
			}
		}
	}
	return out
}

// merge copies into dst what src says and dst does not: attributes, and inner
// blocks, those of the same name attribute by attribute. The struct dst is a copy
// that belongs to the caller. It never changes src, nor a block that hangs on
// either: an inner block that both have is copied first.
func merge(dst, src reflect.Value) {
	b := bindings[dst.Type()]
	sb := bindings[src.Type()]
	said := taken(b, dst)
	for _, a := range b.order {
		from := sb.attrs[a.attr.Name]
		if from == nil || said[a.attr.Name] {
			continue
		}
		to := dst.FieldByIndex(a.field)
		if !written(to) {
			to.Set(src.FieldByIndex(from.field))
		}
	}
	for name, ib := range b.inner {
		from := sb.inner[name]
		if from == nil {
			continue
		}
		to, have := dst.FieldByIndex(ib.field), src.FieldByIndex(from.field)
		switch {
		case ib.list:
			to.Set(mergeLists(to, have))
		case have.IsNil():
		case to.IsNil():
			to.Set(have)
		default:
			to.Set(merged(to, have))
		}
	}
}

// merged returns a copy of the block that to points at, with what have says and it
// does not.
func merged(to, have reflect.Value) reflect.Value {
	both := reflect.New(to.Type().Elem())
	both.Elem().Set(to.Elem())
	if h := headOf(both); !h.At.Written() { // attributes written without their block
		*h = *headOf(have)
	}
	merge(both.Elem(), have.Elem())
	if headOf(have).Unread {
		lacks(both)
	}
	return both
}

// mergeLists returns a list of its own of the blocks of both.
func mergeLists(to, have reflect.Value) reflect.Value {
	own := to.Len()
	if own == 0 {
		return have.Slice3(0, have.Len(), have.Len())
	}
	at := make(map[string]int, own)
	for i := own - 1; i >= 0; i-- {
		at[headOf(to.Index(i)).Name.V] = i
	}
	both := reflect.MakeSlice(to.Type(), own, own+have.Len())
	reflect.Copy(both, to)
	for i := range have.Len() {
		item := have.Index(i)
		if twin, ok := at[headOf(item).Name.V]; ok {
			both.Index(twin).Set(merged(both.Index(twin), item))
		} else {
			both = reflect.Append(both, item)
		}
	}
	return both
}

func headOf(v reflect.Value) *Head { return v.Interface().(interface{ head() *Head }).head() }

// written reports whether an attribute's field holds a written value.
func written(v reflect.Value) bool {
	if v.Kind() == reflect.Slice {
		return v.Len() > 0
	}
	return v.Addr().Interface().(interface{ Set() bool }).Set()
}

// tried reports whether an attribute was written, even if it could not be read.
func tried(v reflect.Value) bool {
	if v.Kind() == reflect.Slice {
		return v.Len() > 0
	}
	return v.Addr().Interface().(interface{ tried() bool }).tried()
}
