package plan

import (
	"io/fs"
	"path"
	"sort"
	"strconv"
	"strings"
	"sync"

	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/quantity"
)

// Library is the built-in sheets, read as far as a collection needs them, and the
// collection's own sheets on top of them.
//
// Its methods may be called from several goroutines. A sheet, once returned, does
// not change.
type Library struct {
	mu      sync.Mutex
	fsys    fs.FS
	files   *source.Set
	species map[string]*SpeciesSheet
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
	return &Library{fsys: fsys, files: files, species: map[string]*SpeciesSheet{}, feeders: map[string]*FeederSheet{}}
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
	all := make([]string, 0, len(seen))
	for n := range seen {
		all = append(all, n)
	}
	sort.Strings(all)
	return all
}

func (l *Library) read(file string) *fileBlocks {
	text, err := fs.ReadFile(l.fsys, file)
	if err != nil {
		return nil
	}
	id := l.files.Add(libraryPrefix+file, text)
	blocks, found := decodeFile(id, text)
	l.found.All = append(l.found.All, found...)
	return blocks
}

// Species returns the sheet of that name, or nil. The collection's own sheet is
// laid over the built-in one, and that over the sheet it is like.
func (l *Library) Species(name string) *SpeciesSheet {
	l.mu.Lock()
	defer l.mu.Unlock()
	return l.sheet(name)
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
		s = overlay(own, s)
	}
	if s != nil && s.Like.Set() {
		s = overlay(s, l.sheet(s.Like.V))
	}
	l.species[name] = s
	return s
}

// overlay returns what is in top, and what is in base that top does not say.
func overlay(top, base *SpeciesSheet) *SpeciesSheet {
	if base == nil {
		return top
	}
	out := *top
	keep := func(dst *Written[string], src Written[string]) {
		if !dst.Set() {
			*dst = src
		}
	}
	keep(&out.Title, base.Title)
	keep(&out.Latin, base.Latin)
	keep(&out.Family, base.Family)
	keep(&out.Note, base.Note)
	out.Also = append(out.Also[:len(out.Also):len(out.Also)], base.Also...)
	out.Former = append(out.Former[:len(out.Former):len(out.Former)], base.Former...)
	out.Mistaken = append(out.Mistaken[:len(out.Mistaken):len(out.Mistaken)], base.Mistaken...)
	out.Stages = under(top.Stages, base.Stages, func(s *Stage) string { return s.Name.V })
	out.Figures = under(top.Figures, base.Figures, func(f *Figure) string {
		return f.Name.V + "/" + stagesKey(f.Stages) + "/" + instarKey(f.Instar)
	})
	out.Needs = under(top.Needs, base.Needs, func(n *Need) string { return n.Name.V + "/" + stagesKey(n.Stages) })
	out.Care = under(top.Care, base.Care, func(c *Care) string { return c.Name.V + "/" + stagesKey(c.Stages) })
	out.Feeding = under(top.Feeding, base.Feeding, func(f *Feeding) string { return f.Name.V + "/" + stagesKey(f.Stages) })
	return &out
}

func under[T any](top, base []T, key func(T) string) []T {
	out := top[:len(top):len(top)]
	have := map[string]bool{}
	for _, t := range top {
		have[key(t)] = true
	}
	for _, b := range base {
		if !have[key(b)] {
			out = append(out, b)
		}
	}
	return out
}

func stagesKey(list []Written[string]) string {
	var s []string
	for _, w := range list {
		s = append(s, w.V)
	}
	sort.Strings(s)
	return strings.Join(s, ",")
}

func instarKey(w Written[int]) string {
	if !w.Set() {
		return ""
	}
	return strconv.Itoa(w.V)
}

// settle reads the values of a sheet's figures and checks its words.
func (l *Library) settle(s *SpeciesSheet, own bool) {
	for _, f := range s.Figures {
		l.figure(f, schema.Figures, own)
	}
	for _, n := range s.Needs {
		n.Own = own
		if schema.FindNeed(n.Name.V) == nil {
			l.unknown(n.Name, "need", needNames())
		}
		if own {
			l.reason(n.Head, n.Because, n.Review, n.Source)
		}
	}
	for _, st := range s.Stages {
		if !isStage(st.Name.V) {
			l.unknown(st.Name, "stage", choiceNames(schema.Stages))
		}
	}
}

