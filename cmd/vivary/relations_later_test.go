package main

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"vivary/compile"
	"vivary/compile/feeds"
	"vivary/internal/feedoracle"
	"vivary/internal/house"
	"vivary/internal/randomplan"
	"vivary/plan"
	"vivary/schema/civil"
)

// What a calendar shows that nobody builds again.

// TestLeftAloneItFeedsNobodyThroughARest: calendars by care that nobody has built for two
// and for three years show no meal, and nothing else, that the same plan built anew then
// would not have on that day. Those of everybody's and those of each keeper's own.
func TestLeftAloneItFeedsNobodyThroughARest(t *testing.T) {
	seen, meals := 0, 0
	hold(t, 2, func(t testing.TB, p *randomplan.Plan) error {
		p.PerCare(true)
		p.OwnCalendars()
		m, err := builtOn(t, p, p.Today, nil)
		if err != nil || m.refused {
			return err
		}
		for _, years := range []civil.Date{2, 3} {
			on := p.Today + 365*years
			now, err := builtOn(t, p, on, nil)
			if err != nil {
				return err
			}
			if now.refused {
				continue // what the plan says of that year is no good
			}
			for _, name := range m.order {
				want := map[string]bool{}
				key := func(o *feedoracle.Occurrence) string { return fmt.Sprint(o.Day, o.At, o.Summary) }
				fresh, _, err := feedoracle.Read(name, now.feeds[name], on, on+year)
				if err != nil {
					return err
				}
				for i := range fresh {
					want[key(&fresh[i])] = true
				}
				left, _, err := feedoracle.Read(name, m.feeds[name], on, on+year)
				if err != nil {
					return err
				}
				until, err := now.reach(on, on+year)
				if err != nil {
					return err
				}
				for i := range left {
					if o := &left[i]; o.Kind != "" && o.Day < until {
						seen++
						if o.Kind == "feed" {
							meals++
						}
						if !want[key(o)] {
							return fmt.Errorf("left alone for %d years, %s shows what is not to be done: %s on %s", years, name, o.Summary, o.Day)
						}
					}
				}
			}
		}
		return nil
	})
	t.Logf("%d entries after years, %d of them meals", seen, meals)
}

// TestItSaysWhereItEnds: each calendar by care that does not go on for ever says where it
// ends: after its end entry nothing is shown but what that entry names.
func TestItSaysWhereItEnds(t *testing.T) {
	hold(t, 4, func(t testing.TB, p *randomplan.Plan) error {
		p.PerCare(true)
		own := p.OwnCalendars()
		m, err := builtOn(t, p, p.Today, nil)
		if err != nil || m.refused {
			return err
		}
		for _, name := range m.order {
			shown, _, err := feedoracle.Read(name, m.feeds[name], p.Today, p.Today+3*year)
			if err != nil {
				return err
			}
			var end *feedoracle.Occurrence
			last, care := civil.Date(0), 0
			for i := range shown {
				switch o := &shown[i]; {
				case strings.HasPrefix(o.Summary, "This calendar ends here"):
					end = o
				case o.Kind != "":
					last = max(last, o.Day)
					care++
				}
			}
			if end == nil {
				if _, keepers := own[strings.TrimPrefix(name, "own-")]; keepers || care == 0 || last > p.Today+2*year {
					continue // of somebody who only stands in, or all of it goes on
				}
				return fmt.Errorf("a calendar ends without a word: %s on %s", name, last)
			}
			for _, o := range shown {
				if o.Kind != "" && o.Day >= end.Day && !strings.Contains(end.Description, o.Summary) && !strings.Contains(end.Description, " more") {
					return fmt.Errorf("a calendar says that it ends, and shows more: %s shows %s on %s", name, o.Summary, o.Day)
				}
			}
		}
		return nil
	})
}

