package margin

import (
	"cmp"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"vivary/compile"
	"vivary/compile/life"
	"vivary/compile/prove"
	"vivary/compile/roster"
	"vivary/plan"
	"vivary/schema/wording"
)

type entry = roster.Entry

// boxes says what there is to say above each block that writes enclosures: of one with numbers
// of all of them together.
func (l *lenses) boxes() {
	var blocks [][]int // the lives of each block, in walking order
	at := map[int32]int{}
	for i, x := range l.r.Lives {
		if x.Plan.At.File != l.id || unsure(x.Plan) {
			continue
		}
		k, known := at[x.Plan.Whole.Start]
		if !known {
			k = len(blocks)
			at[x.Plan.Whole.Start] = k
			blocks = append(blocks, nil)
		}
		blocks[k] = append(blocks[k], i)
	}
	for _, of := range blocks {
		l.add(&l.r.Lives[of[0]].Plan.Head, l.block(of))
	}
}

// unsure reports whether something in an enclosure could not be read: what is reckoned from
// the rest may follow from that.
func unsure(e *plan.Enclosure) bool {
	return e.Unread || e.Housing != nil && e.Housing.Unread ||
		slices.ContainsFunc(e.Animals, func(a *plan.Animals) bool { return a.Unread }) ||
		slices.ContainsFunc(e.Care, func(c *plan.Care) bool { return c.Unread || c.Unsure }) ||
		slices.ContainsFunc(e.Feeding, func(f *plan.Feeding) bool { return f.Unread || f.Unsure }) ||
		slices.ContainsFunc(e.Seasons, func(s *plan.Season) bool { return s.Unread })
}

// block says of some enclosures, that one block writes, what is urgent first.
func (l *lenses) block(of []int) (parts []string) {
	n := len(of)
	urgent, unmet, asked, held := &several{of: n}, &several{of: n}, &several{of: n}, &several{of: n}
	var all []*entry
	for _, i := range of {
		name := l.r.Lives[i].Plan.Name.V
		for _, f := range l.r.Roster.Pressing[l.r.Lives[i]] {
			if f.On(l.r.Today) {
				urgent.add(f.Text, name)
			}
		}
		for k := range l.r.Proofs[i] {
			if p := &l.r.Proofs[i][k]; !p.Met() {
				unmet.add(l.unmet(p), name)
			}
		}
		for _, h := range l.held(i) {
			held.add(h, name)
		}
		for k := range l.r.Roster.Of[i] {
			e := &l.r.Roster.Of[i][k]
			switch {
			case e.Ask == nil:
				all = append(all, e)
			case e.Days.Has(l.r.Horizon.Today):
				asked.add(e.Ask.Text, name)
			}
		}
	}
	parts = append(parts, urgent.labelled("URGENT: ", 1)...)
	parts = append(parts, unmet.labelled("NOT MET: ", 2)...)
	parts = append(parts, asked.labelled("asked: ", 1)...)
	parts = append(parts, held.labelled("held: ", 2)...)
	if next := l.next(all, n); next != "" {
		parts = append(parts, "next: "+next)
	}
	if len(unmet.said) == 0 {
		parts = append(parts, l.needs(of)...)
	}
	return parts
}

// several gathers what is said of which of some enclosures.
type several struct {
	of    int
	said  []string
	names [][]string
}

func (s *several) add(said, name string) {
	k := slices.Index(s.said, said)
	if k < 0 {
		k = len(s.said)
		s.said, s.names = append(s.said, said), append(s.names, nil)
	}
	if !slices.Contains(s.names[k], name) {
		s.names[k] = append(s.names[k], name)
	}
}

// labelled are the first few of what is said, with how much more there is.
func (s *several) labelled(label string, most int) (out []string) {
	for k, said := range s.said {
		if k == most {
			out[most-1] += fmt.Sprintf(", and %d more", len(s.said)-most)
			break
		}
		out = append(out, label+said+which(s.names[k], s.of))
	}
	return out
}