func (l *Library) unknown(name Written[string], what string, known []string) {
	f := finding.Finding{Rule: ruleUnknownWord, At: name.At, Text: "there is no " + what + " " + quote(name.V), Write: "one of: " + strings.Join(known, ", ")}
	if s := finding.Suggest(name.V, known); s != "" {
		f.Text += ": did you mean " + s + "?"
		f.Write = s
	}
	l.found.Add(f)
}

// reason finds a figure of the collection's own that does not say why, on whose
// word and until when.
func (l *Library) reason(h Head, because Written[string], review Written[civil.Date], src []Written[string]) {
	var lacks []string
	if !because.Set() {
		lacks = append(lacks, "because")
	}
	if len(src) == 0 {
		lacks = append(lacks, "source")
	}
	if !review.Set() {
		lacks = append(lacks, "review")
	}
	if len(lacks) > 0 {
		l.found.Add(finding.Finding{Rule: RuleUnreasoned, At: h.At,
			Text:  quote(h.Name.V) + " takes the place of a known figure, but has no " + strings.Join(lacks, ", no "),
			Write: "because = \"…\", source = [\"…\"] and review = a date within a year or so"})
	}
}

func (l *Library) figure(f *Figure, known []schema.Figure, own bool) {
	f.Own = own
	f.What = schema.FindFigure(known, f.Name.V)
	if f.What == nil {
		var names []string
		for _, k := range known {
			names = append(names, k.Name)
		}
		l.unknown(f.Name, "figure", names)
		f.What = &schema.Figure{Name: f.Name.V, Kind: schema.Text}
		return
	}
	if own && len(known) == len(schema.Figures) {
		l.reason(f.Head, f.Because, f.Review, f.Source)
	}
	if !f.Value.Set() {
		return
	}
	d := decoder{file: f.Value.At.File}
	attr := &schema.Attr{Name: f.Name.V, Kind: f.What.Kind, Dimension: f.What.Dimension, Choices: f.What.Choices, Example: "\"…\""}
	fail := func(err error) {
		if err != nil {
			d.refuse(f.Value, attr, err)
		}
	}
	var err error
	switch f.What.Kind {
	case schema.Range:
		f.Range, err = quantity.ParseRange(f.Value.V, f.What.Dimension)
		fail(err)
	case schema.Numbers:
		f.Range, err = ParseNumbers(f.Value.V)
		fail(err)
	case schema.Truth:
		f.Truth = f.Value.V == "true"
		if f.Value.V != "true" && f.Value.V != "false" {
			d.found.Add(finding.Finding{Rule: ruleValue, At: f.Value.At, Text: f.Name.V + " is \"true\" or \"false\"", Write: "value = \"true\""})
		}
	case schema.Word:
		d.choice(attr, f.Value)
		f.Words = []string{f.Value.V}
	case schema.Words:
		for _, w := range strings.Split(f.Value.V, ",") {
			w = strings.TrimSpace(w)
			d.choice(attr, wrote(w, f.Value.At))
			f.Words = append(f.Words, w)
		}
	}
	l.found.All = append(l.found.All, d.found.All...)
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
			for _, fig := range f.Figures {
				l.figure(fig, schema.FeederFigures, false)
			}
		}
	}
	if own := l.own.feeders[name]; own != nil {
		for _, fig := range own.Figures {
			l.figure(fig, schema.FeederFigures, true)
		}
		if f == nil {
			f = own
		} else {
			merged := *own
			merged.Sizes = under(own.Sizes, f.Sizes, func(s *FeederSize) string { return s.Name.V })
			merged.Figures = under(own.Figures, f.Figures, func(x *Figure) string { return x.Name.V })
			merged.Hazards = append(merged.Hazards[:len(merged.Hazards):len(merged.Hazards)], f.Hazards...)
			if !merged.Title.Set() {
				merged.Title = f.Title
			}
			if !merged.Plural.Set() {
				merged.Plural = f.Plural
			}
			f = &merged
		}
	}
	l.feeders[name] = f
	return f
}

// Source returns the source of that name, or nil. The list of sources is read
// when the first is asked for.
func (l *Library) Source(name string) *Source {
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
	return l.sources[name]
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
			for _, w := range list {
				if slug(w.V) == want {
					return true
				}
			}
			return false
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

func isStage(s string) bool {
	for _, c := range schema.Stages {
		if c.Name == s {
			return true
		}
	}
	return false
}

func needNames() []string {
	var n []string
	for _, x := range schema.Needs {
		n = append(n, x.Name)
	}
	return n
}

func choiceNames(list []schema.Choice) []string {
	var n []string
	for _, x := range list {
		n = append(n, x.Name)
	}
	return n
}
