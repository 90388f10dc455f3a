package roster

import (
	"slices"
	"strconv"
	"strings"

	"vivary/compile/life"
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/wording"
)

// begins is with what somebody's time with the animals of a keeper begins.
type begins struct {
	duty *Duty
	run  *Run
	who  []string
}

// Aid is what to do after a sting, a bite or hairs in the eye, a line each, where a leave
// says that somebody begins to stand in: for each class of venom that lives in what they do
// in that time, with the species, and whom to tell. No line has a number of the plan, since
// others read calendars too. It is nil of any other leave, and of somebody who does nothing.
func (r *Roster) Aid(x *Leave) []string {
	if x.begins == nil {
		return nil
	}
	lives := r.caredFor(x.begins)
	if len(lives) == 0 {
		return nil
	}
	var out []string
	if x.For == "" {
		out = slices.Clone(schema.StandIn)
	}
	stings, begun := false, len(out)
	for _, h := range Helps(lives) {
		if h.Stings && !stings {
			stings = true
			out = append(out, schema.AidAlways...)
		}
		out = append(out, h.Title+" ("+listedNames(h.Species)+"): "+h.Text)
	}
	other := schema.AidOther
	if len(out) == begun {
		other = schema.AidAny
	}
	return append(append(out, other), r.tell(x.begins, lives, stings))
}

// caredFor are the enclosures that some people do for a keeper in a run of days away.
func (r *Roster) caredFor(b *begins) []*life.Enclosure {
	days := r.Horizon.New()
	for i := b.run.From; i < b.run.To; i++ {
		if name, there := b.duty.who(i); there && slices.Contains(b.who, name) {
			days.Add(i)
		}
	}
	var out []*life.Enclosure
	for k, l := range r.Lives {
		if slices.ContainsFunc(r.Of[k], func(e Entry) bool { return e.Keeper == b.duty.Keeper && e.Days.Intersects(days) }) {
			out = append(out, l)
		}
	}
	return out
}

// saying are the species in some enclosures of which a kind of aid is said, by their names
// for people and for a hospital.
func saying(lives []*life.Enclosure, a *schema.Aid) []string {
	var out []string
	seen := map[*plan.SpeciesSheet]bool{}
	for _, l := range lives {
		for _, s := range sheets(l) {
			if !seen[s] && saysOneOf(s, a.Figure, a.Words) {
				out = append(out, namedTwice(s))
			}
			seen[s] = true
		}
	}
	slices.Sort(out)
	return slices.Compact(out)
}

// namedTwice is a species by its name for people and its scientific one, without whoever
// described it.
func namedTwice(s *plan.SpeciesSheet) string {
	if latin := strings.Fields(s.Latin.V); len(latin) > 1 {
		return s.Shown() + ", " + latin[0] + " " + latin[1]
	}
	return s.Shown()
}

// maxNames is how many species of a class are named at the most: the plan of nobody has
// more, and a calendar is no place for a thousand.
const maxNames = 60

func listedNames(names []string) string {
	if n := len(names) - maxNames; n > 0 {
		names = append(names[:maxNames:maxNames], strconv.Itoa(n)+" more, whose names are at their boxes")
	}
	return strings.Join(names, "; ")
}

// tell says whom to tell, and never the number: who is there all the time and
// trained for what is in their care, and those to ring who do no care. Whoever is away is not told.
func (r *Roster) tell(b *begins, lives []*life.Enclosure, stings bool) string {
	var names []string
	numbers := 0
	var skills []string
	for _, l := range lives {
		skills = append(skills, Skills(l)...)
	}
	for _, k := range r.Plan.Keepers {
		name := k.Name.V
		if name == b.duty.Keeper || slices.Contains(b.who, name) || r.Untrained(name, skills) != "" || !r.thereIn(name, b.run) {
			continue
		}
		names = append(names, k.Shown())
		if k.Phone.Set() {
			numbers++
		}
	}
	for _, c := range r.Plan.Contacts {
		names = append(names, c.Shown())
		numbers++
	}
	where := ""
	switch {
	case len(names) == 0 && stings:
		return "Nobody to ring is named in the plan: ask for a number before you begin"
	case len(names) == 0:
		return "Then write it down for " + shown(r.Plan, b.duty.Keeper)
	case numbers == 0:
	case b.run.sudden():
		where = "; numbers stand in the day's list, not in calendars"
	default:
		where = ", number on your sheet"
	}
	return "Then tell " + wording.Or(names) + where
}

// thereIn reports whether somebody is there on all days of a run that are still to come.
func (r *Roster) thereIn(name string, run *Run) bool {
	for i := max(run.From, r.Horizon.Today); i < run.To; i++ {
		if !r.People.There(name, i) {
			return false
		}
	}
	return true
}
