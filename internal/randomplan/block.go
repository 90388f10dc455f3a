package randomplan

import (
	"slices"
	"strconv"
	"strings"
)

// Block is a block of a plan as it will be written: attributes and inner blocks in
// the order in which they were set. Values are text of the language.
type Block struct {
	Word, Name string
	attrs      []attr
	inner      []*Block
}

type attr struct{ name, value string }

func block(word, name string) *Block { return &Block{Word: word, Name: name} }

// set writes an attribute, in the place of one of that name.
func (b *Block) set(name, value string) *Block {
	if i := b.find(name); i >= 0 {
		b.attrs[i].value = value
		return b
	}
	b.attrs = append(b.attrs, attr{name, value})
	return b
}

func (b *Block) text(name, value string) *Block { return b.set(name, quoted(value)) }

func (b *Block) drop(names ...string) {
	b.attrs = slices.DeleteFunc(b.attrs, func(a attr) bool { return slices.Contains(names, a.name) })
}

func (b *Block) add(inner ...*Block) *Block {
	b.inner = append(b.inner, inner...)
	return b
}

func (b *Block) find(name string) int {
	return slices.IndexFunc(b.attrs, func(a attr) bool { return a.name == name })
}

// has reports whether an attribute is written.
func (b *Block) has(name string) bool { return b.find(name) >= 0 }

// get returns the value of an attribute without its quotes, or "".
func (b *Block) get(name string) string {
	if i := b.find(name); i >= 0 {
		return strings.Trim(b.attrs[i].value, `"`)
	}
	return ""
}

// of returns the inner blocks of a word.
func (b *Block) of(word string) (out []*Block) {
	for _, x := range b.inner {
		if x.Word == word {
			out = append(out, x)
		}
	}
	return out
}

func (b *Block) clone() *Block {
	out := &Block{Word: b.Word, Name: b.Name, attrs: slices.Clone(b.attrs)}
	for _, x := range b.inner {
		out.inner = append(out.inner, x.clone())
	}
	return out
}

func (b *Block) write(out *strings.Builder, indent string) {
	out.WriteString(indent + b.Word)
	if b.Name != "" {
		out.WriteString(" " + quoted(b.Name))
	}
	out.WriteString(" {\n")
	for _, a := range b.attrs {
		out.WriteString(indent + "  " + a.name + " = " + a.value + "\n")
	}
	for _, x := range b.inner {
		x.write(out, indent+"  ")
	}
	out.WriteString(indent + "}\n")
}

func quoted(s string) string { return strconv.Quote(s) }

func list(names ...string) string {
	out := make([]string, len(names))
	for i, n := range names {
		out[i] = quoted(n)
	}
	return "[" + strings.Join(out, ", ") + "]"
}

// lists reports whether a list of names holds one.
func (b *Block) lists(name, one string) bool {
	i := b.find(name)
	return i >= 0 && strings.Contains(b.attrs[i].value, quoted(one))
}
