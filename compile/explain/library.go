package explain

import (
	"cmp"
	"slices"
	"strconv"
	"strings"

	"vivary/compile"
	"vivary/compile/stock"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/quantity"
	"vivary/schema/wording"
)

// sheets are the species sheets that the collection uses, or all there are where it
// uses none.
func sheets(r *compile.Result) []*plan.SpeciesSheet {
	var out []*plan.SpeciesSheet
	seen := map[*plan.SpeciesSheet]bool{}
	for _, e := range r.Plan.Enclosures {
		if s := e.Sheet; s != nil && !seen[s] {
			seen[s] = true
			out = append(out, s)
		}
	}
	if len(out) == 0 {
		return allSheets(r)
	}
	return out
}

func allSheets(r *compile.Result) []*plan.SpeciesSheet {
	var out []*plan.SpeciesSheet
	for _, n := range r.Plan.Library.SpeciesNames() {
		if s := r.Plan.Library.Species(n); s != nil {
			out = append(out, s)
		}
	}
	return out
}

func listSpecies(r *compile.Result) []Line {
	var out []Line
	for _, s := range allSheets(r) {
		out = append(out, Line{Name: s.Name.V, Text: s.Shown() + ", " + s.Latin.V})
	}
	return out
}

func explainSpecies(r *compile.Result, word string) (all []Answer) {
	l := r.Plan.Library
	if s := l.Species(word); s != nil {
		return []Answer{species(r, s, "")}
	}
	by, doubt := l.ByOtherName(word), ""
	if by.As == plan.NameGenus && len(by.Sheets) > 1 {
		var lines []Line
		for _, s := range by.Sheets {
			lines = append(lines, Line{Name: s.Name.V, Text: s.Shown() + ", " + s.Latin.V})
		}
		return []Answer{{Title: "Genus " + by.Sheets[0].Genus(), Parts: part(nil, "", lines)}}
	}
	if by.As == plan.NameMistaken {
		doubt = "Animals of another kind are sold as " + word + " too: make sure which yours are."
	} else if len(by.Sheets) > 1 {
		doubt = "Several are called " + word + ": " + wording.And(by.Names()) + "."
	}
	for _, s := range by.Sheets {
		all = append(all, species(r, s, doubt))
	}
	return all
}

// species says what is known of a species, and how sure that is: what is its own first,
// then what is known of others that live alike, then what is not known.
func species(r *compile.Result, s *plan.SpeciesSheet, doubt string) Answer {
	l := r.Plan.Library
	first := []Line{{Text: compile.SureOf(s).Line()}}
	if doubt != "" {
		first = append(first, Line{Text: doubt})
	}
	for _, known := range []struct {
		as    string
		names []plan.Written[string]
	}{{"Also called ", s.Also}, {"Formerly ", s.Former}} {
		if len(known.names) > 0 {
			first = append(first, Line{Text: known.as + strings.Join(texts(known.names), ", ") + "."})
		}
	}
	if s.Note.Set() {
		first = append(first, Line{Text: s.Note.V})
	}
	if others := mixedUp(l, s); others != "" {
		first = append(first, Line{Text: others})
	}
	if about := s.Unjudged(); len(about) > 0 {
		first = append(first, Line{Text: "Not judged, since the sheet does not say: " + wording.And(about)})
	}
	if s.Like.Set() {
		first = append(first, Line{Text: "What it does not say itself is lent by " + s.Like.V + ", as far as a kin can lend it: see each figure."})
	}
	if here := livingHere(r, s); here != "" {
		first = append(first, Line{Text: "Kept in: " + here})
	}
	var parts []Part
	parts = part(parts, "", first)
	for _, lent := range []bool{false, true} {
		var figures, needs []Line
		for _, n := range s.Needs {
			if lent == n.Lent() {
				needs = append(needs, needLine(l, holding(n.Name.V, n.Stages), n))
			}
		}
		for _, f := range s.Figures {
			if lent == f.Lent() {
				figures = append(figures, figureLine(l, r.Plan.Units, f.Name.V, f))
			}
		}
		of := ", its own"
		if lent {
			of = ", known of those that live alike"
		}
		parts = part(part(parts, "Needs"+of, needs), "Figures"+of, figures)
	}
	parts = part(parts, "Not known", plainly(s.Unsaid()))
	return Answer{Title: "Species " + s.Name.V + ": " + s.Shown() + ", " + s.Latin.V, Parts: parts}
}

func livingHere(r *compile.Result, s *plan.SpeciesSheet) string {
	var out []string
	for _, e := range r.Plan.Enclosures {
		if e.Sheet == s {
			out = append(out, e.Name.V)
		}
	}
	return strings.Join(out, ", ")
}

