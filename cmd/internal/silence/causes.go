// Package silence finds out that nobody came, and tells somebody by mail: that something
// urgent stays open, that nothing of a round was ticked, that no calendar is built any more.
// What is told follows from a state and a moment alone (Causes); the rest sends it, once a day.
package silence

import (
	"fmt"
	"slices"
	"strings"
	"time"

	"vivary/compile"
	"vivary/compile/daylist"
	"vivary/compile/roster"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema/civil"
	"vivary/schema/wording"
)

const (
	// grace is how long after its end a round counts as one to which nobody came. Common
	// practice, no source.
	grace = time.Hour
	// late is how long after that it is told at the most: what could not be sent in the
	// evening is told in the morning, and a round that is declared as ticked today is not
	// asked about last week.
	late = 12 * time.Hour
	// stale is from which age on a result says nothing of who came: it is made anew each hour.
	stale = 3 * time.Hour
	// shown is how many things of one kind a mail names.
	shown = 10
)

// Sight is what is looked at.
type Sight struct {
	Now time.Time
	// Result is the plan as it is now; of one that is not understood only that is told.
	Result *compile.Result
	// UrgentAt is the time of day from which on it is told what is urgent.
	UrgentAt civil.Clock
	// Since is since when no build succeeded, the zero Time where the last one did; Why says
	// why, and After how long that goes untold.
	Since time.Time
	Why   string
	After time.Duration
}

// Cause is something of which somebody is told, once for each day that it lasts.
type Cause struct {
	Name    string // the same from day to day: "urgent", "round evening", "build"
	Day     civil.Date
	Subject string
	Lines   []string // what is wrong, since when and what to do first, as paragraphs
}

// Causes returns what is to be told at a moment.
func Causes(s Sight) (out []Cause) {
	s.Now = s.Now.In(Zone(s.Result))
	today := civil.FromTime(s.Now)
	if c, ok := s.unbuilt(today); ok {
		out = append(out, c)
	}
	r := s.Result
	if r.Roster == nil || s.Now.Sub(r.Now) > stale {
		return out
	}
	if r.Urgent() > 0 && !s.Now.Before(today.At(s.UrgentAt, s.Now.Location())) {
		out = append(out, urgent(r, today))
	}
	for _, round := range r.Roster.Rounds {
		if !round.Ticked.V {
			continue
		}
		for _, day := range []civil.Date{today - 1, today} { // one in the late evening is over tomorrow
			over := end(round, day, s.Now.Location()).Add(grace)
			if !s.Now.Before(over) && s.Now.Before(over.Add(late)) && nobody(r, round, day, over) {
				out = append(out, missed(r, round, day))
			}
		}
	}
	return out
}

// Zone is where the animals are, UTC where the plan does not say.
func Zone(r *compile.Result) *time.Location {
	if r.Plan.Location != nil {
		return r.Plan.Location
	}
	return time.UTC
}

// unbuilt is that calendars are old. On its first day it is told when it is due, on others
// at the time of what is urgent, and not at midnight.
func (s *Sight) unbuilt(today civil.Date) (Cause, bool) {
	if s.Since.IsZero() {
		return Cause{}, false
	}
	due := s.Since.Add(s.After).In(s.Now.Location())
	if first := civil.FromTime(due); first < today {
		due = today.At(s.UrgentAt, s.Now.Location())
	}
	if s.Now.Before(due) {
		return Cause{}, false
	}
	r, since := s.Result, s.Since.In(s.Now.Location())
	when := civil.FromTime(since).Words() + ", " + since.Format("15:04")
	c := Cause{Name: "build", Day: today, Subject: r.Plan.Title() + ": the calendars are old, none was built since " + civil.FromTime(since).Short(),
		Lines: []string{"No calendar was built since " + when + ". What phones show is as it was then, and knows nothing of what was planned or logged since. " + s.Why}}
	if r.Refused() {
		var all []string
		for i := range r.Findings {
			if f := &r.Findings[i]; f.Severity.Refuses() {
				all = append(all, "- "+place(r, f)+f.Text)
			}
		}
		c.Lines = append(c.Lines, "The plan is refused, for this:", list(all))
	}
	c.Lines = append(c.Lines, "What to do first: the animals need their care all the same, so see that somebody goes round. Then look at what vivary check says in the folder of the collection, and put that right.")
	return c, true
}

// place is where a finding is, for whoever goes there.
func place(r *compile.Result, f *finding.Finding) string {
	if !f.At.Written() {
		return ""
	}
	at := r.Plan.Files.Start(f.At)
	return fmt.Sprintf("%s:%d: ", at.File, at.Line)
}

// urgent is what harms now.
func urgent(r *compile.Result, today civil.Date) Cause {
	n := r.Urgent()
	c := Cause{Name: "urgent", Day: today, Subject: r.Plan.Title() + ": " + wording.Count(n, "thing is", "things are") + " urgent",
		Lines: []string{"This is urgent in " + r.Plan.Title() + ", and still open:"}}
	var all []string
	for i := range r.Findings {
		f := &r.Findings[i]
		if f.Severity != finding.Urgent {
			continue
		}
		text := "- " + said(r, f)
		if do := first(f, today); do != "" {
			text += "\n  First: " + do
		}
		if f.Write != "" {
			text += "\n  To write: " + f.Write
		}
		all = append(all, text)
	}
	c.Lines = append(c.Lines, list(all), "What was done about it is noted in the log; it is told again each day until then.")
	return c
}

