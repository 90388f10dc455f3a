package prove_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"vivary/compile"
	"vivary/compile/horizon"
	"vivary/compile/life"
	"vivary/compile/prove"
	"vivary/compile/roster"
	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/civil"
)

// reared is a plan of a species whose young eat within ten days of their first moult,
// every seven days after it, and as juveniles every fourteen.
func reared() string {
	own := "    source  = [\"fixture\"]\n    because = \"fixture of this test\"\n    review  = \"2040-01-01\"\n  }\n"
	text := limits{look: 1, water: 3}.sheet()
	for stage, days := range map[string]int{"young": 7, "juvenile": 14, "adult": 21} {
		text = strings.Replace(text, "  need \"look\"", fmt.Sprintf("  need \"food\" {\n    stages   = [%q]\n    longest  = \"%d days\"\n%s  need \"look\"", stage, days, own), 1)
	}
	text = strings.Replace(text, "  need \"look\"", "  figure \"first-meal\" {\n    value   = \"10 days\"\n"+own+"  need \"look\"", 1)
	return text + people + rounds + box("ash", looked)
}

// growing compiles the plan on 1 May 2027 and gives its animals a life and meals on some
// days, counted from today.
func growing(t *testing.T, stages []life.Stretch, meals ...int) (*compile.Result, []prove.Proof) {
	t.Helper()
	r := compiled(t, reared(), "", day("2027-05-01"))
	r.Lives[0].Groups[0].Stages = stages
	for x := range r.Roster.All() {
		if !x.Feeds() {
			continue
		}
		x.Days, x.Causes = r.Horizon.New(), nil
		for _, d := range meals {
			x.Days.Add(r.Horizon.Today + d)
		}
		x.Shown = x.Days.Clone()
	}
	return r, slices.DeleteFunc(prove.Of(r.Roster, 0), func(p prove.Proof) bool { return p.Name != schema.NeedFood })
}

func weekly(from int) (out []int) {
	for d := from; d < 400; d += 7 {
		out = append(out, d)
	}
	return out
}

// TestYoungEatBeforeTheyStarve: unfed second instars of Rhopalurus rochai died between
// day 11 and day 30 after their moult (Sarmento et al. 2008, J. Arachnol. 36:476-479). A
// plan under which young have their first meal on day 11 or later is never sound, whenever
// they moult; one under which they have it by day 10 is.
func TestYoungEatBeforeTheyStarve(t *testing.T) {
	for _, moult := range []int{1, 5, 20, 100} {
		for first := range 31 {
			today := day("2027-05-01")
			stages := []life.Stretch{{From: today - 10, Stage: "newborn"}, {From: today + civil.Date(moult), Stage: "young"}}
			_, proofs := growing(t, stages, weekly(moult+first)...)
			if len(proofs) != 1 || proofs[0].Stage != "young" || proofs[0].Begin != 64+moult {
				t.Fatalf("proofs %+v", proofs)
			}
			if got := proofs[0].Met(); got != (first < 11) {
				t.Errorf("moult in %d days and first meal %d days later: sound is %v", moult, first, got)
			}
			if p := proofs[0]; !p.Met() && (!p.Limit.First || p.Limit.Days != 10) {
				t.Errorf("the limit is %+v", p.Limit)
			}
		}
	}
}

// TestYoungThatWereNotFed: where the first moult is past, what is too late already is said
// as missed, and the plan is asked from today on.
func TestYoungThatWereNotFed(t *testing.T) {
	today := day("2027-05-01")
	r := compiled(t, reared(), "", today)
	g := r.Lives[0].Groups[0]
	g.Logged, g.Since.V, g.Since.At = true, today-40, g.Animals.At
	g.Stages = []life.Stretch{{From: today - 40, Stage: "newborn"}, {From: today - 11, Stage: "young"}}
	for x := range r.Roster.All() {
		if x.Feeds() {
			x.Days = r.Horizon.New()
			for _, d := range weekly(0) {
				x.Days.Add(r.Horizon.Today + d)
			}
			x.Shown = x.Days.Clone()
		}
	}
	all := prove.Findings(r.Roster, prove.Of(r.Roster, 0))
	if len(all) != 1 || all[0].Rule.ID != "need-missed" || all[0].Severity != finding.Urgent || !strings.Contains(all[0].Text, "11 days without a meal") {
		t.Errorf("it says %s", said(r, all))
	}
}

