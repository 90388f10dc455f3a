package main

import (
	"fmt"
	"io"
	"slices"

	"vivary/compile"
	"vivary/compile/growth"
	"vivary/compile/life"
	"vivary/compile/picture"
)

// drawGrowth draws how the animals of a block grew.
func drawGrowth(w *world, f *flags, r *compile.Result, i int, animals string) int {
	l := r.Lives[i]
	k := slices.IndexFunc(l.Groups, func(g *life.Group) bool { return g.Animals.Name.V == animals })
	if k < 0 {
		fmt.Fprintf(w.err, "vivary why: --svg draws an enclosure, or how animals in it grew, and %s has none named %q\n", l.Plan.Name.V, animals)
		return usage
	}
	return w.draw(f, "why", func(to io.Writer) error { return picture.Growth(to, r, i, l.Groups[k], f.narrow) })
}

// growthForm is how an animal grew, in JSON.
type growthForm struct {
	Animals string       `json:"animals"`
	Weights []weightForm `json:"weights"`
	Moults  []string     `json:"moults"`
	Times   []timeForm   `json:"between_moults"`
	Weight  string       `json:"by_weight"` // a pace
	Time    string       `json:"by_time"`
}

type weightForm struct {
	On     string     `json:"on"`
	Mass   float64    `json:"mass_g"`
	Moults int        `json:"moults_since_first"`
	Band   *massRange `json:"expected_g,omitempty"`
}

type massRange struct {
	Least float64 `json:"least"`
	Most  float64 `json:"most"`
}

type timeForm struct {
	From   string `json:"from"`
	To     string `json:"to"`
	Days   int    `json:"days"`
	Instar int    `json:"instar,omitempty"`
	Least  int    `json:"least_days,omitempty"`
	Most   int    `json:"most_days,omitempty"`
}

var paces = map[growth.Pace]string{growth.AsReckoned: "as-expected", growth.Behind: "behind", growth.Ahead: "ahead", growth.Unsure: "not-known"}

// growthForms are how the animals of an enclosure grew, none where that is no name of one.
func growthForms(r *compile.Result, name string) (all []growthForm) {
	for _, l := range r.Lives {
		if l.Plan.Name.V != name {
			continue
		}
		of, ok := growth.Of(l, r.Plan, r.Today)
		if !ok {
			return nil
		}
		for _, g := range l.Groups {
			c, ok := of.Course(g)
			if !ok {
				continue
			}
			form := growthForm{Animals: g.Animals.Name.V, Weights: []weightForm{}, Moults: []string{}, Times: []timeForm{}, Weight: paces[c.Weight()], Time: paces[c.Time()]}
			for _, p := range c.Points {
				x := weightForm{On: p.On.String(), Mass: exact(p.Mass), Moults: p.Moults}
				if p.Expected.High > 0 {
					x.Band = &massRange{exact(p.Expected.Low), exact(p.Expected.High)}
				}
				form.Weights = append(form.Weights, x)
			}
			for _, m := range c.Moults(r.Today) {
				form.Moults = append(form.Moults, m.String())
			}
			for _, t := range c.Times {
				form.Times = append(form.Times, timeForm{t.From.String(), t.To.String(), t.Days(), t.Instar, t.Least, t.Most})
			}
			all = append(all, form)
		}
	}
	return all
}
