package main

import (
	"bytes"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
	"time"

	"github.com/spf13/afero"
)

const lastPath = "c/feeds/my-collection.ics"

// begun is a collection that was built three times, so that entries have changed, and the
// feed of the last time.
func begun(t *testing.T) (afero.Fs, []byte) {
	t.Helper()
	disk := afero.NewMemMapFs()
	at(disk, noon, "start", "c")
	for i, remind := range []string{"", "  remind = \"10 min\"\n", "  remind = \"20 min\"\n"} {
		if err := afero.WriteFile(disk, "c/z.care.hcl", []byte("calendar \"my-collection\" {\n"+remind+"}\n"), 0o644); err != nil {
			t.Fatal(err)
		}
		if s, _, e := at(disk, noon.Add(time.Duration(i)*time.Hour), "build", "c"); s != fine {
			t.Fatal(e)
		}
	}
	return disk, last(t, disk)
}

func last(t *testing.T, disk afero.Fs) []byte {
	t.Helper()
	text, err := afero.ReadFile(disk, lastPath)
	if err != nil {
		t.Fatal(err)
	}
	return text
}

// revisions returns the SEQUENCE of each entry of a feed by its UID.
func revisions(t *testing.T, feed []byte) map[string]int {
	t.Helper()
	out := map[string]int{}
	for uid, e := range entries(feed) {
		n, err := strconv.Atoi(sequence(e))
		if err != nil {
			t.Fatalf("%q: %v", sequence(e), err)
		}
		out[uid] = n
	}
	return out
}

// rises holds that what phones have is not above what they are told now, and that what
// changed is above.
func rises(t *testing.T, say string, was, is []byte) {
	t.Helper()
	before, after := revisions(t, was), revisions(t, is)
	from, to := entries(was), entries(is)
	for uid, n := range before {
		if m, there := after[uid]; there && (m < n || m == n && content(from[uid]) != content(to[uid])) {
			t.Errorf("%s: SEQUENCE went from %d to %d for %s", say, n, m, to[uid])
			return
		}
	}
}

// Whatever stands where the last feed was, calendars are built, what stood there is kept
// and said, and no SEQUENCE falls.
func TestDamagedLastFeed(t *testing.T) {
	_, whole := begun(t)
	if n := revisions(t, whole); len(n) < 10 {
		t.Fatalf("%d entries", len(n))
	}
	for say, damaged := range map[string][]byte{
		"empty":          {},
		"cut in half":    whole[:len(whole)/2],
		"cut at the end": whole[:len(whole)-3],
		"a page":         []byte("<!doctype html>\n<p>Not found\n"),
		"another's":      bytes.ReplaceAll(whole, []byte("-//vivary"), []byte("-//other")),
		"noise":          bytes.Repeat([]byte{0, 255, '\n'}, 100_000),
		"no SEQUENCE":    bytes.ReplaceAll(whole, []byte("SEQUENCE:"), []byte("X-COUNT:")),
		"doubled":        append(bytes.Clone(whole), whole...),
	} {
		disk, _ := begun(t)
		if err := afero.WriteFile(disk, lastPath, damaged, 0o644); err != nil {
			t.Fatal(err)
		}
		later := noon.AddDate(0, 0, 3)
		status, out, wrong := at(disk, later, "build", "c")
		if status != fine || !strings.Contains(out, "could not be read") || strings.Contains(out, "new,") {
			t.Errorf("%s: status %d: %s%s", say, status, out, wrong)
		}
		kept, err := afero.ReadFile(disk, lastPath+".aside-1")
		if len(damaged) > 0 && (!bytes.Equal(kept, damaged) || err != nil || !strings.Contains(out, "my-collection.ics.aside-1")) {
			t.Errorf("%s: not kept: %v, %s", say, err, out)
		}
		rises(t, say, whole, last(t, disk))
		if status, out, _ := at(disk, later, "build", "c"); status != fine || !strings.Contains(out, "unchanged") || strings.Contains(out, "could not") {
			t.Errorf("%s: the build after: %s", say, out)
		}
	}
}

// A feed that was deleted begins above what phones have of it.
func TestDeletedLastFeed(t *testing.T) {
	disk, whole := begun(t)
	if err := disk.Remove(lastPath); err != nil {
		t.Fatal(err)
	}
	later := noon.AddDate(0, 0, 3)
	if status, out, wrong := at(disk, later, "build", "c"); status != fine || !strings.Contains(out, "new, ") {
		t.Errorf("status %d: %s%s", status, out, wrong)
	}
	rises(t, "deleted", whole, last(t, disk))
	if status, out, _ := at(disk, later, "build", "c"); status != fine || !strings.Contains(out, "unchanged") {
		t.Errorf("the build after: %s", out)
	}
}

