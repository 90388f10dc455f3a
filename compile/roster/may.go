package roster

import (
	"slices"

	"vivary/compile/horizon"
	"vivary/compile/life"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/civil"
)

// What a person may do at an enclosure on a day is said here and nowhere else: entries,
// rounds, checks and reasons ask May.

// Access is what somebody may do at an enclosure on one day.
type Access struct {
	// Manner is how they may do anything: AsUsual, Hatch or Outside.
	Manner schema.Manner
	Live   bool // they may give live prey
	// Lacks is the skill for want of which they may not do more, "" for none; Hold is the
	// state that asks for it, nil where the species does.
	Lacks string
	Hold  *life.Hold
	// Barred says that they stand in, and the plan does not let them do that here.
	Barred bool
	// Team are those who are there and trained for the animals, who does it first, where
	// the round takes several people; Few says that they are fewer than it takes.
	Team []string
	Few  bool
}

// Does reports whether they may do a kind of care. Who is let no further than the hatch
// by a state gives the meals that states leave, killed.
func (a *Access) Does(k *schema.CareKind) bool {
	return a.Manner <= asks[k.Row] || k.Row == schema.RowLive && a.byHatch()
}

// byHatch reports whether a state lets them do what goes through the hatch, and no more.
func (a *Access) byHatch() bool { return a.Hold != nil && a.Manner == schema.Hatch && !a.Few }

// asks is the most restricted manner in which a row of care can be done at all. What
// is not named has to be done as usual.
var asks = [schema.Rows]schema.Manner{
	schema.RowFree: schema.Outside, schema.RowLook: schema.Outside, schema.RowReading: schema.Outside, schema.RowDevice: schema.Outside,
	schema.RowWater: schema.Hatch, schema.RowMist: schema.Hatch, schema.RowRemains: schema.Hatch,
}

// May says what whoever does an entry on day i may do at its enclosure.
//
// One's own keeper does all of it; whether they are trained for a species is a rule
// about the plan. Who stands in gives live prey only where they are trained to feed it,
// and opens neither a species whose venom is a danger to life nor one that must not be
// disturbed without being trained for it: of the latter, who is trained in feeding gives
// water and killed prey through the hatch, and anybody else looks from outside. Where a round takes more people than are
// there and trained, nobody enters alone: such venom stays shut, and others have their
// water through the hatch.
func (s *Shared) May(e *Entry, i int) Access {
	who, there := s.Doer(e, i)
	a := Access{Live: true}
	if !there || e.Rack != nil || e.Store != nil { // a thermometer of all opens no box
		return a
	}
	if who != e.Keeper {
		a.Live = s.trained(who, schema.SkillFeeding, i)
		a.Lacks, a.Hold = s.lacks(who, e.Life, i)
		a.Barred = !s.StandsIn(who, e.Life)
		switch {
		case a.Barred:
			a.Manner, a.Live = schema.Outside, false
		case a.Lacks == "":
		case a.Hold != nil && a.Live:
			a.Manner, a.Live = schema.Hatch, false
		default:
			a.Manner = schema.Outside
		}
	}
	if n := e.Crew().Or(1); n > 1 {
		a.Team = s.Team(who, e.Life, i)
		if a.Few = len(a.Team) < n; a.Few {
			a.Manner = max(a.Manner, alone(e.Life))
		}
	}
	return a
}

// Crew is how many people it takes for an entry, as the round, the room or the enclosure says.
func (e *Entry) Crew() plan.Written[int] {
	n := e.Round.People
	if e.Rack != nil || e.Store != nil {
		return n
	}
	if place := e.Plan().Place; place != nil && place.People.Or(1) > n.Or(1) {
		n = place.People
	}
	if own := e.Plan().People; own.Or(1) > n.Or(1) {
		n = own
	}
	return n
}

// StandsIn reports whether somebody may stand in for others at an enclosure.
func (s *Shared) StandsIn(who string, l *life.Enclosure) bool {
	k := s.Plan.Keeper(who)
	return k == nil || k.StandsIn(l.Plan)
}

// alone is what one person does where two are needed.
func alone(l *life.Enclosure) schema.Manner {
	if slices.Contains(Skills(l), schema.SkillVenom) {
		return schema.Outside
	}
	return schema.Hatch
}

// lacks returns the skill for want of which a stand-in may not open an enclosure on day i.
func (s *Shared) lacks(who string, l *life.Enclosure, i int) (string, *life.Hold) {
	if slices.Contains(Skills(l), schema.SkillVenom) && !s.trained(who, schema.SkillVenom, i) {
		return schema.SkillVenom, nil
	}
	if h := s.Undisturbed(l, i); h != nil && !s.trained(who, schema.SkillBreeding, i) {
		return schema.SkillBreeding, h
	}
	return "", nil
}

