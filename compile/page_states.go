package compile

import (
	"fmt"
	"regexp"
	"slices"
	"strings"

	"vivary/plan"
	"vivary/schema"
)

// manners are the marks of the manners in the table at a glance.
var manners = map[schema.Manner]string{schema.AsUsual: "yes", schema.Hatch: "h", schema.Outside: "o", schema.Held: "–"}

// StatesPage returns the page of what may be done in which state, as Markdown, made
// from the table of states and the species sheets that differ from it.
func StatesPage() string {
	var b strings.Builder
	b.WriteString(`# What may be done in which state

This page is generated from ` + "`schema/state_table.go`" + ` and the sheets in ` + "`schema/species`: `go test ./compile -run Page -update`" + `. It is written for a veterinarian or another keeper to read and correct: what the program puts into a round, or leaves out of it, while animals are ill, moulting, breeding, new or at rest, follows from these tables and from nothing else. Much of it is common practice among keepers and has no source; it says so.

Drinking water is never held. Two states at once: the stricter decides. A state of one animal counts for its companions where the care is of the whole box: no loose live prey while it must not be given to one of them, and no digging.

## At a glance

*yes*: as usual, though there may be something to mind. *h*: through the hatch or a gap of the lid, with tongs or a bottle; nothing is lifted, nothing is dug. *o*: from outside, nothing is opened. *–*: not now. A number behind it: not before that day of the state (*3+*), or at most once in so many days (*/7*).

`)
	b.WriteString("| state |")
	for r := schema.RowLook; r < schema.Rows; r++ {
		fmt.Fprintf(&b, " %s |", r)
	}
	b.WriteString("\n|---|" + strings.Repeat("---|", int(schema.Rows-schema.RowLook)) + "\n")
	for _, s := range schema.States {
		fmt.Fprintf(&b, "| [%s](#%s) |", s.Is, s.Name)
		for r := schema.RowLook; r < schema.Rows; r++ {
			fmt.Fprintf(&b, " %s |", glance(s.May[r]))
		}
		b.WriteString("\n")
	}
	for _, s := range schema.States {
		stateSection(&b, s)
	}
	lib := plan.NewLibrary()
	b.WriteString("\n# Where a species differs\n\nWhat is not named here is as in the tables above.\n")
	for _, name := range lib.SpeciesNames() {
		if s := lib.Species(name); len(s.States) > 0 {
			speciesStates(&b, lib, s)
		}
	}
	stateSources(&b, lib)
	return b.String()
}

// glance is a cell in a sign or two.
func glance(m schema.May) string {
	text := manners[m.Manner]
	if m.From > 0 {
		text += fmt.Sprintf(" %d+", m.From)
	}
	if m.Every > 0 {
		text += fmt.Sprintf(" /%d", m.Every)
	}
	return text
}

// stateSection lists the cells of a state, those that are alike in one line.
func stateSection(b *strings.Builder, s *schema.State) {
	fmt.Fprintf(b, "\n## %s\n\n*%s*: %s In a round: “%s”.", s.Name, s.Is, s.Doc, s.Rule)
	if s.Box {
		b.WriteString(" It is the whole box's.")
	}
	b.WriteString("\n\n| care | how | from |\n|---|---|---|\n")
	var order []schema.May
	rows := map[schema.May][]string{}
	for r := schema.RowLook; r < schema.Rows; r++ {
		m := s.May[r]
		if rows[m] == nil {
			order = append(order, m)
		}
		rows[m] = append(rows[m], r.String())
	}
	for _, m := range order {
		from := m.Source
		switch {
		case m == schema.May{}:
			from = ""
		case from == "":
			from = "common practice"
		}
		fmt.Fprintf(b, "| %s | %s | %s |\n", strings.Join(rows[m], ", "), cell(m.String()), from)
	}
}

// speciesStates lists what a sheet says of states, what is said of several in one
// line.
func speciesStates(b *strings.Builder, lib *plan.Library, s *plan.SpeciesSheet) {
	fmt.Fprintf(b, "\n## %s\n\n%s, *%s*.\n\n| state | care | how | quality | from | others say |\n|---|---|---|---|---|---|\n", s.Name.V, s.Shown(), s.Latin.V)
	var order []string
	states := map[string][]string{}
	for _, x := range s.States {
		how := x.May.String()
		if x.Is.Set() {
			how += "; it is “" + x.Is.V + "”"
		}
		if x.Rule.Set() {
			how += "; in a round “" + x.Rule.V + "”"
		}
		others := strings.TrimSpace(x.Disputed.V + " " + x.Note.V)
		line := fmt.Sprintf("| %s | %s | %s | %s | %s |\n", rowsOf(x), cell(how), x.Quality.V, cell(lib.Cite(x.Cited)), cell(others))
		if states[line] == nil {
			order = append(order, line)
		}
		states[line] = append(states[line], x.Name.V)
	}
	for _, line := range order {
		fmt.Fprintf(b, "| %s %s", strings.Join(states[line], ", "), line)
	}
}

func rowsOf(x *plan.State) string {
	if slices.Contains(x.Care.V, schema.AllRows) {
		return "everything"
	}
	var words []string
	for _, r := range x.Rows {
		words = append(words, r.String())
	}
	return strings.Join(words, ", ")
}

// stateSources lists the sources whose codes stand in the tables.
func stateSources(b *strings.Builder, lib *plan.Library) {
	code := regexp.MustCompile(`\b[A-Z][0-9]+[a-d]?\b`)
	b.WriteString("\n# Sources of the tables\n\n| code | |\n|---|---|\n")
	known := lib.SourceNames()
	var used []string
	for _, s := range schema.States {
		for _, m := range s.May {
			used = append(used, code.FindAllString(m.Source, -1)...)
		}
	}
	for _, name := range known {
		if slices.Contains(used, name) {
			fmt.Fprintf(b, "| %s | %s |\n", name, cell(lib.Cite(plan.Cited{Source: []plan.Written[string]{{V: name}}})))
		}
	}
}
