package plan

import (
	"cmp"
	"maps"
	"slices"
	"strings"
	"sync"

	"vivary/schema/quantity"
)

// Library is the built-in sheets, which every collection shares, and the
// collection's own on top of them.
//
// Its methods may be called from several goroutines. A sheet, once returned, does
// not change.
type Library struct {
	built *Sheets
	own   struct {
		species map[string]*SpeciesSheet
		types   map[string]*TypeSheet
		feeders map[string]*FeederSheet
		sources map[string]*Source
	}
	before map[string]joinedSheet // the sheets of the load before
	// isCalled has the collection's own sheets whose prey is written by other names, as
	// Library.called made them of what stands in the files; wasCalled those of the load
	// before.
	isCalled, wasCalled map[*SpeciesSheet]*SpeciesSheet
	mu                  sync.Mutex
	species             map[string]joinedSheet // as far as they were asked for
	feeders             map[string]*FeederSheet
	names               *otherNames // once they are asked for
	namesOnce           sync.Once
}

// joinedSheet is a species sheet and what it is made from: the topmost first.
type joinedSheet struct {
	from  []layer
	sheet *SpeciesSheet
}

// NewLibrary returns the library of a collection that has no sheets of its own.
func NewLibrary() *Library { return builtIn().library() }

func (b *Sheets) library() *Library {
	return &Library{built: b, species: map[string]joinedSheet{}, feeders: map[string]*FeederSheet{}, isCalled: map[*SpeciesSheet]*SpeciesSheet{}}
}

// after returns a library that takes over the sheets of the one before as far as
// they turn out to be made from the same.
func (l *Library) after(before *Library) *Library {
	before.mu.Lock()
	defer before.mu.Unlock()
	l.before, l.wasCalled = maps.Clone(before.species), before.isCalled
	return l
}

// SpeciesNames returns the names of all species sheets, built-in and own, sorted.
func (l *Library) SpeciesNames() []string { return names(l.built.species, l.own.species) }

// FeederNames returns the names of all feeder sheets, built-in and own, sorted.
func (l *Library) FeederNames() []string { return names(l.built.feeders, l.own.feeders) }

func names[B, T any](built map[string]B, own map[string]T) []string {
	all := slices.AppendSeq(slices.Collect(maps.Keys(built)), maps.Keys(own))
	slices.Sort(all)
	return slices.Compact(all)
}

// Species returns the sheet of that name, or nil. The collection's own sheet is
// laid over the built-in one, and that over what the sheet lends that it is like.
func (l *Library) Species(name string) *SpeciesSheet {
	l.mu.Lock()
	defer l.mu.Unlock()
	j, ok := l.species[name]
	if !ok {
		j = l.join(name)
		l.species[name] = j
	}
	return j.sheet
}

func (l *Library) join(name string) joinedSheet {
	from := l.layers(name)
	if was := l.before[name]; slices.Equal(was.from, from) {
		return was
	}
	if l.own.species[name] == nil && l.built.sheet(name) != nil && len(l.own.types) == 0 {
		// Collections that lay nothing over a sheet share it.
		shared, _ := l.built.joined.LoadOrStore(name, sync.OnceValue(func() joinedSheet { return joinedSheet{from, joined(from)} }))
		if j := shared.(func() joinedSheet)(); slices.Equal(j.from, from) {
			return j
		}
	}
	return joinedSheet{from, joined(from)}
}

// joined lays sheets over each other, the topmost first; nil for none.
func joined(from []layer) (sheet *SpeciesSheet) {
	var long quantity.Range
	for _, s := range from {
		if !s.lent && long.High == 0 {
			long = s.grown()
		}
	}
	for _, s := range slices.Backward(from) {
		if s.lent {
			sheet = overlay(s.SpeciesSheet.lent(long), sheet)
		} else {
			sheet = overlay(s.SpeciesSheet, sheet)
		}
	}
	return sheet.bind()
}

// layers returns the sheets that make up the one of that name, the topmost first. A
// sheet that is like itself, in the end, is taken once. Beneath them all lies the care
// type.
func (l *Library) layers(name string) (from []layer) {
	asked, kind, genus, lent := name, "", "", false
	for seen := map[string]bool{}; name != "" && !seen[name]; {
		seen[name] = true
		like := ""
		for _, s := range []*SpeciesSheet{l.own.species[name], l.built.sheet(name)} {
			if s == nil {
				continue
			}
			from = append(from, layer{s, name != asked})
			if kind == "" && s.Type.Set() {
				kind, lent = s.Type.V, name != asked
			}
			genus = cmp.Or(genus, s.Genus())
			if like == "" && s.Like.Set() {
				like = s.Like.V
			}
		}
		name = like
	}
	for _, t := range l.typed(kind, genus) {
		from = append(from, layer{t.SpeciesSheet, lent})
	}
	return from
}

