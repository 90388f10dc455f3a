package compared_test

import (
	"fmt"
	"maps"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"vivary/compile/compare"
	"vivary/schema/civil"
)

// house is a sound collection of twelve tanks in two rooms, kept by two people.
func house() map[string]string {
	files := map[string]string{
		"shared.care.hcl": `collection "hall" {
  time_zone = "Europe/London"
}

keeper "ann" {
  trained = "venom, breeding, feeding"
}

keeper "bo" {
  trained = "venom, breeding, feeding"
}

round "early" {
  at     = "08:00"
  keeper = "ann"
}

round "late" {
  at     = "19:00"
  keeper = "bo"
}
`,
		"rooms.care.hcl": `room "north" {
  temperature = "22 to 25 C"
  humidity    = "50 to 65 %"
  round       = "early"
}

room "south" {
  temperature = "22 to 25 C"
  humidity    = "50 to 65 %"
  round       = "late"
}
`}
	for i := range 12 {
		room := "north"
		if i >= 6 {
			room = "south"
		}
		name := tank(i)
		files[name+".care.hcl"] = fmt.Sprintf(`enclosure %q {
  species = "pandinus-imperator"
  room    = %q

  housing {
    kind      = "glass"
    inside    = "90 x 45 x 45 cm"
    lid       = "solid, latched"
    vents     = "some"
    vents_at  = "top"
    substrate = "coir and topsoil"
    moisture  = "damp"
    depth     = "16 cm"
    hides     = 5
  }

  animals "adults" {
    count  = 2
    stage  = "adult"
    origin = "captive bred"
    paper  = "no. %d"
  }

  climate {
    warm_end    = "28 to 30 C"
    cool_end    = "24 to 26 C"
    night       = "22 to 25 C"
    humidity    = "70 to 80 %%"
    thermometer = true

    heater "mat" {
      power      = "25 W"
      size       = "28 x 43 cm"
      place      = "side"
      thermostat = "30 C"
    }
  }

  care "mist" {
    every  = "day"
    amount = "150 ml"
  }

  feeding "adults" {
    on         = ["tue", "fri"]
    per_animal = 2
    rotate     = ["cricket adult"]
  }
}
`, name, room, i)
	}
	return files
}

func tank(i int) string { return fmt.Sprintf("tank-%02d", i) }

// edit is one of which it is known what it does to whom.
type edit struct {
	name string
	do   func(files map[string]string, tank string)
	// way is the worst that it does to the animals, or noWay for nothing at all; of says to which
	// tanks besides the one it was made in.
	way  compare.Way
	says string // stands in an effect of it
	of   func(tank string) []string
}

const noWay = compare.Otherwise + 1

func put(old, now string) func(map[string]string, string) {
	return func(files map[string]string, tank string) {
		name := tank + ".care.hcl"
		if !strings.Contains(files[name], old) {
			panic(old)
		}
		files[name] = strings.Replace(files[name], old, now, 1)
	}
}

func room(tank string) string {
	if tank < "tank-06" {
		return "north"
	}
	return "south"
}

// neighbours are all tanks of the room.
func neighbours(of string) (out []string) {
	for i := range 12 {
		if room(tank(i)) == room(of) {
			out = append(out, tank(i))
		}
	}
	return out
}

// What each edit does: figures of the emperor scorpion's sheet decide, 60 to 90 % for the air, 3
// days for the damp, 14 for an adult's meals, and it is kept in groups.
var edits = []edit{
	{name: "misting too seldom", do: put(`every  = "day"`, `every  = "9 days"`), way: compare.Harm, says: "moisture"},
	{name: "misting less often", do: put(`every  = "day"`, `every  = "2 days"`), way: compare.Worse, says: "every day → every 2 days"},
	{name: "misting less water", do: put(`"150 ml"`, `"120 ml"`), way: compare.Otherwise, says: "water brought in"},
	{name: "drier", do: put(`"70 to 80 %"`, `"45 to 55 %"`), way: compare.Worse, says: "humidity"},
	{name: "warmer aim", do: put(`warm_end    = "28 to 30 C"`, `warm_end    = "28 to 29 C"`), way: compare.Otherwise, says: "warm end"},
	{name: "no thermostat", do: put("      thermostat = \"30 C\"\n", ""), way: compare.Harm, says: "thermostat"},
	{name: "more prey", do: put("per_animal = 2", "per_animal = 3"), way: compare.Otherwise, says: "→ 6 items a week"},
	{name: "fed once a week", do: put(`["tue", "fri"]`, `["tue"]`), way: compare.Worse, says: "every 3 to 4 days → every 7 days"},
	{name: "fed another day", do: put(`["tue", "fri"]`, `["wed", "sat"]`), way: noWay},
	{name: "a lid with a gap", do: put(`"solid, latched"`, `"mesh"`), way: compare.Harm, says: "lid"},
	{name: "another animal", do: put("count  = 2", "count  = 3"), way: compare.Worse, says: "2 adult"},
	{name: "a title", do: put("  species =", "  title   = \"The tall one\"\n  species ="), way: noWay},
	{name: "a note", do: put("  species =", "  note    = \"by the door\"\n  species ="), way: noWay},
	{name: "a comment", do: put("  species =", "  # by the door\n  species ="), way: noWay},
	{name: "another order of lines", do: put("    count  = 2\n    stage  = \"adult\"\n", "    stage  = \"adult\"\n    count  = 2\n"), way: noWay},
	{name: "another file", do: func(files map[string]string, tank string) {
		files["moved/"+tank+".care.hcl"] = files[tank+".care.hcl"]
		delete(files, tank+".care.hcl")
	}, way: noWay},
	{name: "a new name", do: put(`enclosure "tank-`, "enclosure \"basin-"), way: compare.Harm, says: "had 2 animals before this change, and the plan has it no more. \"basin-03\" is new", of: func(string) []string { return nil }},
	{name: "a tank more", do: func(files map[string]string, tank string) {
		files["zz-"+tank+".care.hcl"] = strings.Replace(files[tank+".care.hcl"], `enclosure "tank-`, `enclosure "more-`, 1)
	}, way: compare.Otherwise, says: "new", of: func(tank string) []string { return []string{"more-" + tank[5:]} }},
	{name: "a colder room", do: func(files map[string]string, tank string) {
		text := files["rooms.care.hcl"]
		at := strings.Index(text, `room "`+room(tank))
		files["rooms.care.hcl"] = text[:at] + strings.Replace(text[at:], `"22 to 25 C"`, `"5 to 8 C"`, 1)
	}, way: compare.Harm, says: "", of: neighbours},
	{name: "away and nobody comes", do: func(files map[string]string, tank string) {
		who := map[string]string{"north": "ann", "south": "bo"}[room(tank)]
		files["shared.care.hcl"] += fmt.Sprintf("\naway %q {\n  from = \"2027-02-01\"\n  to   = \"2027-02-16\"\n}\n", who)
	}, way: compare.Harm, says: "water", of: neighbours},
}

