package plan

import (
	"slices"
	"strings"
	"testing"

	"vivary/schema"
)

// A sheet that is like another takes what is known of the way it lives, and nothing that
// only the species itself can state, nor a name.
func TestLent(t *testing.T) {
	c, found := load(t, map[string]string{"a.care.hcl": `collection "c" {
  time_zone = "Europe/London"
}

species "parabuthus-villosus" {
  latin = "Parabuthus villosus (Peters, 1862)"
  like  = "hadrurus-arizonensis"
}

species "small-one" {
  like = "hadrurus-arizonensis"
  figure "length" {
    value  = "3 to 4 cm"
    stages = ["adult"]
    source = ["own records"]
  }
}
`})
	if len(found) > 0 {
		t.Error(texts(found))
	}
	from, s := c.Library.Species("hadrurus-arizonensis"), c.Library.Species("parabuthus-villosus")
	if s.Shown() != "parabuthus-villosus" || s.Family.Set() || len(s.Also) > 0 || strings.Contains(s.Latin.V, "Hadrurus") {
		t.Errorf("it has a name of the other: %q, %q, %v", s.Shown(), s.Latin.V, s.Also)
	}
	for _, f := range s.Figures {
		if f.What.Own || f.OfType == "" && f.Of != "hadrurus-arizonensis" {
			t.Errorf("%s is lent, of %q", f.Name.V, f.Of)
		}
	}
	for _, f := range from.Figures {
		if f.What == schema.FigureGapMax && f.OfType != "" {
			continue // it follows from a size, and that of this one is not known
		}
		has := slices.ContainsFunc(s.Figures, func(x *Figure) bool { return x.What == f.What })
		if has == f.What.Own || f.OfType == "" && f.Of != "" {
			t.Errorf("%s: lent %t; its own sheet says it is of %q", f.Name.V, has, f.Of)
		}
	}
	if len(s.Needs) != len(from.Needs) || len(s.Care) != len(from.Care) || len(s.Feeding) != len(from.Feeding) || s.Needs[0].Of == "" {
		t.Errorf("needs, care or meals are not lent: %d, %d, %d", len(s.Needs), len(s.Care), len(s.Feeding))
	}
	if got := strings.Join(s.Unjudged(), ", "); got != "heat, company, size, venom, law" {
		t.Errorf("not judged: %s", got)
	}
	if u := from.Unknown(); len(u) > 0 {
		t.Errorf("of a sheet of ours it is not known: %v", u)
	}
	small := c.Library.Species("small-one")
	floor, large := small.Figure(schema.FigureFloorFirst, "adult"), from.Figure(schema.FigureFloorFirst, "adult")
	if floor == nil || floor.OfType == "" || floor.Range.Low > large.Range.Low/4 || small.Figure(schema.FigureSubstrateDepthMin, "").OfType == "" {
		t.Error("an animal of a third of the length has the box of the large one")
	}
	if s.Figure(schema.FigureFloorFirst, "adult") == nil {
		t.Error("where the length is not known the box is not lent")
	}
}

// A source that is no block is cited as it is written.
func TestCiteAsWritten(t *testing.T) {
	c, _ := load(t, map[string]string{"a.care.hcl": sound + `species "x" {
  latin   = "Hadrurus concolor Stahnke, 1969"
  type    = "desert-burrowing-scorpion"
  source  = ["breeder's sheet, May 2026", "K3"]
  quality = "keeper"
  length  = "9 to 10 cm"
}
`})
	f := c.Library.Species("x").Figure(schema.FigureLength, "adult")
	if got := c.Library.Cite(f.Cited); !strings.HasPrefix(got, "breeder's sheet, May 2026; Asian forest scorpion care") {
		t.Error(got)
	}
}

// What a sheet of the collection states for one instar leaves what is known of the others.
func TestOneInstar(t *testing.T) {
	c, _ := load(t, map[string]string{"a.care.hcl": sound + `species "mastigoproctus-giganteus" {
  source = ["own records"]
  figure "instar-length" {
    value  = "20 months"
    instar = 9
  }
}
`})
	known := NewLibrary().Species("mastigoproctus-giganteus")
	s := c.Library.Species("mastigoproctus-giganteus")
	if f := s.Instar(schema.FigureInstarLength, 9); f == nil || !f.Own {
		t.Errorf("its own: %+v", f)
	}
	n := 0
	known.Each(schema.FigureInstarLength, func(f *Figure) {
		n++
		if s.Instar(schema.FigureInstarLength, f.Instar.V) == nil {
			t.Errorf("instar %d is lost", f.Instar.V)
		}
	})
	if n == 0 {
		t.Error("the sheet has no instars any more: take another")
	}
}
