package compile_test

import (
	"fmt"
	"math/rand/v2"
	"reflect"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/spf13/afero"

	"vivary/compile"
	"vivary/compile/feeds"
	"vivary/internal/generated"
	"vivary/internal/planned"
	"vivary/internal/randomplan"
	"vivary/plan"
)

// TestAgainIsAsFresh: what is worked out again after an edit, or with a new line in the
// log, is what a fresh compilation says; and what did not change is not worked out.
func TestAgainIsAsFresh(t *testing.T) {
	kept, made := 0, 0
	for seed := range uint64(60) {
		p := randomplan.New(seed)
		rng := rand.New(rand.NewPCG(seed, 1))
		disk := afero.NewMemMapFs()
		var reader plan.Reader
		var last *compile.Result
		for step := range 6 {
			if seed%3 == 0 { // in some, boxes stand in a rack, which changes too
				p.Rack(step%3 > 0, 4*(step/2))
			}
			files := p.Files(p.Today)
			for name, text := range files {
				if err := afero.WriteFile(disk, "c/"+name, []byte(text), 0o644); err != nil {
					t.Fatal(err)
				}
			}
			c, found, err := reader.Load(disk, "c")
			if err != nil {
				t.Fatal(err)
			}
			if c.Location == nil {
				break
			}
			now := p.Today.At(12*60, c.Location)
			again := compile.From(compile.Input{Plan: c, Loaded: found, Now: now, Last: last})
			fresh := compiledFresh(t, files, now.Format("2006-01-02"))
			if got, want := told(again), told(fresh); got != want {
				t.Fatalf("seed %d: again\n%s\nfresh\n%s", seed, got, want)
			}
			if last != nil {
				for i, l := range again.Lives {
					made++
					if slices.Contains(last.Lives, l) {
						kept++
					}
					_ = i
				}
			}
			last = again
			if rng.IntN(3) > 0 {
				p.Edit()
			}
		}
	}
	if kept*4 < made {
		t.Errorf("%d of %d enclosures were kept", kept, made)
	}
}

func compiledFresh(t *testing.T, files map[string]string, on string) *compile.Result {
	t.Helper()
	c, found := planned.Files(t, files)
	return compile.Compile(c, found, planned.Day(on).At(12*60, c.Location))
}

// told is all that a result says: its findings, and its feeds where it is not refused.
func told(r *compile.Result) string {
	var b strings.Builder
	for _, f := range r.Findings {
		at := r.Plan.Files.Start(f.At)
		fmt.Fprintf(&b, "%s:%d:%d %s %s %s %s %s\n", at.File, at.Line, at.Column, f.Severity, f.Rule.ID, f.Text, f.Limit, f.Write)
	}
	for _, p := range r.Proofs {
		for _, x := range p {
			fmt.Fprintln(&b, x.Name.Name, x.Longest, x.From, x.To, x.Breach, x.Missed, x.Times)
		}
	}
	if r.Refused() {
		return b.String()
	}
	for _, f := range feeds.Of(r) {
		text, err := f.Bytes(nil)
		fmt.Fprintln(&b, f.Name, err, string(text))
	}
	return b.String()
}

