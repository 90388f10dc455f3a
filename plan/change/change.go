// Package change says in which pieces the text of one collection differs from that of
// another: a value that is written otherwise, a block that came or went, lines of a log.
// Each piece can be made by itself in the first of the two texts, so that whoever wants to
// know what a piece does can ask the compiler. What only stands elsewhere, or is laid out
// otherwise, is no piece.
package change

import (
	"maps"
	"slices"
	"strconv"
	"strings"

	"vivary/plan"
	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/plan/syntax"
)

// Side is what stands in one of the two texts; the zero Side is nothing. A phone number does not
// stand in it: what differs is shown around, and posted.
type Side struct {
	File string
	Line int // from 1
	Text string
}

// Written reports whether anything stands there.
func (s Side) Written() bool { return s.File != "" }

// Piece is one difference.
type Piece struct {
	// Type and Name are of the outermost block, in the second text where it stands in both;
	// Type is "" for lines of a log, and Name then the enclosure or the keeper that they are about.
	Type, Name string
	// Before is its name in the first text, where that was another.
	Before string
	// In are the blocks within, from the outermost, and Attr is the attribute; "" where a whole
	// block came or went.
	In      []string
	Attr    string
	Was, Is Side
	// Library says that it is no text of the collection, but of the sheets by which it is judged.
	Library bool
	// Between says that lines of a log are of animals that went from one enclosure to another.
	Between bool
	// Lines are the lines of a log that came; Gone are those that are no more.
	Lines, Gone []Side

	edits []finding.Edit // of the first text; Place.File is that of its collection
	adds  []added
}

// added is text that is put behind all else in a file, which may be a new one.
type added struct{ file, text string }

// Log reports whether the piece is lines of a log.
func (p *Piece) Log() bool { return p.Type == "" }

// Path is where a piece stands: "burrow-a, climate, humidity".
func (p *Piece) Path() string {
	parts := []string{p.Head()}
	parts = append(parts, p.In...)
	if p.Attr != "" {
		parts = append(parts, p.Attr)
	}
	return strings.Join(parts, ", ")
}

// Head names the outermost block as its keeper does: an enclosure by its name alone.
func (p *Piece) Head() string {
	switch {
	case p.Log() && p.Name == "":
		return "the log"
	case p.Log():
		return "the log of " + p.Name
	case p.Name == "", p.Type == "enclosure":
		return strings.TrimSpace(p.Name + strings.TrimPrefix(p.Type, "enclosure"))
	}
	return p.Type + " " + p.Name
}

// Move is a block that stands elsewhere and says the same.
type Move struct {
	Type, Name string
	From, To   string // files
}

// Changes are all differences of two collections.
type Changes struct {
	Pieces []Piece
	Moves  []Move
	// Laid are the files of the second text in which blocks are laid out otherwise, or
	// comments changed, and mean the same.
	Laid []string
	// Unread are files of either in which something could not be read: there may be more.
	Unread []string

	a *plan.Collection
}

// Between finds the pieces in which b differs from a. Its files go by their names, so that
// both are to be read below the same root.
func Between(a, b *plan.Collection) *Changes {
	c := &Changes{a: a}
	was, is := texts(a), texts(b)
	var before, after []stand
	for _, name := range names(was, is) {
		old, now := was[name], is[name]
		if old.there && now.there && string(old.text) == string(now.text) {
			continue
		}
		if strings.HasSuffix(name, plan.PlanSuffix) { // a log differs by its lines
			before = append(before, c.blocks(name, old)...)
			after = append(after, c.blocks(name, now)...)
		}
	}
	c.match(before, after)
	c.logs(a, b)
	return c
}

// Judged adds the pieces in which the sheets differ by which the two are judged. They cannot be
// made one by one.
func (c *Changes) Judged(a, b *plan.Sheets) {
	if a == b {
		return
	}
	was, is := a.Texts(), b.Texts()
	all := &Changes{a: c.a}
	var before, after []stand
	for _, name := range slices.Sorted(maps.Keys(was)) {
		if string(was[name]) != string(is[name]) {
			before = append(before, all.blocks(name, text{1, was[name], true})...)
		}
	}
	for _, name := range slices.Sorted(maps.Keys(is)) {
		if string(was[name]) != string(is[name]) {
			after = append(after, all.blocks(name, text{1, is[name], true})...)
		}
	}
	all.match(before, after)
	for _, p := range all.Pieces {
		p.Library, p.edits, p.adds = true, nil, nil
		c.Pieces = append(c.Pieces, p)
	}
}

