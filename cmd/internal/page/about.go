package page

import (
	"slices"
	"strconv"
	"strings"

	"vivary/compile"
	"vivary/compile/life"
	"vivary/compile/roster"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/wording"
)

// about is what everybody at an enclosure may know.
type about struct {
	Shown    string
	Common   string
	Latin    string
	Place    string
	Animals  []animals
	May      []may
	Cautions []caution
	First    []string
	Ring     []string
}

// animals are a group, with the state that it is in.
type animals struct {
	Name   string
	Text   string // "1 animal, adult"
	States []string
	Coming []string
}

// may is how some care may be done now.
type may struct {
	Manner string // "not now"
	Mark   string // for the style sheet: "held", "hatch", "outside", "usual"
	Rows   []string
}

type caution struct{ Text, For, Why string }

// aboutOf is what everybody at an enclosure may know.
func aboutOf(r *compile.Result, i int) about {
	l := r.Lives[i]
	out := about{Shown: l.Plan.Shown(), Animals: animalsOf(r, l), May: mayOf(r, l), Cautions: cautionsOf(r, i)}
	if s := l.Plan.Sheet; s != nil {
		out.Common, out.Latin = s.Shown(), s.Latin.V
		if strings.EqualFold(out.Common, out.Latin) {
			out.Common = ""
		}
	}
	if l.Plan.Place != nil {
		out.Place = l.Plan.Place.Shown()
	}
	if l.Plan.Rack.Set() {
		out.Place = strings.TrimPrefix(out.Place+", rack "+l.Plan.Rack.V, ", ")
	}
	for _, f := range r.Roster.Pressing[l] {
		if f.On(r.Today) {
			out.First = append(out.First, f.Text)
		}
	}
	each(l, func(asks []life.Ask, who string) {
		for k := range asks {
			if a := &asks[k]; a.From <= r.Today && (a.Until == 0 || r.Today < a.Until) {
				text := a.Text
				if who != "" {
					text += " (" + who + ")"
				}
				out.First = append(out.First, text)
			}
		}
	})
	return out
}

// each calls use for the questions of an enclosure, and of each of its groups.
func each(l *life.Enclosure, use func(asks []life.Ask, who string)) {
	use(l.Asks, "")
	for _, g := range l.Groups {
		who := ""
		if len(l.Groups) > 1 {
			who = calledGroup(g)
		}
		use(g.Asks, who)
	}
}

func animalsOf(r *compile.Result, l *life.Enclosure) (out []animals) {
	for _, g := range l.Groups {
		n, stage := g.Count(r.Today), g.Stage(r.Today)
		a := animals{Name: g.Animals.Shown(), Text: wording.Animals(n)}
		switch {
		case n == 0:
			a.Text = "none here now"
		case g.Guessed:
			a.Text = "here, how many is not said"
		}
		if stage != "" && n > 0 {
			a.Text += ", " + stage
		}
		if k := g.Instar(r.Today); k > 0 && n > 0 {
			a.Text += ", instar " + strconv.Itoa(k)
		}
		a.States = statesOf(g.Holds, r.Today)
		for _, x := range g.Windows {
			if x.Until > r.Today {
				a.Coming = append(a.Coming, x.Title+": "+wording.Dates(x.From, x.Until-1))
			}
		}
		out = append(out, a)
	}
	if all := statesOf(l.Holds, r.Today); len(all) > 0 {
		out = append(out, animals{Name: "All of them", States: all})
	}
	return out
}

// statesOf words the states of a day, and those that are to come.
func statesOf(holds []life.Hold, today civil.Date) (out []string) {
	for i := range holds {
		h := &holds[i]
		if h.Until <= today {
			continue
		}
		text := h.State.Is
		if h.Part {
			text = "some: " + text
		}
		if h.From > today {
			text = "from " + h.From.Words() + ": " + text
		}
		why := h.Why
		if h.End != "" {
			why = strings.TrimPrefix(why+"; "+h.End, "; ")
		}
		if why != "" {
			text += " (" + why + ")"
		}
		if h.State.Rule != "" {
			text += ": " + h.State.Rule
		}
		out = append(out, text)
	}
	return out
}

// cautionsOf is what to see to before any of the care of an enclosure.
func cautionsOf(r *compile.Result, i int) (out []caution) {
	var order []*schema.Caution
	kinds := map[*schema.Caution][]string{}
	for k := range r.Roster.Of[i] {
		e := &r.Roster.Of[i][k]
		for _, c := range roster.Cautions(e.Life, e.Kind, r.Today) {
			if kinds[c] == nil {
				order = append(order, c)
			}
			if !slices.Contains(kinds[c], e.Kind.Short()) {
				kinds[c] = append(kinds[c], e.Kind.Short())
			}
		}
	}
	for _, c := range order {
		out = append(out, caution{strings.ToUpper(c.Text[:1]) + c.Text[1:], wording.And(kinds[c]), c.Why})
	}
	return out
}
