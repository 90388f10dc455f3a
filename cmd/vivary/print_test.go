package main

import (
	"html"
	"strings"
	"testing"

	"github.com/spf13/afero"

	"vivary/compile/paper"
)

// What is to be printed is written into a file that is ours or not there, and nowhere else.
func TestPrint(t *testing.T) {
	inside := quillmoorWith(t)
	for _, x := range []struct{ line, file string }{
		{"cover --paper cover.html", "cover.html"},
		{"cover --paper cover.html --keeper relief", "cover.html"},
		{"labels --paper labels.html --address https://house.example/ --keys /.keys/house", "labels.html"},
		{"labels burrow-a,tub-1 to 3 --paper labels.HTML", "labels.HTML"},
		{"due --paper due.html --days 3", "due.html"},
	} {
		s, out, e := at(inside, noon, strings.Fields(x.line)...)
		text, err := afero.ReadFile(inside, x.file)
		if s != fine || e != "" || err != nil || !paper.Ours(text) || out != x.file+"\n" {
			t.Errorf("vivary %s: status %d, %s%s %v", x.line, s, out, e, err)
		}
	}
	if text, _ := afero.ReadFile(inside, "labels.HTML"); strings.Count(string(text), `class="label"`) != 4 {
		t.Error("not the four labels that were asked for")
	}
	if text, _ := afero.ReadFile(inside, "labels.html"); !strings.Contains(string(text), "<svg") {
		t.Error("labels with an address have no codes")
	}
	const mine = "<!DOCTYPE html>\n<html>mine"
	_ = afero.WriteFile(inside, "mine.html", []byte(mine), 0o644)
	for line, want := range map[string]string{
		"cover --paper mine.html":              "mine.html",
		"labels --paper labels.pdf":            "ends in .html: --paper labels.pdf.html",
		"cover --paper .":                      "ends in .html",
		"cover --keeper nobody":                `there is no keeper "nobody"`,
		"cover --keeper lead":                  "lead stands in for nobody: write an away block",
		"labels nothing":                       `there is no enclosure "nothing"`,
		"labels tub-1 to 99":                   "there is no enclosure",
		"labels --address house":               "--address is how the server is reached",
		"labels --address javascript:alert(1)": "--address is how the server is reached",
		"cover --address https://h.example/a":  "--address is how the server is reached",
		"due --round nothing --paper x.html":   `there is no round "nothing"`,
	} {
		s, out, e := at(inside, noon, strings.Fields(line)...)
		if s == fine || out != "" || !strings.Contains(e, want) {
			t.Errorf("vivary %s: status %d, %s%s", line, s, out, e)
		}
	}
	if text, _ := afero.ReadFile(inside, "mine.html"); string(text) != mine {
		t.Error("a file of somebody else was written over")
	}
}

