package main

import (
	"fmt"
	"path/filepath"
	"strings"

	"vivary/cmd/internal/lastlist"
	"vivary/compile"
	"vivary/compile/daylist"
	"vivary/compile/paper"
	"vivary/schema"
	"vivary/schema/civil"
	"vivary/schema/quantity"
	"vivary/schema/wording"
)

// dueRefused prints what is due while the plan is refused: animals are hungry whatever is
// wrong with it. The list is that of the calendars last built, and what was logged since;
// where there are none, what can be read of the plan. What is wrong goes to standard error.
func (w *world) dueRefused(r *compile.Result, f *flags, dir string) int {
	until := r.Today + civil.Date(f.asked().Days)
	last := lastlist.Read(w.disk, dir, r.Today, until)
	switch {
	case f.paper != "":
		if status := w.duePaper(r, f, &last, dir); status != fine {
			return status
		}
	case f.format == "json" && last.Found == 0 && r.Roster != nil:
		dueJSON(w, r, f, daylist.Of(r, f.asked()))
	case f.format == "json":
		lastJSON(w, r, &last)
	case last.Found > 0:
		w.lastDue(r, f, &last, filepath.ToSlash(dir))
		mains(w, r)
	case r.Roster != nil:
		fmt.Fprintf(w.out, "%s\n\n", isUnsure)
		w.pressingNow(r)
		printDays(w, r, f, daylist.Of(r, f.asked()))
		mains(w, r)
	default:
		fmt.Fprintln(w.out, isNone)
	}
	for _, x := range last.Wrong {
		fmt.Fprintf(w.err, "%s\n", x)
	}
	return w.refuse(r, "The plan is refused; put this right, and the list is up to date again")
}

// What a list of a refused plan is, where no calendars were built before.
const (
	isUnsure = "The plan is refused, and no calendars were built before. This list is from what can be read of the plan: it may lack something, and it may be wrong."
	isNone   = "The plan is refused and cannot be read, and no calendars were built before: there is no list. Look at every animal, and fill every dish."
)

// isOld says what such a list is that is from calendars.
func isOld(dir string, since civil.Date) string {
	return "The plan is refused. This list is from the calendars in " + filepath.ToSlash(dir) + ", last built on " + since.Words() + ": nothing that was written or logged since is in it."
}

// duePaper prints the sheet of such a list.
func (w *world) duePaper(r *compile.Result, f *flags, last *lastlist.List, dir string) int {
	switch {
	case last.Found > 0:
		return w.print(f, "due", paper.OldRound(r, oldOf(r, f, last, dir)))
	case r.Roster != nil:
		doc := paper.Round(r, daylist.Of(r, f.asked()))
		doc.Warn(isUnsure, r.Alone()...)
		return w.print(f, "due", doc)
	}
	fmt.Fprintln(w.out, isNone)
	return fine
}

// oldOf is what is printed of calendars, on paper.
func oldOf(r *compile.Result, f *flags, last *lastlist.List, dir string) *paper.Old {
	since := madeOn(r, last)
	old := &paper.Old{Warning: isOld(dir, since), First: r.Alone(), Logged: loggedSince(r, since), Done: doneToday(r, f)}
	for _, x := range last.Items {
		old.Items = append(old.Items, paper.OldItem{Day: x.Day, Clock: clockOf(x.At, r.Plan.Units), Text: x.Summary + " (" + x.Calendar + ")", Lines: strings.Split(x.Text, "\n")})
	}
	return old
}

// lastDue prints what calendars ask, with what they cannot know yet.
func (w *world) lastDue(r *compile.Result, f *flags, last *lastlist.List, dir string) {
	since := madeOn(r, last)
	fmt.Fprintln(w.out, isOld(dir, since))
	if f.round != "" || f.keeper != "" {
		fmt.Fprintln(w.out, "Calendars do not tell rounds and keepers apart: all of it is shown.")
	}
	fmt.Fprintln(w.out)
	w.pressingNow(r)
	w.listed("Logged since, and not in the list: after a moult, a birth or an illness leave the animals alone.", loggedSince(r, since))
	w.listed("Done today, by the log, and still in the list below:", doneToday(r, f))
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

// doneToday is what the log says was done of what the calendars ask: their text is as it was
// when they were built. Of a plan that cannot be read at all it is the lines.
func doneToday(r *compile.Result, f *flags) (done []string) {
	if r.Roster != nil {
		for _, s := range daylist.Of(r, f.asked()) {
			if s.Date == r.Today && len(s.Ticked) > 0 {
				done = append(done, s.Round.Shown()+": "+strings.Join(s.Ticked, "; "))
			}
		}
		return done
	}
	for i := range r.Plan.Log {
		if e := &r.Plan.Log[i]; e.Date == r.Today && (e.Word == schema.WordDone || e.Word.Feeds || len(e.Word.Does) > 0) {
			done = append(done, r.Plan.Files.Of(e.At))
		}
	}
	return done
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
	for _, line := range r.Alone() {
		fmt.Fprintf(w.out, "FIRST: %s\n", line)
	}
	if r.Urgent() > 0 {
		fmt.Fprintln(w.out)
	}
}

// loggedSince are the lines of the log from a day on: what calendars cannot know.
func loggedSince(r *compile.Result, since civil.Date) (out []string) {
	for i := range r.Plan.Log {
		if e := &r.Plan.Log[i]; e.Date >= since {
			out = append(out, r.Plan.Files.Of(e.At))
		}
	}
	return out
}

// listed prints lines below a heading, and nothing where there are none.
func (w *world) listed(head string, lines []string) {
	if len(lines) == 0 {
		return
	}
	fmt.Fprintln(w.out, head)
	for _, line := range lines {
		fmt.Fprintln(w.out, "  "+line)
	}
	fmt.Fprintln(w.out)
}
