package plan

import (
	"strconv"

	"vivary/plan/finding"
	"vivary/plan/syntax"
	"vivary/schema"
)

// flaws says in a keeper's words what is wrong with the text, and what to write where no
// edit says it.
var flaws = map[syntax.Flaw]struct{ text, write string }{
	syntax.Curly:       {"these quotes are curly: a text stands in straight ones", "straight quotes, typed in a plain text editor"},
	syntax.Single:      {"a text stands in double quotes", "the text in double quotes"},
	syntax.Colon:       {"between a name and its value stands =", "= in its place"},
	syntax.LineEnd:     {"nothing stands at the end of a line: outside of [ ] there is no comma and no semicolon", "the line without it"},
	syntax.OwnLine:     {"what follows belongs on a line of its own", "one thing a line"},
	syntax.BraceBelow:  {"the { of a block stands on its first line", "the { on the first line of the block"},
	syntax.QuotedName:  {"the name of an attribute has no quotes", "the name without quotes"},
	syntax.BlockEqual:  {"a block has no = or : before its {", "the { right behind the name"},
	syntax.BareLabel:   {"a name that begins with a digit stands in quotes", "the name in quotes"},
	syntax.ListComma:   {"between two things in a list stands a comma", "a comma between them"},
	syntax.Blank:       {"here is a blank that only looks like one, as web pages and word processors have them", "a blank"},
	syntax.Return:      {"the lines end as no system of today has them, with a carriage return alone", "the file anew, saved with plain ends of lines (LF or CRLF)"},
	syntax.Unclosed:    {"this text is never closed: its \" is missing", `a " where the text ends`},
	syntax.Unopened:    {"this text is never opened: its first \" is missing", `a " where the text begins`},
	syntax.ListQuote:   {"a quote is missing in this list, or there is one too many", "each of them in its own pair of quotes"},
	syntax.QuoteInside: {"the text goes on behind its second quote", `one text in one pair of quotes; a quote inside it as \", an inch as in`},
	syntax.LongText:    {"a text stands on one line", "the whole text on one line"},
	syntax.Heredoc:     {"a text stands in quotes, on one line", "the text in quotes, on one line"},
	syntax.Escape:      {"a backslash means nothing before this: one that is meant is written twice", `\\`},
	syntax.NoEquals:    {"between a name and its value stands =", "= between them"},
	syntax.NoValue:     {"there is no value after the =", "a value, or take the line out"},
	syntax.NoBrace:     {"this block is never opened: its { is missing", "{ at the end of its first line"},
	syntax.NoBracket:   {"this list is never closed: its ] is missing", "] where the list ends"},
	syntax.NoList:      {"several values stand in square brackets", "the values in [ ], with commas between them"},
	syntax.TwoWords:    {"the name of an attribute is one word", "the name in one word; the reference page has all names"},
	syntax.Stray:       {"this character means nothing here", "the line without it"},
	syntax.NotAnItem:   {"here should stand a block, or name = value", "a block; or a name, = and its value"},
	syntax.Prose:       {"here should stand a block, or name = value; a remark begins with #", "# and the remark"},
	syntax.Conflict:    {"git could not merge this, and left both sides here, between such lines", "one of the two sides, or what is true of both, without these lines"},
	syntax.Unended:     {"this block is never closed: its } is missing", "} on a line of its own"},
	syntax.ExtraEnd:    {"here is one } too many", "the plan without it"},
	syntax.OpenComment: {"this comment is never closed: its */ is missing", "*/ where the comment ends, or # before each line of it"},
	syntax.Object:      {"a value does not stand in { }", "a block, or one value"},
	syntax.TooDeep:     {"brackets are nested too deep here", "look for a bracket that is opened again and again"},
	syntax.TooMany:     {"so much stands in this block that it is not read", "several blocks"},
}

// syntaxFinding says what is wrong with the text.
func syntaxFinding(m syntax.Mistake) finding.Finding {
	f := finding.Finding{Rule: ruleSyntax, At: m.At, Text: flaws[m.Flaw].text, Write: flaws[m.Flaw].write, Edits: m.Edits}
	switch m.Flaw {
	case syntax.TooDeep:
		f.Rule, f.Limit = ruleTooDeep, strconv.Itoa(syntax.MaxNesting)+" open at once"
	case syntax.TooMany:
		f.Rule, f.Limit = ruleTooMany, strconv.Itoa(syntax.MaxNodes)+" lines and things in lists in one block"
	}
	if m.More > 0 {
		f.Text += " (here, and at " + more(m.More) + " of this file)"
	}
	return f
}

func more(n int) string {
	if n == 1 {
		return "1 more place"
	}
	return strconv.Itoa(n) + " more places"
}

// words are the words of the language.
var words = func() *syntax.Words {
	w := &syntax.Words{Outer: map[string]bool{}, Inner: map[string]bool{}, Attrs: map[string]bool{}}
	var into func(b *schema.Block, blocks map[string]bool)
	into = func(b *schema.Block, blocks map[string]bool) {
		for _, name := range ownNames(b) {
			w.Attrs[name] = w.Attrs[name] || b.Block(name) == nil
		}
		for _, in := range b.Blocks {
			blocks[in.Name] = true
			into(in, w.Inner)
		}
	}
	into(schema.Plan, w.Outer)
	return w
}()

// twice finds an attribute that a block has already.
func twice(again, first *syntax.Attr) finding.Finding {
	return finding.Finding{Rule: ruleTwice, At: again.NameAt, Text: "this attribute is written twice in one block", Write: "take one of them out",
		Also: []finding.Related{{At: first.NameAt, Text: "the first"}}}
}
