package feedoracle

import (
	"fmt"
	"regexp"
	"strconv"
	"strings"
)

// Words are the kinds of care by the words of their tasks. They are learned from a
// calendar that has an entry for each care, where each says its kind.
type Words map[string]string

// Learn adds the tasks of such a calendar.
func (w Words) Learn(names Names, shown []Occurrence) {
	for i := range shown {
		if o := &shown[i]; o.Kind != "" {
			if task, _, ok := names.Task(o); ok {
				w[plain(task)] = o.Kind
			}
		}
	}
}

// since ends a task that is caught up.
var since = regexp.MustCompile(` \(last done [^()]*\)$`)

// plain is a task without what differs from day to day.
func plain(task string) string { return since.ReplaceAllString(task, "") }

// kind returns the kind of a task. What is fed differs from meal to meal.
func (w Words) kind(task string) string {
	if k := w[plain(task)]; k != "" {
		return k
	}
	if strings.HasPrefix(task, "Feed ") && !strings.HasPrefix(task, "Feed the feeders") {
		return "feed"
	}
	return ""
}

// Unread are lines of rounds that name no enclosure, so that they cannot be
// compared.
type Unread struct {
	Stop
	Count int // how many enclosures they are for
}

// Rounds returns the stops of calendars that have an entry a round. everybody are the
// enclosures that a calendar may hold, by its name: "all 5" is all of them where there
// are five.
func (n Names) Rounds(w Words, shown []Occurrence, everybody map[string][]string) ([]Stop, []Unread, error) {
	var out []Stop
	var unread []Unread
	for i := range shown {
		o := &shown[i]
		for line := range strings.Lines(o.Description) {
			task, whom, ok := lineOf(strings.TrimSpace(line))
			if o.At == "" || !ok {
				continue
			}
			kind := w.kind(task)
			if kind == "" {
				return nil, nil, fmt.Errorf("%s on %s: no calendar by care has the task %q", o.Calendar, o.Day, task)
			}
			stop := Stop{Day: o.Day, Kind: kind}
			if count, all := everyone(whom); all {
				if count != len(everybody[o.Calendar]) {
					unread = append(unread, Unread{stop, count})
					continue
				}
				for _, stop.Box = range everybody[o.Calendar] {
					out = append(out, stop)
				}
				continue
			}
			for name := range strings.SplitSeq(whom, ", ") {
				if stop.Target, ok = n.find(name); !ok {
					return nil, nil, fmt.Errorf("%s on %s: nobody knows who %q is, in %q", o.Calendar, o.Day, name, line)
				}
				out = append(out, stop)
			}
		}
	}
	return Once(out), unread, nil
}

// lineOf cuts a line of a round into the task and for whom it is.
func lineOf(line string) (task, whom string, ok bool) {
	rest, ok := strings.CutPrefix(line, "- ")
	if !ok {
		if rest, ok = strings.CutPrefix(line, "FIRST: "); !ok {
			return "", "", false
		}
	}
	i := strings.LastIndex(rest, ": ")
	if i < 0 {
		return "", "", false
	}
	return rest[:i], rest[i+2:], true
}

// everyone reads "all 5".
func everyone(whom string) (int, bool) {
	rest, ok := strings.CutPrefix(whom, "all ")
	if !ok {
		return 0, false
	}
	n, err := strconv.Atoi(rest)
	return n, err == nil
}
