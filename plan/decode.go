package plan

import (
	"reflect"
	"sort"
	"strings"
	"unicode"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"

	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/schema"
)

// decoder turns the syntax tree of one file into blocks. It belongs to one
// goroutine; what it found is collected afterwards.
type decoder struct {
	file  source.ID
	found finding.List
	// partial says that required attributes may be missing, since they can come
	// from elsewhere: from a template, or from a built-in sheet.
	partial bool
}

func (d *decoder) place(r hcl.Range) source.Place {
	return source.Place{File: d.file, Start: int32(r.Start.Byte), End: int32(r.End.Byte)}
}

// decodeFile reads all blocks of a plan file.
func decodeFile(id source.ID, text []byte) (*fileBlocks, []finding.Finding) {
	d := &decoder{file: id}
	f, diags := hclsyntax.ParseConfig(text, "", hcl.InitialPos)
	var body *hclsyntax.Body
	if f != nil {
		body, _ = f.Body.(*hclsyntax.Body)
	}
	for _, diag := range diags {
		d.syntax(diag, body)
	}
	out := &fileBlocks{}
	if body == nil {
		return out, d.found.All
	}
	for _, a := range sortedAttrs(body) {
		d.found.Add(finding.Finding{Rule: ruleUnknownWord, At: d.place(a.NameRange),
			Text:  quote(a.Name) + " stands outside every block",
			Write: "put it into the block that it belongs to, for example collection"})
	}
	for _, blk := range body.Blocks {
		t, ok := topTypes[blk.Type]
		if !ok {
			d.unknown(blk.TypeRange, "block", blk.Type, "a plan file", blockNames(schema.Plan))
			continue
		}
		d.partial = blk.Type == "template" || blk.Type == "enclosure"
		v := reflect.New(t)
		d.block(blk, bindings[t], v.Elem())
		out.add(v.Interface())
	}
	return out, d.found.All
}

var topTypes = map[string]reflect.Type{
	"collection": reflect.TypeOf(About{}), "room": reflect.TypeOf(Room{}), "keeper": reflect.TypeOf(Keeper{}),
	"round": reflect.TypeOf(Round{}), "away": reflect.TypeOf(Away{}), "calendar": reflect.TypeOf(Calendar{}),
	"enclosure": reflect.TypeOf(Enclosure{}), "template": reflect.TypeOf(Template{}),
	"species": reflect.TypeOf(SpeciesSheet{}), "feeder": reflect.TypeOf(FeederSheet{}), "source": reflect.TypeOf(Source{}),
}

// fileBlocks are the blocks of one file, in the order of their lines.
type fileBlocks struct {
	abouts     []*About
	rooms      []*Room
	keepers    []*Keeper
	rounds     []*Round
	aways      []*Away
	calendars  []*Calendar
	enclosures []*Enclosure
	templates  []*Template
	species    []*SpeciesSheet
	feeders    []*FeederSheet
	sources    []*Source
}

func (f *fileBlocks) add(block any) {
	switch b := block.(type) {
	case *About:
		f.abouts = append(f.abouts, b)
	case *Room:
		f.rooms = append(f.rooms, b)
	case *Keeper:
		f.keepers = append(f.keepers, b)
	case *Round:
		f.rounds = append(f.rounds, b)
	case *Away:
		f.aways = append(f.aways, b)
	case *Calendar:
		f.calendars = append(f.calendars, b)
	case *Enclosure:
		f.enclosures = append(f.enclosures, b)
	case *Template:
		f.templates = append(f.templates, b)
	case *SpeciesSheet:
		f.species = append(f.species, b)
	case *FeederSheet:
		f.feeders = append(f.feeders, b)
	case *Source:
		f.sources = append(f.sources, b)
	}
}

// append adds the blocks of another file.
func (f *fileBlocks) append(o *fileBlocks) {
	f.abouts = append(f.abouts, o.abouts...)
	f.rooms = append(f.rooms, o.rooms...)
	f.keepers = append(f.keepers, o.keepers...)
	f.rounds = append(f.rounds, o.rounds...)
	f.aways = append(f.aways, o.aways...)
	f.calendars = append(f.calendars, o.calendars...)
	f.enclosures = append(f.enclosures, o.enclosures...)
	f.templates = append(f.templates, o.templates...)
	f.species = append(f.species, o.species...)
	f.feeders = append(f.feeders, o.feeders...)
	f.sources = append(f.sources, o.sources...)
}

func (d *decoder) block(blk *hclsyntax.Block, b *binding, v reflect.Value) {
	h := headOf(v.Addr())
	h.At = d.place(hcl.RangeBetween(blk.TypeRange, headEnd(blk)))
	h.Whole = d.place(hcl.RangeBetween(blk.TypeRange, blk.CloseBraceRange))
	d.label(blk, b.block, h)

	for name, a := range blk.Body.Attributes { // findings are sorted by place in the end
		ab := b.attrs[name]
		if ab == nil {
			if b.block.Block(name) != nil {
				d.found.Add(finding.Finding{Rule: ruleValue, At: d.place(a.NameRange),
					Text:  quote(name) + " is a block, not a value",
					Write: firstLine(b.block.Block(name).Example) + " … }"})
				continue
			}
			d.unknown(a.NameRange, "attribute", name, "block "+b.block.Name, ownNames(b.block))
			continue
		}
		d.value(a, ab.attr, v.FieldByIndex(ab.field))
	}
	for _, in := range blk.Body.Blocks {
		ib := b.inner[in.Type]
		if ib == nil {
			if a := b.block.Attr(in.Type); a != nil {
				d.found.Add(finding.Finding{Rule: ruleValue, At: d.place(in.TypeRange),
					Text:  quote(in.Type) + " is a value, not a block",
					Write: a.Name + " = " + a.Example})
				continue
			}
			d.unknown(in.TypeRange, "block", in.Type, "block "+b.block.Name, ownNames(b.block))
			continue
		}
		item := reflect.New(ib.elem)
		d.block(in, ib.binding, item.Elem())
		d.put(ib, v.FieldByIndex(ib.field), item)
	}
	if d.partial && (b.block == schema.Enclosure || b.block == schema.Template || b.block == schema.Housing || b.block == schema.Animals || b.block == schema.Heater) {
		return // looked at once the template is merged in
	}
	d.required(b, v, h)
}

