package roster

import (
	"cmp"
	"slices"

	"vivary/compile/horizon"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema/civil"
)

// People are the days of the keepers: who is there, and who stands in.
type People struct {
	Only string // the one keeper of a collection that has just one
	duty map[string]*Duty
	all  []*Duty // by keeper
	// elsewhere are the days between visits, of those who do nothing but stand in: they
	// come on the visits, and on no other day of that absence.
	elsewhere map[string]horizon.Days
	off       map[string]horizon.Days // rest days, of those who have some
}

// Duty is one keeper's days. The absences of a keeper are one set of days, however
// many blocks say so: they may overlap, touch and nest, and who stands in is decided
// day by day.
type Duty struct {
	Keeper string
	Away   horizon.Days // the days away
	Visits horizon.Days // those of them on which somebody stands in
	Runs   []Run        // the days away in runs, by first day
	stands []stand
}

// Run is a run of days away.
type Run struct {
	From, To int          // places in the window, cut to it; To is the day of return
	Begun    civil.Date   // the first day, which may lie before the window
	Ends     civil.Date   // the day of return, which may lie behind it
	Blocks   []*plan.Away // those that make it, by first day
	days     []horizon.Days
}

// stand is who stands in, and on which days.
type stand struct {
	keeper string
	days   horizon.Days
}

func people(c *plan.Collection, h horizon.Horizon) (*People, []finding.Finding) {
	p := &People{duty: map[string]*Duty{}}
	if len(c.Keepers) == 1 {
		p.Only = c.Keepers[0].Name.V
	}
	blocks := map[string][]*plan.Away{}
	for _, a := range c.Aways {
		if a.From.Set() && a.To.Set() && a.To.V >= a.From.V && a.To.V > h.From && a.From.V <= h.Last() {
			blocks[a.Name.V] = append(blocks[a.Name.V], a)
		}
	}
	var found finding.List
	logged := sudden(c, h, &found)
	for _, a := range logged {
		blocks[a.Name.V] = append(blocks[a.Name.V], a)
	}
	for name, all := range blocks {
		slices.SortStableFunc(all, func(a, b *plan.Away) int { return cmp.Compare(a.From.V, b.From.V) })
		p.duty[name] = away(name, all, h)
		p.all = append(p.all, p.duty[name])
	}
	slices.SortFunc(p.all, func(a, b *Duty) int { return cmp.Compare(a.Keeper, b.Keeper) })
	for _, d := range p.all {
		for _, a := range blocks[d.Keeper] {
			d.cover(p, c, a, h, &found)
		}
	}
	p.between(c, h)
	p.off = map[string]horizon.Days{}
	for _, k := range c.Keepers {
		if len(k.Off) > 0 {
			p.off[k.Name.V] = listed(c, k.Off, h)
		}
	}
	for _, a := range logged {
		p.inPlace(c, a, h)
	}
	return p, found.All
}

// between notes on which days of an absence those who stand in on visits do not come.
// Who has a round or care of their own comes for that all the same.
func (p *People) between(c *plan.Collection, h horizon.Horizon) {
	p.elsewhere = map[string]horizon.Days{}
	for _, a := range c.Aways {
		d := p.duty[a.Name.V]
		if d == nil || !a.Cover.Set() || len(a.Visits) == 0 || named(c, a.Cover.V) {
			continue
		}
		days := p.elsewhere[a.Cover.V]
		if days == nil {
			days = h.New()
			p.elsewhere[a.Cover.V] = days
		}
		days.AddRun(int(a.From.V-h.From), int(a.To.V-h.From), h.Days)
	}
	for _, d := range p.all {
		for _, s := range d.stands {
			if days := p.elsewhere[s.keeper]; days != nil {
				days.Subtract(s.days)
			}
		}
	}
}

// named reports whether a round or a care is a keeper's own.
func named(c *plan.Collection, keeper string) bool {
	for _, r := range c.Rounds { // the parts of rotas among them
		if r.Keeper.V == keeper {
			return true
		}
	}
	for _, e := range c.Enclosures {
		for _, x := range e.Care {
			if x.Keeper.V == keeper {
				return true
			}
		}
		for _, x := range e.Feeding {
			if x.Keeper.V == keeper {
				return true
			}
		}
	}
	return false
}

// Off returns the rest days of a keeper, nil for none.
func (p *People) Off(keeper string) horizon.Days { return p.off[keeper] }

// There reports whether a keeper can be counted on on day i beside their own rounds: they are not
// away, and it is no rest day of theirs.
func (p *People) There(keeper string, i int) bool {
	return p.comes(keeper, i) && (p.off[keeper] == nil || !p.off[keeper].Has(i))
}

// comes reports whether a keeper is not away on day i.
func (p *People) comes(keeper string, i int) bool {
	if d := p.duty[keeper]; d != nil && d.Away.Has(i) {
		return false
	}
	days := p.elsewhere[keeper]
	return days == nil || !days.Has(i)
}

