package check

import (
	"strconv"

	"vivary/compile/horizon"
	"vivary/compile/schedule"
	"vivary/plan"
	"vivary/plan/finding"
)

// Whether the calendars show what is to be done, and no more than people look at.
var calendars = []*Rule{
	{Collection: calendarNoisy, Rule: finding.Rule{ID: "calendar-noisy", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "A calendar holds more entries than people look at, or apps read well.",
		Why:     "When everything pings, people stop hearing it. Subscribers complain of being flooded by others' reminders.",
		Source:  "github.com/Ivan-Malinovski/calino/issues/165; 12 a day and 800 in all are common practice, no source",
		Instead: "One entry a round; or a calendar for each room, round or keeper."}},
	{Collection: calendarEmpty, Rule: finding.Rule{ID: "calendar-empty", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "Nothing falls into a calendar.",
		Why:     "Whoever subscribes to it thinks that there is nothing to do.",
		Source:  "the design of this program",
		Instead: "Look at what it selects: everything named must hold at once."}},
	{Collection: inNoCalendar, Rule: finding.Rule{ID: "in-no-calendar", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "An enclosure is in none of the calendars.",
		Why:     "It is looked after only by who remembers it.",
		Source:  "the design of this program",
		Instead: "Add it to one, or have a calendar without a selection."}},
	{Collection: careUnshown, Rule: finding.Rule{ID: "care-unshown", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "Care that meets a need is in none of the calendars.",
		Why:     "The proof counts on it, and nobody is told of it.",
		Source:  "the design of this program",
		Instead: "Add its round or its kind to a calendar, or have one without a selection."}},
	{Collection: coverUnshown, Rule: finding.Rule{ID: "cover-unshown", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "Somebody stands in, and no calendar shows them what to do.",
		Why:     "Calendars that select other keepers leave out the days on which somebody stands in.",
		Source:  "the design of this program",
		Instead: "A calendar with the stand-in among its keepers, or one that selects none."}},
}

// picks says how much falls into each calendar of the plan.
type picks struct {
	of     []pick // of each calendar
	missed []int  // the enclosures, as places in Lives, that are in none
	// unshown are series that meet a need and are in none, though others of their
	// enclosure are: the first of each enclosure.
	unshown []*schedule.Series
}

type pick struct {
	plan   *plan.Calendar
	series int // how many series
	// Of a calendar of one entry a care: how many entries, and how many occasions
	// over the horizon.
	entries, times int
	// Of a calendar of one entry a round: the days of each.
	rounds map[*plan.Round]*roundDays
}

type roundDays struct {
	days horizon.Days
	full bool // every day of the horizon: nothing is to be added
}

// index finds the calendars that may hold a series, by the narrowest of what they
// select, so that a plan with a calendar for each of many rooms is gone through once.
type index struct {
	all                                []int
	enclosures, rooms, rounds, keepers map[string][]int
}

func newIndex(all []*plan.Calendar) *index {
	x := &index{enclosures: map[string][]int{}, rooms: map[string][]int{}, rounds: map[string][]int{}, keepers: map[string][]int{}}
	put := func(m map[string][]int, names []plan.Written[string], i int) {
		for _, n := range names {
			m[n.V] = append(m[n.V], i)
		}
	}
	for i, c := range all {
		switch {
		case len(c.Enclosures) > 0:
			put(x.enclosures, c.Enclosures, i)
		case len(c.Rooms) > 0:
			put(x.rooms, c.Rooms, i)
		case len(c.Rounds) > 0:
			put(x.rounds, c.Rounds, i)
		case len(c.Keepers) > 0:
			put(x.keepers, c.Keepers, i)
		default:
			x.all = append(x.all, i)
		}
	}
	return x
}

// calendars counts, once, what falls into the calendars.
func (c *Collection) calendars() *picks {
	if c.picks != nil {
		return c.picks
	}
	p := &picks{}
	c.picks = p
	if len(c.Plan.Calendars) == 0 || len(c.Schedule.Of) == 0 {
		return p
	}
	p.of = make([]pick, len(c.Plan.Calendars))
	for i, x := range c.Plan.Calendars {
		p.of[i] = pick{plan: x, rounds: map[*plan.Round]*roundDays{}}
	}
	x := newIndex(c.Plan.Calendars)
	for i, l := range c.Lives {
		room := ""
		if l.Plan.Place != nil {
			room = l.Plan.Place.Name.V
		}
		found := len(c.Schedule.Of[i]) == 0
		var unshown *schedule.Series
		here, inRoom := x.enclosures[l.Plan.Name.V], x.rooms[room]
		for k := range c.Schedule.Of[i] {
			s := &c.Schedule.Of[i][k]
			shown := false
			for _, candidates := range [...][]int{here, inRoom, x.rounds[s.Round.Name.V], x.byKeeper(c, s), x.all} {
				for _, at := range candidates {
					if c.holds(p.of[at].plan, s, room) {
						p.of[at].add(s, c.Horizon)
						found, shown = true, true
					}
				}
			}
			if !shown && unshown == nil && s.Kind.Needs != "" {
				unshown = s
			}
		}
		if found && unshown != nil {
			p.unshown = append(p.unshown, unshown)
		}
		if !found {
			p.missed = append(p.missed, i)
		}
	}
	return p
}

// byKeeper returns the calendars of who does it, and of who stands in.
func (x *index) byKeeper(c *Collection, s *schedule.Series) []int {
	if len(x.keepers) == 0 {
		return nil
	}
	out := x.keepers[s.Keeper]
	for i := range c.Schedule.People.Absences {
		a := &c.Schedule.People.Absences[i]
		if a.Away.Name.V != s.Keeper || !a.Away.Cover.Set() {
			continue
		}
		for _, at := range x.keepers[a.Away.Cover.V] {
			if !plan.Lists(c.Plan.Calendars[at].Keepers, s.Keeper) {
				out = append(out[:len(out):len(out)], at)
			}
		}
	}
	return out
}

