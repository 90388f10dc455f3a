package plan

import (
	"io/fs"
	"path"
	"slices"
	"strings"
	"sync"

	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/schema"
)

// Library is the built-in sheets, read as far as a collection needs them, and the
// collection's own sheets on top of them.
//
// Its methods may be called from several goroutines. A sheet, once returned, does
// not change. Load asks for all of a collection's own sheets, and returns what is
// found in them; the built-in ones are tested to have nothing to find.
type Library struct {
	mu      sync.Mutex
	fsys    fs.FS
	files   *source.Set
	species map[string]*SpeciesSheet
	built   map[string]*SpeciesSheet // the built-in sheets beneath the collection's own
	feeders map[string]*FeederSheet
	sources map[string]*Source
	own     struct {
		species map[string]*SpeciesSheet
		feeders map[string]*FeederSheet
	}
	found finding.List
}

// NewLibrary returns a library over the sheets in fsys, which holds the folders
// species and feeders. Files that are read are added to files.
func NewLibrary(fsys fs.FS, files *source.Set) *Library {
	return &Library{fsys: fsys, files: files, species: map[string]*SpeciesSheet{}, built: map[string]*SpeciesSheet{}, feeders: map[string]*FeederSheet{}}
}

// libraryPrefix begins the name under which a built-in sheet is shown.
const libraryPrefix = "schema/"

// SpeciesNames returns the names of all species sheets, built-in and own, sorted.
func (l *Library) SpeciesNames() []string { return names(l.fsys, "species", l.own.species) }

// FeederNames returns the names of all feeder sheets, built-in and own, sorted.
func (l *Library) FeederNames() []string { return names(l.fsys, "feeders", l.own.feeders) }

func names[T any](fsys fs.FS, dir string, own map[string]T) []string {
	seen := map[string]bool{}
	for n := range own {
		seen[n] = true
	}
	entries, _ := fs.ReadDir(fsys, dir)
	for _, e := range entries {
		if n, ok := strings.CutSuffix(e.Name(), PlanSuffix); ok && n != "sources" {
			seen[n] = true
		}
	}
	return keys(seen)
}

// read decodes a built-in file, or returns nil where there is none.
func (l *Library) read(file string) *blocks {
	text, err := fs.ReadFile(l.fsys, file)
	if err != nil {
		return nil
	}
	id := l.files.Add(libraryPrefix+file, text)
	read, found := decodeFile(id, text)
	l.found.All = append(l.found.All, found...)
	b := &blocks{}
	b.add(read)
	return b
}

// Species returns the sheet of that name, or nil. The collection's own sheet is
// laid over the built-in one, and that over the sheet it is like.
func (l *Library) Species(name string) *SpeciesSheet {
	l.mu.Lock()
	defer l.mu.Unlock()
	return l.sheet(name)
}

// Built returns the built-in sheet over which the collection has laid one of its
// own, or nil.
func (l *Library) Built(name string) *SpeciesSheet {
	l.mu.Lock()
	defer l.mu.Unlock()
	return l.built[name]
}

func (l *Library) sheet(name string) *SpeciesSheet {
	if s, ok := l.species[name]; ok {
		return s
	}
	l.species[name] = nil // a sheet that is like itself finds nothing
	own := l.own.species[name]
	var s *SpeciesSheet
	if name != "sources" && !strings.ContainsAny(name, "/\\") {
		if blocks := l.read(path.Join("species", name+PlanSuffix)); blocks != nil && len(blocks.species) > 0 {
			s = blocks.species[0]
			l.settle(s, false)
		}
	}
	if own != nil {
		l.settle(own, true)
		l.built[name] = s
		s = overlay(own, s)
	}
	if s != nil && s.Like.Set() {
		s = overlay(s, l.sheet(s.Like.V))
	}
	l.species[name] = s
	return s
}

// Feeder returns the feeder sheet of that name, or nil.
func (l *Library) Feeder(name string) *FeederSheet {
	l.mu.Lock()
	defer l.mu.Unlock()
	if f, ok := l.feeders[name]; ok {
		return f
	}
	var f *FeederSheet
	if !strings.ContainsAny(name, "/\\") {
		if blocks := l.read(path.Join("feeders", name+PlanSuffix)); blocks != nil && len(blocks.feeders) > 0 {
			f = blocks.feeders[0]
			f.Figures = l.figures(f.Figures, schema.FeederFigures, false)
		}
	}
	if own := l.own.feeders[name]; own != nil {
		own.Figures = l.figures(own.Figures, schema.FeederFigures, true)
		f = overlayFeeder(own, f)
	}
	l.feeders[name] = f
	return f
}

// Source returns the source of that name, or nil.
func (l *Library) Source(name string) *Source { return l.allSources()[name] }

// SourceNames returns the names of all sources, sorted.
func (l *Library) SourceNames() []string { return keys(l.allSources()) }

// allSources reads the list of sources when it is first asked for. It is not changed
// afterwards.
func (l *Library) allSources() map[string]*Source {
	l.mu.Lock()
	defer l.mu.Unlock()
	if l.sources == nil {
		l.sources = map[string]*Source{}
		if blocks := l.read("species/sources" + PlanSuffix); blocks != nil {
			for _, s := range blocks.sources {
				l.sources[s.Name.V] = s
			}
		}
	}
	return l.sources
}

// Cite says in one line where a fact is from and how good that is.
func (l *Library) Cite(c Cited) string {
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

// ByOtherName looks for a species by a common, former or mistaken name. The
// second result says which of these it was.
func (l *Library) ByOtherName(written string) (sheet *SpeciesSheet, how string) {
	want := slug(written)
	for _, name := range l.SpeciesNames() {
		s := l.Species(name)
		if s == nil {
			continue
		}
		is := func(list []Written[string]) bool {
			return slices.ContainsFunc(list, func(w Written[string]) bool { return slug(w.V) == want })
		}
		words := strings.Fields(s.Latin.V)
		switch {
		case slug(s.Title.V) == want || len(words) > 1 && slug(words[0]+" "+words[1]) == want || is(s.Also):
			return s, "also"
		case is(s.Former):
			return s, "former"
		case is(s.Mistaken):
			return s, "mistaken"
		}
	}
	return nil, ""
}
