package explain

import (
	"strconv"

	"vivary/compile"
	"vivary/compile/stock"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/wording"
)

func listDeadlines(r *compile.Result) (out []Line) {
	for _, x := range r.Plan.Deadlines {
		out = append(out, Line{Name: x.Name.V, Text: x.Shown()})
	}
	return out
}

// explainDeadline says by when a date of the house is to be seen to, since when it is told, and
// on whose word.
func explainDeadline(r *compile.Result, word string) (out []Answer) {
	for _, x := range r.Plan.Deadlines {
		if !means(word, x.Name.V, x.Shown()) {
			continue
		}
		kind := schema.FindDeadlineKind(x.Kind.V)
		lines := untilSeenTo(r, x)
		switch does := x.Does.V; {
		case does != "":
			lines = append(lines, Line{Text: "To do: " + does})
		case kind != nil:
			lines = append(lines, Line{Text: "To do: " + kind.Does})
		}
		if x.Keeper.Set() {
			lines = append(lines, Line{Text: "By " + person(r, x.Keeper.V)})
		}
		if kind != nil {
			lead := "told on the day itself"
			if kind.Lead > 0 {
				lead = "told " + wording.Days(kind.Lead) + " before"
			}
			if kind.Every.N > 0 {
				lead += ", and again after " + kind.Every.String()
			}
			lines = append(lines, Line{Text: "Usual for " + kind.Doc + ": " + lead, Under: []string{kind.Source}})
		}
		if x.Note.Set() {
			lines = append(lines, Line{Text: x.Note.V})
		}
		out = append(out, Answer{Title: "Date of the house " + x.Name.V + ": " + x.Shown(), Parts: []Part{{Lines: lines}}, Written: block(&x.Head)})
	}
	return out
}

// untilSeenTo says when a date was seen to last, and when it is due.
func untilSeenTo(r *compile.Result, x *plan.Deadline) (out []Line) {
	last := x.Last.V
	for i := range r.Plan.Log {
		if e := &r.Plan.Log[i]; e.Word == schema.WordSeenTo && e.Deadline.V == x.Name.V && e.Date <= r.Today {
			last = max(last, e.Date)
		}
	}
	if last != 0 {
		out = append(out, Line{Text: "Done last on " + last.Words()})
	}
	for i := range r.Deadlines {
		d := &r.Deadlines[i]
		if d.Name != x.Name.V {
			continue
		}
		if d.Undated {
			return append(out, Line{Text: "Told on no day: neither by nor last is written"})
		}
		for k := range d.Times {
			t := &d.Times[k]
			if t.Done != 0 {
				continue
			}
			text := "To be done by " + t.By.Words() + ", told from " + t.From.Words() + " on, each week"
			if t.Overdue(r.Today) {
				text = "Overdue since " + t.By.Words() + ", told each week until the log says `deadline " + d.Name + " done`"
			}
			return append(out, Line{Text: text})
		}
		return append(out, Line{Text: "Nothing is open as far as is looked ahead"})
	}
	return out
}

func listStock(r *compile.Result) (out []Line) {
	for _, s := range r.Plan.Stores {
		out = append(out, Line{Name: s.Name.V, Text: s.Kind().Name + " of " + s.Prey.V.String()})
	}
	return out
}

// comingOrders is how many orders and starts are told.
const comingOrders = 3

// explainStore says of a culture, a tub or a supply what the meals take of it, what there is and
// what is ordered or set up next.
func explainStore(r *compile.Result, word string) (out []Answer) {
	for _, s := range r.Plan.Stores {
		if !means(word, s.Name.V, s.Shown()) {
			continue
		}
		a := Answer{Title: heading(s.Kind().Name) + " " + s.Name.V + ": " + s.Prey.V.String(), Written: block(s.Head)}
		if r.Stock != nil {
			if l := r.Stock.Lot(s.Of); l != nil {
				a.Parts = part(a.Parts, "", ofLot(r, l))
				a.Parts = part(a.Parts, "Next", plainly(comes(r, l, s)))
			}
		}
		if s.Note.Set() {
			a.Parts = append(a.Parts, Part{Lines: []Line{{Text: s.Note.V}}})
		}
		out = append(out, a)
	}
	return out
}

// ofLot says what is taken of a feeder and what there is of it.
func ofLot(r *compile.Result, l *stock.Lot) (out []Line) {
	const weeks = 4
	n := 0
	for _, w := range l.Weekly(r.Horizon, weeks) {
		n += w
	}
	out = append(out, Line{Text: "The meals of the plan take " + wording.Number(float64(n)) + " in these " + strconv.Itoa(weeks) + " weeks"})
	if l.Known {
		out = append(out, Line{Text: "There are about " + wording.Number(float64(int(l.Hand))) + " today"})
	}
	if l.Short.First >= 0 {
		out = append(out, Line{Text: "On " + r.Horizon.Date(l.Short.First).Words() + " there are " + wording.Number(float64(l.Short.Lacks)) + " too few"})
	}
	return out
}

// comes says what is ordered or set up next.
func comes(r *compile.Result, l *stock.Lot, s *plan.Store) (out []string) {
	for _, x := range l.Supplies {
		for i := range x.Orders {
			if o := &x.Orders[i]; x.Plan == s && o.By >= r.Today && len(out) < comingOrders {
				out = append(out, x.Words(o))
			}
		}
	}
	for _, c := range l.Cultures {
		if c.Plan != s {
			continue
		}
		for _, d := range c.Starts {
			if d >= r.Today && len(out) < comingOrders {
				from, to := c.First(d)
				out = append(out, "On "+d.Words()+" one is set up, which yields first between "+from.Words()+" and "+to.Words())
			}
		}
		out = append(out, c.Remarks()...)
	}
	return out
}
