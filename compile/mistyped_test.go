package compile_test

import (
	"fmt"
	"os"
	"reflect"
	"regexp"
	"strings"
	"testing"
	"time"

	"vivary/compile"
	"vivary/internal/planned"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/plan/source"
)

// rightly is a plan in which nothing is wrong. Each row of testdata/mistyped.txt is typed
// into one of its blocks, above the mark of that block, in place of the same attribute.
const rightly = `collection "c" {
  time_zone = "Europe/London"
  #collection
}
room "east" {
  temperature = "20 to 23 C"
  #room
}
keeper "lead" {
}
keeper "relief" {
}
round "evening" {
  at     = "19:30"
  keeper = "lead"
  #round
}
away "lead" {
  from  = "2027-07-03"
  to    = "2027-07-09"
  cover = "relief"
  #away
}
enclosure "box" {
  species = "pandinus-imperator"
  room    = "east"
  #box
  housing {
    inside   = "60 x 45 x 40 cm"
    lid      = "solid, latched"
    vents    = "some"
    moisture = "damp"
    depth    = "16 cm"
    hides    = 1
    #housing
  }
  animals "adult" {
    count  = 1
    stage  = "adult"
    origin = "captive bred"
    #animals
  }
  climate {
    warm_end    = "29 C"
    cool_end    = "24 C"
    humidity    = "75 to 85 %"
    thermometer = true
    #climate
    heater "mat" {
      power      = "20 W"
      place      = "side"
      thermostat = "29 C"
      #heater
    }
  }
  care "mist" {
    every  = "2 days"
    keeper = "lead"
    #care
  }
  feeding "adult" {
    on   = ["tue", "fri"]
    prey = "cricket adult"
    #feeding
  }
}
`

// with is the plan with lines typed into a block.
func with(block, lines string) string {
	above, below, _ := strings.Cut(rightly, "#"+block+"\n")
	open := strings.LastIndex(above, "{\n")
	for line := range strings.SplitSeq(lines, "; ") {
		name, _, _ := strings.Cut(line, " ")
		names := name
		if name == "every" || name == "on" {
			names = "every|on"
		}
		if name == "prey" || name == "rotate" {
			names = "prey|rotate"
		}
		had := regexp.MustCompile(`(?m)^ *(?:` + names + `) *= .*\n`)
		above = above[:open] + had.ReplaceAllString(above[open:], "")
	}
	indent := above[strings.LastIndexByte(above, '\n')+1:]
	return above + strings.ReplaceAll(lines, "; ", "\n"+indent) + "\n" + below
}

// What keepers type is read, or put right by the edit of its finding, or answered in words:
// and then in none that could be taken for the line to write.
func TestMistyped(t *testing.T) {
	rows := mistyped(t)
	for _, col := range rows {
		t.Run(col[1], func(t *testing.T) {
			typed := with(col[0], col[1])
			c, all := planned.Files(t, planned.With(typed, ""))
			switch at := strings.Index(typed, col[1]); col[2] {
			case "read":
				if len(all) > 0 {
					t.Fatalf("found: %s", all[0].Text)
				}
				right, found := planned.Files(t, planned.With(with(col[0], col[3]), ""))
				if len(found) > 0 || valuesOf(c) != valuesOf(right) {
					t.Errorf("it is not read as %s: %d findings\n%s\n%s", col[3], len(found), valuesOf(c), valuesOf(right))
				}
			case "edit":
				f := theOne(t, all, at, col[1])
				edited, err := finding.Apply([]byte(typed), f.Edits)
				if want := with(col[0], col[3]); err != nil || string(edited) != want {
					t.Fatalf("%v: %s\nit becomes\n%s", err, f.Text, edited)
				}
				gone(t, f, typed, string(edited))
			case "words":
				f := theOne(t, all, at, col[1])
				if len(f.Edits) > 0 || !strings.Contains(f.Write, col[3]) {
					t.Errorf("%s: write %s, with %d edits", f.Text, f.Write, len(f.Edits))
				}
			default:
				t.Errorf("what is %s?", col[2])
			}
		})
	}
	if len(rows) < 198 {
		t.Errorf("%d rows", len(rows))
	}
}

