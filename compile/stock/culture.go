package stock

import (
	"strconv"

	"vivary/compile/horizon"
	"vivary/compile/identity"
	"vivary/compile/roster"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/quantity"
	"vivary/schema/wording"
)

// Culture is a culture with the days on which a new one is set up.
type Culture struct {
	Plan     *plan.Store
	Lot      *Lot
	Lead     Takes // from setting one up until it yields
	Lasts    int   // days for which it yields
	AtOnce   int
	Rotation Rotation
	Starts   []civil.Date
	Yield    quantity.Range // of one in a week; zero where it is not known
	Age      int            // days after which one is thrown out; 0 for never
	Standing bool           // a colony that goes on by itself: none is set up in turn
	Aging    []civil.Date   // when those were or will be set up that are thrown out from today on
	Need     civil.Date     // the first day on which it is needed, 0 for none
	Latest   civil.Date     // the latest start for that, 0 where nothing is to be started for it
	begin    civil.Date     // when the first that the plan has is set up, 0 for never
	Logged   bool           // the log tells of one that was set up, or crashed
	Taken    int            // how many were harvested in the week up to today
	Crashed  civil.Date     // 0, or the day on which it crashed, where none was set up since
	Gap      civil.Date     // 0, or the first day to come with a meal and none that yields, by the log
	Next     civil.Date     // where there is a gap: the first day on which one yields that is set up now
}

// usualLast is for how long a culture yields where the plan does not say (common practice, no
// source).
const usualLast = 14

// colony is from how many days of yield on a culture goes on by itself, with young of its own.
const colony = 365

// empty is how long a box stands empty after a crash (common practice, no source).
const empty = 7

// culture reads a culture.
func culture(r *roster.Roster, s *plan.Store, l *Lot) *Culture {
	p := s.Culture
	c := &Culture{Plan: s, Lot: l, Lasts: lastsOf(s, l), Lead: leadOf(s, l)}
	c.Standing = c.Lasts >= colony
	usually := 2
	if c.Standing {
		usually = 1
	}
	c.AtOnce = max(1, min(p.AtOnce.Or(usually), 1000))
	if c.Yield = p.Yields.V; !p.Yields.Set() && l.Sheet != nil {
		if f := l.Sheet.Figure(schema.FeederCultureYield); f != nil {
			c.Yield = f.Range
		}
	}
	if l.Sheet != nil {
		if f := l.Sheet.Figure(schema.FeederCultureAge); f != nil {
			c.Age = int(f.Range.High / day)
		}
	}
	for _, e := range l.log[s.Name.V] {
		if e.Word == schema.WordHarvested && r.Horizon.Now()-e.Date < 7 && e.Number.V <= most {
			c.Taken += int(e.Number.V)
		}
	}
	if left := c.Age - c.longest(); c.Lead.Known() && left < c.Lasts && !c.Standing {
		if left < 1 {
			c.Age = 0 // with so long a lead that age says nothing
		} else {
			c.Lasts = left
		}
	}
	switch {
	case c.Standing:
		c.goesOn(r)
	case c.Lead.Known():
		c.Rotation = Rotate(c.Lasts, c.longest(), c.AtOnce)
		c.start(r)
	}
	return c
}

// lastsOf is for how many days a culture yields: as the plan says, else the shortest of the sheet.
func lastsOf(s *plan.Store, l *Lot) int {
	n := float64(usualLast)
	if w := s.Culture.Lasts; w.Set() {
		n = w.V.Value / day
	} else if l.Sheet != nil {
		if f := l.Sheet.Figure(schema.FeederCultureLasts); f != nil {
			n = f.Range.Low / day
		}
	}
	return max(1, min(int(n), 3650))
}

// longest is the longest lead, in whole days: what is needed is set up by it.
func (c *Culture) longest() int { return Whole(c.Lead.High) }

