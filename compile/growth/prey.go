package growth

import (
	"vivary/compile/life"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/quantity"
)

// Misfit is an item of a menu that does not fit, or will not.
type Misfit struct {
	Due
	Group *life.Group
	Prey  plan.Written[plan.Prey]
	Stage string // in which it does not
	// Share is the figure that it is over, being too big; nil where it is too small.
	Share *plan.Figure
	// Least is the figure that it is under, being too small, and Usual what the sheet feeds
	// in that stage.
	Least *plan.Figure
	Usual plan.Prey
}

// misfit looks for the first item of the plan's own menu for a group that does not
// fit. The sheet's menus change with the stage by themselves.
func (w *world) misfit(i int) (m Misfit) {
	g := w.l.Groups[i]
	own := w.ownMenu(g)
	if own == nil {
		return m
	}
	var spare path
	p := w.path(i, &spare)
	if p.animals == 0 || p.stage == unknown || own.Off.V {
		return m
	}
	for s := max(p.stage, young); s < stages; s++ {
		due := p.enters[s]
		for i := 0; ; i++ {
			prey, ok := item(own, i)
			if !ok {
				break
			}
			x := Misfit{Due: due, Group: g, Prey: prey, Stage: schema.Stages[s].Name}
			if !own.Killed.V {
				x.Share = w.tooBig(p, s, prey.V)
			}
			if x.Share == nil {
				if x.Least = w.tooSmallFor(p, s, prey.V); x.Least == nil {
					continue
				}
				x.Usual = w.usual(s)
			}
			return x
		}
	}
	return m
}

func (w *world) ownMenu(g *life.Group) *plan.Feeding {
	for _, f := range w.l.Plan.Feeding {
		if f.Name.V == g.Animals.Name.V && (f.Prey.Set() || len(f.Rotate) > 0) {
			return f
		}
	}
	return nil
}

// item is one of Feeding.Menu, without making a list of it.
func item(f *plan.Feeding, i int) (plan.Written[plan.Prey], bool) {
	switch {
	case i < len(f.Rotate):
		return f.Rotate[i], true
	case len(f.Rotate) == 0 && i == 0:
		return f.Prey, f.Prey.Set()
	}
	return plan.Written[plan.Prey]{}, false
}

func (w *world) sizeOf(p plan.Prey) *plan.FeederSize {
	f := w.c.Library.Feeder(p.Feeder)
	if f == nil {
		return nil
	}
	return f.Size(p.Size)
}

// tooBig compares the largest of a size of prey with the smallest that the animals
// may be as they come into a stage.
func (w *world) tooBig(p *path, stage int, prey plan.Prey) *plan.Figure {
	z := w.sizeOf(prey)
	if z == nil {
		return nil
	}
	size := w.inStage(p, stage)
	over := func(share *plan.Figure, body float64, sheet *byStage, item plan.Written[quantity.Range]) *plan.Figure {
		if body == 0 && sheet.of[stage] != nil {
			body = sheet.of[stage].Range.Low
		}
		if share == nil || body == 0 || !item.Set() || item.V.High <= body*share.Range.High/100*(1+1e-9) {
			return nil
		}
		return share
	}
	if f := over(w.f.preyMass.at(stage), size.Mass.Low, &w.f.mass, z.Mass); f != nil {
		return f
	}
	return over(w.f.preyLength.at(stage), size.Length.Low, &w.f.length, z.Length)
}

// inStage is the size that animals may have as they come into a stage.
func (w *world) inStage(p *path, stage int) Size {
	instar := w.f.first[stage]
	if stage == p.stage && p.lo > 0 {
		instar = p.lo
	}
	return p.size(w.f, instar)
}

// tooSmallFor compares the largest of a size of prey with the smallest that the animals may
// be in a stage, and returns the figure that it is under, or nil.
func (w *world) tooSmallFor(p *path, stage int, prey plan.Prey) *plan.Figure {
	z, least := w.sizeOf(prey), w.f.preyLeast.at(stage)
	if z == nil || !z.Length.Set() || least == nil {
		return nil
	}
	body := w.inStage(p, stage).Length.Low
	if f := w.f.length.of[stage]; body == 0 && f != nil {
		body = f.Range.Low
	}
	if z.Length.V.High >= body*least.Range.Low/100*(1-1e-9) {
		return nil
	}
	return least
}

// usual is the first item that the sheet feeds in a stage.
func (w *world) usual(stage int) plan.Prey {
	for _, f := range w.f.sheet.Feeding {
		if plan.Lists(f.Stages, schema.Stages[stage].Name) {
			if prey, ok := item(f, 0); ok {
				return prey.V
			}
		}
	}
	return plan.Prey{}
}
