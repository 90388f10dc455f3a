package stock_test

import (
	"fmt"
	"math"
	"strings"
	"testing"
	"time"

	"vivary/compile"
	"vivary/compile/life"
	"vivary/compile/roster"
	"vivary/compile/stock"
	"vivary/internal/planned"
	"vivary/internal/randomplan"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/civil"
)

func compiled(t testing.TB, files map[string]string, today civil.Date) *compile.Result {
	t.Helper()
	c, found := planned.Files(t, files)
	r := compile.Compile(c, found, today.At(12*60, time.UTC))
	if r.Roster == nil {
		t.Fatalf("the plan was not understood: %v", r.Findings)
	}
	return r
}

const house = `collection "harrow" {
  time_zone = "Europe/London"
}
room "racks" {
  temperature = "22 to 25 C"
}
round "evening" {
  at = "19:30"
}
template "t" {
  species = "pandinus-imperator"
  housing {
    kind   = "glass"
    inside = "76 x 46 x 41 cm"
    lid    = "solid, latched"
  }
}
`

func eaters(name, numbers, stage, feeding string) string {
	return "enclosure \"" + name + "\" {\n  numbers  = \"" + numbers + "\"\n  template = \"t\"\n  animals \"one\" {\n    count = 1\n    stage = \"" + stage + "\"\n  }\n  feeding \"one\" {\n    " + feeding + "\n  }\n}\n"
}

// breeder has 40 adults that get one medium cricket every 7 days, and 120 juveniles that get two
// small ones every 4 days, a quarter of them each day.
func breeder() string {
	text := house + eaters("adult", "1 to 40", "adult", "every = \"7 days\"\n    prey = \"cricket medium\"")
	for i := range 4 {
		text += eaters(fmt.Sprintf("row-%c", 'a'+i), "1 to 30", "juvenile", fmt.Sprintf("every = \"4 days\"\n    from = \"2026-11-%02d\"\n    prey = \"cricket small\"\n    per_animal = 2", i+1))
	}
	return text + "seller \"fen\" {\n  delivers = [\"thu\"]\n}\nsupply \"medium\" {\n  prey   = \"cricket medium\"\n  seller = \"fen\"\n  margin = \"15 %\"\n}\nsupply \"small\" {\n  prey   = \"cricket small\"\n  seller = \"fen\"\n  margin = \"15 %\"\n}\n"
}

func lot(t testing.TB, r *compile.Result, feeder, size string) *stock.Lot {
	t.Helper()
	l := r.Stock.Lot(plan.Prey{Feeder: feeder, Size: size})
	if l == nil {
		t.Fatalf("nothing is known of %s %s", feeder, size)
	}
	return l
}

