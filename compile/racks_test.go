package compile_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"vivary/compile"
	"vivary/compile/balance"
	"vivary/compile/feeds"
	"vivary/compile/roster"
	"vivary/internal/planned"
	"vivary/schema"
)

const (
	rackHouse = "collection \"c\" {\n  time_zone = \"Europe/London\"\n}\nroom \"east\" {\n  temperature = \"20 to 23 C\"\n}\nkeeper \"lead\" {\n  trained = \"hairs, feeding\"\n}\nround \"evening\" {\n  at     = \"19:30\"\n  keeper = \"lead\"\n}\n"
	cable     = "  heater \"cable\" {\n    power      = \"180 W\"\n    place      = \"back\"\n    thermostat = \"27 C\"\n    contact    = \"gap\"\n  }\n"
	babyRack  = "rack \"baby-rack\" {\n  title       = \"Baby rack\"\n  room        = \"east\"\n  thermometer = true\n  places      = 60\n" + cable + "}\n"
	babyTub   = "template \"baby-tub\" {\n  species = \"tliltocatl-albopilosus\"\n  rack    = \"baby-rack\"\n" + tubBox + tubAnimal + "}\n"
	tubBox    = "  housing {\n    kind     = \"tub\"\n    inside   = \"20 x 15 x 12 cm\"\n    lid      = \"solid, latched\"\n    vents    = \"cross\"\n    depth    = \"8 cm\"\n    moisture = \"damp below\"\n    hides    = 1\n  }\n"
	tubAnimal = "  animals \"a\" {\n    count  = 1\n    stage  = \"juvenile\"\n    origin = \"captive bred\"\n    paper  = \"invoice 1\"\n  }\n"
	rackDay   = "2026-11-28"
)

// racked are so many of the template, each with lines of its own.
func racked(n int, own map[int]string) string {
	var b strings.Builder
	for i := 1; i <= n; i++ {
		fmt.Fprintf(&b, "enclosure \"tub-%d\" {\n  template = \"baby-tub\"\n%s}\n", i, own[i])
	}
	return b.String()
}

// readings are the entries that read a temperature.
func readings(r *compile.Result) (all []*roster.Entry) {
	for e := range r.Roster.All() {
		if e.Kind == schema.KindHeat {
			all = append(all, e)
		}
	}
	return all
}

// found are the findings as severity, rule and text.
func foundIn(r *compile.Result) (all []string) {
	for _, f := range r.Findings {
		all = append(all, f.Severity.String()+" "+f.Rule.ID+": "+f.Text)
	}
	return all
}

// unmet are the enclosures whose need of a reading is not met.
func unmet(r *compile.Result) (all []string) {
	n := 0
	for i := range r.Proofs {
		for k := range r.Proofs[i] {
			if p := &r.Proofs[i][k]; p.Name == schema.NeedHeat {
				if n++; !p.Met() {
					all = append(all, p.Life.Plan.Name.V)
				}
			}
		}
	}
	if n == 0 {
		return []string{"no enclosure has the need"}
	}
	return all
}

func bytesOf(t *testing.T, r *compile.Result) (n int, text string) {
	t.Helper()
	for _, f := range feeds.Of(r) {
		b, err := f.Bytes(nil)
		if err != nil {
			t.Fatal(err)
		}
		n += len(b)
		text += string(b)
	}
	return n, text
}

// Sixty tubs in a rack are one reading a round, in the calendar too, and the need of each
// is met by it; without the rack's thermometer they are sixty.
func TestSixtyTubsAreOneReading(t *testing.T) {
	const perCare = "calendar \"all\" {\n  entry = \"per care\"\n}\n"
	one := on(t, rackDay, rackHouse+perCare+babyRack+babyTub+racked(60, nil), "")
	if one.Refused() || !slices.Equal(rulesOf(one), []string{"calendar-noisy caution"}) {
		t.Fatal(foundIn(one))
	}
	all := readings(one)
	if len(all) != 1 || all[0].ID.String() != "baby-rack/reading" {
		t.Fatalf("%d readings", len(all))
	}
	if late := unmet(one); late != nil {
		t.Error("unmet", late)
	}
	sixty := on(t, rackDay, rackHouse+perCare+strings.Replace(babyRack, "  thermometer = true\n", "", 1)+babyTub+racked(60, nil), "")
	if n := len(readings(sixty)); n != 60 {
		t.Errorf("%d readings without a thermometer of all", n)
	}
	small, text := bytesOf(t, one)
	large, before := bytesOf(t, sixty)
	count := func(text string) int {
		return strings.Count(strings.ReplaceAll(text, "\r\n ", ""), "SUMMARY:Read lowest")
	}
	if n, was := count(text), count(before); n != 1 || was != 60 || small >= large {
		t.Errorf("%d bytes with %d readings, before %d with %d", small, n, large, was)
	}
	t.Logf("the calendar by care has %d bytes, and %d with sixty readings", small, large)
}

