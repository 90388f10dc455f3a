package stock

import (
	"cmp"
	"maps"
	"math"
	"slices"
	"strings"

	"vivary/compile/life"
	"vivary/compile/roster"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/quantity"
	"vivary/schema/wording"
)

// Lot is one feeder in one size: what the meals take of it, and what there is.
type Lot struct {
	Prey  plan.Prey
	Sheet *plan.FeederSheet // nil for a feeder without one
	// Use is how many the meals of the plan take on each day of the window: those that stand,
	// after holds, absences and what the log brought, for the stage that each group is in by
	// then.
	Use []int
	// Young is how many of these are for groups that cannot wait until a parcel comes that weather
	// holds back: young, and others whose sheet gives them less time than that.
	Young  []int
	Broods []Brood // young that are expected, which will take it too

	Supplies []*Supply
	Tubs     []*plan.Store
	Cultures []*Culture

	Known bool    // the log, or a tub of the plan, says how many there are
	Hand  float64 // how many there are today, where that is known
	Short Short
	Held  *Held // nil where the young have enough, were the next parcel held

	// From is the day of the window from which on it is looked whether there is enough, and Begin
	// how many there are on its morning.
	From  int
	Begin float64

	bred   bool                     // a culture of the plan yields it too
	daily  float64                  // the share that dies on a day
	arrive []float64                // on each day of the window
	log    map[string][]*plan.Event // up to today, by store
	meals  []*roster.Entry
	firsts []first
}

// Short is on which days there is not enough.
type Short struct {
	Days  []int // places in the window, in order
	First int   // the first of them, -1 for none
	Lacks int   // how many lack on the first
	Who   []Eater
}

// Eater is a group that has no food on a day, with how long it may go without.
type Eater struct {
	Entry *roster.Entry
	Stage string
	Takes int
	Fasts int  // days by the sheet, 0 for not known
	Waits bool // the sheet says that a meal that comes later than that harms nothing
}

// Brood is young that are expected, and eat this once they are there.
type Brood struct {
	Life *life.Enclosure
	From civil.Date // the earliest day of a first meal
	To   civil.Date // the latest
	// Few and Many are how many young by the sheet; Weekly is how many items a week are enough
	// for them with a chance of youngChance.
	Few, Many int
	Weekly    int
}

// youngChance is how sure the food of young is to be enough: one without food counts as much
// as nineteen left over. Our own choice; keepers of young choose no less.
var youngChance = Covered(19, 1)

// One and Many are what the lot is called in a sentence: "small cricket", "small crickets".
func (l *Lot) names() (one, many string) {
	one, many = l.Prey.Feeder, l.Prey.Feeder+"s"
	if f := l.Sheet; f != nil {
		one, many = strings.ReplaceAll(f.Name.V, "-", " "), f.Plural.Or(f.Name.V+"s")
	}
	if s := l.Prey.Size; s != "" && !strings.Contains(one, s) {
		one, many = s+" "+one, s+" "+many
	}
	return one, many
}

// Many is what several of the lot are called: "small crickets".
func (l *Lot) Many() string { _, many := l.names(); return many }

// Of is a number of the lot: "1 small cricket", "2 small crickets".
func (l *Lot) Of(n int) string { one, many := l.names(); return wording.Count(n, one, many) }

