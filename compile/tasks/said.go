package tasks

import (
	"slices"
	"strings"
	"time"

	"vivary/compile/ical"
	"vivary/compile/roster"
	"vivary/schema"
	"vivary/schema/civil"
)

// Fact is what a tick says: a line of the log in its parts.
type Fact struct {
	UID   string // of the task
	Day   civil.Date
	Clock *civil.Clock // nil where the tick says no time of that day
	By    string       // who did it; "" where nobody is named

	Enclosure, Group string
	Word             *schema.LogWord
	Args             []string
}

// Why says why a tick, or a part of it, is not in the log.
type Why int

// What keeps a tick from the log.
const (
	// NoCare is of a task that the plan has no more.
	NoCare Why = iota
	// NoPlaces is of a task in whose text no place stands that could be ticked.
	NoPlaces
	// NoSuchPlace is of places that the plan has no more, or where there is no such care.
	NoSuchPlace
	// OneOfSeveral is of care that was left out in one of several rounds of a day: the log
	// knows whole days.
	OneOfSeveral
	// TooLongAgo is of a day of which nobody knows any more what was due.
	TooLongAgo
)

// Untold is a tick that is not, or not wholly, in the log, and is to be told.
type Untold struct {
	Why    Why
	Task   ical.Seen
	Places []string // as its text names them
}

// Said returns what the tasks of a list say that was done, and is not in the log. What is not
// of the list says nothing. by is who ticked; "" for whoever does it by the plan.
func (l *List) Said(seen []ical.Seen, by string) (facts []Fact, untold []Untold) {
	for i := range seen {
		s := &seen[i]
		day, ours := l.Day(s.UID)
		if !ours || !s.Done && (!s.Cancelled || day > l.r.Today) {
			continue
		}
		more, why := l.said(s, day, by)
		facts, untold = append(facts, more...), append(untold, why...)
	}
	return facts, untold
}

// said is what one task says.
func (l *List) said(s *ical.Seen, day civil.Date, by string) (facts []Fact, untold []Untold) {
	not := func(why Why, places ...string) {
		if n := len(untold); n > 0 && untold[n-1].Why == why {
			untold[n-1].Places = append(untold[n-1].Places, places...)
			return
		}
		untold = append(untold, Untold{why, *s, places})
	}
	on, within := l.r.Horizon.Index(day)
	t, found := l.find(s.UID, day)
	switch {
	case !within:
		not(TooLongAgo)
	case !found:
		not(NoCare)
	case t.asked:
	default:
		places := placesIn(s.Description)
		if len(places) == 0 {
			not(NoPlaces)
		}
		ticks := map[civil.Date]*roster.Ticks{}
		for _, place := range places {
			e := l.at(t.of, place, on)
			if e == nil {
				not(NoSuchPlace, place)
				continue
			}
			f := l.fact(s, e, day, on)
			if f.By = by; by == "" {
				f.By, _ = l.r.Roster.Doer(e, on)
			}
			if s.Cancelled && len(l.turns(e, on)) > 1 {
				if day == l.r.Today {
					not(OneOfSeveral, place)
				}
				continue
			}
			at, within := l.r.Horizon.Index(f.Day)
			if ticks[f.Day] == nil && within {
				ticks[f.Day] = l.r.Roster.TicksOn(at)
			}
			if !within || !ticks[f.Day].Has(e, at) {
				facts = append(facts, f)
			}
		}
	}
	return facts, untold
}

// placesIn are the places that stand in the text of a task, each once.
func placesIn(text string) (all []string) {
	for line := range strings.Lines(text) {
		if place, is := strings.CutPrefix(oneLine(line), mark); is && !slices.Contains(all, place) {
			all = append(all, place)
		}
	}
	return all
}

// at returns the entry that is meant by a place: the one that is due on that day, else any,
// since what was planned when it was put up may have been held meanwhile, and was done.
func (l *List) at(of []*roster.Entry, place string, on int) (meant *roster.Entry) {
	for _, e := range of {
		if l.means(place, e) && (meant == nil || e.Days.Has(on) && !meant.Days.Has(on)) {
			meant = e
		}
	}
	return meant
}

// fact is what a task says of an entry. What was ticked later than on its day was done on that
// day, as far as anybody knows: a tick after midnight must not take away what is due then.
// What was ticked before was done before.
func (l *List) fact(s *ical.Seen, e *roster.Entry, day civil.Date, on int) Fact {
	f := Fact{UID: s.UID, Day: min(day, l.r.Today), Enclosure: e.Plan().Name.V}
	words := strings.Fields(e.Said())
	if g := group(e); g != "" && strings.HasPrefix(e.Said(), g+" ") {
		f.Group, words = g, words[1:]
	}
	f.Word, f.Args = schema.WordDone, words[1:]
	if len(words) == 1 {
		f.Word = schema.WordFed
	}
	if s.Cancelled {
		if f.Word == schema.WordFed {
			f.Args = []string{schema.KindFeed.Name}
		}
		f.Word = schema.WordSkipped
		return f
	}
	f.Day, f.Clock = l.when(s, f.Day, day)
	if turns := l.turns(e, on); f.Day == day && len(turns) > 1 && (f.Clock == nil || nearest(turns, *f.Clock) != e.At()) {
		at := e.At() // the log takes it by its time for the round that is nearest
		f.Clock = &at
	}
	return f
}

// when is the day and the time of day of which a tick is that says when it was made, if it can
// be so; else known, without a time. day is that of the task.
func (l *List) when(s *ical.Seen, known, day civil.Date) (civil.Date, *civil.Clock) {
	if s.At.IsZero() || s.At.After(l.r.Now.Add(ahead)) {
		return known, nil
	}
	local := s.At.In(l.r.Plan.Location)
	done := civil.FromTime(local)
	if done > known || done < day-early {
		return known, nil
	}
	clock := civil.Clock(local.Hour()*60 + local.Minute())
	return done, &clock
}

const (
	// ahead is how far the clock of a phone may be ahead of ours.
	ahead = 10 * time.Minute
	// early is how many days before its day a task may be ticked: none is put up earlier.
	early = 60
)

// turns are the times of day at which a care comes up on a day.
func (l *List) turns(e *roster.Entry, on int) (all []civil.Clock) {
	for x := range l.r.Roster.All() {
		if x.Plan() == e.Plan() && x.Days.Has(on) && x.Said() == e.Said() && !slices.Contains(all, x.At()) {
			all = append(all, x.At())
		}
	}
	return all
}

func nearest(turns []civil.Clock, to civil.Clock) civil.Clock {
	return slices.MinFunc(turns, func(a, b civil.Clock) int { return apart(a, to) - apart(b, to) })
}

func apart(a, b civil.Clock) int { return max(int(a)-int(b), int(b)-int(a)) }
