package stock

import (
	"math"

	"vivary/compile/horizon"
	"vivary/compile/roster"
	"vivary/schema/civil"
)

// order works out the orders of a lot: week after week, each for the meals of its own weeks,
// the latest delivery that is in time for the first of them. Of several supplies the first
// gives what it can, and the next what is left. Where weather may hold the parcel after it back,
// it is for the young of a week more, since the grown fast and the young die.
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
		w := l.weeks(h, x, first, last)
		begins := max(w.from, 0)
		if l.Known {
			begins = max(w.from, h.Today) // what was fed before was there
		}
		need := w.next(l, begins)
		if need < 0 && !x.besides() {
			continue
		}
		if need < 0 {
			need = begins
		}
		o := Order{Week: first, Last: last, Lasts: w.lasts(l, h), Reserve: w.reserve(l)}
		var ok bool
		if o.Deliver, o.By, ok = x.sends.By(h.Date(need) - civil.Date(x.Gut)); !ok {
			if need >= h.Today {
				x.Missed = append(x.Missed, first)
			}
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
			wants = max(0, Wanted(w.all(l, on), x.Daily)-have)
		} else {
			from := on
			if on < 0 {
				from = need
			}
			wants = Wanted(w.own(l, from, need), x.Daily)
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
		gives := x.pack(&o)
		if o.Short > 0 {
			short[first] = o.Short
		}
		if o.Number = gives; gives == 0 {
			x.Orders = append(x.Orders, o)
			continue
		}
		if !l.Known && beginning && on >= 0 { // what is fed until then was ordered before
			l.From, l.Begin = on, Wanted(w.before(l, on, need), x.Daily)
		}
		beginning = false
		if on >= 0 && wants > 0 {
			comes := bare * float64(gives) / wants // without the margin, which is for what dies
			if l.Known && o.Short == 0 {
				comes = max(comes, float64(o.Packing.Total)/(1+x.Margin))
			}
			l.arrive[on] += comes
		}
		if x.together(&o) {
			continue
		}
		o.Frost, o.Heat = x.weather(o.Deliver)
		if !begun || o.Deliver >= h.Now() {
			x.Orders = append(x.Orders, o)
		}
	}
	return short
}

// pack puts an order into packs, as far as the seller gives as many, and returns how many of what
// is wanted are in them.
func (x *Supply) pack(o *Order) (gives int) {
	sizes := x.sizes()
	gives = o.Number
	o.Packing = Packed(gives, sizes)
	if w := x.Plan.Supply.Weekly; w.Set() && o.Packing.Total > w.V*x.weeks {
		o.Packing = Within(w.V*x.weeks, sizes)
		gives = min(gives, o.Packing.Total)
		o.Packing.Surplus = o.Packing.Total - gives
		o.Short = o.Number - gives
	}
	return gives
}

// sizes are those of the packs.
func (x *Supply) sizes() []int {
	out := make([]int, 0, len(x.Plan.Supply.Packs))
	for _, p := range x.Plan.Supply.Packs {
		if p.V > 0 {
			out = append(out, p.V)
		}
	}
	return out
}

// together makes an order part of the one before, where both come in one parcel.
func (x *Supply) together(o *Order) bool {
	n := len(x.Orders) - 1
	if n < 0 || x.Orders[n].Deliver != o.Deliver || x.Orders[n].By != o.By || x.Plan.Supply.Weekly.Set() {
		return false
	}
	p := &x.Orders[n]
	p.Last, p.Lasts, p.Number, p.Reserve, p.Late = o.Last, max(p.Lasts, o.Lasts), p.Number+o.Number, o.Reserve, p.Late || o.Late
	p.Packing = Packed(p.Number, x.sizes())
	return true
}

// weather reports whether the forecast has to be looked at before something is sent on a day.
func (x *Supply) weather(d civil.Date) (frost, heat bool) {
	return !x.Fetched() && x.frost(d), !x.Fetched() && x.heat(d)
}

// weeks are those of one order, as places in the window: its own days, and until where the young
// are fed from it and from the order before.
type weeks struct {
	from, to       int
	youngFrom, end int
}

func (l *Lot) weeks(h horizon.Horizon, x *Supply, first, last civil.Date) weeks {
	w := weeks{from: int(first - h.From), to: int(last-h.From) + 1}
	w.youngFrom = max(0, min(h.Days, w.from+x.reserve(first-1)))
	w.end = min(h.Days, w.to+x.reserve(last))
	return w
}

// next is the first day by which the order has to be here: a meal of its weeks from a day on, or
// as long before the meal of a week for which it has the reserve; -1 for none.
func (w *weeks) next(l *Lot, begins int) int {
	if i := l.next(begins, w.to); i >= 0 {
		return i
	}
	for i := max(w.to, begins); i < w.end; i++ {
		if l.Young[i] > 0 {
			return max(begins, i-held)
		}
	}
	return -1
}

// lasts is the last day of its own weeks with a meal.
func (w *weeks) lasts(l *Lot, h horizon.Horizon) civil.Date {
	for i := w.to - 1; i >= max(0, w.from); i-- {
		if l.Use[i] > 0 {
			return h.Date(i)
		}
	}
	return 0
}

// reserve is how many the young take in the days after, for which they are kept back.
func (w *weeks) reserve(l *Lot) (n int) {
	for i := max(0, w.to); i < w.end; i++ {
		n += l.Young[i]
	}
	return n
}

// use is what is fed on each day from one on that meets a condition.
func use(from, end int, of func(i int) int) []float64 {
	out := make([]float64, max(0, end-max(0, from)))
	for i := range out {
		out[i] = float64(of(max(0, from) + i))
	}
	return out
}

// all is what the meals take from day on, the reserve with them.
func (w *weeks) all(l *Lot, on int) []float64 {
	return use(on, w.end, func(i int) int {
		if i < w.to {
			return l.Use[i]
		}
		return l.Young[i]
	})
}

// own is what the order itself is for: the meals of its weeks from the first on, but for the
// young whose food came with the order before, and the young of the days after.
func (w *weeks) own(l *Lot, from, need int) []float64 {
	return use(from, w.end, func(i int) int {
		n := 0
		if i >= need && i < w.to {
			n = l.Use[i] - l.Young[i]
		}
		if i >= need && i >= w.youngFrom {
			n += l.Young[i]
		}
		return n
	})
}

// before is what of the first order's days came with orders before.
func (w *weeks) before(l *Lot, on, need int) []float64 {
	return use(on, w.youngFrom, func(i int) int {
		if i < need {
			return l.Use[i]
		}
		return l.Young[i]
	})
}
