package plan

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"vivary/schema"
)

// inShort is a line in short: what it was read as.
func inShort(e *Event) string {
	s := e.Word.Name
	if e.Group.V != "" {
		s = e.Group.V + " " + s
	}
	if e.Number.Set() {
		s += fmt.Sprint(" ", e.Number.V)
	}
	if e.Sexes.Total() > 0 {
		s += " = " + e.Sexes.String()
	}
	for _, a := range e.Args {
		s += " [" + a.V + "]"
	}
	if e.Clock.Set() {
		s += " at " + e.Clock.V.String()
	}
	if e.By.Set() {
		s += " by " + e.By.V
	}
	if e.Note != "" {
		s += " (" + e.Note + ")"
	}
	return s
}

func TestLine(t *testing.T) {
	for line, want := range map[string]string{
		"b moult":                          "moult",
		"b Shed":                           "moult",
		"b young popped a molt 2":          "young moult 2",
		"19:42 b moult":                    "moult at 19:42",
		"0:05 by lead b young moult \"x\"": "young moult at 00:05 by lead (x)",
		"by lead b young on its back":      "young hanging by lead",
		"b seen":                           "seen",
		"b seen 3":                         "counted 3",
		"b saw 2":                          "counted 2",
		"b moved 3 tub-7 young":            "moved 3 [tub-7] [young]",
		"b moved tub-7 3 young":            "moved 3 [tub-7] [young]",
		"b moved 3 to tub-7":               "moved 3 [tub-7]",
		"b moved to 7":                     "moved [7]",
		"b moved to 7 3":                   "moved 3 [7]",
		"b mother separated 12 to cups":    "mother separated 12 [cups]",
		"b mother separated 12 cups young": "mother separated 12 [cups] [young]",
		"b pulled 12":                      "separated 12",
		"b sold 2":                         "moved 2",
		"b treated":                        "treated",
		"b treated 10 days \"drops\"":      "treated 10 (drops)",
		"b treated for 2 weeks":            "treated 14",
		"b measured 29 C":                  "measured [29 C]",
		"b measured 84F 70%":               "measured [84F] [70%]",
		"b measured 70 % 29 C":             "measured [70 %] [29 C]",
		"b fed 2 cricket adult":            "fed 2 [cricket] [adult]",
		"b laid 2":                         "laid 2",
		"b not gravid":                     "not-gravid",
		"b died 2 \"both\"":                "died 2 (both)",
		"b withdrawn moult 2026-11-01":     "withdrawn [moult] [2026-11-01]",
		"b killed in seconds":              "fed",
		"b young kicked hairs":             "young remark",
		"b remark \"digs\"":                "remark (digs)",
		"b dropped 14":                     "remark ?log-asked",
		"b gone":                           "remark ?log-asked",
		"b young i2":                       "young remark ?log-asked",
		"b watered the plants":             "remark ?log-asked",
		"b \"a note alone\"":               "remark (a note alone) ?log-word",
		"b died 0.1.0":                     "died 1 = 0.1.0",
		"b seen 1.2.0":                     "counted 3 = 1.2.0",
		"b sold 0.0.5 \"to a school\"":     "moved 5 = 5 (to a school)",
		"b moved 0.1.1 to tub-7":           "moved 2 = 0.1.1 [tub-7]",
		"b died 1.2.3.4":                   "!after died stands how many",
		"b fed 1.2.3":                      "fed [1.2.3]",
		"b died two":                       "!after died stands how many",
		"b moved 0.5 to tub-7":             "!animals come whole",
		"b moved 2 tub-7 young and old":    "!and nothing else",
		"b sold 2 somebody":                "!goes into the note",
		"b treated 10":                     "!in days or weeks",
		"b treated a month":                "!in days or weeks",
		"b measured":                       "!a temperature, a humidity or both",
		"b measured 29":                    "!no temperature and no humidity",
		"b measured 29 C 30 C":             "!two values",
		"b withdrawn":                      "!the word that is taken back",
		"b withdrawn moult 2026-11-31":     "!30 days",
		"25:00 b moult":                    "!not a time of day",
		"b moult \"open":                   "!never closed",
		"b moult \"note\" 3":               "!stands after the note",
		"b":                                "!a day, an enclosure and a word",
		"b moult left alone":               "!nothing else but a note",
		"b young moult \xff":               "!not UTF-8",
		"b off food + sealed":              "premoult",
		"b off food":                       "remark ?log-asked",
		"b threw up":                       "ill",
	} {
		e, found := ParseLogLine(1, "2026-11-02 "+line)
		got := ""
		switch {
		case len(found) > 0 && found[0].Rule == ruleLogLine:
			got = "!" + found[0].Text
		default:
			got = inShort(&e)
			for _, f := range found {
				got += " ?" + f.Rule.ID
			}
		}
		if got != want && !(want[0] == '!' && got[0] == '!' && strings.Contains(got, want[1:])) {
			t.Errorf("%s: %q, want %q", line, got, want)
		}
	}
}

