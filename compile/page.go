package compile

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema"
)

// RulesPage returns the page of all rules, as Markdown, made from the registries: a line
// for each. What there is to say of one is said by why.
func RulesPage() string {
	var b strings.Builder
	b.WriteString("# The rules\n\nThis page is generated from the registries: `go test ./compile -run Page -update`. Why a rule is there, whose word it is, what to do and what it looks like: `vivary why RULE`.\n\n" +
		"`danger` harms an animal or a person, `error` cannot be understood or met: both refuse a build. `urgent` is harm now, by the log or the date, and refuses nothing, nor do `caution` and `advice`. An accept block silences a rule for a while, with a reason. It never silences those marked †, which can kill or are about the text of a plan; those marked ‡ it silences only where they are neither an error nor urgent.\n")
	for _, g := range ruleGroups() {
		fmt.Fprintf(&b, "\n## %s\n\n", g.title)
		for _, r := range g.rules {
			fmt.Fprintf(&b, "- <a id=%q></a>`%s` %s%s: %s\n", r.ID, r.ID, r.Severity, silenceMarks[r.Silence], cell(r.Title))
		}
	}
	return b.String()
}

// silenceMarks stand behind the severities of rules that cannot simply be silenced.
var silenceMarks = map[finding.Silence]string{finding.Never: " †", finding.OnlyCaution: " ‡"}

// LibraryPages returns the pages of what is known, by their paths beneath schema: an index
// that counts how sure it is, a page for each species and each care type, and one of the
// feeders.
func LibraryPages() map[string]string {
	lib := plan.NewLibrary()
	pages := map[string]string{"SPECIES.md": indexPage(lib), "pages/feeders.md": feedersPage(lib)}
	for _, name := range lib.SpeciesNames() {
		pages["pages/species/"+name+".md"] = speciesPage(lib, lib.Species(name))
	}
	for _, name := range lib.TypeNames() {
		pages["pages/types/"+name+".md"] = typePage(lib, lib.Type(name))
	}
	return pages
}

const generated = "This page is generated from the sheets in `schema`: `go test ./compile -run Page -update`."

func indexPage(lib *plan.Library) string {
	var b strings.Builder
	b.WriteString("# What is known of the species\n\n" + generated + " In a terminal: `vivary why SPECIES`. Every figure says where it is from and how good that is:\n\n")
	for _, q := range schema.Qualities {
		fmt.Fprintf(&b, "- **%s**: %s\n", q.Name, q.Doc)
	}
	b.WriteString("\nWhat a species does not state itself is common practice for its care type, and marked so. [Feeder animals](pages/feeders.md) have a page of their own.\n")
	b.WriteString("\n| species | | type | own figures | from papers, institutions, zoos | keepers | practice | memory | of its type | not known |\n|---|---|---|---|---|---|---|---|---|---|\n")
	for _, name := range lib.SpeciesNames() {
		s := lib.Species(name)
		sure, kind := SureOf(s), ""
		if s.Type.Set() {
			kind = fmt.Sprintf("[%s](pages/types/%s.md)", s.Type.V, s.Type.V)
		}
		fmt.Fprintf(&b, "| [%s](pages/species/%s.md) | %s | %s | %d | %d | %d | %d | %d | %d | %d |\n", name, name, cell(s.Shown()), kind, sure.Total(),
			sure.Own["paper"]+sure.Own["guideline"]+sure.Own["society"], sure.Own["keeper"], sure.Own["practice"], sure.Own["memory"], sure.Lent, len(sure.Unknown))
	}
	b.WriteString("\n## Care types\n\n")
	for _, name := range lib.TypeNames() {
		fmt.Fprintf(&b, "- [%s](pages/types/%s.md): %s\n", name, name, lib.Type(name).Title.V)
	}
	howSure(&b, lib)
	return b.String()
}