// Only returns those of the changes of which a piece is asked for; what is no piece stays.
func (c *Changes) Only(asked func(*Piece) bool) *Changes {
	out := *c
	out.Pieces = nil
	for i := range c.Pieces {
		if asked(&c.Pieces[i]) {
			out.Pieces = append(out.Pieces, c.Pieces[i])
		}
	}
	return &out
}

// text is one file of a collection.
type text struct {
	id    source.ID
	text  []byte
	there bool
}

func texts(c *plan.Collection) map[string]text {
	out := make(map[string]text, c.Files.Len())
	for _, id := range c.Files.Files() {
		out[c.Files.Name(id)] = text{id, c.Files.Text(id), true}
	}
	return out
}

func names(a, b map[string]text) (out []string) {
	for name := range a {
		out = append(out, name)
	}
	for name := range b {
		if !a[name].there {
			out = append(out, name)
		}
	}
	slices.Sort(out)
	return out
}

// stand is an outermost block where it stands.
type stand struct {
	*syntax.Block
	file string
	text []byte
}

func (s *stand) key() string { return s.Type + " " + label(s.Block) }

// blocks reads the outermost blocks of a file.
func (c *Changes) blocks(name string, t text) (out []stand) {
	if !t.there {
		return nil
	}
	tree := plan.TreeOf(t.id, t.text)
	if (tree.Unfit || len(tree.Broken) > 0 || len(tree.Loose) > 0) && !slices.Contains(c.Unread, name) {
		c.Unread = append(c.Unread, name)
	}
	for _, b := range tree.Blocks {
		out = append(out, stand{b, name, t.text})
	}
	return out
}

func label(b *syntax.Block) string {
	all := make([]string, len(b.Labels))
	for i, l := range b.Labels {
		all[i] = l.Text
	}
	return strings.Join(all, " ")
}

// side is what stands at a place of a block's file, as it may be shown around.
func (s *stand) side(at source.Place) Side {
	text := s.raw(at)
	for _, phone := range phones(s.Block, nil) {
		if from, to := phone.Start-at.Start, phone.End-at.Start; from >= 0 && int(to) <= len(text) {
			text = text[:from] + Unsaid + text[to:] // the last one first
		}
	}
	return Side{s.file, 1 + strings.Count(string(s.text[:at.Start]), "\n"), text}
}

// Unsaid stands in place of a phone number.
const Unsaid = `"…"`

// raw is what stands at a place of a block's file, as it is made in another.
func (s *stand) raw(at source.Place) string { return string(s.text[at.Start:at.End]) }

// phones are the places of the phone numbers in a block, the last one first.
func phones(b *syntax.Block, into []source.Place) []source.Place {
	for i := range b.Attrs {
		if b.Attrs[i].Name == "phone" {
			into = append(into, b.Attrs[i].Value.At)
		}
	}
	for _, in := range b.Blocks {
		into = phones(in, into)
	}
	slices.SortFunc(into, func(x, y source.Place) int { return int(y.Start - x.Start) })
	return into
}

// meaning is a block as a text that is the same for all that mean the same: whatever the order
// of its attributes, and however they are laid out.
func meaning(b *syntax.Block) string {
	var out strings.Builder
	write(&out, b)
	return out.String()
}

func write(out *strings.Builder, b *syntax.Block) {
	out.WriteString(b.Type + " " + strconv.Quote(label(b)) + " {\n")
	lines := make([]string, len(b.Attrs))
	for i := range b.Attrs {
		lines[i] = b.Attrs[i].Name + " = " + value(&b.Attrs[i].Value) + "\n"
	}
	slices.SortStableFunc(lines, func(x, y string) int {
		return strings.Compare(x[:strings.IndexByte(x, ' ')], y[:strings.IndexByte(y, ' ')])
	})
	for _, l := range lines {
		out.WriteString(l)
	}
	for _, in := range inOrder(b.Blocks) {
		write(out, in)
	}
	out.WriteString("}\n")
}

// inOrder are blocks by type and name; those of one type and name as they stand.
func inOrder(all []*syntax.Block) []*syntax.Block {
	out := slices.Clone(all)
	slices.SortStableFunc(out, func(x, y *syntax.Block) int {
		return strings.Compare(x.Type+" "+label(x), y.Type+" "+label(y))
	})
	return out
}

func value(v *syntax.Value) string {
	if v.Kind == syntax.List {
		items := make([]string, len(v.Items))
		for i := range v.Items {
			items[i] = value(&v.Items[i])
		}
		return "[" + strings.Join(items, ", ") + "]"
	}
	if v.Kind == syntax.Text {
		return strconv.Quote(v.Text)
	}
	return v.Text
}
