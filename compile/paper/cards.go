package paper

import (
	"cmp"
	"math"
	"slices"
	"strings"

	"vivary/compile"
	"vivary/compile/balance"
	"vivary/compile/life"
	"vivary/compile/roster"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/quantity"
	"vivary/schema/wording"
)

// Cards are the cards for emergencies of a collection, to hang on a wall: each one side of paper, in
// large letters, with whom to ring; tables of many boxes have a side of their own. What is not so
// here has no card: nothing that stings, nothing that is heated. Lacking are the frames that the plan
// has no number for, to be filled in by hand.
func Cards(r *compile.Result) (d *Document, lacking []string) {
	c := &cards{&hazards{r: r, lives: inhabited(r)}, document(r, "Emergencies, "+r.Plan.Title())}
	for _, x := range publicNumbers(r.Plan) {
		if x.Phone == "" {
			lacking = append(lacking, x.Who)
		}
	}
	if len(c.lives) == 0 {
		c.card("No animal lives here by the plan", everybody, nil, nil)
		return c.d, lacking
	}
	stings, others := apart(stung(c.lives))
	if stings != nil {
		c.card("Somebody was stung or bitten", poisoned, stings, nil)
	}
	c.card("In the eye, or another bite or scratch", poisoned, others, nil)
	c.card("An animal is out", keepers, c.escape(), nil)
	c.card(schema.Fire.Title, firemen, []Part{steps(&schema.Fire)}, c.dangers())
	c.card(schema.Leaving.Title, keepers, []Part{steps(&schema.Leaving)}, []Part{Head{Text: "In this order"}, c.order()})
	if parts := c.outage(); parts != nil {
		c.card(schema.Outage.Title, keepers, parts[1:2], parts[2:]) // the title stands above the numbers
	}
	c.card(schema.Overheated.Title, keepers, []Part{steps(&schema.Overheated)}, nil)
	c.card(schema.HeatWave.Title, keepers, []Part{steps(&schema.HeatWave)}, c.margins())
	return c.d, lacking
}

// cards are the cards in the making.
type cards struct {
	*hazards
	d *Document
}

// Whom a card names: those who are rung for it, and no more than stand in a few lines.
type ring int

const (
	everybody ring = iota
	poisoned       // the emergency number, the poison centre, the keepers
	firemen        // the emergency number, the keepers
	keepers        // the keepers, a veterinarian and others, the emergency number
)

// mostNumbers is how many numbers stand on a card.
const mostNumbers = 5

// fewRows is how many rows of a table stand beneath the steps of a card; a longer one has a side of
// its own.
const fewRows = 4

// card adds a card: what is done, and a table that belongs to it.
func (c *cards) card(title string, who ring, does, table []Part) {
	head := title + " · " + c.r.Plan.Title()
	add := func(parts ...Part) { c.d.Sheets = append(c.d.Sheets, Sheet{Head: head, Parts: parts, Large: true}) }
	parts := append([]Part{Title{Text: title}, c.ring(who)}, does...)
	last := Para{Text: schema.Operator}
	rows := 0
	for _, p := range table {
		if t, is := p.(Table); is {
			rows += len(t.Rows)
		}
	}
	if rows > fewRows {
		add(append(parts, last)...)
		add(append([]Part{Title{Text: title}}, table...)...)
		return
	}
	add(append(append(parts, table...), last)...)
}

// apart parts what is done after a sting from what is done for all else that hurts.
func apart(all []Part) (stings, others []Part) {
	for i, p := range all {
		if l, is := p.(List); is && i > 0 && l.Head != "" && !strings.Contains(l.Head, "sting") && l.Look == Points {
			others = append(others, p)
		} else {
			stings = append(stings, p)
		}
	}
	if len(stings) == 1 { // the one line for what has no venom
		return nil, all
	}
	return stings, others
}

func steps(e *schema.Emergency) Part { return List{Look: Steps, Items: items(e.Steps...)} }

// inhabited are the enclosures in which animals live.
func inhabited(r *compile.Result) (out []*life.Enclosure) {
	for _, l := range r.Lives {
		if slices.ContainsFunc(l.Groups, func(g *life.Group) bool { return g.Count(r.Today) > 0 }) {
			out = append(out, l)
		}
	}
	return out
}