// away makes one set of days, and runs of it, of a keeper's blocks.
func away(keeper string, blocks []*plan.Away, h horizon.Horizon) *Duty {
	d := &Duty{Keeper: keeper, Away: h.New(), Visits: h.New()}
	for _, a := range blocks { // by first day
		from, to := int(a.From.V-h.From), int(a.To.V-h.From)
		days := h.New()
		days.AddRun(from, to, h.Days)
		d.Away.Union(days)
		if n := len(d.Runs); n > 0 && a.From.V <= d.Runs[n-1].Ends {
			r := &d.Runs[n-1]
			r.Ends = max(r.Ends, a.To.V)
			r.Blocks, r.days = append(r.Blocks, a), append(r.days, days)
			continue
		}
		d.Runs = append(d.Runs, Run{Begun: a.From.V, Ends: a.To.V, Blocks: []*plan.Away{a}, days: []horizon.Days{days}})
	}
	for i := range d.Runs {
		r := &d.Runs[i]
		r.From, r.To = max(0, int(r.Begun-h.From)), min(int(r.Ends-h.From), h.Days)
	}
	return d
}

// cover adds the days on which a block has somebody stand in. Somebody who is away
// does not; and where two blocks name two people for one day, which of them comes is
// for the plan to say.
func (d *Duty) cover(p *People, c *plan.Collection, a *plan.Away, h horizon.Horizon, found *finding.List) {
	if !a.Cover.Set() {
		return
	}
	in := h.New()
	in.AddRun(int(a.From.V-h.From), int(a.To.V-h.From), h.Days)
	if len(a.Visits) > 0 {
		some := !in.Empty()
		in.Keep(listed(c, a.Visits, h))
		if some && in.Empty() && a.To.V > h.Now() && a.To.V <= h.Last() {
			found.Add(finding.Finding{Rule: ruleIdleDate, At: a.Visits[0].At, Text: "none of the visits is in this absence, " + a.From.V.Words() + " to " + a.To.V.Words() + ": " + a.Cover.V + " never comes",
				Write: "days that are in it; or no visits, where " + a.Cover.V + " comes every day"})
		}
	}
	if other := p.duty[a.Cover.V]; other != nil {
		in.Subtract(other.Away)
	}
	for _, s := range d.stands {
		if s.keeper != a.Cover.V && s.days.Intersects(in) {
			found.Add(d.twoCovers(a, s.keeper, h, in, s.days))
		}
	}
	in.Subtract(d.Visits)
	d.Visits.Union(in)
	d.stand(a.Cover.V, in)
}

// stand notes days on which somebody stands in, once for all blocks that say so.
func (d *Duty) stand(keeper string, days horizon.Days) {
	for i := range d.stands {
		if d.stands[i].keeper == keeper {
			d.stands[i].days.Union(days)
			return
		}
	}
	d.stands = append(d.stands, stand{keeper, days})
}

func (d *Duty) twoCovers(a *plan.Away, other string, h horizon.Horizon, in, theirs horizon.Days) finding.Finding {
	both := in.Clone()
	both.Keep(theirs)
	f := finding.Finding{Rule: ruleTwoCovers, At: a.Cover.At,
		Text:  "on " + h.Date(both.Next(0)).Words() + " both " + other + " and " + a.Cover.V + " stand in for " + d.Keeper + ", and each may think that the other comes",
		Write: other + " as cover here too, or visits on other days", Edits: finding.Text(a.Cover.At, other)}
	for _, r := range d.Runs {
		for _, b := range r.Blocks {
			if b.Cover.V == other && b.From.V < a.To.V && a.From.V < b.To.V {
				f.Also = append(f.Also, finding.Related{At: b.Cover.At, Text: "the other"})
				return f
			}
		}
	}
	return f
}

// Duties returns the days of every keeper who is away at some time, by name.
func (p *People) Duties() []*Duty { return p.all }

// Of returns the days of a keeper, or nil for one who is never away.
func (p *People) Of(keeper string) *Duty { return p.duty[keeper] }

// Doer returns who does what keeper would do on day i: the keeper, the stand-in
// on a day of a visit, or "" and false where nobody is there.
func (p *People) Doer(keeper string, i int) (string, bool) {
	d := p.duty[keeper]
	if d == nil || !d.Away.Has(i) {
		return keeper, true
	}
	return d.who(i)
}

// there reports whether anybody does what keeper would do on day i.
func (p *People) there(keeper string, i int) bool {
	_, ok := p.Doer(keeper, i)
	return ok
}

// Present returns the first day from i on when somebody does what keeper would do.
func (p *People) Present(keeper string, i int) int {
	if d := p.duty[keeper]; d != nil {
		return d.present(i)
	}
	return i
}

// present returns the first day from i on when somebody does what keeper would do.
func (d *Duty) present(i int) int {
	for i < len(d.Away)*64 && d.Away.Has(i) && !d.Visits.Has(i) {
		i++
	}
	return i
}

// before returns the last day up to i when somebody does, or -1.
func (d *Duty) before(i int) int {
	for i >= 0 && d.Away.Has(i) && !d.Visits.Has(i) {
		i--
	}
	return i
}

// block returns the away block by which the keeper is away on day i: the last to
// begin, which is what an extended trip goes by.
func (r *Run) block(i int) *plan.Away {
	for k := len(r.days) - 1; k > 0; k-- {
		if r.days[k].Has(i) {
			return r.Blocks[k]
		}
	}
	return r.Blocks[0]
}

// AwayOn returns the run of days away that has day i, or nil.
func (s *Shared) AwayOn(keeper string, i int) *Run {
	d := s.People.Of(keeper)
	if d == nil || !d.Away.Has(i) {
		return nil
	}
	for k := range d.Runs {
		if r := &d.Runs[k]; r.From <= i && i < r.To {
			return r
		}
	}
	return nil
}
