package check

import (
	"strconv"

	"vivary/compile/horizon"
	"vivary/compile/roster"
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
	{Collection: careUnshown, Rule: finding.Rule{ID: "care-unshown", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "Care is shown to nobody who does it.",
		Why:     "No calendar has it, or only those of other keepers: it is done by who remembers it. Where a need rests on it, the proof refuses the plan.",
		Source:  "the design of this program",
		Instead: "Add its round, its kind or its keeper to a calendar, have one without a selection, or say in the round that it is worked from paper."}},
}

const (
	// noisyDay and noisyFeed are how many entries are passed over (common practice,
	// no source): on a day, and in a feed.
	noisyDay  = 12
	noisyFeed = 800
)

// volume is how much falls into a calendar.
type volume struct {
	times   int // occasions in the days that are looked at
	entries int // of a calendar of one entry a care: a repeating one is one
	rounds  map[*plan.Round]horizon.Days
}

func perCare(c *plan.Calendar) bool { return c.Entry.V == "per care" }

// volume counts what falls into a calendar.
func (c *Collection) volume(k *roster.Calendar) volume {
	v := volume{rounds: map[*plan.Round]horizon.Days{}}
	for _, p := range k.Picks {
		n := p.Days.CountFrom(c.Horizon.Today)
		v.times += n
		if !p.Entry.Moved {
			n = 1 // days that follow no rule are entries each
		}
		v.entries += n
		if v.rounds[p.Entry.Round] == nil {
			v.rounds[p.Entry.Round] = c.Horizon.New()
		}
		v.rounds[p.Entry.Round].Union(p.Days)
	}
	return v
}

func calendarNoisy(r *Rule, c *Collection) {
	for i := range c.Roster.Calendars {
		k := &c.Roster.Calendars[i]
		if !k.Plan.At.Written() {
			continue
		}
		x := finding.Finding{Rule: &r.Rule, At: k.Plan.At, Source: r.Source}
		v := c.volume(k)
		if !perCare(k.Plan) {
			c.noisyRounds(x, k, v)
			continue
		}
		x.At = k.Plan.Entry.At
		switch a := v.times / max(1, c.Horizon.Ahead()); {
		case a > noisyDay:
			x.Text = "calendar " + strconv.Quote(k.Plan.Name.V) + " has about " + strconv.Itoa(a) + " entries a day"
			x.Limit = strconv.Itoa(noisyDay) + " a day"
		case v.entries > noisyFeed:
			x.Text = "calendar " + strconv.Quote(k.Plan.Name.V) + " has about " + strconv.Itoa(v.entries) + " entries"
			x.Limit = strconv.Itoa(noisyFeed) + " in a feed"
		default:
			continue
		}
		x.Write = "entry = \"per round\", or a calendar for each room: rooms = [\"…\"]"
		c.Add(x)
	}
}

func (c *Collection) noisyRounds(x finding.Finding, k *roster.Calendar, v volume) {
	all := 0
	for _, days := range v.rounds {
		all += days.CountFrom(c.Horizon.Today)
	}
	if all = all * 366 / max(366, c.Horizon.Ahead()); all > noisyFeed {
		x.Text = "calendar " + strconv.Quote(k.Plan.Name.V) + " has about " + strconv.Itoa(all) + " entries, of " + strconv.Itoa(len(v.rounds)) + " rounds"
		x.Limit = strconv.Itoa(noisyFeed) + " in a feed"
		x.Write = "a calendar for each of some rounds: rounds = [\"…\"]"
		c.Add(x)
	}
}

func calendarEmpty(r *Rule, c *Collection) {
	for _, k := range c.Roster.Calendars {
		// One of a keeper who only stands in is empty while nobody is away.
		if len(k.Picks) == 0 && len(k.Plan.Keepers) == 0 && k.Plan.At.Written() && len(c.Lives) > 0 {
			c.Add(finding.Finding{Rule: &r.Rule, At: k.Plan.At, Text: "nothing falls into calendar " + strconv.Quote(k.Plan.Name.V), Source: r.Source, Write: "fewer conditions: rounds, keepers, rooms, enclosures and kinds must all hold at once"})
		}
	}
}

// careUnshown finds care that nobody is shown on some day, and says so once for each
// round and keeper.
func careUnshown(r *Rule, c *Collection) {
	said := map[string]bool{}
	for e := range c.Roster.All() {
		i := e.Unshown(c.Horizon.Today)
		if i < 0 || said[e.UnshownFor()] {
			continue
		}
		said[e.UnshownFor()] = true
		l := c.Roster.Lacking(e, i)
		x := finding.Finding{Rule: &r.Rule, At: l.At, In: e.Plan().Whole, Source: r.Source, Once: e.UnshownFor(), Write: l.Write,
			Text: e.Plan().Name.V + " " + e.Name + ", in the " + e.Round.Shown() + ", is in no calendar on " + c.Horizon.Date(i).Words()}
		if who, _ := c.Roster.Doer(e, i); who != "" && len(c.Plan.Keepers) > 1 {
			x.Text += " that " + who + " sees"
		}
		if !x.At.Written() {
			x.At = e.Origin
		}
		c.Add(x)
	}
}
