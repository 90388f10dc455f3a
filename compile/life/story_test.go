package life_test

import (
	"flag"
	"fmt"
	"path/filepath"
	"strings"
	"testing"

	"github.com/rogpeppe/go-internal/txtar"
	"github.com/spf13/afero"

	"vivary/compile/horizon"
	"vivary/compile/life"
	"vivary/internal/planned"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema/civil"
)

var update = flag.Bool("update", false, "write the lists of the stories anew")

// The stories are what keepers of such animals expect, told as a plan, a log, and
// the dated list that follows. Their figures are fixtures, written as a sheet of
// the collection's own. The comment of each says which lines were asked for
// beforehand.
func TestStories(t *testing.T) {
	files, err := filepath.Glob("testdata/*.txtar")
	if err != nil || len(files) < 6 {
		t.Fatal("stories missing:", files, err)
	}
	for _, file := range files {
		t.Run(strings.TrimSuffix(filepath.Base(file), ".txtar"), func(t *testing.T) {
			a, err := txtar.ParseFile(file)
			if err != nil {
				t.Fatal(err)
			}
			part := map[string]*txtar.File{}
			for i := range a.Files {
				part[a.Files[i].Name] = &a.Files[i]
			}
			told := 0
			for i := range a.Files {
				day, ok := strings.CutSuffix(a.Files[i].Name, ".log")
				if !ok {
					continue
				}
				told++
				today, err := civil.Parse(strings.Fields(day)[0])
				if err != nil {
					t.Fatal(err)
				}
				got := tell(t, string(part["plan"].Data), string(a.Files[i].Data), today)
				want := part[day+".list"]
				if want == nil {
					t.Fatalf("no list for %s", day)
				}
				if *update {
					want.Data = []byte(got)
				} else if got != string(want.Data) {
					t.Errorf("as of %s:\n%s\nwant:\n%s", day, got, want.Data)
				}
			}
			if told == 0 {
				t.Error("no log")
			}
			if *update {
				if err := afero.WriteFile(afero.NewOsFs(), file, txtar.Format(a), 0o644); err != nil {
					t.Fatal(err)
				}
			}
		})
	}
}

// load reads a plan and a log from memory; a plan that is refused fails the test.
func load(t testing.TB, text, log string) *plan.Collection {
	t.Helper()
	c, _ := planned.Sound(t, planned.With(text, log))
	return c
}

func year(today civil.Date) horizon.Horizon { return horizon.Horizon{From: today, Days: 400} }

// tell is everything that follows, as a list.
func tell(t testing.TB, text, log string, today civil.Date) string {
	t.Helper()
	c := load(t, text, log)
	var b strings.Builder
	for _, e := range c.Enclosures {
		got, found := lifeOf(c, e, c.Log, year(today))
		list(&b, got, found, year(today))
	}
	return b.String()
}

func list(b *strings.Builder, e *life.Enclosure, found []finding.Finding, h horizon.Horizon) {
	fmt.Fprintf(b, "%s\n", e.Plan.Name.V)
	holds(b, "hold", e.Holds, h)
	holds(b, "half", e.Halves, h)
	tasks(b, e.Tasks)
	asks(b, e.Asks)
	if e.HasMites {
		fmt.Fprintf(b, "  mites on %s\n", e.Mites)
	}
	for _, g := range e.Groups {
		fmt.Fprintf(b, " %s: %d, %s\n", g.Animals.Name.V, g.Count(h.From), state(g, h.From))
		holds(b, "hold", g.Holds, h)
		for _, w := range g.Windows {
			fmt.Fprintf(b, "  band %s to %s: %s\n", w.From, w.Until-1, w.Title)
		}
		tasks(b, g.Tasks)
		asks(b, g.Asks)
	}
	for _, f := range found {
		fmt.Fprintf(b, "  %s %s: %s\n", f.Severity, f.Rule.ID, f.Text)
	}
}

func state(g *life.Group, on civil.Date) string {
	s := g.Stage(on)
	if g.Instar(on) > 0 {
		s += fmt.Sprintf(" instar %d", g.Instar(on))
	}
	for _, x := range g.Stages[1:] {
		if x.From > on {
			s += ", " + x.Stage + " from " + x.From.String()
		}
	}
	if g.Mother != nil {
		s += ", with " + g.Mother.Animals.Name.V
	}
	if g.Gravid {
		s += ", gravid"
	}
	if g.Brood {
		s += ", with brood"
	}
	if g.Quarantined > 0 {
		s += ", quarantined until " + g.Quarantined.String()
	}
	return s
}

// holds lists those of the last month and later.
func holds(b *strings.Builder, word string, all []life.Hold, h horizon.Horizon) {
	for _, x := range all {
		if x.Until <= h.From-30 {
			continue
		}
		what := x.State.Name
		if x.Part {
			what += " of some"
		}
		last := (x.Until - 1).String()
		if x.Open {
			last = "open"
		}
		fmt.Fprintf(b, "  %s %s to %s, %s: %s, %s\n", word, x.From, last, what, x.Why, x.End)
	}
}

func tasks(b *strings.Builder, all []life.Task) {
	for _, x := range all {
		fmt.Fprintf(b, "  %s %s %s", x.On, x.On.Weekday().String()[:3], x.Kind.Name)
		if x.Times > 1 {
			last := x.On + civil.Date((x.Times-1)*x.Interval)
			fmt.Fprintf(b, " every %d to %s", x.Interval, last)
		}
		if x.High {
			b.WriteString(" HIGH")
		}
		fmt.Fprintf(b, ": %s\n", x.Text)
	}
}

func asks(b *strings.Builder, all []life.Ask) {
	for _, x := range all {
		urgent := ""
		if x.Urgent {
			urgent = " URGENT"
		}
		fmt.Fprintf(b, "  ask from %s every %d%s: %s\n", x.From, x.Every, urgent, x.Text)
	}
}

var day = planned.Day