// TestAgainTouchesOneFeed: after an edit of one enclosure only the feeds that show it
// differ, and the others are known to be the same.
func TestAgainTouchesOneFeed(t *testing.T) {
	text := "collection \"c\" {\n  time_zone = \"Europe/London\"\n}\nroom \"a\" {\n  temperature = \"24 to 26 C\"\n}\nroom \"b\" {\n  temperature = \"24 to 26 C\"\n}\ncalendar \"a\" {\n  rooms = [\"a\"]\n}\ncalendar \"b\" {\n  rooms = [\"b\"]\n}\n"
	box := func(room string, hides int) string {
		return fmt.Sprintf("enclosure \"box-%s\" {\n  species = \"pandinus-imperator\"\n  room = %q\n  housing {\n    inside = \"76 x 46 x 41 cm\"\n    lid = \"solid, latched\"\n    depth = \"16 cm\"\n    hides = 4\n  }\n  animals \"all\" {\n    count = 3\n    stage = \"adult\"\n  }\n  care \"water\" {\n    every = \"%d days\"\n  }\n}\n", room, room, hides)
	}
	disk := afero.NewMemMapFs()
	var reader plan.Reader
	load := func(a int, last *compile.Result) *compile.Result {
		for name, text := range map[string]string{"c.care.hcl": text, "a.care.hcl": box("a", a), "b.care.hcl": box("b", 2)} {
			_ = afero.WriteFile(disk, "c/"+name, []byte(text), 0o644)
		}
		c, found, _ := reader.Load(disk, "c")
		return compile.From(compile.Input{Plan: c, Loaded: found, Now: planned.Day("2027-02-01").At(720, c.Location), Last: last})
	}
	first := load(2, nil)
	second := load(1, first)
	one, two := feeds.Of(first), feeds.Of(second)
	if two[0].Same(&one[0]) || !two[1].Same(&one[1]) {
		t.Errorf("a same: %v, b same: %v", two[0].Same(&one[0]), two[1].Same(&one[1]))
	}
	x, _ := one[1].Bytes(nil)
	y, _ := two[1].Bytes(nil)
	if !reflect.DeepEqual(x, y) {
		t.Error("the feed that is the same has other bytes")
	}
}

// BenchmarkAgain measures from a changed file of 1,000 enclosures to the new bytes of
// the one feed that it touches, beside all of it made anew: read, compiled, every feed
// written. Both are run in turn; the ratio is the median of the pairs.
func BenchmarkAgain(b *testing.B) {
	disk := afero.NewMemMapFs()
	files := generated.Collection(1000, "Europe/London")
	put := func(name, text string) {
		if err := afero.WriteFile(disk, "c/"+name, []byte(text), 0o644); err != nil {
			b.Fatal(err)
		}
	}
	for name, text := range files {
		put(name, text)
	}
	const touched = "rooms/room-7.care.hcl"
	var reader plan.Reader
	from := func(r *plan.Reader, last *compile.Result) *compile.Result {
		c, found, err := r.Load(disk, "c")
		if err != nil {
			b.Fatal(err)
		}
		return compile.From(compile.Input{Plan: c, Loaded: found, Now: planned.Day("2026-11-25").At(720, c.Location), Last: last})
	}
	write := func(r *compile.Result, last *compile.Result) (n int) {
		var before []feeds.Feed
		if last != nil {
			before = feeds.Of(last)
		}
		for i, f := range feeds.Of(r) {
			if before == nil || !f.Same(&before[i]) {
				if _, err := f.Bytes(nil); err != nil {
					b.Fatal(err)
				}
				n++
			}
		}
		return n
	}
	last := from(&reader, nil)
	var again, fresh, ratio []float64
	for i := 0; b.Loop(); i++ {
		begin := time.Now()
		write(from(new(plan.Reader), nil), nil)
		whole := time.Since(begin).Seconds()
		put(touched, strings.Replace(files[touched], "every = \"2 days\"", fmt.Sprintf("every = \"%d day%s\"", 1+i%2, "s"[:i%2]), 1))
		begin = time.Now()
		next := from(&reader, last)
		n := write(next, last)
		one := time.Since(begin).Seconds()
		if last = next; n != 1 {
			b.Fatalf("%d feeds were made", n)
		}
		again, fresh, ratio = append(again, one), append(fresh, whole), append(ratio, one/whole)
	}
	median := func(x []float64) float64 { slices.Sort(x); return x[len(x)/2] }
	b.ReportMetric(0, "ns/op")
	b.ReportMetric(1e3*median(again), "again-ms")
	b.ReportMetric(1e3*median(fresh), "fresh-ms")
	b.ReportMetric(median(ratio), "ratio")
}
