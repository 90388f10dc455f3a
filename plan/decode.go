package plan

import (
	"bytes"
	"cmp"
	"iter"
	"reflect"
	"slices"
	"strconv"
	"strings"
	"unicode"

	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/plan/syntax"
	"vivary/schema"
	"vivary/schema/slip"
	"vivary/schema/wording"
)

// decoder turns the syntax tree of one file into blocks. It belongs to one
// goroutine; what it found is collected afterwards.
type decoder struct {
	file   source.ID
	source []byte // the text of the file
	found  finding.List
	// partial says that required attributes may be missing, since they can come
	// from elsewhere: from a template, or from a built-in sheet.
	partial bool
	// own says that the file is the collection's, not one of the built-in sheets.
	own bool
}

// full reports whether so much is wrong in the file that no more is looked for.
func (d *decoder) full() bool { return d.found.Refusing() >= MaxFound }

// decoded is what stands in a plan file.
type decoded struct {
	blocks []any
	unread []syntax.Region
	found  []finding.Finding
	cut    bool // there is more, which was not looked at
}

// decodeFile reads all blocks of a plan file that can be read: pointers to structs, in the
// order of their lines. Nobody changes a block that it has returned. A block in which
// something is wrong with the text is left out, and nothing else is said of it.
func decodeFile(id source.ID, text []byte, from int, own bool) decoded {
	return decodeAfter(decoded{}, id, text, 0, from, own)
}

// decodeAfter is as decodeFile, where what stands before byte at of the text has been read: out
// is what came of it.
func decodeAfter(out decoded, id source.ID, text []byte, at, from int, own bool) decoded {
	d := &decoder{file: id, source: text, own: own}
	f := syntax.Read(id, text[at:], from+at, words, func(b *syntax.Block) bool {
		if v := d.outermost(b); v != nil {
			out.blocks = append(out.blocks, v)
		}
		switch {
		case d.full():
			f := tooMuch()
			f.At, out.cut = b.TypeAt, true
			d.found.Add(f)
		case len(out.blocks) > maxOutermost:
			out.cut = true
			d.found.Add(finding.Finding{Rule: ruleTooMany, At: b.TypeAt, Text: "from here on there are more blocks than are read",
				Limit: strconv.Itoa(maxOutermost) + " in a file", Write: "several files, or several collections"})
		}
		return !out.cut
	})
	out.unread = f.Broken
	for _, m := range f.Mistakes {
		d.found.Add(syntaxFinding(m))
	}
	for _, a := range f.Loose {
		d.found.Add(finding.Finding{Rule: ruleUnknownWord, At: a.NameAt,
			Text:  quote(a.Name) + " stands outside every block",
			Write: "put it into the block that it belongs to, for example collection"})
	}
	slices.SortStableFunc(d.found.All, func(a, b finding.Finding) int { return cmp.Compare(a.At.Start, b.At.Start) })
	out.found = d.found.All
	return out
}

// outermost reads a block that stands in no other, or returns nil where there is none of
// its type.
func (d *decoder) outermost(b *syntax.Block) any {
	t, ok := topTypes[b.Type]
	if !ok {
		d.unknown(b.TypeAt, "block", b.Type, "a plan file", blockNames(schema.Plan), func(string) bool { return true })
		return nil
	}
	d.partial = b.Type == "template" || b.Type == "enclosure"
	v := reflect.New(t)
	d.block(b, bindings[t], v.Elem())
	d.settle(v.Interface())
	return v.Interface()
}

// blocks are the blocks of files by their type, in the order of files and lines.
type blocks struct {
	abouts     []*About
	rooms      []*Room
	racks      []*Rack
	keepers    []*Keeper
	contacts   []*Contact
	rounds     []*Round
	dates      []*Dates
	aways      []*Away
	gone       []*Gone
	calendars  []*Calendar
	enclosures []*Enclosure
	templates  []*Template
	species    []*SpeciesSheet
	types      []*TypeSheet
	feeders    []*FeederSheet
	sources    []*Source
}