// howSure counts, for each figure, how many species have it from where, and says which
// gaps matter most: of what every species needs, what rests on least.
func howSure(b *strings.Builder, lib *plan.Library) {
	all := gaps(lib)
	total := len(lib.SpeciesNames())
	fmt.Fprintf(b, "\n## How sure\n\nHow many of the %d species have a figure, by the best of what theirs rests on. Of its type: common practice for those that live alike.\n\n| figure | papers | institutions | zoos, societies | keepers | practice | memory | of its type | not known |\n|---|---|---|---|---|---|---|---|---|\n", total)
	for _, g := range all {
		fmt.Fprintf(b, "| `%s` | %d | %d | %d | %d | %d | %d | %d | %d |\n", g.figure.Name, g.by["paper"], g.by["guideline"], g.by["society"], g.by["keeper"], g.by["practice"], g.by["memory"], g.lent, g.none)
	}
	b.WriteString("\n### The gaps that matter most\n\nOf what every species needs or is asked for: on practice, on memory or on a type alone, and for how many species nothing is known.\n\n")
	needed := slices.DeleteFunc(all, func(g gap) bool { return !g.figure.Required && !g.figure.Asked })
	slices.SortStableFunc(needed, func(a, b gap) int { return cmp.Compare(b.weak(), a.weak()) })
	for _, g := range needed[:min(12, len(needed))] {
		fmt.Fprintf(b, "- `%s`: nothing better for %d of %d, nothing at all for %d. %s\n", g.figure.Name, g.weak(), total, g.none, g.figure.Doc)
	}
}

func speciesPage(lib *plan.Library, s *plan.SpeciesSheet) string {
	var b strings.Builder
	fmt.Fprintf(&b, "# %s\n\n%s\n\n%s, *%s*", s.Name.V, generated, s.Shown(), s.Latin.V)
	if s.Family.Set() {
		fmt.Fprintf(&b, ", %s", s.Family.V)
	}
	b.WriteString(".")
	names(&b, " Also", s.Also)
	names(&b, " Formerly", s.Former)
	names(&b, " Sold under its name, or the other way round, though another animal:", s.Mistaken)
	if s.Note.Set() {
		b.WriteString(" " + s.Note.V)
	}
	fmt.Fprintf(&b, "\n\n%s\n", SureOf(s).Line())
	known(&b, lib, "Its own", s, false)
	if t := lib.Type(s.Type.V); t != nil {
		known(&b, lib, fmt.Sprintf("Of its type, [%s](../types/%s.md)", t.Title.V, s.Type.V), s, true)
	}
	if unsaid := s.Unsaid(); len(unsaid) > 0 {
		fmt.Fprintf(&b, "\n## Not known\n\n`%s`\n", strings.Join(unsaid, "`, `"))
	}
	return b.String()
}

// known writes what a sheet states itself, or what is lent to it.
func known(b *strings.Builder, lib *plan.Library, title string, s *plan.SpeciesSheet, lent bool) {
	fmt.Fprintf(b, "\n## %s\n\n%s", title, figureHead)
	for _, f := range s.Figures {
		if f.Lent() == lent {
			figureRow(b, lib, f)
		}
	}
	first := true
	for _, n := range s.Needs {
		if n.Lent() != lent {
			continue
		}
		if first {
			b.WriteString("\n| need | longest | quality | from | others say |\n|---|---|---|---|---|\n")
			first = false
		}
		needRow(b, lib, n, "")
	}
}

const figureHead = "| figure | value | quality | from | others say |\n|---|---|---|---|---|\n"

func needRow(b *strings.Builder, lib *plan.Library, n *plan.Need, more string) {
	fmt.Fprintf(b, "| `%s`%s | %s%s | %s | %s | %s |\n", n.Name.V, of(n.Stages), n.Longest.V, more, n.Quality.V, cell(lib.Cite(n.Cited)), cell(strings.TrimSpace(n.Disputed.V+" "+n.Note.V)))
}

func typePage(lib *plan.Library, t *plan.TypeSheet) string {
	var b strings.Builder
	fmt.Fprintf(&b, "# %s\n\n%s\n\nCare type: %s.", t.Name.V, generated, t.Title.V)
	if t.In.Set() {
		fmt.Fprintf(&b, " What it does not say itself is that of [%s](%s.md).", t.In.V, t.In.V)
	}
	names(&b, " Genera:", t.Genera)
	if t.Note.Set() {
		b.WriteString(" " + t.Note.V)
	}
	b.WriteString(" Size, heat to aim for, company, danger and law are stated by a species, never by a type.\n")
	var members []string
	for _, name := range lib.SpeciesNames() {
		if lib.Species(name).Type.V == t.Name.V {
			members = append(members, fmt.Sprintf("[%s](../species/%s.md)", name, name))
		}
	}
	if len(members) > 0 {
		fmt.Fprintf(&b, "\nSpecies: %s\n", strings.Join(members, ", "))
	}
	typeTables(&b, lib, t.Figures, t.Needs)
	for _, x := range t.Excepts {
		fmt.Fprintf(&b, "\n## Not so: %s\n\n%s.\n", x.Name.V, strings.ToUpper(x.Because.V[:1])+x.Because.V[1:])
		if x.Empty() {
			b.WriteString("A species of this genus states its own figures and needs.\n")
		} else {
			typeTables(&b, lib, x.Figures, x.Needs)
		}
	}
	return b.String()
}

