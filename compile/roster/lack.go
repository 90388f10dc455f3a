package roster

import (
	"strconv"

	"vivary/plan"
	"vivary/plan/source"
	"vivary/schema/wording"
)

// Lack is what keeps an entry from being shown to who does it: the line that can be
// changed, and what to write there.
type Lack struct {
	At    source.Place
	Write string
}

// Lacking says what an entry lacks to be shown on day i: the one thing that a calendar
// leaves out, where there is one; else its round.
func (s *Shared) Lacking(e *Entry, i int) Lack {
	who, _ := s.Doer(e, i)
	if who == "" && len(s.Plan.Keepers) > 1 {
		if c := s.forKeepers(e); c != nil {
			return s.nobodys(e)
		}
	}
	for _, c := range s.Plan.RoundCalendars() {
		if l, ok := lack(c, e, who); ok {
			return l
		}
	}
	return Lack{e.Round.At, s.ownCalendar(e)}
}

// ownCalendar says what calendar would show an entry of which no calendar is near.
func (s *Shared) ownCalendar(e *Entry) string {
	if !e.Round.At.Written() {
		return "a round at " + wording.Clock(e.At(), s.Plan.Units) + " that a calendar shows, or a calendar that selects no rounds"
	}
	return "a calendar with " + strconv.Quote(e.Round.Name.V) + " among its rounds, or one that selects nothing; or paper as list of this round, where it is worked from paper"
}

// forKeepers returns a calendar that shows everything of some keepers, or nil.
func (s *Shared) forKeepers(e *Entry) *plan.Calendar {
	for _, c := range s.Plan.RoundCalendars() {
		if len(c.Keepers) > 0 && len(lacks(c, e, c.Keepers[0].V)) == 0 {
			return c
		}
	}
	return nil
}

// nobodys is for what nobody is named for: no calendar of keepers shows it.
func (s *Shared) nobodys(e *Entry) Lack {
	write := strconv.Quote(s.Plan.Keepers[0].Name.V) + " as keeper, or whoever does it"
	if e.Round.At.Written() {
		return Lack{e.Round.At, write + ", in this round"}
	}
	return Lack{e.Origin, write}
}

// omission is a list of a calendar in which a name is missing.
type omission struct {
	attr string
	list []plan.Written[string]
	name string
}

// lacks returns the lists of a calendar that leave out an entry done by somebody.
func lacks(c *plan.Calendar, e *Entry, who string) []omission {
	room := ""
	if place := e.Plan().Place; place != nil {
		room = place.Name.V
	}
	box := e.Plan().Name.V
	if e.Rack != nil {
		box = e.boxes()[0].Name.V
	}
	var out []omission
	for _, o := range []omission{
		{"rounds", c.Rounds, e.Round.Name.V}, {"keepers", c.Keepers, who}, {"rooms", c.Rooms, room},
		{"enclosures", c.Enclosures, box}, {"kinds", c.Kinds, e.Kind.Name},
	} {
		if o.attr == "enclosures" && selectsBox(o.list, e) {
			continue
		}
		if !selects(o.list, o.name) {
			out = append(out, o)
		}
	}
	return out
}

// lack is what a calendar lacks to show an entry, where that is one name that a plan
// can write.
func lack(c *plan.Calendar, e *Entry, who string) (Lack, bool) {
	all := lacks(c, e, who)
	if len(all) != 1 || all[0].name == "" || all[0].attr == "rounds" && !e.Round.At.Written() {
		return Lack{}, false
	}
	o := all[0]
	return Lack{o.list[0].At, strconv.Quote(o.name) + " in " + o.attr + " of calendar " + strconv.Quote(c.Name.V) + ", or a calendar without " + o.attr}, true
}