const twoBoxes = sound + keepers + `
enclosure "burrow-a" {` + box + `
enclosure "rack" {
  species = "pandinus-imperator"

  housing {
    inside = "60 x 45 x 40 cm"
    lid    = "solid, latched"
  }

  animals "heavy" {
    count = 1
  }

  animals "cup" {
    count = 2
  }
}
`

const keepers = `
keeper "lead" {
}
keeper "relief" {
}
`

// read loads lines and says what of them counts.
func read(t *testing.T, lines ...string) (got []string, found []string) {
	t.Helper()
	c, all := load(t, map[string]string{"a.care.hcl": twoBoxes, "x.care.log": strings.Join(lines, "\n")})
	for i := range c.Log {
		e := &c.Log[i]
		got = append(got, e.Date.String()[5:]+" "+e.Enclosure.V+" "+inShort(e))
	}
	return got, texts(all)
}

// Animals may be named by what is also a word: which is meant is known from the
// enclosure.
func TestAnimalsNamedByWords(t *testing.T) {
	got, found := read(t,
		"2026-11-02 rack cup moult 1",
		"2026-11-03 rack heavy gravid",
		"2026-11-04 rack heavy heavy",
		"2026-11-05 burrow-a heavy",
	)
	want := []string{"11-02 rack cup moult 1", "11-03 rack heavy gravid", "11-04 rack heavy gravid", "11-05 burrow-a adult gravid"}
	if len(found) > 0 || !slices.Equal(got, want) {
		t.Errorf("%q, found %v", got, found)
	}
	if _, found := read(t, "2026-11-02 rack cup mault"); !hasText(found, `"mault" is not a word of the log: did you mean moult?`) {
		t.Error(found)
	}
}

// One broken line hides no other, and none of them refuses the plan.
func TestBrokenLines(t *testing.T) {
	broken := []string{"2026-11-31 burrow-a moult", "2026-11-02 burrow-a moult \"open", "2026-11-02 burrow-a died two", "2026-11-02", "x",
		"2026-11-02 burrow-a moult \xff", "2026-11-02 burrow-a moult \x00", "2026-11-02 burrow-a zzz", "2026-11-02 burrow-a gone", "2026-11-02 rack moult", "2026-11-02 \""}
	for _, line := range broken {
		got, found := read(t, "2026-11-01 burrow-a moult", line, "2026-11-03 burrow-a fed")
		if len(found) != 1 || !slices.Contains(got, "11-01 burrow-a adult moult") || !slices.Contains(got, "11-03 burrow-a adult fed") {
			t.Errorf("%q: %v, %v", line, got, found)
		}
	}
	_, all := load(t, map[string]string{"a.care.hcl": twoBoxes, "x.care.log": strings.Join(broken, "\n")})
	for _, f := range all {
		if f.Severity.Refuses() {
			t.Errorf("%s refuses", f.Text)
		}
	}
}

