package schedule

import (
	"cmp"
	"runtime"
	"slices"
	"sync"

	"vivary/compile/horizon"
	"vivary/compile/life"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/civil"
)

// MaxSeries is how many series a collection may have.
const MaxSeries = 600_000

// DefaultRound is the time of the round that is used where a plan has none.
const DefaultRound civil.Clock = 19*60 + 30

// Make makes the schedule of a collection. lives are those of its enclosures, in
// the same order.
func Make(c *plan.Collection, lives []*life.Enclosure, h horizon.Horizon) *Schedule {
	s := &Schedule{Plan: c, Horizon: h, Lives: lives, People: people(c, h)}
	s.Rounds = append(s.Rounds, c.Rounds...)
	if len(s.Rounds) == 0 {
		s.Rounds = append(s.Rounds, madeRound("daily", DefaultRound))
	}
	r := newRounds(s)
	noted := map[*plan.SpeciesSheet]bool{nil: true}
	for _, l := range lives {
		r.note(l.Plan.Care, l.Plan.Feeding)
		if sheet := l.Plan.Sheet; !noted[sheet] {
			noted[sheet] = true
			r.note(sheet.Care, sheet.Feeding)
		}
	}
	s.clockChanges()
	parts := make([]builder, len(lives))
	Each(len(lives), func(i int) {
		parts[i] = builder{s: s, rounds: r, life: lives[i]}
		parts[i].enclosure()
	})
	n := 0
	for i := range parts {
		n += len(parts[i].series)
		s.Findings = append(s.Findings, parts[i].found.All...)
	}
	if n > MaxSeries {
		s.Findings = append(s.Findings, finding.Finding{Rule: ruleTooManySeries, Severity: finding.Error,
			Text: "there are more repeating cares than are read", Limit: "600,000 in a collection", Write: "split the collection"})
		return s
	}
	s.Of = make([][]Series, len(lives))
	for i := range parts {
		s.Of[i] = parts[i].series
	}
	s.In = make(map[*plan.Round][]*Series, len(s.Rounds))
	for x := range s.All() {
		s.In[x.Round] = append(s.In[x.Round], x)
	}
	return s
}

// Each calls do for 0 to n-1, from as many goroutines as there are processors.
func Each(n int, do func(int)) {
	workers := min(runtime.GOMAXPROCS(0), n)
	var wg sync.WaitGroup
	for w := range workers {
		wg.Add(1)
		go func() {
			defer wg.Done()
			for i := n * w / workers; i < n*(w+1)/workers; i++ {
				do(i)
			}
		}()
	}
	wg.Wait()
}

// builder makes the series of one enclosure.
type builder struct {
	s      *Schedule
	rounds *rounds
	life   *life.Enclosure
	series []Series
	found  finding.List
	slab   horizon.Days // day sets are cut from it
}

// days returns an empty day set.
func (b *builder) days() horizon.Days {
	n := horizon.Words(b.s.Horizon.Days)
	if len(b.slab) < n {
		b.slab = make(horizon.Days, 32*n)
	}
	d := b.slab[:n:n]
	b.slab = b.slab[n:]
	return d
}

func (b *builder) enclosure() {
	e := b.life.Plan
	if e.Sheet == nil {
		return // said already; without a sheet nothing is known
	}
	b.series = make([]Series, 0, 16)
	if b.deserted() {
		b.tasks()
		return
	}
	for _, c := range e.Care {
		b.care(c, b.sheetCare(c))
	}
	for _, c := range e.Sheet.Care {
		if k := c.What(); k != nil && k.Needs != nil && k.Needs.Heated && !e.Heated() {
			continue // there is nothing to test
		}
		if !replaced(e, c) && b.stageFits(c.Stages) {
			b.care(c, c)
		}
	}
	for _, g := range b.life.Groups {
		b.meals(g)
	}
	b.tasks()
}

// deserted reports whether all animals that lived here are dead or gone.
func (b *builder) deserted() bool {
	for _, g := range b.life.Groups {
		if g.Count(b.s.Horizon.From) > 0 {
			return false
		}
	}
	return len(b.life.Groups) > 0
}

