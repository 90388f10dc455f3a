package roster_test

import (
	"fmt"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"vivary/compile"
	"vivary/compile/life"
	"vivary/compile/roster"
	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/civil"
)

// hot is a species whose venom is a danger to life, and a box of it with care that opens
// it, care from outside, and water.
const hot = `
species "fixture-hot" {
  title = "fixture hot scorpion"
  stage "adult" {
    instars = "6"
  }
  figure "venom" {
    value   = "medically significant"
    source  = ["fixture"]
    because = "fixture of this test"
    review  = "2040-01-01"
  }
}
room "vault" {
  temperature = "21 to 24 C"
  locked      = true
}
enclosure "vault" {
  species = "fixture-hot"
  room    = "vault"
  housing {
    inside = "30 x 20 x 20 cm"
    lid    = "solid, locked"
  }
  animals "only" {
    count = 1
    stage = "adult"
  }
  care "look" {
    every = "day"
  }
  care "water" {
    every = "day"
  }
  care "spot-clean" {
    every = "day"
  }
}
`

// crew is keepers with what each is trained in, and a round that is the first one's and
// takes so many people.
func crew(people int, trained map[string]string, names ...string) string {
	var b strings.Builder
	for _, n := range names {
		fmt.Fprintf(&b, "keeper %q {\n", n)
		if s := trained[n]; s != "" {
			fmt.Fprintf(&b, "  trained = %q\n", s)
		}
		b.WriteString("}\n")
	}
	fmt.Fprintf(&b, "round \"evening\" {\n  at     = \"19:30\"\n  keeper = %q\n  people = %d\n}\n", names[0], people)
	return b.String()
}

// left are the days of July on which care is not done though it is planned every day.
func left(t *testing.T, r *compile.Result, name string) string {
	t.Helper()
	e := find(t, r, "vault", name)
	var out []string
	for d := on("1 Jul"); d <= on("31 Jul"); d++ {
		if i, _ := r.Horizon.Index(d); !e.Days.Has(i) {
			_, _, n := d.YMD()
			out = append(out, fmt.Sprint(n))
		}
	}
	return strings.Join(out, " ")
}

// TestTwoPeople: three people of whom two are trained. Days are counted by hand.
func TestTwoPeople(t *testing.T) {
	trained := map[string]string{"lead": "venom", "second": "hairs, venom"}
	staff := crew(2, trained, "lead", "second", "third")
	for _, c := range []struct{ title, aways, want string }{
		{"nobody is away", "", ""},
		{"who is not trained is away", away("third", "5 Jul", "9 Jul", ""), ""},
		{"the second is away", away("second", "5 Jul", "9 Jul", ""), "5 6 7 8"},
		{"the lead is away, and the second stands in", away("lead", "5 Jul", "9 Jul", `cover = "second"`), "5 6 7 8"},
		{"the second is away, and the third stands in untrained", away("second", "5 Jul", "9 Jul", `cover = "third"`), "5 6 7 8"},
		{"overlap", away("second", "5 Jul", "9 Jul", "") + away("second", "7 Jul", "12 Jul", ""), "5 6 7 8 9 10 11"},
		{"touch", away("second", "5 Jul", "7 Jul", "") + away("second", "7 Jul", "9 Jul", ""), "5 6 7 8"},
		{"nested", away("second", "5 Jul", "12 Jul", "") + away("second", "7 Jul", "9 Jul", ""), "5 6 7 8 9 10 11"},
		{"both, one after the other", away("second", "5 Jul", "7 Jul", "") + away("lead", "7 Jul", "9 Jul", `cover = "second"`), "5 6 7 8"},
		{"both at once", away("second", "5 Jul", "9 Jul", "") + away("lead", "6 Jul", "8 Jul", `cover = "third"`), "5 6 7 8"},
	} {
		t.Run(c.title, func(t *testing.T) {
			r := compiled(t, house(staff, hot, c.aways), "", on("1 Jul"))
			if got := left(t, r, "spot-clean"); got != c.want {
				t.Errorf("not cleaned on %q, want %q", got, c.want)
			}
			if got := left(t, r, "water"); got != c.want { // nobody opens such a box alone
				t.Errorf("no water on %q, want %q", got, c.want)
			}
			if got := left(t, r, "look"); got != "" {
				t.Errorf("no look from outside on %q", got)
			}
			found := slices.ContainsFunc(r.Findings, func(f finding.Finding) bool { return f.Rule.ID == "people-few" })
			if found != (c.want != "") {
				t.Errorf("people-few is found: %v", found)
			}
		})
	}
}

