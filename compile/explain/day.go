package explain

import (
	"cmp"
	"fmt"
	"strconv"
	"strings"

	"vivary/compile"
	"vivary/compile/roster"
	"vivary/compile/rounds"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/wording"
)

// why says why a care is, or is not, on a day: what decided it, who does it, and
// where that is shown. It concludes nothing: all of it stands in the roster.
func why(r *compile.Result, e *roster.Entry, d civil.Date) []string {
	i, on := r.Horizon.Index(d)
	if !on {
		return []string{"that is outside the days that are looked at, " + wording.Dates(r.Horizon.From, r.Horizon.Last())}
	}
	if !e.Days.Has(i) {
		out := []string{"no: " + reason(r, e, i)}
		if next := e.Days.Next(i); next >= 0 {
			return append(out, "next "+r.Horizon.Date(next).Words())
		}
		return append(out, "it does not come up again until "+r.Horizon.Last().Words())
	}
	out := []string{"yes: " + reason(r, e, i)}
	if m := e.Manner(i); m != nil {
		out = append(out, "how: "+manner(r, m))
	}
	if c := e.Cause(roster.PreyKilled, i); c != nil {
		out = append(out, "prey killed first: "+killed(r, e, c, i))
	}
	if c := e.Cause(roster.Leaving, i); c != nil && e.Reason(i) != c {
		out = append(out, said[roster.Leaving](r, e, c, i))
	}
	who, _ := r.Roster.Doer(e, i)
	if who != "" {
		out = append(out, "done by "+person(r, who))
	}
	return append(out, shownIn(r, e, i))
}

// reason says what decided a day.
func reason(r *compile.Result, e *roster.Entry, i int) string {
	if c := e.Reason(i); c != nil {
		return said[c.Why](r, e, c, i)
	}
	if e.Days.Has(i) || !e.Planned(r.Horizon.Date(i)) {
		return e.Words()
	}
	return "what calendars showed then was another day"
}

// otherRound is another round in which the same care is done on day i, or nil: rounds of
// other people take turns too.
func otherRound(r *compile.Result, e *roster.Entry, i int) *plan.Round {
	for k, l := range r.Roster.Lives {
		if l != e.Life || e.Timing == nil {
			continue
		}
		for j := range r.Roster.Of[k] {
			if o := &r.Roster.Of[k][j]; o.Timing == e.Timing && o.Group == e.Group && o.Kind == e.Kind && o.Stage == e.Stage && o.Round != e.Round && o.Days.Has(i) {
				return o.Round
			}
		}
	}
	return nil
}

