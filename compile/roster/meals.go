package roster

import (
	"vivary/compile/horizon"
	"vivary/compile/life"
	"vivary/compile/recur"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/civil"
)

// menuEpoch is the day from which the turns of a menu are counted, so that they
// do not depend on the day of the build.
var menuEpoch = civil.Must(2024, 1, 1)

// meals adds the meals of a group: those of the plan, else those that the species
// sheet brings for its stage. Each live meal brings a look for leftovers.
func (b *builder) meals(g *life.Group) {
	e := b.life.Plan
	if g.Count(b.s.Horizon.From) == 0 {
		return // what the last of them left is looked for after a death
	}
	var own, sheet *plan.Feeding
	for _, f := range e.Feeding {
		if f.Name.V == g.Animals.Name.V {
			own = f
		}
	}
	sheet = sheetMeal(e.Sheet, g.Stage(b.s.Horizon.From))
	f := own
	if f == nil {
		f = sheet
	}
	if f == nil || f.Off.V {
		return
	}
	if own != nil && sheet != nil {
		f = complete(own, sheet)
	}
	identity := e.Formerly.Or(e.Name.V) + "/feed " + f.Timing.Formerly.Or(g.Animals.Formerly.Or(g.Animals.Name.V))
	w, ok := b.when(&f.Timing, f.At, identity, g.Fed, g.HasFed)
	if !ok {
		return
	}
	after := leftoversAfter(f)
	if f.AfterLast.Set() {
		w.rules = b.fromOffered(g, w.rules, wholeDays(f.AfterLast.V), after)
	}
	name := "feed " + g.Animals.Formerly.Or(g.Animals.Name.V)
	cited := plan.Cited{Source: f.Source, Quality: f.Quality, Seen: f.Seen}
	rounds := b.rounds.of(e, &f.Timing, w.clocks)
	for _, r := range rounds {
		base := Entry{Life: b.life, Group: g, Round: r, Origin: f.At, Cited: cited, FromSheet: own == nil, Timing: &f.Timing, Meal: f}
		meal := base
		meal.Name, meal.Kind, meal.Rules, meal.Task, meal.Minutes = name, schema.KindFeed, w.rules, "Feed", minutes(&f.Timing, schema.KindFeed)
		meal.Menu = b.menu(f, w.rules)
		added := *b.add(meal)
		if !f.Killed.V {
			b.companion(base, &added, schema.KindLeftovers, "leftovers "+g.Animals.Formerly.Or(g.Animals.Name.V), after)
		}
		if f.GutLoad.V {
			b.companion(base, &added, schema.KindGutLoad, "gut-load "+g.Animals.Formerly.Or(g.Animals.Name.V), schema.KindGutLoad.OfMeal)
		}
	}
}

// leftoversAfter is how many days after a live meal what is left is taken out.
func leftoversAfter(f *plan.Feeding) int {
	if f.Leftovers.Set() {
		return wholeDays(f.Leftovers.V)
	}
	return schema.KindLeftovers.OfMeal
}

// companion adds what goes with a meal: something to do so many days after it, or
// before it.
func (b *builder) companion(s Entry, meal *Entry, kind *schema.CareKind, name string, after int) {
	s.Name, s.Kind, s.Task, s.Minutes, s.After = name, kind, kind.Phrase, kind.Minutes, after
	s.Moved = meal.Moved
	for _, r := range meal.Rules {
		if r, ok := r.Shift(after); ok {
			s.Rules = append(s.Rules, r)
		} else {
			s.Moved = true
		}
	}
	s.Keeper = b.keeper(&s)
	s.Days = b.days()
	h := b.s.Horizon
	for i := meal.Days.Next(0); i >= 0; i = meal.Days.Next(i + 1) {
		if k := i + after; k >= 0 && k < h.Days {
			s.Days.Add(k)
		}
	}
	// The meals beyond the ends of the horizon bring theirs too: today's leftovers
	// are those of yesterday's meal.
	if after > 0 {
		b.beyond(&s, meal, h.From-civil.Date(after), h.From)
	} else {
		b.beyond(&s, meal, h.Last()+1, h.Last()+1-civil.Date(after))
	}
	b.onRounds(&s)
	if kind == schema.KindLeftovers {
		b.leftBehind(&s, meal)
	}
	b.absences(&s)
	b.catchUp(&s)
	b.series = append(b.series, s)
}

