package roster

import (
	"errors"
	"strings"
	"time"

	"vivary/compile/identity"
	"vivary/compile/recur"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/schema/civil"
	"vivary/schema/quantity"
)

// timing is when a care is done: its days, and times of its own if it has any.
type timing struct {
	rules  []recur.Rule
	clocks []civil.Clock
}

// says reports whether a timing says how often.
func says(t *plan.Timing) bool {
	return t.Every.Set() || len(t.On) > 0 || t.Cron.Set() || t.AfterLast.Set()
}

// when reads the timing of a care. its identity gives an interval without a first day
// its phase; last is the day on which the care was last done, if that is known.
func (b *builder) when(t *plan.Timing, at source.Place, id identity.Identity, last civil.Date, hasLast bool) (timing, bool) {
	var out timing
	if n := ways(t); n != 1 {
		if n == 0 && t.Unsure {
			return out, false // what says so could not be read, and that is said
		}
		if n == 0 {
			b.found.Add(finding.Finding{Rule: ruleNoTiming, At: at, Text: "it is not said how often this is done", Write: "an interval as every, or days as on"})
		} else {
			b.found.Add(finding.Finding{Rule: ruleTwoTimings, At: at, Text: "it is said in more than one way how often this is done", Write: "one of every, on, cron and after_last"})
		}
		return out, false
	}
	if t.Window.Set() {
		if n := float64(windowDays(t.Window.V)) * 24 * 60; n != t.Window.V.Value {
			b.takenAs(t.Window, "a window of", n, "whole days, 32 at the most")
		}
	}
	if n := float64(wholeDays(t.AfterLast.V)) * 24 * 60; t.AfterLast.Set() && n != t.AfterLast.V.Value {
		b.takenAs(t.AfterLast, "after_last of", n, "whole days")
	}
	anchor := func(days int) civil.Date {
		if t.From.Set() {
			return t.From.V
		}
		return id.Phase(days)
	}
	switch {
	case t.Cron.Set():
		r, clocks, err := recur.ParseCron(t.Cron.V)
		if err != nil {
			text := err.Error()
			var ce *recur.CronError
			if errors.As(err, &ce) {
				text = "the cron line cannot be used: " + ce.Reason
			}
			b.found.Add(finding.Finding{Rule: ruleCron, At: t.Cron.At, Text: text, Write: "minute, hour, day of month, month and weekday, each a number, several with commas, or *"})
			return out, false
		}
		for _, c := range clocks {
			if c < 4*60 {
				b.found.Add(finding.Finding{Rule: ruleCron, At: t.Cron.At,
					Text:  c.String() + " lies between 00:00 and 03:59, where a clock change can leave a time out or repeat it and calendars disagree about the day",
					Write: "an hour from 4 to 23"})
				return out, false
			}
		}
		for _, n := range recur.CronNotes(t.Cron.V) {
			b.found.Add(finding.Finding{Rule: ruleCronMeaning, At: t.Cron.At, Text: n})
		}
		out.rules, out.clocks = []recur.Rule{r}, clocks
	case t.AfterLast.Set():
		n := wholeDays(t.AfterLast.V)
		if hasLast {
			out.rules = []recur.Rule{recur.EveryDays(n, last).Between(last+1, recur.MaxDate)}
		} else {
			out.rules = []recur.Rule{recur.EveryDays(n, anchor(n))}
		}
	case len(t.On) > 0:
		rules, ok := b.onDays(t, anchor)
		if !ok {
			return out, false
		}
		out.rules = rules
	default:
		out.rules = []recur.Rule{every(t.Every.V, id, t.From)}
	}
	if t.From.Set() || t.Until.Set() {
		out.rules = between(out.rules, t.From.Or(recur.MinDate), t.Until.Or(recur.MaxDate))
	}
	return out, true
}

// takenAs finds a length of time that is taken as another, since care is done on days.
func (b *builder) takenAs(w plan.Written[quantity.Quantity], what string, minutes float64, limit string) {
	better := quantity.Format(max(minutes, 24*60), quantity.Days)
	f := finding.Finding{Rule: ruleWindow, At: w.At, Text: what + " " + w.V.String() + " is taken as " + quantity.Format(minutes, quantity.Days),
		Limit: limit, Write: better, Edits: finding.Text(w.At, better)}
	if what == leftoversOf && minutes > w.V.Value { // later than is asked
		f.Severity = finding.Caution
		f.Write += "; or prey that is killed first (killed), of which nothing has to be taken out"
	}
	b.found.Add(f)
}

