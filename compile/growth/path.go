package growth

import (
	"math"

	"vivary/compile/climate"
	"vivary/compile/life"
	"vivary/plan"
	"vivary/schema/civil"
)

// path is the way of a group, or of a brood, through its instars.
type path struct {
	g       *life.Group // nil for a brood
	today   civil.Date
	stage   int // today
	lo, hi  int // the instars that it may be in today; 0 where they are not counted
	next    Due // the next moult
	born    Due
	animals int
	enters  [stages]Due // when it comes into each stage
}

// passing reports whether a group will not grow up where it is: young with their mother
// that are taken out, and animals of another species that the log brought by mistake,
// those that were taken out to where nobody said, and a brood of which nobody said how many
// it is, or that has just hatched.
func passing(f *figures, g *life.Group, today civil.Date) bool {
	return g.Sheet != f.sheet || g.Strayed() || g.Guessed || g.Hatchling(today) || g.Mother != nil && f.separation == "separate"
}

// pathOf returns the way of a group from today on.
func pathOf(f *figures, g *life.Group, today civil.Date) path {
	p := path{g: g, today: today, stage: stageOf(g.Stage(today)), animals: g.Count(today)}
	if passing(f, g, today) {
		p.animals = 0
	}
	p.lo, p.hi = f.instars(g.Instar(today), p.stage)
	if b := g.Animals.Born; b.Set() {
		p.born = Due{Between, b.V, b.V}
	}
	for i := range g.Windows {
		if w := &g.Windows[i]; w.Kind == life.MoultWindow && w.Until > today {
			p.next = Due{Between, max(w.From, today+1), w.Until - 1}
		}
	}
	if least, most, ok := f.lasts(p.lo); ok && p.next.When == Never {
		p.next = Due{Between, max(p.soonest(f, least), today+1), today + civil.Date(most)}
		if p.lo == 1 && p.hi == 1 && p.born.When == Between {
			p.next = Due{Between, max(p.born.From+civil.Date(least), today), max(p.born.Until+civil.Date(most), today)}
		}
	}
	p.plan(f)
	return p
}

// soonest is when an instar that nobody saw begin may end: by the age of the animals, where
// that is known. Where it is not, that it may have begun long ago tells no day, and it is
// reckoned as if it had begun today.
func (p *path) soonest(f *figures, least int) civil.Date {
	if p.born.When != Between {
		return p.today + civil.Date(least)
	}
	end := p.born.From
	for i := 1; i <= p.lo; i++ {
		least, _, ok := f.lasts(i)
		if !ok {
			return p.today
		}
		end += civil.Date(least)
	}
	return end
}

func (p *path) plan(f *figures) {
	for s := range p.enters {
		p.enters[s] = p.enter(f, s)
	}
}

// broodPath is the way of young that are born between two days.
func broodPath(f *figures, born Due, today civil.Date) path {
	p := path{today: today, stage: newborn, born: born}
	p.lo, p.hi = f.instars(0, newborn)
	riding := f.onMother
	if riding == nil {
		riding = f.instar[1]
	}
	if least, most, ok := days(riding); ok && born.When == Between {
		p.next = Due{Between, born.From + civil.Date(least), born.Until + civil.Date(most)}
	}
	p.plan(f)
	return p
}

// instars returns the instars that animals may be in.
func (f *figures) instars(known, stage int) (lo, hi int) {
	if known > 0 {
		return min(known, maxInstar), min(known, maxInstar)
	}
	if stage == unknown {
		return 0, 0
	}
	return f.first[stage], f.last[stage]
}

// days are the ends of a figure that is a length of time.
func days(f *plan.Figure) (least, most int, ok bool) {
	if f == nil || f.Range.High <= 0 {
		return 0, 0, false
	}
	const day = 24 * 60
	return int(math.Floor(f.Range.Low / day)), int(math.Ceil(f.Range.High / day)), true
}

// lasts is how many days an instar lasts.
func (f *figures) lasts(instar int) (least, most int, ok bool) {
	if instar < 1 || instar > maxInstar {
		return 0, 0, false
	}
	return days(f.instar[instar])
}

// reach is when all the group is in an instar.
func (p *path) reach(f *figures, instar int) Due {
	switch {
	case p.lo == 0 || instar < 1:
		return Due{When: Undated}
	case p.lo >= instar:
		return Due{When: Now}
	case p.next.When != Between:
		return Due{When: Undated}
	}
	d := p.next
	if p.hi >= instar {
		d.From = p.today
	}
	for i := p.lo + 1; i < instar; i++ {
		least, most, ok := f.lasts(i)
		if !ok {
			return Due{When: Undated}
		}
		if i > p.hi {
			d.From += civil.Date(least)
		}
		d.Until += civil.Date(most)
	}
	return d
}

