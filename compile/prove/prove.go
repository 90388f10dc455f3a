// Package prove shows, day by day over the horizon, that every need of every
// animal is met in time by somebody who is there. It schedules nothing and knows
// nothing of calendars: it counts local dates between the days on which a need is
// met, once holds and absences have been taken out.
package prove

import (
	"vivary/compile/horizon"
	"vivary/compile/life"
	"vivary/compile/roster"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/civil"
)

// Proof is the proof for one need of one group, or of a whole enclosure.
type Proof struct {
	Life    *life.Enclosure
	Group   *life.Group // nil for a need of the whole enclosure
	Need    *plan.Need
	Name    *schema.NeedName
	Allowed int // the longest time between two occasions, in days
	// Unattended is the longest time while nobody at all comes to the enclosure, in
	// days, where the sheet says that the animals may be left so long with a full dish;
	// else Allowed. Alone is the figure that says so.
	Unattended int
	Alone      *plan.Figure

	// Missed is a time that is too long whatever is done from today on; From = To
	// where there is none. Late is the limit that it passes.
	Missed Gap
	Late   Limit

	// Longest is the longest time found that ends today or later, in days, from the
	// place From in the window to To, which is the window's number of days where nothing
	// follows.
	Longest, From, To int
	// Breach is the first time that is too long and that the plan can mend, or has
	// From = To where there is none; Limit is the limit that it passes. One with excused
	// days in it, which is the log's, hides none that is the plan's alone.
	Breach Gap
	Limit  Limit
	// By are the entries that meet the need.
	By []*roster.Entry
	// Times is on how many days from today on the need is met.
	Times int
	// Nobody are the days on which nobody at all comes to the enclosure, since those who
	// meet the need are away.
	Nobody horizon.Days
	// Excused are days on which the need does not hold: meals while an animal must
	// not be fed, for the reason of the hold.
	Excused horizon.Days
	today   int
	told    bool // it is known what people were shown before today
}

// Gap is a stretch of days without an occasion.
type Gap struct{ From, To int }

// Limit is how long a gap may be, and by what.
type Limit struct {
	Days int
	// Alone says that it is the figure for an enclosure to which nobody comes, and
	// Again that it is half of it, since it had been left before.
	Alone, Again bool
}

// Met reports whether the need is met on time throughout.
func (p *Proof) Met() bool { return p.Breach.From == p.Breach.To }

// Of proves the needs of one enclosure.
func Of(s *roster.Roster, i int) []Proof {
	l := s.Lives[i]
	sheet := l.Plan.Sheet
	if sheet == nil || len(l.Groups) == 0 {
		return nil
	}
	w := prover{s: s, life: l, entries: s.Of[i]}
	for _, n := range shared(sheet, l, s) {
		w.need(n, nil)
	}
	for _, g := range l.Groups {
		if g.Count(s.Horizon.Now()) == 0 {
			continue
		}
		for _, n := range sheet.NeedsOf(g.Stage(s.Horizon.Now())) {
			if n.What.OfGroup {
				w.need(n, g)
			}
		}
	}
	return w.out
}

// shared returns the needs of the whole enclosure: the strictest of those of its
// groups.
func shared(sheet *plan.SpeciesSheet, l *life.Enclosure, s *roster.Roster) []*plan.Need {
	var out []*plan.Need
	for _, g := range l.Groups {
		if g.Count(s.Horizon.Now()) == 0 {
			continue
		}
	next:
		for _, n := range sheet.NeedsOf(g.Stage(s.Horizon.Now())) {
			if n.What.OfGroup {
				continue
			}
			for k, o := range out {
				if o.Name.V == n.Name.V {
					if n.Longest.V.Value < o.Longest.V.Value {
						out[k] = n
					}
					continue next
				}
			}
			out = append(out, n)
		}
	}
	return out
}

type prover struct {
	s       *roster.Roster
	life    *life.Enclosure
	entries []roster.Entry
	out     []Proof
}

