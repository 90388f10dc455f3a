package feeds_test

import (
	"bytes"
	"strings"
	"testing"
	"time"

	"github.com/spf13/afero"

	"vivary/compile"
	"vivary/compile/feeds"
	"vivary/compile/ical"
	"vivary/internal/feedoracle"
	"vivary/internal/hostile"
	"vivary/internal/randomplan"
	"vivary/plan"
	"vivary/plan/finding"
)

// FuzzWhole: whatever is done to a plan and its log, they are read, compiled and judged
// without a crash; each finding says something of a place that there is; and the calendars
// of what is not refused are read by a library that is not ours and, made again with what
// they were in mind, are the same to the byte.
func FuzzWhole(f *testing.F) {
	f.Add(uint16(0), []byte(""))
	for seed := range uint16(8) {
		f.Add(seed, []byte{byte(3 * seed), 1, 2, byte(seed), 9, 14, 3, byte(40 * seed), 21, 5, byte(seed), 11})
	}
	f.Fuzz(func(t *testing.T, seed uint16, edits []byte) {
		p := randomplan.New(uint64(seed % 512))
		in := hostile.Input{Plan: p.Text(), Log: p.LogUntil(p.Today)}
		for n := 0; n == 0 || len(edits) > 0 && n < 12; n++ {
			k := min(4, len(edits))
			next := hostile.Mutated(in.Plan, in.Log, edits[:k])
			found, published := whole(t, next, p.Today.At(12, time.UTC))
			if published != nil {
				in = next // what is refused has been seen, and is undone: else all that follows would be
			}
			if n == 0 && seed%8 == 0 {
				again, same := whole(t, next, p.Today.At(12, time.UTC))
				if found != again || !bytes.Equal(published, same) {
					t.Error("the same plan gives something else")
				}
			}
			edits = edits[k:]
		}
	})
}

// whole goes the whole way with a plan, and returns what is found and all calendars.
func whole(t *testing.T, in hostile.Input, now time.Time) (found string, published []byte) {
	disk := afero.NewMemMapFs()
	for name, text := range in.Files() {
		if err := afero.WriteFile(disk, "c/"+name, []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	c, loaded, err := plan.Load(disk, "c")
	if err != nil {
		t.Fatal(err)
	}
	r := compile.Compile(c, loaded, now)
	for _, x := range r.Findings {
		if n := len(c.Files.Text(x.At.File)); x.Rule == nil || x.Text == "" || x.At.Written() && n > 0 && (int(x.At.End) > n || x.At.Start > x.At.End) {
			t.Errorf("a finding of nothing: %+v", x)
		}
	}
	var out strings.Builder
	if err := (finding.Printer{Files: c.Files}).Print(&out, r.Findings); err != nil {
		t.Fatal(err)
	}
	if r.Refused() || r.Roster == nil {
		if out.Len() == 0 {
			t.Error("refused without a word")
		}
		return out.String(), nil
	}
	for _, feed := range feeds.Of(r) {
		text, err := feed.Bytes(nil)
		if err != nil {
			t.Fatal(err)
		}
		shown, uids, err := feedoracle.Read(feed.Name, text, r.Today-7, r.Today+60)
		if err != nil {
			t.Fatal(err)
		}
		once := map[string]bool{}
		for _, u := range uids {
			if once[u] {
				t.Errorf("UID %s twice", u)
			}
			once[u] = true
		}
		for _, o := range shown {
			if strings.TrimSpace(o.Summary) == "" {
				t.Errorf("an entry without a title on %s", o.Day)
			}
		}
		last, err := ical.Remember(text)
		if err != nil {
			t.Fatal(err)
		}
		second, err := feed.Bytes(last)
		if err != nil || !bytes.Equal(text, second) {
			t.Errorf("calendar %s, made again, is another: %v", feed.Name, err)
		}
		published = append(published, text...)
	}
	return out.String(), published
}