// TestEachDayByItsStage: a time between two meals that crosses from one stage into the
// next is judged, on each of its days, by the stage of that day.
func TestEachDayByItsStage(t *testing.T) {
	today := day("2027-05-01")
	for _, c := range []struct {
		meals []int
		turns int // the day on which they become juvenile
		sound bool
	}{
		{[]int{0, 7, 14, 28}, 22, true},  // seven days young, then seven more as juveniles
		{[]int{0, 7, 14, 28}, 23, false}, // on the eighth day they are young yet
		{[]int{0, 7, 14, 29}, 20, false}, // fifteen days: too long for juveniles too
	} {
		meals := c.meals
		for d := meals[len(meals)-1] + 7; d < 400; d += 7 {
			meals = append(meals, d)
		}
		stages := []life.Stretch{{From: today - 30, Stage: "young"}, {From: today + civil.Date(c.turns), Stage: "juvenile"}}
		_, proofs := growing(t, stages, meals...)
		sound := len(proofs) == 2
		for k := range proofs {
			sound = sound && proofs[k].Met()
		}
		if sound != c.sound {
			t.Errorf("meals on %v, juvenile on %d: sound is %v", c.meals, c.turns, sound)
		}
	}
}

// TestGoneAndCome: what is needed is proved on days with animals and on no other.
func TestGoneAndCome(t *testing.T) {
	today := day("2027-05-01")
	r := compiled(t, reared(), "", today)
	g := r.Lives[0].Groups[0]
	for _, c := range []struct {
		numbers    []life.Number
		begin, end int
	}{
		{[]life.Number{{From: today, Count: 2}, {From: today + 30}}, 64, 94},
		{[]life.Number{{From: today}, {From: today + 30, Count: 2}}, 94, 464},
		{[]life.Number{{From: today}}, 0, 0},
	} {
		g.Numbers = c.numbers
		proofs := prove.Of(r.Roster, 0)
		for k := range proofs {
			if proofs[k].Begin != c.begin || proofs[k].End != c.end {
				t.Errorf("%v: %s is proved from %d to %d", c.numbers, proofs[k].Name.Name, proofs[k].Begin, proofs[k].End)
			}
		}
		if (len(proofs) == 0) != (c.end == 0) {
			t.Errorf("%v: %d proofs", c.numbers, len(proofs))
		}
	}
}

// TestMotherAndBroodEatForThemselves: a meal of the mother is none of her young, and the
// other way round, though litter for the box feeds both.
func TestMotherAndBroodEatForThemselves(t *testing.T) {
	today := day("2027-05-01")
	r := compiled(t, reared(), "", today)
	mother := r.Lives[0].Groups[0]
	brood := *mother
	a := *mother.Animals
	a.Name.V = "young-2027-04-01"
	brood.Animals, brood.Mother, brood.Logged, brood.Since.V, brood.Since.At = &a, mother, true, today-30, a.At
	brood.Stages = []life.Stretch{{From: today - 30, Stage: "young"}}
	r.Lives[0].Groups = append(r.Lives[0].Groups, &brood)
	by := func() (n []int) {
		for _, p := range prove.Of(r.Roster, 0) {
			if p.Name == schema.NeedFood {
				n = append(n, len(p.By))
			}
		}
		return n
	}
	if got := by(); !slices.Equal(got, []int{1, 0}) {
		t.Errorf("the meals of mother and brood are %v", got)
	}
	if all := prove.Findings(r.Roster, prove.Of(r.Roster, 0)); len(all) != 1 || !strings.Contains(all[0].Text, "ash young-2027-04-01: nothing") {
		t.Errorf("it says %s", said(r, all))
	}
	litter := r.Roster.Of[0][0]
	litter.Kind, litter.Group = schema.KindLeaves, nil
	r.Roster.Of[0] = append(r.Roster.Of[0], litter)
	if got := by(); !slices.Equal(got, []int{2, 1}) {
		t.Errorf("with litter the meals of mother and brood are %v", got)
	}
	other := *mother.Sheet
	brood.Sheet = &other // of another species, moved there by mistake
	if got := by(); !slices.Equal(got, []int{2, 0}) {
		t.Errorf("with litter of another species the meals are %v", got)
	}
}

