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
	// Usual is what the sheet feeds in that stage, where the item is too small.
	Usual plan.Prey
}

// least is what an item must weigh at the least, as a share of the lightest that
// the sheet feeds in a stage (judgement): half a cricket's weight is another size.
const least = 0.5

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
				var small bool
				if x.Usual, small = w.tooSmallFor(s, prey.V); !small {
					continue
				}
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
	instar := w.f.first[stage]
	if stage == p.stage && p.lo > 0 {
		instar = p.lo
	}
	size := p.size(w.f, instar)
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

// tooSmallFor compares an item with the lightest that the sheet feeds in a stage.
func (w *world) tooSmallFor(stage int, prey plan.Prey) (usual plan.Prey, small bool) {
	z := w.sizeOf(prey)
	if z == nil || !z.Mass.Set() {
		return usual, false
	}
	lightest := 0.0
	for _, f := range w.f.sheet.Feeding {
		if !plan.Lists(f.Stages, schema.Stages[stage].Name) {
			continue
		}
		for i := 0; ; i++ {
			prey, ok := item(f, i)
			if !ok {
				break
			}
			if u := w.sizeOf(prey.V); u != nil && u.Mass.Set() && (lightest == 0 || u.Mass.V.Low < lightest) {
				usual, lightest = prey.V, u.Mass.V.Low
			}
		}
	}
	return usual, z.Mass.V.High < least*lightest
}
