package compile

import (
	"fmt"
	"strings"

	"vivary/plan"
	"vivary/plan/finding"
	"vivary/plan/finding/example"
	"vivary/schema"
)

// RulesPage returns the page of all rules, as Markdown, made from the registries.
func RulesPage() string {
	var b strings.Builder
	b.WriteString("# The rules\n\nThis page is generated from the registries: `go test ./compile -run Page -update`. In a terminal: `vivary why RULE`.\n\n")
	b.WriteString("`danger` harms an animal or a person, `error` cannot be understood or met: both refuse a build. `caution` and `advice` do not. An accept block silences a rule for a while, with a reason. It never silences those marked †, which can kill or are about the text of a plan; those marked ‡ it silences only where they refuse nothing.\n\n| rule | | what is wrong |\n|---|---|---|\n")
	for _, r := range Rules() {
		fmt.Fprintf(&b, "| [`%s`](#%s) | %s%s | %s |\n", r.ID, r.ID, r.Severity, silenceMarks[r.Silence], cell(r.Title))
	}
	for _, r := range Rules() {
		fmt.Fprintf(&b, "\n## %s\n\n%s %s\n\nWhat to do: %s\n\nSource: %s\n", r.ID, r.Title, r.Why, r.Instead, r.Source)
		show(&b, Example(r.ID))
	}
	return b.String()
}

func show(b *strings.Builder, e example.Example) {
	if e.Words != "" {
		fmt.Fprintf(b, "\n%s\n", e.Words)
	}
	if e.Found.Text != "" {
		fmt.Fprintf(b, "\n```hcl\n# found\n%s```\n", e.Found.Shown())
	}
	if e.NotFound.Text != "" {
		fmt.Fprintf(b, "\n```hcl\n# not found\n%s```\n", e.NotFound.Shown())
	}
}

// silenceMarks stand behind the severities of rules that cannot simply be silenced.
var silenceMarks = map[finding.Silence]string{finding.Never: " †", finding.OnlyCaution: " ‡"}

// SpeciesPage returns the page of every built-in figure with its source.
func SpeciesPage() string {
	var b strings.Builder
	lib := plan.NewLibrary()
	b.WriteString("# What is known of the species\n\nThis page is generated from the sheets in `schema/species` and `schema/feeders`: `go test ./compile -run Page -update`. Every figure says where it is from and how good that is:\n\n")
	for _, q := range schema.Qualities {
		fmt.Fprintf(&b, "- **%s**: %s\n", q.Name, q.Doc)
	}
	for _, name := range lib.SpeciesNames() {
		s := lib.Species(name)
		fmt.Fprintf(&b, "\n## %s\n\n%s, *%s*", name, s.Shown(), s.Latin.V)
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
		b.WriteString("\n\n| figure | value | quality | from | others say |\n|---|---|---|---|---|\n")
		for _, f := range s.Figures {
			figureRow(&b, lib, f)
		}
		b.WriteString("\n| need | longest | quality | from | |\n|---|---|---|---|---|\n")
		for _, n := range s.Needs {
			fmt.Fprintf(&b, "| `%s`%s | %s | %s | %s | %s |\n", n.Name.V, of(n.Stages), n.Longest.V, n.Quality.V, cell(lib.Cite(n.Cited)), cell(n.Disputed.V))
		}
	}
	b.WriteString("\n# What is known of feeders\n")
	for _, name := range lib.FeederNames() {
		f := lib.Feeder(name)
		fmt.Fprintf(&b, "\n## %s\n\n%s, *%s*.", name, f.Title.V, f.Latin.V)
		names(&b, " Hazards:", f.Hazards)
		b.WriteString("\n\n| figure | value | quality | from | others say |\n|---|---|---|---|---|\n")
		for _, s := range f.Sizes {
			value := s.Mass.V.String()
			if s.Length.Set() {
				value += ", " + s.Length.V.String()
			}
			fmt.Fprintf(&b, "| size `%s` | %s | %s | %s | %s |\n", s.Name.V, value, s.Quality.V, cell(lib.Cite(s.Cited)), cell(s.Note.V))
		}
		for _, x := range f.Figures {
			figureRow(&b, lib, x)
		}
	}
	return b.String()
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
