package recur

import (
	"fmt"
	"math/bits"
	"strconv"
	"strings"

	"github.com/robfig/cron/v3"

	"vivary/schema/civil"
)

// maxTimes is the most times a day that a crontab line may name.
const maxTimes = 24

// CronError says why a crontab line was refused, and what to write instead.
type CronError struct {
	Line   string
	Reason string
}

func (e *CronError) Error() string { return fmt.Sprintf("cron = %q: %s", e.Line, e.Reason) }

// ParseCron reads a crontab line of five fields (minute, hour, day of month,
// month, day of week) and returns its days and, in order, its times of day.
// Fields are read by github.com/robfig/cron/v3, whose meaning is kept: a line
// that names both a day of month and a day of week is on when either matches,
// unless one of them is "*", "?" or "*/1".
//
// Errors are of type *CronError. Lines that are no plan for an animal are
// refused: "@every" and its kind, time zones, more than 24 times a day, days
// that never come.
func ParseCron(line string) (Rule, []civil.Clock, error) {
	spec, reason := parseSpec(line)
	if reason != "" {
		return Rule{}, nil, &CronError{Line: line, Reason: reason}
	}
	rule := spec.rule()
	if rule.Never() {
		return Rule{}, nil, &CronError{Line: line, Reason: "there is no such day in any year: look at the day of month and the month (fields 3 and 4)"}
	}
	times := make([]civil.Clock, 0, maxTimes)
	for h := range 24 {
		for m := range 60 {
			if spec.Hour>>h&1 == 1 && spec.Minute>>m&1 == 1 {
				times = append(times, civil.Clock(h*60+m))
			}
		}
	}
	return rule, times, nil
}

// CronNotes returns what a keeper should be told of a line that ParseCron takes:
// what it means, where that is often not what was meant.
func CronNotes(line string) []string {
	spec, reason := parseSpec(line)
	if reason != "" || spec.rule().Never() {
		return nil
	}
	var notes []string
	fields := strings.Fields(line)
	for _, item := range strings.Split(fields[2], ",") {
		start, step, _ := strings.Cut(item, "/")
		if n, err := strconv.Atoi(step); err == nil && n > 1 && (start == "*" || start == "?" || strings.HasPrefix(start, "1-") || start == "1") {
			notes = append(notes, fmt.Sprintf("%q in day of month starts again on the 1st of each month, so the gap at the month's end differs: for every %d days write every = \"%d days\"", item, n, n))
		}
	}
	if days, weekdays := spec.sets(); days != 0 && weekdays != 0 {
		notes = append(notes, fmt.Sprintf("day of month and day of week are both given, and cron takes either, so this is %s: put * into the one you do not mean", spec.rule().Words()))
	} else if days != 0 && days&(1<<29-1) == 0 {
		first := bits.TrailingZeros32(days)
		notes = append(notes, fmt.Sprintf("cron leaves out a month that has no %s: where it must be done each month, use a day up to 28", civil.Ordinal(first)))
	}
	return notes
}

// spec is a line as the library read it: one bit for each value, the topmost
// for a field that was a star.
type spec cron.SpecSchedule

const star = 1 << 63

// sets returns the days of month and the days of week whose union the line is
// on, before the month is looked at. A starred field adds nothing to the other.
func (s *spec) sets() (days uint32, weekdays civil.Weekdays) {
	days, weekdays = uint32(s.Dom)&allDays, civil.Weekdays(s.Dow)&civil.EveryDay
	switch {
	case s.Dow&star != 0:
		weekdays = 0
	case s.Dom&star != 0:
		days = 0
	}
	return days, weekdays
}

func (s *spec) rule() Rule {
	days, weekdays := s.sets()
	if days == allDays || weekdays == civil.EveryDay {
		days, weekdays = allDays, 0
	}
	months := uint16(s.Month) & allMonths
	if months == allMonths && days == 0 {
		return Weekly(weekdays, 1, 0)
	}
	r := monthly(1, 0)
	r.days, r.weekdays, r.months = days, mondayFirst(weekdays), months
	r.every, r.phase, r.months = evenly(months)
	return r.tidy()
}

