package plan

import (
	"slices"
	"strings"
	"testing"

	"vivary/plan/source"
	"vivary/schema/civil"
)

const peopled = sound + "keeper \"lead\" {\n}\nkeeper \"rel\" {\n}\nenclosure \"box\" {" + box

// Absences of which the log tells begin with away and end with back.
func TestSudden(t *testing.T) {
	day := func(s string) civil.Date {
		d, err := civil.Parse(s)
		if err != nil {
			t.Fatal(err)
		}
		return d
	}
	for _, c := range []struct {
		name, log string
		want      []Sudden // without their places
		found     string
	}{
		{"away and back", "2026-11-02 keeper lead away \"ill\"\n2026-11-05 keeper lead back\n", []Sudden{{Keeper: "lead", From: day("2026-11-02"), Back: day("2026-11-05")}}, ""},
		{"still away, and a shell took the quotes", "2026-11-02 keeper lead away ill\n", []Sudden{{Keeper: "lead", From: day("2026-11-02")}}, ""},
		{"with a time, and who wrote it", "2026-11-02 19:42 by rel keeper lead away\n", []Sudden{{Keeper: "lead", From: day("2026-11-02")}}, ""},
		{"said twice", "2026-11-02 keeper lead away\n2026-11-03 keeper lead away\n", []Sudden{{Keeper: "lead", From: day("2026-11-02")}}, ""},
		{"two people, and again", "2026-11-02 keeper lead away\n2026-11-03 keeper rel away\n2026-11-04 keeper lead back\n2026-11-06 keeper lead away\n",
			[]Sudden{{Keeper: "lead", From: day("2026-11-02"), Back: day("2026-11-04")}, {Keeper: "rel", From: day("2026-11-03")}, {Keeper: "lead", From: day("2026-11-06")}}, ""},
		{"taken back", "2026-11-02 keeper lead away\n2026-11-02 keeper lead withdrawn away 2026-11-02\n", nil, ""},
		{"its end taken back", "2026-11-02 keeper lead away\n2026-11-05 keeper lead back\n2026-11-05 keeper lead withdrawn back\n", []Sudden{{Keeper: "lead", From: day("2026-11-02")}}, ""},
		{"of another taken back", "2026-11-02 keeper lead away\n2026-11-02 keeper rel withdrawn away\n", []Sudden{{Keeper: "lead", From: day("2026-11-02")}}, "nothing is taken back"},
		{"the same day", "2026-11-02 keeper lead away\n2026-11-02 keeper lead back\n", nil, ""},
		{"back from nowhere", "2026-11-02 keeper lead back\n", nil, "no line says since when"},
		{"nobody known", "2026-11-02 keeper bob away\n", nil, `there is no keeper "bob"`},
		{"another word", "2026-11-02 keeper lead ill\n", nil, "away or back"},
	} {
		l, found := load(t, map[string]string{"a.care.hcl": peopled, "x.care.log": c.log})
		got := slices.Clone(l.Sudden)
		for i := range got {
			got[i].At, got[i].BackAt = source.Place{}, source.Place{}
		}
		if !slices.Equal(got, c.want) {
			t.Errorf("%s: %+v", c.name, got)
		}
		if said := strings.Join(texts(found), "\n"); (c.found == "") != (said == "") || !strings.Contains(said, c.found) {
			t.Errorf("%s: %s", c.name, said)
		}
		if e := l.WithoutLog(); len(e.Sudden) != 0 {
			t.Errorf("%s: an absence outlives its log", c.name)
		}
	}
}

// The line that takes an absence back is written for it.
func TestWithdrawnKeeper(t *testing.T) {
	l, _ := load(t, map[string]string{"a.care.hcl": peopled})
	if words, err := l.Withdrawal("2026-11-02 keeper lead away \"ill\""); err != nil || words != "keeper lead withdrawn away 2026-11-02" {
		t.Errorf("%q, %v", words, err)
	}
}

// An enclosure may have the name that stands for people: its lines are its own.
func TestEnclosureCalledKeeper(t *testing.T) {
	l, found := load(t, map[string]string{"a.care.hcl": strings.Replace(peopled, `"box"`, `"keeper"`, 1), "x.care.log": "2026-11-02 keeper adult moult\n"})
	if len(found) > 0 || len(l.Log) != 1 || l.Log[0].Enclosure.V != "keeper" || l.Log[0].Keeper.Set() {
		t.Errorf("%v %+v", texts(found), l.Log)
	}
}