func (w *prover) need(n *plan.Need, g *life.Group) {
	name := n.What
	if name == nil || !n.Longest.Set() || name.Heated && !w.life.Plan.Heated() {
		return
	}
	p := Proof{Life: w.life, Group: g, Need: n, Name: name, Allowed: max(1, int(n.Longest.V.Value/(24*60))), today: w.s.Horizon.Today}
	p.Unattended = p.Allowed
	met := w.s.Horizon.New()
	for i := range w.entries {
		if x := &w.entries[i]; meets(x, name, g) {
			p.By = append(p.By, x)
			p.told = p.told || w.told(x)
			met.Union(x.Shown)
			w.before(met, x)
			if x.Logged >= 0 {
				met.Add(x.Logged)
			}
		}
	}
	p.Times = met.CountFrom(p.today)
	if !name.OfGroup {
		w.unattended(&p)
	}
	if name.PerMeal {
		w.leftovers(&p, met, g)
	} else {
		p.Excused = w.excused(name, g)
		p.longest(met, w.s.Horizon)
	}
	w.out = append(w.out, p)
}

// told reports whether the last feeds tell of an entry.
func (w *prover) told(x *roster.Entry) bool {
	if w.s.Told == nil {
		return false
	}
	_, _, _, ok := w.s.Told.Days(x.ID)
	return ok
}

// meets reports whether an entry meets a need of a group, or of the whole enclosure.
func meets(x *roster.Entry, name *schema.NeedName, g *life.Group) bool {
	if x.Kind.Needs != name && !(name == schema.NeedFood && x.Feeds()) {
		return false
	}
	return g == nil || x.Group == g || x.Group == nil && !name.PerMeal
}

// before adds the days of an entry that are over: whoever was shown what then, what
// stood is taken as done, since only the log says otherwise.
func (w *prover) before(met horizon.Days, x *roster.Entry) {
	for k := range w.s.Horizon.Today >> 6 {
		met[k] |= x.Days[k]
	}
}

// unattended finds how long the enclosure may be left with a full dish: the shortest
// of its groups' figures, or not at all where a sheet has none; and the days on which
// that counts.
func (w *prover) unattended(p *Proof) {
	least := -1
	for _, g := range w.life.Groups {
		if g.Count(w.s.Horizon.Now()) == 0 {
			continue
		}
		n := 0
		f := w.life.Plan.Sheet.Figure(schema.FigureUnattended, g.Stage(w.s.Horizon.Now()))
		if f != nil {
			n = int(f.Range.Low / (24 * 60))
		}
		if least < 0 || n < least {
			least, p.Alone = n, f
		}
	}
	if least <= p.Allowed {
		p.Alone = nil
		return
	}
	p.Unattended, p.Nobody = least, w.alone(p.By)
}

// alone returns the days on which all those who meet a need are away with nobody in
// their place, and nobody else comes to the enclosure: one keeper's absence leaves no
// enclosure alone at which another stands every day. It is nil for none.
func (w *prover) alone(by []*roster.Entry) horizon.Days {
	var gone horizon.Days
	for _, x := range by {
		if x.Once != nil {
			continue
		}
		away := w.absent(x)
		if away == nil {
			return nil
		}
		if gone == nil {
			gone = away
		}
		gone.Keep(away)
	}
	for i := range w.entries {
		if gone != nil {
			gone.Subtract(opened(&w.entries[i]))
		}
	}
	return gone
}

// absent returns the days on which nobody comes for an entry, or only somebody who may
// not open the enclosure; nil for none.
func (w *prover) absent(x *roster.Entry) horizon.Days {
	d := w.s.People.Of(x.Keeper)
	if d == nil {
		return x.Shut.Clone()
	}
	out := d.Away.Clone()
	out.Subtract(d.Visits)
	if x.Shut != nil {
		out.Union(x.Shut)
	}
	return out
}

// opened returns the days of an entry without those on which the enclosure stays shut: a
// look from outside fills no dish.
func opened(x *roster.Entry) horizon.Days {
	if x.Shut == nil {
		return x.Days
	}
	out := x.Days.Clone()
	out.Subtract(x.Shut)
	return out
}

// limit returns how long the time between two occasions may be. On days on which
// nobody comes the animals may be left longer. Half of that they bear again and
// again, as between two visits; more of it only once they have had as many days of
// care as usual since the last time, which ended at back.
func (p *Proof) limit(from, to, back int) Limit {
	if p.Nobody == nil || !p.left(from, to) {
		return Limit{Days: p.Allowed}
	}
	if from-back+1 >= p.Unattended { // both of these days are days of care
		return Limit{Days: p.Unattended, Alone: true}
	}
	if half := (p.Unattended + 1) / 2; half > p.Allowed {
		return Limit{Days: half, Alone: true, Again: true}
	}
	return Limit{Days: p.Allowed}
}