// In the round it is one line, where the first tub stands, and no tub is left out of "all".
func TestRackInTheRound(t *testing.T) {
	own := map[int]string{3: "  room = \"east\"\n"}
	text := rackHouse + babyRack + babyTub + racked(60, own) + strings.ReplaceAll(strings.ReplaceAll(babyTub, "template \"baby-tub\"", "enclosure \"a-first\""), "  rack    = \"baby-rack\"\n", "")
	r := on(t, rackDay, text, "")
	_, feed := bytesOf(t, r)
	feed = strings.ReplaceAll(feed, "\r\n ", "")
	if !strings.Contains(feed, `- All 61: lid shut?`) || !strings.Contains(feed, `- Read lowest and highest temperature\, reset: A first\, Baby rack`) {
		t.Error(feed[:2000])
	}
}

// The identity is the rack's: neither a tub more or less moves it, nor a new name with the
// old one kept, nor whether tubs say what they have in common in a template.
func TestRackKeepsItsIdentity(t *testing.T) {
	days := func(text string) (string, string) {
		r := on(t, rackDay, rackHouse+text, "")
		all := readings(r)
		if len(all) != 1 {
			t.Fatal(len(all), foundIn(r))
		}
		return all[0].ID.String(), fmt.Sprint(all[0].Days)
	}
	id, when := days(babyRack + babyTub + racked(5, nil))
	for name, text := range map[string]string{
		"a tub more":     babyRack + babyTub + racked(6, nil),
		"the first gone": babyRack + babyTub + strings.Replace(racked(5, nil), "enclosure \"tub-1\"", "enclosure \"tub-9\"", 1),
		"another name": strings.Replace(babyRack, "rack \"baby-rack\" {", "rack \"nursery\" {\n  formerly = \"baby-rack\"", 1) +
			strings.Replace(babyTub, "\"baby-rack\"", "\"nursery\"", 1) + racked(5, nil),
		"named by each": babyRack + strings.Replace(babyTub, "  rack    = \"baby-rack\"\n", "", 1) +
			strings.ReplaceAll(racked(5, nil), "  template", "  rack = \"baby-rack\"\n  template"),
	} {
		if i, w := days(text); i != id || w != when {
			t.Errorf("%s: %s", name, i)
		}
	}
}

// A mistake in the rack is one finding, at the rack, and says of which it is.
func TestOneMistakeInTheRack(t *testing.T) {
	in := func(old, new string) string { return strings.Replace(babyRack, old, new, 1) }
	desert := "  species = \"hadrurus-arizonensis\"\n"
	woodlice := "  species = \"porcellio-scaber\"\n"
	for _, c := range []struct {
		rule, rack string
		own        map[int]string
		also       string
	}{
		{"heater-bare", in("    thermostat = \"27 C\"\n", ""), nil, "all 60 enclosures of rack baby-rack"},
		{"heater-overshoot", in("27 C", "36 C"), nil, "all 60 enclosures of rack baby-rack"},
		{"heat-beneath", in("\"back\"", "\"under\""), nil, "all 60 enclosures of rack baby-rack"},
		{"heater-unguarded", in("\"back\"", "\"inside\""), nil, "all 60 enclosures of rack baby-rack"},
		{"heater-unchecked", in("  thermometer = true\n", ""), nil, "all 60 enclosures of rack baby-rack"},
		{"heater-unchecked", in("  thermometer = true\n", ""), map[int]string{1: "  climate {\n    humidity = \"60 to 70 %\"\n  }\n"}, "all 60 enclosures of rack baby-rack"},
		{"missing", in("    power      = \"180 W\"\n", ""), nil, ""},
		{"unknown-word", in("heater \"cable\"", "heater \"wire\""), nil, ""},
		{"value", in("places      = 60", "places      = 2"), nil, ""},
		{"value", in("places      = 60", "places      = 0"), nil, ""},
		{"channel-clash", babyRack, map[int]string{7: desert, 1: woodlice, 9: desert}, "2 enclosures: Tub 7 and 9"},
		{"channel-clash", in("    contact", "    channel = \"rack 1\"\n    contact"), map[int]string{7: desert, 1: woodlice, 9: desert}, "2 enclosures: Tub 7 and 9"},
	} {
		r := on(t, rackDay, rackHouse+c.rack+babyTub+racked(60, c.own), "")
		n := 0
		for _, f := range r.Findings {
			if f.Rule.ID != c.rule {
				continue
			}
			n++
			if !r.Plan.Rack("baby-rack").Says(f.At) {
				t.Errorf("%s stands at %v", c.rule, r.Plan.Files.Start(f.At))
			}
			said := f.Where + "\n"
			for _, a := range f.Also {
				said += a.Text + "\n"
			}
			if !strings.Contains(said, c.also) {
				t.Errorf("%s says %q", c.rule, said)
			}
		}
		if n != 1 {
			t.Errorf("%d findings of %s: %v", n, c.rule, foundIn(r))
		}
	}
}

