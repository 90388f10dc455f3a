package compile

import (
	"fmt"
	"strings"

	"vivary/compile/stock"
	"vivary/plan"
	"vivary/schema"
)

// feedersPage returns the page on which feeders are looked up: a table of all, what each is
// and what is in it, and whose word that is, once, at the end.
func feedersPage(lib *plan.Library) string {
	var b strings.Builder
	b.WriteString("# Feeder animals\n\n" + generated + " In a terminal: `vivary why FEEDER`.\n\n" +
		"In a plan prey is a feeder and its size, `prey = \"cricket adult\"`; other names of a feeder are read as well. Energy, water, protein and fat are of the wet animal. How good a figure is stands beside it: [SPECIES.md](../SPECIES.md) says what the words mean; the number is that of its [source](#sources). A letter or two with a number, such as K121, is one source: `vivary why K121`.\n\n" +
		"| feeder | also | sizes, by length | energy | fat | calcium to phosphorus | of all meals at most |\n|---|---|---|---|---|---|---|\n")
	for _, name := range lib.FeederNames() {
		f := lib.Feeder(name)
		fmt.Fprintf(&b, "| [`%s`](#%s)%s | %s | %s | %s | %s | %s | %s |\n", name, name, besides(f, name), cell(list(f.Also)), sizesInShort(f),
			stated(f, schema.FeederEnergy), stated(f, schema.FeederFat), stated(f, schema.FeederCalciumToPhosphorus), stated(f, schema.FeederShareMax))
	}
	cites := &cites{lib: lib, number: map[string]int{}}
	for _, name := range lib.FeederNames() {
		cites.feeder(&b, name)
	}
	b.WriteString("\n## Sources\n\n")
	for i, text := range cites.texts {
		fmt.Fprintf(&b, "%d. %s\n", i+1, text)
	}
	return b.String()
}

// besides returns the title of a feeder where its name does not say it.
func besides(f *plan.FeederSheet, name string) string {
	if strings.EqualFold(strings.ReplaceAll(f.Title.V, "-", " "), strings.ReplaceAll(name, "-", " ")) {
		return ""
	}
	return " " + cell(f.Title.V)
}

func list(of []plan.Written[string]) string {
	var s []string
	for _, w := range of {
		s = append(s, w.V)
	}
	return strings.Join(s, ", ")
}

func sizesInShort(f *plan.FeederSheet) string {
	var out []string
	for _, s := range f.Sizes {
		text := "`" + s.Name.V + "`"
		if s.Length.Set() {
			text += " " + s.Length.V.String()
		}
		out = append(out, text)
	}
	return strings.Join(out, ", ")
}

// stated returns what a sheet says of a figure, or nothing.
func stated(f *plan.FeederSheet, what *schema.Figure) string {
	for _, x := range f.Figures {
		if x.What == what {
			return cell(x.Value.V)
		}
	}
	return ""
}

// cites numbers what is cited, in the order in which it comes up.
type cites struct {
	lib    *plan.Library
	number map[string]int
	texts  []string
}

// of returns how good a figure is, and the number of whose word it is.
func (c *cites) of(f plan.Cited) string {
	text := c.lib.Cite(f)
	if c.number[text] == 0 {
		c.texts = append(c.texts, text)
		c.number[text] = len(c.texts)
	}
	return fmt.Sprintf("%s [%d]", f.Quality.V, c.number[text])
}

func (c *cites) feeder(b *strings.Builder, name string) {
	f := c.lib.Feeder(name)
	fmt.Fprintf(b, "\n## %s\n\n%s, *%s*.", name, f.Title.V, f.Latin.V)
	names(b, " Also", f.Also)
	if f.Note.Set() {
		b.WriteString(" " + f.Note.V)
	}
	b.WriteString("\n")
	if len(f.Hazards) > 0 {
		b.WriteString("\nMind:\n\n")
		for _, h := range f.Hazards {
			fmt.Fprintf(b, "- %s\n", h.V)
		}
	}
	var said remarks
	if len(f.Sizes) > 0 {
		b.WriteString("\n| size | weight | length | energy | how sure |\n|---|---|---|---|---|\n")
	}
	for _, s := range f.Sizes {
		length, energy := "", ""
		if s.Length.Set() {
			length = s.Length.V.String()
		}
		if s.Energy.Set() {
			energy = s.Energy.V.String()
		}
		fmt.Fprintf(b, "| `%s` | %s | %s | %s | %s |\n", s.Name.V, s.Mass.V, length, energy, c.of(s.Cited))
		said.add(s.Name.V, s.Note.V)
	}
	if len(f.Figures) > 0 {
		b.WriteString("\n| figure | | | how sure |\n|---|---|---|---|\n")
	}
	for _, x := range f.Figures {
		fmt.Fprintf(b, "| `%s` | %s | %s | %s |\n", x.Name.V, cell(x.Value.V), cell(x.What.Doc), c.of(x.Cited))
		said.add(x.Name.V, strings.TrimSpace(x.Disputed.V+" "+x.Note.V))
	}
	c.develops(b, f, &said)
	c.upkeep(b, f, &said)
	said.write(b)
}

// upkeep tells what is done for a feeder in tubs and cultures.
func (c *cites) upkeep(b *strings.Builder, f *plan.FeederSheet, said *remarks) {
	if len(f.Upkeep) == 0 {
		return
	}
	b.WriteString("\n| upkeep | what to do | every | how sure |\n|---|---|---|---|\n")
	for _, u := range f.Upkeep {
		fmt.Fprintf(b, "| `%s` | %s | %s | %s |\n", u.Name.V, cell(u.Task.V), u.Every.V, c.of(u.Cited))
		said.add(u.Name.V, u.Note.V)
	}
}

// develops tells how long the stages of a feeder take.
func (c *cites) develops(b *strings.Builder, f *plan.FeederSheet, said *remarks) {
	if len(f.Stages) == 0 {
		return
	}
	b.WriteString("\n| develops | observed | degree-days above | between | how sure |\n|---|---|---|---|---|\n")
	for _, d := range f.Stages {
		name := strings.TrimSpace(d.Size.V + " " + d.Name.V)
		observed, line, between := stock.Told(d)
		fmt.Fprintf(b, "| `%s` | %s | %s | %s | %s |\n", name, observed, line, between, c.of(d.Cited))
		said.add(name, d.Note.V)
	}
}

// remarks are what there is to say of figures, once for all of which it is said.
type remarks struct {
	texts []string
	about map[string][]string
}

func (r *remarks) add(name, text string) {
	if text == "" {
		return
	}
	if r.about == nil {
		r.about = map[string][]string{}
	}
	if r.about[text] == nil {
		r.texts = append(r.texts, text)
	}
	r.about[text] = append(r.about[text], "`"+name+"`")
}

func (r *remarks) write(b *strings.Builder) {
	if len(r.texts) > 0 {
		b.WriteString("\n")
	}
	for _, text := range r.texts {
		fmt.Fprintf(b, "- %s: %s\n", strings.Join(r.about[text], ", "), strings.ReplaceAll(text, "\n", " "))
	}
}
