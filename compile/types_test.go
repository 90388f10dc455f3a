package compile_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"vivary/plan/finding"
)

// typed is a collection with a species of one's own and one enclosure of it.
func typed(latin, kind, figures, room, housing, animals string) string {
	var own strings.Builder
	for line := range strings.SplitSeq(figures, "\n") {
		if name, value, ok := strings.Cut(strings.TrimSpace(line), " "); ok {
			fmt.Fprintf(&own, "  figure %q {\n    value = %q\n  }\n", name, value)
		}
	}
	return `collection "house" {
  time_zone  = "Europe/London"
  quarantine = "60 days"
}
room "east" {
` + room + `
}
keeper "lead" {
  trained = "venom, hairs"
}
round "evening" {
  at     = "19:30"
  keeper = "lead"
}
species "mine" {
  latin   = "` + latin + `"
  type    = "` + kind + `"
  source  = ["own records"]
  quality = "own"
  seen    = "2026-10-01"
` + own.String() + `}
enclosure "box" {
  species = "mine"
  housing {
` + housing + `
  }
  animals "one" {
    ` + animals + `
    origin = "captive bred"
    paper  = "invoice 1"
  }
}
`
}

const (
	mild = "  temperature = \"22 to 25 C\"\n  humidity = \"45 to 65 %\""
	lock = mild + "\n  locked = true"
	one  = "count = 1\n    stage = \"adult\""
	dark = `temperature-target 24 to 30 C
night 20 to 24 C
keeping alone
cites none
`
	tarantula = `temperature-target 22 to 26 C
night 18 to 24 C
keeping alone
venom mild
hairs none
cites none
`
)

func inside(size, depth, lid, moisture, more string) string {
	return "    kind = \"glass\"\n    inside = \"" + size + "\"\n    lid = \"" + lid + "\"\n    substrate = \"sand and clay\"\n    moisture = \"" + moisture + "\"\n    depth = \"" + depth + "\"\n    hides = 1\n" + more
}

// watered has the dish filled so often.
func watered(every, text string) string {
	return strings.Replace(text, "  animals \"one\"", "  care \"water\" {\n    every = \""+every+"\"\n  }\n  animals \"one\"", 1)
}

