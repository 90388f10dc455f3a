package plan

import (
	"errors"
	"math"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"sync"
	"unicode"

	"vivary/schema"
	"vivary/schema/quantity"
)

// TypeSheet is a care type: what is common practice for all species that live alike.
type TypeSheet struct {
	Head
	Cited
	Title   Written[string]         `care:"title"`
	Genera  []Written[string]       `care:"genera"`
	In      Written[string]         `care:"of"`
	Grown   Written[quantity.Range] `care:"grown"`
	Venom   Written[bool]           `care:"venomous"`
	Note    Written[string]         `care:"note"`
	Stages  []*Stage                `care:"stage"`
	Figures []*Figure               `care:"figure"`
	States  []*State                `care:"state"`
	Needs   []*Need                 `care:"need"`
	Care    []*Care                 `care:"care"`
	Feeding []*Feeding              `care:"feeding"`
	Excepts []*Except               `care:"except"`

	as *SpeciesSheet // as a sheet that others are laid over, marked as common practice
}

// Except is what differs for a genus of a type.
type Except struct {
	Head
	Cited
	Because Written[string] `care:"because"`
	Figures []*Figure       `care:"figure"`
	Needs   []*Need         `care:"need"`

	as *SpeciesSheet
}

// careType settles a type, and makes of it and of its exceptions sheets that others are
// laid over.
func (d *decoder) careType(t *TypeSheet) {
	s := &SpeciesSheet{Head: t.Head, Cited: t.Cited, Stages: t.Stages, Figures: t.Figures, States: t.States, Needs: t.Needs, Care: t.Care, Feeding: t.Feeding}
	d.species(s)
	t.as = s.practised(t.Name.V, t.Title.V)
	for _, x := range t.Excepts {
		x.or(&t.Cited)
		s := &SpeciesSheet{Head: x.Head, Cited: x.Cited, Figures: x.Figures, Needs: x.Needs}
		d.species(s)
		x.as = s.practised(t.Name.V, t.Title.V+" of the genus "+x.Name.V)
	}
}

// practised marks all that a sheet states as common practice of a type.
func (s *SpeciesSheet) practised(name, title string) *SpeciesSheet {
	for _, f := range s.Figures {
		f.Of, f.OfType, f.Own = name, title, false
	}
	for _, n := range s.Needs {
		n.Of, n.OfType, n.Own = name, title, false
	}
	return s
}

// Empty reports whether the block states nothing: a species of that genus must.
func (x *Except) Empty() bool { return len(x.Figures) == 0 && len(x.Needs) == 0 }

// Exception returns the except block that a type has for a genus, or nil.
func (t *TypeSheet) Exception(genus string) *Except {
	for _, x := range t.Excepts {
		if strings.EqualFold(x.Name.V, genus) {
			return x
		}
	}
	return nil
}

// Genus returns the genus of the scientific name: "" where its first word is none, such as
// an abbreviation or a common name.
func (s *SpeciesSheet) Genus() string {
	genus, _, _ := strings.Cut(s.Latin.V, " ")
	if len(genus) < 3 || strings.ToUpper(genus[:1])+strings.ToLower(genus[1:]) != genus || strings.ContainsFunc(genus, func(r rune) bool { return !unicode.IsLetter(r) }) {
		return ""
	}
	return genus
}

// Binomial returns the first two words of the scientific name as the name of a sheet.
func (s *SpeciesSheet) Binomial() string {
	words := strings.Fields(s.Latin.V)
	return slug(strings.Join(words[:min(2, len(words))], " "))
}

// Type returns the sheet of a care type, or nil: the collection's own, else the built-in
// one.
func (l *Library) Type(name string) *TypeSheet {
	if t := l.own.types[name]; t != nil {
		return t
	}
	return l.built.typeSheet(name)
}

// TypeNames returns the names of all care types, built-in and own, sorted.
func (l *Library) TypeNames() []string { return names(l.built.types, l.own.types) }

