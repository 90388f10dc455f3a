package compile_test

import (
	"strings"
	"testing"
)

// A room is what an enclosure is like that nothing heats: too cold all the year is refused,
// for the greater part of the room's range it is cautioned, and ordinary rooms pass.
func TestUnheated(t *testing.T) {
	for _, c := range []struct{ species, room, want string }{
		{"eublepharis-macularius", "15 to 17 C", "error"},
		{"eublepharis-macularius", "16 to 20 C", "error"},
		{"eublepharis-macularius", "22 to 26 C", "error"}, // it digests on a warm surface
		{"theraphosa-blondi", "18.9 to 21 C", "caution"},
		{"brachypelma-hamorii", "20 to 24.4 C", ""},
		{"pandinus-imperator", "30 to 34 C", "caution"},
		{"heterometrus-silenus", "16 to 18 C", "error"},
		{"heterometrus-silenus", "23 to 26 C", ""},
		{"pandinus-imperator", "16 to 20 C", "error"},
		{"pandinus-imperator", "18 to 22 C", "caution"},
		{"pandinus-imperator", "20 to 24 C", ""},
		{"grammostola-pulchra", "29 to 31 C", "caution"},
		{"grammostola-pulchra", "20 to 24 C", ""},
		{"correlophus-ciliatus", "28 to 29 C", "error"},
		{"hymenopus-coronatus", "18 to 22 C", "caution"},
		{"porcellio-scaber", "18 to 22 C", ""},
	} {
		text := setupHead + `room "here" {
  temperature = "` + c.room + `"
}
enclosure "box" {
  species = "` + c.species + `"
  room    = "here"
  housing {
    inside  = "60 x 45 x 45 cm"
    lid     = "solid, latched"
    vents   = "cross"
    depth   = "18 cm"
    hides   = 1
    perches = true
  }
  animals "one" {
    count  = 1
    stage  = "adult"
    origin = "captive bred"
  }
}
`
		if got := worst(on(t, "2027-03-02", text, ""), "unheated"); got != c.want {
			t.Errorf("%s at %s: %q, want %q", c.species, c.room, got, c.want)
		}
		lamp := "  climate {\n    heater \"lamp\" {\n      power = \"13 W\"\n      place = \"above\"\n      uv = true\n    }\n  }\n  animals"
		if got := worst(on(t, "2027-03-02", strings.Replace(text, "  animals", lamp, 1), ""), "unheated"); got != c.want {
			t.Errorf("%s at %s beneath a lamp that hardly warms: %q, want %q", c.species, c.room, got, c.want)
		}
		heated := strings.Replace(text, "  animals", "  climate {\n    heater \"mat\" {\n      power = \"25 W\"\n      size  = \"28 x 43 cm\"\n      place = \"side\"\n      thermostat = \"26 C\"\n    }\n  }\n  animals", 1)
		if got := worst(on(t, "2027-03-02", heated, ""), "unheated"); got != "" {
			t.Errorf("%s with a heater: %q", c.species, got)
		}
	}
}
