package history_test

import (
	"fmt"
	"os"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/spf13/afero"

	"vivary/cmd/internal/compared"
	"vivary/cmd/internal/history"
	"vivary/compile"
	"vivary/compile/compare"
	"vivary/compile/past"
	"vivary/internal/generated"
	"vivary/internal/randomplan"
	"vivary/plan"
	"vivary/schema/civil"
)

// disk is a collection of files, by name.
func disk(t testing.TB, files map[string]string) afero.Fs {
	t.Helper()
	out := afero.NewMemMapFs()
	for name, text := range files {
		if err := afero.WriteFile(out, name, []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	return out
}

// on is noon of a day.
func on(day civil.Date) func(*time.Location) (time.Time, error) {
	return func(loc *time.Location) (time.Time, error) {
		if loc == nil {
			loc = time.UTC
		}
		return day.At(12*60, loc), nil
	}
}

// rev is a revision of a day.
func rev(t testing.TB, day civil.Date, files map[string]string) history.Revision {
	d := disk(t, files)
	return history.Revision{Revision: past.Revision{ID: day.String(), Short: day.String(), Author: "somebody", Subject: "of " + day.String(), When: day.At(12*60, time.UTC)},
		Disk: func() (afero.Fs, error) { return d, nil }}
}

func told(t testing.TB, name string, now civil.Date, all ...history.Revision) *past.Story {
	t.Helper()
	s, err := history.Of(all, history.Asked{Name: name, Now: on(now), Begins: true})
	if err != nil {
		t.Fatalf("%s: %v", name, err)
	}
	return s
}

// effects are those of a report for one enclosure, whatever it is called. What a finding says once
// for several enclosures is left out: a comparison of all says it of the first, which another can
// be in the history of one.
func effects(r *compare.Report, names ...string) (out []string) {
	for i := range r.Effects {
		e := &r.Effects[i]
		if e.Found != nil && e.Found.Once != "" || !slices.ContainsFunc(e.Of, func(s string) bool { return slices.Contains(names, s) }) {
			continue
		}
		text := fmt.Sprintf("%s %s: %s → %s (%s) %s", e.Way, e.Name, e.Was, e.Is, e.Limit, e.Under)
		for _, of := range e.Of {
			text = strings.ReplaceAll(text, of, "it")
		}
		out = append(out, text)
	}
	slices.Sort(out)
	return out
}

// TestAsCompared: what a step means for an enclosure is what a comparison of all says of it,
// though most of the collection is not compiled, and a step of which the history is silent
// changes nothing for it.
func TestAsCompared(t *testing.T) {
	steps, silent := 0, 0
	for seed := range uint64(60) {
		p := randomplan.New(seed)
		q := p.Clone()
		var did []string
		for range 1 + int(seed%3) {
			did = append(did, q.Edit())
		}
		// The same houses written out, in racks and by templates.
		form := [](func(*randomplan.Plan) *randomplan.Plan){(*randomplan.Plan).Clone, (*randomplan.Plan).Racked, (*randomplan.Plan).Templated}[seed/3%3]
		was, is := form(p).Files(p.Today), form(q).Files(p.Today)
		whole, err := compared.Of(compared.Side{Disk: disk(t, was)}, compared.Side{Disk: disk(t, is)}, on(p.Today))
		if err != nil || whole.Unread != nil {
			t.Fatal(err)
		}
		for _, r := range []*compile.Result{whole.Is, whole.Was} {
			for _, l := range r.Lives {
				name := l.Plan.Name.V
				s := told(t, name, p.Today, rev(t, p.Today, is), rev(t, p.Today-1, was))
				var got []string
				for i := range s.Steps {
					if s.Steps[i].Report != nil {
						steps++
						got = effects(s.Steps[i].Report, name, s.Name)
					}
				}
				if len(s.Steps) < 2 {
					silent++
				}
				if want := effects(whole, name, s.Name); !slices.Equal(got, want) {
					t.Errorf("seed %d, %s, %s:\n%s\nand compared:\n%s", seed, did, name, strings.Join(got, "\n"), strings.Join(want, "\n"))
				}
			}
		}
	}
	if steps < 60 || silent < 60 {
		t.Errorf("only %d steps, %d silences", steps, silent)
	}
}

// TestYearIsThatOfThePlans: on each day of the year a care stands as the plan had it that was in
// force then, compiled whole as of its own day.
func TestYearIsThatOfThePlans(t *testing.T) {
	days := 0
	for seed := range uint64(30) {
		p := randomplan.New(seed)
		q := p.Clone()
		for range 3 {
			q.Edit()
		}
		then := p.Today - 40
		was, is := p.Files(then), q.Files(p.Today)
		for _, x := range load(t, is, p.Today).Lives {
			name := x.Plan.Name.V
			s := told(t, name, p.Today+30, rev(t, p.Today, is), rev(t, then, was))
			for _, part := range []struct {
				files           map[string]string
				day, from, till civil.Date
			}{{was, then, then, p.Today}, {is, p.Today, p.Today, p.Today + 31}} {
				r := load(t, part.files, part.day)
				for i, l := range r.Lives {
					if l.Plan.Name.V != name || len(s.Steps) < 2 {
						continue
					}
					stood := map[string]bool{}
					for k := range r.Roster.Of[i] {
						if e := &r.Roster.Of[i][k]; e.Once == nil && e.Ask == nil && (e.Meal == nil || e.Feeds()) {
							for d := part.from; d < part.till; d++ {
								if e.Days.Has(int(d - r.Horizon.From)) {
									stood[e.ID.Care+" "+d.String()] = true
								}
							}
						}
					}
					for _, row := range s.Year.Rows {
						for d := part.from; d < part.till; d++ {
							if got := row.Stood[d-s.Year.From]; got != stood[row.Care+" "+d.String()] {
								t.Errorf("seed %d, %s, %s on %s: %v", seed, name, row.Care, d, got)
							}
							days++
						}
					}
				}
			}
		}
	}
	if days < 1000 {
		t.Errorf("only %d days", days)
	}
}

func load(t *testing.T, files map[string]string, day civil.Date) *compile.Result {
	t.Helper()
	c, found, err := plan.Load(disk(t, files), ".")
	if err != nil {
		t.Fatal(err)
	}
	now, _ := on(day)(c.Location)
	return compile.Compile(c, found, now)
}

// TestPutIntoAnother: animals that stand in another block since are not missing, though that block
// has else nothing to do with the enclosure.
func TestPutIntoAnother(t *testing.T) {
	day := civil.Must(2026, 11, 30)
	with := func(first, second string) map[string]string {
		out := map[string]string{}
		for name, text := range generated.Collection(2, "Europe/London") {
			if at := strings.Index(text, `enclosure "tub-1"`); at >= 0 {
				text = strings.Replace(text[:at], "0.1.0", first, 1) + strings.Replace(text[at:], "0.1.0", second, 1)
			}
			out[name] = text
		}
		return out
	}
	for is, missing := range map[string]bool{"0.2.0": false, "0.1.0": true} {
		s := told(t, "tub-1", day, rev(t, day, with(is, "0.1.0")), rev(t, day-1, with("0.1.0", "0.2.0")))
		said := slices.ContainsFunc(s.Steps[0].Report.Effects, func(e compare.Effect) bool { return e.Found != nil && e.Found.Rule == compile.Missing })
		if said != missing {
			t.Errorf("%s in the other: missing is %v", is, said)
		}
	}
}

// TestTorn: a revision that cannot be understood is told, and what came after it is set beside the
// last one that could be.
func TestTorn(t *testing.T) {
	day := civil.Must(2026, 11, 30)
	sound := generated.Collection(2, "Europe/London")
	torn, after := map[string]string{}, map[string]string{}
	for name, text := range sound {
		torn[name] = strings.Replace(text, `enclosure "tub-1" {`, `enclosure "tub-1" {{`, 1)
		after[name] = strings.Replace(text, `amount = "`, `amount = "1`, 9)
	}
	s := told(t, "tub-1", day, rev(t, day, after), rev(t, day-1, torn), rev(t, day-2, sound))
	if len(s.Steps) != 3 || s.Steps[0].Report == nil || len(s.Steps[0].Report.Effects) == 0 || !strings.Contains(s.Steps[1].Torn, "care.hcl:") || s.Steps[2].Begins == "" {
		t.Errorf("%+v", s.Steps)
	}
	s = told(t, "tub-1", day, rev(t, day-1, torn), rev(t, day-2, sound))
	if len(s.Steps) != 2 || s.Steps[0].Torn == "" {
		t.Errorf("%+v", s.Steps)
	}
}

// TestNumbered: of a block with numbers what is about some of them is told of these.
func TestNumbered(t *testing.T) {
	text, err := os.ReadFile("../../../examples/ordinary/forty-tubs-in-one-block/plan.care.hcl")
	if err != nil {
		t.Fatal(err)
	}
	day := civil.Must(2026, 11, 30)
	is := strings.Replace(strings.Replace(string(text), `34 to 41"`, `34 to 42"`, 1), "lost a leg", "lost two legs", 1)
	revs := []history.Revision{rev(t, day, map[string]string{"plan.care.hcl": is}), rev(t, day-1, map[string]string{"plan.care.hcl": string(text)})}
	for name, want := range map[string][]string{"tub-12": {"In the plan", "begins"}, "tub-13": {"begins"}, "tub-42": {"new"}} {
		var got []string
		for _, s := range told(t, name, day, revs...).Steps {
			switch {
			case s.Begins != "":
				got = append(got, "begins")
			case len(s.Report.Effects) > 0:
				got = append(got, s.Report.Effects[0].Name)
			case len(s.Own) == 1:
				got = append(got, "In the plan")
			}
		}
		if !slices.Equal(got, want) {
			t.Errorf("%s: %q, not %q", name, got, want)
		}
	}
	_, err = history.Of(revs, history.Asked{Name: "tub", Now: on(day)})
	if err == nil || !strings.Contains(err.Error(), "did you mean tub-1 or another") {
		t.Error(err)
	}
}
