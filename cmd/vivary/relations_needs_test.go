package main

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"vivary/internal/feedoracle"
	"vivary/internal/randomplan"
	"vivary/schema/civil"
)

// meets are the kinds of care by which a need is met.
var meets = map[string][]string{
	"look": {"look"}, "water": {"water"}, "moisture": {"mist", "moisten"}, "food": {"feed", "leaves"},
	"heat": {"heat"}, "cleaning": {"spot-clean"}, "device-test": {"device-test"},
}

// TestNoGapThatIsNotReported: read from the feeds alone, no animal goes without
// anything that its sheet says it needs for longer than the sheet says it may, unless
// the build said so.
func TestNoGapThatIsNotReported(t *testing.T) {
	hold(t, 1, func(t testing.TB, p *randomplan.Plan) error {
		gaps, _, err := unreported(t, p, 0)
		if err != nil || len(gaps) == 0 {
			return err
		}
		sort := "a gap"
		switch {
		case gaps[0].Days() >= year:
			sort = "what nobody is ever shown"
		case p.Absent(gaps[0].From, gaps[0].To):
			sort = "a gap while somebody is away"
		}
		return fmt.Errorf("%s, and the build says nothing of it:\n%s", sort, list(gaps))
	})
}

// TestOracleOfGapsCanFail: with limits a day lower the feeds of most plans have gaps,
// or the oracle would show nothing by finding none.
func TestOracleOfGapsCanFail(t *testing.T) {
	judged, caught := 0, 0
	for i := range max(20, *plans/4) {
		p := randomplan.New(uint64(i))
		gaps, ok, err := unreported(t, p, 1)
		if err != nil {
			t.Fatalf("-seed %d: %v", i, err)
		}
		if ok {
			judged++
		}
		if len(gaps) > 0 {
			caught++
		}
	}
	t.Logf("%d of %d plans have gaps with limits a day lower", caught, judged)
	if judged < 8 || caught*10 < judged*7 {
		t.Errorf("of %d plans with limits a day lower, only %d have gaps", judged, caught)
	}
}

// gap is a time without something that is longer than an enclosure, or a group in it,
// bears.
type gap struct {
	feedoracle.Gap
	need  string
	to    feedoracle.Target
	bears int
}

func list(gaps []gap) string {
	var out []string
	for _, g := range gaps[:min(len(gaps), 6)] {
		out = append(out, strings.Join(strings.Fields(fmt.Sprintf("%s %s: %d days without %s, from %s to %s; %d at the most", g.to.Box, g.to.Animals, g.Days(), g.need, g.From, g.To, g.bears)), " "))
	}
	return strings.Join(out, "\n")
}

// unreported returns the gaps of a plan in all its calendars together, each limit
// being lower by some days where it is longer than that, which the build did not
// report; ok says that there was a build.
func unreported(t testing.TB, p *randomplan.Plan, lower int) (out []gap, ok bool, err error) {
	p.PerCare(true)
	m, err := builtOn(t, p, p.Today, nil)
	if err != nil || m.refused {
		return nil, false, err
	}
	until, err := m.reach(p.Today, p.Today+year)
	if err != nil {
		return nil, true, err
	}
	shown, _, err := m.read(p.Today, until)
	if err != nil {
		return nil, true, err
	}
	stops, err := known(p).Stops(shown)
	if err != nil {
		return nil, true, err
	}
	for _, b := range p.Boxes {
		o := watch{p: p, box: b, stops: stops, lower: lower, until: until}
		for _, g := range o.gaps(t) {
			if !m.reports(b.Name, byNeed[g.need]...) {
				out = append(out, g)
			}
		}
	}
	return out, true, nil
}

// watch looks at one enclosure.
type watch struct {
	p     *randomplan.Plan
	box   *randomplan.Box
	stops []feedoracle.Stop
	lower int
	until civil.Date
}

func (w *watch) gaps(t testing.TB) (out []gap) {
	done := map[civil.Date]bool{} // days on which anybody does anything there
	for _, s := range w.stops {
		done[s.Day] = done[s.Day] || s.Box == w.box.Name
	}
	for need, kinds := range meets {
		for _, of := range w.who(need) {
			b, has := w.limit(t, need, of)
			if !has || w.excused(need, of) {
				continue
			}
			to := feedoracle.Target{Box: w.box.Name}
			if len(of) == 1 && len(w.box.Groups) > 1 {
				to.Animals = of[0].Name
			}
			for _, g := range feedoracle.Gaps(w.days(kinds, to), w.p.Today, w.until) {
				most := b.longest
				if w.p.Absent(g.From, g.To) && g.Empty(done) {
					most = b.unattended
				}
				if most > w.lower {
					most -= w.lower
				}
				if g.Days() > most {
					out = append(out, gap{g, need, to, most})
				}
			}
		}
	}
	slices.SortFunc(out, func(a, b gap) int { return strings.Compare(a.need+a.to.Animals, b.need+b.to.Animals) })
	return out
}

// who are the groups that have a need together: food is each group's own, the rest
// serves all that live in the box.
func (w *watch) who(need string) [][]*randomplan.Group {
	if need != "food" {
		return [][]*randomplan.Group{w.box.Groups}
	}
	var out [][]*randomplan.Group
	for _, g := range w.box.Groups {
		out = append(out, []*randomplan.Group{g})
	}
	return out
}

// days are the days on which something of some kinds is done for a target.
func (w *watch) days(kinds []string, to feedoracle.Target) (out []civil.Date) {
	for _, s := range w.stops {
		if s.Box == to.Box && slices.Contains(kinds, s.Kind) && (to.Animals == "" || s.Animals == "" || s.Animals == to.Animals) {
			out = append(out, s.Day)
		}
	}
	return out
}

// limit is the longest that could hold: of all groups, as they are and as they may
// have become by a moult.
func (w *watch) limit(t testing.TB, need string, of []*randomplan.Group) (most bears, has bool) {
	for _, g := range of {
		for _, stage := range w.stages(g) {
			b, ok := needsOf(t, w.p, w.box.Species, stage)[need]
			if !ok {
				return most, false
			}
			has = true
			most.longest, most.unattended = max(most.longest, b.longest), max(most.unattended, b.unattended)
		}
	}
	if need == "food" {
		most.unattended = most.longest
	}
	return most, has
}

func (w *watch) stages(g *randomplan.Group) []string {
	all := []string{"newborn", "young", "juvenile", "subadult", "adult"}
	if !w.said("moult") {
		return []string{g.Stage}
	}
	return all[slices.Index(all, g.Stage):]
}

// said reports whether the log has one of some words about the enclosure.
func (w *watch) said(words ...string) bool {
	return slices.ContainsFunc(w.p.Of(w.box.Name, w.p.Today), func(l randomplan.Line) bool { return slices.Contains(words, l.Word) })
}

// excused reports whether something keeps a need from being met, or may: what was
// seen may hold meals and misting for months, a season takes out meals and heating,
// and the dead need nothing.
func (w *watch) excused(need string, of []*randomplan.Group) bool {
	if w.said("died", "moved") || need == "device-test" && !w.box.Heated {
		return true
	}
	switch need {
	case "food":
		return w.box.Seasonal() || w.said("moult", "premoult", "hanging", "refused", "mated", "born", "first_moult", "separated", "arrived", "fed")
	case "device-test":
		return w.box.Seasonal() || w.said("moult", "premoult", "hanging", "mated", "born")
	case "moisture":
		return w.said("moult", "premoult", "hanging", "mated", "born", "first_moult")
	}
	return false
}
