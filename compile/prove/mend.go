package prove

import (
	"strconv"
	"strings"
	"time"

	"vivary/compile/horizon"
	"vivary/compile/life"
	"vivary/compile/recur"
	"vivary/compile/roster"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/wording"
)

// mend fills in the line that can be changed, what to write there, and a key by which
// breaches of one cause are said once.
func (b *breach) mend(f *finding.Finding) {
	switch {
	case b.nothing:
		f.At, f.Write = b.owner(), b.bring()
	case b.unshown != nil:
		f.At, f.Write, f.Once = b.mendShown()
	case b.leftIn() != nil:
		f.At, f.Write = b.leftIn().At, b.mendLeftIn(b.leftIn())
	case b.unfit != nil && b.away == nil:
		f.At, f.Write, f.Once = b.unfit.At, "as many people as are there and trained for it", "people "+place(b.unfit.At)
	case b.byDates():
		f.At, f.Write, f.Once = b.mendDates()
	case b.away != nil && !b.Name.PerMeal:
		b.mendAway(f)
	case b.Name.PerMeal && b.away != nil:
		f.At, f.Write = b.care(), "prey that is killed first (killed), or somebody who comes on the day after"
	case b.Name.PerMeal && b.rareRound():
		f.At, f.Write, f.Once = b.mendRound()
	case b.Name.PerMeal:
		b.mendLeftovers(f)
	case len(b.held) > 0 && b.soft(b.Breach):
		f.At, f.Write = b.held[0].At, b.mendHeld()
	case b.shownBefore:
		by := b.s.Horizon.Date(max(b.today, b.Breach.From+b.Limit.Days)).String()
		f.At, f.Write = b.care(), by+" as from, or sooner: what calendars showed until today counts"
		if x := b.written(); x != nil && x.Timing.From.Set() {
			f.Edits = finding.Text(x.Timing.From.At, by)
		}
	case b.rareRound():
		f.At, f.Write, f.Once = b.mendRound()
	default:
		b.oftener(f)
		f.Once = "every " + place(f.At) + b.Name.Name
	}
}

// leftIn is a hold of the log by which what is left of a meal stays where it is, the longest
// of several, or nil. No plan is other for it, and nobody is told to take out what must stay.
func (b *breach) leftIn() (longest *life.Hold) {
	if !b.Name.PerMeal {
		return nil
	}
	for _, h := range b.held {
		if h.Out(schema.RowRemains) && !h.Planned(b.Life) && (longest == nil || h.Until > longest.Until) {
			longest = h
		}
	}
	return longest
}

func (b *breach) mendLeftIn(h *life.Hold) string {
	if h.Open {
		return "nothing in the plan: it stays " + h.End + "; then take out what is left, and log done leftovers"
	}
	return "nothing in the plan: leave it until " + h.Until.Short() + "; then take out what is left, and log done leftovers"
}

// mendLeftovers is for a look for leftovers that comes too late.
func (b *breach) mendLeftovers(f *finding.Finding) {
	by := wording.Days(b.Allowed)
	f.At, f.Write = b.care(), "leftovers taken out after "+by+" (leftovers), or prey that is killed first (killed)"
	for _, x := range b.By {
		if m := x.Meal; m != nil && m.Leftovers.Set() {
			f.Edits = finding.Text(m.Leftovers.At, by)
			return
		}
	}
}

// rareRound reports whether it falls on days on which its round is not held.
func (b *breach) rareRound() bool { return b.noRound != nil && len(b.noRound.Round.On) > 0 }

// mendRound is for a round that is held too seldom.
func (b *breach) mendRound() (at source.Place, write, once string) {
	x := b.noRound.Round
	return x.On[0].At, "more days in on: the " + x.Shown() + " is not held often enough, or another round for this care", "round " + place(x.At)
}

// byDates reports whether it is dates that the plan leaves out by which a need is not met:
// with them it would be.
func (b *breach) byDates() bool {
	if b.dates == nil || b.unshown != nil || b.unfit != nil || b.away != nil {
		return false
	}
	out, last := b.leftOut(), b.Breach.From
	for i := out.Next(max(0, last+1)); i >= 0 && i < b.Breach.To; i = out.Next(i + 1) {
		if b.length(Gap{last, i}) > b.Limit.Days {
			return false
		}
		last = i
	}
	return b.judged(Gap{last, b.Breach.To}) <= b.Limit.Days
}

// leftOut are the dates on which the plan leaves out what would meet the need.
func (b *breach) leftOut() horizon.Days {
	out := b.s.Horizon.New()
	for _, x := range b.By {
		for k := range x.Causes {
			if c := &x.Causes[k]; c.Dates != nil && !c.Why.Stands() {
				out.Union(c.Days)
			}
		}
	}
	return out
}

