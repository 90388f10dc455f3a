package check

import (
	"slices"
	"strconv"

	"vivary/compile/life"
	"vivary/compile/roster"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/quantity"
)

// Who may rest, and when. What a cool rest does to the days of care is worked out where
// the log is read.
var rests = []*Rule{
	{Enclosure: restUnfit, Rule: finding.Rule{ID: "rest-unfit", Severity: finding.Error, Silence: finding.Never,
		Title:   "A cool rest is planned for animals that must not rest.",
		Why:     "Tropical species bear no winter. The young live on what they ate yesterday, and a female that carries young needs her warmth.",
		Source:  "reptifiles.com, on brumation; the species sheet; common practice for invertebrates",
		Instead: "Leave the season out for these animals: off = true in a season block of that name where a template brings it."}},
	{Enclosure: restHeld, Rule: finding.Rule{ID: "rest-held", Severity: finding.Urgent, Silence: finding.Never, Told: true,
		Title:   "A cool rest is due, and the log or the date says that the animals must not rest now.",
		Why:     "An animal that is gravid, ill, before or after a moult, in quarantine or too young may not come through the cold. Heat and meals go on for it, and the steps of the rest are left out.",
		Source:  "reptifiles.com, on brumation; common practice for invertebrates",
		Instead: "Leave the heat on. Log what ends it, and the rest is planned again; or leave it out this year."}},
	{Enclosure: restWarm, Rule: finding.Rule{ID: "rest-warm", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "A cool rest is planned where it never gets cool.",
		Why:     "An animal that is warm spends what it has eaten. Without meals it starves where a cold one would sleep, so no meals are left out.",
		Source:  "physics: nothing in a room gets colder than the room; reptifiles.com, on brumation",
		Instead: "A colder room for that time, and its temperature in the room block; or no such season.",
	}},
	{Enclosure: restSummer, Rule: finding.Rule{ID: "rest-summer", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "A cool rest lies in the local summer.",
		Why:     "A room is at its warmest then, and what the animals would meet outside is the other half of the year. It is often a date from a page of the other hemisphere.",
		Source:  "the place of the time zone, tz database; common practice, no source",
		Instead: "Half a year earlier or later; where the animals have kept the seasons of where they came from, an accept block."}},
	{Enclosure: restDisturbed, Rule: finding.Rule{ID: "rest-disturbed", Severity: finding.Caution, Silence: finding.ByReason,
		Title:   "Something that disturbs is fixed on a day of a cool rest.",
		Why:     "An animal that is dug out or handled in the cold cannot settle again. It is left out, and nothing comes in its place.",
		Source:  "common practice, no source",
		Instead: "A day before the rest begins, or after the first meal."}},
}

// restUnfit is about what the plan itself says, of the next time that the season comes.
func restUnfit(r *Rule, e *Enclosure) {
	var said []*plan.Season
	for _, x := range e.Life.Rests {
		if slices.Contains(said, x.Season) {
			continue
		}
		for _, u := range x.Unfit {
			if !u.Written {
				continue
			}
			said = append(said, x.Season)
			e.Add(finding.Finding{Rule: &r.Rule, At: x.Season.At, Text: "season " + strconv.Quote(x.Season.Name.V) + " is a cool rest, and " + u.Why,
				Limit: "adults that are well, of a species that takes a rest", Source: r.Source,
				Write: "no such season here, said to be off where a template brings it; or meals as usual, where only the heaters are off and the room is warm enough",
				Also:  []finding.Related{{At: u.At, Text: "the animals"}}})
			break
		}
	}
}