// housed builds the calendars of a house of sixty boxes on a day of its year, with one by
// care for each of two keepers.
func housed(t *testing.T, days int) (*house.World, *made) {
	t.Helper()
	w := house.New(3)
	w.Pass(days)
	files := w.Files(w.Today)
	for _, k := range []string{"lead", "relief"} {
		files["own-"+k+".care.hcl"] = fmt.Sprintf("calendar \"own-%s\" {\n  keepers = [%q]\n  entry   = \"per care\"\n}\n", k, k)
	}
	c, found, err := plan.Load(disk(t, files), "c")
	if err != nil {
		t.Fatal(err)
	}
	r := compile.Compile(c, found, w.Today.At(12*60, c.Location))
	if r.Refused() {
		t.Fatal("the house is refused")
	}
	m := &made{feeds: map[string][]byte{}}
	for _, f := range feeds.Of(r) {
		if m.feeds[f.Name], err = f.Bytes(nil); err != nil {
			t.Fatal(err)
		}
		m.order = append(m.order, f.Name)
	}
	return w, m
}

// TestNobodyFeedsThroughARest: a house with cool rests, whose calendars nobody has built
// for two years, shows no meal in a winter to come; in this one none of those that rest.
func TestNobodyFeedsThroughARest(t *testing.T) {
	w, m := housed(t, 0)
	for _, name := range []string{"care", "own-lead", "own-relief"} {
		shown, _, err := feedoracle.Read(name, m.feeds[name], w.Today, w.Today+3*year)
		if err != nil {
			t.Fatal(err)
		}
		ends := civil.Date(0)
		for _, o := range shown {
			if strings.HasPrefix(o.Summary, "This calendar ends here") {
				ends = o.Day
			}
		}
		meals := 0
		for _, o := range shown {
			_, month, _ := o.Day.YMD()
			for _, b := range w.Boxes {
				if rests := b.Rests && (month == 12 || month == 1); rests && o.Kind == "feed" && strings.HasSuffix(o.Summary, ": "+b.Title) {
					t.Errorf("%s: %s on %s", name, o.Summary, o.Day)
				}
			}
			if meals++; o.Kind != "" && ends > 0 && o.Day >= ends {
				t.Errorf("%s goes on after its end: %s on %s", name, o.Summary, o.Day)
				break
			}
		}
		if ends == 0 || meals < 1000 {
			t.Errorf("%s: it ends on %s, and shows %d entries", name, ends, meals)
		}
	}
}

// TestHoldsAreSaidByCare: on each day, a calendar by care says of enclosures what a
// calendar by round says first of them.
func TestHoldsAreSaidByCare(t *testing.T) {
	for _, days := range []int{0, 100, 250} {
		w, m := housed(t, days)
		read := func(name string) []feedoracle.Occurrence {
			shown, _, err := feedoracle.Read(name, m.feeds[name], w.Today, w.Today+feeds.Least)
			if err != nil {
				t.Fatal(err)
			}
			return shown
		}
		said := map[string]bool{}
		for _, o := range read("care") {
			if _, text, ok := strings.Cut(o.Summary, ": "); ok && o.At == "" {
				said[fmt.Sprint(o.Day, " ", text)] = true
			}
		}
		some := 0
		for _, o := range read("rounds") {
			head, _, _ := strings.Cut(o.Description, "\n\n")
			for _, line := range strings.Split(head, "\n") {
				_, text, ok := strings.Cut(line, ": ")
				if !ok || !slices.ContainsFunc(holdWords, func(word string) bool { return strings.Contains(text, word) }) || strings.HasPrefix(line, "- ") || strings.HasPrefix(line, "FIRST") {
					continue
				}
				if some++; !said[fmt.Sprint(o.Day, " ", text)] {
					t.Fatalf("on %s a calendar by care does not say: %s", o.Day, line)
				}
			}
		}
		if some < 300 {
			t.Errorf("after %d days only %d lines", days, some)
		}
	}
}

// holdWords are words that only the lines of states have in a round.
var holdWords = []string{"lift nothing", "no food", "do not dig", "no live prey", "no misting", "heating off"}
