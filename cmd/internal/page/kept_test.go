package page

import (
	"net/url"
	"strings"
	"testing"
	"time"

	"github.com/spf13/afero"

	"vivary/internal/randomplan"
)

// TestKept: pages of which most is kept from before, through ticks, edits of the plan and
// days, are those that are made from nothing.
func TestKept(t *testing.T) {
	kept := 0
	for seed := range uint64(20) {
		p := randomplan.New(seed)
		s := open(t, written(t, p.Files(p.Today-1)), time.Unix(int64(p.Today)*86400+13*3600, 0).UTC())
		all := ticks(s)
		for step := range 9 {
			if s.house.Result.Roster != nil {
				all = ticks(s)
			}
			switch {
			case step%4 == 3:
				p.Edit()
				_ = s.disk.Remove("c/wrong.care.hcl")
				for name, text := range p.Files(p.Today - 1) {
					if err := afero.WriteFile(s.disk, "c/"+name, []byte(text), 0o644); err != nil {
						t.Fatal(err)
					}
				}
			case step == 4: // refused until the plan is edited again, and ticked off meanwhile
				if err := afero.WriteFile(s.disk, "c/wrong.care.hcl", []byte("round \"torn\" {\n"), 0o644); err != nil {
					t.Fatal(err)
				}
			case step == 6:
				s.now = s.now.Add(26 * time.Hour)
			case len(all) > 0:
				b := all[step*5%len(all)]
				s.post(home+"/tick", url.Values{"day": {s.house.Result.Today.String()}, "round": {b[0]}, "tick": {b[1]}})
			}
			s.build()
			before := s.pages.kept.rounds[s.visitor.Keeper]
			for _, at := range []string{"/", "/?who=all", "/week"} {
				fresh := open(t, s.disk, s.now)
				fresh.visitor = s.visitor
				fresh.house.Good, fresh.house.Refused = s.house.Good, s.house.Refused
				if got, want := s.get(home+at).Body.String(), fresh.get(home+at).Body.String(); got != want {
					t.Fatalf("seed %d, step %d, %s: %s", seed, step, at, apartIn(got, want))
				}
			}
			for l := range s.pages.kept.rounds[s.visitor.Keeper] {
				if _, stood := before[l]; stood {
					kept++
				}
			}
		}
	}
	if kept < 30 {
		t.Errorf("only %d rounds were kept", kept)
	}
}

// apartIn is the first line in which two texts differ.
func apartIn(a, b string) string {
	x, y := strings.Split(a, "\n"), strings.Split(b, "\n")
	for i := range min(len(x), len(y)) {
		if x[i] != y[i] {
			return "kept: " + x[i] + "\nfresh: " + y[i]
		}
	}
	return "one is longer"
}
