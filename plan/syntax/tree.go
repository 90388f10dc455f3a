// Package syntax reads the text of a plan into a tree: HCL native syntax as far as a plan
// has it, which is blocks, attributes and plain values. It goes over the text once, keeps
// one outermost block at a time, and has a bound for whatever could grow. Nothing is
// ever computed. What it cannot read it says once, at the place of the cause, and goes on.
//
// It knows which words are blocks and attributes only to tell what was meant; whether a
// word may stand where it stands is for package plan.
package syntax

import "vivary/plan/source"

// Bounds on one outermost block. They are far above what people write.
const (
	MaxNesting = 40     // brackets open at once
	MaxNodes   = 50_000 // attributes, blocks and things in lists
)

// Kind is what a value is.
type Kind uint8

const (
	// Text is a text in quotes.
	Text Kind = iota
	// Number is a plain number, which may have a minus before it.
	Number
	// Truth is true or false.
	Truth
	// List is values in square brackets.
	List
	// Bare is words without quotes, as they were typed. HCL would compute something
	// of them, or not read them.
	Bare
)

// Value is what stands after the = of an attribute, or in a list.
type Value struct {
	Kind Kind
	// Filled says that a text holds ${…} or %{…}, which HCL would fill in.
	Filled bool
	At     source.Place
	Text   string // of a text without its quotes and escapes, of others as typed; "" of a list
	Items  []Value
}

// Attr is name = value.
type Attr struct {
	Name   string
	NameAt source.Place
	At     source.Place // from the name to the end of the value
	Value  Value
}

// Label is the name of a block.
type Label struct {
	Text string
	At   source.Place
}

// Block is a block with what stands in it, each kind in the order of its lines.
type Block struct {
	Type   string
	TypeAt source.Place
	Labels []Label
	Whole  source.Place // from its first word to its closing brace
	Attrs  []Attr
	Blocks []*Block
}

// Attr returns the first attribute of a name, or nil.
func (b *Block) Attr(name string) *Attr {
	for i := range b.Attrs {
		if b.Attrs[i].Name == name {
			return &b.Attrs[i]
		}
	}
	return nil
}

// Words are the words of the language. They decide nothing but what a broken line was
// meant for.
type Words struct {
	Outer map[string]bool // blocks that stand in no other
	Inner map[string]bool // blocks that stand in others
	Attrs map[string]bool
}

// Region is a stretch of a file that could not be read: an outermost block, to where the
// next begins, or lines between blocks.
type Region struct {
	Type, Name string // of the block, as far as they could be read
	At         source.Place
}

// File is what a file holds besides its blocks.
type File struct {
	Loose    []Attr // attributes that stand in no block
	Mistakes []Mistake
	Broken   []Region
}
