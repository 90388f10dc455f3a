package main

import (
	"fmt"
	"path/filepath"
	"strings"

	"vivary/cmd/internal/lastlist"
	"vivary/compile"
	"vivary/compile/daylist"
	"vivary/plan/finding"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/quantity"
	"vivary/schema/wording"
)

// dueRefused prints what is due while the plan is refused: animals are hungry whatever is
// wrong with it. The list is that of the calendars last built, and what was logged since;
// where there are none, what can be read of the plan. What is wrong goes to standard error.
func (w *world) dueRefused(r *compile.Result, f *flags, dir string) int {
	until := r.Today + civil.Date(f.daysShown())
	last := lastlist.Read(w.disk, dir, r.Today, until)
	switch {
	case f.format == "json" && last.Found == 0 && r.Roster != nil:
		dueJSON(w, r, f, daylist.Of(r, f.asked()))
	case f.format == "json":
		lastJSON(w, r, &last)
	case last.Found > 0:
		w.lastDue(r, f, &last, filepath.ToSlash(dir))
		mains(w, r)
	case r.Roster != nil:
		fmt.Fprintf(w.out, "The plan is refused, and no calendars were built before. This list is from what can be read of the plan: it may lack something, and it may be wrong.\n\n")
		w.pressingNow(r)
		printDays(w, r, f, daylist.Of(r, f.asked()))
		mains(w, r)
	default:
		fmt.Fprintln(w.out, "The plan is refused and cannot be read, and no calendars were built before: there is no list. Look at every animal, and fill every dish.")
	}
	for _, x := range last.Wrong {
		fmt.Fprintf(w.err, "%s\n", x)
	}
	return w.refuse(r, "The plan is refused; put this right, and the list is up to date again")
}

// lastDue prints what calendars ask, with what they cannot know yet.
func (w *world) lastDue(r *compile.Result, f *flags, last *lastlist.List, dir string) {
	since := madeOn(r, last)
	fmt.Fprintf(w.out, "The plan is refused. This list is from the calendars in %s, last built on %s: nothing that was written or logged since is in it.\n", dir, since.Words())
	if f.round != "" || f.keeper != "" {
		fmt.Fprintln(w.out, "Calendars do not tell rounds and keepers apart: all of it is shown.")
	}
	fmt.Fprintln(w.out)
	w.pressingNow(r)
	w.loggedSince(r, since)
	w.doneToday(r, f)
	day := r.Today - 1
	for i := range last.Items {
		x := &last.Items[i]
		if x.Day > r.Today && f.days == notGiven {
			if x.Day != day && day == r.Today {
				fmt.Fprintln(w.out)
			}
			day = x.Day
			fmt.Fprintf(w.out, "%s  %s (%s)\n", day.Short(), strings.TrimLeft(x.At+" "+x.Summary, " "), x.Calendar)
			continue
		}
		if x.Day != day {
			if day >= r.Today {
				fmt.Fprintln(w.out)
			}
			day = x.Day
			fmt.Fprintln(w.out, dayTitle(r, day))
		}
		fmt.Fprintf(w.out, "  %s (%s)\n", strings.TrimLeft(clockOf(x.At, r.Plan.Units)+" "+x.Summary, " "), x.Calendar)
		for line := range strings.SplitSeq(strings.TrimSpace(x.Text), "\n") {
			fmt.Fprintln(w.out, strings.TrimRight("    "+line, " "))
		}
	}
	if len(last.Items) == 0 {
		fmt.Fprintln(w.out, "Nothing is due.")
	}
}

// madeOn is the day on which calendars were last built, where the animals are.
func madeOn(r *compile.Result, last *lastlist.List) civil.Date {
	made := last.Made
	if r.Plan.Location != nil {
		made = made.In(r.Plan.Location)
	}
	return civil.FromTime(made)
}

// doneToday prints what the log says was done of what the calendars ask: their text is as it
// was when they were built. Of a plan that cannot be read at all it prints the lines.
func (w *world) doneToday(r *compile.Result, f *flags) {
	var done []string
	if r.Roster != nil {
		for _, s := range daylist.Of(r, f.asked()) {
			if s.Date == r.Today && len(s.Ticked) > 0 {
				done = append(done, s.Round.Shown()+": "+strings.Join(s.Ticked, "; "))
			}
		}
	} else {
		for i := range r.Plan.Log {
			if e := &r.Plan.Log[i]; e.Date == r.Today && (e.Word == schema.WordDone || e.Word.Feeds || len(e.Word.Does) > 0) {
				done = append(done, r.Plan.Files.Of(e.At))
			}
		}
	}
	if len(done) == 0 {
		return
	}
	fmt.Fprintln(w.out, "Done today, by the log, and still in the list below:")
	for _, line := range done {
		fmt.Fprintln(w.out, "  "+line)
	}
	fmt.Fprintln(w.out)
}

// clockOf is a time of a calendar by the keeper's clock.
func clockOf(at string, u quantity.Units) string {
	if c, err := civil.ParseClock(at); err == nil {
		return wording.Clock(c, u)
	}
	return at
}

func dayTitle(r *compile.Result, day civil.Date) string {
	if day == r.Today {
		return day.Words() + ", today"
	}
	return day.Words()
}

// pressingNow prints what is urgent.
func (w *world) pressingNow(r *compile.Result) {
	for i := range r.Findings {
		if f := &r.Findings[i]; f.Severity == finding.Urgent {
			fmt.Fprintf(w.out, "FIRST: %s\n", f.Said())
		}
	}
	if r.Urgent() > 0 {
		fmt.Fprintln(w.out)
	}
}

// loggedSince prints the lines of the log from a day on: what calendars cannot know.
func (w *world) loggedSince(r *compile.Result, since civil.Date) {
	any := false
	for i := range r.Plan.Log {
		if e := &r.Plan.Log[i]; e.Date >= since {
			if !any {
				fmt.Fprintln(w.out, "Logged since, and not in the list: after a moult, a birth or an illness leave the animals alone.")
			}
			any = true
			fmt.Fprintln(w.out, "  "+r.Plan.Files.Of(e.At))
		}
	}
	if any {
		fmt.Fprintln(w.out)
	}
}
