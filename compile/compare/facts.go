package compare

import (
	"math"
	"slices"
	"strconv"
	"strings"

	"vivary/compile"
	"vivary/compile/horizon"
	"vivary/compile/identity"
	"vivary/compile/life"
	"vivary/compile/roster"
	"vivary/schema/civil"
	"vivary/schema/quantity"
	"vivary/schema/wording"
)

// Topic is what a fact is about.
type Topic uint8

// The topics, in the order in which they are told.
const (
	Company Topic = iota
	Heat
	Damp
	Needs
	Food
	State
	People
	Found   // what only a rule says
	Feeders // feeder animals: what is ordered, set up and done for them
	Dates   // dates of the house
)

// String is the word of a topic for programs.
func (t Topic) String() string {
	return [...]string{"company", "temperature", "humidity", "needs", "food", "states", "people", "findings", "feeders", "dates"}[t]
}

// fact is one thing that is so in an enclosure. Facts of two compilations with the same key are
// compared by their text.
type fact struct {
	key   string
	topic Topic
	name  string // as in "food, adults"
	text  string
	means string // what is compared in place of the text; "" for that
	limit string
	// rank orders what may be: more is worse. It is not a number where nothing is better.
	rank float64
	// harm says that it is outside of what may be.
	harm bool
	days horizon.Days // on which it is so, from today on; nil for every day
	once string       // what else is so at one time, behind the text: "once 4 days apart"
	// much is how much it is, of what a small difference of is none; 0 for what has no amount.
	much float64
	of   string // what it is so much of
	// longest is how long it is at the most, in days, of a need.
	longest int
	group   string // of animals that it is about, as the plan calls them; "" for all
}

// unranked is the rank of what is neither better nor worse.
var unranked = math.NaN()

// factsOf are the facts of r.Lives[i], by key, in some units; without those of physics where these
// are not asked.
func factsOf(r *compile.Result, i int, u quantity.Units, physics bool) []fact {
	w := &facts{r: r, i: i, l: r.Lives[i], units: u}
	w.needs()
	w.company()
	w.room()
	w.water()
	if physics {
		w.climate()
	}
	w.food()
	w.states()
	w.others()
	w.who()
	slices.SortStableFunc(w.all, func(a, b fact) int { return strings.Compare(a.key, b.key) })
	return slices.CompactFunc(w.all, func(a, b fact) bool { return a.key == b.key })
}

// facts are those of one enclosure in the making.
type facts struct {
	r *compile.Result
	i int
	l *life.Enclosure
	// units are those of the second collection: that one counts otherwise is no change.
	units quantity.Units
	all   []fact
}

func (w *facts) add(f fact) { w.all = append(w.all, f) }

func groupKey(g *life.Group) string { return identity.Animals(g.Animals) }

// needs are how often each need is met, against its limit.
func (w *facts) needs() {
	h := w.r.Horizon
	for k := range w.r.Proofs[w.i] {
		p := &w.r.Proofs[w.i][k]
		f := fact{key: "need " + p.Name.Name, topic: Needs, name: p.Name.Name, limit: "at most " + wording.Days(p.Allowed)}
		if p.Unattended > p.Allowed {
			f.limit += ", " + strconv.Itoa(p.Unattended) + " while nobody comes"
		}
		if p.Group != nil {
			f.key += "/" + groupKey(p.Group)
			f.group = p.Group.Animals.Name.V
			f.name += ", " + f.group
		}
		if p.Stage != "" && p.Group != nil {
			f.key += "/" + p.Stage
			if len(p.Group.Stages) > 1 {
				f.name += " while " + p.Stage
			}
		}
		f.days = h.New()
		for _, e := range p.By {
			f.days.Union(e.Shown)
		}
		f.days.Keep(between(h, p.Begin, p.End))
		low, high := usual(f.days)
		longest := p.Longest
		if !p.Met() {
			longest = max(longest, p.Breach.To-p.Breach.From)
			f.harm = true
		}
		switch {
		case p.Name.PerMeal: // its time runs from each live meal, however seldom that is
			f.text, high = "within "+wording.Days(max(longest, 1))+" of a meal", longest
		case f.days.Empty():
			f.text, high = "never", p.Allowed*8
		case low == 0: // once
			f.text = "on one day"
		default:
			f.text = "every " + span(low, high)
		}
		f.longest = longest
		if longest > max(high, p.Allowed) || !p.Met() && longest > high {
			f.once = "once " + wording.Days(longest) + " apart"
		}
		f.rank = float64(high)/float64(p.Allowed) + float64(longest)/float64(p.Allowed)/1000
		if f.harm {
			f.rank += 1e6
		}
		w.add(f)
	}
}

