package plan

import (
	"cmp"
	"reflect"
	"slices"
	"strconv"

	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/plan/syntax"
	"vivary/schema"
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
	torn   bool // something is wrong with the text itself, of which what is found may be about all of it
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
	for _, f := range out.found {
		d.found.Soft(f, f.Severity)
	}
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
	out.unread, out.torn = f.Broken, len(f.Broken)+len(f.Mistakes)+len(f.Loose) > 0
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
	rotas      []*Rota
	dates      []*Dates
	aways      []*Away
	gone       []*Gone
	calendars  []*Calendar
	deadlines  []*Deadline
	sellers    []*Seller
	supplies   []*Supply
	tubs       []*Tub
	cultures   []*Culture
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
		case *Rota:
			b.rotas = append(b.rotas, x)
		case *Dates:
			b.dates = append(b.dates, x)
		case *Away:
			b.aways = append(b.aways, x)
		case *Gone:
			b.gone = append(b.gone, x)
		case *Calendar:
			b.calendars = append(b.calendars, x)
		case *Deadline:
			b.deadlines = append(b.deadlines, x)
		case *Seller:
			b.sellers = append(b.sellers, x)
		case *Supply:
			b.supplies = append(b.supplies, x)
		case *Tub:
			b.tubs = append(b.tubs, x)
		case *Culture:
			b.cultures = append(b.cultures, x)
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
