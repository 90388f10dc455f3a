package ical

import (
	"bytes"
	"fmt"
	"maps"
	"math"
	"slices"
	"strconv"
	"strings"
	"testing"
)

// revisions returns what a feed has of each entry, and its SEQUENCE.
func revisions(t testing.TB, feed []byte) (content map[string]string, sequence map[string]int) {
	t.Helper()
	content, sequence = map[string]string{}, map[string]int{}
	for part := range strings.SplitSeq(string(feed), "BEGIN:VEVENT\r\n") {
		uid := restOf([]byte(part), "UID:")
		n, err := strconv.Atoi(restOf([]byte(part), "SEQUENCE:"))
		if err != nil || uid == "" {
			continue // what stands before the first
		}
		content[uid], sequence[uid] = part, n
	}
	return content, sequence
}

// falls holds that no SEQUENCE is lower than it was, and that what changed has a higher
// one.
func falls(t testing.TB, say string, was, is []byte) {
	t.Helper()
	before, from := revisions(t, was)
	after, to := revisions(t, is)
	for uid, n := range from {
		m, there := to[uid]
		switch {
		case !there:
		case m < n, m == n && before[uid] != after[uid] && n < math.MaxInt32:
			t.Errorf("%s: SEQUENCE %d, and %d before:\n%s\n%s", say, m, n, before[uid], after[uid])
		}
	}
}

// changedOften is a feed some of whose entries were changed before.
func changedOften(t testing.TB) (*Feed, []byte) {
	t.Helper()
	f := sample(t, misting(), quarantine(), Entry{UID: UID("box", "look"), Date: today, At: 600, Minutes: 5, Summary: "Look"})
	feed := Write(nil, f, nil, now, keepFrom, today)
	for i := range 7 {
		m, err := Remember(feed)
		if err != nil {
			t.Fatal(err)
		}
		f.Entries[i%2].Summary += "!"
		feed = Write(nil, f, m, now.AddDate(0, 0, i), keepFrom, today)
	}
	return f, feed
}

// Wherever a feed was cut, and whatever was put into it, what is made of it afterwards
// has no lower SEQUENCE; and what stood there whole keeps its own.
func TestSalvage(t *testing.T) {
	f, feed := changedOften(t)
	later := now.AddDate(0, 1, 0)
	damaged := map[string][]byte{
		"in LF":     bytes.ReplaceAll(feed, []byte("\r\n"), []byte("\n")),
		"doubled":   slices.Concat(feed, feed),
		"reversed":  feed[len(feed)/2:],
		"a page":    []byte("<html><body>No such page</body></html>"),
		"another's": []byte("BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:x\r\nBEGIN:VEVENT\r\nUID:1\r\nSEQUENCE:99999999999999999999\r\nEND:VEVENT\r\nEND:VCALENDAR\r\n"),
		"zeros":     make([]byte, 5000),
	}
	for i := range feed {
		damaged[fmt.Sprintf("cut at %d", i)] = feed[:i]
		damaged[fmt.Sprintf("without %d", i)] = slices.Delete(slices.Clone(feed), i, min(i+40, len(feed)))
	}
	for _, changed := range []bool{false, true} {
		if changed {
			for i := range f.Entries {
				f.Entries[i].Summary += " now"
			}
		}
		for _, say := range slices.Sorted(maps.Keys(damaged)) {
			next := Write(nil, f, Salvage(damaged[say], later), later, keepFrom, today)
			falls(t, say, feed, next)
			m, err := Remember(next)
			if err != nil {
				t.Fatalf("%s: what was made cannot be read: %v", say, err)
			}
			if again := Write(nil, f, m, later, keepFrom, today); !bytes.Equal(again, next) {
				t.Fatalf("%s: the build after changes something", say)
			}
			if t.Failed() {
				return
			}
		}
	}
	// What stood there whole keeps its bytes: nothing moves on the phone.
	f, feed = changedOften(t)
	cut := feed[:bytes.LastIndex(feed, []byte("BEGIN:VEVENT"))+50]
	was, _ := revisions(t, feed)
	is, at := revisions(t, Write(nil, f, Salvage(cut, later), later, keepFrom, today))
	same := 0
	for uid := range was {
		if strings.TrimSuffix(was[uid], "END:VCALENDAR\r\n") == strings.TrimSuffix(is[uid], "END:VCALENDAR\r\n") {
			same++
		}
	}
	if same != len(was)-1 {
		t.Errorf("%d of %d entries are as they were", same, len(was))
	}
	if hours := int(later.Sub(since).Hours()); slices.Max(slices.Collect(maps.Values(at))) != hours {
		t.Errorf("what was lost does not begin at %d: %v", hours, at)
	}
}

// An entry that was taken out and comes back does not begin below what phones may have.
func TestSequenceOfWhatComesBack(t *testing.T) {
	f, first := changedOften(t)
	all := f.Entries
	feed := first
	for i, entries := range [][]Entry{all[1:], all[1:2], nil, all[2:], nil, all} {
		m, err := Remember(feed)
		if err != nil {
			t.Fatal(err)
		}
		f.Entries = entries
		feed = Write(nil, f, m, now.AddDate(0, 0, 20+i), keepFrom, today)
	}
	falls(t, "taken out and back", first, feed)
	if n := restOf(feed, floorName+":"); n == "" {
		t.Error("the feed does not say where new entries begin")
	}
	// What was over when the feed was made does not come back, and raises nothing.
	all[2].Date = today - 2
	f.Entries = all
	m, err := Remember(Write(nil, f, nil, now, keepFrom, today))
	if err != nil {
		t.Fatal(err)
	}
	f.Entries = all[:2]
	if feed := Write(nil, f, m, now, today, today); bytes.Contains(feed, []byte(floorName)) {
		t.Error(lineOf(feed, floorName))
	}
}

// A SEQUENCE has 32 bits, whatever a feed says.
func TestSequenceIsBounded(t *testing.T) {
	f, feed := changedOften(t)
	for _, text := range []string{"2147483646", "2147483647", "2147483648", "9223372036854775807"} {
		m, err := Remember(bytes.ReplaceAll(feed, []byte("SEQUENCE:4"), []byte("SEQUENCE:"+text)))
		if err != nil {
			t.Fatal(err)
		}
		for i := range 3 {
			for k := range f.Entries {
				f.Entries[k].Description += "."
			}
			next := Write(nil, f, m, now.AddDate(0, 0, i), keepFrom, today)
			if _, at := revisions(t, next); slices.Max(slices.Collect(maps.Values(at))) > math.MaxInt32 {
				t.Errorf("%s: %v", text, at)
			}
			if m, err = Remember(next); err != nil {
				t.Fatal(err)
			}
		}
		m.floor = math.MaxInt32
		if next := Write(nil, f, m, now, keepFrom, today); !bytes.Contains(next, []byte(floorName+":2147483647\r\n")) {
			t.Errorf("%s: %s", text, lineOf(next, floorName))
		}
	}
}
