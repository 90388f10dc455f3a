package assist

import (
	"strings"

	"vivary/plan"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/quantity"
	"vivary/schema/wording"
)

// aboutValue explains what stands in a value.
func (p *Page) aboutValue(w *where, a *schema.Attr) string {
	switch a.Kind {
	case schema.Word:
		return choice(a.Choices, w.whole) + p.beside(w, a)
	case schema.Words:
		var all []string
		for part := range strings.SplitSeq(w.whole, ",") {
			if text := choice(a.Choices, strings.TrimSpace(part)); text != "" {
				all = append(all, text)
			}
		}
		return strings.Join(all, "  \n") + p.beside(w, a)
	case schema.Quantity, schema.Range, schema.Size, schema.Face2D, schema.Count, schema.Numbers, schema.Number, schema.Whole, schema.Truth:
		return strings.TrimLeft(told(w.whole, a)+p.beside(w, a)+p.schedule(w, a), "\n")
	case schema.Date:
		return p.date(w.whole)
	case schema.On, schema.Every, schema.Cron:
		return strings.TrimLeft(p.onDays(w.whole)+p.schedule(w, a), "\n")
	case schema.Prey, schema.Menu:
		return p.fed(w.whole)
	}
	switch a.Ref {
	case "":
		return choice(a.Choices, w.whole)
	case "template", "dates", "calendar":
		for _, n := range p.known(w, a.Ref) {
			if n.name == w.whole {
				return n.said()
			}
		}
	}
	return p.about(a.Ref, w.whole)
}

// choice says what a word of a choice means, whichever of its names stands there.
func choice(all []schema.Choice, written string) string {
	called := schema.Called(all, written)
	for _, c := range all {
		if c.Name == called {
			return "`" + c.Name + "`: " + c.Doc
		}
	}
	return ""
}

// told is a value in the units of the other kind of keeper: "" where both have the same.
func told(written string, a *schema.Attr) string {
	parse := func(d quantity.Dimension) (other string) {
		if r, err := quantity.ParseRange(written, d); err == nil {
			for _, u := range []quantity.Units{quantity.Metric, quantity.Customary} {
				if !u.Same(r.Unit) {
					return u.TellRange(r)
				}
			}
		}
		return ""
	}
	var other string
	switch a.Kind {
	case schema.Quantity, schema.Range:
		other = parse(a.Dimension)
	case schema.Size:
		if s, err := quantity.ParseSize(written); err == nil {
			other = inOther(s.Unit, s.Length, s.Width, s.Height)
		}
	case schema.Face2D:
		if s, err := quantity.ParseFace(written); err == nil {
			other = inOther(s.Unit, s.Length, s.Width)
		}
	}
	if other == "" {
		return ""
	}
	return "**" + written + "** is " + other
}

// inOther tells lengths in the units of the other kind of keeper.
func inOther(u quantity.Unit, all ...float64) string {
	other := quantity.Customary
	if !quantity.Metric.Same(u) {
		other = quantity.Metric
	}
	var out []string
	for _, x := range all {
		out = append(out, strings.TrimSuffix(quantity.Format(x, other.Of(u)), " "+other.Of(u).String()))
	}
	return strings.Join(out, " x ") + " " + other.Of(u).String()
}

// schedule is what follows from a value that says how often something is done: its next days.
func (p *Page) schedule(w *where, a *schema.Attr) string {
	often := a.Kind == schema.On || a.Kind == schema.Every || a.Kind == schema.Cron || a.Dimension == quantity.Duration && a.In != nil
	e := p.enclosure(w.in)
	if !often || e == nil {
		return ""
	}
	name := w.in.label
	switch w.in.is {
	case schema.Care:
	case schema.Feeding:
		name = schema.KindFeed.Name + " " + name
	default:
		return ""
	}
	if text := p.care(e, name); text != "" {
		return "\n\n" + text
	}
	return ""
}

// date says which day of the week a day is, and how far off.
func (p *Page) date(written string) string {
	d, err := civil.Read(written)
	if err != nil {
		return ""
	}
	text := "**" + d.Words() + "**"
	switch n := int(d - p.Result.Today); {
	case n == 0:
		text += ": today"
	case n > 0:
		text += ": in " + wording.Days(n)
	default:
		text += ": " + wording.Days(-n) + " ago"
	}
	return text
}

// onDays says which days an item of a list of days stands for.
func (p *Page) onDays(written string) string {
	days, err := plan.ParseDays(written)
	if err != nil {
		return ""
	}
	var out []string
	for _, d := range days {
		if of := p.Result.Plan.DatesOf(d.Name); d.Kind == plan.NamedDays && of != nil {
			for _, x := range of.On {
				out = append(out, x.V.String())
			}
			continue
		}
		out = append(out, d.String())
	}
	if len(out) == 1 && out[0] == written {
		return ""
	}
	return "**" + written + "**: " + strings.Join(out, ", ")
}

// fed explains prey: the feeder, and the size that is meant.
func (p *Page) fed(written string) string {
	feeder, size := strings.TrimSpace(written), ""
	text := p.about("feeder", feeder)
	if n := strings.LastIndexByte(feeder, ' '); text == "" && n > 0 {
		feeder, size = feeder[:n], feeder[n+1:]
		text = p.about("feeder", feeder)
	}
	if f := p.Result.Plan.Library.Feeder(feeder); f != nil && f.Size(size) != nil {
		for _, x := range p.feeders() {
			if x.Label == feeder+" "+size {
				text = "**" + x.Label + "**: " + x.Detail + "\n\n" + text
			}
		}
	}
	return text
}
