package page

import (
	"net/http"
	"net/url"
	"slices"
	"strings"
	"testing"

	"github.com/spf13/afero"

	"vivary/compile/daylist"
)

// left are what is left to do today, a stop each.
func left(s *site, keeper string) []string {
	return stopsOf(daylist.Of(s.house.Result, daylist.Asked{Days: 1, Keeper: keeper}))
}

func stopsOf(lists []*daylist.List) (all []string) {
	for _, l := range lists {
		for _, d := range l.Due {
			for _, x := range d.Stops {
				all = append(all, l.Round.Name.V+" "+x.Place.Name+" "+x.Item.Said)
			}
		}
	}
	slices.Sort(all)
	return slices.Compact(all)
}

// ticks are the buttons of a page, with the round in whose form each stands.
func ticks(s *site) (all [][2]string) {
	l := new(kept).listOf(s.house.Result, s.visitor.Keeper)
	for i := range l.Rounds {
		x := &l.Rounds[i]
		add := func(tick string) {
			if tick != "" {
				all = append(all, [2]string{x.Name, tick})
			}
		}
		for _, n := range x.lines() {
			add(n.All)
			for _, j := range n.Jobs {
				add(j.Tick)
			}
			for _, p := range n.Stops {
				for _, j := range p.Jobs {
					add(j.Tick)
				}
			}
		}
	}
	return all
}

// TestEachTick sends every button of a page: what it is about leaves the list, nothing else
// does, the browser is sent on to a page that says so, and a second tap writes nothing.
func TestEachTick(t *testing.T) {
	sent := 0
	for name, s := range sites(t, 4) {
		for _, b := range ticks(s) {
			if len(b[1]) > 400 && sent%7 != 0 {
				continue
			}
			before, disk := left(s, s.visitor.Keeper), s.disk
			log, _ := afero.ReadFile(disk, "c/records/2026.care.log")
			form := url.Values{"day": {s.house.Result.Today.String()}, "round": {b[0]}, "tick": {b[1]}}
			w := s.post(home+"/tick", form)
			if w.Code != http.StatusSeeOther {
				t.Fatalf("%s: %q answers %d: %s", name, b[1], w.Code, w.Body)
			}
			to, _ := url.Parse(w.Header().Get("Location"))
			if page := s.get(to.String()).Body.String(); !strings.Contains(page, "Noted: ") || !strings.Contains(page, `id="`+to.Fragment+`"`) {
				t.Errorf("%s: after %q the page %s does not say so:\n%s", name, b[1], to, page)
			}
			gone := without(before, left(s, s.visitor.Keeper))
			want := named(b[0], b[1])
			for _, x := range gone {
				if !slices.Contains(want, x) && !follows(want, x) {
					t.Errorf("%s: %q took %q too", name, b[1], x)
				}
			}
			for _, x := range want {
				if !slices.Contains(gone, x) {
					t.Errorf("%s: %q left %q", name, b[1], x)
				}
			}
			once, _ := afero.ReadFile(disk, "c/records/2026.care.log")
			if s.post(home+"/tick", form); s.house.Result.Plan != nil {
				if twice, _ := afero.ReadFile(disk, "c/records/2026.care.log"); string(twice) != string(once) {
					t.Errorf("%s: a second tap on %q wrote again:\n%s", name, b[1], strings.TrimPrefix(string(twice), string(once)))
				}
			}
			if log == nil {
				_ = disk.Remove("c/records/2026.care.log")
			} else {
				_ = afero.WriteFile(disk, "c/records/2026.care.log", log, 0o644)
			}
			s.build()
			sent++
			if t.Failed() {
				return
			}
		}
	}
	if sent < 120 {
		t.Errorf("only %d buttons", sent)
	}
}

// named are the stops that a button is about.
func named(round, tick string) (all []string) {
	for t := range strings.SplitSeq(tick, "!") {
		said, names, _ := strings.Cut(t, "*")
		for tank := range strings.SplitSeq(names, ".") {
			all = append(all, round+" "+tank+" "+said)
		}
	}
	return all
}

// follows reports whether a stop goes with one that was ticked: the same care of the same
// animals in another round or by another name of it.
func follows(want []string, gone string) bool {
	_, gone, _ = strings.Cut(gone, " ")
	tank, said, _ := strings.Cut(gone, " ")
	return slices.ContainsFunc(want, func(w string) bool {
		_, w, _ = strings.Cut(w, " ")
		at, other, _ := strings.Cut(w, " ")
		return at == tank && (said == other || strings.HasSuffix(said, " "+other) || strings.HasSuffix(other, " "+said))
	})
}

func without(all, some []string) []string {
	return slices.DeleteFunc(slices.Clone(all), func(x string) bool { return slices.Contains(some, x) })
}