// holds reports whether a calendar holds a series.
func (c *Collection) holds(k *plan.Calendar, s *schedule.Series, room string) bool {
	any := func(list []plan.Written[string], name string) bool { return len(list) == 0 || plan.Lists(list, name) }
	if len(k.Enclosures) > 0 {
		if !any(k.Rooms, room) {
			return false
		}
	}
	if !any(k.Rounds, s.Round.Name.V) || !any(k.Kinds, s.Kind.Name) {
		return false
	}
	if any(k.Keepers, s.Keeper) {
		return true
	}
	for i := range c.Schedule.People.Absences {
		if a := &c.Schedule.People.Absences[i]; a.Away.Name.V == s.Keeper && plan.Lists(k.Keepers, a.Away.Cover.V) {
			return true
		}
	}
	return false
}

func (p *pick) add(s *schedule.Series, h horizon.Horizon) {
	p.series++
	if p.perCare() {
		n := s.Days.Count()
		p.times += n
		if !s.Moved {
			n = 1 // days that follow no rule are entries each
		}
		p.entries += n
		return
	}
	r := p.rounds[s.Round]
	if r == nil {
		r = &roundDays{days: h.New()}
		p.rounds[s.Round] = r
	}
	if !r.full {
		r.days.Union(s.Days)
		r.full = r.days.Count() == h.Days
	}
}

func (p *pick) perCare() bool { return p.plan.Entry.V == "per care" }

const (
	// noisyDay and noisyFeed are how many entries are passed over (common practice,
	// no source): on a day, and in a feed.
	noisyDay  = 12
	noisyFeed = 800
)

func calendarNoisy(r *Rule, c *Collection) {
	for i := range c.calendars().of {
		p := &c.picks.of[i]
		x := finding.Finding{Rule: &r.Rule, At: p.plan.At, Source: r.Source}
		if p.perCare() {
			x.At = p.plan.Entry.At
			a, all := p.times/max(1, c.Horizon.Days), p.entries
			switch {
			case a > noisyDay:
				x.Text = "calendar " + strconv.Quote(p.plan.Name.V) + " has about " + strconv.Itoa(a) + " entries a day"
				x.Limit = strconv.Itoa(noisyDay) + " a day"
			case all > noisyFeed:
				x.Text = "calendar " + strconv.Quote(p.plan.Name.V) + " has about " + strconv.Itoa(all) + " entries"
				x.Limit = strconv.Itoa(noisyFeed) + " in a feed"
			default:
				continue
			}
			x.Write = "entry = \"per round\", or a calendar for each room: rooms = [\"…\"]"
			c.Add(x)
			continue
		}
		all := 0
		for _, round := range p.rounds {
			all += round.days.Count()
		}
		if all = all * 366 / max(366, c.Horizon.Days); all > noisyFeed {
			x.Text = "calendar " + strconv.Quote(p.plan.Name.V) + " has about " + strconv.Itoa(all) + " entries, of " + strconv.Itoa(len(p.rounds)) + " rounds"
			x.Limit = strconv.Itoa(noisyFeed) + " in a feed"
			x.Write = "a calendar for each of some rounds: rounds = [\"…\"]"
			c.Add(x)
		}
	}
}

func calendarEmpty(r *Rule, c *Collection) {
	for i := range c.calendars().of {
		if p := &c.picks.of[i]; p.series == 0 {
			c.Add(finding.Finding{Rule: &r.Rule, At: p.plan.At, Text: "nothing falls into calendar " + strconv.Quote(p.plan.Name.V), Source: r.Source, Write: "fewer conditions: rounds, keepers, rooms, enclosures and kinds must all hold at once"})
		}
	}
}

func inNoCalendar(r *Rule, c *Collection) {
	for _, i := range c.calendars().missed {
		e := c.Lives[i].Plan
		c.Add(finding.Finding{Rule: &r.Rule, At: e.At, In: e.Whole, Text: "enclosure " + strconv.Quote(e.Name.V) + " is in none of the calendars", Source: r.Source, Write: "its name in a calendar, or a calendar without a selection"})
	}
}

func careUnshown(r *Rule, c *Collection) {
	for _, s := range c.calendars().unshown {
		c.Add(finding.Finding{Rule: &r.Rule, At: s.Life.Plan.At, In: s.Life.Plan.Whole, Source: r.Source,
			Text:  s.Name + " of " + s.Life.Plan.Name.V + ", in the " + s.Round.Shown() + ", is in no calendar",
			Write: "a calendar with rounds = [\"" + s.Round.Name.V + "\"], or one that selects nothing"})
	}
}

func coverUnshown(r *Rule, c *Collection) {
	if len(c.Plan.Calendars) == 0 {
		return
	}
	for k := range c.Schedule.People.Absences {
		a := c.Schedule.People.Absences[k].Away
		shown := !a.Cover.Set()
		for _, x := range c.Plan.Calendars {
			shown = shown || len(x.Keepers) == 0 || plan.Lists(x.Keepers, a.Cover.V)
		}
		if !shown {
			c.Add(finding.Finding{Rule: &r.Rule, At: a.Cover.At, Source: r.Source, Text: "no calendar shows " + a.Cover.V + " what to do",
				Write: "calendar \"" + a.Cover.V + "\" with keepers = [\"" + a.Cover.V + "\"]"})
		}
	}
}
