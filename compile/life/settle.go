package life

import (
	"cmp"
	"slices"

	"vivary/schema"
	"vivary/schema/civil"
)

// byDay orders holds by their first day; those of one day keep their order.
func byDay(holds []Hold) {
	slices.SortStableFunc(holds, func(a, b Hold) int { return cmp.Compare(a.From, b.From) })
}

// free returns the first day from on that no hold takes, or false where one holds
// until something is logged. The holds are in the order of byDay.
func free(on civil.Date, what schema.Row, holds []Hold) (civil.Date, bool) {
	for i := range holds {
		h := &holds[i]
		if !h.Out(what) || on < h.From || on >= h.Until {
			continue
		}
		if h.Open {
			return 0, false
		}
		on = h.Until
	}
	return on, true
}

// settle puts the meals of a group on days that nothing holds, and keeps of its
// tasks and windows what is not over.
func (r *reader) settle(t *track) {
	t.Holds, t.pause = slices.DeleteFunc(t.Holds, func(h Hold) bool { return h.From >= h.Until }), 0
	byDay(t.Holds)
	held := t.Holds
	if len(r.out.Holds) > 0 {
		held = append(append([]Hold(nil), t.Holds...), r.out.Holds...)
		byDay(held)
	}
	tasks := t.Tasks[:0]
	for _, task := range t.Tasks {
		if task.Meal {
			on, ok := free(task.On, schema.RowKilled, held)
			if !ok {
				continue
			}
			task.On = on
			if task.Instead {
				t.Offered = append(t.Offered, on)
			}
		}
		tasks = append(tasks, task)
	}
	t.Tasks = r.keep(tasks)
	slices.Sort(t.Offered)
	windows := t.Windows[:0]
	for _, w := range t.Windows {
		if w.Until > r.today && w.From <= r.h.Last() {
			windows = append(windows, w)
		}
	}
	t.Windows = windows
}

// keep returns the tasks with an occasion on the horizon, cut to it, by first day.
func (r *reader) keep(tasks []Task) []Task {
	out := tasks[:0]
	for _, task := range tasks {
		task.Times, task.Interval = max(task.Times, 1), max(task.Interval, 1)
		if late := int(r.h.From - task.On); late > 0 {
			gone := (late + task.Interval - 1) / task.Interval
			task.On = after(task.On, gone*task.Interval)
			task.Times -= gone
		}
		if task.Times > 0 && task.On <= r.h.Last() {
			out = append(out, task)
		}
	}
	slices.SortStableFunc(out, func(a, b Task) int {
		return cmp.Or(cmp.Compare(a.On, b.On), cmp.Compare(a.Name, b.Name))
	})
	return out
}

// weeks returns how many weekly occasions there are from a day until before another.
func (r *reader) weeks(from, until civil.Date) int { return max(0, (int(until-from)+6)/7) }
