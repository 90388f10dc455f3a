package compile_test

import (
	"slices"
	"strings"
	"testing"

	"vivary/plan/finding"
)

// kept is an enclosure of one grown animal, or of what animals say, in a box.
func kept(species, housing, more, animals string) string {
	if animals == "" {
		animals = "count = 1\n stage = \"adult\""
	}
	if species == "eublepharis-macularius" && !strings.Contains(more, "climate {") {
		more += " climate {\n heater \"lamp\" {\n power = \"60 W\"\n place = \"above\"\n hours = \"12 h\"\n thermostat = \"32 C\"\n }\n thermometer = true\n night = \"20 to 22 C\"\n }\n"
	}
	return setupHead + "enclosure \"box\" {\n species = \"" + species + "\"\n room = \"vault\"\n housing {\n lid = \"solid, locked\"\n" + housing + "\n }\n" + more +
		" animals \"one\" {\n " + animals + "\n origin = \"captive bred\"\n paper = \"invoice 1\"\n }\n}\n"
}

func ofBox(inside, vents, depth, more string) string {
	return " inside = \"" + inside + "\"\n vents = \"" + vents + "\"\n depth = \"" + depth + "\"\n" + more
}

// What a box, its soil, its lamp and its food come to, where it was passed over once or
// refused what is usual. Usual set-ups are common practice, no source.
func TestBoxesAsTheyAre(t *testing.T) {
	const (
		young, juvenile = "count = 1\n stage = \"young\"", "count = 1\n stage = \"juvenile\""
		noLeaves        = " care \"leaves\" {\n off = true\n }\n"
		crickets        = " feeding \"one\" {\n every = \"3 days\"\n per_animal = 1\n prey = \"cricket small\"\n }\n"
		damp, hide      = " moisture = \"damp\"\n", " hides = 2\n"
		perches         = " perches = true\n"
	)
	soil := func(every, task string) string {
		return " care \"deep-clean\" {\n every = \"" + every + "\"\n" + task + " }\n"
	}
	roach := func(every string) string {
		return " feeding \"one\" {\n every = \"" + every + "\"\n per_animal = 1\n prey = \"roach adult\"\n }\n"
	}
	lamp := func(watts, more string) string {
		return " climate {\n heater \"lamp\" {\n power = \"" + watts + "\"\n place = \"above\"\n hours = \"10 h\"\n" + more + " }\n thermometer = true\n }\n"
	}
	sling := func(species, inside, depth string) string {
		return kept(species, ofBox(inside, "some", depth, damp+hide), "", young)
	}
	sticks := ofBox("45 x 45 x 90 cm", "cross", "1 cm", perches)
	millipedes := ofBox("60 x 40 x 45 cm", "some", "18 cm", damp+hide)
	larva := ofBox("60 x 40 x 40 cm", "some", "30 cm", damp)
	crested := ofBox("45 x 45 x 60 cm", "cross", "4 cm", " moisture = \"damp below\"\n hides = 3\n"+perches)
	for _, c := range []struct{ name, text, want string }{
		{"stick insects on leaves", kept("extatosoma-tiaratum", sticks, "", ""), ""},
		{"on crickets", kept("extatosoma-tiaratum", sticks, noLeaves+crickets, ""), "food-gap error, prey-uneaten error"},
		{"on both", kept("extatosoma-tiaratum", sticks, crickets, ""), "prey-uneaten error"},
		{"millipedes on crickets", kept("telodeinopus-aoutii", millipedes, noLeaves+crickets, ""), "food-gap error, prey-uneaten caution"},
		{"a dead one beside leaves", kept("telodeinopus-aoutii", millipedes, strings.Replace(crickets, "small\"", "small\"\n killed = true", 1), ""), ""},
		{"woodlice on dead crickets", kept("porcellio-laevis", ofBox("35 x 20 x 15 cm", "cross", "6 cm", damp+hide), noLeaves+strings.Replace(crickets, "small\"", "small\"\n killed = true", 1), "count = 20\n stage = \"adult\""), "food-gap error"},
		{"a larva on crickets", kept("dynastes-hercules", larva, noLeaves+crickets, juvenile), "food-gap error, prey-uneaten error"},

		{"soil up to the lid", kept("nhandu-chromatus", ofBox("45 x 35 x 30 cm", "cross", "30 cm", hide), "", ""), "substrate-high error"},
		{"a larva in a full box", kept("dynastes-hercules", ofBox("60 x 40 x 40 cm", "some", "40 cm", damp), "", ""), "substrate-high caution"},

		{"a cup for a digger", sling("hysterocrates-gigas", "7 x 7 x 7 cm", "5 cm"), ""},
		{"a cup of another", sling("cyriopagopus-lividus", "7 x 7 x 7 cm", "4 cm"), ""},
		{"hardly any soil", sling("cyriopagopus-lividus", "7 x 7 x 7 cm", "1 cm"), "substrate-shallow caution"},

		{"prey longer than a young gecko", kept("eublepharis-macularius", ofBox("60 x 45 x 40 cm", "cross", "4 cm", hide), roach("1 day"), young), "prey-long error"},
		{"than a nymph", kept("hymenopus-coronatus", ofBox("10 x 10 x 15 cm", "cross", "1 cm", damp+perches), roach("2 days"), young), "prey-long error"},
		{"than a camel spider of a size that nobody knows", kept("galeodes", ofBox("45 x 35 x 40 cm", "cross", "18 cm", hide), roach("2 days"), young), "prey-long caution, unheated caution"},
		{"a roach for a grown gecko", kept("eublepharis-macularius", ofBox("90 x 45 x 40 cm", "cross", "4 cm", hide), roach("4 days"), ""), ""},

		{"a half-grown spider in a cube", kept("lasiodora-parahybana", ofBox("20 x 20 x 20 cm", "cross", "8 cm", hide), "", juvenile), ""},
		{"another", kept("brachypelma-emilia", ofBox("20 x 20 x 20 cm", "some", "8 cm", hide), "", juvenile), ""},
		{"one that digs", kept("cyriopagopus-lividus", ofBox("20 x 20 x 20 cm", "some", "8 cm", damp+hide), "", juvenile), ""},
		{"in the box of a grown one", kept("lasiodora-parahybana", ofBox("45 x 45 x 60 cm", "cross", "12 cm", hide), "", juvenile), "fall-high caution"},
		{"of a stage that nobody knows", kept("lasiodora-parahybana", ofBox("45 x 45 x 60 cm", "cross", "12 cm", hide), "", "count = 1"), "fall-high danger, stage-unknown caution"},

		{"two geckos of unknown sex", kept("eublepharis-macularius", ofBox("120 x 60 x 45 cm", "cross", "4 cm", " hides = 4\n"), "", "count = 2\n stage = \"adult\""), "sex-unsaid caution"},
		{"a male and one", kept("eublepharis-macularius", ofBox("120 x 60 x 45 cm", "cross", "4 cm", " hides = 4\n"), "", "count = \"1.0.1\"\n stage = \"adult\""), "sex-unsaid caution"},
		{"a female and one", kept("eublepharis-macularius", ofBox("120 x 60 x 45 cm", "cross", "4 cm", " hides = 4\n"), "", "count = \"0.1.1\"\n stage = \"adult\""), ""},
		{"two half-grown ones", kept("eublepharis-macularius", ofBox("120 x 60 x 45 cm", "cross", "4 cm", " hides = 4\n"), "", "count = 2\n stage = \"juvenile\""), ""},

		{"slabs for a scorpion of rock", kept("hadogenes-troglodytes", ofBox("60 x 40 x 30 cm", "cross", "3 cm", " hides = 3\n"), "", ""), ""},
		{"none, and branches", kept("hadogenes-troglodytes", ofBox("60 x 40 x 40 cm", "cross", "25 cm", " hides = 0\n"+perches), "", ""), "hides-few caution"},
		{"not said", kept("hadogenes-troglodytes", ofBox("60 x 40 x 40 cm", "cross", "3 cm", ""), "", ""), "no-perch caution"},

		{"soil of a larva each fortnight", kept("dynastes-hercules", larva, soil("14 days", ""), "count = 1\n stage = \"subadult\""), "soil-changed error"},
		{"each four months", kept("dynastes-hercules", larva, soil("4 months", ""), "count = 1\n stage = \"subadult\""), ""},
		{"of a beetle", kept("dynastes-hercules", larva, soil("1 month", ""), ""), ""},
		{"of millipedes each month", kept("telodeinopus-aoutii", millipedes, soil("1 month", ""), ""), "soil-changed error"},
		{"whole", kept("telodeinopus-aoutii", millipedes, soil("12 months", ""), ""), "soil-changed error"},
		{"a third of it", kept("telodeinopus-aoutii", millipedes, soil("12 months", " task = \"A third of the soil new\"\n"), ""), ""},

		{"a grown leaf insect and a slit", kept("phyllium-philippinicum", ofBox("45 x 45 x 60 cm", "cross", "1 cm", " gap = \"3 mm\"\n"+perches), "", ""), ""},
		{"a nymph", kept("phyllium-philippinicum", ofBox("45 x 45 x 60 cm", "cross", "1 cm", " gap = \"3 mm\"\n"+perches), "", juvenile), "gap-wide error"},

		{"wet and shut", kept("brachypelma-emilia", ofBox("40 x 30 x 30 cm", "none", "15 cm", " moisture = \"wet\"\n"+hide), "", ""), "wet-sealed error"},
		{"of a tree", kept("avicularia-avicularia", ofBox("20 x 20 x 35 cm", "none", "5 cm", " moisture = \"wet\"\n"+hide+perches), "", ""), "wet-sealed error"},
		{"damp air and shut", kept("avicularia-avicularia", ofBox("20 x 20 x 35 cm", "none", "5 cm", " moisture = \"damp below\"\n"+hide+perches), " climate {\n humidity = \"75 to 85 %\"\n }\n", ""), "wet-sealed error"},
		{"wet, and air", kept("theraphosa-blondi", ofBox("60 x 45 x 40 cm", "cross", "15 cm", " moisture = \"wet\"\n"+hide), "", ""), "substrate-moisture caution"},

		{"a tube for a gecko", kept("correlophus-ciliatus", crested, lamp("13 W", " uv = true\n"), ""), ""},
		{"a lamp that warms", kept("correlophus-ciliatus", crested, lamp("60 W", " uv = true\n"), ""), "heater-bare danger, too-warm caution"},
		{"a tube for a spider", kept("brachypelma-emilia", ofBox("40 x 30 x 30 cm", "some", "15 cm", hide), lamp("13 W", " uv = true\n"), ""), "uv-lamp caution"},
		{"for a whip spider", kept("damon-diadema", ofBox("60 x 45 x 60 cm", "cross", "6 cm", damp+hide+perches), lamp("13 W", " uv = true\n"), ""), "uv-lamp caution"},
	} {
		r := on(t, "2027-03-02", c.text, "")
		var got []string
		for _, f := range r.Findings {
			if f.Severity >= finding.Caution {
				got = append(got, f.Rule.ID+" "+f.Severity.String())
			}
		}
		slices.Sort(got)
		if all := strings.Join(slices.Compact(got), ", "); all != c.want {
			t.Errorf("%s: %s, want %s", c.name, all, c.want)
			for _, f := range r.Findings {
				t.Logf("  %s %s: %s (%s; %s)", f.Severity, f.Rule.ID, f.Text, f.Limit, f.Write)
			}
		}
	}
}

