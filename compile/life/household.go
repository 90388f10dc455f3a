package life

import (
	"vivary/plan"
	"vivary/schema"
)

// Household is enclosures between which animals were moved, directly or by others,
// with the lines of the log about any of them, in their order. Where animals are is
// known only once all of these lines are read together; most households are one
// enclosure.
type Household struct {
	At  []int // the enclosures' places in the collection
	Log []plan.Event
}

// Households returns the households of a collection. Each enclosure is in one, and
// each line of the log.
func Households(c *plan.Collection) []Household {
	at := make(map[string]int, len(c.Enclosures))
	head := make([]int, len(c.Enclosures)) // of each enclosure, towards the first of its household
	for i, e := range c.Enclosures {
		at[e.Name.V], head[i] = i, i
	}
	find := func(i int) int {
		for head[i] != i {
			head[i] = head[head[i]]
			i = head[i]
		}
		return i
	}
	for i := range c.Log {
		e := &c.Log[i]
		from, ok := at[e.Enclosure.V]
		to, known := at[destination(e)]
		if ok && known {
			a, b := find(from), find(to)
			head[max(a, b)] = min(a, b)
		}
	}
	out := make([]Household, 0, len(c.Enclosures))
	of := make([]int, len(c.Enclosures))
	room := make([]int, len(c.Enclosures)) // most households are one: their list needs no allocation of its own
	for i := range c.Enclosures {
		first := find(i)
		if first == i {
			room[i] = i
			of[i] = len(out)
			out = append(out, Household{At: room[i : i+1 : i+1]})
			continue
		}
		of[i] = of[first]
		h := &out[of[i]]
		h.At = append(h.At, i)
	}
	for _, e := range c.Log {
		if i, ok := at[e.Enclosure.V]; ok {
			h := &out[of[i]]
			h.Log = append(h.Log, e)
		}
	}
	return out
}

// destination is the enclosure that a line moves animals to, or "".
func destination(e *plan.Event) string {
	if e.Word != schema.WordMoved && e.Word != schema.WordSeparated || len(e.Args) == 0 {
		return ""
	}
	return e.Args[0].V
}
