package plan

import (
	"strings"
	"testing"

	"vivary/schema"
	"vivary/schema/quantity"
)

// grown are the stages that live by themselves and must be cared for.
var grown = []string{"young", "juvenile", "subadult", "adult"}

// TestSpeciesFigures checks that no species, put together with its type, lacks a figure
// that everybody needs, for no stage, and that limits lie inside each other.
func TestSpeciesFigures(t *testing.T) {
	lib := NewLibrary()
	for _, name := range lib.SpeciesNames() {
		s := lib.Species(name)
		for _, stage := range grown {
			for _, f := range schema.Figures {
				// How small the young are is known for few species.
				needed := f.Required && (stage == "adult" || f != schema.FigureLength && f != schema.FigureMass)
				if needed && s.Figure(f, stage) == nil {
					t.Errorf("%s: no figure %q for stage %s", name, f.Name, stage)
				}
			}
			for _, n := range [][2]*schema.Figure{
				{schema.FigureTemperatureHard, schema.FigureTemperatureSoft}, {schema.FigureTemperatureSoft, schema.FigureTemperatureTarget},
				{schema.FigureTemperatureHard, schema.FigureNight}, {schema.FigureTemperatureHard, schema.FigureWinterRest},
				{schema.FigureTemperatureHard, schema.FigureWarmSpot}, {schema.FigureTemperatureSoft, schema.FigureAir},
				{schema.FigureHumidityHard, schema.FigureHumiditySoft}, {schema.FigureHumiditySoft, schema.FigureHumidityTarget},
			} {
				outer, inner := s.Figure(n[0], stage), s.Figure(n[1], stage)
				if outer != nil && inner != nil && !outer.Range.Encloses(inner.Range) {
					t.Errorf("%s: %s %s does not enclose %s %s", name, n[0].Name, outer.Value.V, n[1].Name, inner.Value.V)
				}
			}
		}
	}
}

// TestSpeciesEat: every species says what it lives on, and its sheet feeds prey to those
// that live on it and to no others.
func TestSpeciesEat(t *testing.T) {
	lib := NewLibrary()
	for _, name := range lib.SpeciesNames() {
		s, fed := lib.Species(name), false
		for _, f := range s.Feeding {
			fed = fed || len(f.Menu()) > 0
		}
		if s.Figure(schema.FigureEats, "") == nil || s.Preys() != fed {
			t.Errorf("%s: prey is a meal: %v, and it is fed some: %v", name, s.Preys(), fed)
		}
	}
}

// TestSpeciesCare checks that every stage has its needs, that the default care meets them
// in time, and that the default meals exist and suit the stage.
func TestSpeciesCare(t *testing.T) {
	lib := NewLibrary()
	for _, name := range lib.SpeciesNames() {
		s := lib.Species(name)
		for _, stage := range grown {
			needs := map[*schema.NeedName]*Need{}
			for _, n := range s.NeedsOf(stage) {
				needs[n.What] = n
			}
			if needs[schema.NeedLook] == nil || needs[schema.NeedFood] == nil || needs[schema.NeedWater] == nil && needs[schema.NeedMoisture] == nil {
				t.Errorf("%s: stage %s lacks a need", name, stage)
			}
			for what, need := range needs {
				if what == schema.NeedLeftovers {
					continue // each meal brings its own look for leftovers
				}
				if every := s.soonest(what, stage); every > need.Longest.V.Value {
					t.Errorf("%s: stage %s: need %q within %s is not met by default", name, stage, what.Name, need.Longest.V)
				}
			}
			s.mealsFit(t, lib, stage)
		}
	}
}

// soonest returns the shortest interval, in minutes, at which the default care meets a
// need.
func (s *SpeciesSheet) soonest(need *schema.NeedName, stage string) float64 {
	best := 1e9
	try := func(t Timing) {
		if len(t.Stages) > 0 && !Lists(t.Stages, stage) {
			return
		}
		// An interval is read as the like-named duration: a month is a mean one.
		text := t.Every.V.String()
		if text == "day" {
			text = "1 day"
		}
		if q, err := quantity.Parse(text, quantity.Duration); err == nil {
			best = min(best, q.Value)
		}
	}
	for _, c := range s.Care {
		if c.What() != nil && c.What().Needs == need {
			try(c.Timing)
		}
	}
	if need == schema.NeedFood {
		for _, f := range s.Feeding {
			try(f.Timing)
		}
	}
	return best
}

// mealsFit checks the default menu of a stage against the largest prey it may have.
func (s *SpeciesSheet) mealsFit(t *testing.T, lib *Library, stage string) {
	for _, m := range s.Feeding {
		if len(m.Stages) > 0 && !Lists(m.Stages, stage) {
			continue
		}
		for _, prey := range m.Menu() {
			feeder := lib.Feeder(prey.V.Feeder)
			if feeder == nil || feeder.Size(prey.V.Size) == nil {
				t.Errorf("%s: %s: no such prey: %s %s", s.Name.V, stage, prey.V.Feeder, prey.V.Size)
				continue
			}
			size := feeder.Size(prey.V.Size)
			for _, c := range []struct {
				of         quantity.Range
				own, share *schema.Figure
			}{
				{size.Mass.V, schema.FigureMass, schema.FigurePreyMassShare}, {size.Length.V, schema.FigureLength, schema.FigurePreyLengthShare},
			} {
				own, share := s.Figure(c.own, stage), s.Figure(c.share, stage)
				if own != nil && share != nil && c.of.High > own.Range.Low*share.Range.High/100*1.001 {
					t.Errorf("%s: %s: %s of %s %s, %s, is over %s of %s", s.Name.V, stage, c.own.Name, prey.V.Feeder, prey.V.Size, c.of, share.Value.V, own.Value.V)
				}
			}
		}
	}
}

// An unknown species of an unknown genus is answered by the command that begins a sheet and
// by the one that lists the care types: a list of two dozen is no answer.
func TestTypesForAnUnknownSpecies(t *testing.T) {
	_, found := load(t, map[string]string{"a.care.hcl": sound + "enclosure \"e\" {" + strings.Replace(box, "pandinus-imperator", "zzyzyx-nova", 1)})
	if len(found) != 1 || !strings.Contains(found[0].Write, "vivary start --sheet zzyzyx-nova") || !strings.Contains(found[0].Write, "vivary why types") || len(found[0].Write) > 160 {
		t.Errorf("%v", texts(found))
	}
}

// Every species has a humidity past which a plan is refused, wider than what is good for it
// and narrower than anything at all.
func TestHardHumidity(t *testing.T) {
	lib := NewLibrary()
	for _, name := range lib.SpeciesNames() {
		s := lib.Species(name)
		hard, soft, target := s.Figure(schema.FigureHumidityHard, ""), s.Figure(schema.FigureHumiditySoft, ""), s.Figure(schema.FigureHumidityTarget, "")
		switch {
		case hard == nil:
			t.Errorf("%s: no hard limit of humidity", name)
		case hard.Range.Low <= 0 && hard.Range.High >= 100:
			t.Errorf("%s bears any humidity", name)
		case soft != nil && !hard.Range.Encloses(soft.Range), target != nil && !hard.Range.Encloses(target.Range):
			t.Errorf("%s: hard %s does not hold soft and target", name, hard.Value.V)
		case s.Is(schema.FigureMoisture, "arid") && hard.Range.High > 90:
			t.Errorf("%s is of dry places, and bears %s", name, hard.Value.V)
		}
	}
}