// lots gathers the lots of the meals and of the stores, by name.
func lots(r *roster.Roster) []*Lot {
	of := map[plan.Prey]*Lot{}
	lot := func(p plan.Prey) *Lot {
		l := of[p]
		if l == nil {
			l = &Lot{Prey: p, Sheet: r.Plan.Library.Feeder(p.Feeder), Use: make([]int, r.Horizon.Days), Young: make([]int, r.Horizon.Days), arrive: make([]float64, r.Horizon.Days)}
			l.Short.First = -1
			of[p] = l
		}
		return l
	}
	for i := range r.Of {
		for k := range r.Of[i] {
			switch e := &r.Of[i][k]; {
			case isMeal(e):
				take(r, e, lot)
			case e.Once != nil && e.Once.Meal && e.Group != nil:
				offered(r, e, r.Of[i], lot)
			}
		}
		broods(r, r.Lives[i], lot)
	}
	for _, s := range r.Plan.Stores {
		if s.Of.Feeder != "" {
			lot(s.Of)
		}
	}
	return slices.SortedFunc(maps.Values(of), func(a, b *Lot) int {
		return cmp.Or(cmp.Compare(a.Prey.Feeder, b.Prey.Feeder), cmp.Compare(place(a), place(b)), cmp.Compare(a.Prey.Size, b.Prey.Size))
	})
}

// place is the place of a size among those of its feeder.
func place(l *Lot) int {
	if l.Sheet == nil {
		return 0
	}
	return slices.IndexFunc(l.Sheet.Sizes, func(s *plan.FeederSize) bool { return s.Name.V == l.Prey.Size })
}

func isMeal(e *roster.Entry) bool {
	return e.Kind == schema.KindFeed && e.Meal != nil && e.Once == nil && len(e.Menu) > 0
}

// take adds what the meals of an entry take.
func take(r *roster.Roster, e *roster.Entry, lot func(plan.Prey) *Lot) {
	h := r.Horizon
	noted := map[*Lot]bool{}
	var who patience
	before := -1
	for i := e.Days.Next(0); i >= 0; i = e.Days.Next(i + 1) {
		if n := taken(r, e, i); n > 0 {
			l := lot(e.Portion(i).Prey)
			l.Use[i] += n
			if i >= h.Today && who.cannotWait(r, e, i, before) {
				l.Young[i] += n
			}
			if !noted[l] && i >= h.Today {
				noted[l] = true
				l.meals = append(l.meals, e)
			}
		}
		before = i
	}
}

// patience is how long the animals of a meal can wait, kept while their stage is the same.
type patience struct {
	known bool
	of    Eater
}

// cannotWait reports whether the group of a meal on day i may not wait for a parcel that is held
// back: the youngest never, others where the sheet says that it harms them and the time since the
// meal before is too long by then.
func (p *patience) cannotWait(r *roster.Roster, e *roster.Entry, i, before int) bool {
	if stage := e.Group.Stage(r.Horizon.Date(i)); !p.known || stage != p.of.Stage {
		p.known, p.of = true, eater(r, e, i, 0)
	}
	if at := stageAt(p.of.Stage); at >= 0 && at <= stageAt("young") {
		return true
	}
	return p.of.Fasts > 0 && !p.of.Waits && before >= 0 && i-before+held > p.of.Fasts
}

// offered adds a meal that the log brought, such as the first after a moult: it stands in place
// of a usual one, and is one item for each animal of what comes next in the usual menu, since
// nobody orders another size for one meal.
func offered(r *roster.Roster, e *roster.Entry, of []roster.Entry, lot func(plan.Prey) *Lot) {
	for i := e.Days.Next(0); i >= 0; i = e.Days.Next(i + 1) {
		n := e.Group.Count(r.Horizon.Date(min(i, r.Horizon.Today)))
		if p := nextPrey(of, e.Group, i); p.Feeder != "" && n > 0 {
			l := lot(p)
			l.Use[i] += n
			l.firsts = append(l.firsts, first{e, i, n})
		}
	}
}

// first is a meal that the log brought.
type first struct {
	entry  *roster.Entry
	day, n int
}

// nextPrey is what a group gets at its next usual meal from day i on; no feeder where there is
// none.
func nextPrey(of []roster.Entry, g *life.Group, i int) (p plan.Prey) {
	soonest := -1
	for k := range of {
		e := &of[k]
		if !isMeal(e) || e.Group != g {
			continue
		}
		if day := e.Days.Next(i); day >= 0 && (soonest < 0 || day < soonest) {
			if x := e.Portion(day); x != nil {
				soonest, p = day, x.Prey
			}
		}
	}
	return p
}

