package schema_test

import (
	"strings"
	"testing"

	"vivary/schema"
	"vivary/schema/quantity"
)

// These relations hold between the figures of lives, whatever their numbers.

// TestFasts checks that a fast is looked at before it presses, and presses before help
// is called for, for each stage; and that meals never pause for longer than the
// longest time between two offers.
func TestFasts(t *testing.T) {
	for _, s := range sheets(t, "species") {
		for _, stage := range grown {
			s.ordered(t, stage, "fast-look", "fast-alarm", "fast-help")
			s.ordered(t, stage, "fast-try", "fast-help")
			s.ordered(t, stage, "premoult-look", "premoult-help")
			s.ordered(t, stage, "premoult-try", "premoult-help")
			if usual, ok := s.span("premoult-fast", stage); ok {
				if asked, ok := s.span("premoult-look", stage); ok && asked.High < usual.Low {
					t.Errorf("%s: %s: asked after %v, a fast of %v is usual", s.at, stage, asked, usual)
				}
			}
			pause, ok := s.span("refusal-pause", stage)
			if longest, needs := s.longest(t, "food", stage); ok && needs && pause.High > longest {
				t.Errorf("%s: %s: meals pause for %v, the longest time between two is shorter", s.at, stage, pause)
			}
			settling, ok := s.span("settling", stage)
			if longest, needs := s.longest(t, "food", stage); ok && needs && settling.Low > longest {
				t.Errorf("%s: %s: the first meal comes after %v, the longest time between two is shorter", s.at, stage, settling)
			}
		}
	}
}

// TestYoungEatInTime checks the deadlines of broods. Unfed second instars of
// Rhopalurus rochai died on days 11 to 30 (Sarmento et al. 2008, J. Arachnol.
// 36:476-479), so that a scorpion's limit is 10 days, and no young that eats prey goes
// longer than 7 days without, but for the vinegaroon (common practice).
func TestYoungEatInTime(t *testing.T) {
	for _, s := range sheets(t, "species") {
		s.ordered(t, "young", "first-killed", "first-meal")
		if meal, ok := s.span("first-meal", "young"); ok && meal.High > 10*day && s.label != "mastigoproctus-giganteus" {
			t.Errorf("%s: the first meal may be %v away", s.at, meal)
		}
		hunts := false
		for _, b := range s.inner {
			hunts = hunts || b.kind == "feeding" && b.holds("young")
		}
		if longest, ok := s.longest(t, "food", "young"); hunts && ok && longest > 7*day && s.label != "mastigoproctus-giganteus" {
			t.Errorf("%s: young may go %v days without food", s.at, longest/day)
		}
		if strings.Contains(s.text("family"), "Scorpion") || s.label == "hadrurus-arizonensis" {
			for _, b := range s.inner {
				if b.kind == "feeding" && b.holds("young") && b.text("killed") != "true" {
					t.Errorf("%s: young are given live prey", b.at)
				}
			}
		}
	}
}

// TestCarrying checks that a female is held for gravid for as long as a birth is
// possible, and that the oldest scorpions known stay within it: 24 months in Pandinus
// imperator (G8, N5).
func TestCarrying(t *testing.T) {
	for _, s := range sheets(t, "species") {
		if gestation, ok := s.span("gestation", "adult"); ok {
			longest, stated := s.span("gestation-longest", "adult")
			if !stated || longest.High < gestation.High {
				t.Errorf("%s: gestation %v, held for %v", s.at, gestation, longest)
			}
		}
		s.ordered(t, "adult", "sac-decide", "sac-time")
	}
}

// TestRests checks that a species without a rest has no figures of one, and that one
// that may rest in the cold says how it gets there and back.
func TestRests(t *testing.T) {
	for _, s := range sheets(t, "species") {
		rest := s.figures("rest", "")
		if len(rest) != 1 {
			t.Errorf("%s: does not say whether it rests", s.at)
			continue
		}
		word := rest[0].text("value")
		for _, f := range []string{"winter-rest", "rest-length", "rest-step", "rest-full-heat"} {
			if word == "none" && len(s.figures(f, "")) > 0 {
				t.Errorf("%s: takes no rest, and states %s", s.at, f)
			}
		}
		if _, long := s.span("rest-length", ""); long {
			for _, f := range []string{"winter-rest", "rest-step", "rest-full-heat", "rest-first-meal", "rest-full-meals", "rest-water", "unattended-rest"} {
				if len(s.figures(f, "")) != 1 {
					t.Errorf("%s: rests, and does not state %s", s.at, f)
				}
			}
		}
	}
}

// TestStatesOfSheets checks that no sheet holds drinking water, and that its words can
// be read in front of a tank.
func TestStatesOfSheets(t *testing.T) {
	for _, s := range sheets(t, "species") {
		for _, b := range s.inner {
			if b.kind != "state" {
				continue
			}
			water := strings.Contains(b.text("care"), "water") || b.text("care") == schema.AllRows
			if water && (b.text("manner") == "held" || b.attrs["from"] != nil) {
				t.Errorf("%s: holds drinking water", b.at)
			}
			if len(b.text("words")) > 60 || len(b.text("rule")) > 90 {
				t.Errorf("%s: too long to be read in front of a tank", b.at)
			}
		}
	}
}

// day is a day in minutes, the unit of durations.
const day = 24 * 60.0

// ordered checks that of those figures that are stated none is longer than a later one.
func (b *block) ordered(t *testing.T, stage string, names ...string) {
	t.Helper()
	last, before := 0.0, ""
	for _, name := range names {
		if r, ok := b.span(name, stage); ok {
			if r.High < last {
				t.Errorf("%s: %s: %s is before %s", b.at, stage, name, before)
			}
			last, before = r.High, name
		}
	}
}

// longest returns the longest time between two occasions of a need, in minutes.
func (b *block) longest(t *testing.T, need, stage string) (float64, bool) {
	t.Helper()
	for _, n := range b.inner {
		if n.kind == "need" && n.label == need && n.holds(stage) {
			q, err := quantity.Parse(n.text("longest"), quantity.Duration)
			if err != nil {
				t.Fatal(err)
			}
			return q.Value, true
		}
	}
	return 0, false
}
