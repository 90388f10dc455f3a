// Package compile is the pure core: from a collection and a moment to findings,
// series and proofs. It reads no file, no clock and no environment; the same
// input gives the same result.
package compile

import (
	"slices"
	"strconv"
	"time"

	"vivary/compile/check"
	"vivary/compile/deadline"
	"vivary/compile/horizon"
	"vivary/compile/life"
	"vivary/compile/prove"
	"vivary/compile/roster"
	"vivary/compile/stock"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema/civil"
	"vivary/schema/quantity"
	"vivary/schema/wording"
)

// Ahead is how many days a compilation looks ahead: a year of calendar entries and a
// month beyond. It looks to the end of every absence that is announced.
const Ahead = 400

// Kept is for how many days of the past calendars keep entries.
const Kept = 31

// MaxAhead bounds that, whatever is announced.
const MaxAhead = 3660

// Result is everything that follows from a collection. It is not changed once
// Compile has returned it.
type Result struct {
	Plan    *plan.Collection
	Now     time.Time // in the collection's zone
	Today   civil.Date
	Horizon horizon.Horizon
	Lives   []*life.Enclosure
	Roster  *roster.Roster  // nil where the plan was not understood
	Proofs  [][]prove.Proof // of each of Lives
	Stock   *stock.Report   // nil where the plan has no culture, tub or supply
	// Deadlines are the dates of the house, which stand at no box.
	Deadlines []deadline.Deadline
	Findings  []finding.Finding
	// Accepted are the findings that accept blocks silence, each by itself, by place.
	Accepted []Accepted

	// Remembers reports whether calendars of before told which animals there were.
	Remembers bool

	boxes  []box
	racked []finding.Finding // what was found of racks, and of what the log says of feeder animals
	single []finding.Finding // what Findings puts together
	lacks  []finding.Finding // animals that the last calendars knew and the plan has not
	told   roster.Told
	checks *check.Collection
	bare   *Result // as if nothing had been logged, where that was asked
}

// box is what follows for one enclosure: from what all share, and from its own plan
// and log.
type box struct {
	log    []plan.Event
	life   *life.Enclosure
	lived  []finding.Finding
	sheet  roster.Sheet
	checks []finding.Finding
	first  bool // the one that speaks of what is said once of a species
	proofs []prove.Proof
	proved []finding.Finding
	stands bool // it was taken from the compilation before
}

// SeesHouse reports whether a keeper is to see a calendar of the dates of the house: one that it
// names, or else whoever has rounds of their own. Who only stands in does not, nor who reads
// without being a keeper, unless the plan has no keepers.
func (r *Result) SeesHouse(c *plan.Calendar, keeper string) bool {
	switch {
	case keeper == "":
		return len(r.Plan.Keepers) == 0
	case len(c.Keepers) > 0:
		return plan.Lists(c.Keepers, keeper)
	}
	return r.Roster != nil && r.Roster.Regular(keeper)
}

// Input is what a compilation is made from.
type Input struct {
	Plan *plan.Collection
	// Loaded are the findings made when it was read.
	Loaded []finding.Finding
	Now    time.Time
	// Told is what the last published feeds showed people, or nil.
	Told roster.Told
	// Known is what they told of the animals, a value for each of them.
	Known []Known
	// Last is the compilation before of the same folder by the same Reader, or nil. What
	// did not change since is taken from it; the result is the same.
	Last *Result
}

// At is the same result as of another moment of the same day.
func (r *Result) At(now time.Time) *Result {
	out := *r
	out.Now = now.In(r.Now.Location())
	return &out
}

// Compile compiles a collection as of a moment, without knowing what was published
// before.
func Compile(c *plan.Collection, loaded []finding.Finding, now time.Time) *Result {
	return From(Input{Plan: c, Loaded: loaded, Now: now})
}