// rare is a plan in which adults, which the sheet says may wait, are fed so seldom, with
// seasons.
func rare(every int, seasons string) string {
	own := "    source  = [\"fixture\"]\n    because = \"fixture of this test\"\n    review  = \"2040-01-01\"\n  }\n"
	text := strings.Replace(limits{look: 1, water: 3, food: 14}.sheet(), "longest = \"14 days\"\n", "longest = \"14 days\"\n    severity = \"caution\"\n", 1)
	text = strings.Replace(text, "  need \"look\"", "  figure \"fast-alarm\" {\n    value   = \"60 to 90 days\"\n"+own+"  figure \"winter-rest\" {\n    value   = \"12 to 18 C\"\n"+own+"  need \"look\"", 1)
	care := strings.Replace(looked, "on         = [\"mon\"]", fmt.Sprintf("every      = \"%d days\"", every), 1)
	text = strings.Replace(text, "21 to 24 C", "12 to 24 C", 1) // cold enough where nothing heats
	return text + people + rounds + box("ash", care+seasons)
}

// TestFarTooRareIsAnError: that adults can wait is a caution as far as a fast that is
// looked into, and an error beyond, whatever seasons the plan has. A cool rest of half a
// year is none; two of them are, or one of a year. Common practice, no source.
func TestFarTooRareIsAnError(t *testing.T) {
	season := func(name, from, to string) string {
		return fmt.Sprintf("  season %q {\n    from    = %q\n    to      = %q\n    heating = \"off\"\n    feeding = \"none\"\n    climate {\n      warm_end = \"16 C\"\n    }\n  }\n", name, from, to)
	}
	for _, c := range []struct {
		name, text string
		want       finding.Severity
		none       bool
	}{
		{"each week", rare(7, ""), 0, true},
		{"every 20 days", rare(20, ""), finding.Caution, false},
		{"every 88 days", rare(88, ""), finding.Caution, false},
		{"every 100 days", rare(100, ""), finding.Error, false},
		{"every 390 days", rare(390, ""), finding.Error, false},
		{"a rest of five months", rare(7, season("rest", "1 Nov", "31 Mar")), 0, true},
		{"a rest of seven months", rare(7, season("rest", "1 Oct", "30 Apr")), finding.Error, false},
		{"two rests", rare(7, season("rest", "1 Oct", "20 Jan")+season("again", "1 Feb", "30 Aug")), finding.Error, false},
	} {
		r := compiled(t, c.text, "", day("2027-05-01"))
		all := found(r)
		if c.none && len(all) > 0 || !c.none && (len(all) == 0 || all[0].Rule.ID != "food-gap" || all[0].Severity != c.want) {
			t.Errorf("%s: it says %s", c.name, said(r, all))
		}
	}
}

