package plan

import (
	"slices"
	"strings"
	"testing"

	"vivary/plan/finding"
)

// fed is a sound plan in which prey is fed, with what stands before the enclosure.
func fed(prey, before string) string {
	return "collection \"c\" {\n  time_zone = \"Europe/London\"\n}\nroom \"a\" {\n  temperature = \"18 to 22 C\"\n}\n" + before +
		"enclosure \"box\" {\n  species = \"pandinus-imperator\"\n  room = \"a\"\n  housing {\n    inside = \"60 x 45 x 40 cm\"\n    lid = \"solid, latched\"\n  }\n" +
		"  animals \"adult\" {\n    count = 1\n    stage = \"adult\"\n  }\n  feeding \"adult\" {\n    every = \"4 days\"\n    prey = \"" + prey + "\"\n  }\n}\n"
}

// TestPreyByOtherNames checks that prey is understood by the names that the trade has for
// it, singly or several, in any order, and that our names are then used everywhere.
func TestPreyByOtherNames(t *testing.T) {
	for typed, want := range map[string]string{
		"dubia medium":                  "roach medium",
		"medium dubia":                  "roach medium",
		"Blaptica dubia adult":          "roach adult",
		"morio adult":                   "superworm large",
		"Zophobas large":                "superworm large",
		"red runner medium":             "turkestan-roach medium",
		"hopper small":                  "locust small",
		"small locusts":                 "locust small",
		"locust 2nd":                    "locust small",
		"locust second instar":          "locust small",
		"crickets adult":                "cricket adult",
		"house cricket adult":           "cricket adult",
		"Heimchen mittel":               "cricket medium",
		"black soldier fly larva large": "soldier-fly-larva large",
		"Drosophila hydei":              "fruit-fly hydei",
		"mini mealworm":                 "mealworm small",
		"mouse pinky":                   "pinky-mouse newborn",
		"silkworm any":                  "silkworm medium",
		"pinhead":                       "cricket pinhead",
		"pinheads":                      "cricket pinhead",
		"pinhead crickets":              "cricket pinhead",
		"small dubias":                  "roach small",
		"dubia roaches large":           "roach large",
		"superworms medium":             "superworm medium",
		"large super worms":             "superworm large",
		"supers large":                  "superworm large",
		"medium hoppers":                "locust medium",
		"hydei":                         "fruit-fly hydei",
		"D. hydei":                      "fruit-fly hydei",
		"melanogaster":                  "fruit-fly melanogaster",
		"hydei fruit flies":             "fruit-fly hydei",
		"flightless fruit flies large":  "fruit-fly hydei",
		"small red runners":             "turkestan-roach small",
		"B. dubia adult":                "roach adult",
		"lats medium":                   "turkestan-roach medium",
		"waxworms large":                "waxworm large",
		"wax worms small":               "waxworm small",
		"live crickets adult":           "cricket adult",
		"springtails":                   "springtail adult",
		"isopods small":                 "woodlouse small",
	} {
		c, found := load(t, map[string]string{"a.care.hcl": fed(typed, "")})
		if len(found) > 0 {
			t.Errorf("%s: %v", typed, texts(found))
			continue
		}
		if got := c.Enclosure("box").Feeding[0].Menu()[0].V.String(); got != want {
			t.Errorf("%s is fed as %s, want %s", typed, got, want)
		}
	}
}

// A size by its length is the nearest class of the feeder, and is said, since a seller's
// half inch is between two of them. The edit writes what was understood.
func TestPreyByLength(t *testing.T) {
	for typed, want := range map[string]string{
		"1/2 inch crickets":     "cricket medium",
		"half inch crickets":    "cricket medium",
		"quarter inch crickets": "cricket pinhead",
		"10 mm crickets":        "cricket small",
		"crickets 1 cm":         "cricket small",
		"1/2\\\" dubia":         "roach small",
		"1 inch mealworms":      "mealworm large",
		"2 inch superworms":     "superworm large",
	} {
		text := fed(typed, "")
		c, found := load(t, map[string]string{"a.care.hcl": text})
		if len(found) != 1 || found[0].Rule != ruleOldName || !strings.Contains(found[0].Text, "is taken for "+want) {
			t.Errorf("%s: %v", typed, texts(found))
			continue
		}
		if got := c.Enclosure("box").Feeding[0].Menu()[0].V.String(); got != want {
			t.Errorf("%s is fed as %s", typed, got)
		}
		if strings.Contains(typed, "\\") {
			continue // what is written with an escape is not edited
		}
		mended, err := finding.Apply([]byte(text), found[0].Edits)
		if got := string(mended); err != nil || got != fed(want, "") {
			t.Errorf("%s becomes\n%s", typed, got)
		}
	}
}

