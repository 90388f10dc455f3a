package main

import (
	"bytes"
	"flag"
	"fmt"
	"maps"
	"slices"
	"strings"
	"testing"
	"time"

	"vivary/internal/feedoracle"
	"vivary/internal/randomplan"
	"vivary/schema/civil"
)

// Relations that hold for every plan, log and day, whatever is in them: between the
// feeds of a build, between two builds, and between feeds and what animals need.
// Feeds are read back by libraries that had no part in writing them.

var (
	plans = flag.Int("plans", 200, "how many random plans each relation is held against")
	seed  = flag.Int("seed", -1, "the one random plan that relations are held against; it is printed")
)

// year is for how many days feeds are read.
const year = 366

// relation says how a plan breaks it, or nil.
type relation func(testing.TB, *randomplan.Plan) error

// hold holds a relation against random plans, one in so many of them. What breaks is
// counted by its first words, and the first plan of each sort is told.
func hold(t *testing.T, every int, r relation) {
	t.Helper()
	if *seed >= 0 {
		p := randomplan.New(uint64(*seed))
		t.Logf("%s\n%s\ntoday is %s", p.Text(), p.LogUntil(p.Today+1000), p.Today)
		if err := r(t, p); err != nil {
			t.Error(err)
		}
		return
	}
	type broken struct {
		first error
		seeds []int
	}
	sorts := map[string]*broken{}
	begun := time.Now()
	n := max(1, *plans/every)
	for i := range n {
		err := r(t, randomplan.New(uint64(i)))
		if err == nil {
			continue
		}
		sort, _, _ := strings.Cut(err.Error(), ":")
		if sorts[sort] == nil {
			sorts[sort] = &broken{first: err}
		}
		sorts[sort].seeds = append(sorts[sort].seeds, i)
	}
	for _, sort := range slices.Sorted(maps.Keys(sorts)) {
		b := sorts[sort]
		t.Errorf("%d of %d plans, by -seed %v\n%v", len(b.seeds), n, b.seeds[:min(12, len(b.seeds))], b.first)
	}
	t.Logf("%d plans, %.1f ms each", n, float64(time.Since(begun).Microseconds())/1000/float64(n))
}

// known are the names of a plan's targets, as people see them.
func known(p *randomplan.Plan) feedoracle.Names {
	out := feedoracle.Names{}
	for _, b := range p.Boxes {
		out[b.Title()] = feedoracle.Target{Box: b.Name}
		for _, g := range b.Groups { // of one alone too: young may be born beside it
			out[b.Title()+" "+g.Name] = feedoracle.Target{Box: b.Name, Animals: animals(b, g.Name)}
		}
	}
	return out
}

// animals is how stops name a group: not at all where the plan has but one in its box.
func animals(b *randomplan.Box, name string) string {
	if len(b.Groups) == 1 && name == b.Groups[0].Name {
		return ""
	}
	return name
}

// read is what all feeds of a build show from one day until another, and their UIDs.
func (m *made) read(from, until civil.Date) (shown []feedoracle.Occurrence, uids []string, err error) {
	for _, name := range m.order {
		some, ids, err := feedoracle.Read(name, m.feeds[name], from, until)
		if err != nil {
			return nil, nil, err
		}
		shown, uids = append(shown, some...), append(uids, ids...)
	}
	return shown, uids, nil
}

// reach is the first day of which one of the feeds says nothing any more, as it says
// itself; until at the latest.
func (m *made) reach(from, until civil.Date) (civil.Date, error) {
	shown, _, err := m.read(from, until)
	if err != nil {
		return 0, err
	}
	for _, o := range shown {
		if strings.HasPrefix(o.Summary, "This calendar ends here") {
			until = min(until, o.Day)
		}
	}
	return until, nil
}

