package compile_test

import (
	"slices"
	"strings"
	"testing"

	"vivary/compile"
	"vivary/compile/roster"
	"vivary/schema"
)

// A season turns the one heater down for all: it is for all of them, or found.
func TestSeasonInARack(t *testing.T) {
	rest := "  season \"cool rest\" {\n    from    = \"1 nov\"\n    to      = \"31 jan\"\n    heating = \"off\"\n    climate {\n      warm_end = \"20 to 22 C\"\n    }\n  }\n"
	spare := "enclosure \"spare\" {\n  species = \"tliltocatl-albopilosus\"\n  rack    = \"baby-rack\"\n" + strings.Replace(tubBox, "    hides    = 1\n", "    places   = 2\n", 1) + "}\n"
	for name, c := range map[string]struct {
		text string
		want int
	}{
		"one of three":  {babyTub + racked(3, map[int]string{2: rest}), 1},
		"all of three":  {babyTub + racked(3, map[int]string{1: rest, 2: rest, 3: rest}), 0},
		"by template":   {strings.Replace(babyTub, "  animals", rest+"  animals", 1) + racked(3, nil) + spare, 0},
		"all but one":   {strings.Replace(babyTub, "  animals", rest+"  animals", 1) + racked(3, map[int]string{3: "  season \"cool rest\" {\n    off = true\n  }\n"}), 1},
		"no heat of it": {babyTub + racked(3, map[int]string{2: strings.Replace(rest[:strings.Index(rest, "    climate")], "heating = \"off\"", "feeding = \"half\"", 1) + "  }\n"}), 0},
	} {
		n := 0
		r := on(t, rackDay, rackHouse+babyRack+c.text, "")
		for _, f := range r.Findings {
			if f.Rule.ID == "channel-clash" {
				n++
			}
		}
		if n != c.want {
			t.Errorf("%s: %v", name, foundIn(r))
		}
	}
}

// tested are the entries that test a heater.
func tested(r *compile.Result) (all []*roster.Entry) {
	for e := range r.Roster.All() {
		if e.Kind == schema.KindDeviceTest {
			all = append(all, e)
		}
	}
	return all
}

// untested are the enclosures whose need of a test of heaters is not met, and of how many
// it is a need.
func untested(r *compile.Result) (late []string, n int) {
	for i := range r.Proofs {
		for k := range r.Proofs[i] {
			if p := &r.Proofs[i][k]; p.Name == schema.NeedDeviceTest {
				if n++; !p.Met() {
					late = append(late, p.Life.Plan.Name.V)
				}
			}
		}
	}
	return late, n
}

// The heater of a rack is tested once for all in it, whether or not there is a thermometer;
// a heater of a tub's own is tested there, and the rack's test is not its test.
func TestARackIsTestedOnce(t *testing.T) {
	mat := "  climate {\n    heater \"mat\" {\n      power      = \"3 W\"\n      place      = \"side\"\n      thermostat = \"27 C\"\n    }\n  }\n"
	noThermometer := strings.Replace(babyRack, "  thermometer = true\n", "", 1)
	cold := strings.Replace(babyRack, cable, "", 1)
	for _, c := range []struct {
		name, text, log string
		ids             []string
		needs           int
	}{
		{"sixty tubs", babyRack + babyTub + racked(60, nil), "", []string{"baby-rack/device-test"}, 60},
		{"without a thermometer", noThermometer + babyTub + racked(3, nil), "", []string{"baby-rack/device-test"}, 3},
		{"a heater of its own beside", babyRack + babyTub + racked(3, map[int]string{2: mat}), "", []string{"baby-rack/device-test", "tub-2/device-test"}, 3},
		{"nothing heated", cold + babyTub + racked(3, nil), "", nil, 0},
		{"its own heater in a cold rack", cold + babyTub + racked(3, map[int]string{2: mat}), "", []string{"tub-2/device-test"}, 1},
		{"one says it itself", babyRack + babyTub + racked(2, map[int]string{1: "  care \"device-test\" {\n    every = \"14 days\"\n  }\n"}), "", []string{"baby-rack/device-test", "tub-1/device-test"}, 2},
		{"one moults", babyRack + babyTub + racked(3, nil), "2026-11-28 tub-2 hanging\n", []string{"baby-rack/device-test"}, 3},
		{"one has died", babyRack + babyTub + racked(3, nil), "2026-11-20 tub-1 died\n", []string{"baby-rack/device-test"}, 2},
		{"all have died", babyRack + babyTub + racked(1, nil), "2026-11-20 tub-1 died\n", nil, 0},
	} {
		r := on(t, rackDay, rackHouse+c.text, c.log)
		var ids []string
		for _, e := range tested(r) {
			ids = append(ids, e.ID.String())
			if len(e.Causes) > 0 {
				t.Errorf("%s: %s is held", c.name, e.ID)
			}
		}
		slices.Sort(ids)
		late, n := untested(r)
		if !slices.Equal(ids, c.ids) || late != nil || n != c.needs {
			t.Errorf("%s: %q, unmet %v of %d", c.name, ids, late, n)
		}
	}
	off := map[int]string{2: strings.Replace(mat, "  climate", "  care \"device-test\" {\n    off = true\n  }\n  climate", 1)}
	if late, _ := untested(on(t, rackDay, rackHouse+babyRack+babyTub+racked(3, off), "")); !slices.Equal(late, []string{"tub-2"}) {
		t.Error("its own mat is not tested by the rack's test", late)
	}
}

// The log takes the test by the rack's name; of care that is done in each tub it asks in
// which; and the title on the phone is answered with the name.
func TestLogOfCareInARack(t *testing.T) {
	text := rackHouse + babyRack + babyTub + racked(3, map[int]string{3: "  title = \"Green one\"\n"})
	r := on(t, rackDay, text, "2026-11-27 baby-rack done device-test\n")
	if len(r.Findings) != 0 || tested(r)[0].Logged != r.Horizon.Today-1 {
		t.Error(foundIn(r))
	}
	for line, want := range map[string]string{
		"baby-rack done mist":       `"mist" is not done once for all in rack baby-rack: in which of its enclosures it was is not said`,
		"baby-rack done water":      `"water" is not done once for all`,
		"baby-rack skipped feeding": `"feeding" is not done once for all`,
		"baby-rack done nonsense":   `there is no care "nonsense" here`,
		"Baby rack done heat":       `"Baby rack" is a title; the log takes the name`,
		"baby Rack measured 25 C":   `"baby Rack" is a title; the log takes the name`,
		"Green one moult":           `"Green one" is a title; the log takes the name`,
		"baby-rak done heat":        `did you mean "baby-rack"`,
		"Baby moult":                `there is no enclosure "Baby"`,
	} {
		r := on(t, rackDay, text, "2026-11-27 "+line+"\n")
		if all := foundIn(r); !slices.ContainsFunc(all, func(s string) bool { return strings.Contains(s, want) }) {
			t.Errorf("%s: %q", line, all)
		}
	}
}
