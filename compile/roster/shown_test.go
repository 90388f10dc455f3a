package roster_test

import (
	"strings"
	"testing"

	"vivary/compile"
	"vivary/schema/civil"
)

// calendar is a calendar of that name.
func calendar(name, rest string) string {
	return "calendar \"" + name + "\" {\n" + strings.ReplaceAll(rest, "; ", "\n") + "\n}\n"
}

// shelves is a house of two rooms with a box in each, a round of the lead and one of
// nobody, and an absence of the lead from 10 to 13 July, in which the sitter comes on
// Sunday the 11th.
var shelves = staff + "round \"morning\" {\n  at = \"08:00\"\n}\nroom \"west\" {\n  temperature = \"21 to 24 C\"\n}\n" +
	away("lead", "10 Jul", "13 Jul", "cover = \"sitter\"\nvisits = [\"sun\"]") +
	strings.Replace(ash(`care "mist" { every = "day"; round = "evening" } care "look" { every = "day"; round = "morning" }`), "  housing", "  room = \"east\"\n  housing", 1) +
	strings.Replace(strings.Replace(ash(`care "mist" { every = "day"; round = "evening" } care "weigh" { on = ["mon"]; keeper = "friend"; round = "morning" }`), "  housing", "  room = \"west\"\n  housing", 1), "\"ash\"", "\"fern\"", 1)

// contents lists what falls into each calendar from 9 to 13 July, and the days on
// which an entry is shown to nobody who does it.
func contents(r *compile.Result) string {
	var b strings.Builder
	from, _ := r.Horizon.Index(on("9 Jul"))
	list := func(name string, has func(int) bool) {
		var days []string
		for i := from; i < from+5; i++ {
			if has(i) {
				days = append(days, strings.Fields(short(r.Horizon.Date(i)))[1])
			}
		}
		b.WriteString(strings.TrimSpace("  "+name+" "+strings.Join(days, " ")) + "\n")
	}
	for _, c := range r.Roster.Calendars {
		b.WriteString(c.Plan.Name.V + ":\n")
		for _, p := range c.Picks() {
			list(p.Entry.Plan().Name.V+" "+p.Entry.Name, p.Days.Has)
		}
	}
	b.WriteString("unshown:\n")
	for e := range r.Roster.All() {
		if i := e.Unshown(from); i >= 0 && i < from+5 {
			list(e.Plan().Name.V+" "+e.Name+" ("+e.UnshownFor()+")", func(i int) bool { return e.Days.Has(i) && !e.Shown.Has(i) })
		}
	}
	return strings.TrimSpace(b.String())
}

