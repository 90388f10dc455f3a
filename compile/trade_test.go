package compile_test

import (
	"strings"
	"testing"

	"vivary/compile/explain"
	"vivary/plan/finding"
)

// tank is an emperor scorpion in 10 US gal, 20 x 10 x 12 in, as many keep it; more takes the
// place of what it has.
func tank(more ...string) string {
	text := `collection "house" {
  time_zone = "America/New_York"
}
room "r" {
  temperature = "76 to 82 F"
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
  # climate
  animals "all" {
    count  = "0.1.0"
    stage  = "adult"
    origin = "captive bred"
    paper  = "invoice 3"
  }
  # care
}
`
	return strings.NewReplacer(more...).Replace(text)
}

// cautioned are the rules that say more than advice of a plan.
func cautioned(t *testing.T, text, log string) (rules []string) {
	t.Helper()
	for _, f := range on(t, "2027-03-02", text, log).Findings {
		if f.Severity > finding.Advice {
			rules = append(rules, f.Rule.ID+": "+f.Text)
		}
	}
	return rules
}

// TestTrade: what keepers of emperor scorpions say and do is accepted without a caution. All
// of it is common practice, no source, but for the warm end (80 to 90 F, source K2) and a
// meal every other day (K12).
func TestTrade(t *testing.T) {
	feeding := func(text string) []string {
		return []string{"# care", "feeding \"all\" {\n" + text + "\n  }"}
	}
	mat := func(place, at string) string {
		return " heater \"mat\" {\n power = \"12 W\"\n size = \"11 x 9 in\"\n place = \"" + place + "\"\n thermostat = \"" + at + "\"\n }\n"
	}
	const lamp = " heater \"lamp\" {\n power = \"25 W\"\n place = \"above\"\n hours = \"10 h\"\n thermostat = \"86 F\"\n }\n"
	heated := func(ends, heaters string) []string {
		return []string{"# climate", "climate {\n" + ends + " night = \"76 F\"\n thermometer = true\n" + heaters + " }"}
	}
	juvenile := []string{"count  = \"0.1.0\"\n    stage  = \"adult\"", "count  = 1\n    stage  = \"juvenile\"\n    born   = \"2026-03-02\""}
	group := []string{"20 x 10 x 12 in", "36 x 18 x 16 in", "0.1.0", "1.2.0", "hides     = 1", "hides     = 3"}
	for name, c := range map[string]struct {
		more []string
		log  string
	}{
		"one in 10 US gal":                    {},
		"near 90 F at the warm end":           {more: heated(" warm_end = \"90 F\"\n cool_end = \"78 F\"\n", mat("back", "90 F"))},
		"a mat at the side":                   {more: heated("", mat("side", "86 F"))},
		"a lamp above":                        {more: heated("", lamp)},
		"a lamp above and a mat at the back":  {more: heated("", lamp+mat("back", "86 F"))},
		"misted and watered daily":            {more: []string{"# care", "care \"mist\" {\n    every  = \"day\"\n    amount = \"50 ml\"\n  }\n  care \"water\" {\n    every = \"day\"\n  }"}},
		"eight crickets a week":               {more: feeding("on = [\"tue\", \"fri\"]\n per_animal = 4\n rotate = [\"cricket adult\", \"roach medium\"]")},
		"every other day":                     {more: feeding("every = \"2 days\"\n per_animal = 1\n rotate = [\"cricket adult\", \"cricket adult\", \"mealworm large\"]")},
		"roaches and mealworms beside them":   {more: feeding("on = [\"tue\", \"fri\"]\n per_animal = 3\n rotate = [\"cricket adult\", \"roach medium\", \"mealworm large\"]")},
		"mealworms alone for a while":         {more: feeding("on = [\"tue\", \"fri\"]\n per_animal = 4\n prey = \"mealworm large\"")},
		"small crickets, more of them":        {more: feeding("on = [\"tue\", \"fri\"]\n per_animal = 10\n rotate = [\"cricket small\", \"cricket medium\"]")},
		"juveniles more often":                {more: append(feeding("every = \"2 days\"\n per_animal = 1\n rotate = [\"cricket small\", \"cricket medium\", \"roach small\", \"mealworm medium\"]"), juvenile...)},
		"juveniles daily":                     {more: append(feeding("every = \"day\"\n per_animal = 1\n prey = \"cricket small\""), juvenile...)},
		"a group, usually peaceful":           {more: group},
		"a group on eight each":               {more: append(feeding("on = [\"tue\", \"fri\"]\n per_animal = 4\n rotate = [\"cricket adult\", \"roach medium\", \"mealworm large\"]"), group...)},
		"a solid top that is fastened":        {more: []string{"solid, latched", "solid, locked"}},
		"born over hours, and on her for now": {log: "2027-02-27 tank all born 18\n2027-02-28 tank all born 12\n"},
	} {
		if got := cautioned(t, tank(c.more...), c.log); got != nil {
			t.Errorf("%s: %q", name, got)
		}
	}
}