// TestPreyNotUnderstood checks that nothing is guessed: a name of several feeders is
// named with all of them, whatever the size, and what is missing is said.
func TestPreyNotUnderstood(t *testing.T) {
	const mine = "feeder \"moth\" {\n  title = \"hawk moth\"\n  also = [\"dubia\"]\n\n  size \"adult\" {\n    mass = \"1 g\"\n  }\n}\n"
	for _, x := range []struct{ typed, before, text, write string }{
		{"field cricket adult", "", "is a name of several feeders: black-cricket and steppe-cricket", "\"black-cricket\" or \"steppe-cricket\""},
		{"pinky newborn", "", "is a name of several feeders: blow-fly-larva and pinky-mouse", ""},
		{"dubia medium", mine, "is a name of several feeders: moth and roach", ""},
		{"dubia", "", "the size of the roach is not said", "hatchling, small, medium, large, adult"},
		{"red runner", "", "the size of the turkestan-roach is not said", "medium"},
		{"red runner gigantic", "", "there is no size of turkestan-roach \"gigantic\"", ""},
		{"cricket", "", "the size of the cricket is not said", "pinhead"},
		{"dubai medium", "", "there is no feeder \"dubai medium\"; near it by name is roach", "if that is what yours are"},
		{"dubias", "", "the size of the roach is not said", "medium"},
		{"fruit flies", "", "the size of the fruit-fly is not said", "hydei"},
		{"hoppers", "", "the size of the locust is not said", "subadult"},
		{"2 week crickets", "", "there is no size of cricket \"2 week\"", "pinhead"},
		{"5 inch crickets", "", "there is no size of cricket \"5 inch\"", "adult"},
		{"bluebottle", "", "near it by name are blow-fly bluebottle and blow-fly-larva large", ""},
		{"discoid large", "", "there is no feeder \"discoid large\"", "a feeder block of its own"},
		{"gecko diet", "", "there is no feeder \"gecko diet\"", "cricket, roach"},
	} {
		c, found := load(t, map[string]string{"a.care.hcl": fed(x.typed, x.before)})
		if len(found) != 1 || found[0].Rule != ruleUnknownName || !strings.Contains(found[0].Text, x.text) || !strings.Contains(found[0].Write, x.write) {
			t.Errorf("%s: %v", x.typed, texts(found))
			continue
		}
		if got := c.Enclosure("box").Feeding[0].Menu()[0].V.String(); got != x.typed {
			t.Errorf("%s is taken for %s", x.typed, got)
		}
	}
}

// TestPreyAgain checks that other names are found by each load anew, that what did not
// change is kept, and that a sheet of the collection's own changes what is meant.
func TestPreyAgain(t *testing.T) {
	const own = "species \"pandinus-imperator\" {\n  feeding \"adult\" {\n    stages = [\"adult\"]\n    every = \"7 days\"\n    rotate = [\"hopper large\", \"cricket adult\"]\n  }\n}\n" +
		"type \"mine\" {\n  title = \"mine\"\n\n  feeding \"adult\" {\n    stages = [\"adult\"]\n    every = \"7 days\"\n    prey = \"dubia adult\"\n  }\n}\n"
	files := map[string]string{"a.care.hcl": fed("dubia medium", ""), "s.care.hcl": own}
	r := &Reader{}
	before, found := again(t, r, files)
	if len(found) != 0 {
		t.Fatalf("found: %v", texts(found))
	}
	fresh := texts(found)
	menu := func(c *Collection) string { return c.Enclosure("box").Feeding[0].Menu()[0].V.String() }
	sheet := before.Library.Species("pandinus-imperator")
	i := slices.IndexFunc(sheet.Feeding, func(f *Feeding) bool { return f.Name.V == "adult" })
	if got := sheet.Feeding[i].Menu()[0].V.String(); got != "locust large" || menu(before) != "roach medium" {
		t.Errorf("the sheet feeds %s, the plan %s", got, menu(before))
	}
	if got := before.Library.Type("mine").as.Feeding[0].Prey.V.String(); got != "roach adult" {
		t.Errorf("the type feeds %s", got)
	}
	after, found := again(t, r, files)
	if got := texts(found); !slices.Equal(got, fresh) {
		t.Errorf("found again: %v", got)
	}
	if after.Enclosure("box") != before.Enclosure("box") || after.Library.Species("pandinus-imperator") != sheet {
		t.Error("what is the same is made anew")
	}
	asDecoded(t, r)
	files["f.care.hcl"] = "feeder \"dubia\" {\n  size \"medium\" {\n    mass = \"1 g\"\n  }\n}\n"
	other, found := again(t, r, files)
	if menu(other) != "dubia medium" || other.Enclosure("box").SameAs(before.Enclosure("box")) {
		t.Errorf("a feeder of that name is fed as %s: %v", menu(other), texts(found))
	}
	asDecoded(t, r)
}

// What is no feeder's name, but that of a size or a word of several, is answered with what
// may be meant, and never taken; a feeder that there is in one size needs none after it.
func TestNearPrey(t *testing.T) {
	lib := NewLibrary()
	for written, want := range map[string]string{
		"greenbottle": "blow-fly greenbottle blow-fly-larva small", "fuzzy": "pinky-mouse fuzzy",
		"fly":        "blow-fly blow-fly-larva fruit-fly house-fly house-fly-larva",
		"gecko diet": "", "": "", "small": "", "adult": "",
	} {
		if got := strings.Join(lib.nearPrey(written), " "); got != want && !(want != "" && strings.HasPrefix(got, want)) {
			t.Errorf("%s: near %q, want %q", written, got, want)
		}
		if n := lib.ByOtherPrey(Prey{Feeder: written}); n.Prey.Size != "" {
			t.Errorf("%s is taken for %s", written, n.Prey)
		}
	}
	for written, want := range map[string]string{"springtail": "springtail adult", "butterworm": "butterworm large", "cricket": "", "fruit-fly": ""} {
		if n := lib.ByOtherPrey(Prey{Feeder: written}); n.Prey.Size != "" != (want != "") || want != "" && n.Prey.String() != want {
			t.Errorf("%s: %s, want %q", written, n.Prey, want)
		}
	}
}
