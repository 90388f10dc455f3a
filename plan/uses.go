package plan

import (
	"bytes"
	"reflect"
	"slices"

	"vivary/plan/source"
	"vivary/schema"
)

// Use is one place at which a name stands.
type Use struct {
	Kind string // of what is named: a type of block, schema.NamesKind or schema.NamesRule
	Name string
	At   source.Place // the name itself, without quotes
	// Defined is where what is named has its name: At itself, where the name is given.
	// It is nowhere for words of the program, and for a name that nothing has; for one of
	// several enclosures with numbers it is the name of their block.
	Defined source.Place
}

// Defines reports whether the name is given here.
func (u Use) Defines() bool { return u.At == u.Defined }

// Uses returns every place at which a name stands in plans and logs, in the order of
// files and lines, also in lines of a log that say nothing new. A name stands there
// more than once where it names several: what a template says of animals is of
// those of each enclosure that uses it, and a block in an enclosure goes with the
// one of its name in the template.
func (c *Collection) Uses() []Use {
	t := &definitions{c: c, given: map[given]source.Place{}, users: map[string][]string{}, several: map[string]*Enclosure{}}
	for _, f := range c.files {
		for _, m := range f.mentions() {
			if _, again := t.given[m.given]; m.gives && !again {
				t.given[m.given] = m.at
			}
		}
	}
	seen := map[within]bool{}
	for _, e := range c.Enclosures {
		if e.Of != "" && t.several[e.Of] == nil {
			t.several[e.Of] = e
		}
		if by := t.block(e.Name.V); !seen[within{e.Template.V, by}] {
			seen[within{e.Template.V, by}] = true
			t.users[e.Template.V] = append(t.users[e.Template.V], by)
		}
	}
	var all []Use
	for _, f := range c.files {
		for _, m := range f.mentions() {
			all = append(all, t.uses(m)...)
		}
	}
	return all
}

// definitions says where names are given.
type definitions struct {
	c       *Collection
	given   map[given]source.Place
	users   map[string][]string   // the enclosures of each template
	several map[string]*Enclosure // one of those of each block with numbers
}

// block returns the name of the block that writes an enclosure: its own, or that of a block
// with numbers.
func (t *definitions) block(enclosure string) string {
	if e := t.c.enclosures[enclosure]; e != nil && e.Of != "" {
		return e.Of
	}
	return enclosure
}

// enclosure returns the enclosure of a block, or one of those that it writes, or nil.
func (t *definitions) enclosure(block string) *Enclosure {
	if e := t.c.enclosures[block]; e != nil {
		return e
	}
	return t.several[block]
}

func (t *definitions) uses(m mention) []Use {
	if m.kind == schema.Enclosure.Name && t.c.enclosures[m.name] == nil && t.c.racks[m.name] != nil {
		m.kind = schema.Rack.Name // in a line of a log
	}
	kind, defined := m.kind, t.defined(m.given)
	if len(defined) == 0 && m.kind == schema.Care.Name && schema.FindKind(m.name) != nil {
		kind = schema.NamesKind
	} else if len(defined) == 0 && m.maybe {
		return nil
	}
	if len(defined) == 0 {
		defined = []source.Place{{}}
	}
	out := make([]Use, len(defined))
	for i, d := range defined {
		out[i] = Use{Kind: kind, Name: m.name, At: m.at, Defined: d}
	}
	return out
}

// defined returns where a name is given. What the files give goes before what comes
// with the program.
func (t *definitions) defined(g given) (all []source.Place) {
	at := func(in within) {
		if p, ok := t.given[given{g.kind, g.name, in}]; ok {
			all = append(all, p)
		}
	}
	if g.kind == schema.Enclosure.Name {
		g.name = t.block(g.name)
	}
	if g.in.kind == schema.Enclosure.Name {
		g.in.name = t.block(g.in.name)
	}
	at(g.in)
	switch g.in.kind {
	case schema.Enclosure.Name:
		if e := t.enclosure(g.in.name); e != nil && e.Template.Set() {
			at(within{schema.Template.Name, e.Template.V})
		}
	case schema.Template.Name:
		if len(all) == 0 {
			for _, user := range t.users[g.in.name] {
				at(within{schema.Enclosure.Name, user})
			}
		}
	}
	if len(all) == 0 {
		if p := t.builtIn(g); p.Written() {
			all = append(all, bare(t.c.Files.Text(p.File), p))
		}
	}
	return all
}

