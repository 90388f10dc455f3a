package roster

import (
	"vivary/compile/life"
	"vivary/compile/recur"
	"vivary/plan"
	"vivary/schema/civil"
)

// newborn is the stage that does not feed: young live on their reserves until their
// first moult.
const newborn = "newborn"

// spell is a stretch of days on which a group has the same meals.
type spell struct {
	meal        *plan.Feeding
	from, until civil.Date // the first day, and the last
	stage       string     // of one that follows another
	of          mealKey
}

// mealKey tells meals apart: the plan's own, and the sheet's that fills in what that
// leaves open or stands alone.
type mealKey struct{ own, sheet *plan.Feeding }

// spells returns the meals of a group by its stages: those of today, as long as it has
// been fed, and those that are to come. What is written for newborn is for the day from
// which they may eat.
func (b *builder) spells(g *life.Group) []spell {
	k := b.stretch(g)
	from := recur.MinDate
	for j := k; j > 0 && from == recur.MinDate; j-- {
		if g.Stages[j-1].Stage == newborn {
			from = g.Stages[j].From
		}
	}
	var out []spell
	for ; k < len(g.Stages); k++ {
		s := g.Stages[k]
		meal, of := b.mealOf(g, s.Stage)
		if n := len(out); n > 0 {
			from = s.From
			last := &out[n-1]
			if last.of == of && last.until == recur.MaxDate {
				continue
			}
			last.until = min(last.until, s.From-1)
		} else if s.From > b.Horizon.Now() {
			from = s.From
		}
		if meal == nil || meal.Off.V {
			continue
		}
		next := spell{meal: meal, from: from, until: recur.MaxDate, of: of}
		if len(out) > 0 {
			next.stage = s.Stage
		}
		out = append(out, next)
	}
	return out
}

// stretch is the place of today's stage among those of a group.
func (b *builder) stretch(g *life.Group) int {
	k := 0
	for k+1 < len(g.Stages) && g.Stages[k+1].From <= b.Horizon.Now() {
		k++
	}
	return k
}

// mealOf returns the meals of a group in a stage: the plan's own, completed from the
// sheet, else the sheet's; nil for none.
func (b *builder) mealOf(g *life.Group, stage string) (*plan.Feeding, mealKey) {
	if stage == newborn {
		return nil, mealKey{}
	}
	own, sheet := b.life.Plan.FeedingOf(g.Animals), sheetMeal(b.sheet(g), stage)
	if own == nil {
		return sheet, mealKey{sheet: sheet}
	}
	if f := complete(own, sheet); f != own {
		return f, mealKey{own, sheet}
	}
	return own, mealKey{own: own}
}

// sheet is that of a group's species, nil where it is not known.
func (b *builder) sheet(g *life.Group) *plan.SpeciesSheet {
	if g.Sheet != nil || g.Logged {
		return g.Sheet
	}
	return b.life.Plan.Sheet
}

// boxSheet is the sheet by which an enclosure is cared for: its own, else that of
// animals which came into one that was empty.
func (b *builder) boxSheet() *plan.SpeciesSheet {
	s := b.life.Plan.Sheet
	for _, g := range b.life.Groups {
		if s == nil && g.Count(b.Horizon.Now()) > 0 {
			s = g.Sheet
		}
	}
	return s
}

// fits reports from which day until which a sheet's care is for a stage that the
// enclosure has, or may have: animals of unknown stage count as every stage. What is
// for animals that live here today has been here all along.
func (b *builder) fits(stages []plan.Written[string]) (from, until civil.Date, ok bool) {
	if len(stages) == 0 {
		return recur.MinDate, recur.MaxDate, true
	}
	from, until = recur.MaxDate, recur.MinDate
	for _, g := range b.life.Groups {
		if g.Count(b.Horizon.Now()) == 0 {
			continue
		}
		for k := b.stretch(g); k < len(g.Stages); k++ {
			s := g.Stages[k]
			if s.Stage != "" && !plan.Lists(stages, s.Stage) {
				continue
			}
			ok = true
			if s.From <= b.Horizon.Now() {
				from = recur.MinDate
			}
			from = min(from, s.From)
			if k+1 == len(g.Stages) {
				until = recur.MaxDate
			} else {
				until = max(until, g.Stages[k+1].From-1)
			}
		}
	}
	return from, until, ok
}