// A clock that does not go with the last build is asked about, whichever way it is wrong;
// the keeper's word for it is taken once, and no SEQUENCE falls on the way there and back.
func TestClockIsAsked(t *testing.T) {
	for say, wrong := range map[string]time.Time{
		"two days behind": noon.AddDate(0, 0, -2),
		"months behind":   noon.AddDate(0, -9, 0),
		"years ahead":     noon.AddDate(4, 0, 0),
		"far ahead":       noon.AddDate(900, 0, 0),
		"1970":            time.Unix(1000, 0),
		"beyond":          time.Date(12026, 1, 1, 0, 0, 0, 0, time.UTC),
	} {
		disk, whole := begun(t)
		status, _, e := at(disk, wrong, "build", "c")
		if status == fine || !strings.Contains(e, "clock of this machine says") || !strings.Contains(e, "--now") {
			t.Errorf("%s: status %d: %s", say, status, e)
		}
		if !bytes.Equal(last(t, disk), whole) {
			t.Errorf("%s: something was written", say)
		}
		if y := wrong.Year(); y < 2026 || y > 9000 {
			continue // no calendar is made for these
		}
		if status, _, e := at(disk, wrong, "build", "c", "--now", wrong.Format(time.RFC3339)); status != fine {
			t.Errorf("%s, said to be right: %s", say, e)
		}
		there := last(t, disk)
		rises(t, say, whole, there)
		back := noon.Add(5 * time.Hour)
		if wrong.After(noon) {
			if status, _, e := at(disk, back, "build", "c"); status == fine || !strings.Contains(e, "--now 2026-11-25T17:00") {
				t.Errorf("%s, and back: status %d: %s", say, status, e)
			}
			if status, _, e := at(disk, back, "build", "c", "--now", "2026-11-25T17:00"); status != fine {
				t.Errorf("%s, and back, said to be right: %s", say, e)
			}
		} else if status, _, e := at(disk, back, "build", "c"); status != fine {
			t.Errorf("%s, and on: %s", say, e)
		}
		rises(t, say+" and back", whole, last(t, disk))
		rises(t, say+" and back", there, last(t, disk))
		if status, _, e := at(disk, back.AddDate(0, 0, 1), "build", "c"); status != fine {
			t.Errorf("%s, the day after: %s", say, e)
		}
	}
	// A day more or less, a change of zone, a month without a build: nobody is asked.
	for _, then := range []time.Time{noon.Add(-10 * time.Hour), noon.AddDate(0, 0, 1), noon.AddDate(0, 3, 0), noon.AddDate(1, 1, 0)} {
		disk, _ := begun(t)
		if status, _, e := at(disk, then, "build", "c"); status != fine {
			t.Errorf("at %s: %s", then, e)
		}
	}
}

// What an older build left half written goes; what is somebody's own stays.
func TestLeftovers(t *testing.T) {
	disk, whole := begun(t)
	for name, text := range map[string]string{"my-collection.ics.new": string(whole[:300]), "mine.ics.new": "mine", ".my-collection.ics.4.new": "x", "notes.new": ""} {
		if err := afero.WriteFile(disk, "c/feeds/"+name, []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	if s, _, e := at(disk, noon.AddDate(0, 0, 1), "build", "c"); s != fine {
		t.Fatal(e)
	}
	list, err := afero.ReadDir(disk, "c/feeds")
	if err != nil {
		t.Fatal(err)
	}
	var names []string
	for _, x := range list {
		names = append(names, x.Name())
	}
	if got := strings.Join(names, " "); got != "mine.ics.new my-collection.ics notes.new" {
		t.Error(got)
	}
}

// Links, pipes and folders where a feed is to be: the build neither waits nor fails, and
// what a link leads to is replaced.
func TestOddFiles(t *testing.T) {
	dir := t.TempDir()
	disk := afero.NewOsFs()
	root := filepath.Join(dir, "c")
	if s, _, e := at(disk, noon, "start", root); s != fine {
		t.Fatal(e)
	}
	if s, _, e := at(disk, noon, "build", root); s != fine {
		t.Fatal(e)
	}
	path, real := filepath.Join(root, "feeds", "my-collection.ics"), filepath.Join(dir, "real.ics")
	if err := os.Rename(path, real); err != nil {
		t.Fatal(err)
	}
	if err := os.Symlink(real, path); err != nil {
		t.Fatal(err)
	}
	was, _ := os.ReadFile(real)
	if s, o, e := at(disk, noon.AddDate(0, 0, 7), "build", root); s != fine || !strings.Contains(o, "changed") {
		t.Errorf("a link: %s%s", o, e)
	}
	is, _ := os.ReadFile(real)
	rises(t, "a link", was, is)
	if info, err := os.Lstat(path); err != nil || info.Mode()&os.ModeSymlink == 0 || bytes.Equal(was, is) {
		t.Errorf("the link is not a link any more: %v, %v", info, err)
	}
	for i, c := range []struct {
		say  string
		make func() error
	}{
		{"a link to", func() error { return os.Symlink("nowhere.ics", path) }},
		{"a folder", func() error { return os.Mkdir(path, 0o755) }},
		{"a pipe", func() error { return pipe(path) }},
		{"MB", func() error {
			f, err := os.Create(path)
			if err != nil {
				return err
			}
			defer f.Close()
			return f.Truncate(3 << 30)
		}},
	} {
		if err := os.Remove(path); err != nil {
			t.Fatal(err)
		}
		if err := c.make(); err != nil {
			t.Fatal(err)
		}
		// The list of a refused plan is that of the last feeds: it does not wait either.
		slip := filepath.Join(root, "slip.care.hcl")
		if err := os.WriteFile(slip, []byte("enclosure {"), 0o600); err != nil {
			t.Fatal(err)
		}
		day := noon.AddDate(0, 0, 8+i)
		if s, o, e := at(disk, day, "due", root); s == fine || o == "" {
			t.Errorf("%s: status %d: %s%s", c.say, s, o, e)
		}
		if err := os.Remove(slip); err != nil {
			t.Fatal(err)
		}
		if s, o, e := at(disk, day, "build", root); s != fine || !strings.Contains(o, c.say) || !strings.Contains(o, "aside-") {
			t.Errorf("%s: status %d: %s%s", c.say, s, o, e)
		}
		now, err := os.ReadFile(path)
		if err != nil {
			t.Fatal(err)
		}
		rises(t, c.say, is, now)
		is = now
	}
}