// What the trade warns of is found.
func TestTradeWarns(t *testing.T) {
	for name, c := range map[string]struct {
		rule string
		more []string
	}{
		"a group in 10 US gal":         {"floor-small", []string{"0.1.0", "1.2.0", "hides     = 1", "hides     = 3"}},
		"a mesh top":                   {"mesh-top", []string{"solid, latched", "mesh, latched"}},
		"a top that is not fastened":   {"lid-loose", []string{"solid, latched", "solid, loose"}},
		"pinheads for a grown one":     {"prey-outgrown", []string{"# care", "feeding \"all\" {\n every = \"4 days\"\n per_animal = 30\n prey = \"cricket pinhead\"\n }"}},
		"two pinheads a week":          {"food-energy", []string{"# care", "feeding \"all\" {\n every = \"4 days\"\n per_animal = 1\n prey = \"cricket pinhead\"\n }"}},
		"a lamp of ultraviolet light":  {"uv-lamp", []string{"# climate", "climate {\n heater \"lamp\" {\n power = \"13 W\"\n place = \"above\"\n uv = true\n }\n }"}},
		"hotter than any page has it":  {"temperature-harmful", []string{"# climate", "climate {\n warm_end = \"99 F\"\n }"}},
		"two sexes and one hide":       {"hides-few", []string{"20 x 10 x 12 in", "36 x 18 x 16 in", "0.1.0", "1.2.0"}},
		"a grown roach for a juvenile": {"prey-heavy", []string{"count  = \"0.1.0\"\n    stage  = \"adult\"", "count  = 1\n    stage  = \"juvenile\"", "# care", "feeding \"all\" {\n every = \"4 days\"\n prey = \"roach adult\"\n }"}},
	} {
		if got := worst(on(t, "2027-03-02", tank(c.more...), ""), c.rule); got == "" {
			t.Errorf("%s: nothing of %s", name, c.rule)
		}
	}
}

// What keepers ask of the animal itself is answered, each with its source, or as practice.
func TestTradeIsAnswered(t *testing.T) {
	r := on(t, "2027-03-02", tank("# care", "feeding \"all\" {\n on = [\"tue\", \"fri\"]\n per_animal = 4\n rotate = [\"cricket adult\", \"roach medium\", \"mealworm large\"]\n }"), "")
	for _, c := range []struct{ word, says, by string }{
		{"looks", "telson", "common practice, no source"},
		{"looks", "is white", "common practice, no source"},
		{"glow", "just after a moult", "American Museum of Natural History"},
		{"light", "avoids light", "Kloock"},
		{"uv-not", "true", "bleached the glow"},
		{"drying", "smallest dry first", "Withers"},
		{"venom", "mild", "swelling at half an hour, going down by an hour and a half (common practice, no source)"},
		{"brood-size", "8 to 35", "over hours (common practice, no source)"},
		{"on-mother", "14 to 21 days", "3 weeks"},
		{"items-a-week", "1 to 6", "about 8 (common practice, no source)"},
		{"warm-spot", "80 to 90 F", "reptiliansource.com"},
		{"prey-length-least", "8 %", "Menemerus taeniatus"},
		{"prey-length-share", "100 %", "without the tail"},
		{"pandinus-imperator", "Pandinoides cavimanus", "Heterometrus"},
		{"tank", "Check: sold as emperor scorpion, or taken for it: Heterometrus, Pandinoides cavimanus", "looks (adult)"},
		{"tank", "One item brings: cricket adult 0.65 kcal, roach medium 1.4 kcal (1.1 to 1.8), mealworm large 0.3 kcal", "Withers and Smith 1993"},
		{"Pandinus cavimanus", "Species pandinoides-cavimanus", "Also called"},
		{"B. albopilosum", "Species tliltocatl-albopilosus", "Brachypelma albopilosum"},
	} {
		var b strings.Builder
		for _, a := range explain.Of(r, c.word) {
			b.WriteString(a.Title + "\n")
			for _, p := range a.Parts {
				for _, l := range p.Lines {
					b.WriteString(l.Name + " " + l.Text + "\n" + strings.Join(l.Under, "\n") + "\n")
				}
			}
		}
		if text := b.String(); !strings.Contains(text, c.says) || !strings.Contains(text, c.by) {
			t.Errorf("%s: no %q and %q in\n%s", c.word, c.says, c.by, text)
		}
	}
}
