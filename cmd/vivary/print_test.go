package main

import (
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

// Nobody is handed the sheet of a plan that is refused.
func TestNothingIsPrintedOfWhatIsRefused(t *testing.T) {
	inside := quillmoorWith(t)
	_ = afero.WriteFile(inside, "broken.care.hcl", []byte("enclosure \"x\" {\n  species = \"pandinus-imperator\"\n  climate {\n    warm_end = \"60 C\"\n  }\n}\n"), 0o644)
	for _, line := range []string{"cover --paper c.html", "due --paper c.html"} {
		s, out, e := at(inside, noon, strings.Fields(line)...)
		if there, _ := afero.Exists(inside, "c.html"); s != refused || there || out != "" || e == "" {
			t.Errorf("vivary %s: status %d, %s%s", line, s, out, e)
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
