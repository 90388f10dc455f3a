// Package oracles asks calendar readers written by others which occurrences a
// feed has, so that tests can compare them one by one. It is for tests only and
// judges nothing itself.
package oracles

import (
	"bytes"
	"cmp"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"sync"
	"testing"
	"time"
)

// Occurrence is one start of one entry as a reader understands it. Start and End
// are UTC such as "20270328T183000Z", or dates such as "20270328" for an all-day
// entry, End being the day after the last. Of Summary it is what the reader made
// of the escapes, with line breaks as \n and backslashes as \\.
type Occurrence struct {
	Feed                     int // place among the feeds asked about
	UID, Start, End, Summary string
}

func (o Occurrence) String() string {
	return fmt.Sprintf("feed %d: %s %s to %s %q", o.Feed, o.UID, o.Start, o.End, o.Summary)
}

// Answer is what one reader says of all feeds.
type Answer struct {
	Occurrences []Occurrence   // sorted by feed, start, UID
	Refused     map[int]string // the reason, for each feed that the reader will not take
}

// Feed returns the occurrences of one feed.
func (a Answer) Feed(i int) []Occurrence {
	var of []Occurrence
	for _, o := range a.Occurrences {
		if o.Feed == i {
			of = append(of, o)
		}
	}
	return of
}

// readers are the commands, relative to Folder, that setup makes ready.
var readers = map[string][]string{
	"libical":          {"bin/libical"},
	"ical.js":          {"node", "programs/icaljs.mjs"},
	"python-icalendar": {"/usr/bin/python3", "programs/python.py"},
}

// Expand returns, by reader, the occurrences that start from from on and before
// to. Each reader is started once for all feeds. The test fails at once if a
// reader is missing or breaks down.
func Expand(t testing.TB, feeds [][]byte, from, to time.Time) map[string]Answer {
	t.Helper()
	here := Folder(t)
	if _, err := os.Stat(filepath.Join(here, "bin/libical")); err != nil {
		t.Fatal("the calendar readers are not installed: run testdata/oracles/setup")
	}
	dir := t.TempDir()
	const instant = "20060102T150405Z"
	args := []string{from.UTC().Format(instant), to.UTC().Format(instant)}
	for i, feed := range feeds {
		path := filepath.Join(dir, strconv.Itoa(i)+".ics")
		if err := os.WriteFile(path, feed, 0o600); err != nil {
			t.Fatal(err)
		}
		args = append(args, path)
	}
	var (
		wait    sync.WaitGroup
		mu      sync.Mutex
		answers = map[string]Answer{}
		failed  []string
	)
	for name, command := range readers {
		wait.Go(func() {
			answer, err := ask(here, command, args)
			mu.Lock()
			defer mu.Unlock()
			if err != nil {
				failed = append(failed, fmt.Sprintf("%s: %v", name, err))
			}
			answers[name] = answer
		})
	}
	wait.Wait()
	if failed != nil {
		t.Fatalf("run testdata/oracles/setup; a calendar reader failed:\n%s", strings.Join(failed, "\n"))
	}
	return answers
}

// Folder returns where setup has installed the readers: testdata/oracles of the
// module, which lies above every test, unless VIVARY_ORACLES names another by its
// whole path, so that several checkouts can share one installation.
func Folder(t testing.TB) string {
	t.Helper()
	if named := os.Getenv("VIVARY_ORACLES"); filepath.IsAbs(named) {
		return named
	}
	dir, err := os.Getwd()
	if err != nil {
		t.Fatal(err)
	}
	for {
		if _, err := os.Stat(filepath.Join(dir, "go.mod")); err == nil {
			return filepath.Join(dir, "testdata", "oracles")
		}
		if dir == filepath.Dir(dir) {
			t.Fatal("no go.mod above the test: the calendar readers cannot be found")
		}
		dir = filepath.Dir(dir)
	}
}

func ask(here string, command, args []string) (Answer, error) {
	cmd := exec.Command(command[0], slices.Concat(command[1:], args)...)
	if !filepath.IsAbs(command[0]) && strings.Contains(command[0], "/") {
		cmd = exec.Command(filepath.Join(here, command[0]), args...)
	}
	cmd.Dir = here
	var out, errs bytes.Buffer
	cmd.Stdout, cmd.Stderr = &out, &errs
	if err := cmd.Run(); err != nil {
		return Answer{}, fmt.Errorf("%w: %s", err, errs.String())
	}
	answer := Answer{Refused: map[int]string{}}
	for line := range strings.Lines(out.String()) {
		field := strings.SplitN(strings.TrimSuffix(line, "\n"), "\t", 5)
		feed, err := strconv.Atoi(field[0])
		switch {
		case err == nil && len(field) == 3 && field[1] == "!":
			answer.Refused[feed] = field[2]
		case err == nil && len(field) == 5:
			answer.Occurrences = append(answer.Occurrences, Occurrence{feed, field[1], field[2], field[3], field[4]})
		default:
			return answer, fmt.Errorf("not a line of an answer: %q", line)
		}
	}
	Sort(answer.Occurrences)
	return answer, nil
}

// Sort brings occurrences into the order of an Answer.
func Sort(all []Occurrence) {
	slices.SortFunc(all, func(a, b Occurrence) int {
		return cmp.Or(cmp.Compare(a.Feed, b.Feed), cmp.Compare(a.Start, b.Start), cmp.Compare(a.UID, b.UID), cmp.Compare(a.End, b.End))
	})
}

// Differences says what is in one of two sorted lists only, at most ten lines;
// "" if they are the same.
func Differences(want, got []Occurrence) string {
	var b strings.Builder
	lines := 0
	only := func(a, b2 []Occurrence, mark string) {
		there := map[Occurrence]int{}
		for _, o := range b2 {
			there[o]++
		}
		for _, o := range a {
			if there[o]--; there[o] < 0 {
				if lines++; lines <= 10 {
					fmt.Fprintf(&b, "%s %v\n", mark, o)
				}
			}
		}
	}
	only(want, got, "missing")
	only(got, want, "extra  ")
	if lines > 10 {
		fmt.Fprintf(&b, "and %d more\n", lines-10)
	}
	return b.String()
}
