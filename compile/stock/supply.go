package stock

import (
	"math"
	"slices"
	"time"

	"vivary/compile/roster"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/civil"
)

// Supply is a supply with its orders.
type Supply struct {
	Plan   *plan.Store
	Lot    *Lot
	Orders []Order
	Daily  float64 // the share of what it brings that dies on a day
	Margin float64 // a share
	Gut    int     // days before a meal by which they have to be here
	// Spare says that those before it give all that is asked for, so that nothing is ordered here.
	Spare bool
	weeks int // for which an order is
	sends Carrier
	frost func(civil.Date) bool
	heat  func(civil.Date) bool
}

// Order is one order.
type Order struct {
	Week    civil.Date // the Monday with which the weeks begin that it is for
	Last    civil.Date // the last day that it is for
	By      civil.Date // the last day on which it can be made
	Deliver civil.Date
	Number  int // what is ordered: what the meals ask for, with loss and margin, less what is there
	Short   int // how many more the meals ask for than the seller gives
	Packing Packing
	Frost   bool // the forecast of the night has to be looked at first
	Heat    bool // the forecast of the day
	Late    bool // it comes after the first meal that it is for
}

// lossOf is the share of a lot that dies on a day: as the plan has it, else the greatest of the
// sheet. A margin that is written alone is for the loss too.
func lossOf(s *plan.Store, l *Lot) float64 {
	switch {
	case s.Loss.Set():
		return Daily(s.Loss.V.Value / 100)
	case s.Supply != nil && s.Supply.Margin.Set() || l.Sheet == nil:
		return 0
	}
	if f := l.Sheet.Figure(schema.FeederWeeklyLoss); f != nil {
		return Daily(f.Range.High / 100)
	}
	return 0
}

// gutDays is how many days before a meal feeders are fed well.
func gutDays(s *plan.Store) int {
	if !s.GutLoad.Set() {
		return 0
	}
	return min(14, int((s.GutLoad.V.Value+day-1)/day))
}

// supply reads a supply; nil for one of which the seller is not known.
func supply(r *roster.Roster, s *plan.Store, l *Lot) *Supply {
	if s.From == nil {
		return nil
	}
	x := &Supply{Plan: s, Lot: l, Gut: gutDays(s), weeks: 1, Margin: s.Supply.Margin.V.Value / 100, Daily: lossOf(s, l)}
	if v := s.Supply.Every; v.Set() {
		x.weeks = max(1, min(v.V.N, 8))
	}
	is := func(list []plan.Written[plan.Day]) func(civil.Date) bool {
		days := r.Plan.Days(list)
		return func(d civil.Date) bool {
			return slices.ContainsFunc(days, func(w plan.Written[plan.Day]) bool { return w.V.Is(d) })
		}
	}
	delivers, closed := is(s.From.Delivers), is(s.From.Closed)
	x.sends = Carrier{Lead: min(s.From.Lead.Or(2), far),
		Delivers: func(d civil.Date) bool { return delivers(d) && !closed(d) },
		Works:    func(d civil.Date) bool { return Workdays(d) && !closed(d) }}
	south, known := r.Plan.South()
	winter, summer := time.December, time.June
	if south {
		winter, summer = summer, winter
	}
	if x.frost = is(s.From.Frost); len(s.From.Frost) == 0 {
		x.frost = func(d civil.Date) bool { return known && quarter(d, winter) }
	}
	if x.heat = is(s.From.Heat); len(s.From.Heat) == 0 {
		x.heat = func(d civil.Date) bool { return known && quarter(d, summer) }
	}
	return x
}

// quarter reports whether a day is in the three months that begin with one.
func quarter(d civil.Date, first time.Month) bool {
	_, m, _ := d.YMD()
	return (int(m)-int(first)+12)%12 < 3
}

// monday is the first Monday of the world's count of days, by which weeks are numbered: what is
// ordered for two weeks is so whenever it is built.
var monday = civil.Must(2024, 1, 1)

// period is the weeks of an order that has a day.
func (x *Supply) period(d civil.Date) (first, last civil.Date) {
	n := civil.Date(7 * x.weeks)
	off := (d - monday) % n
	if off < 0 {
		off += n
	}
	return d - off, d - off + n - 1
}