// TypesOf returns the names of the care types that have a genus, whatever its capitals.
func (l *Library) TypesOf(genus string) []string {
	return slices.DeleteFunc(l.TypeNames(), func(n string) bool {
		return !slices.ContainsFunc(l.Type(n).Genera, func(g Written[string]) bool { return strings.EqualFold(g.V, genus) })
	})
}

// Genera returns the genera that the care types name, each once.
func (l *Library) Genera() (all []string) {
	for _, n := range l.TypeNames() {
		for _, g := range l.Type(n).Genera {
			all = append(all, g.V)
		}
	}
	slices.Sort(all)
	return slices.Compact(all)
}

// Wider returns a care type and those that it stands on, itself first.
func (l *Library) Wider(name string) (all []*TypeSheet) {
	for seen := map[string]bool{}; name != "" && !seen[name]; {
		seen[name] = true
		t := l.Type(name)
		if t == nil {
			break
		}
		all = append(all, t)
		name = t.In.V
	}
	return all
}

// typed returns the layers of a care type for a genus: its exception, the type, and the
// wider ones.
func (l *Library) typed(name, genus string) (from []layer) {
	for _, t := range l.Wider(name) {
		if x := t.Exception(genus); x != nil {
			from = append(from, layer{x.as, false})
		}
		from = append(from, layer{t.as, false})
	}
	return from
}

// Common returns what the care type of a sheet states for an animal of its size, without
// what the sheet states itself; nil where it has no type.
func (l *Library) Common(s *SpeciesSheet) *SpeciesSheet {
	typed := l.typed(s.Type.V, s.Genus())
	if typed == nil {
		return nil
	}
	sized := &SpeciesSheet{Head: s.Head, Latin: s.Latin}
	for _, f := range s.Figures {
		if f.What == schema.FigureLength || f.What == schema.FigureSpan {
			sized.Figures = append(sized.Figures, f)
		}
	}
	return joined(append([]layer{{sized, false}}, typed...))
}

// times is a multiple of the animal, such as 3 x 2 length or 0.5 to 0.6 span.
type times struct {
	low, high float64 // of a length
	wide      float64 // of an area, the other factor; else 0
	span      bool    // of the leg span, not of the length
}

func (m times) set() bool { return m.high > 0 }

var timesForm = sync.OnceValue(func() *regexp.Regexp {
	return regexp.MustCompile(`^([\d.]+)(?: (x|to) ([\d.]+))? (length|span)$`)
})

// timesOf reads a multiple; the zero value where a text is none.
func timesOf(text string, what *schema.Figure) (m times, err error) {
	part := timesForm().FindStringSubmatch(text)
	if part == nil {
		return m, nil
	}
	area := part[2] == "x"
	if what.Kind != schema.Range || area && what.Dimension != quantity.Area || !area && what.Dimension != quantity.Length {
		return m, errors.New("not a multiple that it can have: an area is a x b length, a length is a length")
	}
	if m.low, err = strconv.ParseFloat(part[1], 64); err != nil {
		return times{}, err
	}
	m.high = m.low
	if part[3] != "" {
		other, err := strconv.ParseFloat(part[3], 64)
		if err != nil {
			return times{}, err
		}
		if area {
			m.wide = other
		} else {
			m.high = other
		}
	}
	m.span = part[4] == "span"
	return m, nil
}

// measured is how large the animals of a stage are, in mm; zero where that is not known.
type measured struct{ length, span quantity.Range }

func (s *SpeciesSheet) measure(stage string) (m measured) {
	if f := s.Figure(schema.FigureLength, stage); f != nil && !f.times[0].set() {
		m.length = f.Range
	}
	switch f := s.Figure(schema.FigureSpan, stage); {
	case f == nil:
	case !f.times[0].set():
		m.span = f.Range
	case !f.times[0].span: // a share of the length, where no span is stated
		m.span = f.times[0].both(m.length)
	}
	return m
}

