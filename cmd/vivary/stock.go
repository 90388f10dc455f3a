package main

import (
	"fmt"

	"vivary/compile"
	"vivary/compile/paper"
	"vivary/compile/stock"
	"vivary/plan/finding"
	"vivary/schema/civil"
)

// stockWeeks is how many weeks are told where no number of days is said.
const stockWeeks = 4

// stockOf prints what feeder animals the coming weeks take, what there is, and what is to be
// ordered and set up.
func stockOf(w *world, f *flags, args []string) int {
	r, _, status := w.toPrint("stock", f, args)
	if status != fine {
		return status
	}
	s := r.Stock
	if s == nil {
		s = stock.Look(r.Roster)
	}
	weeks := stockWeeks
	if f.days != notGiven {
		weeks = max(1, min((f.days+6)/7, (r.Horizon.Ahead()-1)/7))
	}
	if f.format == "json" {
		printJSON(w, newStockForm(r, s, weeks))
		return fine
	}
	status = w.print(f, "stock", paper.Stock(r, s, weeks))
	if sum := finding.Summary(r.Findings); sum != "" {
		fmt.Fprintf(w.out, "\n%s: see vivary check.\n", sum)
	}
	return status
}

// stockForm is the JSON form of the stock; schema/json/stock.schema.json describes it.
type stockForm struct {
	envelope
	Today string    `json:"today"`
	Weeks []string  `json:"weeks"` // the Mondays with which they begin
	Prey  []lotForm `json:"prey"`
}

type lotForm struct {
	Prey     string      `json:"prey"`
	Use      []int       `json:"use"` // in each of the weeks
	Hand     *int        `json:"in_hand,omitempty"`
	Broods   []youngForm `json:"young_expected,omitempty"`
	Orders   []orderForm `json:"orders"`
	Starts   []startForm `json:"starts"`
	Short    *lackForm   `json:"short,omitempty"`
	Held     *heldForm   `json:"if_the_next_parcel_is_held,omitempty"`
	Supplied bool        `json:"in_plan"` // a culture, a tub or a supply has it
}

type youngForm struct {
	Enclosure string `json:"enclosure"`
	From      string `json:"from"`
	To        string `json:"to"`
	Few       int    `json:"few"`
	Many      int    `json:"many"`
	Weekly    int    `json:"items_a_week"`
}

type orderForm struct {
	Supply  string     `json:"supply"`
	Seller  string     `json:"seller"`
	By      string     `json:"order_by"`
	Deliver string     `json:"deliver"`
	Number  int        `json:"number"`
	Packs   []packForm `json:"packs,omitempty"`
	Surplus int        `json:"surplus"`
	Short   int        `json:"short"`
	Reserve int        `json:"kept_for_young"` // should the next parcel be held
	Until   string     `json:"lasts_until,omitempty"`
	Frost   bool       `json:"frost_check"`
	Heat    bool       `json:"heat_check"`
	Text    string     `json:"text"`
}

type packForm struct {
	Number int `json:"number"`
	Size   int `json:"size"`
}

type startForm struct {
	Culture string `json:"culture"`
	On      string `json:"on"`
	First   string `json:"first_between"`
	Last    string `json:"and"`
}

type lackForm struct {
	On    string      `json:"on"`
	Lacks int         `json:"lacks"`
	Who   []eaterForm `json:"in_order"`
}

// heldForm is what young would lack, were the next parcel held back.
type heldForm struct {
	From  string `json:"from"`
	Lacks int    `json:"lacks"`
}

type eaterForm struct {
	Enclosure string `json:"enclosure"`
	Animals   string `json:"animals"`
	Stage     string `json:"stage,omitempty"`
	Takes     int    `json:"takes"`
	Fasts     int    `json:"may_fast_days,omitempty"`
}

func newStockForm(r *compile.Result, s *stock.Report, weeks int) stockForm {
	first := stock.Monday(r.Today)
	until := first + civil.Date(7*weeks)
	out := stockForm{envelope: begin("stock"), Today: r.Today.String(), Prey: []lotForm{}}
	for i := range weeks {
		out.Weeks = append(out.Weeks, (first + civil.Date(7*i)).String())
	}
	for _, l := range s.Lots {
		form := lotForm{Prey: l.Prey.String(), Use: l.Weekly(s.Horizon, weeks), Orders: []orderForm{}, Starts: []startForm{}, Supplied: l.InPlan()}
		if l.Known {
			n := int(l.Hand)
			form.Hand = &n
		}
		for _, b := range l.Broods {
			form.Broods = append(form.Broods, youngForm{b.Life.Plan.Name.V, b.From.String(), b.To.String(), b.Few, b.Many, b.Weekly})
		}
		for _, x := range l.Supplies {
			for i := range x.Orders {
				if o := &x.Orders[i]; o.By < until {
					form.Orders = append(form.Orders, orderOf(x, o))
				}
			}
		}
		for _, c := range l.Cultures {
			for _, d := range c.Starts {
				if d >= r.Today && d < until {
					from, to := c.First(d)
					form.Starts = append(form.Starts, startForm{c.Plan.Name.V, d.String(), from.String(), to.String()})
				}
			}
		}
		form.Short = lackOf(r, l)
		if l.Held != nil {
			form.Held = &heldForm{(r.Today + civil.Date(l.Held.In)).String(), l.Held.Lacks}
		}
		out.Prey = append(out.Prey, form)
	}
	return out
}

func orderOf(x *stock.Supply, o *stock.Order) orderForm {
	form := orderForm{Supply: x.Plan.Name.V, Seller: x.Plan.From.Name.V, By: o.By.String(), Deliver: o.Deliver.String(), Number: o.Number,
		Surplus: o.Packing.Surplus, Short: o.Short, Reserve: o.Reserve, Frost: o.Frost, Heat: o.Heat, Text: x.Words(o)}
	if o.Lasts > 0 {
		form.Until = o.Lasts.String()
	}
	for _, p := range o.Packing.Packs {
		form.Packs = append(form.Packs, packForm{p.Number, p.Size})
	}
	return form
}

func lackOf(r *compile.Result, l *stock.Lot) *lackForm {
	if l.Short.First < 0 {
		return nil
	}
	out := &lackForm{On: r.Horizon.Date(l.Short.First).String(), Lacks: l.Short.Lacks, Who: []eaterForm{}}
	for _, e := range l.Short.Who {
		out.Who = append(out.Who, eaterForm{e.Entry.Plan().Name.V, e.Entry.Group.Animals.Name.V, e.Stage, e.Takes, e.Fasts})
	}
	return out
}
