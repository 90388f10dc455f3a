package life_test

import (
	"fmt"
	"maps"
	"math/rand"
	"reflect"
	"slices"
	"sort"
	"strings"
	"testing"

	"vivary/compile/horizon"
	"vivary/compile/life"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/civil"
)

func random(t testing.TB) *plan.Collection {
	figures := []string{"gestation=20 to 60 days", "on-mother=7 to 14 days", "separation=separate", "dispersal=3 to 9 days", "undisturbed=30 days",
		"wait-after-moult=7 days", "handling-wait=14 days", "refusals-to-pause=2", "refusal-pause=20 days", "fast-alarm=60 days", "moults-as-adult=true", "instar-length@4=90 to 240 days"}
	text := sheet(strings.Replace(mother, "stage", "state = \"gravid\"\n    stage", 1)+"  animals \"young\" {\n    count = 4\n    instar = 3\n    state = \"with brood\"\n    hidden = 1\n  }\n"+
		"  season \"rest\" {\n    from = \"1 nov\"\n    to = \"28 feb\"\n    feeding = \"none\"\n    misting = \"half\"\n  }\n", figures...)
	other := strings.Replace(text[strings.Index(text, "enclosure"):], `"box"`, `"other"`, 1)
	return load(t, text+other, "")
}

// scribble is a log as nobody would write it: any word on any day, about anything.
func scribble(r *rand.Rand, n int, from civil.Date, days int) []plan.Event {
	tails := map[schema.After][]string{
		schema.AfterNothing:   {"", "\"a note\""},
		schema.AfterNumber:    {"", "0", "1", "3", "40", "3 \"a note\""},
		schema.AfterPrey:      {"", "2", "2 crickets", "3 of nothing known"},
		schema.AfterWeight:    {"", "24 g", "heavy"},
		schema.AfterDays:      {"", "10 days", "\"a note\""},
		schema.AfterMeasure:   {"29 C", "29 C 70 %"},
		schema.AfterTest:      {"g NaCl 22 C 71 %", "22 C shows 23 C"},
		schema.AfterText:      {"", "restless", "\"a note\""},
		schema.AfterWord:      {"moult"},
		schema.AfterCare:      {"water", "feed", "watr", "feed \"a note\""},
		schema.AfterEnclosure: {"other", "2 other", "other young", "nowhere", ""},
	}
	// A line about feeder animals is a remark where it names an enclosure: it comes to no life.
	words := slices.DeleteFunc(slices.Clone(schema.LogWords), func(w *schema.LogWord) bool { return w.Subject == schema.OfStock || w == schema.WordTested })
	var lines []plan.Event
	for i := range n {
		w := words[r.Intn(len(words))]
		at := from + civil.Date(i*days/n)
		group := []string{"mother", "young"}[r.Intn(2)] + " "
		if w.Subject == schema.OfEnclosure || w == schema.WordCounted && r.Intn(2) == 0 {
			group = ""
		}
		tail := tails[w.After][r.Intn(len(tails[w.After]))]
		line := fmt.Sprintf("%s %s %s%s %s", at, []string{"box", "box", "box", "other"}[r.Intn(4)], group, w.Name, tail)
		e, found := plan.ParseLogLine(1, line)
		if len(found) > 0 {
			panic(line + ": " + found[0].Text)
		}
		lines = append(lines, e)
	}
	return lines
}

// Whatever is in a log: drinking water is never held, no meal and no digging is put
// on a day that something holds, and no separation exists without a first moult.
func TestAnyLog(t *testing.T) {
	c := random(t)
	for seed := range int64(1500) {
		r := rand.New(rand.NewSource(seed))
		c.Log = scribble(r, 1+r.Intn(60), day("2026-01-01"), 420)
		h := horizon.Horizon{From: day("2027-02-01"), Days: 1 + r.Intn(400)}
		for _, e := range c.Enclosures {
			got, _ := lifeOf(c, e, c.Log, h)
			if err := sound(got, c.Log, h); err != "" {
				t.Fatalf("seed %d, %s: %s", seed, e.Name.V, err)
			}
		}
	}
}

