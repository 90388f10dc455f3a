package roster_test

import (
	"strings"
	"testing"

	"vivary/schema"
)

// TestPeopleOfABox: two people can be asked for by the round, the room or the enclosure, and it is
// the same: nobody opens such a box alone.
func TestPeopleOfABox(t *testing.T) {
	trained := map[string]string{"lead": "venom", "second": "venom", "third": ""}
	gone := away("second", "5 Jul", "9 Jul", "")
	for name, blocks := range map[string][2]string{
		"round":     {crew(2, trained, "lead", "second", "third"), hot},
		"room":      {crew(1, trained, "lead", "second", "third"), strings.Replace(hot, "  locked      = true\n", "  locked      = true\n  people      = 2\n", 1)},
		"enclosure": {crew(1, trained, "lead", "second", "third"), strings.Replace(hot, "  room    = \"vault\"\n", "  room    = \"vault\"\n  people  = 2\n", 1)},
	} {
		r := compiled(t, house(blocks[0], blocks[1], gone, box("beside", "  room = \"east\"\n"+one+"  care \"spot-clean\" {\n    every = \"day\"\n  }\n")), "", on("1 Jul"))
		if got := left(t, r, "spot-clean"); got != "5 6 7 8" {
			t.Errorf("%s: not cleaned on %q", name, got)
		}
		i, _ := r.Horizon.Index(on("6 Jul"))
		if e := find(t, r, "beside", "spot-clean"); !e.Days.Has(i) && name != "round" {
			t.Errorf("%s: the box beside it waits for the second", name)
		}
	}
}

// TestRestDayOfTheSecond: who rests is no second person, and who works on a rest day of theirs does
// what they always do.
func TestRestDayOfTheSecond(t *testing.T) {
	staff := crew(2, map[string]string{"lead": "venom", "second": "venom"}, "lead", "second")
	// 4, 11, 18 and 25 July 2027 are Sundays.
	second := strings.Replace(staff, "keeper \"second\" {\n", "keeper \"second\" {\n  off = [\"sun\"]\n", 1)
	if got := left(t, compiled(t, house(second, hot), "", on("1 Jul")), "spot-clean"); got != "4 11 18 25" {
		t.Errorf("the second rests: not cleaned on %q", got)
	}
	lead := strings.Replace(staff, "keeper \"lead\" {\n", "keeper \"lead\" {\n  off = [\"sun\"]\n", 1)
	if got := left(t, compiled(t, house(lead, hot), "", on("1 Jul")), "spot-clean"); got != "" {
		t.Errorf("the lead works on rest days: not cleaned on %q", got)
	}
}

// TestStandsInHere: a stand-in who may not open a box looks from outside, and their own rounds are
// not bound by it.
func TestStandsInHere(t *testing.T) {
	staff := crew(1, map[string]string{"lead": "venom", "second": "venom, feeding, breeding"}, "lead", "second")
	barred := strings.Replace(staff, "keeper \"second\" {\n", "keeper \"second\" {\n  rooms = [\"east\"]\n", 1)
	by := func(enclosures string) string {
		return strings.Replace(barred, "  rooms = [\"east\"]\n", "  rooms = [\"east\"]\n  enclosures = [\""+enclosures+"\"]\n", 1)
	}
	gone := away("lead", "5 Jul", "9 Jul", `cover = "second"`)
	beside := box("beside", "  room = \"east\"\n"+one)
	for _, c := range []struct{ title, staff, clean, look string }{
		{"anywhere", staff, "", ""},
		{"another room", barred, "5 6 7 8", ""},
		{"this box", by("vault"), "", ""},
		{"another box", by("beside"), "5 6 7 8", ""},
	} {
		r := compiled(t, house(c.staff, hot, beside, gone), "", on("1 Jul"))
		// What a stand-in does for others is moved off days of a visit by no other reason.
		i, _ := r.Horizon.Index(on("6 Jul"))
		e := find(t, r, "vault", "water")
		if may := r.Roster.May(e, i); may.Barred != (c.clean != "") || may.Barred && may.Manner != schema.Outside {
			t.Errorf("%s: %+v", c.title, may)
		}
		if got := left(t, r, "look"); got != c.look {
			t.Errorf("%s: not looked at on %q", c.title, got)
		}
		if got := left(t, r, "water"); got != c.clean {
			t.Errorf("%s: no water on %q", c.title, got)
		}
	}
	own := strings.Replace(barred, "  keeper = \"lead\"\n", "  keeper = \"second\"\n", 1)
	if got := left(t, compiled(t, house(own, hot, beside), "", on("1 Jul")), "spot-clean"); got != "" {
		t.Errorf("their own round: not cleaned on %q", got)
	}
}

// TestTrainingEnds: from the day after, a stand-in does what somebody may who was never shown;
// whose animals they are goes on.
func TestTrainingEnds(t *testing.T) {
	staff := crew(1, map[string]string{"lead": "venom"}, "lead", "second")
	second := strings.Replace(staff, "keeper \"second\" {\n", "keeper \"second\" {\n  training \"course\" {\n    in    = \"venom\"\n    until = \"2027-07-06\"\n  }\n", 1)
	r := compiled(t, house(second, hot, away("lead", "5 Jul", "9 Jul", `cover = "second"`)), "", on("1 Jul"))
	if got := left(t, r, "water"); got != "7 8" {
		t.Errorf("no water on %q: the training holds on the 6th, and not on the 7th", got)
	}
	renewed := strings.Replace(second, "  training \"course\" {", "  training \"renewed\" {\n    in = \"venom\"\n  }\n  training \"course\" {", 1)
	if got := left(t, compiled(t, house(renewed, hot, away("lead", "5 Jul", "9 Jul", `cover = "second"`)), "", on("1 Jul")), "water"); got != "" {
		t.Errorf("renewed for good, no water on %q", got)
	}
	lead := strings.Replace(staff, "  trained = \"venom\"\n", "  training \"course\" {\n    in    = \"venom\"\n    until = \"2027-07-06\"\n  }\n", 1)
	if got := left(t, compiled(t, house(lead, hot), "", on("1 Jul")), "spot-clean"); got != "" {
		t.Errorf("their own round: not cleaned on %q", got)
	}
}
