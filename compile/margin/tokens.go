package margin

import (
	"bytes"
	"cmp"
	"slices"
	"strings"

	"vivary/compile"
	"vivary/plan"
	"vivary/plan/source"
	"vivary/plan/syntax"
	"vivary/schema"
)

// Sort is what a stretch of a text is.
type Sort uint8

// The sorts. A name is of the sort Name, and Token.Of says of what.
const (
	BlockType Sort = iota // the word with which a block begins, and words between others in a log
	Attribute
	Name
	Word   // one of several words of the language that may stand there
	Amount // a number, with its unit where it has one
	When   // a day, a time of day, how often
	Text   // words for people
	Remark
)

// Token is a stretch of one line of a text, and what it is.
type Token struct {
	At   source.Place
	Sort Sort
	Of   string // of a Name: a type of block, schema.NamesKind or schema.NamesRule
	// Given says that the name is given here, BuiltIn that it comes with the program.
	Given, BuiltIn bool
	Out            bool // it begins what is left out: a block that is off
	Accepts        bool // it begins an accept block, by which something is not said
}

// Tokens are what the words of a file are, in their order: none covers what another does, and
// none goes beyond its line. Of what cannot be read there is nothing but the remarks.
func Tokens(r *compile.Result, id source.ID) []Token {
	t := &tokens{text: r.Plan.Files.Text(id), id: id}
	t.names(r.Plan)
	if strings.HasSuffix(r.Plan.Files.Name(id), plan.LogSuffix) {
		t.log(r.Plan)
	} else {
		for _, b := range plan.TreeOf(id, t.text).Blocks {
			t.block(b, schema.Plan.Block(b.Type))
		}
		t.remarks()
	}
	return t.apart()
}

type tokens struct {
	text  []byte
	id    source.ID
	named []Token // the names of the file
	all   []Token
}

// names takes in the places at which a name stands.
func (t *tokens) names(c *plan.Collection) {
	for _, u := range c.Uses() {
		if u.At.File != t.id || len(t.named) > 0 && t.named[len(t.named)-1].At == u.At {
			continue
		}
		builtIn := u.Defined.File < 0 || u.Kind == schema.NamesKind || u.Kind == schema.NamesRule
		t.named = append(t.named, Token{At: u.At, Sort: Name, Of: u.Kind, Given: u.Defines(), BuiltIn: builtIn})
	}
	slices.SortStableFunc(t.named, func(a, b Token) int { return cmp.Compare(a.At.Start, b.At.Start) })
	t.all = append(t.all, t.named...)
}

// add takes in a stretch, unless names stand in it.
func (t *tokens) add(at source.Place, s Sort) {
	i, _ := slices.BinarySearchFunc(t.named, at.Start, func(x Token, start int32) int { return cmp.Compare(x.At.Start, start) })
	if i < len(t.named) && t.named[i].At.Start < at.End {
		return
	}
	t.all = append(t.all, Token{At: at, Sort: s})
}

// block takes in a block, of which d is the description, or nil for one that is not known.
func (t *tokens) block(b *syntax.Block, d *schema.Block) {
	off := b.Attr("off")
	t.all = append(t.all, Token{At: b.TypeAt, Sort: BlockType, Accepts: b.Type == schema.Accept.Name, Out: off != nil && off.Value.Text == "true"})
	for _, l := range b.Labels {
		t.add(l.At, Word)
	}
	for i := range b.Attrs {
		a := &b.Attrs[i]
		t.add(a.NameAt, Attribute)
		t.value(&a.Value, sortOf(d, a))
	}
	for _, in := range b.Blocks {
		var of *schema.Block
		if d != nil {
			of = d.Block(in.Type)
		}
		t.block(in, of)
	}
}

// kindSorts are what values of each kind are, where they are no text.
var kindSorts = map[schema.Kind]Sort{
	schema.Word: Word, schema.Words: Word, schema.Truth: Word, schema.Zone: Word, schema.Prey: Word, schema.Menu: Word, schema.Ref: Word, schema.Refs: Word,
	schema.Number: Amount, schema.Whole: Amount, schema.Quantity: Amount, schema.Range: Amount, schema.Numbers: Amount,
	schema.Size: Amount, schema.Face2D: Amount, schema.Count: Amount, schema.Spans: Amount,
	schema.Date: When, schema.Clock: When, schema.Clocks: When, schema.Every: When, schema.On: When, schema.DayOfYear: When, schema.Cron: When,
}

func sortOf(d *schema.Block, a *syntax.Attr) Sort {
	if d != nil {
		if x := d.Attr(a.Name); x != nil {
			return kindSort(x.Kind)
		}
		if in := d.Flattened(a.Name); in != nil {
			return kindSort(in.Attr(a.Name).Kind)
		}
	}
	switch a.Value.Kind {
	case syntax.Number:
		return Amount
	case syntax.Truth:
		return Word
	}
	return Text
}

func kindSort(k schema.Kind) Sort {
	if s, ok := kindSorts[k]; ok {
		return s
	}
	return Text
}

func (t *tokens) value(v *syntax.Value, s Sort) {
	if v.Kind == syntax.List {
		for i := range v.Items {
			t.value(&v.Items[i], s)
		}
		return
	}
	t.add(v.At, s)
}

// remarks takes in what is written for people only. Quotes are closed at the end of a line,
// whatever is missing.
func (t *tokens) remarks() {
	for i := 0; i < len(t.text); {
		rest := t.text[i:]
		switch {
		case rest[0] == '"':
			i += quoted(rest)
		case rest[0] == '#' || bytes.HasPrefix(rest, []byte("//")):
			n := lineEnd(rest)
			t.remark(i, i+n)
			i += n
		case bytes.HasPrefix(rest, []byte("/*")):
			n := bytes.Index(rest[2:], []byte("*/"))
			if n < 0 {
				n = len(rest) - 4
			}
			t.lines(i, i+n+4)
			i += n + 4
		default:
			i++
		}
	}
}

func (t *tokens) remark(from, to int) {
	if to > from {
		t.all = append(t.all, Token{At: source.Place{File: t.id, Start: int32(from), End: int32(to)}, Sort: Remark})
	}
}

// lines takes in a remark of several lines, each by itself.
func (t *tokens) lines(from, to int) {
	for from < to {
		end := min(to, from+lineEnd(t.text[from:to]))
		t.remark(from, end)
		from = end + 1
	}
}

// lineEnd is where the first line of a text ends.
func lineEnd(text []byte) int {
	if n := bytes.IndexAny(text, "\r\n"); n >= 0 {
		return n
	}
	return len(text)
}

// quoted is the length of a text in quotes.
func quoted(text []byte) int {
	for i := 1; i < len(text); i++ {
		switch text[i] {
		case '\\':
			i++
		case '"':
			return i + 1
		case '\r', '\n':
			return i
		}
	}
	return len(text)
}

// apart puts all in order and leaves out what another covers, what is empty and what goes
// beyond its line.
func (t *tokens) apart() []Token {
	slices.SortStableFunc(t.all, func(a, b Token) int { return cmp.Compare(a.At.Start, b.At.Start) })
	out, end := t.all[:0], int32(0)
	for _, x := range t.all {
		if x.At.Start < end || x.At.End <= x.At.Start || int(x.At.End) > len(t.text) || bytes.ContainsAny(t.text[x.At.Start:x.At.End], "\r\n") {
			continue
		}
		out, end = append(out, x), x.At.End
	}
	return out
}
