package life

import (
	"strconv"

	"vivary/plan"
	"vivary/schema"
	"vivary/schema/civil"
)

// Three head counts in a row that miss animals, over at least eight weeks, ask for
// a full count: digging harms more than a burrower that stays out of sight (common
// practice, no source).
const (
	countsInARow = 3
	countsOver   = 8 * 7
	// countedFor is for how many weeks it is asked to count again.
	countedFor = 13
)

// heads is a run of head counts that did not find all.
type heads struct {
	run   int
	first civil.Date
	again seen // fewer were seen than may hide
	full  seen // the run was long enough to dig
	text  string
	last  *headcount
	doubt *doubt
}

func (r *reader) counted(t *track, e *plan.Event) {
	if t.of != nil && t.of.number == 0 && e.Number.Set() && e.Number.V > 0 && e.Number.V <= mostBorn {
		// How many were born was never said; now it is.
		t.number(see(e), int(e.Number.V), Recounted, nil)
		t.of.number = int(e.Number.V)
		return
	}
	all := 0
	for _, o := range r.living() {
		all += o.now()
	}
	if r.out.Plan.Culture.V && e.Number.Set() {
		t.number(see(e), min(int(e.Number.V), mostBorn), Recounted, nil) // of a culture nobody knows how many there were
		return
	}
	if n := int(e.Number.V); n > t.now() && n <= all {
		r.countedAll(e) // she and her young
		return
	}
	if n, ok := r.howMany(e, t.now(), t.now()); ok {
		if n == t.now() {
			t.allHere()
			if e.Sexes.Total() == n {
				t.turn(see(e), 0, Recounted, nil)
			}
		}
		t.heads.count(n, t.now(), t.Animals.Hidden.V, e)
	}
}

// sight is animals that were seen; with a number it is a head count.
func (r *reader) sight(t *track, e *plan.Event) {
	if e.Number.Set() {
		r.counted(t, e)
	}
}

func (r *reader) countedAll(e *plan.Event) {
	total, hidden := 0, 0
	for _, t := range r.living() {
		total += t.now()
		hidden += t.Animals.Hidden.V
	}
	if n, ok := r.howMany(e, total, total); ok {
		if n == total {
			for _, t := range r.living() {
				t.allHere()
			}
		}
		r.heads.count(n, total, hidden, e)
	}
}

func (k *heads) count(n, total, hidden int, e *plan.Event) {
	k.differ(n, total, hidden, e)
	if n >= total {
		*k = heads{last: k.last, doubt: k.doubt}
		return
	}
	k.again = seen{}
	if n < total-hidden {
		k.again = see(e)
	}
	k.text = strconv.Itoa(n) + " of " + strconv.Itoa(total) + " seen"
	if k.run == 0 {
		k.first = e.Date
	}
	if k.run++; k.run >= countsInARow && e.Date-k.first >= countsOver {
		k.full, k.run = see(e), 0
	}
}

// tasks returns what the counts ask for, digging on the first free day.
func (k *heads) tasks(free func(civil.Date, schema.Row) (civil.Date, bool)) (out []Task) {
	if k.again.ok {
		out = append(out, Task{Name: "count-again/" + k.again.on.String(), Kind: schema.KindWatch, On: k.again.on + 1,
			Interval: 7, Times: countedFor, Text: k.text + ", fewer than may hide: count again, check lid and gaps; log counted, escaped or died", At: k.again.at})
	}
	if k.full.ok {
		if on, ok := free(k.full.on+1, schema.RowCount); ok {
			out = append(out, Task{Name: "full-count/" + k.full.on.String(), Kind: schema.KindCount, On: on,
				Text: "full count, dig gently: " + k.text, At: k.full.at})
		}
	}
	return out
}