// What one tub accepts is not told of it, and still of the others.
func TestAcceptInARack(t *testing.T) {
	accept := "  accept \"heater-unchecked\" {\n    because = \"air gap\"\n    until   = \"2027-02-01\"\n  }\n"
	bad := strings.Replace(babyRack, "  thermometer = true\n", "", 1)
	r := on(t, rackDay, rackHouse+bad+babyTub+racked(3, map[int]string{2: accept}), "")
	if all := foundIn(r); len(all) != 1 || r.Findings[0].Where != "2 enclosures: Tub 1 and 3" {
		t.Error(all)
	}
	every := map[int]string{1: accept, 2: accept, 3: accept}
	if r := on(t, rackDay, rackHouse+bad+babyTub+racked(3, every), ""); len(r.Findings) != 0 {
		t.Error(foundIn(r))
	}
}

// A rack written out as a climate block for each is the same to physics and to the rules
// of heat: only who reads which thermometer differs.
func TestRackWrittenOut(t *testing.T) {
	for _, power := range []string{"6 W", "180 W", "1200 W", "9000 W"} {
		for _, more := range []string{"", "  climate {\n    warm_end = \"27 C\"\n    cool_end = \"24 C\"\n  }\n", "  climate {\n    warm_end = \"30 C\"\n  }\n"} {
			own := map[int]string{}
			out := map[int]string{}
			watts := 0.0
			_, _ = fmt.Sscanf(power, "%f W", &watts)
			for i := 1; i <= 4; i++ {
				own[i] = more
				inner := "  climate {\n"
				if more != "" {
					inner = strings.TrimSuffix(more, "  }\n")
				}
				out[i] = "  room = \"east\"\n" + inner + "    thermometer = true\n" + strings.Replace(cable, "180 W", fmt.Sprintf("%g W", watts/60), 1) + "  }\n"
			}
			rack := on(t, rackDay, rackHouse+strings.Replace(babyRack, "180 W", power, 1)+babyTub+racked(4, own), "")
			alone := on(t, rackDay, rackHouse+strings.Replace(babyTub, "  rack    = \"baby-rack\"\n", "", 1)+racked(4, out), "")
			a, b := rack.Plan.Enclosure("tub-3"), alone.Plan.Enclosure("tub-3")
			x, known := balance.Of(rack.Plan, a, nil)
			y, _ := balance.Of(alone.Plan, b, nil)
			if !known || !slices.Equal(x.Lines(a, balance.Brought{}), y.Lines(b, balance.Brought{})) {
				t.Errorf("%s: physics differs:\n%s\n%s", power, strings.Join(x.Lines(a, balance.Brought{}), "\n"), strings.Join(y.Lines(b, balance.Brought{}), "\n"))
			}
			if got, want := rulesOf(rack), rulesOf(alone); !slices.Equal(got, want) {
				t.Errorf("%s %s: in the rack %v, written out %v", power, more, got, want)
			}
		}
	}
}

// rulesOf are the rules that are found, each once, with how bad it is.
func rulesOf(r *compile.Result) (all []string) {
	for _, f := range r.Findings {
		all = append(all, f.Rule.ID+" "+f.Severity.String())
	}
	slices.Sort(all)
	return slices.Compact(all)
}

