package feeds_test

import (
	"fmt"
	"maps"
	"slices"
	"strings"
	"testing"

	"vivary/compile"
	"vivary/compile/feeds"
	"vivary/internal/planned"
)

// boxes are enclosures of built-in species, one of each: what hurts nobody, the three
// classes of venom, hairs, spray, and a gecko.
var boxes = map[string]string{
	"woodlice": "porcellio-scaber", "mild": "pandinus-imperator", "painful": "hottentotta-hottentotta", "deadly": "leiurus-quinquestriatus",
	"hairs": "chromatopelma-cyaneopubescens", "spray": "mastigoproctus-giganteus", "gecko": "eublepharis-macularius",
	"millipede": "archispirostreptus-gigas",
}

// standIn compiles a plan in which somebody stands in with some boxes, and returns the
// text of the entry with which that begins, and of all calendars.
func standIn(t *testing.T, calendars string, names ...string) (first, all string) {
	t.Helper()
	text := `
collection "fixtures" {
  time_zone = "Europe/London"
}
room "east" {
  temperature = "24 to 27 C"
  locked      = true
}
contact "mentor" {
  title = "Old hand"
  phone = "+44 7700 900123"
}
keeper "lead" {
  title   = "Lead keeper"
  phone   = "+44 7700 900456"
  trained = "venom, hairs, breeding, feeding"
}
keeper "sitter" {
  title   = "The sitter"
  phone   = "+44 7700 900789"
  trained = "feeding"
}
keeper "other" {
  trained = "venom, hairs, breeding, feeding"
}
round "evening" {
  at     = "19:30"
  keeper = "lead"
}
round "others" {
  at     = "18:30"
  keeper = "other"
}
away "lead" {
  from  = "2027-02-20"
  to    = "2027-02-27"
  cover = "sitter"
}
` + calendars
	stands := map[string]bool{}
	for _, n := range names {
		stands[n] = true
	}
	for _, n := range slices.Sorted(maps.Keys(boxes)) {
		species := boxes[n]
		round := "others"
		if stands[n] {
			round = "evening"
		}
		text += fmt.Sprintf("enclosure %q {\n  species = %q\n  room    = \"east\"\n  round   = %q\n  animals \"a\" {\n    count = 1\n    stage = \"adult\"\n  }\n}\n", n, species, round)
	}
	c, found := planned.Files(t, map[string]string{"a.care.hcl": text})
	r := compile.Compile(c, found, today.At(12*60, c.Location))
	for _, f := range feeds.Of(r) {
		entries, err := f.Entries(nil)
		if err != nil {
			t.Fatal(err)
		}
		for _, e := range entries {
			all += e.Summary + "\n" + e.Description + "\n"
			if strings.HasPrefix(e.Summary, "You stand in for Lead keeper") && !strings.Contains(e.Summary, " from ") {
				first = e.Description
			}
		}
	}
	return first, all
}

const forSitter = "calendar \"sitter\" {\n  keepers = [\"sitter\"]\n}\n"

// says are the beginnings of what has to be said where a box is in their care, and only
// there.
var says = map[string]string{
	"mild": "\nMild (", "painful": "\nPainful (", "deadly": "\nDanger to life (deathstalker, Leiurus quinquestriatus)", "hairs": "\nHairs in the eye (", "spray": "\nSprayed in the eye (",
	"gecko": "\nSalmonella (leopard gecko, Eublepharis macularius): hands washed with soap", "millipede": "\nFluid in the eye or mouth (",
}

