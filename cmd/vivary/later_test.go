package main

import (
	"bytes"
	"fmt"
	"strings"
	"testing"

	"vivary/compile"
	"vivary/compile/feeds"
	"vivary/compile/ical"
	"vivary/internal/feedoracle"
	"vivary/internal/house"
	"vivary/plan"
	"vivary/schema/civil"
)

// TestAHouseBuiltLater: the calendars by care of a house of sixty boxes are of a size that
// apps read. Built again within a month their entries have every byte; a month later, and a year,
// they show for the coming days what a first build shows, and of the days behind them what
// they showed; a month later a series is changed by its end alone.
func TestAHouseBuiltLater(t *testing.T) {
	w := house.New(3)
	files := w.Files(w.Today)
	for _, k := range []string{"lead", "relief"} {
		files["own-"+k+".care.hcl"] = fmt.Sprintf("calendar \"own-%s\" {\n  keepers = [%q]\n  entry   = \"per care\"\n}\n", k, k)
	}
	build := func(on civil.Date, before map[string][]byte) map[string][]byte {
		c, found, err := plan.Load(disk(t, files), "c")
		if err != nil {
			t.Fatal(err)
		}
		var heads [][]byte
		for _, b := range before {
			heads = append(heads, b)
		}
		out := map[string][]byte{}
		for _, f := range feeds.Of(compile.From(compile.Input{Plan: c, Loaded: found, Now: on.At(12*60, c.Location), Told: feeds.ToldBy(nameOf(c), feeds.ReadHeads(heads))})) {
			var last *ical.Memory
			if b := before[f.Name]; b != nil {
				if last, err = ical.Remember(b); err != nil {
					t.Fatal(err)
				}
			}
			if out[f.Name], err = f.Bytes(last); err != nil {
				t.Fatal(err)
			}
		}
		return out
	}
	first := build(w.Today, nil)
	names := []string{"care", "own-lead", "own-relief"}
	for _, name := range names {
		if n := strings.Count(string(first[name]), "BEGIN:VEVENT"); n > feeds.MaxEntries || len(first[name]) > feeds.MaxBytes || n < 100 {
			t.Errorf("%s: %d entries, %d bytes", name, n, len(first[name]))
		}
	}
	for _, gap := range []civil.Date{7, 31, 366} {
		on := w.Today + gap
		next, fresh := build(on, first), build(on, nil)
		for _, name := range names {
			entries := func(feed []byte) string { return string(feed[bytes.Index(feed, []byte("BEGIN:VEVENT")):]) }
			if gap < 28 && entries(first[name]) != entries(next[name]) {
				t.Errorf("%s is changed after %d days", name, gap)
			}
			read := func(feed []byte, from, until civil.Date) map[string]int {
				shown, _, err := feedoracle.Read(name, feed, from, until)
				if err != nil {
					t.Fatal(err)
				}
				out := map[string]int{}
				for _, o := range shown {
					if !strings.HasPrefix(o.Summary, "This calendar ends here") {
						out[fmt.Sprint(o.Day, " ", o.At, " ", o.Summary)]++
					}
				}
				return out
			}
			alike := func(what string, a, b map[string]int) {
				for k := range a {
					if a[k] != b[k] {
						t.Errorf("%s, %d days later: %s: %s is there %d times, and %d", name, gap, what, k, a[k], b[k])
						return
					}
				}
			}
			is, want := read(next[name], on, on+feeds.Least), read(fresh[name], on, on+feeds.Least)
			alike("what is to come", is, want)
			alike("what is to come", want, is)
			past := max(w.Today, on-kept+2)
			alike("what is over", read(first[name], past, on), read(next[name], past, on))
			if gap == 31 {
				onlyEnds(t, name, first[name], next[name])
			}
		}
	}
}

// onlyEnds fails where a series is changed by more than its end.
func onlyEnds(t *testing.T, name string, before, after []byte) {
	t.Helper()
	split := func(feed []byte) map[string]string {
		out := map[string]string{}
		for _, text := range strings.Split(strings.ReplaceAll(string(feed), "\r\n ", ""), "BEGIN:VEVENT\r\n")[1:] {
			uid, _, _ := strings.Cut(text, "\r\n")
			var kept []string
			for _, line := range strings.Split(text, "\r\n") {
				line, _, _ = strings.Cut(line, ";UNTIL=")
				if name, _, _ := strings.Cut(line, ":"); name != "SEQUENCE" && name != "DTSTAMP" && name != "LAST-MODIFIED" {
					kept = append(kept, line)
				}
			}
			out[uid] = strings.Join(kept, "\n")
		}
		return out
	}
	is, changed := split(after), 0
	for uid, was := range split(before) {
		if now, there := is[uid]; there && now != was && !strings.Contains(was, "This calendar ends here") {
			if changed++; changed == 1 {
				t.Errorf("%s: more than an end is changed:\n%s\nwas:\n%s", name, now, was)
			}
		}
	}
}
