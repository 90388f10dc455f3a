package plan

import (
	"math"
	"strings"
	"testing"

	"vivary/schema"
	"vivary/schema/quantity"
)

// Every built-in type reads without a word.
func TestBuiltInTypes(t *testing.T) {
	for name, file := range builtIn().types {
		for _, f := range file().found {
			t.Errorf("%s: %s %s", name, f.Text, f.Write)
		}
		if x := builtIn().typeSheet(name); x.Name.V != name {
			t.Errorf("%s is called %s", name, x.Name.V)
		} else if x.In.Set() && builtIn().typeSheet(x.In.V) == nil {
			t.Errorf("%s is of %s, which is none", name, x.In.V)
		}
	}
}

// A species of a type has what suits every member, at its own size, and is told of what
// is wrong for every member at the end of its sizes that asks for less.
func TestTyped(t *testing.T) {
	c, found := load(t, map[string]string{"a.care.hcl": `collection "c" {
  time_zone = "Europe/London"
}

species "parabuthus-villosus" {
  latin   = "Parabuthus villosus (Peters, 1862)"
  type    = "desert-burrowing-scorpion"
  source  = ["a breeder's sheet"]
  quality = "keeper"
  seen    = "2026-10-01"
  length  = "9 to 15 cm"
}

species "scorpio-fuscus" {
  latin = "Scorpio fuscus (Ehrenberg, 1829)"
  type  = "desert-burrowing-scorpion"
}
`})
	if len(found) > 0 {
		t.Error(texts(found))
	}
	s := c.Library.Species("parabuthus-villosus")
	floor := s.Figure(schema.FigureFloorFirst, "adult")
	if floor == nil || floor.Range.Low != 6*15*15 || floor.Beyond.Low != 3*9*9 || floor.Value.V != "3 x 2 length: 1350 cm2" {
		t.Errorf("floor: %+v", floor)
	}
	if young := s.Figure(schema.FigureFloorFirst, "young"); young == nil || young.Range.Low >= floor.Beyond.Low {
		t.Errorf("floor of young: %+v", young)
	}
	if depth := s.Figure(schema.FigureSubstrateDepthMin, ""); depth == nil || depth.Range.Low != 150 || depth.OfType == "" {
		t.Errorf("depth: %+v", depth)
	}
	if gap := s.Figure(schema.FigureGapMax, "young"); gap == nil || gap.Range.High > 0.04*0.3*90+0.01 || gap.Beyond.High < 0.08*0.38*150-0.01 {
		t.Errorf("gap: %+v", gap)
	}
	water := func(name string) string {
		for _, n := range c.Library.Species(name).NeedsOf("adult") {
			if n.Name.V == "water" {
				return n.Longest.V.String() + " of " + n.OfType
			}
		}
		return ""
	}
	for name, want := range map[string]string{
		"parabuthus-villosus": "7 days of burrowing desert scorpions",
		"scorpio-fuscus":      "3 days of burrowing desert scorpions of the genus Scorpio",
	} {
		if got := water(name); got != want {
			t.Errorf("%s: water %s", name, got)
		}
	}
	if c.Library.Species("scorpio-fuscus").Figure(schema.FigureFloorFirst, "adult") != nil {
		t.Error("the floor of an animal of unknown size is known")
	}
}

// asksMore are figures of a species that ask for much more than suits every other member of
// its type, with the reason why the type stays as it is.
var asksMore = map[string]string{
	"coleonyx-variegatus floor-first":       "practice for one that runs; the type has an official formula (G6)",
	"dynastes-hercules substrate-depth-min": "its larva is the largest there is",
	"hymenopus-coronatus height-min":        "it sits on branches with room about it; twice the type's",
	"tapinauchenius-plumipes height-min":    "it runs and jumps; the type has two leg spans",
	"phyllocrania-paradoxa gap-max":         "flies are its food, and pass wider meshes",
}