// taken is how many items an entry takes on day i, a begun one counted whole, as rounds have
// it: from today on for the animals that there are today.
func taken(r *roster.Roster, e *roster.Entry, i int) int {
	p := e.Portion(i)
	if p == nil || p.Prey.Feeder == "" {
		return 0
	}
	on := r.Horizon.Date(min(i, r.Horizon.Today))
	return int(math.Ceil(p.Items*float64(e.Group.Count(on)) - 1e-9))
}

// broods adds the young that are expected in an enclosure.
func broods(r *roster.Roster, l *life.Enclosure, lot func(plan.Prey) *Lot) {
	sheet := l.Plan.Sheet
	if sheet == nil {
		return
	}
	size := sheet.Figure(schema.FigureBroodSize, "")
	f := youngMeal(sheet)
	if size == nil || f == nil {
		return
	}
	for _, g := range l.Groups {
		w := birth(g)
		if w == nil || g.Count(r.Horizon.Now()) == 0 || counted(r, l, g) {
			continue
		}
		mothers := max(1, min(g.Animals.Count.V.Females, g.Count(r.Horizon.Now())))
		b := Brood{Life: l, From: w.From, To: w.Until, Few: int(size.Range.Low) * mothers, Many: int(size.Range.High) * mothers}
		if w.Kind == life.BirthWindow {
			least, most := span(sheet, schema.FigureOnMother)
			b.From, b.To = b.From+least, b.To+most
		}
		least, _ := span(sheet, schema.FigureFirstKilled)
		_, most := span(sheet, schema.FigureFirstMeal)
		b.From, b.To = b.From+least, b.To+most
		if b.To < r.Horizon.Now() {
			continue
		}
		mean, deviation := float64(b.Few+b.Many)/2, float64(b.Many-b.Few)/4 // nearly all lie between the two
		young := min(float64(b.Many), Enough(mean, deviation, youngChance))
		b.Weekly = Whole(young * f.PerAnimal.Or(1) * weekly(f))
		x := lot(f.Menu()[0].V)
		x.Broods = append(x.Broods, b)
	}
}

// counted reports whether the young of a mother are there and somebody counted them: then their
// meals stand in the roster.
func counted(r *roster.Roster, l *life.Enclosure, mother *life.Group) bool {
	return mother.Brood && slices.ContainsFunc(l.Groups, func(g *life.Group) bool { return g.Mother == mother && !g.Guessed && g.Count(r.Horizon.Now()) > 0 })
}

// birth is the window in which young of a group are born, or moult for the first time; nil for
// none.
func birth(g *life.Group) *life.Window {
	for i := range g.Windows {
		if w := &g.Windows[i]; w.Births() {
			return w
		}
	}
	return nil
}

// youngMeal is what a sheet feeds to the youngest that eat by themselves, or nil.
func youngMeal(s *plan.SpeciesSheet) *plan.Feeding {
	for _, f := range s.Feeding {
		if plan.Lists(f.Stages, "young") && len(f.Menu()) > 0 {
			return f
		}
	}
	return nil
}

// weekly is how often a week a meal is given.
func weekly(f *plan.Feeding) float64 {
	switch v := f.Every.V; {
	case len(f.On) > 0:
		return float64(len(f.On))
	case f.Every.Set() && v.Unit == quantity.Day:
		return 7 / float64(max(1, v.N))
	case f.Every.Set() && v.Unit == quantity.Week:
		return 1 / float64(max(1, v.N))
	case f.AfterLast.Set():
		return 7 * day / max(day, f.AfterLast.V.Value)
	}
	return 1
}

func span(s *plan.SpeciesSheet, of *schema.Figure) (least, most civil.Date) {
	f := s.Figure(of, "")
	if f == nil {
		return 0, 0
	}
	return civil.Date(f.Range.Low / day), civil.Date(math.Ceil(f.Range.High / day))
}
