package caldav

import (
	"context"
	"errors"
	"fmt"
	"maps"
	"slices"

	"vivary/cmd/internal/journal"
	"vivary/compile"
	"vivary/compile/ical"
	"vivary/compile/tasks"
	"vivary/plan/finding"
)

// Sync is a list of tasks, and the log into which what is ticked there goes.
type Sync struct {
	Client  *Client
	Journal *journal.Journal
	Days    int    // from today on, at least 1
	Keeper  string // only what this keeper does; "" for everybody
	By      string // who ticks; "" for whoever does it by the plan
}

// Report is what was found and done.
type Report struct {
	Lines  []Line         // written to the log
	Untold []tasks.Untold // ticks that are not in the log
	Wrong  []Wrong        // ticks of which the log says that they cannot be so
	// Unread are the paths of objects that were put up and cannot be read any more: they are
	// not touched.
	Unread []string

	Wanted, New, Changed, Gone int // tasks

	// Before and After are the collection before and after all that was written.
	Before, After *compile.Result
}

// Line is a line that was written, and into which log.
type Line struct{ Path, Text string }

// Wrong is a line that could not be so.
type Wrong struct {
	Text     string
	Findings []finding.Finding
	With     *compile.Result // the places of the findings are of it
}

// ErrRefused is the error of a plan of which no list can be made. What was ticked is in the log
// all the same.
var ErrRefused = errors.New("the plan is refused")

// tries is how often it is begun anew where somebody changes the list at the same time.
const tries = 5

// Run brings the list up to date. What was ticked is in the log before anything is changed on
// the server, so that whenever it ends nothing is lost, and done again it does no more than is
// still to do. The report is of what was done, whatever the error.
func (s *Sync) Run(ctx context.Context) (Report, error) {
	var out Report
	for range tries {
		again, err := s.once(ctx, &out)
		if err != nil || !again {
			return out, err
		}
	}
	return out, errors.New("somebody changes the list again and again at the same time: try once more in a while")
}

// once does it once, and reports whether somebody else was quicker anywhere.
func (s *Sync) once(ctx context.Context, out *Report) (again bool, err error) {
	objects, unread, err := s.read(ctx)
	if err != nil {
		return false, err
	}
	out.Unread = s.Client.ours(unread)
	unsettled, err := s.note(objects, out)
	if err != nil {
		return false, err
	}
	if out.After.Refused() {
		return false, ErrRefused
	}
	list := tasks.Of(out.After, s.Keeper)
	want := slices.DeleteFunc(list.Wanted(s.Days), func(t ical.Todo) bool { return slices.Contains(out.Unread, s.Client.path(t.UID)) })
	out.Wanted = len(want)
	steps := list.Steps(want, objects, func(uid string) bool { return !unsettled[uid] })
	for i := range steps {
		err := s.step(ctx, &steps[i], out)
		if errors.Is(err, ErrConflict) {
			again = true
			continue
		}
		if err != nil {
			return false, fmt.Errorf("not all tasks could be put up: %w", err)
		}
	}
	return again, nil
}

// read returns the tasks of the list, and the paths of what cannot be read: it may be anybody's.
func (s *Sync) read(ctx context.Context) (all []tasks.Object, unread []string, err error) {
	kept, err := s.Client.List(ctx)
	if err != nil {
		return nil, nil, err
	}
	for _, k := range kept {
		seen, err := ical.ReadTodo(k.Text)
		if err != nil {
			unread = append(unread, k.Path)
			continue
		}
		all = append(all, tasks.Object{Seen: seen, Path: k.Path, ETag: k.ETag, Text: k.Text})
	}
	return all, unread, nil
}

// note writes what was ticked into the log, and returns the tasks of which something is not
// there.
func (s *Sync) note(objects []tasks.Object, out *Report) (unsettled map[string]bool, err error) {
	h, err := s.Journal.Hold()
	if err != nil {
		return nil, err
	}
	defer h.Release()
	if out.Before == nil {
		out.Before = h.Now
	}
	out.After = h.Now
	if h.Now.Roster == nil {
		return nil, ErrRefused
	}
	var seen []ical.Seen
	for i := range objects {
		seen = append(seen, objects[i].Seen)
	}
	facts, untold := tasks.Of(h.Now, s.Keeper).Said(seen, s.By)
	unsettled = map[string]bool{}
	for _, u := range untold {
		unsettled[u.Task.UID] = true
	}
	out.Untold, out.Wrong = untold, nil
	logs := byLog(facts)
	for _, name := range slices.Sorted(maps.Keys(logs)) {
		if err := write(h, name, logs[name], out, unsettled); err != nil {
			return nil, err
		}
	}
	out.After = h.Now
	return unsettled, nil
}

// byLog parts facts by the log into which they go: each keeper has one for each year.
func byLog(facts []tasks.Fact) map[string][]tasks.Fact {
	out := map[string][]tasks.Fact{}
	for _, f := range facts {
		name := journal.LogName(f.Day, f.By)
		out[name] = append(out[name], f)
	}
	return out
}

// write writes facts into a log: all at once, or, where one of them cannot be so, each alone,
// since it says nothing against the others.
func write(h *journal.Held, name string, facts []tasks.Fact, out *Report, unsettled map[string]bool) error {
	var lines []string
	of := map[string]string{}
	for _, f := range facts {
		l := journal.Line{Day: f.Day, Clock: f.Clock, By: f.By, Enclosure: f.Enclosure, Group: f.Group, Word: f.Word, Args: f.Args}
		text, err := l.Text()
		if err != nil {
			return err
		}
		lines, of[text] = append(lines, text), f.UID
	}
	done, err := h.Write(name, lines)
	if err != nil {
		return err
	}
	out.wrote(&done)
	if !done.Slips {
		return nil
	}
	if len(lines) > 1 {
		for i := range facts {
			if err := write(h, name, facts[i:i+1], out, unsettled); err != nil {
				return err
			}
		}
		return nil
	}
	unsettled[of[lines[0]]] = true
	out.Wrong = append(out.Wrong, Wrong{lines[0], done.Findings, done.With})
	return nil
}

func (r *Report) wrote(o *journal.Outcome) {
	for _, line := range o.Written {
		r.Lines = append(r.Lines, Line{o.Path, line})
	}
}

// step changes the list in one thing.
func (s *Sync) step(ctx context.Context, x *tasks.Step, out *Report) error {
	now := out.After.Now
	switch {
	case x.Todo == nil:
		if x.Of.ETag == "" {
			return errNoState
		}
		err := s.Client.Delete(ctx, x.Of.Path, x.Of.ETag)
		if err == nil {
			out.Gone++
		}
		return err
	case x.Of == nil:
		err := s.Client.Put(ctx, s.Client.path(x.Todo.UID), "", ical.WriteTodo(nil, x.Todo, now))
		if err == nil {
			out.New++
		}
		return err
	case x.Of.ETag == "":
		return errNoState
	}
	err := s.Client.Put(ctx, x.Of.Path, x.Of.ETag, ical.ReviseTodo(x.Of.Text, x.Todo, now))
	if err == nil {
		out.Changed++
	}
	return err
}

// errNoState is of a server that does not say in which state an object is: nothing can be
// changed there without taking away what somebody ticks at the same time.
var errNoState = errors.New("the server does not say in which state its tasks are (ETag), so that nothing can be changed there safely")
