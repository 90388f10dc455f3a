package stock

import (
	"slices"
	"strconv"

	"vivary/compile/life"
	"vivary/compile/roster"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/quantity"
	"vivary/schema/wording"
)

// upkeep is something that is done for feeders again and again.
type upkeep struct {
	name, task string
	every      int // days
	wet        bool
	cleans     bool
}

// usual is what is done for a feeder whose sheet does not say. How often is common practice, no
// source; that a box with dead crickets makes phorid flies within three weeks, a generation at
// 25 C: Journal of Medical Entomology tjw019.
var usual = []upkeep{
	{task: "Food and water gel for the feeders, no open dish", every: 2, wet: true},
	{task: "Take out dead feeders and frass (mask and gloves on, no dry sweeping: the dust harms lungs); mites, mould, many dead: log crashed", every: 7, cleans: true},
}

// wetText is what is done the day after wet food was given; common practice, no source.
const wetText = "Take out wet food of the day before"

// frozen is what is done for feeders that are dead and frozen; common practice, no source.
var frozen = []upkeep{{task: "Freezer cold, packs dry? What is past its date goes out", every: 30, cleans: true}}

// upkeepOf is what is done for a feeder in a tub or in a culture.
func upkeepOf(f *plan.FeederSheet, where string) []upkeep {
	if f == nil {
		return usual
	}
	var out []upkeep
	for _, u := range f.UpkeepIn(where) {
		out = append(out, upkeep{u.Name.V, u.Task.V, step(u.Every.V), u.Wet.V, u.Cleans.V})
	}
	if len(out) == 0 {
		return usual
	}
	return out
}

// step is an interval in days, a year at the most.
func step(v quantity.Interval) int {
	switch n := max(1, min(v.N, 365)); v.Unit {
	case quantity.Day:
		return n
	case quantity.Week:
		return min(7*n, 365)
	case quantity.Month:
		return min(30*n, 365)
	}
	return 365
}

// tend puts the care of the feeders themselves into the rounds. The first of each kind has the
// name of its kind, so that the log need not know what a sheet calls it; what the plan says of
// food is of the first that is food, or of the first where none is.
func (t *tasks) tend(where string, own *plan.Tending) {
	all := upkeepOf(t.store.Sheet, where)
	if x := t.store.Tub; x != nil && x.Frozen.V {
		all = frozen
	}
	food := max(0, slices.IndexFunc(all, func(u upkeep) bool { return !u.cleans }))
	named := map[*schema.CareKind]bool{}
	for i, u := range all {
		kind := schema.KindTend
		if u.cleans {
			kind = schema.KindClear
		}
		c := roster.Chore{Name: kind.Name, Kind: kind, Text: wording.Prose(u.task, t.store.Stop.Units), Every: u.every, At: t.store.At}
		if named[kind] {
			c.Name += "/" + u.name
		}
		named[kind] = true
		if i == food {
			if own.Tend.Set() {
				c.Every = step(own.Tend.V)
			}
			u.wet = own.WetFood.Or(u.wet)
		}
		t.chores = append(t.chores, c)
		if u.wet && c.Every > 1 {
			w := roster.Chore{Name: life.WetFood, Of: c.Name, After: 1, Kind: schema.KindTend, Text: wetText, Every: c.Every, At: t.store.At}
			if i != food {
				w.Name += "/" + u.name
			}
			t.chores = append(t.chores, w)
		}
	}
}

// after returns the first day from one on on which somebody does the round; the day itself where
// there is none.
func (t *tasks) after(d civil.Date) civil.Date {
	h := t.r.Horizon
	if i, in := h.Index(d); in {
		if k := t.there.Next(i); k >= 0 {
			return h.Date(k)
		}
	}
	return d
}

// crashed puts what is to be done after a crash into the rounds, and leaves out the care of what
// is empty. Cleaning, and a week without any, are common practice, no source.
func (t *tasks) crashed(on civil.Date) {
	if on == 0 {
		return
	}
	again := on + empty
	for i := range t.chores {
		t.chores[i].From = again
	}
	next := "then buy in new ones; never any of the old"
	if t.store.Culture != nil {
		next = "then set up new ones from elsewhere, never from the old"
	}
	t.errands = append(t.errands, roster.Errand{Name: "crash/" + on.String(), Kind: schema.KindClear, On: t.after(on), High: true, At: t.store.At,
		Text: "Crashed: all of it into a bag, sealed and frozen; wash the box hot, dry it, leave it empty until " + again.Short() + ", " + next + ". Who eats first: vivary stock"})
}

// crashOf is the day on which a tub crashed, where nothing came into it since; else 0.
func (l *Lot) crashOf(s *plan.Store) (on civil.Date) {
	for _, e := range l.log[s.Name.V] {
		switch {
		case e.Word == schema.WordCrashed:
			on = e.Date
		case e.Word == schema.WordDelivered, e.Word == schema.WordStarted, e.Word == schema.WordCounted && e.Number.V > 0:
			on = 0
		}
	}
	return on
}

// discards puts the days into the rounds on which a culture is too old.
func (t *tasks) discards(c *Culture) {
	if c.Standing {
		return
	}
	h := t.r.Horizon
	of := map[civil.Date]int{}
	for _, d := range c.Aging {
		if on := d + civil.Date(c.lives()); on >= h.Now() && on <= h.Last() {
			of[d]++
		}
	}
	_, many := c.Lot.names()
	for _, d := range c.Aging {
		n := of[d]
		if n == 0 {
			continue
		}
		delete(of, d)
		what := "the culture of " + many + " that was set up on " + d.Short()
		if n > 1 {
			what = "the " + strconv.Itoa(n) + " cultures of " + many + " that were set up on " + d.Short()
		}
		why := "at " + wording.Days(c.lives()) + " mites and mould come"
		if c.Age == 0 {
			why = "by then no more come"
		}
		t.errands = append(t.errands, roster.Errand{Name: "discard/" + d.String(), Kind: schema.KindTend, On: t.before(d + civil.Date(c.lives())), At: c.Plan.At,
			Text: "Throw out " + what + ", sealed or frozen first, and wash what it was in: " + why})
	}
}

// lives is for how many days a culture is kept: as long as the sheet has it at the most, else
// until it yields no more.
func (c *Culture) lives() int {
	if c.Age > 0 {
		return c.Age
	}
	return c.longest() + c.Lasts
}

// starts puts new cultures into the rounds.
func (t *tasks) starts(c *Culture) {
	h := t.r.Horizon
	for _, d := range c.Starts {
		if d < h.Now() {
			continue
		}
		t.errands = append(t.errands, roster.Errand{Name: "start/" + d.String(), Kind: schema.KindStart, On: t.before(d), Text: c.Words(d), At: c.Plan.At})
	}
}

// Words are a start as it stands in rounds and in what is printed.
func (c *Culture) Words(on civil.Date) string {
	_, many := c.Lot.names()
	text := "Set up a new culture of " + many
	if c.Lead.Known() {
		text += ": the first come " + wording.Between(on+civil.Date(c.Lead.Low), on+civil.Date(c.longest()))
	}
	return text + "; log " + c.Plan.Name.V + " started 1"
}