// A value that cannot be read is found, and nothing that would only follow from it.
func TestMistypedAlone(t *testing.T) {
	base := times(compiledAll(t, rightly))
	for _, row := range mistyped(t) {
		n := 0
		for _, f := range compiledAll(t, with(row[0], row[1])) {
			if base[same{f.Rule.ID, f.Text}] > 0 {
				continue
			}
			if n++; row[2] != "read" && n > 1 || row[2] == "read" && f.Severity.Refuses() {
				t.Errorf("%s: %s: %s", row[1], f.Rule.ID, f.Text)
			}
		}
	}
}

// mistyped are the rows of testdata/mistyped.txt.
func mistyped(t *testing.T) (rows [][]string) {
	t.Helper()
	table, err := os.ReadFile("testdata/mistyped.txt")
	if err != nil {
		t.Fatal(err)
	}
	for line := range strings.Lines(string(table)) {
		col := strings.SplitN(strings.TrimSpace(line), "|", 4)
		if strings.HasPrefix(line, "#") || len(col) < 4 {
			continue
		}
		for i := range col {
			col[i] = strings.TrimSpace(col[i])
		}
		rows = append(rows, col)
	}
	return rows
}

// theOne returns the finding of a plan in which one thing is wrong, at what was typed.
func theOne(t *testing.T, all []finding.Finding, at int, typed string) finding.Finding {
	t.Helper()
	if len(all) != 1 {
		t.Fatalf("%d findings: %v", len(all), all)
	}
	if f := all[0]; int(f.At.Start) < at || int(f.At.End) > at+len(typed) {
		t.Errorf("it is found at %v", f.At)
	}
	return all[0]
}

// gone holds that in a plan that was put right a finding is gone, and no error is new.
func gone(t *testing.T, f finding.Finding, typed, edited string) {
	t.Helper()
	before := compiledAll(t, typed)
	for _, a := range compiledAll(t, edited) {
		was := func(b finding.Finding) bool { return a.Rule == b.Rule && a.Text == b.Text }
		if was(f) || a.Severity.Refuses() && !anyOf(before, was) {
			t.Errorf("put right, there is: %s: %s", a.Rule.ID, a.Text)
		}
	}
}

func anyOf(all []finding.Finding, is func(finding.Finding) bool) bool {
	for _, f := range all {
		if is(f) {
			return true
		}
	}
	return false
}

func compiledAll(t *testing.T, text string) []finding.Finding {
	_, found := findAll(t, planned.With(text, ""))
	return found
}

// findAll compiles a collection on an ordinary day.
func findAll(t *testing.T, files map[string]string) (*source.Set, []finding.Finding) {
	c, found := planned.Files(t, files)
	return c.Files, compile.Compile(c, found, time.Date(2027, 3, 2, 12, 0, 0, 0, time.UTC)).Findings
}

// valuesOf is every value that a plan has, without its place.
func valuesOf(c *plan.Collection) string {
	var b strings.Builder
	dump(&b, reflect.ValueOf([]any{c.About, c.Rooms, c.Rounds, c.Aways, c.Enclosures}), map[any]bool{})
	return b.String()
}

func dump(b *strings.Builder, v reflect.Value, seen map[any]bool) {
	switch v.Kind() {
	case reflect.Interface:
		dump(b, v.Elem(), seen)
	case reflect.Pointer:
		if _, sheet := v.Interface().(*plan.SpeciesSheet); v.IsNil() || sheet || seen[v.Interface()] {
			return
		}
		seen[v.Interface()] = true
		dump(b, v.Elem(), seen)
	case reflect.Slice:
		for i := range v.Len() {
			dump(b, v.Index(i), seen)
		}
	case reflect.Struct:
		if x := v.FieldByName("V"); x.IsValid() && v.FieldByName("At").IsValid() {
			fmt.Fprintf(b, "%v;", x.Interface())
			return
		}
		for i := range v.NumField() {
			if f := v.Type().Field(i); f.IsExported() && f.Type != reflect.TypeFor[source.Place]() {
				dump(b, v.Field(i), seen)
			}
		}
	}
}