// From compiles a collection. The result's findings hold those made when it was read
// too, sorted together. Where the plan could not be understood well enough to go on,
// only these are returned.
func From(in Input) *Result {
	r, all := judged(&in)
	all = r.unrefused(&in, all)
	r.Remembers = len(in.Known) > 0
	if r.Roster != nil {
		all = append(all, r.lacks...)
		all, r.Accepted = accept(in.Plan, all, r.Today)
		r.press(all)
	}
	r.single = all
	r.Findings = inUnits(finding.Sort(in.Plan.Files, together(in.Plan, all)), in.Plan.Units)
	return r
}

// inUnits tells the figures that sources and limits quote in the keeper's units, beside
// their own. What is found is reckoned in them already, and what to write is a plan's text.
func inUnits(all []finding.Finding, u quantity.Units) []finding.Finding {
	for i := range all {
		all[i].Limit, all[i].Source = wording.Prose(all[i].Limit, u), wording.Prose(all[i].Source, u)
	}
	return all
}

// judged compiles a collection as far as all that is found in it, each by itself.
func judged(in *Input) (*Result, []finding.Finding) {
	c := in.Plan
	r := &Result{Plan: c, told: in.Told}
	if c.Location == nil || !c.Understood() {
		r.Now, r.Today = in.Now, civil.FromTime(in.Now)
		return r, slices.Clone(in.Loaded)
	}
	r.Now = in.Now.In(c.Location)
	r.Today = civil.FromTime(r.Now)
	r.Horizon = horizon.Around(r.Today, reach(c, r.Today))

	r.Deadlines = deadline.Of(c, r.Today, r.Today+Ahead, Kept)
	shared, found := roster.Share(c, r.Horizon, in.Told)
	k := keep(*in, r, shared)
	r.live(shared, k)
	all := slices.Concat(in.Loaded, found, r.Roster.Findings, r.racked, life.HouseAhead(c, r.Today), tooFar(c, r.Today))
	return r, append(all, r.judge(k, in)...)
}

// live works out the animals and the entries of every enclosure, each alone.
func (r *Result) live(shared *roster.Shared, k *kept) {
	houses := life.Households(r.Plan)
	r.boxes = make([]box, len(r.Plan.Enclosures))
	roster.Each(len(houses), func(i int) { r.read(&houses[i], k, shared) })
	r.Lives = make([]*life.Enclosure, len(r.boxes))
	sheets := make([]roster.Sheet, len(r.boxes))
	for i := range r.boxes {
		r.Lives[i], sheets[i] = r.boxes[i].life, r.boxes[i].sheet
	}
	r.Roster = roster.Make(shared, r.Lives, sheets, r.racks(shared))
	r.stores()
}

// stores works out the feeder animals, which the meals of the roster take, and adds what is done
// for them.
func (r *Result) stores() {
	if r.Stock = stock.Of(r.Roster); r.Stock == nil {
		return
	}
	lives, found := life.Stores(r.Plan, r.Today)
	r.Roster.Keep(r.Stock.Stores(r.Roster, lives))
	r.racked = append(r.racked, found...)
}

// racks works out what is done once for all that stand in a rack.
func (r *Result) racks(shared *roster.Shared) []*roster.Rack {
	if len(r.Plan.Racks) == 0 {
		return nil
	}
	at := make(map[*plan.Enclosure]int, len(r.Lives))
	for i, l := range r.Lives {
		at[l.Plan] = i
	}
	var own []*life.Enclosure
	own, r.racked = life.Racks(r.Plan, r.Today)
	out := make([]*roster.Rack, len(own))
	for i, k := range r.Plan.Racks {
		of := make([]int, len(k.Enclosures))
		for j, e := range k.Enclosures {
			of[j] = at[e]
		}
		var found []finding.Finding
		out[i], found = shared.Rack(k, own[i], r.Lives, of)
		r.racked = append(r.racked, found...)
	}
	return out
}

