package paper

import (
	"slices"
	"strings"

	"vivary/compile"
	"vivary/compile/daylist"
	"vivary/compile/life"
	"vivary/compile/qrcode"
	"vivary/compile/roster"
	"vivary/compile/rounds"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/wording"
)

// mostVisits is how many lists stand on the sheet of somebody who stands in: more paper is not
// carried along, and the lists of a day months ahead will have changed.
const mostVisits = 60

// cover is what the sheet of somebody who stands in is made from.
type cover struct {
	hazards // of whom they care for; old has the lists of a plan that is refused
	stint   *roster.Stint
	lists   []*daylist.List
	after   bool // there are more lists than stand here
}

// Cover is the sheet of somebody who stands in for a keeper, one of r.Roster.Stints: when they
// come, whom to ring, what to do when something goes wrong, what is normal, and the list of
// each visit. Address is where their own page is, "" for none; one of which no code can be made
// is an error.
func Cover(r *compile.Result, stint *roster.Stint, address string) (*Document, error) {
	return covering(r, stint).document(address)
}

func (c *cover) document(address string) (*Document, error) {
	r, stint := c.r, c.stint
	d := document(r, "Standing in for "+c.shown(stint.For)+", "+r.Plan.Title())
	if c.old != nil {
		d.refused()
	}
	head := "Standing in for " + c.shown(stint.For) + " · " + c.shown(stint.Keeper) + " · " + r.Plan.Title()
	first := c.front()
	if address != "" {
		code, err := coded(address, "Your own page, for a phone", 40, qrcode.Clean)
		if err != nil {
			return nil, err
		}
		first = append(first, code)
	}
	d.add(head, first...)
	d.add(head, c.emergencies()...)
	if outage := c.outage(); outage != nil {
		d.add(head, outage...)
	}
	d.add(head, c.usual()...)
	if c.old != nil {
		for items := range c.old.days() {
			d.oldDay(r, items[0].Day, append(c.old.known(r, items[0].Day), asked(items)...))
		}
	} else {
		for lists := range byDay(c.lists) {
			d.day(r, lists, false)
		}
	}
	d.add(head, c.back()...)
	return d, nil
}

// covering finds the lists of a stint, and whom they are about: those for whom somebody stands
// in, and those of their own rounds on these days.
func covering(r *compile.Result, stint *roster.Stint) *cover {
	c := &cover{hazards: hazards{r: r}, stint: stint}
	c.find()
	cared := r.Roster.CaredFor(stint)
	for _, l := range r.Lives {
		passed := func(x *daylist.List) bool { return x.Passes(l.Plan.Name.V) }
		if slices.Contains(cared, l) || slices.ContainsFunc(c.lists, passed) {
			c.lives = append(c.lives, l)
		}
	}
	return c
}

// coded is a code for an address that is no wider than so many millimetres.
func coded(address, words string, millimetres float64, wear qrcode.Wear) (Code, error) {
	code, err := qrcode.Of(address, wear)
	if err != nil {
		return Code{}, err
	}
	svg, readable := code.Print(millimetres, words)
	if !readable && wear == qrcode.Worn {
		return coded(address, words, millimetres, qrcode.Clean)
	}
	return Code{Words: words, Address: address, svg: svg}, nil
}

func (c *cover) shown(keeper string) string { return daylist.Shown(c.r.Plan, keeper) }

// find finds the lists of the visits that are still to come.
func (c *cover) find() {
	h := c.r.Horizon
	last := h.Today
	for i := c.stint.Next(h.Today); i >= 0; i = c.stint.Next(i + 1) {
		last = i
	}
	lists := daylist.Of(c.r, daylist.Asked{Days: last - h.Today + 1, Keeper: c.stint.Keeper})
	for _, l := range lists {
		if i, ok := h.Index(l.Date); !ok || !c.stint.Days.Has(i) {
			continue
		}
		if len(c.lists) == mostVisits {
			c.after = true
			return
		}
		c.lists = append(c.lists, l)
	}
}