// TestWhatTheLogHoldsRefusesNothing: an open hold excuses for as long as it is open, of the
// log or told by the plan without a day, since it is asked about; and a pause after refusals excuses nothing; neither is answered by more meals in the plan.
func TestWhatTheLogHoldsRefusesNothing(t *testing.T) {
	today := day("2027-05-01")
	for _, c := range []struct {
		name string
		hold life.Hold
		says string
	}{
		{"sealed in for two months", life.Hold{From: today - 60, Until: today + 400, Open: true, State: schema.StateSealed, Why: "sealed in"}, ""},
		{"sealed in until the day before yesterday", life.Hold{From: today - 60, Until: today - 2, State: schema.StateSealed, Why: "sealed in"}, ""},
		{"told by the plan, without a day", life.Hold{Until: today + 400, Open: true, State: schema.StateSealed, Why: "sealed in"}, ""},
		{"a pause of a week", life.Hold{From: today - 2, Until: today + 5, State: schema.StateRefused, Why: "meals refused"}, ""},
		{"a pause of a month", life.Hold{From: today - 2, Until: today + 28, State: schema.StateRefused, Why: "meals refused"}, "log fed or refused"},
	} {
		r := compiled(t, limits{look: 4, water: 3, food: 14}.sheet()+people+rounds+box("ash", looked), "", today)
		c.hold.At = r.Plan.Enclosures[0].At
		r.Lives[0].Groups[0].Holds = []life.Hold{c.hold}
		for x := range r.Roster.All() {
			if x.Feeds() {
				x.Causes = append(x.Causes, roster.Cause{Why: roster.Held, Hold: &c.hold, Days: r.Horizon.New()})
				for d := max(0, int(c.hold.From-r.Horizon.From)); d < min(r.Horizon.Days, int(c.hold.Until-r.Horizon.From)); d++ {
					x.Days.Remove(d)
					x.Causes[len(x.Causes)-1].Days.Add(d)
				}
				x.Shown.Keep(x.Days)
			}
		}
		all := prove.Findings(r.Roster, prove.Of(r.Roster, 0))
		switch {
		case c.says == "" && len(all) > 0, c.says != "" && len(all) != 1:
			t.Errorf("%s: it says %s", c.name, said(r, all))
		case c.says != "" && (all[0].Severity != finding.Caution || !strings.Contains(all[0].Write, c.says)):
			t.Errorf("%s: it says %s", c.name, said(r, all))
		}
	}
}

// TestAPauseHidesNoPlan: what the plan alone has too rarely is found as before, whatever
// the log holds meanwhile.
func TestAPauseHidesNoPlan(t *testing.T) {
	today := day("2027-05-01")
	for _, state := range []*schema.State{schema.StateRefused, schema.StateSoft} {
		r := compiled(t, limits{look: 4, water: 3, food: 14}.sheet()+people+rounds+box("ash", strings.Replace(looked, "on         = [\"mon\"]", "every      = \"20 days\"", 1)), "", today)
		r.Lives[0].Groups[0].Holds = []life.Hold{{From: today, Until: today + 30, State: state, Why: "seen", At: r.Plan.Enclosures[0].At}}
		all := prove.Findings(r.Roster, prove.Of(r.Roster, 0))
		if len(all) != 1 || all[0].Severity != finding.Error || !strings.Contains(all[0].Write, "every 14 days") {
			t.Errorf("%s: it says %s", state.Name, said(r, all))
		}
	}
}

// TestAStandInForGoodIsNoHoliday: two visits a week are enough for a holiday of three weeks
// or five, and not for three years.
func TestAStandInForGoodIsNoHoliday(t *testing.T) {
	for days, want := range map[int]bool{14: true, 21: true, 35: true, 60: false, 1000: false} {
		from := day("2027-07-10")
		text := limits{look: 1, water: 2, unattended: 7}.sheet() + people + rounds + away("lead", from.String(), (from+civil.Date(days)).String(), "  cover = \"ben\"\n  visits = [\"tue\", \"sat\"]\n") + box("ash", "  care \"look\" {\n    every = \"day\"\n  }\n  care \"water\" {\n    every = \"day\"\n  }\n")
		if got := proven(t, text, ""); (got == "") != want {
			t.Errorf("%d days: it says %s", days, got)
		} else if !want && (!strings.Contains(got, "of any 120 days") || !strings.Contains(got, "error")) {
			t.Errorf("%d days: it says %s", days, got)
		}
	}
}