// What suits every member suits those of ours, and what is wrong for every member is stated
// by none of them: each figure of a sheet that was written from sources is set beside what
// its type says for an animal of that size. Where they disagree the type is wrong.
func TestSheetsBesideTheirTypes(t *testing.T) {
	lib := NewLibrary()
	compared := 0
	for _, name := range lib.SpeciesNames() {
		own := builtIn().sheet(name)
		typed := lib.Common(own)
		for _, f := range own.Figures {
			stage := ""
			if len(f.Stages) > 0 {
				stage = f.Stages[len(f.Stages)-1].V // the largest
			} else if f.What.ByStage || f.What.Sized {
				stage = "adult" // what is stated for all is for the grown
			}
			of := typed.Figure(f.What, stage)
			if of == nil || of.Beyond.High == 0 || of.Of == "" {
				continue
			}
			compared++
			most := f.What.AtMost()
			if most && f.Range.High > of.Beyond.High*1.001 || !most && f.Range.Low < of.Beyond.Low*0.999 {
				t.Errorf("%s: %s (%s) is %s, and wrong for any: %s", name, f.Name.V, stage, f.Value.V, of.Beyond)
			}
			far := 0.66
			if f.What == schema.FigureGapMax {
				far = 0.36 // all widths are precautions, of whoever wrote the page
			}
			if asksMore[name+" "+f.Name.V] == "" && (most && f.Range.High < of.Range.High*far || !most && f.Range.Low > of.Range.Low*1.5) {
				t.Errorf("%s: %s (%s) is %s, and %s suits every one", name, f.Name.V, stage, f.Value.V, of.Range)
			}
		}
		for _, stage := range []string{"young", "juvenile", "adult"} {
			for _, n := range own.NeedsOf(stage) {
				for _, of := range typed.NeedsOf(stage) {
					if of.What != n.What {
						continue
					}
					compared++
					if of.Wrong.Set() && n.Longest.V.Value > of.Wrong.V.Value {
						t.Errorf("%s, %s: %s each %s, and %s are wrong for any", name, stage, n.Name.V, n.Longest.V, of.Wrong.V)
					}
					if of.Wrong.Set() && n.Longest.V.Value < of.Longest.V.Value*0.66 {
						t.Errorf("%s, %s: %s each %s, and %s suit every one", name, stage, n.Name.V, n.Longest.V, of.Longest.V)
					}
				}
			}
		}
		hard, of := own.Figure(schema.FigureTemperatureHard, ""), typed.Figure(schema.FigureTemperatureHard, "")
		if of != nil && hard != nil && !of.Range.Encloses(hard.Range) {
			t.Errorf("%s bears %s, and wrong for any is what lies outside %s", name, hard.Value.V, of.Value.V)
		}
		wet, of := own.Figure(schema.FigureHumiditySoft, ""), typed.Figure(schema.FigureHumidityHard, "")
		if of != nil && wet != nil && !of.Range.Encloses(wet.Range) {
			t.Errorf("%s is kept at %s, and wrong for any is what lies outside %s", name, wet.Value.V, of.Value.V)
		}
	}
	if compared < 500 {
		t.Errorf("only %d figures were compared", compared)
	}
}