// SameSheets reports whether the sheets of species and care types that two collections of
// one Reader have of their own are the very same.
func (l *Library) SameSheets(o *Library) bool {
	return maps.Equal(l.own.species, o.own.species) && maps.Equal(l.own.types, o.own.types)
}

// Own reports whether a species is known by a sheet of the collection alone.
func (l *Library) Own(name string) bool {
	return l.own.species[name] != nil && l.built.species[name] == nil
}

// Beneath returns what is known without the collection: the built-in sheets over which,
// by the same name or by like, it has laid its own. It is nil where it has no sheet of
// its own, or one of a species of which nothing is built in.
func (l *Library) Beneath(name string) *SpeciesSheet {
	if l.own.species[name] == nil {
		return nil
	}
	return joined(slices.DeleteFunc(l.layers(name), func(s layer) bool { return l.own.species[s.Name.V] == s.SpeciesSheet }))
}

// Against returns what the collection's own sheet is measured by: what lies Beneath it,
// and the company and the danger of the species that it is like. These are not lent, but
// to think less of them than of its kin wants a word.
func (l *Library) Against(name string) *SpeciesSheet {
	base := l.Beneath(name)
	if base == nil {
		return nil
	}
	out := *base
	for _, s := range l.layers(name) {
		for _, f := range s.Figures {
			if s.lent && !f.Own && f.What.Warns && out.Figure(f.What, "") == nil {
				out.Figures = append(out.Figures[:len(out.Figures):len(out.Figures)], f)
			}
		}
	}
	return &out
}

// Feeder returns the feeder sheet of that name, or nil.
func (l *Library) Feeder(name string) *FeederSheet {
	own, built := l.own.feeders[name], l.built.feeder(name)
	if own == nil {
		return built
	}
	l.mu.Lock()
	defer l.mu.Unlock()
	if l.feeders[name] == nil {
		l.feeders[name] = overlayFeeder(own, built)
	}
	return l.feeders[name]
}

// Source returns the source of that name, or nil.
func (l *Library) Source(name string) *Source {
	if s := l.own.sources[name]; s != nil {
		return s
	}
	if s := l.built.sources()[name]; s != nil {
		return s()
	}
	return nil
}

// SourceNames returns the names of all sources, built-in and own, sorted.
func (l *Library) SourceNames() []string { return names(l.built.sources(), l.own.sources) }

// Layers are the names of all sheets that one of a species is made from, the topmost first.
func (l *Library) Layers(name string) (out []string) {
	for _, s := range l.layers(name) {
		out = append(out, s.Name.V)
	}
	return out
}

// Cite says in one line where a fact is from, of which species where it is lent, and how
// good that is.
func (l *Library) Cite(c Cited) string {
	text := l.cite(c)
	switch {
	case c.OfType != "" && c.Quality.V == "practice":
		return "common practice for " + c.OfType + strings.TrimPrefix(strings.TrimPrefix(text, "common practice"), ", no source")
	case c.OfType != "":
		return "common practice for " + c.OfType + ": " + text
	case c.Of != "":
		if text != "" {
			text += "; "
		}
		text += "known of " + c.Of + ", which it is said to be like"
	}
	return text
}

func (l *Library) cite(c Cited) string {
	var parts []string
	for _, s := range c.Source {
		if src := l.Source(s.V); src != nil && src.Kind.V != "practice" && src.Kind.V != "memory" {
			text := src.Cite.V
			if src.Where.Set() {
				text += ", " + src.Where.V
			}
			parts = append(parts, text+" ["+src.Kind.V+"]")
		} else if src == nil {
			parts = append(parts, s.V)
		}
	}
	switch c.Quality.V {
	case "practice":
		if len(parts) == 0 {
			return "common practice, no source"
		}
		return "common practice; evidence: " + strings.Join(parts, "; ")
	case "memory":
		parts = append(parts, "from memory: verify before you rely on it")
	}
	if c.Seen.Set() && len(parts) > 0 {
		parts[len(parts)-1] += ", seen " + c.Seen.V.String()
	}
	return strings.Join(parts, "; ")
}
