package growth_test

import (
	"fmt"
	"strings"
	"testing"

	"github.com/spf13/afero"

	"vivary/compile/growth"
	"vivary/compile/horizon"
	"vivary/compile/life"
	"vivary/plan"
	"vivary/schema/civil"
)

const head = "collection \"c\" {\n  time_zone = \"Europe/London\"\n}\nroom \"r\" {\n  temperature = \"22 to 25 C\"\n}\n"

// box is an enclosure of that inside with what else stands in it.
func box(species, inside, rest string) string {
	return fmt.Sprintf("enclosure \"box\" {\n  species = %q\n  housing {\n    inside = %q\n    lid = \"solid, latched\"\n  }\n%s\n}\n", species, inside, rest)
}

func herd(name, count, rest string) string {
	return fmt.Sprintf("  animals %q {\n    count = %q\n    %s\n  }\n", name, count, rest)
}

func day(t testing.TB, s string) civil.Date {
	t.Helper()
	d, err := civil.Parse(s)
	if err != nil {
		t.Fatal(err)
	}
	return d
}

// lives reads a plan and a log as of a day.
func lives(t testing.TB, text, log, today string) (*life.Enclosure, *plan.Collection) {
	t.Helper()
	disk := afero.NewMemMapFs()
	for name, body := range map[string]string{"c/a.care.hcl": head + text, "c/a.care.log": log} {
		if err := afero.WriteFile(disk, name, []byte(body), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	c, found, err := plan.Load(disk, "c")
	if err != nil {
		t.Fatal(err)
	}
	for _, f := range found {
		if f.Severity.Refuses() {
			t.Fatalf("the plan is refused: %s %s (%s)", f.Rule.ID, f.Text, f.Write)
		}
	}
	l, _ := life.Read(c, c.Enclosure("box"), life.Lines(c)["box"], horizon.Horizon{From: day(t, today), Days: 400})
	return l, c
}

func report(t testing.TB, text, log, today string) growth.Report {
	t.Helper()
	l, c := lives(t, text, log, today)
	r, ok := growth.Of(l, c, day(t, today))
	if !ok {
		t.Fatal("no report")
	}
	return r
}

func TestPrint(t *testing.T) {
	for _, x := range []struct{ text, log string }{
		{box("pandinus-imperator", "90 x 45 x 45 cm", herd("adults", "1.2.0", "stage = \"adult\"")), ""},
		{box("pandinus-imperator", "20 x 10 x 12 in", herd("young", "2", "instar = 4\n length = \"1.6 in\"")+"feeding \"young\" {\n every = \"4 days\"\n per_animal = 1\n prey = \"cricket small\"\n}"), "2026-11-02 box young moult 2\n"},
		{box("pandinus-imperator", "90 x 45 x 45 cm", herd("adults", "0.1", "stage = \"adult\"")), "2026-05-02 box adults mated\n"},
		{box("hadrurus-arizonensis", "40 x 30 x 30 cm", herd("adults", "0.1", "stage = \"adult\"")), "2026-10-02 box adults born 20\n"},
		{box("hadrurus-arizonensis", "20 x 20 x 20 cm", herd("one", "1", "instar = 3\nborn = \"2025-06-01\"")), ""},
		{box("brachypelma-hamorii", "15 x 15 x 15 cm", herd("one", "1", "stage = \"juvenile\"\nlength = \"22 mm\"")), ""},
	} {
		r := report(t, x.text, x.log, "2026-11-25")
		t.Log("\n" + strings.Join(r.Lines(), "\n"))
	}
}
