package roster

import (
	"time"

	"vivary/plan"
	"vivary/plan/finding"
	"vivary/schema/civil"
	"vivary/schema/wording"
)

// clockChanges finds rounds that begin at a time which a clock change on the
// horizon leaves out or repeats. Most changes are at night, when no round may
// begin anyway; some zones change in the evening.
func (s *Shared) clockChanges() (found []finding.Finding) {
	loc := s.Plan.Location
	if loc == nil {
		return nil
	}
	at := s.Horizon.Now().At(0, loc)
	last := s.Horizon.Last().At(24*60-1, loc)
	for range 400 { // a zone changes twice a year; the bound is for odd data
		_, end := at.ZoneBounds()
		if end.IsZero() || end.After(last) {
			return found
		}
		if !end.After(at) {
			// Of leap years it says on 31 December that the period ends that day.
			at = at.AddDate(0, 0, 1)
			continue
		}
		_, before := end.Add(-time.Second).Zone()
		_, after := end.Zone()
		// The wall clock shows the times between these two never, or twice.
		from := end.UTC().Add(time.Duration(min(before, after)) * time.Second)
		until := end.UTC().Add(time.Duration(max(before, after)) * time.Second)
		for _, r := range plan.Wholes(s.Rounds) {
			d := civil.FromTime(from)
			for _, day := range []civil.Date{d, civil.FromTime(until)} {
				y, m, n := day.YMD()
				t := time.Date(y, m, n, int(r.Clock.V)/60, int(r.Clock.V)%60, 0, 0, time.UTC)
				if t.Before(from) || !t.Before(until) || before == after {
					continue
				}
				what := "does not exist"
				if after < before {
					what = "comes twice"
				}
				found = append(found, finding.Finding{Rule: ruleClockChange, Severity: ruleClockChange.Severity, At: r.Clock.At,
					Text:  wording.Clock(r.Clock.V, s.Plan.Units) + " " + what + " on " + day.Words() + ", when the clocks change",
					Write: "a time before " + wording.Clock(civil.Clock(from.Hour()*60+from.Minute()), s.Plan.Units)})
				break
			}
		}
		at = end
	}
	return found
}
