package life

import (
	"strconv"

	"vivary/plan"
)

// fed notes a meal that was taken. A single animal that eats is not about to moult.
func (r *reader) fed(t *track, e *plan.Event) {
	t.Fed, t.HasFed = e.Date, true
	t.refused, t.firstRefused, t.Refused = seen{}, seen{}, 0
	if t.now() == 1 {
		r.closeMoult(t, e.Date)
	}
}

func (r *reader) refusal(t *track, e *plan.Event) {
	if t.refused.ok && t.refused.on == e.Date {
		return
	}
	if t.Refused == 0 {
		t.firstRefused = see(e)
	}
	t.refused = see(e)
	t.Refused++
}

// fasting pauses meals after refusals in a row, which in an animal that still grows
// are often the first sign of a moult, and looks into a fast that is too long.
func (r *reader) fasting(t *track) {
	if t.Refused == 0 || r.sheet == nil {
		return
	}
	s, stage := t.refused, t.stage().Stage
	name := s.on.String()
	enough := r.sheet.Figure("refusals-to-pause", stage)
	pause := r.days("refusal-pause", stage)
	if enough != nil && float64(t.Refused) >= enough.Range.Low && pause.ok && pause.high > 1 {
		offer := after(s.on, pause.high)
		t.Holds = append(t.Holds, Hold{From: s.on + 1, Until: offer, What: Meals,
			Why: strconv.Itoa(t.Refused) + " meals refused, the last " + short(s.on), End: until(offer), At: s.at, Cited: pause.cited})
		t.Tasks = append(t.Tasks,
			Task{Name: "refusals/" + name, Kind: "watch", On: s.on + 1, Interval: 7, Times: r.weeks(s.on+1, offer),
				Text: "pre-moult watch: do not dig", At: s.at, Cited: enough.Cited},
			Task{Name: "offer/" + name, Kind: "feed", On: offer, Text: "offer one small item", Meal: true, At: s.at, Cited: pause.cited})
	}
	if alarm := r.days("fast-alarm", stage); alarm.ok {
		since, text := t.firstRefused.on, "first refusal on "
		if t.HasFed {
			since, text = t.Fed, "last meal on "
		}
		t.Tasks = append(t.Tasks, Task{Name: "fast/" + since.String(), Kind: "watch", On: after(since, alarm.high),
			Text: text + since.Short() + ": long fast, look at belly, water and temperature", At: s.at, Cited: alarm.cited})
	}
}