// tasks adds what the log brought, and puts all series in their order.
func (b *builder) tasks() {
	add := func(g *life.Group, tasks, over []life.Task) {
		for i := range tasks {
			b.once(g, &tasks[i])
		}
		for i := range over {
			b.waiting(g, over[i])
		}
	}
	add(nil, b.life.Tasks, b.life.Over)
	for _, g := range b.life.Groups {
		add(g, g.Tasks, g.Over)
	}
	b.series = ranked(b.series)
}

// waiting adds a task of a day on which nobody was there: it waits for who comes next.
func (b *builder) waiting(g *life.Group, t life.Task) {
	round := b.rounds.usual(b.life.Plan)
	i := b.attended(round.Keeper.Or(b.s.People.Only), int(t.On-b.s.Horizon.From))
	if i >= 0 && i < b.s.Horizon.Days {
		t.On = b.s.Horizon.Date(i)
		b.once(g, &t)
	}
}

// ranked returns the series in the order of their kinds. A series is large, so that
// places are sorted and each is moved once.
func ranked(all []Series) []Series {
	order := make([]int, len(all))
	for i := range order {
		order[i] = i
	}
	slices.SortStableFunc(order, func(x, y int) int { return cmp.Compare(all[x].Kind.Rank, all[y].Kind.Rank) })
	out := make([]Series, len(all))
	for i, k := range order {
		out[i] = all[k]
	}
	return out
}

// standsFor reports whether a care of the plan's own takes the place of one of the
// sheet's: of the same name, or of the same kind. "other" is no kind in this: two
// such cares have nothing in common.
func standsFor(own, sheet *plan.Care) bool {
	kind := own.KindName()
	return own.Name.V == sheet.Name.V || kind == sheet.KindName() && kind != schema.KindOther.Name
}

// replaced reports whether the plan has a care of its own for one of the sheet's.
func replaced(e *plan.Enclosure, sheet *plan.Care) bool {
	return slices.ContainsFunc(e.Care, func(own *plan.Care) bool { return standsFor(own, sheet) })
}

// sheetCare returns the sheet's care that one of the plan's stands for, or nil: one
// for the animals that live here, else for those of another stage.
func (b *builder) sheetCare(own *plan.Care) *plan.Care {
	var other *plan.Care
	for _, x := range b.life.Plan.Sheet.Care {
		switch {
		case !standsFor(own, x):
		case b.stageFits(x.Stages):
			return x
		case other == nil:
			other = x
		}
	}
	return other
}

// stageFits reports whether a sheet's care is for a stage that the enclosure has,
// or may have: animals of unknown stage count as every stage.
func (b *builder) stageFits(stages []plan.Written[string]) bool {
	if len(stages) == 0 {
		return true
	}
	for _, g := range b.life.Groups {
		if g.Count(b.s.Horizon.From) == 0 {
			continue
		}
		stage := g.Stage(b.s.Horizon.From)
		if stage == "" || plan.Lists(stages, stage) {
			return true
		}
	}
	return false
}

// care adds the series of a care, one for each of its rounds. What the plan does
// not say of when it is done is taken from the sheet's, which is c itself where the
// plan has none of its own.
func (b *builder) care(c, sheet *plan.Care) {
	kind := c.What()
	if kind == nil || c.Off.V {
		return
	}
	t := &c.Timing
	if !says(t) && sheet != nil {
		merged := *t
		merged.Every, merged.On, merged.Cron, merged.AfterLast = sheet.Every, sheet.On, sheet.Cron, sheet.AfterLast
		t = &merged
	}
	last, has := b.life.Done[c.Name.V]
	w, ok := b.when(t, c.At, b.life.Plan.Formerly.Or(b.life.Plan.Name.V)+"/"+t.Formerly.Or(c.Name.V), last, has)
	if !ok {
		return
	}
	task := c.Task.Or(kind.Phrase)
	if task == "" {
		task = c.Name.V
	}
	if c.Amount.Set() {
		task += " " + c.Amount.V.String()
	}
	for _, r := range b.rounds.of(b.life.Plan, t, w.clocks) {
		b.add(Series{Life: b.life, Name: c.Name.V, Kind: kind, Round: r, Rules: w.rules, Task: task,
			Minutes: minutes(t, kind), Origin: c.At, Cited: plan.Cited{Source: c.Source, Quality: c.Quality, Seen: c.Seen}, FromSheet: c == sheet, Timing: t})
	}
}

