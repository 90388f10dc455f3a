package life

import (
	"slices"
	"strconv"

	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/quantity"
	"vivary/schema/wording"
)

const (
	// birthTakes is over how many days one birth may be logged bit by bit: emperor
	// scorpions give birth over several (Tierpark Bochum); the figure is common
	// practice.
	birthTakes = 7
	// mostBorn bounds the number of a brood, as the log bounds every number.
	mostBorn = quantity.MaxCount
)

// brood is a birth or a hatching and what became of it. One that the plan alone
// speaks of has no birth. Its young are a group from the first day on.
type brood struct {
	mother    *track
	young     *track
	born      seen
	last      civil.Date // the last day of the birth, which may take several
	number    int        // 0 where it was not said
	first     seen       // their first moult
	separated seen       // since when none of them are with her
}

func (r *reader) born(t *track, e *plan.Event) {
	n, ok := r.howMany(e, 0, mostBorn)
	if !ok {
		return
	}
	if e.Number.Set() && n == 0 {
		r.found.Add(finding.Finding{Rule: ruleNumber, At: e.Number.At, Text: "0 " + e.Word.Name + ": the line changes nothing", Write: "how many; or, where she bore none, not-gravid"})
		return
	}
	if r.out.Plan.Culture.V {
		t.number(see(e), min(t.now()+n, mostBorn), Born, nil) // a culture grows by itself
		return
	}
	n = r.likely(t, n, e)
	if from, to, gestation := r.term(t); gestation.ok && (e.Date < from || e.Date > to) {
		r.found.Add(finding.Finding{Rule: ruleTerm, At: e.At,
			Text:   e.Word.Name + " " + wording.Days(int(e.Date-t.matings[0].on)) + " after the mating of " + t.matings[0].on.Words(),
			Limit:  "gestation of " + gestation.String() + ", species sheet " + t.Sheet.Name.V,
			Source: r.c.Library.Cite(gestation.cited),
			Write:  "the right days; where both are right, leave them: this is worth telling others",
			Also:   []finding.Related{{At: t.matings[0].at, Text: "the mating"}}})
	}
	// In a group another female may still carry young from a later mating.
	var later []seen
	if t.now() > 1 && len(t.matings) > 1 {
		later = t.matings[1:]
	}
	r.closeLate(t, e.Date)
	t.matings = later
	r.sacEnds(t, e.Date)
	if b := r.sameBirth(t, e.Date); b != nil {
		b.last, b.number = e.Date, min(b.number+n, mostBorn)
		b.young.number(see(e), min(b.young.now()+n, mostBorn), Born, nil)
		return
	}
	if len(t.broods) == 1 && !t.broods[0].born.ok && t.moulting+t.leaving == 0 {
		r.toldOf(t, t.broods[0], n, e)
		return
	}
	b := &brood{mother: t, born: see(e), last: e.Date, number: n}
	t.broods = append(t.broods, b)
	r.bear(b, "young-"+e.Date.String(), "young of "+dated(e.Date), b.born)
}

// tooMany is how many times as many as the sheet has at the most are no brood but a slip
// of the hand (common practice, no source).
const tooMany = 4

// likely is the number of a brood, 0 for not known where it cannot be so.
func (r *reader) likely(t *track, n int, e *plan.Event) int {
	if t.Sheet == nil {
		return n
	}
	f := t.Sheet.Figure(schema.FigureBroodSize, "adult")
	if f == nil && n <= 1000 || f != nil && float64(n) <= tooMany*f.Range.High*float64(max(1, t.now())) {
		return n
	}
	x := finding.Finding{Rule: ruleNumber, At: e.Number.At, Text: strconv.Itoa(n) + " " + e.Word.Name + ": that many are not born at once; how many is taken as not known", Write: "the right number, or none"}
	if f != nil {
		x.Limit, x.Source = "broods of "+f.Value.V+", species sheet "+t.Sheet.Name.V, r.c.Library.Cite(f.Cited)
	}
	r.found.Add(x)
	return 0
}

// Bears reports whether young stay on their mother or round her for a time, so that she
// and they are left in peace. Others lay, and have no part in their young.
func (g *Group) Bears() bool {
	if g.Sheet == nil || g.Sheet.StageOf(1) == newborn {
		return true
	}
	for _, what := range []*schema.Figure{schema.FigureOnMother, schema.FigureGestation, schema.FigureDispersal} {
		if g.Sheet.Figure(what, "adult") != nil {
			return true
		}
	}
	return false
}