// TestWhatCalendarsShow: a calendar shows what each of its lists has, on the days on
// which one of its keepers does it; and what no calendar shows to who does it is
// unshown. On the 9th and the 13th the lead is there, on the 11th the sitter.
func TestWhatCalendarsShow(t *testing.T) {
	for _, c := range []struct{ title, calendars, want string }{
		{"none, so that one shows everything", "", `
fixtures:
ash look 9 10 11 12 13
ash mist 9 11 13
fern mist 9 11 13
fern weigh 12
unshown:`},
		{"of an enclosure", calendar("boxes", `enclosures = ["ash", "ash"]`), `
boxes:
ash look 9 10 11 12 13
ash mist 9 11 13
unshown:
fern mist (unshown evening lead) 9 11 13
fern weigh (unshown morning friend) 12`},
		{"of a room", calendar("west", `rooms = ["west"]`), `
west:
fern mist 9 11 13
fern weigh 12
unshown:
ash look (unshown morning ) 9 10 11 12 13
ash mist (unshown evening lead) 9 11 13`},
		{"of a round", calendar("evening", `rounds = ["evening"]`), `
evening:
ash mist 9 11 13
fern mist 9 11 13
unshown:
ash look (unshown morning ) 9 10 11 12 13
fern weigh (unshown morning friend) 12`},
		{"of a kind", calendar("looks", `kinds = ["look"]`), `
looks:
ash look 9 10 11 12 13
unshown:
ash mist (unshown evening lead) 9 11 13
fern mist (unshown evening lead) 9 11 13
fern weigh (unshown morning friend) 12`},
		{"of all of these", calendar("one", `enclosures = ["ash"]; rooms = ["west", "east"]; rounds = ["evening"]; kinds = ["mist", "look"]`), `
one:
ash mist 9 11 13
unshown:
ash look (unshown morning ) 9 10 11 12 13
fern mist (unshown evening lead) 9 11 13
fern weigh (unshown morning friend) 12`},
		{"of none of these", calendar("none", `enclosures = ["ash"]; rooms = ["west"]`), `
none:
unshown:
ash look (unshown morning ) 9 10 11 12 13
ash mist (unshown evening lead) 9 11 13
fern mist (unshown evening lead) 9 11 13
fern weigh (unshown morning friend) 12`},
		{"of the lead, who is shown nothing while away", calendar("lead", `keepers = ["lead"]`), `
lead:
ash mist 9 13
fern mist 9 13
unshown:
ash look (unshown morning ) 9 10 11 12 13
ash mist (unshown evening lead) 11
fern mist (unshown evening lead) 11
fern weigh (unshown morning friend) 12`},
		{"of the sitter, who is shown the visit", calendar("sitter", `keepers = ["sitter"]`), `
sitter:
ash mist 11
fern mist 11
unshown:
ash look (unshown morning ) 9 10 11 12 13
ash mist (unshown evening lead) 9 13
fern mist (unshown evening lead) 9 13
fern weigh (unshown morning friend) 12`},
		{"of one and of the other", calendar("lead", `keepers = ["lead"]`) + calendar("sitter", `keepers = ["sitter"]; rooms = ["east"]`), `
lead:
ash mist 9 13
fern mist 9 13
sitter:
ash mist 11
unshown:
ash look (unshown morning ) 9 10 11 12 13
fern mist (unshown evening lead) 11
fern weigh (unshown morning friend) 12`},
		{"of both, in either order", calendar("a", `keepers = ["friend", "sitter"]; entry = "per care"`) + calendar("b", `keepers = ["sitter", "friend"]`), `
a:
ash mist 11
fern mist 11
fern weigh 12
b:
ash mist 11
fern mist 11
fern weigh 12
unshown:
ash look (unshown morning ) 9 10 11 12 13
ash mist (unshown evening lead) 9 13
fern mist (unshown evening lead) 9 13`},
		{"of one keeper, and one that everybody sees", calendar("lead", `keepers = ["lead"]`) + calendar("all", `rounds = ["evening"]`), `
all:
ash mist 9 11 13
fern mist 9 11 13
lead:
ash mist 9 13
fern mist 9 13
unshown:
ash look (unshown morning ) 9 10 11 12 13
fern weigh (unshown morning friend) 12`},
	} {
		r := compiled(t, house(shelves, c.calendars), "", on("1 Jul"))
		if got := contents(r); got != strings.TrimSpace(c.want) {
			t.Errorf("%s:\n%s\nwant %s", c.title, got, c.want)
		}
	}
}

// TestWorkedFromPaper: a round whose list is on paper, or read at the terminal, is
// shown there, whatever calendars have; one that says calendar is shown by these.
func TestWorkedFromPaper(t *testing.T) {
	for list, want := range map[string]bool{"paper": true, "terminal": true, "calendar": false} {
		text := strings.Replace(house(shelves, calendar("boxes", `enclosures = ["fern"]`)), "round \"evening\" {\n", "round \"evening\" {\n  list = \""+list+"\"\n", 1)
		e := find(t, compiled(t, text, "", on("1 Jul")), "ash", "mist")
		if got := e.Unshown(0) < 0; got != want {
			t.Errorf("%s: shown %v", list, got)
		}
	}
}

// TestPicksOfAKeeper: what one keeper does of a round, and all of it.
func TestPicksOfAKeeper(t *testing.T) {
	r := compiled(t, house(shelves), "", on("1 Jul"))
	for keeper, want := range map[string]string{
		"":       "ash mist 9 11 13, fern mist 9 11 13",
		"lead":   "ash mist 9 13, fern mist 9 13",
		"sitter": "ash mist 11, fern mist 11",
		"friend": "",
	} {
		var got []string
		for _, p := range r.Roster.Picks(r.Plan.Rounds[1], keeper) {
			s := p.Entry.Plan().Name.V + " " + p.Entry.Name
			for d := on("9 Jul"); d <= on("13 Jul"); d++ {
				if p.Days.Has(place(t, r, d)) {
					s += " " + strings.Fields(short(d))[1]
				}
			}
			got = append(got, s)
		}
		if strings.Join(got, ", ") != want {
			t.Errorf("%q does %q, want %q", keeper, strings.Join(got, ", "), want)
		}
	}
}

func place(t *testing.T, r *compile.Result, d civil.Date) int {
	t.Helper()
	i, ok := r.Horizon.Index(d)
	if !ok {
		t.Fatalf("%s is not in the window", d)
	}
	return i
}