// TestPlansAreOfUse: of the random plans many compile and some do not; those that do
// have much of everything in them.
func TestPlansAreOfUse(t *testing.T) {
	sound, rules := 0, map[string]int{}
	for i := range *plans {
		m, err := builtOn(t, randomplan.New(uint64(i)), randomplan.New(uint64(i)).Today, nil)
		if err != nil {
			t.Fatalf("-seed %d: %v", i, err)
		}
		if !m.refused {
			sound++
			continue
		}
		seen := map[string]bool{}
		for _, f := range m.found {
			if f.refuses && !seen[f.rule] {
				seen[f.rule] = true
				rules[f.rule]++
			}
		}
	}
	t.Logf("%d of %d compile; the others are refused by %v", sound, *plans, rules)
	if sound*10 < *plans*4 || sound == *plans {
		t.Errorf("%d of %d plans compile: too few or too many to show anything", sound, *plans)
	}
}

// TestEntriesHaveTheirOwnNames: no two entries of a build have one UID, in whatever
// calendars they stand, and the next build takes what was published for its memory.
func TestEntriesHaveTheirOwnNames(t *testing.T) {
	hold(t, 1, func(t testing.TB, p *randomplan.Plan) error {
		m, err := builtOn(t, p, p.Today, nil)
		if err != nil || m.refused {
			return err
		}
		shown, uids, err := m.read(p.Today, p.Today+year)
		if err != nil {
			return err
		}
		slices.Sort(uids)
		for i := 1; i < len(uids); i++ {
			if uids[i] == uids[i-1] {
				return twice(uids[i], shown)
			}
		}
		_, err = builtOn(t, p, p.Today+1, m.feeds)
		return err
	})
}

// twice tells of a UID that two entries have.
func twice(uid string, shown []feedoracle.Occurrence) error {
	what, said := "of the calendar's own", map[string]bool{}
	for _, o := range shown {
		if o.UID != uid {
			continue
		}
		said[fmt.Sprintf("%s on %s", o.Summary, o.Day)] = true
		if o.At != "" {
			what = "of care"
		}
	}
	some := slices.Sorted(maps.Keys(said))
	return fmt.Errorf("two entries %s have one UID: %s", what, strings.Join(some[:min(4, len(some))], "; "))
}

// TestByCareIsByRound: calendars by care and calendars by round tell of the same care
// for the same enclosures on the same days.
func TestByCareIsByRound(t *testing.T) {
	hold(t, 1, func(t testing.TB, p *randomplan.Plan) error {
		names := known(p)
		until := p.Today + year
		show := func(care bool) (m *made, shown []feedoracle.Occurrence, err error) {
			q := p.Clone()
			q.PerCare(care)
			if m, err = builtOn(t, q, p.Today, nil); err == nil && !m.refused {
				until, err = m.reach(p.Today, until)
			}
			if err != nil || m.refused {
				return m, nil, err
			}
			shown, _, err = m.read(p.Today, until)
			return m, shown, err
		}
		m, byCare, err := show(true)
		if err != nil || m.refused {
			return err
		}
		m, byRound, err := show(false)
		if err != nil {
			return err
		}
		if m.refused {
			return fmt.Errorf("refused only by round: %v", m.found)
		}
		late := func(o feedoracle.Occurrence) bool { return o.Day >= until }
		byCare, byRound = slices.DeleteFunc(byCare, late), slices.DeleteFunc(byRound, late)
		words := feedoracle.Words{}
		words.Learn(names, byCare)
		want, err := names.Stops(byCare)
		if err != nil {
			return err
		}
		got, unread, err := names.Rounds(words, byRound, p.Selected())
		if err != nil {
			return err
		}
		for i := range want {
			want[i].Animals = ""
		}
		want = feedoracle.Once(want)
		leave := map[feedoracle.Stop]bool{}
		for _, u := range unread {
			leave[u] = true
		}
		counted := func(s feedoracle.Stop) bool { return leave[feedoracle.Stop{Day: s.Day, Kind: s.Kind}] }
		if d := feedoracle.Difference(slices.DeleteFunc(want, counted), slices.DeleteFunc(got, counted)); d != "" {
			return fmt.Errorf("by care (-) and by round (+) differ:\n%s", d)
		}
		return nil
	})
}

