package page

import (
	"slices"
	"time"

	"vivary/compile"
	"vivary/plan"
	"vivary/schema/civil"
	"vivary/schema/wording"
)

// shut is the last good plan with today's log, for the day's list of a refused one.
type shut struct {
	made bool
	with *compile.Result
}

// shutDay is what the list of a refused plan cannot know.
type shutDay struct {
	Text   string
	Urgent []string
	Logged []string // lines since the last good plan
}

// listed returns what the day's list is made from. Of a refused plan it is the last good one,
// moved to today and with the log as it is now as far as what was done goes; where there is
// none, what can be read. nil is no list. shutDay says so.
func (q *request) listed() (*compile.Result, *shutDay) {
	r := q.h.Result
	if !r.Refused() {
		return r, nil
	}
	s := &shutDay{Text: q.shutWords()}
	if q.h.Good == nil && r.Roster != nil {
		return r, s // what is urgent stands in it
	}
	s.Urgent = r.Alone()
	if q.h.Good == nil {
		return nil, s
	}
	for i := range r.Plan.Log {
		if e := &r.Plan.Log[i]; e.Date >= q.h.Good.Today && !slices.ContainsFunc(q.h.Good.Plan.Log, func(o plan.Event) bool { return q.h.Good.Plan.Files.Of(o.At) == r.Plan.Files.Of(e.At) }) {
			s.Logged = append(s.Logged, r.Plan.Files.Of(e.At))
		}
	}
	c := &q.h.cache
	c.mu.Lock()
	defer c.mu.Unlock()
	if !c.shut.made {
		c.shut = shut{true, moved(q.h.Good, r)}
	}
	return c.shut.with, s
}

// shutWords says where the list of a refused plan is from.
func (q *request) shutWords() string {
	h := q.h
	switch {
	case h.Good != nil && !h.Built.IsZero():
		return "The calendars are those of the last good plan, written on " + momentIn(h, h.Built.Unix()) + "; the day's list is made from that plan too."
	case h.Good != nil:
		return "The day's list is made from the last good plan."
	case h.Result.Roster != nil:
		return "No good plan is known, so that the day's list is from what can be read: it may lack something, and it may be wrong."
	}
	return "The plan cannot be read, and no good one is known: there is no list. Look at every animal, and fill every dish."
}

// moved returns a good plan as it stands on the day of another, and with its log; nil where
// that day is not on its horizon.
func moved(good, now *compile.Result) *compile.Result {
	by := int(now.Today - good.Today)
	if good.Roster == nil || by < 0 || good.Horizon.Today+by >= good.Horizon.Days-7 {
		return nil
	}
	r, all, shared, c := *good, *good.Roster, *good.Roster.Shared, *good.Plan
	c.Log = now.Plan.Log
	shared.Plan = &c
	shared.Horizon.Today += by
	all.Shared = &shared
	r.Plan, r.Roster, r.Today = &c, &all, now.Today
	r.Horizon.Today += by
	return &r
}

// momentIn words a time where the animals are: "Tue 3 Mar, 19:40".
func momentIn(h *House, unix int64) string {
	t := time.Unix(unix, 0).UTC()
	if loc := h.Result.Plan.Location; loc != nil {
		t = t.In(loc)
	}
	return civil.FromTime(t).Short() + ", " + wording.Clock(civil.Clock(t.Hour()*60+t.Minute()), h.Result.Plan.Units)
}
