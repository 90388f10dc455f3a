package growth

import (
	"vivary/compile/climate"
	"vivary/compile/life"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/civil"
)

// Brood is what follows from young that are expected, or on their mother.
type Brood struct {
	Mothers int                   // that carry young or may, or have them around
	Young   climate.Band[float64] // 0 where no sheet says how many; as logged where it was
	Birth   Due                   // Now where they are born; Undated where no mating is known
	// Stay is whether the young stay with their mother, and Leave whether they are
	// taken out. Neither is where no sheet says.
	Stay, Leave bool
	// Reared is what the enclosure needs once young that stay are juvenile and as many
	// as is possible, in cm²; 0 where nothing is known.
	Reared float64
	Total  climate.Band[float64] // of animals then
	// Places are those of nurseries of this species in the whole collection, and
	// Leaving is when the young need them.
	Places  int
	Leaving Due
}

// litter is young of one enclosure, those of several mothers together.
type litter struct {
	mothers, least, most int
	birth                Due
}

func (l *litter) band() climate.Band[float64] {
	return climate.Band[float64]{Low: float64(l.least), Likely: float64(l.least+l.most) / 2, High: float64(l.most)}
}

// expected gathers the young to be reckoned with.
func (w *world) expected() (l litter) {
	for _, g := range w.l.Groups {
		n := g.Count(w.today)
		if n == 0 || !g.Gravid && !g.Brood {
			continue
		}
		// One is gravid at the least; more only where the plan says they are females.
		mothers := max(1, min(g.Animals.Count.V.Females, n))
		if g.Brood {
			if w.hasYoung(g) {
				continue // they are animals of the enclosure already
			}
			mothers = 1
		}
		l.mothers += mothers
		least, most := 0, 0
		if s := w.f.broodSize; s != nil {
			least, most = int(s.Range.Low)*mothers, int(s.Range.High)*mothers
		}
		var birth Due
		if g.Brood {
			var born int
			birth, born = w.born(g)
			if born > 0 {
				least, most = born, born
			}
		} else {
			birth = expectedBirth(g)
		}
		l.least, l.most = l.least+least, l.most+most
		if l.mothers > mothers {
			birth = l.birth.first(birth)
		}
		l.birth = birth
	}
	return l
}

// hasYoung reports whether young that stay with their mother live here: her own, or those
// of a block of the plan.
func (w *world) hasYoung(mother *life.Group) bool {
	for _, g := range w.l.Groups {
		if g.Logged && g.Mother != mother {
			continue
		}
		s := stageOf(g.Stage(w.today))
		if s != newborn && s != young || g.Count(w.today) == 0 {
			continue
		}
		leaves := g.Mother != nil && w.f.separation == "separate"
		if !passing(w.f, g, w.today) || g.Hatchling(w.today) && !g.Guessed && !leaves {
			return true
		}
	}
	return false
}

// expectedBirth is the band that package life gives.
func expectedBirth(g *life.Group) Due {
	for i := range g.Windows {
		if w := &g.Windows[i]; w.Kind == life.BirthWindow {
			return Due{Between, w.From, w.Until - 1}
		}
	}
	return Due{When: Undated}
}

// oneBirth is over how many days a birth may be logged bit by bit: emperor scorpions
// give birth over several (Tierpark Bochum); the figure is common practice.
const oneBirth = 7

// born reads the last birth of a group in the log, and how many were counted.
func (w *world) born(g *life.Group) (birth Due, young int) {
	for i := len(w.c.Log) - 1; i >= 0; i-- {
		e := &w.c.Log[i]
		if e.Word == nil || e.Word != schema.WordBorn || e.Date > w.today || e.Enclosure.V != w.l.Plan.Name.V ||
			e.Group.V != "" && e.Group.V != g.Animals.Name.V {
			continue
		}
		if birth.When == Between && birth.From-e.Date > oneBirth {
			break
		}
		if birth.When != Between {
			birth = Due{Between, e.Date, e.Date}
		}
		birth.From = e.Date
		if n := e.Number.V; e.Number.Set() && n > 0 && n <= 1e6 {
			young += int(n)
		}
	}
	if birth.When != Between {
		// The plan alone speaks of them: they were born today at the latest.
		birth = Due{Between, w.today, w.today}
	}
	return birth, young
}

// rear says what the young ask for. s is what those who live here now need.
func (w *world) rear(s Stock) (b Brood) {
	y := w.young
	b.Mothers, b.Young, b.Birth = y.mothers, y.band(), y.birth
	if b.Mothers == 0 {
		return b
	}
	b.Stay, b.Leave = w.f.separation == "keep with mother", w.f.separation == "separate"
	if b.Birth.When == Between && b.Birth.Until <= w.today {
		b.Birth.When = Now
	}
	switch {
	case b.Stay:
		n, without := float64(s.Animals), s.Floor
		t := tally{s: &s}
		t.add(w.f, juvenile, y.most, true)
		if s.First != nil && s.Floor > without {
			b.Reared = s.Floor
		}
		b.Total = climate.Band[float64]{Low: n + b.Young.Low, Likely: n + b.Young.Likely, High: n + b.Young.High}
	case b.Leave:
		b.Places = Places(w.c, w.l.Plan.Sheet)
		b.Leaving = w.leaving()
	}
	return b
}

// Places counts the places of a collection's nurseries for young of a species.
func Places(c *plan.Collection, sheet *plan.SpeciesSheet) (n int) {
	for _, x := range c.Enclosures {
		if x.Sheet == sheet && x.Housing != nil {
			n += x.Housing.Places.V
		}
	}
	return n
}

// hardens is how many days after the first moult young leave where no sheet says
// (common practice, no source).
const hardens = 7

func (w *world) leaving() Due {
	p := &w.brood
	if p.next.When != Between {
		return Due{When: Undated}
	}
	least, most, ok := days(w.f.dispersal)
	if !ok {
		least, most = hardens, hardens
	}
	d := Due{Between, p.next.From + civil.Date(least), p.next.Until + civil.Date(most)}
	if d.Until <= w.today {
		return Due{When: Now}
	}
	return d
}

// nursery is when places run out, if the brood is as large as it may be. For young
// that are not taken out Leaving is never.
func (w *world) nursery(b *Brood) Due {
	if b.Young.High <= float64(b.Places) {
		return Due{}
	}
	return b.Leaving
}