// Whoever stands in is told what to do after a sting or a bite of what is in their care, by
// each class of it that is there and by no other, and whom to tell; no number of the plan
// stands in any calendar.
func TestStandInIsToldOfStings(t *testing.T) {
	for _, names := range [][]string{
		{"woodlice"}, {"gecko"}, {"millipede"}, {"mild"}, {"painful"}, {"deadly"}, {"hairs"}, {"spray"},
		{"mild", "gecko"}, {"deadly", "mild"}, {"woodlice", "mild", "painful", "deadly", "hairs", "spray", "gecko", "millipede"},
	} {
		first, all := standIn(t, forSitter, names...)
		have := map[string]bool{}
		for _, n := range names {
			have[n] = true
		}
		if have["hairs"] {
			have["mild"] = true // its bite
		}
		stings := have["mild"] || have["painful"] || have["deadly"]
		for n, text := range says {
			if strings.Contains(first, text) != have[n] {
				t.Errorf("%v: %q:\n%s", names, text, first)
			}
		}
		for _, text := range []string{"local emergency number at once", "trouble breathing", "Do not cut, suck or tie", "adrenaline pen"} {
			if strings.Contains(first, text) != stings {
				t.Errorf("%v: %q:\n%s", names, text, first)
			}
		}
		for _, text := range []string{"wash with soap and water", "Then tell Other or Old hand, number on your sheet"} {
			if !strings.Contains(first, text) {
				t.Errorf("%v: not %q:\n%s", names, text, first)
			}
		}
		for _, text := range []string{"no source", "common practice", "Lead keeper or", "or Lead keeper"} {
			if strings.Contains(first, text) {
				t.Errorf("%v: %q:\n%s", names, text, first)
			}
		}
		if strings.Contains(all, "7700") {
			t.Errorf("%v: a number of the plan is in a calendar", names)
		}
		if len(first) > 3000 {
			t.Errorf("%v: %d bytes", names, len(first))
		}
	}
}

// Who has no calendar of their own reads it where everybody reads who is away; where
// somebody has one it stands there alone.
func TestStandInWithoutACalendar(t *testing.T) {
	first, all := standIn(t, "", "painful")
	if first != "" || strings.Count(all, "\nPainful (") != 1 {
		t.Errorf("no calendar of the sitter's: told %d times:\n%s", strings.Count(all, "\nPainful ("), first)
	}
	if _, all = standIn(t, forSitter+"calendar \"all\" {\n}\n", "painful"); strings.Count(all, "\nPainful (") != 1 {
		t.Errorf("a calendar of the sitter's: told %d times", strings.Count(all, "\nPainful ("))
	}
}

// A repeating entry of one care says what to see to before it, and one that opens nothing
// does not.
func TestCareSaysItsCautions(t *testing.T) {
	_, all := standIn(t, "calendar \"by-care\" {\n  entry = \"per care\"\n}\n")
	for _, want := range []string{
		"Spot clean, look for mould and mites: Hairs\nGloves on, eyes covered (barbed hairs)\nLong forceps, empty lidded box (stings, bites)\n",
		"Fresh water: Spray\nEyes covered (it may spray)\n",
		"Fresh water: Hairs\n\n",
		"Lid shut? Animals seen or hidden: Spray\n\n",
		"Spot clean, look for mould and mites: Gecko\nHands washed with soap afterwards (salmonella)\n",
		"Lid shut? Animals seen or hidden: Gecko\n\n",
		"Spot clean, look for mould and mites: Millipede\nGloves on, hands off eyes and mouth (fluid)\n",
	} {
		if !strings.Contains(all, want) {
			t.Errorf("not %q", want)
		}
	}
}