// said is a finding with the enclosure in which it is.
func said(r *compile.Result, f *finding.Finding) string {
	e := r.Plan.Enclosure(f.In.Name)
	switch {
	case f.Where != "":
		return f.Text + " (" + f.Where + ")"
	case e != nil:
		return e.Shown() + ": " + strings.TrimPrefix(f.Text, e.Name.V+": ")
	}
	return f.Text
}

// first is what to do at once.
func first(f *finding.Finding, today civil.Date) string {
	for _, x := range f.First {
		if x.On(today) {
			return x.Text
		}
	}
	if f.Rule.Now != "" {
		return f.Rule.Now
	}
	return f.Rule.Instead
}

// list is one line for each, not more than somebody reads.
func list(all []string) (out string) {
	more := len(all) - shown
	for i, x := range all[:min(len(all), shown)] {
		if i > 0 {
			out += "\n"
		}
		out += x
	}
	if more > 0 {
		out += fmt.Sprintf("\nand %d more", more)
	}
	return out
}

// end is when a round is over.
func end(round *plan.Round, day civil.Date, loc *time.Location) time.Time {
	within := time.Hour
	if round.Within.Set() {
		within = time.Duration(round.Within.V.Value * float64(time.Minute))
	}
	return day.At(round.Clock.V, loc).Add(within)
}

// due are the entries of a round that are to be ticked on a day. What the log asks is
// answered, not ticked, and what it brought goes with what is ticked.
func due(r *compile.Result, round *plan.Round, i int) (out []*roster.Entry) {
	for _, e := range r.Roster.In[round] {
		if _, there := r.Roster.Doer(e, i); there && e.Days.Has(i) && e.Ask == nil && e.Once == nil {
			out = append(out, e)
		}
	}
	return out
}

// nobody reports whether something of a round was due on a day and nothing of it was ticked.
// Of a round that is over after midnight what was noted until over counts too.
func nobody(r *compile.Result, round *plan.Round, day civil.Date, over time.Time) bool {
	i, within := r.Horizon.Index(day)
	if !within || len(due(r, round, i)) == 0 {
		return false
	}
	ticks := r.Roster.TicksOn(i)
	for _, e := range r.Roster.In[round] {
		if ticks.Has(e, i) {
			return false
		}
	}
	if civil.FromTime(over) == day {
		return true
	}
	passes := passed(r, round)
	return !slices.ContainsFunc(r.Plan.Log, func(l plan.Event) bool {
		return l.Date == day+1 && l.Clock.Set() && passes[l.Enclosure.V] && !l.Date.At(l.Clock.V, over.Location()).After(over)
	})
}

// passed are the enclosures of a round.
func passed(r *compile.Result, round *plan.Round) map[string]bool {
	out := map[string]bool{}
	for _, e := range r.Roster.In[round] {
		out[e.Plan().Name.V] = true
	}
	return out
}

// missed is that nobody came to a round.
func missed(r *compile.Result, round *plan.Round, day civil.Date) Cause {
	i, _ := r.Horizon.Index(day)
	var who, where []string
	for _, e := range due(r, round, i) {
		if k, _ := r.Roster.Doer(e, i); k != "" && !slices.Contains(who, daylist.Shown(r.Plan, k)) {
			who = append(who, daylist.Shown(r.Plan, k))
		}
		if name := e.Plan().Shown(); !slices.Contains(where, name) {
			where = append(where, name)
		}
	}
	slices.Sort(who)
	begun := day.At(round.Clock.V, Zone(r))
	c := Cause{Name: "round " + round.Name.V, Day: day, Subject: r.Plan.Title() + ": nothing was ticked in the " + round.Shown() + " of " + day.Short()}
	c.Lines = append(c.Lines, fmt.Sprintf("Nothing was ticked off in the %s of %s. It begins at %s and was over at %s.", round.Shown(), day.Words(), begun.Format("15:04"), end(round, day, Zone(r)).Format("15:04")),
		"It passes "+some(where)+". "+lastLine(r, round))
	ask := "What to do first: ask whoever does it whether somebody was there. "
	if len(who) > 0 {
		ask = "What to do first: ask " + wording.Or(who) + " whether somebody was there. "
	}
	return c.and(ask + "If so, what was done is ticked off now, with the day on which it was done. If not, somebody has to go: what is urgent and what lacks water comes first.")
}

func (c Cause) and(line string) Cause {
	c.Lines = append(c.Lines, line)
	return c
}

// some are names, not more than somebody reads.
func some(names []string) string {
	if more := len(names) - shown; more > 0 {
		return wording.And(append(slices.Clone(names[:shown]), fmt.Sprintf("%d more", more)))
	}
	return wording.And(names)
}

// lastLine says since when nothing is known of what a round passes.
func lastLine(r *compile.Result, round *plan.Round) string {
	passes, last := passed(r, round), civil.Date(0)
	for i := range r.Plan.Log {
		if l := &r.Plan.Log[i]; passes[l.Enclosure.V] {
			last = max(last, l.Date)
		}
	}
	if last == 0 {
		return "The log has no line about any of it."
	}
	return "The last line of the log about any of it is of " + last.Words() + "."
}
