package check

import (
	"slices"
	"strconv"

	"vivary/plan"
	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/schema"
	"vivary/schema/quantity"
)

// What a rack says is found at its own line, and told once for all that stand in it.

// rackClash finds enclosures of one rack that its heater cannot suit at once. Where the
// plan says what they are held at, or what one species bears is outside of what another
// does, it cannot be met; where only what is aimed for lies apart, each bears the other's.
func rackClash(r *Rule, c *Collection) {
	for _, k := range c.Plan.Racks {
		i := slices.IndexFunc(k.Heaters, func(h *plan.Heater) bool { return !h.Tube() })
		if i < 0 {
			continue
		}
		h := k.Heaters[i]
		rackSeasons(r, c, k, h)
		at := h.At
		if h.Channel.Set() {
			at = h.Channel.At
		}
		held, aimed := agreed{slack: 2 * swing(h)}, agreed{slack: rounding}
		for _, e := range k.Enclosures {
			if e.Sheet == nil || e.Climate == nil {
				continue
			}
			f := finding.Finding{Rule: &r.Rule, At: at, In: e.Box(), Source: r.Source, Write: "a rack of its own for what wants another temperature"}
			band, ok := wanted(e)
			aim := e.Sheet.Figure(schema.FigureTemperatureTarget, "")
			switch {
			case ok && !held.with(e, band):
				f.Text = alike(k, h) + held.apart(e, band)
				c.Add(f)
			case aim != nil && !e.Climate.WarmEnd.Set() && !aimed.with(e, aim.Range):
				f.Text, f.Limit = alike(k, h)+aimed.apart(e, aim.Range), aim.Name.V+" of "+e.Sheet.Name.V
				f.Source = c.Cite(aim)
				c.found.Soft(f, finding.Caution)
			}
		}
	}
}

// rackSeasons finds seasons that turn down, for some that stand in a rack, the heater of all.
func rackSeasons(r *Rule, c *Collection, k *plan.Rack, h *plan.Heater) {
	type season struct {
		from, to          plan.Day
		heating           string
		warm, cool, night quantity.Range
	}
	none := quantity.Range{}
	what := func(s *plan.Season) (season, bool) {
		x := season{from: s.From.V, to: s.To.V, heating: s.Heating.Or("on")}
		if s.Climate != nil {
			x.warm, x.cool, x.night = s.Climate.WarmEnd.V, s.Climate.CoolEnd.V, s.Climate.Night.V
		}
		return x, x.heating == "off" || x.warm != none || x.cool != none || x.night != none
	}
	of, all := map[season]int{}, 0
	for _, e := range k.Enclosures {
		if len(e.Animals) > 0 {
			all++
		}
	}
	each := func(use func(e *plan.Enclosure, s *plan.Season, x season)) {
		for _, e := range k.Enclosures {
			for _, s := range e.Seasons {
				if x, turns := what(s); turns {
					use(e, s, x)
				}
			}
		}
	}
	each(func(_ *plan.Enclosure, _ *plan.Season, x season) { of[x]++ })
	each(func(e *plan.Enclosure, s *plan.Season, x season) {
		if n := of[x]; n < all {
			c.Add(finding.Finding{Rule: &r.Rule, At: s.At, In: e.Box(), Source: r.Source,
				Text:  "season " + strconv.Quote(s.Name.V) + " is for " + strconv.Itoa(n) + " of the " + strconv.Itoa(all) + " in rack " + strconv.Quote(k.Name.V) + ", and turns down the " + h.Name.V + " of all",
				Write: "the same season for all of them, another rack, or true as off in it here"})
		}
	})
}

// alike begins what is found of those that a heater warms.
func alike(k *plan.Rack, h *plan.Heater) string {
	return "the " + h.Name.V + " of rack " + strconv.Quote(k.Name.V) + " warms all in it alike: "
}

// agreed is what the enclosures of a rack want, as far as they go together.
type agreed struct {
	slack float64 // by how much they may lie apart, in K
	all   []wish
}

// wish is the temperature that an enclosure wants.
type wish struct {
	of   *plan.Enclosure
	band quantity.Range
}

// with takes in what another enclosure wants, and reports whether it goes with each of the
// others.
func (a *agreed) with(e *plan.Enclosure, band quantity.Range) bool {
	if a.against(band) != nil {
		return false
	}
	if !slices.ContainsFunc(a.all, func(c wish) bool { return c.band == band }) {
		a.all = append(a.all, wish{e, band})
	}
	return true
}

// against returns the first that wants another temperature, or nil.
func (a *agreed) against(band quantity.Range) *wish {
	for i := range a.all {
		if o := &a.all[i]; max(o.band.Low, band.Low) > min(o.band.High, band.High)+a.slack+1e-9 {
			return o
		}
	}
	return nil
}

// apart says what an enclosure wants, and what another does with which it does not go.
func (a *agreed) apart(e *plan.Enclosure, band quantity.Range) string {
	o := a.against(band)
	return e.Name.V + " (" + e.Sheet.Name.V + ") wants " + band.String() + ", and " + o.of.Name.V + " (" + o.of.Sheet.Name.V + ") " + o.band.String()
}

// deviceAt is where something lacking beside a heater is found: at the rack whose heater it
// is, else at another place.
func (e *Enclosure) deviceAt(h *plan.Heater, at source.Place) source.Place {
	if k := e.Collection.Plan.RackOf(e.Plan); k != nil && k.Says(h.At) {
		return k.At
	}
	return at
}