// toldBeside is the value of a figure in the keeper's units, with what the sheet states
// behind it where that is in others.
func toldBeside(f *plan.Figure, u quantity.Units) string {
	if told := f.Told(u); told != f.Value.V {
		if _, size, multiple := strings.Cut(f.Value.V, ": "); multiple {
			return told + " (" + size + ")"
		}
		return told + " (" + f.Value.V + ")"
	}
	return f.Value.V
}

// Stated says what a sheet states of a figure, and on whose word.
func Stated(r *compile.Result, f *plan.Figure) Line {
	all := []Answer{{Parts: []Part{{Lines: []Line{figureLine(r.Plan.Library, r.Plan.Units, f.Name.V, f)}}}}}
	return inUnits(all, r.Plan.Units)[0].Parts[0].Lines[0]
}

// figureLine says what a sheet states for a figure, under the name given.
func figureLine(l *plan.Library, u quantity.Units, name string, f *plan.Figure) Line {
	name = holding(name, f.Stages)
	if f.Instar.Set() {
		name += " (instar " + strconv.Itoa(f.Instar.V) + ")"
	}
	line := Line{Name: name, Text: toldBeside(f, u), Under: cited(l, f.Cited, f.Disputed.V, f.Note.V)}
	if f.Own {
		line.Under = append(line.Under, own(f.Because, f.Review))
	}
	return line
}

// own says why a collection has a figure of its own.
func own(because plan.Written[string], review plan.Written[civil.Date]) string {
	out := "the collection's own"
	if because.Set() {
		out += ", because " + because.V
	}
	if review.Set() {
		out += "; to be looked at again on " + review.V.Words()
	}
	return out
}

// listFigures names a figure once that both species and feeders have.
func listFigures(*compile.Result) []Line {
	var out []Line
	for _, x := range schema.Figures {
		out = append(out, Line{Name: x.Name, Text: x.Doc})
	}
	for _, x := range schema.FeederFigures {
		if schema.FindFigure(schema.Figures, x.Name) == nil {
			out = append(out, Line{Name: x.Name, Text: x.Doc + " Of feeders."})
		}
	}
	return out
}

func explainFigure(r *compile.Result, word string) []Answer {
	var out []Answer
	if x := schema.FindFigure(schema.Figures, plain(word)); x != nil {
		out = append(out, speciesFigure(r, x))
	}
	if x := schema.FindFigure(schema.FeederFigures, plain(word)); x != nil {
		out = append(out, feederFigure(r, x))
	}
	return out
}

func speciesFigure(r *compile.Result, x *schema.Figure) Answer {
	var lines []Line
	for _, s := range sheets(r) {
		s.Each(x, func(f *plan.Figure) { lines = append(lines, figureLine(r.Plan.Library, r.Plan.Units, s.Name.V, f)) })
	}
	return Answer{Title: "Figure " + x.Name + ", of species", Parts: part(figureHead(x), "As the sheets have it", lines)}
}

func feederFigure(r *compile.Result, x *schema.Figure) Answer {
	var lines []Line
	for _, n := range r.Plan.Library.FeederNames() {
		for _, f := range r.Plan.Library.Feeder(n).Figures {
			if f.Name.V == x.Name {
				lines = append(lines, figureLine(r.Plan.Library, r.Plan.Units, n, f))
			}
		}
	}
	return Answer{Title: "Figure " + x.Name + ", of feeders", Parts: part(figureHead(x), "As the sheets have it", lines)}
}

// figureHead says what a figure is, and what its words mean.
func figureHead(x *schema.Figure) []Part {
	parts := []Part{{Lines: []Line{{Text: x.Doc}}}}
	var words []Line
	for _, c := range x.Choices {
		words = append(words, Line{Name: c.Name, Text: c.Doc})
	}
	return part(parts, "Its words", words)
}

func listFeeders(r *compile.Result) []Line {
	var out []Line
	for _, n := range r.Plan.Library.FeederNames() {
		f := r.Plan.Library.Feeder(n)
		out = append(out, Line{Name: n, Text: f.Title.Or(n) + ", " + f.Latin.V})
	}
	return out
}

func explainFeeder(r *compile.Result, word string) []Answer {
	l := r.Plan.Library
	var out []Answer
	for _, n := range l.FeederNames() {
		if f := l.Feeder(n); means(word, append(texts(f.Also), n, f.Title.V, f.Plural.V)...) {
			out = append(out, feeder(r, f))
		}
	}
	return out
}

