package journal

import (
	"fmt"
	"maps"
	"os"
	"slices"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/spf13/afero"

	"vivary/cmd/internal/publish"
	"vivary/internal/faulty"
	"vivary/plan/finding"
	"vivary/schema"
)

// What stands already is said and not written again, whoever says it, in whichever log.
func TestStanding(t *testing.T) {
	const first = "2026-11-25 19:41 by lead tub-1 done water"
	for _, x := range []struct {
		line, other string
		written     bool
	}{
		{first, first, false},                             // a form that is sent again
		{first, "2026-11-25 tub-1 done water", false},     // typed beside it
		{first, first[:11] + "19:42" + first[16:], false}, // a second tap
		{first, "2026-11-25 19:43 by relief tub-1 done water", false},
		{first, "2026-11-25 08:02 by relief tub-1 done water", true}, // another round
		{"2026-11-25 tub-1 done water", first, true},                 // of two rounds the one may be meant
		{first, "2026-11-25 19:42 by lead tub-2 done water", true},
		{first, "2026-11-24 19:41 by lead tub-1 done water", true},
		{first, "2026-11-25 19:42 by lead tub-1 done water \"it was dry\"", true},
		{"2026-11-25 tub-1 done spot-clean", "2026-11-25 19:42 by lead tub-1 done spot-clean", false},
		{"2026-11-25 08:01 tub-1 skipped water", "2026-11-25 08:03 tub-1 skipped water", false},
		{"2026-11-25 08:01 tub-1 skipped water", "2026-11-25 20:03 tub-1 skipped water", false},
		{"2026-11-25 20:00 tub-1 fed 2 crickets", "2026-11-25 20:01 tub-1 fed 2 crickets", false},
		{"2026-11-25 20:00 tub-1 fed 2 crickets", "2026-11-25 20:01 tub-1 fed 3 crickets", true},
		{"2026-11-25 20:00 tub-1 fed 2 crickets", "2026-11-25 20:01 tub-1 fed", false},
		{"2026-11-25 20:00 tub-1 fed", "2026-11-25 20:01 tub-1 fed 2 crickets", true},
		{"2026-11-25 20:00 tub-1 remark \"x\"", "2026-11-25 20:01 tub-1 remark \"x\"", true},
		{"2026-11-25 20:00 tub-1 measured 25 C", "2026-11-25 20:01 tub-1 measured 25 C", true}, // it is so again
		{"2026-11-25 20:00 tub-1 moult", "2026-11-25 20:01 tub-1 moult", true},
	} {
		disk := afero.NewMemMapFs()
		keep(t, disk, "")
		j := at(disk)
		if out, err := write(j, "2026-lead.care.log", x.line); err != nil || len(out.Written) != 1 {
			t.Fatalf("%s: %+v, %v", x.line, out, err)
		}
		out, err := write(j, "2026-relief.care.log", x.other)
		if written := len(out.Written) == 1; err != nil || written != x.written || written == (out.Already[x.other] == "c/records/2026-lead.care.log:1") {
			t.Errorf("%s, then %s: written %v, already %v, %v", x.line, x.other, out.Written, out.Already, err)
		}
		if n := len(logs(t, disk)); n == 2 != x.written {
			t.Errorf("%s, then %s: %d lines", x.line, x.other, n)
		}
	}
}

// A time that somebody typed says that it was another time.
func TestTypedTimes(t *testing.T) {
	disk := afero.NewMemMapFs()
	keep(t, disk, "2026-11-25 19:41 tub-1 done water\n")
	j := at(disk)
	j.Stamped = false
	if out, err := write(j, "2026.care.log", "2026-11-25 19:42 tub-1 done water"); err != nil || len(out.Written) != 1 {
		t.Errorf("%+v, %v", out, err)
	}
}

// Of several lines those that stand are left out, one that is there twice is written once,
// and one that cannot be so keeps all others out.
func TestSeveral(t *testing.T) {
	disk := afero.NewMemMapFs()
	keep(t, disk, "2026-11-25 tub-1 refused\n")
	j := at(disk)
	h, err := j.Hold()
	if err != nil {
		t.Fatal(err)
	}
	defer h.Release()
	before := h.Now
	out, err := h.Write("2026.care.log", []string{"2026-11-25 tub-3 moult", "2026-11-25 tub-4 refused"})
	if err != nil || !out.Slips || len(out.Findings) == 0 || len(out.Written) > 0 || h.Now != before {
		t.Errorf("%+v, %v", out, err)
	}
	out, err = h.Write("2026.care.log", []string{"2026-11-25 tub-2 recovered"})
	if err != nil || out.Idle != schema.WordRecovered || len(out.Written) > 0 {
		t.Errorf("%+v, %v", out, err)
	}
	out, err = h.Write("2026.care.log", []string{"2026-11-25 tub-1 refused", "2026-11-25 tub-2 refused", "2026-11-25 tub-2 refused"})
	if err != nil || len(out.Written) != 1 || out.Already["2026-11-25 tub-1 refused"] != "c/records/2026.care.log:1" {
		t.Errorf("%+v, %v", out, err)
	}
	if h.Now != out.With || len(h.Now.Plan.Log) != 2 {
		t.Errorf("it is not known what was written: %d lines", len(h.Now.Plan.Log))
	}
	for _, end := range []string{"\n", "\r", "\r\n"} {
		if out, err := h.Write("2026.care.log", []string{"2026-11-25 tub-1 fed" + end + "2026-11-25 tub-2 died"}); err == nil {
			t.Errorf("%+v", out)
		}
	}
	if got := logs(t, disk); !slices.Equal(got, []string{"2026-11-25 tub-1 refused", "2026-11-25 tub-2 refused"}) {
		t.Error(got)
	}
}