// What a type judges of a species that nothing else is known of. The cases are those of a
// page of facts on care types: what suits every member passes without a word, what is
// wrong for every member does not, and between them it is said that it is not known.
func TestTypesJudge(t *testing.T) {
	latched, cross := "solid, latched", "    vents = \"cross\"\n"
	for _, c := range []struct{ name, text, want string }{
		{"1 a burrower of the desert", typed("Parabuthus granulatus (Ehrenberg, 1831)", "desert-burrowing-scorpion", dark+"length 9 to 15 cm\nvenom medically significant", lock,
			inside("45 x 30 x 30 cm", "16 cm", "solid, locked", "dry", ""), one), ""},
		{"2 its venom unsaid", typed("Parabuthus granulatus (Ehrenberg, 1831)", "desert-burrowing-scorpion", dark+"length 9 to 15 cm", lock,
			inside("45 x 30 x 30 cm", "16 cm", "solid, locked", "dry", ""), one), "venom-unsaid error"},
		{"3 its venom called mild", typed("Parabuthus granulatus (Ehrenberg, 1831)", "desert-burrowing-scorpion", dark+"length 9 to 15 cm\nvenom mild", lock,
			inside("45 x 30 x 30 cm", "16 cm", "solid, locked", "dry", ""), one), "venom-doubted error"},
		{"15 a tree spider whose bite cramps", typed("Poecilotheria striata Pocock, 1895", "arboreal-tarantula", tarantula+"length 6 cm\nspan 16 cm", mild,
			inside("25 x 25 x 40 cm", "4 cm", latched, "dry", cross+"    perches = true\n"), one), "venom-doubted error"},
		{"5 nine in a tube", typed("Parabuthus villosus (Peters, 1862)", "desert-burrowing-scorpion", "length 9 to 15 cm", "  temperature = \"2 to 55 C\"",
			inside("8 x 6 x 60 cm", "1 cm", "solid, loose", "dry", ""), "count = 9\n    stage = \"adult\""), "hides-few caution, lid-loose error, not-judged caution, room-too-hot danger, venom-unsaid error"},
		{"7 one that digs shallow pits", typed("Androctonus amoreuxi (Audouin, 1825)", "desert-burrowing-scorpion", dark+"length 9 cm\nvenom medically significant", lock,
			inside("30 x 20 x 20 cm", "5 cm", "solid, locked", "dry", ""), one), ""},
		{"8 a burrower of the forest", typed("Heterometrus thorellii (Pocock, 1892)", "tropical-burrowing-scorpion", dark+"length 10 to 12 cm\nvenom mild", mild,
			inside("45 x 30 x 30 cm", "12 cm", latched, "damp", ""), one), ""},
		{"9 three of it", typed("Heterometrus thorellii (Pocock, 1892)", "tropical-burrowing-scorpion", strings.Replace(dark, "keeping alone\n", "", 1)+"length 10 to 12 cm\nvenom mild", mild,
			strings.Replace(inside("75 x 45 x 30 cm", "12 cm", latched, "damp", ""), "hides = 1", "hides = 3", 1), "count = 3\n    stage = \"adult\""), "not-judged caution"},
		{"10 a ground tarantula", typed("Grammostola actaeon (Pocock, 1903)", "dry-terrestrial-tarantula", tarantula+"length 7 cm\nspan 16 cm", mild,
			inside("40 x 35 x 30 cm", "15 cm", latched, "dry", ""), one), ""},
		{"11 it can fall", typed("Grammostola actaeon (Pocock, 1903)", "dry-terrestrial-tarantula", tarantula+"length 7 cm\nspan 16 cm", mild,
			inside("40 x 35 x 45 cm", "10 cm", latched, "dry", ""), one), "fall-high danger"},
		{"12 its span is not said", typed("Grammostola actaeon (Pocock, 1903)", "dry-terrestrial-tarantula", tarantula+"length 7 cm", mild,
			inside("45 x 45 x 35 cm", "10 cm", latched, "dry", ""), one), "fall-high caution"},
		{"13 one of the trees", typed("Avicularia purpurea Kirk, 1990", "arboreal-tarantula", tarantula+"length 5 cm\nspan 12 cm", mild,
			strings.Replace(inside("20 x 20 x 30 cm", "4 cm", latched, "dry", cross+"    perches = true\n"), "hides = 1", "hides = 1", 1), one), ""},
		{"14 too low for it", typed("Avicularia purpurea Kirk, 1990", "arboreal-tarantula", tarantula+"length 5 cm\nspan 12 cm", mild,
			inside("20 x 20 x 11 cm", "3 cm", latched, "dry", cross+"    perches = true\n"), one), "height-low caution"},
		{"16 one that lives in a tube", typed("Cyriopagopus schmidti (von Wirth, 1991)", "fossorial-tarantula", tarantula+"length 5 cm\nspan 13 cm", mild,
			inside("30 x 30 x 38 cm", "26 cm", latched, "damp", ""), one), ""},
		{"16 less deep", typed("Cyriopagopus schmidti (von Wirth, 1991)", "fossorial-tarantula", tarantula+"length 5 cm\nspan 13 cm", mild,
			inside("30 x 30 x 26 cm", "15 cm", latched, "damp", ""), one), ""},
		{"16 too shallow", typed("Cyriopagopus schmidti (von Wirth, 1991)", "fossorial-tarantula", tarantula+"length 5 cm\nspan 13 cm", mild,
			inside("30 x 30 x 22 cm", "10 cm", latched, "damp", ""), one), "substrate-shallow caution"},
		{"6 a genus that dries out faster", watered("7 days", typed("Scorpio fuscus (Ehrenberg, 1829)", "desert-burrowing-scorpion", dark+"length 6 cm\nvenom mild", mild,
			inside("30 x 20 x 20 cm", "15 cm", latched, "damp below", ""), one)), "water-gap caution"},
		{"6 another, watered so", watered("7 days", typed("Smeringurus vachoni (Stahnke, 1961)", "desert-burrowing-scorpion", dark+"length 6 cm\nvenom mild", mild,
			inside("30 x 20 x 20 cm", "15 cm", latched, "dry", ""), one)), ""},
		{"6 watered less", watered("20 days", typed("Smeringurus vachoni (Stahnke, 1961)", "desert-burrowing-scorpion", dark+"length 6 cm\nvenom mild", mild,
			inside("30 x 20 x 20 cm", "15 cm", latched, "dry", ""), one)), "water-gap caution"},
		{"6 watered far too little", watered("40 days", typed("Smeringurus vachoni (Stahnke, 1961)", "desert-burrowing-scorpion", dark+"length 6 cm\nvenom mild", mild,
			inside("30 x 20 x 20 cm", "15 cm", latched, "dry", ""), one)), "water-gap error"},
		{"one of rocks", typed("Hadogenes paucidens Pocock, 1896", "rock-scorpion", dark+"length 15 to 20 cm\nvenom mild", mild,
			inside("60 x 45 x 30 cm", "4 cm", latched, "dry", "    perches = true\n"), one), ""},
		{"one of rocks in a narrow box", typed("Hadogenes paucidens Pocock, 1896", "rock-scorpion", dark+"length 15 to 20 cm\nvenom mild", mild,
			inside("25 x 20 x 20 cm", "4 cm", "solid, loose", "dry", "    perches = true\n"), one), "lid-loose error"},
		{"one of bark, its damp unsaid", typed("Centruroides margaritatus (Gervais, 1841)", "bark-scorpion", dark+"length 10 cm\nvenom medically significant", lock,
			inside("20 x 20 x 25 cm", "4 cm", "solid, locked", "damp", cross+"    perches = true\n"), one), "not-judged caution"},
		{"one of bark", typed("Centruroides margaritatus (Gervais, 1841)", "bark-scorpion", dark+"length 10 cm\nvenom medically significant\nmoisture damp\nhumidity-soft 60 to 80 %\nhumidity-target 65 to 75 %", lock,
			inside("20 x 20 x 25 cm", "4 cm", "solid, locked", "damp", cross+"    perches = true\n"), one), ""},
		{"one of bark in a low box", typed("Centruroides margaritatus (Gervais, 1841)", "bark-scorpion", dark+"length 10 cm\nvenom medically significant\nmoisture damp\nhumidity-soft 60 to 80 %\nhumidity-target 65 to 75 %", lock,
			inside("20 x 20 x 8 cm", "2 cm", "solid, locked", "damp below", cross+"    perches = true\n"), one), "height-low caution"},
		{"a whip spider", typed("Phrynus whitei Gervais, 1842", "whip-spider", strings.Replace(tarantula, "mild", "none", 1)+"length 3 cm\nspan 12 cm", mild,
			inside("30 x 30 x 35 cm", "5 cm", latched, "damp", cross+"    perches = true\n"), one), ""},
		{"where it cannot hang free", typed("Phrynus whitei Gervais, 1842", "whip-spider", strings.Replace(tarantula, "mild", "none", 1)+"length 3 cm\nspan 12 cm", mild,
			inside("30 x 30 x 11 cm", "2 cm", latched, "damp", cross+"    perches = true\n"), one), "height-low error"},
		{"a vinegaroon", typed("Typopeltis stimpsonii (Wood, 1862)", "vinegaroon", strings.Replace(tarantula, "mild", "none", 1)+"length 5 cm", mild,
			inside("40 x 30 x 30 cm", "14 cm", latched, "damp", ""), one), ""},
		{"17 a centipede", typed("Scolopendra subspinipes Leach, 1815", "centipede", dark+"length 20 cm\nvenom mild", mild,
			inside("35 x 25 x 25 cm", "12 cm", latched, "damp", cross), one), ""},
		{"17 two of them", typed("Scolopendra subspinipes Leach, 1815", "centipede", dark+"length 20 cm\nvenom mild", mild,
			strings.Replace(inside("45 x 35 x 25 cm", "12 cm", latched, "damp", cross), "hides = 1", "hides = 2", 1), "count = 2\n    stage = \"adult\""), "kept-alone error"},
		{"20 a genus of another country", typed("Urodacus manicatus (Thorell, 1876)", "tropical-burrowing-scorpion", dark+"length 5 cm\nvenom mild", mild,
			inside("30 x 20 x 20 cm", "10 cm", latched, "damp", ""), one), "type-exception error"},
	} {
		r := on(t, "2027-03-02", c.text, "")
		worst := map[string]string{}
		var rules []string
		for _, f := range r.Findings {
			if f.Severity < finding.Caution {
				continue
			}
			if worst[f.Rule.ID] == "" {
				rules = append(rules, f.Rule.ID)
			}
			worst[f.Rule.ID] = f.Severity.String()
		}
		var got []string
		for _, rule := range rules {
			got = append(got, rule+" "+worst[rule])
		}
		slices.Sort(got)
		if want := c.want; strings.Join(got, ", ") != want {
			t.Errorf("%s: %s, want %s", c.name, strings.Join(got, ", "), want)
			for _, f := range r.Findings {
				t.Logf("  %s %s: %s (%s)", f.Severity, f.Rule.ID, f.Text, f.Limit)
			}
		}
		if !r.Refused() && !strings.HasPrefix(r.Verdict(), "No harm found by common practice for ") {
			t.Errorf("%s: %s", c.name, r.Verdict())
		}
	}
}