// sameBirth is the brood of which a birth on that day is a part: two mothers of one
// day are one brood, and one mother may take days.
func (r *reader) sameBirth(t *track, on civil.Date) *brood {
	n := len(t.broods)
	if n == 0 || t.moulting >= n || t.leaving >= n {
		return nil
	}
	if b := t.broods[n-1]; b.born.ok && b.young.now() > 0 && (b.last == on || t.now() == 1 && on-b.last <= birthTakes) {
		return b
	}
	return nil
}

// told makes the brood of which the plan speaks, with no day.
func (r *reader) told(t *track) {
	b := &brood{mother: t}
	t.broods = []*brood{b}
	r.bear(b, "young", "young", seen{0, t.Animals.State.At, false})
}

// beside makes a brood of newborn young of the plan that live with one grown animal of
// their kind, whether the plan says of it that it has young or not.
func (r *reader) beside() {
	for _, y := range r.tracks {
		if y.of != nil || y.stage().Stage != newborn || !y.Bears() {
			continue
		}
		var mother *track
		n := 0
		for _, t := range r.tracks {
			if t != y && t.Sheet == y.Sheet && t.stage().Stage == "adult" {
				mother = t
				n++
			}
		}
		if n != 1 {
			continue
		}
		b := &brood{mother: mother, young: y, number: y.now()}
		if a := y.Animals.Born; a.Set() && a.V <= r.today {
			b.born, b.last = seen{a.V, a.At, true}, a.V
		}
		y.of, y.Mother, y.Dam = b, mother.Group, mother.Group
		mother.broods = append(mother.broods, b)
	}
}

// toldOf makes the brood that the plan speaks of the one that a line tells of; what it
// held stays held.
func (r *reader) toldOf(t *track, b *brood, n int, e *plan.Event) {
	told := r.broodHolds(t, b)[0]
	told.Until, told.Open = min(told.Until, e.Date), false
	t.Holds = append(t.Holds, told)
	b.born, b.last, b.number = see(e), e.Date, n
	y := b.young
	if n == 0 && !y.Logged {
		b.number = y.now()
	}
	y.Since = wrote(e.Date, e.At)
	y.appeared(see(e), r.size(b), Born)
	if y.Logged {
		y.Stages = []Stretch{{e.Date, newborn, 1}}
	}
}

// bear makes the group of a brood's young, with their mother.
func (r *reader) bear(b *brood, name, title string, s seen) {
	if y := r.written(b); y != nil {
		b.young, y.of, y.Mother, y.Dam = y, b, b.mother.Group, b.mother.Group
		if s.ok {
			y.appeared(s, y.now(), Born)
			y.Since = wrote(s.on, s.at)
		}
		return
	}
	as := Stretch{Stage: newborn, Instar: 1}
	if b.mother.Sheet != nil {
		if stage := b.mother.Sheet.StageOf(1); stage != "" {
			as.Stage = stage
		}
		if !b.mother.Bears() && as.Stage == newborn {
			as = Stretch{Stage: "young", Instar: 2} // what leaves the sac is free
		}
	}
	y := r.create(name, title, b.mother.Sheet, as, s)
	b.young, y.of, y.Dam = y, b, b.mother.Group
	if as.Stage == newborn {
		y.Mother = b.mother.Group
	} else {
		// They are free at once: what follows counts from the hatching.
		b.first, b.separated = b.born, b.born
		b.mother.moulting++
		b.mother.leaving++
	}
	y.number(s, r.size(b), Born, nil)
}

// written is the block of the plan that is a brood: one beside the mother of the same
// birth day, or of newborn young without one. It is nil for none, and then the log
// makes the group.
func (r *reader) written(b *brood) *track {
	for _, t := range r.tracks {
		switch born := t.Animals.Born; {
		case t == b.mother || t.Logged || t.of != nil || t.Sheet != b.mother.Sheet:
		case born.Set() && b.born.ok && born.V >= b.born.on-birthTakes && born.V <= b.born.on+birthTakes,
			!born.Set() && t.stage().Stage == newborn,
			!b.born.ok && (t.stage().Stage == newborn || t.stage().Stage == "young"):
			return t
		}
	}
	return nil
}

