//go:build unix

package main

import (
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
	"time"
	"unicode/utf8"
)

// job is something that a keeper does on a day: what is typed, and how it is seen that it
// is done.
type job struct {
	name  string
	typed []stroke
	seen  []sight
}

// stroke is a line at the shell, or a change of the plan in an editor.
type stroke struct {
	line     string
	old, new string // in the plan, where there is no line
}

// sight is a command and what it must print, or must not.
type sight struct {
	line string
	has  string // a pattern
	not  string
}

func shell(line string) stroke { return stroke{line: line} }

// below is lines that are typed into the plan beneath one that stands there.
func below(line, more string) stroke { return stroke{old: line + "\n", new: line + "\n" + more} }

// jobs are those of a Monday evening in the house of testdata/jobs.
var jobs = []job{
	{"one tub was fed", []stroke{shell("vivary note tub-7 fed")},
		[]sight{{line: "cat records/*.care.log", has: `^2026-11-30 tub-7 fed\n$`}}},
	{"all forty were fed", []stroke{shell("vivary note tub fed")},
		[]sight{{line: "grep -c 'tub-[0-9]* fed' records/*.care.log", has: `^40\n$`}}},
	{"one moulted, with a note", []stroke{shell("vivary note tub-7 moult 'lost a leg'")},
		[]sight{{line: "vivary due --days 2", has: `Tub 7: .*moult`}, {line: "cat records/*.care.log", has: `tub-7 moult "lost a leg"`}}},
	{"one died", []stroke{shell("vivary note tub-12 died")},
		[]sight{{line: "vivary due --days 2", has: `feed 1 small cricket: Tub 1 to 11 and 13 to 40|All 39: feed`}}},
	{"that was wrong: take it back", []stroke{shell("vivary note --undo")},
		[]sight{{line: "vivary due --days 2", has: `All 40: feed`}, {line: "cat records/*.care.log", has: `tub-12 withdrawn died`}}},
	{"what is due today", []stroke{shell("vivary due --days 1")},
		[]sight{{line: "vivary due --days 1", has: `(?s)Morning round.*Evening round`, not: `1 Dec`}}},
	{"what one of the keepers has to do", []stroke{shell("vivary due --days 1 --keeper relief")},
		[]sight{{line: "vivary due --days 1 --keeper relief", has: `Morning round`, not: `Evening round`}}},
	{"one moves to a larger box", []stroke{shell("vivary note tub-7 moved to empty")},
		[]sight{{line: "vivary due --days 2", has: `Empty`, not: `All 40: feed`}}},
	{"ill from today, the other stands in", []stroke{shell("vivary note keeper lead away ill")},
		[]sight{{line: "vivary due --days 2 --keeper relief", has: `Evening round`}}},
	{"a holiday with a stand-in", []stroke{below("", "\naway \"lead\" {\n  from = \"2026-12-10\"\n  to = \"2026-12-17\"\n  cover = \"relief\"\n}\n"), shell("vivary build")},
		[]sight{{line: "vivary due --days 14 --keeper relief", has: `(?s)Fri 11 Dec.*Evening round`}}},
	{"this week Wednesday instead of Tuesday", []stroke{below("    on         = [\"tue\"]", "    not_on = [\"2026-12-01\"]\n    also_on = [\"2026-12-02\"]\n"), shell("vivary build")},
		[]sight{{line: "vivary due --days 2", not: `All 40: feed`}, {line: "vivary due --days 3", has: `(?s)Wed 2 Dec.*All 40: feed`}}},
	{"one tub more", []stroke{{old: "\"1 to 40\"", new: "\"1 to 41\""}, shell("vivary build")},
		[]sight{{line: "vivary due --days 2", has: `All 41: feed`}}},
}

// keys is how many keys are pressed: each character that is typed or taken out, and the key
// that sends a line. To find the place in an editor, and to save, is not counted.
func (s stroke) keys() int {
	if s.line != "" {
		return utf8.RuneCountInString(s.line) + 1
	}
	old, typed := s.old, s.new
	for old != "" && typed != "" && old[0] == typed[0] {
		old, typed = old[1:], typed[1:]
	}
	for old != "" && typed != "" && old[len(old)-1] == typed[len(typed)-1] {
		old, typed = old[:len(old)-1], typed[:len(typed)-1]
	}
	return utf8.RuneCountInString(old) + utf8.RuneCountInString(typed)
}

// keeper sits before the house, on a day.
type keeper struct {
	testing.TB
	house, bin string
}

const monday = "2026-11-30T20:00"

// types types a line at the shell and returns what is printed and how long that took. The
// day is what the program is told, and is not typed.
func (k keeper) types(line string) (string, time.Duration) {
	k.Helper()
	c := exec.Command("sh", "-c", "vivary() { command vivary \"$@\" --now "+monday+"; }\n"+line)
	c.Dir = k.house
	c.Env = append(os.Environ(), "PATH="+k.bin+":"+os.Getenv("PATH"))
	begun := time.Now()
	out, err := c.CombinedOutput()
	took := time.Since(begun)
	if err != nil {
		k.Errorf("%s: %v\n%s", line, err, out)
	}
	return string(out), took
}

