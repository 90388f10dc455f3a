package growth

import (
	"vivary/compile/life"
	"vivary/plan"
	"vivary/schema/civil"
)

// Stock is what the animals of an enclosure need, and what there is. A need of 0 is
// one that no sheet states.
type Stock struct {
	Animals       int     // newborn, and young that are with their mother, are not counted
	Floor, Has    float64 // cm², needed and there
	Volume, Holds float64 // ml, needed for one and there
	// Sized is whether floor and volume can be compared: the inside is written and is
	// one room, not compartments.
	Sized    bool
	Hides    int // there are
	HidesSet bool
	First    *plan.Figure // of the largest animal
	// Further is what each further animal adds; nil where the sheet has none, and then
	// half of what one alone needs is added (judgement).
	Further *plan.Figure
	Most    *plan.Figure // the largest group; nil where nobody says
}

// Tolerance is what a tank may lack, because it is sold by its outer measures
// (judgement).
const Tolerance = 0.995

// Fits reports whether floor and volume are enough, where both are known.
func (s *Stock) Fits() bool { return !s.Sized || s.FloorFits() && s.volumeFits() }

// FloorFits reports whether the floor is enough, where it is known.
func (s *Stock) FloorFits() bool { return s.Has >= s.Floor*Tolerance }

// FloorOpen reports whether it is not known if the floor is enough: it is less than what
// suits every member of a care type, and not what is too little for any of them.
func (s *Stock) FloorOpen() bool {
	f := s.First
	return !s.FloorFits() && f != nil && f.OfType != "" && (f.Beyond.High == 0 || s.Has >= s.wrong()*Tolerance)
}

// wrong is the floor that is too little for any member of a care type, in cm², in the
// proportion in which it is of one.
func (s *Stock) wrong() float64 { return s.Floor * s.First.Beyond.Low / s.First.Range.Low }

// Hiding is how many animals of an enclosure ask for a place to hide each: hunters that are
// past the smallest sizes, and were not taken out. Young hide under bits of bark and in
// crevices that nobody counts, and woodlice and millipedes crowd under one piece of bark.
func Hiding(l *life.Enclosure, today civil.Date) (n int) {
	s := l.Plan.Sheet
	if s == nil || !s.Hunts() {
		return 0
	}
	for _, g := range l.Groups {
		if stage := g.Stage(today); g.Sheet == s && !g.Strayed() && stage != "newborn" && stage != "young" {
			n += g.Count(today)
		}
	}
	return n
}

func (s *Stock) volumeFits() bool { return s.Holds >= s.Volume*Tolerance }

// pace is how fast animals are taken to grow.
type pace uint8

const (
	still pace = iota // not at all
	fast              // as fast as is possible
	slow              // as slowly as is possible
	grown             // all adult, whatever the day
)

// world is one enclosure while its report is made.
type world struct {
	l     *life.Enclosure
	c     *plan.Collection
	f     *figures
	today civil.Date
	young litter // that stays with its mother
	brood path   // its way
	paths [8]path
	known int // how many of the groups have their way in paths
}

// path returns the way of group i. That of the first eight is worked out once, in
// a place that costs no allocation; hardly an enclosure has more groups. For the
// others it is worked out again, in spare.
func (w *world) path(i int, spare *path) *path {
	if i < w.known {
		return &w.paths[i]
	}
	*spare = pathOf(w.f, w.l.Groups[i], w.today)
	return spare
}

func (w *world) prepare() {
	for i, g := range w.l.Groups {
		if i == len(w.paths) {
			break
		}
		w.paths[i] = pathOf(w.f, g, w.today)
		w.known++
	}
	if w.young = w.expected(); w.young.mothers > 0 {
		w.brood = broodPath(w.f, w.young.birth, w.today)
	}
}

// grows reports whether anything will be larger than it is.
func (w *world) grows() bool {
	var spare path
	for i := range w.l.Groups {
		if p := w.path(i, &spare); p.animals > 0 && p.stage != unknown && p.stage != adult {
			return true
		}
	}
	return false
}

// stock adds up what is needed on a day: the largest animal first, and for each
// further one what its stage adds.
func (w *world) stock(on civil.Date, how pace) Stock {
	s := Stock{Most: w.f.groupMax}
	if h := w.l.Plan.Housing; h != nil {
		s.Sized = h.Inside.Set() && !h.Places.Set() && !w.l.Plan.Culture.V
		s.Has, s.Holds = h.Inside.V.FloorArea(), 1000*h.Inside.V.VolumeLitres()
		s.Hides, s.HidesSet = h.Hides.V, h.Hides.Set()
	}
	tally := tally{s: &s}
	mothered := w.mothered()
	var spare path
	for i := range w.l.Groups {
		p := w.path(i, &spare)
		if p.animals > 0 {
			tally.add(w.f, p.then(on, how), p.animals, mothered)
		}
	}
	if s.First != nil {
		s.Floor += s.First.Range.Low - tally.adds
	}
	return s
}

func (p *path) then(on civil.Date, how pace) int {
	switch {
	case how == still:
		return p.stage
	case how == grown && p.stage != unknown:
		return adult
	}
	return p.on(on, how == fast)
}

// tally adds animals to a stock.
type tally struct {
	s    *Stock
	adds float64 // what the largest would add if it were a further one
}

func (t *tally) add(f *figures, stage, animals int, mothered bool) {
	if animals == 0 || stage == newborn || stage == young && mothered {
		return
	}
	s := t.s
	s.Animals += animals
	if v := f.volume.at(stage); v != nil {
		s.Volume = max(s.Volume, v.Range.Low)
	}
	first := f.floorFirst.at(stage)
	if first == nil {
		return
	}
	adds, further := first.Range.Low/2, f.floorFurther.at(stage)
	if further != nil {
		adds = further.Range.Low
	}
	s.Floor += adds * float64(animals)
	if s.First == nil || first.Range.Low > s.First.Range.Low {
		s.First, s.Further, t.adds = first, further, adds
	}
}

// mothered reports whether young here are with their mother.
func (w *world) mothered() bool {
	for _, g := range w.l.Groups {
		if g.Brood && g.Count(w.today) > 0 {
			return true
		}
	}
	return false
}

// tooSmall finds the days between which floor or volume stop being enough. What is
// needed is taken not to shrink as animals grow.
func (w *world) tooSmall(now *Stock) Due {
	if !now.Fits() {
		return Due{When: Now}
	}
	if !now.Sized || !w.grows() {
		return Due{}
	}
	end := w.today + lookAhead
	from, may := w.crossing(fast, end)
	if !may {
		if last := w.stock(w.today, grown); !last.Fits() {
			return Due{When: Undated}
		}
		return Due{}
	}
	until, _ := w.crossing(slow, end)
	return Due{Between, from, until}
}

// lookAhead is how many days ahead is looked: no animal of the library takes
// longer to grow up.
const lookAhead = 30 * 365

// crossing returns the first day on which the enclosure is too small.
func (w *world) crossing(how pace, end civil.Date) (civil.Date, bool) {
	if s := w.stock(end, how); s.Fits() {
		return 0, false
	}
	low, high := w.today, end // not enough on high
	for high-low > 1 {
		middle := low + (high-low)/2
		if s := w.stock(middle, how); s.Fits() {
			low = middle
		} else {
			high = middle
		}
	}
	return high, true
}