// A week of the breeder is 46 medium and 483 small crickets; what is ordered on a Tuesday comes
// on Thursday, never from Saturday to Monday; in winter the order asks for the forecast; and a
// seller who gives 300 small ones a week gives 183 too few.
func TestFeederShopping(t *testing.T) {
	today := civil.Must(2026, 12, 28)
	r := compiled(t, planned.With(breeder(), ""), today)
	for _, x := range []struct {
		size string
		use  int
		want int
	}{{"medium", 40, 46}, {"small", 420, 483}} {
		l := lot(t, r, "cricket", x.size)
		for w, n := range l.Weekly(r.Horizon, 20) {
			if n != x.use {
				t.Errorf("week %d takes %d %s, want %d", w, n, x.size, x.use)
			}
		}
		orders := l.Supplies[0].Orders
		if len(orders) < 40 {
			t.Fatalf("%d orders of %s", len(orders), x.size)
		}
		for i := range orders {
			o := &orders[i]
			if o.Number != x.want || o.By.Weekday() != time.Tuesday || o.Deliver.Weekday() != time.Thursday || o.Deliver-o.By != 2 {
				t.Errorf("%s: %s", x.size, l.Supplies[0].Words(o))
			}
			_, m, _ := o.Deliver.YMD()
			text := l.Supplies[0].Words(o)
			if winter := m == 12 || m <= 2; winter != strings.Contains(text, "frost check") || winter != strings.Contains(text, "hold at depot") && !o.Heat {
				t.Errorf("%s: %s", o.Deliver, text)
			}
		}
	}
	few := strings.Replace(breeder(), "supply \"small\" {", "supply \"small\" {\n  weekly = 300", 1)
	r = compiled(t, planned.With(few, ""), today)
	found := false
	for _, f := range r.Findings {
		if f.Rule.ID == "stock-short" && strings.Contains(f.Text, "short by 183") {
			found = true
		}
	}
	if l := lot(t, r, "cricket", "small"); !found || l.Supplies[0].Orders[3].Short != 183 || l.Short.First < 0 {
		t.Errorf("a supply of 300 small ones a week is not found short by 183: %v", r.Findings)
	}
	packed := strings.Replace(breeder(), "supply \"small\" {", "supply \"small\" {\n  packs = [250]", 1)
	o := lot(t, compiled(t, planned.With(packed, ""), today), "cricket", "small").Supplies[0].Orders[0]
	if o.Packing.Words() != "2 packs of 250, 17 over" {
		t.Errorf("packs: %s", o.Packing.Words())
	}
}

// The text of an order is the same in the list of orders and in the round of its day, and
// nothing of the plan without stores stands otherwise.
func TestOrdersStandInRounds(t *testing.T) {
	today := civil.Must(2026, 12, 28)
	r := compiled(t, planned.With(breeder(), ""), today)
	for _, l := range r.Stock.Lots {
		for _, x := range l.Supplies {
			for i := range x.Orders {
				o := &x.Orders[i]
				if o.By < today {
					continue
				}
				n := 0
				for e := range r.Roster.All() {
					if e.Store != nil && e.Kind == schema.KindOrder && e.Task == x.Words(o) {
						if day, _ := r.Horizon.Index(o.By); !e.Days.Has(day) || !e.Shown.Has(day) {
							t.Errorf("%s does not stand on %s", e.Task, o.By)
						}
						n++
					}
				}
				if n != 1 {
					t.Errorf("%q stands %d times", x.Words(o), n)
				}
			}
		}
	}
}

// meals counts what the rounds of a day give, by prey, as the entries of the roster say.
func meals(r *roster.Roster, day int) map[plan.Prey]int {
	out := map[plan.Prey]int{}
	for e := range r.All() {
		if e.Once != nil && e.Once.Meal && e.Days.Has(day) { // one item of what is given next
			if p, ok := following(r, e.Group, day); ok {
				out[p] += e.Group.Count(r.Horizon.Now())
			}
		}
		if e.Meal == nil || e.Kind != schema.KindFeed || e.Once != nil || !e.Days.Has(day) {
			continue
		}
		if p := e.Portion(day); p != nil {
			out[p.Prey] += int(math.Ceil(p.Items*float64(e.Group.Count(r.Horizon.Now())) - 1e-9))
		}
	}
	return out
}

// following is what a group gets at its next usual meal.
func following(r *roster.Roster, g *life.Group, day int) (plan.Prey, bool) {
	for ; day < r.Horizon.Days; day++ {
		for e := range r.All() {
			if e.Group == g && e.Meal != nil && e.Kind == schema.KindFeed && e.Once == nil && e.Days.Has(day) {
				if p := e.Portion(day); p != nil {
					return p.Prey, true
				}
			}
		}
	}
	return plan.Prey{}, false
}

