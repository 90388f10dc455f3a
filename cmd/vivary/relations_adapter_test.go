package main

import (
	"encoding/json"
	"fmt"
	"slices"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/spf13/afero"

	"vivary/compile"
	"vivary/compile/explain"
	"vivary/compile/feeds"
	"vivary/compile/ical"
	"vivary/compile/rounds"
	"vivary/internal/feedoracle"
	"vivary/internal/randomplan"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/wording"
)

// What the relations between plans and feeds ask of the program stands in this file
// and nowhere else: text goes in, bytes and findings come out.

// made is what a build made of a collection.
type made struct {
	refused bool
	found   []told
	feeds   map[string][]byte
	order   []string // the names of the feeds
}

// told is a finding, with the enclosures that it is about.
type told struct {
	rule, text string
	refuses    bool
	boxes      []string
}

// reports reports whether a finding of one of some rules is about an enclosure.
func (m *made) reports(box string, rules ...string) bool {
	for _, f := range m.found {
		for _, r := range rules {
			if f.rule == r && has(f.boxes, box) {
				return true
			}
		}
	}
	return false
}

func has(list []string, one string) bool {
	for _, x := range list {
		if x == one {
			return true
		}
	}
	return false
}

// disk is a disk with the files of a plan in the folder c.
func disk(t testing.TB, files map[string]string) afero.Fs {
	t.Helper()
	d := afero.NewMemMapFs()
	for name, text := range files {
		if err := afero.WriteFile(d, "c/"+name, []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	return d
}

// noonOf is the moment as of which plans are built on a day.
func noonOf(p *randomplan.Plan, on civil.Date) time.Time {
	loc, err := time.LoadLocation(p.Zone)
	if err != nil {
		panic(err)
	}
	return on.At(12*60, loc)
}

// builtOn builds a plan as of noon of a day, with the log that was written by then and
// the feeds that were published before, by name. A plan that is
// refused has none.
func builtOn(t testing.TB, p *randomplan.Plan, on civil.Date, before map[string][]byte) (*made, error) {
	t.Helper()
	c, found, err := plan.Load(disk(t, p.Files(on)), "c")
	if err != nil {
		t.Fatal(err)
	}
	var heads [][]byte
	for _, text := range before {
		heads = append(heads, text)
	}
	r := compile.From(compile.Input{Plan: c, Loaded: found, Now: noonOf(p, on), Told: feeds.ToldBy(nameOf(c), feeds.ReadHeads(heads))})
	m := &made{refused: r.Refused(), feeds: map[string][]byte{}}
	for i := range r.Findings {
		m.found = append(m.found, tell(c, &r.Findings[i]))
	}
	if m.refused {
		return m, nil
	}
	for _, f := range feeds.Of(r) {
		var last *ical.Memory
		if b := before[f.Name]; b != nil {
			if last, err = ical.Remember(b); err != nil {
				return m, fmt.Errorf("the last feed is refused: %s: %w", f.Name, err)
			}
		}
		text, err := f.Bytes(last)
		if err != nil {
			return m, fmt.Errorf("feed %s: %w", f.Name, err)
		}
		m.feeds[f.Name] = text
		m.order = append(m.order, f.Name)
	}
	return m, nil
}

func nameOf(c *plan.Collection) string {
	if c.About == nil {
		return ""
	}
	return c.About.Name.V
}

// reasons builds a plan with one more calendar, of everything by care, and returns what
// that shows, and what is said of each care on each day from today until another: the
// stops of those of which it is said that they are done.
func reasons(t testing.TB, p *randomplan.Plan, until civil.Date) (shown []byte, done []string, err error) {
	t.Helper()
	files := p.Files(p.Today)
	files["all-by-care.care.hcl"] = "calendar \"all-by-care\" {\n  entry = \"per care\"\n}\n"
	c, found, err := plan.Load(disk(t, files), "c")
	if err != nil {
		t.Fatal(err)
	}
	r := compile.Compile(c, found, noonOf(p, p.Today))
	if r.Refused() {
		return nil, nil, nil
	}
	for e := range r.Roster.All() {
		word := e.Plan().Name.V + "/" + e.Name
		for d := r.Today; d < until; d++ {
			for _, a := range explain.On(r, word, d) {
				if !strings.HasSuffix(a.Title, " at "+wording.Clock(e.At(), r.Plan.Units)) {
					continue
				}
				_, said, _ := strings.Cut(a.Parts[0].Lines[0].Text, ": ")
				switch {
				case strings.HasPrefix(said, "yes: "):
					done = append(done, fmt.Sprintf("%s %s %s %s", d, e.At(), e.Kind.Name, rounds.Target(e)))
				case !strings.HasPrefix(said, "no: "):
					return nil, nil, fmt.Errorf("said of %s: %s", a.Title, said)
				case len(e.Rules) > 0 && e.Planned(d) && e.Reason(int(d-r.Horizon.From)) == nil:
					return nil, nil, fmt.Errorf("no reason is known: %s on %s", word, d)
				}
			}
		}
	}
	slices.Sort(done)
	for _, f := range feeds.Of(r) {
		if f.Name == "all-by-care" {
			shown, err = f.Bytes(nil)
		}
	}
	return shown, slices.Compact(done), err
}

func tell(c *plan.Collection, f *finding.Finding) told {
	out := told{rule: f.Rule.ID, text: f.Text, refuses: f.Severity.Refuses()}
	within := func(p, whole source.Place) bool {
		return p.File == whole.File && whole.Start <= p.Start && p.End <= whole.End
	}
	for _, e := range c.Enclosures {
		about := within(f.At, e.Whole) || f.In == e.Box() || named(f.Text, e.Name.V) || named(f.Text, e.Shown())
		for _, a := range f.Also {
			about = about || within(a.At, e.Whole) || named(a.Text, e.Name.V) || named(a.Text, e.Shown())
		}
		if about {
			out.boxes = append(out.boxes, e.Name.V)
		}
	}
	return out
}

// named reports whether a text names something.
func named(text, name string) bool {
	for _, w := range strings.FieldsFunc(text, func(r rune) bool { return strings.ContainsRune(" ,:;.()\"", r) }) {
		if w == name {
			return true
		}
	}
	return strings.Contains(name, " ") && strings.Contains(text+" ", name+" ")
}

// byNeed are the rules that say that a need is not met in time.
var byNeed = map[string][]string{
	"look": {"lid-unchecked"}, "water": {"water-gap"}, "moisture": {"moisture-gap"}, "food": {"food-gap"}, "leftovers": {"leftovers-late"},
	"heat": {"heat-unchecked"}, "cleaning": {"cleaning-gap"}, "device-test": {"device-untested"},
}

// bears is how long a stage of a species goes without something, in days.
type bears struct{ longest, unattended int }

var sheets sync.Map // of bears by need, by species and stage

// needsOf returns how long a stage of a species goes without each of its needs.
func needsOf(t testing.TB, p *randomplan.Plan, species, stage string) map[string]bears {
	if known, ok := sheets.Load(species + " " + stage); ok {
		return known.(map[string]bears)
	}
	c, _, err := plan.Load(disk(t, p.Files(p.Today)), "c")
	if err != nil {
		t.Fatal(err)
	}
	sheet := c.Library.Species(species)
	left := 0
	if f := sheet.Figure(schema.FigureUnattended, stage); f != nil {
		left = int(f.Range.High / (24 * 60))
	}
	out := map[string]bears{}
	for _, n := range sheet.NeedsOf(stage) {
		days := max(1, int(n.Longest.V.Value/(24*60)))
		out[n.Name.V] = bears{days, max(days, left)}
	}
	sheets.Store(species+" "+stage, out)
	return out
}

// listed is what the day's list has for a keeper on the coming days.
func listed(t testing.TB, p *randomplan.Plan, keeper string, days int) ([]feedoracle.Stop, error) {
	t.Helper()
	status, out, errs := at(disk(t, p.Files(p.Today)), noonOf(p, p.Today), "due", "c", "--keeper", keeper, "--days", fmt.Sprint(days), "--format", "json")
	if status != fine {
		return nil, fmt.Errorf("the list for %s: status %d, %s", keeper, status, errs)
	}
	var list struct {
		Days []struct {
			Date   string
			Rounds []struct {
				Lines []struct {
					Kind       string
					Enclosures []struct{ Enclosure, Animals string }
				}
			}
		}
	}
	if err := json.Unmarshal([]byte(out), &list); err != nil {
		return nil, err
	}
	var all []feedoracle.Stop
	for _, d := range list.Days {
		day, err := civil.Parse(d.Date)
		if err != nil {
			return nil, err
		}
		for _, r := range d.Rounds {
			for _, l := range r.Lines {
				for _, e := range l.Enclosures {
					to := feedoracle.Target{Box: e.Enclosure, Animals: animals(p.Box(e.Enclosure), e.Animals)}
					all = append(all, feedoracle.Stop{Day: day, Target: to, Kind: l.Kind})
				}
			}
		}
	}
	return feedoracle.Once(all), nil
}
