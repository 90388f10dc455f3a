package growth

import (
	"vivary/plan"
	"vivary/schema"
)

// The stages by number, as schema.Stages has them; unknown is what no plan says.
const (
	unknown = iota - 1
	newborn
	young
	juvenile
	subadult
	adult
	stages
)

func stageOf(word string) int {
	switch word {
	case "newborn":
		return newborn
	case "young":
		return young
	case "juvenile":
		return juvenile
	case "subadult":
		return subadult
	case "adult":
		return adult
	}
	return unknown
}

// byStage is one figure for each stage, as SpeciesSheet.Figure would give it, and
// the strictest for animals whose stage is not known.
type byStage struct {
	of                 [stages]*plan.Figure
	general, strictest *plan.Figure
}

func (b *byStage) add(f *plan.Figure, stricter bool) {
	if b.strictest == nil || stricter {
		b.strictest = f
	}
	if len(f.Stages) == 0 {
		b.general = f
	}
	for i := range f.Stages {
		if s := stageOf(f.Stages[i].V); s != unknown && b.of[s] == nil {
			b.of[s] = f
		}
	}
}

func (b *byStage) at(stage int) *plan.Figure {
	if stage == unknown {
		return b.strictest
	}
	if f := b.of[stage]; f != nil {
		return f
	}
	return b.general
}

// atLeast keeps the largest as the strictest, atMost the smallest.
func (b *byStage) atLeast(f *plan.Figure) {
	b.add(f, b.strictest != nil && f.Range.Low > b.strictest.Range.Low)
}

func (b *byStage) atMost(f *plan.Figure) {
	b.add(f, b.strictest != nil && f.Range.High < b.strictest.Range.High)
}

// maxInstar bounds how many instars are looked at.
const maxInstar = 16

// figures are those of a sheet that growth asks for, gathered in one pass: a sheet
// has a hundred.
type figures struct {
	sheet                                    *plan.SpeciesSheet
	floorFirst, floorFurther, volume         byStage
	length, mass, preyLength, preyMass       byStage
	preyLeast                                byStage
	factor, moults, age, broodSize, groupMax *plan.Figure
	onMother, dispersal                      *plan.Figure
	separation, kinWord                      string
	instar                                   [maxInstar + 1]*plan.Figure // instar-length
	first, last                              [stages]int                 // the instars of each stage; 0 where they are not counted
}

func (f *figures) read(s *plan.SpeciesSheet) {
	f.sheet = s
	for _, x := range s.Figures {
		if x.Instar.Set() {
			if n := x.Instar.V; x.What == schema.FigureInstarLength && n >= 1 && n <= maxInstar && f.instar[n] == nil {
				f.instar[n] = x
			}
			continue
		}
		switch x.What {
		case schema.FigureFloorFirst:
			f.floorFirst.atLeast(x)
		case schema.FigureFloorFurther:
			f.floorFurther.atLeast(x)
		case schema.FigureVolumeFirst:
			f.volume.atLeast(x)
		case schema.FigureLength:
			f.length.atMost(x)
		case schema.FigureMass:
			f.mass.atMost(x)
		case schema.FigurePreyLengthShare:
			f.preyLength.atMost(x)
		case schema.FigurePreyMassShare:
			f.preyMass.atMost(x)
		case schema.FigurePreyLengthLeast:
			f.preyLeast.atMost(x)
		case schema.FigureGrowthFactor:
			f.factor = x
		case schema.FigureMoultsToAdult:
			f.moults = x
		case schema.FigureAgeAtMaturity:
			f.age = x
		case schema.FigureBroodSize:
			f.broodSize = x
		case schema.FigureGroupMax:
			f.groupMax = x
		case schema.FigureOnMother:
			f.onMother = x
		case schema.FigureDispersal:
			f.dispersal = x
		case schema.FigureSeparation:
			f.separation = word(x)
		case schema.FigureMetabolicKin:
			f.kinWord = word(x)
		}
	}
	for _, st := range s.Stages {
		if i := stageOf(st.Name.V); i != unknown && st.Instars.Set() {
			f.first[i], f.last[i] = bounded(st.Instars.V.Low), bounded(st.Instars.V.High)
		}
	}
}

func bounded(instar float64) int { return int(min(max(instar, 0), maxInstar)) }

func word(f *plan.Figure) string {
	if len(f.Words) == 0 {
		return ""
	}
	return f.Words[0]
}
