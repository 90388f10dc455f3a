// Package compile is the pure core: from a collection and a moment to findings,
// series and proofs. It reads no file, no clock and no environment; the same
// input gives the same result.
package compile

import (
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

// HorizonDays is how far ahead a compilation looks: a year of calendar entries
// and a month beyond. It reaches to the end of every absence that is announced.
const HorizonDays = 400

// MaxHorizonDays bounds the horizon, whatever is announced.
const MaxHorizonDays = 3660

// Result is everything that follows from a collection. It is not changed once
// Compile has returned it.
type Result struct {
	Plan     *plan.Collection
	Now      time.Time // in the collection's zone
	Today    civil.Date
	Horizon  horizon.Horizon
	Lives    []*life.Enclosure
	Roster   *roster.Roster
	Proofs   [][]prove.Proof // of each of Lives
	Findings []finding.Finding
}

// Compile compiles a collection as of a moment. loaded are the findings made when
// it was read; the result's findings hold them too, sorted together. Where the
// plan could not be understood well enough to go on, only these are returned.
func Compile(c *plan.Collection, loaded []finding.Finding, now time.Time) *Result {
	r := &Result{Plan: c, Findings: loaded}
	if c.Location == nil {
		r.Now, r.Today = now, civil.FromTime(now)
		return r
	}
	r.Now = now.In(c.Location)
	r.Today = civil.FromTime(r.Now)
	r.Horizon = horizon.Horizon{From: r.Today, Days: reach(c, r.Today)}

	logs := life.Lines(c)
	r.Lives = make([]*life.Enclosure, len(c.Enclosures))
	lived := make([][]finding.Finding, len(c.Enclosures))
	roster.Each(len(c.Enclosures), func(i int) {
		e := c.Enclosures[i]
		r.Lives[i], lived[i] = life.Read(c, e, logs[e.Name.V], r.Horizon)
	})
	r.Roster = roster.Make(c, r.Lives, r.Horizon)
	all := append(loaded[:len(loaded):len(loaded)], r.Roster.Findings...)
	for _, a := range c.Aways {
		if a.To.Set() && int(a.To.V-r.Today) > MaxHorizonDays {
			all = append(all, finding.Finding{Rule: ruleTooFar, Severity: ruleTooFar.Severity, At: a.To.At,
				Text:  "this absence ends on " + a.To.V.Words() + ", further ahead than is looked",
				Limit: strconv.Itoa(MaxHorizonDays) + " days ahead", Write: "a nearer day of return"})
		}
	}
	for i, l := range lived {
		for k := range l {
			l[k].In = c.Enclosures[i].Whole
		}
		all = append(all, l...)
	}
	all = append(all, check.Run(&check.Collection{Plan: c, Today: r.Today, Horizon: r.Horizon, Lives: r.Lives, Roster: r.Roster})...)

	r.Proofs = make([][]prove.Proof, len(r.Lives))
	if len(r.Roster.Of) > 0 {
		roster.Each(len(r.Lives), func(i int) { r.Proofs[i] = prove.Of(r.Roster, i) })
		for _, p := range r.Proofs {
			all = append(all, prove.Findings(r.Roster, p)...)
		}
	}
	r.Findings = finding.Sort(c.Files, accept(c, all, r.Today))
	return r
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
	days := HorizonDays
	for _, a := range c.Aways {
		if n := int(a.To.V-today) + 8; a.To.Set() && n > days {
			days = n
		}
	}
	return min(days, MaxHorizonDays)
}
