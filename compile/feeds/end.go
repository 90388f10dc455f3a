package feeds

import (
	"fmt"
	"strings"

	"vivary/compile/ical"
	"vivary/compile/roster"
	"vivary/compile/rounds"
	"vivary/schema/wording"
)

// goesOn is how many of the cares that go on are named at the end of a calendar.
const goesOn = 20

// ends adds the entry that says that the calendar ends, but for some cares.
func (s *selection) ends(feed *ical.Feed, but []*roster.Entry) {
	if s.standsIn() {
		return // it ends with handing back
	}
	e := ical.Entry{UID: s.uid("end"), Date: s.reach, AllDay: true, Days: 1,
		Summary:     "This calendar ends here",
		Description: "Entries were made up to this day. Run vivary build again, and the calendar goes on."}
	if len(but) > 0 {
		e.Summary += ", but for " + wording.Count(len(but), "care", "cares")
		var names []string
		for _, x := range but[:min(len(but), goesOn)] {
			t := rounds.TaskOf(x)
			names = append(names, "\n- "+alone(x, t))
		}
		if n := len(but) - goesOn; n > 0 {
			names = append(names, fmt.Sprintf("\n- and %d more", n))
		}
		e.Description = "What hangs on animals, seasons or people was told up to this day. Run vivary build again, and it goes on. Only this goes on by itself:" + strings.Join(names, "")
	}
	feed.Entries = append(feed.Entries, e)
}