// A figure that asks for less than suits every member of the type wants better than
// hearsay, and one that is wrong for every member wants a reason.
func TestLooserThanTheType(t *testing.T) {
	for _, c := range []struct{ figure, want string }{
		{`value = "4 mm"`, ""},
		{"value = \"8 mm\"\n    quality = \"memory\"", "caution"},
		{"value = \"8 mm\"\n    quality = \"keeper\"", ""},
		{"value = \"8 mm\"\n    quality = \"memory\"\n    because = \"ten years behind it\"", ""},
		{`value = "20 mm"`, "error"},
		{"value = \"20 mm\"\n    because = \"ten years behind it\"\n    review = \"2027-09-01\"", "caution"},
	} {
		text := typed("Grammostola actaeon (Pocock, 1903)", "dry-terrestrial-tarantula", tarantula+"length 7 cm\nspan 16 cm", mild, inside("40 x 35 x 30 cm", "15 cm", "solid, latched", "dry", ""), one)
		text = strings.Replace(text, "  figure \"venom\"", "  figure \"gap-max\" {\n    "+c.figure+"\n  }\n  figure \"venom\"", 1)
		r := on(t, "2027-03-02", text, "")
		if got := worst(r, "type-exceeded"); got != c.want {
			t.Errorf("%s: %q, want %q", c.figure, got, c.want)
		}
		for _, f := range r.Findings {
			if f.Rule.ID == "type-exceeded" && (!strings.Contains(f.Limit, "of tarantulas") || f.Write == "") {
				t.Errorf("%s: limit %q, write %q", c.figure, f.Limit, f.Write)
			}
		}
	}
}

