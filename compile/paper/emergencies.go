package paper

import (
	"cmp"
	"math"
	"slices"
	"strings"

	"vivary/compile"
	"vivary/compile/balance"
	"vivary/compile/climate"
	"vivary/compile/life"
	"vivary/compile/roster"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/quantity"
	"vivary/schema/wording"
)

// hazards is what may go wrong at some enclosures.
type hazards struct {
	r     *compile.Result
	lives []*life.Enclosure
	old   *Old // what is known of a plan that is refused; nil for one that is not
}

// emergencies is what to do after a sting, with an animal that is out, and with a box that is
// too hot.
func (c *hazards) emergencies() []Part {
	out := []Part{Title{Text: "If something goes wrong"}}
	out = append(out, stung(c.lives)...)
	out = append(out, c.escape()...)
	return append(out, emergency(&schema.Overheated)...)
}

func emergency(e *schema.Emergency) []Part {
	return []Part{Head{Text: e.Title}, List{Look: Steps, Items: items(e.Steps...)}}
}

// stung is what to do after a sting, a bite or hairs in the eye, for what lives in some
// enclosures and nothing else.
func stung(lives []*life.Enclosure) []Part {
	helps := roster.Helps(lives)
	stings := slices.ContainsFunc(helps, func(h roster.Help) bool { return h.Stings })
	var deadly, milder []Part
	for _, h := range helps {
		l := List{Head: h.Title, Look: Points, Items: items(pieces(h.Text)...)}
		if h.Stings && h.Aid != schema.AidDanger {
			l.Head += " sting or bite"
		}
		l.Head += ": " + strings.Join(h.Species, "; ")
		if h.Aid == schema.AidDanger {
			l.Look = Alarm
			deadly = append(deadly, l)
			continue
		}
		milder = append(milder, l)
	}
	var out []Part
	if stings {
		first, steps, _ := strings.Cut(schema.AidAlways[0], ": ")
		out = append(append(out, Head{Text: first}), deadly...)
		out = append(out, List{Look: Alarm, Items: items(sentences(schema.AidAlways[1])...)},
			List{Look: Steps, Items: items(pieces(steps)...)})
	}
	out = append(out, milder...)
	other := schema.AidOther
	if len(helps) == 0 {
		other = schema.AidAny
	}
	head, text, _ := strings.Cut(other, ": ")
	return append(out, List{Head: head, Look: Points, Items: items(pieces(text)...)})
}

// pieces parts a text of a table of ours into what is done, one thing each.
func pieces(text string) (out []string) {
	for _, s := range sentences(text) {
		for x := range strings.SplitSeq(strings.TrimSuffix(s, "."), "; ") {
			out = append(out, strings.ToUpper(x[:1])+x[1:])
		}
	}
	return out
}

// escape is what to do with an animal that is out of its box: for species that are a danger to
// life, and for all others.
func (c *hazards) escape() []Part {
	var out []Part
	danger := c.sheets(deadly)
	if len(danger) > 0 {
		e := schema.EscapeDanger
		e.Title += ": " + strings.Join(danger, "; ")
		out = append(out, emergency(&e)...)
	}
	if len(danger) == len(roster.SheetsOf(c.lives)) && len(danger) > 0 {
		return out
	}
	e := schema.Escape
	if len(danger) > 0 {
		e.Title = "Any other animal is out of its box"
	}
	var more []string
	if glow := c.sheets(func(s *plan.SpeciesSheet) bool { return !deadly(s) && s.Figure(schema.FigureGlow, "") != nil }); len(glow) > 0 {
		more = append(more, schema.EscapeGlow+": "+strings.Join(glow, "; "))
	}
	last := len(e.Steps) - 1
	e.Steps = slices.Concat(e.Steps[:last], more, e.Steps[last:])
	return append(out, emergency(&e)...)
}

// fall is how long an enclosure stays above what harms in a power cut.
type fall struct {
	text string // of a row of the table, without the names
	soon float64
	of   []*life.Enclosure
}

// outage is what to do when heat or power fails, with how long there is at each box, what is
// short of time first; nil where nothing is heated.
func (c *hazards) outage() []Part {
	if !slices.ContainsFunc(c.lives, func(l *life.Enclosure) bool { return l.Plan.Heated() }) {
		return nil
	}
	out := []Part{Title{Text: schema.Outage.Title}, List{Look: Steps, Items: items(schema.Outage.Steps...)}}
	if c.old != nil {
		return out
	}
	t := Table{Columns: []string{"Box", "Harmed below", "So cold, if the room stays as warm as it is", "So cold, if the house cools, with " + c.degrees(0) + " outside"}}
	for _, f := range c.falls() {
		t.Rows = append(t.Rows, append([]string{byShelf(f.of)}, strings.Split(f.text, "\x00")...))
	}
	return append(out, Head{Text: "How long there is"}, t,
		Para{Text: "Reckoned from the plan and not measured, for the air in the box and the coldest that the plan has for the room. In brackets the shortest and the longest that is to be expected: count on the shortest.", Small: true})
}

// byShelf names boxes that have equally long, those of a rack together: whoever carries or wraps
// them goes shelf by shelf.
func byShelf(of []*life.Enclosure) string {
	var racks []string
	at := map[string][]*life.Enclosure{}
	for _, l := range of {
		k := l.Plan.Rack.V
		if at[k] == nil {
			racks = append(racks, k)
		}
		at[k] = append(at[k], l)
	}
	for i, k := range racks {
		text := named(at[k])
		if k != "" {
			text = "rack " + k + ": " + text
		}
		racks[i] = text
	}
	return strings.Join(racks, "; ")
}

// falls are the rows of that table, by the shortest time.
func (c *hazards) falls() []fall {
	var out []fall
	for _, l := range c.lives {
		text, soon := c.fall(l)
		if text == "" {
			continue
		}
		k := slices.IndexFunc(out, func(f fall) bool { return f.text == text })
		if k < 0 {
			k = len(out)
			out = append(out, fall{text: text, soon: soon})
		}
		out[k].of = append(out[k].of, l)
	}
	slices.SortStableFunc(out, func(a, b fall) int { return cmp.Compare(a.soon, b.soon) })
	return out
}

// fall words how long an enclosure stays above what harms, and how soon that may be over in
// minutes. What is not heated is as its room is, and has no row unless the house may cool.
func (c *hazards) fall(l *life.Enclosure) (text string, soon float64) {
	b, ok := balance.Of(c.r.Plan, l.Plan, l)
	if !ok || !b.Limited() {
		return strings.Join([]string{"not known", "not known: the plan does not say enough", "not known"}, "\x00"), math.MaxFloat64
	}
	stays, cools := b.Cooldown(), b.ColdHouse()
	limit := quantity.FormatAtLeast(float64(b.HardLow), l.Plan.Degrees())
	return strings.Join([]string{limit, lasts(stays.Air), lasts(cools.Air)}, "\x00"), float64(min(stays.Air.Low, cools.Air.Low))
}

// lasts words a time until something has fallen to a limit.
func lasts(b climate.Band[climate.Minute]) string {
	switch {
	case math.IsInf(float64(b.Likely), 1) && math.IsInf(float64(b.Low), 1):
		return "it does not fall so far"
	case b.Likely <= 0:
		return "at once"
	}
	return wording.Lasting(b)
}

func (c *hazards) degrees(v float64) string {
	return quantity.Format(v, c.r.Plan.Units.Of(quantity.Celsius))
}