// add adds the blocks of one file.
func (b *blocks) add(file []any) {
	for _, x := range file {
		switch x := x.(type) {
		case *About:
			b.abouts = append(b.abouts, x)
		case *Room:
			b.rooms = append(b.rooms, x)
		case *Rack:
			b.racks = append(b.racks, x)
		case *Keeper:
			b.keepers = append(b.keepers, x)
		case *Contact:
			b.contacts = append(b.contacts, x)
		case *Round:
			b.rounds = append(b.rounds, x)
		case *Dates:
			b.dates = append(b.dates, x)
		case *Away:
			b.aways = append(b.aways, x)
		case *Gone:
			b.gone = append(b.gone, x)
		case *Calendar:
			b.calendars = append(b.calendars, x)
		case *Enclosure:
			b.enclosures = append(b.enclosures, x)
		case *Template:
			b.templates = append(b.templates, x)
		case *SpeciesSheet:
			b.species = append(b.species, x)
		case *TypeSheet:
			b.types = append(b.types, x)
		case *FeederSheet:
			b.feeders = append(b.feeders, x)
		case *Source:
			b.sources = append(b.sources, x)
		}
	}
}

func (d *decoder) block(blk *syntax.Block, b *binding, v reflect.Value) {
	h := headOf(v.Addr())
	h.At, h.Whole = headPlace(blk), blk.Whole
	d.label(blk, b.block, h)

	for i := range blk.Attrs {
		if d.full() {
			return
		}
		a := &blk.Attrs[i]
		name := a.Name
		if first := blk.Attr(name); first != a {
			d.found.Add(twice(a, first))
			continue
		}
		ab := b.attrs[name]
		if ab == nil {
			if b.block.Shortened(name) != nil || b.block.Flattened(name) != nil {
				continue // see short and flat
			}
			if b.block.Block(name) != nil {
				d.found.Add(finding.Finding{Rule: ruleValue, At: a.NameAt,
					Text:  quote(name) + " is a block, not a value",
					Write: "a block: " + opening(b.block.Block(name)) + ", and in braces what belongs to it, each on a line of its own"})
				continue
			}
			d.unknown(a.NameAt, "attribute", name, "block "+b.block.Name, ownNames(b.block), func(better string) bool {
				return (b.attrs[better] != nil || b.block.Shortened(better) != nil || b.block.Flattened(better) != nil) && blk.Attr(better) == nil
			})
			continue
		}
		before := len(d.found.All)
		d.value(&a.Value, ab.attr, v.FieldByIndex(ab.field))
		if finding.Refuses(d.found.All[before:]) {
			lacks(v.Addr())
		}
		d.elsewhere(a, b, v, blk, d.found.All[before:])
	}
	if s, ok := v.Addr().Interface().(*SpeciesSheet); ok {
		d.short(blk, s)
	}
	if len(b.block.Flat) > 0 {
		d.flat(blk, b, v)
	}
	var inside map[string]int // how many there are of each type, where there can be too many
	if len(blk.Blocks) > MaxInside {
		inside = map[string]int{}
	}
	for _, in := range blk.Blocks {
		if d.full() || d.crowded(inside, in, blk) {
			return
		}
		ib := b.inner[in.Type]
		if ib == nil {
			if a := b.block.Attr(in.Type); a != nil {
				d.found.Add(finding.Finding{Rule: ruleValue, At: in.TypeAt,
					Text:  quote(in.Type) + " is a value, not a block",
					Write: "behind " + a.Name + " an = and " + a.Form()})
				continue
			}
			d.unknown(in.TypeAt, "block", in.Type, "block "+b.block.Name, ownNames(b.block), func(better string) bool {
				return b.inner[better] != nil && !hasBlock(blk, better, in.Labels)
			})
			continue
		}
		item := reflect.New(ib.elem)
		d.block(in, ib.binding, item.Elem())
		d.put(ib, v.FieldByIndex(ib.field), item)
	}
	if d.partial {
		return // looked at once the template is merged in
	}
	if s, ok := v.Addr().Interface().(*Season); ok && s.Off.V {
		return // one that is left out needs no days
	}
	d.required(blk, b, v, h)
}