// between bounds rules to the days from one to another.
func between(rules []recur.Rule, from, until civil.Date) []recur.Rule {
	if from > recur.MinDate || until < recur.MaxDate {
		for i, r := range rules {
			rules[i] = r.Between(from, until)
		}
	}
	return rules
}

// ways counts the ways in which a timing says how often. An interval of weeks or
// months together with days is one way.
func ways(t *plan.Timing) int {
	n := 0
	if t.Cron.Set() {
		n++
	}
	if t.AfterLast.Set() {
		n++
	}
	if len(t.On) > 0 {
		n++
	}
	if t.Every.Set() && (len(t.On) == 0 || t.Every.V.Unit == quantity.Day) {
		n++
	}
	return n
}

// wholeDays returns a duration in days, at least one.
func wholeDays(q quantity.Quantity) int { return max(1, int(q.Value/(24*60))) }

// maxWindow is by how many days care is moved at the most.
const maxWindow = 32

// windowDays returns a window in days.
func windowDays(q quantity.Quantity) int { return min(int(q.Value/(24*60)), maxWindow) }

// every returns the rule of an interval alone.
func every(v quantity.Interval, id identity.Identity, from plan.Written[civil.Date]) recur.Rule {
	switch v.Unit {
	case quantity.Day, quantity.Week:
		n := v.N
		if v.Unit == quantity.Week {
			n *= 7
		}
		if from.Set() {
			return recur.EveryDays(n, from.V)
		}
		return recur.EveryDays(n, id.Phase(n))
	}
	n := v.N
	if v.Unit == quantity.Year {
		n *= 12
	}
	if from.Set() {
		return recur.EveryMonths(n, from.V)
	}
	// A day from the 1st to the 28th, which every month has, of one of n months.
	p := int(id.Phase(28 * n))
	return recur.EveryMonths(n, civil.Must(1970, time.January, 1+p%28).AddMonths(p/28))
}

// onDays returns the rules of a list of days, one for each kind of day.
func (b *builder) onDays(t *plan.Timing, anchor func(int) civil.Date) ([]recur.Rule, bool) {
	weeks, months := 1, 1
	if t.Every.Set() {
		switch t.Every.V.Unit {
		case quantity.Week:
			weeks = t.Every.V.N
		case quantity.Month:
			months = t.Every.V.N
		case quantity.Year:
			months = 12 * t.Every.V.N
		}
	}
	var rules []recur.Rule
	var weekdays civil.Weekdays
	var days uint32
	var dated []recur.Rule
	last := false
	for _, d := range b.Plan.Days(t.On) {
		switch d.V.Kind {
		case plan.EachWeekday:
			weekdays = weekdays.With(d.V.Weekday)
		case plan.NthWeekday:
			rules = append(rules, recur.MonthWeekday(d.V.Nth, d.V.Weekday, months, anchor(28)))
		case plan.DayOfMonth:
			if d.V.Day < 0 {
				last = true
			} else {
				days |= 1 << d.V.Day
			}
		case plan.DateOfYear:
			rules = append(rules, recur.Yearly(d.V.Month, d.V.Day))
		case plan.PartOfYear, plan.Dated:
			dated = append(dated, spans(d.V, b.Horizon)...)
		}
	}
	monthly := days != 0 || last || len(rules) > 0
	if weekdays != 0 && months > 1 || monthly && weeks > 1 || len(dated) > 0 && weeks*months > 1 {
		b.found.Add(finding.Finding{Rule: ruleTwoTimings, At: t.Every.At, Text: "every " + t.Every.V.String() + " does not go with these days",
			Write: "weeks with weekdays, or months with days of the month"})
		return nil, false
	}
	if weekdays != 0 {
		rules = append(rules, recur.Weekly(weekdays, weeks, anchor(7*weeks)))
	}
	if days != 0 || last {
		rules = append(rules, recur.MonthDays(days, last, months, anchor(28)))
	}
	return append(rules, dated...), true
}

// Words says how often, for a keeper.
func (e *Entry) Words() string {
	switch {
	case e.Ask != nil:
		return "until the log answers it"
	case e.Store != nil && e.Once != nil:
		return "as the meals of the plan ask for it"
	case e.Once != nil:
		return "once, because of the log"
	case e.After > 0:
		return "after each meal"
	case e.After < 0:
		return "before each meal"
	case e.Timing.AfterLast.Set():
		return e.Timing.AfterLast.V.String() + " after it was last done"
	}
	rules := e.Rules
	if e.whole != nil {
		rules = e.whole
	}
	var parts []string
	for _, r := range rules {
		parts = append(parts, r.WordsFrom(e.Plan().Units.Week()))
	}
	return strings.Join(parts, " and ")
}