// builtIn returns where a name is given by a sheet that the files do not hold.
func (t *definitions) builtIn(g given) (p source.Place) {
	lib := t.c.Library
	switch g.kind {
	case schema.Species.Name:
		s := lib.Species(g.name)
		if s == nil {
			s = lib.ByOtherName(g.name).One()
		}
		if s != nil {
			p = s.Name.At
		}
	case schema.Feeder.Name:
		if f := lib.Feeder(g.name); f != nil {
			p = f.Name.At
		}
	case schema.FeederSize.Name:
		if f := lib.Feeder(g.in.name); f != nil && f.Size(g.name) != nil {
			p = f.Size(g.name).Name.At
		}
	case schema.Source.Name:
		if s := lib.Source(g.name); s != nil {
			p = s.Name.At
		}
	case schema.Care.Name:
		if e := t.enclosure(g.in.name); e != nil && e.Sheet != nil {
			if i := slices.IndexFunc(e.Sheet.Care, func(c *Care) bool { return c.Name.V == g.name }); i >= 0 {
				p = e.Sheet.Care[i].Name.At
			}
		}
	}
	return p
}

// mention is a name that stands in a file, before it is known where it is given.
type mention struct {
	given
	at    source.Place
	gives bool // whether the name is given here
	maybe bool // whether it can as well be something else than a name
}

// given is what a name names.
type given struct {
	kind, name string
	in         within // the outermost block in which the name holds; none where it holds everywhere
}

type within struct{ kind, name string }

// everyName returns the names that stand in a file.
func (f *file) everyName() []mention {
	m := &mentions{text: f.text}
	for _, x := range f.blocks {
		v := reflect.ValueOf(x).Elem()
		b := bindings[v.Type()]
		m.label(b, v, within{})
		m.inner(b, v, within{b.block.Name, headOf(v.Addr()).Name.V})
	}
	for i := range f.events {
		m.line(&f.events[i])
	}
	slices.SortStableFunc(m.all, func(a, b mention) int { return int(a.at.Start - b.at.Start) })
	return m.all
}

type mentions struct {
	text []byte
	all  []mention
}

func (m *mentions) add(kind string, w Written[string], in within, maybe bool) {
	if w.Set() && w.V != "" {
		m.all = append(m.all, mention{given: given{kind, w.V, in}, at: bare(m.text, w.At), maybe: maybe})
	}
}

// label takes in the label of a block, where something can name it or it names
// something.
func (m *mentions) label(b *binding, v reflect.Value, in within) {
	switch name := headOf(v.Addr()).Name; {
	case b.block.Names != "" && outer[b.block.Names]:
		m.add(b.block.Names, name, within{}, false)
	case b.block.Names != "" && in.kind != schema.Species.Name: // a sheet has no animals
		m.add(b.block.Names, name, in, false)
	case gives(b.block):
		if name.Set() && name.V != "" {
			m.all = append(m.all, mention{given: given{b.block.Name, name.V, in}, at: bare(m.text, name.At), gives: true})
		}
	}
}

// inner takes in what stands in a block.
func (m *mentions) inner(b *binding, v reflect.Value, in within) {
	for _, a := range b.order {
		m.attr(a.attr, v.FieldByIndex(a.field))
	}
	for _, ib := range b.inner {
		for _, x := range each(v.FieldByIndex(ib.field)) {
			m.label(ib.binding, x, in)
			m.inner(ib.binding, x, in)
		}
	}
}