// ring is whom a card names.
func (c *cards) ring(who ring) Numbers {
	public := publicNumbers(c.r.Plan)
	var own []Number
	for _, k := range c.r.Plan.Keepers {
		if k.Phone.Set() {
			own = append(own, Number{k.Shown(), k.Phone.V})
		}
	}
	var all []Number
	switch who {
	case poisoned:
		all = append(public, own...)
	case firemen:
		all = append(public[:1], own...)
	case keepers:
		all = slices.Concat(own[:min(len(own), 2)], contacts(c.r.Plan), public[:1])
	default:
		all = slices.Concat(public, contacts(c.r.Plan), own)
	}
	return Numbers{all[:min(len(all), mostNumbers)]}
}

// deadly reports whether the venom of a species is a danger to life.
func deadly(s *plan.SpeciesSheet) bool {
	return s != nil && roster.Says(s, schema.FigureVenom, "medically significant")
}

// dangers is what those who come are told: how many boxes stand where, and which are a danger to
// life.
func (c *hazards) dangers() []Part {
	t := Table{Columns: []string{"Where", "Boxes", "A danger to life"}}
	for _, in := range c.rooms() {
		var names []string
		for _, s := range roster.SheetsOf(in.of) {
			var of []*life.Enclosure
			for _, l := range in.of {
				if l.Plan.Sheet == s && deadly(s) {
					of = append(of, l)
				}
			}
			if len(of) > 0 {
				names = append(names, roster.NamedTwice(s)+": "+named(of))
			}
		}
		said := "none"
		if len(names) > 0 {
			said = strings.Join(names, "; ")
		}
		where := in.name
		if in.locked {
			where += " (locked)"
		}
		t.Rows = append(t.Rows, []string{where, wording.Number(float64(len(in.of))), said})
	}
	return []Part{Head{Text: "What lives where"}, t}
}

// order is in which order boxes are carried out: those that anybody may carry first, room after
// room; what is a danger to life last, by somebody trained.
func (c *hazards) order() Part {
	t := Table{Columns: []string{"", "Boxes", "Room"}}
	n := 0
	row := func(who string, danger bool) {
		for _, in := range c.rooms() {
			var of []*life.Enclosure
			for _, l := range in.of {
				if deadly(l.Plan.Sheet) == danger {
					of = append(of, l)
				}
			}
			if len(of) > 0 {
				n++
				t.Rows = append(t.Rows, []string{wording.Number(float64(n)), named(of) + who, in.name})
			}
		}
	}
	row("", false)
	row(": by somebody trained, or left", true)
	return t
}

// room is the boxes of one room, in walking order.
type room struct {
	name   string
	locked bool
	of     []*life.Enclosure
}

func (c *hazards) rooms() (out []room) {
	for _, l := range c.lives {
		name, locked := "in no room of the plan", false
		if p := l.Plan.Place; p != nil {
			name, locked = p.Shown(), p.Locked.V
		}
		k := slices.IndexFunc(out, func(x room) bool { return x.name == name })
		if k < 0 {
			k = len(out)
			out = append(out, room{name: name, locked: locked})
		}
		out[k].of = append(out[k].of, l)
	}
	return out
}

// margins is how much each box has to spare on the hottest days that its room has, what has least
// first; nothing where no limit is known.
func (c *hazards) margins() []Part {
	type margin struct {
		text  string
		spare float64
		of    []*life.Enclosure
	}
	var all []margin
	for _, l := range c.lives {
		b, ok := balance.Of(c.r.Plan, l.Plan, l)
		if !ok || !b.Limited() || math.IsInf(float64(b.HardHigh), 0) {
			continue
		}
		u, air := l.Plan.Degrees(), b.Warmest().Air
		text := quantity.FormatAtMost(float64(b.HardHigh), u) + "\x00" + wording.Degrees(air, u)
		k := slices.IndexFunc(all, func(m margin) bool { return m.text == text })
		if k < 0 {
			k = len(all)
			all = append(all, margin{text: text, spare: float64(b.HardHigh - air.High)})
		}
		all[k].of = append(all[k].of, l)
	}
	if len(all) == 0 {
		return nil
	}
	slices.SortStableFunc(all, func(a, b margin) int { return cmp.Compare(a.spare, b.spare) })
	t := Table{Columns: []string{"Box", "Harmed above", "The air in it when its room is as warm as the plan has it"}}
	for _, m := range all {
		t.Rows = append(t.Rows, append([]string{named(m.of)}, strings.Split(m.text, "\x00")...))
	}
	return []Part{Head{Text: "What has least to spare"}, t, Para{Text: "Reckoned from the plan and not measured. In a hotter room each is as much hotter.", Small: true}}
}
