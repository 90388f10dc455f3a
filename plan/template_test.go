package plan

import "testing"

// A template fills in what an enclosure does not say: whole blocks, and single
// attributes of blocks of the same name. It stays as it was for the next.
func TestTemplate(t *testing.T) {
	c, found := load(t, map[string]string{"a.care.hcl": sound + `
template "tub" {
  species = "hadrurus-arizonensis"

  housing {
    kind   = "tub"
    inside = "40 x 30 x 30 cm"
    lid    = "solid, latched"
    depth  = "16 cm"
  }

  care "water" {
    every = "2 days"
  }

  care "look" {
    every = "2 days"
    round = "r"
  }
}

round "r" {
  at = "19:30"
}

enclosure "tub-1" {
  template = "tub"

  animals "one" {
    count = 1
  }
}

enclosure "tub-2" {
  template = "tub"

  housing {
    depth = "20 cm"
  }

  animals "one" {
    count = 1
  }

  care "water" {
    amount = "20 ml"
  }

  care "mist" {
    every = "30 days"
  }

  care "look" {
    on = ["tue"]
  }
}
`})
	if len(found) > 0 {
		t.Fatal(texts(found))
	}
	one, two := c.Enclosure("tub-1"), c.Enclosure("tub-2")
	if d := one.Housing.Depth.V.String(); d != "16 cm" {
		t.Errorf("tub-1 is %s deep", d)
	}
	if two.Housing.Depth.V.String() != "20 cm" || two.Housing.Inside.V.String() != "40 x 30 x 30 cm" {
		t.Errorf("tub-2: %v", two.Housing)
	}
	if look := two.Care[2]; len(look.On) != 1 || look.Every.Set() || !Lists(look.Round, "r") {
		t.Errorf("what says itself how often takes that from nowhere else: %+v", look)
	}
	if len(one.Care) != 2 || len(two.Care) != 3 || two.Care[0].Every.V.String() != "2 days" || !two.Care[0].Amount.Set() {
		t.Errorf("care: %d and %d", len(one.Care), len(two.Care))
	}
}
