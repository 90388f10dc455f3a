package compile_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"vivary/compile"
	"vivary/plan/finding"
)

// heated is one enclosure in a room, as a keeper would write it.
func heated(species, room, inside, housing, climate string) string {
	if climate != "" {
		climate = " climate {\n thermometer = true\n" + climate + " }\n"
	}
	return setupHead + "room \"here\" {\n temperature = \"" + room + "\"\n}\nenclosure \"box\" {\n species = \"" + species + "\"\n room = \"here\"\n housing {\n inside = \"" + inside +
		"\"\n lid = \"solid, latched\"\n vents = \"some\"\n substrate = \"coir and topsoil\"\n depth = \"10 cm\"\n hides = 2\n" + housing + " }\n" + climate +
		" animals \"one\" {\n count = 1\n stage = \"adult\"\n origin = \"captive bred\"\n paper = \"invoice 1\"\n }\n}\n"
}

func device(kind, power, size, place, more string) string {
	if size != "" {
		size = " size = \"" + size + "\"\n"
	}
	return " heater \"" + kind + "\" {\n power = \"" + power + "\"\n" + size + " place = \"" + place + "\"\n" + more + " }\n"
}

// aboutHeat are the rules that speak of heat and of heaters.
var aboutHeat = []string{"heat-lost", "unheated", "heat-short", "night-cold", "too-warm", "stuck-scalds", "stuck-hot", "heater-flux", "heat-beneath", "probe-far",
	"heater-rock", "heater-bare", "heater-overshoot", "heater-misplaced", "heater-unguarded", "room-too-cold", "room-too-hot", "temperature-harmful", "temperature-unusual", "off-target", "no-gradient", "unknown-word", "figure-impossible", "heater-wide", "fed-while-cold", "rest-warm", "channel-clash"}

