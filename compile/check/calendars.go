package check

import (
	"strconv"

	"vivary/plan"
	"vivary/plan/finding"
)

// Whether the calendars show what is to be done, and no more than people look at.
var calendars = []*Rule{
	Noisy,
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

// Noisy is about calendars that are too full. How large a feed is in all is known once it
// is written.
var Noisy = &Rule{Collection: calendarNoisy, Rule: finding.Rule{ID: "calendar-noisy", Severity: finding.Caution, Silence: finding.ByReason,
	Title:   "A calendar holds more entries than people look at, or apps read well.",
	Why:     "When everything pings, people stop hearing it. Subscribers complain of being flooded by others' reminders. A feed of more than 800 entries or 700 KB looks less far ahead than a year; this is said where half a year is still too much.",
	Source:  "github.com/Ivan-Malinovski/calino/issues/165; 12 a day, 800 in all and 700 KB are common practice, no source",
	Instead: "One entry a round; or a calendar for each room, round or keeper."}}

// noisyDay is how many entries a day are passed over (common practice, no source).
const noisyDay = 12

func perCare(c *plan.Calendar) bool { return c.Entry.V == "per care" }

func calendarNoisy(r *Rule, c *Collection) {
	for i := range c.Roster.Calendars {
		k := &c.Roster.Calendars[i]
		if !k.Plan.At.Written() || !perCare(k.Plan) {
			continue
		}
		times := 0
		for _, p := range k.Picks() {
			times += p.Days.CountFrom(c.Horizon.Today)
		}
		if a := times / max(1, c.Horizon.Ahead()); a > noisyDay {
			c.Add(finding.Finding{Rule: &r.Rule, At: k.Plan.Entry.At, Source: r.Source,
				Text:  "calendar " + strconv.Quote(k.Plan.Name.V) + " has about " + strconv.Itoa(a) + " entries a day",
				Limit: strconv.Itoa(noisyDay) + " a day", Write: "one entry a round, or a calendar for each room (rooms)"})
		}
	}
}

func calendarEmpty(r *Rule, c *Collection) {
	for _, k := range c.Roster.Calendars {
		// One of a keeper who only stands in is empty while nobody is away.
		if k.Empty && len(k.Plan.Keepers) == 0 && k.Plan.At.Written() && len(c.Lives) > 0 {
			c.Add(finding.Finding{Rule: &r.Rule, At: k.Plan.At, Text: "nothing falls into calendar " + strconv.Quote(k.Plan.Name.V), Source: r.Source, Write: "fewer conditions: rounds, keepers, rooms, enclosures and kinds must all hold at once"})
		}
	}
}

// careUnshown finds care that nobody is shown on some day, and says so once for each
// round and keeper.
func careUnshown(r *Rule, c *Collection) {
	said := map[string]bool{}
	for _, e := range c.Roster.Unshown {
		i := e.Unshown(c.Horizon.Today)
		if i < 0 || said[e.UnshownFor()] {
			continue
		}
		said[e.UnshownFor()] = true
		l := c.Roster.Lacking(e, i)
		days := e.Days.Clone()
		days.Subtract(e.Shown)
		x := finding.Finding{Rule: &r.Rule, At: l.At, In: e.Plan().Box(), Source: r.Source, Once: e.UnshownFor(), Write: l.Write,
			Text: e.Plan().Name.V + " " + e.Name + ", in the " + e.Round.Shown() + ", is in no calendar"}
		if who, _ := c.Roster.Doer(e, i); who != "" && len(c.Plan.Keepers) > 1 {
			x.Text += " that " + who + " sees"
		}
		if when := c.Horizon.Often(days); when != "" && days.CountFrom(c.Horizon.Today) < e.Days.CountFrom(c.Horizon.Today) {
			x.Text += " " + when
		}
		if !x.At.Written() {
			x.At = e.Origin
		}
		c.Add(x)
	}
}