func minutes(t *plan.Timing, kind *schema.CareKind) int {
	if t.Minutes.Set() {
		return int(t.Minutes.V.Value)
	}
	return kind.Minutes
}

// add fills in the days of a series: as planned, on days with a round, without
// what is held, and with somebody there.
func (b *builder) add(s Series) *Series {
	h := b.s.Horizon
	s.Keeper = b.keeper(&s)
	s.Days = b.days()
	for _, r := range s.Rules {
		r.Fill(s.Days, h)
	}
	if s.Once != nil {
		for k := range max(1, s.Once.Times) {
			if i, ok := h.Index(s.Once.On + civil.Date(k*s.Once.Interval)); ok {
				s.Days.Add(i)
			}
		}
	}
	if len(s.Rules) > 0 && s.Days.Count() == 0 && b.never(&s) {
		b.found.Add(finding.Finding{Rule: ruleNeverHappens, At: s.Origin, Text: s.Name + " does not come up on any day of the coming year", Write: "other days, or other from and until"})
	}
	b.onRounds(&s)
	b.hold(&s)
	b.absences(&s)
	b.inPlace(&s)
	b.catchUp(&s)
	b.series = append(b.series, s)
	return &b.series[len(b.series)-1]
}

// never reports whether a series without days on the horizon is a mistake: one
// whose time is over, or is still to come, is not.
func (b *builder) never(s *Series) bool {
	for _, r := range s.Rules {
		if _, ok := r.Next(b.s.Horizon.From); ok {
			return false
		}
		if _, until := r.Bounds(); !r.Never() && until < b.s.Horizon.From {
			return false
		}
	}
	return true
}

func (b *builder) keeper(s *Series) string {
	switch {
	case s.Timing != nil && s.Timing.Keeper.Set():
		return s.Timing.Keeper.V
	case s.Round.Keeper.Set():
		return s.Round.Keeper.V
	}
	return b.s.People.Only
}

// onRounds moves days on which the round is not held to the nearest on which it
// is, as far as the care's window allows. Days beyond the ends of the horizon may
// be moved onto it: yesterday's care is done today, whenever the plan is built.
func (b *builder) onRounds(s *Series) {
	if b.rounds.held[s.Round] == nil {
		return
	}
	free := s.FromSheet || s.Once != nil // the keeper has chosen no day
	window := 0
	switch {
	case s.Timing != nil && s.Timing.Window.Set():
		window = windowDays(s.Timing.Window.V)
	case free:
		window = 3
	}
	h := b.s.Horizon
	move := func(i int) bool {
		s.Moved = true
		for k := 1; k <= window; k++ {
			for _, to := range [2]int{i - k, i + k} {
				if b.rounds.on(s.Round, to) {
					b.put(s, to)
					return true
				}
			}
		}
		return false
	}
	for k := 1; k <= window; k++ {
		for _, i := range [2]int{-k, h.Days - 1 + k} {
			if s.planned(h.Date(i)) && !b.rounds.on(s.Round, i) {
				move(i)
			}
		}
	}
	said := free // the proof says whether what is left is enough
	for i := s.Days.Next(0); i >= 0; i = s.Days.Next(i + 1) {
		if b.rounds.on(s.Round, i) {
			continue
		}
		s.Days.Remove(i)
		if !move(i) && !said {
			said = true
			b.found.Add(finding.Finding{Rule: ruleOffRound, At: s.Origin,
				Text:  s.Name + " falls on " + h.Date(i).Words() + ", when there is no " + s.Round.Shown(),
				Write: "window = \"2 days\", other days, or a round on more days",
				Also:  []finding.Related{{At: s.Round.At, Text: "the round"}}})
		}
	}
}

// once adds a task that the log brought.
func (b *builder) once(g *life.Group, t *life.Task) {
	s := b.add(Series{Life: b.life, Group: g, Name: t.Name, Kind: t.Kind, Round: b.rounds.usual(b.life.Plan), Task: t.Text,
		Minutes: t.Kind.Minutes, High: t.High, Origin: t.At, Cited: t.Cited, Once: t})
	s.Moved = true
}
