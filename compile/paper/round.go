package paper

import (
	"slices"
	"strings"

	"vivary/compile"
	"vivary/compile/daylist"
	"vivary/compile/rounds"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/quantity"
	"vivary/schema/wording"
)

// Round is the sheet of the rounds of some days, as daylist.Of returns them: each day begins on
// a page of its own, with a box before everything that is to be done. Where there are none it
// says so. The collection must have been understood.
func Round(r *compile.Result, lists []*daylist.List) *Document {
	d := document(r, "Round sheet, "+r.Plan.Title())
	for of := range byDay(lists) {
		d.day(r, of, true)
	}
	if len(lists) == 0 {
		d.add(r.Plan.Title(), Title{Text: "Nothing is due"})
	}
	return d
}

// byDay are lists that stand by day, those of each day together.
func byDay(lists []*daylist.List) func(yield func([]*daylist.List) bool) {
	return func(yield func([]*daylist.List) bool) {
		for from, to := 0, 0; from < len(lists); from = to {
			for to = from; to < len(lists) && lists[to].Date == lists[from].Date; to++ {
			}
			if !yield(lists[from:to]) {
				return
			}
		}
	}
}

// day adds the sheet of a day. Alone says that nothing else is printed with it: then it has
// whom to ring, and what to do about a gauge.
func (d *Document) day(r *compile.Result, lists []*daylist.List, alone bool) {
	on := lists[0].Date.Words()
	parts := []Part{Title{Text: on}}
	there := slices.Clone(lists[0].Keepers) // at all of these rounds: nobody rings themselves
	for i := range lists {
		parts = append(parts, round(r, lists[i], alone)...)
		there = slices.DeleteFunc(there, func(k string) bool { return !slices.Contains(lists[i].Keepers, k) })
	}
	if alone && heated(r.Plan) {
		parts = append(parts, Para{Text: "Mains and water: " + schema.MainsBrief + ".", Small: true})
	}
	if alone {
		parts = append(parts, numbersOf(r, there, "Ring")...)
	}
	d.add(on+" · "+r.Plan.Title(), append(parts, signed()...)...)
}

// round are the parts of a round on a day.
func round(r *compile.Result, l *daylist.List, alone bool) []Part {
	title := Head{Text: wording.Clock(l.Round.Clock.V, r.Plan.Units) + " " + l.Round.Shown() + byWhom(r.Plan, l.Keepers), Large: true}
	if !l.Open {
		return []Part{title, done(l, "All of it is done")}
	}
	out := append([]Part{title}, walk(l, alone)...)
	if len(l.Ticked) > 0 {
		out = append(out, done(l, "Done already"))
	}
	return out
}

func done(l *daylist.List, head string) Part {
	return List{Head: head, Look: Points, Items: items(l.Ticked...)}
}

func byWhom(c *plan.Collection, keepers []string) string {
	var names []string
	for _, k := range keepers {
		names = append(names, daylist.Shown(c, k))
	}
	if len(names) == 0 {
		return ""
	}
	return ", " + wording.And(names)
}

// walk are the lines of a round, in their order, those of one sort in one list: what is
// pressing in a frame, the states in which animals are without a box, everything else to be
// ticked off, that of a tank on one page. Gauges says whether what to do about one stands there.
func walk(l *daylist.List, gauges bool) []Part {
	var out []Part
	sort, headed := rounds.Sort(0), false
	for i, x := range l.Walk {
		begins := i == 0 || x.Sort != sort
		sort = x.Sort
		switch x.Sort {
		case rounds.Pressing:
			out = onto(out, begins, "First of all", Alarm, Item{Text: strings.TrimPrefix(x.Text, "FIRST: ")})
		case rounds.States:
			out = onto(out, begins, "Mind", Points, Item{Text: x.Text})
		case rounds.Leaving:
			out = onto(out, begins, "Before you leave", Ticks, Item{Text: x.Text})
		case rounds.Ready:
			out = onto(out, begins, "Have ready", Ticks, Item{Text: x.Text})
		case rounds.Heading:
			out, headed = append(out, Head{Text: strings.TrimSuffix(x.Text, ":")}), true
		case rounds.Todo:
			if !headed && i > 0 {
				out, headed = append(out, Head{Text: "To do"}), true
			}
			if len(x.Jobs) > 1 {
				out = append(out, tank(&x))
			} else {
				out = onto(out, begins, "", Ticks, todo(&x))
			}
		case rounds.Amiss:
			if !gauges {
				continue
			}
			out = append(out, Head{Text: "If a gauge shows something else"}, List{Look: Points, Items: items(sentences(x.Text)...)})
		}
	}
	return out
}

