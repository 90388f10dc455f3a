package roster

import (
	"vivary/compile/horizon"
	"vivary/compile/identity"
	"vivary/compile/life"
	"vivary/compile/recur"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/civil"
)

// menuEpoch is the day from which the turns of a menu are counted, so that they
// do not depend on the day of the build.
var menuEpoch = civil.Must(2024, 1, 1)

// meals adds the meals of a group, stage by stage: those of the plan, else those that
// the species sheet brings. Each live meal brings a look for leftovers.
func (b *builder) meals(g *life.Group) {
	if g.Count(b.Horizon.Now()) == 0 {
		return // what the last of them left is looked for after a death
	}
	for _, s := range b.spells(g) {
		b.spell(g, &s)
	}
}

// spell adds the meals of one stretch of days.
func (b *builder) spell(g *life.Group, s *spell) {
	e, f := b.life.Plan, s.meal
	w, ok := b.when(&f.Timing, f.At, b.mealID(g, s.stage, schema.KindFeed, f), g.Fed, g.HasFed)
	if !ok {
		return
	}
	if f.AfterLast.Set() {
		w.rules = b.fromOffered(g, w.rules, wholeDays(f.AfterLast.V))
	}
	w.rules = between(w.rules, s.from, s.until)
	cited := plan.Cited{Source: f.Source, Quality: f.Quality, Seen: f.Seen}
	all := b.rounds.of(e, &f.Timing, w.clocks)
	base := Entry{Life: b.life, Group: g, Origin: f.At, Cited: cited, FromSheet: s.of.own == nil, Timing: &f.Timing, Meal: f, Stage: s.stage, making: &making{first: s.from, last: s.until}}
	meal := base
	meal.ID, meal.Name = b.mealID(g, s.stage, schema.KindFeed, f), identity.Meal(schema.KindFeed, identity.Animals(g.Animals))
	meal.Kind, meal.Rules, meal.Task, meal.Minutes = schema.KindFeed, w.rules, schema.KindFeed.Phrase, b.minutes(&f.Timing, schema.KindFeed)
	meal.Menu = b.menu(f, w.rules)
	b.odd(&meal, all)
	var added []Entry
	b.inRounds(meal, all, several(&f.Timing, all), func(e Entry) { added = append(added, b.add(e)) })
	if !f.Killed.V {
		b.leftovers(base, added, all)
	}
	if f.GutLoad.V {
		b.companion(base, added, schema.KindGutLoad, schema.KindGutLoad.OfMeal, all, several(&f.Timing, all))
	}
}

// leftovers adds the look for what is left of live meals: in the rounds that are named for
// it, else in those of the meals.
func (b *builder) leftovers(base Entry, meals []Entry, all []*plan.Round) {
	f := base.Meal
	apart := several(&f.Timing, all)
	if n := float64(wholeDays(f.Leftovers.V)) * 24 * 60; f.Leftovers.Set() && n != f.Leftovers.V.Value {
		b.takenAs(f.Leftovers, leftoversOf, n, "whole days: leftovers are taken out in a round of another day than the meal")
	}
	if in := b.rounds.named(f.LookIn); len(in) > 0 {
		all, apart = in, len(plan.Wholes(in)) > 1
	}
	b.companion(base, meals, schema.KindLeftovers, leftoversAfter(f), all, apart)
}

// leftoversOf begins what is said of how long leftovers stay.
const leftoversOf = "leftovers after"

// mealID is the identity of the meals of a group, or of what goes with them. Those of
// a stage that follows another in the same window have its name too.
func (b *builder) mealID(g *life.Group, stage string, kind *schema.CareKind, f *plan.Feeding) identity.Identity {
	id := identity.OfMeal(b.life.Plan, kind, g.Animals, f)
	if stage != "" {
		id.Care += "/" + stage
	}
	return id
}

// leftoversAfter is how many days after a live meal what is left is taken out.
func leftoversAfter(f *plan.Feeding) int {
	if f.Leftovers.Set() {
		return wholeDays(f.Leftovers.V)
	}
	return schema.KindLeftovers.OfMeal
}

// companion adds what goes with meals: something to do so many days after them, or
// before them, in some rounds. It has no days of its own: it stands where the meals do, and so comes
// after all that was done to them; rounds and absences move it once more, since
// it falls on another day.
func (b *builder) companion(base Entry, meals []Entry, kind *schema.CareKind, after int, all []*plan.Round, apart bool) {
	base.ID = b.mealID(base.Group, base.Stage, kind, base.Meal)
	base.Name = identity.Meal(kind, identity.Animals(base.Group.Animals))
	base.Kind, base.Task, base.Minutes, base.After, base.Logged = kind, kind.Phrase, b.minutes(nil, kind), after, -1
	for _, r := range meals[0].Rules {
		if r, ok := r.Shift(after); ok {
			base.Rules = append(base.Rules, r)
		} else {
			base.Moved = true
		}
	}
	b.inRounds(base, all, apart, func(e Entry) {
		b.own(&e)
		e.Days = b.days()
		for k := range meals {
			b.follow(&e, &meals[k])
		}
		if kind == schema.KindLeftovers {
			b.leftBehind(&e)
		}
		b.onRounds(&e)
		b.absences(&e)
		b.catchUp(&e)
		b.inHand(&e)
		b.part(e)
	})
}

// follow adds to what goes with a meal the days of it, and why they are not as planned.
func (b *builder) follow(e, meal *Entry) {
	e.Moved = e.Moved || meal.Moved
	b.shift(e.Days, meal.Days, e.After)
	if k := meal.Logged + e.After; meal.Logged >= 0 && k >= 0 && k < b.Horizon.Days {
		e.Days.Add(k)
	}
	for _, c := range meal.Causes {
		if c.Why != PreyKilled && c.Why != CaughtUp && c.Why != Done {
			days := b.days()
			b.shift(days, c.Days, e.After)
			c.Days = days
			e.Causes = append(e.Causes, c)
		}
	}
}

// shift adds the days of one set to another, so many days later.
func (b *builder) shift(to, from horizon.Days, by int) {
	for i := from.Next(0); i >= 0; i = from.Next(i + 1) {
		if k := i + by; k >= 0 && k < b.Horizon.Days {
			to.Add(k)
		}
	}
}

// leftBehind adds looks for what is left of the meals that stand in place of others.
func (b *builder) leftBehind(e *Entry) {
	for _, at := range e.Group.Offered {
		i := b.attended(e, int(at-b.Horizon.From))
		b.put(e, Cause{Why: WithMeal, At: e.Origin}, i+e.After)
	}
}

// complete returns a plan's meal with what it leaves open taken from the sheet's.
func complete(own, sheet *plan.Feeding) *plan.Feeding {
	if sheet == nil || says(&own.Timing) && own.PerAnimal.Set() && len(own.Menu()) > 0 {
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
	if s == nil || stage == newborn {
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
	h := b.Horizon
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