// maxNumbers bounds the number blocks in an enclosure.
const maxNumbers = 5_000

// crowded finds that a block holds more of a type than is read, of which inside has how many
// there are.
func (d *decoder) crowded(inside map[string]int, in, blk *syntax.Block) bool {
	if inside == nil {
		return false
	}
	inside[in.Type]++
	most := MaxInside
	if in.Type == schema.NumberBlock.Name {
		most = maxNumbers
	}
	if inside[in.Type] <= most {
		return false
	}
	d.found.Add(finding.Finding{Rule: ruleTooMany, At: in.TypeAt, Text: "from here on " + blk.Type + " holds more of " + quote(in.Type) + " than is read",
		Limit: strconv.Itoa(most) + " in one block", Write: "fewer, or several blocks"})
	return true
}

// short reads the figures of a sheet that are written as attributes.
func (d *decoder) short(blk *syntax.Block, s *SpeciesSheet) {
	for i := range blk.Attrs {
		a := &blk.Attrs[i]
		what := schema.Species.Shortened(a.Name)
		if what == nil || schema.Species.Attr(a.Name) != nil || blk.Attr(a.Name) != a {
			continue
		}
		f := &Figure{Head: Head{Name: wrote(what.Name, a.NameAt), At: a.NameAt, Whole: a.At}}
		d.value(&a.Value, schema.FigureBlock.Attr("value"), reflect.ValueOf(&f.Value).Elem())
		s.Figures = append(s.Figures, f)
	}
}

// flat reads attributes of inner blocks that are written without them, into blocks that
// have neither a name nor a place.
func (d *decoder) flat(blk *syntax.Block, b *binding, v reflect.Value) {
	for i := range blk.Attrs {
		a := &blk.Attrs[i]
		inner := b.block.Flattened(a.Name)
		if inner == nil || blk.Attr(a.Name) != a {
			continue
		}
		ib := b.inner[inner.Name]
		to := v.FieldByIndex(ib.field)
		switch {
		case ib.list && to.Len() == 0:
			to.Set(reflect.Append(to, reflect.New(ib.elem)))
		case !ib.list && to.IsNil():
			to.Set(reflect.New(ib.elem))
		}
		if ib.list {
			to = to.Index(0)
		}
		ab := ib.binding.attrs[a.Name]
		before := len(d.found.All)
		d.value(&a.Value, ab.attr, to.Elem().FieldByIndex(ab.field))
		if finding.Refuses(d.found.All[before:]) {
			lacks(to)
		}
	}
}

// lacks notes of a block that a value in it could not be read.
func lacks(block reflect.Value) {
	headOf(block).Unread = true
	switch x := block.Interface().(type) {
	case *Care:
		x.Unsure = true
	case *Feeding:
		x.Unsure = true
	}
}

// required finds attributes that must be written and are not.
func (d *decoder) required(blk *syntax.Block, b *binding, v reflect.Value, h *Head) {
	for _, a := range b.order {
		if a.attr.Required && blk.Attr(a.attr.Name) == nil && !tried(v.FieldByIndex(a.field)) {
			d.found.Add(missing(b.block, a.attr, h))
		}
	}
}

func missing(block *schema.Block, a *schema.Attr, h *Head) finding.Finding {
	return finding.Finding{Rule: ruleMissing, At: h.At,
		Text:  block.Name + named(h) + " has no " + a.Name + ": " + lower(a.Doc),
		Write: "a line for " + a.Name + ": " + a.Form()}
}