// Over random plans the demand of each day is the sum of the meals of that day; what is ordered
// never falls short where the seller gives what is asked for, by a count that knows nothing of
// how it was ordered; and no entry of the plan is another one for it.
func TestOrderedIsEnough(t *testing.T) {
	orders := 0
	for seed := range uint64(40) {
		p := randomplan.New(seed)
		files := p.Files(p.Today)
		bare := compiled(t, files, p.Today)
		if bare.Stock != nil {
			t.Fatal("a plan without stores has a stock")
		}
		var text strings.Builder
		text.WriteString("seller \"fen\" {\n  delivers = [\"tue to fri\"]\n}\n")
		fed := map[plan.Prey]bool{}
		for day := bare.Horizon.Today; day < bare.Horizon.Days; day++ {
			for prey := range meals(bare.Roster, day) {
				if !fed[prey] {
					fed[prey] = true
					fmt.Fprintf(&text, "supply \"buy-%s-%s\" {\n  prey = %q\n  seller = \"fen\"\n  loss = \"15 %%\"\n  packs = [7, 50]\n}\n", prey.Feeder, prey.Size, prey.String())
				}
			}
		}
		files["stores.care.hcl"] = text.String()
		r := compiled(t, files, p.Today)
		if r.Stock == nil || len(fed) == 0 {
			continue
		}
		h := r.Horizon
		for day := h.Today; day < h.Days; day++ {
			want := meals(r.Roster, day)
			for _, l := range r.Stock.Lots {
				if l.Use[day] != want[l.Prey] {
					t.Errorf("plan %d, %s: %d %s, and the rounds give %d", seed, h.Date(day), l.Use[day], l.Many(), want[l.Prey])
				}
			}
		}
		for _, l := range r.Stock.Lots {
			for _, x := range l.Supplies {
				orders += len(x.Orders)
				for i := range x.Orders {
					enough(t, seed, r, l, x, &x.Orders[i])
					if i > 0 && x.Orders[i-1].Deliver == x.Orders[i].Deliver {
						t.Errorf("plan %d: two parcels on one day: %s; %s", seed, x.Words(&x.Orders[i-1]), x.Words(&x.Orders[i]))
					}
				}
			}
		}
		n := 0
		for range bare.Roster.All() {
			n++
		}
		for e := range r.Roster.All() {
			if e.Store == nil {
				n--
			}
		}
		if n != 0 {
			t.Errorf("plan %d: the stores change other entries", seed)
		}
	}
	if orders < 1000 {
		t.Errorf("only %d orders were looked at", orders)
	}
}

// enough lets what is ordered die day by day and be fed out.
func enough(t *testing.T, seed uint64, r *compile.Result, l *stock.Lot, x *stock.Supply, o *stock.Order) {
	h := r.Horizon
	left := float64(o.Packing.Total)
	if o.Packing.Total < o.Number || o.Deliver.Weekday() < time.Tuesday || o.Deliver.Weekday() > time.Friday {
		t.Errorf("plan %d: %s", seed, x.Words(o))
	}
	for d := o.Deliver; d <= o.Last; d++ {
		if i, in := h.Index(d); in && d >= o.Week {
			left -= float64(l.Use[i])
		}
		if left < -1e-6 {
			t.Errorf("plan %d: %s, and on %s %.2f lack", seed, x.Words(o), d, -left)
			return
		}
		left *= 1 - x.Daily
	}
}

