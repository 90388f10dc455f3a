// Package schema says what may be written in a plan and what is known of the
// animals. It is one description of every block and attribute, from which
// decoding and the reference page are made; it reads no plan.
package schema

import (
	"strings"

	"vivary/schema/quantity"
)

// Kind is the type of an attribute's value, as a keeper writes it.
type Kind uint8

const (
	// Text is any text in quotes.
	Text Kind = iota
	// Word is one of the attribute's Words.
	Word
	// Words is several of the attribute's Words in one text, separated by commas.
	Words
	// Texts is a list of texts.
	Texts
	// Ref is the name of a block of type Attr.Ref.
	Ref
	// Refs is a list of names of blocks of type Attr.Ref.
	Refs
	// Number is a plain number, 0 or above.
	Number
	// Whole is a whole number, 0 or above.
	Whole
	// Truth is true or false.
	Truth
	// Quantity is a number with a unit of Attr.Dimension.
	Quantity
	// Range is a quantity, or two with "to" between them.
	Range
	// Numbers is a number or a range of plain numbers, such as "10 to 35".
	Numbers
	// Size is three lengths, "76 x 46 x 41 cm".
	Size
	// Face2D is two lengths, "28 x 43 cm".
	Face2D
	// Count is "males.females.unsexed" or a whole number.
	Count
	// Date is year-month-day.
	Date
	// Clock is a time of day, "19:30".
	Clock
	// Clocks is a time of day or a list of them.
	Clocks
	// Every is a step of the calendar: "day", "3 days", "2 weeks", "month".
	Every
	// On is a list of days: "tue", "mon to fri", "first mon", "last fri", "15th", "last",
	// "1 apr", "24 dec to 2 jan", "2027-03-04", "2027-07-20 to 2027-09-01", and names of dates
	// blocks.
	On
	// DayOfYear is a day and a month, "1 nov".
	DayOfYear
	// Cron is a line of five fields: minute, hour, day, month, weekday.
	Cron
	// Zone is the name of a time zone of the IANA database.
	Zone
	// Prey is a feeder and its size, "cricket adult".
	Prey
	// Menu is a list of Prey, taken in turn.
	Menu
	// Link is a web address.
	Link
	// Spans is numbers and ranges of them, "1 to 12, 15, 20 to 24".
	Spans
	// Wholes is a whole number above 0, or a list of them.
	Wholes
)

// What can be named besides blocks: words of the program itself.
const (
	NamesKind = "kind" // a kind of care
	NamesRule = "rule"
)

// Attr describes one attribute of a block.
type Attr struct {
	Name      string
	Kind      Kind
	Dimension quantity.Dimension // of Quantity and Range
	Choices   []Choice           // of Word and Words; of texts those that are known
	Unclear   []Question         // of Word and Words: what keepers write that is asked back
	Ref       string             // what is named: of Ref and Refs always, of texts where it may be
	Required  bool
	Positive  bool // of a Quantity: it is more than nothing
	// Band is where it lies in any ordinary house, by which a unit that is missing and a
	// scale that is mistaken are told; nothing where that tells nothing.
	Band    quantity.Range
	In      []quantity.Unit // what a number without a unit can be in, where that is not as usual
	Default string          // what holds where nothing is written, in words
	Beside  []string        // the figures of a species sheet that are about the same, the nearest first
	Doc     string
	Example string // as written in a plan, quotes included
}

// Block describes one type of block.
type Block struct {
	Name    string
	Label   string // what the label is; empty for a block without one
	Names   string // what the label names, where it does not name the block itself
	Once    bool   // whether one block may hold only one of these (of each label)
	Doc     string
	Example string
	Attrs   []Attr
	// Short are figures of which a block with nothing but a value may be written as an
	// attribute of this block, with underscores for the hyphens of its name.
	Short  func() []*Figure
	Blocks []*Block
	// Flat are those of Blocks of which the attributes may be written without their block.
	Flat []*Block
}

// Attr returns the attribute called name, or nil.
func (b *Block) Attr(name string) *Attr {
	for i := range b.Attrs {
		if b.Attrs[i].Name == name {
			return &b.Attrs[i]
		}
	}
	return nil
}

// Block returns the inner block type called name, or nil.
func (b *Block) Block(name string) *Block {
	for _, c := range b.Blocks {
		if c.Name == name {
			return c
		}
	}
	return nil
}

// Plan is the outermost body of a plan file: the blocks that may stand there.
var Plan = &Block{
	Name: "plan",
	Doc:  "What may stand in a file whose name ends in `.care.hcl`. The files of a collection are read together, in any order and any folders.",
	Blocks: []*Block{
		Collection, Room, Keeper, Contact, Round, Rota, Dates, Away, Calendar, Deadline,
		Enclosure, Template, Rack, Gone,
		Seller, Supply, Tub, Culture,
		Species, Type, Feeder, Source,
	},
}

// Flattened returns the inner block whose attribute may be written here without it, or
// nil. The block's own attributes go before.
func (b *Block) Flattened(attr string) *Block {
	if b.Attr(attr) != nil {
		return nil
	}
	for _, c := range b.Flat {
		if c.Attr(attr) != nil {
			return c
		}
	}
	return nil
}

// Shortened returns the figure that an attribute of the block stands for, or nil.
func (b *Block) Shortened(attr string) *Figure {
	if b.Short == nil {
		return nil
	}
	return FindFigure(b.Short(), strings.ReplaceAll(attr, "_", "-"))
}
