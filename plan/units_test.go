package plan

import (
	"strings"
	"testing"

	"vivary/schema/quantity"
)

// A collection is told in the units that it writes most, each kind of value by itself; of
// what it writes nothing, as people do where it stands. What a sheet of its own repeats from
// a source does not count.
func TestUnits(t *testing.T) {
	const (
		f, in, floz, oz = quantity.Fahrenheit, quantity.Inch, quantity.FluidOunce, quantity.Ounce
		c, cm, ml, g    = quantity.Celsius, quantity.Centimetre, quantity.Millilitre, quantity.Gram
	)
	us := quantity.Units{Temperature: f, Length: in, Volume: floz, Mass: oz}
	sheet := "species \"pandinus-imperator\" {\n  figure \"length\" {\n    value = \"6 in\"\n    source = [\"x\"]\n    because = \"x\"\n    review = \"2030-01-01\"\n  }\n}\n"
	box := func(inside string) string {
		return "enclosure \"b\" {\n  species = \"pandinus-imperator\"\n  housing {\n    inside = \"" + inside + "\"\n    lid = \"solid\"\n  }\n  animals \"a\" {\n    count = 1\n  }\n}\n"
	}
	for name, x := range map[string]struct {
		zone, text string
		want       quantity.Units
		says       string
	}{
		"nothing":                  {"Europe/London", "", quantity.Metric, ""},
		"nothing, in Denver":       {"America/Denver", "", quantity.Customary, ""},
		"nothing, in Toronto":      {"America/Toronto", "", quantity.Metric, ""},
		"degrees":                  {"Europe/London", "room \"r\" {\n  temperature = \"70 to 75 F\"\n}\n", us, ""},
		"inches":                   {"Europe/London", box("24 x 12 x 12 in"), us, ""},
		"inches in Denver":         {"America/Denver", box("24 x 12 x 12 in"), quantity.Customary, ""},
		"centimetres in Denver":    {"America/Denver", box("24 x 12 x 12 cm"), quantity.Units{Temperature: c, Length: cm, Volume: ml, Mass: g, TwelveHours: true}, ""},
		"degrees C in Denver":      {"America/Denver", "room \"r\" {\n  temperature = \"20 C\"\n}\n", quantity.Units{Temperature: c, Length: cm, Volume: ml, Mass: g, TwelveHours: true}, ""},
		"most":                     {"Europe/London", "room \"r\" {\n  temperature = \"70 F\"\n  winter = \"20 C\"\n  summer = \"24 C\"\n}\n", quantity.Metric, ""},
		"as many":                  {"Europe/London", "room \"r\" {\n  winter = \"70 F\"\n  summer = \"24 C\"\n}\n", quantity.Metric, ""},
		"as many in Denver":        {"America/Denver", "room \"r\" {\n  winter = \"70 F\"\n  summer = \"24 C\"\n}\n", quantity.Customary, ""},
		"a sheet counts for none":  {"Europe/London", sheet, quantity.Metric, ""},
		"a day of 24 hours":        {"America/Denver", "round \"e\" {\n  at = \"19:30\"\n}\n", us, ""},
		"watts say nothing":        {"Europe/London", "template \"t\" {\n  climate {\n    heater \"mat\" {\n      power = \"20 W\"\n    }\n  }\n}\n", quantity.Metric, ""},
		"a heater's face":          {"Europe/London", "template \"t\" {\n  climate {\n    heater \"mat\" {\n      size = \"11 x 17 in\"\n    }\n  }\n}\n", us, ""},
		"weights of a template":    {"Europe/London", "template \"t\" {\n  animals \"a\" {\n    mass = \"0.8 oz\"\n  }\n}\n", us, ""},
		"water of care, and a dip": {"Europe/London", "template \"t\" {\n  care \"mist\" {\n    amount = \"5 fl oz\"\n  }\n}\n", us, ""},
		"both, more of one kind":   {"Europe/London", box("24 x 12 x 12 cm") + "room \"r\" {\n  temperature = \"70 to 75 F\"\n}\n", quantity.Units{Temperature: f, Length: cm, Volume: ml, Mass: g}, ""},
		"in the morning":           {"America/Denver", "round \"e\" {\n  at = \"7:30\"\n}\n", quantity.Customary, ""},
		"in the evening":           {"Europe/London", "round \"e\" {\n  at = \"7:30 pm\"\n}\n", quantity.Units{Temperature: c, Length: cm, Volume: ml, Mass: g, TwelveHours: true}, ""},
		"it says metric":           {"America/Denver", box("24 x 12 x 12 in"), quantity.Units{Temperature: c, Length: cm, Volume: ml, Mass: g, TwelveHours: true}, "  units = \"metric\"\n"},
		"it says US, and 24 hours": {"America/Denver", box("24 x 12 x 12 cm"), us, "  units = \"US\"\n  clock = \"24 hours\"\n"},
		"it says a week":           {"Europe/London", "", quantity.Units{Temperature: c, Length: cm, Volume: ml, Mass: g, SundayFirst: true}, "  week = \"sunday\"\n"},
		"it says 12 hours":         {"Europe/London", "round \"e\" {\n  at = \"19:30\"\n}\n", quantity.Units{Temperature: c, Length: cm, Volume: ml, Mass: g, TwelveHours: true}, "  clock = \"12 hours\"\n"},
	} {
		got, _ := load(t, map[string]string{"a.care.hcl": "collection \"c\" {\n  time_zone = \"" + x.zone + "\"\n" + x.says + "}\n", "b.care.hcl": x.text})
		if x.zone == "America/Denver" && !strings.Contains(x.says, "week") {
			x.want.SundayFirst = true
		}
		if got.Units != x.want {
			t.Errorf("%s: %v, want %v", name, got.Units, x.want)
		}
		for _, e := range got.Enclosures {
			if e.Units != got.Units {
				t.Errorf("%s: an enclosure has %v", name, e.Units)
			}
		}
	}
}

// An enclosure that did not change is made anew where the units of the collection did.
func TestUnitsAgain(t *testing.T) {
	r := &Reader{}
	files := map[string]string{"a.care.hcl": fed("cricket adult", ""), "b.care.hcl": "template \"t\" {\n  animals \"a\" {\n    mass = \"1 g\"\n  }\n}\n"}
	before, _ := again(t, r, files)
	files["b.care.hcl"] = "template \"t\" {\n  animals \"a\" {\n    mass = \"1 oz\"\n  }\n}\n"
	after, _ := again(t, r, files)
	if b, a := before.Enclosure("box"), after.Enclosure("box"); b.Units.Mass != quantity.Gram || a.Units.Mass != quantity.Ounce || b.SameAs(a) {
		t.Errorf("%v, then %v", b.Units, a.Units)
	}
}
