package plan

import (
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"vivary/schema"
)

var freeze = flag.Bool("freeze", false, "write what the first twelve sheets state into testdata/before")

// The twelve sheets stood alone once, each with all that it said. They are a type and what
// differs now. What they state, for each stage, is what they stated then: each figure, need,
// care and meal, with its source, its quality and what others say. What is not the same
// stands in testdata/before/differences.txt, with its reason.
func TestTwelveSheetsStateWhatTheyDid(t *testing.T) {
	reasons := differencesIn(t, "testdata/before/differences.txt")
	lib := NewLibrary()
	used := map[string]bool{}
	files, err := filepath.Glob("testdata/before/*.txt")
	if err != nil {
		t.Fatal(err)
	}
	for _, file := range files {
		name := strings.TrimSuffix(filepath.Base(file), ".txt")
		if name == "differences" {
			continue
		}
		now := stated(lib.Species(name))
		if *freeze {
			if err := os.WriteFile(file, []byte(grouped(now)), 0o644); err != nil {
				t.Fatal(err)
			}
		}
		text, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		before := ungrouped(string(text))
		for _, line := range before {
			if !slices.Contains(now, line) && !excused(reasons, used, name, "- "+line) {
				t.Errorf("%s has no more: %s", name, line)
			}
		}
		for _, line := range now {
			if !slices.Contains(before, line) && !excused(reasons, used, name, "+ "+line) {
				t.Errorf("%s has newly: %s", name, line)
			}
		}
	}
	for r := range reasons {
		if !used[r] {
			t.Errorf("no difference is like %q", r)
		}
	}
}

// differencesIn reads the beginnings of lines that may differ, each with its reason:
// "NAME - figure gap-max |" is what went, "+" what came, and "*" is any species.
func differencesIn(t *testing.T, file string) map[string]string {
	t.Helper()
	text, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	reasons := map[string]string{}
	reason := ""
	for line := range strings.Lines(string(text)) {
		switch line = strings.TrimSpace(line); {
		case line == "":
			reason = ""
		case strings.HasPrefix(line, "#"):
			reason += line[1:]
		case reason == "":
			t.Errorf("no reason: %s", line)
		default:
			reasons[line] = reason
		}
	}
	return reasons
}

func excused(reasons map[string]string, used map[string]bool, name, line string) (yes bool) {
	for r := range reasons {
		if strings.HasPrefix(name+" "+line, r) || strings.HasPrefix("* "+line, r) {
			used[r], yes = true, true
		}
	}
	return yes
}

// stated says all that holds for each stage of a species, a line a fact.
func stated(s *SpeciesSheet) (lines []string) {
	say := func(kind, stage string, rest ...string) {
		lines = append(lines, kind+" "+strings.Join(rest, " | ")+" @ "+stage)
	}
	cite := func(c Cited) string { return c.Quality.V + " " + strings.Join(spelledOut(c.Source), " ") }
	for _, stage := range schema.Stages {
		for _, what := range schema.Figures {
			if f := s.Figure(what, stage.Name); f != nil {
				say("figure", stage.Name, what.Name, f.Value.V, cite(f.Cited), f.Disputed.V, f.Note.V)
			}
		}
		for _, n := range s.NeedsOf(stage.Name) {
			say("need", stage.Name, n.Name.V, n.Longest.V.String(), n.Shortest.V.String(), n.Severity.Or("error"), cite(n.Cited), n.Disputed.V, n.Note.V)
		}
		for _, c := range s.Care {
			if !c.Off.V && (len(c.Stages) == 0 || Lists(c.Stages, stage.Name)) {
				say("care", stage.Name, c.Name.V, c.KindName(), c.Every.V.String(), c.Amount.V.String(), c.Task.V)
			}
		}
		for _, f := range s.Feeding {
			if len(f.Stages) == 0 || Lists(f.Stages, stage.Name) {
				menu := ""
				for _, p := range f.Menu() {
					menu += " " + p.V.Feeder + " " + p.V.Size
				}
				say("meal", stage.Name, f.Every.V.String(), fmt.Sprint(f.PerAnimal.V), menu, fmt.Sprint(f.Killed.V, f.GutLoad.V, f.Dusted.V))
			}
		}
		for _, st := range s.Stages {
			if st.Name.V == stage.Name {
				say("stage", stage.Name, fmt.Sprint(st.Instars.V.Low, " to ", st.Instars.V.High), cite(st.Cited), st.Note.V)
			}
		}
	}
	s.Each(schema.FigureInstarLength, func(f *Figure) {
		say("instar", fmt.Sprint(f.Instar.V), f.Value.V, cite(f.Cited), f.Disputed.V, f.Note.V)
	})
	for _, b := range s.States {
		say("state", b.Name.V, fmt.Sprint(b.Care.V), b.Manner.V, b.Words.V, b.Every.V.String(), b.From.V.String(), b.Is.V, b.Rule.V, cite(b.Cited), b.Disputed.V, b.Note.V)
	}
	say("names", "", s.Title.V, s.Latin.V, s.Family.V, strings.Join(spelledOut(s.Also), ", "), strings.Join(spelledOut(s.Former), ", "), strings.Join(spelledOut(s.Mistaken), ", "), s.Note.V)
	return lines
}

// grouped writes what is the same for several stages once, with all their names.
func grouped(lines []string) string {
	var order []string
	of := map[string][]string{}
	for _, line := range lines {
		fact, stage, _ := strings.Cut(line, " @ ")
		if of[fact] == nil {
			order = append(order, fact)
		}
		of[fact] = append(of[fact], stage)
	}
	var b strings.Builder
	for _, fact := range order {
		b.WriteString(fact + " @ " + strings.Join(of[fact], ", ") + "\n")
	}
	return b.String()
}

func ungrouped(text string) (lines []string) {
	for line := range strings.Lines(text) {
		fact, stages, _ := strings.Cut(strings.TrimSuffix(line, "\n"), " @ ")
		for _, stage := range strings.Split(stages, ", ") {
			lines = append(lines, fact+" @ "+stage)
		}
	}
	return lines
}

func spelledOut(list []Written[string]) (out []string) {
	for _, w := range list {
		out = append(out, w.V)
	}
	return out
}
