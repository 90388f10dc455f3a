package feedoracle

import (
	"cmp"
	"fmt"
	"regexp"
	"slices"
	"strings"

	"vivary/schema/civil"
)

// Target is for whom something is done: an enclosure, or the animals of one name in
// an enclosure that has several.
type Target struct{ Box, Animals string }

// Names are the targets by the words by which people are told of them.
type Names map[string]Target

// Stop is care of a kind for a target on a day.
type Stop struct {
	Day civil.Date
	Target
	Kind string
}

// String is the stop as tests print it.
func (s Stop) String() string {
	return strings.TrimSpace(fmt.Sprintf("%s %s %s %s", s.Day, s.Kind, s.Box, s.Animals))
}

// total is how many items a meal is, after the name of the animals.
var total = regexp.MustCompile(`( ×[0-9]+| \([^()]*\))$`)

// brood is the name of young of which the log tells, after that of their enclosure.
var brood = regexp.MustCompile(`^(.+) (young-[0-9]{4}-[0-9]{2}-[0-9]{2})$`)

// find returns the target of that name.
func (n Names) find(name string) (Target, bool) {
	name = total.ReplaceAllString(name, "")
	t, ok := n[name]
	if m := brood.FindStringSubmatch(name); !ok && m != nil {
		t, ok = n[m[1]]
		t.Animals = m[2]
	}
	return t, ok
}

// Task is what an entry of one care says: what to do, and for whom.
func (n Names) Task(o *Occurrence) (task string, to Target, ok bool) {
	i := strings.LastIndex(o.Summary, ": ")
	if i < 0 {
		return "", to, false
	}
	to, ok = n.find(o.Summary[i+2:])
	return o.Summary[:i], to, ok
}

// Stops are the stops of calendars that have an entry for each care, without what
// several of them say. An entry whose target nobody knows is an error.
func (n Names) Stops(shown []Occurrence) ([]Stop, error) {
	var out []Stop
	for i := range shown {
		o := &shown[i]
		if o.Kind == "" {
			continue
		}
		_, to, ok := n.Task(o)
		if !ok {
			return nil, fmt.Errorf("%s on %s: nobody knows for whom %q is", o.Calendar, o.Day, o.Summary)
		}
		out = append(out, Stop{o.Day, to, o.Kind})
	}
	return Once(out), nil
}

// Once sorts stops by day, enclosure, animals and kind, each once.
func Once(all []Stop) []Stop {
	slices.SortFunc(all, func(a, b Stop) int {
		return cmp.Or(cmp.Compare(a.Day, b.Day), cmp.Compare(a.Box, b.Box), cmp.Compare(a.Animals, b.Animals), cmp.Compare(a.Kind, b.Kind))
	})
	return slices.Compact(all)
}

// Difference says what the one list has and the other has not, a few of each, or "".
func Difference(a, b []Stop) string {
	in := func(list []Stop) map[Stop]bool {
		m := map[Stop]bool{}
		for _, s := range list {
			m[s] = true
		}
		return m
	}
	var out []string
	lack := func(mark string, of []Stop, m map[Stop]bool) {
		n := 0
		for _, s := range of {
			if m[s] {
				continue
			}
			if n++; n <= 5 {
				out = append(out, mark+" "+s.String())
			}
		}
		if n > 5 {
			out = append(out, fmt.Sprintf("%s and %d more", mark, n-5))
		}
	}
	lack("-", a, in(b))
	lack("+", b, in(a))
	return strings.Join(out, "\n")
}