// An age that nobody wrote makes no day: what grows is reckoned from a whole instar on. No
// rule writes a depth for which the box is too low.
func TestNoDayFromNoAge(t *testing.T) {
	box := ofBox("20 x 20 x 30 cm", "some", "26 cm", " moisture = \"damp\"\n")
	for animals, want := range map[string]string{
		"count = 1\n stage = \"juvenile\"":                         "the enclosure becomes too small in 56 days at the soonest: it is not known when they last moulted",
		"count = 1\n stage = \"juvenile\"\n born = \"2026-11-20\"": "the enclosure becomes too small from Sat 6 Mar 2027 on at the soonest, if they grow so",
	} {
		found := false
		for _, f := range on(t, "2027-03-02", kept("dynastes-hercules", box, "", animals), "").Findings {
			if f.Rule.ID == "outgrows-soon" {
				found = true
				if f.Text != want {
					t.Errorf("%q: %s, want %s", animals, f.Text, want)
				}
			}
		}
		if !found {
			t.Errorf("%q: nothing is found", animals)
		}
	}
	for _, f := range on(t, "2027-03-02", kept("hysterocrates-gigas", ofBox("20 x 20 x 18 cm", "some", "5 cm", " moisture = \"damp\"\n hides = 1\n"), "", ""), "").Findings {
		if f.Rule.ID == "substrate-shallow" && !strings.Contains(f.Write, "in a box at least") {
			t.Error(f.Write)
		}
	}
}