// both returns a multiple of the smallest and of the largest of some animals.
func (m times) both(size quantity.Range) quantity.Range {
	return quantity.Range{Low: m.low * size.Low, High: m.high * size.High, Unit: size.Unit}
}

// of returns a multiple of an animal; false where its size is not known. Strict takes the
// end of the range of sizes that asks for more, and is for what suits every member; the
// other end is for what is wrong for every one.
func (m times) of(a measured, most, strict bool, unit quantity.Unit) (quantity.Range, bool) {
	size := a.length
	if m.span {
		size = a.span
	}
	if size.High == 0 {
		return quantity.Range{}, false
	}
	at := size.Low
	if strict != most {
		at = size.High
	}
	if m.wide > 0 {
		v := m.low * at * m.wide * at / 100 // lengths are in mm, areas in cm2
		return quantity.Range{Low: v, High: v, Unit: unit}, true
	}
	return quantity.Range{Low: m.low * at, High: m.low * at, Unit: unit}, true
}

// bind puts the animal's own size into multiples. One by stage that names none is made
// one for each stage whose size is known; one of an animal whose size is not known is
// left out.
func (s *SpeciesSheet) bind() *SpeciesSheet {
	if s == nil || !slices.ContainsFunc(s.Figures, func(f *Figure) bool { return f.times[0].set() }) {
		return s
	}
	was := s
	copied := *was
	s = &copied
	grown := s.measure("adult")
	var out []*Figure
	for _, f := range s.Figures {
		switch {
		case !f.times[0].set():
			out = append(out, f)
		case f.bySize():
			out = f.bound(out, grown, f.Stages)
		}
	}
	rest := s.Figures
	s.Figures = out
	for _, f := range rest {
		switch {
		case !f.times[0].set() || f.bySize():
		case len(f.Stages) > 0:
			out = f.bound(out, s.measure(f.Stages[len(f.Stages)-1].V), f.Stages)
		case f.What.ByStage:
			for _, stage := range schema.Stages[1:] { // a newborn is on its mother
				out = f.bound(out, s.measure(stage.Name), []Written[string]{{V: stage.Name, At: f.At}})
			}
		default:
			out = f.bound(out, grown, nil)
		}
	}
	s.Figures = unhidden(out)
	return s
}

// unhidden returns the figures without those of which every stage is spoken for by one
// before: what a species states for several stages hides what follows for each from its
// size.
func unhidden(all []*Figure) (out []*Figure) {
	for i, f := range all {
		hidden := len(f.Stages) > 0
		for _, stage := range f.Stages {
			hidden = hidden && slices.ContainsFunc(all[:i], func(b *Figure) bool { return b.What == f.What && Lists(b.Stages, stage.V) })
		}
		if !hidden {
			out = append(out, f)
		}
	}
	return out
}

// rounded is a size in the digits that it is worth: a whole number of cm2, a millimetre.
func rounded(r quantity.Range) quantity.Range {
	to := 1.0
	if r.Low < 20 && r.Unit != quantity.SquareCentimetre {
		to = 10
	}
	r.Low, r.High = math.Round(r.Low*to)/to, math.Round(r.High*to)/to
	return r
}

// bound appends a multiple that an animal's size was put into.
func (f *Figure) bound(out []*Figure, a measured, stages []Written[string]) []*Figure {
	unit := quantity.Centimetre
	if f.times[0].wide > 0 {
		unit = quantity.SquareCentimetre
	}
	value, ok := f.times[0].of(a, f.What.Most, true, unit)
	if !ok {
		return out
	}
	if f.bySize() {
		size := a.length
		if f.times[0].span {
			size = a.span
		}
		value = f.times[0].both(size)
		value.Unit = unit
	}
	of := *f
	of.times, of.Range, of.Stages = [2]times{}, value, stages
	of.Value.V = f.Value.V + ": " + rounded(value).String()
	if f.times[1].set() {
		of.Beyond, _ = f.times[1].of(a, f.What.Most, false, unit)
	}
	return append(out, &of)
}
