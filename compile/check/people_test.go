package check_test

import (
	"fmt"
	"strings"
	"testing"

	"vivary/plan/finding"
	"vivary/schema/civil"
)

// person is a keeper block with a number, and what they are trained in.
func person(name, trained string) string {
	text := fmt.Sprintf("keeper %q {\n  phone = \"at the door\"\n", name)
	if trained != "" {
		text += fmt.Sprintf("  trained = %q\n", trained)
	}
	return text + "}\n"
}

// trip is an absence. Days are of December 2026, or of January for those after 31.
func trip(who string, from, to int, rest ...string) string {
	date := func(d int) string {
		if d > 31 {
			return fmt.Sprintf("2027-01-%02d", d-31)
		}
		return fmt.Sprintf("2026-12-%02d", d)
	}
	return fmt.Sprintf("away %q {\n  from = %q\n  to = %q\n  %s\n}\n", who, date(from), date(to), strings.Join(rest, "\n  "))
}

const (
	all    = "venom, hairs, breeding, feeding"
	relief = `cover = "relief"`
	twice  = `visits = ["tue", "sat"]`
	evens  = `visits = ["mon", "wed", "fri", "sun"]`
	pair   = "round \"evening\" {\n  at     = \"19:30\"\n  keeper = \"lead\"\n  people = 2\n}\n"

	// deathstalker is a sheet of a species whose venom is a danger to life, and a box of it.
	deathstalker = `species "leiurus" {
  title = "deathstalker"
  like  = "hadrurus-arizonensis"
  source  = ["own records"]
  quality = "own"
  seen    = "2026-10-01"
  figure "temperature-hard" {
    value = "5 to 42 C"
  }
  figure "temperature-soft" {
    value = "20 to 35 C"
  }
  figure "temperature-target" {
    value = "25 to 32 C"
  }
  figure "keeping" {
    value = "alone"
  }
  figure "length" {
    value = "10 to 13 cm"
  }
  figure "mass" {
    value = "5 to 10 g"
  }
  figure "cites" {
    value = "none"
  }
  figure "venom" {
    value   = "medically significant"
    source  = ["own records"]
    quality = "own"
    seen    = "2026-10-01"
    because = "the species differs in this"
    review  = "2027-10-01"
  }
}
room "east" {
  temperature = "24 to 26 C"
  humidity    = "50 to 60 %"
  locked      = true
}
enclosure "vault" {
  species = "leiurus"
  room    = "east"
  housing {
    kind      = "glass"
    inside    = "40 x 30 x 30 cm"
    lid       = "solid, locked"
    vents     = "some"
    substrate = "sand and clay"
    moisture  = "dry"
    depth     = "15 cm"
    hides     = 1
  }
  animals "female" {
    count  = "0.1"
    stage  = "adult"
    origin = "captive bred"
  }
}
`
)

// nursery is a box with one female.
const nursery = `enclosure "box" {
  species = "pandinus-imperator"
  room    = "east"
  housing {
    kind      = "glass"
    inside    = "76 x 46 x 41 cm"
    lid       = "solid, latched"
    vents     = "some"
    substrate = "coir and topsoil"
    moisture  = "damp"
    depth     = "16 cm"
    hides     = 4
  }
  animals "mother" {
    count  = "0.1"
    stage  = "adult"
STATE    origin = "captive bred"
    paper  = "invoice 118"
  }
  climate {
    warm_end    = "28 to 29 C"
    cool_end    = "26 C"
    night       = "22 to 25 C"
    humidity    = "70 to 82 %"
    thermometer = true
    heater "mat" {
      power      = "25 W"
      size       = "28 x 43 cm"
      place      = "side"
      thermostat = "29 C"
    }
  }
}
`