// TestPrintedWhileRefused: animals are hungry whatever is wrong with a plan. What is printed
// says on each page that the plan is refused and from when its lists are; they are those of the
// calendars last built, with what was logged since, and no figure of the plan that was refused.
func TestPrintedWhileRefused(t *testing.T) {
	inside := quillmoorWith(t)
	bad := func() {
		plan, err := afero.ReadFile(inside, "enclosures/burrow-a.care.hcl")
		if err != nil || !strings.Contains(string(plan), "warm_end    = \"28 to 30 C\"") {
			t.Fatal(string(plan), err)
		}
		_ = afero.WriteFile(inside, "enclosures/burrow-a.care.hcl", []byte(strings.Replace(string(plan), "warm_end    = \"28 to 30 C\"", "warm_end    = \"61 C\"", 1)), 0o644)
	}
	printed := func(line, file string, want int) string {
		t.Helper()
		s, out, e := at(inside, noon, strings.Fields(line)...)
		text, _ := afero.ReadFile(inside, file)
		if s != refused || e == "" || want > 0 && out != file+"\n" || (want > 0) != paper.Ours(text) {
			t.Fatalf("vivary %s: status %d, %s%s", line, s, out, e)
		}
		if n := strings.Count(string(text), "<li>The plan is refused"); n < want || n != strings.Count(string(text), `class="sheet"`) {
			t.Errorf("vivary %s: %d pages say that it is refused", line, n)
		}
		return html.UnescapeString(string(text))
	}
	if s, _, e := at(inside, noon, "check"); s != fine {
		t.Fatal(e)
	}
	good, _ := afero.ReadFile(inside, "enclosures/burrow-a.care.hcl")
	bad()
	if text := printed("due --paper first.html", "first.html", 1); !strings.Contains(text, "no calendars were built before") || !strings.Contains(text, "Evening round") {
		t.Error("without calendars there is no sheet of what can be read")
	}
	printed("cover --paper none.html", "none.html", 0) // nobody is handed that
	_ = afero.WriteFile(inside, "enclosures/burrow-a.care.hcl", good, 0o644)
	if s, _, e := at(inside, noon.AddDate(0, 0, -1), "build"); s != fine {
		t.Fatal(e)
	}
	bad()
	for _, line := range []string{"burrow-a done water", "burrow-a measured 45 C"} {
		if s, _, e := at(inside, noon, append([]string{"note"}, strings.Fields(line)...)...); s == usage {
			t.Fatal(e)
		}
	}
	due := printed("due --paper due.html --days 2", "due.html", 2)
	for _, want := range []string{"last built on Tue 24 Nov 2026", "Wed 25 Nov 2026", "Thu 26 Nov 2026", "Logged since", "burrow-a done water", "Done today, by the log", "Evening round (evening)", "Burrow A: 45 C was measured", "Practice on the green"} {
		if !strings.Contains(due, want) {
			t.Errorf("the sheet lacks %q", want)
		}
	}
	cover := printed("cover --paper cover.html", "cover.html", 8)
	for _, want := range []string{"last built on Tue 24 Nov 2026", "Standing in for Lead keeper", "Whom to ring", "After a sting", "Mon 12 Jul 2027", "Evening round (", "Burrow A: 45 C was measured", "burrow-a done water", "Handing back"} {
		if !strings.Contains(cover, want) {
			t.Errorf("the sheet of the stand-in lacks %q", want)
		}
	}
	for name, text := range map[string]string{"due": due, "cover": cover} {
		if strings.Contains(text, "61 C") || strings.Contains(text, ">Plan of ") {
			t.Errorf("%s: what is refused is printed", name)
		}
	}
	// A label says who lives there, which is true all the same.
	if s, _, e := at(inside, noon, "labels", "--paper", "l.html"); s != fine {
		t.Errorf("labels: status %d, %s", s, e)
	}
	_ = afero.WriteFile(inside, "torn.care.hcl", []byte("collection \"other\" {\n"), 0o644)
	if s, _, e := at(inside, noon, "labels", "--paper", "l.html"); s == fine || e == "" {
		t.Errorf("labels of a plan that is not understood: status %d, %s", s, e)
	}
	if text := printed("due --paper torn.html", "torn.html", 1); !strings.Contains(text, "Evening round (evening)") {
		t.Error("of a plan that cannot be read there is no sheet")
	}
}

// A keeper who is ill from today is stood in for by whoever is there, and that is printed.
func TestCoverOfSomebodyIll(t *testing.T) {
	inside := quillmoorWith(t)
	if s, _, e := at(inside, noon, "note", "keeper", "lead", "away", "ill"); s != fine {
		t.Fatal(e)
	}
	s, out, e := at(inside, noon, "cover")
	if s != fine || !strings.Contains(out, "Standing in for Lead keeper") || !strings.Contains(out, "It is not known yet until when") {
		t.Errorf("status %d, %s%.600s", s, e, out)
	}
}

// A picture for a phone is another than the one to be printed, and each may take the other's
// place.
func TestNarrowPicture(t *testing.T) {
	inside := quillmoorWith(t)
	var before string
	for _, line := range []string{"why dune-1 --svg year.svg", "why dune-1 --svg year.svg --narrow"} {
		if s, _, e := at(inside, noon, strings.Fields(line)...); s != fine {
			t.Fatalf("vivary %s: %s", line, e)
		}
		text, _ := afero.ReadFile(inside, "year.svg")
		if string(text) == before {
			t.Errorf("vivary %s draws the same", line)
		}
		before = string(text)
	}
	if !strings.Contains(before, `width="360"`) {
		t.Errorf("not as wide as a phone: %.200s", before)
	}
	if s, _, e := at(inside, noon, "why", "dune-1", "--narrow"); s != usage || !strings.Contains(e, "--narrow goes with --svg") {
		t.Errorf("status %d, %s", s, e)
	}
}
