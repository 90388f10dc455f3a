package stock

import (
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
	weeks  int     // for which an order is
	sends  Carrier
	// Spare says that those before it give all that is asked for, so that nothing is ordered here.
	Spare bool
	// Missed are the weeks with meals for which nothing that the seller brings comes in time.
	Missed []civil.Date
	frost  func(civil.Date) bool
	heat   func(civil.Date) bool
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
	Frost   bool       // the forecast of the night has to be looked at first
	Heat    bool       // the forecast of the day
	Late    bool       // it comes after the first meal that it is for
	Reserve int        // how many are then kept in the house for young, should the next parcel be held
	Lasts   civil.Date // the last day of its weeks with a meal; 0 for none
}

// lossOf is the share of a lot that dies on a day: as the plan has it, else the greatest of the
// sheet. A margin that is written alone is for the loss too.
func lossOf(s *plan.Store, l *Lot) float64 {
	switch {
	case s.Tub != nil && s.Tub.Frozen.V:
		return 0
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

// gutDays is how many days before a meal they have to be here for its own gut-loading.
func (l *Lot) gutDays() int {
	if slices.ContainsFunc(l.meals, func(e *roster.Entry) bool { return e.Meal.GutLoad.V }) {
		return 1
	}
	return 0
}

// supply reads a supply; nil for one of which the seller is not known.
func supply(r *roster.Roster, s *plan.Store, l *Lot) *Supply {
	if s.From == nil {
		return nil
	}
	x := &Supply{Plan: s, Lot: l, Gut: max(gutDays(s), l.gutDays()), weeks: 1, Margin: s.Supply.Margin.V.Value / 100, Daily: lossOf(s, l)}
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
	lead := 2
	if s.From.Fetched.V {
		lead = 0
	}
	x.sends = Carrier{Lead: min(s.From.Lead.Or(lead), far),
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

// Longest is for how many days what is ordered has to last at the most.
func (x *Supply) Longest() (n int) {
	for i := range x.Orders {
		if o := &x.Orders[i]; o.Lasts > 0 {
			n = max(n, int(o.Lasts-o.Deliver))
		}
	}
	return n
}

// Soonest is the day on which something comes that is ordered on a day; false for none.
func (x *Supply) Soonest(ordered civil.Date) (civil.Date, bool) { return x.sends.From(ordered) }

// Keeps is for how long bought ones of a lot can be used by the sheet; nil where nothing is known.
func Keeps(l *Lot) *plan.Figure {
	if l.Sheet == nil {
		return nil
	}
	return l.Sheet.Figure(schema.FeederUsable)
}

// held is for how long weather holds a parcel back before it is cancelled
// (flukerfarms on its holds).
const held = 7

// HeldFor is for how many days more than until the next delivery the food of young is to last.
const HeldFor = held

// reserve is for how many days beyond the weeks of an order, the last of which ends on a day, the
// food of young is in the house: as long as the parcel after it may be held.
func (x *Supply) reserve(last civil.Date) int {
	if x.Lot.bred || x.Fetched() {
		return 0
	}
	for d := last + 1; d <= last+held; d++ {
		if x.frost(d) || x.heat(d) {
			return held
		}
	}
	return 0
}

// Fetched reports whether the keeper fetches them, so that no parcel travels.
func (x *Supply) Fetched() bool { return x.Plan.From.Fetched.V }
