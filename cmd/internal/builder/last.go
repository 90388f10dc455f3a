package builder

import (
	"errors"
	"fmt"
	"time"

	"vivary/cmd/internal/publish"
	"vivary/compile"
	"vivary/compile/ical"
	"vivary/schema/civil"
)

// lastFeed is what was last published under a name: the memory of what phones were told.
type lastFeed struct {
	name   string
	text   []byte
	memory *ical.Memory // nil for nothing
	wrong  error        // why it cannot be read as it stands
}

// readLast reads it. What is damaged, or something else, freezes no calendar: the
// next one goes on from what it still tells. An error is one of the disk alone.
func readLast(folder *publish.Folder, name string, now time.Time) (lastFeed, error) {
	text, err := folder.Last(name)
	l := lastFeed{name: name, text: text}
	switch {
	case errors.Is(err, publish.ErrNoFile):
		l.wrong, l.text = err, nil
	case err != nil:
		return l, fmt.Errorf("%s cannot be read: %w", name, err)
	case text == nil:
		return l, nil
	default:
		if l.memory, l.wrong = ical.Remember(text); l.wrong == nil {
			return l, nil
		}
	}
	l.memory = ical.Salvage(l.text, now)
	return l, nil
}

// keep keeps aside what is wrong, with the batch, and says so.
func (l *lastFeed) keep(batch *publish.Batch, name string) (string, error) {
	said := "what stood there could not be read: " + l.wrong.Error()
	if l.name != name {
		return l.name + ", its name before, could not be read: " + l.wrong.Error(), nil
	}
	if l.text != nil && len(l.text) == 0 {
		return said, nil
	}
	kept, err := batch.Aside(name, l.text)
	return said + ". It is kept as " + kept, err
}

const (
	// behind is how much earlier than the last build a clock may be, unasked.
	behind = 24 * time.Hour
	// overFor is for how many days a calendar may have ended, unasked.
	overFor = 31
)

// clockAsked asks about a clock that does not go with the last calendars: one that is
// behind them, or says that all of them ended long ago. A small computer without a
// battery starts anywhere, and calendars of a wrong day show nobody what is due.
func clockAsked(r *compile.Result, was []lastFeed) error {
	var (
		made time.Time
		last civil.Date
		any  bool
	)
	for _, l := range was {
		if l.memory == nil {
			continue
		}
		if t := l.memory.Made(); t.After(made) {
			made = t
		}
		if d, ok := l.memory.Ends(); ok {
			any, last = true, max(last, d)
		}
	}
	if made.IsZero() || !r.Now.Add(behind).Before(made) && (!any || r.Today <= last+overFor) {
		return nil
	}
	const minute = "2 January 2006, 15:04"
	return fmt.Errorf("the clock of this machine says %s, and the calendars were last built on %s. Which is right? Set the clock; or, where it is right, build once with --now %s",
		r.Now.Format(minute), made.In(r.Now.Location()).Format(minute), r.Now.Format("2006-01-02T15:04"))
}
