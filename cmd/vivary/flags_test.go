package main

import (
	"slices"
	"strings"
	"testing"

	"github.com/spf13/afero"
)

// Flags stand before, between and after what else there is, also where somebody's writing
// program made one dash of two hyphens.
func TestParse(t *testing.T) {
	for line, want := range map[string]commandLine{
		"--in house due --days 7":          {word: "due", flags: &flags{in: "house", days: 7, format: "text"}},
		"due --days=7 house":               {word: "due", flags: &flags{days: 7, format: "text"}, rest: []string{"house"}},
		"—in house –format JSON check":     {word: "check", flags: &flags{in: "house", days: notGiven, format: "json"}},
		"note --undo --by lead":            {word: "note", flags: &flags{undo: true, by: "lead", days: notGiven, format: "text"}},
		"note tub moult -- --in - —undo x": {word: "note", flags: &flags{days: notGiven, format: "text"}, rest: []string{"tub", "moult", "--in", "-", "—undo", "x"}},
		"note tub –left-alone":             {word: "note", flags: &flags{days: notGiven, format: "text"}, rest: []string{"tub", "–left-alone"}},
		"-- check house":                   {word: "check", flags: &flags{days: notGiven, format: "text"}, rest: []string{"house"}},
		"check --in -":                     {word: "check", flags: &flags{in: "-", days: notGiven, format: "text"}},
	} {
		got, err := parse(strings.Fields(line))
		if err != nil || got.word != want.word || got.command == nil || *got.flags != *want.flags || !slices.Equal(got.rest, want.rest) {
			t.Errorf("%s: %v\n%+v %+v", line, err, got, got.flags)
		}
	}
}

// What is not understood of a command line is said in words, with what to write, and ends
// with the status for that; nothing is done.
func TestUnclear(t *testing.T) {
	for line, want := range map[string]string{
		"check --formt json":              `"--formt" means nothing here: did you mean --format?`,
		"check --format":                  `after --format stands its FORM: text or json`,
		"check --format xml":              `--format is text, json or sarif, not "xml"`,
		"due --days x":                    `--days is a whole number, such as --days 7, and not "x"`,
		"due --days 99999999999999999999": `--days is a whole number, such as`,
		"due --days --in house":           `after --days stands its N`,
		"due --days= house":               `after --days stands its N`,
		"check --in house --in=house":     `--in stands here twice`,
		"--out feeds note":                `vivary note: --out goes with check, build, publish, due`,
		"check --undo":                    `--undo goes with note, not with check`,
		"note --undo=yes":                 `--undo stands alone`,
		"--in house":                      `there are flags here and no command`,
		"--nonsense":                      `"--nonsense" means nothing here`,
		"check -f json":                   `"-f" means nothing here`,
		"check a b":                       `one folder is named here, and these are 2: a, b`,
		"chek":                            `did you mean vivary check`,
		"biuld house":                     `did you mean vivary build`,
		"Check":                           `did you mean vivary check`,
		"validate":                        `did you mean vivary check`,
		"--days 7 agenda":                 `did you mean vivary due`,
		"help biuld":                      `did you mean vivary build`,
		"weather":                         `there is no command "weather".`,
		"house":                           `"house" is a folder: say what to do with it, such as vivary check house`,
		"check house --now 2027-02-30":    `is not a moment: write 2027-03-01`,
		"check nowhere":                   `there is no folder "nowhere"`,
		"check house/collection.care.hcl": `is a file: name the folder that holds the collection`,
	} {
		disk := afero.NewMemMapFs()
		if s, _, e := at(disk, noon, "start", "house"); s != fine {
			t.Fatal(e)
		}
		s, out, e := at(disk, noon, strings.Fields(line)...)
		if s != usage || !strings.Contains(e, want) || out != "" {
			t.Errorf("vivary %s: status %d, %s%s", line, s, e, out)
		}
		for _, technical := range []string{"strconv", "flag provided", "<nil>", "%!"} {
			if strings.Contains(e, technical) {
				t.Errorf("vivary %s: %s", line, e)
			}
		}
	}
}

// Every command says what it does and which flags it takes, however help is asked for, and
// every flag belongs to one.
func TestHelp(t *testing.T) {
	_, list, _ := at(nil, noon)
	used := map[string]bool{"in": true, "now": true}
	for _, c := range commands {
		if !strings.Contains(list, "\n  "+c.name+" ") {
			t.Errorf("the list lacks %s", c.name)
		}
		for f := range strings.FieldsSeq(c.flags) {
			if used[f] = true; flagOf(f) < 0 {
				t.Errorf("%s takes --%s, of which nothing is known", c.name, f)
			}
		}
		_, want, _ := at(nil, noon, "help", c.name)
		for _, args := range [][]string{{c.name, "--help"}, {"-h", c.name}, {c.name, "x", "--nonsense", "-h"}} {
			if s, got, _ := at(nil, noon, args...); s != fine || got != want || !strings.Contains(got, c.long) {
				t.Errorf("vivary %s: %d, %s", strings.Join(args, " "), s, got)
			}
		}
	}
	for _, f := range flagTable {
		if !used[f.name] {
			t.Errorf("no command takes --%s", f.name)
		}
	}
}
