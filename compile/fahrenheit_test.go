package compile_test

import (
	"regexp"
	"strconv"
	"strings"
	"testing"

	"vivary/schema/quantity"
)

// inF is an emperor's sheet whose heat is stated in degrees Fahrenheit, each figure with a
// number that no other has.
const inF = `species "pandinus-imperator" {
  figure "temperature-hard" {
    value   = "58.7 to 95.3 F"
FROM  }
  figure "temperature-soft" {
    value   = "70.1 to 90.55 F"
FROM  }
  figure "temperature-target" {
    value   = "77.3 to 86.9 F"
FROM  }
  figure "warm-spot" {
    value   = "80.7 to 90.1 F"
FROM  }
  figure "air" {
    value   = "70.9 to 83.3 F"
FROM  }
  figure "night" {
    value   = "70.3 to 77.9 F"
FROM  }
}
`

var fromHere = "    source  = [\"own records\"]\n    quality = \"own\"\n    seen    = \"2026-10-01\"\n    because = \"check\"\n    review  = \"2028-10-01\"\n"

// fBox is an emperor of a keeper who writes degrees Fahrenheit.
func fBox(room, climate string) string {
	return `collection "house" {
  time_zone = "America/New_York"
}
room "r" {
  temperature = "` + room + `"
  humidity    = "45 to 60 %"
}
keeper "lead" {
}
round "evening" {
  at     = "19:30"
  keeper = "lead"
}
enclosure "tank" {
  species = "pandinus-imperator"
  room    = "r"
  housing {
    kind      = "glass"
    inside    = "20 x 10 x 12 in"
    lid       = "solid, latched"
    vents     = "some"
    substrate = "coir and topsoil"
    moisture  = "damp"
    depth     = "6 in"
    hides     = 1
  }
  climate {
` + climate + `    thermometer = true
  }
  animals "one" {
    count  = 1
    stage  = "adult"
    origin = "captive bred"
    paper  = "invoice 3"
  }
}
`
}

// stated finds what a limit says of a figure.
var stated = regexp.MustCompile(`([0-9.]+(?: to [0-9.]+)? F)(?: at the (?:most|least))?, (temperature-[a-z]+|warm-spot|air|night) of`)

// A figure that is stated in degrees Fahrenheit is told to a keeper who writes them as that
// very number: by each rule that names it as a limit.
func TestLimitsInTheirOwnDegrees(t *testing.T) {
	sheet := strings.ReplaceAll(inF, "FROM", fromHere)
	mat := func(setting string) string {
		return "    heater \"mat\" {\n      power = \"20 W\"\n      place = \"side\"\n" + setting + "    }\n"
	}
	seen := map[string]bool{}
	for _, c := range []struct{ room, climate string }{
		{"72 to 80 F", "    warm_end = \"99 F\"\n    cool_end = \"78 F\"\n"},
		{"72 to 80 F", "    warm_end = \"94 F\"\n    cool_end = \"78 F\"\n"},
		{"72 to 80 F", "    warm_end = \"88 F\"\n    cool_end = \"62 F\"\n"},
		{"72 to 80 F", "    warm_end = \"76 F\"\n    cool_end = \"72 F\"\n"},
		{"72 to 80 F", "    warm_end = \"90 F\"\n    cool_end = \"88 F\"\n"},
		{"72 to 80 F", mat("      thermostat = \"95 F\"\n")},
		{"72 to 80 F", mat("")},
		{"72 to 99 F", ""},
		{"72 to 94 F", ""},
		{"50 to 75 F", ""},
		{"60 to 66 F", ""},
		{"93 to 95 F", ""},
	} {
		for _, f := range on(t, "2027-03-02", sheet+fBox(c.room, c.climate), "").Findings {
			if strings.Contains(f.Limit, "of the built-in sheet") {
				continue // which states it in degrees Celsius
			}
			for _, m := range stated.FindAllStringSubmatch(f.Limit, -1) {
				seen[f.Rule.ID+" "+m[2]] = true
				for _, number := range strings.Split(strings.TrimSuffix(m[1], " F"), " to ") {
					if !regexp.MustCompile(`figure "` + m[2] + `" \{\n    value   = "[^"]*\b` + regexp.QuoteMeta(number) + `\b`).MatchString(sheet) {
						t.Errorf("%s: limit %q: %s is not what %s states", f.Rule.ID, f.Limit, number, m[2])
					}
				}
			}
		}
	}
	for _, want := range []string{"temperature-harmful temperature-hard", "temperature-unusual temperature-soft", "off-target temperature-target",
		"heater-overshoot temperature-hard", "room-too-hot temperature-hard", "room-too-cold temperature-hard", "unheated temperature-soft"} {
		if !seen[want] {
			t.Errorf("no finding names a limit by %s", want)
		}
	}
}

// The page of the emperor's sheet says 80 to 90 F at the warm end (source K2): who keeps to
// it is told nothing about the temperature, and who goes past it is told that number.
func TestNinetyDegrees(t *testing.T) {
	climate := func(warm string) string {
		return "    warm_end = \"" + warm + "\"\n    cool_end = \"78 F\"\n    heater \"mat\" {\n      power = \"30 W\"\n      place = \"side\"\n      thermostat = \"" + warm + "\"\n    }\n"
	}
	for warm, want := range map[string]string{"86 F": "", "90 F": "", "32 C": "", "93 F": "caution"} {
		r := on(t, "2027-03-02", fBox("74 to 80 F", climate(warm)), "")
		for _, rule := range []string{"temperature-harmful", "temperature-unusual", "off-target", "heater-overshoot"} {
			got := worst(r, rule)
			if rule != "temperature-unusual" && got != "" || rule == "temperature-unusual" && got != want {
				t.Errorf("%s: %s %q, want %q", warm, rule, got, want)
			}
		}
		for _, f := range r.Findings {
			for _, text := range []string{f.Text, f.Limit, f.Write} {
				if strings.Contains(text, "89.6") || strings.Contains(text, "80.6") {
					t.Errorf("%s: %s: %s", warm, f.Rule.ID, text)
				}
			}
			if f.Rule.ID == "temperature-unusual" && (!strings.Contains(f.Limit, "90 F") || !strings.Contains(f.Write, "90 F")) {
				t.Errorf("%s: limit %q, write %q", warm, f.Limit, f.Write)
			}
		}
	}
}

// A tenth of a degree that was written comes out as it was written, whichever side a limit
// is rounded to.
func TestTenthsOfADegree(t *testing.T) {
	for n := -400; n <= 2000; n++ {
		text := strconv.FormatFloat(float64(n)/10, 'f', -1, 64) + " F"
		q, err := quantity.Parse(text, quantity.Temperature)
		if err != nil {
			t.Fatal(err)
		}
		for how, got := range map[string]string{"at most": quantity.FormatAtMost(q.Value, q.Unit), "at least": quantity.FormatAtLeast(q.Value, q.Unit),
			"nearest": quantity.Format(q.Value, q.Unit), "range": quantity.FormatRange(q.Value, q.Value, q.Unit), "itself": q.String()} {
			if got != text {
				t.Errorf("%s %s: %s", text, how, got)
			}
		}
	}
}
