package compile_test

import (
	"fmt"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/rogpeppe/go-internal/txtar"

	"vivary/compile"
	"vivary/compile/rounds"
	"vivary/internal/house"
	"vivary/internal/planned"
	"vivary/plan/finding"
	"vivary/schema/civil"
)

// A situation is a plan of built-in species, a log, and what must then stand in the
// round of an enclosure on a day, and what must not. What is asked is the meaning:
// patterns, one a line, in which capitals do not count, and never our own wording.
//
//	-- day --                     the day of the build; the log is as it stands
//	-- says [BOX] [DAY [to DAY]]  each line must stand in the round, on one of the days
//	-- never [BOX] [DAY [to DAY]] no line may stand in it, on any of the days
//	-- finding --                 severities, joined by |, and a pattern
//	-- no finding --              the same
//	-- here --                    enclosures, and how many live there on the day
//	-- refused --                 the plan is refused; all others must build
//
// A box may be a rack. It may be left out where there is one, and a day where it is the day itself; days
// may be written +3. The files collection.care.hcl and templates.care.hcl of package
// house are there unless the situation has its own.
func TestSituations(t *testing.T) {
	files, err := filepath.Glob("../testdata/situations/*.txtar")
	if err != nil || len(files) < 30 {
		t.Fatal("situations are missing", len(files), err)
	}
	for _, file := range files {
		t.Run(strings.TrimSuffix(filepath.Base(file), ".txtar"), func(t *testing.T) {
			a, err := txtar.ParseFile(file)
			if err != nil {
				t.Fatal(err)
			}
			s := situation{T: t, archive: a}
			s.build()
			for _, f := range a.Files {
				s.ask(f.Name, lines(string(f.Data)))
			}
			if t.Failed() {
				t.Logf("%s\n%s", a.Comment, s.told())
			}
		})
	}
}

// situation is one that is being held against the program.
type situation struct {
	*testing.T
	archive *txtar.Archive
	day     civil.Date
	r       *compile.Result
}

func (s *situation) section(name string) string {
	for _, f := range s.archive.Files {
		if f.Name == name {
			return string(f.Data)
		}
	}
	return ""
}

func (s *situation) build() {
	files := map[string]string{"collection.care.hcl": house.Common, "templates.care.hcl": house.Templates}
	refused := false
	for _, f := range s.archive.Files {
		refused = refused || f.Name == "refused"
		if strings.HasSuffix(f.Name, ".care.hcl") || strings.HasSuffix(f.Name, ".care.log") {
			files[f.Name] = string(f.Data)
		}
	}
	s.day = planned.Day(strings.TrimSpace(s.section("day")))
	c, found := planned.Files(s, files)
	if c.Location == nil {
		s.Fatal("the plan is not understood", found)
	}
	s.r = compile.Compile(c, found, s.day.At(12*60, c.Location))
	if s.r.Refused() != refused {
		s.Errorf("refused: %v", s.r.Refused())
	}
}

// ask holds one section against what the program says.
func (s *situation) ask(name string, wants []string) {
	word, rest, _ := strings.Cut(name, " ")
	switch {
	case name == "finding", name == "no finding":
		for _, want := range wants {
			if s.found(want) != (name == "finding") {
				s.Errorf("%s: %s", name, want)
			}
		}
	case name == "here":
		s.here(wants)
	case word == "says":
		box, from, to := s.where(rest)
		for _, want := range wants {
			if !slices.ContainsFunc(s.texts(box, from, to), func(text string) bool { return stands(want, text) }) {
				s.Errorf("nobody is told in %s from %s to %s: %s", box, from, to, want)
			}
		}
	case word == "never":
		box, from, to := s.where(rest)
		for _, not := range wants {
			s.never(not, box, from, s.texts(box, from, to))
		}
	}
}

// never holds that a pattern stands in no round of some days; the first in which it
// does is told.
func (s *situation) never(not, box string, from civil.Date, texts []string) {
	var on []int
	for i, text := range texts {
		if stands(not, text) {
			on = append(on, i)
		}
	}
	if len(on) > 0 {
		s.Errorf("in %s on %d of %d days, first on %s, stands: %s\n%s", box, len(on), len(texts), from+civil.Date(on[0]), not, texts[on[0]])
	}
}

