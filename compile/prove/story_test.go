package prove_test

import (
	"flag"
	"fmt"
	"math/rand/v2"
	"os"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/rogpeppe/go-internal/txtar"

	"vivary/compile"
	"vivary/schema/civil"
)

var update = flag.Bool("update", false, "write what the stories say")

// TestStories: small plans, each with what the proof says of it, in files by what they
// are about. A plan that is sound says nothing. Each is of the people and the rounds of
// these tests, with the blocks that it writes; where it writes no enclosure, the lead
// keeper looks after one every day. Lines that begin with a day are the log's, and a
// comment "# water = 2" changes a figure.
func TestStories(t *testing.T) {
	files, err := filepath.Glob("testdata/*.txtar")
	if err != nil || len(files) == 0 {
		t.Fatal("no stories", err)
	}
	for _, file := range files {
		a, err := txtar.ParseFile(file)
		if err != nil {
			t.Fatal(err)
		}
		for i := 0; i+1 < len(a.Files); i += 2 {
			told, says := a.Files[i], &a.Files[i+1]
			t.Run(told.Name, func(t *testing.T) {
				if says.Name != told.Name+": says" {
					t.Fatal("it is not said what it says")
				}
				text, log := story(string(told.Data))
				got := proven(t, text, log)
				if *update {
					says.Data = []byte(got)
				} else if got != string(says.Data) {
					t.Errorf("it says\n%s\nwant\n%s", got, says.Data)
				}
			})
		}
		if *update {
			if err := os.WriteFile(file, txtar.Format(a), 0o644); err != nil {
				t.Fatal(err)
			}
		}
	}
}

var figure = regexp.MustCompile(`(?m)^# ([a-z]+) = (\d+)$`)

// story makes a plan and a log of a story.
func story(text string) (plan, log string) {
	l := usual
	for _, m := range figure.FindAllStringSubmatch(text, -1) {
		days, _ := strconv.Atoi(m[2])
		*map[string]*int{"look": &l.look, "water": &l.water, "food": &l.food, "leftovers": &l.leftovers, "unattended": &l.unattended}[m[1]] = days
	}
	plan = l.sheet() + people + rounds
	for line := range strings.Lines(text) {
		if line[0] == '2' {
			log += line
		} else {
			plan += line
		}
	}
	if !strings.Contains(text, "enclosure ") {
		plan += box("ash", looked)
	}
	return plan, log
}

// TestVisitsThatAreWrittenWouldDo: what a finding about an absence says to write, once
// written, mends what it found. Absences are of any length, one or two that touch, and
// water is given at any interval.
func TestVisitsThatAreWrittenWouldDo(t *testing.T) {
	rng := rand.New(rand.NewPCG(3, 4))
	mended := map[string]int{}
	for range 200 {
		l := limits{water: 1 + rng.IntN(4), unattended: rng.IntN(10)}
		from := day("2027-07-01") + civil.Date(rng.IntN(7))
		between := from + civil.Date(rng.IntN(2)*rng.IntN(10))
		to := between + 1 + civil.Date(rng.IntN(15))
		rest := []string{"", "  cover = \"ben\"\n  visits = [\"thu\"]\n"}[rng.IntN(2)]
		care := fmt.Sprintf("  care \"water\" {\n    every = \"%d days\"\n  }\n", 1+rng.IntN(l.water))
		write := func(to civil.Date, rest string) *compile.Result {
			blocks := away("lead", between.String(), to.String(), rest)
			if from < between {
				blocks = away("lead", from.String(), between.String(), "") + blocks
			}
			return compiled(t, l.sheet()+people+rounds+blocks+box("ash", care), "", day("2027-05-01"))
		}
		r := write(to, rest)
		for _, f := range found(r) {
			first := r.Plan.Aways[len(r.Plan.Aways)-1]
			if f.Rule.ID != "water-gap" || f.At.Start < first.At.Start {
				continue // the first of two absences is to be changed
			}
			before := r.Proofs[0][0].Breach
			for kind, edit := range edits(f.Write, to) {
				mended[kind]++
				after := write(edit.to, edit.rest)
				if p := after.Proofs[0][0]; !p.Met() && (from == between || p.Breach.From <= before.From) {
					t.Errorf("%v, away from %s, on %s until %s%s: %q does not mend\n%s%s", l, from, between, to, rest, f.Write, said(r, found(r)), said(after, found(after)))
				}
			}
		}
	}
	if mended["to"] < 10 || mended["visits"] < 20 || mended["every day"] < 3 {
		t.Error("too few to show anything", mended)
	}
}

// edit is what becomes of an absence by what a finding says.
type edit struct {
	to   civil.Date
	rest string
}

var (
	writtenTo     = regexp.MustCompile(`back on ([0-9-]+) at the latest`)
	writtenVisits = regexp.MustCompile(`visits on ([a-z, ]+);`)
)

// edits reads what a finding about an absence says to write.
func edits(write string, to civil.Date) map[string]edit {
	out := map[string]edit{}
	if m := writtenTo.FindStringSubmatch(write); m != nil {
		out["to"] = edit{day(m[1]), ""}
	}
	if m := writtenVisits.FindStringSubmatch(write); m != nil {
		out["visits"] = edit{to, "  cover = \"ben\"\n  visits = [\"" + strings.NewReplacer(" and ", `", "`, ", ", `", "`).Replace(m[1]) + "\"]\n"}
	} else if strings.Contains(write, "every day") {
		out["every day"] = edit{to, "  cover = \"ben\"\n"}
	}
	return out
}
