package tasks

import (
	"vivary/compile/ical"
	"vivary/schema/civil"
)

// Object is a task as it stands in a list, with where it is kept and in which state.
type Object struct {
	ical.Seen
	Path string // of the object, on its server
	ETag string
	Text []byte // the whole object
}

// Step is a change of a list: a todo that is put up or put in the place of what stands there,
// or, without a Todo, an object that is taken away.
type Step struct {
	Todo *ical.Todo
	Of   *Object // what stands there; nil for nothing
}

const (
	// late is for how many days a task that is open stays after its day: a phone without a
	// signal at the rack sends its ticks in the morning.
	late = 1
	// kept is for how many days one that was ticked stays: an app shows what was done.
	kept = 7
)

// Steps returns what has to change in a list so that it shows what is wanted. What somebody
// ticked stays as it is. settled says that what a ticked one says is in the log: one of which
// it is not is never taken away. What is not of the list is not touched.
func (l *List) Steps(want []ical.Todo, have []Object, settled func(uid string) bool) (steps []Step) {
	wanted := map[string]bool{}
	by := map[string]*Object{}
	for i := range have {
		if o := &have[i]; by[o.UID] == nil {
			by[o.UID] = o
		}
	}
	for i := range want {
		t := &want[i]
		wanted[t.UID] = true
		if o := by[t.UID]; o == nil || !o.ticked() && !o.Same(t) {
			steps = append(steps, Step{t, o})
		}
	}
	for i := range have {
		o := &have[i]
		if day, ours := l.Day(o.UID); ours && !wanted[o.UID] && l.over(o, day, settled) {
			steps = append(steps, Step{Of: o})
		}
	}
	return steps
}

// over reports whether a task that is not wanted is to be taken away.
func (l *List) over(o *Object, day civil.Date, settled func(uid string) bool) bool {
	if o.ticked() {
		return day < l.r.Today-kept && settled(o.UID)
	}
	return day >= l.r.Today || day < l.r.Today-late
}

func (o *Object) ticked() bool { return o.Done || o.Cancelled }