// enter is when it comes into a stage. Where nobody has timed the instars, an adult
// is told by its age, and what comes before that is somewhere between now and then.
func (p *path) enter(f *figures, stage int) Due {
	if p.stage == unknown || p.stage >= stage {
		return Due{When: Now}
	}
	d := p.reach(f, f.first[stage])
	if d.When != Undated {
		return d
	}
	least, most, ok := days(f.age)
	if !ok || p.born.When != Between {
		return d
	}
	d = Due{Between, p.today + 1, max(p.born.Until+civil.Date(most), p.today+1)}
	if stage == adult {
		d.From = max(p.born.From+civil.Date(least), d.From)
	}
	return d
}

// on returns its stage on a day if it grows as fast as is possible, or as slowly.
func (p *path) on(day civil.Date, fast bool) int {
	if p.stage == unknown {
		return unknown
	}
	at := p.stage
	for s := p.stage + 1; s < stages; s++ {
		d := &p.enters[s]
		if d.When == Now || d.When == Between && (fast && d.From <= day || !fast && d.Until <= day) {
			at = s
		}
	}
	return at
}

// Size is what an animal measures in an instar.
type Size struct {
	Length climate.Band[float64] // mm, measured as the figure it is from
	Mass   climate.Band[float64] // g
}

// size returns what it will measure in an instar; 0 is a measure that nothing is
// known of. It starts from what the plan and the log say of the animals themselves,
// else from the sheet's figure for their stage, else from an adult's.
func (p *path) size(f *figures, instar int) (s Size) {
	growth, ok := f.growth()
	if !ok || instar < 1 {
		return s
	}
	s.Length = p.measure(f, instar, growth, &f.length, p.ownLength(f))
	s.Mass = p.measure(f, instar, growth.cubed(), &f.mass, p.ownMass(f))
	return s
}

// own is a measure of the animals themselves, and the instars they were in.
type own struct {
	value  float64
	lo, hi int
}

func (p *path) ownLength(f *figures) own {
	if p.g == nil || !p.g.Animals.Length.Set() {
		return own{}
	}
	return p.told(f, p.g.Animals.Length.V.Value)
}

func (p *path) ownMass(f *figures) own {
	switch {
	case p.g == nil:
		return own{}
	case p.g.Weight().Set():
		lo, hi := f.instars(p.g.Instar(p.g.Weighed()), stageOf(p.g.Stage(p.g.Weighed())))
		return own{p.g.Weight().V.Value, lo, hi}
	case p.g.Animals.Mass.Set():
		return p.told(f, p.g.Animals.Mass.V.Value)
	}
	return own{}
}

// told is a measure of the plan, which says how things were before the log.
func (p *path) told(f *figures, v float64) own {
	lo, hi := f.instars(p.g.Stages[0].Instar, stageOf(p.g.Stages[0].Stage))
	return own{v, lo, hi}
}

func (p *path) measure(f *figures, instar int, growth Factor, sheet *byStage, o own) climate.Band[float64] {
	if o.value > 0 && o.lo > 0 {
		return growth.grow(climate.Exactly(o.value), instar-o.hi, instar-o.lo)
	}
	if b, ok := f.stageSize(sheet, p.stage, p.lo); ok {
		b2, _ := f.stageSize(sheet, p.stage, p.hi)
		b.Likely, b.High = (b.Likely+b2.Likely)/2, b2.High
		return growth.grow(b, instar-p.hi, instar-p.lo)
	}
	if x, last := sheet.of[adult], f.first[adult]; x != nil && last > 0 {
		return growth.grow(climate.Band[float64]{Low: x.Range.Low, Likely: (x.Range.Low + x.Range.High) / 2, High: x.Range.High}, instar-last, instar-last)
	}
	return climate.Band[float64]{}
}

// stageSize reads the sheet's figure for a stage as that of one of its instars:
// the figure runs from the first to the last of them.
func (f *figures) stageSize(sheet *byStage, stage, instar int) (climate.Band[float64], bool) {
	if stage == unknown || sheet.of[stage] == nil || instar == 0 || f.first[stage] == 0 {
		return climate.Band[float64]{}, false
	}
	r, lo, hi := sheet.of[stage].Range, f.first[stage], f.last[stage]
	if lo == hi || r.Low <= 0 {
		return climate.Band[float64]{Low: r.Low, Likely: (r.Low + r.High) / 2, High: r.High}, true
	}
	share := float64(min(max(instar, lo), hi)-lo) / float64(hi-lo)
	return climate.Exactly(r.Low * math.Pow(r.High/r.Low, share)), true
}
