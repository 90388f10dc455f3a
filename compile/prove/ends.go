package prove

import (
	"slices"

	"vivary/compile/roster"
	"vivary/plan/finding"
	"vivary/schema/civil"
)

// Care that the plan lets end on a day, with nothing after it, comes into view as time
// passes. That is a mistake of whoever writes it, and none of the day on which it comes
// near: calendars that were built with it go on.
const (
	// farEnd is how many days ahead such an end is worth knowing and no more: calendars
	// hold little more than that, and there is time to write what follows.
	farEnd = 300
	// nearEnd is how many days before it an end that was built already is urgent. Both are
	// common practice, no source.
	nearEnd = 14
)

// ends returns the last day on which the plan has any care that meets the need, where it
// has one and the breach goes on from there to the end of the window.
func (b *breach) ends() (last civil.Date, ok bool) {
	if len(b.By) == 0 || b.Breach.To < b.s.Horizon.Days {
		return 0, false
	}
	for _, x := range b.By {
		if x.Timing == nil || !x.Timing.Until.Set() {
			return 0, false
		}
		last = max(last, x.Timing.Until.V)
	}
	return last, true
}

// ending is how bad it is that care has an end. Where a need that is not met is only a
// caution, so is this, unless it is then met far too rarely.
func (b *breach) ending(last civil.Date) finding.Severity {
	left := int(last - b.s.Horizon.Now())
	switch {
	case b.Need.Severity.V == "caution" && !b.tooRare():
		return finding.Caution
	case left < 0:
		return finding.Urgent
	case left > farEnd:
		return finding.Caution
	case !b.builtBefore(last):
		return finding.Error
	case left <= nearEnd:
		return finding.Urgent
	}
	return finding.Caution
}

// builtBefore reports whether the last feeds showed the very same end.
func (b *breach) builtBefore(last civil.Date) bool {
	return b.s.Told != nil && !slices.ContainsFunc(b.By, func(x *roster.Entry) bool {
		on, from, until, ok := b.s.Told.Days(x.ID)
		if !ok || until <= last || from > last {
			return true
		}
		for d := last + 1; d < until; d++ {
			if on(d) {
				return true
			}
		}
		return false
	})
}