// A type of the collection's own may stand on a built-in one, and on no other thing.
func TestOwnType(t *testing.T) {
	text := `collection "c" {
  time_zone = "Europe/London"
}

type "ours" {
  title  = "those of our cellar"
  of     = "OF"
  source = ["own records"]
  need "water" {
    longest = "4 days"
    wrong   = "10 days"
  }
}

species "x" {
  latin  = "X y"
  type   = "ours"
  source = ["own records"]
  length = "9 to 10 cm"
}
`
	c, found := load(t, map[string]string{"a.care.hcl": strings.Replace(text, "OF", "desert-burrowing-scorpion", 1)})
	if len(found) > 0 {
		t.Error(texts(found))
	}
	s := c.Library.Species("x")
	if f := s.Figure(schema.FigureFloorFirst, "adult"); f == nil || f.OfType != "burrowing desert scorpions" {
		t.Errorf("floor: %+v", f)
	}
	for _, n := range s.NeedsOf("adult") {
		if n.Name.V == "water" && (n.OfType != "those of our cellar" || n.Longest.V.String() != "4 days") {
			t.Errorf("water: %s of %s", n.Longest.V, n.OfType)
		}
	}
	for _, of := range []string{"ours", "nothing"} { // a ring is taken once
		_, found := load(t, map[string]string{"a.care.hcl": strings.Replace(text, "OF", of, 1)})
		if (len(found) > 0) != (of == "nothing") {
			t.Errorf("of %s: %v", of, texts(found))
		}
	}
}

// A type says how long its grown members are. It is what the library has of them.
func TestGrownMembers(t *testing.T) {
	lib := NewLibrary()
	for _, name := range lib.TypeNames() {
		kind := lib.Type(name)
		var all quantity.Range
		for _, n := range lib.SpeciesNames() {
			s := lib.Species(n)
			if s.Type.V != name {
				continue
			}
			long := s.Figure(schema.FigureLength, "adult").Range
			if all.High == 0 {
				all = long
			}
			all.Low, all.High = min(all.Low, long.Low), max(all.High, long.High)
		}
		if got := kind.Grown.V; kind.Grown.Set() != (all.High > 0) || math.Abs(got.Low-all.Low) > 0.01 || math.Abs(got.High-all.High) > 0.01 {
			t.Errorf("%s: grown = %q, and its members have %s", name, kind.Grown.V, all)
		}
	}
}

// What follows from size is sensible for the smallest and for the largest member that is
// known of each type: a box that fits on a shelf and that the animal can turn in, and what
// is wrong for any asks for less than what suits all.
func TestSizesAtBothEnds(t *testing.T) {
	lib := NewLibrary()
	bounds := map[*schema.Figure][2]float64{ // cm2, mm
		schema.FigureFloorFirst: {2, 14000}, schema.FigureHeightMin: {15, 1500}, schema.FigureSubstrateDepthMin: {0, 600},
		schema.FigureGapMax: {0.1, 40}, schema.FigureFallMax: {20, 600}, schema.FigureLength: {1, 300}, schema.FigureSpan: {4, 600},
	}
	looked := 0
	for _, name := range lib.TypeNames() {
		kind := lib.Type(name)
		if !kind.Grown.Set() {
			continue
		}
		for _, long := range []float64{kind.Grown.V.Low, kind.Grown.V.High} {
			size := &Figure{Head: Head{Name: wrote("length", kind.At)}, What: schema.FigureLength, Stages: []Written[string]{{V: "adult"}}, Range: quantity.Range{Low: long, High: long, Unit: quantity.Centimetre}}
			own := &SpeciesSheet{Figures: []*Figure{size}}
			own.Type.V = name
			s := lib.Common(own)
			for _, stage := range []string{"young", "juvenile", "subadult", "adult"} {
				for what, b := range bounds {
					f := s.Figure(what, stage)
					if f == nil {
						continue
					}
					looked++
					if f.Range.High < b[0] && f.Range.High != 0 || f.Range.Low > b[1] {
						t.Errorf("%s of %g mm, %s: %s is %s", name, long, stage, what.Name, f.Range)
					}
					if f.Beyond.High > 0 && (what.Most && f.Beyond.High < f.Range.High || !what.Most && f.Beyond.Low > f.Range.Low) {
						t.Errorf("%s of %g mm, %s: %s of %s suits all, and %s is wrong for any", name, long, stage, what.Name, f.Range, f.Beyond)
					}
				}
			}
		}
	}
	if looked < 300 {
		t.Errorf("%d figures were looked at", looked)
	}
}
