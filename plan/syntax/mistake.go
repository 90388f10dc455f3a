package syntax

import (
	"slices"

	"vivary/plan/finding"
	"vivary/plan/source"
)

// Flaw is what is wrong with a place in the text.
type Flaw uint8

// Habits: what somebody writes each time. The text is read as it was meant, and a file has
// one finding for all places.
const (
	Curly      Flaw = iota // “ ” in place of " "
	Single                 // ' ' in place of " "
	Colon                  // : or == in place of =
	LineEnd                // a comma or semicolon at the end of a line
	OwnLine                // something behind what should end the line
	BraceBelow             // a { on the line below its block
	QuotedName             // an attribute with its name in quotes
	BlockEqual             // a = or : between a block and its {
	BareLabel              // the name of a block that is no word, without quotes
	ListComma              // no comma, or a semicolon, between two things in a list
	Blank                  // a blank that is none, such as a no-break space
	Return                 // lines that end in a carriage return alone
	habits                 // how many
)

// Accidents: what happens once. Each is found by itself, and its block is not read.
const (
	Unclosed    Flaw = iota + habits // a text whose second quote is missing
	Unopened                         // a text whose first quote is missing
	ListQuote                        // a list with a quote too few or too many
	QuoteInside                      // a text that goes on after its quotes
	LongText                         // a text over several lines
	Heredoc                          // a text between markers
	Escape                           // a backslash before what it means nothing for
	NoEquals                         // a name, a value and no = between them
	NoValue                          // a name, a = and no value
	NoBrace                          // a block without its {
	NoBracket                        // a list without its ]
	NoList                           // several values without [ ]
	TwoWords                         // an attribute's name in two words
	Stray                            // a character that means nothing
	NotAnItem                        // a line that is neither a block nor name = value
	Prose                            // a line of words
	Conflict                         // a line by which git marks what it could not merge
	Unended                          // a block without its }
	ExtraEnd                         // a } too many
	OpenComment                      // a comment without its */
	Object                           // a value in { }
	TooDeep                          // brackets nested too deep
	TooMany                          // a block with too much in it
)

// Mistake is one thing that is wrong with the text.
type Mistake struct {
	Flaw  Flaw
	At    source.Place
	Edits []finding.Edit // where it is plain what was meant
	More  int            // how many more places of the file have it
	Word  string         // what it is about
}

// Bounds on what is kept of mistakes.
const (
	maxAccidents = 100 // of a file
	maxEdits     = 300 // of one habit; where there are more, there are none
)

// mistakes are those of a file.
type mistakes struct {
	habits    [habits]*Mistake
	accidents []Mistake
}

func (m *mistakes) add(x Mistake) {
	if x.Flaw >= habits {
		if len(m.accidents) < maxAccidents {
			m.accidents = append(m.accidents, x)
		}
		return
	}
	h := m.habits[x.Flaw]
	if h == nil {
		m.habits[x.Flaw] = &x
		return
	}
	h.More++
	if len(h.Edits)+len(x.Edits) > maxEdits || len(x.Edits) == 0 {
		h.Edits = nil
	} else if len(h.Edits) > 0 {
		h.Edits = append(h.Edits, x.Edits...)
	}
}

func (m *mistakes) all() []Mistake {
	var out []Mistake
	for _, h := range m.habits {
		if h != nil {
			out = append(out, *h)
		}
	}
	out = append(out, m.accidents...)
	slices.SortStableFunc(out, func(a, b Mistake) int { return int(a.At.Start - b.At.Start) })
	return out
}