// TestTeamDayByDay holds who is there against a count over the plan as it was written,
// day by day, that knows no sets of days.
func TestTeamDayByDay(t *testing.T) {
	type trip struct {
		who, cover string
		from, to   civil.Date
		visits     []string
	}
	weekday := func(d civil.Date) string { return strings.ToLower(d.Weekday().String()[:3]) }
	for seed := range uint64(60) {
		rng := rand.New(rand.NewPCG(seed, 8))
		names := []string{"lead", "second", "third", "fourth"}[:2+rng.IntN(3)]
		trained := map[string]string{}
		for _, n := range names {
			trained[n] = []string{"venom", "venom", "feeding", ""}[rng.IntN(4)]
		}
		var trips []trip
		text := crew(2, trained, names...) + hot
		for range rng.IntN(6) {
			who, cover := names[rng.IntN(len(names))], names[rng.IntN(len(names))]
			if cover == who {
				cover = ""
			}
			x := trip{who: who, cover: cover, from: on("1 Jul") + civil.Date(rng.IntN(28))}
			x.to = x.from + civil.Date(1+rng.IntN(12))
			rest := ""
			if cover != "" {
				rest = fmt.Sprintf("cover = %q\n", cover)
				if rng.IntN(2) == 0 {
					x.visits = []string{"tue", "sat"}
					rest += `visits = ["tue", "sat"]`
				}
			}
			if slices.ContainsFunc(trips, func(o trip) bool { // two covers on one day are refused
				return o.who == x.who && o.cover != x.cover && o.from < x.to && x.from < o.to
			}) {
				continue
			}
			trips = append(trips, x)
			text += "away \"" + who + "\" {\nfrom = \"" + x.from.String() + "\"\nto = \"" + x.to.String() + "\"\n" + rest + "\n}\n"
		}
		gone := func(who string, d civil.Date) bool {
			return slices.ContainsFunc(trips, func(x trip) bool { return x.who == who && x.from <= d && d < x.to })
		}
		there := func(who string, d civil.Date) bool {
			if gone(who, d) {
				return false
			}
			if who == names[0] {
				return true // the round is theirs
			}
			asked, comes := false, false
			for _, x := range trips {
				if x.cover == who && x.from <= d && d < x.to {
					asked = asked || x.visits != nil
					comes = comes || x.visits == nil || slices.Contains(x.visits, weekday(d))
				}
			}
			return !asked || comes
		}
		r := compiled(t, house(text), "", on("1 Jul"))
		e := find(t, r, "vault", "spot-clean")
		for d := on("1 Jul"); d < on("31 Aug"); d++ {
			n := 0
			for _, who := range names {
				if trained[who] == "venom" && there(who, d) {
					n++
				}
			}
			i, _ := r.Horizon.Index(d)
			if team := r.Roster.Team(names[0], e.Life, i); len(team) != n {
				t.Fatalf("seed %d: on %s there are %v, counted %d\n%s", seed, d, team, n, text)
			}
			if e.Days.Has(i) && n < 2 {
				t.Fatalf("seed %d: on %s one goes in alone\n%s", seed, d, text)
			}
			if who, comes := r.Roster.Doer(e, i); comes && n >= 2 && trained[who] == "venom" && !e.Days.Has(i) {
				t.Fatalf("seed %d: on %s %s could go in with another\n%s", seed, d, who, text)
			}
		}
	}
}

// A stand-in who is not trained opens no box with a brood, one who is trained in feeding
// no more of it than the hatch, and one who is trained in breeding does.
func TestBroodAndStandIn(t *testing.T) {
	brood := strings.Replace(ash(`care "water" { every = "day" }; care "look" { every = "day" }`), "stage = \"juvenile\"", "stage = \"adult\"\n    state = \"with brood\"", 1)
	brood = strings.Replace(brood, "count = 2", "count = \"0.1\"", 1)
	for _, c := range []struct{ cover, lacks string }{{"sitter", schema.SkillBreeding}, {"friend", schema.SkillBreeding}, {"trained", ""}} {
		text := staff + "keeper \"trained\" {\n  trained = \"breeding\"\n}\n" + away("lead", "10 Jul", "13 Jul", "cover = \""+c.cover+"\"") + brood
		r := compiled(t, house(text), "", on("1 Jul"))
		i, _ := r.Horizon.Index(on("11 Jul"))
		water, look := find(t, r, "ash", "water"), find(t, r, "ash", "look")
		a := r.Roster.May(water, i)
		if a.Lacks != c.lacks || (a.Hold != nil) != (c.lacks != "") {
			t.Errorf("%s: %+v", c.cover, a)
		}
		hatch := c.cover == "friend"
		if water.Days.Has(i) != (c.lacks == "" || hatch) || !look.Days.Has(i) {
			t.Errorf("%s: water %v, look %v", c.cover, water.Days.Has(i), look.Days.Has(i))
		}
		if hatch && (a.Manner != schema.Hatch || a.Live || !a.Does(schema.KindFeed) || a.Does(schema.KindSpotClean)) {
			t.Errorf("%s: %+v", c.cover, a)
		}
		if hatch && (water.Shut != nil || !water.Hatch.Has(i)) {
			t.Errorf("%s: the box counts as shut, though water goes in", c.cover)
		}
		if c.lacks == "" || hatch {
			continue
		}
		if cause := water.Cause(roster.Untrained, i); cause == nil || cause.Away == nil || cause.Hold == nil {
			t.Errorf("%s: %+v", c.cover, cause)
		}
		if name := r.Roster.Ring(water, i); name != "trained" {
			t.Errorf("rings %q", name)
		}
		for _, d := range []string{"9 Jul", "13 Jul"} { // the keeper's own days
			if k, _ := r.Horizon.Index(on(d)); !water.Days.Has(k) {
				t.Errorf("no water on %s", d)
			}
		}
	}
}

// TestMealsAtHerDoor: young that are with their mother are fed through the hatch, since
// her box is opened no further for them than for her.
func TestMealsAtHerDoor(t *testing.T) {
	plan := house(pair(daily + ` feeding "other" { every = "day"; per_animal = 1; prey = "cricket small" }`))
	r := lived(t, plan, "1 Jul", func(l *life.Enclosure) {
		l.Groups[0].Mother = l.Groups[1]
		l.Groups[1].Holds = []life.Hold{stretch(schema.StateYoungRound, "2 Jul", "3 Jul")}
	})
	e := find(t, r, "ash", "feed only")
	i := int(on("2 Jul") - r.Horizon.From)
	if m := e.Manner(i); m == nil || m.May.Manner != schema.Hatch || m.May.Words != "in pieces at her door" {
		t.Errorf("they are fed %+v", m)
	}
}