// What was counted and delivered goes before what was planned, a crash is urgent, and none of it
// refuses; a line of the store in the log is read, one about animals is a remark.
func TestLogOfStores(t *testing.T) {
	today := civil.Must(2027, 1, 4)
	culture := "culture \"flies\" {\n  prey = \"fruit-fly melanogaster\"\n  temperature = \"25 C\"\n}\n" + eaters("cup", "1 to 9", "young", "every = \"3 days\"\n    prey = \"fruit-fly melanogaster\"\n    per_animal = 3")
	log := "2027-01-03 small counted 90\n2027-01-04 medium delivered 46\n2026-12-20 flies started 2\n2027-01-02 flies crashed \"mites\"\n2027-01-03 small moult\n2027-01-03 row-a-1 started 2\n2027-01-03 small done order\n"
	r := compiled(t, planned.With(breeder()+culture, log), today)
	small := lot(t, r, "cricket", "small")
	if !small.Known || small.Hand != 30 { // 60 were fed on the third
		t.Errorf("in hand: %v", small.Hand)
	}
	if medium := lot(t, r, "cricket", "medium"); !medium.Known || medium.Hand != 46 {
		t.Errorf("in hand: %v", medium.Hand)
	}
	rules := map[string]int{}
	for _, f := range r.Findings {
		rules[f.Rule.ID]++
	}
	if rules["stock-out"] != 1 || rules["culture-gap"] != 1 || rules["log-line"] != 2 {
		t.Errorf("found %v", rules)
	}
	flies := lot(t, r, "fruit-fly", "melanogaster").Cultures[0]
	if len(flies.Starts) == 0 || flies.Starts[0] != civil.Must(2027, 1, 9) {
		t.Errorf("after a crash the box stands empty for a week: %v", flies.Starts)
	}
	if short := small.Short; len(short.Who) == 0 || short.First != r.Horizon.Today {
		t.Errorf("30 of 60 lack today: %+v", short)
	}
}

// Nothing is passed over: a seller who never comes in time, and a loss that leaves none, are found.
func TestFoundOfStores(t *testing.T) {
	for edit, want := range map[string]string{
		"delivers = [\"thu\"]->delivers = [\"2020-01-02\"]":       "no delivery of medium crickets",
		"margin = \"15 %\"->loss = \"100 %\"":                     "none are left to be fed",
		"delivers = [\"thu\"]->delivers = [\"thu to sat\"]":       "delivers on Saturday",
		"seller = \"fen\"\n  margin->seller = \"fenn\"\n  margin": "did you mean \"fen\"",
	} {
		from, to, _ := strings.Cut(edit, "->")
		text := strings.Replace(breeder(), from, to, 1)
		c, found := planned.Files(t, planned.With(text, ""))
		r := compile.Compile(c, found, civil.Must(2027, 1, 4).At(12*60, time.UTC))
		said := false
		for _, f := range r.Findings {
			said = said || strings.Contains(f.Text, want)
		}
		if !said {
			t.Errorf("%s: not found: %s", edit, want)
		}
	}
}

// A brood that is expected has its culture set up so early that it yields on the first day on
// which the young may eat; one of which the time is not known says so.
func TestCultureForBrood(t *testing.T) {
	today := civil.Must(2027, 1, 4)
	text := house + "enclosure \"mother\" {\n  template = \"t\"\n  animals \"she\" {\n    count = \"0.1.0\"\n    stage = \"adult\"\n  }\n  feeding \"she\" {\n    every = \"7 days\"\n    prey = \"roach medium\"\n  }\n}\n"
	r := compiled(t, planned.With(text+"tub \"any\" {\n  prey = \"roach medium\"\n}\n", "2026-11-01 mother mated\n"), today)
	for _, l := range r.Stock.Lots {
		if len(l.Broods) == 0 {
			continue
		}
		b := l.Broods[0]
		culture := "culture \"for-young\" {\n  prey = \"" + l.Prey.String() + "\"\n  lead = \"19 days\"\n}\n"
		again := compiled(t, planned.With(text+culture, "2026-11-01 mother mated\n"), today)
		c := again.Stock.Lot(l.Prey).Cultures[0]
		for line, told := range map[string]bool{"2027-01-02 mother born\n": true, "2027-01-02 mother born 20\n": false} {
			born := compiled(t, planned.With(text+culture, "2026-11-01 mother mated\n"+line), today)
			if l := born.Stock.Lot(l.Prey); l == nil || (len(l.Broods) > 0) != told {
				t.Errorf("%syoung that are expected: %+v", line, l)
			}
		}
		if c.Need != b.From || c.Latest != b.From-19 || len(c.Starts) == 0 || c.Starts[0] != max(c.Latest, today) || c.Rotation != (stock.Rotation{Every: 7, House: 5}) {
			t.Errorf("%+v for %+v", c, b)
		}
		return
	}
	t.Error("no young are expected of a mated female")
}
