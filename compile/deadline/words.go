package deadline

import (
	"cmp"
	"slices"

	"vivary/schema/civil"
)

// Line says a time in one line, as it is told on a day: "Dwa licence: apply, book vet, check
// insurance (by Mon 28 Feb 2028)".
func (d *Deadline) Line(t *Time, on civil.Date) string {
	text := d.Title
	if d.Does != "" && len(d.Does) <= longDoes {
		text += ": " + d.Does
	} else if d.what != "" {
		text += ": " + d.what
	}
	switch {
	case on > t.By:
		return "OVERDUE since " + t.By.Words() + ": " + text
	case on == t.By:
		return text + " (today)"
	}
	return text + " (by " + t.By.Words() + ")"
}

// longDoes is what is too long for a line: then it says what it is about.
const longDoes = 60

// Due is a time of a date of the house that is told.
type Due struct {
	*Deadline
	Time *Time
}

// Told are the dates that are told on a day, by the day by which each is to be done.
func Told(all []Deadline, on civil.Date) (out []Due) {
	for i := range all {
		for k := range all[i].Times {
			if t := &all[i].Times[k]; t.Done == 0 && t.Told(on) {
				out = append(out, Due{&all[i], t})
				break
			}
		}
	}
	slices.SortStableFunc(out, func(a, b Due) int { return cmp.Compare(a.Time.By, b.Time.By) })
	return out
}