func feeder(r *compile.Result, f *plan.FeederSheet) Answer {
	l := r.Plan.Library
	var first, sizes, figures []Line
	if len(f.Also) > 0 {
		first = append(first, Line{Text: "Also called " + strings.Join(texts(f.Also), ", ") + "."})
	}
	if f.Note.Set() {
		first = append(first, Line{Text: f.Note.V})
	}
	for _, s := range f.Sizes {
		sizes = append(sizes, Line{Name: s.Name.V, Text: measures(s), Under: cited(l, s.Cited, "", s.Note.V)})
	}
	for _, x := range f.Figures {
		figures = append(figures, figureLine(l, r.Plan.Units, x.Name.V, x))
	}
	parts := part(part(nil, "", first), "Hazards", plainly(texts(f.Hazards)))
	parts = part(part(part(parts, "Sizes", sizes), "Figures", figures), "How long it takes", develops(r, f))
	parts = part(parts, "What is done for them", upkeep(r, f))
	return Answer{Title: "Feeder " + f.Name.V + ": " + f.Title.Or(f.Name.V) + ", " + f.Latin.V, Parts: part(parts, "Who is fed it", fed(r, f))}
}

// develops says how long the stages of a feeder take.
func develops(r *compile.Result, f *plan.FeederSheet) (out []Line) {
	for _, d := range f.Stages {
		observed, line, between := stock.Told(d)
		var said []string
		if observed != "" {
			said = append(said, observed)
		}
		if line != "" {
			said = append(said, "degree-days "+line+", between "+between)
		}
		if len(said) == 0 {
			said = append(said, "not known by the warmth")
		}
		text := wording.Prose(strings.Join(said, "; "), r.Plan.Units)
		out = append(out, Line{Name: strings.TrimSpace(d.Size.V + " " + d.Name.V), Text: text, Under: cited(r.Plan.Library, d.Cited, "", d.Note.V)})
	}
	return out
}

// upkeep says what is done for a feeder in tubs and cultures.
func upkeep(r *compile.Result, f *plan.FeederSheet) (out []Line) {
	for _, u := range f.Upkeep {
		line := Line{Name: u.Name.V, Text: "every " + u.Every.V.String() + ": " + wording.Prose(u.Task.V, r.Plan.Units), Under: cited(r.Plan.Library, u.Cited, "", u.Note.V)}
		if in := texts(u.In); len(in) > 0 {
			line.Text += ", in a " + wording.Or(in)
		}
		out = append(out, line)
	}
	return out
}

func measures(s *plan.FeederSize) string {
	var out []string
	if s.Mass.Set() {
		out = append(out, s.Mass.V.String())
	}
	if s.Length.Set() {
		out = append(out, s.Length.V.String()+" long")
	}
	if s.Energy.Set() {
		out = append(out, s.Energy.V.String())
	}
	return strings.Join(out, ", ")
}

// fed says which animals are fed it, in which size.
func fed(r *compile.Result, f *plan.FeederSheet) []Line {
	var g gather
	for _, x := range cares(r) {
		s := x.series()
		for i := range s.Menu {
			if p := s.Menu[i].Prey; p.Feeder == f.Name.V {
				size := p.Size
				if size == "" {
					size = "any size"
				}
				g.add(x.where(), size)
			}
		}
	}
	return g.lines()
}

func listSources(r *compile.Result) []Line {
	var out []Line
	names := r.Plan.Library.SourceNames()
	slices.SortStableFunc(names, func(a, b string) int { // K4 before K10
		return cmp.Or(cmp.Compare(a[0], b[0]), cmp.Compare(len(a), len(b)))
	})
	for _, n := range names {
		s := r.Plan.Library.Source(n)
		out = append(out, Line{Name: n, Text: s.Cite.V + " [" + s.Kind.V + "]"})
	}
	return out
}

func explainSource(r *compile.Result, word string) []Answer {
	var out []Answer
	for _, n := range r.Plan.Library.SourceNames() {
		if means(word, n) {
			out = append(out, oneSource(r, r.Plan.Library.Source(n)))
		}
	}
	return out
}

func oneSource(r *compile.Result, s *plan.Source) Answer {
	first := []Line{{Text: s.Cite.V}}
	if s.Where.Set() {
		first = append(first, Line{Text: "Found at: " + s.Where.V})
	}
	first = append(first, Line{Text: "Kind: " + s.Kind.V + ", " + quality(s.Kind.V)})
	if s.Part.Set() {
		first = append(first, Line{Text: "Seen of it: " + s.Part.V})
	}
	rests := rest(r, s.Name.V)
	if len(rests) == 0 {
		rests = []Line{{Text: "nothing"}}
	}
	return Answer{Title: "Source " + s.Name.V, Parts: part([]Part{{Lines: first}}, "What rests on it", rests)}
}

func quality(kind string) string {
	for _, q := range schema.Qualities {
		if q.Name == kind {
			return q.Doc
		}
	}
	return ""
}
