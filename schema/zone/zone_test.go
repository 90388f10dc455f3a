package zone

import (
	"crypto/sha256"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"sync"
	"testing"
	"time"
)

// The sum of lib/time/zoneinfo.zip in go1.26.8.linux-amd64, whose update.bash
// says CODE=2025c, DATA=2025c. Whoever changes the archive must change Version.
func TestArchiveIsTheVersionItSays(t *testing.T) {
	const sum, version = "8f55634d05f8bca1f7bc7c69c5933428c69357e0bdf565e5ba224e3f88ff12e8", "2025c"
	if got := fmt.Sprintf("%x", sha256.Sum256([]byte(archive))); got != sum || Version != version {
		t.Errorf("archive has sum %s and Version is %q; want %s and %q", got, Version, sum, version)
	}
}

func TestEveryNameLoads(t *testing.T) {
	names := Names()
	// 597: what `unzip -l zoneinfo.zip` lists, less Factory.
	if len(names) != 597 || !slices.IsSorted(names) {
		t.Errorf("got %d names, sorted %v; want 597, sorted", len(names), slices.IsSorted(names))
	}
	for _, name := range names {
		loc, err := Load(name)
		if err != nil || loc.String() != name {
			t.Errorf("Load(%q) = %v, %v", name, loc, err)
		}
	}
}

// Clock changes fixed by law rather than by this archive.
func TestKnownChanges(t *testing.T) {
	for _, c := range []struct {
		zone, change  string
		before, after int // minutes east of UTC
		source        string
	}{
		{"Europe/London", "2027-03-28T01:00:00Z", 0, 60, "Directive 2000/84/EC art. 2: last Sunday of March, 01:00 UTC"},
		{"GB", "2027-10-31T01:00:00Z", 60, 0, "Directive 2000/84/EC art. 3: last Sunday of October, 01:00 UTC"},
		{"US/Eastern", "2027-03-14T07:00:00Z", -300, -240, "15 U.S.C. 260a: second Sunday of March, 02:00 local"},
		{"America/New_York", "2027-11-07T06:00:00Z", -240, -300, "15 U.S.C. 260a: first Sunday of November, 02:00 local"},
	} {
		loc, err := Load(c.zone)
		if err != nil {
			t.Error(err)
			continue
		}
		at, err := time.Parse(time.RFC3339, c.change)
		if err != nil {
			t.Fatal(err)
		}
		_, before := at.Add(-time.Second).In(loc).Zone()
		_, after := at.In(loc).Zone()
		if before != c.before*60 || after != c.after*60 {
			t.Errorf("%s at %s: %d s to %d s; want %d min to %d min (%s)", c.zone, c.change, before, after, c.before, c.after, c.source)
		}
	}
}

func TestUnknownNames(t *testing.T) {
	for _, c := range []struct{ name, want string }{
		{"Europe/Londn", `there is no time zone "Europe/Londn"; a slip of the keyboard from it is "Europe/London"`},
		{"london", `there is no time zone "london"; the city's is written "Europe/London"`},
		{"New York", `there is no time zone "New York"; the city's is written "America/New_York"`},
		{"utc", `there is no time zone "utc"; of that name there are several`},
		{"Eastern", `there is no time zone "Eastern": it is what clocks in the east of North America show`},
		{"", `no time zone is given`},
		{"Local", `"Local" would mean a different time on each machine`},
		{"BST", `there is no time zone "BST": it is what clocks in Britain show in summer only`},
		{"Factory", `there is no time zone "Factory"`},
		{"posixrules", `there is no time zone "posixrules"`},
		{"../../etc/localtime", `there is no time zone "../../etc/localtime": the IANA database`},
		{"Europe/../Europe/London", `there is no time zone`},
		{"/usr/share/zoneinfo/Europe/London", `there is no time zone`},
		{strings.Repeat("x", 1<<16), `there is no time zone`},
	} {
		if loc, err := Load(c.name); err == nil || !strings.HasPrefix(err.Error(), c.want) {
			t.Errorf("Load(%.40q) = %v, %v; want %s", c.name, loc, err, c.want)
		}
	}
}

// The machine's zone files must not matter. Here they say that Paris keeps the
// time of Tokyo, and the time package believes them.
func TestMachineZonesAreNotRead(t *testing.T) {
	l, err := index()
	if err != nil {
		t.Fatal(err)
	}
	tokyo, err := read(l.files["Asia/Tokyo"])
	if err != nil {
		t.Fatal(err)
	}
	dir := t.TempDir()
	if err := os.WriteFile(filepath.Join(dir, "Paris"), tokyo, 0o600); err != nil {
		t.Fatal(err)
	}
	t.Setenv("ZONEINFO", dir)
	if loc, err := time.LoadLocation("Paris"); err != nil || clock(loc) != "09:00 JST" {
		t.Fatalf("the control does not work: %v, %v", loc, err)
	}
	if loc, err := Load("Paris"); err == nil {
		t.Errorf("a zone of the machine was taken: %s", clock(loc))
	}
}

func clock(loc *time.Location) string { return time.Unix(0, 0).In(loc).Format("15:04 MST") }

func TestOneLocationForManyCallers(t *testing.T) {
	var wg sync.WaitGroup
	got := make([]*time.Location, 8)
	for i := range got {
		wg.Go(func() { got[i], _ = Load("Pacific/Chatham") })
	}
	wg.Wait()
	for _, loc := range got {
		if loc == nil || loc != got[0] {
			t.Fatalf("callers got different locations: %p and %p", loc, got[0])
		}
	}
}

func BenchmarkLoadCached(b *testing.B) {
	for b.Loop() {
		if _, err := Load("Europe/London"); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkOpen(b *testing.B) {
	for b.Loop() {
		if l, err := readIndex(); err != nil || len(l.names) == 0 {
			b.Fatal(err)
		}
	}
}