// Nothing that brings drinking water is held by any state.
func TestWaterIsNeverHeld(t *testing.T) {
	for _, s := range schema.States {
		if m := s.May[schema.RowWater].Manner; m == schema.Held {
			t.Errorf("%s holds water", s.Name)
		}
		for _, k := range schema.CareKinds {
			if h := (life.Hold{State: s}); (k.Water || k.Needs == schema.NeedWater) && h.Takes(k) {
				t.Errorf("%s takes out %s", s.Name, k.Name)
			}
		}
	}
}

func sound(e *life.Enclosure, log []plan.Event, h horizon.Horizon) string {
	moulted := false
	for _, x := range log {
		switch x.Word { // who leaves her or eats has moulted
		case schema.WordFirstMoult, schema.WordMoult, schema.WordDispersed, schema.WordFed, schema.WordMatured:
			moulted = true
		}
	}
	everyone := append([]life.Hold(nil), e.Holds...)
	for _, g := range e.Groups {
		everyone = append(everyone, g.Holds...)
	}
	for i, x := range everyone {
		for _, kind := range schema.CareKinds {
			if (kind.Water || kind.Needs == schema.NeedWater) && x.Takes(kind) {
				return "holds water: " + x.Why
			}
		}
		if x.From >= x.Until || x.State == nil || x.Why == "" || x.End == "" {
			return fmt.Sprintf("hold %d is not one: %+v", i, x)
		}
	}
	held := func(on civil.Date, what schema.Row, holds ...[]life.Hold) bool {
		for _, list := range holds {
			for _, x := range list {
				if x.Out(what) && x.From <= on && on < x.Until {
					return true
				}
			}
		}
		return false
	}
	check := func(all []life.Task) string {
		names := map[string]bool{}
		for _, x := range all {
			last := x.On + civil.Date((x.Times-1)*x.Interval)
			switch {
			case names[x.Name]:
				return "two tasks named " + x.Name
			case x.On < h.From || x.On > h.Last() || x.Times < 1 || x.Interval < 1 || last < x.On || x.Text == "" || x.Kind == nil:
				return fmt.Sprintf("task off the horizon: %+v", x)
			case x.Kind == schema.KindCount && held(x.On, schema.RowCount, everyone):
				return "digs on " + x.On.String()
			case x.Kind == schema.KindSeparate && !moulted:
				return "separates before the first moult"
			}
			names[x.Name] = true
		}
		return ""
	}
	if err := check(e.Tasks); err != "" {
		return err
	}
	for _, g := range e.Groups {
		if err := check(g.Tasks); err != "" {
			return err
		}
		for _, x := range g.Tasks {
			if x.Meal && held(x.On, schema.RowKilled, g.Holds, e.Holds) {
				return "feeds on " + x.On.String() + ", which is held"
			}
		}
		for i, n := range g.Numbers {
			if n.Count < 0 || i > 0 && n.From <= g.Numbers[i-1].From {
				return fmt.Sprintf("numbers %v", g.Numbers)
			}
		}
		for i, s := range g.Stages {
			if i > 0 && s.From < g.Stages[i-1].From {
				return fmt.Sprintf("stages %v", g.Stages)
			}
		}
		if n := g.Count(h.From); n == 0 && len(g.Tasks)+len(g.Windows) > 0 || n == 0 && (held(h.From, schema.RowLive, g.Holds) || held(h.From, schema.RowDeep, g.Holds)) {
			return "the dead are cared for"
		}
	}
	return ""
}

// Lines about other animals, and those of days to come, change nothing.
func TestUnrelatedLines(t *testing.T) {
	c := random(t)
	box := c.Enclosure("box")
	h := year(day("2027-02-01"))
	for seed := range int64(300) {
		r := rand.New(rand.NewSource(seed))
		var own, mixed []plan.Event
		for _, e := range scribble(r, 60, day("2026-01-01"), 500) {
			stays := e.Word.After != schema.AfterEnclosure || len(e.Args) == 0 // a brood is one wherever its young are
			about := stays && e.Enclosure.V == "box" && e.Group.V == "mother" && e.Word.Subject == schema.OfAnimals && e.Date <= h.From
			elsewhere := stays && e.Enclosure.V == "other"
			if about {
				own = append(own, e)
			}
			if about || elsewhere || e.Date > h.From {
				mixed = append(mixed, e)
			}
		}
		a, _ := lifeOf(c, box, own, h)
		b, _ := lifeOf(c, box, mixed, h)
		if !reflect.DeepEqual(a.Groups, b.Groups) || !reflect.DeepEqual(a.Tasks, b.Tasks) {
			t.Fatalf("seed %d: lines about others change it", seed)
		}
	}
}

