package plan

import (
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"sort"
	"strconv"
	"strings"
	"testing"

	"vivary/schema"
)

var updateFacts = flag.Bool("update", false, "write testdata/facts/beside.md")

// The pages of facts have a block a species. Each figure of its sheet is set beside the
// lines of the block that are about it: what numbers it states stand there, as they are or
// in another unit, or its note says whose reading it is. What does neither stands in
// testdata/facts/differences.txt with its reason. And each source that the block names is
// named in the sheet.
func TestSheetsBesideTheFacts(t *testing.T) {
	lib := NewLibrary()
	reasons := differencesIn(t, "testdata/facts/differences.txt")
	used := map[string]bool{}
	var table strings.Builder
	table.WriteString("# The sheets beside the facts\n\nMade by `go test ./plan -run Facts -update` from the blocks in this folder: each figure of a sheet that states a number, the lines of the block that are about it, and whether the number stands there.\n")
	same, ours, other := 0, 0, 0
	for _, b := range factBlocks(t) {
		s := lib.Species(b.name)
		if s == nil {
			t.Errorf("%s has no sheet", b.name)
			continue
		}
		fmt.Fprintf(&table, "\n## %s\n\n| figure | sheet | in the lines | |\n|---|---|---|---|\n", b.name)
		row := func(name, stages, value string, about []string, c Cited, words string) {
			text := b.about(about)
			verdict := "stands there"
			switch key := b.name + " " + name + stages; {
			case stands(value, text):
				same++
			case admits(words) || c.Quality.V == "memory" && strings.Contains(text, "mem"):
				verdict = "our reading, as its note says"
				ours++
			case reasons[key] != "" || reasons["* "+name] != "":
				used[key], used["* "+name] = true, true
				verdict = strings.TrimSpace(reasons[key] + reasons["* "+name])
				other++
			default:
				verdict = "**NOT THERE**"
				t.Errorf("%s: %s %s %s does not stand in: %s", b.name, name, stages, value, text)
			}
			fmt.Fprintf(&table, "| `%s`%s | %s | %s | %s |\n", name, stages, value, strings.Join(about, ", "), verdict)
		}
		for _, f := range s.Figures {
			if !f.Lent() && (f.What.Kind == schema.Range || f.What.Kind == schema.Numbers) {
				row(f.Name.V, inStages(f.Stages), f.Value.V, factLines(f.What), f.Cited, f.Note.V+" "+f.Disputed.V)
			}
		}
		for _, n := range s.Needs {
			if !n.Lent() {
				row("need "+n.Name.V, inStages(n.Stages), n.Longest.V.String(), []string{"food", "damp", "differs", "housing"}, n.Cited, n.Note.V+" "+n.Disputed.V)
			}
		}
		b.sources(t, s, lib, reasons, used)
	}
	for r := range reasons {
		if !used[r] {
			t.Errorf("no difference is like %q", r)
		}
	}
	t.Logf("%d stand there, %d are our reading, %d differ with a reason", same, ours, other)
	const path = "testdata/facts/beside.md"
	fmt.Fprintf(&table, "\n%d figures stand in the facts, %d are our reading by their notes, %d differ for a reason.\n", same, ours, other)
	if *updateFacts {
		if err := os.WriteFile(path, []byte(table.String()), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	if got, err := os.ReadFile(path); err != nil || string(got) != table.String() {
		t.Errorf("%s is stale: run go test ./plan -run Facts -update (%v)", path, err)
	}
}

// factLines are the lines of a block that are about a figure.
func factLines(what *schema.Figure) []string {
	switch n := what.Name; {
	case strings.HasPrefix(n, "temperature") || n == "warm-spot" || n == "air" || n == "night" || n == "night-drop" || n == "cooler" || strings.Contains(n, "rest"):
		return []string{"heat", "differs", "light"}
	case strings.HasPrefix(n, "humidity") || n == "mist-interval-min":
		return []string{"damp", "differs"}
	case strings.HasPrefix(n, "floor") || strings.HasPrefix(n, "substrate") || n == "height-min" || n == "fall-max" || n == "gap-max" || n == "volume-first":
		return []string{"housing", "differs", "social", "damp"}
	case n == "length" || n == "span" || n == "mass" || n == "lifespan":
		return []string{"size", "growth", "differs"}
	case n == "old-age" || n == "old-age-male":
		return []string{"oldage", "size", "growth"}
	case n == "group-max":
		return []string{"social", "housing"}
	case n == "growth-factor" || n == "moults-to-adult" || n == "age-at-maturity" || n == "instar-length":
		return []string{"growth", "size", "differs"}
	}
	return []string{"brood", "food", "growth", "damp", "differs", "social", "heat", "size"}
}

type factBlock struct {
	name, page string
	lines      map[string]string
}

func (b *factBlock) about(names []string) string {
	var parts []string
	for _, n := range names {
		if text := b.lines[n]; text != "" {
			parts = append(parts, n+": "+text)
		}
	}
	return strings.Join(parts, " // ")
}

func factBlocks(t *testing.T) (all []*factBlock) {
	files, err := filepath.Glob("testdata/facts/*.txt")
	if err != nil {
		t.Fatal(err)
	}
	for _, file := range files {
		text, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		for _, part := range strings.Split("\n"+string(text), "\n== ")[1:] {
			name, body, _ := strings.Cut(part, "\n")
			b := &factBlock{name: name, page: filepath.Base(file), lines: map[string]string{}}
			at := ""
			for line := range strings.Lines(body) {
				line = strings.TrimSpace(line)
				if key, rest, ok := strings.Cut(line, ": "); ok && regexp.MustCompile(`^[a-z]+$`).MatchString(key) {
					at, line = key, rest
				}
				b.lines[at] = strings.TrimSpace(b.lines[at] + " " + line)
			}
			all = append(all, b)
		}
	}
	if len(all) != 75 {
		t.Errorf("%d blocks", len(all))
	}
	return all
}

// sources checks that every source of the block is one of the sheet, or one that it names.
func (b *factBlock) sources(t *testing.T, s *SpeciesSheet, lib *Library, reasons map[string]string, used map[string]bool) {
	var all strings.Builder
	for key, text := range b.lines {
		if key != "latin" && key != "family" { // where a name is from
			all.WriteString(text + " ")
		}
	}
	var has strings.Builder
	has.WriteString(s.Note.V)
	for _, f := range s.Figures {
		has.WriteString(" " + strings.Join(spelledOut(f.Source), " ") + " " + f.Note.V + " " + f.Disputed.V)
	}
	for _, n := range s.Needs {
		has.WriteString(" " + strings.Join(spelledOut(n.Source), " ") + " " + n.Note.V + " " + n.Disputed.V)
	}
	for _, x := range s.Stages {
		has.WriteString(" " + strings.Join(spelledOut(x.Source), " ") + " " + x.Note.V)
	}
	for _, x := range s.States {
		has.WriteString(" " + strings.Join(spelledOut(x.Source), " ") + " " + x.Note.V + " " + x.Disputed.V)
	}
	for _, c := range s.Care {
		has.WriteString(" " + strings.Join(spelledOut(c.Source), " ") + " " + c.Because.V)
	}
	for _, c := range s.Feeding {
		has.WriteString(" " + strings.Join(spelledOut(c.Source), " ") + " " + c.Because.V)
	}
	named := sourceCodes.FindAllString(has.String(), -1)
	missing := map[string]bool{}
	for _, code := range sourceCodes.FindAllString(all.String(), -1) {
		if lib.Source(code) != nil && !slices.Contains(named, code) {
			missing[code] = true
		}
	}
	var left []string
	for code := range missing {
		if key := b.name + " source " + code; reasons[key] != "" {
			used[key] = true
		} else {
			left = append(left, code)
		}
	}
	sort.Strings(left)
	if len(left) > 0 {
		t.Errorf("%s: sources that the block names and the sheet does not: %s", b.name, strings.Join(left, " "))
	}
}

var (
	sourceCodes = regexp.MustCompile(`\b(?:O[PSK]|[CTAPGKNS])[0-9]+[a-z]?\b`)
	numbers     = regexp.MustCompile(`[0-9]+(?:[.,][0-9]+)*`)
)

// admits reports whether words say that a figure is somebody's reading.
var ours = regexp.MustCompile(`(?i)\b(our|ours|we)\b|estimate|precaution|by the size|as the |as remembered|practice`)

func admits(words string) bool { return ours.MatchString(words) }

// stands reports whether the numbers of a value stand in a text, in its unit or another.
func stands(value, text string) bool {
	there := map[string]bool{}
	bare := sourceCodes.ReplaceAllString(text, " ")
	for _, n := range numbers.FindAllString(bare, -1) {
		there[strings.ReplaceAll(n, ",", "")] = true
		there[strings.Trim(strings.ReplaceAll(n, ",", "."), ".")] = true
	}
	floor := strings.Contains(value, "cm2")
	for _, n := range numbers.FindAllString(strings.ReplaceAll(value, "cm2", ""), -1) {
		x, err := strconv.ParseFloat(n, 64)
		if err != nil {
			return false
		}
		found := false
		for _, factor := range []float64{1, 10, 0.1, 7, 1.0 / 7, 12, 1.0 / 12, 30, 1.0 / 30, 365, 24, 1.0 / 24, 1000, 0.001, 100, 0.01} {
			text := strconv.FormatFloat(x*factor, 'f', -1, 64)
			if found = there[text]; found && (factor == 1 || !strings.Contains(text, ".") || len(text) < 5) {
				break
			}
		}
		if !found && !(floor && area(x, text)) { // a floor may be stated as a x b
			return false
		}
	}
	return true
}

var sides = regexp.MustCompile(`([0-9]+(?:\.[0-9]+)?) ?x ?([0-9]+(?:\.[0-9]+)?)`)

func area(cm2 float64, text string) bool {
	for _, m := range sides.FindAllStringSubmatch(text, -1) {
		a, _ := strconv.ParseFloat(m[1], 64)
		b, _ := strconv.ParseFloat(m[2], 64)
		if a*b == cm2 {
			return true
		}
	}
	return false
}

func inStages(stages []Written[string]) string {
	if len(stages) == 0 {
		return ""
	}
	return " (" + strings.Join(spelledOut(stages), ", ") + ")"
}