// leadOf is how long a culture takes until it yields: as it is written, else by the warmth.
func leadOf(s *plan.Store, l *Lot) Takes {
	p := s.Culture
	if p.Lead.Set() {
		n := p.Lead.V.Value / day
		return Takes{Low: n, Likely: n, High: n, Observed: true}
	}
	if l.Sheet == nil {
		return Takes{Why: "of the feeder nothing is known"}
	}
	warm := p.Temperature.V
	if !p.Temperature.Set() {
		f := l.Sheet.Figure(schema.FeederTemperature)
		if f == nil {
			return Takes{Why: "how warm it stands is not said"}
		}
		warm = f.Range
	}
	at := func(t float64) Takes {
		if p.Night.Set() {
			return Ripe(l.Sheet, s.Of.Size, t, p.Night.V.Value)
		}
		return Ripe(l.Sheet, s.Of.Size, t)
	}
	cool, hot := at(warm.Low), at(warm.High)
	switch {
	case !cool.Known():
		return cool
	case !hot.Known():
		return hot
	}
	return Takes{Low: min(cool.Low, hot.Low), Likely: (cool.Likely + hot.Likely) / 2, High: max(cool.High, hot.High), Observed: cool.Observed && hot.Observed}
}

// read goes through the log of a culture: when the last was set up that is still there, and on
// which days one yields by it.
func (c *Culture) read(r *roster.Roster) (last civil.Date, yields horizon.Days) {
	h := r.Horizon
	yields = h.New()
	for _, e := range c.Lot.log[c.Plan.Name.V] {
		switch e.Word {
		case schema.WordStarted:
			last, c.Logged, c.Crashed = e.Date, true, 0
			for range max(1, min(int(e.Number.V), 1000)) {
				c.Aging = append(c.Aging, e.Date)
			}
			from := int(e.Date-h.From) + c.longest()
			yields.AddRun(from, from+c.Lasts, h.Days)
		case schema.WordCrashed:
			last, c.Logged, c.Crashed = 0, true, e.Date
			c.Aging = nil
			yields = h.New()
		}
	}
	return last, yields
}

// goesOn works out what is to be done for a colony that goes on by itself: it is set up once, on
// the day that the plan says or after a crash. Where nothing is said it is there.
func (c *Culture) goesOn(r *roster.Roster) {
	h := r.Horizon
	c.Rotation = Rotation{Every: c.Lasts, House: c.AtOnce}
	last, yields := c.read(r)
	from := c.Plan.Culture.From
	switch {
	case c.Crashed > 0:
		c.Starts = []civil.Date{max(h.Now(), c.Crashed+empty)}
	case !c.Logged && from.Set() && from.V >= h.Now():
		c.Starts = []civil.Date{from.V}
	}
	c.needed(r)
	if c.Logged && c.Lead.Known() {
		first := max(h.Now(), c.Crashed+empty)
		if last > 0 {
			first = last
		}
		c.gap(r, yields, first)
	}
}

// needed works out when the culture is needed for the first time, and reports whether it is in
// use: fed from already, or before one set up today yields.
func (c *Culture) needed(r *roster.Roster) (regular bool) {
	h := r.Horizon
	need := c.Lot.next(h.Today, h.Days)
	if need >= 0 {
		c.Need = h.Date(need)
	}
	for _, b := range c.Lot.Broods {
		if c.Need == 0 || b.From < c.Need {
			c.Need = b.From
		}
	}
	return need >= 0 && need-h.Today <= c.longest()
}

// gap finds the first meal to come on which none yields, by the log. What is set up from first on
// yields a lead later.
func (c *Culture) gap(r *roster.Roster, yields horizon.Days, first civil.Date) {
	h := r.Horizon
	need := c.Lot.next(h.Today, h.Days)
	for i := max(need, 0); need >= 0 && i < h.Days && i <= h.Today+c.longest(); i++ {
		if c.Lot.Use[i] > 0 && !yields.Has(i) {
			c.Gap = h.Date(i)
			c.Next = first + civil.Date(c.longest())
			return
		}
	}
}

