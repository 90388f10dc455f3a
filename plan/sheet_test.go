package plan

import (
	"strings"
	"testing"

	"vivary/schema"
)

// What is said of a stage goes before what is said of all; of an unknown stage the
// strictest holds, and what is said of one instar only never does.
func TestSheetByStage(t *testing.T) {
	const why = "\n    because = \"tried\"\n    source  = [\"us\"]\n    review  = \"2027-09-01\"\n  }\n"
	c, found := load(t, map[string]string{"a.care.hcl": sound + "species \"x\" {\n" +
		"  need \"water\" {\n    longest = \"2 days\"" + why +
		"  need \"water\" {\n    longest = \"4 days\"\n    stages = [\"adult\"]" + why +
		"  need \"water\" {\n    longest = \"1 day\"\n    stages = [\"young\"]" + why +
		"  figure \"instar-length\" {\n    value = \"30 days\"" + why +
		"  figure \"instar-length\" {\n    value = \"60 days\"\n    instar = 3" + why +
		"  figure \"mass\" {\n    value = \"9 g\"" + why +
		"  figure \"mass\" {\n    value = \"20 g\"\n    stages = [\"adult\"]" + why + "}\n"})
	if len(found) > 0 {
		t.Fatal(texts(found))
	}
	s := c.Library.Species("x")
	for stage, want := range map[string]string{"adult": "4 days", "young": "1 day", "juvenile": "2 days", "": "1 day"} {
		if n := s.NeedsOf(stage); len(n) != 1 || n[0].Longest.V.String() != want {
			t.Errorf("water for stage %q: every %s", stage, n[0].Longest.V)
		}
	}
	for stage, want := range map[string]string{"adult": "20 g", "young": "9 g", "": "9 g"} {
		if f := s.Figure(schema.FigureMass, stage); f == nil || f.Value.V != want {
			t.Errorf("mass for stage %q: %v", stage, f)
		}
	}
	if f := s.Figure(schema.FigureInstarLength, ""); f == nil || f.Value.V != "30 days" {
		t.Errorf("instar-length: %v", f)
	}
	if f := s.Instar(schema.FigureInstarLength, 3); f == nil || f.Value.V != "60 days" || s.Instar(schema.FigureInstarLength, 4) != nil {
		t.Errorf("instar-length of instar 3: %v", f)
	}
}

// A figure of the collection's own whose value cannot be read does not stand for
// one of 0: the built-in one holds.
func TestUnreadableFigure(t *testing.T) {
	c, found := load(t, map[string]string{"a.care.hcl": sound + `
species "pandinus-imperator" {
  figure "temperature-hard" {
    value   = "hot"
    because = "tried"
    source  = ["us"]
    review  = "2027-09-01"
  }

  figure "humidity-target" {
    value   = "70 to 85 %"
    because = "tried"
    source  = ["us"]
    review  = "2027-09-01"
  }
}

species "its-kin" {
  like = "pandinus-imperator"
}
`})
	s := c.Library.Species("pandinus-imperator")
	if f := s.Figure(schema.FigureTemperatureHard, ""); f == nil || f.Own || f.Range.High < 30 {
		t.Errorf("temperature-hard: %+v", f)
	}
	if f := s.Figure(schema.FigureHumidityTarget, ""); f == nil || !f.Own || f.Range.Low != 70 {
		t.Errorf("humidity-target: %+v", f)
	}
	if s := c.Library.Species("its-kin"); !s.Figure(schema.FigureHumidityTarget, "").Own || s.Figure(schema.FigureMoisture, "") == nil {
		t.Errorf("its-kin is not like it")
	}
	if len(found) != 1 || found[0].Rule.ID != "value" || !strings.HasPrefix(found[0].Write, "a temperature, such as") {
		t.Error(texts(found))
	}
}