// beyond adds what goes with the meals of the days from one until another, neither
// of which is on the horizon.
func (b *builder) beyond(s, meal *Entry, from, until civil.Date) {
	out := map[civil.Date]bool{}
	meal.EachHeld(from, until, func(d civil.Date) { out[d] = true })
	open, ends := meal.HeldFrom()
	for d := from; d < until; d++ {
		i := int(d - b.s.Horizon.From)
		given, changed := meal.past[i]
		if !changed {
			given = meal.planned(d) && !out[d] && !(ends && open <= d)
		}
		if given {
			s.Days.Add(i + s.After)
		}
	}
}

// complete returns a plan's meal with what it leaves open taken from the sheet's.
func complete(own, sheet *plan.Feeding) *plan.Feeding {
	if says(&own.Timing) && own.PerAnimal.Set() && len(own.Menu()) > 0 {
		return own
	}
	f := *own
	if !says(&f.Timing) {
		f.Every, f.On, f.Cron, f.AfterLast = sheet.Every, sheet.On, sheet.Cron, sheet.AfterLast
	}
	if !f.PerAnimal.Set() {
		f.PerAnimal = sheet.PerAnimal
	}
	if len(f.Menu()) == 0 {
		f.Prey, f.Rotate = sheet.Prey, sheet.Rotate
		if !f.Killed.Set() {
			f.Killed = sheet.Killed
		}
	}
	return &f
}

// sheetMeal returns the sheet's meals for a stage. An unknown stage gets those of
// the youngest that feeds by itself, which come most often.
func sheetMeal(s *plan.SpeciesSheet, stage string) *plan.Feeding {
	if stage == "newborn" {
		return nil
	}
	for _, f := range s.Feeding {
		if stage != "" && (len(f.Stages) == 0 || plan.Lists(f.Stages, stage)) {
			return f
		}
	}
	if stage != "" {
		return nil
	}
	for _, st := range schema.Stages[1:] {
		if f := sheetMeal(s, st.Name); f != nil {
			return f
		}
	}
	return nil
}

// menu returns the items of a meal with the days of their turns.
func (b *builder) menu(f *plan.Feeding, rules []recur.Rule) []Portion {
	items := f.Menu()
	per := f.PerAnimal.Or(1)
	if len(items) == 0 {
		return nil
	}
	h := b.s.Horizon
	menu := make([]Portion, len(items))
	for k := range items {
		menu[k] = Portion{Prey: items[k].V, Items: per}
	}
	if len(items) == 1 {
		// Days that are moved keep their only item.
		menu[0].Days = b.days()
		menu[0].Days.AddRun(0, h.Days, h.Days)
		return menu
	}
	all := b.days()
	for _, r := range rules {
		r.Fill(all, h)
	}
	turn := 0
	if n := int(h.From - menuEpoch); n > 0 {
		before := horizon.Horizon{From: menuEpoch, Days: n}
		set := before.New()
		for _, r := range rules {
			r.Fill(set, before)
		}
		turn = set.Count()
	}
	for k := range menu {
		menu[k].Days = b.days()
	}
	// A turn lasts until the next, so that a meal that is moved keeps its item.
	for i := 0; i < h.Days; {
		next := all.Next(i + 1)
		if next < 0 {
			next = h.Days
		}
		if all.Has(i) {
			turn++
		}
		k := (turn + len(menu) - 1) % len(menu)
		menu[k].Days.AddRun(i, next, h.Days)
		i = next
	}
	return menu
}