// The verdicts on ordinary and on dangerous heating. The severities are the mildest and
// the hardest that are right; "" is no word of heat above advice, and "advice" at most one.
// Where a row was worked out it follows from measured mats and published limits: the sources
// stand in compile/climate/testdata/heat-checks.csv and beside the rules; what keepers do is
// common practice, no source.
func TestHeating(t *testing.T) {
	const (
		ten, sixty = "20 x 10 x 12 in", "60 x 45 x 40 cm"
		at30       = " thermostat = \"30 C\"\n"
		warm30     = " warm_end = \"30 C\"\n cool_end = \"24 C\"\n night = \"20 to 24 C\"\n"
		damp       = " moisture = \"damp\"\n"
	)
	emperor := func(room, inside, climate string) string {
		return heated("pandinus-imperator", room, inside, damp, climate)
	}
	const basking = " heater \"lamp\" {\n power = \"75 W\"\n place = \"above\"\n hours = \"12 h\"\n thermostat = \"33 C\"\n }\n night = \"18 to 22 C\"\n"
	gecko := func(room, climate string) string {
		return strings.Replace(heated("eublepharis-macularius", room, "90 x 45 x 45 cm", " moisture = \"dry\"\n", climate), "depth = \"10 cm\"", "depth = \"3 cm\"", 1)
	}
	season := func(text, what string) string {
		return strings.Replace(text, " animals \"one\"", " season \"s\" {\n"+what+" }\n animals \"one\"", 1)
	}
	for _, c := range []struct{ name, text, least, most string }{
		// Ordinary: they build without a word.
		{"10 gal, 8 W", emperor("20 to 24.4 C", ten, warm30+device("mat", "8 W", "20 x 20 cm", "side", at30)), "", "advice"},
		{"10 gal, 10 W", emperor("20 to 24.4 C", ten, warm30+device("mat", "10 W", "20 x 25 cm", "side", at30)), "", "advice"},
		{"10 gal, 16 W", emperor("20 to 24.4 C", ten, warm30+device("mat", "16 W", "25 x 28 cm", "back", at30)), "", "advice"},
		{"10 gal, 20 W", emperor("20 to 24.4 C", ten, warm30+device("mat", "20 W", "28 x 35 cm", "back", at30)), "", "advice"},
		{"60 cm, 25 W", emperor("21 to 24 C", sixty, warm30+device("mat", "25 W", "28 x 43 cm", "back", at30)), "", "advice"},
		{"60 cm, 45 W", emperor("21 to 24 C", sixty, warm30+device("mat", "45 W", "38 x 47 cm", "back", at30)), "", "caution"}, // 252 W for a square metre
		{"40 cm, 5 W", emperor("20 to 24 C", "40 x 30 x 30 cm", device("mat", "5 W", "15 x 15 cm", "back", at30)), "", "advice"},
		{"without a size", emperor("20 to 25 C", sixty, device("mat", "25 W", "", "back", at30)), "", "advice"},
		{"a little foam behind a weak mat", heated("pandinus-imperator", "19 to 23 C", sixty, damp+" face \"back\" {\n backing = \"foam\"\n thick = \"5 mm\"\n }\n", device("mat", "16 W", "30 x 40 cm", "back", at30)), "", "advice"},
		{"a red-knee in a warm room", heated("brachypelma-hamorii", "20 to 24 C", "45 x 40 x 30 cm", "", ""), "", "advice"},
		{"a lamp above, mesh in a part", strings.Replace(emperor("21 to 25 C", sixty, device("lamp", "40 W", "", "above", " hours = \"12 h\"\n thermostat = \"30 C\"\n")), "solid, latched", "part mesh, latched", 1), "", "advice"},
		{"a lamp and a mat at the side", strings.Replace(emperor("20 to 24 C", sixty, device("mat", "16 W", "25 x 28 cm", "side", at30)+device("lamp", "40 W", "", "above", " hours = \"10 h\"\n thermostat = \"31 C\"\n")), "solid, latched", "part mesh, latched", 1), "", "advice"},
		{"a gecko over thin loam", strings.Replace(heated("eublepharis-macularius", "21 to 25 C", "90 x 45 x 45 cm", " stands_on = \"feet\"\n", device("mat", "24 W", "28 x 43 cm", "under", " thermostat = \"32 C\"\n")), "depth = \"10 cm\"", "depth = \"3 cm\"", 1), "", "advice"},
		{"kept near 90 F", emperor("72 to 77 F", sixty, " warm_end = \"90 F\"\n cool_end = \"76 F\"\n night = \"72 to 76 F\"\n"+device("mat", "25 W", "28 x 43 cm", "back", " thermostat = \"90 F\"\n")), "", "advice"},
		{"a warm room and no heater", emperor("24 to 28 C", sixty, ""), "", ""},

		// Dangerous, written as a careless keeper would.
		{"90 W on 0.054 m2", emperor("20 to 24 C", sixty, device("mat", "90 W", "18 x 30 cm", "side", at30)), "error", "danger"},
		{"a gecko without a heater", heated("eublepharis-macularius", "17 to 20 C", "90 x 45 x 40 cm", "", ""), "error", "danger"},
		{"an emperor without a heater", emperor("15.5 to 20 C", sixty, ""), "error", "error"},
		{"Theraphosa at 19 to 21 C", heated("theraphosa-blondi", "18.9 to 21 C", "60 x 60 x 45 cm", damp, ""), "caution", "error"},
		{"a lamp by day, cold nights", emperor("15.5 to 19 C", sixty, device("lamp", "60 W", "", "above", " hours = \"12 h\"\n"+at30)), "caution", "error"},
		{"30 to 34 C all year", emperor("30 to 34 C", sixty, ""), "caution", "error"},
		{"a mat beneath a burrower", emperor("20 to 24 C", ten, device("mat", "16 W", "25 x 28 cm", "under", "")), "error", "danger"},
		{"the same with a thermostat", emperor("20 to 24 C", ten, device("mat", "16 W", "25 x 28 cm", "under", at30)), "error", "danger"},
		{"a heated rock", emperor("20 to 24 C", sixty, device("rock", "8 W", "", "inside", " guarded = true\n"+at30)), "error", "danger"},
		{"a word that is none", emperor("20 to 24 C", sixty, device("lmap", "40 W", "", "above", at30)), "error", "error"},
		{"foam behind 200 W", heated("pandinus-imperator", "20 to 26 C", sixty, damp+" face \"back\" {\n backing = \"foam\"\n thick = \"20 mm\"\n }\n", device("mat", "24 W", "30 x 40 cm", "back", at30)), "caution", "error"},
		{"the probe at the cool end", emperor("20 to 24 C", ten, device("mat", "45 W", "25 x 36 cm", "back", " thermostat = \"28 C\"\n probe = \"cool end\"\n")), "caution", "error"},
		{"a naked mat", emperor("20 to 24 C", sixty, device("mat", "25 W", "28 x 43 cm", "back", "")), "danger", "danger"},
		{"a freezing room", emperor("2 to 20 C", sixty, device("mat", "25 W", "28 x 43 cm", "back", at30)), "danger", "danger"},
		{"a weak mat and little else written", emperor("15 to 19 C", sixty, device("mat", "4 W", "15 x 15 cm", "back", at30)), "caution", "error"},
		{"a heater in a shut box", emperor("22 to 26 C", "30 x 20 x 20 cm", device("panel", "75 W", "", "inside", " guarded = true\n thermostat = \"30 C\"\n")), "error", "danger"},

		// What was found passing, and what was refused, by somebody who had not built it.
		{"meals in winter with the heat off", season(gecko("16 to 22 C", basking), " from = \"1 sep\"\n to = \"30 apr\"\n heating = \"off\"\n feeding = \"half\"\n"), "error", "error"},
		{"the same as usual", season(gecko("16 to 22 C", basking), " from = \"1 dec\"\n to = \"28 feb\"\n heating = \"off\"\n feeding = \"as usual\"\n"), "error", "error"},
		{"a season that changes nothing hides no cold", season(emperor("16 to 21 C", sixty, device("mat", "5 W", "15 x 15 cm", "side", at30)), " from = \"1 jun\"\n to = \"7 jun\"\n note = \"more water\"\n"), "caution", "error"},
		{"a gecko beside a mat on the wall", gecko("20 to 24 C", device("mat", "25 W", "28 x 43 cm", "side", " thermostat = \"32 C\"\n")), "error", "error"},
		{"a mat on its lid", gecko("20 to 24 C", device("mat", "25 W", "28 x 43 cm", "above", " thermostat = \"32 C\"\n")), "error", "error"},
		{"a lamp for an hour", gecko("20 to 24 C", device("lamp", "75 W", "", "above", " hours = \"1 h\"\n thermostat = \"33 C\"\n")), "error", "error"},
		{"a mat for half an hour", emperor("16 to 20 C", sixty, device("mat", "25 W", "28 x 43 cm", "back", " hours = \"30 min\"\n"+at30)), "error", "error"},
		{"a mat for 30 h a day", emperor("20 to 24 C", sixty, device("mat", "25 W", "28 x 43 cm", "back", " hours = \"30 h\"\n"+at30)), "error", "error"},
		{"a lamp whose probe is far away", emperor("20 to 24 C", sixty, device("lamp", "100 W", "", "above", " probe = \"cool end\"\n thermostat = \"28 C\"\n")), "caution", "error"},
		{"600 W for a square metre, probe in the air", emperor("20 to 24 C", sixty, device("mat", "24 W", "20 x 20 cm", "side", " probe = \"air\"\n thermostat = \"24 C\"\n")), "error", "danger"},
		{"millipedes over a strong mat", heated("archispirostreptus-gigas", "20 to 24 C", "80 x 50 x 45 cm", damp, device("mat", "30 W", "40 x 35 cm", "under", " probe = \"heater\"\n thermostat = \"25 C\"\n")), "caution", "danger"},
		{"three times as large as its wall", emperor("20 to 24 C", sixty, device("mat", "50 W", "60 x 60 cm", "side", at30)), "caution", "error"},
		{"metres for centimetres", emperor("20 to 24 C", sixty, device("mat", "25 W", "28 x 43 m", "back", at30)), "error", "error"},
		{"a room of 300 C", emperor("20 to 300 C", sixty, ""), "error", "danger"},
		{"a shelf over the stove", heated("pandinus-imperator", "21 to 25 C", sixty, damp+" shelf_rise = \"15 to 20 C\"\n", ""), "error", "danger"},
		{"a desert scorpion in a cool room", heated("hadrurus-arizonensis", "12 to 20 C", sixty, " moisture = \"dry\"\n", ""), "caution", "error"},
		{"a sling cup against a mat", heated("brachypelma-hamorii", "20 to 24 C", "8 x 8 x 10 cm", " moisture = \"damp below\"\n", device("mat", "8 W", "20 x 20 cm", "back", " thermostat = \"26 C\"\n")), "", "advice"},
		{"a warm summer", emperor("20 to 29 C", sixty, device("mat", "25 W", "28 x 43 cm", "back", at30)), "", "advice"},
		{"a thin board behind it", heated("pandinus-imperator", "20 to 24 C", sixty, damp+" face \"back\" {\n backing = \"board\"\n }\n", device("mat", "20 W", "28 x 43 cm", "back", at30)), "", "advice"},
		{"a mat of 1000 W without a size", emperor("20 to 24 C", sixty, device("mat", "1000 W", "", "back", at30)), "error", "danger"},
		{"100 W, no size, the probe in the air", emperor("20 to 24 C", sixty, device("mat", "100 W", "", "back", " probe = \"air\"\n thermostat = \"26 C\"\n")), "caution", "danger"},
		{"seven months without heat, and nothing said of meals", season(gecko("23 to 26 C", basking), " from = \"1 oct\"\n to = \"30 apr\"\n heating = \"off\"\n"), "caution", "error"},
		{"a gecko at 24 C all winter, fed", season(gecko("20 to 24 C", basking), " from = \"1 oct\"\n to = \"31 mar\"\n climate {\n warm_end = \"24 C\"\n }\n"), "error", "error"},
		{"a heater that never switches off", emperor("20 to 24 C", sixty, device("mat", "25 W", "28 x 43 cm", "side", " probe = \"cool end\"\n thermostat = \"28 C\"\n")), "caution", "caution"},
		{"three mats on one wall", emperor("20 to 24 C", sixty, device("mat", "25 W", "28 x 43 cm", "side", at30)+strings.Replace(device("mat", "25 W", "28 x 43 cm", "side", " kind = \"mat\"\n"+at30), "\"mat\" {", "\"second\" {", 1)), "caution", "error"},
		{"a mat and a lamp on one outlet", emperor("20 to 24 C", sixty, device("mat", "20 W", "28 x 36 cm", "side", " channel = \"a\"\n"+at30)+device("lamp", "60 W", "", "above", " channel = \"a\"\n")), "caution", "error"},
		{"woodlice in a cool room", heated("porcellio-scaber", "9 to 20 C", "35 x 20 x 15 cm", damp, ""), "", "advice"},
	} {
		t.Run(c.name, func(t *testing.T) {
			r := on(t, "2027-03-02", c.text, "")
			have := "none"
			rank := map[string]int{"none": 0, "": 0, "advice": 1, "caution": 2, "urgent": 3, "error": 4, "danger": 5}
			var lines []string
			for _, f := range r.Findings {
				if slices.Contains(aboutHeat, f.Rule.ID) {
					lines = append(lines, fmt.Sprintf("%s %s: %s (%s)", f.Severity, f.Rule.ID, f.Text, f.Limit))
					if rank[f.Severity.String()] > rank[have] {
						have = f.Severity.String()
					}
				}
			}
			if rank[have] < rank[c.least] || rank[have] > rank[c.most] {
				t.Errorf("%s, want %q to %q\n%s", have, c.least, c.most, strings.Join(lines, "\n"))
			}
			said := map[string]int{}
			for _, f := range r.Findings {
				if f.Severity >= finding.Caution && slices.Contains(aboutHeat, f.Rule.ID) {
					said[f.Rule.ID]++
				}
			}
			if c.most == "advice" && len(lines) > 1 {
				t.Errorf("more than one word:\n%s", strings.Join(lines, "\n"))
			}
		})
	}
}

