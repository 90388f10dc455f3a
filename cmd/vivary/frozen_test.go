package main

import (
	"bytes"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"
	"time"

	ics "github.com/arran4/golang-ical"
	"github.com/spf13/afero"
)

const frozen = "../../testdata/frozen"

// frozenAt is the moment at which the frozen feeds were made.
var frozenAt = time.Date(2026, time.November, 25, 12, 0, 0, 0, time.UTC)

// Entries of the past stay for 31 days, and a calendar runs for 366.
var frozenFrom, frozenTo = frozenAt.AddDate(0, 0, -31), frozenAt.AddDate(0, 0, 366)

// TestFrozenFeeds builds the frozen collections over the feeds that an earlier
// program made of them. What is on phones keeps its identity and its day, and what
// is changed is changed upwards; each exception stands in differences.txt with its
// reason, and one that is no longer needed fails too.
func TestFrozenFeeds(t *testing.T) {
	var found []difference
	for _, name := range []string{"quillmoor", "wide"} {
		root := filepath.Join(frozen, name)
		disk := afero.NewMemMapFs()
		if err := copyTo(disk, root); err != nil {
			t.Fatal(err)
		}
		before, err := afero.Glob(disk, "feeds/*.ics")
		if err != nil || len(before) == 0 {
			t.Fatalf("no frozen feeds of %s: %v", name, err)
		}
		if s, out, e := at(disk, frozenAt, "build", "."); s != fine {
			t.Fatalf("%s\n%s", out, e)
		}
		for _, path := range before {
			was, err := os.ReadFile(filepath.Join(root, path))
			if err != nil {
				t.Fatal(err)
			}
			is, err := afero.ReadFile(disk, path)
			if err != nil {
				t.Fatal(err)
			}
			found = append(found, differ(t, name+"/"+filepath.Base(path), phone(t, was), phone(t, is))...)
		}
	}
	unforeseen(t, found)
}

// copyTo copies a folder of the machine's disk to the root of another disk.
func copyTo(disk afero.Fs, root string) error {
	return filepath.WalkDir(root, func(path string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		text, err := os.ReadFile(path)
		if err != nil {
			return err
		}
		to, err := filepath.Rel(root, path)
		if err != nil {
			return err
		}
		return afero.WriteFile(disk, to, text, 0o644)
	})
}

// difference is something that a phone would notice.
type difference struct{ what, feed, summary, on string }

// differ compares the entries of a feed that a phone still shows.
func differ(t *testing.T, feed string, was, is map[string]shownEntry) (out []difference) {
	for uid, a := range was {
		b, there := is[uid]
		switch {
		case !there && a.until >= day(frozenFrom) && a.from <= day(frozenTo):
			out = append(out, difference{"gone", feed, a.summary, a.from})
		case there && a.start != b.start:
			out = append(out, difference{"moved", feed, a.summary, a.from})
		}
		if there && (b.sequence < a.sequence || b.sequence == a.sequence && b.text != a.text) {
			t.Errorf("%s: SEQUENCE goes from %d to %d:\n%s\nwas:\n%s", feed, a.sequence, b.sequence, b.text, a.text)
		}
	}
	for uid, b := range is {
		if _, there := was[uid]; !there && b.until >= day(frozenAt) && b.from <= day(frozenTo) {
			out = append(out, difference{"new", feed, b.summary, b.from})
		}
	}
	return out
}

func day(t time.Time) string { return t.Format("20060102") }

// shownEntry is an entry of a feed. A series counts as shown on every day from its
// first on.
type shownEntry struct {
	from, until, start, summary, text string
	sequence                          int
}

// phone reads a feed by the calendar library: its entries by UID.
func phone(t *testing.T, feed []byte) map[string]shownEntry {
	t.Helper()
	c, err := ics.ParseCalendar(bytes.NewReader(feed))
	if err != nil {
		t.Fatal(err)
	}
	out := map[string]shownEntry{}
	for _, e := range c.Events() {
		value := func(p ics.ComponentProperty) string {
			if x := e.GetProperty(p); x != nil {
				return x.Value
			}
			return ""
		}
		x := shownEntry{start: value(ics.ComponentPropertyDtStart), summary: value(ics.ComponentPropertySummary), text: fmt.Sprint(e.Properties)}
		x.from, x.until = x.start[:8], value(ics.ComponentPropertyDtEnd)[:8]
		if e.GetProperty(ics.ComponentPropertyRrule) != nil {
			x.until = "99991231"
		}
		if x.sequence, err = strconv.Atoi(value(ics.ComponentPropertySequence)); err != nil {
			t.Fatal(err)
		}
		out[e.Id()] = x
	}
	return out
}

// unforeseen reports differences for which there is no reason, and reasons for
// which there is no difference.
func unforeseen(t *testing.T, found []difference) {
	t.Helper()
	text, err := os.ReadFile(filepath.Join(frozen, "differences.txt"))
	if err != nil {
		t.Fatal(err)
	}
	for line := range strings.Lines(string(text)) {
		if line = strings.TrimSpace(line); line == "" || line[0] == '#' {
			continue
		}
		field := strings.Split(line, " | ")
		if len(field) != 5 || field[4] == "" {
			t.Fatalf("not what | feed | number | summary | reason: %s", line)
		}
		n := len(found)
		found = slices.DeleteFunc(found, func(d difference) bool {
			start, open := strings.CutSuffix(field[3], "*")
			return d.what == field[0] && d.feed == field[1] && (d.summary == field[3] || open && strings.HasPrefix(d.summary, start))
		})
		if n -= len(found); strconv.Itoa(n) != field[2] {
			t.Errorf("%d differences, not as expected: %s", n, line)
		}
	}
	slices.SortFunc(found, func(a, b difference) int { return strings.Compare(a.feed+a.what+a.on, b.feed+b.what+b.on) })
	var b strings.Builder
	for i, d := range found {
		if i == 40 {
			fmt.Fprintf(&b, "and %d more\n", len(found)-i)
			break
		}
		fmt.Fprintf(&b, "%s | %s | 1 | %s | on %s\n", d.what, d.feed, d.summary, d.on)
	}
	if b.Len() > 0 {
		t.Errorf("without a reason in differences.txt:\n%s", b.String())
	}
}