// typeTables writes what suits every member of a type, and what is wrong for any.
func typeTables(b *strings.Builder, lib *plan.Library, figures []*plan.Figure, needs []*plan.Need) {
	if len(figures) > 0 {
		b.WriteString("\n| figure | suits every one | wrong for any | quality | from | note |\n|---|---|---|---|---|---|\n")
	}
	for _, f := range figures {
		wrong := f.Wrong.V
		if wrong != "" && f.Harm.Set() {
			wrong += ": " + f.Harm.V
		}
		fmt.Fprintf(b, "| `%s`%s | %s | %s | %s | %s | %s |\n", f.Name.V, of(f.Stages), cell(f.Value.V), wrong, f.Quality.V, cell(lib.Cite(f.Cited)), cell(f.Note.V))
	}
	if len(needs) > 0 {
		b.WriteString("\n| need | suits every one | quality | from | note |\n|---|---|---|---|---|\n")
	}
	for _, n := range needs {
		more := ""
		if n.Wrong.Set() {
			more = "; " + n.Wrong.V.String() + " is too long for any"
		}
		needRow(b, lib, n, more)
	}
}

func figureRow(b *strings.Builder, lib *plan.Library, f *plan.Figure) {
	name := "`" + f.Name.V + "`" + of(f.Stages)
	if f.Instar.Set() {
		name += fmt.Sprintf(" (instar %d)", f.Instar.V)
	}
	others := f.Disputed.V
	if f.Note.Set() {
		others = strings.TrimSpace(others + " " + f.Note.V)
	}
	fmt.Fprintf(b, "| %s | %s | %s | %s | %s |\n", name, cell(f.Value.V), f.Quality.V, cell(lib.Cite(f.Cited)), cell(others))
}

func names(b *strings.Builder, head string, list []plan.Written[string]) {
	if len(list) == 0 {
		return
	}
	var s []string
	for _, w := range list {
		s = append(s, w.V)
	}
	fmt.Fprintf(b, "%s %s.", head, strings.Join(s, ", "))
}

func of(stages []plan.Written[string]) string {
	if len(stages) == 0 {
		return ""
	}
	var s []string
	for _, w := range stages {
		s = append(s, w.V)
	}
	return " (" + strings.Join(s, ", ") + ")"
}

// cell keeps a text inside one cell of a table.
func cell(s string) string {
	return strings.ReplaceAll(strings.ReplaceAll(s, "|", "\\|"), "\n", " ")
}

// gap is a figure of which little is known over all species.
type gap struct {
	figure *schema.Figure
	by     map[string]int // how many species have it, by the best quality of theirs
	lent   int            // how many have it of their type only
	none   int            // how many do not have it
}

// weak is how many species have nothing better than practice or memory, or nothing.
func (g gap) weak() int { return g.by["practice"] + g.by["memory"] + g.lent + g.none }

// gaps counts, for each figure, how well it is known over the built-in species.
func gaps(lib *plan.Library) []gap {
	var all []gap
	for _, what := range schema.Figures {
		g := gap{figure: what, by: map[string]int{}}
		for _, name := range lib.SpeciesNames() {
			best, lent := len(schema.Qualities), false
			lib.Species(name).Each(what, func(f *plan.Figure) {
				if f.Lent() {
					lent = true
					return
				}
				best = min(best, slices.IndexFunc(schema.Qualities, func(q schema.Choice) bool { return q.Name == f.Quality.V }))
			})
			switch {
			case best < len(schema.Qualities):
				g.by[schema.Qualities[best].Name]++
			case lent:
				g.lent++
			default:
				g.none++
			}
		}
		all = append(all, g)
	}
	return all
}
