package rounds

import (
	"strings"

	"vivary/plan"
	"vivary/schema"
	"vivary/schema/civil"
)

// Sheet is a round on one day.
type Sheet struct {
	Round   *plan.Round
	Date    civil.Date
	Lines   []string // as they are printed, without the minutes; an empty one is a gap
	Walk    []Line   // the same without the gaps, each with what is ticked off there
	Due     []Due    // everything that is to be done, by task
	Before  []string // the lines among Lines that say what to put on, have ready or switch off
	Held    []string // the lines among Lines that say what may be done in which state
	Minutes int
	Ticked  []string // what is done already, a line each: "Fresh water: Tub 1 to 3"
	Ticks   []Tick   // the same, by task
	Open    bool     // whether anything is left to be done
}

// Due is a task with the places at which it is due.
type Due struct {
	Kind  *schema.CareKind
	Text  string
	First bool // before everything else
	Last  bool // with what is kept apart, after everything else
	Stops []Stop
}

// Stop is one enclosure of a task.
type Stop struct {
	Place *Place
	Shown string // as the round names it
	Item  *Item
	// Should is what a gauge that is read should show, Harm outside of what the animals are harmed.
	Should, Harm string
}

// On returns the round on day i of the horizon. On a day on which nothing is to be
// done it has no lines.
func (r *Round) On(i int) Sheet {
	s := Sheet{Round: r.Plan, Date: r.Horizon.Date(i), Minutes: r.Minutes(i)}
	if !r.Days.Has(i) {
		return s
	}
	if s.Ticked, s.Open = r.ticks(i), r.Open(i); len(s.Ticked) > 0 {
		s.Ticks = r.ticked
	}
	r.day.walk = &s.Walk
	s.Lines = strings.Split(strings.TrimSuffix(string(r.write(nil, i, 1<<30)), "\n"), "\n")
	r.day.walk = nil
	for k := range r.tasks {
		t := &r.tasks[k]
		d := Due{Kind: r.kinds[t.kind], Text: t.first, First: t.high, Last: t.apart}
		for n := range t.lines {
			t.lines[n].each(i, func(c *cell) {
				d.Stops = append(d.Stops, r.stop(c, i))
			})
		}
		if len(d.Stops) > 0 {
			s.Due = append(s.Due, d)
		}
	}
	d := &r.day
	for k := range r.cautions {
		if c := &r.cautions[k]; c.line.count(i) > 0 {
			s.Before = append(s.Before, string(r.appendCaution(nil, c)))
		}
	}
	for k := range r.holds {
		h := &r.holds[k]
		if h.team {
			continue
		}
		if d.due = h.places(i, d.due[:0]); len(d.due) > 0 {
			s.Held = append(s.Held, string(h.append(nil, r, d.due)))
		}
	}
	return s
}

// append appends a hold at some places: "Burrow B: young since 5 Nov: water through the
// hatch, lift nothing (until Sat 5 Dec)".
func (h *held) append(dst []byte, r *Round, places []int32) []byte {
	return h.appendNamed(dst, r.names, places)
}

func (h *held) appendNamed(dst []byte, names []name, places []int32) []byte {
	dst = appendNames(dst, names, places)
	if h.group != "" {
		dst = append(append(append(dst, " ("...), h.group...), ')')
	}
	return append(append(dst, ": "...), h.text...)
}

// Passes reports whether the round passes an enclosure on that day.
func (s *Sheet) Passes(enclosure string) bool {
	for _, d := range s.Due {
		for _, t := range d.Stops {
			if t.Place.Name == enclosure {
				return true
			}
		}
	}
	return false
}
