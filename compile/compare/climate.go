package compare

import (
	"math"
	"slices"

	"vivary/compile/balance"
	"vivary/compile/climate"
	"vivary/compile/food"
	"vivary/compile/growth"
	"vivary/compile/life"
	"vivary/compile/roster"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/quantity"
	"vivary/schema/wording"
)

// climate is what is aimed for and what the physics comes to, against the hard limits.
func (w *facts) climate() {
	e := w.l.Plan
	w.parts()
	b, ok := balance.Of(w.r.Plan, e, w.l)
	if !ok {
		w.written()
		return
	}
	deg := w.units.Of(quantity.Celsius)
	limit := func(hard string, low, high climate.Celsius) string {
		if !b.Limited() {
			return ""
		}
		return hard + quantity.FormatRange(float64(low), float64(high), deg) + " by the species sheet"
	}
	if b.Spot.Planned {
		w.aim("warm end", "warm end aimed for", b.Spot.Range, deg, "")
	}
	if b.Air.Planned {
		w.aim("cool end", "cool end aimed for", b.Air.Range, deg, limit("", b.HardLow, b.HardHigh))
	}
	cold, warm := b.Coldest(), b.Warmest()
	w.air("air", "air to be expected", cold.Air.Likely, warm.Air.Likely, deg, limit("", b.HardLow, b.HardHigh), float64(b.HardLow), float64(b.HardHigh))
	if len(b.Heaters) > 0 {
		w.air("spot", "warm spot to be expected", cold.Spot.Likely, warm.Spot.Likely, deg, "", math.Inf(-1), float64(b.Touch))
		stuck := b.Stuck()
		w.air("stuck", "air if a thermostat sticks", stuck.Air.Likely, stuck.Air.Likely, deg, limit("", b.HardLow, b.HardHigh), math.Inf(-1), float64(b.HardHigh))
	}
	if b.RH.High > 0 && e.Climate != nil && e.Climate.Humidity.Set() {
		w.humidity(b.RH)
	}
}

// room is the floor that there is, for what the animals take.
func (w *facts) room() {
	if g, ok := growth.Of(w.l, w.r.Plan, w.r.Today); ok && g.Now.Sized && g.Now.Floor > 0 {
		u := w.units.Of(quantity.SquareCentimetre)
		w.add(fact{key: "room", topic: Company, name: "floor", text: quantity.Format(g.Now.Has, u) + " for what takes " + quantity.Format(g.Now.Floor, u),
			rank: g.Now.Floor / g.Now.Has, harm: !g.Now.Fits()})
	}
}

// water is what care brings in.
func (w *facts) water() {
	e := w.l.Plan
	water := roster.PouredInto(w.r.Roster.Of[w.i], w.r.Horizon, balance.DishHolds(e))
	if ml := w.units.Of(quantity.Millilitre); water.Day > 0 {
		w.add(fact{key: "water", topic: Damp, name: "water brought in", text: "about " + quantity.Format(quantity.Significant(water.Day, 2), ml) + " a day", rank: unranked})
	}
}

// written is what is aimed for where no physics can be asked.
func (w *facts) written() {
	e := w.l.Plan
	if c := e.Climate; c != nil {
		if c.WarmEnd.Set() {
			w.aim("warm end", "warm end aimed for", c.WarmEnd.V, w.units.Of(quantity.Celsius), "")
		}
		if c.CoolEnd.Set() {
			w.aim("cool end", "cool end aimed for", c.CoolEnd.V, w.units.Of(quantity.Celsius), "")
		}
		if c.Humidity.Set() {
			w.humidity(c.Humidity.V)
		}
	}
}

