package explain

import (
	"strconv"

	"vivary/compile"
	"vivary/compile/deadline"
	"vivary/compile/stock"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/civil"
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
		var lines []Line
		for i := range r.Deadlines {
			if d := &r.Deadlines[i]; d.Name == x.Name.V {
				lines = append(lines, Line{Text: untilSeenTo(d, r.Today)})
				if d.Last != 0 {
					lines = append(lines, Line{Text: "Done last on " + d.Last.Words()})
				}
				if d.Does != "" {
					lines = append(lines, Line{Text: "To do: " + d.Does})
				}
			}
		}
		if x.Keeper.Set() {
			lines = append(lines, Line{Text: "By " + person(r, x.Keeper.V)})
		}
		if kind := schema.FindDeadlineKind(x.Kind.V); kind != nil {
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
		out = append(out, Answer{Title: "Date of the house " + x.Name.V + ": " + x.Shown(), Parts: part(nil, "", lines), Written: block(&x.Head)})
	}
	return out
}

// untilSeenTo says when a date of the house is due.
func untilSeenTo(d *deadline.Deadline, today civil.Date) string {
	if d.Undated {
		return "Told on no day: neither by nor last is written"
	}
	for k := range d.Times {
		switch t := &d.Times[k]; {
		case t.Done != 0:
		case t.Overdue(today):
			return "Overdue since " + t.By.Words() + ", told each week until the log says `deadline " + d.Name + " done`"
		default:
			return "To be done by " + t.By.Words() + ", told from " + t.From.Words() + " on, each week"
		}
	}
	return "Nothing is open as far as is looked ahead"
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
				out = append(out, d.Words()+": "+c.Words(d))
			}
		}
		out = append(out, c.Remarks()...)
	}
	return out
}