// required finds attributes that must be written and are not.
func (d *decoder) required(b *binding, v reflect.Value, h *Head) {
	for _, a := range b.order {
		if a.attr.Required && !tried(v.FieldByIndex(a.field)) {
			d.found.Add(missing(b.block, a.attr, h))
		}
	}
}

func missing(block *schema.Block, a *schema.Attr, h *Head) finding.Finding {
	return finding.Finding{Rule: ruleMissing, At: h.At,
		Text:  block.Name + named(h) + " has no " + a.Name + ": " + lower(a.Doc),
		Write: a.Name + " = " + a.Example}
}

func (d *decoder) put(ib *blockBinding, to, item reflect.Value) {
	h := headOf(item)
	if !ib.list {
		if !to.IsNil() {
			d.twice(ib.binding.block.Name, h, headOf(to))
			return
		}
		to.Set(item)
		return
	}
	if ib.binding.block.Once {
		for i := 0; i < to.Len(); i++ {
			if o := headOf(to.Index(i)); o.Name.V == h.Name.V {
				d.twice(ib.binding.block.Name+" "+quote(h.Name.V), h, o)
				return
			}
		}
	}
	to.Set(reflect.Append(to, item))
}

func (d *decoder) twice(what string, again, first *Head) {
	d.found.Add(duplicate(what, again, first))
}

func duplicate(what string, again, first *Head) finding.Finding {
	return finding.Finding{Rule: ruleTwice, At: again.At,
		Text:  what + " is there twice",
		Write: "give one of them another name, or take it out",
		Also:  []finding.Related{{At: first.At, Text: "the first"}}}
}

func (d *decoder) label(blk *hclsyntax.Block, b *schema.Block, h *Head) {
	want := 0
	if b.Label != "" {
		want = 1
	}
	if len(blk.Labels) > want {
		at := blk.LabelRanges[want]
		text := "block " + b.Name + " takes one name only"
		if want == 0 {
			text = "block " + b.Name + " takes no name"
		}
		d.found.Add(finding.Finding{Rule: ruleValue, At: d.place(at), Text: text, Write: firstLine(b.Example)})
	}
	if want == 0 {
		return
	}
	if len(blk.Labels) == 0 {
		if !b.Optional {
			d.found.Add(finding.Finding{Rule: ruleMissing, At: h.At,
				Text: "block " + b.Name + " has no " + b.Label + " after it", Write: firstLine(b.Example)})
		}
		return
	}
	h.Name = wrote(blk.Labels[0], d.place(blk.LabelRanges[0]))
	if b == schema.Accept || b == schema.FigureBlock || b == schema.Season || b == schema.FeederSize {
		return // these are words of the language, or free text
	}
	if !validName(h.Name.V) {
		d.found.Add(finding.Finding{Rule: ruleValue, At: h.Name.At,
			Text:  quote(h.Name.V) + " cannot be a name: a name is made of letters, digits, hyphens and underscores, at most 60 of them",
			Write: quote(slug(h.Name.V)) + ", with title = " + quote(h.Name.V)})
	}
}

// validName reports whether a label can be written without quotes in a log line.
func validName(s string) bool {
	if s == "" || len(s) > 60 {
		return false
	}
	for _, r := range s {
		if !(r == '-' || r == '_' || unicode.IsDigit(r) || unicode.IsLetter(r) || unicode.IsMark(r)) {
			return false
		}
	}
	return true
}

func (d *decoder) unknown(at hcl.Range, what, name, where string, known []string) {
	f := finding.Finding{Rule: ruleUnknownWord, At: d.place(at),
		Text: "there is no " + what + " " + quote(name) + " in " + where}
	if s := finding.Suggest(name, known); s != "" {
		f.Write = s
		f.Text += ": did you mean " + s + "?"
	} else {
		f.Write = "one of: " + strings.Join(known, ", ")
	}
	d.found.Add(f)
}

func headEnd(blk *hclsyntax.Block) hcl.Range {
	if n := len(blk.LabelRanges); n > 0 {
		return blk.LabelRanges[n-1]
	}
	return blk.TypeRange
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
	return append(n, blockNames(b)...)
}

// attrNames returns the names of a body's attributes in the order of their lines.
func attrNames(body *hclsyntax.Body) []string {
	names := make([]string, 0, len(body.Attributes))
	for n := range body.Attributes {
		names = append(names, n)
	}
	sort.Slice(names, func(i, j int) bool {
		return body.Attributes[names[i]].NameRange.Start.Byte < body.Attributes[names[j]].NameRange.Start.Byte
	})
	return names
}

func sortedAttrs(body *hclsyntax.Body) []*hclsyntax.Attribute {
	var out []*hclsyntax.Attribute
	for _, n := range attrNames(body) {
		out = append(out, body.Attributes[n])
	}
	return out
}

func firstLine(s string) string {
	line, _, _ := strings.Cut(s, "\n")
	return line
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
