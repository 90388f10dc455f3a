package check

import (
	"slices"
	"strconv"

	"vivary/compile/horizon"
	"vivary/compile/roster"
	"vivary/compile/rounds"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema/quantity"
)

// Whether a round can be done in its time, and read in one entry.
var walks = []*Rule{
	{Collection: roundLong, Rule: finding.Rule{ID: "round-long", Severity: finding.Advice, Silence: finding.ByReason,
		Title:   "A round takes longer than the time that it has.",
		Why:     "What does not fit is left out, and it is always the same things that are.",
		Source:  "the plan's own within; the minutes of each care are common practice, no source",
		Instead: "Give it the time that it takes, move weekly care to other days, or make a second round for some of the rooms."}},
	{Collection: roundCrowded, Rule: finding.Rule{ID: "round-crowded", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "What is to be done in a round does not fit into one entry of a calendar.",
		Why:     "An entry names every enclosure. What a calendar program cuts off is done by nobody.",
		Source:  "a bound of this program",
		Instead: "A round for each room, or for each keeper."}},
}

// seldom is how rarely a day may be too long: new substrate twice a year is no round
// that is too long. Common practice, no source.
const seldom = 14

// Seldom reports whether a round may be too long on so many days of a horizon without a word.
func Seldom(days int, h horizon.Horizon) bool { return days*seldom <= h.Ahead() }

func roundLong(r *Rule, c *Collection) {
	for _, x := range plan.Wholes(c.Plan.Rounds) {
		if !x.Within.Set() {
			continue
		}
		has := int(x.Within.V.Value) * max(1, x.People.V)
		minutes := c.minutes(x)
		worst, over := c.Horizon.Today, 0
		for i := c.Horizon.Today; i < c.Horizon.Days; i++ {
			if minutes[i] > has {
				over++
			}
			if minutes[i] > minutes[worst] {
				worst = i
			}
		}
		if Seldom(over, c.Horizon) {
			continue
		}
		takes := minutes[worst]
		c.Add(finding.Finding{Rule: &r.Rule, At: x.Within.At, Source: r.Source,
			Text:  "the " + x.Shown() + " takes about " + strconv.Itoa(takes) + " min on " + c.Horizon.Date(worst).Words() + ", the longest of " + strconv.Itoa(over) + " days that are too long for it",
			Limit: quantity.Format(float64(has), x.Within.V.Unit) + ", as the plan says",
			Write: strconv.Itoa((takes/max(1, x.People.V)+5)/5*5) + " min for the round (within); or from or on for weekly care, so that it falls on other days"})
	}
}

// walked is how long a round takes on each day, with what is done in it.
type walked struct {
	entries []*roster.Entry
	minutes []int
}

// After takes over from the compilation before how long those rounds took in which the same
// is done now. It is of the same days.
func (c *Collection) After(last *Collection) { c.before = last.took }

// Took returns how long a round that has a time to be done in takes on each day, in minutes,
// as the rule counted it; nil for one that has none.
func (c *Collection) Took(x *plan.Round) []int { return c.took[x].minutes }

// Takes returns how long some entries, in walking order, take on each day, in minutes.
func (c *Collection) Takes(all []*roster.Entry) []int { return c.worked(all) }

// minutes returns how long a round takes on each day.
func (c *Collection) minutes(x *plan.Round) []int {
	if c.took == nil {
		c.took = map[*plan.Round]walked{}
	}
	all := c.Roster.InAll(x)
	w, known := c.before[x]
	if !known || !slices.Equal(w.entries, all) {
		w = walked{all, c.worked(all)}
		for i, n := range w.minutes {
			if n > 0 {
				w.minutes[i] += x.Starts()
			}
		}
	}
	c.took[x] = w
	return w.minutes
}

// worked adds up what entries take on each day.
func (c *Collection) worked(all []*roster.Entry) []int {
	taking := map[int]*horizon.Tally{} // by minutes
	for k, e := range all {
		days := e.Days
		if before := sameLook(all[:k], e); before != nil {
			days = days.Clone()
			days.Subtract(before.Days)
		}
		t := taking[e.Minutes]
		if t == nil {
			t = new(horizon.Tally)
			taking[e.Minutes] = t
		}
		t.Add(days)
	}
	out := make([]int, horizon.Words(c.Horizon.Days)*64)
	for minutes, t := range taking {
		t.Each(func(day, times int) { out[day] += times * minutes })
	}
	return out
}

// sameLook returns an entry before this one that asks for the same of the same animals,
// or nil: done once, it is done for both.
func sameLook(before []*roster.Entry, e *roster.Entry) *roster.Entry {
	for k := len(before) - 1; k >= 0 && before[k].Life == e.Life; k-- {
		if o := before[k]; o.Task == e.Task && o.Group == e.Group && len(e.Menu) == 0 {
			return o
		}
	}
	return nil
}

// perBox is at most how many bytes an enclosure takes of the text of a round, nearly.
const perBox = 180

func roundCrowded(r *Rule, c *Collection) {
	said := map[*plan.Round]bool{}
	for _, x := range c.Roster.Rounds {
		if boxes(c.Roster.In[x])*perBox <= rounds.MaxText || said[x.Whole()] {
			continue
		}
		on, bytes, ok := rounds.New(c.Roster, x, c.Roster.Picks(x, "")).TooLong()
		if !ok {
			continue
		}
		said[x.Whole()] = true
		c.Add(finding.Finding{Rule: &r.Rule, At: x.At, Source: r.Source,
			Text:  "what stands in the " + x.Shown() + " on " + c.Horizon.Date(on).Words() + " takes " + strconv.Itoa(bytes) + " bytes",
			Limit: strconv.Itoa(rounds.MaxText) + " bytes in an entry",
			Write: split(c.Roster, x)})
	}
}

// boxes counts the enclosures of entries in walking order.
func boxes(all []*roster.Entry) int {
	n := 0
	for i, e := range all {
		if i == 0 || all[i-1].Life != e.Life {
			n++
		}
	}
	return n
}

// split says how to split a round: by room where it passes several, else in the middle
// of the walk.
func split(r *roster.Roster, x *plan.Round) string {
	var names []string
	rooms := map[*plan.Room]bool{}
	var last *plan.Enclosure
	for _, e := range r.In[x] {
		if e.Rack == nil && e.Plan() != last {
			last = e.Plan()
			names = append(names, last.Name.V)
			rooms[last.Place] = true
		}
	}
	if len(rooms) > 1 {
		return "a round for each of the " + strconv.Itoa(len(rooms)) + " rooms that it passes: a round block with its own at, named by round in the room"
	}
	return "a second round, named by round in the enclosures from " + names[len(names)/2] + " to " + names[len(names)-1]
}