// each returns the blocks in a field: those of a list, or the one that it points at.
func each(field reflect.Value) (all []reflect.Value) {
	if field.Kind() != reflect.Slice {
		if !field.IsNil() {
			all = append(all, field.Elem())
		}
		return all
	}
	for i := range field.Len() {
		all = append(all, field.Index(i).Elem())
	}
	return all
}

func (m *mentions) attr(a *schema.Attr, v reflect.Value) {
	maybe := a.Kind == schema.Texts && outer[a.Ref]
	switch x := v.Addr().Interface().(type) {
	case *Written[string]:
		if a.Ref != "" {
			m.add(a.Ref, *x, within{}, maybe)
		}
	case *[]Written[string]:
		for _, w := range *x {
			if a.Ref != "" {
				m.add(a.Ref, w, within{}, maybe)
			}
		}
	case *[]Written[Day]:
		for _, w := range *x {
			if w.V.Kind == NamedDays {
				m.add(a.Ref, wrote(w.V.Name, w.At), within{}, false)
			}
		}
	case *Written[Prey]:
		m.prey(*x)
	case *[]Written[Prey]:
		for _, w := range *x {
			m.prey(w)
		}
	}
}

// prey takes in the feeder and its size, which stand in one text.
func (m *mentions) prey(w Written[Prey]) {
	if !w.Set() {
		return
	}
	at := bare(m.text, w.At)
	word := func(s string) Written[string] {
		i := bytes.Index(m.text[at.Start:at.End], []byte(s))
		if i < 0 {
			return wrote(s, at) // written with escapes
		}
		p := source.Place{File: at.File, Start: at.Start + int32(i), End: at.Start + int32(i+len(s))}
		at.Start = p.End
		return wrote(s, p)
	}
	m.add(schema.Feeder.Name, word(w.V.Feeder), within{}, false)
	m.add(schema.FeederSize.Name, word(w.V.Size), within{schema.Feeder.Name, w.V.Feeder}, false)
}

// line takes in the names in a line of a log.
func (m *mentions) line(e *Event) {
	at := within{schema.Enclosure.Name, e.Enclosure.V}
	m.add(schema.Enclosure.Name, e.Enclosure, within{}, false)
	m.add(schema.Animals.Name, e.Group, at, false)
	if !e.Group.Set() {
		m.add(schema.Animals.Name, e.either, at, true)
	}
	m.add(schema.Keeper.Name, e.By, within{}, false)
	m.add(schema.Keeper.Name, e.Keeper, within{}, false)
	if len(e.Args) == 0 {
		return
	}
	first, rest := e.Args[0], e.Args[1:]
	second := func(kind, in string) {
		if len(rest) > 0 {
			m.add(kind, rest[0], within{in, first.V}, true)
		}
	}
	switch e.Word.After {
	case schema.AfterEnclosure:
		m.add(schema.Enclosure.Name, first, within{}, false)
		second(schema.Animals.Name, schema.Enclosure.Name)
	case schema.AfterPrey:
		m.add(schema.Feeder.Name, first, within{}, true)
		second(schema.FeederSize.Name, schema.Feeder.Name)
	case schema.AfterCare:
		m.add(schema.Care.Name, first, at, true)
	}
}

// bare returns the place of a text without the quotes around it.
func bare(text []byte, p source.Place) source.Place {
	if s := text[p.Start:p.End]; len(s) >= 2 && s[0] == '"' && s[len(s)-1] == '"' {
		p.Start, p.End = p.Start+1, p.End-1
	}
	return p
}

// outer are the types of blocks that stand outside every other, whose names hold
// everywhere.
var outer = func() map[string]bool {
	all := map[string]bool{}
	for _, b := range schema.Plan.Blocks {
		all[b.Name] = true
	}
	return all
}()

// gives reports whether the label of a block is a name that others can use: those
// of the other blocks in a block are words of the program, or speak to people only.
func gives(b *schema.Block) bool {
	return b.Names == "" && (outer[b.Name] || b == schema.Animals || b == schema.Care || b == schema.FeederSize)
}