// Skills are what somebody has to be trained in to work inside with a species.
func Skills(l *life.Enclosure) []string {
	var out []string
	if saidOf(l, schema.FigureVenom, "medically significant") {
		out = append(out, schema.SkillVenom)
	}
	if saidOf(l, schema.FigureHairs, "thrown") {
		out = append(out, schema.SkillHairs)
	}
	return out
}

// saidOf reports whether a figure of an enclosure's species has a word.
func saidOf(l *life.Enclosure, figure *schema.Figure, word string) bool {
	return l.Plan.Sheet != nil && saysOneOf(l.Plan.Sheet, figure, []string{word})
}

// trained reports whether somebody's training in a skill holds on day i.
func (s *Shared) trained(who, skill string, i int) bool {
	k := s.Plan.Keeper(who)
	return k != nil && k.TrainedOn(skill, s.Horizon.Date(i))
}

// Untrained returns the first of some skills that a keeper was never shown, or "". That a
// training has ended is no reason to stay away from one's own animals, or to leave somebody alone
// with them: training-over says it.
func (s *Shared) Untrained(who string, skills []string) string {
	k := s.Plan.Keeper(who)
	for _, skill := range skills {
		if k == nil || !k.TrainedIn(skill) {
			return skill
		}
	}
	return ""
}

// Team returns who is there on day i and trained for the animals of an enclosure: first
// of all is the first named, where they are.
func (s *Shared) Team(first string, l *life.Enclosure, i int) []string {
	var out []string
	skills := Skills(l)
	for _, k := range s.Plan.Keepers {
		name := k.Name.V
		there := s.People.There(name, i) || name == first && s.People.comes(name, i) // on a rest day that they work
		if !there || s.Untrained(name, skills) != "" {
			continue
		}
		if out = append(out, name); name == first {
			copy(out[1:], out)
			out[0] = name
		}
	}
	return out
}

// quiet are the states in which animals are disturbed by nobody who is not trained in
// breeding, each with how many days of it count; 0 for all of them. A moult is over
// within hours, and soft fangs and claws matter most in the first two days.
var quiet = []struct {
	state *schema.State
	days  int
}{
	{schema.StateGravidLate, 0}, {schema.StateBirth, 0}, {schema.StateBrood, 0}, {schema.StateSac, 0},
	{schema.StateYoungRound, 0}, {schema.StateNewborn, 0}, {schema.StateMoulting, 2}, {schema.StateSoft, 2},
}

// openFor is for how many days from today a state is taken to go on of which the log
// does not say when it ends: what is to come after is judged when it has come (common
// practice, no source).
const openFor = 60

// Undisturbed returns the state on day i for which an enclosure is opened only by
// somebody who is trained in breeding, or nil.
func (s *Shared) Undisturbed(l *life.Enclosure, i int) *life.Hold {
	on := s.Horizon.Date(i)
	for _, g := range l.Groups {
		if g.Count(on) == 0 {
			continue
		}
		for k := range g.Holds {
			for _, q := range quiet {
				if h := &g.Holds[k]; h.State != nil && h.State.Name == q.state.Name && s.lasts(h, q.days, on) {
					return h
				}
			}
		}
	}
	return nil
}

// lasts reports whether a hold is taken to go on on a day: for so many days where they
// are given, from today where it is open.
func (s *Shared) lasts(h *life.Hold, days int, on civil.Date) bool {
	until, today := h.Until, s.Horizon.Now()
	if h.Open {
		until = min(until, max(h.From, today)+openFor)
	}
	if days > 0 {
		from := h.From
		if h.Open {
			from = max(from, today)
		}
		until = min(until, from+civil.Date(days))
	}
	return h.From <= on && on < until
}

// Ring returns whom a person in front of an enclosure rings on day i: somebody else who
// is there and trained for it, else whose enclosure it is, else anybody else; "" for
// nobody.
func (s *Shared) Ring(e *Entry, i int) string {
	who, _ := s.Doer(e, i)
	skills := Skills(e.Life)
	if s.Undisturbed(e.Life, i) != nil {
		skills = append(skills, schema.SkillBreeding)
	}
	for _, k := range s.Plan.Keepers {
		if k.Name.V != who && len(skills) > 0 && s.People.There(k.Name.V, i) && s.Untrained(k.Name.V, skills) == "" {
			return k.Name.V
		}
	}
	if e.Keeper != "" && e.Keeper != who {
		return e.Keeper
	}
	for _, k := range s.Plan.Keepers {
		if k.Name.V != who {
			return k.Name.V
		}
	}
	return ""
}

// Opens returns the first day from i on when somebody comes who may open the enclosure of
// an entry.
func (s *Shared) Opens(e *Entry, i int) int {
	for i = s.People.Present(e.Keeper, i); e.Shut != nil && i < s.Horizon.Days && e.Shut.Has(i); {
		i = s.People.Present(e.Keeper, i+1)
	}
	return i
}

