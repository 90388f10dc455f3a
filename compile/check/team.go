package check

import (
	"slices"
	"strconv"
	"strings"

	"vivary/compile/horizon"
	"vivary/compile/roster"
	"vivary/plan"
	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/schema/wording"
)

// twoPeople finds rounds that take more people than there are, and days on which fewer
// than that are there and trained for animals that are to be cared for: a caution, since
// what waits for the second is not done alone. Where it waits for longer than a need may,
// the proof refuses, and this is said beneath.
func twoPeople(r *Rule, c *Collection) {
	for _, x := range c.crews() {
		f := finding.Finding{Rule: &r.Rule, At: x.takes.At, Source: r.Source, Strict: 1, Once: "people " + place(x.takes.At)}
		text := x.who + " takes " + strconv.Itoa(x.takes.V) + " people, and "
		if n := len(c.Plan.Keepers); x.takes.V > n {
			f.Text, f.Write = text+"the plan has "+strconv.Itoa(n), "a keeper block for whoever else comes"
			c.Add(f)
			continue
		}
		for _, few := range c.tooFew(x.entries) {
			f.Text, f.Write, f.Also = text+few.text(c), few.write(c), nil
			if few.away != nil {
				f.Once = "away " + place(few.away.At)
				f.Also = []finding.Related{{At: few.away.At, Text: few.away.Name.V + " is away until " + few.away.To.V.Words()}}
			}
			c.found.Soft(f, finding.Caution)
		}
	}
}

// few are the days of a round on which too few are there for one enclosure or more, by
// what brings it: one absence, or none.
type few struct {
	away  *plan.Away
	days  horizon.Days
	entry *roster.Entry // what is left undone on the first of them
	boxes []string
}

// crew is what takes several people: a round, a room or an enclosure, with what is done there.
type crew struct {
	who     string
	takes   plan.Written[int]
	entries []*roster.Entry
}

// crews gathers what takes several people, by where that is written, in the order of the rounds
// and then of the walk.
func (c *Collection) crews() (out []*crew) {
	at := map[source.Place]*crew{}
	of := func(n plan.Written[int], who string) *crew {
		x := at[n.At]
		if x == nil {
			x = &crew{who: who, takes: n}
			at[n.At] = x
			out = append(out, x)
		}
		return x
	}
	for _, x := range plan.Wholes(c.Plan.Rounds) {
		if x.People.V > 1 {
			of(x.People, "the "+x.Shown())
		}
	}
	for e := range c.Roster.All() {
		n := e.Crew()
		if n.V < 2 {
			continue
		}
		who := "the " + e.Round.Shown()
		if n.At != e.Round.People.At {
			if who = e.Plan().Name.V; e.Plan().People.At != n.At {
				who = "the room " + e.Plan().Place.Name.V
			}
		}
		x := of(n, who)
		x.entries = append(x.entries, e)
	}
	return out
}

// tooFew gathers the days on which care is left undone for want of people.
func (c *Collection) tooFew(all []*roster.Entry) []*few {
	var out []*few
	for _, e := range all {
		if e.After != 0 {
			continue // it goes with a meal
		}
		for k := range e.Causes {
			cause := &e.Causes[k]
			if cause.Why != roster.TooFew || cause.Days.Next(c.Horizon.Today) < 0 {
				continue
			}
			at := slices.IndexFunc(out, func(o *few) bool { return o.away == cause.Away })
			if at < 0 {
				at = len(out)
				out = append(out, &few{away: cause.Away, days: c.Horizon.New(), entry: e})
			}
			o := out[at]
			if first := o.days.Next(c.Horizon.Today); first < 0 || cause.Days.Next(c.Horizon.Today) < first {
				o.entry = e
			}
			o.days.Union(cause.Days)
			if name := e.Life.Plan.Name.V; !slices.Contains(o.boxes, name) {
				o.boxes = append(o.boxes, name)
			}
		}
	}
	return out
}

// text names the days and who is there.
func (f *few) text(c *Collection) string {
	first := f.days.Next(c.Horizon.Today)
	on := c.Horizon.Date(first).Words()
	if n := f.days.CountFrom(c.Horizon.Today); n > 1 {
		last := f.days.Last(c.Horizon.Days)
		on += ", and on " + strconv.Itoa(n-1) + " more until " + c.Horizon.Date(last).Words() + ","
	}
	who := "nobody is"
	if team := c.Roster.Team(f.entry.Keeper, f.entry.Life, first); len(team) > 0 {
		who = "only " + c.names(team) + " " + wording.Noun(len(team), "is", "are")
	}
	text := "on " + on + " " + who + " there"
	if skills := roster.Skills(f.entry.Life); len(skills) > 0 {
		text += " and trained for " + f.entry.Life.Plan.Sheet.Name.V + " (" + strings.Join(skills, ", ") + ")"
	}
	return text + ": " + wording.And(f.boxes)
}

// write says who could make up the number.
func (f *few) write(c *Collection) string {
	first := f.days.Next(c.Horizon.Today)
	skills := roster.Skills(f.entry.Life)
	for _, k := range c.Plan.Keepers {
		if missing := c.Roster.Untrained(k.Name.V, skills); missing != "" && c.Roster.People.There(k.Name.V, first) {
			return strings.Join(skills, ", ") + " under trained of keeper \"" + k.Name.V + "\", who is there, once they are"
		}
	}
	if f.away != nil {
		return "other days away, or another keeper who is there and trained on those days"
	}
	return "another keeper who is trained for it, or people = 1"
}

// names are keepers as people know them.
func (c *Collection) names(keepers []string) string {
	var out []string
	for _, name := range keepers {
		out = append(out, c.named(name))
	}
	return wording.And(out)
}

// named is a keeper as people know them.
func (c *Collection) named(keeper string) string {
	if k := c.Plan.Keeper(keeper); k != nil {
		return k.Shown()
	}
	return keeper
}

// place makes of a place the key by which the proof says what has the same cause.
func place(at source.Place) string {
	return strconv.Itoa(int(at.File)) + ":" + strconv.Itoa(int(at.Start)) + " "
}