// left reports whether nobody comes on any day between two occasions.
func (p *Proof) left(from, to int) bool {
	some := false
	for d := from + 1; d < to; d++ {
		switch {
		case d < 0 || d >= len(p.Nobody)*64:
		case p.Nobody.Has(d):
			some = true
		case p.Excused == nil || !p.Excused.Has(d):
			return false
		}
	}
	return some
}

// excused returns the days on which a hold keeps a need from being met for the
// animals' own good, or nil for none. No hold excuses for ever: one that nobody
// ends in the log is looked into once it has lasted for so long.
func (w *prover) excused(need *schema.NeedName, g *life.Group) horizon.Days {
	var out horizon.Days
	h := w.s.Horizon
	add := func(holds []life.Hold, most int, season bool) {
		for i := range holds {
			x := &holds[i]
			if !Holds(x, need) || most <= 0 || season && need == schema.NeedFood && !x.Cool {
				continue
			}
			if out == nil {
				out = h.New()
			}
			out.AddRun(int(x.From-h.From), int(min(x.Until, x.From+civil.Date(most))-h.From), h.Days)
			if x.Open {
				// When it ends is not known: what is to come is judged when it has.
				out.AddRun(h.Today, int(x.Until-h.From), h.Days)
			}
		}
	}
	add(w.life.Holds, w.season(need, g), true)
	for _, x := range w.life.Groups {
		if g == nil || g == x {
			add(x.Holds, w.fast(x), false)
		}
	}
	return out
}

// longestSeason is how many days a season may excuse, and longestFast how many a
// hold may, where the sheet has no figure. Common practice, no source.
const (
	longestSeason = 180
	longestFast   = 30
)

// season returns for how many days a season excuses a need. A cool rest is for
// species that take one, and not for their young; water and damp it never excuses.
func (w *prover) season(need *schema.NeedName, g *life.Group) int {
	switch {
	case need.Heated:
		return longestSeason
	case need != schema.NeedFood || !life.Rests(w.life.Plan.Sheet):
		return 0
	}
	if stage := g.Stage(w.s.Horizon.Now()); stage == "young" || stage == "newborn" {
		return 0
	}
	return longestSeason
}

// fast returns for how many days a hold excuses a group: the fast after which its
// sheet would have it looked into.
func (w *prover) fast(g *life.Group) int {
	if f := w.life.Plan.Sheet.Figure(schema.FigureFastAlarm, g.Stage(w.s.Horizon.Now())); f != nil {
		return int(f.Range.High / (24 * 60))
	}
	return longestFast
}

// Holds reports whether a hold takes out care that meets a need.
func Holds(h *life.Hold, need *schema.NeedName) bool {
	for _, k := range schema.CareKinds {
		if k.Needs == need && h.Takes(k) {
			return true
		}
	}
	return false
}

// lastDone returns the last occasion before today. Where none is known it is
// yesterday: what was due before counts as done, up to the first day on which the log
// or an absence shows that it was left undone.
func (p *Proof) lastDone(met horizon.Days, h horizon.Horizon) int {
	if last := met.Last(p.today); last >= 0 {
		return last
	}
	first := p.today
	for _, x := range p.By {
		for k := range x.Causes {
			switch c := &x.Causes[k]; {
			case !undone(c.Why) || c.Days.Next(0) < 0:
			case c.Away != nil && c.Away.From.V < h.From:
				return -1 // since before all that is known
			default:
				first = min(first, c.Days.Next(0))
			}
		}
	}
	return first - 1
}

// undone reports whether a reason is a fact of what was not done, and not of how the
// plan has it.
func undone(w roster.Why) bool {
	switch w {
	case roster.Skipped, roster.Nobody, roster.Waits, roster.LeftIn, roster.Held, roster.Untrained, roster.TooFew:
		return true
	}
	return false
}