// judge checks and proves, and looks for animals that are missing.
func (r *Result) judge(k *kept, in *Input) []finding.Finding {
	last := in.Last
	r.checks = &check.Collection{Plan: r.Plan, Today: r.Today, Deadlines: r.Deadlines, Horizon: r.Horizon, Lives: r.Lives, Roster: r.Roster, Stock: r.Stock}
	if k != nil {
		r.checks.After(last.checks)
	}
	r.checks.Prepare()
	stands := last != nil && k.checked(r.checks, last.checks)
	r.Proofs = make([][]prove.Proof, len(r.Lives))
	var all []finding.Finding
	once := []func(){ // the longest first, beside the others
		func() { all = r.checks.Whole() },
		func() { r.lacks = r.missing(in.Known) },
	}
	roster.Each(len(once)+len(r.boxes), func(i int) {
		if i < len(once) {
			once[i]()
			return
		}
		r.judgeBox(i-len(once), stands)
	})
	if !r.Plan.Complete() {
		all = nil // what could not be read is missing everywhere
	}
	n := len(all)
	for i := range r.boxes {
		b := &r.boxes[i]
		n += len(b.lived) + len(b.checks) + len(b.proved)
	}
	all = slices.Grow(all, n-len(all))
	for i := range r.boxes {
		b := &r.boxes[i]
		all = append(append(append(all, b.lived...), b.checks...), b.proved...)
	}
	return all
}

// judgeBox checks and proves one enclosure. stands says that what was checked of the boxes that
// stand may stand too.
func (r *Result) judgeBox(i int, stands bool) {
	b := &r.boxes[i]
	if first := r.checks.First(i); !b.stands || !stands || b.first != first {
		b.checks, b.first = r.checks.One(i), first
	}
	if (!b.stands || b.life.Plan.Rack.Set()) && len(r.Roster.Of) > 0 { // others who stand in a rack may have changed
		b.proofs = prove.Of(r.Roster, i)
		b.proved = prove.Findings(r.Roster, b.proofs)
	}
	r.Proofs[i] = b.proofs
}

// tooFar finds absences that end further ahead than is looked.
func tooFar(c *plan.Collection, today civil.Date) []finding.Finding {
	var found finding.List
	for _, a := range c.Aways {
		if a.To.Set() && int(a.To.V-today) > MaxAhead {
			found.Add(finding.Finding{Rule: ruleTooFar, At: a.To.At,
				Text:  "this absence ends on " + a.To.V.Words() + ", further ahead than is looked",
				Limit: strconv.Itoa(MaxAhead) + " days ahead", Write: "a nearer day of return"})
		}
	}
	return found.All
}

// Single are the findings each by itself, in no order: of what is said together in Findings,
// one for each enclosure.
func (r *Result) Single() []finding.Finding { return r.single }

// Takes returns how long some entries take on each day of the horizon, in minutes.
func (r *Result) Takes(all []*roster.Entry) []int { return r.checks.Takes(all) }

// Hours are how much each of the keepers of the plan works, in their order.
func (r *Result) Hours() []check.Hours { return r.checks.Hours() }

// Minutes returns how long a round of the plan takes on each day of the horizon; nil for one
// of which the plan does not say within how long it is to be done.
func (r *Result) Minutes(x *plan.Round) []int {
	if r.checks == nil {
		return nil
	}
	return r.checks.Took(x)
}

// Late returns how many needs are not met in time.
func (r *Result) Late() int {
	n := 0
	for _, proofs := range r.Proofs {
		for i := range proofs {
			if !proofs[i].Met() {
				n++
			}
		}
	}
	return n
}

// Refused reports whether a finding keeps feeds from being made.
func (r *Result) Refused() bool { return finding.Refuses(r.Findings) }

func reach(c *plan.Collection, today civil.Date) int {
	days := Ahead
	for _, a := range c.Aways {
		if n := int(a.To.V-today) + 8; a.To.Set() && n > days {
			days = n
		}
	}
	return min(days, MaxAhead)
}
