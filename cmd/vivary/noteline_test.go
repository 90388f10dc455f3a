package main

import (
	"fmt"
	"strings"
	"testing"

	"github.com/spf13/afero"

	"vivary/plan"
	"vivary/schema/civil"
)

// typedPlan is a house for what people type: tubs by number, two groups in one box, a rack,
// a title of two words.
func typedPlan(t *testing.T) *plan.Collection {
	t.Helper()
	var b strings.Builder
	b.WriteString("collection \"c\" {\n  time_zone = \"Europe/London\"\n}\nroom \"a\" {\n  temperature = \"22 to 25 C\"\n}\nkeeper \"lead\" {\n}\n")
	box := func(name, more string) {
		fmt.Fprintf(&b, "enclosure %q {\n  species = \"pandinus-imperator\"\n%s}\n", name, more)
	}
	one := "  animals \"one\" {\n    count = 1\n  }\n"
	for n := 1; n <= 12; n++ {
		box(fmt.Sprint("tub-", n), one)
	}
	box("burrow-a", "  title = \"Burrow A\"\n"+one+"  animals \"young\" {\n    count = 2\n  }\n")
	box("mon", one)
	b.WriteString("rack \"shelf\" {\n  thermometer = true\n}\n")
	box("cup-1", "  rack = \"shelf\"\n"+one)
	box("cup-2", "  rack = \"shelf\"\n"+one)
	b.WriteString("enclosure \"jar\" {\n  numbers = \"1 to 3\"\n  species = \"pandinus-imperator\"\n" + one + "}\n")
	disk := afero.NewMemMapFs()
	_ = afero.WriteFile(disk, "c/plan.care.hcl", []byte(b.String()), 0o644)
	_ = afero.WriteFile(disk, "c/x.care.log", []byte("2026-11-20 tub-1 refused\n2026-11-21 tub-2 refused\n2026-11-21 by lead tub-1 fed\n"), 0o644)
	c, _, err := plan.Load(disk, "c")
	if err != nil {
		t.Fatal(err)
	}
	return c
}

