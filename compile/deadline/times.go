package deadline

import (
	"slices"

	"vivary/plan"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/quantity"
)

// rule is when something comes.
type rule struct {
	by    civil.Date // the first day, 0 for none
	base  civil.Date // of what is counted from when it was done last: that day, 0 where only the log knows
	every quantity.Interval
	// counted says that it comes so long after it was done last; else it comes on fixed days.
	counted bool
	lead    civil.Date // in days
}

func ruleOf(x *plan.Deadline, k *schema.DeadlineKind) rule {
	r := rule{by: x.By.V, base: x.Last.V, lead: schema.DeadlineLead, counted: x.Last.Set()}
	if k != nil {
		r.every, r.lead, r.counted = k.Every, civil.Date(k.Lead), r.counted || k.Counted
	}
	if x.Every.Set() {
		r.every = x.Every.V
	}
	if x.Lead.Set() {
		r.lead = civil.Date(x.Lead.V.Value / (24 * 60))
	}
	if r.every.N > 0 {
		r.lead = min(r.lead, max(0, r.days()-1)) // else it would be told without an end
	}
	return r
}

// mean is how many days it is from one time to the next on average, 0 where there is no next.
func (r *rule) mean() float64 {
	days := [...]float64{quantity.Day: 1, quantity.Week: 7, quantity.Month: 365.25 / 12, quantity.Year: 365.25}
	return days[r.every.Unit] * float64(r.every.N)
}

func (r *rule) days() civil.Date { return civil.Date(r.mean()) }

// after is the day some intervals after another. Months and years end on the same day of the
// month, or on its last: a date of the house is rather early than late.
func after(from civil.Date, v quantity.Interval, times int) civil.Date {
	n := v.N * times
	switch v.Unit {
	case quantity.Week:
		return from + civil.Date(7*n)
	case quantity.Month:
		return from.AddMonths(n)
	case quantity.Year:
		return from.AddMonths(12 * n)
	}
	return from + civil.Date(n)
}

// KeptUntil is until when a record is kept that was made on a day, for so long: the whole of
// that time, so that where there is no such day in the last month it is the one after.
func KeptUntil(made civil.Date, v quantity.Interval) civil.Date {
	last := after(made, v, 1)
	if v.Unit == quantity.Month || v.Unit == quantity.Year {
		_, _, day := made.YMD()
		if _, _, there := last.YMD(); there < day {
			return last + 1
		}
	}
	return last
}

// early is how long before its day something may be done and count for it: while it is told, and
// twice as long or a month before, but not in the first half of the time since the last one.
func (r *rule) early() civil.Date {
	out := max(2*r.lead, 30)
	if n := r.days(); n > 0 {
		out = max(r.lead, min(out, n/2))
	}
	return out
}

// mostTimes bounds how many times are told of one date.
const mostTimes = 500

// times are those that are open, up to one that is told first after a day, and of those that were
// seen to the ones that were from another day on. Done are the days on which the log says so, in
// order.
func (r *rule) times(done []civil.Date, today, from, until civil.Date) (out []Time) {
	add := func(by, seen civil.Date) bool {
		switch n := len(out) - 1; {
		case seen > 0 && seen < from:
			return true
		case seen == 0 && by < today && n >= 0 && out[n].Done == 0:
			return true // of several that are over and open the first one is told
		case n >= 0:
			out[n].Next = by - r.lead
		}
		out = append(out, Time{From: by - r.lead, By: by, Done: seen})
		return len(out) < mostTimes && (seen > 0 || by-r.lead < until)
	}
	if r.counted {
		r.chain(done, today, add)
	} else if r.by > 0 {
		r.grid(done, from, add)
	}
	return out
}

// grid goes through times on fixed days, whenever each was seen to.
func (r *rule) grid(done []civil.Date, from civil.Date, add func(by, seen civil.Date) bool) {
	if r.every.N == 0 {
		add(r.by, r.seen(done, r.by))
		return
	}
	near := func(d civil.Date) int { return max(0, int(float64(d-r.by)/r.mean())-3) }
	k := 0
	if len(done) > 0 { // what is long seen to need not be gone through
		k = near(min(done[len(done)-1], from) - r.early())
	}
	for {
		by := after(r.by, r.every, k)
		seen := r.seen(done, by)
		if !add(by, seen) {
			return
		}
		k++
		if seen == 0 {
			k = max(k, near(from))
		}
	}
}

// seen is the first day on which something was done that counts for a time, 0 for none.
func (r *rule) seen(done []civil.Date, by civil.Date) civil.Date {
	i, _ := slices.BinarySearch(done, by-r.early())
	if i == len(done) {
		return 0
	}
	return done[i]
}

// chain goes through the times of what is counted from when it was done last; what is to come
// as if it was done in time.
func (r *rule) chain(done []civil.Date, today civil.Date, add func(by, seen civil.Date) bool) {
	base, by := r.base, civil.Date(0)
	switch {
	case r.by > 0 && base < r.by-r.early():
		by = r.by
		i, _ := slices.BinarySearch(done, by-r.early())
		done = done[i:]
	case base == 0 && len(done) == 0:
		return
	case base == 0:
		base, done = done[0], done[1:]
	}
	for {
		if by == 0 {
			if r.every.N == 0 {
				return
			}
			by = after(base, r.every, 1)
			for len(done) > 0 && done[0] <= base {
				done = done[1:]
			}
		}
		seen := civil.Date(0)
		if len(done) > 0 {
			seen = done[0]
		}
		if !add(by, seen) || seen == 0 && by < today {
			return
		}
		if base = seen; seen == 0 {
			base = by
		}
		by = 0
	}
}
