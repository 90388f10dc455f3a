package plan

import (
	"slices"
	"strings"
	"testing"

	"vivary/schema"
	"vivary/schema/quantity"
)

// These relations hold between the figures of lives, whatever their numbers, for every
// species put together with its type.

// eachSpecies calls check for every built-in species.
func eachSpecies(check func(*SpeciesSheet)) {
	lib := NewLibrary()
	for _, name := range lib.SpeciesNames() {
		check(lib.Species(name))
	}
}

// TestFasts checks that a fast is looked at before it presses, and presses before help
// is called for, for each stage; and that meals never pause for longer than the
// longest time between two offers.
func TestFasts(t *testing.T) {
	eachSpecies(func(s *SpeciesSheet) {
		for _, stage := range grown {
			s.ordered(t, stage, schema.FigureFastLook, schema.FigureFastAlarm, schema.FigureFastHelp)
			s.ordered(t, stage, schema.FigureFastTry, schema.FigureFastHelp)
			s.ordered(t, stage, schema.FigurePremoultLook, schema.FigurePremoultHelp)
			s.ordered(t, stage, schema.FigurePremoultTry, schema.FigurePremoultHelp)
			if usual, asked := s.Figure(schema.FigurePremoultFast, stage), s.Figure(schema.FigurePremoultLook, stage); usual != nil && asked != nil && asked.Range.High < usual.Range.Low {
				t.Errorf("%s: %s: asked after %s, a fast of %s is usual", s.Name.V, stage, asked.Value.V, usual.Value.V)
			}
			longest, needs := s.longest(schema.NeedFood, stage)
			if pause := s.Figure(schema.FigureRefusalPause, stage); needs && pause != nil && pause.Range.High > longest {
				t.Errorf("%s: %s: meals pause for %s, the longest time between two is shorter", s.Name.V, stage, pause.Value.V)
			}
			if settling := s.Figure(schema.FigureSettling, stage); needs && settling != nil && settling.Range.Low > longest {
				t.Errorf("%s: %s: the first meal comes after %s, the longest time between two is shorter", s.Name.V, stage, settling.Value.V)
			}
		}
	})
}

// TestYoungEatInTime checks the deadlines of broods. Unfed second instars of
// Rhopalurus rochai died on days 11 to 30 (Sarmento et al. 2008, J. Arachnol.
// 36:476-479), so that a scorpion's limit is 10 days, and no young that eats prey goes
// longer than 7 days without, but for the vinegaroons (common practice).
func TestYoungEatInTime(t *testing.T) {
	eachSpecies(func(s *SpeciesSheet) {
		slow := s.Family.V == "Thelyphonidae" || s.Type.V == "vinegaroon"
		s.ordered(t, "young", schema.FigureFirstKilled, schema.FigureFirstMeal)
		if meal := s.Figure(schema.FigureFirstMeal, "young"); meal != nil && meal.Range.High > 10*aDay && !slow {
			t.Errorf("%s: the first meal may be %s away", s.Name.V, meal.Value.V)
		}
		hunts := false
		for _, f := range s.Feeding {
			hunts = hunts || len(f.Stages) == 0 || Lists(f.Stages, "young")
		}
		if longest, ok := s.longest(schema.NeedFood, "young"); hunts && ok && longest > 7*aDay && !slow {
			t.Errorf("%s: young may go %v days without food", s.Name.V, longest/aDay)
		}
		if strings.Contains(s.Family.V, "Scorpion") || strings.Contains(s.Type.V, "scorpion") || s.Name.V == "hadrurus-arizonensis" {
			for _, f := range s.Feeding {
				if Lists(f.Stages, "young") && !f.Killed.V {
					t.Errorf("%s: young are given live prey", s.Name.V)
				}
			}
		}
	})
}

// TestCarrying checks that a female is held for gravid for as long as a birth is
// possible, and that the oldest scorpions known stay within it: 24 months in Pandinus
// imperator (G8, N5).
func TestCarrying(t *testing.T) {
	eachSpecies(func(s *SpeciesSheet) {
		if gestation := s.Figure(schema.FigureGestation, "adult"); gestation != nil {
			longest := s.Figure(schema.FigureGestationLongest, "adult")
			if longest == nil || longest.Range.High < gestation.Range.High {
				t.Errorf("%s: gestation %s, held for too short a time", s.Name.V, gestation.Value.V)
			}
		}
		s.ordered(t, "adult", schema.FigureSacDecide, schema.FigureSacTime)
	})
}

// TestRests checks that a species without a rest has no figures of one, and that one
// that may rest in the cold says how it gets there and back.
func TestRests(t *testing.T) {
	eachSpecies(func(s *SpeciesSheet) {
		rest := s.Figure(schema.FigureRest, "")
		if rest == nil {
			t.Errorf("%s: does not say whether it rests", s.Name.V)
			return
		}
		for _, f := range []*schema.Figure{schema.FigureWinterRest, schema.FigureRestLength, schema.FigureRestStep, schema.FigureRestFullHeat} {
			if rest.Value.V == "none" && s.Figure(f, "") != nil {
				t.Errorf("%s: takes no rest, and states %s", s.Name.V, f.Name)
			}
		}
		if s.Figure(schema.FigureRestLength, "") == nil {
			return
		}
		for _, f := range []*schema.Figure{schema.FigureWinterRest, schema.FigureRestStep, schema.FigureRestFullHeat, schema.FigureRestFirstMeal,
			schema.FigureRestFullMeals, schema.FigureRestWater, schema.FigureUnattendedRest} {
			if s.Figure(f, "") == nil {
				t.Errorf("%s: rests, and does not state %s", s.Name.V, f.Name)
			}
		}
	})
}

// TestStatesOfSheets checks that no sheet holds drinking water, and that its words can
// be read in front of a tank.
func TestStatesOfSheets(t *testing.T) {
	eachSpecies(func(s *SpeciesSheet) {
		for _, b := range s.States {
			water := slices.Contains(b.Rows, schema.RowWater)
			if water && (b.Manner.V == "held" || b.From.Set()) {
				t.Errorf("%s: %s holds drinking water", s.Name.V, b.Name.V)
			}
			if len(b.Words.V) > 60 || len(b.Rule.V) > 90 {
				t.Errorf("%s: %s is too long to be read in front of a tank", s.Name.V, b.Name.V)
			}
		}
	})
}

// aDay is a day in minutes, the unit of durations.
const aDay = 24 * 60.0

// ordered checks that of those figures that are stated none is longer than a later one.
func (s *SpeciesSheet) ordered(t *testing.T, stage string, figures ...*schema.Figure) {
	t.Helper()
	var last quantity.Range
	before := ""
	for _, what := range figures {
		if f := s.Figure(what, stage); f != nil {
			if f.Range.High < last.High {
				t.Errorf("%s: %s: %s is before %s", s.Name.V, stage, what.Name, before)
			}
			last, before = f.Range, what.Name
		}
	}
}

// longest returns the longest time between two occasions of a need, in minutes.
func (s *SpeciesSheet) longest(need *schema.NeedName, stage string) (float64, bool) {
	for _, n := range s.NeedsOf(stage) {
		if n.What == need {
			return n.Longest.V.Value, true
		}
	}
	return 0, false
}
