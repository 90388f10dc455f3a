package life

import (
	"strconv"
	"strings"

	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/wording"
)

// growing is about young themselves, wherever they are: from when on they can eat, the
// stage that they will have, and whether they have eaten.
func (r *reader) growing(t *track) {
	if t.of == nil && t.stage().Stage != newborn {
		return
	}
	if t.stray.ok {
		r.where(t)
	}
	if t.orphan.ok && !(t.HasFed && t.Fed > t.orphan.on) {
		t.Asks = append(t.Asks, Ask{Name: "orphan/" + t.orphan.on.String(), From: t.orphan.on, Every: 1, Urgent: true, Harm: HarmStarving, At: t.orphan.at,
			Text:  r.young(t) + " without their mother: warm and damp, crushed prey once moulted; log fed, moved or died",
			Said:  r.young(t) + " have no mother since " + t.orphan.on.Words(),
			Write: "moved, and the enclosure that they are in; or died and how many"})
	}
	first, hold := r.reserves(t)
	if hold.State != nil {
		t.Holds = append(t.Holds, hold)
	}
	if first == 0 {
		if t.of == nil {
			r.fromPlan(t) // else they would wait for a meal for ever, and nobody be asked
		}
		return
	}
	if t.stage().Stage == newborn {
		next := Stretch{From: max(first, t.stage().From), Stage: "young", Instar: 2}
		if t.Sheet != nil && t.Sheet.StageOf(2) != "" {
			next.Stage = t.Sheet.StageOf(2)
		}
		t.Stages = append(t.Stages, next)
	}
	if t.of != nil && t.of.born.ok {
		r.firstMeal(t, first)
	}
	if t.of == nil && !t.entered.ok {
		r.fromPlan(t)
	}
}

// fromPlan asks about young of which the plan says that they are newborn, and no line of
// the log that they have moulted.
func (r *reader) fromPlan(t *track) {
	a := Ask{Name: "newborn/" + t.Animals.Name.V, At: t.Animals.Stage.At, Every: 7, From: r.weekday(t), Undated: true,
		Text:  "have they moulted? white: not yet; light brown: log first_moult; then killed pieces every 2 to 3 days",
		Said:  "since when " + t.Animals.Name.V + " are newborn is not written: nobody knows when they must be fed",
		Write: "the day of the birth as born; and first_moult in the log, on the day when it is seen"}
	if due := r.due(t); due != 0 {
		a.From, a.Undated, a.Every, a.Urgent, a.Rule = due-1, false, 1, true, ruleLate
		a.Said = "no first moult is logged of " + t.Animals.Name.V + ", born on " + t.Animals.Born.V.Words()
		a.Write = "the day of the moult with first_moult; or died"
	}
	t.Asks = append(t.Asks, a)
}

// reserves is the day of the first moult of young, 0 where nobody can know it, and the
// hold of the time before they can eat; one without a state is none.
func (r *reader) reserves(t *track) (first civil.Date, hold Hold) {
	hold = Hold{From: t.Stages[0].From, At: t.Animals.At}
	if t.Logged {
		hold.From = t.Since.V
	}
	first = r.firstDay(t)
	switch {
	case first == 0 && !r.onMother(t).ok:
		hold.State, hold.Until, hold.Open = r.state(t, schema.StateNewborn), r.h.Last()+1, true
		hold.Why, hold.End = "not moulted yet", "until their first moult is logged"
		return 0, hold
	case first == 0:
		// Since when they are is not known: they may be able to eat already.
		return t.Stages[0].From, Hold{}
	}
	from := first
	if due := r.due(t); due != 0 {
		from = min(from, due) // from the day on which it was due they were offered food
	} else {
		hold.From = max(hold.From, first) // of the days before nobody knew
	}
	hold.Until = after(from, t.days(schema.FigureFirstKilled, "young").or(firstOffer).low)
	if hold.From >= hold.Until {
		return first, Hold{}
	}
	hold.State, hold.Why, hold.End = r.state(t, schema.StateNewborn), "not long born", wording.Until(hold.Until)
	return first, hold
}

// firstDay is the day of the first moult of young: as logged, or the last day on which
// it is due by the sheet; 0 where nothing is known.
func (r *reader) firstDay(t *track) civil.Date {
	if t.of != nil && t.of.first.ok {
		return t.of.first.on
	}
	if t.stage().Stage != newborn && t.entered.ok {
		return t.entered.on
	}
	return r.due(t)
}

// due is the last day on which the first moult of young is due by the sheet, 0 where
// their birth is not known.
func (r *reader) due(t *track) civil.Date {
	riding := r.onMother(t)
	switch {
	case !riding.ok:
	case t.of != nil && t.of.born.ok:
		return after(t.of.born.on, riding.high) + 1
	case t.Animals.Born.Set():
		return after(t.Animals.Born.V, riding.high) + 1
	}
	return 0
}

// young says how many they are.
func (r *reader) young(t *track) string {
	if t.Guessed {
		return "young"
	}
	return wording.Count(t.now(), "young one", "young")
}

