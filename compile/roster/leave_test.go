package roster_test

import (
	"fmt"
	"maps"
	"slices"
	"strings"
	"testing"

	"vivary/compile/roster"
)

// leaves lists what absences mean for people.
func leaves(all []roster.Leave) string {
	var b strings.Builder
	for _, l := range all {
		whom := l.For
		if whom == "" {
			whom = "everybody"
		}
		fmt.Fprintf(&b, "%s, %d days, for %s as %s: %s\n", short(l.From), l.Days, whom, l.Name, l.Title)
		for _, s := range l.Lines {
			fmt.Fprintf(&b, "  %s\n", s)
		}
	}
	return strings.TrimSpace(b.String())
}

// TestLeaves: of a run of days away everybody is told once, however many blocks make
// it; the keeper gets ready on the day before, and each who stands in is told from when
// and until when.
func TestLeaves(t *testing.T) {
	for _, c := range []struct{ title, plan, want string }{
		{"nobody stands in", staff + away("lead", "10 Jul", "17 Jul", ""), `
Sat 10 Jul, 7 days, for everybody as lead/2027-07-10/away: Lead is away
  Nobody stands in until Sat 17 Jul
Fri 9 Jul, 1 days, for lead as lead/2027-07-10/ready: Get ready to leave tomorrow
  Fill every dish
  Check every lid, lock and thermostat
Sat 17 Jul, 1 days, for lead as lead/2027-07-10/return: Back today
  Count the animals and look at every lid
  Read the lowest and the highest temperatures
  Write down what was seen`},
		// The sitter has the first week and the last, and the friend the week between.
		{"several covers in a run", staff + away("lead", "10 Jul", "17 Jul", `cover = "sitter"`) + away("lead", "17 Jul", "24 Jul", `cover = "friend"`) + away("lead", "24 Jul", "31 Jul", `cover = "sitter"`), `
Fri 9 Jul, 1 days, for sitter as lead/2027-07-10/stand-in-eve: You stand in for Lead from Sat 10 Jul
  Your days: Sat 10 Jul to Fri 16 Jul and Sat 24 Jul to Fri 30 Jul
  Have keys, portions and numbers at hand
  Ask now what is not clear
Sat 10 Jul, 1 days, for sitter as lead/2027-07-10/stand-in: You stand in for Lead
  Your days: Sat 10 Jul to Fri 16 Jul and Sat 24 Jul to Fri 30 Jul
  Do what each round says, and no more
  Lift no animal; open no lid that need not be opened
  Write down what looks wrong, and ring
Sat 31 Jul, 1 days, for sitter as lead/2027-07-10/handed-back: Handed back to Lead
  Lead does the rounds again from today
Fri 16 Jul, 1 days, for friend as lead/2027-07-10/stand-in-eve/friend: You stand in for Lead from Sat 17 Jul
  Have keys, portions and numbers at hand
  Ask now what is not clear
Sat 17 Jul, 1 days, for friend as lead/2027-07-10/stand-in/friend: You stand in for Lead
  Do what each round says, and no more
  Lift no animal; open no lid that need not be opened
  Write down what looks wrong, and ring
Sat 24 Jul, 1 days, for friend as lead/2027-07-10/handed-back/friend: Handed back to Lead
  Lead does the rounds again from today
Sat 10 Jul, 21 days, for everybody as lead/2027-07-10/away: Lead is away
  Sitter stands in until Sat 31 Jul, on Sat 10 Jul to Fri 16 Jul and Sat 24 Jul to Fri 30 Jul
  Friend stands in until Sat 24 Jul
Fri 9 Jul, 1 days, for lead as lead/2027-07-10/ready: Get ready to leave tomorrow
  Fill every dish
  Check every lid, lock and thermostat
  Lay out the portions and label them with their dates
  Leave the numbers of a mentor and a veterinarian
Sat 31 Jul, 1 days, for lead as lead/2027-07-10/return: Back today
  Tell Friend that you are back
  Tell Sitter that you are back
  Read the notes
  Count the animals and look at every lid
  Read the lowest and the highest temperatures
  Write down what was seen`},
		// What stands on phones keeps the name that the keeper had first; people read the
		// present one.
		{"a keeper of another name", kim + away("kim", "10 Jul", "17 Jul", "") + away("kim", "20 Jul", "21 Jul", ""), `
Sat 10 Jul, 7 days, for everybody as lead/2027-07-10/away: Kim Lee is away
  Nobody stands in until Sat 17 Jul
Fri 9 Jul, 1 days, for kim as lead/2027-07-10/ready: Get ready to leave tomorrow
  Fill every dish
  Check every lid, lock and thermostat
Sat 17 Jul, 1 days, for kim as lead/2027-07-10/return: Back today
  Count the animals and look at every lid
  Read the lowest and the highest temperatures
  Write down what was seen
Tue 20 Jul, 1 days, for everybody as lead/2027-07-20/away: Kim Lee is away
  Nobody stands in until Wed 21 Jul
Mon 19 Jul, 1 days, for kim as lead/2027-07-20/ready: Get ready to leave tomorrow
  Fill every dish
  Check every lid, lock and thermostat
Wed 21 Jul, 1 days, for kim as lead/2027-07-20/return: Back today
  Count the animals and look at every lid
  Read the lowest and the highest temperatures
  Write down what was seen`},
	} {
		r := compiled(t, house(c.plan, water(`every = "day"`)), "", on("1 Jul"))
		all := r.Roster.Leaves()
		if got := leaves(all); got != strings.TrimSpace(c.want) {
			t.Errorf("%s:\n%s\nwant %s", c.title, got, c.want)
		}
		for _, l := range all {
			if l.Away != r.Plan.Aways[0].Name.V {
				t.Errorf("%s: of the absence of %q", l.Name, l.Away)
			}
		}
	}
}