// TestEdits: of edits at random, one to three in one change, the comparison names exactly the
// tanks to which something was done, the worst first, each with the line that did it.
func TestEdits(t *testing.T) {
	day := civil.Must(2026, 11, 30)
	base := house()
	if r := between(t, base, base, day); r.Is.Refused() {
		t.Fatal(r.Is.Findings)
	}
	rng := rand.New(rand.NewPCG(7, 9))
	for n := range 90 {
		is := maps.Clone(base)
		var did []string
		want := map[string]bool{}
		worst, of := noWay, map[string]bool{}
		rooms := map[string]bool{}
		for range 1 + n%3 {
			e := edits[(n+rng.IntN(len(edits)))%len(edits)]
			if n < len(edits) {
				e = edits[n] // each by itself
			}
			at := tank(rng.IntN(12))
			touched := []string{at}
			switch {
			case e.of != nil:
				touched = e.of(at)
			case e.way == noWay:
				touched = nil
			}
			if e.name == "a new name" || rooms[room(at)] || slices.ContainsFunc(did, func(s string) bool { return strings.HasSuffix(s, at) }) {
				continue
			}
			if len(touched) > 1 {
				rooms[room(at)] = true
				if len(did) > 0 {
					continue
				}
			}
			e.do(is, at)
			did = append(did, e.name+" in "+at)
			for _, x := range touched {
				want[x] = true
			}
			if e.way < worst {
				worst, of = e.way, map[string]bool{}
			}
			if e.way == worst {
				for _, x := range touched {
					of[x] = true
				}
			}
			if n < len(edits) {
				break
			}
		}
		r := between(t, base, is, day)
		got := map[string]bool{}
		for _, e := range r.Effects {
			for _, x := range e.Of {
				got[x] = true
			}
		}
		if !maps.Equal(got, want) {
			t.Errorf("%q: named %v, not %v\n%s", did, slices.Sorted(maps.Keys(got)), slices.Sorted(maps.Keys(want)), printed(r))
			continue
		}
		if len(r.Effects) == 0 {
			if worst != noWay {
				t.Errorf("%q: nothing is told", did)
			}
			continue
		}
		first := r.Effects[0]
		if first.Way != worst || slices.ContainsFunc(first.Of, func(x string) bool { return !of[x] }) {
			t.Errorf("%q: first is %s of %v, not %s of %v\n%s", did, first.Way, first.Of, worst, slices.Sorted(maps.Keys(of)), printed(r))
		}
		causes(t, did, r)
	}
}

// causes holds that every effect has a line that did it, in the tank's own file or in what is
// shared.
func causes(t *testing.T, did []string, r *compare.Report) {
	t.Helper()
	for _, e := range r.Effects {
		if len(e.Cause) == 0 {
			t.Errorf("%q: nothing causes %s %s %s", did, e.Of, e.Name, e.Is)
		}
		for _, i := range e.Cause {
			p := &r.Pieces[i]
			if p.Type == "enclosure" && !slices.Contains(e.Of, p.Name) && len(e.Of) > 0 {
				t.Errorf("%q: %s %s is said to come from %s", did, e.Of, e.Name, p.Path())
			}
		}
	}
}

func printed(r *compare.Report) string {
	var out strings.Builder
	_ = r.Print(&out, true)
	return out.String()
}

// TestEditsSay: what each edit by itself does stands in its effect.
func TestEditsSay(t *testing.T) {
	day := civil.Must(2026, 11, 30)
	base := house()
	for _, e := range edits {
		is := maps.Clone(base)
		e.do(is, tank(3))
		text := printed(between(t, base, is, day))
		if !strings.Contains(text, e.says) {
			t.Errorf("%s: %q does not stand in\n%s", e.name, e.says, text)
		}
	}
}