// TestListIsWhatIsShown: what the day's list has for a keeper is what a calendar of
// that keeper's own shows, on each of the coming days.
func TestListIsWhatIsShown(t *testing.T) {
	const days = 40
	hold(t, 1, func(t testing.TB, p *randomplan.Plan) error {
		own := p.OwnCalendars()
		m, err := builtOn(t, p, p.Today, nil)
		if err != nil || m.refused {
			return err
		}
		for _, keeper := range p.Keepers() {
			shown, _, err := feedoracle.Read(own[keeper], m.feeds[own[keeper]], p.Today, p.Today+days)
			if err != nil {
				return err
			}
			want, err := known(p).Stops(shown)
			if err != nil {
				return err
			}
			got, err := listed(t, p, keeper, days)
			if err != nil {
				return err
			}
			switch d := feedoracle.Difference(want, got); {
			case d == "":
			case len(want) > len(got):
				return fmt.Errorf("the list lacks (-) what the keeper's calendar shows: %s\n%s", keeper, d)
			default:
				return fmt.Errorf("the list has more (+) than the keeper's calendar shows: %s\n%s", keeper, d)
			}
		}
		return nil
	})
}

// TestSameInputSameBytes: a plan built twice gives the same bytes, and so it does once
// they are remembered.
func TestSameInputSameBytes(t *testing.T) {
	hold(t, 2, func(t testing.TB, p *randomplan.Plan) error {
		a, err := builtOn(t, p, p.Today, nil)
		if err != nil || a.refused {
			return err
		}
		b, err := builtOn(t, p, p.Today, nil)
		if err != nil {
			return err
		}
		c, err := builtOn(t, p, p.Today, a.feeds)
		if err != nil {
			return err
		}
		for name := range a.feeds {
			if !bytes.Equal(a.feeds[name], b.feeds[name]) {
				return fmt.Errorf("built twice, it differs: %s", name)
			}
			if !bytes.Equal(a.feeds[name], c.feeds[name]) {
				return fmt.Errorf("remembered, it differs: %s", name)
			}
		}
		return nil
	})
}

// TestReasonIsWhatIsShown: what is said of a care on a day, that it is done or that it is
// not, is what a calendar of everything shows on that day; and a planned day that is
// not done has a reason.
func TestReasonIsWhatIsShown(t *testing.T) {
	const days = 100
	hold(t, 4, func(t testing.TB, p *randomplan.Plan) error {
		feed, done, err := reasons(t, p, p.Today+days)
		if err != nil || feed == nil {
			return err
		}
		occurrences, _, err := feedoracle.Read("all-by-care", feed, p.Today, p.Today+days)
		if err != nil {
			return err
		}
		var shown []string
		for _, o := range occurrences {
			if o.Kind == "" {
				continue // a band, or an absence
			}
			target := o.Summary[strings.LastIndex(o.Summary, ": ")+2:]
			shown = append(shown, fmt.Sprintf("%s %s %s %s", o.Day, o.At, o.Kind, target))
		}
		slices.Sort(shown)
		if shown = slices.Compact(shown); !slices.Equal(shown, done) {
			return fmt.Errorf("the feed and the reasons differ: %s", firstDifference(shown, done))
		}
		return nil
	})
}

// firstDifference is the first line that one of two sorted lists lacks.
func firstDifference(shown, said []string) string {
	for i := range max(len(shown), len(said)) {
		switch {
		case i >= len(said) || i < len(shown) && shown[i] < said[i]:
			return "only shown: " + shown[i]
		case i >= len(shown) || said[i] < shown[i]:
			return "only said: " + said[i]
		}
	}
	return ""
}