// edits changes the plan.
func (k keeper) edits(s stroke) {
	k.Helper()
	file := filepath.Join(k.house, "house.care.hcl")
	text, err := os.ReadFile(file)
	if err != nil {
		k.Fatal(err)
	}
	plan := string(text)
	if s.old == "\n" { // at the end
		plan += strings.TrimPrefix(s.new, "\n")
	} else if strings.Count(plan, s.old) != 1 {
		k.Fatalf("%q is not there once", s.old)
	} else {
		plan = strings.Replace(plan, s.old, s.new, 1)
	}
	if err := os.WriteFile(file, []byte(plan), 0o600); err != nil {
		k.Fatal(err)
	}
}

// does does a job and returns how many keys that took, and how long the program.
func (k keeper) does(j job) (keys int, took time.Duration) {
	k.Helper()
	for _, s := range j.typed {
		keys += s.keys()
		if s.line == "" {
			k.edits(s)
			continue
		}
		_, d := k.types(s.line)
		took += d
	}
	for _, s := range j.seen {
		out, _ := k.types(s.line)
		if s.has != "" && !regexp.MustCompile(s.has).MatchString(out) || s.not != "" && regexp.MustCompile(s.not).MatchString(out) {
			k.Errorf("%s: %s prints\n%s", j.name, s.line, out)
		}
	}
	return keys, took
}

// A keeper's twelve daily jobs, done with the program as it is built for people: each is
// done by what is typed. DEVELOPERS.md has the table of them; JOBS=write writes it anew, with
// the shortest time of five.
func TestTwelveJobs(t *testing.T) {
	bin := t.TempDir()
	if out, err := exec.Command("go", "build", "-o", filepath.Join(bin, "vivary"), ".").CombinedOutput(); err != nil {
		t.Fatalf("%v: %s", err, out)
	}
	plan, err := os.ReadFile("../../testdata/jobs/house.care.hcl")
	if err != nil {
		t.Fatal(err)
	}
	write := os.Getenv("JOBS") == "write"
	rounds := 1
	if write {
		rounds = 5
	}
	keys, took := make([]int, len(jobs)), make([]time.Duration, len(jobs))
	for range rounds {
		for i, j := range jobs {
			k := keeper{t, t.TempDir(), bin}
			if err := os.WriteFile(filepath.Join(k.house, "house.care.hcl"), plan, 0o600); err != nil {
				t.Fatal(err)
			}
			k.types("vivary build")
			if strings.Contains(strings.Join(typedLines(j), "\n"), "--undo") {
				k.types(jobs[i-1].typed[0].line) // what is taken back
			}
			n, d := k.does(j)
			keys[i] = n
			if took[i] == 0 || d < took[i] {
				took[i] = d
			}
		}
	}
	heldTo(t, keys, took, write)
}

func typedLines(j job) (all []string) {
	for _, s := range j.typed {
		all = append(all, s.line)
	}
	return all
}

// heldTo holds the table in DEVELOPERS.md to what was counted.
func heldTo(t *testing.T, keys []int, took []time.Duration, write bool) {
	const file = "../../DEVELOPERS.md"
	text, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	const head = "| job | what is typed | keys | ms |\n|---|---|---|---|\n"
	before, rest, ok := strings.Cut(string(text), head)
	if !ok {
		t.Fatal("DEVELOPERS.md has no table of jobs")
	}
	table, after, _ := strings.Cut(rest, "\n\n")
	rows := strings.Split(strings.TrimSpace(table), "\n")
	var now []string
	for i, j := range jobs {
		typed := make([]string, len(j.typed))
		for n, s := range j.typed {
			if typed[n] = "`" + s.line + "`"; s.line == "" {
				typed[n] = "in the plan `" + strings.Join(strings.Fields(s.change()), " ") + "`"
			}
		}
		row := fmt.Sprintf("| %s | %s | %d | ", j.name, strings.Join(typed, ", "), keys[i])
		now = append(now, fmt.Sprintf("%s%d |", row, took[i].Milliseconds()))
		if !write && (i >= len(rows) || !strings.HasPrefix(rows[i], row)) {
			t.Errorf("the table lacks\n%s", row)
		}
	}
	if !write && len(rows) != len(jobs) {
		t.Errorf("the table has %d rows for %d jobs", len(rows), len(jobs))
	}
	if write {
		if err := os.WriteFile(file, []byte(before+head+strings.Join(now, "\n")+"\n\n"+after), 0o600); err != nil {
			t.Fatal(err)
		}
	}
}

// change is what a change of the plan puts in.
func (s stroke) change() string { return strings.TrimPrefix(s.new, s.old) }