// Ordinary practice with helpers builds without a word of people: no caution, no worse.
func TestOrdinaryHelpers(t *testing.T) {
	lead, untrained, trained := person("lead", all), person("relief", ""), person("relief", all)
	for i, text := range []string{
		lead + untrained,
		lead + untrained + trip("lead", 5, 6, relief),
		lead + untrained + trip("lead", 5, 8, relief),
		lead + untrained + trip("lead", 5, 12, relief),
		lead + trained + trip("lead", 5, 19, relief),
		lead + untrained + trip("lead", 5, 12, relief, evens),
		lead + trained + trip("lead", 5, 12, relief, evens),
		lead + untrained + trip("lead", 5, 8, relief) + trip("lead", 8, 12, relief),  // touch
		lead + untrained + trip("lead", 5, 10, relief) + trip("lead", 8, 13, relief), // overlap
		lead + untrained + trip("lead", 5, 13, relief) + trip("lead", 7, 9, relief),  // nested
		lead + trained + trip("relief", 5, 19),
		lead + trained + person("third", "") + trip("lead", 5, 12, relief) + trip("relief", 20, 30),
		person("lead", "") + untrained + trip("lead", 5, 10, relief),
		lead + trained + pair,
		lead + trained + person("third", "feeding") + pair,
		lead + trained + person("third", all) + pair + trip("third", 5, 19),
		lead + trained + person("third", all) + pair + trip("relief", 5, 19),
		lead + trained + trip("lead", 5, 10, relief) + "2026-11-01 box mated\n",
		lead + untrained + trip("lead", 5, 10, relief) + "2026-11-01 box mated\n",
		lead + trained + deathstalker,
		lead + trained + deathstalker + trip("lead", 5, 10, relief),
		lead + trained + deathstalker + pair,
		lead + trained + person("third", "venom") + deathstalker + pair + trip("relief", 5, 12),
		lead + person("second", all) + untrained + deathstalker + trip("lead", 5, 8, relief),
	} {
		r := compiled(t, text)
		var heard []finding.Finding
		for _, f := range r.Findings {
			if f.Severity >= finding.Caution {
				heard = append(heard, f)
			}
		}
		if len(heard) > 0 {
			t.Errorf("%d:\n%s\n%s", i, text[max(0, strings.LastIndex(text, "keeper")):], printed(r, heard))
		}
	}
}

// What the plan writes of both is an error, and what the log brought is urgent and never
// refuses. Each names the days and who is there.
func TestLeftUntrained(t *testing.T) {
	lead, untrained, trained := person("lead", all), person("relief", "feeding"), person("relief", all)
	mother := func(state string) string {
		return strings.Replace(nursery, "STATE", state, 1)
	}
	const brood = "  state  = \"with brood\"\n"
	for _, c := range []struct {
		title, text string
		want        string // severity and what is said, "" for nothing
	}{
		{"written, and nobody trained", lead + untrained + trip("lead", 5, 8, relief) + mother(brood), "error: nobody trained in breeding is there (Relief stands in)"},
		{"written, and somebody trained", lead + trained + trip("lead", 5, 8, relief) + mother(brood), ""},
		{"written, and nobody at all", lead + untrained + trip("lead", 5, 8) + mother(brood), "error: from Sat 5 Dec 2026 to Mon 7 Dec 2026 nobody trained in breeding is there"},
		{"logged, and nobody trained", lead + untrained + trip("lead", 5, 8, relief) + mother("") + "2026-11-20 box born 12\n", "urgent: from Sat 5 Dec 2026 to Mon 7 Dec 2026 nobody trained in breeding is there (Relief stands in)"},
		{"logged, and a long way off", lead + untrained + trip("lead", 5, 35, relief) + mother("") + "2026-11-20 box born 12\n", "urgent: from Sat 5 Dec 2026 to "},
		{"logged, and somebody trained", lead + trained + trip("lead", 5, 8, relief) + mother("") + "2026-11-20 box born 12\n", ""},
		{"long before", lead + untrained + trip("lead", 40, 43, relief) + mother(""), ""},
		{"visits of who is trained leave days out", lead + trained + trip("lead", 5, 12, relief, twice) + mother(brood), "error: from Sun 6 Dec 2026 to Fri 11 Dec 2026"},
		{"mites last week", lead + person("relief", "") + trip("lead", 5, 8, relief) + "2026-11-20 box mites\n", "urgent: nobody trained in breeding or feeding is there"},
		{"mites last week, and who is trained", lead + untrained + trip("lead", 5, 8, relief) + "2026-11-20 box mites\n", ""},
	} {
		t.Run(c.title, func(t *testing.T) {
			r := compiled(t, c.text)
			found := of(r, "left-untrained")
			if c.want == "" {
				if len(found) > 0 {
					t.Error(printed(r, found))
				}
				return
			}
			severity, text, _ := strings.Cut(c.want, ": ")
			if len(found) != 1 || found[0].Severity.String() != severity || !strings.Contains(found[0].Text, text) {
				t.Fatalf("want %s\n%s", c.want, printed(r, r.Findings))
			}
			if severity == "urgent" && r.Refused() {
				t.Errorf("what was seen refuses:\n%s", printed(r, r.Findings))
			}
		})
	}
}

