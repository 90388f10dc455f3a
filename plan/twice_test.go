package plan

import (
	"slices"
	"strings"
	"testing"

	"vivary/schema"
)

// A sheet of ours does not repeat, as common practice without a source, what its type says
// word for word: a correction to the type would not reach it. What judges by two values in
// the type may stand: said by the species it refuses, where the type only cautions.
func TestNothingIsSaidTwice(t *testing.T) {
	lib := NewLibrary()
	for _, name := range lib.SpeciesNames() {
		own := builtIn().sheet(name)
		common := lib.Common(own)
		if common == nil {
			t.Errorf("%s has no type", name)
			continue
		}
		for _, f := range own.Figures {
			if f.What.Own || f.Instar.Set() || f.Disputed.Set() || !practised(f.Cited) {
				continue
			}
			if sameInAll(f.Stages, func(stage string) bool {
				of := common.Figure(f.What, stage)
				return of != nil && of.Beyond.High == 0 && of.Value.V == f.Value.V && (f.Note.V == "" || f.Note.V == of.Note.V) && practised(of.Cited) && !of.Disputed.Set()
			}) {
				t.Errorf("%s: %s %s is that of its type", name, f.Name.V, f.Value.V)
			}
		}
		for _, c := range own.Care {
			if slices.ContainsFunc(common.Care, func(of *Care) bool {
				return of.Name.V == c.Name.V && stagesKey(of.Stages) == stagesKey(c.Stages) && of.Every.V == c.Every.V && of.Task.V == c.Task.V && of.KindName() == c.KindName() && !c.Off.V && len(c.Source) == 0
			}) {
				t.Errorf("%s: care %s is that of its type", name, c.Name.V)
			}
		}
		for _, m := range own.Feeding {
			if slices.ContainsFunc(common.Feeding, func(of *Feeding) bool {
				return of.Name.V == m.Name.V && stagesKey(of.Stages) == stagesKey(m.Stages) && of.Every.V == m.Every.V && of.PerAnimal.V == m.PerAnimal.V &&
					slices.EqualFunc(of.Menu(), m.Menu(), func(a, b Written[Prey]) bool { return a.V == b.V }) && of.Killed.V == m.Killed.V && of.Dusted.V == m.Dusted.V && of.GutLoad.V == m.GutLoad.V && len(m.Source) == 0
			}) {
				t.Errorf("%s: meals of %s are those of its type", name, m.Name.V)
			}
		}
	}
}

func practised(c Cited) bool {
	return c.Quality.V == "practice" && strings.Join(spelledOut(c.Source), "") == "practice"
}

func sameInAll(stages []Written[string], same func(string) bool) bool {
	names := spelledOut(stages)
	if len(names) == 0 {
		for _, s := range schema.Stages {
			names = append(names, s.Name)
		}
	}
	return !slices.ContainsFunc(names, func(stage string) bool { return !same(stage) })
}
