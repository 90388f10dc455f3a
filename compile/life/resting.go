package life

import (
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/civil"
)

// bring adds the tasks of one time of a season: the steps of the heat, the last
// leftovers, the weekly weight, the first meal; and what its note says.
func (r *reader) bring(x *Rest) {
	s, name := x.Season, x.Season.Name.V
	task := func(what string, kind *schema.CareKind, on civil.Date, text string) *Task {
		r.out.Tasks = append(r.out.Tasks, Task{Name: "season/" + name + "/" + what + on.String(), Kind: kind, On: on, Text: text, At: s.At})
		return &r.out.Tasks[len(r.out.Tasks)-1]
	}
	r.refuse(x, task)
	if x.From == x.Until || !x.within(r.h) {
		return
	}
	note := ""
	if s.Note.Set() {
		note = "; " + s.Note.V
	}
	if x.Fast < x.From && r.anyEats() {
		task("last-meal/", schema.KindLeftovers, x.Fast, "no meals from today, "+name+" from "+x.From.Short()+": take out leftovers, leave the heat as it is")
	}
	if note != "" && (len(x.steps) == 0 || x.steps[0].on > x.From) {
		task("", schema.KindPrepare, x.From, name+" begins"+note)
	}
	for _, step := range x.steps {
		task("", schema.KindPrepare, step.on, x.words(step)+note).Minutes = 1
	}
	if x.isDark && x.heated {
		task("test/", schema.KindDeviceTest, x.On, "the heater is on again after "+name+": test that its thermostat switches it off")
	}
	if x.Rest && r.weighs() {
		t := task("weigh/", schema.KindWeigh, x.From, "weigh: more than 10 % lost since "+name+" began? end it")
		t.Interval, t.Times = 7, r.weeks(x.From, x.Until)
	}
	if x.Fast < x.From {
		r.firstMeals(x)
	}
}

// heldSoon is how many days before the last meal of a rest it is said that the animals
// must not rest, and heldDaily for how many it is said each day; then weekly.
const heldSoon, heldDaily = 14, 7

// refuse says first of all that the animals must not rest: from when their meals would
// end, or from when it was seen.
func (r *reader) refuse(x *Rest, task func(string, *schema.CareKind, civil.Date, string) *Task) {
	planned, until := x.Planned()
	if len(x.Unfit) == 0 || until <= r.today || r.today < planned-usualFullHeat-heldSoon {
		return
	}
	u := x.Unfit[0]
	from, text := max(planned-usualFullHeat, u.From+1), "leave out "+x.Season.Name.V+", "+u.Why+": heat and meals as usual"
	daily := max(planned, from) + heldDaily
	if x.Until > x.From {
		daily, until, text = min(from+heldDaily, until), from, "end "+x.Season.Name.V+", "+u.Why+": heat up by steps"
		if x.isDark {
			text = "end " + x.Season.Name.V + ", " + u.Why + ": heater on, heat up by steps"
		}
	}
	say := func(what string, on civil.Date, every, times int) {
		if times > 0 {
			t := task(what, schema.KindPrepare, on, text)
			t.High, t.Interval, t.Times, t.Minutes, t.At = true, every, times, 1, u.At
		}
	}
	say("held/", from, 1, int(daily-from))
	say("held-still/", daily+6, 7, r.weeks(daily+6, until))
}

// firstMeals puts the one small item that breaks the fast, for each group that is fed.
func (r *reader) firstMeals(x *Rest) {
	for _, g := range r.out.Groups {
		if g.Count(x.FirstMeal) > 0 && eats(r.out.Plan, g, x.FirstMeal) {
			g.Tasks = append(g.Tasks, Task{Name: "season/" + x.Season.Name.V + "/first-meal/" + x.Until.String(), Kind: schema.KindFeed, On: x.FirstMeal,
				Text: "first meal after " + x.Season.Name.V + ": one small killed item; out next day if it is left", Meal: true, Instead: true, Killed: true, At: x.Season.At})
		}
	}
}

func (r *reader) anyEats() bool {
	for _, g := range r.out.Groups {
		if eats(r.out.Plan, g, r.today) {
			return true
		}
	}
	return false
}

// eats reports whether a group has meals, by the plan or the sheet of its species.
func eats(e *plan.Enclosure, g *Group, on civil.Date) bool {
	if f := e.FeedingOf(g.Animals); f != nil {
		return !f.Off.V
	}
	if g.Sheet == nil {
		return false
	}
	for _, f := range g.Sheet.Feeding {
		if stage := g.Stage(on); len(f.Stages) == 0 || stage == "" || plan.Lists(f.Stages, stage) {
			return true
		}
	}
	return false
}

// weighs reports whether the animals are weighed now and then: then they are weighed
// weekly in a rest.
func (r *reader) weighs() bool {
	of := func(all []*plan.Care) (is, off bool) {
		for _, c := range all {
			if c.What() == schema.KindWeigh {
				return true, c.Off.V
			}
		}
		return false, false
	}
	is, off := of(r.out.Plan.Care)
	if !is && r.sheet != nil {
		is, off = of(r.sheet.Care)
	}
	return is && !off
}