// Lines count by day; of one day those with a time by time, the others as they stand.
func TestOrderOfLines(t *testing.T) {
	got, _ := read(t,
		"2026-11-02 19:00 burrow-a fed",
		"2026-11-02 burrow-a refused",
		"2026-11-02 08:00 burrow-a premoult",
		"2026-11-01 burrow-a seen",
		"2026-11-02 12:00 burrow-a hanging",
	)
	want := []string{"11-01 burrow-a adult seen", "11-02 burrow-a adult premoult at 08:00", "11-02 burrow-a adult refused",
		"11-02 burrow-a adult hanging at 12:00", "11-02 burrow-a adult fed at 19:00"}
	if !slices.Equal(got, want) {
		t.Errorf("%q", got)
	}
}

func TestWithdrawn(t *testing.T) {
	for _, c := range []struct {
		name  string
		lines string
		want  string // what counts, and what is found
	}{
		{"a line", "2 burrow-a moult; 3 burrow-a withdrawn moult", ""},
		{"with its day", "1 burrow-a moult; 2 burrow-a moult; 3 burrow-a withdrawn moult 2026-11-01", "2 moult"},
		{"the last", "1 burrow-a moult; 2 burrow-a moult; 3 burrow-a withdrawn moult", "1 moult"},
		{"by another spelling", "2 burrow-a shed; 3 burrow-a withdrawn moult", ""},
		{"what was asked back", "2 burrow-a gone; 3 burrow-a withdrawn gone", ""},
		{"what is no word", "2 burrow-a zzz; 3 burrow-a withdrawn zzz", ""},
		{"one of two cares", "2 burrow-a done water; 2 burrow-a done mist; 3 burrow-a withdrawn done water 2026-11-02", "2 done [mist]"},
		{"of other animals", "2 rack cup moult; 3 rack heavy withdrawn moult", "2 cup moult, nothing is taken back"},
		{"of another box", "2 burrow-a moult; 3 rack withdrawn moult", "2 moult, nothing is taken back"},
		{"nothing", "2 burrow-a moult; 3 burrow-a withdrawn fed", "2 moult, nothing is taken back"},
		{"what takes back", "2 burrow-a moult; 3 burrow-a withdrawn moult 2026-11-02; 3 burrow-a withdrawn withdrawn moult 2026-11-02 2026-11-03", "2 moult"},
		{"that again", "2 burrow-a moult; 3 burrow-a withdrawn moult 2026-11-02; 3 burrow-a withdrawn withdrawn moult 2026-11-02 2026-11-03; 3 burrow-a withdrawn withdrawn withdrawn moult 2026-11-02 2026-11-03 2026-11-03", ""},
		{"noted again", "2 burrow-a moult; 3 burrow-a withdrawn moult 2026-11-02; 2 burrow-a moult", "2 moult"},
		{"noted again and taken back again", "2 burrow-a moult; 3 burrow-a withdrawn moult 2026-11-02; 2 burrow-a moult; 3 burrow-a withdrawn moult 2026-11-02", ""},
		{"copies", "2 burrow-a moult; 2 burrow-a moult; 3 burrow-a withdrawn moult 2026-11-02; 3 burrow-a withdrawn moult 2026-11-02", ""},
		{"a day to come", "30 burrow-a moult; 3 burrow-a withdrawn moult 2026-11-30", ""},
		{"written above it", "3 burrow-a withdrawn moult; 2 burrow-a moult", ""},
		{"itself", "3 burrow-a withdrawn withdrawn", "nothing is taken back"},
	} {
		var lines []string
		for _, l := range strings.Split(c.lines, "; ") {
			day, rest, _ := strings.Cut(l, " ")
			lines = append(lines, fmt.Sprintf("2026-11-%02s %s", day, rest))
		}
		got, found := read(t, lines...)
		var all []string
		for _, g := range got {
			g = strings.Replace(strings.Replace(g, "burrow-a adult ", "", 1), "burrow-a ", "", 1)
			all = append(all, strings.TrimPrefix(strings.Replace(strings.TrimPrefix(g, "11-0"), "rack ", "", 1), "11-"))
		}
		for _, f := range found {
			_, f, _ = strings.Cut(f, ": ")
			f, _, _ = strings.Cut(f, ":")
			all = append(all, f)
		}
		if s := strings.Join(all, ", "); s != c.want {
			t.Errorf("%s: %q, want %q", c.name, s, c.want)
		}
	}
}