func (d *decoder) put(ib *blockBinding, to, item reflect.Value) {
	h := headOf(item)
	if !ib.list {
		if !to.IsNil() && !headOf(to).At.Written() {
			d.found.Add(finding.Finding{Rule: ruleTwice, At: h.At, Text: "something of the " + ib.binding.block.Name + " stands here in a block, and something without it", Write: "all of it in the block"})
			return
		}
		if !to.IsNil() {
			d.found.Add(duplicate(ib.binding.block.Name, h, headOf(to)))
			return
		}
		to.Set(item)
		return
	}
	if ib.binding.block.Once {
		for i := 0; i < to.Len(); i++ {
			if o := headOf(to.Index(i)); o.Name.V == h.Name.V && !forOthers(to.Index(i), item) {
				d.found.Add(duplicate(ib.binding.block.Name+" "+quote(h.Name.V), h, o))
				return
			}
		}
	}
	to.Set(reflect.Append(to, item))
}

// forOthers reports whether two blocks of one name, in a sheet, are for different stages.
func forOthers(a, b reflect.Value) bool {
	of := func(v reflect.Value) []Written[string] {
		switch x := v.Interface().(type) {
		case *Care:
			return x.Stages
		case *Feeding:
			return x.Stages
		}
		return nil
	}
	first, second := of(a), of(b)
	return len(first) > 0 && len(second) > 0 &&
		!slices.ContainsFunc(second, func(w Written[string]) bool { return Lists(first, w.V) })
}

func duplicate(what string, again, first *Head) finding.Finding {
	return finding.Finding{Rule: ruleTwice, At: again.At,
		Text:  what + " is there twice",
		Write: "give one of them another name, or take it out",
		Also:  []finding.Related{{At: first.At, Text: "the first"}}}
}

func (d *decoder) label(blk *syntax.Block, b *schema.Block, h *Head) {
	want := 0
	if b.Label != "" {
		want = 1
	}
	if len(blk.Labels) > want {
		at := blk.Labels[want].At
		text := "block " + b.Name + " takes one name only"
		if want == 0 {
			text = "block " + b.Name + " takes no name"
		}
		f := finding.Finding{Rule: ruleValue, At: at, Text: text, Write: opening(b) + ", and no more"}
		if name := asName(allLabels(blk)); want == 1 && name != "" && d.own {
			at.Start = blk.Labels[0].At.Start
			at.End = blk.Labels[len(blk.Labels)-1].At.End
			f.Write, f.Edits = quote(name), finding.Text(at, name)
		}
		d.found.Add(f)
	}
	if want == 0 {
		return
	}
	if len(blk.Labels) == 0 {
		d.found.Add(finding.Finding{Rule: ruleMissing, At: h.At,
			Text: "block " + b.Name + " has no " + b.Label + " after it", Write: opening(b)})
		return
	}
	h.Name = wrote(blk.Labels[0].Text, blk.Labels[0].At)
	if b == schema.Face {
		if name := schema.Called(schema.Faces, h.Name.V); name != "" {
			h.Name.V = name
		}
	}
	if b == schema.Accept || b == schema.NumberBlock || b == schema.FigureBlock || b == schema.Season || b == schema.FeederSize {
		return // these are words of the language, or free text
	}
	if !validName(h.Name.V) {
		d.found.Add(d.noName(blk, b, h))
	}
}

// allLabels are the words that stand where one name should.
func allLabels(blk *syntax.Block) string {
	var all []string
	for _, l := range blk.Labels {
		all = append(all, l.Text)
	}
	return strings.Join(all, " ")
}

