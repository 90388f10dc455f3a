package rounds_test

import (
	"fmt"
	"strings"
	"testing"

	"github.com/spf13/afero"

	"vivary/compile"
	"vivary/compile/rounds"
	"vivary/plan"
	"vivary/schema/civil"
	"vivary/testdata/generated"
)

var today = civil.Must(2027, 2, 15)

// compiled compiles files as of noon of a day.
func compiled(t testing.TB, files map[string]string) *compile.Result {
	t.Helper()
	disk := afero.NewMemMapFs()
	for name, body := range files {
		if err := afero.WriteFile(disk, "c/"+name, []byte(body), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	c, found, err := plan.Load(disk, "c")
	if err != nil {
		t.Fatal(err)
	}
	for _, f := range found {
		if f.Severity.Refuses() {
			t.Fatalf("%s: %s (%s)", f.Rule.ID, f.Text, f.Write)
		}
	}
	return compile.Compile(c, found, today.At(12*60, c.Location))
}

func all(r *compile.Result, round *plan.Round) []rounds.Pick {
	var picks []rounds.Pick
	for i := range r.Schedule.Series {
		if s := &r.Schedule.Series[i]; s.Round == round {
			picks = append(picks, rounds.Pick{Series: s})
		}
	}
	return picks
}

func BenchmarkText(b *testing.B) {
	r := compiled(b, generated.Collection(40, "Europe/London"))
	round := rounds.New(r.Schedule, r.Schedule.Rounds[0], all(r, r.Schedule.Rounds[0]))
	var text []byte
	n := 0
	b.ReportAllocs()
	for b.Loop() {
		text = round.Text(text[:0], n%366)
		n++
	}
}

func BenchmarkOn(b *testing.B) {
	r := compiled(b, generated.Collection(40, "Europe/London"))
	round := rounds.New(r.Schedule, r.Schedule.Rounds[0], all(r, r.Schedule.Rounds[0]))
	n := 0
	b.ReportAllocs()
	for b.Loop() {
		round.On(n % 366)
		n++
	}
}

var _ = fmt.Sprint
var _ = strings.Repeat