// What takes a line back is found from the line alone.
func TestWithdrawal(t *testing.T) {
	c, _ := load(t, map[string]string{"a.care.hcl": twoBoxes})
	for line, want := range map[string]string{
		"2026-11-02 19:42 by lead burrow-a moult 1 \"x\"":  "burrow-a withdrawn moult 1 2026-11-02",
		"2026-11-02 rack cup moult":                        "rack cup withdrawn moult 2026-11-02",
		"2026-11-02 rack cup popped a molt 1":              "rack cup withdrawn popped a molt 1 2026-11-02",
		"2026-11-03 burrow-a withdrawn moult 1 2026-11-02": "burrow-a withdrawn withdrawn moult 1 2026-11-02 2026-11-03",
		"# nothing": "!says nothing",
	} {
		got, err := c.Withdrawal(line)
		if err != nil {
			got = "!" + err.Error()
		}
		if got != want && !(want[0] == '!' && strings.HasPrefix(got, "!") && strings.Contains(got, want[1:])) {
			t.Errorf("%s: %q, want %q", line, got, want)
		}
	}
}

// Lines that stand twice count once, and a keeper nobody knows is named.
func TestRepeatsAndWriters(t *testing.T) {
	got, found := read(t, "2026-11-02 burrow-a died", "2026-11-02 burrow-a died", "2026-11-02 08:00 burrow-a died", "2026-11-02 by led burrow-a fed")
	if len(got) != 3 || !hasText(found, "stands twice") || !hasText(found, `did you mean "lead"`) || len(found) != 2 {
		t.Errorf("%q %v", got, found)
	}
}

func hasText(found []string, text string) bool {
	return slices.ContainsFunc(found, func(s string) bool { return strings.Contains(s, text) })
}

// FuzzLogLine: whatever a line is, it is used, said to be wrong, or says nothing; every
// place lies within it; and what takes it back can be read and takes just it back.
func FuzzLogLine(f *testing.F) {
	for _, line := range []string{"2026-11-02 19:42 by lead burrow-a young moult 1 \"left\"", "2026-11-02 b moved 3 to tub-7 young", "2026-11-02 b treated 10 days",
		"2026-11-02 b measured 29 C 70 %", "2026-11-02 b withdrawn moult 2026-11-01", "2026-11-02 b seen 3", "2026-11-02 b dropped", "2026-11-02 \"", "# x"} {
		f.Add(line)
	}
	c := &Collection{}
	f.Fuzz(func(t *testing.T, line string) {
		if strings.ContainsAny(line, "\n") {
			return
		}
		e, found := ParseLogLine(1, line)
		if (e.Word == nil) == (len(found) == 0) && !Blank(line) && e.Word == nil {
			t.Fatalf("%q is passed over in silence", line)
		}
		if e.Word == nil {
			return
		}
		for _, x := range append([]Written[string]{e.Enclosure, e.Group, e.By}, e.Args...) {
			if x.Set() && (x.At.Start < 0 || int(x.At.End) > len(line) || x.At.Start > x.At.End) {
				t.Fatalf("%q: %v", line, x)
			}
		}
		if e.Word == schema.WordCounted && len(e.Args) > 0 {
			t.Fatalf("%q: something after a count", line)
		}
		words, err := c.Withdrawal(line)
		if err != nil {
			return // a note without a word
		}
		back, found := ParseLogLine(1, "2026-11-02 "+words)
		if back.Word != schema.WordWithdrawn || len(found) > 0 {
			t.Fatalf("%q is taken back by %q, which is %v", line, words, found)
		}
	})
}
