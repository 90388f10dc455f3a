package plan

import (
	"slices"

	"vivary/schema"
	"vivary/schema/quantity"
)

// Learnt is how long care takes in this house, as lines of its log say.
type Learnt struct {
	Minutes int // the median of the lines, in whole minutes, one at the least
	Lines   int
}

// From how many lines on the house's own minutes take the place of the table's: of one
// enclosure, and of all of them. One hurried evening is no measure. Ours; common practice, no
// source.
const (
	learntOfOne = 3
	learntOfAll = 5
)

// longestTook is the longest time that a line of the log may say, in minutes: a day's work.
const longestTook = 16 * 60

// timed is one kind of care, of one enclosure or of all, for which the name is "".
type timed struct {
	enclosure string
	kind      *schema.CareKind
}

// took reads how long a care took, from the end of a line: "done deep-clean 35 min". It
// returns where the words before it end. The first words are the care, unless the word of the
// line says already which.
func (l *lineReader) took(e *Event, from int) (until int) {
	until = len(l.words)
	if e.Word != schema.WordDone {
		return until
	}
	for _, n := range []int{2, 1} { // "35 min" and "35min"
		at := until - n
		if at < from || at == from && len(e.Args) == 0 {
			continue
		}
		if v, err := quantity.Parse(l.text(at, until), quantity.Duration); err == nil && v.Value > 0 && v.Value <= longestTook {
			e.Took = wrote(v, l.span(at, until))
			return at
		}
	}
	return until
}

// learn reckons how long care takes in this house from the lines that say it.
func (c *Collection) learn() {
	all := map[timed][]float64{}
	for i := range c.Log {
		e := &c.Log[i]
		if !e.Took.Set() || len(e.Args) == 0 {
			continue
		}
		if kind := c.kindOf(e); kind != nil {
			for _, name := range []string{e.Enclosure.V, ""} {
				k := timed{name, kind}
				all[k] = append(all[k], e.Took.V.Value)
			}
		}
	}
	for k, minutes := range all {
		if least := learntOfOne; len(minutes) < least || k.enclosure == "" && len(minutes) < learntOfAll {
			continue
		}
		if c.learnt == nil {
			c.learnt = map[timed]Learnt{}
		}
		c.learnt[k] = Learnt{max(1, int(median(minutes)+0.5)), len(minutes)}
	}
}

// kindOf is the kind of care that a line tells of: of the care of that name in its enclosure,
// or of that name itself.
func (c *Collection) kindOf(e *Event) *schema.CareKind {
	name := e.Args[0].V
	if x := c.enclosures[e.Enclosure.V]; x != nil {
		for _, own := range x.Care {
			if own.Name.V == name {
				return own.What()
			}
		}
	}
	return schema.KindCalled(name)
}

// median is the middle of some numbers, which are put in order.
func median(all []float64) float64 {
	slices.Sort(all)
	n := len(all)
	return (all[(n-1)/2] + all[n/2]) / 2
}

// Learnt returns how long a kind of care takes in an enclosure by the house's own log: by its
// own lines, else by those of all. There is none where too few lines say it.
func (c *Collection) Learnt(enclosure string, kind *schema.CareKind) (l Learnt, own, ok bool) {
	if l, ok = c.learnt[timed{enclosure, kind}]; ok && enclosure != "" {
		return l, true, true
	}
	l, ok = c.learnt[timed{"", kind}]
	return l, false, ok
}