// where reads for which enclosure and days a section is.
func (s *situation) where(text string) (box string, from, to civil.Date) {
	box, from, to = s.r.Plan.Enclosures[0].Name.V, s.day, s.day
	words := strings.Fields(text)
	if len(words) > 0 && (s.r.Plan.Enclosure(words[0]) != nil || s.r.Plan.Rack(words[0]) != nil) {
		box, words = words[0], words[1:]
	}
	date := func(word string) civil.Date {
		if n, err := strconv.Atoi(word); err == nil {
			return s.day + civil.Date(n)
		}
		return planned.Day(word)
	}
	if len(words) > 0 {
		from = date(words[0])
		to = from
	}
	if len(words) == 3 && words[1] == "to" {
		to = date(words[2])
	}
	return box, from, to
}

// texts are the rounds of one enclosure on some days, one text a day.
func (s *situation) texts(box string, from, to civil.Date) (out []string) {
	var walks []*rounds.Round
	for _, round := range s.r.Roster.Rounds {
		picks := s.r.Roster.Picks(round, "")
		var own = picks[:0:0]
		for _, p := range picks {
			if p.Entry.Plan().Name.V == box {
				own = append(own, p)
			}
		}
		walks = append(walks, rounds.New(s.r.Roster, round, own))
	}
	for d := from; d <= to; d++ {
		i, on := s.r.Horizon.Index(d)
		if !on {
			s.Fatalf("%s is not on the horizon", d)
		}
		var lines []string
		for _, w := range walks {
			lines = append(lines, w.On(i).Lines...)
		}
		out = append(out, strings.Join(lines, "\n"))
	}
	return out
}

// Meals are told by these words. What a keeper reads as live is what is not said to be
// killed.
var (
	meal   = regexp.MustCompile(`(?i)\b(feed|offer|meals?|one small item|killed|pieces)\b`)
	noMeal = regexp.MustCompile(`(?i)feed the feeders|feeders well|leftovers|remains|no (live )?(meal|food)|live feeders|before the meal`)
	killed = regexp.MustCompile(`(?i)killed|dead|crushed|pieces|at (the|her) mouth`)
)

// stands reports whether a pattern stands in a text. "<meal>" is any task that offers
// food, "<live meal>" one of prey that is not said to be killed.
func stands(pattern, text string) bool {
	if pattern != "<meal>" && pattern != "<live meal>" {
		return regexp.MustCompile("(?im)" + pattern).MatchString(text)
	}
	for line := range strings.Lines(text) {
		task, ok := strings.CutPrefix(line, "- ")
		if !ok {
			task, ok = strings.CutPrefix(line, "FIRST: ")
		}
		if !ok {
			continue
		}
		for one := range strings.SplitSeq(task, "; ") {
			if meal.MatchString(one) && !noMeal.MatchString(one) && (pattern == "<meal>" || !killed.MatchString(one)) {
				return true
			}
		}
	}
	return false
}

// found reports whether there is a finding of one of some severities whose rule or text
// has a pattern.
func (s *situation) found(want string) bool {
	severities, pattern, _ := strings.Cut(want, " ")
	p := regexp.MustCompile("(?i)" + pattern)
	return slices.ContainsFunc(s.r.Findings, func(f finding.Finding) bool {
		return slices.Contains(strings.Split(severities, "|"), f.Severity.String()) && p.MatchString(f.Rule.ID+": "+f.Text+" "+f.Limit+" "+f.Write)
	})
}

// here holds how many live in enclosures.
func (s *situation) here(wants []string) {
	for _, want := range wants {
		box, n, _ := strings.Cut(want, " ")
		got := 0
		for _, l := range s.r.Lives {
			for _, g := range l.Groups {
				if l.Plan.Name.V == box {
					got += g.Count(s.day)
				}
			}
		}
		if strconv.Itoa(got) != n {
			s.Errorf("%d live in %s, not %s", got, box, n)
		}
	}
}

// told is what the program says of the situation, for whoever reads a failure.
func (s *situation) told() string {
	var b strings.Builder
	for _, f := range s.r.Findings {
		if f.Severity >= finding.Caution {
			fmt.Fprintf(&b, "%s %s: %s\n", f.Severity, f.Rule.ID, f.Text)
		}
	}
	for _, e := range s.r.Plan.Enclosures {
		for i, text := range s.texts(e.Name.V, s.day, s.day+2) {
			fmt.Fprintf(&b, "%s, %s\n%s\n", e.Name.V, s.day+civil.Date(i), text)
		}
	}
	return b.String()
}

func lines(text string) (out []string) {
	for line := range strings.Lines(text) {
		if line = strings.TrimSpace(line); line != "" {
			out = append(out, line)
		}
	}
	return out
}