// A genus decides which types may be named; a scientific name is asked for where there is
// none, and venom is never none where every kin has it.
func TestTypeOfAnother(t *testing.T) {
	for _, c := range []struct{ latin, kind, venom, want, write string }{
		{"Mastigoproctus mexicanus (Butler, 1872)", "desert-burrowing-scorpion", "mild", "type-exception: mine is not cared for like burrowing desert scorpions: Mastigoproctus are vinegaroons", "as type vinegaroon"},
		{"Mastigoproctus mexicanus (Butler, 1872)", "vinegaroon", "none", "", ""},
		{"Grammostola actaeon (Pocock, 1903)", "tarantula", "mild", "", ""}, // the wider one
		{"Poecilotherria ornata Pocock, 1899", "arboreal-tarantula", "mild", "type-exception: no genus Poecilotherria is known here; there is Poecilotheria", "latin with Poecilotheria"},
		{"P. ornata Pocock, 1899", "arboreal-tarantula", "mild", "type-exception: the genus of mine is not said", "latin, with"},
		{"black fat scorpion", "desert-burrowing-scorpion", "mild", "type-exception: the genus of mine is not said", "latin, with"},
		{"Zzyzyx nova Nobody, 2020", "dry-terrestrial-tarantula", "mild", "", ""},
		{"Scolopendra heros Girard, 1853", "centipede", "none", "venom-doubted: the venom of mine is called none", "mild, painful"},
		{"Euscorpius italicus (Herbst, 1800)", "scorpion", "none", "venom-doubted: the venom of mine is called none", "mild, painful"},
		{"Theraphosa blondi (Latreille, 1804)", "humid-terrestrial-tarantula", "mild", "sheet-twice: of Theraphosa blondi (Latreille, 1804) a sheet is built in: theraphosa-blondi", `"theraphosa-blondi" as species`},
	} {
		text := typed(c.latin, c.kind, "length 7 cm\nspan 16 cm\nvenom "+c.venom, mild, inside("60 x 45 x 30 cm", "15 cm", "solid, latched", "dry", ""), one)
		var got, write []string
		for _, f := range on(t, "2027-03-02", text, "").Findings {
			switch f.Rule.ID {
			case "type-exception", "venom-doubted", "sheet-twice":
				got, write = append(got, f.Rule.ID+": "+f.Text), append(write, f.Write)
			}
		}
		if len(got) > 1 || (len(got) == 1) != (c.want != "") || !strings.HasPrefix(strings.Join(got, "; "), c.want) || !strings.Contains(strings.Join(write, "; "), c.write) {
			t.Errorf("%s as %s: %q, %q; want %q", c.latin, c.kind, got, write, c.want)
		}
	}
}