// parts are what is aimed for by night, and for a part of the year.
func (w *facts) parts() {
	deg := w.units.Of(quantity.Celsius)
	aim := func(key, name string, r plan.Written[quantity.Range]) {
		if r.Set() {
			w.aim(key, name, r.V, deg, "")
		}
	}
	if c := w.l.Plan.Climate; c != nil {
		aim("night", "night aimed for", c.Night)
	}
	for _, s := range w.l.Plan.Seasons {
		if c := s.Climate; c != nil {
			in := s.Name.V
			aim("season "+in+"/warm", "warm end aimed for, "+in, c.WarmEnd)
			aim("season "+in+"/cool", "cool end aimed for, "+in, c.CoolEnd)
			aim("season "+in+"/night", "night aimed for, "+in, c.Night)
		}
	}
}

func (w *facts) aim(key, name string, r quantity.Range, u quantity.Unit, limit string) {
	w.add(fact{key: "aim " + key, topic: Heat, name: name, text: quantity.FormatBetween(r.Low, r.High, u), limit: limit, rank: unranked})
}

// air is a temperature that is to be expected, to a degree: what is less is beyond what is
// known. It is the worse the nearer it is to the limits.
func (w *facts) air(key, name string, low, high climate.Celsius, u quantity.Unit, limit string, hardLow, hardHigh float64) {
	if math.IsNaN(float64(low)) || math.IsNaN(float64(high)) {
		return
	}
	round := func(x climate.Celsius) float64 { return math.Round(float64(x)) }
	l, h := round(low), round(high)
	margin := min(l-hardLow, hardHigh-h)
	f := fact{key: "heat " + key, topic: Heat, name: name, text: "about " + quantity.FormatBetween(l, h, u), limit: limit, rank: unranked, harm: margin < 0}
	if !math.IsInf(margin, 0) && !math.IsNaN(margin) {
		f.rank = -min(margin, comfortable)
	}
	w.add(f)
}

// comfortable is how far from a hard limit, in °C, nothing is better for being farther
// (judgement).
const comfortable = 4

// humidity is what is aimed for, which is the worse the farther it is outside of what the sheet
// asks a reason for.
func (w *facts) humidity(r quantity.Range) {
	f := fact{key: "aim humidity", topic: Damp, name: "humidity aimed for", text: r.String(), rank: unranked}
	if soft := w.figure(schema.FigureHumiditySoft); soft != nil {
		f.limit = soft.Range.String() + " by the species sheet"
		f.rank = max(0, soft.Range.Low-r.Low) + max(0, r.High-soft.Range.High)
		f.harm = f.rank > 0
	}
	w.add(f)
}

// figure is one of the enclosure's species.
func (w *facts) figure(what *schema.Figure) *plan.Figure {
	if w.l.Plan.Sheet == nil {
		return nil
	}
	return w.l.Plan.Sheet.Figure(what, "")
}

// food is what each group eats in a week.
func (w *facts) food() {
	for _, g := range w.l.Groups {
		items, menu := w.menu(g)
		if items <= 0 {
			continue
		}
		f := fact{key: "food " + groupKey(g), topic: Food, name: "food, " + g.Animals.Name.V, text: wording.Items(items) + " a week for each: " + menu, rank: unranked, much: items, of: menu}
		if g.Sheet != nil {
			if usual := g.Sheet.Figure(schema.FigureItemsAWeek, g.Stage(w.r.Today)); usual != nil {
				f.limit = "usual " + usual.Value.V + " by the species sheet"
			}
		}
		w.add(f)
	}
}

// menu is how many items a week each animal of a group is offered, and of what.
func (w *facts) menu(g *life.Group) (items float64, words string) {
	var prey []string
	for k := range w.r.Roster.Of[w.i] {
		e := &w.r.Roster.Of[w.i][k]
		if e.Group != g || !e.Feeds() || e.Once != nil || e.Stage != "" {
			continue
		}
		rate, n := food.Rate(w.r.Horizon, e), 0
		for _, p := range e.Menu {
			n += p.Days.Count()
		}
		for _, p := range e.Menu {
			if n > 0 {
				items += rate * p.Items * float64(p.Days.Count()) / float64(n)
			}
			if name := p.Prey.String(); !slices.Contains(prey, name) {
				prey = append(prey, name)
			}
		}
	}
	return items, wording.And(prey)
}
