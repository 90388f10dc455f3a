package plan

import (
	"testing"

	"vivary/schema/quantity"
)

// Two enclosures are made from the same only where everything is.
func TestSameAs(t *testing.T) {
	block, template, sheet, room := &Enclosure{}, &Template{}, &SpeciesSheet{}, &Room{}
	one := Enclosure{block: block, template: template, Sheet: sheet, Place: room}
	two := one
	if !one.SameAs(&two) || !one.SameAs(&one) {
		t.Error("the same is another")
	}
	for name, other := range map[string]*Enclosure{
		"block":    {block: &Enclosure{}, template: template, Sheet: sheet, Place: room},
		"template": {block: block, Sheet: sheet, Place: room},
		"sheet":    {block: block, template: template, Place: room},
		"room":     {block: block, template: template, Sheet: sheet},
		"units":    {block: block, template: template, Sheet: sheet, Place: room, Units: quantity.Customary},
		"none":     nil,
	} {
		if one.SameAs(other) || other.SameAs(&one) {
			t.Errorf("another %s, and it is the same", name)
		}
	}
	if (&Enclosure{}).SameAs(&Enclosure{}) {
		t.Error("two that are made from nothing are the same")
	}
}

func TestAnEmptyTitleIsNone(t *testing.T) {
	written := func(s string) (w Written[string]) {
		w.V = s
		w.At.File, w.At.Start, w.At.End = 1, 1, 2
		return w
	}
	for _, c := range []struct {
		title Written[string]
		want  string
	}{
		{Written[string]{}, "Back shelf"},
		{written(""), "Back shelf"},
		{written("Behind"), "Behind"},
	} {
		if got := title(c.title, "back-shelf"); got != c.want {
			t.Errorf("%q is shown as %q", c.title.V, got)
		}
	}
}