// front is the first page: when, whom to ring, how.
func (c *cover) front() []Part {
	out := []Part{
		Title{Text: "Standing in for " + c.shown(c.stint.For), Under: []string{c.shown(c.stint.Keeper) + " · " + c.r.Plan.Title()}},
		Head{Text: "Whom to ring"}, c.numbers(),
		Head{Text: "How"}, List{Look: Alarm, Items: items(schema.StandIn...)},
	}
	if visits := c.visits(); len(visits) > 0 {
		out = append(out, Head{Text: "Your visits"}, List{Look: Ticks, Items: items(visits...)})
	}
	out = append(out, Para{Text: c.until()})
	if c.after {
		out = append(out, Para{Text: "The lists of the days after " + c.lists[len(c.lists)-1].Date.Words() + " do not stand here: print this again by then."})
	}
	out = append(out, Head{Text: "What you never do"}, List{Look: Points, Items: items(schema.Never...)})
	if held := c.held(); len(held) > 0 {
		out = append(out, Head{Text: "At these boxes, for now"}, List{Look: Points, Items: items(held...)})
	}
	return out
}

// numbers are whom to ring. What no plan has is filled in by hand before the sheet is handed
// over: a number that is looked for in an emergency is looked for too long.
func (c *cover) numbers() Part {
	n := Numbers{publicNumbers(c.r.Plan)}
	if k := c.r.Plan.Keeper(c.stint.For); k != nil {
		n.Of = append(n.Of, Number{k.Shown(), k.Phone.V})
	}
	n.Of = append(n.Of, contacts(c.r.Plan)...)
	for _, k := range c.r.Plan.Keepers {
		if k.Name.V != c.stint.For && k.Name.V != c.stint.Keeper && k.Phone.Set() {
			n.Of = append(n.Of, Number{k.Shown(), k.Phone.V})
		}
	}
	return n
}

// publicNumbers are the frames for the emergency number and the poison centre, each with the number
// that the plan has, if it has one.
func publicNumbers(c *plan.Collection) []Number {
	out := []Number{{Who: "Emergency number here"}, {Who: "Poison centre"}}
	for i, role := range []string{schema.RoleEmergency, schema.RolePoison} {
		for _, x := range c.Contacts {
			if x.Role.V == role && out[i].Phone == "" {
				out[i].Phone = x.Phone.V
			}
		}
	}
	return out
}

// contacts are all others whom the plan names.
func contacts(c *plan.Collection) (out []Number) {
	for _, x := range c.Contacts {
		if x.Role.V != schema.RoleEmergency && x.Role.V != schema.RolePoison {
			out = append(out, Number{x.Shown(), x.Phone.V})
		}
	}
	return out
}

// visits are the days on which they come, each with its rounds.
func (c *cover) visits() (out []string) {
	for i := range c.lists {
		l := c.lists[i]
		what := wording.Clock(l.Round.Clock.V, c.r.Plan.Units) + " " + l.Round.Shown()
		if i > 0 && c.lists[i-1].Date == l.Date {
			out[len(out)-1] += ", " + what
			continue
		}
		out = append(out, l.Date.Words()+": "+what)
	}
	return out
}

func (c *cover) until() string {
	if c.stint.Open {
		return "It is not known yet until when. Go on until " + c.shown(c.stint.For) + " has told you that the rounds are theirs again."
	}
	again := " does the rounds again from "
	if c.r.Roster.ByRota(c.stint.For) {
		again = " does the rounds again, on the days that the rota says, from "
	}
	return c.shown(c.stint.For) + again + c.stint.Back.Words() + ", and tells you so. Until you have heard it, go on."
}

// held are the lines of the states and of what may not be opened, each once, with the day
// from which it holds where that is not the first.
func (c *cover) held() (out []string) {
	seen := map[string]bool{}
	for i := range c.lists {
		for _, line := range c.lists[i].Held {
			if seen[line] {
				continue
			}
			seen[line] = true
			if c.lists[i].Date > c.lists[0].Date {
				line = "From " + c.lists[i].Date.Short() + ": " + line
			}
			out = append(out, line)
		}
	}
	return out
}

// usual is what is normal and what is not.
func (c *cover) usual() []Part {
	out := []Part{Title{Text: "What is normal, and what is not"}, Head{Text: "Who lives where"}, c.animals()}
	if expected := c.expected(); len(expected) > 0 {
		out = append(out, Head{Text: "How they are, and what may happen"}, List{Look: Points, Items: items(expected...)})
	}
	out = append(out, Head{Text: "It looks bad, and is normal"}, signs(c.normal()))
	wrong := slices.Clone(schema.WrongSigns)
	if upright := c.sheets(func(s *plan.SpeciesSheet) bool { return !hardens(s) }); len(upright) > 0 {
		wrong = append(wrong, schema.UprightSign+" ("+strings.Join(upright, "; ")+")")
	}
	out = append(out, Head{Text: "Not normal: ring"}, List{Look: Points, Items: items(wrong...)})
	if c.old != nil {
		return out
	}
	if gauges := c.gauges(); len(gauges.Rows) > 0 {
		out = append(out, Head{Text: "What the thermometer should show"}, gauges)
	}
	if amiss := c.amiss(); len(amiss) > 0 {
		out = append(out, Head{Text: "It shows something else"}, List{Look: Points, Items: items(amiss...)})
	}
	if meals := c.meals(); len(meals.Rows) > 0 {
		out = append(out, Head{Text: "What is fed, by visit"}, meals)
	}
	return out
}

