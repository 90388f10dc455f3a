package tasks_test

import (
	"fmt"
	"strings"
	"testing"
	"time"

	"github.com/spf13/afero"

	"vivary/compile"
	"vivary/compile/tasks"
	"vivary/plan"
)

// put are the tasks of a day as an app shows them.
func put(t *testing.T, text, log string, now time.Time) string {
	t.Helper()
	var b strings.Builder
	for _, x := range tasks.Of(compiled(t, text, log, now), "").Wanted(1) {
		first := ""
		if x.First {
			first = " !"
		}
		fmt.Fprintf(&b, "%s%s\n%s\n\n", x.Summary, first, x.Description)
	}
	return b.String()
}

// TestText: what an app shows is what the round says, whole, with each place on a line of its
// own; where it is about many, the title says how many.
func TestText(t *testing.T) {
	const states = "* Tub 2: ill since 20 Nov: as the veterinarian says; no live prey, do not dig (until recovered is logged)\n" +
		"* Tub 3 (adult): young on her since 1 Nov: at most water, killed prey through the hatch, lift nothing (until first_moult is logged)\n"
	const box = "* Long forceps, empty lidded box (stings, bites): Tub 1 and 2\n"
	got := put(t, house, "2026-11-24 tub-1 skipped spot-clean\n2026-11-20 tub-2 ill\n2026-11-01 tub-3 born 20\n", evening)
	for _, want := range []string{
		"FIRST: To be answered: Tub 2 and 3 !\nFIRST: Ill since Fri 20 Nov: how is it? ring a veterinarian; log recovered, treated or died:\n- Tub 2\n" +
			"FIRST: Have the young moulted? white: not yet; light brown: log first_moult (adult):\n- Tub 3\nA tick is no answer: note what is so.\n" + states + "Morning round, 08:00\n\n",
		"Read lowest and highest temperature, reset: Tub 1 to 3\nRead lowest and highest temperature, reset, should show 20 to 28 C:\n- Tub 1\n- Tub 2\n" +
			"Read lowest and highest temperature, reset (if readable from outside), should show 20 to 28 C:\n- Tub 3\n" + states + "Morning round, 08:00\n\n",
		"FIRST: Spot clean, look for mould and mites: Tub 1 and 2 !\nFIRST: Spot clean, look for mould and mites (last done Mon 23 Nov):\n- Tub 1\n" +
			"Spot clean, look for mould and mites:\n- Tub 2\n" + box + states + "Evening round, 19:30, Lead\n\n",
		"Feed: Tub 1 to 3\nFeed 1 killed adult cricket (adult, one small item at her door):\n- Tub 3\nFeed 2 adult crickets:\n- Tub 1\n" +
			"Feed 2 killed adult crickets:\n- Tub 2\n" + box + states + "Evening round, 19:30, Lead\n\n",
	} {
		if !strings.Contains(got, want) {
			t.Errorf("nowhere stands\n%s\nin\n%s", want, got)
		}
	}
	pit := strings.NewReplacer("title   = \"Tub\"\n  numbers = \"1 to 3\"", "title = \"Tub 1\"", "\"tub\"", "\"pit\"").Replace(house[strings.Index(house, "enclosure \"tub\""):])
	if got := put(t, house+pit, "", evening); !strings.Contains(got, "- Tub 1 (pit)\n- Tub 1 (tub-1)\n- Tub 2\n") {
		t.Errorf("two of one title are not told apart:\n%s", got)
	}
	if got := put(t, strings.Replace(house, `"Tub"`, `"Sling box"`, 1), "", evening); !strings.Contains(got, "Feed 2 adult crickets: Sling box 1 to 3\n") || !strings.Contains(got, "- Sling box 1 (tub-1)\n- Sling box 2 (tub-2)\n") {
		t.Errorf("a title that is not the name stands alone:\n%s", got)
	}
	var numbers []string
	for n := 1; n < 80; n += 2 {
		numbers = append(numbers, fmt.Sprint(n))
	}
	got = put(t, strings.Replace(house, `"1 to 3"`, `"`+strings.Join(numbers, ", ")+`"`, 1), "", evening)
	if !strings.Contains(got, "Fresh water: 40 enclosures\n") || strings.Count(got, "\n- Tub 79\n") < 5 {
		t.Errorf("%.3000s", got)
	}
}

// TestTitles: a title names each place once, and a rack by its title; a task is due when its
// round is over.
func TestTitles(t *testing.T) {
	racked := strings.NewReplacer(`  room    = "east"`, `  rack    = "wall"`, `at = "08:00"`, "at = \"08:00\"\n  within = \"40 min\"").Replace(house) +
		"rack \"wall\" {\n  room        = \"east\"\n  thermometer = true\n}\n"
	two := house[:strings.LastIndex(house, "}")] + "  animals \"other\" {\n    count  = 1\n    stage  = \"adult\"\n    origin = \"captive bred\"\n    paper  = \"invoice 119\"\n  }\n\n  feeding \"other\" {\n    on         = [\"wed\"]\n    prey       = \"cricket adult\"\n    per_animal = 2\n    round      = \"evening\"\n  }\n}\n"
	for name, x := range map[string]struct{ text, want string }{
		"a rack":     {racked, "reset: Wall\n"},
		"two groups": {two, "Feed: Tub 1 to 3\nFeed 2 adult crickets (adult):\n"},
	} {
		got := put(t, x.text, "", evening)
		if !strings.Contains(got, x.want) {
			t.Errorf("%s: nowhere stands %q in\n%s", name, x.want, got)
		}
	}
	for _, todo := range tasks.Of(compiled(t, racked, "", evening), "").Wanted(1) {
		want := time.Hour
		if todo.Start.Hour() == 8 {
			want = 40 * time.Minute
		}
		if got := todo.Due.Sub(todo.Start); got != want {
			t.Errorf("%s is due %s after its beginning", todo.Summary, got)
		}
	}
}

// TestReadings: what a gauge should show stands once where it is the same for all, else at each
// place; what is kept apart is told so.
func TestReadings(t *testing.T) {
	c, found, err := plan.Load(afero.NewOsFs(), "../../examples/quillmoor")
	if err != nil {
		t.Fatal(err)
	}
	const want = "Read lowest and highest temperature, reset:\n- Burrow A\n  should show 22 to 30 C, air 70 to 80 %\n- Tub 1\n  should show 22 to 28 C, air 70 to 80 %\n"
	const last = "\nLast, with tools of their own: Read lowest and highest temperature, reset, should show 22 to 28 C, air 70 to 80 %:\n- Arrival 1\n"
	for _, x := range tasks.Of(compile.Compile(c, found, evening), "").Wanted(1) {
		if strings.HasPrefix(x.Summary, "Read lowest") && strings.HasPrefix(x.Description, want) && strings.Contains(x.Description, last) {
			return
		}
	}
	t.Errorf("nowhere stands\n%s%s", want, last)
}