// size is how many a brood is reckoned with: as many as were told, else as many as
// the sheet has at the most.
func (r *reader) size(b *brood) int {
	if b.number > 0 {
		return b.number
	}
	if b.mother.Sheet != nil {
		if f := b.mother.Sheet.Figure(schema.FigureBroodSize, "adult"); f != nil {
			return max(1, int(f.Range.High))
		}
	}
	return 1
}

// name is that of the brood in the identity of what it asks for.
func (b *brood) name() string {
	if !b.born.ok {
		return "told"
	}
	return b.born.on.String()
}

// firstMoult is about the oldest brood that is still in its first instar, or about the
// young that the line names.
func (r *reader) firstMoult(t *track, e *plan.Event) {
	if t.of != nil {
		r.moulted(t, t.of, e)
		return
	}
	t.moulting = max(t.moulting, t.leaving)
	if t.moulting >= len(t.broods) {
		if y := r.lastBrood(); y != nil && y.stage().Stage == newborn {
			r.moulted(y, y.of, e) // their mother is gone, or they were moved without her
			return
		}
		if t.stage().Stage == newborn {
			r.moult(t, e)
			return
		}
		r.found.Add(finding.Finding{Rule: ruleOrder, At: e.At, Text: "a first moult of young, but no birth before it",
			Write: "the day of the birth, with born; for an older animal, moult"})
		return
	}
	b := t.broods[t.moulting]
	r.moulted(b.young, b, e)
}

// moulted notes the first moult of a brood, or of those of it that were taken out.
func (r *reader) moulted(y *track, b *brood, e *plan.Event) {
	if !b.first.ok {
		b.first = see(e)
		b.mother.moulting++
	}
	for _, x := range b.mother.home.world.broodTracks(b) {
		if x.stage().Stage == newborn {
			x.entered = see(e)
			x.grow(e.Date)
		}
	}
	if y.stage().Stage == newborn {
		y.entered = see(e)
		y.grow(e.Date)
	}
}

// broodTracks are all groups of a brood's young, wherever they are.
func (w *world) broodTracks(b *brood) (out []*track) {
	for _, r := range w.all {
		for _, t := range r.tracks {
			if t.of == b && t.now() > 0 {
				out = append(out, t)
			}
		}
	}
	return out
}

// separated is about the oldest brood that is still with its mother, or about the
// young that the line names.
func (r *reader) separated(t *track, e *plan.Event) {
	b := t.of
	if b == nil {
		if y := r.lastBrood(); t.leaving >= len(t.broods) && y != nil {
			t, b = y, y.of // their mother is gone, or they were moved without her
		} else if t.leaving >= len(t.broods) {
			r.found.Add(finding.Finding{Rule: ruleOrder, At: e.At, Text: "young separated, but no birth before it",
				Write: "the day of the birth, with born; for older animals, moved"})
			r.unborn(t, e)
			return
		} else {
			b = t.broods[t.leaving]
		}
	}
	to, name, ok := r.goal(e)
	if !ok {
		return
	}
	if t.of != nil && t.Mother == nil {
		r.rehome(t, e, to, name)
		return
	}
	r.takeOut(b, e, to, name)
}

// mostTaken is how many young are taken out at once, at the most, where nothing is known
// of the brood (common practice, no source).
const mostTaken = 100

// unborn is young that were taken out though nobody wrote of their birth: they are
// counted from this day on.
func (r *reader) unborn(t *track, e *plan.Event) {
	to, name, ok := r.goal(e)
	n := int(e.Number.V)
	if !ok || n <= 0 || n > mostBorn || t.Sheet == nil || r.likely(t, n, e) == 0 {
		return
	}
	if n > mostTaken && t.Sheet.Figure(schema.FigureBroodSize, "adult") == nil {
		return
	}
	y := r.create("young-"+e.Date.String(), "young of "+dated(e.Date), t.Sheet, Stretch{Stage: "young", Instar: 2}, see(e))
	y.number(see(e), n, Born, nil)
	y.Dam = t.Group
	y.of = &brood{mother: t, young: y, number: n, first: see(e), separated: see(e)}
	if to == nil {
		y.stray = see(e)
		return
	}
	j := r.transfer(y, to, name, n, e)
	r.lose(y, e, n, MovedOut, j)
}

// ofYoung are the words that are about young also where their mother is named.
var ofYoung = []*schema.LogWord{schema.WordFirstMoult, schema.WordSeparated, schema.WordDispersed}