func signs(all []schema.Sign) Part {
	t := Table{Columns: []string{"You see", "What it is"}}
	for _, s := range all {
		t.Rows = append(t.Rows, []string{s.Seen, s.Does})
	}
	return t
}

func (c *cover) normal() []schema.Sign {
	out := slices.Clone(schema.NormalSigns)
	if len(c.sheets(hardens)) > 0 {
		out = append(out, schema.MoultSigns...)
	}
	return out
}

// hardens reports whether a species is soft for days after a moult: it is one of those that
// moult on their backs or hanging.
func hardens(s *plan.SpeciesSheet) bool {
	some := false
	s.Each(schema.FigureWaitAfterMoult, func(f *plan.Figure) { some = some || f.Range.High > 0 })
	return some
}

// sheets names the species in their care of which something holds.
func (c *hazards) sheets(is func(*plan.SpeciesSheet) bool) (names []string) {
	for _, s := range roster.SheetsOf(c.lives) {
		if is(s) {
			names = append(names, roster.NamedTwice(s))
		}
	}
	return names
}

// back is the last page: how work is handed over, in the order of what is so, what was, what is
// made of it and what is asked for, which whoever takes over says back. Hospitals hand over so,
// and a review of studies found fewer things gone wrong (Shahid and Thomas 2018, Saf. Health 4:7,
// from memory).
func (c *cover) back() []Part {
	return []Part{
		Title{Text: "Handing back to " + c.shown(c.stint.For)},
		Blank{Head: "What is so now", Lines: 4},
		Blank{Head: "What happened, and when", Lines: 6},
		Blank{Head: "What I think", Lines: 3},
		Blank{Head: "Please do, and by when", Lines: 4},
		List{Look: Ticks, Items: items("Said back by whoever takes over", "Notes read together", "Animals counted together", "Keys handed back")},
		Sign{Fields: []string{"Stood in", "Took over", "Day and time"}},
	}
}

// span is the days from the first visit that is to come to the last.
func (c *cover) span() (first, last civil.Date) {
	h := c.r.Horizon
	from := c.stint.Next(h.Today)
	to := from
	for i := from; i >= 0; i = c.stint.Next(i + 1) {
		to = i
	}
	return h.Date(from), h.Date(to)
}

// amiss is what to do first where a gauge shows something else, by the table of that.
func (c *cover) amiss() (out []string) {
	var all []*schema.Amiss
	harms := false
	for _, l := range c.lives {
		for _, s := range c.showing(l) {
			all, harms = append(all, s.Amiss...), harms || s.Harm != ""
		}
	}
	say := func(a *schema.Amiss, begin, text string) {
		if text != "" && slices.Contains(all, a) {
			out = append(out, begin+": "+text)
		}
	}
	heat, no, damp := schema.AmissHeated, schema.AmissUnheated, schema.AmissDamp
	say(heat, "Box with a heater, too warm", heat.More)
	say(heat, "Box with a heater, too cold", heat.Less)
	say(no, "Box without a heater", no.Either)
	say(damp, "Air too damp", damp.More)
	say(damp, "Air too dry", damp.Less)
	if harms {
		say(heat, "Hotter than what harms", heat.Over)
		out = append(out, "Colder than what harms: "+heat.Under, "Then ring. Open no lid for it")
	}
	return append(out, "Write down what it showed")
}

// showing are what the gauges of an enclosure should show while somebody stands in.
func (c *cover) showing(l *life.Enclosure) []rounds.Show {
	first, last := c.span()
	h := c.r.Horizon
	return slices.DeleteFunc(rounds.Shows(c.r.Roster, l), func(s rounds.Show) bool {
		return s.Until <= int(first-h.From) || s.From > int(last-h.From) || s.Text == "" && s.Harm == ""
	})
}