// A tub without animals is no reason to read; the others' are. A rack without tubs is none,
// and nothing is said of it.
func TestEmptyTubsAndRacks(t *testing.T) {
	empty := "enclosure \"spare\" {\n  species = \"tliltocatl-albopilosus\"\n  rack    = \"baby-rack\"\n" + strings.Replace(tubBox, "    hides    = 1\n", "    places   = 2\n", 1) + "}\n"
	for name, c := range map[string]struct {
		text string
		want int
	}{
		"alone":            {empty, 0},
		"beside others":    {empty + babyTub + racked(2, nil), 1},
		"no tub at all":    {babyTub, 0},
		"all have died":    {babyTub + racked(1, nil), 0},
		"one of two lives": {babyTub + racked(2, nil), 1},
	} {
		log := ""
		if strings.Contains(name, "die") || strings.Contains(name, "live") {
			log = "2026-11-20 tub-1 died\n"
		}
		r := on(t, rackDay, rackHouse+babyRack+c.text, log)
		if n := len(readings(r)); r.Refused() || n != c.want {
			t.Errorf("%s: %d readings, %v", name, n, foundIn(r))
		}
	}
}

// A rack that is not there, one in another room than its tub, and one in no room of
// several are refused, each once.
func TestRackInItsRoom(t *testing.T) {
	west := "room \"west\" {\n  temperature = \"20 to 23 C\"\n}\n"
	nowhere := strings.Replace(babyRack, "  room        = \"east\"\n", "", 1)
	at := func(rooms ...string) map[int]string {
		own := map[int]string{}
		for i, x := range rooms {
			if x != "" {
				own[i+1] = "  room = \"" + x + "\"\n"
			}
		}
		return own
	}
	for _, c := range []struct {
		name, text, want string
	}{
		{"not there", strings.Replace(babyRack, "rack \"baby-rack\"", "rack \"old\"", 1) + babyTub + racked(4, nil), `unknown-name: there is no rack "baby-rack"`},
		{"another room", west + babyRack + babyTub + racked(4, at("", "west")), "it cannot stand in both"},
		{"the same room", west + babyRack + babyTub + racked(4, at("", "east")), ""},
		{"no room", west + nowhere + babyTub + racked(4, nil), `rack "baby-rack" has no room`},
		{"the room of its tubs", west + nowhere + babyTub + racked(2, at("west", "west")), ""},
		{"rooms of its tubs", west + nowhere + babyTub + racked(2, at("west", "east")), "it cannot stand in all of them"},
		{"some say theirs", west + nowhere + babyTub + racked(3, at("west", "west")), `rack "baby-rack" has no room`},
		{"a room that is not there", strings.Replace(babyRack, "\"east\"", "\"eest\"", 1) + babyTub + racked(4, nil), "there is no room"},
		{"the name of an enclosure", strings.Replace(babyRack, "\"baby-rack\"", "\"tub-1\"", 1) + strings.Replace(babyTub, "\"baby-rack\"", "\"tub-1\"", 1) + racked(2, nil), "has the name of an enclosure"},
		{"twice", babyRack + babyRack + babyTub + racked(2, nil), "is there twice"},
	} {
		r := on(t, rackDay, rackHouse+c.text, "")
		all := foundIn(r)
		switch {
		case c.want == "" && len(all) > 0:
			t.Errorf("%s: %v", c.name, all)
		case c.want != "" && (len(all) != 1 || !strings.Contains(all[0], c.want) || !r.Refused()):
			t.Errorf("%s: %v", c.name, all)
		}
	}
}

// Its own word goes before the template's, and the template's before the rack's.
func TestTemplateThenRack(t *testing.T) {
	rack := strings.Replace(babyRack, "  thermometer", "  shelf_rise  = \"1 to 2 C\"\n  stands_on   = \"wire\"\n  measured {\n    on    = \"2026-11-20\"\n    spot  = \"27 C\"\n    power = \"120 W\"\n  }\n  thermometer", 1)
	tub := strings.Replace(babyTub, "    hides", "    stands_on = \"feet\"\n    hides", 1)
	tub = strings.Replace(tub, "  animals", "  climate {\n    heater \"cable\" {\n      thermostat = \"26 C\"\n    }\n  }\n  animals", 1)
	own := map[int]string{
		2: "  climate {\n    thermometer = false\n    heater \"cable\" {\n      power = \"5 W\"\n    }\n    measured {\n      on  = \"2026-11-21\"\n      air = \"23 C\"\n    }\n  }\n  housing {\n    shelf_rise = \"3 C\"\n  }\n",
	}
	c, _ := planned.Files(t, planned.With(rackHouse+rack+tub+racked(2, own), ""))
	for name, want := range map[string]string{
		"tub-1": "feet 1 to 2 C true 3 W 26 C 27 C 2 W back",
		"tub-2": "feet 3 C false 5 W 26 C 0  0  back",
	} {
		e := c.Enclosure(name)
		h, m := e.Climate.Heaters[0], e.Climate.Measured
		spot, power := "0 ", "0 "
		if m.Spot.Set() {
			spot = m.Spot.V.String()
		}
		if m.Power.Set() {
			power = m.Power.V.String()
		}
		got := strings.Join([]string{e.Housing.StandsOn.V, e.Housing.ShelfRise.V.String(), fmt.Sprint(e.Climate.Thermometer.V), h.Power.V.String(), h.Thermostat.V.String(), spot, power, h.Place.V}, " ")
		if got != want || len(e.Climate.Heaters) != 1 {
			t.Errorf("%s: %s, not %s", name, got, want)
		}
	}
}

