// Package compile is the pure core: from a collection and a moment to findings,
// series and proofs. It reads no file, no clock and no environment; the same
// input gives the same result.
package compile

import (
	"slices"
	"strconv"
	"time"

	"vivary/compile/check"
	"vivary/compile/horizon"
	"vivary/compile/life"
	"vivary/compile/prove"
	"vivary/compile/roster"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema/civil"
)

// Ahead is how many days a compilation looks ahead: a year of calendar entries and a
// month beyond. It looks to the end of every absence that is announced.
const Ahead = 400

// MaxAhead bounds that, whatever is announced.
const MaxAhead = 3660

// Result is everything that follows from a collection. It is not changed once
// Compile has returned it.
type Result struct {
	Plan     *plan.Collection
	Now      time.Time // in the collection's zone
	Today    civil.Date
	Horizon  horizon.Horizon
	Lives    []*life.Enclosure
	Roster   *roster.Roster  // nil where the plan was not understood
	Proofs   [][]prove.Proof // of each of Lives
	Findings []finding.Finding
	boxes    []box
}

// box is what follows for one enclosure: from what all share, and from its own plan
// and log.
type box struct {
	life   *life.Enclosure
	lived  []finding.Finding
	sheet  roster.Sheet
	checks []finding.Finding
	proofs []prove.Proof
	proved []finding.Finding
}

// Input is what a compilation is made from.
type Input struct {
	Plan *plan.Collection
	// Loaded are the findings made when it was read.
	Loaded []finding.Finding
	Now    time.Time
	// Told is what the last published feeds showed people, or nil.
	Told roster.Told
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
	c := in.Plan
	r := &Result{Plan: c, Findings: in.Loaded}
	if c.Location == nil {
		r.Now, r.Today = in.Now, civil.FromTime(in.Now)
		return r
	}
	r.Now = in.Now.In(c.Location)
	r.Today = civil.FromTime(r.Now)
	r.Horizon = horizon.Around(r.Today, reach(c, r.Today))

	shared, found := roster.Share(c, r.Horizon, in.Told)
	r.live(shared)
	all := slices.Concat(in.Loaded, found, r.Roster.Findings, tooFar(c, r.Today))
	all = append(all, r.judge()...)
	r.Findings = finding.Sort(c.Files, finding.Together(accept(c, all, r.Today)))
	return r
}

// live works out the animals and the entries of every enclosure, each alone.
func (r *Result) live(shared *roster.Shared) {
	logs := life.Lines(r.Plan)
	r.boxes = make([]box, len(r.Plan.Enclosures))
	r.Lives = make([]*life.Enclosure, len(r.boxes))
	roster.Each(len(r.boxes), func(i int) {
		e, b := r.Plan.Enclosures[i], &r.boxes[i]
		b.life, b.lived = life.Read(r.Plan, e, logs[e.Name.V], r.Horizon)
		b.sheet.Entries, b.sheet.Findings = shared.Enclosure(b.life)
		r.Lives[i] = b.life
	})
	sheets := make([]roster.Sheet, len(r.boxes))
	for i := range r.boxes {
		sheets[i] = r.boxes[i].sheet
	}
	r.Roster = roster.Make(shared, r.Lives, sheets)
}

// judge checks and proves.
func (r *Result) judge() []finding.Finding {
	c := &check.Collection{Plan: r.Plan, Today: r.Today, Horizon: r.Horizon, Lives: r.Lives, Roster: r.Roster}
	all := c.Whole()
	r.Proofs = make([][]prove.Proof, len(r.Lives))
	roster.Each(len(r.boxes), func(i int) {
		b := &r.boxes[i]
		b.checks = c.One(i)
		if len(r.Roster.Of) > 0 {
			b.proofs = prove.Of(r.Roster, i)
			b.proved = prove.Findings(r.Roster, b.proofs)
		}
		r.Proofs[i] = b.proofs
		for k := range b.lived {
			b.lived[k].In = r.Plan.Enclosures[i].Whole
		}
	})
	for i := range r.boxes {
		b := &r.boxes[i]
		all = append(append(append(all, b.lived...), b.checks...), b.proved...)
	}
	return all
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
