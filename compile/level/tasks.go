package level

import (
	"slices"
	"time"

	"vivary/compile"
	"vivary/compile/horizon"
	"vivary/compile/prove"
	"vivary/compile/roster"
	"vivary/plan"
	"vivary/schema/civil"
	"vivary/schema/quantity"
)

// Why a care stays on its days.
const (
	stays     = ""                                                          // it does not: it may move
	daily     = "done every day"                                            //
	noWindow  = "on days of the week that the plan names, without a window" //
	byDate    = "on dates that the plan names"                              //
	byCron    = "by a cron line"                                            //
	afterLast = "so long after it was last done"                            //
	byLog     = "because of the log"                                        //
	ofRack    = "once for all in a rack"                                    //
	inRounds  = "in a round that is not held on other days"                 //
	notAlone  = "written for several enclosures at once"                    //
	newly     = "changed since it last came up, or since the calendars were built"
	noLater   = "on the only days that are in time for its needs" //
)

// Farthest is by how many days anything is moved at the most.
const farthest = 32

// Key names one care, or the meals of some animals, in one enclosure.
type Key struct {
	Enclosure, Name string
	Meal            bool
}

// care is a care of one enclosure with all that goes with it: its entries, and of a meal the
// look for leftovers.
type care struct {
	key     Key
	entries []*roster.Entry // the first says when
	proofs  []*prove.Proof
	why     string // it stays
	turn    plan.Turn
	period  int   // in days; of months about
	shifts  []int // by how many days it may move, none of them 0
}

// gather puts the entries of a collection together by care, in walking order. Those in keep
// stay where they are.
func gather(r *compile.Result, keep map[Key]bool) []*care {
	var out []*care
	for i := range r.Roster.Of {
		at := map[Key]*care{}
		for k := range r.Roster.Of[i] {
			e := &r.Roster.Of[i][k]
			key := Key{e.Plan().Name.V, e.Name, false}
			if e.Meal != nil && e.Group != nil {
				key = Key{e.Plan().Name.V, e.Group.Animals.Name.V, true}
			}
			x := at[key]
			if x == nil || e.Once != nil {
				x = &care{key: key}
				out = append(out, x)
				if e.Once == nil {
					at[key] = x
				}
			}
			x.entries = append(x.entries, e)
		}
		for _, x := range at {
			slices.SortStableFunc(x.entries, func(a, b *roster.Entry) int { return abs(a.After) - abs(b.After) })
			x.proofs = proofsOf(r.Proofs[i], x.entries)
		}
	}
	for _, k := range r.Roster.Racks {
		for i := range k.Entries {
			out = append(out, &care{key: Key{Name: k.Entries[i].Name}, entries: []*roster.Entry{&k.Entries[i]}, why: ofRack})
		}
	}
	for _, x := range out {
		if x.why == stays {
			x.judge(r, keep)
		}
	}
	return out
}

// proofsOf are the proofs of needs that some entries meet.
func proofsOf(all []prove.Proof, entries []*roster.Entry) (out []*prove.Proof) {
	for i := range all {
		if slices.ContainsFunc(all[i].By, func(e *roster.Entry) bool { return slices.Contains(entries, e) }) {
			out = append(out, &all[i])
		}
	}
	return out
}