// said has the words for each reason. They name the one that it is, and no other.
var said = map[roster.Why]func(*compile.Result, *roster.Entry, *roster.Cause, int) string{
	roster.Held: func(r *compile.Result, e *roster.Entry, c *roster.Cause, i int) string {
		m := c.Hold.State.Of(e.Kind, true)
		word := "held"
		switch gone := int(r.Horizon.Date(i) - c.Hold.From); {
		case m.Manner == schema.Held || e.After != 0:
		case gone < m.From:
			word = "held before day " + strconv.Itoa(m.From)
		case m.Every > 1:
			word = "at most once in " + wording.Days(m.Every)
		}
		return word + ": " + c.Hold.Why + "; " + c.Hold.End
	},
	roster.Halved: func(_ *compile.Result, _ *roster.Entry, c *roster.Cause, _ int) string {
		return "every second time is left out: " + c.Hold.Why + "; " + c.Hold.End
	},
	roster.NoRound: func(r *compile.Result, e *roster.Entry, c *roster.Cause, i int) string {
		if x := otherRound(r, e, i); x != nil {
			return "it is in the " + x.Shown() + " that day"
		}
		if c.Dates != nil {
			return "there is no " + e.Round.Shown() + " on that day: " + item(r, c, "not_on")
		}
		return "there is no " + e.Round.Shown() + " on that day; it is moved to the nearest that its window allows"
	},
	roster.Moved: func(_ *compile.Result, e *roster.Entry, _ *roster.Cause, _ int) string {
		return "moved here from a day without the " + e.Round.Shown()
	},
	roster.Nobody: func(r *compile.Result, e *roster.Entry, c *roster.Cause, _ int) string {
		return away(r, c) + ", and nobody does it that day"
	},
	roster.Untrained: func(r *compile.Result, e *roster.Entry, _ *roster.Cause, i int) string {
		who, _ := r.Roster.Doer(e, i)
		a := r.Roster.May(e, i)
		if a.Barred {
			return person(r, who) + " stands in, and the plan does not let them do that here"
		}
		text := person(r, who) + " stands in and is not trained in " + cmp.Or(a.Lacks, schema.SkillFeeding)
		if a.Hold != nil {
			text += ": " + a.Hold.State.Is
		}
		return text
	},
	roster.TooFew: func(r *compile.Result, e *roster.Entry, _ *roster.Cause, i int) string {
		var names []string
		for _, name := range r.Roster.May(e, i).Team {
			names = append(names, person(r, name))
		}
		who := "nobody"
		if len(names) > 0 {
			who = "only " + wording.And(names)
		}
		takes := "the " + e.Round.Shown()
		if e.Crew().At != e.Round.People.At {
			takes = "it"
		}
		return takes + " takes " + strconv.Itoa(e.Crew().V) + " people, and " + who + " is there and trained for it"
	},
	roster.Enough: func(_ *compile.Result, e *roster.Entry, _ *roster.Cause, _ int) string {
		return "moved here from a day on which too few were there"
	},
	roster.Waits: func(r *compile.Result, _ *roster.Entry, c *roster.Cause, _ int) string {
		return away(r, c) + ", and the animals can wait for this meal"
	},
	roster.LeftIn: func(r *compile.Result, _ *roster.Entry, c *roster.Cause, _ int) string {
		return away(r, c) + ", and nobody would take out what is left of live prey"
	},
	roster.Visit: func(r *compile.Result, e *roster.Entry, c *roster.Cause, i int) string {
		return away(r, c) + "; on a visit, for the days between"
	},
	roster.Leaving: func(r *compile.Result, e *roster.Entry, c *roster.Cause, i int) string {
		return "the last time before days when nobody comes: " + away(r, c)
	},
	roster.Return: func(r *compile.Result, _ *roster.Entry, c *roster.Cause, _ int) string {
		return "on the return of " + person(r, c.Away.Name.V)
	},
	roster.Skipped: func(*compile.Result, *roster.Entry, *roster.Cause, int) string {
		return "the log says that it was skipped"
	},
	roster.InPlace: func(*compile.Result, *roster.Entry, *roster.Cause, int) string {
		return "a meal that the log brought stands in its place"
	},
	roster.TooSoon: func(*compile.Result, *roster.Entry, *roster.Cause, int) string {
		return "too soon after another meal: nothing is fed double"
	},
	roster.CaughtUp: func(*compile.Result, *roster.Entry, *roster.Cause, int) string {
		return "caught up: the log says that it was skipped"
	},
	roster.Done: func(*compile.Result, *roster.Entry, *roster.Cause, int) string {
		return "the log says that it was done"
	},
	roster.NotOn: func(r *compile.Result, _ *roster.Entry, c *roster.Cause, _ int) string {
		return "left out: " + item(r, c, "not_on")
	},
	roster.AlsoOn: func(r *compile.Result, _ *roster.Entry, c *roster.Cause, _ int) string {
		return "besides: " + item(r, c, "also_on")
	},
	roster.OtherRound: func(_ *compile.Result, _ *roster.Entry, c *roster.Cause, _ int) string {
		return "it is in the " + c.Round.Shown() + " that day"
	},
	roster.WithMeal: func(*compile.Result, *roster.Entry, *roster.Cause, int) string {
		return "it goes with a meal that the log brought"
	},
}

// item names the line of a list of days that has a day, and what stands there.
func item(r *compile.Result, c *roster.Cause, attr string) string {
	at := r.Plan.Files.Start(c.At)
	out := fmt.Sprintf("%s of %s:%d has ", attr, at.File, at.Line)
	if d := r.Plan.DatesOf(c.Dates.V.Name); d != nil {
		return out + d.Shown()
	}
	return out + c.Dates.V.String()
}

func away(r *compile.Result, c *roster.Cause) string {
	return person(r, c.Away.Name.V) + " is away until " + c.Away.To.V.Short()
}

// manner says how a care is done while animals are in a state, and on whose word.
func manner(r *compile.Result, m *roster.Manner) string {
	out := rounds.Manner(m.May) + ": " + m.Hold.Why + "; " + m.Hold.End
	if m.May.Source == "" {
		return out + "; state " + m.Hold.State.Name + ", common practice"
	}
	return out + "; state " + m.Hold.State.Name + ", source " + m.May.Source
}

// killed says why prey is killed first.
func killed(r *compile.Result, e *roster.Entry, c *roster.Cause, i int) string {
	switch {
	case c.Hold != nil:
		return c.Hold.Why + "; " + c.Hold.End
	case c.Away == nil:
		return "they are too small to kill it"
	}
	if a := r.Roster.May(e, i); !a.Live {
		who, _ := r.Roster.Doer(e, i)
		return person(r, who) + " is not trained for live prey"
	}
	return "nobody comes in time to take out what is left"
}

// shownIn names the calendars that show an entry on a day.
func shownIn(r *compile.Result, e *roster.Entry, i int) string {
	var names []string
	for _, c := range r.Roster.Calendars {
		for _, p := range c.Picks() {
			if p.Entry == e && p.Days.Has(i) {
				names = append(names, c.Plan.Shown())
			}
		}
	}
	switch {
	case e.Round.ListedElsewhere():
		return "worked from " + map[string]string{"paper": "paper", "terminal": "the list at the terminal"}[e.Round.List.V]
	case len(names) == 0:
		return "shown in no calendar: nobody is told"
	}
	return "shown in " + strings.Join(names, ", ")
}
