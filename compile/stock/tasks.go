package stock

import (
	"strconv"

	"vivary/compile/horizon"
	"vivary/compile/roster"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/quantity"
	"vivary/schema/wording"
)

// tasks are those of one store.
type tasks struct {
	r       *Report
	of      *roster.Roster
	store   *plan.Store
	there   horizon.Days // on which somebody does its round
	chores  []roster.Chore
	errands []roster.Errand
}

func (t *tasks) make(l *Lot) {
	s := t.store
	switch {
	case s.Supply != nil:
		for _, x := range l.Supplies {
			if x.Plan == s {
				t.orders(x)
			}
		}
	case s.Tub != nil:
		t.tend(schema.InTub, &s.Tub.Tending)
		t.crashed(l.crashOf(s))
	case s.Culture != nil:
		for _, c := range l.Cultures {
			if c.Plan == s {
				t.tend(schema.InCulture, &s.Culture.Tending)
				t.starts(c)
				t.discards(c)
				t.crashed(c.Crashed)
			}
		}
	}
	t.gutLoad(l)
}

// before returns the last day up to one, and not before today, on which somebody does the round;
// the day itself where there is none.
func (t *tasks) before(d civil.Date) civil.Date {
	h := t.r.Horizon
	i, in := h.Index(d)
	if !in {
		return d
	}
	for k := i; k >= h.Today; k-- {
		if t.there.Has(k) {
			return h.Date(k)
		}
	}
	return d
}

// orders puts the orders of a supply and what they bring into the rounds.
func (t *tasks) orders(x *Supply) {
	h := t.r.Horizon
	name := x.Plan.Name.V
	for i := range x.Orders {
		o := &x.Orders[i]
		if o.Number == 0 {
			continue // the seller gives less than a pack: that is a finding
		}
		if o.By >= h.Now() {
			on := t.before(o.By)
			if x.Fetched() && o.By == o.Deliver {
				on = o.Deliver // before it there are none
			}
			t.errands = append(t.errands, roster.Errand{Name: "order/" + o.Week.String(), Kind: schema.KindOrder, On: on, Text: x.Words(o), High: o.Late, At: x.Plan.At})
		}
		if o.Deliver >= h.Now() && !x.Fetched() {
			t.errands = append(t.errands, roster.Errand{Name: "delivery/" + o.Week.String(), Kind: schema.KindDelivery, On: o.Deliver, At: x.Plan.At,
				Text: "Parcel from " + x.Plan.From.Shown() + ", " + x.Lot.Of(o.Packing.Total) + ": open at once, warm slowly, count what lives; log " + name + " delivered and how many"})
		}
	}
}

// Words are an order as it stands in rounds and in what is printed, one text for both.
func (x *Supply) Words(o *Order) string {
	text := "Order " + x.Lot.Of(o.Number)
	if x.Fetched() {
		text = "Fetch " + x.Lot.Of(o.Number)
	}
	if len(o.Packing.Packs) > 0 {
		text += " (" + o.Packing.Words() + ")"
	}
	text += " from " + x.Plan.From.Shown()
	switch {
	case x.Fetched() && o.By == o.Deliver:
		text += " on " + o.Deliver.Short()
	case x.Fetched():
		text += " on " + o.Deliver.Short() + ", ordered there by " + o.By.Short()
	default:
		text += " by " + o.By.Short() + ", for " + o.Deliver.Short()
	}
	if int(o.Lasts-o.Deliver) > 7*x.weeks+usualSpan {
		text += ", to last until " + o.Lasts.Short()
	}
	if o.Reserve > 0 {
		text += "; keep " + strconv.Itoa(o.Reserve) + " for the young, should the next parcel be held"
	}
	if o.Short > 0 {
		text += "; " + strconv.Itoa(o.Short) + " more are wanted than they give"
	}
	u := x.Plan.Stop.Units
	limit := func(w plan.Written[quantity.Quantity], usual float64) string {
		if w.Set() {
			return w.V.String()
		}
		return u.Tell(quantity.Quantity{Value: usual, Unit: quantity.Celsius})
	}
	depot := ", hold at depot"
	if d := x.Plan.From.Depot; d.Set() && !d.V {
		depot = ", fetch them yourself or wait"
	}
	switch {
	case o.Frost:
		text += "; frost check (nothing travels below " + limit(x.Plan.From.HeldBelow, -4) + ")" + depot
	case o.Heat:
		text += "; heat check (nothing travels above " + limit(x.Plan.From.HeldAbove, 30) + ")" + depot
	}
	if x.Fetched() {
		text += "; log " + x.Plan.Name.V + " delivered and how many"
	}
	return text
}

// usualSpan is how many days before its weeks what is ordered comes at the most without a word:
// over a weekend.
const usualSpan = 5

// Words are the packs, and how many are over: "2 packs of 250, 17 over".
func (p *Packing) Words() string {
	var parts []string
	for _, k := range p.Packs {
		parts = append(parts, wording.Count(k.Number, "pack", "packs")+" of "+strconv.Itoa(k.Size))
	}
	text := wording.And(parts)
	if p.Surplus > 0 {
		text += ", " + strconv.Itoa(p.Surplus) + " over"
	}
	return text
}

// gutLoad puts the days into the rounds on which feeders are fed well for the meals that follow,
// where these do not bring that themselves.
func (t *tasks) gutLoad(l *Lot) {
	s, h := t.store, t.r.Horizon
	before := gutDays(s)
	if before == 0 {
		return
	}
	days := h.New()
	for _, e := range l.meals {
		if e.Meal.GutLoad.V {
			continue
		}
		for i := e.Days.Next(h.Today); i >= 0; i = e.Days.Next(i + 1) {
			if p := e.Portion(i); p != nil && p.Prey == l.Prey && i-before >= h.Today {
				days.Add(i - before)
			}
		}
	}
	if days.Empty() {
		return
	}
	_, many := l.names()
	text := "Gut-load the " + many + " for the meals in " + wording.Days(before) + ": good food until then, fed out within 6 hours of it"
	t.errands = append(t.errands, roster.Errand{Name: schema.KindGutLoad.Name, Kind: schema.KindGutLoad, On: h.Date(days.Next(0)), Days: days, Text: text, At: s.GutLoad.At})
}
