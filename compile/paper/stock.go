package paper

import (
	"strconv"

	"vivary/compile"
	"vivary/compile/stock"
	"vivary/schema/civil"
	"vivary/schema/wording"
)

// Stock is what feeder animals the coming weeks take, what there is of them, what is to be
// ordered and set up, and where there will not be enough.
func Stock(r *compile.Result, s *stock.Report, weeks int) *Document {
	d := document(r, "Feeder animals, "+r.Plan.Title())
	first := stock.Monday(r.Today)
	until := first + civil.Date(7*weeks)
	parts := []Part{Title{Text: "Feeder animals", Under: []string{r.Plan.Title() + " · " + r.Today.Words() + ", " + wording.Count(weeks, "week", "weeks")}}}

	use := Table{Columns: []string{"Taken by meals, week of"}}
	for i := range weeks {
		use.Columns = append(use.Columns, (first + civil.Date(7*i)).Brief())
	}
	use.Columns = append(use.Columns, "There today")
	for _, l := range s.Lots {
		row := []string{l.Many()}
		for _, n := range l.Weekly(s.Horizon, weeks) {
			row = append(row, strconv.Itoa(n))
		}
		there := "not counted"
		switch {
		case l.Known:
			there = strconv.Itoa(int(l.Hand))
		case !l.InPlan():
			there = "not in the plan"
		}
		use.Rows = append(use.Rows, append(row, there))
	}
	parts = append(parts, use)

	var young, orders, starts, short []string
	for _, l := range s.Lots {
		for i := range l.Broods {
			b := &l.Broods[i]
			young = append(young, b.Life.Plan.Shown()+": "+wording.Span(float64(b.Few), float64(b.Many))+" young may eat "+l.Many()+" from "+b.From.Words()+" on, "+strconv.Itoa(b.Weekly)+" a week are enough for nearly all broods")
		}
		for _, x := range l.Supplies {
			for i := range x.Orders {
				if o := &x.Orders[i]; o.By < until {
					orders = append(orders, x.Words(o))
				}
			}
		}
		for _, c := range l.Cultures {
			for _, on := range c.Starts {
				if on >= r.Today && on < until {
					starts = append(starts, on.Short()+": "+c.Words(on))
				}
			}
			starts = append(starts, c.Remarks()...)
		}
		short = append(short, lacking(r, l)...)
	}
	for _, x := range []struct {
		head string
		of   []string
	}{{"Young that are expected", young}, {"Orders", orders}, {"Cultures to set up", starts}, {"Not enough", short}} {
		if len(x.of) > 0 {
			parts = append(parts, Head{Text: x.head}, List{Look: Points, Items: items(x.of...)})
		}
	}
	if len(r.Plan.Stores) == 0 {
		parts = append(parts, Head{Text: "Not in the plan"}, List{Look: Points, Items: items("where they come from: with supply, tub and culture blocks it also says what to order by when, and when to set up cultures")})
	}
	d.add("Feeder animals · "+r.Today.Words()+" · "+r.Plan.Title(), parts...)
	return d
}

// lacking says where there is not enough, and who eats first then.
func lacking(r *compile.Result, l *stock.Lot) (out []string) {
	for _, x := range l.Supplies {
		for _, week := range x.Missed {
			out = append(out, "week of "+week.Words()+": nothing of "+l.Many()+" comes from "+x.Plan.From.Shown()+" in time; buy them elsewhere")
		}
	}
	if h := l.Held; h != nil {
		out = append(out, "were the next parcel held back by the weather, young would have no "+l.Many()+" from "+(r.Today+civil.Date(h.In)).Words()+" on: "+strconv.Itoa(h.Lacks)+" more, kept for them alone")
	}
	if l.Short.First < 0 {
		return out
	}
	h := r.Horizon
	n := 0
	for _, i := range l.Short.Days {
		if i < l.Short.First+7 {
			n++
		}
	}
	out = append(out, strconv.Itoa(l.Short.Lacks)+" "+l.Many()+" lack on "+h.Date(l.Short.First).Words()+", and on "+wording.Days(n)+" of that week: buy so many nearby, or feed in this order")
	for who := l.Short.Who; len(who) > 0; {
		alike, takes := 0, 0
		for alike < len(who) && who[alike].Stage == who[0].Stage && who[alike].Fasts == who[0].Fasts {
			takes += who[alike].Takes
			alike++
		}
		text := who[0].Stage
		if text == "" {
			text = "stage not known"
		}
		text += ", " + strconv.Itoa(takes) + " in all: " + who[0].Entry.Plan().Shown()
		if alike > 1 {
			text += " and " + wording.Count(alike-1, "other", "others")
		}
		if who[0].Fasts > 0 {
			text += "; may go " + wording.Days(who[0].Fasts) + " between meals by the sheet"
		}
		out, who = append(out, text), who[alike:]
	}
	return out
}