// shown puts an entry on these days and no others, counted from today, and on each day
// before.
func shown(r *compile.Result, x *roster.Entry, days ...int) {
	x.Days, x.Causes = r.Horizon.New(), nil
	x.Days.AddRun(0, r.Horizon.Today, r.Horizon.Days)
	for _, d := range days {
		x.Days.Add(r.Horizon.Today + d)
	}
	x.Shown = x.Days.Clone()
}

// TestAloneForSoManyDays holds the bound for being left alone at its edges: 42 of any 120
// days, and no more.
func TestAloneForSoManyDays(t *testing.T) {
	// Times of seven days, and care every day for the rest.
	for _, c := range []struct {
		name  string
		times []int // the days on which they end
		sound bool
	}{
		{"six", []int{7, 14, 21, 28, 35, 42}, true},
		{"seven", []int{7, 14, 21, 28, 35, 42, 49}, false},
		{"six, and one 120 days after the first", []int{7, 14, 21, 28, 35, 42, 127}, true},
		{"six, and one a day before that", []int{7, 14, 21, 28, 35, 42, 126}, false},
	} {
		r := compiled(t, limits{water: 3, unattended: 14}.sheet()+people+rounds+away("lead", "2027-05-01", "2028-07-01", "")+
			box("ash", "  care \"water\" {\n    every = \"day\"\n  }\n"), "", day("2027-05-01"))
		days := r.Horizon.New()
		days.AddRun(0, r.Horizon.Days-64, r.Horizon.Days)
		for _, end := range c.times {
			for d := end - 6; d < end; d++ {
				days.Remove(d)
			}
		}
		var on []int
		for d := days.Next(0); d >= 0; d = days.Next(d + 1) {
			on = append(on, d)
		}
		for x := range r.Roster.All() {
			shown(r, x, on...)
		}
		p := prove.Of(r.Roster, 0)[0]
		if p.Met() != c.sound || !c.sound && (!p.Limit.Often || p.Breach.To != 64+c.times[6]) {
			t.Errorf("%s: %+v by %+v", c.name, p.Breach, p.Limit)
		}
	}
}

// TestSeasonsOfAYear holds the bound for seasons at its edges: half a year in any 365 days,
// and a time with a season in it is far too long past the half year and a usual time.
func TestSeasonsOfAYear(t *testing.T) {
	r := compiled(t, rare(7, ""), "", day("2027-05-01"))
	l, h := r.Lives[0], r.Horizon
	rest := &schema.State{Name: "rest", Box: true}
	rest.May[schema.RowLive].Manner, rest.May[schema.RowKilled].Manner = schema.Held, schema.Held
	excused := func() horizon.Days {
		for _, p := range prove.Of(r.Roster, 0) {
			if p.Name == schema.NeedFood {
				return p.Excused
			}
		}
		return nil
	}
	l.Holds = []life.Hold{{From: h.From, Until: h.From + 200, State: rest}, {From: h.From + 300, Until: h.Last() + 1, State: rest}}
	if excused() != nil {
		t.Error("a season that is not cool excuses meals")
	}
	l.Holds[0].Cool, l.Holds[1].Cool = true, true
	for i, want := range map[int]bool{0: true, 179: true, 180: false, 299: false, 300: false, 364: false, 365: true, 463: true} {
		if got := excused().Has(i); got != want {
			t.Errorf("day %d is excused: %v", i, got)
		}
	}
	l.Holds = []life.Hold{{From: r.Today + 8, Until: r.Today + 178, State: rest, Cool: true}}
	for next, want := range map[int]finding.Severity{190: finding.Caution, 194: finding.Caution, 195: finding.Error} {
		days := []int{0}
		for d := next; d < 400; d += 7 {
			days = append(days, d)
		}
		for x := range r.Roster.All() {
			if x.Feeds() {
				shown(r, x, days...)
			}
		}
		all := slices.DeleteFunc(prove.Findings(r.Roster, prove.Of(r.Roster, 0)), func(f finding.Finding) bool { return f.Rule.ID != "food-gap" })
		if len(all) != 1 || all[0].Severity != want {
			t.Errorf("the next meal after %d days: it says %s", next, said(r, all))
		}
	}
}