// left is the youngest brood of a mother that lives here, whether she does or not. It is
// nil for none.
func (r *reader) left(mother *track) *track {
	for _, y := range slices.Backward(r.tracks) {
		if y.of != nil && y.of.mother == mother && y.now() > 0 {
			return y
		}
	}
	return nil
}

// dispersed is young that have left her back: they have moulted.
func (r *reader) dispersed(t *track, e *plan.Event) {
	b := t.of
	if b == nil && t.moulting < len(t.broods) {
		b = t.broods[t.moulting]
	}
	if b != nil && !b.first.ok {
		r.moulted(b.young, b, e)
	}
}

// rehome is a separation of young that were taken out before.
func (r *reader) rehome(t *track, e *plan.Event, to *reader, name string) {
	n, ok := r.howMany(e, t.now(), t.now())
	switch {
	case !ok || n == 0:
		return
	case to == nil && n == t.now():
		t.stray = see(e)
		return
	case to == nil:
		r.cups(t, n, e)
		return
	}
	j := r.transfer(t, to, name, n, e)
	r.lose(t, e, n, MovedOut, j)
}

// takeOut takes young from their mother: to a place, or to where nobody said. A number
// leaves the others with her; none says that none are left.
func (r *reader) takeOut(b *brood, e *plan.Event, to *reader, name string) {
	y, most := b.young, b.young.now()
	if b.number == 0 {
		most = mostBorn // how many there are was never said
	}
	n, ok := r.howMany(e, y.now(), most)
	if !ok {
		return
	}
	if b.number == 0 && e.Number.Set() && n > 0 {
		// How many there were was never said: they are those that were counted out.
		b.number = n
		y.number(see(e), n, Recounted, nil)
	}
	if !b.first.ok && n > 0 {
		r.found.Add(finding.Finding{Rule: ruleEarly, At: e.At, Text: "separated before their first moult is logged",
			Write: "before this line, the day of their first moult with first_moult"})
	}
	all := n == y.now() || e.Number.Set() && n == 0
	switch {
	case n == 0:
		r.lose(y, e, y.now(), Gone, nil)
	case to != nil:
		j := r.transfer(y, to, name, n, e)
		r.lose(y, e, n, MovedOut, j)
	case e.Word == schema.WordMoved:
		r.lose(y, e, n, Left, nil)
	case all:
		y.Mother, y.stray = nil, see(e)
	default:
		r.cups(y, n, e)
	}
	if all && !b.separated.ok {
		b.separated = see(e)
		b.mother.leaving++
	}
}

// cups makes a group of some young that were taken out to where nobody said.
func (r *reader) cups(y *track, n int, e *plan.Event) {
	cups := r.create(y.Animals.Name.V+"-out", y.Animals.Title.V+", taken out", y.Sheet, y.stage(), see(e))
	cups.number(see(e), n, MovedIn, y)
	cups.of, cups.stray, cups.Fed, cups.HasFed, cups.entered = y.of, see(e), y.Fed, y.HasFed, y.entered
	y.number(see(e), y.now()-n, MovedOut, cups)
}

// bereave is about young whose mother, the last of her group, dies or goes.
func (r *reader) bereave(t *track, n int, e *plan.Event) {
	if n < t.now() {
		return
	}
	for _, b := range t.broods {
		if !b.separated.ok {
			b.separated = see(e)
			b.young.Mother, b.young.orphan = nil, see(e)
		}
	}
}

// follow takes the young that are with a mother to where she went.
func (r *reader) follow(t, to *track, e *plan.Event) {
	for _, b := range t.broods {
		y := b.young
		if b.separated.ok || y.now() == 0 {
			continue
		}
		n := y.now()
		there := to.home.create(y.Animals.Name.V, y.Animals.Title.V, y.Sheet, y.stage(), see(e))
		there.number(see(e), n, MovedIn, y)
		there.carry(y, true)
		there.entered, there.Mother = y.entered, to.Group
		old := *b
		old.separated = see(e)
		b.mother, b.young = to, there
		to.broods = append(to.broods, b)
		if b.first.ok {
			to.moulting++
		}
		y.Mother = nil
		r.lose(y, e, n, MovedOut, there)
		y.gone = "they went with their mother on " + e.Date.Words()
		// What is concluded of her in the old place ends on this day.
		for i := range t.broods {
			if t.broods[i] == b {
				t.broods[i] = &old
			}
		}
	}
}