// A day later, with nothing new in the log, what is still to come is the same.
func TestNextDay(t *testing.T) {
	c := random(t)
	for seed := range int64(300) {
		r := rand.New(rand.NewSource(seed))
		log := scribble(r, 40, day("2026-06-01"), 240)
		for _, e := range c.Enclosures {
			today := day("2027-02-01")
			a, _ := lifeOf(c, e, log, horizon.Horizon{From: today, Days: 400})
			b, _ := lifeOf(c, e, log, horizon.Horizon{From: today + 1, Days: 399})
			for i := range a.Groups {
				if x, y := occasions(a.Groups[i], today), occasions(b.Groups[i], today); x != y {
					t.Fatalf("seed %d: then\n%s\nnow\n%s", seed, without(x, y), without(y, x))
				}
			}
		}
	}
}

// A line of tomorrow changes nothing that was held until today: what was once left
// out of a calendar stays left out.
func TestPastStays(t *testing.T) {
	c := random(t)
	for seed := range int64(1500) {
		r := rand.New(rand.NewSource(seed))
		today := day("2026-06-01") + civil.Date(r.Intn(240))
		log := scribble(r, 40, today-200, 200)
		var next plan.Event
		for next.Enclosure.V != "box" {
			next = scribble(r, 1, today+1, 1)[0]
		}
		e := c.Enclosure("box")
		a, _ := lifeOf(c, e, log, year(today))
		b, _ := lifeOf(c, e, append(log[:len(log):len(log)], next), year(today+1))
		for i, g := range a.Groups {
			for d := today - 210; d <= today; d++ {
				if x, y := mask(g, d), mask(b.Groups[i], d); x != y {
					t.Fatalf("seed %d: %s %s of %s turns %q on %s into %q", seed, next.Group.V, next.Word.Name, next.Date, x, d, y)
				}
			}
		}
	}
}

func mask(g *life.Group, on civil.Date) (m string) {
	names := map[string]bool{}
	for _, x := range g.Holds {
		if x.From <= on && on < x.Until {
			names[x.State.Name] = true
		}
	}
	for _, name := range slices.Sorted(maps.Keys(names)) {
		m += name + " "
	}
	return m
}

// occasions lists all that is after tomorrow. What is overdue moves on day by day.
func occasions(g *life.Group, today civil.Date) string {
	var b strings.Builder
	for _, w := range g.Windows {
		if w.Until > today+1 {
			fmt.Fprintln(&b, w.Name, w.From, w.Until)
		}
	}
	for _, x := range g.Holds {
		fmt.Fprintln(&b, x.Why, x.From, x.Until, x.End)
	}
	for _, x := range g.Tasks {
		for i := range x.Times {
			if on := x.On + civil.Date(i*x.Interval); on > today+1 && on < today+400 {
				fmt.Fprintln(&b, x.Name, on, x.Text)
			}
		}
	}
	lines := strings.SplitAfter(b.String(), "\n")
	sort.Strings(lines)
	return strings.Join(lines, "")
}

// without is the lines of a that are not in b.
func without(a, b string) (out string) {
	for _, line := range strings.SplitAfter(a, "\n") {
		if !strings.Contains(b, line) {
			out += line
		}
	}
	return out
}

func BenchmarkQuiet(b *testing.B) {
	c := load(b, sheet(mother), "")
	e := c.Enclosure("box")
	b.ReportAllocs()
	for b.Loop() {
		lifeOf(c, e, nil, year(day("2027-02-01")))
	}
}

// BenchmarkLog reads logs of one enclosure; the time a line must not grow.
func BenchmarkLog(b *testing.B) {
	c := random(b)
	for _, n := range []int{1000, 10000, 100000} {
		log := scribble(rand.New(rand.NewSource(1)), n, day("2020-01-01"), 2000)
		b.Run(fmt.Sprint(n), func(b *testing.B) {
			for b.Loop() {
				lifeOf(c, c.Enclosure("box"), log, year(day("2027-02-01")))
			}
			b.ReportMetric(float64(b.Elapsed().Nanoseconds())/float64(b.N*n), "ns/line")
		})
	}
}
