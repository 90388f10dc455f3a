package paper

import (
	"slices"
	"strconv"
	"strings"

	"vivary/compile/life"
	"vivary/compile/roster"
	"vivary/compile/rounds"
	"vivary/plan"
	"vivary/schema/civil"
	"vivary/schema/wording"
)

// gathered puts enclosures together of which the same is said, in the order in which each is
// said first.
type gathered struct {
	said []string
	of   map[string][]*life.Enclosure
}

func (g *gathered) add(text string, l *life.Enclosure) {
	if g.of == nil {
		g.of = map[string][]*life.Enclosure{}
	}
	if g.of[text] == nil {
		g.said = append(g.said, text)
	}
	if !slices.Contains(g.of[text], l) {
		g.of[text] = append(g.of[text], l)
	}
}

// names are the enclosures of which a text is said: "Tub 1 to 3".
func (g *gathered) names(text string) string { return named(g.of[text]) }

func named(lives []*life.Enclosure) string {
	all := make([]*plan.Enclosure, len(lives))
	for i, l := range lives {
		all[i] = l.Plan
	}
	return rounds.Named(all)
}

// animals is who lives where.
func (c *cover) animals() Part {
	var g gathered
	for _, l := range c.lives {
		g.add(strings.Join(inhabitants(l, c.r.Today), "; "), l)
	}
	t := Table{Columns: []string{"Box", "Who lives there"}}
	for _, text := range g.said {
		t.Rows = append(t.Rows, []string{g.names(text), text})
	}
	return t
}

// inhabitants are the animals of an enclosure, a line for each species, with how many they
// are and how far grown.
func inhabitants(l *life.Enclosure, today civil.Date) []string {
	var out []string
	if l.Plan.Sheet != nil {
		out = append(out, roster.NamedTwice(l.Plan.Sheet))
	}
	for _, g := range l.Groups {
		n := g.Count(today)
		if n == 0 {
			continue
		}
		text := wording.Animals(n)
		if g.Guessed {
			text = "animals, how many is not known"
		}
		if stage := g.Stage(today); stage != "" {
			text += ", " + stage
		}
		if len(l.Groups) > 1 {
			text = g.Animals.Shown() + ": " + text
		}
		if g.Sheet != nil && g.Sheet != l.Plan.Sheet {
			text += ", " + roster.NamedTwice(g.Sheet)
		}
		out = append(out, text)
	}
	if l.Loose > 0 {
		out = append(out, strconv.Itoa(l.Loose)+" out of the box, and not found")
	}
	return out
}

// expected is in which states animals are, and what may happen, while somebody stands in.
func (c *cover) expected() (out []string) {
	first, last := c.span()
	type line struct {
		stretch rounds.Stretch
		since   string
	}
	var order []line
	of := map[line][]*life.Enclosure{}
	var may gathered
	for _, l := range c.lives {
		for _, s := range rounds.Stretches(l) {
			if s.Until <= first || s.From > last {
				continue
			}
			x := line{rounds.Stretch{Group: s.Group, Text: s.Text}, ""}
			if s.From > first {
				x.since = "From " + s.From.Short() + ": "
			}
			if of[x] == nil {
				order = append(order, x)
			}
			of[x] = append(of[x], l)
		}
		for _, g := range l.Groups {
			for i := range g.Windows {
				if w := &g.Windows[i]; w.Until > first && w.From <= last {
					may.add(w.Title+", "+w.From.Words()+" to "+(w.Until-1).Words()+": "+w.Text, l)
				}
			}
		}
	}
	for _, x := range order {
		out = append(out, x.since+x.stretch.Line(of[x]))
	}
	for _, text := range may.said {
		out = append(out, may.names(text)+": "+text)
	}
	return out
}

// gauges is what the thermometers should show while somebody stands in.
func (c *cover) gauges() Table {
	first, _ := c.span()
	h := c.r.Horizon
	var g gathered
	const between = "\x00"
	for _, l := range c.lives {
		for _, s := range c.showing(l) {
			since := ""
			if s.From > int(first-h.From) {
				since = "from " + h.Date(s.From).Short() + ": "
			}
			g.add(since+s.Text+between+s.Harm, l)
		}
	}
	t := Table{Columns: []string{"Box", "Should show", "Harms outside"}}
	for _, text := range g.said {
		should, harm, _ := strings.Cut(text, between)
		t.Rows = append(t.Rows, []string{g.names(text), should, harm})
	}
	return t
}

// meals is what is given on each visit, so that portions can be laid out and labelled by day.
func (c *cover) meals() Table {
	t := Table{Columns: []string{"Visit", "For", "Portion"}}
	for i := range c.lists {
		l := c.lists[i]
		visit := l.Date.Short() + ", " + wording.Clock(l.Round.Clock.V, c.r.Plan.Units)
		for _, d := range l.Due {
			if !d.Kind.Meal {
				continue
			}
			var names []string
			for _, s := range d.Stops {
				names = append(names, s.Shown)
			}
			t.Rows = append(t.Rows, []string{visit, strings.Join(names, ", "), d.Text})
		}
	}
	return t
}