// Of many who write at once, each sees what the others wrote: nothing is lost, and what two
// say stands once. It holds within one program where the disk knows no locks, and between
// journals where it does.
func TestAtOnce(t *testing.T) {
	t.Chdir(t.TempDir())
	disk := afero.NewOsFs()
	lock := publish.Waiting(time.Minute, time.Now, func(string) {})
	for name, journal := range map[string]func() *Journal{
		"one, no lock": sync.OnceValue(func() *Journal { return at(disk) }),
		"several":      func() *Journal { j := at(disk); j.Lock = lock; return j },
	} {
		if err := os.RemoveAll("c"); err != nil {
			t.Fatal(err)
		}
		keep(t, disk, "2026-11-24 tub-1 ref") // torn: it counts as a remark
		var wg sync.WaitGroup
		var mu sync.Mutex
		written, most := 0, 0
		for i := range 12 {
			wg.Go(func() {
				keeper := []string{"lead", "relief"}[i%2]
				out, err := write(journal(), "2026-"+keeper+".care.log", fmt.Sprintf("2026-11-25 20:%02d by %s tub-1 done water", i, keeper), fmt.Sprintf("2026-11-25 tub-%d remark \"note %d\"", i%3+1, i))
				mu.Lock()
				defer mu.Unlock()
				if err != nil {
					t.Error(err)
					return
				}
				written += len(out.Written)
				most = max(most, len(out.With.Plan.Log))
			})
		}
		wg.Wait()
		all := logs(t, disk)
		if written != 13 || most != 14 || len(all) != 14 {
			t.Errorf("%s: %d written, the last saw %d, %d stand:\n%s", name, written, most, len(all), strings.Join(all, "\n"))
		}
	}
}

// Whatever call of the disk fails, once or from then on: what is said to be written stands
// there whole, of all else nothing does, and what is written next is whole. Only where the
// machine is switched off in a write half a line may stand, alone.
func TestEveryCallFails(t *testing.T) {
	const old = "2026-11-24 tub-1 refused\n"
	lines := []string{"2026-11-25 tub-1 remark \"one\"", "2026-11-25 tub-2 remark \"two\""}
	for _, name := range []string{"2026.care.log", "2026-lead.care.log"} {
		for _, kind := range []struct{ dead, short bool }{{}, {dead: true}, {short: true}} {
			failed := map[string]bool{}
			for n := 1; ; n++ {
				t.Chdir(t.TempDir())
				keep(t, afero.NewOsFs(), old)
				disk := &faulty.Disk{Fs: afero.NewOsFs(), At: n, Dead: kind.dead, Short: kind.short}
				out, err := write(at(disk), name, lines...)
				if disk.What == "" {
					break
				}
				failed[strings.Fields(disk.What)[0]] = true
				say := fmt.Sprintf("%s, call %d (%s), %+v: %v", name, n, disk.What, kind, err)
				now := logs(t, afero.NewOsFs())
				want := []string{strings.TrimSpace(old)}
				if len(out.Written) > 0 {
					want = append(want, lines...)
				}
				slices.Sort(now)
				if err == nil && len(out.Written) != len(lines) && !out.Slips || !kind.dead && !slices.Equal(now, want) {
					t.Errorf("%s: %+v, it stands\n%s", say, out, strings.Join(now, "\n"))
				}
				if _, err := write(at(afero.NewOsFs()), name, lines...); err != nil {
					t.Errorf("%s: then %v", say, err)
				}
				now = logs(t, afero.NewOsFs())
				for _, line := range append(lines, strings.TrimSpace(old)) {
					if k := len(now) - len(slices.DeleteFunc(slices.Clone(now), func(s string) bool { return s == line })); k != 1 {
						t.Errorf("%s: then %q stands %d times:\n%s", say, line, k, strings.Join(now, "\n"))
					}
				}
				if t.Failed() {
					return
				}
			}
			for _, what := range []string{"open", "write", "sync", "stat", "file-stat", "read", "mkdir"} {
				if !failed[what] && !kind.dead {
					t.Errorf("no %s was made to fail: %v", what, slices.Sorted(maps.Keys(failed)))
				}
			}
		}
	}
}

// What cannot be so is not written; what is only bad is.
func TestSlips(t *testing.T) {
	for want, rule := range map[bool]*finding.Rule{true: {ID: "x", Severity: finding.Caution, Slip: true}, false: {ID: "y", Severity: finding.Error}} {
		if got := slips(finding.Finding{Rule: rule}); got != want {
			t.Errorf("%s: %v", rule.ID, got)
		}
	}
}