// Who steps in for somebody suddenly away reads in a calendar of their own what whoever was
// asked reads: how one stands in, what to do after a sting, and whom to tell, which is
// never the one who is ill; and everybody reads it beside who is away.
func TestSuddenStandInIsToldOfStings(t *testing.T) {
	for _, c := range []struct{ extra, tell string }{
		{"", "Nobody to ring is named in the plan"},
		{"contact \"vet\" {\n  title = \"The vet\"\n  phone = \"+44 7700 900123\"\n}\n", "Then tell The vet; numbers stand in the day's list, not in calendars"},
		{"keeper \"cat\" {\n  title   = \"Cat\"\n  phone   = \"+44 7700 900124\"\n  trained = \"venom\"\n}\naway \"bob\" {\n  from = \"2027-01-01\"\n  to   = \"2027-01-03\"\n}\n", ""},
	} {
		text := "collection \"c\" {\n  time_zone = \"Europe/London\"\n}\nroom \"r\" {\n  temperature = \"22 to 25 C\"\n  locked      = true\n}\nkeeper \"bob\" {\n  title = \"Bob\"\n}\nkeeper \"me\" {\n  title   = \"Me\"\n  phone   = \"+44 7700 900125\"\n  trained = \"venom, hairs, feeding, breeding\"\n}\nround \"evening\" {\n  at     = \"19:30\"\n  keeper = \"me\"\n}\ncalendar \"all\" {\n}\ncalendar \"bob\" {\n  keepers = [\"bob\"]\n}\ncalendar \"cat\" {\n  keepers = [\"cat\"]\n}\nenclosure \"dst\" {\n  species = \"leiurus-quinquestriatus\"\n  animals \"a\" {\n    count = 1\n    stage = \"adult\"\n  }\n}\n" + c.extra
		if !strings.Contains(text, "keeper \"cat\"") {
			text = strings.Replace(text, "calendar \"cat\" {\n  keepers = [\"cat\"]\n}\n", "", 1)
		}
		col, found := planned.Files(t, map[string]string{"a.care.hcl": text, "a.care.log": today.String() + " keeper me away \"ill\"\n"})
		r := compile.Compile(col, found, today.At(12*60, col.Location))
		told := map[string]string{}
		for _, f := range feeds.Of(r) {
			entries, err := f.Entries(nil)
			if err != nil {
				t.Fatal(err)
			}
			for _, e := range entries {
				if e.Summary == "You stand in for Me" || e.Summary == "Me is away" && f.Name == "all" {
					told[f.Name] += e.Description
				}
				if strings.Contains(e.Description, "7700") {
					t.Errorf("%s: a number of the plan", f.Name)
				}
			}
		}
		who := "bob"
		if c.tell == "" {
			who = "cat" // who is trained in most
		}
		for _, name := range []string{"all", who} {
			for _, want := range []string{"Do what each round says", "Lift no animal; open no lid", "Danger to life (deathstalker", "trouble breathing", c.tell} {
				if !strings.Contains(told[name], want) {
					t.Errorf("%s: not %q:\n%s", name, want, told[name])
				}
			}
			if strings.Contains(told[name], "tell Me") {
				t.Errorf("%s: told to tell who is ill:\n%s", name, told[name])
			}
		}
	}
}

// Why a meal is as it is does not stand at the look for what it left.
func TestWhyOfAMealStandsAtTheMeal(t *testing.T) {
	_, all := standIn(t, "calendar \"by-care\" {\n  entry = \"per care\"\n}\nenclosure \"own\" {\n  species = \"pandinus-imperator\"\n  animals \"a\" {\n    count = 1\n    stage = \"adult\"\n  }\n  feeding \"a\" {\n    prey    = \"cricket adult\"\n    items   = 4\n    every   = \"7 days\"\n    because = \"it is fat\"\n    keeper  = \"other\"\n  }\n}\n")
	if n := strings.Count(all, "Why: it is fat"); n == 0 {
		t.Error("the reason stands nowhere")
	}
	for entry := range strings.SplitSeq(all, "\n\n") {
		if strings.Contains(entry, "eftovers") && strings.Contains(entry, "Why: it is fat") {
			t.Errorf("the reason of the meal:\n%s", entry)
		}
	}
	for line, next := "", all; next != ""; {
		was := line
		line, next, _ = strings.Cut(next, "\n")
		if line == "Why: it is fat" && !strings.HasPrefix(was, "Feed") {
			t.Errorf("the reason of the meal stands after %q", was)
		}
	}
}
