package roster

import (
	"cmp"
	"slices"

	"vivary/compile/horizon"
	"vivary/compile/life"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/civil"
)

// Stint is a time in which somebody stands in for a keeper.
type Stint struct {
	Keeper string       // who stands in, by name
	For    string       // for whom
	Days   horizon.Days // on which they come, those that are over too
	Back   civil.Date   // from when on who was away does the rounds again
	Sudden bool         // the log alone tells of it
	Open   bool         // it is not known yet when it ends: Back is then as far as is looked

	begins begins
}

// Stints are the times in which somebody stands in that are not over, by the next day on
// which they come.
func (r *Roster) Stints() []Stint {
	var out []Stint
	for _, d := range r.People.Duties() {
		for k := range d.Runs {
			run := &d.Runs[k]
			for _, name := range d.inRun(run) {
				x := Stint{Keeper: name, For: d.Keeper, Days: r.Horizon.New(), Sudden: run.sudden(), Open: run.open(), begins: begins{d, run, []string{name}}}
				for _, s := range d.stands {
					if s.keeper == name {
						x.Days.Union(s.days)
					}
				}
				in := r.Horizon.New()
				in.AddRun(run.From, run.To, r.Horizon.Days)
				x.Days.Keep(in)
				x.Back = run.Ends
				if slices.Contains(run.covers(), name) {
					x.Back = run.until(name)
				}
				if x.Next(r.Horizon.Today) >= 0 {
					out = append(out, x)
				}
			}
		}
	}
	slices.SortStableFunc(out, func(a, b Stint) int {
		return cmp.Compare(a.Next(r.Horizon.Today), b.Next(r.Horizon.Today))
	})
	return out
}

// Next is the first of its days from one on, or -1.
func (x *Stint) Next(from int) int { return x.Days.Next(from) }

// CaredFor are the enclosures for which somebody does anything in a stint.
func (r *Roster) CaredFor(x *Stint) []*life.Enclosure { return r.caredFor(&x.begins) }

// Help is what to do after a sting, a bite or hairs in the eye, by a class of animals in
// somebody's care.
type Help struct {
	*schema.Aid
	Species []string // those of that class that are there, by their names for people and for a hospital
}

// Helps are what to do for the animals of some enclosures, the most urgent first; none where
// they do no more to people than claws and teeth do.
func Helps(lives []*life.Enclosure) (out []Help) {
	for _, a := range schema.Aids {
		if names := saying(lives, a); len(names) > 0 {
			out = append(out, Help{a, names})
		}
	}
	return out
}

// SheetsOf are the sheets of the species in some enclosures, in that order, each once.
func SheetsOf(lives []*life.Enclosure) (out []*plan.SpeciesSheet) {
	for _, l := range lives {
		for _, s := range sheets(l) {
			if !slices.Contains(out, s) {
				out = append(out, s)
			}
		}
	}
	return out
}

// NamedTwice is a species by its name for people and its scientific one, without whoever
// described it.
func NamedTwice(s *plan.SpeciesSheet) string { return namedTwice(s) }

// Says reports whether a figure of a sheet has one of some words.
func Says(s *plan.SpeciesSheet, figure *schema.Figure, words ...string) bool {
	return saysOneOf(s, figure, words)
}