// which names of which of n enclosures something is, where it is not of all.
func which(names []string, n int) string {
	switch {
	case n == 1 || len(names) == n:
		return ""
	case len(names) <= 2:
		return " (" + strings.Join(names, ", ") + ")"
	}
	return fmt.Sprintf(" (%d of %d)", len(names), n)
}

// held says which care is held today, in the words of the state.
func (l *lenses) held(i int) (out []string) {
	hold := func(all []life.Hold, of string) {
		for k := range all {
			h := &all[k]
			if l.r.Today < h.From || h.Until <= l.r.Today {
				continue
			}
			var kinds []string
			for j := range l.r.Roster.Of[i] {
				if kind := l.r.Roster.Of[i][j].Kind; h.Takes(kind) && !slices.Contains(kinds, kind.Short()) {
					kinds = append(kinds, kind.Short())
				}
			}
			if len(kinds) == 0 {
				continue
			}
			out = append(out, strings.Join(kinds, ", ")+of+" ("+h.Why+"; "+h.End+")")
		}
	}
	for _, g := range l.r.Lives[i].Groups {
		of := ""
		if mixed(l.r, l.r.Lives[i]) {
			of = " of " + g.Animals.Name.V
		}
		hold(g.Holds, of)
	}
	hold(l.r.Lives[i].Holds, "")
	return out
}

// mixed reports whether an enclosure has several groups of animals today.
func mixed(r *compile.Result, x *life.Enclosure) bool {
	n := 0
	for _, g := range x.Groups {
		if g.Count(r.Today) > 0 {
			n++
		}
	}
	return n > 1
}

// due is some care that comes up on one day.
type due struct {
	day   int
	words []string
	boxes [][]string // of each of words
	meal  bool
}

// next says what comes up next besides the routine of every round: all of the first day that
// has any, and the next meal where that is later. n is of how many enclosures the entries are.
func (l *lenses) next(all []*entry, n int) string {
	first := l.soonest(all, n, func(e *entry) bool { return !e.Kind.Routine })
	if first == nil {
		return ""
	}
	out := first.said(l, n)
	if !first.meal {
		if meal := l.soonest(all, n, func(e *entry) bool { return e.Kind.Meal && !e.Kind.Routine }); meal != nil {
			out += ", " + meal.said(l, n)
		}
	}
	return out
}

// soonest returns what of some entries comes up first, what the log says was done today left
// out; nil for nothing.
func (l *lenses) soonest(all []*entry, n int, wanted func(*entry) bool) *due {
	out := &due{day: -1}
	for _, e := range all {
		if !wanted(e) {
			continue
		}
		d := e.Days.Next(l.r.Horizon.Today)
		if d == l.r.Horizon.Today && l.ticks.Has(e, d) {
			d = e.Days.Next(d + 1)
		}
		switch {
		case d < 0 || out.day >= 0 && d > out.day:
			continue
		case d < out.day || out.day < 0:
			*out = due{day: d}
		}
		out.add(called(l.r, e, n), e.Plan().Name.V)
		out.meal = out.meal || e.Kind.Meal
	}
	if out.day < 0 {
		return nil
	}
	return out
}

func (d *due) add(word, box string) {
	k := slices.Index(d.words, word)
	if k < 0 {
		k = len(d.words)
		d.words, d.boxes = append(d.words, word), append(d.boxes, nil)
	}
	if !slices.Contains(d.boxes[k], box) {
		d.boxes[k] = append(d.boxes[k], box)
	}
}

// mostWords is how many sorts of care are named of one day.
const mostWords = 3

func (d *due) said(l *lenses, n int) string {
	var words []string
	for k, w := range d.words {
		if k == mostWords {
			words = append(words, strconv.Itoa(len(d.words)-k)+" more")
			break
		}
		words = append(words, w+which(d.boxes[k], n))
	}
	return strings.Join(words, ", ") + " " + day(l.r, l.r.Horizon.Date(d.day))
}

