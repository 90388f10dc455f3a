package compared_test

import (
	"maps"
	"path"
	"strings"
	"testing"

	ics "github.com/arran4/golang-ical"
	"github.com/spf13/afero"

	"vivary/cmd/internal/builder"
	"vivary/internal/randomplan"
)

// built are the calendars of a collection by themselves, as another library reads them: each
// entry's text by its UID, without what only says when it was made.
func built(t *testing.T, p *randomplan.Plan, files map[string]string) (map[string]map[string]string, bool) {
	t.Helper()
	d := disk(t, files)
	b := &builder.Builder{Root: ".", Out: "feeds", Now: builder.Moment(on(p.Today))}
	r, err := b.Build(d, nil, true)
	if err != nil {
		t.Fatal(err)
	}
	if r.Result.Refused() {
		return nil, false
	}
	out := map[string]map[string]string{}
	for _, c := range r.Calendars {
		text, err := afero.ReadFile(d, path.Join("feeds", c.File))
		if err != nil {
			t.Fatal(err)
		}
		cal, err := ics.ParseCalendar(strings.NewReader(string(text)))
		if err != nil {
			t.Fatal(err)
		}
		entries := map[string]string{}
		for _, e := range cal.Events() {
			words := ""
			for _, x := range e.Properties {
				if x.IANAToken != "DTSTAMP" && x.IANAToken != "LAST-MODIFIED" && x.IANAToken != "SEQUENCE" && x.IANAToken != "CREATED" {
					words += x.IANAToken + "=" + x.Value + "\n"
				}
			}
			entries[e.Id()] = words
		}
		out[strings.TrimSuffix(c.File, ".ics")] = entries
	}
	return out, true
}

// TestPhones: how many entries subscribers see change is what two builds, each by itself and read
// back by another library, differ in.
func TestPhones(t *testing.T) {
	checked := 0
	for seed := range uint64(60) {
		p := randomplan.New(seed)
		was := p.Files(p.Today)
		q := p.Clone()
		what := q.Edit()
		is := q.Files(p.Today)
		a, ok := built(t, p, was)
		b, both := built(t, q, is)
		if !ok || !both {
			continue
		}
		r := between(t, was, is, p.Today)
		told := map[string][3]int{}
		for _, x := range r.Phones {
			if x.New || x.Old {
				t.Fatalf("seed %d: a calendar came or went by %q", seed, what)
			}
			told[x.Calendar] = [3]int{x.Changed, x.Added, x.Gone}
		}
		want := map[string][3]int{}
		for name, now := range b {
			var n [3]int
			for uid, text := range now {
				switch old, there := a[name][uid]; {
				case !there:
					n[1]++
				case old != text:
					n[0]++
				}
			}
			for uid := range a[name] {
				if _, there := now[uid]; !there {
					n[2]++
				}
			}
			if n != [3]int{} {
				want[name] = n
			}
		}
		if !maps.Equal(told, want) {
			t.Errorf("seed %d, %s: told %v, and two builds differ in %v", seed, what, told, want)
		}
		checked += len(want)
	}
	if checked < 15 {
		t.Errorf("only %d calendars differ in all", checked)
	}
}