// evenly turns months of the year that lie evenly into an interval.
func evenly(months uint16) (every, phase int32, rest uint16) {
	first := bits.TrailingZeros16(months)
	for _, n := range []int{12, 6, 4, 3, 2} {
		even := uint16(0)
		for m := first; m <= 12; m += n {
			even |= 1 << m
		}
		if first <= n && months == even {
			return int32(n), int32(first - 1), allMonths
		}
	}
	return 1, 0, months
}

// fields are the five fields in order, with the parser that reads one alone.
var fields = [5]struct {
	name, values string
	parser       cron.Parser
}{
	{"minute", "0 to 59", cron.NewParser(cron.Minute)},
	{"hour", "0 to 23", cron.NewParser(cron.Hour)},
	{"day of month", "1 to 31", cron.NewParser(cron.Dom)},
	{"month", "1 to 12 or JAN to DEC", cron.NewParser(cron.Month)},
	{"day of week", "0 to 6 or SUN to SAT", cron.NewParser(cron.Dow)},
}

var five = cron.NewParser(cron.Minute | cron.Hour | cron.Dom | cron.Month | cron.Dow)

// parseSpec reads the line, or returns the reason why it is refused.
func parseSpec(line string) (*spec, string) {
	line = strings.TrimSpace(line)
	upper := strings.ToUpper(line)
	words := strings.Fields(line)
	switch {
	case strings.HasPrefix(upper, "TZ=") || strings.HasPrefix(upper, "CRON_TZ="):
		return nil, "the time zone is the collection's, one for all: leave it out here"
	case strings.HasPrefix(upper, "@EVERY"):
		return nil, "@every counts hours from whenever it is asked, so it has no fixed day: write every = \"3 days\", with from = if the day matters"
	case strings.HasPrefix(upper, "@REBOOT"):
		return nil, "an animal does not start when a computer does: write five fields, for example \"30 19 * * 1,4\""
	case strings.HasPrefix(line, "@"):
		return nil, "this names no time but midnight, when nobody is there: write the time, for example \"30 19 * * *\" for each day at 19:30"
	case len(words) == 6:
		return nil, "six fields: seconds are not read here; write minute, hour, day of month, month and day of week"
	case len(words) != 5:
		return nil, fmt.Sprintf("%d fields instead of five: write minute, hour, day of month, month and day of week, for example \"30 19 * * 1,4\"", len(words))
	}
	parsed, err := five.Parse(line)
	read, ok := parsed.(*cron.SpecSchedule)
	if err != nil || !ok {
		return nil, fieldReason(words)
	}
	for i, set := range [5]uint64{read.Minute, read.Hour, read.Dom, read.Month, read.Dow} {
		if set == 0 {
			return nil, fmt.Sprintf("%s %q names no value: write %s, or * for all", fields[i].name, words[i], fields[i].values)
		}
	}
	if n := bits.OnesCount64(read.Minute&^star) * bits.OnesCount64(read.Hour&^star); n > maxTimes {
		return nil, fmt.Sprintf("%d times a day, and %d is the most: this is for care tasks, not for minute jobs; name the minutes and hours", n, maxTimes)
	}
	return (*spec)(read), ""
}

// fieldReason finds the field that the library refused.
func fieldReason(words []string) string {
	for i, f := range fields {
		// The library reads what begins so as something else than a field.
		odd := strings.ContainsAny(words[i], "@=")
		if !odd {
			_, err := f.parser.Parse(words[i])
			odd = err != nil
		}
		switch {
		case !odd:
			continue
		case i == 4 && strings.Contains(words[i], "7"):
			return fmt.Sprintf("day of week %q: Sunday is 0 or SUN here, not 7, and a range cannot run past Saturday (write 5,6,0 for Friday to Sunday)", words[i])
		}
		return fmt.Sprintf("%s %q is not understood: write %s, as a list 1,2, an upward range 1-5 or steps */2", f.name, words[i], f.values)
	}
	return "not a crontab line: write minute, hour, day of month, month and day of week"
}