func span(low, high int) string {
	switch {
	case low == 1 && high == 1:
		return "day"
	case low == high:
		return wording.Days(high)
	}
	return wording.Span(float64(low), float64(high)) + " days"
}

func between(h horizon.Horizon, from, to int) horizon.Days {
	out := h.New()
	out.AddRun(max(from, 0), to, h.Days)
	return out
}

// usual is between how many days the days of a set come one after another, leaving out the tenth
// that are the nearest and the tenth that are the farthest apart; 0 where there are not two.
func usual(s horizon.Days) (low, high int) {
	var gaps []int
	last := -1
	for i := s.Next(0); i >= 0; i = s.Next(i + 1) {
		if last >= 0 {
			gaps = append(gaps, i-last)
		}
		last = i
	}
	if len(gaps) == 0 {
		return 0, 0
	}
	slices.Sort(gaps)
	return gaps[len(gaps)/10], gaps[len(gaps)-1-len(gaps)/10]
}

// others are cares that meet no need, in the keeper's own words or not.
func (w *facts) others() {
	h := w.r.Horizon
	type seen struct{ days horizon.Days }
	by := map[string]*seen{}
	var order []*roster.Entry
	for k := range w.r.Roster.Of[w.i] {
		e := &w.r.Roster.Of[w.i][k]
		if e.Kind.Needs != nil || e.Feeds() || e.Once != nil || e.Ask != nil || e.Meal != nil {
			continue
		}
		s := by[e.ID.Care]
		if s == nil {
			s = &seen{h.New()}
			by[e.ID.Care] = s
			order = append(order, e)
		}
		s.days.Union(e.Days)
	}
	for _, e := range order {
		days := by[e.ID.Care].days
		days.Keep(between(h, h.Today, h.Days))
		low, high := usual(days)
		text := "every " + span(low, high)
		switch {
		case days.Empty():
			text = "never"
		case low == 0:
			text = "once, on " + h.Date(days.Next(0)).Words()
		}
		if e.Own && e.Task != "" {
			text += ": " + e.Task
		}
		w.add(fact{key: "care " + e.ID.Care, topic: Needs, name: e.Name, text: text, rank: unranked, days: days})
	}
}

// states are what holds, and what is waited for.
func (w *facts) states() {
	hold := func(of string, all []life.Hold) {
		for k := range all {
			h := &all[k]
			if h.Until <= w.r.Today {
				continue
			}
			text := h.Why + "; " + h.End
			if h.From > w.r.Today {
				text = "from " + h.From.Words() + ": " + text
			}
			w.add(fact{key: "state " + of + "/" + h.State.Name + "/" + h.Why, topic: State, name: strings.TrimSuffix("state, "+of, ", "), text: text, rank: unranked, days: w.span(h.From, h.Until)})
		}
	}
	hold("", w.l.Holds)
	hold("", w.l.Halves)
	asks := func(of string, all []life.Ask) {
		for k := range all {
			a := &all[k]
			w.add(fact{key: "ask " + of + "/" + a.Name, topic: State, name: strings.TrimSuffix("asked, "+of, ", "), text: a.Text, rank: unranked, days: w.span(a.From, w.r.Horizon.Last())})
		}
	}
	asks("", w.l.Asks)
	for _, g := range w.l.Groups {
		of := groupKey(g)
		hold(of, g.Holds)
		asks(of, g.Asks)
		for _, x := range g.Windows {
			if x.Until > w.r.Today {
				w.add(fact{key: "window " + of + "/" + x.Title, topic: State, name: x.Title + ", " + g.Animals.Name.V, text: wording.Dates(x.From, x.Until-1), rank: unranked, days: w.span(x.From, x.Until)})
			}
		}
	}
}

// span is a stretch of days from today on.
func (w *facts) span(from, until civil.Date) horizon.Days {
	h := w.r.Horizon
	return between(h, max(h.Today, int(from-h.From)), int(min(until, h.Last()+1)-h.From))
}

// company is who lives there, and on how much room.
func (w *facts) company() {
	for _, g := range w.l.Groups {
		n := g.Count(w.r.Today)
		if n == 0 && g.Brood {
			continue
		}
		text, means := wording.Number(float64(n)), ""
		if s := g.Stage(w.r.Today); s != "" {
			text += " " + s
		}
		if g.Sheet != nil {
			means = text + ", " + g.Animals.Name.V + g.Sheet.Name.V // not what it is called in a title
			text += ", " + g.Sheet.Shown()
		}
		w.add(fact{key: "animals " + groupKey(g), topic: Company, name: "animals, " + g.Animals.Name.V, text: text, means: means, rank: unranked})
	}
}