// order works out the orders of a lot: week after week, each for the meals of its own weeks,
// the latest delivery that is in time for the first of them. Of several supplies the first
// gives what it can, and the next what is left.
//
// Where nothing is known of what is there, all that was planned is taken to have been done, and
// each order is for its own weeks alone. Where it is, an order is for what will be lacking.
func (l *Lot) order(r *roster.Roster, x *Supply, rest map[civil.Date]int) (short map[civil.Date]int) {
	h := r.Horizon
	short = map[civil.Date]int{}
	first, last := x.period(h.Now())
	at, have := h.Today, l.Hand // what is there in the morning of day at
	l.From, l.Begin = at, have
	beginning := true
	for ; last <= h.Last(); first, last = last+1, last+civil.Date(7*x.weeks) {
		from, to := int(first-h.From), int(last-h.From)+1
		begins := max(from, 0)
		if l.Known {
			begins = max(from, h.Today) // what was fed before was there
		}
		need := l.next(begins, to)
		if need < 0 && !x.besides() {
			continue
		}
		if need < 0 {
			need = begins
		}
		o := Order{Week: first, Last: last}
		var ok bool
		if o.Deliver, o.By, ok = x.sends.By(h.Date(need) - civil.Date(x.Gut)); !ok {
			continue
		}
		begun := o.By < h.Now() // it was to be ordered before today, and is taken to have been
		if l.Known && begun && (o.Deliver <= h.Now() || x.skipped(o.By)) {
			now, there := x.sends.From(h.Now())
			if !there || now > last {
				continue
			}
			o.Deliver, o.By, o.Late, begun = now, h.Now(), true, false
		}
		on := int(o.Deliver - h.From)
		wants := 0.0
		if l.Known {
			if on > at {
				have, at = l.run(have, at, on, nil), on
			}
			wants = max(0, Wanted(ints(l.Use[on:to]), x.Daily)-have)
		} else {
			wants = Wanted(ints(l.Use[max(on, 0):to]), x.Daily) - Wanted(ints(l.Use[max(on, 0):need]), x.Daily)
			if on < 0 {
				wants = Wanted(ints(l.Use[need:to]), x.Daily)
			}
		}
		bare := wants
		wants *= 1 + x.Margin
		if x.besides() {
			b := x.Plan.Supply.Besides.V
			wants += UpTo((b.Low+b.High)/2/7, (b.High-b.Low)/4/7*math.Sqrt(7), 7*x.weeks, 0, youngChance)
		}
		o.Number = Whole(wants)
		if rest != nil {
			o.Number = min(o.Number, rest[first])
		}
		if o.Number == 0 {
			continue
		}
		sizes := make([]int, 0, len(x.Plan.Supply.Packs))
		for _, p := range x.Plan.Supply.Packs {
			sizes = append(sizes, p.V)
		}
		gives := o.Number
		o.Packing = Packed(gives, sizes)
		if w := x.Plan.Supply.Weekly; w.Set() && o.Packing.Total > w.V*x.weeks {
			o.Packing = Within(w.V*x.weeks, sizes)
			gives = min(gives, o.Packing.Total)
			o.Packing.Surplus = o.Packing.Total - gives
			o.Short = o.Number - gives
		}
		if o.Short > 0 {
			short[first] = o.Short
		}
		if o.Number = gives; gives == 0 {
			x.Orders = append(x.Orders, o)
			continue
		}
		if !l.Known && beginning && on >= 0 { // what is fed until then was ordered before
			l.From, l.Begin = on, Wanted(ints(l.Use[on:need]), x.Daily)
		}
		beginning = false
		if on >= 0 && wants > 0 {
			comes := bare * float64(gives) / wants // without the margin, which is for what dies
			if l.Known && o.Short == 0 {
				comes = max(comes, float64(o.Packing.Total)/(1+x.Margin))
			}
			l.arrive[on] += comes
		}
		if n := len(x.Orders) - 1; n >= 0 && x.Orders[n].Deliver == o.Deliver && x.Orders[n].By == o.By && !x.Plan.Supply.Weekly.Set() {
			p := &x.Orders[n] // one parcel
			p.Last, p.Number, p.Late = o.Last, p.Number+o.Number, p.Late || o.Late
			p.Packing = Packed(p.Number, sizes)
			continue
		}
		o.Frost, o.Heat = x.frost(o.Deliver), x.heat(o.Deliver)
		if !begun || o.Deliver >= h.Now() {
			x.Orders = append(x.Orders, o)
		}
	}
	return short
}

// besides reports whether some are used that the plan does not know of.
func (x *Supply) besides() bool {
	return x.Plan.Supply.Besides.Set() && x.Plan.Supply.Besides.V.High > 0
}

// skipped reports whether the log says that an order of a day was not made.
func (x *Supply) skipped(by civil.Date) bool {
	return slices.ContainsFunc(x.Lot.log[x.Plan.Name.V], func(e *plan.Event) bool {
		return e.Word == schema.WordSkipped && e.Date <= by && by-e.Date < 7 && len(e.Args) > 0 && e.Args[0].V == schema.KindOrder.Name
	})
}

// next returns the first day from one on on which some are fed, before another; -1 for none.
func (l *Lot) next(from, to int) int {
	for i := max(0, from); i < min(to, len(l.Use)); i++ {
		if l.Use[i] > 0 {
			return i
		}
	}
	return -1
}

func ints(all []int) []float64 {
	out := make([]float64, len(all))
	for i, n := range all {
		out[i] = float64(n)
	}
	return out
}
