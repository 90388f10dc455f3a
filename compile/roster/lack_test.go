package roster_test

import "testing"

// TestWhatKeepsAnEntryFromBeingShown: it is the one name that a calendar leaves out,
// said at the list that lacks it; of two that it lacks neither, and where nobody is
// named for a round, it is that: the first keeper is as good as another.
func TestWhatKeepsAnEntryFromBeingShown(t *testing.T) {
	const none = `a calendar with "evening" among its rounds, or one that selects nothing; or paper as list of this round, where it is worked from paper`
	own := staff + ash(`care "mist" { every = "day"; at = "10:15" }`)
	for _, c := range []struct{ title, plan, box, name, on, at, write string }{
		{"a round", shelves + calendar("evening", `rounds = ["evening"]`), "ash", "look", "9 Jul",
			`rounds = ["evening"]`, `"morning" in rounds of calendar "evening", or a calendar without rounds`},
		{"a keeper", shelves + calendar("lead", `keepers = ["lead"]`), "fern", "weigh", "12 Jul",
			`keepers = ["lead"]`, `"friend" in keepers of calendar "lead", or a calendar without keepers`},
		{"who stands in", shelves + calendar("lead", `keepers = ["lead"]`), "ash", "mist", "11 Jul",
			`keepers = ["lead"]`, `"sitter" in keepers of calendar "lead", or a calendar without keepers`},
		{"a room", shelves + calendar("west", `enclosures = ["ash"]; rooms = ["west"]`), "ash", "mist", "9 Jul",
			`rooms = ["west"]`, `"east" in rooms of calendar "west", or a calendar without rooms`},
		{"an enclosure", shelves + calendar("west", `enclosures = ["ash"]; rooms = ["west"]`), "fern", "mist", "9 Jul",
			`enclosures = ["ash"]`, `"fern" in enclosures of calendar "west", or a calendar without enclosures`},
		{"a kind", shelves + calendar("looks", `kinds = ["look"]`), "ash", "mist", "9 Jul",
			`kinds = ["look"]`, `"mist" in kinds of calendar "looks", or a calendar without kinds`},
		{"two names", shelves + calendar("looks", `kinds = ["look"]; enclosures = ["ash"]`), "fern", "mist", "9 Jul", `round "evening" {`, none},
		{"the second of two calendars", shelves + calendar("a", `kinds = ["look"]; enclosures = ["ash"]`) + calendar("b", `kinds = ["look"]`), "fern", "mist", "9 Jul",
			`kinds = ["look"]`, `"mist" in kinds of calendar "b", or a calendar without kinds`},
		{"a keeper for the round", shelves + calendar("lead", `keepers = ["lead"]`), "ash", "look", "9 Jul",
			`round "morning" {`, `"friend" as keeper, or whoever does it, in this round`},
		{"a room that it has not", staff + water(`every = "day"`) + calendar("east", `rooms = ["east"]`), "ash", "water", "9 Jul", `round "evening" {`, none},
		{"a round at its own time", own + calendar("evening", `rounds = ["evening"]`), "ash", "mist", "9 Jul", "",
			"a round at 10:15 that a calendar shows, or a calendar that selects no rounds"},
		{"a keeper at its own time", own + calendar("lead", `keepers = ["lead"]`), "ash", "mist", "9 Jul",
			`care "mist" {`, `"friend" as keeper, or whoever does it`},
	} {
		r := compiled(t, house(c.plan), "", on("1 Jul"))
		l := r.Roster.Lacking(find(t, r, c.box, c.name), place(t, r, on(c.on)))
		at := ""
		if l.At.Written() {
			at = lineOf(r, l.At)
		}
		if at != c.at || l.Write != c.write {
			t.Errorf("%s: at %s: %s\nwant at %s: %s", c.title, at, l.Write, c.at, c.write)
		}
	}
}