// firstMeal asks for the first meal of a brood until one is logged: what was planned
// is taken as done else, but of these every day counts.
func (r *reader) firstMeal(t *track, first civil.Date) {
	again, by, limit := r.firstMealAsked(t, first)
	if again == 0 {
		return
	}
	a := Ask{Name: "first-meal-young/" + t.of.name(), From: again, Until: max(by+1, again), Every: 1, Urgent: true, Harm: HarmStarving, At: t.Animals.At, Cited: limit.cited,
		Text:  r.young(t) + ": have they eaten? killed pieces today, by " + by.Words() + "; log " + t.called() + " fed",
		Short: "have the young eaten? killed pieces today; log " + t.called() + " fed", Aside: r.young(t) + ", by " + by.Words(),
		Said:  "no meal is logged of the " + strconv.Itoa(t.now()) + " " + t.Animals.Shown() + ", who can eat since " + first.Words(),
		Limit: "by " + wording.Days(limit.high) + " after their first moult",
		Write: t.called() + " fed, on the day when they ate; or died and how many"}
	if !t.Bears() { // what hatches hunts what moves
		a.Text = r.young(t) + ": have they eaten? small prey today, by " + by.Words() + "; log " + t.called() + " fed"
		a.Short = "have the young eaten? small prey today; log " + t.called() + " fed"
		a.Limit = "by " + wording.Days(limit.high) + " after they hatched"
	}
	if !t.of.first.ok { // whether they have moulted is asked in the same breath
		due := ", first moult due by " + (first - 1).Words()
		a.Text = r.young(t) + due + ": white: not yet; light brown: killed pieces today; log first_moult, " + t.called() + " fed"
		a.Short, a.Aside = "first moult due: white: not yet; light brown: killed pieces today; log first_moult, "+t.called()+" fed", r.young(t)
		late := r.lateMoult(t, t.of)
		a.Rule, a.At, a.Cited, a.Limit = late.Rule, late.At, late.Cited, late.Limit
		a.Said, a.Write = late.Said+", and no meal", late.Write+"; "+a.Write
	}
	t.Asks = append(t.Asks, a)
	a.Name, a.From, a.Until = "starving/"+t.of.name(), max(by+1, again), 0
	a.Text = r.young(t) + ", no meal logged, due by " + by.Words() + ": crushed prey now, get help; log " + t.called() + " fed, or died"
	a.Short, a.Aside = "young, no meal logged: crushed prey now, get help; log "+t.called()+" fed, or died", r.young(t)+", due by "+by.Words()
	if !t.of.first.ok {
		due := ", first moult due by " + (first - 1).Words()
		a.Text = r.young(t) + due + ": white: no food today, leave them; light brown: crushed prey now, get help; log first_moult, " + t.called() + " fed, or died"
		a.Short, a.Aside = "first moult due: white: no food today, leave them; light brown: crushed prey now, get help; log first_moult, "+t.called()+" fed, or died", r.young(t)
	}
	if !t.Bears() {
		a.Text, a.Short = strings.Replace(a.Text, "crushed", "small", 1), strings.Replace(a.Short, "crushed", "small", 1)
	}
	t.Asks = append(t.Asks, a)
}

// firstMealAsked is from when on a first meal of a brood is asked for and by when it is
// due; 0 for not at all.
func (r *reader) firstMealAsked(t *track, first civil.Date) (from, by civil.Date, limit span) {
	if t.HasFed && t.Fed >= first {
		return 0, 0, span{}
	}
	limit = t.days(schema.FigureFirstMeal, "young")
	if !limit.ok && !t.Bears() {
		return 0, 0, span{} // they eat the leaves and the wood that they hatch in
	}
	limit = limit.or(starves)
	if first+civil.Date(limit.high)+60 < r.today {
		return 0, 0, span{} // nobody can still be told anything of it that helps
	}
	by = after(first, limit.high)
	from = max(by-3, first+1)
	if t.refused.ok && t.refused.on >= first {
		from = max(from, t.refused.on+3) // it was offered
	}
	return from, by, limit
}

// called is what a keeper may call young in the log: the word alone will do while there
// is one brood in the box.
func (t *track) called() string {
	n := 0
	for _, o := range t.home.tracks {
		if o.of != nil && o.now() > 0 {
			n++
		}
	}
	if n == 1 && t.Logged {
		return "young"
	}
	return t.Animals.Name.V
}

// where asks where young are that were taken out.
func (r *reader) where(t *track) {
	t.Asks = append(t.Asks, Ask{Name: "where/" + t.Animals.Name.V, About: AboutPlace, From: t.stray.on, Every: 1, Urgent: true, Harm: HarmLost, At: t.stray.at,
		Text:  "where are the " + r.young(t) + " taken out " + t.stray.on.Words() + "? log moved and where to; feed and water them there",
		Short: "where are the young taken out? log moved and where to; feed and water them there", Aside: r.young(t) + ", " + t.stray.on.Words(),
		Said:  r.young(t) + " were taken out on " + t.stray.on.Words() + ", and to where is not written",
		Write: t.Animals.Name.V + " moved, and the enclosure that they are in"})
}