// noName finds a name that cannot be one. A name is made of it, wherever it stands in the
// file; in a block that has a title the words that were meant for it go there.
func (d *decoder) noName(blk *syntax.Block, b *schema.Block, h *Head) finding.Finding {
	f := finding.Finding{Rule: ruleValue, At: h.Name.At,
		Text:  quote(h.Name.V) + " cannot be a name: a name is made of letters, digits, hyphens and underscores, at most 60 of them",
		Write: "a name of these"}
	name := asName(h.Name.V)
	if name == "" {
		return f
	}
	f.Write = quote(name)
	old, taken := strconv.Quote(h.Name.V), bytes.Contains(d.source, []byte(strconv.Quote(name)))
	if edits := finding.Instead(h.Name.At, h.Name.V, name); edits != nil && !taken {
		for from := range indexes(d.source, old) {
			at := source.Place{File: h.Name.At.File, Start: int32(from + 1), End: int32(from + len(old) - 1)}
			if at.Start != edits[0].At.Start && !d.saysWords(at) {
				f.Edits = append(f.Edits, finding.Edit{At: at, Text: name})
			}
		}
		f.Edits = append(edits, f.Edits...)
	}
	if b.Attr("title") != nil && blk.Attr("title") == nil {
		f.Write += " as its name, and " + quote(h.Name.V) + " as its title"
		if f.Edits != nil {
			f.Edits = append(f.Edits, finding.Inside(d.source, h.At, h.Whole, "title = "+old)...)
		}
	}
	return f
}

// asName makes a name of words, or returns "".
func asName(words string) string {
	kept := strings.FieldsFunc(strings.Map(func(r rune) rune {
		switch {
		case inName(r) && r != '-':
			return r
		case r == '\'' || r == '’':
			return -1
		}
		return '-'
	}, strings.ToLower(words)), func(r rune) bool { return r == '-' })
	if name := strings.Join(kept, "-"); validName(name) {
		return name
	}
	return ""
}

// indexes are where a text holds another.
func indexes(text []byte, part string) iter.Seq[int] {
	return func(use func(int) bool) {
		for from := 0; ; {
			i := bytes.Index(text[from:], []byte(part))
			if i < 0 || !use(from+i) {
				return
			}
			from += i + len(part)
		}
	}
}

// saysWords reports whether a place is on a line that holds words for people, or behind a
// remark.
func (d *decoder) saysWords(at source.Place) bool {
	start := bytes.LastIndexByte(d.source[:at.Start], '\n') + 1
	line := bytes.TrimSpace(d.source[start:at.Start])
	word, _, _ := bytes.Cut(line, []byte{' '})
	return bytes.ContainsRune(line, '#') || slices.Contains([]string{"title", "note", "because", "task"}, string(word))
}

// validName reports whether a label can be written without quotes in a log line.
func validName(s string) bool {
	if s == "" || len(s) > 60 {
		return false
	}
	for _, r := range s {
		if !inName(r) {
			return false
		}
	}
	return true
}

// inName reports whether a name may hold a character.
func inName(r rune) bool {
	return r == '-' || r == '_' || unicode.IsDigit(r) || unicode.IsLetter(r) || unicode.IsMark(r)
}

// hasBlock reports whether a block has one of a type and with labels already.
func hasBlock(in *syntax.Block, kind string, labels []syntax.Label) bool {
	return slices.ContainsFunc(in.Blocks, func(b *syntax.Block) bool {
		return b.Type == kind && slices.EqualFunc(b.Labels, labels, func(x, y syntax.Label) bool { return x.Text == y.Text })
	})
}

// unknown finds a word that is not known there. fits says whether another could stand
// in its place: the nearest may be there already.
func (d *decoder) unknown(at source.Place, what, name, where string, known []string, fits func(string) bool) {
	f := finding.Finding{Rule: ruleUnknownWord, At: at,
		Text: "there is no " + what + " " + quote(name) + " in " + where}
	s, kind := slip.Of(name, known), schema.KindCalled(name)
	in := homes(what, name)
	switch {
	case s != "":
		f.Write = s
		f.Text += ": did you mean " + s + "?"
		if fits(s) {
			f.Edits = finding.Instead(f.At, name, s)
		}
	case meant[name] != "" && slices.Contains(known, meant[name]):
		f.Write = meant[name] + ", if that is what is meant; else one of: " + strings.Join(known, ", ")
	case what == "block" && kind != nil && slices.Contains(known, "care"):
		f.Write = "care, with the name " + quote(kind.Name) + ", if it is to be done; else one of: " + strings.Join(known, ", ")
	case len(in) > 0 && len(in) <= maxHomes:
		f.Text += ": it belongs " + wording.Or(in)
		f.Write = "the same there, and not here"
	default:
		f.Write = "one of: " + strings.Join(known, ", ")
	}
	d.found.Add(f)
}

