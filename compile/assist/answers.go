package assist

import (
	"slices"
	"strings"

	"vivary/compile/explain"
	"vivary/plan"
	"vivary/schema"
)

// sorts says as which sort of explain.Topics something is explained that an attribute or a label
// names, and which parts of the answer are short enough for a glance. No part is all of them.
var sorts = map[string]struct {
	topic string
	parts []string
	lines int // of each part
}{
	"rack":           {"racks", nil, 6},
	"room":           {"rooms", nil, 6},
	"keeper":         {"keepers", nil, 8},
	"away":           {"keepers", nil, 8},
	"rota":           {"rotas", nil, 5},
	"type":           {"types", []string{""}, 6},
	"feeder":         {"feeders", []string{"", "Hazards", "Who is fed it"}, 3},
	"source":         {"sources", nil, 6},
	"need":           {"needs", nil, 5},
	"figure":         {"figures", nil, 5},
	schema.NamesKind: {"kinds", nil, 7},
	schema.NamesRule: {"rules", []string{""}, 7},
}

// about explains something that is named, in short: "" where nothing is known of it.
func (p *Page) about(ref, name string) string {
	switch ref {
	case schema.Species.Name:
		return p.aboutSpecies(name)
	case schema.Enclosure.Name:
		if all := explain.Glance(p.Result, name); len(all) > 0 {
			return short(all[0], "", glances) + more(name)
		}
	case schema.Round.Name:
		if all := explain.GlanceRound(p.Result, name); len(all) > 0 {
			return short(all[0], "", glances) + more(name)
		}
	}
	as, is := sorts[ref]
	if !is || name == "" {
		return ""
	}
	all := explain.As(p.Result, as.topic, name)
	if len(all) == 0 {
		return ""
	}
	return short(all[0], name, as.lines, as.parts...)
}

// short words an answer in markdown: its title, and some lines of the parts whose headings begin
// so. Where there is more it says how to see it.
func short(a explain.Answer, name string, lines int, heads ...string) string {
	text := "**" + a.Title + "**\n"
	left := false
	for _, part := range a.Parts {
		if len(heads) > 0 && !slices.ContainsFunc(heads, func(h string) bool { return h == part.Head || h != "" && strings.HasPrefix(part.Head, h) }) || part.Code != "" {
			left = true
			continue
		}
		if part.Head != "" {
			text += "\n*" + part.Head + "*\n"
		}
		text += "\n"
		for i := range part.Lines {
			if i == lines {
				left = true
				break
			}
			text += lineOf(part.Lines[i]) + "\n"
		}
	}
	text = strings.TrimRight(text, "\n")
	if left && name != "" {
		text += more(name)
	}
	return text
}

// glances is more lines than a part of a glance has.
const glances = 10

// more says how to see all.
func more(name string) string { return "\n\nMore: `vivary why " + quoted(name) + "`" }

// quoted is a name as a shell takes it for one word.
func quoted(name string) string {
	if strings.Contains(name, " ") {
		return `"` + name + `"`
	}
	return name
}

// lineOf is one fact of an answer, with what belongs to it.
func lineOf(l explain.Line) string {
	text := "- "
	if l.Name != "" {
		text += "**" + l.Name + "**: "
	}
	text += l.Text
	for _, u := range l.Under {
		text += "  \n  " + u
	}
	return text
}

// care explains a care of an enclosure: what is done, when next, where it is from, and why it is
// or is not done today.
func (p *Page) care(e *plan.Enclosure, name string) string {
	of := e.Name.V + "/" + strings.ReplaceAll(name, " ", "-")
	all := explain.As(p.Result, "cares", of)
	if len(all) == 0 {
		return ""
	}
	a := all[0]
	if today := explain.On(p.Result, of, p.Result.Today); len(today) > 0 {
		a.Parts = append(slices.Clone(a.Parts), explain.Part{Lines: today[0].Parts[0].Lines[:1]})
	}
	return short(a, "", 8)
}

// animals explains some animals of an enclosure.
func (p *Page) animals(e *plan.Enclosure, group string) string {
	if all := explain.Animals(p.Result, e, group); len(all) > 0 {
		return short(all[0], "", glances) + more(e.Name.V)
	}
	return ""
}

// shown are the figures of a species that are told at a glance.
var shown = []*schema.Figure{
	schema.FigureTemperatureTarget, schema.FigureWarmSpot, schema.FigureHumidityTarget, schema.FigureFloorFirst, schema.FigureSubstrateDepthMin,
	schema.FigureKeeping, schema.FigureVenom, schema.FigureHairs,
}

// aboutSpecies explains a species: how it is kept, and what is dangerous.
func (p *Page) aboutSpecies(name string) string {
	all := explain.As(p.Result, "species", name)
	if len(all) == 0 {
		return ""
	}
	text := "**" + all[0].Title + "**\n"
	if len(all) > 1 {
		text = "**Several are called so**\n"
		for _, a := range all {
			text += "\n- " + a.Title
		}
		return text
	}
	left := len(all[0].Parts) > 0
	if left {
		text += "\n" + all[0].Parts[0].Lines[0].Text + "\n\n"
	}
	for _, part := range all[0].Parts {
		for _, l := range part.Lines {
			if slices.ContainsFunc(shown, func(f *schema.Figure) bool { return f.Name == l.Name }) {
				l.Under = l.Under[:min(1, len(l.Under))]
				text += lineOf(l) + "\n"
			}
		}
	}
	_, named, _ := strings.Cut(all[0].Title, " ")
	named, _, _ = strings.Cut(named, ":")
	return strings.TrimRight(text, "\n") + more(named)
}
