package life

import (
	"vivary/plan"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/wording"
)

// fed notes a meal that was taken. A single animal that eats is not about to moult.
func (r *reader) fed(t *track, e *plan.Event) {
	t.Fed, t.HasFed = e.Date, true
	t.eat(e.Date)
	if t.now() == 1 {
		r.closeMoult(t, e.Date)
	}
}

// eat ends a run of refusals, and the pause after it.
func (t *track) eat(on civil.Date) {
	if t.pause > 0 {
		hold := &t.Holds[t.pause-1]
		hold.Until = max(hold.From, min(hold.Until, on))
	}
	t.refused, t.firstRefused, t.Refused, t.pause = seen{}, seen{}, 0, 0
}

// refusal counts days on which meals were refused. After so many in a row meals
// pause: in an animal that still grows it is often the first sign of a moult.
func (r *reader) refusal(t *track, e *plan.Event) {
	if t.refused.ok && t.refused.on == e.Date {
		return
	}
	if t.Refused == 0 {
		t.firstRefused = see(e)
	}
	t.refused = see(e)
	t.Refused++
	pause, ok := r.pause(t)
	if !ok {
		return
	}
	if t.pause > 0 {
		hold := &t.Holds[t.pause-1]
		hold.Until = max(hold.From, min(hold.Until, e.Date+1))
	}
	end := after(e.Date, pause.high)
	t.Holds = append(t.Holds, Hold{From: e.Date + 1, Until: end, State: schema.StateRefused, At: e.At, Cited: pause.cited,
		Why: wording.Count(t.Refused, "meal", "meals") + " refused, the last " + e.Date.Brief(), End: wording.Until(end)})
	t.pause = len(t.Holds)
}

// pause is how long meals pause after the refusals there are, where they do.
func (r *reader) pause(t *track) (span, bool) {
	if r.sheet == nil {
		return span{}, false
	}
	stage := t.stage().Stage
	enough, pause := r.sheet.Figure(schema.FigureRefusalsToPause, stage), r.days(schema.FigureRefusalPause, stage)
	return pause, enough != nil && float64(t.Refused) >= enough.Range.Low && pause.high > 1
}

// fasting says what is done while meals pause, and looks into a fast that is too
// long.
func (r *reader) fasting(t *track) {
	if t.Refused == 0 {
		return
	}
	s := t.refused
	if pause, ok := r.pause(t); ok {
		name, end := s.on.String(), after(s.on, pause.high)
		t.Tasks = append(t.Tasks,
			Task{Name: "refusals/" + name, Kind: schema.KindWatch, On: s.on + 1, Interval: 7, Times: r.weeks(s.on+1, end),
				Text: "pre-moult watch: do not dig", At: s.at, Cited: pause.cited},
			Task{Name: "offer/" + name, Kind: schema.KindFeed, On: end, Text: "offer one small item", Meal: true, Instead: true, At: s.at, Cited: pause.cited})
	}
	if alarm := r.days(schema.FigureFastAlarm, t.stage().Stage); alarm.ok {
		since, text := t.firstRefused.on, "first refusal on "
		if t.HasFed {
			since, text = t.Fed, "last meal on "
		}
		t.Tasks = append(t.Tasks, Task{Name: "fast/" + since.String(), Kind: schema.KindWatch, On: after(since, alarm.high),
			Text: text + since.Short() + ": long fast, look at belly, water and temperature", At: s.at, Cited: alarm.cited})
	}
}