// named is the dates block by whose days a need is not met, or nil.
func (b *breach) named() *plan.Dates {
	if !b.byDates() {
		return nil
	}
	return b.s.Plan.DatesOf(b.dates.Dates.V.Name)
}

// mendDates is for dates that are left out: by when it must be done all the same.
func (b *breach) mendDates() (at source.Place, write, once string) {
	by := max(b.Breach.From, b.today-1) + b.Limit.Days
	if out := b.leftOut(); out.Has(by) && by-1 > b.Breach.From && !out.Has(by-1) {
		by-- // a day that is not left out
	}
	write = "also_on with a day on " + b.s.Horizon.Date(by).String() + " at the latest"
	if b.Breach.To-by > b.Allowed {
		write += ", and then every " + wording.Step(b.Allowed)
	}
	if b.dates.Why == roster.NoRound {
		write += "; another round that takes turns with this one, in round of what is done; or fewer days here"
	} else {
		write += "; or fewer days here"
	}
	return b.dates.At, write, "dates " + place(b.dates.At) + b.Name.Name
}

// oftener says how often would do, in the words that were typed where they can.
func (b *breach) oftener(f *finding.Finding) {
	f.At = b.care()
	step := wording.Step(b.Allowed)
	f.Write = "every " + step + ", or more often"
	x := b.written()
	switch {
	case x == nil:
	case x.Timing.AfterLast.Set():
		f.Write = wording.Days(b.Allowed) + " after the last time, or less"
		f.Edits = finding.Text(x.Timing.AfterLast.At, wording.Days(b.Allowed))
	case plan.Once(x.Timing.On):
		f.Write = "also_on in place of on, for a day beside those of the species sheet; else " + f.Write
	case len(x.Timing.On) > 0 && x.Timing.On[0].V.Kind == plan.EachWeekday:
		on := x.Timing.On
		if better := weekdays(b.Allowed, b.s.Horizon.Date(max(b.Breach.From, 0)), recur.MaxDate); better != nil {
			f.Write = wording.And(better) + ", or more days"
			f.Edits = finding.Items(b.s.Plan.Files.Text(on[0].At.File), on[0].At, on[len(on)-1].At, better)
		}
	case x.Timing.Every.Set():
		f.Edits = finding.Text(x.Timing.Every.At, step)
	}
}

// place makes a key of a place.
func place(at source.Place) string {
	return strconv.Itoa(int(at.File)) + ":" + strconv.Itoa(int(at.Start)) + " "
}

// bring says what block would bring what nothing does.
func (b *breach) bring() string {
	if b.Name == schema.NeedFood {
		if b.Group != nil && b.Group.Logged {
			return "an animals block for them, or where they went in the log; until then offer food by hand, and log fed"
		}
		if b.Group != nil && b.Group.Sheet != nil && !b.Group.Sheet.Preys() {
			return "a care block \"leaves\", every " + wording.Step(b.Allowed) + " and not off: prey is no food for them"
		}
		name := b.Life.Plan.Name.V
		if b.Group != nil {
			name = b.Group.Animals.Name.V
		}
		return "a feeding block \"" + name + "\", every " + wording.Step(b.Allowed) + ", with per_animal and prey in it"
	}
	return "a care block of a kind that brings " + b.Name.Noun + ", every " + wording.Step(b.Allowed)
}

// mendShown is for care that no calendar shows to who does it.
func (b *breach) mendShown() (at source.Place, write, once string) {
	x := b.unshown
	l := b.s.Lacking(x, x.Unshown(max(b.today, b.Breach.From+1)))
	switch {
	case l.At.Written():
	case x.Rack != nil:
		l.At = x.Rack.Plan.At
	case x.FromSheet:
		l.At = b.owner()
	default:
		l.At = b.care()
	}
	return l.At, l.Write, x.UnshownFor()
}

// mendHeld is for a hold that is longer than any should be: the log says how it went
// on, where nothing else ends it.
func (b *breach) mendHeld() string {
	h := b.held[0]
	switch {
	case h.Open:
		return "in the log, how it went on: it is held " + h.End
	case b.seen():
		return "nothing in the plan: offer one killed item, and log fed or refused"
	}
	return "an earlier end"
}

