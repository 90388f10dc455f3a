package paper

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"github.com/rogpeppe/go-internal/txtar"

	"vivary/compile"
	"vivary/compile/daylist"
	"vivary/compile/feeds"
	"vivary/compile/rounds"
	"vivary/internal/planned"
)

// insectHouse is the house of the story of that name: 400 boxes in four sections, two rounds a
// day. Of a file named "100 x north.care.hcl" there are a hundred.
func insectHouse(t *testing.T, day string) *compile.Result {
	t.Helper()
	a, err := txtar.ParseFile("../../testdata/stories/insect-house.txtar")
	if err != nil {
		t.Fatal(err)
	}
	files := map[string]string{}
	for _, f := range a.Files {
		n, name, many := strings.Cut(f.Name, " x ")
		switch {
		case f.Name == "want":
		case !many:
			files[f.Name] = string(f.Data)
		default:
			for i := range 100 {
				if n != "100" {
					t.Fatal(f.Name)
				}
				files[fmt.Sprintf("%03d-%s", i+1, name)] = strings.ReplaceAll(string(f.Data), "{n}", fmt.Sprintf("%03d", i+1))
			}
		}
	}
	c, found := planned.Files(t, files)
	r := compile.Compile(c, found, noonOf(c, planned.Day(day)))
	if r.Roster == nil || len(r.Lives) != 400 {
		t.Fatal(found)
	}
	return r
}

// TestSheetOfAnInsectHouse: the sheet of a day of 400 boxes in four sections begins each round with
// what is held, passes every box, has something to tick before all that is to be done, and is
// signed. Phones have eight entries of that day at the most.
func TestSheetOfAnInsectHouse(t *testing.T) {
	r := insectHouse(t, "2027-01-04")
	lists := daylist.Of(r, daylist.Asked{Days: 1})
	if len(lists) != 2 {
		t.Fatalf("%d rounds", len(lists))
	}
	for _, l := range lists {
		held, begun := 0, false
		for _, x := range l.Walk {
			switch x.Sort {
			case rounds.Pressing, rounds.States:
				if held++; begun {
					t.Errorf("%q comes after what is to be done", x.Text)
				}
			case rounds.Todo:
				begun = true
			}
		}
		if held == 0 {
			t.Errorf("the %s has no exceptions", l.Round.Shown())
		}
		for _, of := range r.Lives {
			if name := of.Plan.Name.V; !l.Passes(name) {
				t.Errorf("%s is not passed in the %s", name, l.Round.Shown())
			}
		}
	}
	doc := Round(r, lists)
	var text strings.Builder
	if err := doc.Text(&text); err != nil {
		t.Fatal(err)
	}
	all := text.String()
	for _, want := range []string{"Done by ____", "Began ____", "Ended ____", "What was seen, and what was not done and why"} {
		if !strings.Contains(all, want) {
			t.Errorf("%q does not stand there", want)
		}
	}
	if first, box := strings.Index(all, "North 007"), strings.Index(all, "[ ]"); first < 0 || box < first {
		t.Error("who is held does not come before the first box to tick")
	}
	got := asHTML(t, doc, Options{})
	for i := range lists {
		for _, x := range lists[i].Walk {
			holdsLine(t, &got, &x)
		}
	}
	entries := 0
	for _, f := range feeds.Of(r) {
		text, err := f.Bytes(nil)
		if err != nil {
			t.Fatal(err)
		}
		for _, line := range strings.Split(string(text), "\r\n") {
			if strings.HasPrefix(line, "DTSTART") && strings.Contains(line, ":20270104T") {
				entries++
			}
		}
	}
	if entries != 8 { // four sections, two rounds
		t.Errorf("%d entries on that day", entries)
	}
}

// TestCodeOnlyWithAnAddress: the sheet of a stand-in has a code where an address is set, and
// nothing that looks like one where none is.
func TestCodeOnlyWithAnAddress(t *testing.T) {
	r := collection(t, "examples/quillmoor", "2027-07-08")
	stints := r.Roster.Stints()
	for _, address := range []string{"", "https://house.example/k/4e1f0c2b9d7a46d8/"} {
		d, err := Cover(r, &stints[0], address)
		if err != nil {
			t.Fatal(err)
		}
		codes := 0
		for _, p := range d.Sheets {
			codes += len(slices.DeleteFunc(slices.Clone(p.Parts), func(x Part) bool { _, is := x.(Code); return !is }))
		}
		var page, text strings.Builder
		if err := d.HTML(&page, Options{}); err != nil {
			t.Fatal(err)
		}
		if err := d.Text(&text); err != nil {
			t.Fatal(err)
		}
		if want := min(1, len(address)); codes != want || strings.Count(page.String(), "<svg") != want || strings.Contains(text.String(), "for a phone") != (want > 0) {
			t.Errorf("with the address %q there are %d codes", address, codes)
		}
		if address != "" && !strings.Contains(text.String(), address) {
			t.Error("the address does not stand beside its code")
		}
	}
}
