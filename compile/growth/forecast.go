package growth

import "vivary/compile/life"

// Step is one instar of a forecast.
type Step struct {
	Instar int
	Stage  string
	Size
	Due Due // when all the group is in it
}

// Forecast says how the animals of a group will grow, from the instar they are in
// until they are adult. It is false for adults, for animals of which nobody knows
// the stage, and where neither the species nor its kin has a factor. Without a
// count of instars there are no steps.
func (r *Report) Forecast(g *life.Group) (Factor, []Step, bool) {
	var f figures
	f.read(r.Life.Plan.Sheet)
	growth, ok := f.growth()
	p := pathOf(&f, g, r.Today)
	if !ok || p.animals == 0 || p.stage == adult || p.stage == unknown {
		return growth, nil, false
	}
	var steps []Step
	for i := p.lo; i > 0 && i <= f.first[adult]; i++ {
		steps = append(steps, Step{i, f.sheet.StageOf(i), p.size(&f, i), p.when(&f, i)})
	}
	return growth, steps, true
}

// when is reach, or what is known of the stage that begins with the instar.
func (p *path) when(f *figures, instar int) Due {
	if s := stageOf(f.sheet.StageOf(instar)); s != unknown && f.first[s] == instar {
		return p.enter(f, s)
	}
	return p.reach(f, instar)
}