// What people type is understood where it has one meaning, and asked back where it has two.
// The shell has taken the quotes off: a bar parts the words as it does.
func TestTyped(t *testing.T) {
	c := typedPlan(t)
	today := civil.Must(2026, 11, 25) // a Wednesday
	for _, x := range []struct{ typed, want string }{
		// A note of one word, or of several that lost their quotes.
		{"tub-1|moult|Fine", `2026-11-25 tub-1 moult "Fine"`},
		{"tub-1|moult|on the bark", `2026-11-25 tub-1 moult "on the bark"`},
		{"tub-1|refused|left|the|cricket", `2026-11-25 tub-1 refused|left|the|cricket`}, // "left" is a word of the log
		{"tub-1|refused|again", `2026-11-25 tub-1 refused "again"`},
		{"tub-1|refused|not hungry it seems", `2026-11-25 tub-1 refused "not hungry it seems"`},
		{"tub-1|moult found it in the corner", `2026-11-25 tub-1 moult found "it in the corner"`},
		{"tub-1|died|2|overnight", `2026-11-25 tub-1 died 2 "overnight"`},
		{"tub-1|died|two|overnight", `2026-11-25 tub-1 died 2 "overnight"`},
		{"tub-1|died|both", `2026-11-25 tub-1 died|both`}, // how many?
		{"tub-1|died|2x", `2026-11-25 tub-1 died|2x`},
		{"tub-1|moult|tub-2", `2026-11-25 tub-1 moult|tub-2`}, // of which?
		{"tub-1|moult|refused", `2026-11-25 tub-1 moult|refused`},
		{"tub-1|moult|say \"hi\"\nto it", `2026-11-25 tub-1 moult "say \"hi\" to it"`},
		{"tub-1|gave birth", `2026-11-25 tub-1 gave birth`},
		{"tub-1|gave|birth|22", `2026-11-25 tub-1 gave birth 22`},
		{"tub-1|gave birth|22|at noon", `2026-11-25 tub-1 gave birth 22 "at noon"`},
		{"tub-1|done|water|hastily", `2026-11-25 tub-1 done water "hastily"`},
		{"tub-1|fed|2|crickets|greedy", `2026-11-25 tub-1 fed 2 crickets "greedy"`},
		{"tub-1|fed|greedily", `2026-11-25 tub-1 fed "greedily"`},
		{"tub-1|treated|10|days|drops", `2026-11-25 tub-1 treated 10 days "drops"`},
		{"tub-1|sold|to|Sam", `2026-11-25 tub-1 sold "to Sam"`},
		{"tub-1|moved|tab-2", `2026-11-25 tub-1 moved tab-2`}, // a slip is no note
		{"tub-1|moved|1|to|tub-2", `2026-11-25 tub-1 moved 1 to tub-2`},
		{"tub-1|remark|restless", `2026-11-25 tub-1 remark restless`},
		// Quantities as typed.
		{"tub-1|weighed|24g", `2026-11-25 tub-1 weighed 24g`},
		{"tub-1|weighed|24|g|full", `2026-11-25 tub-1 weighed 24 g "full"`},
		{"tub-1|measured|88F", `2026-11-25 tub-1 measured 88F`},
		{"tub-1|measured|31|C|at the lid", `2026-11-25 tub-1 measured 31 C "at the lid"`},
		{"tub-1|measured|spot|31|C|air|23|C", `2026-11-25 tub-1 measured spot 31 C air 23 C`},
		// Several enclosures.
		{"tub-1,tub-2|fed", "2026-11-25 tub-1 fed\n2026-11-25 tub-2 fed"},
		{"tub-1,|tub-2|fed|Fine", "2026-11-25 tub-1 fed \"Fine\"\n2026-11-25 tub-2 fed \"Fine\""},
		{"tub-1|tub-3|and|tub-5|fed", "2026-11-25 tub-1 fed\n2026-11-25 tub-3 fed\n2026-11-25 tub-5 fed"},
		{"tub-1,tub-9..11|fed", "2026-11-25 tub-1 fed\n2026-11-25 tub-9 fed\n2026-11-25 tub-10 fed\n2026-11-25 tub-11 fed"},
		{"tub-9..tub-10|fed", "2026-11-25 tub-9 fed\n2026-11-25 tub-10 fed"},
		{"tub-9|to|10,tub-1|fed", "2026-11-25 tub-9 fed\n2026-11-25 tub-10 fed\n2026-11-25 tub-1 fed"},
		{"tub-1|to|tub-2|and|burrow-a|young|fed", "2026-11-25 tub-1 young fed\n2026-11-25 tub-2 young fed\n2026-11-25 burrow-a young fed"},
		{"tub-1,tub-1|fed", "2026-11-25 tub-1 fed"},
		{"shelf|fed", "2026-11-25 cup-1 fed\n2026-11-25 cup-2 fed"},
		{"shelf|done|water", "2026-11-25 cup-1 done water\n2026-11-25 cup-2 done water"},
		{"shelf|done|reading", "2026-11-25 shelf done reading"},
		{"shelf|measured|29|C", "2026-11-25 shelf measured 29 C"},
		{"shelf|died", "2026-11-25 shelf died"}, // which the plan asks back
		{"jar|fed", "2026-11-25 jar-1 fed\n2026-11-25 jar-2 fed\n2026-11-25 jar-3 fed"},
		{"jar|died", `error: "jar" is several enclosures: of which of them is died?`},
		{"tub-11..14|fed", "error: there is no enclosure tub-13 or tub-14"},
		{"tub-9..7|fed", "error: from 9 to 7 is no range"},
		{"tub-1..x|fed", "error: is no range of enclosures"},
		{"tub-1..999999999|fed", "error: is no range of enclosures"},
		// Names as people know them.
		{"Tub-1|fed", "2026-11-25 tub-1 fed"},
		{"Burrow A|young|refused", "2026-11-25 burrow-a young refused"},
		{"burrow|a|young|refused", "2026-11-25 burrow-a young refused"},
		{"tub-77|fed", "2026-11-25 tub-77 fed"}, // the plan says what may be meant
		// Days.
		{"today|tub-1|fed", "2026-11-25 tub-1 fed"},
		{"Yesterday|tub-1|fed", "2026-11-24 tub-1 fed"},
		{"monday|tub-1|fed", "2026-11-23 tub-1 fed"},
		{"thu|tub-1|fed", "2026-11-19 tub-1 fed"},
		{"wednesday|tub-1|fed", "error: today is Wednesday: write today, or 2026-11-18"},
		{"last|wednesday|tub-1|fed", "2026-11-18 tub-1 fed"},
		{"last|monday|tub-1|fed", "2026-11-23 tub-1 fed"},
		{"2|days|ago|tub-1|fed", "2026-11-23 tub-1 fed"},
		{"tomorrow|tub-1|fed", "error: tomorrow is after today"},
		{"mon|fed", "2026-11-25 mon fed"}, // an enclosure of that name
		{"2026-11-02|tub-1|fed", "2026-11-02 tub-1 fed"},
		{"2026-11-31|tub-1|fed", "error: no 31 November"},
		// People, and what is no line.
		{"keeper|lead|away|ill", "2026-11-25 keeper lead away ill"},
		{"tub-1", "error: write an enclosure"},
		{"yesterday|tub-1", "error: write an enclosure"},
		{"tub-1|tub-2", "error: write an enclosure"},
		{"tub-1|zzz", "2026-11-25 tub-1 zzz"},
		{"tub-1|zzz|a b", `2026-11-25 tub-1 zzz "a b"`},
	} {
		w := &world{disk: afero.NewMemMapFs()}
		n, err := w.noteLines(c, today, &flags{}, strings.Split(x.typed, "|"))
		got := strings.Join(n.lines, "\n")
		if err != nil {
			got = "error: " + err.Error()
		}
		want := strings.ReplaceAll(x.want, "|", " ")
		if wrong, begins := strings.CutPrefix(want, "error: "); begins && !strings.Contains(got, wrong) || !begins && got != want {
			t.Errorf("%s:\n%s\nwant\n%s", x.typed, got, want)
		}
	}
}

// With --at and --by the line says when and who. They stand behind the day.
func TestTypedHead(t *testing.T) {
	c := typedPlan(t)
	w := &world{disk: afero.NewMemMapFs()}
	n, err := w.noteLines(c, civil.Must(2026, 11, 25), &flags{at: "19:42", by: "lead"}, []string{"yesterday", "tub-1,tub-2", "fed"})
	if want := "2026-11-24 19:42 by lead tub-1 fed\n2026-11-24 19:42 by lead tub-2 fed"; err != nil || strings.Join(n.lines, "\n") != want {
		t.Errorf("%v, %v", n.lines, err)
	}
}