// What the log says of the rack counts for all in it; of a rack it takes what was done,
// skipped and measured, and nothing else follows from a line.
func TestLogOfARack(t *testing.T) {
	text := rackHouse + babyRack + babyTub + racked(3, nil)
	r := on(t, rackDay, text, "2026-11-27 baby-rack done reading\n2026-11-26 baby-rack done heat\n2026-11-27 baby-rack measured 25 C\n")
	if len(r.Findings) != 0 || readings(r)[0].Logged != r.Horizon.Today-1 {
		t.Error(foundIn(r), readings(r)[0].Logged)
	}
	r = on(t, rackDay, text, "2026-11-26 baby-rack skipped reading\n2026-11-27 baby-rack skipped heat\n")
	if all := foundIn(r); len(all) != 1 || !strings.Contains(all[0], "urgent need-missed") || r.Findings[0].Where != "all 3 enclosures of rack baby-rack" || len(r.Roster.Pressing) != 0 {
		t.Error(all, r.Roster.Pressing)
	}
	r = on(t, rackDay, text, "2026-11-26 baby-rack skipped reading\n2026-11-27 baby-rack skipped reading\n2026-11-28 baby-rack withdrawn skipped reading 2026-11-27\n")
	if len(r.Findings) != 0 {
		t.Error("taken back", foundIn(r))
	}
	r = on(t, rackDay, text, "2026-11-27 baby-rack measured 41 C\n")
	asked := 0
	for _, l := range r.Lives {
		asked += len(l.Asks)
	}
	if asked != 3 || r.Refused() {
		t.Error(asked, foundIn(r))
	}
	for _, line := range []string{"2026-11-27 baby-rack moult\n", "2026-11-27 baby-rack a fed\n", "2026-11-27 baby-rack died 2\n", "2026-11-27 baby-rack mites\n", "2026-11-27 tub-1 moved baby-rack\n"} {
		r = on(t, rackDay, text, line)
		if all := foundIn(r); len(all) != 1 || r.Refused() || len(unmet(r)) != 0 {
			t.Error(line, all)
		}
	}
	renamed := strings.Replace(babyRack, "rack \"baby-rack\" {", "rack \"nursery\" {\n  formerly = \"baby-rack\"", 1) + strings.Replace(babyTub, "\"baby-rack\"", "\"nursery\"", 1)
	r = on(t, rackDay, rackHouse+renamed+racked(3, nil), "2026-11-27 baby-rack done reading\n")
	if len(r.Findings) != 0 || readings(r)[0].Logged != r.Horizon.Today-1 {
		t.Error("by its old name", foundIn(r))
	}
}

// A calendar shows the reading where it shows any of the rack's tubs; where nobody is
// shown it, the need of none of them is met.
func TestCalendarsShowTheReading(t *testing.T) {
	west := "room \"west\" {\n  temperature = \"20 to 23 C\"\n}\n"
	text := rackHouse + west + babyRack + babyTub + racked(3, nil) + "enclosure \"other\" {\n  species = \"tliltocatl-albopilosus\"\n  room = \"west\"\n" + tubBox + tubAnimal + "}\n"
	for name, c := range map[string]struct {
		attrs string
		shown bool
	}{
		"one tub":       {"enclosures = [\"tub-2\"]", true},
		"two tubs":      {"enclosures = [\"tub-2\", \"tub-3\"]", true},
		"another":       {"enclosures = [\"other\"]", false},
		"its room":      {"rooms = [\"east\"]", true},
		"another room":  {"rooms = [\"west\"]", false},
		"the kind":      {"kinds = [\"heat\"]", true},
		"another kind":  {"kinds = [\"water\"]", false},
		"kind and tub":  {"kinds = [\"heat\"]\n  enclosures = [\"tub-3\"]", true},
		"its round":     {"rounds = [\"evening\"]", true},
		"by its keeper": {"keepers = [\"lead\"]", true},
	} {
		r := on(t, rackDay, text+"calendar \"some\" {\n  "+c.attrs+"\n}\n", "")
		n := 0
		for _, p := range r.Roster.Calendars[0].Picks() {
			if p.Entry.Rack != nil && p.Entry.Kind == schema.KindHeat {
				n++
			}
		}
		late := unmet(r)
		if (n == 1) != c.shown || n > 1 || slices.Contains(late, "tub-1") == c.shown {
			t.Errorf("%s: %d readings, unmet %v", name, n, late)
		}
	}
}