// restWarm is about a season without meals, or one that is to be cold, in a room that
// never is.
func restWarm(r *Rule, e *Enclosure) {
	for _, s := range e.Plan.Seasons {
		c := life.CoolingOf(e.Plan, s)
		room := e.Plan.Place
		rest := c.Rest
		if f := e.figure(schema.FigureWinterRest); f != nil && c.Off && room != nil && room.Temperature.Set() && e.roomIn(s).V.Low > f.Range.High+restless {
			rest = false
		}
		if rest || !c.Fasting || room == nil || !room.Temperature.Set() || !(c.Room || c.Off) {
			continue
		}
		t := e.roomIn(s)
		write := "a colder room for these animals then, or half the meals (feeding), or no such season"
		if e.figure(schema.FigureSpotNeeded) != nil { // it digests nothing without its warm surface
			write = "a colder room for these animals then, or no such season"
		}
		e.Add(finding.Finding{Rule: &r.Rule, At: s.At, Source: r.Source,
			Text:  "season " + strconv.Quote(s.Name.V) + " leaves out meals, and it never gets cool: the room is never below " + quantity.Format(t.V.Low, t.V.Unit),
			Limit: "meals are left out only in the cold", Write: write,
			Also: []finding.Related{{At: t.At, Text: "the room"}}})
	}
}

// restless is how much warmer than a rest is kept at a room may be, in K, until an animal
// spends in it what it has eaten. Judgement.
const restless = 4

// restSoon is how many days before a rest, and its fast, what forbids it is said.
const restSoon = 28

// restHeld is about what the log says, or the days that went by, from some weeks before
// the rest until it would be over.
func restHeld(r *Rule, e *Enclosure) {
	for _, x := range e.Life.Rests {
		from, until := x.Planned()
		if today := e.Horizon.Now(); today < from-restSoon || today >= until {
			continue
		}
		for _, u := range x.Unfit {
			if u.Written {
				continue
			}
			at := u.At
			if !at.Written() {
				at = x.Season.At
			}
			text, write := " is left out: ", "in the log what ends it; the heat stays on until then"
			if x.Until > x.From {
				text, write = " ends before its time: ", "nothing: the steps back are in the rounds"
			}
			e.Add(finding.Finding{Rule: &r.Rule, At: at, Text: "season " + strconv.Quote(x.Season.Name.V) + " from " + from.Words() + text + u.Why,
				Limit: "adults that are well", Source: r.Source, Write: write,
				Also: []finding.Related{{At: x.Season.At, Text: "the season"}}})
			break
		}
	}
}

// restSummer goes by the middle of a rest: May to August is summer in the north,
// November to February in the south.
func restSummer(r *Rule, e *Enclosure) {
	south, known := e.Collection.Plan.South()
	if !known {
		return
	}
	for _, s := range e.Plan.Seasons {
		year, _, _ := e.Horizon.Now().YMD()
		from, until, ok := life.InYear(s, year)
		if !ok || !life.CoolingOf(e.Plan, s).Rest {
			continue
		}
		_, month, _ := (from + (until-from)/2).YMD()
		half := "May to August"
		summer := month >= 5 && month <= 8
		if south {
			half = "November to February"
			summer = month >= 11 || month <= 2
		}
		if !summer {
			continue
		}
		e.Add(finding.Finding{Rule: &r.Rule, At: s.From.At, Text: "season " + strconv.Quote(s.Name.V) + ", " + from.Brief() + " to " + (until - 1).Brief() + ", is a cool rest in your summer",
			Limit: half + " is summer in " + e.Collection.Plan.About.TimeZone.V, Source: r.Source, Write: "from and to half a year away; or hemisphere in the collection block, if that is not your summer"})
	}
}

// restDisturbed is about care that is for a date and finds only days of a rest.
func restDisturbed(r *Rule, e *Enclosure) {
	for i := range e.Series {
		s := &e.Series[i]
		if row := s.Kind.Row; row != schema.RowDeep && row != schema.RowCount && row != schema.RowHandle && row != schema.RowRehouse {
			continue
		}
		if s.Timing == nil || s.FromSheet || !fixed(s.Timing) {
			continue
		}
		for _, c := range s.Causes {
			if at := c.Days.Next(e.Horizon.Today); c.Why == roster.Held && c.Hold.Cool && at >= 0 {
				e.Add(finding.Finding{Rule: &r.Rule, At: s.Origin, Source: r.Source, Write: "a day before the rest, or after its first meal",
					Text: s.Name + " is fixed on " + e.Horizon.Date(at).Words() + ", in " + c.Hold.Why + ": it is left out"})
				break
			}
		}
	}
}