// judge finds whether a care may stand on other days, and on which.
func (x *care) judge(r *compile.Result, keep map[Key]bool) {
	e := x.entries[0]
	t := e.Timing
	x.turn = plan.Turn{Enclosure: e.Plan(), Meal: x.key.Meal, Name: x.key.Name}
	switch {
	case e.Once != nil || t == nil || e.Group != nil && e.Group.Logged:
		x.why = byLog
	case t.Cron.Set():
		x.why = byCron
	case t.AfterLast.Set():
		x.why = afterLast
	case keep[x.key]:
		x.why = noLater
	case x.unbuilt(r):
		x.why = newly
	case len(t.NotOn)+len(t.AlsoOn) > 0 || t.Until.Set() || t.From.Set() && t.From.V > r.Today || x.staged():
		x.why = byDate
	case len(t.On) > 0:
		x.onDays(r, t)
	default:
		x.interval(r, t)
	}
	if x.why == stays {
		if x.shifts = slices.DeleteFunc(x.shifts, func(n int) bool { return !x.held(r, n) }); len(x.shifts) == 0 {
			x.why = inRounds
		}
	}
	if x.why == stays && !r.Plan.Turns(x.turned(r, x.shifts[0])) {
		x.why = notAlone
	}
	if x.why == stays {
		if x.shifts = slices.DeleteFunc(x.shifts, func(n int) bool { return !x.soon(r, n) }); len(x.shifts) == 0 {
			x.why = noLater
		}
	}
}

// unbuilt reports whether the calendars that were built last show no such day as its next: it was
// changed since, and when it was last done is not what its days of now would say.
func (x *care) unbuilt(r *compile.Result) bool {
	e := x.entries[0]
	next := e.Days.Next(r.Horizon.Today)
	if r.Roster.Told == nil || next < 0 {
		return false
	}
	on, from, until, ok := r.Roster.Told.Days(e.ID)
	d := r.Horizon.Date(next)
	return ok && from <= d && d < until && !on(d)
}

// staged reports whether how often it is done changes with a stage that is to come: which of
// the days are meant then, the plan does not say apart.
func (x *care) staged() bool {
	return slices.ContainsFunc(x.entries, func(e *roster.Entry) bool { return e.Stage != "" || e.Staged && e.Meal == nil && len(e.Rules) > 1 })
}

// onDays is about care on days of the week: it may move as far as its window lets it.
func (x *care) onDays(r *compile.Result, t *plan.Timing) {
	e := x.entries[0]
	days := r.Plan.Days(t.On)
	x.period = 7 / max(1, min(7, len(days)))
	if slices.ContainsFunc(days, func(d plan.Written[plan.Day]) bool { return d.V.Kind != plan.EachWeekday }) || len(days) != len(t.On) || t.Every.Set() && t.Every.V.N > 1 || t.Every.Set() && t.Every.V.Unit != quantity.Week {
		x.why = byDate
		return
	}
	window := 0
	if t.Window.Set() {
		window = min(int(t.Window.V.Value/(24*60)), farthest)
	}
	if window == 0 || e.FromSheet || slices.ContainsFunc(t.On, func(d plan.Written[plan.Day]) bool { return d.V.Kind == plan.NamedDays }) {
		x.why = noWindow
		return
	}
	if len(days) >= 7 {
		x.why = daily
		return
	}
	for n := 1; n < 7; n++ { // four days later are the weekday of three days sooner
		switch later, sooner := n <= window, 7-n <= window; {
		case later && (n <= 3 || !sooner):
			x.shifts = append(x.shifts, n)
		case sooner:
			x.shifts = append(x.shifts, n-7)
		}
	}
}

// interval is about care every so many days or months: the day from which it is counted may be
// any.
func (x *care) interval(r *compile.Result, t *plan.Timing) {
	if !t.Every.Set() {
		x.why = byDate
		return
	}
	next := x.next(r)
	switch n := t.Every.V.N; t.Every.V.Unit {
	case quantity.Day:
		x.period = n
	case quantity.Week:
		x.period = 7 * n
	case quantity.Month:
		x.period = 30 * n
	default:
		x.period = 365 * n
	}
	if x.period < 2 {
		x.why = daily
		return
	}
	if next < 0 {
		x.why = byDate
		return
	}
	if t.From.Set() && int(r.Today-t.From.V) < x.period {
		x.why = newly
		return
	}
	months := t.Every.V.Unit == quantity.Month || t.Every.V.Unit == quantity.Year
	for n := -farthest; n <= farthest; n++ {
		first := next + n
		if n == 0 || first < r.Horizon.Today || !months && first >= r.Horizon.Today+x.period {
			continue
		}
		if _, _, day := r.Horizon.Date(first).YMD(); months && (day > 28 || n < -14 || n > 14) {
			continue
		}
		x.shifts = append(x.shifts, n)
	}
}