// A reading of all opens no box: neither what one tub is in, nor who stands in, nor how
// many go in takes it out.
func TestNoTubHoldsTheReading(t *testing.T) {
	text := rackHouse + "keeper \"relief\" {\n  phone = \"ring\"\n}\naway \"lead\" {\n  from  = \"2026-12-05\"\n  to    = \"2026-12-12\"\n  cover = \"relief\"\n}\n" + babyRack + babyTub + racked(3, nil)
	for name, c := range map[string]struct{ old, new, log string }{
		"as usual":           {},
		"one moults":         {log: "2026-11-28 tub-2 hanging\n"},
		"one has a sac":      {old: "juvenile", new: "adult", log: "2026-11-27 tub-2 laid\n"},
		"a venomous one":     {old: "tliltocatl-albopilosus", new: "poecilotheria-regalis"},
		"two go in together": {old: "  keeper = \"lead\"\n}", new: "  keeper = \"lead\"\n  people = 2\n}"},
	} {
		r := on(t, rackDay, strings.Replace(text, c.old, c.new, 1), c.log)
		e := readings(r)[0]
		if e.Days.CountFrom(r.Horizon.Today) != r.Horizon.Ahead() || e.Manners != nil || e.Shut != nil {
			t.Errorf("%s: %d days, %v %v", name, e.Days.CountFrom(r.Horizon.Today), e.Manners, e.Shut)
		}
	}
}

// A tub's own reading stays, and counts for it where the rack's is shown to nobody.
func TestOwnReadingBesideTheRacks(t *testing.T) {
	text := rackHouse + "round \"morning\" {\n  at = \"08:00\"\n  keeper = \"lead\"\n}\ncalendar \"morning\" {\n  rounds = [\"morning\"]\n}\n" + babyRack + babyTub
	evening := strings.Replace(text, "  room        = \"east\"\n", "  room        = \"east\"\n  round       = \"evening\"\n", 1)
	r := on(t, rackDay, evening+racked(3, map[int]string{2: "  care \"heat\" {\n    every = \"day\"\n    round = \"morning\"\n  }\n"}), "")
	if n := len(readings(r)); n != 2 {
		t.Errorf("%d readings", n)
	}
	if late := unmet(r); !slices.Equal(late, []string{"tub-1", "tub-3"}) {
		t.Error(late)
	}
	r = on(t, rackDay, text+racked(3, nil), "")
	if late := unmet(r); late != nil {
		t.Error("in the morning", late)
	}
	seldom := map[int]string{1: "  care \"heat\" {\n    every = \"2 days\"\n  }\n", 2: "  care \"heat\" {\n    off = true\n  }\n"}
	r = on(t, rackDay, rackHouse+babyRack+babyTub+racked(3, seldom), "")
	if late := unmet(r); late != nil {
		t.Error("what one says seldom, the rack does daily", late)
	}
}

// The rack is read as often as who needs it most.
func TestAsOftenAsAnyNeeds(t *testing.T) {
	slow := map[int]string{1: "  species = \"gromphadorhina-portentosa\"\n", 2: "  species = \"gromphadorhina-portentosa\"\n"}
	r := on(t, rackDay, rackHouse+babyRack+babyTub+racked(2, slow), "")
	if n := readings(r)[0].Words(); n != "every 3 days" {
		t.Error(n)
	}
	r = on(t, rackDay, rackHouse+babyRack+babyTub+racked(3, slow), "")
	if n := readings(r)[0].Words(); n != "every day" || unmet(r) != nil {
		t.Error(n, unmet(r))
	}
}