// One cause is said once: what makes a mat too hot is said by its size where none of that
// size is sold, else by what a failed thermostat comes to.
func TestHeatIsSaidOnce(t *testing.T) {
	at := func(power, size, more string) *compile.Result {
		return on(t, "2027-03-02", heated("pandinus-imperator", "20 to 24 C", "60 x 45 x 40 cm", " moisture = \"damp\"\n"+more, device("mat", power, size, "back", " thermostat = \"30 C\"\n")), "")
	}
	foam := " face \"back\" {\n backing = \"foam\"\n thick = \"5 mm\"\n }\n"
	for _, c := range []struct{ power, size, more, flux, stuck, scalds string }{
		{"20 W", "28 x 36 cm", "", "", "", ""},
		{"26 W", "28 x 36 cm", "", "advice", "", ""},
		{"33 W", "28 x 36 cm", "", "", "caution", ""},
		{"39 W", "28 x 36 cm", "", "", "caution", ""},
		{"60 W", "28 x 36 cm", "", "", "error", ""},
		{"90 W", "28 x 36 cm", "", "", "", "danger"},
		{"8 W", "15 x 20.5 cm", foam, "error", "", ""},
	} {
		r := at(c.power, c.size, c.more)
		if f, s, d := worst(r, "heater-flux"), worst(r, "stuck-hot"), worst(r, "stuck-scalds"); f != c.flux || s != c.stuck || d != c.scalds {
			t.Errorf("%s on %s%s: flux %q, stuck %q, scalds %q; want %q, %q, %q", c.power, c.size, c.more, f, s, d, c.flux, c.stuck, c.scalds)
		}
	}
}

// What lies behind a heater is what lies on its own face, not on another.
func TestBehindTheHeater(t *testing.T) {
	faces := func(front, back string) string {
		return " face \"front\" {\n backing = \"" + front + "\"\n }\n face \"back\" {\n backing = \"" + back + "\"\n }\n"
	}
	mat := device("mat", "9.5 W", "28 x 22 cm", "back", " thermostat = \"29 C\"\n")
	for _, c := range []struct{ front, back, want string }{
		{"cork", "foam", "foam behind it"},
		{"foam", "cork", "cork behind it"},
		{"foam", "bare", ""},
	} {
		r := on(t, "2026-11-25", heated("pandinus-imperator", "20 to 23 C", "60 x 45 x 40 cm", faces(c.front, c.back), mat), "")
		text := ""
		for _, f := range r.Findings {
			if f.Rule.ID == "heater-flux" {
				text = f.Text
			}
		}
		if (text != "") != (c.want != "") || !strings.Contains(text, c.want) {
			t.Errorf("front %s, back %s: %q, want %q", c.front, c.back, text, c.want)
		}
	}
}