// longTask is how long the beginning of a task of the log may be, in bytes, to be told.
const longTask = 40

// called is an entry by as few words as tell which it is: its kind, with the animals where
// the enclosure has several, and its own name or task where its kind says nothing.
func called(r *compile.Result, e *entry, n int) string {
	switch {
	case e.Once != nil:
		if end := strings.IndexAny(e.Task+":", ":;,"); end > 0 && end <= longTask {
			return e.Task[:end]
		}
		return e.Kind.Short()
	case e.Group != nil && n == 1 && mixed(r, e.Life):
		return e.Name
	case e.Group != nil:
		return e.Kind.Short()
	}
	return e.Name
}

// unmet says of a need from when on it is not met.
func (l *lenses) unmet(p *prove.Proof) string {
	return fmt.Sprintf("%s, %s from %s, %d allowed", l.need(p), wording.Days(p.Breach.To-p.Breach.From), day(l.r, l.r.Horizon.Date(max(0, p.Breach.From))), p.Limit.Days)
}

// need names the need of a proof, with the animals where the enclosure has several.
func (l *lenses) need(p *prove.Proof) string {
	if p.Group != nil && mixed(l.r, p.Life) {
		return p.Name.Name + " of " + p.Group.Animals.Name.V
	}
	return p.Name.Name
}

// bound is the limit to which the longest time of a proof is held: the longer one only where
// nobody was there.
func bound(p *prove.Proof) int {
	if p.Longest > p.Allowed {
		return p.Unattended
	}
	return p.Allowed
}

// needs says how the need stands that comes nearest to its limit, of all enclosures of a block.
func (l *lenses) needs(of []int) []string {
	var worst *prove.Proof
	all := make([]*prove.Proof, len(of))
	for k, i := range of {
		all[k] = nearest(l.r.Proofs[i])
		if all[k] != nil && (worst == nil || nearer(all[k], worst) < 0) {
			worst = all[k]
		}
	}
	if worst == nil {
		return nil
	}
	same := &several{of: len(of)}
	for _, p := range all {
		if p != nil && nearer(p, worst) == 0 && l.longest(p) == l.longest(worst) {
			same.add(l.longest(p), p.Life.Plan.Name.V)
		}
	}
	return same.labelled("", 1)
}

// nearest is the need that comes nearest to its limit, or nil. One that may wait for a day
// and does is done every day, and says nothing.
func nearest(all []prove.Proof) (out *prove.Proof) {
	for k := range all {
		if p := &all[k]; p.Longest > 1 && bound(p) > 1 && (out == nil || nearer(p, out) < 0) {
			out = p
		}
	}
	return out
}

// nearer compares two proofs by how much of their limit is taken up, then by the limit.
func nearer(p, o *prove.Proof) int {
	return cmp.Or(cmp.Compare(o.Longest*bound(p), p.Longest*bound(o)), cmp.Compare(bound(p), bound(o)))
}

// longest says how a need stands: "water met, longest 2 of 2 days".
func (l *lenses) longest(p *prove.Proof) string {
	switch {
	case p.Longest > bound(p):
		return fmt.Sprintf("%s was late, %s, %d allowed", l.need(p), wording.Days(p.Longest), bound(p))
	case p.Longest > p.Allowed:
		return fmt.Sprintf("%s met, longest %d of %s with nobody there", l.need(p), p.Longest, wording.Days(bound(p)))
	}
	return fmt.Sprintf("%s met, longest %d of %s", l.need(p), p.Longest, wording.Days(bound(p)))
}

// racks says what comes next of what is done once for all in a rack.
func (l *lenses) racks() {
	for _, k := range l.r.Roster.Racks {
		var all []*entry
		for i := range k.Entries {
			all = append(all, &k.Entries[i])
		}
		if next := l.next(all, 1); next != "" {
			l.add(&k.Plan.Head, []string{"next: " + next, wording.Count(len(k.Plan.Enclosures), "enclosure", "enclosures")})
		}
	}
}