// kim and sam had other names once.
const kim = "keeper \"kim\" {\n  title = \"Kim Lee\"\n  formerly = \"lead\"\n}\nkeeper \"sam\" {\n  formerly = \"friend\"\n}\nkeeper \"sitter\" {\n}\n"

// TestLeavesKeepTheirNames: whoever is renamed with formerly, the one who is away or
// one who stands in, every entry keeps its name.
func TestLeavesKeepTheirNames(t *testing.T) {
	named := func(keepers, who, cover string) string {
		r := compiled(t, house(keepers, away(who, "10 Jul", "17 Jul", `cover = "sitter"`), away(who, "17 Jul", "24 Jul", "cover = \""+cover+"\""), water(`every = "day"`)), "", on("1 Jul"))
		var out []string
		for _, l := range r.Roster.Leaves() {
			out = append(out, l.Name)
		}
		return strings.Join(out, "\n")
	}
	if was, is := named(staff, "lead", "friend"), named(kim, "kim", "sam"); was != is {
		t.Errorf("renamed:\n%s\nwere\n%s", is, was)
	}
}

// TestStandInIsTold: who comes on visits is told on the day before the absence, while the
// keeper can still be asked, and on the first visit; not on a day without one.
func TestStandInIsTold(t *testing.T) {
	r := compiled(t, house(staff, away("lead", "10 Jul", "17 Jul", "cover = \"sitter\"\n  visits = [\"tue\", \"fri\"]"), water(`every = "day"`)), "", on("1 Jul"))
	got := map[string]string{}
	for _, l := range r.Roster.Leaves() {
		if l.For == "sitter" {
			got[short(l.From)] = l.Title
			if text := strings.Join(l.Lines, "\n"); strings.Contains(text, "Your days: Tue 13 Jul and Fri 16 Jul") != strings.HasPrefix(l.Title, "You stand in") {
				t.Errorf("%s: the days of the visits:\n%s", l.Title, text)
			}
		}
		if l.For == "" && !slices.Contains(l.Lines, "Sitter stands in until Sat 17 Jul, on Tue 13 Jul and Fri 16 Jul") {
			t.Errorf("%s: %q", l.Title, l.Lines)
		}
	}
	want := map[string]string{"Fri 9 Jul": "You stand in for Lead from Tue 13 Jul", "Tue 13 Jul": "You stand in for Lead", "Sat 17 Jul": "Handed back to Lead"}
	if !maps.Equal(got, want) {
		t.Errorf("%v\nwant %v", got, want)
	}
}

// TestRegular: who only stands in has no work of their own.
func TestRegular(t *testing.T) {
	r := compiled(t, house(staff, away("lead", "10 Jul", "17 Jul", `cover = "sitter"`), water(`every = "day"`)), "", on("1 Jul"))
	if !r.Roster.Regular("lead") || r.Roster.Regular("sitter") {
		t.Error("lead works always, and the sitter stands in")
	}
}