// mendAway is for an absence: with what visits, or until which day, it would be
// sound, and what is filled on the eve.
func (b *breach) mendAway(f *finding.Finding) {
	const full = "; on the eve every dish is filled"
	a := b.away
	eve := b.s.Horizon.Date(max(b.Breach.From, 0))
	from := min(eve, a.From.V-1) // all visits are written anew
	if _, there := b.s.People.Doer(a.Name.V, max(0, int(a.From.V-1-b.s.Horizon.From))); !there || a.From.V > eve+1 {
		from = a.From.V - 7 // somebody comes on its first day
	}
	visits, back := weekdays(b.apart(), from, a.To.V), eve+civil.Date(b.Limit.Days)
	f.Once = "away " + place(a.At)
	switch {
	case a.Logged:
		f.At, f.Write = a.At, "somebody who comes, and may do it; in the log, keeper "+a.Name.V+" back on the return"
	case b.unfit != nil && b.unfit.Hold != nil && a.Cover.Set():
		f.At, f.Write = a.At, "somebody trained in breeding on those days; or feeding under trained of keeper \""+a.Cover.V+"\", once they are: then water and killed prey go through the hatch"
	case b.unfit != nil:
		f.At, f.Write = a.At, "somebody who is trained for it, on those days"
	case b.keepers && back > a.From.V:
		f.At, f.Write = a.To.At, "back on "+back.String()+" at the latest: whoever stands in does not do this"
	case b.keepers:
		f.At, f.Write = a.To.At, "an earlier day: whoever stands in does not do this"
	case len(a.Visits) > 0 && len(visits) > len(a.Visits):
		f.At, f.Write = a.Visits[0].At, "visits on "+wording.And(visits)+full
		f.Edits = finding.Items(b.s.Plan.Files.Text(a.At.File), a.Visits[0].At, a.Visits[len(a.Visits)-1].At, visits)
	case len(a.Visits) > 0:
		f.At, f.Write = a.Visits[0].At, "no visits, so that "+a.Cover.V+" comes every day"
	case a.Cover.Set():
		f.At, f.Write = a.Cover.At, "a cover who is there on those days"
	case b.ofRota(a.Name.V) != "":
		f.At, f.Write = a.At, "somebody as cover, or a turn of rota \""+b.ofRota(a.Name.V)+"\" for somebody who is there on those days"
	default:
		f.At, f.Write = a.At, "somebody as cover, every day"
		if len(visits) > 0 {
			f.Write = "somebody as cover, with visits on " + wording.And(visits)
		}
		if back > a.From.V {
			f.Write = "back on " + back.String() + " at the latest, or " + f.Write
		}
		f.Write += full
	}
}

// ofRota is the rota by which a keeper has days of what is not done, "" for none.
func (b *breach) ofRota(keeper string) string {
	for _, x := range b.By {
		if x.Keeper == keeper && x.Round.Turns != nil {
			return x.Round.Turns.Name.V
		}
	}
	return ""
}

// apart is how far apart visits may be for a breach.
func (b *breach) apart() int {
	if b.Limit.Often {
		return b.Allowed
	}
	return b.repeated()
}

// weekdays returns the fewest weekdays on which visits are never further apart than so
// many days, from a day with somebody there until the return; none where only every day
// will do. Days on which nobody is away are not named.
func weekdays(apart int, from, until civil.Date) (out []string) {
	n := 1
	for n < 7 && (7+n-1)/n > apart {
		n++
	}
	if n == 7 {
		return nil
	}
	step := func(k int) int { // of the kth visit, in days
		if n == 1 {
			return 7*(k-1) + min(apart, 7)
		}
		return k * 7 / n
	}
	var on [7]bool
	last := from
	for k := 1; k <= n && (k == 1 || int(until-last) > apart); k++ {
		last = from + civil.Date(step(k))
		on[(last.Weekday()+6)%7] = true
	}
	for k, visit := range on { // a week begins on Monday
		if visit {
			out = append(out, strings.ToLower(time.Weekday((k + 1) % 7).String()[:3]))
		}
	}
	return out
}

// written is care of the plan's own, or nil.
func (p *Proof) written() *roster.Entry {
	for _, x := range p.By {
		if x.Timing != nil && !x.FromSheet {
			return x
		}
	}
	return nil
}

// care is the plan line of the care: how often it is done, where the plan wrote it,
// else the animals or the enclosure.
func (p *Proof) care() source.Place {
	x := p.written()
	if x == nil {
		if k := p.rack(); k != nil {
			return k.Plan.At
		}
		return p.owner()
	}
	if at := timingPlace(x.Timing); at.Written() {
		return at
	}
	return x.Origin
}

// rack is the rack whose reading meets the need, or nil.
func (p *Proof) rack() *roster.Rack {
	for _, x := range p.By {
		if x.Rack != nil {
			return x.Rack
		}
	}
	return nil
}

func (p *Proof) owner() source.Place {
	switch {
	case p.Group != nil && p.Group.Logged && p.Group.Since.At.Written():
		return p.Group.Since.At
	case p.Group != nil:
		return p.Group.Animals.At
	}
	return p.Life.Plan.At
}

func timingPlace(t *plan.Timing) source.Place {
	switch {
	case t.Every.Set():
		return t.Every.At
	case len(t.On) > 0:
		return t.On[0].At
	case t.Cron.Set():
		return t.Cron.At
	}
	return t.AfterLast.At
}
