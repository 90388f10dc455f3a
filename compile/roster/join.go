package roster

import (
	"runtime"
	"slices"
	"sync"
	"sync/atomic"

	"vivary/compile/life"
	"vivary/plan"
	"vivary/plan/finding"
)

// Sheet is what was worked out for one enclosure, in the parts of which a roster is put
// together: where one enclosure is made anew, no entry of the others is looked at.
type Sheet struct {
	Entries  []Entry
	Findings []finding.Finding
	rounds   []part
	falls    []fall
	unshown  []*Entry
}

// part is what of an enclosure is done in a round.
type part struct {
	round   *plan.Round
	entries []*Entry
}

// fall is what of an enclosure falls into a calendar.
type fall struct {
	calendar int
	picks    []Pick
}

// sheet parts the entries of one enclosure, or of a rack.
func (s *Shared) sheet(entries []Entry, found []finding.Finding) Sheet {
	out := Sheet{Entries: entries, Findings: found, falls: s.shows.falls(entries)}
	at := map[*plan.Round]int{}
	for k := range entries {
		e := &entries[k]
		i, known := at[e.Round]
		if !known {
			i, at[e.Round] = len(out.rounds), len(out.rounds)
			out.rounds = append(out.rounds, part{round: e.Round})
		}
		out.rounds[i].entries = append(out.rounds[i].entries, e)
		if e.Unshown(0) >= 0 {
			out.unshown = append(out.unshown, e)
		}
	}
	return out
}

// falls says into which calendars entries fall.
func (x *shows) falls(entries []Entry) (out []fall) {
	at := map[int]int{}
	for k := range entries {
		e := &entries[k]
		x.candidates(e, func(calendar int) {
			// What is held for longer than the window is still in the calendar of its
			// enclosure, which shows the hold.
			days := x.within(calendar, e)
			if x.days[calendar] != nil && days.Empty() {
				return
			}
			i, known := at[calendar]
			if !known {
				i, at[calendar] = len(out), len(out)
				out = append(out, fall{calendar: calendar})
			}
			out[i].picks = append(out[i].picks, Pick{e, days})
		})
	}
	return out
}

// Make puts the entries of all enclosures together. sheets are those of the lives, in
// the same order, as Enclosure makes them.
func Make(s *Shared, lives []*life.Enclosure, sheets []Sheet, racks []*Rack) *Roster {
	r := &Roster{Shared: s, Lives: lives, Racks: racks}
	n := 0
	for i := range sheets {
		n += len(sheets[i].Entries)
		r.Findings = append(r.Findings, sheets[i].Findings...)
	}
	if n > MaxEntries {
		r.Findings = append(r.Findings, finding.Finding{Rule: ruleTooManySeries, Severity: finding.Error,
			Text: "there are more repeating cares than are read", Limit: "600,000 in a collection", Write: "split the collection"})
		return r
	}
	r.Of = make([][]Entry, len(lives))
	for i := range sheets {
		r.Of[i] = sheets[i].Entries
	}
	r.Findings = append(r.Findings, clashes(s.Plan)...)
	r.join(sheets)
	return r
}

// join puts the sheets of all enclosures together, in walking order. What is done for a rack
// comes before its first enclosure.
func (r *Roster) join(sheets []Sheet) {
	all := make([]*Sheet, 0, len(sheets)+len(r.Racks))
	racks := r.before()
	for i := range sheets {
		if k := racks[i]; k != nil {
			own := r.sheet(k.Entries, nil)
			all = append(all, &own)
		}
		all = append(all, &sheets[i])
	}
	r.In = make(map[*plan.Round][]*Entry, len(r.Rounds))
	fallen := make([][][]Pick, len(r.shows.all))
	for _, s := range all {
		for _, p := range s.rounds {
			r.In[p.round] = append(r.In[p.round], p.entries...)
		}
		for _, f := range s.falls {
			fallen[f.calendar] = append(fallen[f.calendar], f.picks)
		}
		r.Unshown = append(r.Unshown, s.unshown...)
	}
	r.Calendars = make([]Calendar, len(fallen))
	for i, c := range r.shows.all {
		picks := fallen[i]
		r.Calendars[i] = Calendar{Plan: c, Picks: sync.OnceValue(func() []Pick { return slices.Concat(picks...) }), Empty: len(picks) == 0}
	}
}

// Each calls do for 0 to n-1, from as many goroutines as there are processors. Each takes
// the next few where it has done some: what is to be made anew stands side by side, since it
// was typed in one file, and would else be done by one of them alone.
func Each(n int, do func(int)) {
	workers := min(runtime.GOMAXPROCS(0), n)
	few := max(1, n/max(1, 64*workers))
	var next atomic.Int64
	var wg sync.WaitGroup
	for range workers {
		wg.Go(func() {
			for {
				to := int(next.Add(int64(few)))
				for i := to - few; i < min(to, n); i++ {
					do(i)
				}
				if to >= n {
					return
				}
			}
		})
	}
	wg.Wait()
}