// longest finds the longest time between two days of met that ends today or later,
// and the first that is too long. Excused days are not counted.
func (p *Proof) longest(met horizon.Days, h horizon.Horizon) {
	last, days := p.lastDone(met, h), h.Days
	if p.Times == days-p.today && last == p.today-1 {
		p.Longest, p.From, p.To = 1, last, p.today // every day, as most care is
		return
	}
	back := p.back(met, last)
	for {
		to := met.Next(max(p.today, last+1))
		if to < 0 {
			to = days
		}
		g := Gap{last, to}
		gap := p.length(g)
		if to == days {
			// Nothing is known of the days after the window: the need is broken only
			// if it is broken before its end.
			gap--
		}
		most := p.limit(last, to, back)
		if last < p.today && p.length(Gap{last, p.today}) > most.Days && p.happened(last) {
			// No plan makes it sooner than today; from then on the plan is asked, for no
			// more than what holds on any day.
			p.Missed, p.Late = Gap{last, to}, most
			g.From, most = p.today-1, Limit{Days: p.Allowed}
			if gap = p.length(g); to == days {
				gap--
			}
		} else if gap > p.Longest {
			p.Longest, p.From, p.To = gap, last, to
		}
		if gap > most.Days && (p.Met() || p.excuses(p.Breach) && !p.excuses(g)) {
			p.Breach, p.Limit = g, most
		}
		if to == days {
			return
		}
		if p.length(Gap{last, to}) > p.repeated() { // with the part that cannot be helped any more
			back = to
		}
		last = to
	}
}

// happened reports whether what passed since day from is known to have been so: the
// last feeds showed it, or the log or an absence took care out. What only follows
// from how often the plan has it is for the plan to mend.
func (p *Proof) happened(from int) bool {
	if p.told || from < 0 {
		return true
	}
	for _, x := range p.By {
		for k := range x.Causes {
			c := &x.Causes[k]
			if i := c.Days.Next(from); undone(c.Why) && i >= 0 && i < p.today {
				return true
			}
		}
	}
	return false
}

// back returns when the last long time alone that began before today ended: the
// animals bear another only once they have recovered.
func (p *Proof) back(met horizon.Days, until int) int {
	back := -len(met) * 64
	if p.Nobody == nil {
		return back
	}
	last := met.Next(0)
	for last >= 0 && last < until {
		to := met.Next(last + 1)
		if to < 0 || to > until {
			break
		}
		if p.length(Gap{last, to}) > p.repeated() {
			back = to
		}
		last = to
	}
	return back
}

// excuses reports whether a day of a gap is excused.
func (p *Proof) excuses(g Gap) bool {
	if p.Excused == nil {
		return false
	}
	d := p.Excused.Next(max(0, g.From))
	return d >= 0 && d < g.To
}

// length is a gap without the days that are excused.
func (p *Proof) length(g Gap) int {
	n := g.To - g.From
	if p.Excused != nil {
		for d := max(0, g.From+1); d < g.To; d++ {
			if p.Excused.Has(d) {
				n--
			}
		}
	}
	return n
}

// leftovers looks whether each live meal is followed in time by a look for what
// is left of it. A meal so near the end that its look lies beyond is passed over, and
// one of the days before today whose look was due before.
func (w *prover) leftovers(p *Proof, met horizon.Days, g *life.Group) {
	p.Limit = Limit{Days: p.Allowed}
	for i := range w.entries {
		x := &w.entries[i]
		if x.Kind != schema.KindFeed || x.Group != g || x.Meal == nil || x.Meal.Killed.V {
			continue
		}
		for d := x.Days.Next(max(0, p.today-p.Allowed)); d >= 0; d = x.Days.Next(d + 1) {
			if x.Killed != nil && x.Killed.Has(d) || d >= p.today && !x.Shown.Has(d) {
				continue // nothing is left of it, or nobody is told to give it
			}
			to := met.Next(d + 1)
			if to < 0 {
				to = w.s.Horizon.Days
				if to-d <= p.Allowed {
					continue
				}
			}
			if to < p.today {
				continue
			}
			if to-d > p.Longest {
				p.Longest, p.From, p.To = to-d, d, to
			}
			if to-d > p.Allowed && p.Met() {
				p.Breach = Gap{d, to}
			}
		}
	}
}