// Case 25 of the page of facts on care types: a week alone suits every ground tarantula,
// three are too long for any, and between them it is not known.
func TestLeftAlone(t *testing.T) {
	for _, c := range []struct{ until, stage, want string }{
		{"2027-06-16", "adult", ""},
		{"2027-06-18", "adult", "caution"},
		{"2027-07-05", "adult", "error"},
		{"2027-06-13", "young", "caution"},
		{"2027-06-18", "young", "error"},
	} {
		text := typed("Grammostola actaeon (Pocock, 1903)", "dry-terrestrial-tarantula", tarantula+"length 7 cm\nspan 16 cm", mild, inside("40 x 35 x 30 cm", "15 cm", "solid, latched", "dry", ""), strings.Replace(one, "adult", c.stage, 1)) +
			"away \"lead\" {\n  from = \"2027-06-10\"\n  to = \"" + c.until + "\"\n}\n"
		got := ""
		for _, f := range on(t, "2027-03-02", text, "").Findings {
			if strings.Contains(f.Limit, "while nobody comes") {
				got = f.Severity.String()
				if !strings.Contains(f.Limit, "unattended of ground tarantulas of dry country") && !strings.Contains(f.Limit, "unattended of tarantulas") {
					t.Errorf("%s until %s: limit %s", c.stage, c.until, f.Limit)
				}
			}
		}
		if got != c.want {
			t.Errorf("%s until %s: %q, want %q", c.stage, c.until, got, c.want)
		}
	}
}