// meant are words of keepers for which the language has others.
var meant = map[string]string{
	"holiday": "away", "holidays": "away", "vacation": "away", "absence": "away", "trip": "away",
	"tank": "enclosure", "vivarium": "enclosure", "terrarium": "enclosure", "cage": "enclosure", "tub": "enclosure", "box": "enclosure",
	"person": "keeper", "carer": "keeper", "vet": "contact", "animal": "animals", "task": "care", "food": "feeding", "feed": "feeding", "meal": "feeding",
	"rest": "season", "winter": "season", "brumation": "season", "hibernation": "season",
	"amount": "per_animal", "quantity": "per_animal", "number_of_prey": "per_animal", "how_many": "per_animal", "feeder": "prey", "food_item": "prey",
	"frequency": "every", "interval": "every", "schedule": "every", "days": "on", "time": "at", "start": "from", "end": "to", "sex": "count", "males": "count", "females": "count",
	"size": "inside", "dimensions": "inside", "age": "stage", "heat": "climate", "wattage": "power", "watts": "power", "position": "place", "location": "room",
}

// maxHomes is of how many blocks it is said that a word belongs there.
const maxHomes = 3

// homes say in which blocks a word may stand.
func homes(what, name string) (in []string) {
	seen := map[*schema.Block]bool{}
	var look func(b *schema.Block)
	look = func(b *schema.Block) {
		if seen[b] {
			return
		}
		seen[b] = true
		if what == "block" && b.Block(name) != nil || what == "attribute" && b.Attr(name) != nil {
			if b == schema.Plan {
				in = append(in, "outside of all blocks")
			} else {
				in = append(in, "in "+b.Name)
			}
		}
		for _, c := range b.Blocks {
			look(c)
		}
	}
	look(schema.Plan)
	slices.Sort(in)
	return slices.Compact(in)
}

// headPlace is the first line of a block, without its brace.
func headPlace(blk *syntax.Block) source.Place {
	at := blk.TypeAt
	if n := len(blk.Labels); n > 0 {
		at.End = blk.Labels[n-1].At.End
	}
	return at
}

func blockNames(b *schema.Block) []string {
	var n []string
	for _, c := range b.Blocks {
		n = append(n, c.Name)
	}
	return n
}

func ownNames(b *schema.Block) []string {
	var n []string
	for _, a := range b.Attrs {
		n = append(n, a.Name)
	}
	if b.Short != nil {
		for _, f := range b.Short() {
			n = append(n, strings.ReplaceAll(f.Name, "-", "_"))
		}
	}
	for _, c := range b.Flat {
		for _, a := range c.Attrs {
			if b.Flattened(a.Name) == c {
				n = append(n, a.Name)
			}
		}
	}
	return append(n, blockNames(b)...)
}

// opening says in words what a block begins with.
func opening(b *schema.Block) string {
	switch b.Label {
	case "":
		return "the word " + b.Name
	case "name":
		return "the word " + b.Name + " and its name in quotes"
	}
	return "the word " + b.Name + " and the " + b.Label + ", in quotes"
}

func named(h *Head) string {
	if h.Name.V == "" {
		return ""
	}
	return " " + quote(h.Name.V)
}

func quote(s string) string {
	if r := []rune(s); len(r) > 60 {
		s = string(r[:57]) + "…"
	}
	return "\"" + s + "\""
}

func lower(s string) string {
	if s == "" {
		return s
	}
	return strings.ToLower(s[:1]) + strings.TrimSuffix(s[1:], ".")
}
