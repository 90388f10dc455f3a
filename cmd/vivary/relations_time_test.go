package main

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"vivary/internal/feedoracle"
	"vivary/internal/randomplan"
	"vivary/schema/civil"
)

// kept is for how many days entries of the past stay where they were.
const kept = 31

// TestDayAfterDay: the log comes to be known day by day, and each day is built with
// the feeds of the day before for its memory. What was shown for days that are past
// stays as it was, an entry never comes to be another enclosure's, and nothing stands
// twice.
func TestDayAfterDay(t *testing.T) {
	const days = 12
	hold(t, 8, func(t testing.TB, p *randomplan.Plan) error {
		names, of := known(p), map[string]string{}
		var before map[string][]byte
		var was []feedoracle.Occurrence
		for on := p.Today; on < p.Today+days; on++ {
			m, err := builtOn(t, p, on, before)
			if err != nil {
				return err
			}
			if m.refused {
				continue
			}
			shown, _, err := m.read(on-kept, on+60)
			if err != nil {
				return err
			}
			if err := doubled(shown); err != nil {
				return fmt.Errorf("%w, built on %s", err, on)
			}
			if err := changedHands(names, shown, of); err != nil {
				return fmt.Errorf("%w, built on %s", err, on)
			}
			if before != nil {
				if err := same("the past moved", untilDay(was, on), untilDay(shown, on)); err != nil {
					return fmt.Errorf("%w\nbuilt on %s", err, on)
				}
			}
			before, was = m.feeds, shown
		}
		return nil
	})
}

// untilDay are the entries of care of the days before one, as far back as they are kept.
func untilDay(shown []feedoracle.Occurrence, on civil.Date) (out []feedoracle.Occurrence) {
	for _, o := range shown {
		if o.Day < on && o.Day > on-kept+2 && o.At != "" {
			out = append(out, o)
		}
	}
	return out
}

// doubled finds two entries of a calendar that say the same of one time.
func doubled(shown []feedoracle.Occurrence) error {
	seen := map[string]bool{}
	for _, o := range shown {
		key := fmt.Sprint(o.Calendar, o.Day, o.At, o.Summary)
		if o.Kind != "" && seen[key] {
			return fmt.Errorf("an entry stands twice: %s in %s on %s", o.Summary, o.Calendar, o.Day)
		}
		seen[key] = true
	}
	return nil
}

// changedHands finds an entry that is another enclosure's than it was.
func changedHands(names feedoracle.Names, shown []feedoracle.Occurrence, of map[string]string) error {
	for i := range shown {
		o := &shown[i]
		_, to, ok := names.Task(o)
		if o.Kind == "" || !ok {
			continue
		}
		if was, known := of[o.UID]; known && was != to.Box {
			return fmt.Errorf("an entry changes hands: %s was of %s and is of %s", o.UID, was, to.Box)
		}
		of[o.UID] = to.Box
	}
	return nil
}

// TestEditedIsAsFresh: once the plan was edited, what is built on the memory of the
// plan before shows for today and all days to come what a first build shows; unless it
// knows from the feeds before of care that was not done, which the new text would have
// had done: that comes first.
func TestEditedIsAsFresh(t *testing.T) {
	hold(t, 2, func(t testing.TB, p *randomplan.Plan) error {
		first, err := builtOn(t, p, p.Today, nil)
		if err != nil || first.refused {
			return err
		}
		q := p.Clone()
		what := q.Edit()
		on := p.Today + civil.Date(p.Seed%5)
		rebuilt, err := builtOn(t, q, on, first.feeds)
		if err != nil || rebuilt.refused {
			return err
		}
		fresh, err := builtOn(t, q, on, nil)
		if err != nil {
			return err
		}
		// What is kept of the past counts too, where a calendar is too large for a year.
		until, err := fresh.reach(on, on+year)
		if err == nil {
			until, err = rebuilt.reach(on, until)
		}
		if err != nil {
			return err
		}
		want, _, err := fresh.read(on, until)
		if err != nil {
			return err
		}
		got, _, err := rebuilt.read(on, until)
		if err != nil {
			return err
		}
		if overdue(got) > overdue(want) {
			return nil
		}
		if err := same("an edited plan is not as a fresh one", want, got); err != nil {
			return fmt.Errorf("%w\nthe edit: %s", err, what)
		}
		return nil
	})
}

// overdue counts the entries that say first what is overdue.
func overdue(all []feedoracle.Occurrence) (n int) {
	for i := range all {
		if strings.Contains(all[i].Summary+all[i].Description, "it is overdue") {
			n++
		}
	}
	return n
}

// same compares two lists of entries.
func same(what string, want, got []feedoracle.Occurrence) error {
	form := func(all []feedoracle.Occurrence) (out []string) {
		for _, o := range all {
			out = append(out, fmt.Sprintf("%s %s %s %q %q %s %s %s", o.Day, o.At, o.Calendar, o.Summary, o.Description, o.Location, o.Length, o.UID))
		}
		slices.Sort(out)
		return out
	}
	a, b := form(want), form(got)
	var out []string
	lack := func(mark string, of, in []string) {
		for _, s := range of {
			if _, ok := slices.BinarySearch(in, s); !ok {
				out = append(out, mark+s)
			}
		}
	}
	lack("- ", a, b)
	lack("+ ", b, a)
	if len(out) == 0 && len(a) == len(b) {
		return nil
	}
	return fmt.Errorf("%s:\n%s", what, strings.Join(out[:min(6, len(out))], "\n"))
}