// onto adds a line to the list that stands last, or where that is another begins one below a
// heading, "" for none.
func onto(out []Part, begins bool, head string, look Look, more Item) []Part {
	if n := len(out) - 1; n >= 0 && !begins {
		if last, is := out[n].(List); is && last.Look == look && last.Head == "" {
			last.Items = append(last.Items, more)
			out[n] = last
			return out
		}
	}
	if head != "" {
		out = append(out, Head{Text: head})
	}
	return append(out, List{Look: look, Items: []Item{more}})
}

// todo is a line of one job, as the list has it.
func todo(x *rounds.Line) Item {
	return Item{Text: strings.TrimPrefix(x.Text, "- "), Blanks: blanks(x)}
}

// tank is what is done at a tank, or at neighbours: a line for each job.
func tank(x *rounds.Line) Part {
	l := List{Head: x.Names, Look: Ticks}
	for i := range x.Jobs {
		j := &x.Jobs[i]
		it := Item{Text: j.Text + shouldShow(j)}
		if len(j.Stops) == 1 {
			it.Blanks = reading(j.Stops[0].Item.Kind)
		}
		l.Items = append(l.Items, it)
	}
	return l
}

// shouldShow is what the gauge should show that is read for a job.
func shouldShow(j *rounds.Job) string {
	if len(j.Stops) == 0 || j.Stops[0].Should == "" {
		return ""
	}
	return ": should show " + j.Stops[0].Should
}

// blanks are what is written down of a line of one job at one tank.
func blanks(x *rounds.Line) []string {
	if len(x.Jobs) == 1 && len(x.Jobs[0].Stops) == 1 {
		return reading(x.Jobs[0].Stops[0].Item.Kind)
	}
	return nil
}

// reading is what is read for a kind of care.
func reading(k *schema.CareKind) []string {
	switch k.Reads {
	case quantity.Temperature:
		return []string{"lowest", "highest"}
	case quantity.Humidity:
		return []string{"air"}
	}
	return nil
}

// sentences parts a text that this program made into its sentences: what to do is read one
// line at a time.
func sentences(text string) []string {
	var out []string
	for text != "" {
		end := len(text)
		for _, mark := range []string{". ", "? "} {
			if k := strings.Index(text, mark); k >= 0 {
				end = min(end, k+1)
			}
		}
		out = append(out, text[:end])
		text = strings.TrimLeft(text[end:], " ")
	}
	return out
}

// numbersOf is whom to ring, with the numbers, but for those who are there.
func numbersOf(r *compile.Result, there []string, head string) []Part {
	var n Numbers
	for _, c := range r.Plan.Contacts {
		n.Of = append(n.Of, Number{c.Shown(), c.Phone.V})
	}
	for _, k := range r.Plan.Keepers {
		if !slices.Contains(there, k.Name.V) && k.Phone.Set() {
			n.Of = append(n.Of, Number{k.Shown(), k.Phone.V})
		}
	}
	if len(n.Of) == 0 {
		return nil
	}
	return []Part{Head{Text: head}, n}
}

// signed is room for notes, and for who did it.
func signed() []Part {
	return []Part{Blank{Head: "What was seen, and what was not done and why", Lines: 5}, Sign{Fields: []string{"Done by", "Began", "Ended"}}}
}

func heated(c *plan.Collection) bool {
	return slices.ContainsFunc(c.Enclosures, (*plan.Enclosure).Heated)
}