// next is the next day of a care, -1 for none.
func (x *care) next(r *compile.Result) int {
	e := x.entries[0]
	for d := r.Horizon.Today; d < r.Horizon.Days; d++ {
		if e.Planned(r.Horizon.Date(d)) {
			return d
		}
	}
	return -1
}

// turned is the turn that moves it by some days.
func (x *care) turned(r *compile.Result, n int) *plan.Turn {
	t := x.turn
	of := x.entries[0].Timing
	if len(of.On) > 0 {
		for _, d := range of.On {
			t.On = t.On.With(time.Weekday(((int(d.V.Weekday)+n)%7 + 7) % 7))
		}
		return &t
	}
	first := r.Horizon.Date(x.next(r) + n)
	switch v := of.Every.V; v.Unit { // the day before the first one: what is done until then stays as it was
	case quantity.Month:
		t.From = first.AddMonths(-v.N)
	case quantity.Year:
		t.From = first.AddMonths(-12 * v.N)
	default:
		t.From = first - civil.Date(x.period)
	}
	return &t
}

// held reports whether its round is held on all days to which it would move.
func (x *care) held(r *compile.Result, n int) bool {
	if len(x.entries) > 1 && x.entries[0].Round.Whole() != x.entries[1].Round.Whole() && x.entries[1].After == 0 {
		return !slices.ContainsFunc(x.entries, func(e *roster.Entry) bool { return r.Roster.WholeHeldOn(e.Round) != nil })
	}
	for _, e := range x.entries {
		held := r.Roster.WholeHeldOn(e.Round)
		if held == nil {
			continue
		}
		for d := range moved(e, r.Horizon, n) {
			if !held.Has(d) {
				return false
			}
		}
	}
	return true
}

// moved yields the days of an entry, from today on, once it is moved by n days.
func moved(e *roster.Entry, h horizon.Horizon, n int) func(func(int) bool) {
	return func(yield func(int) bool) {
		for d := e.Days.Next(h.Today - n); d >= 0 && d+n < h.Days; d = e.Days.Next(d + 1) {
			if !yield(d + n) {
				return
			}
		}
	}
}

// soon reports whether it comes in time after it was last done, once it is moved by n days:
// the change itself makes the time between two occasions longer.
func (x *care) soon(r *compile.Result, n int) bool {
	h := r.Horizon
	first, was := -1, -1
	for d := range moved(x.entries[0], h, n) {
		first = d
		break
	}
	if first < 0 {
		return true // none is left of it
	}
	if was = x.entries[0].Days.Next(h.Today); was >= 0 && first <= was {
		return true
	}
	for _, p := range x.proofs {
		if !p.Met() || first-x.last(p, h, first) > p.Allowed {
			return false
		}
	}
	if len(x.proofs) > 0 {
		return true
	}
	last := x.entries[0].Days.Last(h.Today)
	return last < 0 || first-last <= x.period+(x.period+1)/2
}

// last is the last day before one on which a need is met, once a care is moved to it: by the
// care as it was until today, and by others.
func (x *care) last(p *prove.Proof, h horizon.Horizon, first int) int {
	last := h.Today - 1 - p.Allowed // nothing is known
	for _, e := range p.By {
		until := first
		if slices.Contains(x.entries, e) {
			until = h.Today
		}
		last = max(last, e.Logged, e.Days.Last(h.Today))
		if until > h.Today {
			last = max(last, e.Shown.Last(until))
		}
	}
	return last
}

// gap is the longest time between two occasions of a care, in days: that of a need that it
// meets, else its own; 0 where there is none.
func (x *care) gap() int {
	least := 0
	for _, p := range x.proofs {
		if least == 0 || p.Allowed < least {
			least = p.Allowed
		}
	}
	if least == 0 {
		return x.period
	}
	return least
}

func abs(n int) int { return max(n, -n) }