// start works out when a new one is set up: by the rotation from the last that the log has,
// else from the day that the plan says, else from a day by its name; and where it is needed
// for the first time, the lead before that.
func (c *Culture) start(r *roster.Roster) {
	h := r.Horizon
	last, yields := c.read(r)
	first := h.Now()
	if c.Logged && last == 0 {
		first = max(first, c.Crashed+empty)
	}
	every := c.Rotation.Every
	regular := c.needed(r)
	anchor, presumed := first, false
	switch {
	case last > 0:
		anchor = last + civil.Date(every)
	case c.Plan.Culture.From.Set():
		anchor, presumed = c.Plan.Culture.From.V, true
	case c.Crashed > 0:
	case regular || c.Need == 0:
		anchor = identity.Identity{Enclosure: identity.Enclosure(c.Plan.Stop), Care: schema.KindStart.Name}.Phase(every)
		presumed = true
	default:
		c.Latest = Start(c.Need, c.longest())
		anchor = c.Latest
	}
	if !regular && c.Need > 0 {
		c.Latest = Start(c.Need, c.longest())
	}
	if anchor < first {
		begun := anchor
		late := int(first-anchor) % every
		if anchor = first; late > 0 && last == 0 && c.Latest == 0 {
			anchor += civil.Date(every - late)
		}
		if presumed && c.Crashed == 0 { // where the log is silent those before were set up as planned
			from := max(begun, first-civil.Date(c.lives()))
			for d := from + (civil.Date(every)-(from-begun)%civil.Date(every))%civil.Date(every); d < first; d += civil.Date(every) {
				c.Aging = append(c.Aging, d)
			}
		}
	}
	c.begin = anchor
	for d := anchor; d <= h.Last(); d += civil.Date(every) {
		if c.useful(r, d) {
			c.Starts = append(c.Starts, d)
		}
	}
	c.Aging = append(c.Aging, c.Starts...)
	if c.Logged {
		c.gap(r, yields, first)
	}
}

// useful reports whether what is set up on a day yields for a meal, or for young that may be
// there by then.
func (c *Culture) useful(r *roster.Roster, d civil.Date) bool {
	from, until := d+civil.Date(c.Lead.Low), d+civil.Date(c.longest()+c.Lasts)
	if until > r.Horizon.Last() {
		return false // of what comes after nothing is known
	}
	for _, b := range c.Lot.Broods {
		if from <= b.To+civil.Date(c.Lasts) && b.From <= until {
			return true
		}
	}
	return c.Lot.next(int(from-r.Horizon.From), int(until-r.Horizon.From)) >= 0
}

// First is when one that is set up on a day begins to yield, at the earliest and at the latest.
func (c *Culture) First(on civil.Date) (from, to civil.Date) {
	return on + civil.Date(c.Lead.Low), on + civil.Date(c.longest())
}

// Late is how many days after its first use the first that the plan has set up yields; 0 where that
// is in time, and where they are fed already, since some are there then.
func (c *Culture) Late() int {
	if c.Latest == 0 || c.Logged || c.Gap > 0 {
		return 0
	}
	return max(0, int(c.begin-c.Latest))
}

// Remarks are what there is to say of a culture beside its starts.
func (c *Culture) Remarks() (out []string) {
	name := c.Plan.Shown()
	if c.Standing {
		out = append(out, name+": a colony that goes on by itself")
		if !c.Lead.Known() && len(c.Starts) == 0 {
			return out
		}
	}
	if !c.Lead.Known() {
		return []string{name + ": when it yields is not known: " + c.Lead.Why}
	}
	how := "as seen"
	if !c.Lead.Observed {
		how = "reckoned by the warmth"
	}
	text := name + ": yields " + wording.Span(float64(int(c.Lead.Low)), float64(c.longest())) + " days after it is set up (" + how + ")"
	if !c.Standing {
		text += ", one every " + wording.Step(c.Rotation.Every) + ", " + strconv.Itoa(c.Rotation.House) + " in the house, thrown out at " + wording.Days(c.lives())
	}
	out = append(out, text)
	if c.Latest > 0 {
		out = append(out, name+": for its first use on "+c.Need.Words()+" it is to be set up by "+c.Latest.Words())
	}
	return out
}