// Before the absence the round asks whoever is there to see to it, on the last two weeks
// only; in it, whoever stands in is told whom to ring; and no line outlasts its days.
func TestLeftUntrainedStandsFirst(t *testing.T) {
	lead, relief := person("lead", all), person("relief", "feeding")
	r := compiled(t, lead+relief+trip("lead", 20, 24, `cover = "relief"`)+strings.Replace(nursery, "STATE", "", 1)+"2026-11-24 box born 12\n")
	found := of(r, "left-untrained")
	if len(found) != 1 || len(found[0].First) != 2 {
		t.Fatal(printed(r, r.Findings))
	}
	for _, first := range found[0].First {
		for on, want := range map[string]bool{"2026-12-05": false, "2026-12-06": true, "2026-12-19": true, "2026-12-20": false, "2026-12-23": false, "2026-12-24": false} {
			if strings.HasPrefix(first.Text, "ring Lead: ") {
				want = on == "2026-12-20" || on == "2026-12-23"
			} else if !strings.HasPrefix(first.Text, "before leaving, see that somebody trained in breeding comes by from Sun 20 Dec to Wed 23 Dec") {
				t.Error(first.Text)
			}
			if d, _ := civil.Parse(on); first.On(d) != want {
				t.Errorf("%s on %s: %v", first.Text, on, first.On(d))
			}
		}
	}
}

// Where whoever stands in may not give a logged brood and its mother water, or meals, it
// is urgent; who is trained in feeding gives both through the hatch.
func TestBroodUnserved(t *testing.T) {
	for _, c := range []struct{ trained, want string }{{"", "urgent"}, {"hairs", "urgent"}, {"feeding", ""}, {"breeding", ""}} {
		r := compiled(t, person("lead", all)+person("relief", c.trained)+trip("lead", 10, 24, relief)+strings.Replace(nursery, "STATE", "", 1)+"2026-11-20 box born 12\n")
		found, got := of(r, "water-gap"), ""
		if len(found) > 0 {
			got = found[0].Severity.String()
			if !strings.Contains(found[0].Write, `feeding under trained of keeper "relief"`) {
				t.Error(found[0].Write)
			}
		}
		if got != c.want || r.Refused() {
			t.Errorf("trained in %q: %s\n%s", c.trained, got, printed(r, r.Findings))
		}
	}
	// The plan itself writes both.
	r := compiled(t, person("lead", all)+person("relief", "")+trip("lead", 10, 24, relief)+strings.Replace(nursery, "STATE", "  state  = \"with brood\"\n", 1))
	if found := of(r, "left-untrained"); len(found) != 1 || found[0].Severity != finding.Error || !strings.Contains(printed(r, found), "without fresh water") {
		t.Error(printed(r, r.Findings))
	}
}

// A box that stays shut bears it as long as a full dish does, and no longer; and somebody
// who is trained has to be there to be rung.
func TestShutBox(t *testing.T) {
	lead, second, sitter := person("lead", all), person("second", all), person("relief", "")
	for _, c := range []struct {
		title, text string
		want        string // the rules that refuse
	}{
		{"three days", lead + second + sitter + deathstalker + trip("lead", 5, 8, relief), ""},
		{"three weeks", lead + second + sitter + deathstalker + trip("lead", 5, 26, relief), "water-gap"},
		{"three weeks, by who is trained", lead + second + deathstalker + trip("lead", 5, 26, `cover = "second"`), ""},
		{"nobody to ring", lead + sitter + deathstalker + trip("lead", 5, 8, relief), "venom-untrained"},
		{"nobody to ring on the last day", lead + second + sitter + deathstalker + trip("lead", 5, 8, relief) + trip("second", 7, 20), "venom-untrained"},
	} {
		t.Run(c.title, func(t *testing.T) {
			r := compiled(t, c.text)
			var got []string
			for _, f := range r.Findings {
				if f.Severity.Refuses() {
					got = append(got, f.Rule.ID)
				}
			}
			if strings.Join(got, " ") != c.want {
				t.Errorf("want %q\n%s", c.want, printed(r, r.Findings))
			}
		})
	}
}

// What waits for a second is not done alone: for a few days it is a caution, and it refuses
// where a need is not met.
func TestFewForDays(t *testing.T) {
	lead, second := person("lead", all), person("relief", all)
	for _, c := range []struct {
		title, text string
		few         finding.Severity
		refused     bool
	}{
		{"a weekend", lead + second + pair + trip("relief", 5, 8), finding.Caution, false},
		{"three weeks in which nobody opens a vault", lead + second + deathstalker + pair + trip("relief", 5, 26), finding.Caution, true},
		{"nobody else at all", lead + pair, finding.Error, true},
	} {
		t.Run(c.title, func(t *testing.T) {
			r := compiled(t, c.text)
			said := false
			for _, f := range r.Findings {
				said = said || f.Rule.ID == "people-few" && f.Severity == c.few
				for _, a := range f.Also { // beneath what is worse
					said = said || strings.Contains(a.Text, "the Evening round takes 2 people")
				}
			}
			if !said || r.Refused() != c.refused {
				t.Errorf("refused is %v\n%s", r.Refused(), printed(r, r.Findings))
			}
		})
	}
}