// shut notes the days on which whoever does an entry may not open its enclosure, or only
// the hatch.
func (b *builder) shut(e *Entry) {
	add := func(i int) {
		a, days := b.May(e, i), &e.Shut
		if a.Manner == schema.AsUsual {
			return
		}
		if a.byHatch() {
			days = &e.Hatch
		}
		if *days == nil {
			*days = b.days()
		}
		(*days).Add(i)
	}
	if e.Crew().Or(1) > 1 {
		for i := b.Horizon.Today; i < b.Horizon.Days; i++ {
			add(i)
		}
	} else if d := b.People.Of(e.Keeper); d != nil {
		for i := d.Visits.Next(b.Horizon.Today); i >= 0; i = d.Visits.Next(i + 1) {
			add(i)
		}
	}
}

// forced reports whether an entry is a meal that the plan has live, whoever gives it.
func (e *Entry) forced() bool { return e.isMeal() && e.Meal.Killed.Set() && !e.Meal.Killed.V }

// fit reports whether whoever does an entry on day i may do it.
func (b *builder) fit(e *Entry, i int) bool {
	a := b.May(e, i)
	return a.Does(e.Kind) && (a.Live || !e.forced())
}

// unfit returns the days on which whoever does an entry may not do it, or nil for none.
func (b *builder) unfit(e *Entry) horizon.Days {
	d := b.People.Of(e.Keeper)
	if e.Shut == nil && e.Hatch == nil && (d == nil || !e.forced()) {
		return nil
	}
	look := b.days()
	if d != nil && e.forced() {
		look.Union(d.Visits)
	}
	for _, days := range []horizon.Days{e.Shut, e.Hatch} {
		if days != nil {
			look.Union(days)
		}
	}
	var out horizon.Days
	for i := look.Next(b.Horizon.Today); i >= 0; i = look.Next(i + 1) {
		if !b.fit(e, i) {
			if out == nil {
				out = b.days()
			}
			out.Add(i)
		}
	}
	return out
}

// fit returns a keeper's days without the visits of those who may not do the entry:
// for it, nobody comes on those.
func (b *builder) unless(d *Duty, unfit horizon.Days) *Duty {
	if unfit == nil || !unfit.Intersects(d.Visits) {
		return d
	}
	out := *d
	out.Visits = d.Visits.Clone()
	out.Visits.Subtract(unfit)
	return &out
}

// notDone says of days on which somebody is there who may not do an entry that this is
// why it is not done, of those too to which it would have been moved; and takes out those
// that still stand.
func (b *builder) notDone(e *Entry, unfit, planned horizon.Days) {
	d := b.People.Of(e.Keeper)
	for i := planned.Next(b.Horizon.Today); i >= 0; i = planned.Next(i + 1) {
		at := i
		if d != nil && d.Away.Has(i) && !d.Visits.Has(i) {
			at = b.nextRound(e, d, i)
		}
		if at >= b.Horizon.Days || !unfit.Has(at) || at != i && e.Days.Has(at) {
			continue
		}
		c := b.untrained(e, at)
		b.take(e, c, at)
		if c.Why == TooFew {
			b.enough(e, unfit, c, at)
		}
	}
}

// untrained is why an entry is not done on day i by whoever is there.
func (b *builder) untrained(e *Entry, i int) Cause {
	a := b.May(e, i)
	c := Cause{Why: Untrained, Hold: a.Hold, At: e.Crew().At}
	if a.Few && a.Lacks == "" && !a.Barred && !a.Does(e.Kind) {
		c.Why = TooFew
	}
	if c.Away = b.awayOn(e, &a, i); c.Away != nil {
		c.At = c.Away.At
	}
	return c
}

// enough puts what falls on day i, when too few are there, on the first day after it
// with enough of them: a meal only where the animals cannot wait for the next.
func (b *builder) enough(e *Entry, unfit horizon.Days, c Cause, i int) {
	if e.After != 0 {
		return // it goes with its meal
	}
	to := i
	for to < b.Horizon.Days && (unfit.Has(to) || !b.People.there(e.Keeper, to) || !b.on(e, to)) {
		to++
	}
	if e.isMeal() {
		most, _ := b.mealGaps(e, i)
		if next := e.Days.Next(i); next >= 0 && next-b.lastMeal(e, i) <= most {
			return
		}
	}
	b.put(e, Cause{Why: Enough, Away: c.Away, At: c.At}, to)
}

// awayOn returns the absence for which too few who may do an entry are there on day i:
// its keeper's, or else of one of those who would make up the number.
func (b *builder) awayOn(e *Entry, a *Access, i int) *plan.Away {
	if r := b.AwayOn(e.Keeper, i); r != nil {
		return r.block(i)
	}
	if !a.Few {
		return nil
	}
	skills := Skills(e.Life)
	for _, d := range b.People.all {
		for k := range d.Runs {
			if r := &d.Runs[k]; r.From <= i && i < r.To && b.Untrained(d.Keeper, skills) == "" {
				return r.block(i)
			}
		}
	}
	return nil
}
