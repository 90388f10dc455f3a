package compile

import (
	"cmp"
	"slices"
	"time"

	"vivary/compile/ical"
	"vivary/compile/identity"
	"vivary/compile/life"
	"vivary/plan"
	"vivary/schema/civil"
)

// Known is what a published calendar tells of the animals that it showed.
type Known struct {
	Salt string
	Here []ical.Here
	Made time.Time // when it was revised
	// Plan says that it is no calendar that tells it, but the plan before a change.
	Plan bool
}

// Salt is that of the ids in the feeds of a collection.
func Salt(c *plan.Collection) string { return ical.Short(c.About.Name.V, "here") }

// Here is what the feeds that show an enclosure tell of it.
func (r *Result) Here(l *life.Enclosure) ical.Here {
	e, salt := l.Plan, Salt(r.Plan)
	h := ical.Here{IDs: []string{ical.Short(salt, identity.Enclosure(e))}, Shown: e.Shown(), Animals: living(l, r.Today)}
	if e.Name.V != identity.Enclosure(e) {
		h.IDs = append(h.IDs, ical.Short(salt, e.Name.V))
	}
	h.Species = speciesID(salt, e)
	h.Planned, h.Lines, h.Left, h.Gone = r.stated(e)
	return h
}

// Known is what calendars of the collection would tell of its animals, for whoever compiles it
// again with a change.
func (r *Result) Known() []Known {
	if r.Roster == nil {
		return nil
	}
	k := Known{Salt: Salt(r.Plan), Made: r.Now, Plan: true, Here: make([]ical.Here, 0, len(r.Lives))}
	for _, l := range r.Lives {
		k.Here = append(k.Here, r.Here(l))
	}
	return []Known{k}
}

func speciesID(salt string, e *plan.Enclosure) string {
	return ical.Short(salt, "species", e.Species.V)
}

// stated is what plan and log say of the numbers in an enclosure.
func (r *Result) stated(e *plan.Enclosure) (planned, lines, left, gone int) {
	d := r.Plan.Departed(e.Name.V)
	for _, g := range r.Plan.Gone {
		if g.Name.V == e.Name.V || e.Formerly.Set() && g.Name.V == e.Formerly.V {
			gone += g.Animals.V
		}
	}
	return e.Total(), d.Lines, d.Left, gone
}

// living is how many animals live in an enclosure on a day.
func living(l *life.Enclosure, on civil.Date) (n int) {
	for _, g := range l.Groups {
		n += g.Count(on)
	}
	return n
}

// told is what the calendars that were built last tell of an enclosure.
type told struct {
	ical.Here
	salt string
	made time.Time
	plan bool // the plan before a change tells it
}

// latest returns what was told of each enclosure last: several calendars can show one, and
// one that is no longer built goes on telling what it told.
func latest(all []Known) []told {
	at := map[[2]string]int{}
	var out []told
	for _, k := range all {
		for _, h := range k.Here {
			key := [2]string{k.Salt, h.IDs[0]}
			i, again := at[key]
			switch {
			case !again:
				at[key] = len(out)
				out = append(out, told{h, k.Salt, k.Made, k.Plan})
			case k.Made.After(out[i].made):
				out[i] = told{h, k.Salt, k.Made, k.Plan}
			}
		}
	}
	slices.SortStableFunc(out, func(a, b told) int {
		return cmp.Or(plan.Naturally(a.Shown, b.Shown), cmp.Compare(a.IDs[0], b.IDs[0]))
	})
	return out
}
